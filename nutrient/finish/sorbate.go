package finish

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// SorbateCaution goes with every dose of sorbate.
const SorbateCaution caution.Caution = "sorbate: Sorbate keeps yeast from starting; it does not stop a ferment, and bacteria turn it into a smell of " +
	"geranium unless there is SO2 with it. " + checkTheLaw

// potassiumSorbate and sorbicAcid are KC6H7O2 and C6H8O2.
var (
	potassiumSorbate = formula.Compound{K: 1, C: 6, H: 7, O: 2}
	sorbicAcid       = formula.Compound{C: 6, H: 8, O: 2}
)

// SorbicAcidShare returns the mass of sorbic acid that a mass of potassium sorbate
// brings, 74.6 %.
//
//   - Source: stoichiometry, CIAAW atomic weights 2021.
func SorbicAcidShare() units.Share {
	return amount.Share(sorbicAcid.Molar() / potassiumSorbate.Molar())
}

// Undissociated returns the share of sorbic acid that is undissociated at a pH, the form
// that acts on yeast.
//
//   - Source: pK 4.76 (a reagent page of a department of enology, read); 1/(1 + 10^(pH − pK)).
//   - Range: pH 2 to 8; beyond it the error is a [*units.RangeError].
//   - Uncertainty: 12 % vol of ethanol raises the pK of lactic acid from 3.70 to 3.87 and
//     log β of succinate from 5.319 to 5.49 (E. Prenesti et al., Sci. World J. 2012, 249041,
//     table 4, read), 0.014 for each % vol; of sorbic acid the same is taken to hold. It makes
//     the share larger: at 10 % vol under 1 % of it at pH 3.5, about 12 % at pH 4.5.
func Undissociated(ph float64) (units.Share, error) {
	if err := limit.Check("finish.Undissociated", "pH", ph, "", 2, 8, "sorbic acid, pK 4.76"); err != nil {
		return units.Share{}, err
	}
	return amount.Share(undissociated(ph, 4.76)), nil
}

// SorbateByStrength returns the potassium sorbate that keeps a wine below pH 3.5 from
// fermenting again, by its strength. Between the printed strengths it is interpolated.
//
//   - Source: How to add potassium sorbate (read): 200, 170, 130, 100, 70 mg/L at 10,
//     11, 12, 13, 14 % vol. Spread at 10 % vol: 165 to 270 mg/L at pH 3.1 to 3.5
//     (Potassium sorbate table of a home-wine book, read).
//   - Range: 10 to 14 % vol, pH 2.8 to 3.5; beyond it the error is a
//     [*units.RangeError]: no published table covers drinks below 10 % vol, and none is
//     made up here. Keep such a drink cold, pasteurise it, or filter it sterile.
//   - Units: potassium sorbate in mg/L.
func SorbateByStrength(ph float64, strength units.StrengthByVolume) (evidence.Figure[units.MassConcentration], error) {
	const fn, source = "finish.SorbateByStrength", "potassium sorbate table; no published table covers this strength"
	a := strength.In(units.PercentVolume)
	if err := limit.Check(fn, "strength", a, "% vol", 10, 14, source); err != nil {
		return evidence.Figure[units.MassConcentration]{}, err
	}
	if err := limit.Check(fn, "pH", ph, "", 2.8, 3.5, "potassium sorbate table, below pH 3.5"); err != nil {
		return evidence.Figure[units.MassConcentration]{}, err
	}
	table := [...]float64{200, 170, 130, 100, 70}
	i, u := cell(a-10, len(table))
	n := (1-u)*table[i] + u*table[i+1]
	return evidence.Figure[units.MassConcentration]{
		Value: amount.MgPerL(n), Low: amount.MgPerL(n * 165 / 200), High: amount.MgPerL(n * 270 / 200),
		Evidence: evidence.Evidence{Source: "How to add potassium sorbate; spread: a home-wine book", Grade: evidence.Read},
	}, nil
}

// SorbateDose is a dose of potassium sorbate.
type SorbateDose struct {
	Mass          units.Mass              // of potassium sorbate
	SorbicAcid    units.MassConcentration // in the drink
	Undissociated units.MassConcentration // the part of it that acts, at this pH
	Limits        []law.Limit             // of the law asked
	Passed        []law.Limit             // those that the sorbic acid is above
	Cautions      caution.List
}

// SorbateFor returns the dose that brings so much potassium sorbate to a volume.
//
//   - Source: [SorbicAcidShare], [Undissociated]; solubility of sorbic acid 1.6 g/L at
//     20 °C (Dharmadhikari: Sorbic acid, read).
//   - Range: sorbic acid up to its solubility; beyond it the error is a
//     [*units.RangeError].
func SorbateFor(sorbate units.MassConcentration, ph float64, v units.Volume, j law.Jurisdiction) (SorbateDose, error) {
	const fn = "finish.SorbateFor"
	part, err := Undissociated(ph)
	if err != nil {
		return SorbateDose{}, limit.Named(fn, err)
	}
	acid := sorbate.In(units.MilligramPerLitre) * SorbicAcidShare().In(units.Fraction)
	if err := limit.Check(fn, "sorbic acid", acid, "mg/L", 0, 1600, "solubility at 20 °C, Dharmadhikari: Sorbic acid"); err != nil {
		return SorbateDose{}, err
	}
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, amount.MostVolume, "a volume of liquid"); err != nil {
		return SorbateDose{}, err
	}
	inDrink := amount.MgPerL(acid)
	limits, passed, said, err := limited(fn, j, law.SorbicAcid, "dose", inDrink)
	if err != nil {
		return SorbateDose{}, err
	}
	return SorbateDose{
		Mass:       units.Milligram.Of(checked.Number(sorbate.In(units.MilligramPerLitre) * litres)),
		SorbicAcid: inDrink, Undissociated: amount.MgPerL(acid * part.In(units.Fraction)),
		Limits:   limits,
		Passed:   passed,
		Cautions: caution.List{SorbateCaution, otherDrinks, dissolveFirst}.With(said...),
	}, nil
}

const dissolveFirst caution.Caution = "dissolve_first: Dissolve it in water first: acid drink turns a strong solution into crystals of sorbic acid."
