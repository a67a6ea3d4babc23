package plan

import (
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// A deed is a step of the plan with the line of the balance that it belongs to: of what comes in,
// or of the liquid that stays behind.
type deed struct {
	line string
	step forward.Step
	late bool // sugar of the later portions

	staged bool // goes in by the stages of nutrient
}

// deeds are the plan as steps, from the water to the base drink off its yeast.
func (m *maker) deeds() ([]deed, error) {
	r, place := m.req, m.air.Pressure()
	dissolve := m.dissolving()
	dissolve.Kind, dissolve.Mass = forward.Dissolve, kilograms(m.batch.fermentable)
	salts := make([]deed, 0, len(m.plan.Water.Doses))
	all := make([]deed, 0, len(m.plan.Water.Doses)+len(m.plan.Nutrient.fed)+12)
	kettlePart := 1 - m.batch.topUp/m.batch.water
	if m.saltsAfter() {
		kettlePart = 1
	}
	for _, d := range m.plan.Water.Doses {
		salts = append(salts, deed{line: "salts", step: forward.Step{Kind: forward.Treat, What: d.What, Mass: kilograms(kettlePart * kg(d.Mass.Quantity()))}})
	}
	late := dissolve
	late.Mass = kilograms(m.batch.late)
	dissolve.Mass = kilograms(m.batch.fermentable - m.batch.late)
	if !m.saltsAfter() {
		all, salts = append(all, salts...), nil
	}
	all = append(all, deed{line: m.fermentable.Name(), step: dissolve},
		deed{line: "", step: forward.Step{Kind: forward.Boil, For: forward.Duration(r.Kettle.Boil), Rate: r.Kettle.BoilOff, Pressure: place}})
	if m.batch.topUp == 0 {
		all, salts = append(all, salts...), nil
	}
	all = append(all, deed{line: kettleLeft, step: forward.Step{Kind: forward.Transfer, Volume: r.Kettle.Loss}})
	if m.batch.topUp > 0 {
		with, err := m.topUp()
		if err != nil {
			return nil, err
		}
		all = append(all, deed{line: waterToTopUp, step: forward.Step{Kind: forward.Blend, With: with, Volume: litres(m.batch.topUp / waterPerLitre)}})
	}
	all = append(all, salts...)
	pitching := deed{line: "", step: forward.Step{Kind: forward.Cool, Temperature: r.Fermenter.Temperature}}
	if r.Kettle.Boil == 0 && r.Fermenter.Temperature.Compare(at20) > 0 {
		pitching.step.Kind = forward.Heat
	}
	all = append(all, pitching)
	if m.batch.late > 0 { // as if before the yeast: what is in the end does not depend on when
		all = append(all, deed{line: m.fermentable.Name() + ", later portions", step: late, late: true})
	}
	if a := m.plan.Acid; a != nil && a.When == beforeYeast {
		all = append(all, deed{line: "acid", step: a.step})
	}
	feed := func(doses []material.Dose, staged bool) {
		for _, d := range doses {
			all = append(all, deed{line: "nutrient and buffer", step: m.fed(d), staged: staged})
		}
	}
	n := m.plan.Nutrient
	feed(n.fed[n.staged:], false)
	if w := m.plan.Acidity.Buffer; w != nil {
		all = append(all, deed{line: "nutrient and buffer", step: forward.Step{Kind: forward.Feed, What: w.What, Mass: w.Mass.Quantity()}})
	}
	if m.plan.Yeast.Form == "dry" {
		all = append(all, deed{line: "dry yeast", step: forward.Step{Kind: forward.Pitch, Mass: m.plan.Yeast.Mass.Quantity()}})
	}
	feed(n.fed[:n.staged], true) // last, so that there is a wash without them
	return append(all,
		deed{line: "", step: forward.Step{Kind: forward.Ferment, Share: m.attenuation(), Pressure: place}},
		deed{line: "", step: forward.Step{Kind: forward.Warm, Temperature: r.Fermenter.Warmest, Pressure: place}},
		deed{line: leftWithYeast, step: forward.Step{Kind: forward.Transfer, Volume: litres(m.lost())}},
		deed{line: "", step: forward.Step{Kind: forward.Fine, Share: units.Percent.Of(100)}}), nil
}

// fed is the step that adds a nutrient.
func (m *maker) fed(d material.Dose) forward.Step {
	if m.req.Nutrient.owns(d.Material) {
		return forward.Step{Kind: forward.Feed, Own: d.Material, Mass: d.Mass}
	}
	return forward.Step{Kind: forward.Feed, What: d.Material.Name(), Mass: d.Mass}
}

// topUp is the water beside the kettle, treated where the salts do not go in after it. It is no colder than the
// ferment, so that what it makes with the kettle's can be cooled to that.
func (m *maker) topUp() (*forward.State, error) {
	s, err := m.treatedWater(m.batch.topUp / waterPerLitre)
	if t := m.req.Fermenter.Temperature; err == nil && t.Compare(at20) > 0 {
		u := forward.Usual()
		*s, _, err = forward.Do(forward.Step{Kind: forward.Heat, Temperature: t}, *s, &u)
	}
	return s, err
}

// treatedWater is twice so many litres of the treated water, as a level may show less.
func (m *maker) treatedWater(v float64) (*forward.State, error) {
	s, err := m.tap(litres(2 * v))
	if err != nil {
		return nil, err
	}
	u := forward.Usual()
	doses := m.plan.Water.Doses
	if m.saltsAfter() {
		doses = nil
	}
	for _, d := range doses {
		st := forward.Step{Kind: forward.Treat, What: d.What, Mass: kilograms(2 * v * waterPerLitre / m.batch.water * kg(d.Mass.Quantity()))}
		if s, _, err = forward.Do(st, s, &u); err != nil {
			return nil, err
		}
	}
	if m.recipe.base != nil { // it was boiled: its gas is out
		if s, _, err = forward.Do(forward.Step{Kind: forward.Degas, Share: units.Percent.Of(100)}, s, &u); err != nil {
			return nil, err
		}
	}
	return &s, nil
}

// mixed are the steps that make the drink of a kind of pack, for so many times its base.
func (m *maker) mixed(i int, k packed, times float64) ([]forward.Step, error) {
	r := m.recipe.packs[i]
	steps := []forward.Step{{Kind: forward.Dilute, Mass: kilograms(times * k.water)}}
	if m.recipe.base != nil && k.water > 0 {
		with, err := m.treatedWater(times * k.water / waterPerLitre)
		if err != nil {
			return nil, err
		}
		steps[0] = forward.Step{Kind: forward.Blend, With: with, Volume: litres(times * k.water / waterPerLitre)}
	}
	if f := r.taste; f != nil {
		steps = append(steps, flavoured(*f, times*k.flavour))
	}
	if k.sweet > 0 {
		steps = append(steps, forward.Step{Kind: forward.Sweeten, Own: r.sweet.of, Mass: kilograms(times * k.sweet)})
	}
	if k.acid > 0 {
		steps = append(steps, forward.Step{Kind: forward.Acidify, What: r.Acid.What, Mass: kilograms(times * k.acid)})
	}
	if k.primer > 0 {
		prime := weighable(r.primer)
		prime.Kind, prime.Mass = forward.Prime, kilograms(times*k.primer)
		steps = append(steps, prime)
	}
	return steps, nil
}

// inKettle is the water that the kettle starts with.
func (m *maker) inKettle() units.Volume {
	return litres((m.batch.water - m.batch.topUp) / waterPerLitre)
}

// tap is so much of the water as it comes.
func (m *maker) tap(v units.Volume) (forward.State, error) { return m.tapped.OfVolume(v) }

// asItComes is the water of the kettle, or what a base is let down with.
func (m *maker) asItComes(*notes) (forward.State, error) {
	if m.batch.water == 0 {
		return forward.State{}, nil
	}
	tap, err := m.req.Water.Report.profile()
	if err != nil {
		return forward.State{}, err
	}
	known, err := tap.WithPH(m.req.Water.PH)
	if err != nil { // its CO2 is boiled off: any will do
		e, err := tap.InAir()
		if err != nil {
			return forward.State{}, err
		}
		known = e.Water()
	}
	return forward.FromWater(known, m.inKettle())
}

// flavoured is the step that adds so many litres of a flavouring.
func flavoured(f Flavour, litresOfIt float64) forward.Step {
	st := forward.Step{Kind: forward.Flavour, Volume: litres(litresOfIt)}
	if f.Strength != nil {
		st.Strength = *f.Strength
	}
	if f.Sugar != nil {
		st.Sugar = *f.Sugar
	}
	return st
}

// weighable is a fermentable as a step knows it: by its name, or by its label.
func weighable(f material.Material) forward.Step {
	if m, err := material.Find(f.Name()); err == nil && m == f {
		return forward.Step{What: m.Name()}
	}
	return forward.Step{Own: f}
}
