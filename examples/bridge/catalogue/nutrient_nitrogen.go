package catalogue

import (
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// legalLimits are the choices of takesLimit.
var legalLimits = allLimits(law.US, law.EU)

func allLimits(laws ...law.Jurisdiction) (all []law.Limit) {
	for _, j := range laws {
		known, err := j.Limits(law.Unlisted)
		if err != nil {
			panic(err)
		}
		all = append(all, known...)
	}
	return all
}

func takesSource(name, meaning string, of []material.Material) arg[material.Material] {
	return picks(name, meaning, of).orOption("diammonium phosphate")
}

// takesLimit is one by its law, addition and drink.
func takesLimit() arg[law.Limit] {
	var names []string
	for _, l := range legalLimits {
		name := l.Jurisdiction.String() + " "
		for i, s := range l.Covers {
			if i > 0 {
				name += " or "
			}
			name += s.String()
		}
		names = append(names, name+" / "+l.Scope.String())
	}
	return picksBy("limit", "law, addition and drink", legalLimits, names...)
}

// nutrientNitrogen are doses of nitrogen, and limits in law.
func nutrientNitrogen() []*Function {
	return []*Function{
		entry("nitrogen_need_must", "assimilable nitrogen that a grape must wants, by its sugar", "Bisson & Butzke 2000 (recalled from memory)",
			of1(takes("extract", units.DegreePlato, "of the must, °Bx", 21, 27, 23), func(must units.Extract) (nutrient.Need, error) {
				return nutrient.NeedOfMust("of a must by its sugar", must)
			}),
			from(func(n nutrient.Need) units.MassConcentration { return n.Nitrogen.Value }, "need", units.MilligramPerLitre, "nitrogen, as N")),
		heavy(entry("nutrient_dose", "dose of a nutrient for a need of nitrogen, at most what a law lets into wine",
			"stoichiometry; 27 CFR 24.246 (2015), Reg. (EU) 2019/934 (recalled from memory): check the law in force",
			of4(takes("need", units.MilligramPerLitre, "nitrogen wanted, as N", 0, 1000, 67), takes("volume", units.Litre, "of the wash", 0.001, 1e9, 60),
				takesSource("source", "what feeds the yeast", nutrient.Sources()), picksBy("law", "whose limit", upTo(law.EU), "US", "EU").orOption("US"),
				func(need units.MassConcentration, v units.Volume, m material.Material, j law.Jurisdiction) (nutrient.Feed, error) {
					return nutrient.FeedInOrder(need, v, j, nutrient.Offer{Material: m})
				}),
			from(func(f nutrient.Feed) (m units.Mass) {
				for _, d := range f.Doses {
					m = d.Mass
				}
				return m
			}, "mass", units.Gram, "nutrient to weigh"),
			from(func(f nutrient.Feed) units.MassConcentration { return f.Shortfall }, "open", units.MilligramPerLitre, "nitrogen that the limit leaves open"))),
		entry("limit_in_law", "most of an addition that a law lets into a drink; check the law in force",
			"27 CFR 24.246, 24.247 and 4.22 (2015; growth factors 2022, recalled from memory); Reg. (EU) 2019/934 and (EC) 1333/2008 (recalled from "+
				"memory), 203/2012",
			takesLimit(), from(law.Limit.Concentration, "most", units.GramPerLitre, "the limit")),
	}
}
