package plan

import (
	"cmp"

	"example.org/zymase/units"
	"example.org/zymase/water/must"
)

// measuredOK checks the figures that were measured of what a fermentable brings.
func (r *Must) measuredOK(b *brought) error {
	checks := []error{}
	if r.PH != 0 && !(r.PH >= 2 && r.PH <= 6) {
		checks = append(checks, &RequestError{Field: "must.pH", Value: trim(r.PH), Allowed: "2 to 6"})
	}
	switch {
	case b.from == must.FromMalt && b.known && r.Acidity != nil:
		checks = append(checks, &RequestError{Field: "must.titratable_acidity", Value: r.Acidity.String(),
			Allowed: "left out for malt: a titration does not show its buffers, its pH says more"})
	case r.PH != 0 && r.Acidity == nil && b.from != must.FromMalt:
		checks = append(checks, &RequestError{Field: "must.titratable_acidity", Value: "missing",
			Allowed: "given with the pH: one of them alone does not tell acid from salt"})
	case r.Acidity != nil && r.PH == 0 && b.from == must.FromHoney && b.known:
		checks = append(checks, &RequestError{Field: "must.pH", Value: "missing", Allowed: "given with the acidity of honey"})
	}
	for _, q := range []struct {
		field string
		c     *units.MassConcentration
		most  float64
	}{{"must.yan", r.Nitrogen, 1000}, {"must.ammonium_nitrogen", r.Ammonium, 500}, {"must.potassium", r.Potassium, 10000}} {
		if q.c != nil {
			checks = append(checks, within(q.field, *q.c, units.MilligramPerLitre, 0, q.most))
		}
	}
	if r.Ammonium != nil && (r.Nitrogen == nil || r.Ammonium.Compare(*r.Nitrogen) > 0) {
		checks = append(checks, &RequestError{Field: "must.ammonium_nitrogen", Value: r.Ammonium.Text(units.MilligramPerLitre, 0), Allowed: "a part of must.yan"})
	}
	return cmp.Or(cmp.Or(checks...), r.Blend.ok(r, b))
}
