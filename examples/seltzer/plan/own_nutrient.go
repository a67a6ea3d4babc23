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

// source is a nutrient by its name: first of those whose labels the request has.
func (m *maker) source(text string) (nutrient.Source, error) {
	for i, own := range m.req.Nutrient.Own {
		if strings.EqualFold(own.Name, text) {
			return own.source(fmt.Sprintf("nutrient.own[%d]", i))
		}
	}
	s, err := nutrient.ParseSource(text)
	return s, named("nutrient.sources", text, err)
}

// part is a share that may be left out.
func part(s *units.Share) units.Share {
	if s == nil {
		return units.Share{}
	}
	return *s
}

// source is a nutrient as its label has it. No law's limit is known for it but its own.
func (o OwnNutrient) source(field string) (nutrient.Source, error) {
	if strings.TrimSpace(o.Name) == "" {
		return nutrient.Source{}, &RequestError{Field: field + ".name", Value: "missing", Allowed: "a name, as it stands in nutrient.sources"}
	}
	if o.Most != nil {
		if err := within(field+".most", *o.Most, units.GramPerLitre, 0.001, 10); err != nil {
			return nutrient.Source{}, err
		}
	}
	s, err := nutrient.ByLabel(o.Name, law.Unlisted, nutrient.Shares{
		AmmoniumNitrogen: part(o.Ammonium), AminoNitrogen: part(o.Amino), Phosphorus: part(o.Phosphorus), Potassium: part(o.Potassium),
	})
	if err != nil {
		return s, &RequestError{Field: field, Value: o.Name, Allowed: told(err), Err: err}
	}
	if o.material().IsZero() {
		return s, &RequestError{Field: field, Value: o.Name, Allowed: "nitrogen, phosphorus or potassium, at least one of them"}
	}
	return s, nil
}

// material is the same as the batch knows it; none where no package reads it.
func (o OwnNutrient) material() material.Material {
	c := material.Composition{AmmoniumNitrogen: part(o.Ammonium), AminoNitrogen: part(o.Amino), Phosphorus: part(o.Phosphorus), Potassium: part(o.Potassium)}
	if c == (material.Composition{}) {
		return material.Material{}
	}
	own, err := material.ByLabel(o.Name, c)
	if err != nil {
		return material.Material{}
	}
	return own
}

// ownLimits hold the doses against the labels.
func (m *maker) ownLimits(cold units.Volume, doses []nutrient.Dose) {
	for _, d := range doses {
		for _, o := range m.req.Nutrient.Own {
			if !strings.EqualFold(o.Name, d.Source.Name()) {
				continue
			}
			gl := units.GramPerLitre.Of(checked.Number(d.Mass.In(units.Gram) / cold.In(units.Litre)))
			switch {
			case o.Most == nil:
				m.caution(fmt.Sprintf("%s comes to %.2f g/L: hold that against the largest dose on its label, and check the law that its nitrogen falls under, before you rely on a limit.", o.Name, gl.In(units.GramPerLitre)))
			case gl.Compare(*o.Most) > 0:
				m.warn(fmt.Sprintf("%s comes to %.2f g/L, its label allows %.2f: of the nitrogen that is wanted the rest has to come from another source.", o.Name, gl.In(units.GramPerLitre), o.Most.In(units.GramPerLitre)))
			}
		}
	}
}
