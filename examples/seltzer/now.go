package main

import (
	"cmp"
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// A now is where a batch stands by its readings and what to do next, and no more.
type now struct {
	state    string
	next     []string
	take     []row // for the volume that is there
	when     []row
	could    []row // what was tried on this batch, and what it leads to
	why      []row
	cautions []string // of what is to be done
}

// urgent are the cautions that cannot wait: they stand above everything.
func urgent(p plan.Plan) []string {
	var out []string
	for _, c := range p.Cautions {
		if strings.Contains(c, "do not fill") || slices.ContainsFunc(atOnce, func(begins string) bool { return strings.HasPrefix(c, begins) }) {
			out = append(out, c)
		}
	}
	return out
}

// atOnce is how the cautions begin that cannot wait.
var atOnce = []string{"Do not pack yet", "The pH of", "By the pH that was read", "The vessel was read at", "As it stands it would come to",
	"The sugar that is still to come does not fit"}

// From when on a reading of the pH tells where the ferment will end (common practice, no
// source): two fifths of the sugar used.
const timeForPH = 40 // %

const tooLateToFeed = 50 // % of the sugar used (common practice, no source)

// nowOf says what to do next in a batch, of whose card the steps named are done.
func nowOf(p plan.Plan, s style, done []string) (now, error) {
	n := now{state: "no readings yet"}
	st := p.State
	if st == nil {
		n.step(cardOf(p, s), done, "clean")
		return n, nil
	}
	n.state = st.State
	for _, r := range stateSection(p, s).rows {
		if !strings.HasPrefix(r.label, "tried: ") { // they stand by themselves
			n.why = append(n.why, r)
		}
	}
	for _, a := range st.Advice {
		n.could = append(n.could, adviceRow(a, s))
	}
	var err error
	switch st.State {
	case plan.NotBegun:
		err = n.notBegun(p, s, done)
	case plan.Near:
		n.next = append([]string{"Close to the floor, and still: read it again in a day or two, the gas stirred out. Finished is the same over two days."},
			inAllWords(s, st.Diagnosis)...)
		err = n.fermenting(p, s, done)
	case plan.Slow:
		n.next = append([]string{"Slower than nineteen in twenty of this plan. Measure the pH and the temperature in the vessel before you do anything."},
			inAllWords(s, st.Diagnosis)...)
		err = n.fermenting(p, s, done)
	case plan.Fermenting:
		err = n.fermenting(p, s, done)
	case plan.Finished:
		if no := cannotPack(st); no != "" {
			n.next = []string{"Do not pack yet: " + s.inWords(no) + ". Read it again in a few days, the gas stirred out; warmth and a stir help the last of the sugar."}
			break
		}
		n.step(cardOf(p, s), done, "chill")
	default: // stalled, or in doubt
		n.next = inAllWords(s, st.Diagnosis)
	}
	if c := st.Correction; c != nil {
		n.take = append(n.take, row{label: c.What, value: s.weight(*c), note: c.For + "; add half, stir, measure again"})
		n.cautions = append(n.cautions, foams(p)...)
	}
	var once []string
	for _, c := range n.cautions {
		if !slices.Contains(once, c) {
			once = append(once, c)
		}
	}
	n.cautions = once
	return n, err
}

// backToPlan is what brings a wash back to its plan, all the way or as far as the vessel takes it; nil where nothing does.
func backToPlan(st *plan.StatePlan) (a *plan.Advice, whole bool) {
	if !(st.AddSugar.In(units.Gram) >= 5 || st.AddWater.In(units.Gram) >= 50) || len(st.Points) > 0 {
		return nil, false
	}
	for i := range st.Advice {
		if a := &st.Advice[i]; a.Cause == "" && a.Weigh != nil && a.Cannot == "" {
			return a, i == 0 || st.Advice[i-1].Cannot == ""
		}
	}
	return nil, false
}

// cannotPack is why a finished ferment is not to be packed; empty where it can be.
func cannotPack(st *plan.StatePlan) string {
	for _, a := range st.Advice {
		if a.Do == "pack" {
			return a.Cannot
		}
	}
	return ""
}

func inAllWords(s style, texts []string) []string {
	var out []string
	for _, t := range texts {
		out = append(out, s.inWords(t))
	}
	return out
}

// asPlanned is what to say of a wash whose gravity wants nothing.
func asPlanned(st *plan.StatePlan) string {
	switch {
	case st.Original == 0:
		return "The gravity of the wash is not read yet."
	case st.Correction != nil:
		return "The gravity of the wash is as planned, its pH is not: the buffer first."
	}
	return "The wash is as planned."
}

// foams are the cautions of a bicarbonate that goes into a ferment.
func foams(p plan.Plan) []string {
	var out []string
	for _, c := range p.Cautions {
		if strings.HasPrefix(c, "Bicarbonate foams") {
			out = append(out, c)
		}
	}
	return out
}

// otherHalf is the buffer that goes in with the second nutrient.
func otherHalf(p plan.Plan, s style) ([]row, error) {
	a := p.Acidity
	if a.Buffer == nil || len(firstBuffer(a, s)) == 0 {
		return nil, nil
	}
	w := *a.Buffer
	if a.ByMeter {
		var err error
		w.Asked = a.Clear
		if w.Mass, err = a.Clear.Round(p.Request.Scales.Small, units.Nearest); err != nil {
			return nil, err
		}
	}
	rows, err := scaled(p, s, []plan.Weight{w})
	for i := range rows {
		rows[i].value = "other half of " + rows[i].value
	}
	return rows, err
}

// step is the first step of a card, from one of them on, that is not done.
func (n *now) step(c card, done []string, from string) {
	begun := false
	for _, st := range c.steps {
		begun = begun || st.id == from
		if !begun || slices.Contains(done, st.id) {
			continue
		}
		n.next = append(append(n.next, st.title+"."), st.do...)
		n.take, n.when = append(n.take, st.weigh...), append(n.when, st.read...)
		n.cautions = append(n.cautions, st.cautions...)
		return
	}
	n.next = append(n.next, "Nothing: every step is done.")
}

// there is the part of the planned wash that is in the fermenter.
func there(p plan.Plan) float64 {
	planned, have := vessel(p, "fermenter, filled").Volume.In(units.Litre), p.State.Wash.In(units.Litre)
	if planned == 0 || have == 0 {
		return 1
	}
	return have / planned
}

// scaled are doses for the wash that is there, as the scale shows them.
func scaled(p plan.Plan, s style, of []plan.Weight) ([]row, error) {
	var rows []row
	part := there(p)
	for _, w := range of {
		if w.Mass.Decimal().IsZero() {
			continue
		}
		note := "as planned"
		if part != 1 {
			var err error
			w.Asked = units.Gram.Of(checked.Number(part * w.Asked.In(units.Gram)))
			if w.Mass, err = w.Asked.Round(p.Request.Scales.Small, units.Nearest); err != nil {
				return nil, err
			}
			note = "for the " + s.volume(p.State.Wash) + " that are there"
		}
		rows = append(rows, row{label: w.What, value: s.weight(w), note: note})
	}
	return rows, nil
}

// notBegun is a wash before the yeast works: brought to the plan, then pitched and fed.
func (n *now) notBegun(p plan.Plan, s style, done []string) error {
	st := p.State
	if len(st.Points) > 0 {
		usual := ""
		if r := st.BegunBy; r.High90 > 0 {
			usual = " That is usual for " + days(r.Median) + ", and no fault until " + days(r.High90) + "."
		}
		if len(st.Diagnosis) > 0 { // it is late
			n.next = append(append(n.next, "Nothing is fermented yet, and by now it should be:"), inAllWords(s, st.Diagnosis)...)
			n.next = append(n.next, "Warm the wash to "+s.temperature(p.Request.Fermenter.Temperature)+", stir, and pitch fresh yeast, awake.")
			return nil
		}
		n.next = append(n.next, "Nothing is fermented yet."+usual+" Later than that, warm the wash to "+s.temperature(p.Request.Fermenter.Temperature)+
			" and stir; a day later pitch fresh yeast, awake.")
		return nil
	}
	what, is, how := p.Request.Fermentable, "weaker", "up to the plan, dissolve:"
	if st.AddWater.In(units.Gram) >= 50 {
		what, is, how = "water", "stronger", "down to the plan, stir in:"
	}
	back, fits := backToPlan(st)
	switch {
	case back != nil && fits:
		n.next = append(n.next, "The wash is "+is+" than planned. To come "+how)
		n.take = append(n.take, row{label: what, value: s.mass(cmp.Or(st.AddSugar, st.AddWater))})
	case back != nil:
		n.next = append(n.next, "The wash is "+is+" than planned, and there is no room for all that would bring it back. As far as it fits:")
		n.take = append(n.take, row{label: what, value: s.weight(*back.Weigh)})
	case is == "stronger", st.AddSugar.In(units.Gram) >= 5:
		n.next = append(n.next, "The wash is "+is+" than planned, and there is no room for what would bring it back.")
	default:
		n.next = append(n.next, asPlanned(st))
	}
	if len(p.Nutrient.Stages) > 0 && !slices.Contains(done, "feed-1") {
		n.next = append(n.next, "Then air, the yeast, and the first nutrient.")
		feed, err := scaled(p, s, slices.Concat(p.Nutrient.Stages[0].Doses, p.Nutrient.Supplements))
		if err != nil {
			return err
		}
		n.take = append(n.take, feed...)
	}
	return nil
}

// fermenting is what is due by the sugar used, and what comes next.
func (n *now) fermenting(p plan.Plan, s style, done []string) error {
	st := p.State
	last := st.Points[len(st.Points)-1]
	late := ""
	for i, stage := range p.Nutrient.Stages {
		id := fmt.Sprintf("feed-%d", i+1)
		switch {
		case slices.Contains(done, id) || i == 0 && !slices.Contains(done, "pitch"):
			continue // the first goes in with the yeast
		case last.Used.In(units.Percent) > tooLateToFeed:
			late = "Nutrient that is not in yet stays out: so late yeast takes up little of it, and what lives after it takes the rest."
		case stage.Used.Compare(last.Used) <= 0:
			feed, err := scaled(p, s, stage.Doses)
			if err != nil {
				return err
			}
			if len(feed) > 0 {
				n.next = append(n.next, fmt.Sprintf("Nutrient, addition %d, if it is not in yet.", i+1))
				for _, r := range feed {
					r.label = fmt.Sprintf("addition %d, %s", i+1, r.label)
					n.take = append(n.take, r)
				}
			}
			if i == 1 && p.Acidity.Halves && st.Correction == nil { // a correction is all that it needs from here
				half, err := otherHalf(p, s)
				if err != nil {
					return err
				}
				n.take, n.cautions = append(n.take, half...), append(n.cautions, foams(p)...)
			}
		default:
			n.when = append(n.when, row{label: fmt.Sprintf("nutrient, addition %d", i+1), value: "gravity " + number(stage.Gravity, 4)})
		}
	}
	if late != "" {
		n.next = append(n.next, late)
	}
	a := p.Acidity
	switch {
	case last.PH != nil && a.Buffer != nil && *last.PH < a.Floor:
		n.next = append(n.next, "The pH is below the floor of "+number(a.Floor, 1)+": "+a.Buffer.What+", a little at a time, by the meter.")
		if st.Correction == nil { // with it its cautions come
			n.cautions = append(n.cautions, foams(p)...)
		}
	case last.PH == nil && last.Used.In(units.Percent) >= timeForPH && !slices.Contains(done, "pH"):
		n.next = append(n.next, "Measure the pH.")
	}
	if len(n.next) == 0 {
		n.next = append(n.next, "Nothing: let it work.")
	}
	_, is := p.Request.EndName()
	n.when = append(n.when, row{label: is, value: "gravity " + number(st.Floor, 4), note: "and the same over several days"})
	for _, e := range p.Schedule {
		if e.What == "about dry" {
			n.when = append(n.when, row{label: "dry about", value: e.Day, note: e.Sign})
		}
	}
	return nil
}
