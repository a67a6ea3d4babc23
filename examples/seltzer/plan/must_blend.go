package plan

import (
	"cmp"
	"fmt"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water/must"
)

// BlendPlan is how much of another juice goes into the first, and what each does to the other. PH and acidity of the
// [MustPlan] are those of the blend.
type BlendPlan struct {
	Share        units.Share             `json:"share"` // of the blend, by volume
	Mass         units.Mass              `json:"mass"`  // of the other juice
	PH           float64                 `json:"pH"`    // of the first juice
	Acidity      units.MassConcentration `json:"titratable_acidity"`
	OtherPH      float64                 `json:"other_pH"`
	OtherAcidity units.MassConcentration `json:"other_titratable_acidity"` // by the convention of the plan
}

// ok checks another juice that is to go into the first.
func (x *Blend) ok(r *Must, b *brought) error {
	switch {
	case x == nil:
		return nil
	case !b.juice || r.PH == 0 || r.Acidity == nil:
		return &RequestError{Field: "must.blend", Value: "given",
			Allowed: "left out, unless the fermentable is a juice whose must.pH and must.titratable_acidity are given"}
	case !(x.PH >= 2 && x.PH <= 6):
		return &RequestError{Field: "must.blend.pH", Value: trim(x.PH), Allowed: "2 to 6"}
	case x.Acidity.content.IsZero():
		return &RequestError{Field: "must.blend.titratable_acidity", Value: "missing", Allowed: acidityForm}
	case (x.ToPH == 0) == (x.ToAcidity == nil):
		return &RequestError{Field: "must.blend", Value: "as given", Allowed: "with one of to_pH and to_acidity"}
	}
	return nil
}

// blended is a juice with so much of another as reaches the aim.
func (m *maker) blended(x *Blend, juice, other must.Drink, of sample, kilos float64, say *notes) (must.Drink, *BlendPlan, error) {
	field, value, aim := "must.blend.to_pH", trim(x.ToPH), must.ToPH(x.ToPH)
	if x.ToAcidity != nil {
		field, value, aim = "must.blend.to_acidity", x.ToAcidity.String(), must.ToAcidity(of.inWater(x.ToAcidity.content), x.ToAcidity.by)
	}
	t, err := juice.WithDrink(other, aim)
	if err != nil {
		return juice, nil, &RequestError{Field: field, Value: value,
			Allowed: "between those of the two juices, " + ends(juice, other, x.ToAcidity, of.ratio), Err: err}
	}
	p := &BlendPlan{Share: t.Share, Mass: kilograms(t.Share.In(units.Fraction) * kilos), PH: juice.PH(), OtherPH: other.PH()}
	for _, one := range []struct {
		drink must.Drink
		into  *units.MassConcentration
	}{{juice, &p.Acidity}, {other, &p.OtherAcidity}} {
		ta, err := one.drink.Acidity(m.convention())
		if err != nil {
			return juice, nil, err
		}
		*one.into = units.MilligramPerLitre.Of(checked.Number(ta.In(units.MilligramPerLitre) / of.ratio))
	}
	for _, c := range t.Cautions {
		say.caution(c.Text())
	}
	return t.After, p, nil
}

// ends are the pH of two juices, or their acidity by the convention that is asked for, in g/L: k is what their
// contents are in the wash for 1 in the juice.
func ends(a, b must.Drink, by *Acidity, k float64) string {
	if by == nil {
		return fmt.Sprintf("pH %.2f and %.2f", a.PH(), b.PH())
	}
	first, err := a.Acidity(by.by)
	second, also := b.Acidity(by.by)
	if err = cmp.Or(err, also); err != nil {
		return reason(err)
	}
	return fmt.Sprintf("%.1f and %.1f g/L", first.In(units.GramPerLitre)/k, second.In(units.GramPerLitre)/k)
}
