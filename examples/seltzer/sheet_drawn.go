package main

import (
	"fmt"
	"strings"

	"example.org/zymase/examples/seltzer/plan"
)

// worlds is how many a plan is carried through where its figures are drawn.
const worlds = 1000

// drawnSection is how sure each figure is, and what most of its doubt comes from.
func drawnSection(drawn []plan.Drawn) section {
	out := section{title: "How sure, drawn (95 of 100 lie between)"}
	pressed := false
	for _, d := range drawn {
		pressed = pressed || strings.HasPrefix(d.What, "pressure")
		places := places(d)
		value := fmt.Sprintf("%s to %s", number(d.Of.Low, places), number(d.Of.High, places))
		if d.Unit != "" {
			value += " " + d.Unit
		}
		note := "usually " + number(d.Usual, places)
		for i, f := range d.Of.From {
			if i < 3 && f.Share >= leastTold {
				note += fmt.Sprintf("; %.0f %% from %s", 100*f.Share, f.Unknown)
			}
		}
		out.rows = append(out.rows, row{label: d.What, value: value, note: note})
	}
	if pressed {
		out.rows = append(out.rows, row{label: "These pressures are likely ones. Hold against a rating the highest of the plan, which " +
			"counts all sugar as gas and a drink full of air."})
	}
	return out
}

// leastTold is the share of a variance that is worth a word.
const leastTold = 0.05

// places are the decimals that a figure is worth.
func places(d plan.Drawn) int {
	switch {
	case strings.Contains(d.What, "hydrometer"):
		return 4
	case d.Unit == "":
		return 1
	case d.Unit == "g" || strings.HasPrefix(d.Unit, "mg"):
		return 0
	}
	return 2
}
