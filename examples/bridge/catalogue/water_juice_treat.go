package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

// A treated is a drink after a treatment.
type treated struct {
	dose, acidity units.MassConcentration
	ph            float64
}

// after is a drink as its maker measures it.
func after(d must.Drink, dose units.MassConcentration, by water.Titration) (treated, error) {
	ta, err := d.Acidity(by)
	return treated{dose, ta, d.PH()}, err
}

// juiceTreatments are what is done to a juice, a must or a wine, and what follows.
func juiceTreatments() []Function {
	const source = juiceSource + "; " + ethanolSource
	dose := func(t treated) units.MassConcentration { return t.dose }
	phAfter := numberFrom(func(t treated) float64 { return t.ph }, "ph_after", "", "pH after it")
	acidityAfter := from(func(t treated) units.MassConcentration { return t.acidity }, "acidity_after", units.GramPerLitre, "titratable acidity after it")
	return []Function{
		heavy(entry("juice_acid_to_ph", "Pure acid that brings a drink of measured pH and titratable acidity to a lower pH, and the acidity then", source,
			of3(takesJuice(), takesAcid(), takesNumber("target_ph", "", "pH wanted", 2, 6, 3.3), func(j juice, a water.Acid, ph float64) (treated, error) {
				t, err := j.WithAcid(a, must.ToPH(ph))
				if err != nil {
					return treated{}, err
				}
				return after(t.After, t.PerLitre, j.by)
			}),
			from(dose, "dose", units.GramPerLitre, "the pure acid"), acidityAfter)),
		heavy(entry("juice_base_to_acidity",
			"Carbonate or other base that brings a drink of measured pH and titratable acidity to a lower acidity, and the pH then, before anything settles", source,
			of3(takesJuice(), takesBase(), takes("target_acidity", units.GramPerLitre, "titratable acidity wanted", 0, 50, 6),
				func(j juice, base material.Material, c units.MassConcentration) (treated, error) {
					t, err := j.WithSalt(base, must.ToAcidity(c, j.by))
					return treated{dose: t.PerLitre, ph: t.After.PH()}, err
				}),
			from(dose, "dose", units.GramPerLitre, "the base"), phAfter)),
		heavy(entry("malolactic", "pH and titratable acidity after bacteria have turned malic acid into lactic acid", "balance of atoms and charge; "+juiceSource,
			of2(takesJuice(), takes("share", units.Percent, "of the malic acid that they turn", 0, 100, 100).or(100), func(j juice, s units.Share) (treated, error) {
				d, err := j.Malolactic(s)
				if err != nil {
					return treated{}, err
				}
				return after(d, units.MassConcentration{}, j.by)
			}),
			phAfter, acidityAfter)),
	}
}
