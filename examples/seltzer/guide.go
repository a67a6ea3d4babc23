package main

import (
	"strings"

	"example.org/zymase/examples/seltzer/plan"
)

// guideSection is what can explain something seen, and what no figure tells.
func guideSection(g plan.Guide) section {
	out := section{title: "What is wrong: " + g.Seen}
	out.rows = append(out.rows, guideRows(g)...)
	out.rows = append(out.rows, row{label: "No figure tells:"})
	for _, text := range g.Rest {
		out.rows = append(out.rows, row{label: "- " + text})
	}
	return out
}

// guideRows are the figures, those that can explain it first and said so.
func guideRows(g plan.Guide) []row {
	var rows []row
	for _, l := range g.Figures {
		says := "hardly: "
		if l.Can {
			says = "can be: "
		}
		rows = append(rows, row{label: l.What, value: l.Value, note: strings.TrimSpace(says + l.Says)})
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
func wrong(request []byte, seen string) (answerGuide, error) {
	req, err := plan.ReadRequest(request)
	if err != nil {
		return answerGuide{}, err
	}
	g, err := plan.Wrong(req, seen)
	if err != nil {
		return answerGuide{}, err
	}
	out := answerGuide{Rest: g.Rest}
	for _, r := range guideRows(g) {
		out.Figures = append(out.Figures, guideRow{r.label, r.value, r.note})
	}
	return out, nil
}
