package finish

import (
	"cmp"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
)

// SulfiteCaution goes with every dose of sulfite.
const SulfiteCaution caution.Caution = "sulfite: Sulfites harm people with asthma or sulfite allergy and must be declared from 10 mg/L. The gas over " +
	"the powder burns eyes and lungs: open it in moving air. " + checkTheLaw

// MolecularShareOIV returns the share of free SO2 that is molecular, the form that acts
// on microbes, by the dissociation constant in water and ethanol at a temperature. Values
// between the printed ones are interpolated in both directions.
//
//   - Source: OIV-MA-AS323-04C, Sulfur dioxide (molecular method), table 1. The method's
//     correction for ionic strength is left out, as its constants were not read; it would
//     lower pK by less than 0.1 and the share by less than a fifth.
//   - Range: 0 to 15 % vol, 20 to 40 °C (the table's 20 % vol row was not read), pH 2.5 to
//     5; beyond it the error is a [*units.RangeError]. No published table covers drinks in
//     the cold.
//   - Units: pH as measured.
//   - Uncertainty: the table's step from 20 to 25 °C (0.2) is far larger than the
//     textbooks'.
func MolecularShareOIV(ph float64, strength units.StrengthByVolume, t units.Temperature) (units.Share, error) {
	if err := limit.Check("finish.MolecularShareOIV", "pH", ph, "", 2.5, 5, oivSulfite); err != nil {
		return units.Share{}, err
	}
	pK, err := sulfurDioxidePK("finish.MolecularShareOIV", strength, t)
	if err != nil {
		return units.Share{}, err
	}
	return amount.Share(undissociated(ph, pK)), nil
}

const oivSulfite = "OIV-MA-AS323-04C table 1"

// SulfurDioxidePK returns the dissociation constant of SO2 in water and ethanol as pK,
// interpolated between the printed values.
//
//   - Source: OIV-MA-AS323-04C, Sulfur dioxide (molecular method), table 1.
//   - Range: 0 to 15 % vol, 20 to 40 °C; beyond it the error is a [*units.RangeError].
//   - Uncertainty: see [MolecularShareOIV].
func SulfurDioxidePK(strength units.StrengthByVolume, t units.Temperature) (float64, error) {
	return sulfurDioxidePK("finish.SulfurDioxidePK", strength, t)
}

func sulfurDioxidePK(fn string, strength units.StrengthByVolume, t units.Temperature) (float64, error) {
	a, c := strength.In(units.PercentVolume), t.In(units.Celsius)
	if err := limit.Check(fn, "strength", a, "% vol", 0, 15, oivSulfite); err != nil {
		return 0, err
	}
	if err := limit.Check(fn, "temperature", c, "°C", 20, 40, oivSulfite); err != nil {
		return 0, err
	}
	i, u := cell(a/5, len(sulfitePK))
	k, v := cell((c-20)/5, len(sulfitePK[0]))
	return (1-u)*((1-v)*sulfitePK[i][k]+v*sulfitePK[i][k+1]) +
		u*((1-v)*sulfitePK[i+1][k]+v*sulfitePK[i+1][k+1]), nil
}

// sulfitePK is pKT by strength (0, 5, 10, 15 % vol) and temperature (20 to 40 °C in
// steps of 5).
var sulfitePK = [4][5]float64{
	{1.798, 2.000, 2.219, 2.334, 2.493},
	{1.897, 2.098, 2.299, 2.397, 2.527},
	{1.997, 2.198, 2.394, 2.488, 2.606},
	{2.099, 2.301, 2.503, 2.607, 2.728},
}

// cell returns the place of x in a table of n values in steps of 1, and how far it is
// into the step.
func cell(x float64, n int) (int, float64) {
	i := min(int(x), n-2)
	return i, x - float64(i)
}

// undissociated is the share of a weak acid that holds its proton.
func undissociated(ph, pK float64) float64 { return 1 / (1 + math.Pow(10, ph-pK)) }

// MolecularSharePractice returns the share of free SO2 that is molecular by the
// constant of wine practice, pK 1.81, whatever the strength. It gives less than the
// table of the OIV and so a larger dose.
//
//   - Source: pK 1.81 (wine practice, 20 °C, water; common practice, no source);
//     1/(1 + 10^(pH − pK)).
//   - Range: pH 2.5 to 5; beyond it the error is a [*units.RangeError].
func MolecularSharePractice(ph float64) (units.Share, error) {
	if err := limit.Check("finish.MolecularSharePractice", "pH", ph, "", 2.5, 5, "pK 1.81 of wine practice"); err != nil {
		return units.Share{}, err
	}
	return amount.Share(undissociated(ph, 1.81)), nil
}

// MolecularTarget returns the molecular SO2 that wine makers aim at: 0.8 mg/L, 0.5 for
// red and up to 1.5 for sweet wine.
//
//   - Source: common practice, no source.
func MolecularTarget() evidence.Figure[units.MassConcentration] {
	return evidence.Figure[units.MassConcentration]{Value: units.MilligramPerLitre.Of(0.8), Low: units.MilligramPerLitre.Of(0.5),
		High: units.MilligramPerLitre.Of(1.5), Evidence: evidence.Evidence{}}
}

// FreeSulfite returns the free SO2 that holds so much molecular SO2.
//
//   - Source: molecular SO2 over its share.
//   - Range: molecular 0 to 5 mg/L, a share above 0; beyond it the error is a
//     [*units.RangeError].
func FreeSulfite(molecular units.MassConcentration, share units.Share) (units.MassConcentration, error) {
	const fn, source = "finish.FreeSulfite", "wine practice"
	m, s := molecular.In(units.MilligramPerLitre), share.In(units.Fraction)
	if err := limit.Check(fn, "molecular SO2", m, "mg/L", 0, 5, source); err != nil {
		return units.MassConcentration{}, err
	}
	if err := limit.Check(fn, "molecular share", share.In(units.Percent), "%", 0.01, 100, source); err != nil {
		return units.MassConcentration{}, err
	}
	return amount.MgPerL(m / s), nil
}

// SulfiteDose is a dose of sulfite.
type SulfiteDose struct {
	Mass     units.Mass
	Total    units.MassConcentration // SO2 in the drink after it, as far as it is known
	Limits   []law.Limit             // of the law asked; each names the drink it holds for
	Passed   []law.Limit             // those that the total is above
	Cautions caution.List
}

// SulfiteFor returns the salt that brings the free SO2 from what is there to what is
// wanted. Part of what is added binds to aldehydes and sugar: measure the free SO2
// again after a day.
//
//   - Source: SO2 in the fresh salt by stoichiometry, 57.6 % of potassium metabisulfite; old
//     salt brings less: count on half.
//   - Range: a salt that brings SO2, otherwise the error is a [*units.NameError]; each concentration 0 to 500 mg/L, wanted not below free; volume up to 1e9
//     L; beyond it the error is a [*units.RangeError].
//   - Units: SO2 in mg/L; total is what the drink holds before, with the bound part.
func SulfiteFor(salt material.Material, wanted, free, total units.MassConcentration, v units.Volume, j law.Jurisdiction) (SulfiteDose, error) {
	const fn, source = "finish.SulfiteFor", "wine practice"
	brings := salt.Composition().SulfurDioxide.In(units.Fraction)
	if brings == 0 {
		return SulfiteDose{}, &units.NameError{Func: fn, What: "sulfite", Name: salt.Name(),
			Choices: []string{"potassium metabisulfite", "sodium metabisulfite", "sodium bisulfite", "sodium sulfite anhydrous"}}
	}
	w, f, tot := wanted.In(units.MilligramPerLitre), free.In(units.MilligramPerLitre), total.In(units.MilligramPerLitre)
	if err := cmp.Or(
		limit.Check(fn, "free SO2", f, "mg/L", 0, 500, source),
		limit.Check(fn, "wanted SO2", w, "mg/L", f, 500, source),
		limit.Check(fn, "total SO2", tot, "mg/L", f, 500, source),
	); err != nil {
		return SulfiteDose{}, err
	}
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, amount.MostVolume, "a volume of liquid"); err != nil {
		return SulfiteDose{}, err
	}
	after := amount.MgPerL(tot + w - f)
	limits, passed, said, err := limited(fn, j, law.SulfurDioxide, "total", after)
	if err != nil {
		return SulfiteDose{}, err
	}
	return SulfiteDose{
		Mass:     units.Milligram.Of(checked.Number((w - f) * litres / brings)),
		Total:    after,
		Limits:   limits,
		Passed:   passed,
		Cautions: caution.List{SulfiteCaution, otherDrinks}.With(said...),
	}, nil
}
