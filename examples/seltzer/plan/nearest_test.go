package plan_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"regexp"
	"strconv"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// askFor draws a request that may be past any of the limits that have a nearest; each quantity
// by itself in its range, or beyond.
func askFor(t *rapid.T, r plan.Request, beyond bool) plan.Request {
	within := func(lo, hi, least, most float64) (float64, float64) {
		if beyond {
			return lo, hi
		}
		return least, most
	}
	number := func(what string, lo, hi float64) checked.Number {
		return checked.Number(rapid.Float64Range(lo, hi).Draw(t, what))
	}
	lo, hi := within(0.1, 30, 0.5, 15)
	r.Strength = units.PercentVolume.Of(number("strength", lo, hi))
	r.Kettle.Capacity, r.Fermenter.Capacity = units.Litre.Of(number("kettle", 15, 90)), units.Litre.Of(number("fermenter", 15, 90))
	r.Fermenter.Temperature = units.Celsius.Of(number("ferment", 10, 30))
	warmest, _ := within(8, 0, r.Fermenter.Temperature.In(units.Celsius), 0)
	r.Fermenter.Warmest = units.Celsius.Of(number("warmest", warmest, 34))
	r.Packs = append([]plan.Pack(nil), r.Packs...)
	for i := range r.Packs {
		lo, hi := within(0.2, 7, 0.501, 6)
		text := fmt.Sprintf("%.3f vol", float64(number("co2", lo, hi)))
		if err := r.Packs[i].Content.UnmarshalText([]byte(text)); err != nil {
			t.Fatal(err)
		}
		r.Packs[i].Rating = units.BarGauge.Of(number("rating", 1, 12))
	}
	store, head := units.Celsius.Of(number("store", 0, 45)), units.Percent.Of(number("head-space", 2, 20))
	r.Packs[1].Store, r.Packs[1].HeadSpace = &store, &head
	lo, hi = within(2, 6, 2.5, 5)
	b := *r.Buffer
	b.Floor = float64(number("floor", lo, hi))
	r.Buffer = &b
	if rapid.Bool().Draw(t, "sweet") {
		g := units.GramPerLitre.Of(number("sugar", 1, 700))
		r.Flavour = &plan.Flavour{Name: "syrup", Sample: units.Litre.Of(1), Added: units.Millilitre.Of(number("dose", 0.1, 200)), Sugar: &g}
	}
	r.Scales.Sugar = r.Scales.Small
	r.Fermentable = rapid.SampledFrom([]string{"white sugar", "honey", "juice 12 °Bx"}).Draw(t, "fermentable")
	if !beyond && r.Fermentable != "white sugar" {
		r.Buffer = nil
	}
	return r
}

// What Nearest gives can be planned, as it is and as it is printed, and nothing is nearer
// to it: each advice is tried to its end.
func TestNearestIsPlanned(t *testing.T) {
	start := request(t)
	near, all := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		r := askFor(t, start, rapid.Bool().Draw(t, "beyond"))
		_, refused := plan.Make(r)
		got, changes, err := plan.Nearest(r)
		all++
		if err != nil {
			if refused == nil {
				t.Fatalf("it can be planned, but has no nearest: %v", err)
			}
			t.Logf("no nearest: %q, %v", changes, err)
			return
		}
		near++
		if (refused == nil) != (len(changes) == 0) {
			t.Fatalf("%v: %q", refused, changes)
		}
		text, err := json.Marshal(got)
		if err != nil {
			t.Fatal(err)
		}
		back, err := plan.ParseRequest(text)
		if err != nil {
			t.Fatalf("%q: %v", changes, err)
		}
		for _, q := range []plan.Request{got, back} {
			if _, err := plan.Make(q); err != nil {
				t.Fatalf("%q: %v", changes, err)
			}
		}
		if _, again, err := plan.Nearest(got); err != nil || len(again) > 0 {
			t.Fatalf("%q, then %q: %v", changes, again, err)
		}
	})
	if near < all*9/10 {
		t.Errorf("%d of %d have a nearest", near, all)
	}
}

// What a refusal says may stand there is taken when it is written there.
func TestRefusalsAreTrue(t *testing.T) {
	start := request(t)
	amount := regexp.MustCompile(`^at (?:least|most) ([0-9.]+) (L|% vol|vol|mL)`)
	tried := map[string]int{}
	rapid.Check(t, func(t *rapid.T) {
		r := askFor(t, start, false)
		for range 8 {
			_, err := plan.Make(r)
			e, ok := errors.AsType[*plan.RequestError](err)
			if !ok {
				return
			}
			found := amount.FindStringSubmatch(e.Allowed)
			if found == nil {
				return
			}
			x, err := strconv.ParseFloat(found[1], 64)
			if err != nil || math.IsNaN(x) {
				t.Fatal(e)
			}
			v := checked.Number(x)
			var pack int
			switch {
			case e.Field == "kettle.capacity":
				r.Kettle.Capacity = units.Litre.Of(v)
			case e.Field == "fermenter.capacity":
				r.Fermenter.Capacity = units.Litre.Of(v)
			case e.Field == "strength":
				r.Strength = units.PercentVolume.Of(v)
			case e.Field == "flavour.added":
				f := *r.Flavour
				f.Added = units.Millilitre.Of(v)
				r.Flavour = &f
			default:
				if _, err := fmt.Sscanf(e.Field, "packs[%d].co2", &pack); err != nil {
					t.Fatal(e)
				}
				if err := r.Packs[pack].Content.UnmarshalText([]byte(found[1] + " vol")); err != nil {
					t.Fatal(err)
				}
			}
			_, again := plan.Make(r)
			if a, ok := errors.AsType[*plan.RequestError](again); ok && a.Field == e.Field {
				t.Fatalf("%v; then %v", e, a)
			}
			tried[e.Field]++
		}
	})
	for _, field := range []string{"kettle.capacity", "fermenter.capacity", "strength"} {
		if tried[field] == 0 && !testing.Short() { // which has few draws
			t.Errorf("%s is not among what was tried: %v", field, tried)
		}
	}
	t.Log(tried)
}

// A gravity that is asked for has a nearest request as a strength has: a kettle gets its top-up.
func TestNearestOfAGravity(t *testing.T) {
	r := kindOf(t, "gravity")
	whole := made(t, r)
	r.Kettle.Capacity = units.Litre.Of(12)
	near, changes, err := plan.Nearest(r)
	if err != nil || near.Kettle.TopUp == nil || len(changes) != 1 {
		t.Fatal(changes, err)
	}
	p := made(t, near)
	if off := p.Gravity.Original - whole.Gravity.Original; off > 0.0002 || off < -0.0002 {
		t.Errorf("original gravity %.4f, asked for %.4f", p.Gravity.Original, whole.Gravity.Original)
	}
}
