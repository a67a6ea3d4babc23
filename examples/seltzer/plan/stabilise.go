package plan

import (
	"fmt"
	"math"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

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

// kept is the sulfite and the sorbate. The potassium of both makes the drink less sour: the doses are for the pH that results.
func (f *following) kept(say *notes) error {
	f.p.keptAt = f.p.Points[len(f.p.Points)-1].PH
	doses, err := f.stabilised()
	if err != nil {
		return err
	}
	for range mostPHs {
		after := f.state
		for _, st := range doses {
			if after, _, err = forward.Do(st, after, &f.usual); err != nil {
				return err
			}
		}
		d, _, _, err := gasFree(after)
		if err != nil {
			return err
		}
		if math.Abs(d.PH()-f.p.keptAt) < samePH {
			break
		}
		f.p.keptAt = d.PH()
		if doses, err = f.stabilised(); err != nil {
			return err
		}
	}
	f.keep(say)
	for _, st := range doses {
		if _, err := f.do("sulfite and sorbate", st); err != nil {
			return err
		}
	}
	return f.point("sulfite and sorbate added")
}

// stabilised doses sulfite and sorbate at the pH that the drink has.
func (f *following) stabilised() (steps []forward.Step, err error) {
	var whose law.Jurisdiction
	if err := whose.UnmarshalText([]byte(f.req.Nutrient.Law)); err != nil {
		return nil, named("nutrient.law", f.req.Nutrient.Law, err)
	}
	v, err := f.state.Volume(at20)
	if err != nil {
		return nil, err
	}
	f.p.said = nil
	if r := f.req.Stabilise; r.Molecular != nil {
		if f.p.Sulfite, err = f.sulfited(*r, v, whose); err != nil {
			return nil, err
		}
		steps = append(steps, keeping(f.p.Sulfite.Weight))
	}
	if r := f.req.Stabilise; r.Sorbate != nil {
		if f.p.Sorbate, err = f.sorbated(*r.Sorbate, v, whose); err != nil {
			return nil, err
		}
		steps = append(steps, keeping(f.p.Sorbate.Weight))
	}
	return steps, nil
}

// keeping is the step of a dose.
func keeping(w Weight) forward.Step {
	return forward.Step{Kind: forward.Stabilise, What: w.What, Mass: w.Mass.Quantity()}
}

// dose is weighed on the scale for small things, or finer where it is less than ten of its steps.
func (f *following) dose(what string, asked units.Mass) (Weight, error) {
	step := f.req.Scales.Small
	if asked.Compare(units.Gram.Of(checked.Number(10*step.Quantity().In(units.Gram)))) < 0 {
		var err error
		if step, err = units.Gram.Exact(decimal.RequireFromString(fineStep)); err != nil {
			return Weight{}, err
		}
	}
	exact, err := asked.Round(step, units.Nearest)
	return Weight{What: what, For: "fermenter, to keep it", Mass: exact, Asked: asked}, err
}

// sulfited is the sulfite that holds the molecular SO2 that was asked for.
func (f *following) sulfited(r Stabilise, v units.Volume, whose law.Jurisdiction) (*SulfitePlan, error) {
	asked := r.Molecular.Text(units.MilligramPerLitre, 1)
	share, err := finish.MolecularSharePractice(f.p.keptAt)
	if err != nil {
		return nil, aimed("stabilise.molecular_so2", asked, err)
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
		return nil, aimed("stabilise.molecular_so2", asked, err)
	}
	w, err := f.dose(material.PotassiumMetabisulfite().Name(), d.Mass)
	f.p.said = f.p.said.With(d.Cautions...)
	return &SulfitePlan{Weight: w, Molecular: *r.Molecular, PH: f.p.keptAt, Share: share, Free: free, Limits: texts(d.Limits)}, err
}

// sorbated is the sorbate that was asked for.
func (f *following) sorbated(asked units.MassConcentration, v units.Volume, whose law.Jurisdiction) (*SorbatePlan, error) {
	d, err := finish.SorbateFor(asked, f.p.keptAt, v, whose)
	if err != nil {
		return nil, aimed("stabilise.potassium_sorbate", asked.Text(units.MilligramPerLitre, 0), err)
	}
	w, err := f.dose("potassium sorbate", d.Mass)
	p := &SorbatePlan{Weight: w, SorbicAcid: d.SorbicAcid, Undissociated: d.Undissociated, Limits: texts(d.Limits)}
	if advised, err := finish.SorbateByStrength(f.p.keptAt, units.PercentVolume.Of(checked.Number(f.batch.strength))); err == nil {
		p.Advised = advised.Value
	}
	f.p.said = f.p.said.With(d.Cautions...)
	return p, err
}

// texts are limits as they are printed.
func texts(limits []law.Limit) (out []string) {
	for _, l := range limits {
		out = append(out, l.String())
	}
	return out
}

// keep puts the doses that were found on the list, with what is to be said of them.
func (f *following) keep(say *notes) {
	var all []Weight
	if f.p.Sulfite != nil {
		all = append(all, f.p.Sulfite.Weight)
	}
	if f.p.Sorbate != nil {
		all = append(all, f.p.Sorbate.Weight)
	}
	for _, w := range all {
		if mg := w.Asked.In(units.Milligram); mg < 10*f.req.Scales.Small.Quantity().In(units.Milligram) {
			say.caution(fmt.Sprintf("%s, %.0f mg, is too little for the scale: dissolve 10.0 g in water to make 100 mL, and take %.1f mL.", w.What, mg, mg/100))
		}
	}
	say.weigh(all...)
	for _, c := range f.p.said {
		say.caution(c.Text())
	}
}

const (
	mostPHs = 10
	samePH  = 1e-3
)
