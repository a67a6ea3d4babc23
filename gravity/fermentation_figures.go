package gravity

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Wort returns 100 kg of the liquid before fermentation.
func (f Fermentation) Wort() Solution { return f.wort }

// Liquid returns what 100 kg of wort became.
func (f Fermentation) Liquid() Solution { return f.liquid }

// Yield returns the yield between the two.
func (f Fermentation) Yield() Yield { return f.yield }

// OriginalGravity returns the gravity before fermentation.
func (f Fermentation) OriginalGravity() Gravity { return f.wort.Gravity() }

// OriginalExtract returns the extract before fermentation as a hydrometer has it, on the
// scale of sucrose; [Yield.OriginalExtract] has the same. For glucose it is less than the
// mass of the sugar (12.00 for 12.18 %), for fructose more (12.00 for 11.89 %).
func (f Fermentation) OriginalExtract() units.Extract { return f.wort.Gravity().Extract() }

// Gravity returns the gravity now.
func (f Fermentation) Gravity() Gravity { return f.liquid.Gravity() }

// ApparentExtract returns the extract that a hydrometer shows now.
func (f Fermentation) ApparentExtract() units.Extract { return f.liquid.Gravity().Extract() }

// RealExtract returns the extract that is really there, residue included: the mass of it
// in 100 masses. In a wash of glucose or fructose that is not the scale of
// [Fermentation.OriginalExtract].
func (f Fermentation) RealExtract() units.Extract { return f.liquid.RealExtract() }

// ByMass returns the strength by mass.
func (f Fermentation) ByMass() units.StrengthByMass { return f.liquid.ByMass() }

// ByVolume returns the strength by volume.
func (f Fermentation) ByVolume() units.StrengthByVolume { return f.liquid.ByVolume() }

// RefractometerBrix returns what a refractometer shows now; errors are those of
// [Solution.RefractometerBrix].
func (f Fermentation) RefractometerBrix() (units.Extract, error) { return f.liquid.RefractometerBrix() }

// ApparentAttenuation returns the part of the original extract that a hydrometer no
// longer shows; above 100 % in a dry sugar wash, 0 for water.
//
//   - Source: definition, 100·(OE − AE)/OE.
func (f Fermentation) ApparentAttenuation() units.Share {
	return attenuation(f.OriginalExtract(), f.ApparentExtract())
}

// RealAttenuation returns the part of the original extract that is really gone; 0 for
// water.
//
//   - Source: definition, 100·(OE − RE)/OE, both by mass.
func (f Fermentation) RealAttenuation() units.Share {
	return attenuation(f.wort.RealExtract(), f.RealExtract())
}

func attenuation(original, now units.Extract) units.Share {
	p := original.In(units.DegreePlato)
	if p == 0 {
		return units.Share{}
	}
	return units.Percent.Of(checked.Number(100 * (p - now.In(units.DegreePlato)) / p))
}

// RealDegreeOfFermentation returns the part of the original extract that was fermented,
// with the loss of mass counted; 0 for water.
//
//   - Source: ASBC: 100·(OE − RE)/OE / (1 − 0.005161·RE) (Speers, Brewing
//     calculations; that the last symbol is RE is recalled from memory).
//   - Uncertainty: the factor is for malt wort and the balance of Balling.
func (f Fermentation) RealDegreeOfFermentation() units.Share {
	return units.Percent.Of(checked.Number(f.RealAttenuation().In(units.Percent) / (1 - 0.005161*f.RealExtract().In(units.DegreePlato))))
}

// Fermented returns the mass share of the wort's extract that yeast has used, by the
// balance itself.
func (f Fermentation) Fermented() units.Share {
	p := f.wort.sugars()
	if p == 0 {
		return units.Share{}
	}
	return units.Percent.Of(checked.Number(100 * f.used / p))
}
