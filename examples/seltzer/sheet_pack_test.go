package main

import (
	"fmt"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// blockOf is the text of one section of a plan, and its section on the page.
func blockOf(t *testing.T, title string, change func(*plan.Request)) string {
	t.Helper()
	req, err := plan.ParseRequest(builtIn)
	if err != nil {
		t.Fatal(err)
	}
	change(&req)
	p, err := plan.Make(req)
	if err != nil {
		t.Fatal(err)
	}
	for _, s := range sheet(p, style{}) {
		if strings.HasSuffix(s.title, title) {
			var b strings.Builder
			printText(&b, []section{s}, false)
			return strings.Join(strings.Fields(b.String()), " ")
		}
	}
	t.Fatalf("no section %q", title)
	return ""
}

// The verdict, the caution and the mark of a lower bound stand in the pack's own block; a
// primer that may not be weighed is not listed, and a pressure that cannot be set is not set.
func TestPackBlock(t *testing.T) {
	content := func(i int, text string) func(*plan.Request) {
		return func(r *plan.Request) { _ = r.Packs[i].Content.UnmarshalText([]byte(text)) }
	}
	sweet := func(grams string) func(*plan.Request) {
		return func(r *plan.Request) {
			g, err := units.Parse[units.MassConcentration](grams)
			if err != nil {
				t.Fatal(err)
			}
			r.Flavour.Sugar, r.Flavour.Strength, r.Flavour.Added = &g, nil, units.Millilitre.Of(2)
		}
	}
	for _, c := range []struct {
		title     string
		change    func(*plan.Request)
		has, lack []string
	}{
		{"bottles", func(*plan.Request) {}, []string{"priming for all 18", "stored: within the rating given, 8.00 bar gauge"}, []string{"OVER", "above"}},
		{"bottles", func(r *plan.Request) { r.Packs[1].Rating = units.BarGauge.Of(4) },
			[]string{"priming for all none", "over the rating given, 4.00 bar gauge", "OVER THE RATING GIVEN: lower", "do not fill, warm or move it so"}, nil},
		{"Weigh and buy", func(r *plan.Request) { r.Packs[1].Rating = units.BarGauge.Of(4) },
			[]string{"No white sugar is listed for priming the bottles"}, []string{"g priming the bottles"}},
		{"bottles", func(r *plan.Request) {
			full, hot := units.Percent.Of(1), units.Celsius.Of(70)
			r.Packs[1].HeadSpace, r.Packs[1].Store = &full, &hot
		}, []string{"pressure stored, 70 °C above", "highest, at 70 °C above", "hydraulic lock, 8.00 bar gauge", "HYDRAULIC LOCK",
			"The liquid fills the vessel"}, nil},
		{"bottles", func(r *plan.Request) { // still, and warmer than it was filled
			full := units.Percent.Of(0.5)
			r.Packs[1].HeadSpace, r.Packs[1].Temperature, r.Packs[1].Priming = &full, units.Celsius.Of(40), ""
			_ = r.Packs[1].Content.UnmarshalText([]byte("still"))
		}, []string{"pressure served, 40 °C above", "HYDRAULIC LOCK"}, nil},
		{"60 bottles", func(*plan.Request) {}, []string{"8.00 bar gauge; if the drink took up all the air it can and all its sugar makes gas"}, nil},
		// not what is stored, usually
		{"bottles", sweet("500 g/L"), []string{"gas from the flavouring's sugar 2.15 g/L", "it ferments in the bottle"}, []string{"OVER"}},
		{"kegs", sweet("500 g/L"), []string{"the flavouring's sugar fermented: within the rating", "Fermentable sugar is left"}, []string{"OVER"}},
		{"kegs", func(r *plan.Request) { sweet("500 g/L")(r); r.Packs[0].Rating = units.BarGauge.Of(4) },
			[]string{"OVER THE RATING GIVEN: lower the content, take less of the flavouring"}, nil},
		{"kegs", content(0, "1.2 vol"), []string{"set the gauge to nothing", "no regulator can set -0.0"}, nil},
		{"bottles", func(r *plan.Request) { r.Packs[1].Temperature = units.Celsius.Of(-2) },
			[]string{"priming for all 1", "stored: within the rating given, 8.00 bar gauge", "BELOW THE FREEZING POINT: keep the bottles warmer",
				"bursts bottles"}, []string{"OVER"}},
		{"kegs", func(r *plan.Request) { r.Packs[0].Temperature = units.Celsius.Of(-2) },
			[]string{"within the rating given, 9.00 bar gauge", "BELOW THE FREEZING POINT: keep the kegs warmer"}, []string{"OVER"}},
		{"2 kegs", func(r *plan.Request) { r.Packs[0].Size = units.Litre.Of(22) }, []string{"filled 1 full, 1 with 18.0 L", "its room, 4.0 L, takes 1"}, nil},
	} {
		got := blockOf(t, c.title, c.change)
		for _, want := range c.has {
			if !strings.Contains(got, want) {
				t.Errorf("no %q in %s", want, got)
			}
		}
		for _, not := range c.lack {
			if strings.Contains(got, not) {
				t.Errorf("%q in %s", not, got)
			}
		}
	}
	var page strings.Builder
	req, err := plan.ParseRequest(builtIn)
	if err != nil {
		t.Fatal(err)
	}
	req.Packs[1].Rating = units.BarGauge.Of(4)
	p, curves, err := plan.MakeWithCurves(req)
	if err != nil {
		t.Fatal(err)
	}
	if err := printHTML(&page, p, curves, style{}); err != nil {
		t.Fatal(err)
	}
	if n := strings.Count(page.String(), "OVER THE RATING GIVEN"); n != 1 {
		t.Error(fmt.Sprint("the page says it so often: ", n))
	}
}
