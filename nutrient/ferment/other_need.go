package ferment

import (
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// OtherNeed is one thing beside nitrogen that yeast grows on: what it wants, and what the
// liquid holds of it.
type OtherNeed struct {
	Name   string // "phosphorus", "potassium", "magnesium", "zinc", "thiamine", "other vitamins"
	Need   evidence.Figure[units.MassConcentration]
	Have   units.MassConcentration
	Unsure bool   // vitamins of yeast matter, which is not known by the milligram
	Remedy string // what of the trade brings it
}

// Short reports whether less is there than the need.
func (n OtherNeed) Short() bool { return !n.Unsure && n.Have.Compare(n.Need.Value) < 0 }

// OtherNeeds compares what yeast needs beside nitrogen with what water, feed and buffer
// bring. Sugar itself brings none of it.
//
//   - Source: phosphorus of the dry yeast that grows, [UsualMetabolism]; potassium 300 mg/L to
//     finish (Kudo, Vagnoli & Bisson, Am. J. Enol. Vitic. 1998, recalled from memory); magnesium
//     50 to 90 mg/L in malt wort (citing Gibson, J. Inst. Brew. 2011, read), which is more than
//     yeast takes up, 0.15 % of its dry matter (recalled from memory): the value is 5 mg/L,
//     common practice, no source; zinc 0.15 mg/L (Nobis et al., Eur. Food Res. Technol.
//     2022, read), best 0.48 to 1.07 (De Nicola & Walker 2011, read), too little below 0.1 (Rees &
//     Stewart, J. Inst. Brew. 104 (1998) 221, read); vitamins of a full synthetic medium, a liter:
//     thiamine 4 mg, pantothenate 0.5, pyridoxine 1, inositol 10, biotin 0.02 (Olson & Johnson, J.
//     Bacteriol. 1949, read); for thiamine the value is 0.5 mg/L, common practice, no source.
//   - Range: as [Tank.At].
//   - Uncertainty: a factor of two; strains differ, and most make part of their vitamins.
func (f Tank) OtherNeeds() ([]OtherNeed, error) {
	c, err := f.checked("ferment.Tank.OtherNeeds")
	if err != nil {
		return nil, err
	}
	yeast := c.balance(c.Metabolism, allUsed).DryYeast.In(units.Milligram) / c.litres // mg/L
	from := func(ion water.Ion, more units.MassConcentration) units.MassConcentration {
		return amount.MgPerL(c.perLitre * f.Water.Ion(ion).In(units.MilligramPerLitre)).Plus(more)
	}
	matter := 0.0 // mg/L of yeast matter
	for _, d := range f.Feed {
		if !d.Material.Composition().AminoNitrogen.IsZero() { // an autolysate, or a food with one
			matter += d.Mass.In(units.Milligram) / c.litres
		}
	}
	figure := func(v, low, high float64, source string, g evidence.Grade) evidence.Figure[units.MassConcentration] {
		return evidence.Figure[units.MassConcentration]{Value: amount.MgPerL(v), Low: amount.MgPerL(low), High: amount.MgPerL(high),
			Evidence: evidence.Evidence{Source: source, Grade: g}}
	}
	phosphorus := c.Metabolism.Phosphorus.In(units.Fraction) * yeast
	held := magnesiumOfYeast * yeast
	return []OtherNeed{
		{"phosphorus", figure(phosphorus, phosphorus/2, 2*phosphorus, "phosphorus of dry yeast", evidence.Recalled),
			amount.MgPerL(c.start.Phosphate * formula.WeightP).Plus(c.feed.Phosphorus), false, "a phosphate, such as diammonium phosphate"},
		{"potassium", figure(leastPotassium, 100, leastPotassium, "Kudo, Vagnoli & Bisson 1998", evidence.Recalled),
			amount.MgPerL(c.start.Potassium * formula.WeightK).Plus(c.feed.Potassium), false, "potassium bicarbonate"},
		{"magnesium", figure(max(held, leastMagnesium), held, 90, "", evidence.CommonPractice), from(water.Magnesium, c.feed.Magnesium), false, "Epsom salt"},
		{"zinc", figure(0.15, 0.1, 1.07, "Nobis et al. 2022", evidence.Read), from(water.Zinc, c.feed.Zinc), false, "zinc sulfate, as a stock solution"},
		{"thiamine", figure(0.5, 0.1, 4, "", evidence.CommonPractice), c.feed.Thiamine, c.feed.Thiamine.IsZero() && matter >= enoughMatter,
			"thiamine hydrochloride, or autolysed yeast"},
		{"other vitamins", figure(11.5, 0.5, 11.5, "Olson & Johnson 1949", evidence.Read), units.MassConcentration{}, matter >= enoughMatter,
			"autolysed yeast, or a complete yeast food"},
	}, nil
}

const (
	magnesiumOfYeast = 0.0015 // of dry matter, as of autolysed yeast
	leastMagnesium   = 5      // mg/L
	enoughMatter     = 50     // mg/L of yeast matter from which it is taken to bring vitamins (common practice, no source)
)
