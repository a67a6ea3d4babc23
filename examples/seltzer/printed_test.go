package main

import (
	"regexp"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A sheet in US units names packs, and a scale in ounces shows grams, as a brewer would: no unit of the other
// system alone, no digits that nobody measures.
func TestNamesAndWeightsInUnitsOfTheSheet(t *testing.T) {
	req, err := plan.ParseRequest(builtIn)
	if err != nil {
		t.Fatal(err)
	}
	ounce, err := units.ParseExact[units.Mass]("1 oz")
	if err != nil {
		t.Fatal(err)
	}
	req.Scales.Sugar, req.Portions = ounce, 3
	small := req.Packs[1]
	small.Size = units.USFluidOunce.Of(11.2)
	small.Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(1)}
	req.Packs[0].Volume, small.Volume = units.Litre.Of(30), units.Litre.Of(10)
	req.Packs = append(req.Packs, small)
	p, err := plan.Make(req)
	if err != nil {
		t.Fatal(err)
	}
	long, litres, twice := regexp.MustCompile(`\d\.\d{5}`), regexp.MustCompile(`\d (L|bar gauge|°C)\b`), regexp.MustCompile(`oz \([^)]* oz\)`)
	for _, s := range []style{{}, {us: true}} {
		var b strings.Builder
		printText(&b, sheet(p, s), false)
		printCard(&b, cardOf(p, s))
		for _, line := range strings.Split(b.String(), "\n") {
			if long.MatchString(line) || twice.MatchString(line) || s.us && litres.MatchString(line) && !strings.Contains(line, "20/20 °C") {
				t.Errorf("us %v: %s", s.us, line)
			}
		}
	}
}

// What is too little for the scale is listed with what is wanted of it, and the caution says how much that is.
func TestTooLittleForTheScale(t *testing.T) {
	block := blockOf(t, "Weigh and buy", func(r *plan.Request) {
		r.Packs[1].Sweeten = &plan.Sweeten{What: "sucralose", Like: units.GramPerLitre.Of(1)}
	})
	if !strings.Contains(block, "sucralose 31 mg, by a solution") {
		t.Error(block)
	}
	coarse := func(r *plan.Request) { _ = r.Scales.Small.UnmarshalText([]byte("100 g")) }
	if block := blockOf(t, cautionTitle, coarse); !strings.Contains(block, "The dose of diammonium phosphate, 17") {
		t.Error(block)
	}
}

// An interval that nothing known moves is not printed as one; a keg without gas of its own is not in vacuum; the
// water that wakes the yeast is the batch's own.
func TestWhatASheetMaySay(t *testing.T) {
	a := plan.AcidityPlan{Buffer: &plan.Weight{What: "potassium bicarbonate"}, Low: units.Gram.Of(2), High: units.Gram.Of(2)}
	if err := a.Buffer.Mass.UnmarshalText([]byte("2 g")); err != nil {
		t.Fatal(err)
	}
	if note := bufferRow(a, style{}).note; note != "dissolve it in the wash before the yeast" {
		t.Error(note)
	}
	degas := func(r *plan.Request) { _ = r.Packs[0].Content.UnmarshalText([]byte("degassed")) }
	if block := blockOf(t, "kegs", degas); !strings.Contains(block, "pressure of its own none") || strings.Contains(block, " -") {
		t.Error(block)
	}
	if block := blockOf(t, "Yeast", degas); !strings.Contains(block, "412 mL water at 27 °C for 20 min; of the batch's water") {
		t.Error(block)
	}
}

// What is due while it ferments stands in the order of the sugar used, nutrient and portions together, and the other
// half of a buffer has its step where no nutrient is due with it; nothing is to be taken of what is not weighed.
func TestOrderWhileItFerments(t *testing.T) {
	req, err := plan.ParseRequest(builtIn)
	if err != nil {
		t.Fatal(err)
	}
	make := func(change func(*plan.Request)) plan.Plan {
		r := req
		change(&r)
		p, err := plan.Make(r)
		if err != nil {
			t.Fatal(err)
		}
		return p
	}
	names := func(p plan.Plan) (ids []string) {
		for _, st := range byGravity(p, style{}) {
			ids = append(ids, st.id)
		}
		return ids
	}
	p := make(func(r *plan.Request) { r.Portions = 3 })
	if got := strings.Join(names(p), " "); got != "feed-2 portion-2 feed-3 portion-3" {
		t.Error(got)
	}
	if when := byGravity(p, style{})[2].when; !strings.Contains(when, ", after portion 2") {
		t.Error(when)
	}
	p = make(func(r *plan.Request) {
		r.Nutrient.Sources = []string{"diammonium phosphate"}
		_ = r.Scales.Small.UnmarshalText([]byte("12 g")) // one addition
	})
	if got := names(p); !p.Acidity.Halves || strings.Join(got, " ") != "buffer-2" {
		t.Error(p.Acidity.Halves, got)
	}
	p.Nutrient.Stages = nil
	if got := names(p); strings.Join(got, " ") != "buffer-2" {
		t.Error(got)
	}
	_ = p.Acidity.Buffer.Mass.UnmarshalText([]byte("0 g"))
	if got := names(p); len(got) > 0 {
		t.Error(got)
	}
}

// An original gravity that nothing known moves has no ±, an amount of nothing no line, and a hundredth of a gram no ounces.
func TestNothingIsNotPrinted(t *testing.T) {
	cider, ok := drinksToTry(t)["cider"]
	if !ok || cider.Gravity.OriginalUncertainty >= 0.00005 {
		t.Fatal("not the case", cider.Gravity)
	}
	if r := gravitySection(cider, style{}).rows[0]; strings.Contains(r.value, "±") || strings.Contains(r.note, "mostly") {
		t.Error(r)
	}
	if text := blockOf(t, "Mass balance", func(r *plan.Request) { r.Kettle = plan.Kettle{} }); strings.Contains(text, " 0.000 kg") {
		t.Error(text)
	}
	w := plan.Weight{What: "zinc sulfate heptahydrate"}
	if err := w.Mass.UnmarshalText([]byte("0.013 g")); err != nil {
		t.Fatal(err)
	}
	if got := (style{us: true}).weight(w); got != "0.013 g" {
		t.Error(got)
	}
}
