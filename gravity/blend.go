package gravity

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// A BlendPart is how much of one liquid goes into a blend.
type BlendPart struct {
	Mass   units.Mass
	Volume units.Volume // at 20 °C
}

func (s Solution) part(m float64) BlendPart {
	return BlendPart{kilograms(m), litres(1000 * m / s.density20())}
}

// BlendToStrength returns how much of two liquids makes a volume of a strength, both
// at 20 °C. Only the composition of the two counts, not how much there is of them.
//
//   - Source: masses add, contraction by the densities of [Solution.ByVolume].
//   - Range: a strength between those of the two, a volume of 0 to 1e9 L, a blend that a
//     formula covers (see [Solution.DensityUncertainty]); otherwise the error is a [*units.RangeError].
//   - Uncertainty: that of the two strengths.
func BlendToStrength(a, b Solution, strength units.StrengthByVolume, volume units.Volume) (ofA, ofB BlendPart, blend Solution, err error) {
	const fn = "gravity.BlendToStrength"
	v, want := volume.In(units.Litre), strength.In(units.PercentVolume)
	if err := blendable(fn, v, a, b); err != nil {
		return BlendPart{}, BlendPart{}, Solution{}, err
	}
	a, b = a.scaled(1/a.total()), b.scaled(1/b.total())
	sa, sb := a.strength(), b.strength()
	if err := limit.Check(fn, "strength", want, "% vol", min(sa, sb)-rounding, max(sa, sb)+rounding, "between the two liquids"); err != nil {
		return BlendPart{}, BlendPart{}, Solution{}, err
	}
	part, err := partOf(a, b, want)
	if err != nil { // not reached: the strength wanted lies between the two
		return BlendPart{}, BlendPart{}, Solution{}, err
	}
	if blend, err = a.scaled(1 - part).with(b.scaled(part)).checked(fn); err != nil {
		return BlendPart{}, BlendPart{}, Solution{}, err
	}
	m := v / 1000 * blend.density20() / blend.total()
	return a.part(m * (1 - part)), b.part(m * part), blend.scaled(m), nil
}

func blendable(fn string, v float64, of ...Solution) error {
	if err := limit.Check(fn, "volume", v, "L", 0, mostVolume, "a volume"); err != nil {
		return err
	}
	for _, s := range of {
		if err := limit.Check(fn, "mass of a liquid", s.total(), "kg", leastMass, mostMass, "there must be some"); err != nil {
			return err
		}
	}
	return nil
}

// BlendToStrengthAndExtract returns how much of three liquids makes a volume of a
// strength with a real extract: a spirit, a syrup and water. Only the composition of
// the three counts.
//
//   - Source: masses of ethanol and extract add; the strength by volume by the densities
//     of [Solution.ByVolume].
//   - Range: targets that the three can make with no negative amount, a volume of 0 to
//     1e9 L, a blend that a formula covers (see [Solution.DensityUncertainty]); otherwise the error is a
//     [*units.RangeError], about the liquid whose share would be negative if it is that.
//   - Uncertainty: that of the three liquids.
func BlendToStrengthAndExtract(a, b, c Solution, strength units.StrengthByVolume, real units.Extract, volume units.Volume) (parts [3]BlendPart,
	blend Solution, err error) {
	const fn = "gravity.BlendToStrengthAndExtract"
	v, want, x := volume.In(units.Litre), strength.In(units.PercentVolume), real.In(units.DegreePlato)/100
	if err := blendable(fn, v, a, b, c); err != nil {
		return parts, Solution{}, err
	}
	if err := limit.Check(fn, "strength", want, "% vol", 0, 100, "a strength"); err != nil {
		return parts, Solution{}, err
	}
	if err := limit.Check(fn, "real extract", 100*x, "% mass", 0, mostSucrose, "an extract"); err != nil {
		return parts, Solution{}, err
	}
	of := [3]Solution{a.scaled(1 / a.total()), b.scaled(1 / b.total()), c.scaled(1 / c.total())}
	ethanol := want / 100 * pureEthanol20 // kg in a m³
	e := ethanol / mixture20[0]           // by the density of the blend, which hardly depends on it
	var k [3]float64
	for range mostSteps {
		var ok bool
		if k, ok = shares(of, e, x); !ok {
			return parts, Solution{}, limit.Check(fn, "independent liquids", 2, "", 3, 3, "two of the three are one liquid, or a blend of the others")
		}
		blend = of[0].scaled(max(0, k[0])).with(of[1].scaled(max(0, k[1]))).with(of[2].scaled(max(0, k[2])))
		if blend, err = blend.checked(fn); err != nil {
			return parts, Solution{}, err
		}
		next := ethanol / blend.density20()
		done := math.Abs(next-e) < sharp
		e = next
		if done {
			break
		}
	}
	for i, share := range k {
		if err := limit.Check(fn, "share of liquid "+string(rune('1'+i)), 100*share, "%", -rounding, 100+rounding, "what the three liquids can make"); err != nil {
			return parts, Solution{}, err
		}
	}
	m := v / 1000 * blend.density20() / blend.total()
	for i := range parts {
		parts[i] = of[i].part(m * max(0, k[i]))
	}
	return parts, blend.scaled(m), nil
}

// shares solves for the mass shares of three liquids that give mass fractions of
// ethanol e and extract x.
func shares(of [3]Solution, e, x float64) (k [3]float64, ok bool) {
	e0, x0 := of[0].fractions()
	e1, x1 := of[1].fractions()
	e2, x2 := of[2].fractions()
	det := (e0-e2)*(x1-x2) - (e1-e2)*(x0-x2)
	if math.Abs(det) < nearly {
		return k, false
	}
	k[0] = ((e-e2)*(x1-x2) - (e1-e2)*(x-x2)) / det
	k[1] = ((e0-e2)*(x-x2) - (e-e2)*(x0-x2)) / det
	k[2] = 1 - k[0] - k[1]
	return k, true
}
