package main

import (
	"math"
	"os"
	"strconv"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/published"
	"example.org/zymase/units"
)

// Where published constants differ, a plan's intervals are wide enough for it: calcite's solubility and the pK
// of acids have no unknown of their own, since what their rivals part by is little of what is drawn for the
// figure that they move. This fails when a table is added by which they part by more: then they need one.
func TestDrawsCoverTheRivals(t *testing.T) {
	text, err := os.ReadFile("../seltzer/request.json")
	if err != nil {
		t.Fatal(err)
	}
	req, err := plan.ParseRequest(text)
	if err != nil {
		t.Fatal(err)
	}
	p, err := plan.Make(req)
	if err != nil {
		t.Fatal(err)
	}
	figures, err := plan.Draw(req, 400)
	if err != nil {
		t.Fatal(err)
	}
	width := func(what, from string) float64 {
		for _, d := range figures {
			if strings.HasPrefix(d.What, what) {
				if d.Of.From[0].Unknown != from {
					t.Errorf("%s: most of it from %s, not %s", what, d.Of.From[0].Unknown, from)
				}
				return d.Of.High - d.Of.Low
			}
		}
		t.Fatalf("%s is not drawn", what)
		return 0
	}

	// Calcite under air, by the general program that is its rival, 0 to 60 °C: as a part of what is at rest,
	// which is the least alkalinity that a boil leaves.
	rest := p.Water.Boiled.AlkalinityLow.In(units.MilligramPerLitreCaCO3)
	chalk := farthest(t, "calcite_solubility_program", "dissolved", func(in map[string]float64) bool { return in["co2_pressure"] < 1 },
		func(v Value) float64 { return v.Difference / (v.Computed - v.Difference) })
	if drawn := width("alkalinity", "rate of chalk"); !(chalk > 0.01 && chalk*rest < drawn/10) {
		t.Errorf("calcite's rivals part by %.1f %%, %.2g mg/L of %.3g at rest; %.3g are drawn for the rate of chalk", 100*chalk, chalk*rest, rest, drawn)
	}

	// Measured pH of buffers and of half neutralised acids, at the temperatures of a ferment.
	pk, tables := 0.0, 0
	for _, name := range published.Names() {
		table, err := published.Find(name)
		if err != nil {
			t.Fatal(err)
		}
		if table.Checks != "wash_ph" || table.Status != published.Read {
			continue
		}
		tables++
		pk = max(pk, farthest(t, name, "ph", func(in map[string]float64) bool { return in["temperature"] >= 10 && in["temperature"] <= 30 },
			func(v Value) float64 { return v.Difference }))
	}
	if drawn := width("pH at the end", "acids made"); !(tables > 3 && pk > 0.005 && pk < drawn/10) {
		t.Errorf("%d tables of pH: %.3f off at most, %.2f wide is drawn for the acids made", tables, pk, drawn)
	}
}

// farthest is the largest of what a table's rows differ by, of those that count.
func farthest(t *testing.T, name, column string, counts func(map[string]float64) bool, by func(Value) float64) float64 {
	t.Helper()
	table, err := published.Find(name)
	if err != nil {
		t.Fatal(err)
	}
	result, err := check(table)
	if err != nil {
		t.Fatal(err)
	}
	most := 0.0
	for _, row := range result.Rows {
		in := map[string]float64{"temperature": 20}
		for _, f := range append(result.Fixed, row.Inputs...) {
			v, unit := f.Text, ""
			for i, r := range v { // a fixed input has its unit in the text
				if r == ' ' {
					v, unit = v[:i], v[i+1:]
					break
				}
			}
			if x, err := strconv.ParseFloat(v, 64); err == nil && (unit == "" || unit == "°C") {
				in[f.Name] = x
			}
		}
		if !counts(in) {
			continue
		}
		for _, v := range row.Values {
			if v.Name == column {
				most = max(most, math.Abs(by(v)))
			}
		}
	}
	return most
}
