//go:build kettle

package main

import (
	"errors"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// What the page is answered to a request: all of it text that the command line prints too.
type (
	answer struct {
		Refused  *refusal        `json:"refused,omitempty"`
		Brief    []answerRow     `json:"brief,omitempty"`  // what stands beside the form
		Urgent   []string        `json:"urgent,omitempty"` // cautions that cannot wait
		Now      *answerNow      `json:"now,omitempty"`
		Before   []string        `json:"before,omitempty"` // cautions of no one step
		Steps    []answerStep    `json:"steps,omitempty"`
		Sections []answerSection `json:"sections,omitempty"`
	}
	answerSection struct {
		Title string      `json:"title"`
		Rows  []answerRow `json:"rows"`
	}
	answerRow struct {
		Label string      `json:"label"`
		Value string      `json:"value,omitempty"`
		Note  string      `json:"note,omitempty"`
		Why   [][2]string `json:"why,omitempty"` // relation, source
	}
	answerStep struct {
		ID       string      `json:"id"`
		Title    string      `json:"title"`
		When     string      `json:"when,omitempty"`
		Do       []string    `json:"do"`
		Take     []answerRow `json:"take"`
		Read     []answerRow `json:"read"`
		Cautions []string    `json:"cautions"`
	}
	answerNow struct {
		State    string      `json:"state"`
		Cautions []string    `json:"cautions"`
		Next     []string    `json:"next"`
		Take     []answerRow `json:"take"`
		When     []answerRow `json:"when"`
		Could    []answerRow `json:"could"`
		Why      []answerRow `json:"why"`
	}
	// A refusal is a request that cannot be.
	refusal struct {
		Field   string `json:"field"`
		Value   string `json:"value"`
		Allowed string `json:"allowed"`
	}
)

func refused(err error) *refusal {
	if e, ok := errors.AsType[*plan.RequestError](err); ok {
		return &refusal{e.Field, e.Value, e.Allowed}
	}
	return &refusal{"request", "as given", err.Error()}
}

// planned answers with the plan of a request: what is to be seen while it is typed, and if
// the whole is wanted sheet, card, and what to do now.
func planned(request []byte, s style, done []string, whole bool) answer {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return answer{Refused: refused(err)}
	}
	if !whole {
		req = undated(req)
	}
	p, err := plan.Make(req)
	if err != nil {
		return answer{Refused: refused(err)}
	}
	a := answer{Brief: answerRows(brief(p, s)), Urgent: urgent(p)}
	if !whole {
		return a
	}
	n, err := nowOf(p, s, done)
	if err != nil {
		return answer{Refused: refused(err)}
	}
	a.Now = &answerNow{n.state, texts(n.cautions), texts(n.next), answerRows(n.take), answerRows(n.when), answerRows(n.could), answerRows(n.why)}
	c := cardOf(p, s)
	a.Before = texts(c.before)
	for _, st := range c.steps {
		a.Steps = append(a.Steps, answerStep{st.id, st.title, st.when, texts(st.do), answerRows(st.weigh), answerRows(st.read), texts(st.cautions)})
	}
	for i, sec := range sheet(p, s) {
		if i == 0 {
			sec.title = "The batch"
		}
		a.Sections = append(a.Sections, answerSection{sec.title, answerRows(sec.rows)})
	}
	return a
}

// texts is a list that is a list in JSON, too, where it is empty.
func texts(list []string) []string { return append([]string{}, list...) }

func answerRows(rows []row) []answerRow {
	out := []answerRow{}
	for _, r := range rows {
		a := answerRow{Label: r.label, Value: r.value, Note: r.note}
		if r.relation != "" {
			sources := strings.Split(r.source, "\n")
			for i, relation := range strings.Split(r.relation, "\n") {
				a.Why = append(a.Why, [2]string{relation, sources[i]})
			}
		}
		out = append(out, a)
	}
	return out
}

// brief is what a brewer wants to see move while the request is typed.
func brief(p plan.Plan, s style) []row {
	floor, _ := p.Request.EndName()
	rows := append(going(p, s, "kettle"), going(p, s, "dissolved in the water")...)
	rows = append(rows, row{label: "water", value: s.volume(p.Water.Volume)})
	if b := p.Base; b != nil {
		rows = append(rows, row{label: "base", value: s.volume(b.Taken)}, row{label: "strength", value: strength(p.Strength)})
	} else {
		rows = append(rows,
			row{label: "gravity", value: number(p.Gravity.Original, 4)},
			row{label: floor, value: number(p.Gravity.Floor, 4)},
			row{label: "strength", value: strength(p.Strength),
				note: "± " + number(p.Uncertainty.Planned.In(units.PercentVolume), 2) + ", " + mostlyFrom(p.Uncertainty.PlannedFrom)})
	}
	if c := p.Cost; c != nil {
		rows = append(rows, row{label: "cost", value: c.Total + " " + c.Currency})
	}
	for _, k := range p.Packs {
		reach := " reach"
		if packsOf(k) == 1 {
			reach += "es"
		}
		rows = append(rows, row{label: packTitle(k) + reach, value: bound(s.gauge(k.Highest.Gauge), k.Highest.AtLeast), note: "rated " + s.gauge(k.Rating)})
	}
	return rows
}

// curvesOf draws the curves of a request.
func curvesOf(request []byte, s style) ([]picture, error) {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return nil, err
	}
	_, curves, err := plan.MakeWithCurves(req)
	if err != nil {
		return nil, err
	}
	out := []picture{}
	for i, c := range curves {
		c = s.curve(c)
		out = append(out, picture{c.Title, plot(c, i), len(c.Marks) > 0})
	}
	return out, nil
}
