package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Portion is a volume of a water.
type Portion struct {
	Water  Profile
	Volume units.Volume
}

// Blend returns the mixture of waters: ions, alkalinity, inorganic carbon and heat
// in proportion to the volumes. Where the pH of each is known, the pH of the
// mixture is that of the closed water; otherwise it is unknown.
//
// Errors are a [*units.RangeError] where the volumes do not add up to more than
// zero.
func Blend(parts ...Portion) (Profile, error) {
	const fn = "water.Blend"
	total, known := 0.0, true
	for _, q := range parts {
		v := q.Volume.In(units.Litre)
		if err := limit.Check(fn, "volume", v, "L", 0, math.MaxFloat64, waterSource); err != nil {
			return Profile{}, err
		}
		total += v
		known = known && q.Water.ph != 0
	}
	if err := limit.Check(fn, "total volume", total, "L", math.SmallestNonzeroFloat64, math.MaxFloat64, waterSource); err != nil {
		return Profile{}, err
	}
	var out Profile
	for _, q := range parts {
		share := q.Volume.In(units.Litre) / total
		for i, v := range q.Water.mg {
			out.mg[i] += share * v
		}
		out.alk += share * q.Water.alk
		out.t += share * q.Water.t
		out.ethanol += share * q.Water.ethanol
		out.ph += share * q.Water.ph // a start for the solver
		out.carbon += share * q.Water.carbon
	}
	if !known {
		out.ph = 0
	}
	return out.closedPH(fn)
}

// Dilute returns a volume of the water after pure water is added to it.
// The error is a [*units.RangeError] as in [Blend].
func (p Profile) Dilute(volume, pure units.Volume) (Profile, error) {
	// No carbon and no alkalinity: the solver finds the pH.
	b, err := Blend(Portion{p, volume}, Portion{Profile{t: p.t, ph: p.ph}, pure})
	return b, limit.Named("water.Profile.Dilute", err)
}

// DilutionFor returns the share of pure water in a blend that brings an ion down to a
// content: half and half halves it. The error is a [*units.RangeError] for an unknown
// ion or a content above what the water has.
func (p Profile) DilutionFor(i Ion, want units.MassConcentration) (units.Share, error) {
	const fn = "water.Profile.DilutionFor"
	if err := i.known(fn); err != nil {
		return units.Share{}, err
	}
	have, w := p.ion(i), want.In(units.MilligramPerLitre)
	if err := limit.Check(fn, i.Name(), w, "mg/L", 0, max(0, have), "pure water only takes away"); err != nil {
		return units.Share{}, err
	}
	if have <= 0 {
		return units.Share{}, nil
	}
	return units.Fraction.Of(checked.Number(1 - w/have)), nil
}
