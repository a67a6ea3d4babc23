package plan

import (
	"fmt"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// stages is how many additions of nutrient there are: with the yeast, at a sixth
// and at a third of the sugar.
const stages = 3

// ofSugarWash stands in what a source says of the pH of plain sugar, and of nothing else.
const ofSugarWash = "the pH of a sugar wash"

// openByScale is the part of the need from which on it is said that the scale leaves it open (common practice, no source).
const openByScale = 0.05

// needOpen is the caution of the feed before it is weighed.
const needOpen = "need_left_open"

// feed is the nutrient, in stages by sugar used.
func (m *maker) feed(say *notes) (n NutrientPlan, err error) {
	if n, err = m.wants(); err != nil {
		return n, err
	}
	var whose law.Jurisdiction
	if err := whose.UnmarshalText([]byte(m.req.Nutrient.Law)); err != nil {
		return n, named("nutrient.law", m.req.Nutrient.Law, err)
	}
	if err := m.req.Nutrient.ownNamed(); err != nil {
		return n, err
	}
	sources, others, err := m.sources()
	if err != nil {
		return n, err
	}
	if len(sources)+len(others) == 0 && !m.brings.some {
		return n, &RequestError{Field: "nutrient.sources", Value: "missing", Allowed: `at least one, such as "diammonium phosphate"`}
	}
	if len(sources)+len(others) == 0 { // it brings nitrogen of its own
		return n, nil
	}
	cold := n.Volume
	feed, err := m.fedInOrder(n.lacking(), cold, whose, sources)
	if err != nil {
		return n, err
	}
	matter, rest, err := m.yeastMatter(feed, cold, whose, sources)
	if err != nil {
		return n, err
	}
	if len(matter.Doses) > 0 {
		if feed, err = m.fedInOrder(besides(n.lacking(), matter), cold, whose, rest); err != nil {
			return n, err
		}
	}
	schedule, err := nutrient.InStages(stages, m.req.Scales.Small, feed.Doses...)
	if err != nil {
		return n, err
	}
	if err := m.weighFed(&n, feed.Doses, schedule.Totals, matter.Doses, say); err != nil {
		return n, err
	}
	brought, err := nutrient.SupplyOf(cold, n.fed...)
	if err != nil {
		return n, err
	}
	n.Brought = brought.Nitrogen()
	open := n.lacking().In(units.MilligramPerLitre) - n.Brought.In(units.MilligramPerLitre)
	if !feed.Shortfall.IsZero() || open > openByScale*n.Need.In(units.MilligramPerLitre) {
		n.Shortfall = units.MilligramPerLitre.Of(checked.Number(max(0, open)))
	}
	for _, s := range schedule.Stages {
		stage := NutrientStage{Used: s.Used}
		for i, w := range s.Weigh {
			stage.Doses = append(stage.Doses, Weight{What: feed.Doses[i].Material.Name(), For: "fermenter", Mass: w, Asked: w.Quantity()})
		}
		n.Stages = append(n.Stages, stage)
	}
	n.Limits = texts(append(matter.Limits, feed.Limits...))
	for _, c := range feed.Cautions.With(matter.Cautions...).With(schedule.Cautions...) {
		if c.Code() == needOpen || m.brings.some && strings.Contains(c.Text(), ofSugarWash) {
			continue
		}
		say.caution(c.Text())
	}
	switch {
	case !feed.Shortfall.IsZero():
		say.caution(fmt.Sprintf("The sources at hand leave %.0f mg/L of the nitrogen need open within the limits, as the scale weighs them: "+
			"add another source, or expect a slower ferment.", n.Shortfall.In(units.MilligramPerLitre)))
	case !n.Shortfall.IsZero():
		say.caution(fmt.Sprintf("A scale that shows %s leaves %.0f mg/L of the nitrogen need open, as a dose is weighed down: weigh the nutrient "+
			"on a finer one, or expect a slower ferment.", m.req.Scales.Small.String(), n.Shortfall.In(units.MilligramPerLitre)))
	}
	m.ownLimits(cold, n.fed, say)
	err = m.supplement(&n, others, whose, say)
	return n, err
}

// sources are the materials at hand that bring nitrogen, and the others.
func (m *maker) sources() (nitrogen []nutrient.Offer, others []material.Material, err error) {
	for _, text := range m.req.Nutrient.Sources {
		s, err := m.source(text)
		if err != nil {
			return nil, nil, err
		}
		if s.Composition().Nitrogen().IsZero() {
			others = append(others, s)
		} else {
			nitrogen = append(nitrogen, nutrient.Offer{Material: s})
		}
	}
	return nitrogen, others, nil
}

// weighFed weighs what goes in by the stages, so much of each in all of them, and the yeast matter that goes in with the yeast.
func (m *maker) weighFed(n *NutrientPlan, staged []material.Dose, totals []units.ExactMass, matter []material.Dose, say *notes) error {
	n.fed, n.staged = make([]material.Dose, len(staged)), len(staged)
	for i, d := range staged {
		n.fed[i] = d.Material.Dose(totals[i].Quantity())
		say.weigh(Weight{What: d.Material.Name(), For: "fermenter, in stages", Mass: totals[i], Asked: d.Mass})
	}
	for _, d := range matter {
		mass, err := d.Mass.Round(m.req.Scales.Small, units.Up)
		if err != nil {
			return err
		}
		w := Weight{What: d.Material.Name(), For: "fermenter, with the yeast", Mass: mass, Asked: d.Mass}
		n.fed = append(n.fed, d.Material.Dose(mass.Quantity()))
		n.Supplements = append(n.Supplements, w)
		say.weigh(w)
		say.caution(fmt.Sprintf("%s, %s, is there for its vitamins. How much of them it holds is not known here: its maker's dose comes first.",
			w.What, mass.Quantity().Text(units.Gram, 1)))
	}
	return nil
}

// nitrogen is what yeast can take up that the wash has of its own, and what the nutrient brings to it.
func (m *maker) nitrogen(*notes) (own, brought units.MassConcentration, err error) {
	v, err := m.brewed.wash.Volume(at20)
	if err != nil {
		return own, brought, err
	}
	in := func(n units.Mass) units.MassConcentration {
		return units.GramPerLitre.Of(checked.Number(n.In(units.Gram) / v.In(units.Litre)))
	}
	unfed := m.brewed.unfed.Amounts()
	return in(unfed.YeastNitrogen()), in(m.brewed.fed), nil
}

// wants is the nitrogen that the yeast wants, and what of it the must brings.
func (m *maker) wants() (n NutrientPlan, err error) {
	of := m.req.Nutrient.Demand
	if s := m.req.Yeast.Strain; of == "" && s != nil {
		of = s.Demand
	}
	if of == "" {
		return n, &RequestError{Field: "nutrient.demand", Value: "missing", Allowed: `"low", "medium" or "high", here or in the sheet of yeast.strain`}
	}
	var demand nutrient.Demand
	if err := demand.UnmarshalText([]byte(of)); err != nil {
		return n, named("nutrient.demand", of, err)
	}
	n.Volume = m.batch.wash.VolumeAt20()
	n.Sugar = units.GramPerLitre.Of(checked.Number(1000 * kg(m.batch.wash.Fermentable()) / n.Volume.In(units.Litre)))
	need, err := nutrient.NeedBySugar(n.Sugar, demand)
	if err != nil {
		return n, err
	}
	n.Need, n.Low, n.High, n.Method = need.Nitrogen.Value, need.Nitrogen.Low, need.Nitrogen.High, need.Method
	if m.plan.Must != nil {
		n.FromMust = m.plan.Must.Nitrogen
	}
	return n, nil
}

// lacking is the nitrogen that the nutrient is to bring.
func (n NutrientPlan) lacking() units.MassConcentration {
	return units.MilligramPerLitre.Of(checked.Number(max(0, n.Need.Minus(n.FromMust).In(units.MilligramPerLitre))))
}
