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

// A juiceMix is a blend of two drinks.
type juiceMix struct {
	share   units.Share // of the second
	acidity units.MassConcentration
}

// takesBlended is a drink and another, by the same convention and at the same temperature.
func takesBlended() arg[pair[juice, must.Drink]] {
	return of4(takesMeasured(), takesNumber("other_ph", "", "pH of the other drink", 2, 6, 3.8),
		takes("other_acidity", units.GramPerLitre, "its titratable acidity, by the same convention; its acids in the same parts", 0, 50, 4.5),
		takes("other_strength", units.PercentVolume, "its strength", 0, 16, 0).or(0),
		func(m measured, ph float64, c units.MassConcentration, s units.StrengthByVolume) (pair[juice, must.Drink], error) {
			first, err := m.drink()
			if err != nil {
				return pair[juice, must.Drink]{}, err
			}
			m.PH, m.Acidity, m.Strength = ph, c, s
			second, err := m.drink()
			return pair[juice, must.Drink]{juice{first, m.Titration}, second}, err
		})
}

// juiceTreatments are what is done to a juice, a must or a wine, and what follows.
func juiceTreatments() []*Function {
	const source = juiceSource + "; " + ethanolSource
	dose := func(t treated) units.MassConcentration { return t.dose }
	phAfter := numberFrom(func(t treated) float64 { return t.ph }, "ph_after", "", "pH after it")
	acidityAfter := from(func(t treated) units.MassConcentration { return t.acidity }, "acidity_after", units.GramPerLitre, "titratable acidity after it")
	return []*Function{
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
		heavy(entry("juice_blend_to_ph", "Share of another drink with the same acids that brings a drink of measured pH and titratable "+
			"acidity to a pH between the two, and the acidity then",
			"electroneutrality and each ion by volume; "+source,
			of2(takesBlended(), takesNumber("target_ph", "", "pH wanted, between the two", 2, 6, 3.5), func(b pair[juice, must.Drink], ph float64) (juiceMix, error) {
				t, err := b.a.WithDrink(b.b, must.ToPH(ph))
				if err != nil {
					return juiceMix{}, err
				}
				d, err := after(t.After, units.MassConcentration{}, b.a.by)
				return juiceMix{t.Share, d.acidity}, err
			}),
			from(func(m juiceMix) units.Share { return m.share }, "share", units.Percent, "of the other drink in the blend, by volume"),
			from(func(m juiceMix) units.MassConcentration { return m.acidity }, "acidity_after", units.GramPerLitre, "titratable acidity of the blend"))),
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
