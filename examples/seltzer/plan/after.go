package plan

import (
	"cmp"
	"fmt"
	"math"
	"slices"

	forward "example.org/zymase/examples/seltzer/batch"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
	"example.org/zymase/water/must"
	"github.com/shopspring/decimal"
)

// AfterPlan is what becomes of the acids once the drink is dry, and what keeps it.
type AfterPlan struct {
	Points  []AfterPoint `json:"points"`
	As      string       `json:"acidity_as"`
	Tartar  units.Mass   `json:"cream_of_tartar_settled,omitzero"`
	Sulfite *SulfitePlan `json:"sulfite,omitempty"`
	Sorbate *SorbatePlan `json:"sorbate,omitempty"`

	keptAt float64 // the pH that sulfite and sorbate are for
	said   caution.List
	deeds  []deed // what is done after the ferment
}

// done is what is done after the ferment, if anything is.
func (p *AfterPlan) done() []deed {
	if p == nil {
		return nil
	}
	return p.deeds
}

// AfterPoint is the drink after one of the deeds, without gas.
type AfterPoint struct {
	After   string                  `json:"after"`
	PH      float64                 `json:"pH"`
	Low     float64                 `json:"pH_low"`
	High    float64                 `json:"pH_high"`
	From    string                  `json:"mostly_from,omitempty"`
	Acidity units.MassConcentration `json:"titratable_acidity"`

	deeds int // that were done by then
}

// SulfitePlan is the sulfite that holds a molecular SO2.
type SulfitePlan struct {
	Weight    Weight                  `json:"weight"`
	Molecular units.MassConcentration `json:"molecular"`
	PH        float64                 `json:"at_pH"`
	Share     units.Share             `json:"molecular_share"` // of the free SO2, by the constant of wine practice
	Free      units.MassConcentration `json:"free"`            // wanted
	Limits    []string                `json:"limits"`
}

// SorbatePlan is the potassium sorbate that was asked for.
type SorbatePlan struct {
	Weight        Weight                  `json:"weight"`
	SorbicAcid    units.MassConcentration `json:"sorbic_acid"`
	Undissociated units.MassConcentration `json:"undissociated"` // the part that acts, at the pH
	Advised       units.MassConcentration `json:"advised,omitzero"`
	Limits        []string                `json:"limits"`
}

// afterOK checks what is to be done after the ferment.
func (k *recipe) afterOK() error {
	r := k.req
	checks := []error{}
	if s := r.Malolactic; s != nil {
		checks = append(checks, within("malolactic", *s, units.Percent, 0, 100))
	}
	if c := r.Cold; c != nil {
		checks = append(checks, within("cold.temperature", c.Temperature, units.Celsius, 0, 20), within("cold.settled", c.Settled, units.Percent, 0, 100))
		if c.Temperature.Compare(r.Fermenter.Warmest) > 0 {
			checks = append(checks, &RequestError{Field: "cold.temperature", Value: c.Temperature.Text(units.Celsius, 1), Allowed: "not above fermenter.warmest"})
		}
	}
	if s := r.Stabilise; s != nil {
		if s.Molecular == nil && s.Sorbate == nil {
			checks = append(checks, &RequestError{Field: "stabilise", Value: "missing", Allowed: `molecular_so2, as "0.8 mg/L", or potassium_sorbate, as "200 mg/L"`})
		}
		if s.Molecular != nil {
			checks = append(checks, within("stabilise.molecular_so2", *s.Molecular, units.MilligramPerLitre, 0.1, 5))
		}
		if s.Free != nil {
			checks = append(checks, within("stabilise.free_so2", *s.Free, units.MilligramPerLitre, 0, 200))
		}
		if s.Sorbate != nil {
			checks = append(checks, within("stabilise.potassium_sorbate", *s.Sorbate, units.MilligramPerLitre, 1, 1000))
		}
		for i := range k.packs {
			if k.packs[i].primes() {
				checks = append(checks, &RequestError{Field: "stabilise", Value: "given", Allowed: fmt.Sprintf("left out where yeast is to prime: packs[%d] is primed", i)})
			}
		}
	}
	if k.brings.some && !k.brings.known && (r.Malolactic != nil || r.Cold != nil || r.Stabilise != nil) {
		checks = append(checks, &RequestError{Field: "must", Value: "missing", Allowed: "given, or the fruit named, so that the pH after the ferment can be told"})
	}
	return cmp.Or(checks...)
}

// settleDown follows the acids after the ferment; one that was asked for may go in then.
func (m *maker) settleDown(say *notes) (p *AfterPlan, acid *AcidPlan, err error) {
	r, acid := m.req, m.plan.Acid
	if m.unforeseen() != "" || !m.brings.known && r.Acid == nil && r.Malolactic == nil && r.Cold == nil && r.Stabilise == nil {
		return nil, acid, nil
	}
	s := m.brewed.state
	by := m.convention()
	p = &AfterPlan{As: by.As.Name() + " to pH " + trim(by.End)}
	u := forward.Usual()
	place := m.air.Pressure()
	point := func(after string) error {
		d, ofWater, litres, err := gasFree(s)
		if err != nil {
			return err
		}
		ta, err := m.acidityOf(d, ofWater, litres)
		p.Points = append(p.Points, AfterPoint{After: after, PH: d.PH(), Acidity: ta, deeds: len(p.deeds)})
		return err
	}
	do := func(line string, st forward.Step) (forward.Left, error) {
		next, left, err := forward.Do(st, s, &u)
		if err == nil {
			s, p.deeds = next, append(p.deeds, deed{line: line, step: st})
		}
		return left, err
	}
	if err := point("fermented dry"); err != nil {
		return nil, nil, err
	}
	if x := r.Malolactic; x != nil {
		if _, err := do("", forward.Step{Kind: forward.Malolactic, Share: *x, Pressure: place}); err != nil {
			return nil, nil, err
		}
		if err := point("malic acid to lactic"); err != nil {
			return nil, nil, err
		}
	}
	if c := r.Cold; c != nil {
		if _, err := do("", forward.Step{Kind: forward.Chill, Temperature: c.Temperature}); err != nil {
			return nil, nil, &RequestError{Field: "cold.temperature", Value: c.Temperature.Text(units.Celsius, 1), Allowed: told(err), Err: err}
		}
		left, err := do("cream of tartar settled", forward.Step{Kind: forward.Settle, Share: c.Settled})
		if err != nil {
			return nil, nil, err
		}
		p.Tartar = left.Sediment.Mass()
		if _, err := do("", forward.Step{Kind: forward.Warm, Temperature: r.Fermenter.Warmest, Pressure: place}); err != nil {
			return nil, nil, err
		}
		if err := point("cold, cream of tartar settled"); err != nil {
			return nil, nil, err
		}
	}
	if a := r.Acid; a != nil && a.When == afterFerment {
		if acid, err = m.sour(s, say); err != nil {
			return nil, nil, err
		}
		if _, err := do("acid", acid.step); err != nil {
			return nil, nil, err
		}
		if err := point("acid added"); err != nil {
			return nil, nil, err
		}
	}
	if r.Stabilise == nil {
		return p, acid, nil
	}
	p.keptAt = p.Points[len(p.Points)-1].PH
	doses, err := m.stabilised(p, s)
	if err != nil {
		return nil, nil, err
	}
	// The potassium of both makes the drink less sour: the doses are for the pH that results.
	for range mostPHs {
		after := s
		for _, st := range doses {
			if after, _, err = forward.Do(st, after, &u); err != nil {
				return nil, nil, err
			}
		}
		d, _, _, err := gasFree(after)
		if err != nil {
			return nil, nil, err
		}
		if math.Abs(d.PH()-p.keptAt) < samePH {
			break
		}
		p.keptAt = d.PH()
		if doses, err = m.stabilised(p, s); err != nil {
			return nil, nil, err
		}
	}
	m.keep(p, say)
	for _, st := range doses {
		if _, err := do("sulfite and sorbate", st); err != nil {
			return nil, nil, err
		}
	}
	return p, acid, point("sulfite and sorbate added")
}

// sureAfter is how sure the pH of each is.
func (m *maker) sureAfter(*notes) (*AfterPlan, error) {
	if m.plan.After == nil {
		return nil, nil
	}
	out := *m.plan.After
	out.Points = slices.Clone(out.Points)
	for i := range out.Points {
		p, d := &out.Points[i], m.doubts[ofAfter+i]
		p.Low, p.High = d.around(p.PH)
		p.From = d.from
	}
	return &out, nil
}

const mostAfter = 5 // times that a pH is told after the ferment

// tooFlat warns of a juice, honey or sugar drink that is not sour enough to keep. Beer has its hops.
func (m *maker) tooFlat(say *notes) error {
	if m.unforeseen() != "" || m.brings.some && m.brings.from == must.FromMalt && !m.brings.juice || m.plan.After == nil {
		return nil
	}
	for i := range m.recipe.packs { // soured as they are filled: by their own pH
		if m.recipe.packs[i].Acid != nil {
			return nil
		}
	}
	last := m.plan.After.Points[len(m.plan.After.Points)-1]
	if last.PH <= keepsBelow {
		return nil
	}
	share, err := finish.MolecularSharePractice(last.PH)
	if err != nil {
		return nil // beyond where sulfite is reckoned: the pH is told all the same
	}
	free, err := finish.FreeSulfite(units.MilligramPerLitre.Of(usualMolecular), share)
	if err != nil {
		return err
	}
	say.caution(fmt.Sprintf("Not sour enough to keep by itself: at pH %.2f spoiling bacteria grow, and %.1f mg/L of molecular SO2 "+
		"would take %.0f mg/L of free SO2, more than any drink should hold. Bring it below %.1f (A. Lea, Craft Cider Making, recalled "+
		"from memory; a trade page says from 4.0 on, excerpt): let less of the malic acid go, blend with a sharper one, or add acid after "+
		"the ferment (acid.when). Else keep it cold, full and drink it young, or have it pasteurised.",
		last.PH, usualMolecular, free.In(units.MilligramPerLitre), keepsBelow))
	return nil
}

const (
	keepsBelow     = 3.8 // pH
	usualMolecular = 0.8 // mg/L, as wine practice has it
)

// stabilised doses sulfite and sorbate at the pH that the drink has.
func (m *maker) stabilised(p *AfterPlan, s forward.State) ([]forward.Step, error) {
	r := m.req.Stabilise
	var whose law.Jurisdiction
	if err := whose.UnmarshalText([]byte(m.req.Nutrient.Law)); err != nil {
		return nil, named("nutrient.law", m.req.Nutrient.Law, err)
	}
	v, err := s.Volume(at20)
	if err != nil {
		return nil, err
	}
	ph := p.keptAt
	var steps []forward.Step
	dose := func(what string, asked units.Mass) (Weight, error) {
		step := m.req.Scales.Small
		if asked.Compare(units.Gram.Of(checked.Number(10*step.Quantity().In(units.Gram)))) < 0 {
			var err error
			if step, err = units.Gram.Exact(decimal.RequireFromString(fineStep)); err != nil {
				return Weight{}, err
			}
		}
		exact, err := asked.Round(step, units.Nearest)
		w := Weight{What: what, For: "fermenter, to keep it", Mass: exact, Asked: asked}
		steps = append(steps, forward.Step{Kind: forward.Stabilise, What: what, Mass: exact.Quantity()})
		return w, err
	}
	p.said = nil
	if r.Molecular != nil {
		share, err := finish.MolecularSharePractice(ph)
		if err != nil {
			return nil, aimed("stabilise.molecular_so2", r.Molecular.Text(units.MilligramPerLitre, 1), err)
		}
		free, err := finish.FreeSulfite(*r.Molecular, share)
		if err != nil {
			return nil, err
		}
		var have units.MassConcentration
		if r.Free != nil {
			have = *r.Free
		}
		if have.Compare(free) > 0 {
			have = free
		}
		d, err := finish.SulfiteFor(material.PotassiumMetabisulfite(), free, have, have, v, whose)
		if err != nil {
			return nil, aimed("stabilise.molecular_so2", r.Molecular.Text(units.MilligramPerLitre, 1), err)
		}
		w, err := dose(material.PotassiumMetabisulfite().Name(), d.Mass)
		if err != nil {
			return nil, err
		}
		p.Sulfite = &SulfitePlan{Weight: w, Molecular: *r.Molecular, PH: ph, Share: share, Free: free}
		for _, l := range d.Limits {
			p.Sulfite.Limits = append(p.Sulfite.Limits, l.String())
		}
		p.said = p.said.With(d.Cautions...)
	}
	if r.Sorbate != nil {
		d, err := finish.SorbateFor(*r.Sorbate, ph, v, whose)
		if err != nil {
			return nil, aimed("stabilise.potassium_sorbate", r.Sorbate.Text(units.MilligramPerLitre, 0), err)
		}
		w, err := dose("potassium sorbate", d.Mass)
		if err != nil {
			return nil, err
		}
		p.Sorbate = &SorbatePlan{Weight: w, SorbicAcid: d.SorbicAcid, Undissociated: d.Undissociated}
		if f, err := finish.SorbateByStrength(ph, units.PercentVolume.Of(checked.Number(m.batch.strength))); err == nil {
			p.Sorbate.Advised = f.Value
		}
		for _, l := range d.Limits {
			p.Sorbate.Limits = append(p.Sorbate.Limits, l.String())
		}
		p.said = p.said.With(d.Cautions...)
	}
	return steps, nil
}

// keep puts the doses that were found on the list, with what is to be said of them.
func (m *maker) keep(p *AfterPlan, say *notes) {
	var all []Weight
	if p.Sulfite != nil {
		all = append(all, p.Sulfite.Weight)
	}
	if p.Sorbate != nil {
		all = append(all, p.Sorbate.Weight)
	}
	for _, w := range all {
		if mg := w.Asked.In(units.Milligram); mg < 10*m.req.Scales.Small.Quantity().In(units.Milligram) {
			say.caution(fmt.Sprintf("%s, %.0f mg, is too little for the scale: dissolve 10.0 g in water to make 100 mL, and take %.1f mL.", w.What, mg, mg/100))
		}
	}
	say.weigh(all...)
	for _, c := range p.said {
		say.caution(c.Text())
	}
}

const (
	mostPHs = 10
	samePH  = 1e-3
)
