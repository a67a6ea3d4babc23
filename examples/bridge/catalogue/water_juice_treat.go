package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

// juiceTreatments are what is done to a juice, a must or a wine, and what follows.
func juiceTreatments() []Function {
	names, baseOf := bases()
	return []Function{
		{
			Name:    "juice_acid_to_ph",
			Meaning: "Pure acid that brings a drink of measured pH and titratable acidity to a lower pH, and the acidity then",
			Source:  juiceSource + "; " + ethanolSource,
			Inputs:  append(readingInputs(), acidChoice(), number("target_ph", "", "pH wanted", 2, 6, 3.3)),
			Outputs: []Output{out("dose", units.GramPerLitre, "the pure acid"), out("acidity_after", units.GramPerLitre, "titratable acidity after it")},
			call: func(in, out []float64) error {
				d, err := readingOf(in)
				if err != nil {
					return err
				}
				t, err := d.WithAcid(water.Acid(in[readingInputCount]), must.ToPH(in[readingInputCount+1]))
				if err != nil {
					return err
				}
				ta, err := t.After.Acidity(conventions[int(in[2])])
				out[0], out[1] = t.PerLitre.In(units.GramPerLitre), ta.In(units.GramPerLitre)
				return err
			},
			heavy: true,
		},
		{
			Name:    "juice_base_to_acidity",
			Meaning: "Carbonate or other base that brings a drink of measured pH and titratable acidity to a lower acidity, and the pH then, before anything settles",
			Source:  juiceSource + "; " + ethanolSource,
			Inputs:  append(readingInputs(), choice("base", "the base, as weighed", names...), in("target_acidity", units.GramPerLitre, "titratable acidity wanted", 0, 50, 6)),
			Outputs: []Output{out("dose", units.GramPerLitre, "the base"), pure("ph_after", "", "pH after it")},
			call: func(in, out []float64) error {
				d, err := readingOf(in)
				if err != nil {
					return err
				}
				t, err := d.WithSalt(baseOf[int(in[readingInputCount])], must.ToAcidity(as(units.GramPerLitre, in[readingInputCount+1]), conventions[int(in[2])]))
				out[0], out[1] = t.PerLitre.In(units.GramPerLitre), t.After.PH()
				return err
			},
			heavy: true,
		},
		{
			Name:    "malolactic",
			Meaning: "pH and titratable acidity after bacteria have turned malic acid into lactic acid",
			Source:  "balance of atoms and charge; " + juiceSource,
			Inputs:  append(readingInputs(), in("share", units.Percent, "of the malic acid that they turn", 0, 100, 100).or(100)),
			Outputs: []Output{pure("ph_after", "", "pH after it"), out("acidity_after", units.GramPerLitre, "titratable acidity after it")},
			call: func(in, out []float64) error {
				d, err := readingOf(in)
				if err != nil {
					return err
				}
				if d, err = d.Malolactic(as(units.Percent, in[readingInputCount])); err != nil {
					return err
				}
				ta, err := d.Acidity(conventions[int(in[2])])
				out[0], out[1] = d.PH(), ta.In(units.GramPerLitre)
				return err
			},
			heavy: true,
		},
	}
}
