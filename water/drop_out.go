package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
)

// Dropped is a water at equilibrium with a mineral.
type Dropped struct {
	Equilibrium Equilibrium
	Amount      units.MolarConcentration // of the mineral that dropped out, or dissolved
	Mass        units.MassConcentration  // the same
	Dissolved   bool                     // it dissolved, as the water was below saturation
}

// AtRestWith returns the water after enough time with a solid mineral in it: what is
// above saturation has dropped out, what was below has dissolved from a stock without
// end. A CO2 pressure keeps the CO2 in balance, where it is lost to one.
//
// Errors are a [*units.RangeError] as in [Profile.Closed], a [*units.StateError] for a water
// of unknown pH where the CO2 is kept, and a [*units.NameError] for a mineral that is none of
// the constants.
//
//   - Source: [Equilibrium.SaturationIndex].
//   - Uncertainty: 3 % of the solubility against measured values for gypsum
//     (Marshall and Slusher 1966), 10 % for calcite.
func (p Profile) AtRestWith(m Mineral, co2 CO2Loss) (Dropped, error) {
	return p.settleMineral("water.Profile.AtRestWith", m, co2, true)
}

func (p Profile) settleMineral(fn string, m Mineral, co2 CO2Loss, dissolves bool) (Dropped, error) {
	if err := minerals.Check(fn, m); err != nil {
		return Dropped{}, err
	}
	if !co2.lost && (m == Calcite || m == AragoniteForm) {
		if err := p.knownPH(fn); err != nil {
			return Dropped{}, err
		}
	}
	have := p.mmol(Calcium)
	if m == GypsumMineral {
		have = min(have, p.mmol(Sulfate))
	}
	before, err := p.less(fn, m, 0, co2)
	if err != nil {
		return Dropped{}, err
	}
	var low, high float64
	switch {
	case before.SaturationIndex(m) > 0:
		high = have
	case !dissolves:
		return Dropped{Equilibrium: before}, nil
	default:
		// Widen step by step: a strong solution is outside the range of activity, so that
		// one that never holds enough ends there.
		for low = leastDissolved; ; low += low {
			e, err := p.less(fn, m, low, co2)
			if err != nil {
				return Dropped{}, err
			}
			if e.SaturationIndex(m) >= 0 {
				break
			}
			high = low
		}
	}
	x := enclosed(func(x float64) float64 {
		e, err := p.less(fn, m, x, co2)
		if err != nil {
			return math.NaN() // the search then ends there
		}
		return -e.SaturationIndex(m)
	}, low, high)
	last, err := p.less(fn, m, x, co2)
	if err != nil { // not reached: x is an amount that the search has tried
		return Dropped{}, err
	}
	amount := math.Abs(x)
	return Dropped{
		Equilibrium: last, Amount: units.MillimolePerLitre.Of(checked.Number(amount)),
		Mass: units.MilligramPerLitre.Of(checked.Number(amount * mineralMasses[m])), Dissolved: x < 0,
	}, nil
}

const leastDissolved = -0.01 // mmol/L dropped out: where the search for more begins

var mineralMasses = [mineralCount]float64{chemistry.MustMass("CaCO3"), chemistry.MustMass("CaCO3"), chemistry.MustMass("CaSO4.2H2O"),
	chemistry.MustMass("Ca(OH)2")}

// less is the water with x mmol/L of the mineral gone.
func (p Profile) less(fn string, m Mineral, x float64, co2 CO2Loss) (Equilibrium, error) {
	p.mg[Calcium] = max(0, p.mg[Calcium]-x*Calcium.facts().mass)
	switch m {
	case Calcite, AragoniteForm:
		p.alk -= 2 * x
		p.carbon = max(0, p.carbon-x)
	case GypsumMineral:
		p.mg[Sulfate] = max(0, p.mg[Sulfate]-x*Sulfate.facts().mass)
	case Portlandite:
		p.alk -= 2 * x
	}
	return p.rest(fn, co2)
}

// rest is the equilibrium with the CO2 kept or lost.
func (p *Profile) rest(fn string, co2 CO2Loss) (e Equilibrium, err error) {
	if co2.lost {
		err = e.under(fn, p, units.Kilopascal.Of(checked.Number(co2.kPa)))
	} else {
		err = e.closed(fn, p)
	}
	return e, err
}
