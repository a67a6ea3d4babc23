package plan

import (
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
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

// ownLimits hold the doses against the labels.
func (m *maker) ownLimits(cold units.Volume, doses []material.Dose, say *notes) {
	for _, d := range doses {
		for _, o := range m.req.Nutrient.Own {
			if !strings.EqualFold(o.Name, d.Material.Name()) {
				continue
			}
			gl := units.GramPerLitre.Of(checked.Number(d.Mass.In(units.Gram) / cold.In(units.Litre)))
			switch {
			case o.Most == nil:
				say.caution(fmt.Sprintf("%s comes to %.2f g/L: hold that against the largest dose on its label, and check the law that its "+
					"nitrogen falls under, before you rely on a limit.", o.Name, gl.In(units.GramPerLitre)))
			case gl.Compare(*o.Most) > 0:
				say.warn(fmt.Sprintf("%s comes to %.2f g/L, its label allows %.2f: of the nitrogen that is wanted the rest has to come from another source.",
					o.Name, gl.In(units.GramPerLitre), o.Most.In(units.GramPerLitre)))
			}
		}
	}
}
