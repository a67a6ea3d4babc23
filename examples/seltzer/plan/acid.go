package plan

import (
	"cmp"
	"fmt"

	forward "example.org/zymase/examples/seltzer/batch"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

// When an acid goes in.
const (
	beforeYeast  = "before the yeast"
	afterFerment = "after the ferment"
)

// AcidPlan is an acid to add, and what it does.
type AcidPlan struct {
	Weight    Weight                  `json:"weight"`
	When      string                  `json:"when"`
	Before    float64                 `json:"pH_before"`
	PH        float64                 `json:"pH"` // with the dose as weighed, without gas
	WasAcid   units.MassConcentration `json:"titratable_acidity_before"`
	Acidity   units.MassConcentration `json:"titratable_acidity"`
	As        string                  `json:"acidity_as"`
	PerLitre  units.MassConcentration `json:"in_a_litre"`
	Uncertain bool                    `json:"by_trial"` // the wash is not measured: by a meter

	step forward.Step
}

// acidOK checks an acid that was asked for.
func (k *recipe) acidOK() error {
	a := k.req.Acid
	if a == nil {
		return nil
	}
	if _, _, err := a.found(); err != nil {
		return err
	}
	if err := oneOf("acid.when", a.When, beforeYeast, afterFerment); err != nil {
		return err
	}
	switch {
	case a.PH != 0 && a.Acidity != nil:
		return &RequestError{Field: "acid", Value: "both to_pH and to_acidity", Allowed: "one of the two"}
	case a.PH == 0 && a.Acidity == nil:
		return &RequestError{Field: "acid", Value: "missing", Allowed: `to_pH, as 3.4, or to_acidity, as "5.5 g/L as tartaric acid to pH 8.2"`}
	case a.PH != 0 && !(a.PH >= 2.5 && a.PH <= 6):
		return &RequestError{Field: "acid.to_pH", Value: trim(a.PH), Allowed: "2.5 to 6"}
	}
	if k.brings.some && !k.brings.known {
		return &RequestError{Field: "acid", Value: a.What,
			Allowed: "left out while nobody knows what the " + k.fermentable.Name() + " brings: name the fruit, or give must.pH, must.titratable_acidity and must.acids"}
	}
	return nil
}

// found is the acid, or the salt where it is one that takes acid away.
func (a *Acid) found() (water.Acid, material.Material, error) {
	acid, err := water.ParseAcid(a.What)
	if err == nil {
		return acid, material.Material{}, nil
	}
	m, also := material.Find(a.What)
	if also != nil || m.Composition().Alkalinity.IsZero() {
		return 0, m, named("acid.what", a.What, err)
	}
	return 0, m, nil
}

// gasFree is a liquid of the batch without its gas, with the litres of water in it as package water counts them,
// and the litres of drink.
func gasFree(s forward.State) (d must.Drink, ofWater, litres float64, err error) {
	p, err := s.Profile()
	if err != nil {
		return d, 0, 0, err
	}
	strength, err := s.Strength()
	if err != nil {
		return d, 0, 0, err
	}
	if d, err = must.New(p, strength); err != nil {
		return d, 0, 0, err
	}
	v, err := s.Volume(at20)
	return d, mass(forward.Water, s.Of(forward.Water)) / waterPerLitre, v.In(units.Litre), err
}

// acidity is that of a litre of drink.
func (m *maker) acidityOf(d must.Drink, ofWater, litres float64) (units.MassConcentration, error) {
	ta, err := d.Acidity(m.convention())
	return units.MilligramPerLitre.Of(checked.Number(ta.In(units.MilligramPerLitre) * ofWater / litres)), err
}

// sour doses the acid that was asked for into a liquid of the batch.
func (m *maker) sour(s forward.State, say *notes) (*AcidPlan, error) {
	a := m.req.Acid
	acid, salt, err := a.found()
	if err != nil {
		return nil, err
	}
	name, kind := acid.Name(), forward.Acidify
	if !salt.IsZero() {
		name, kind = salt.Name(), forward.Feed
	}
	d, ofWater, litres, err := gasFree(s)
	if err != nil {
		return nil, err
	}
	field, value, aim := "acid.to_pH", trim(a.PH), must.ToPH(a.PH)
	if a.Acidity != nil {
		field, value = "acid.to_acidity", a.Acidity.String()
		aim = must.ToAcidity(units.MilligramPerLitre.Of(checked.Number(a.Acidity.content.In(units.MilligramPerLitre)*litres/ofWater)), a.Acidity.by)
	}
	var t must.Treatment
	more, above := "more", "above"
	if salt.IsZero() {
		t, err = d.WithAcid(acid, aim)
	} else {
		more, above = "less", "below"
		t, err = d.WithSalt(salt, aim)
	}
	if err != nil {
		have := fmt.Sprintf("%s sour than the drink is already, pH %.2f", more, d.PH())
		if a.Acidity != nil {
			ta, also := m.acidityOf(d, ofWater, litres)
			if also != nil {
				return nil, also
			}
			have = fmt.Sprintf("%s what the drink has already, %.1f g/L", above, ta.In(units.GramPerLitre))
		}
		return nil, &RequestError{Field: field, Value: value, Allowed: have + ", within 50 g/L of it", Err: err}
	}
	asked := units.Milligram.Of(checked.Number(t.PerLitre.In(units.MilligramPerLitre) * ofWater))
	mass, err := asked.Round(m.req.Scales.Small, units.Nearest)
	if err != nil {
		return nil, err
	}
	p := &AcidPlan{step: forward.Step{Kind: kind, What: name, Mass: mass.Quantity()},
		Weight: Weight{What: name, For: "fermenter, acid " + a.When, Mass: mass, Asked: asked}, When: a.When, Before: d.PH(),
		PerLitre:  units.GramPerLitre.Of(checked.Number(mass.Quantity().In(units.Gram) / litres)),
		Uncertain: m.brings.some && m.plan.Must != nil && !m.plan.Must.Measured}
	u := forward.Usual()
	if s, _, err = forward.Do(p.step, s, &u); err != nil {
		return nil, err
	}
	by := m.convention()
	p.As = by.As.Name() + " to pH " + trim(by.End)
	var also error
	p.WasAcid, also = m.acidityOf(d, ofWater, litres)
	after, ofWater, litres, err := gasFree(s)
	if err := cmp.Or(err, also); err != nil {
		return nil, err
	}
	p.PH = after.PH()
	if p.Acidity, err = m.acidityOf(after, ofWater, litres); err != nil {
		return nil, err
	}
	say.weigh(p.Weight)
	for _, c := range t.Cautions {
		say.caution(c.Text())
	}
	return p, nil
}

// early is the acid that goes in before the yeast, and the water with it.
func (m *maker) early(say *notes) (p *AcidPlan, b boiledWater, err error) {
	a, b := m.req.Acid, m.boiled
	if a == nil || a.When != beforeYeast {
		return nil, b, nil
	}
	c, err := m.washAt(forward.Usual().Chalk)
	if err != nil {
		return nil, b, err
	}
	s := c[0].state
	if p, err = m.sour(s, say); err != nil {
		return nil, b, err
	}
	acid, salt, err := a.found()
	if err != nil {
		return nil, b, err
	}
	_, ofWater, _, err := gasFree(s)
	if err != nil {
		return nil, b, err
	}
	for _, w := range []*water.Profile{&b.low, &b.high} {
		if salt.IsZero() {
			*w, err = w.AddAcid(acid, units.Millimole.Of(checked.Number(1000*p.step.Mass.In(units.Gram)/acid.MolarMass().In(units.GramPerMole))), litres(ofWater))
		} else {
			*w, err = w.Add(litres(ofWater), salt.Dose(p.step.Mass))
		}
		if err != nil {
			return nil, b, err
		}
	}
	return p, b, nil
}
