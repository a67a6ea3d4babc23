package gravity_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"reflect"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/units"
)

// travels reports a value that JSON does not bring back to the bit.
func travels[T any](t tester, was T) {
	t.Helper()
	text, err := json.Marshal(was)
	if err != nil {
		t.Errorf("%+v: %v", was, err)
		return
	}
	var is T
	if err := json.Unmarshal(text, &is); err != nil || !reflect.DeepEqual(is, was) {
		t.Errorf("%s comes back as %+v, was %+v (%v)", text, is, was, err)
	}
}

func TestValuesTravel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wort := drawSolution(t)
		travels(t, wort)
		travels(t, wort.Gravity())
		yields := []gravity.Yield{
			gravity.BallingYield(), gravity.StoichiometricYield(gravity.AsFructose), gravity.SugarWashYield(gravity.AsGlucose), wort.WashYield(),
			ok[gravity.Yield](t)(newYield(0.48, 0.46, 0.05, 0.0100004, 0)),
		}
		y := rapid.SampledFrom(yields).Draw(t, "yield")
		travels(t, y)
		p := rapid.Float64Range(1, 25).Draw(t, "original °P")
		f := ok[gravity.Fermentation](t)(gravity.FromOriginalAndReal(plato(p), plato(p*rapid.Float64Range(0.2, 0.95).Draw(t, "left")), y))
		travels(t, f)
		dry, made, err := f.Wort().Dry(y)
		if err != nil {
			t.Fatal(err)
		}
		travels(t, made)
		if progress, err := f.Wort().At(f.Gravity(), y); err == nil {
			travels(t, progress)
			if text, _ := json.Marshal(progress); strings.Contains(string(text), "closed_too_early: ") == progress.Left.IsZero() {
				t.Errorf("%s", text)
			}
		}
		a, b, _, err := gravity.BlendToStrength(f.Wort(), dry, dry.ByVolume(), litre(60))
		if err == nil {
			travels(t, [2]gravity.BlendPart{a, b})
		}
		travels(t, f.OriginalGravity().ScaleMethods())
	})
	travels(t, ok[[]gravity.StrengthMethod](t)(gravity.StrengthMethods(plato(12), plato(3))))
	travels(t, gravity.Solution{})
	for r := gravity.At20; r <= gravity.At15On4; r++ {
		travels(t, gravity.Hydrometer{Reference: r})
	}
	for k := gravity.AsSucrose; k <= gravity.AsOrganicAcid; k++ {
		travels(t, k)
	}
	travels(t, []gravity.Air{gravity.InVacuum, gravity.InAir})
}

// What is nothing, or cannot be, is neither written nor read.
func TestWhatDoesNotTravel(t *testing.T) {
	for _, v := range []any{gravity.Yield{}, gravity.Fermentation{}} {
		_, err := json.Marshal(v)
		if e, ok := errors.AsType[*units.StateError](err); !ok || !strings.Contains(e.Func, "MarshalJSON") {
			t.Errorf("%T: %v", v, err)
		}
	}
	for _, v := range []any{gravity.Sugar(6), gravity.Reference(7), gravity.Air(2), gravity.Hydrometer{Reference: 17}} {
		_, err := json.Marshal(v)
		if _, ok := errors.AsType[*units.NameError](err); !ok {
			t.Errorf("%T: %v", v, err)
		}
	}
	solution, yield, state := solution(t, 9, 1, 0), gravity.BallingYield(), gravity.Fermentation{}
	was := solution
	for text, into := range map[string]json.Unmarshaler{
		`{"water":"-1 kg"}`:                             &solution,
		`{"water":"1 kg","extract":{"salt":"1 kg"}}`:    &solution,
		`{"water":"1 kg","extract":{"sucrose":"9 kg"}}`: &solution,
		`{"water":1}`: &solution,
		`{"extract":"1 kg","Ethanol":"1 kg","CO2":"1 kg"}`: &yield,
		`{"Ethanol":"1 kg"}`:        &yield,
		`[]`:                        &yield,
		`{"wort":{"water":"9 kg"}}`: &state,
		`{"wort":{"water":"100 kg"},"extract_used":"1 kg"}`:   &state,
		`{"wort":{"water":"100 kg"},"extract_used":"1 acre"}`: &state,
	} {
		if err := json.Unmarshal([]byte(text), into); err == nil {
			t.Errorf("%s is read", text)
		}
	}
	if solution != was || yield != gravity.BallingYield() || state != (gravity.Fermentation{}) {
		t.Error("what is refused leaves a mark")
	}
}

func ExampleSolution_MarshalJSON() {
	text, err := json.Marshal(wash())
	fmt.Println(string(text), err)
	var back gravity.Solution
	fmt.Println(json.Unmarshal(text, &back), back == wash())
	// Output:
	// {"water":"57.1 kg","extract":{"sucrose":"4.6 kg"},"ethanol":"0 kg"} <nil>
	// <nil> true
}

// The state of a ferment is of 100 kg of wort, to rounding.
func TestFermentationOfAnotherMass(t *testing.T) {
	text, err := json.Marshal(ok[gravity.Fermentation](t)(gravity.FromOriginalAndApparent(plato(12), plato(3), gravity.BallingYield())))
	if err != nil {
		t.Fatal(err)
	}
	for _, water := range []string{"87.5 kg", "88.5 kg"} {
		var f gravity.Fermentation
		err := json.Unmarshal([]byte(strings.Replace(string(text), `"water":"88 kg"`, `"water":"`+water+`"`, 1)), &f)
		e := check.OutOfRange(t, water, err, "mass of the wort")
		near(t, "least", e.Min, 100, 1e-9)
		near(t, "most", e.Max, 100, 1e-9)
	}
}
