package catalogue

import (
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
)

// nutrientSources are the choices of sourceInput, legalLimits those of limit_in_law.
var (
	nutrientSources = nutrient.Sources()
	legalLimits     = allLimits(law.US, law.EU)
)

func allLimits(laws ...law.Jurisdiction) (all []law.Limit) {
	for _, j := range laws {
		known, err := law.Limits(j, law.Unlisted)
		if err != nil {
			panic(err)
		}
		all = append(all, known...)
	}
	return all
}

func sourceInput() Input {
	return choice("source", "what feeds the yeast", wordsOf(nutrientSources)...).orOption("diammonium phosphate")
}

// limitName names a limit: law, addition and drink.
func limitName(l law.Limit) string {
	name := l.Jurisdiction.String() + " "
	for i, s := range l.Covers {
		if i > 0 {
			name += " or "
		}
		name += s.String()
	}
	return name + " / " + l.Scope.String()
}

// nutrientNitrogen are doses of nitrogen, and limits in law.
func nutrientNitrogen() []Function {
	var limits []string
	for _, l := range legalLimits {
		limits = append(limits, limitName(l))
	}
	return []Function{
		{
			Name:    "nitrogen_need_must",
			Meaning: "assimilable nitrogen that a grape must wants, by its sugar",
			Source:  "Bisson & Butzke 2000 (recalled from memory)",
			Inputs:  []Input{in("extract", units.DegreePlato, "of the must, °Bx", 21, 27, 23)},
			Outputs: []Output{out("need", units.MilligramPerLitre, "nitrogen, as N")},
			call: func(in, out []float64) error {
				n, err := nutrient.NeedOfMustBissonButzke(as(units.DegreePlato, in[0]))
				out[0] = n.Nitrogen.Value.In(units.MilligramPerLitre)
				return err
			},
		},
		{
			Name:    "nutrient_dose",
			heavy:   true,
			Meaning: "dose of a nutrient for a need of nitrogen, at most what a law lets into wine",
			Source:  "stoichiometry; 27 CFR 24.246 (2015), Reg. (EU) 2019/934 (recalled from memory): check the law in force",
			Inputs: []Input{
				in("need", units.MilligramPerLitre, "nitrogen wanted, as N", 0, 1000, 67),
				in("volume", units.Litre, "of the wash", 0.001, 1e9, 60),
				sourceInput(),
				choice("law", "whose limit", "US", "EU").orOption("US"),
			},
			Outputs: []Output{
				out("mass", units.Gram, "nutrient to weigh"),
				out("open", units.MilligramPerLitre, "nitrogen that the limit leaves open"),
			},
			call: func(in, out []float64) error {
				f, err := nutrient.FeedInOrder(as(units.MilligramPerLitre, in[0]), as(units.Litre, in[1]), law.Jurisdiction(in[3]), nutrient.Offer{Material: nutrientSources[int(in[2])]})
				out[0], out[1] = 0, f.Shortfall.In(units.MilligramPerLitre)
				for _, d := range f.Doses {
					out[0] = d.Mass.In(units.Gram)
				}
				return err
			},
		},
		{
			Name:    "limit_in_law",
			Meaning: "most of an addition that a law lets into a drink; check the law in force",
			Source: "27 CFR 24.246, 24.247 and 4.22 (2015; growth factors 2022, recalled from memory); Reg. (EU) 2019/934 and (EC) 1333/2008 (recalled from " +
				"memory), 203/2012",
			Inputs:  []Input{choice("limit", "law, addition and drink", limits...)},
			Outputs: []Output{out("most", units.GramPerLitre, "the limit")},
			call: func(in, out []float64) error {
				out[0] = legalLimits[int(in[0])].Concentration().In(units.GramPerLitre)
				return nil
			},
		},
	}
}
