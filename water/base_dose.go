package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// AcidToAlkalinity returns the amount of pure acid that lowers the alkalinity of a
// volume to a value: stoichiometry, whatever the pH.
//
// Errors are a [*units.RangeError]: an unknown acid, a target above what the water
// has, a volume that is not positive.
//
//   - Source: protons given on the way to the end point of the titration: one of
//     phosphoric acid, all of the others.
func (p Profile) AcidToAlkalinity(volume units.Volume, a Acid, target units.CalciumCarbonate) (units.Amount, error) {
	const fn = "water.Profile.AcidToAlkalinity"
	if err := a.known(fn); err != nil {
		return units.Amount{}, err
	}
	l := volume.In(units.Litre)
	if err := checkVolume(fn, l); err != nil {
		return units.Amount{}, err
	}
	want := target.In(units.MilligramPerLitreCaCO3) / cacO3PerEquivalent
	if err := limit.Check(fn, "alkalinity", want, "mEq/L", -mostAlkalinity, p.alk, "what the water has"); err != nil {
		return units.Amount{}, err
	}
	return units.Millimole.Of(checked.Number((p.alk - want) * l / float64(acidTable[a].protons))), nil
}

// BaseToAlkalinity returns the mass of a bicarbonate, carbonate, hydroxide or lime
// that raises the alkalinity of a volume to a value. Errors are a
// [*units.RangeError] as above, and for a salt that brings no alkalinity.
func (p Profile) BaseToAlkalinity(volume units.Volume, s material.Material, target units.CalciumCarbonate) (units.Mass, error) {
	const fn = "water.Profile.BaseToAlkalinity"
	l := volume.In(units.Litre)
	y, err := checkBase(fn, s, l)
	if err != nil {
		return units.Mass{}, err
	}
	want := target.In(units.MilligramPerLitreCaCO3) / cacO3PerEquivalent
	if err := limit.Check(fn, "alkalinity", want, "mEq/L", p.alk, mostAlkalinity, "what the water has, and more"); err != nil {
		return units.Mass{}, err
	}
	return units.Gram.Of(checked.Number((want - p.alk) * l / y.alkalinity)), nil
}

func checkBase(fn string, s material.Material, litres float64) (*yield, error) {
	y, err := brings(fn, s)
	if err != nil {
		return nil, err
	}
	if err := checkVolume(fn, litres); err != nil {
		return nil, err
	}
	return y, limit.Check(fn, "alkalinity of the salt", y.alkalinity, "mEq/g", 1e-3, 100, "a salt that brings alkalinity")
}

// BaseDose is a mass of a base for a volume of water, with what it makes of it.
type BaseDose struct {
	Dose     material.Dose
	Water    Profile
	Cautions caution.List
}

// BaseToPH returns the mass of a base that raises the pH of a closed water of known
// pH, 16 g/L at most. A bicarbonate cannot raise it above about 8.3.
//
// Errors are a [*units.StateError] for a water of unknown pH, a [*units.RangeError] for a target below what the water has
// or out of reach of the base, and those of [Profile.Closed].
func (p Profile) BaseToPH(volume units.Volume, s material.Material, ph float64) (BaseDose, error) {
	const fn = "water.Profile.BaseToPH"
	l := volume.In(units.Litre)
	if _, err := checkBase(fn, s, l); err != nil {
		return BaseDose{}, err
	}
	if err := p.knownPH(fn); err != nil {
		return BaseDose{}, err
	}
	if err := limit.Check(fn, "pH", ph, "", p.ph, 12.5, "what the water has, up to lime water"); err != nil {
		return BaseDose{}, err
	}
	after := func(gPerL float64) (Profile, error) {
		return p.Add(units.Litre.Of(1), s.Dose(units.Gram.Of(checked.Number(gPerL))))
	}
	high := leastBase
	for {
		q, err := after(high)
		if err != nil {
			return BaseDose{}, limit.Named(fn, err)
		}
		if q.ph >= ph {
			break
		}
		if high == mostBase {
			return BaseDose{}, limit.Check(fn, "pH", ph, "", p.ph, q.ph, "the reach of "+s.Name())
		}
		high = min(high+high, mostBase)
	}
	x := enclosed(func(gPerL float64) float64 {
		q, err := after(gPerL)
		if err != nil {
			return math.NaN() // the search then ends at an end
		}
		return q.ph - ph
	}, 0, high)
	last, err := after(x)
	if err != nil { // not reached: x is a dose that the search has tried
		return BaseDose{}, limit.Named(fn, err)
	}
	cautions := caution.List(nil).WithIf(s.Caustic(), material.Burns)
	return BaseDose{Dose: s.Dose(units.Gram.Of(checked.Number(x * l))), Water: last, Cautions: cautions}, nil
}

const (
	leastBase = 0.001 // g/L, where the search begins
	mostBase  = 16    // g/L
)
