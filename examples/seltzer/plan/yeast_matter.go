package plan

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water/must"
)

// vitaminMatter is how much yeast matter is weighed for its vitamins: what [ferment.Tank.OtherNeeds] takes to
// bring them (common practice, no source). How much of them it holds could not be read.
const vitaminMatter = 50 // mg/L

// hasVitamins reports whether the wash is of a juice or of malt, which bring vitamins; how much is not known.
func (m *maker) hasVitamins() bool {
	return m.brings.some && m.brings.from != must.FromHoney && m.fruit.name == ""
}

// yeastMatter is the dose of yeast matter, such as autolysed yeast, for its vitamins, where a source of it is
// listed and the feed by the order of the list has none, or too little. Its nitrogen counts against the
// need. The sources that meet the rest are returned too.
func (m *maker) yeastMatter(feed nutrient.Feed, v units.Volume, j law.Jurisdiction, sources []nutrient.Offer) (nutrient.Feed, []nutrient.Offer, error) {
	amino := func(s material.Material) units.Share { return s.Composition().AminoNitrogen }
	fed := 0.0 // mg/L
	for _, d := range feed.Doses {
		if !amino(d.Material).IsZero() {
			fed += d.Mass.In(units.Milligram) / v.In(units.Litre)
		}
	}
	if m.hasVitamins() || fed >= vitaminMatter {
		return nutrient.Feed{}, sources, nil
	}
	for i, o := range sources {
		if amino(o.Material).IsZero() {
			continue
		}
		rest := append(append([]nutrient.Offer(nil), sources[:i]...), sources[i+1:]...)
		its := o.Material.Composition().Nitrogen().In(units.Fraction)
		small, err := m.fedInOrder(units.MilligramPerLitre.Of(checked.Number(vitaminMatter*its)), v, j, []nutrient.Offer{o})
		return small, rest, err
	}
	return nutrient.Feed{}, sources, nil
}

// besides is the need that a feed leaves.
func besides(need units.MassConcentration, f nutrient.Feed) units.MassConcentration {
	return units.MilligramPerLitre.Of(checked.Number(max(0, need.Minus(f.Supply.Nitrogen()).In(units.MilligramPerLitre))))
}
