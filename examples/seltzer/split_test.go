package main

import (
	"bytes"
	"fmt"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// splitBatch is one batch in kegs of one size, none of them full but the second, each another drink, and primed bottles last.
func splitBatch(t *testing.T) plan.Plan {
	t.Helper()
	req, err := plan.ParseRequest(builtIn)
	if err != nil {
		t.Fatal(err)
	}
	keg, bottle := req.Packs[0], req.Packs[1]
	keg.Size = units.Litre.Of(19)
	req.Packs = nil
	for _, litres := range []units.Volume{units.Litre.Of(5), units.Litre.Of(19), units.Litre.Of(18)} {
		keg.Volume = litres
		req.Packs = append(req.Packs, keg)
	}
	bottle.Volume = units.Litre.Of(18)
	req.Packs = append(req.Packs, bottle)
	req.Packs[0].Label, req.Packs[1].Label = "green", "yellow"
	req.Packs[1].Sweeten = &plan.Sweeten{What: "white sugar", Like: units.GramPerLitre.Of(40)}
	req.Packs[0].Flavour = &plan.Flavour{Name: "lime", Sample: units.Millilitre.Of(200), Added: units.Millilitre.Of(2),
		Tried: []units.Volume{units.Millilitre.Of(1), units.Millilitre.Of(3)}}
	p, err := plan.Make(req)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

// On the card of a batch that is split, each step says which pack it is of, and what to do with just that one.
func TestCardOfASplitBatch(t *testing.T) {
	p := splitBatch(t)
	c := cardOf(p, style{})
	text := map[string]string{}
	for _, st := range c.steps {
		var b bytes.Buffer
		printCard(&b, card{steps: []step{st}})
		text[st.id] = strings.Join(strings.Fields(b.String()), " ")
	}
	for id, has := range map[string][]string{
		"fill-1":  {"Fill 1 keg of 19 L (green label)", "5.0 L of drink, from the bottom", "its room, 14.0 L, takes", "none of those that were tried"},
		"fill-2":  {"Fill 1 keg of 19 L (yellow label)", "19 L of drink, from the bottom", "The kegs of 19 L (yellow label) are sweetened with"},
		"fill-3":  {"Fill 1 keg of 19 L", "18.0 L of drink"},
		"prime-4": {"Prime only at the dry floor"},
		"close":   {"Kegs of 19 L (green label): purge", "regulator, kegs of 19 L (green label)", "regulator, kegs of 19 L (yellow label)"},
		"store":   {"Kegs of 19 L (yellow label): on gas", "kegs of 19 L (yellow label), closed and as warm"},
		"open":    {"kegs of 19 L, at 4 °C", "bottles, at 6 °C"},
	} {
		for _, want := range has {
			if !strings.Contains(text[id], want) {
				t.Errorf("%s: no %q in %s", id, want, text[id])
			}
		}
	}
	for id, not := range map[string]string{"fill-1": "19 L of drink", "fill-3": "19 L of drink", "flavour": "lime"} {
		if strings.Contains(text[id], not) {
			t.Errorf("%s: %q in %s", id, not, text[id])
		}
	}
	for _, text := range c.before {
		if !strings.Contains(text, "The keg of 19 L (yellow label)") {
			t.Errorf("before all: %s", text)
		}
	}
}

// What is weighed or measured for a fill is named once in it, so that nobody doses twice; a drink without gas is degassed first.
func TestFillNamesADoseOnce(t *testing.T) {
	p := drinksToTry(t)["five_drinks"]
	sheets := map[string]string{}
	for _, s := range sheet(p, style{}) {
		sheets[s.title] = fmt.Sprint(s.rows)
	}
	for _, st := range cardOf(p, style{}).steps {
		if !strings.HasPrefix(st.id, "fill-") {
			continue
		}
		text := strings.Join(st.do, "\n")
		for _, r := range st.weigh {
			if strings.Contains(text, r.value+" of "+r.label) {
				t.Errorf("%s: %s twice: %s", st.id, r.label, text)
			}
		}
		if degassed := st.id == "fill-5"; strings.Contains(text, "Degas it") != degassed {
			t.Errorf("%s: %s", st.id, text)
		}
	}
	if text := sheets["1 keg of 10 L (white label)"]; !strings.Contains(text, "degas it before it is filled") {
		t.Error(text)
	}
}

// Two packs with one flavouring at two doses: what is said of each stands at its own fill, and names it.
func TestCardOfTwoDoses(t *testing.T) {
	p := splitBatch(t)
	lime, more := *p.Request.Packs[0].Flavour, *p.Request.Packs[0].Flavour
	more.Added, more.Strength = units.Millilitre.Of(20), new(units.PercentVolume.Of(60)) // 5.5 % vol of it
	p.Request.Packs[2].Flavour, p.Request.Packs[2].Strength = &more, new(units.PercentVolume.Of(8))
	p.Request.Packs[0].Flavour = &lime
	p, err := plan.Make(p.Request)
	if err != nil {
		t.Fatal(err)
	}
	for _, st := range cardOf(p, style{}).steps {
		text, dose := strings.Join(st.cautions, "\n"), map[string]string{"fill-1": "dose, 2.00 mL of lime", "fill-3": "dose, 20.00 mL of lime"}[st.id]
		if dose != "" && (!strings.Contains(text, dose) || strings.Count(text, "mL of lime") != 1) {
			t.Errorf("%s: %s", st.id, text)
		}
		if strings.Contains(text, "more than 49 %") != (st.id == "fill-3") {
			t.Errorf("%s: %s", st.id, text)
		}
	}
}

// On the sheet of a batch that is split, no two sections have one title, nothing is said of full kegs where there is none,
// and what is over its rating by its sweetener is cured by it.
func TestSheetOfASplitBatch(t *testing.T) {
	p := splitBatch(t)
	all, titles := sheet(p, style{}), map[string]string{}
	for _, s := range all {
		var b bytes.Buffer
		printText(&b, []section{s}, false)
		if _, twice := titles[s.title]; twice {
			t.Errorf("%s stands twice", s.title)
		}
		titles[s.title] = strings.Join(strings.Fields(b.String()), " ")
	}
	green, yellow := titles["1 keg of 19 L (green label)"], titles["1 keg of 19 L (yellow label)"]
	if green == "" || strings.Contains(green, "for each keg") || !strings.Contains(green, "a litre") {
		t.Errorf("none is full: %s", green)
	}
	if !strings.Contains(yellow, "OVER THE RATING GIVEN: lower the content, sweeten them less or with what yeast leaves, keep") {
		t.Errorf("%s", yellow)
	}
	for i := range p.Uncertainty.Kegs {
		if want := fmt.Sprintf("content of the %s ±", p.Packs[i].Named()); !strings.Contains(titles["How sure (k = 2)"], want) {
			t.Errorf("not there: %s", want)
		}
	}
}

// The batch's label speaks of the packs that have none of their own, and says so; where each has one, it is the mean of all.
func TestLabelOfASplitBatch(t *testing.T) {
	p := splitBatch(t)
	text := func(req plan.Request) string {
		p, err := plan.Make(req)
		if err != nil {
			t.Fatal(err)
		}
		var b bytes.Buffer
		printText(&b, []section{labelSection(p, style{})}, false)
		return strings.Join(strings.Fields(b.String()), " ")
	}
	if got := text(p.Request); !strings.Contains(got, "every pack is within ±0.3") || strings.Contains(got, "mean") {
		t.Error(got)
	}
	q := p.Request
	_ = q.Packs[0].Content.UnmarshalText([]byte("still"))
	still, err := plan.Make(q)
	if err != nil {
		t.Fatal(err)
	}
	for _, text := range []string{kegFill("19 L", still.Packs[0], style{}), fmt.Sprint(kegRows(still.Packs[0], style{}))} {
		if !strings.Contains(text, "with nitrogen; of CO2 it takes") {
			t.Errorf("a still keg that is not full: %s", text)
		}
	}
	p.Request.Packs[0].Strength = new(units.PercentVolume.Of(3))
	if got := text(p.Request); !strings.Contains(got, "every pack without a strength of its own is within ±0.3") {
		t.Error(got)
	}
	for i := range p.Request.Packs {
		p.Request.Packs[i].Sweeten = &plan.Sweeten{What: "erythritol", Like: units.GramPerLitre.Of(7)}
	}
	if got := text(p.Request); !strings.Contains(got, "Each pack has a label of its own: this is the mean of those without a strength of their own.") ||
		!strings.Contains(got, "polyols 1.2 g") {
		t.Error(got)
	}
}

// What is due is named by what it is of, once; what is filled under counter-pressure is carbonated first, and does not condition.
func TestDaysOfASplitBatch(t *testing.T) {
	req := splitBatch(t).Request
	can := req.Packs[3]
	can.Kind, can.Priming, can.Filled, can.Volume = "can", "", "counter-pressure", units.Litre.Of(9)
	req.Packs[3].Volume = units.Litre.Of(9)
	req.Packs = append(req.Packs, can)
	p, err := plan.Make(req)
	if err != nil {
		t.Fatal(err)
	}
	days := map[string]string{}
	for _, e := range p.Schedule {
		if days[e.What] != "" {
			t.Errorf("%s stands twice", e.What)
		}
		days[e.What] = e.Day
	}
	fill := days["carbonated: fill under counter-pressure"]
	if fill == "" || fill != days["kegs ready"] || days["bottles ready"] <= fill || days["cans ready"] != "" {
		t.Errorf("%v", days)
	}
	for _, st := range cardOf(p, style{}).steps {
		switch st.id {
		case "fill-5":
			if !strings.Contains(st.when, fill) {
				t.Errorf("%q, want %s", st.when, fill)
			}
		case "store":
			for _, line := range st.do {
				if strings.HasPrefix(line, "Cans") && strings.Contains(line, "or so") {
					t.Error(line)
				}
			}
		}
	}
	req.Packs[3].Kind = "can"
	req.Packs = req.Packs[:4]
	req.Packs[3].Volume = units.Litre.Of(18)
	if p, err = plan.Make(req); err != nil {
		t.Fatal(err)
	}
	if last := p.Schedule[len(p.Schedule)-1]; last.What != "cans ready" {
		t.Errorf("primed cans: %+v", last)
	}
}
