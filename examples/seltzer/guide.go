package main

import (
	"regexp"
	"strconv"
	"strings"

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
// the litre is the same in both.
func (s style) inWords(text string) string {
	if !s.us {
		return text
	}
	return metric.ReplaceAllStringFunc(text, func(found string) string {
		at := metric.FindStringSubmatch(found)
		x, err := strconv.ParseFloat(at[1], 64)
		if err != nil {
			return found
		}
		n := checked.Number(x)
		switch at[2] {
		case "°C":
			return s.temperature(units.Celsius.Of(n)) + at[3]
		case "K", "kelvin":
			return number(1.8*x, 0) + " °F" + at[3]
		case "bar gauge":
			return s.gauge(units.BarGauge.Of(n)) + at[3]
		case "kg":
			return s.mass(units.Kilogram.Of(n)) + at[3]
		case "g":
			return s.mass(units.Gram.Of(n)) + at[3]
		case "mL":
			return s.volume(units.Millilitre.Of(n)) + at[3]
		}
		return s.volume(units.Litre.Of(n)) + at[3]
	})
}

// metric is a number with a unit that is not by anything.
var metric = regexp.MustCompile(`(-?\d+(?:\.\d+)?) (°C|K|kelvin|bar gauge|kg|g|mL|L)($|[^/\pL])`)
