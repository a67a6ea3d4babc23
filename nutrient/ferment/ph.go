package ferment

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// around is what the pH depends on: the wash stands under air before the yeast starts,
// then under its own CO2.
func (f *fermenting) around(used float64) acidity.Surroundings {
	strength := min(mostEthanol, f.ethanol[0]+used*(f.ethanol[1]-f.ethanol[0]))
	s := acidity.Surroundings{At: f.Temperature, Strength: units.PercentVolume.Of(checked.Number(strength)), Others: f.rest(),
		Like: f.like, Gas: f.Pressure, Water: f.water}
	if used == 0 {
		s.Gas = f.air()
	}
	return s
}

// air is the CO2 of the air before the yeast works: that of the place, or of sea level
// where the vessel is to hold a pressure of its own.
func (f *fermenting) air() units.AbsolutePressure {
	place, _ := units.Barometer(f.Pressure) // above 110 kPa no air is so dense: the zero Atmosphere, sea level
	return water.AirCO2(place)
}

// saturates is CO2, mmol/L, that saturates any wash of this package: 77 mmol/L at 0 °C and
// an atmosphere (Plummer & Busenberg 1982), and as bicarbonate what the cations hold.
func (f *fermenting) saturates(a acidity.Liquid) float64 {
	return 80*f.Pressure.In(units.StandardAtmosphere) + max(0, a.Strong)
}

// rests is the liquid when a share of the sugar is used. At first its CO2 is too little to
// saturate it: that of the wash under air and what was made.
func (f *fermenting) rests(m Metabolism, used float64) (water.Equilibrium, error) {
	b := f.balance(m, used)
	a, s := f.acidity(b, used), f.around(used)
	if made := 1000 * b.moles().co2 / f.litres; used > 0 && made < f.saturates(a) {
		if f.before == 0 {
			e, err := f.start.Fed(f.feed, f.fed(0)).Rest(f.around(0))
			if err != nil {
				return e, err
			}
			f.before = f.water * e.InorganicCarbon().In(units.MillimolePerLitre)
		}
		s.Carbon = f.before + made
	}
	return a.Rest(s)
}

// span is the pH with the usual, the most and the least acids, and the liquid with the usual ones.
func (f *fermenting) span(used float64) (evidence.Figure[float64], water.Equilibrium, error) {
	var v [3]float64
	var usual water.Equilibrium
	for i, m := range f.upTo {
		if i > 0 && (used == 0 || f.AcidsKnown) { // at zero no acids are made yet
			v[i] = v[0]
			continue
		}
		e, err := f.rests(m, used)
		if err != nil {
			return evidence.Figure[float64]{}, usual, err
		}
		if v[i] = e.PH(); i == 0 {
			usual = e
		}
	}
	return evidence.Figure[float64]{Value: v[0], Low: min(v[0], v[2]), High: max(v[0], v[1]),
		Evidence: evidence.Evidence{Source: "charge balance of the liquid", Grade: evidence.Computed}}, usual, nil
}
