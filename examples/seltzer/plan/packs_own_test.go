package plan_test

import (
	"fmt"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
)

// Each pack is the drink that was asked for, and together they take what the fermenter gives.
func TestFiveDrinks(t *testing.T) {
	r := kindOf(t, "five_drinks")
	p := made(t, r)
	base := 0.0
	for i, k := range p.Packs {
		base += k.Base.In(units.Litre)
		want := r.Strength.In(units.PercentVolume)
		if s := r.Packs[i].Strength; s != nil {
			want = s.In(units.PercentVolume)
		}
		near(t, "strength", k.Strength.In(units.PercentVolume), want, 0.005)
	}
	near(t, "base", base, p.Vessels[6].Cold.In(units.Litre)-p.Vessels[7].Cold.In(units.Litre), 1e-9)
	near(t, "left with the yeast, asked for 1.5 L", p.Vessels[7].Cold.In(units.Litre), 1.5, 0.001*base)

	// 20 g/L of sugar in erythritol of 0.6 to 0.8 (the middle of the reviews) is 28.6 g/L; 2 g/L of acid.
	can := p.Packs[2]
	near(t, "erythritol, g", can.Sweetener.Mass.Quantity().In(units.Gram), 9.9*20/0.7, 0.1)
	near(t, "acid, g", can.Acid.Mass.Quantity().In(units.Gram), 9.9*2, 0.1)
	near(t, "sugar on the label, g/L", can.Own.Sugars.In(units.GramPerLitre), 15*can.Flavouring.In(units.Litre)/9.9, 0.01)
	// Citric acid of 10.4 mmol/L (192.12 g/mol), pK 3.13, in what ends at pH 3.6: by hand, without the drink's
	// own buffers, √(10^-3.13 · 0.0104) is pH 2.56; those of the drink raise it.
	if ph := can.PH; ph.With < 2.56 || ph.With > 3.1 || ph.Without < 3.3 || ph.Without > 4.2 {
		t.Errorf("%+v", *ph)
	}
	near(t, "water, kg", can.Water.In(units.Kilogram)+can.Base.In(units.Litre)+can.Flavouring.In(units.Litre)+0.283*0.62+0.0198*0.6, 9.9, 0.05)

	// A keg of 19 L takes 18.
	if k := p.Packs[0]; k.Count != 0 || k.PartFull == nil || k.PartFull.Drink.In(units.Litre) != 18 {
		t.Errorf("%+v", k)
	}
	if k := p.Packs[4]; !k.Content.IsZero() || !k.Highest.Sugar {
		t.Errorf("degassed and sweet: %+v", k.Highest)
	}
	if p.Packs[3].Taste != "" || !p.Packs[3].Flavouring.IsZero() {
		t.Error("flavoured without")
	}
}

// Under counter-pressure: served with its content, filled with a little more, from a keg at the
// pressure of a keg; no sugar in it.
func TestCounterPressure(t *testing.T) {
	r := request(t)
	c := &r.Packs[1]
	c.Kind, c.Priming, c.Filled = "can", "", "counter-pressure"
	c.FilledAt = new(units.Celsius.Of(2))
	p := made(t, r)
	k := p.Packs[1]
	near(t, "served", k.Bottle.Served.In(units.GramCO2PerLitre), k.Content.In(units.GramCO2PerLitre), 1e-6)
	// 4 % of head-space closed at 0.94 bar and served at the drink's 2.2 bar takes the gas of 1.1 bar: 1.98 g/L · 1.1 · 0.04/0.96.
	near(t, "more in the filling", k.Bottle.Filling.Content.In(units.GramCO2PerLitre)-k.Content.In(units.GramCO2PerLitre), 1.9*1.1*0.04/0.96, 0.02)
	for _, w := range p.Weigh {
		if strings.HasPrefix(w.For, "priming") {
			t.Errorf("%+v", w)
		}
	}
	// The batch carried forward shows the same, with the usual of all that is not known.
	drawn, err := plan.Draw(r, 10)
	if err != nil {
		t.Fatal(err)
	}
	seen := 0
	for _, d := range drawn {
		switch d.What {
		case "content of the cans when served":
			near(t, d.What, d.Usual, k.Bottle.Served.In(units.GramCO2PerLitre), 0.01)
		case "pressure of the cans, stored":
			near(t, d.What, d.Usual, k.Bottle.StoreGauge.In(units.BarGauge), 0.03) // its litres are without gas: 1.4 mL less head-space
		default:
			continue
		}
		seen++
	}
	if seen != 2 {
		t.Errorf("%+v", drawn)
	}
	// A keg at that temperature with that content is set to the same.
	r.Packs[0].Temperature = *c.FilledAt
	if err := r.Packs[0].Content.UnmarshalText([]byte(k.Bottle.Filling.Content.Text(units.GramCO2PerLitre, 6))); err != nil {
		t.Fatal(err)
	}
	near(t, "gauge", made(t, r).Packs[0].Gauge.In(units.BarGauge), k.Bottle.Filling.Gauge.In(units.BarGauge), 0.002)
	// Without the air and the primer of a bottle its pressure is lower.
	if primed := made(t, request(t)).Packs[1]; k.Bottle.ServedGauge.Compare(primed.Bottle.ServedGauge) >= 0 {
		t.Errorf("%v, primed %v", k.Bottle.ServedGauge, primed.Bottle.ServedGauge)
	}
}

// A bottle that stretches takes more gas for the same content and has less pressure, but is rated as if it
// did not.
func TestStretches(t *testing.T) {
	r := request(t)
	glass := made(t, r).Packs[1]
	r.Packs[1].MadeOf, r.Packs[1].Stretch = "PET", new(units.Percent.Of(1))
	pet := made(t, r)
	k := pet.Packs[1]
	near(t, "served", k.Bottle.Served.In(units.GramCO2PerLitre), glass.Bottle.Served.In(units.GramCO2PerLitre), 0.001)
	// 3 % of the bottle at 2 to 3 bar more of head-space, at 3 bar absolute: a sixth of a gram of CO2 a litre.
	more := k.Bottle.Priming.Asked.In(units.Gram) - glass.Bottle.Priming.Asked.In(units.Gram)
	near(t, "more sugar, g/L", more/20, 0.02*3.1*1.9/0.514, 0.15)
	if k.Bottle.StoreGauge.Compare(glass.Bottle.StoreGauge) >= 0 || k.Highest.Gauge.Compare(k.Bottle.StoreGauge) <= 0 {
		t.Errorf("stored %v, highest %v; glass %v", k.Bottle.StoreGauge, k.Highest.Gauge, glass.Bottle.StoreGauge)
	}
	if !strings.Contains(strings.Join(pet.Cautions, "\n"), "PET stretches") {
		t.Error("no caution of PET")
	}
	r = request(t)
	r.Packs[0].MadeOf = "PET"
	said := strings.Join(made(t, r).Cautions, "\n")
	if !strings.Contains(said, "Its rating falls when it is warm") || strings.Contains(said, "no stretch is given") {
		t.Errorf("a keg of PET: %s", said)
	}
}

// A trial of several doses: each of them for a pack, the one that was liked among them.
func TestTrial(t *testing.T) {
	p := made(t, kindOf(t, "five_drinks"))
	liked := 0
	for _, d := range p.Packs[1].Trial {
		// By proportion: 12.8 L of base of 15 L of drink, 0.5 L of it in a bottle.
		near(t, "for each, mL", d.ForEach.In(units.Millilitre), d.InSample.In(units.Millilitre)/200*500*p.Packs[1].Base.In(units.Litre)/15, 0.001)
		if d.Liked {
			liked++
			near(t, "liked for all", d.ForAll.In(units.Litre), p.Packs[1].Flavouring.In(units.Litre), 1e-12)
		}
	}
	if liked != 1 || len(p.Packs[1].Trial) != 3 {
		t.Errorf("%+v", p.Packs[1].Trial)
	}
	r := request(t)
	f := *r.Flavour
	r.Flavour = &f
	for added, says := range map[float64]string{0.9: "is the most that was tried", 0.3: "is the least that was tried",
		0.5: "is none of those that were tried", 0.6: ""} {
		f.Tried = []units.Volume{units.Millilitre.Of(0.3), units.Millilitre.Of(0.6), units.Millilitre.Of(0.9)}
		f.Added = units.Millilitre.Of(checked.Number(added))
		said := strings.Join(made(t, r).Cautions, "\n")
		if says != "" && !strings.Contains(said, says) || says == "" && strings.Contains(said, "tried: ") {
			t.Errorf("%v mL: %s", added, said)
		}
	}
}

// Whatever yeast leaves can sweeten a pack. Lactose of a fifth of sugar's sweetness (Public Health Nutr. 26 (2022) 952,
// table 2) is sold as its monohydrate, 360.31 g/mol for 342.30.
func TestEverySweetener(t *testing.T) {
	for _, s := range finish.Sweeteners() {
		if !s.Survives() {
			continue
		}
		r := request(t)
		r.Packs[0].Sweeten = &plan.Sweeten{What: s.Name(), Like: units.GramPerLitre.Of(10)}
		k := made(t, r).Packs[0]
		near(t, s.Name()+", % vol", k.Strength.In(units.PercentVolume), 4.6, 0.01) // 10 g of sugar
		if s.Name() == "lactose" {
			near(t, "lactose, g", k.Sweetener.Mass.Quantity().In(units.Gram), 40*10/0.2*360.31/342.30, 0.2)
			if k.Sweetener.What != "lactose monohydrate" || k.Highest.Sugar {
				t.Errorf("%+v, %+v", k.Sweetener, k.Highest)
			}
		}
	}
}

// A drink without gas has a pH with its acid too, that of its acid alone.
func TestDegassedAndSour(t *testing.T) {
	for _, c := range []struct {
		pack, altitude float64
	}{{0, 640}, {0, 1040}, {1, 640}, {1, 1040}, {1, 80}, {0, 0}, {0, 137}, {1, 311}, {0, 2000}} {
		r := request(t)
		r.Place = plan.Place{Altitude: new(units.Metre.Of(checked.Number(c.altitude)))}
		p := &r.Packs[int(c.pack)]
		p.Priming = ""
		if err := p.Content.UnmarshalText([]byte("degassed")); err != nil {
			t.Fatal(err)
		}
		p.Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(2)}
		k := made(t, r).Packs[int(c.pack)]
		if ph := k.PH; ph.With < 2.5 || ph.With > 3.2 || ph.Without < 3.3 || ph.Without > 4.2 {
			t.Errorf("%+v", *ph)
		}
	}
}

// What a pack cannot be is refused by its field.
func TestRefusedPacks(t *testing.T) {
	for _, c := range []struct {
		change func(*plan.Request)
		says   string
	}{
		{func(r *plan.Request) { r.Packs[1].Filled = "by hand" }, `packs[1].filled: "by hand": one of "counter-pressure"`},
		{func(r *plan.Request) { r.Packs[1].Filled = "counter-pressure" }, "packs[1].prime_with: white sugar: left out"},
		{func(r *plan.Request) { r.Packs[0].Filled = "counter-pressure" }, "packs[0].filled: counter-pressure: left out for a keg"},
		{func(r *plan.Request) { r.Packs[1].FilledAt = new(units.Celsius.Of(2)) }, "packs[1].filled_at: given: only with"},
		{func(r *plan.Request) { r.Packs[1].MadeOf = "wood" }, `packs[1].made_of: "wood": one of`},
		{func(r *plan.Request) { r.Packs[1].MadeOf, r.Packs[1].Stretch = "glass", new(units.Percent.Of(1)) }, "packs[1].stretch: 1.00 %: left out: glass"},
		{func(r *plan.Request) { r.Packs[0].Stretch = new(units.Percent.Of(1)) }, "packs[0].stretch: 1.00 %: left out for a keg"},
		{func(r *plan.Request) { r.Packs[1].Stretch = new(units.Percent.Of(6)) }, "packs[1].stretch: 6 %: 0 to 5 %"},
		{func(r *plan.Request) { r.Packs[0].Strength = new(units.PercentVolume.Of(20)) }, "packs[0].strength: 20 % vol: 0.5 to 15 % vol"},
		{func(r *plan.Request) {
			r.Packs[1].Sweeten = &plan.Sweeten{What: "white sugar", Like: units.GramPerLitre.Of(10)}
		}, "packs[1].sweeten.what: white sugar: one that yeast leaves"},
		{func(r *plan.Request) {
			r.Packs[1].Sweeten = &plan.Sweeten{What: "salt", Like: units.GramPerLitre.Of(10)}
		}, "packs[1].sweeten.what: salt"},
		{func(r *plan.Request) {
			r.Packs[1].Sweeten = &plan.Sweeten{What: "erythritol", Like: units.GramPerLitre.Of(300)}
		}, "packs[1].sweeten.like_sugar: 300 g/L: 0.1 to 200 g/L"},
		{func(r *plan.Request) {
			r.Packs[1].Acid = &plan.PackAcid{What: "vinegar", Dose: units.GramPerLitre.Of(1)}
		}, "packs[1].acid.what: vinegar"},
		{func(r *plan.Request) {
			r.Packs[1].Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(30)}
		}, "packs[1].acid.dose: 30 g/L"},
		{func(r *plan.Request) { r.Packs[1].Flavour = &plan.Flavour{Name: "lime"} }, "packs[1].flavour.sample: missing or zero"},
		{func(r *plan.Request) {
			r.Packs[0].Flavour, r.Packs[1].Flavour = &plan.Flavour{Name: "none"}, &plan.Flavour{Name: "none"}
		}, "flavour: elderflower and cucumber extract: left out: every pack"},
		{func(r *plan.Request) { r.Flavour.Tried = []units.Volume{units.Litre.Of(1)} }, "flavour.tried[0]: 1000 mL: 0.0001 to 40 mL"},
		{func(r *plan.Request) {
			sweet := *r.Flavour
			sweet.Strength, sweet.Sugar, sweet.Added = nil, new(units.GramPerLitre.Of(600)), units.Millilitre.Of(20)
			r.Packs[1].Flavour = &sweet
		}, "packs[1].flavour.added: 20 mL in 200 mL: at most "},
	} {
		r := request(t)
		r.Packs = append([]plan.Pack(nil), r.Packs...)
		f := *r.Flavour
		r.Flavour = &f
		c.change(&r)
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), c.says) {
			t.Errorf("%v, want %s", err, c.says)
		}
		// What has a nearest is planned there.
		if near, changes, err := plan.Nearest(r); strings.Contains(c.says, "at most") &&
			(err != nil || len(changes) == 0 || near.Packs[1].Flavour.Added.Compare(r.Packs[1].Flavour.Added) >= 0) {
			t.Errorf("nearest: %v, %q", err, changes)
		}
	}
}

// Polyols that sweeten count 10 kJ/g and 2.4 kcal/g on a label, erythritol nothing (Regulation (EU) 1169/2011, annex XIV, read), where
// carbohydrate counts 17 and 4; in the US erythritol nothing too (21 CFR 101.9(c)(1)(i)(F), recalled from memory), sorbitol 2.6 kcal/g (read
// second hand). Lactose is a sugar: a disaccharide (annex I, read).
func TestEnergyOfSweeteners(t *testing.T) {
	for _, law := range []string{"EU", "US"} {
		r := request(t)
		r.Label.Law = law
		r.Packs[0].Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(0.01)} // a label of its own
		plain := made(t, r).Packs[0].Own
		for _, c := range []struct {
			what                    string
			like, grams             float64 // g/L
			kJ, kcal, kcalUS, sugar float64 // a gram
		}{
			{"erythritol", 35, 50, 0, 0, 0, 0}, {"sorbitol", 30, 50, 10, 2.4, 2.6, 0}, {"xylitol", 50, 50, 10, 2.4, 2.4, 0},
			{"maltodextrin", 10, 50, 17, 4, 4, 0}, {"lactose", 10, 50, 17, 4, 4, 1},
		} {
			r.Packs[0].Sweeten = &plan.Sweeten{What: c.what, Like: units.GramPerLitre.Of(checked.Number(c.like))}
			for _, all := range []bool{false, true} {
				if r.Packs[1].Sweeten = nil; all { // then the batch's label is that of all
					r.Packs[1].Sweeten = r.Packs[0].Sweeten
				}
				p := made(t, r)
				own := p.Packs[0].Own
				kcal, kJ := c.kcal, c.kJ
				if law == "US" {
					kcal = c.kcalUS
				}
				near(t, law+" "+c.what+", kcal", own.Kilocalories.In(units.Kilocalorie)-plain.Kilocalories.In(units.Kilocalorie), kcal*c.grams/10, 0.5)
				near(t, law+" "+c.what+", sugars", own.Sugars.In(units.GramPerLitre)-plain.Sugars.In(units.GramPerLitre), c.sugar*c.grams, 0.1)
				if law == "EU" {
					near(t, c.what+", kJ", own.Kilojoules.In(units.Kilojoule)-plain.Kilojoules.In(units.Kilojoule), kJ*c.grams/10, 2)
					near(t, c.what+", carbohydrate", own.Carbohydrate.In(units.GramPerLitre)-plain.Carbohydrate.In(units.GramPerLitre), c.grams, 0.2)
				}
				if all {
					near(t, law+" "+c.what+", batch's kcal", p.Label.Kilocalories.In(units.Kilocalorie), own.Kilocalories.In(units.Kilocalorie), 0.5)
					near(t, law+" "+c.what+", batch's sugars", p.Label.Sugars.In(units.GramPerLitre), own.Sugars.In(units.GramPerLitre), 0.1)
				}
			}
		}
	}
}

// What is asked to sweeten a pack is in it, or refused: never left out, whoever knows its name; and no sugar in a primed one.
func TestNoSweetenerIsLeftOut(t *testing.T) {
	names := []string{"salt", "", "malt", "Erythritol", "E 968", "dextrose monohydrate", "fructose", "maple syrup", "honey", "lactose monohydrate"}
	for _, s := range finish.Sweeteners() {
		names = append(names, s.Name())
	}
	for i := range 2 { // a keg, a primed bottle
		for _, what := range names {
			r := request(t)
			r.Packs[i].Sweeten = &plan.Sweeten{What: what, Like: units.GramPerLitre.Of(10)}
			p, err := plan.Make(r)
			if err != nil {
				if !strings.HasPrefix(err.Error(), fmt.Sprintf("packs[%d].sweeten.what: ", i)) {
					t.Errorf("%q: %v", what, err)
				}
				continue
			}
			w := p.Packs[i].Sweetener
			if w == nil {
				t.Errorf("packs[%d] is not sweetened with %q", i, what)
				continue
			}
			if s, err := finish.ParseSweetener(what); i == 1 && what != "lactose monohydrate" && (err != nil || !s.Survives()) {
				t.Errorf("primed, and sweetened with %q", what)
			}
		}
	}
	r := request(t)
	r.Packs[0].Sweeten = &plan.Sweeten{What: "maltose", Like: units.GramPerLitre.Of(10)}
	if _, err := plan.Make(r); err == nil || !strings.Contains(err.Error(), "erythritol") || !strings.Contains(err.Error(), "dextrose monohydrate") ||
		strings.Contains(err.Error(), "isomaltulose") {
		t.Errorf("what may stand there: %v", err)
	}
}

// A sugar that is not sucrose sweetens by its own sweetness, the middle of what the reviews print: glucose 0.5 to 1, fructose 1 to 2
// (BMC Medicine 9 (2011) 123, table 1). Dextrose monohydrate is 90.9 % glucose.
func TestSweetnessOfSugars(t *testing.T) {
	for what, grams := range map[string]float64{
		"white sugar": 20, "dextrose monohydrate": 20 / 0.75 / 0.9091, "dextrose anhydrous": 20 / 0.75, "fructose": 20 / 1.5,
	} {
		r := request(t)
		r.Packs[0].Sweeten = &plan.Sweeten{What: what, Like: units.GramPerLitre.Of(20)}
		near(t, what, made(t, r).Packs[0].Sweetener.Mass.Quantity().In(units.Gram)/40, grams, 0.02*grams)
	}
}

// What a law says of a sweetener is said by the label's law: cyclamate is not permitted in the US.
func TestLawOfASweetener(t *testing.T) {
	said := func(law string) string {
		r := request(t)
		r.Label.Law = law
		r.Packs[0].Sweeten = &plan.Sweeten{What: "aspartame", Like: units.GramPerLitre.Of(150)}
		return strings.Join(made(t, r).Cautions, "\n")
	}
	if eu, us := said("EU"), said("US"); eu == us {
		t.Errorf("the same by both: %s", eu)
	} else {
		t.Log(eu, "\n\n", us)
	}
}
