package main

import (
	"strconv"
	"strings"
	"unicode"
	"unicode/utf8"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// guideSection is what can explain something seen, and what no figure tells.
func guideSection(g plan.Guide, s style) section {
	out := section{title: "What is wrong: " + g.Seen}
	out.rows = append(out.rows, guideRows(g, s)...)
	out.rows = append(out.rows, row{label: "No figure tells:"})
	for _, text := range g.Rest {
		out.rows = append(out.rows, row{label: "- " + s.inWords(text)})
	}
	return out
}

// guideRows are the figures, those that can explain it first and said so.
func guideRows(g plan.Guide, s style) []row {
	var rows []row
	for _, l := range g.Figures {
		says := "hardly: "
		if l.Can {
			says = "can be: "
		}
		rows = append(rows, row{label: s.inWords(l.What), value: s.inWords(l.Value), note: s.inWords(strings.TrimSpace(says + l.Says))})
	}
	return rows
}

// An answerGuide is the guide for the page.
type answerGuide struct {
	Figures []guideRow `json:"figures"`
	Rest    []string   `json:"rest"`
}

type guideRow struct {
	Label string `json:"label"`
	Value string `json:"value"`
	Note  string `json:"note"`
}

// wrong is what can explain something seen in the batch of a request.
func wrong(request []byte, seen string, s style) (answerGuide, error) {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return answerGuide{}, err
	}
	g, err := plan.Wrong(req, seen)
	if err != nil {
		return answerGuide{}, err
	}
	out := answerGuide{}
	for _, text := range g.Rest {
		out.Rest = append(out.Rest, s.inWords(text))
	}
	for _, r := range guideRows(g, s) {
		out.Figures = append(out.Figures, guideRow{r.label, r.value, r.note})
	}
	return out, nil
}

// inWords is a sentence with its temperatures, pressures, masses and volumes in the style's units; what is by
// the litre is the same in both. No regular expression: they weigh 160 kB in the page.
func (s style) inWords(text string) string {
	if !s.us {
		return text
	}
	var out strings.Builder
	for text != "" {
		from := strings.IndexAny(text, digits)
		if from < 0 {
			break
		}
		to := from + len(text[from:]) - len(strings.TrimLeft(text[from:], digits+"."))
		if from > 0 && text[from-1] == '-' {
			from--
		}
		says, rest := s.measured(text[from:to], text[to:])
		out.WriteString(text[:from])
		out.WriteString(says)
		text = rest
	}
	return out.String() + text
}

const digits = "0123456789"

// measured is a number with the metric unit that begins what follows, in the style's units, and what
// comes then; the number alone, where none does or it is by something ("5 g/L").
func (s style) measured(figure, follows string) (says, rest string) {
	x, err := strconv.ParseFloat(figure, 64)
	if err != nil {
		return figure, follows
	}
	n := checked.Number(x)
	for _, u := range [...]struct {
		unit string
		text func() string
	}{
		{" °C", func() string { return s.temperature(units.Celsius.Of(n)) }},
		{" K", func() string { return number(1.8*x, 0) + " °F" }},
		{" bar gauge", func() string { return s.gauge(units.BarGauge.Of(n)) }},
		{" kg", func() string { return s.mass(units.Kilogram.Of(n)) }},
		{" g", func() string { return s.mass(units.Gram.Of(n)) }},
		{" mL", func() string { return s.volume(units.Millilitre.Of(n)) }},
		{" L", func() string { return s.volume(units.Litre.Of(n)) }},
	} {
		after, is := strings.CutPrefix(follows, u.unit)
		if next, _ := utf8.DecodeRuneInString(after); is && next != '/' && !unicode.IsLetter(next) {
			return u.text(), after
		}
	}
	return figure, follows
}
