package plan_test

import (
	"encoding/json"
	"os"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// kindOf reads a request of the command's test data.
func kindOf(t testing.TB, name string) plan.Request {
	t.Helper()
	text, err := os.ReadFile("../testdata/requests/" + name + ".json")
	if err != nil {
		t.Fatal(err)
	}
	r, err := plan.ParseRequest(text)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// What is given is what the plan has, whatever it starts from.
func TestFromWhatIsAtHand(t *testing.T) {
	g := made(t, kindOf(t, "gravity"))
	near(t, "original gravity", g.Gravity.Original, 1.035, 0.0001) // 10 g of 1.9 kg of sugar are 0.0002
	p := made(t, kindOf(t, "sugar_at_hand"))
	near(t, "sugar, kg", sugarOf(p), 2, 1e-9)
	near(t, "strength", p.Strength.In(units.PercentVolume), 5, 0.002)
	p = made(t, kindOf(t, "sugar_and_water"))
	near(t, "sugar, kg", sugarOf(p), 1.5, 1e-9)
	near(t, "water, L", p.Water.Volume.In(units.Litre), 20, 1e-3)
	// 1.5 kg in 20 kg of which 0.75 boil away is 7.23 % (°P by definition), and salts.
	near(t, "°P", p.Gravity.Extract.In(units.DegreePlato), 100*1.5/(1.5+20*0.99820-0.75*0.9982), 0.2)

	// One request, said in each way, is one plan.
	r := kindOf(t, "sugar_at_hand")
	one := made(t, r)
	r.AtHand, r.Volume = nil, one.Volume
	r.Packs[0].Volume = one.Volume
	two := made(t, r)
	near(t, "sugar by the volume", sugarOf(two), 2, 0.001)
	r.Strength = units.StrengthByVolume{}
	r.AtHand = &plan.AtHand{Sugar: new(units.Kilogram.Of(2))}
	three := made(t, r)
	near(t, "strength by volume and sugar", three.Strength.In(units.PercentVolume), 5, 0.003)
	r.AtHand.Water, r.Volume = new(one.Water.Volume), units.Volume{}
	four := made(t, r)
	near(t, "volume by sugar and water", four.Volume.In(units.Litre), one.Volume.In(units.Litre), 0.01)
	r.AtHand = nil
	r.Volume, r.Gravity = one.Volume, &one.Gravity.Original
	five := made(t, r)
	near(t, "strength by the gravity", five.Strength.In(units.PercentVolume), 5, 0.02)
	r.AtHand, r.Volume = &plan.AtHand{Water: new(one.Water.Volume)}, units.Volume{}
	six := made(t, r)
	near(t, "volume by gravity and water", six.Volume.In(units.Litre), one.Volume.In(units.Litre), 0.02)
}

func sugarOf(p plan.Plan) (kg float64) {
	for _, w := range p.Weigh {
		if w.What == p.Request.Fermentable && !strings.HasPrefix(w.For, "priming") {
			kg += w.Mass.Quantity().In(units.Kilogram)
		}
	}
	return kg
}

// A kettle half the size and water to top up with make the same drink, of nearly the same sugar.
func TestSmallKettle(t *testing.T) {
	r := kindOf(t, "small_kettle")
	p := made(t, r)
	whole := r
	whole.Kettle.TopUp, whole.Kettle.Capacity = nil, units.Litre.Of(30)
	q := made(t, whole)
	// 0.3 L of a wash of 1.072 stay behind, in the place of one of 1.031: 30 g more.
	near(t, "more sugar, kg", sugarOf(p)-sugarOf(q), 0.3*(0.1871-0.0770), 0.011)
	near(t, "gravity", p.Gravity.Original, q.Gravity.Original, 0.0002)
	near(t, "all the water", p.Water.Volume.In(units.Litre), q.Water.Volume.In(units.Litre), 0.1)

	r.Kettle.TopUp = nil
	_, err := plan.Make(r)
	if err == nil || !strings.HasPrefix(err.Error(), "kettle.capacity: 12 L: at least 2") || !strings.Contains(err.Error(), "kettle.top_up of ") {
		t.Fatal(err)
	}
	_, after, _ := strings.Cut(err.Error(), "kettle.top_up of ")
	least, err := units.Parse[units.Volume](strings.SplitAfter(after, "L")[0])
	if err != nil {
		t.Fatal(err)
	}
	r.Kettle.TopUp = &least
	made(t, r)
	less := least.Minus(units.Litre.Of(0.5))
	r.Kettle.TopUp = &less
	if _, err := plan.Make(r); err == nil {
		t.Error("less than the least is taken")
	}
	far := units.Litre.Of(19.9)
	r.Kettle.TopUp = &far
	if _, err := plan.Make(r); err == nil || !strings.Contains(err.Error(), "kettle.top_up: 19.9 L: at most ") {
		t.Error(err)
	}
}

// Portions leave nothing out: the same strength, the same drink, the sugar of the list.
func TestPortions(t *testing.T) {
	r := kindOf(t, "portions")
	p := made(t, r)
	whole := r
	whole.Portions = 0
	q := made(t, whole)
	near(t, "floor", p.Gravity.Floor, q.Gravity.Floor, 0.0003)
	near(t, "original", p.Gravity.Original, q.Gravity.Original, 0.0004)
	// Of the wash with its first third one litre stays in the kettle with less sugar: a few grams.
	if less := sugarOf(q) - sugarOf(p); less < 0 || less > 0.1 {
		t.Errorf("%v kg less", less)
	}
	if n := len(p.Gravity.Portions); n != 2 {
		t.Fatal(n)
	}
	// A third of 202 g in a litre of wash, no more: 65 g/L are 1.025.
	near(t, "first portion", p.Gravity.First, 1.027, 0.003)
	for _, k := range p.Gravity.Portions {
		if k.Gravity < p.Gravity.Floor || k.Gravity > p.Gravity.First {
			t.Errorf("portion by %v", k.Gravity)
		}
	}
	r.Portions = 7
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "sugar_portions: 7: 2 to 6") {
		t.Error(err)
	}
}

// Salts after the boil: no chalk of theirs drops, and the targets stand in what is boiled down.
func TestSaltsAfterTheBoil(t *testing.T) {
	r := kindOf(t, "salts_after")
	p := made(t, r)
	near(t, "alkalinity", p.Water.After.Alkalinity.In(units.MilligramPerLitreCaCO3), 90, 3)
	near(t, "the least it may be", p.Water.Boiled.AlkalinityLow.In(units.MilligramPerLitreCaCO3), 90, 3)
	r.Water.When = ""
	before := made(t, r)
	if p.Water.Boiled.Scale.In(units.Gram) > before.Water.Boiled.Scale.In(units.Gram)/3 {
		t.Errorf("%v of chalk, %v where the salts are boiled", p.Water.Boiled.Scale, before.Water.Boiled.Scale)
	}
	if p.Acidity.Buffer.Mass.Quantity().Compare(before.Acidity.Buffer.Mass.Quantity()) >= 0 {
		t.Error("it takes no less buffer")
	}
}

// Several fermenters hold what one of their size holds.
func TestSeveralFermenters(t *testing.T) {
	p := made(t, kindOf(t, "fermenters"))
	filled, racked, part := 0.0, 0.0, 0.0
	for _, f := range p.Fermenters {
		filled, racked, part = filled+f.Filled.In(units.Litre), racked+f.Racked.In(units.Litre), part+f.Share.In(units.Fraction)
	}
	near(t, "parts", part, 1, 1e-12)
	near(t, "filled", filled, p.Vessels[5].Volume.In(units.Litre), 1e-6)
	near(t, "racked", racked, p.Packs[0].Base.In(units.Litre), 0.005)
}

// One's own yield: 17.5 g/L in the place of 16.83 take 4 % more sugar.
func TestOwnYield(t *testing.T) {
	r := kindOf(t, "own_figures")
	r.Scales.Sugar = r.Scales.Small
	own := sugarOf(made(t, r))
	r.Yeast.Yield = nil
	near(t, "sugar", own/sugarOf(made(t, r)), 17.5/16.83, 0.001)
}

// A yield that was measured is surer than that of others: what is left of the ± is the sugar, the scale and the levels. What is
// drawn lies about the strength of the plan.
func TestOwnYieldIsSurer(t *testing.T) {
	r := kindOf(t, "own_figures")
	own := made(t, r)
	drawn, err := plan.Draw(r, 1000)
	if err != nil {
		t.Fatal(err)
	}
	r.Yeast.Yield = nil
	others := made(t, r)
	points := func(p plan.Plan) (planned, read float64) {
		return p.Uncertainty.Planned.In(units.PercentVolume), p.Uncertainty.ByHydrometer.In(units.PercentVolume)
	}
	planned, read := points(own)
	if was, wasRead := points(others); planned > 0.6*was || read > 0.9*wasRead || own.Gravity.FloorUncertainty >= others.Gravity.FloorUncertainty {
		t.Errorf("± %.3f as planned and %.3f read, %.3f and %.3f by the yield of others; floor ± %.5f and %.5f", planned, read, was, wasRead,
			own.Gravity.FloorUncertainty, others.Gravity.FloorUncertainty)
	}
	for _, d := range drawn {
		if strings.HasPrefix(d.What, "strength") {
			near(t, d.What, d.Usual, own.Strength.In(units.PercentVolume), 0.03)
			near(t, d.What+", ±", 2*d.Of.Deviation, planned, 0.1*planned)
		}
	}
}

// Sugar that is left: 15 % of that of the wash, in the drink and on the label.
func TestAttenuation(t *testing.T) {
	p := made(t, kindOf(t, "attenuated"))
	near(t, "sugar left, g/L", p.Label.Sugars.In(units.GramPerLitre), 0.15*p.Nutrient.Sugar.In(units.GramPerLitre), 0.2)
	if !p.Packs[0].Highest.Sugar || len(p.Packs[0].Highest.Cautions) == 0 {
		t.Error("the sugar left is not counted in the keg")
	}
	r := kindOf(t, "gravity")
	r.Yeast.Attenuation = new(units.Percent.Of(80))
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "packs[0].prime_with: white sugar: left out where the yeast leaves sugar") {
		t.Error(err)
	}
}

// What cannot be is refused by its field, with what can.
func TestRefusedAtHand(t *testing.T) {
	share := func(x float64) *units.Share { return new(units.Percent.Of(checked.Number(x))) }
	for _, c := range []struct {
		kind   string
		change func(*plan.Request)
		says   string
	}{
		{"gravity", func(r *plan.Request) { r.Gravity = new(1.2) }, "original_gravity: 1.2: 1.003 to 1.150"},
		{"gravity", func(r *plan.Request) { r.Strength = units.PercentVolume.Of(5) }, "original_gravity: 1.035: in the place of the strength"},
		{"gravity", func(r *plan.Request) { r.Gravity = new(1.149) }, "original_gravity: 1.149: at most 1.087: more makes over 15 % vol"},
		{"gravity", func(r *plan.Request) { r.Gravity, r.Fermentable, r.Buffer = new(1.06), "apple juice 12 °Bx", nil },
			"original_gravity: 1.06: at most 1.047: juice without water makes no more"},
		{"sugar_at_hand", func(r *plan.Request) { r.Volume = units.Litre.Of(20) }, "at_hand.sugar: given: two of strength"},
		{"sugar_at_hand", func(r *plan.Request) { r.Strength = units.StrengthByVolume{} }, "volume: missing: two of strength"},
		{"sugar_at_hand", func(r *plan.Request) { r.AtHand.Sugar = new(units.Gram.Of(20)) }, "at_hand: 0.02 kg of sugar: more"},
		{"sugar_and_water", func(r *plan.Request) { r.AtHand.Sugar, r.Volume = nil, units.Litre.Of(20) }, "at_hand.water: given: with a strength"},
		{"sugar_and_water", func(r *plan.Request) { r.AtHand = &plan.AtHand{} }, "at_hand: empty"},
		{"no_kettle", func(r *plan.Request) { r.Kettle.Boil = plan.Duration(600e9) }, "kettle.capacity: missing or zero"},
		{"no_kettle", func(r *plan.Request) { r.Water.When = "after the boil" }, "water.salts_go: after the boil: left out"},
		{"salts_after", func(r *plan.Request) { r.Water.When = "later" }, `water.salts_go: "later": one of`},
		{"fermenters", func(r *plan.Request) { r.Fermenter.Also[1].Loss = units.Litre.Of(4) }, "fermenter.also[1].loss: 4.0 L: less than the 3."},
		{"fermenters", func(r *plan.Request) { r.Fermenter.Also = r.Fermenter.Also[1:] }, "fermenter.capacity: 20.0 L in all of them: at least 21."},
		{"attenuated", func(r *plan.Request) { r.Yeast.Attenuation = share(10) }, "yeast.attenuation: 10 %: 20 to 100 %"},
		{"own_figures", func(r *plan.Request) { r.Yeast.Yield = new(units.GramPerLitre.Of(15)) }, "yeast.sugar_for_1_percent: 15 g/L: 16.5 to 25 g/L"},
		{"own_figures", func(r *plan.Request) { r.Yeast.Strain.Tolerance = new(units.PercentVolume.Of(4)) },
			"yeast.strain.tolerance: 4.0 % vol: at least the 5.0 % vol of the base drink: take another strain, or a strength of at most 4.0"},
		{"own_figures", func(r *plan.Request) { r.Nutrient.Own[0].Ammonium = share(120) }, "nutrient.own[0]: club mix"},
		{"own_figures", func(r *plan.Request) { r.Nutrient.Sources = []string{"club mix", "club mx"} }, "nutrient.sources: club mx"},
		{"own_figures", func(r *plan.Request) { r.Nutrient.Sources = []string{"club mx"} }, "nutrient.own[0].name: club mix: a name that stands in"},
		{"small_kettle", func(r *plan.Request) {
			r.Fermentable, r.Buffer, r.Kettle.Capacity = "apple juice 12 °Bx", nil, units.Litre.Of(30)
		},
			"kettle.top_up: 12 L: at most 5.3 L, all the water that there is beside the juice"},
		{"sugar_at_hand", func(r *plan.Request) {
			r.Fermentable, r.Buffer, r.Strength, r.Gravity = "apple juice 12 °Bx", nil, units.StrengthByVolume{}, new(1.038)
			r.AtHand.Sugar = new(units.Kilogram.Of(1.8))
		}, "at_hand: 1.8 kg of sugar: more: what is left of it after the losses"},
		{"gravity", func(r *plan.Request) { r.Gravity = new(1040.) }, "original_gravity: 1040: 1.003 to 1.150, 20/20 °C; with its point it is 1.040"},
		{"gravity", func(r *plan.Request) { r.Gravity = new(12.) },
			"original_gravity: 12: 1.003 to 1.150, 20/20 °C; 12 °P or °Bx is a gravity of 1.048"},
		{"gravity", func(r *plan.Request) { r.Fermenter.Temperature = units.Celsius.Of(68) },
			"fermenter.temperature: 68 °C: 4 to 38 °C; 68 °F would be 20.0 °C"},
		{"strong_base", func(r *plan.Request) { r.AtHand.Base.Gravity = 987.2 }, "at_hand.base.gravity: 987.2: 0.95 to 1.1, 20/20 °C; with its point it is 0.987"},
		{"strong_base", func(r *plan.Request) { r.Volume, r.AtHand.Base.Volume = units.Volume{}, nil }, "volume: missing: 1 to 100000 L; or at_hand.base.volume"},
	} {
		r := kindOf(t, c.kind)
		c.change(&r)
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), c.says) {
			t.Errorf("%s: %v, want %s", c.kind, err, c.says)
		}
	}
}

// A strain is held against its sheet, and one's own nutrient against its label.
func TestSheets(t *testing.T) {
	r := kindOf(t, "own_figures")
	said := strings.Join(made(t, r).Cautions, "\n")
	for _, want := range []string{"Our strain works from 22 °C on", "Our strain has a high demand"} {
		if !strings.Contains(said, want) {
			t.Errorf("no caution of %q", want)
		}
	}
	// 12 % of nitrogen, all of the need: 0.9 mg for a gram of sugar, in 0.6 g/L of it.
	p := made(t, r)
	near(t, "nitrogen", p.Nutrient.Brought.In(units.MilligramPerLitre), 0.9*p.Nutrient.Sugar.In(units.GramPerLitre), 1)

	// A label that allows 0.2 g/L is kept: the rest of the need is left open, or is the next source's.
	mix := func(p plan.Plan) (gl float64) {
		for _, w := range p.Weigh {
			if w.What == "club mix" {
				gl += w.Mass.Quantity().In(units.Gram) / p.Nutrient.Volume.In(units.Litre)
			}
		}
		return gl
	}
	near(t, "club mix, g/L", mix(p), 0.6, 0.1)
	r.Nutrient.Own[0].Most = new(units.GramPerLitre.Of(0.2))
	p = made(t, r)
	near(t, "by its label", mix(p), 0.2, 0.01)
	near(t, "left open", p.Nutrient.Shortfall.In(units.MilligramPerLitre), p.Nutrient.Need.In(units.MilligramPerLitre)-0.12*200, 1)
	if all := strings.Join(p.Cautions, " "); !strings.Contains(all, "The sources at hand leave") {
		t.Error(all)
	}
	r.Nutrient.Sources = []string{"club mix", "diammonium phosphate"}
	p = made(t, r)
	near(t, "by its label, the rest of another", mix(p), 0.2, 0.01)
	near(t, "nitrogen of both", p.Nutrient.Brought.In(units.MilligramPerLitre), 0.9*p.Nutrient.Sugar.In(units.GramPerLitre), 1.5)
	r.Nutrient.Sources = []string{"diammonium phosphate"}
	if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), "nutrient.own[0].name: club mix: a name that stands in nutrient.sources too") {
		t.Error(err)
	}
}

// What was left out stays out of the JSON.
func TestLeftOutStaysOut(t *testing.T) {
	text, err := json.Marshal(kindOf(t, "sugar_and_water"))
	if err != nil {
		t.Fatal(err)
	}
	for _, field := range []string{`"volume":"0`, `"strength":"0`, "original_gravity"} {
		if strings.Contains(string(text), field) {
			t.Errorf("%s stands in %s", field, text)
		}
	}
}
