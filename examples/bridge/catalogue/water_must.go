package catalogue

import (
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

const usualSource = "usual compositions of package must, each figure with its source: Kumar et al. 2021, Mattick & Moyer, Zeiner et al. 2010; Kliewer et al. 1967; White et al. 1962; Holzmann & Piendl 1977"

// mustFunctions are what a juice, honey or malt usually brings, an acid by taste, and tartar in the cold.
func mustFunctions() []Function {
	return []Function{
		{
			Name:    "must_usual",
			Meaning: "pH, acidity, potassium and nitrogen that a juice, honey or malt usually gives a wash in distilled water, with the band of the pH: measure your own",
			Source:  usualSource,
			Inputs: []Input{
				choice("origin", "what the wash is made of", must.FromApple.String(), must.FromGrape.String(), must.FromHoney.String(), must.FromMalt.String()),
				in("extract", units.GramPerLitre, "solids of it in a litre of wash", 1, 900, 125),
			},
			Outputs: []Output{
				pure("ph", "", "the pH"), pure("band", "", "to either side of it"), out("acidity", units.GramPerLitre, "titratable acidity to pH 8.2 as tartaric acid"),
				out("potassium", units.MilligramPerLitre, "potassium"), out("nitrogen", units.MilligramPerLitre, "nitrogen that yeast can take up, as N"),
			},
			call: func(in, out []float64) error {
				distilled, err := water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{})
				if err != nil {
					return err
				}
				b, err := must.Origin(in[0]).Brings(as(units.GramPerLitre, in[1]), distilled, must.Reading{})
				if err != nil {
					return err
				}
				ta, err := b.Drink.Acidity(water.TitrationUS)
				out[0], out[1], out[2] = b.Drink.PH(), b.Band, ta.In(units.GramPerLitre)
				out[3], out[4] = b.Drink.Water().Ion(water.Potassium).In(units.MilligramPerLitre), b.Ammonium.Plus(b.Amino).In(units.MilligramPerLitre)
				return err
			},
			heavy: true,
		},
		{
			Name:    "drink_soured",
			Meaning: "What an acid added by taste does to a finished drink of measured pH and titratable acidity: pH, acidity, the free SO2 that holds 0.8 mg/L of molecular SO2, and the part of sorbate that acts",
			Source:  juiceSource + "; " + ethanolSource + "; pK 1.81 of wine practice; pK 4.76 of sorbic acid",
			Inputs: append(readingInputs(), number("succinic_part", "", "succinic acid, in parts by mass of its acids: most of what yeast makes", 0, 100, 0).or(0),
				acidChoice(), in("dose", units.GramPerLitre, "pure acid added", 0, 20, 2)),
			Outputs: []Output{
				pure("ph_after", "", "pH after it"), out("acidity_after", units.GramPerLitre, "titratable acidity after it"),
				out("free_so2_before", units.MilligramPerLitre, "free SO2 for 0.8 mg/L of molecular, before"), out("free_so2_after", units.MilligramPerLitre, "the same, after"),
				out("sorbate_acting", units.Percent, "undissociated part of sorbic acid, after"),
			},
			call: func(in, out []float64) error {
				var acids must.AcidShares
				for k, a := range juiceAcids {
					acids = append(acids, juiceAcid(a, in[3+k]))
				}
				acids = append(acids, water.Succinate.At(as(units.GramPerLitre, in[readingInputCount])))
				d, err := must.Reading{
					PH: in[0], Acidity: as(units.GramPerLitre, in[1]), Titration: conventions[int(in[2])],
					Temperature: as(units.Celsius, in[7]), Strength: as(units.PercentVolume, in[8]),
				}.Drink(acids)
				if err != nil {
					return err
				}
				after, err := d.AddAcid(water.Acid(in[readingInputCount+1]), as(units.GramPerLitre, in[readingInputCount+2]))
				if err != nil {
					return err
				}
				ta, err := after.Acidity(conventions[int(in[2])])
				if err != nil {
					return err
				}
				out[0], out[1] = after.PH(), ta.In(units.GramPerLitre)
				for k, ph := range [...]float64{d.PH(), after.PH()} {
					share, err := finish.MolecularSharePractice(ph)
					if err != nil {
						return err
					}
					free, err := finish.FreeSulfite(units.MilligramPerLitre.Of(0.8), share)
					if err != nil {
						return err
					}
					out[2+k] = free.In(units.MilligramPerLitre)
				}
				acting, err := finish.Undissociated(after.PH())
				out[4] = acting.In(units.Percent)
				return err
			},
			heavy: true,
		},
		{
			Name:    "cream_of_tartar_settled",
			Meaning: "Cream of tartar that settles out of a wine in the cold until it is at rest with the crystals; wines stay above that for months",
			Source:  "H. W. Berg & R. M. Keefer, Am. J. Enol. Vitic. 9 (1958) 180, recalled from memory; " + equilibria,
			Inputs: []Input{
				number("ph", "", "pH of the wine", 2.5, 4.5, 3.4), in("potassium", units.MilligramPerLitre, "potassium", 0, 5000, 900),
				in("tartaric", units.GramPerLitre, "tartaric acid, free and as salts", 0, 15, 2.5), in("malic", units.GramPerLitre, "malic acid, free and as salts", 0, 15, 1.5).or(0),
				in("strength", units.PercentVolume, "strength", 0, 16, 12), in("temperature", units.Celsius, "of the cold", 0, 20, 2),
			},
			Outputs: []Output{out("settled", units.GramPerLitre, "KHC4H4O6"), pure("ph_after", "", "pH after it")},
			call: func(in, out []float64) error {
				ions := []water.Content{water.Potassium.At(as(units.MilligramPerLitre, in[1])), juiceAcid(water.TartaricAcid, in[2]), juiceAcid(water.MalicAcid, in[3])}
				t, strength := as(units.Celsius, in[5]), as(units.PercentVolume, in[4])
				p, err := water.NewProfile(t, units.CalciumCarbonate{}, ions...)
				if err == nil {
					p, err = p.WithEthanol(strength)
				}
				if err != nil {
					return err
				}
				alk, err := p.AlkalinityAt(in[0], units.AbsolutePressure{})
				if err != nil {
					return err
				}
				if p, err = water.NewProfile(t, alk, ions...); err != nil {
					return err
				}
				wine, err := must.New(p, strength)
				if err != nil {
					return err
				}
				if p, err = p.WithEthanol(strength); err != nil {
					return err
				}
				settled, err := p.CreamOfTartar()
				if err != nil {
					return err
				}
				after, err := wine.Settled(settled)
				out[0], out[1] = settled.In(units.GramPerLitre), after.PH()
				return err
			},
			heavy: true,
		},
	}
}
