package plan

import (
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// water treats the water that the batch starts with, or that lets a base down, where there is any; salts that go in
// after the boil follow with it.
func (m *maker) water(say *notes) (p WaterPlan, err error) {
	if m.batch.water == 0 {
		return p, nil
	}
	start, err := gravity.NewSolution(kilograms(m.batch.water), units.Mass{}, units.Mass{})
	if err != nil {
		return p, err
	}
	volume := start.VolumeAt20()
	w := m.req.Water
	before, err := w.Report.profile()
	if err != nil {
		return p, placed("water.report", err)
	}
	balance := before.IonicBalance()
	p = WaterPlan{Volume: volume, Before: figures(before, balance), Target: w.Target, Judgement: balance.Judgement}
	if !balance.Acceptable {
		say.caution("The water report does not balance: " + balance.Judgement + ". An ion is missing or wrong; ask the laboratory.")
	}
	salts, err := m.saltsAtHand()
	if err == nil && !m.saltsAfter() {
		_, err = m.treat(&p, before, volume, salts, say)
	}
	return p, err
}

// saltsAtHand are those that a water may be treated with.
func (r *recipe) saltsAtHand() (salts []material.Material, err error) {
	for _, text := range r.req.Water.Salts {
		s, err := material.Find(text)
		if err != nil || !slices.Contains(water.Salts(), s) {
			return nil, &RequestError{Field: "water.salts", Value: text, Allowed: saltNames(), Err: err}
		}
		salts = append(salts, s)
	}
	return salts, nil
}

// saltsAfter tells whether the salts go in after the boil.
func (r *recipe) saltsAfter() bool { return r.req.Water.When == afterBoil }

// When the salts go in.
const (
	beforeBoil = "before the boil"
	afterBoil  = "after the boil"
)

// treat doses a water's salts into its plan, as weighed.
func (m *maker) treat(p *WaterPlan, before water.Profile, volume units.Volume, salts []material.Material, say *notes) (weighed []material.Dose, err error) {
	w := m.req.Water
	var doses []material.Dose
	if len(salts) > 0 {
		if w.Target == (Ions{}) {
			return nil, &RequestError{Field: "water.target", Value: "no ion is given", Allowed: "at least one, as the salts are to reach it; or no salts"}
		}
		targets, err := w.Target.targets()
		if err != nil {
			return nil, placed("water.target", err)
		}
		recipe, err := water.Request{Water: before, Volume: volume, Salts: stocks(salts), Targets: targets}.Solve()
		if err != nil {
			return nil, placed("water.target", err)
		}
		doses = recipe.Doses
	}
	into := "water"
	switch {
	case m.saltsAfter() && m.batch.topUp > 0: // for all the water, once it is together
		into = "fermenter, after the top-up"
	case m.saltsAfter():
		into = "kettle, after the boil"
	}
	for _, d := range doses {
		mass, err := d.Mass.Round(m.req.Scales.Small, units.Nearest)
		if err != nil {
			return nil, err
		}
		if mass.Decimal().IsZero() {
			continue
		}
		weighed = append(weighed, d.Material.Dose(mass.Quantity()))
		p.Doses = append(p.Doses, Weight{What: d.Material.Name(), For: into, Mass: mass, Asked: d.Mass})
	}
	if m.saltsAfter() {
		say.weigh(p.Doses...)
	} else {
		say.weighFirst(p.Doses...)
	}
	after, err := before.Add(volume, weighed...)
	if err != nil {
		return nil, err
	}
	p.After = figures(after, after.IonicBalance())
	if len(salts) > 0 {
		say.missed(w.Target, after)
	}
	say.salty(after)
	return weighed, nil
}

// salty cautions where a water holds more than drinking water may, as a figure does that is off by its point or its unit.
func (n *notes) salty(w water.Profile) {
	mg := func(i water.Ion) float64 { return w.Ion(i).In(units.MilligramPerLitre) }
	const least = 150 // mg/L, below each of the limits, which are looked up above it alone
	if max(mg(water.Chloride), mg(water.Sulfate), mg(water.Sodium)) < least {
		return
	}
	var over []string
	for _, f := range w.CheckDrinking() {
		if f.Limit.Authority == water.EUDirective && ions[f.Limit.Substance] {
			over = append(over, f.String())
		}
	}
	if len(over) > 0 {
		n.caution("The treated water holds more than drinking water may: " + strings.Join(over, "; ") +
			". Look whether a figure of the report or of the target is off by its point or its unit.")
	}
}

// What is said when the salts at hand do not reach a target (common practice, no source):
// off by a sixth of it, and by what a taste could notice.
const missedShare, missedBy = 0.15, 10 // mg/L

// missed cautions where a water is far from its target.
func (n *notes) missed(target Ions, after water.Profile) {
	var off []string
	see := func(what string, got, want float64) {
		if d := math.Abs(got - want); d > missedBy && d > missedShare*want {
			off = append(off, fmt.Sprintf("%s %.0f for %.0f", what, got, want))
		}
	}
	for _, c := range target.given() {
		see(c.Ion.Name(), after.Ion(c.Ion).In(units.MilligramPerLitre), c.Concentration.In(units.MilligramPerLitre))
	}
	if a := target.Alkalinity; a != nil {
		see("alkalinity", after.Alkalinity().In(units.MilligramPerLitreCaCO3), a.In(units.MilligramPerLitreCaCO3))
	}
	if len(off) > 0 {
		n.caution("The salts at hand miss the target of the water, mg/L: " + strings.Join(off, ", ") +
			". Take other salts, another target, or thin the water with distilled water.")
	}
}

// saltNames lists the salts that a request may name.
func saltNames() string {
	var names []string
	for _, s := range water.Salts() {
		names = append(names, s.Name())
	}
	return "one of " + strings.Join(names, ", ")
}

func stocks(salts []material.Material) []water.Stock {
	out := make([]water.Stock, len(salts))
	for i, s := range salts {
		out[i].Salt = s
	}
	return out
}

// targets are the ions that are given; the alkalinity stands as bicarbonate.
func (i Ions) targets() ([]water.Target, error) {
	var out []water.Target
	for _, c := range i.given() {
		out = append(out, c.Ion.Aim(c.Concentration))
	}
	if i.Alkalinity == nil {
		return out, nil
	}
	p, err := water.NewProfile(at20, *i.Alkalinity)
	return append(out, water.Bicarbonate.Aim(p.Ion(water.Bicarbonate))), err
}

// given lists the ions of a water or a target that are given.
func (i Ions) given() []water.Content {
	var out []water.Content
	for _, g := range []struct {
		ion water.Ion
		c   *units.MassConcentration
	}{
		{water.Calcium, i.Calcium}, {water.Magnesium, i.Magnesium}, {water.Sodium, i.Sodium},
		{water.Potassium, i.Potassium}, {water.Chloride, i.Chloride}, {water.Sulfate, i.Sulfate},
	} {
		if g.c != nil {
			out = append(out, g.ion.At(*g.c))
		}
	}
	return out
}

func (i Ions) profile() (water.Profile, error) {
	alkalinity := units.CalciumCarbonate{}
	if i.Alkalinity != nil {
		alkalinity = *i.Alkalinity
	}
	return water.NewProfile(at20, alkalinity, i.given()...)
}

func figures(p water.Profile, balance water.IonBalance) WaterFigures {
	return WaterFigures{
		Calcium: p.Ion(water.Calcium), Magnesium: p.Ion(water.Magnesium), Sodium: p.Ion(water.Sodium),
		Potassium: p.Ion(water.Potassium), Chloride: p.Ion(water.Chloride), Sulfate: p.Ion(water.Sulfate),
		Alkalinity: p.Alkalinity(), Hardness: p.Hardness(), ResidualAlkalinity: p.ResidualAlkalinity(),
		ChargeImbalance: balance.Difference().In(units.Percent),
	}
}
