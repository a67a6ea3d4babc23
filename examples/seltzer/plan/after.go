package plan

import (
	"cmp"
	"fmt"
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/water/must"
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

// A following is the drink after its ferment, with what was done to it by then.
type following struct {
	*maker
	p     *AfterPlan
	state forward.State
	usual forward.Unknowns
}

// do is a deed, by its line of the balance.
func (f *following) do(line string, st forward.Step) (forward.Left, error) {
	next, left, err := forward.Do(st, f.state, &f.usual)
	if err == nil {
		f.state, f.p.deeds = next, append(f.p.deeds, deed{line: line, step: st})
	}
	return left, err
}

// point tells the pH and the acidity as they are then.
func (f *following) point(after string) error {
	d, ofWater, litres, err := gasFree(f.state)
	if err != nil {
		return err
	}
	ta, err := f.acidityOf(d, ofWater, litres)
	f.p.Points = append(f.p.Points, AfterPoint{After: after, PH: d.PH(), Acidity: ta, deeds: len(f.p.deeds)})
	return err
}

// settleDown follows the acids after the ferment; one that was asked for may go in then.
func (m *maker) settleDown(say *notes) (*AfterPlan, *AcidPlan, error) {
	r, acid := m.req, m.plan.Acid
	if m.unforeseen() != "" || !m.brings.known && r.Acid == nil && r.Malolactic == nil && r.Cold == nil && r.Stabilise == nil {
		return nil, acid, nil
	}
	by := m.convention()
	f := following{maker: m, p: &AfterPlan{As: by.As.Name() + " to pH " + trim(by.End)}, state: m.brewed.state, usual: forward.Usual()}
	err := f.point("fermented dry")
	if err == nil && r.Malolactic != nil {
		err = f.malolactic(*r.Malolactic)
	}
	if err == nil && r.Cold != nil {
		err = f.cold(*r.Cold)
	}
	if err == nil && r.Acid != nil && r.Acid.When == afterFerment {
		acid, err = f.withAcid(say)
	}
	if err == nil && r.Stabilise != nil {
		err = f.kept(say)
	}
	if err != nil {
		return nil, nil, err
	}
	return f.p, acid, nil
}

// malolactic turns a share of the malic acid to lactic.
func (f *following) malolactic(share units.Share) error {
	if _, err := f.do("", forward.Step{Kind: forward.Malolactic, Share: share, Pressure: f.air.Pressure()}); err != nil {
		return err
	}
	return f.point("malic acid to lactic")
}

// cold is a rest in the cold, and warm again.
func (f *following) cold(c Cold) error {
	if _, err := f.do("", forward.Step{Kind: forward.Chill, Temperature: c.Temperature}); err != nil {
		return &RequestError{Field: "cold.temperature", Value: c.Temperature.Text(units.Celsius, 1), Allowed: told(err), Err: err}
	}
	left, err := f.do("cream of tartar settled", forward.Step{Kind: forward.Settle, Share: c.Settled})
	if err != nil {
		return err
	}
	f.p.Tartar = left.Sediment.Mass()
	if _, err := f.do("", forward.Step{Kind: forward.Warm, Temperature: f.req.Fermenter.Warmest, Pressure: f.air.Pressure()}); err != nil {
		return err
	}
	return f.point("cold, cream of tartar settled")
}

// withAcid is the acid that goes in after the ferment.
func (f *following) withAcid(say *notes) (*AcidPlan, error) {
	acid, err := f.sour(f.state, say)
	if err != nil {
		return nil, err
	}
	if _, err := f.do("acid", acid.step); err != nil {
		return nil, err
	}
	return acid, f.point("acid added")
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
