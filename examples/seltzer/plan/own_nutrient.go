package plan

import (
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// source is a nutrient by its name: first of those whose labels the request has.
func (m *maker) source(text string) (material.Material, error) {
	for i, own := range m.req.Nutrient.Own {
		if strings.EqualFold(own.Name, text) {
			return own.source(fmt.Sprintf("nutrient.own[%d]", i))
		}
	}
	s, err := material.FindAmong(text, nutrient.Sources()...)
	return s, named("nutrient.sources", text, err)
}

// owns reports whether a material is one of those whose labels the request has.
func (n Nutrient) owns(m material.Material) bool {
	return slices.ContainsFunc(n.Own, func(o OwnNutrient) bool { return strings.EqualFold(o.Name, m.Name()) })
}

// ownNamed refuses a nutrient whose label is given but that is not among the sources: nothing would be taken of it.
func (n Nutrient) ownNamed() error {
	for i, o := range n.Own {
		if o.Name != "" && !slices.ContainsFunc(n.Sources, func(s string) bool { return strings.EqualFold(s, o.Name) }) {
			return &RequestError{Field: fmt.Sprintf("nutrient.own[%d].name", i), Value: clip(o.Name), Allowed: "a name that stands in nutrient.sources too"}
		}
	}
	return nil
}

// most is the largest dose by the label of a nutrient of one's own; nil where none is given.
func (n Nutrient) most(m material.Material) *units.MassConcentration {
	for _, o := range n.Own {
		if strings.EqualFold(o.Name, m.Name()) {
			return o.Most
		}
	}
	return nil
}

// fedInOrder meets a need from the sources in their order, within the limits of the law and of the labels of one's own.
func (m *maker) fedInOrder(need units.MassConcentration, cold units.Volume, whose law.Jurisdiction, sources []nutrient.Offer) (nutrient.Feed, error) {
	feed, err := nutrient.FeedInOrder(need, cold, whose, sources...)
	if err != nil {
		return feed, err
	}
	for i, d := range feed.Doses {
		most := m.req.Nutrient.most(d.Material)
		if most == nil {
			continue
		}
		dose := d.Material.Dose(units.Gram.Of(checked.Number(most.In(units.GramPerLitre) * cold.In(units.Litre))))
		if d.Mass.Compare(dose.Mass) <= 0 {
			continue
		}
		brings, err := nutrient.SupplyOf(cold, dose)
		if err != nil {
			return feed, err
		}
		others := slices.DeleteFunc(slices.Clone(sources), func(o nutrient.Offer) bool { return strings.EqualFold(o.Material.Name(), d.Material.Name()) })
		rest, err := m.fedInOrder(besides(need, nutrient.Feed{Supply: brings}), cold, whose, others)
		if err != nil {
			return feed, err
		}
		rest.Doses = slices.Insert(rest.Doses, min(i, len(rest.Doses)), dose)
		rest.Supply, err = nutrient.SupplyOf(cold, rest.Doses...)
		return rest, err
	}
	return feed, nil
}

// part is a share that may be left out.
func part(s *units.Share) units.Share {
	if s == nil {
		return units.Share{}
	}
	return *s
}

// source is a nutrient as its label has it. No law's limit is known for it but its own.
func (o OwnNutrient) source(field string) (material.Material, error) {
	if strings.TrimSpace(o.Name) == "" {
		return material.Material{}, &RequestError{Field: field + ".name", Value: "missing", Allowed: "a name, as it stands in nutrient.sources"}
	}
	if o.Most != nil {
		if err := within(field+".most", *o.Most, units.GramPerLitre, 0.001, 10); err != nil {
			return material.Material{}, err
		}
	}
	c := material.Composition{AmmoniumNitrogen: part(o.Ammonium), AminoNitrogen: part(o.Amino), Phosphorus: part(o.Phosphorus), Potassium: part(o.Potassium)}
	if c == (material.Composition{}) {
		return material.Material{}, &RequestError{Field: field, Value: o.Name, Allowed: "nitrogen, phosphorus or potassium, at least one of them"}
	}
	s, err := material.ByLabel(o.Name, c)
	if err != nil {
		return s, &RequestError{Field: field, Value: o.Name, Allowed: told(err), Err: err}
	}
	return s, nil
}

// ownLimits tell of doses whose label gives no limit.
func (m *maker) ownLimits(cold units.Volume, doses []material.Dose, say *notes) {
	for _, d := range doses {
		if m.req.Nutrient.owns(d.Material) && m.req.Nutrient.most(d.Material) == nil {
			say.caution(fmt.Sprintf("%s comes to %.2f g/L: hold that against the largest dose on its label, and check the law that its "+
				"nitrogen falls under, before you rely on a limit.", d.Material.Name(), d.Mass.In(units.Gram)/cold.In(units.Litre)))
		}
	}
}
