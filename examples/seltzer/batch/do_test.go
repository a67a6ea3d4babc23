package batch

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"slices"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"

	"pgregory.net/rapid"
)

// anyStep draws a step that often can be done.
func anyStep(t *rapid.T) Step {
	pick := func(names ...string) string { return rapid.SampledFrom(names).Draw(t, "what") }
	x := func(what string, min, max float64) checked.Number {
		return checked.Number(rapid.Float64Range(min, max).Draw(t, what))
	}
	st := Step{Kind: Kind(rapid.IntRange(0, int(kindCount)-1).Draw(t, "kind"))}
	switch st.Kind {
	case Blend:
		with := wash()
		st.With = &with
		if rapid.Bool().Draw(t, "part") {
			st.Volume = units.Litre.Of(x("L", 0.1, 30))
		}
	case Treat:
		st.What, st.Mass = rapid.SampledFrom(water.Salts()).Draw(t, "salt").Name(), units.Gram.Of(x("g", 0, 10))
	case Dissolve, Sweeten, Prime:
		st.What, st.Mass = pick("white sugar", "dextrose monohydrate", "fructose", "medium invert sugar", "honey", "dry malt extract",
			"glycerol"), units.Gram.Of(x("g", 0, 500))
		if rapid.Bool().Draw(t, "juice") {
			st.What, st.Own, st.Mass = "", grapes(), units.Kilogram.Of(x("kg", 0, 50))
		}
	case Heat, Warm:
		st.Temperature = units.Celsius.Of(x("°C", 20, 60))
	case Cool, Chill:
		st.Temperature = units.Celsius.Of(x("°C", 0, 20))
	case Boil:
		st.For, st.Rate = Duration(6e10*float64(x("min", 0, 60))), units.LitrePerMinute.Of(x("L/min", 0, 0.1))
	case Transfer:
		st.Volume, st.Share = units.Litre.Of(x("L", 0, 5)), per(float64(x("%", 0, 100)))
	case Pitch, Dilute:
		st.Mass = units.Gram.Of(x("g", 0, 100))
	case Feed:
		st.What, st.Mass = pick("diammonium phosphate", "autolysed yeast", "urea", "Epsom salt", "zinc sulfate heptahydrate",
			"potassium bicarbonate", "tripotassium citrate monohydrate"), units.Gram.Of(x("g", 0, 20))
	case Ferment, Degas, Fine, Malolactic, Settle:
		st.Share = per(float64(x("%", 0, 100)))
	case Stand:
		st.Share, st.Gas = per(float64(x("%", 0, 100))), rapid.Bool().Draw(t, "gas")
	case Flavour:
		st.Volume, st.Strength, st.Sugar = units.Millilitre.Of(x("mL", 0, 500)), units.PercentVolume.Of(x("% vol", 0, 60)), units.GramPerLitre.Of(x("g/L", 0, 200))
	case Acidify:
		st.What, st.Mass = rapid.SampledFrom(water.Acids()).Draw(t, "acid").Name(), units.Gram.Of(x("g", 0, 20))
	case Stabilise:
		st.What, st.Mass = pick("potassium metabisulfite", "sodium metabisulfite", "potassium sorbate"), units.Gram.Of(x("g", 0, 10))
	case Carbonate:
		st.Gauge = units.BarGauge.Of(x("bar", 0.2, 4))
	case Fill:
		v := rapid.Float64Range(1, 18).Draw(t, "L")
		st.Volume, st.Capacity = units.Litre.Of(checked.Number(v)), units.Litre.Of(checked.Number(v*1.1))
	case Close:
		st.Share = per(float64(x("%", 0, 100)))
	}
	return st
}

// Whatever is done, in whatever order: every element, charge and mass is where it was, came in or
// went; nothing is not a number; and each step and each state is read back from its text.
func TestNothingIsLost(t *testing.T) {
	done := map[Kind]int{}
	walk := func(t *rapid.T) {
		s := wash()
		u := Usual()
		for _, k := range Known() {
			*k.In(&u) = rapid.Float64Range(k.Low, k.High).Draw(t, k.Name)
		}
		last := Kind(0)
		for range rapid.IntRange(1, 12).Draw(t, "steps") {
			st := anyStep(t)
			// A filled pack is closed and opened more often than by chance.
			switch goOn := rapid.Bool().Draw(t, "goes on"); {
			case goOn && last == Fill:
				st = Step{Kind: Close, Share: per(50)}
			case goOn && last == Close:
				st = Step{Kind: Open}
			}
			next, left, err := Do(st, s, &u)
			if err != nil {
				if next != s || left != (Left{}) {
					t.Fatalf("%s: refused, and yet something is done", st.Kind)
				}
				continue
			}
			done[st.Kind]++
			last = st.Kind
			if next.isNaN() {
				t.Fatalf("%s %+v: not a number: %v", st.Kind, st, next.amount)
			}
			out := left.Out()
			for e := range elementCount {
				before, after := s.amount.Element(e)+left.In.Element(e), next.amount.Element(e)+out.Element(e)
				scale := 1e-3
				for c := range s.amount {
					scale += math.Abs(components[c].of[e]) * (math.Abs(s.amount[c]) + math.Abs(left.In[c]))
				}
				if math.Abs(before-after) > 1e-12*scale {
					t.Fatalf("%s %+v: %v: %.16g before, %.16g after", st.Kind, st, e, before, after)
				}
			}
			if before, after := s.amount.grams()+left.In.grams(), next.amount.grams()+out.grams(); math.Abs(before-after) > 1e-12*before {
				t.Fatalf("%s: %.16g g before, %.16g after", st.Kind, before, after)
			}
			for c, n := range next.amount {
				if c := Component(c); n < -1e-9 && c != Proton && c != Unnamed {
					t.Fatalf("%s %+v: %g mol of %v", st.Kind, st, n, c)
				}
			}
			var sameStep Step
			if text, err := json.Marshal(st); err != nil || json.Unmarshal(text, &sameStep) != nil || sameStep.With != nil && *sameStep.With != *st.With {
				t.Fatalf("%s: %v: %s", st.Kind, err, text)
			}
			if sameStep.With = st.With; sameStep.For-st.For > 1 || st.For-sameStep.For > 1 {
				t.Fatalf("%v read back as %v", st.For, sameStep.For)
			}
			if sameStep.Own.Equal(st.Own) {
				sameStep.Own = st.Own
			}
			if sameStep.For = st.For; sameStep != st {
				t.Fatalf("%+v read back as %+v", st, sameStep)
			}
			var sameState State
			if text, err := json.Marshal(next); err != nil || json.Unmarshal(text, &sameState) != nil || sameState != next {
				t.Fatalf("%v: %s", err, text)
			}
			s = next
		}
	}
	rapid.Check(t, walk)
	missing := func(k Kind) bool { return done[k] == 0 }
	for range 30 { // a rare step may not come in a hundred walks
		if testing.Short() || !slices.ContainsFunc(Kinds(), missing) {
			break
		}
		rapid.Check(t, walk)
	}
	for _, k := range Kinds() {
		if missing(k) && !testing.Short() {
			t.Errorf("%s was never done", k)
		}
	}
}

// A step with nothing to do changes nothing.
func TestNothingToDo(t *testing.T) {
	none, s := wash(), beer()
	for _, st := range []Step{
		{Kind: Treat, What: "gypsum"}, {Kind: Dissolve, What: "white sugar"}, {Kind: Heat, Temperature: s.t}, {Kind: Boil, Rate: units.LitrePerHour.Of(5)},
		{Kind: Cool, Temperature: s.t}, {Kind: Transfer}, {Kind: Pitch}, {Kind: Feed, What: "DAP"}, {Kind: Ferment}, {Kind: Stand},
		{Kind: Degas}, {Kind: Chill, Temperature: s.t}, {Kind: Fine}, {Kind: Dilute}, {Kind: Flavour, Strength: units.PercentVolume.Of(40)},
		{Kind: Sweeten, What: "glycerol"}, {Kind: Acidify, What: "lactic acid"}, {Kind: Stabilise, What: "potassium sorbate"},
		{Kind: Prime, What: "white sugar"}, {Kind: Warm, Temperature: s.t}, {Kind: Malolactic}, {Kind: Settle}, {Kind: Settle, Share: per(100)},
	} {
		for _, s := range []State{none, s} {
			if after, left := one(s, st); after != s || left != (Left{}) {
				t.Errorf("%s changes %v to %v", st.Kind, s, after)
			}
		}
	}
	if after, left := one(none, Step{Kind: Blend, With: new(State)}); after != none || left != (Left{}) {
		t.Error("blending with nothing changes something")
	}
}

// A walk is its steps one by one, and allocates nothing where there is room for its states.
func TestWalk(t *testing.T) {
	w := must(FromWater(well(), units.Litre.Of(60)))
	steps := brew(&w)
	var like water.Series
	states, left, err := Walk(nil, steps, State{}, &usual, &like)
	if err != nil || len(states) != len(steps) {
		t.Fatal(len(states), err)
	}
	var s State
	var sum Left
	for i, st := range steps {
		var l Left
		if s, l, err = Do(st, s, &usual); err != nil {
			t.Fatal(err)
		}
		sum.In.plus(&l.In, 1)
		out := l.Out()
		sum.Gas.plus(&out, 1)
		same(t, st.Kind.String(), states[i], s, 1e-6) // the pH begins elsewhere
	}
	out, all := left.Out(), sum.Out()
	for c := range out {
		near(t, Component(c).String()+" that left", out[c], all[c], 1e-6*(1+math.Abs(all[c])))
	}
	room := make([]State, 0, len(steps))
	if n := testing.AllocsPerRun(20, func() {
		if _, _, err := Walk(room, steps, State{}, &usual, &like); err != nil {
			t.Fatal(err)
		}
	}); n != 0 {
		t.Errorf("a walk allocates %g times", n)
	}
	steps[3].Mass = units.Kilogram.Of(1e6)
	_, _, err = Walk(nil, steps, State{}, &usual, &like)
	step, ok := errors.AsType[*StepError](err)
	if !ok || step.Index < 3 || errors.Unwrap(err) == nil {
		t.Errorf("%v", err)
	}
	refused(t, beer(), Step{Kind: kindCount})
	if _, err := json.Marshal(Step{Kind: kindCount}); err == nil {
		t.Error("a step that is none is written")
	}
	for _, bad := range []string{`{"do":"stew"}`, `{"do":"boil","for":"15 m"}`} {
		if json.Unmarshal([]byte(bad), new(Step)) == nil {
			t.Errorf("%s is read", bad)
		}
	}
	for _, bad := range []string{`{"mol":{"phlogiston":1},"temperature":"20 °C"}`, `[]`} {
		if json.Unmarshal([]byte(bad), new(State)) == nil {
			t.Errorf("%s is read", bad)
		}
	}
}

// brew is a whole batch, from the water to a keg.
func brew(w *State) []Step {
	return []Step{
		{Kind: Blend, With: w, Volume: units.Litre.Of(58.6)},
		{Kind: Treat, What: "gypsum", Mass: units.Gram.Of(2)},
		{Kind: Treat, What: "baking soda", Mass: units.Gram.Of(2)},
		{Kind: Dissolve, What: "white sugar", Mass: units.Kilogram.Of(4.3)},
		{Kind: Boil, For: Duration(15 * 6e10), Rate: units.LitrePerHour.Of(5)},
		{Kind: Cool, Temperature: deg(20)},
		{Kind: Transfer, Volume: units.Litre.Of(0.8)},
		{Kind: Pitch, Mass: units.Gram.Of(41.4)},
		{Kind: Feed, What: "potassium bicarbonate", Mass: units.Gram.Of(18)},
		{Kind: Feed, What: "diammonium phosphate", Mass: units.Gram.Of(18)},
		{Kind: Ferment, Share: per(100)},
		{Kind: Warm, Temperature: deg(22)},
		{Kind: Transfer, Volume: units.Litre.Of(1.5), Share: per(98)},
		{Kind: Flavour, Volume: units.Millilitre.Of(170), Strength: units.PercentVolume.Of(40)},
		{Kind: Chill, Temperature: deg(4)},
		{Kind: Carbonate, Gauge: units.BarGauge.Of(1.25), Pressure: kPa(93.9)},
		{Kind: Fill, Volume: units.Litre.Of(18), Capacity: units.Litre.Of(19)},
		{Kind: Close, Pressure: kPa(93.9)},
		{Kind: Warm, Temperature: deg(22)},
	}
}

// Two half steps are one step.
func TestHalfSteps(t *testing.T) {
	for _, c := range []struct {
		name string
		from State
		one  Step
		half [2]Step
	}{
		{"dilute", beer(), Step{Kind: Dilute, Mass: units.Kilogram.Of(3)},
			[2]Step{{Kind: Dilute, Mass: units.Kilogram.Of(1.2)}, {Kind: Dilute, Mass: units.Kilogram.Of(1.8)}}},
		{"boil", wash(), boiling(60, 5), [2]Step{boiling(25, 5), boiling(35, 5)}},
		{"boil hard", after(must(FromWater(well(), units.Litre.Of(60)))), boiling(90, 8), [2]Step{boiling(45, 8), boiling(45, 8)}},
		{"ferment", wash(), Step{Kind: Ferment, Share: per(100)}, [2]Step{{Kind: Ferment, Share: per(35)}, {Kind: Ferment, Share: per(100)}}},
		{"ferment in part", wash(), Step{Kind: Ferment, Share: per(50)}, [2]Step{{Kind: Ferment, Share: per(10)}, {Kind: Ferment, Share: per(100 * (1 - 0.5/0.9))}}},
		{"ferment, well fed", after(wash(), Step{Kind: Feed, What: "DAP", Mass: units.Gram.Of(90)}), Step{Kind: Ferment, Share: per(100)},
			[2]Step{{Kind: Ferment, Share: per(35)}, {Kind: Ferment, Share: per(100)}}},
		{"fine", beer(), Step{Kind: Fine, Share: per(75)}, [2]Step{{Kind: Fine, Share: per(50)}, {Kind: Fine, Share: per(50)}}},
		{"stand", beer(), Step{Kind: Stand, Share: per(75)}, [2]Step{{Kind: Stand, Share: per(50)}, {Kind: Stand, Share: per(50)}}},
	} {
		same(t, c.name, after(c.from, c.one), after(c.from, c.half[0], c.half[1]), 1e-9)
	}
}

func boiling(minutes, litresPerHour float64) Step {
	return Step{Kind: Boil, For: Duration(minutes * 6e10), Rate: units.LitrePerHour.Of(checked.Number(litresPerHour)), Pressure: kPa(93.9)}
}

// A wash of 60 L: what it is after the ferment.
func ExampleDo() {
	water, _ := FromWater(well(), units.Litre.Of(57))
	u := Usual()
	wash, _, _ := Do(Step{Kind: Dissolve, What: "white sugar", Mass: units.Kilogram.Of(4.3)}, water, &u)
	beer, left, err := Do(Step{Kind: Ferment, Share: units.Percent.Of(100)}, wash, &u)
	strength, _ := beer.Strength()
	fmt.Printf("%s, %.2f kg of CO2, %v\n", strength.Text(units.PercentVolume, 1), left.Gas[CarbonDioxide]*CarbonDioxide.MolarMass()/1000, err)
	// Output: 4.6 % vol, 2.05 kg of CO2, <nil>
}
