package batch

import (
	"math"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Shared by the tests of the steps.

func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

func deg(c float64) units.Temperature      { return units.Celsius.Of(checked.Number(c)) }
func per(x float64) units.Share            { return units.Percent.Of(checked.Number(x)) }
func kPa(x float64) units.AbsolutePressure { return units.Kilopascal.Of(checked.Number(x)) }

// well is the well of a small town, treated for brewing (invented).
func well() water.Profile {
	mg := func(i water.Ion, x float64) water.Content { return i.At(units.MilligramPerLitre.Of(checked.Number(x))) }
	p := must(water.NewProfile(deg(20), units.MilligramPerLitreCaCO3.Of(90),
		mg(water.Calcium, 50), mg(water.Magnesium, 8), mg(water.Sodium, 30), mg(water.Potassium, 8), mg(water.Chloride, 60), mg(water.Sulfate, 50)))
	return must(p.WithPH(7.4))
}

// wash is 60 L of it with sugar, salts of ammonium, and yeast.
func wash() State {
	s := must(FromWater(well(), units.Litre.Of(60)))
	return after(s, Step{Kind: Dissolve, What: "white sugar", Mass: units.Kilogram.Of(4.3)},
		Step{Kind: Feed, What: "diammonium phosphate", Mass: units.Gram.Of(18)},
		Step{Kind: Feed, What: "potassium bicarbonate", Mass: units.Gram.Of(18)},
		Step{Kind: Pitch, Mass: units.Gram.Of(40)})
}

// grapes is a juice with its acids and salts.
func grapes() material.Material {
	return must(material.ByLabel("the club's grapes", material.Composition{
		Glucose: per(10), Fructose: per(10), Malate: per(0.3), Tartrate: per(0.5), Gluconate: per(0.01), Glutamate: per(0.02), Potassium: per(0.15),
		Calcium: per(0.006), Phosphorus: per(0.01), AminoNitrogen: per(0.012), AmmoniumNitrogen: per(0.005), Succinate: per(0.01),
		Acetate: per(0.01), Citrate: per(0.02),
	}))
}

// beer is the same, fermented.
func beer() State { return after(wash(), Step{Kind: Ferment, Share: per(100)}) }

var usual = Usual()

// after does steps that can be done.
func after(s State, steps ...Step) State {
	for _, st := range steps {
		s, _ = one(s, st)
	}
	return s
}

func one(s State, st Step) (State, Left) {
	after, left, err := Do(st, s, &usual)
	if err != nil {
		panic(st.Kind.String() + ": " + err.Error())
	}
	return after, left
}

// refused is the error of a step.
func refused(t *testing.T, s State, st Step) {
	t.Helper()
	if after, left, err := Do(st, s, &usual); err == nil || after != s || left != (Left{}) {
		t.Errorf("%s %+v: no error", st.Kind, st)
	}
}

// same compares two states, a part of what is in them.
func same(t *testing.T, what string, a, b State, tol float64) {
	t.Helper()
	for c := range a.amount {
		if d := math.Abs(a.amount[c] - b.amount[c]); d > tol*(math.Abs(a.amount[c])+1e-3) {
			t.Errorf("%s: %v %.15g, %.15g mol", what, Component(c), a.amount[c], b.amount[c])
		}
	}
	if a.t != b.t || a.above != b.above {
		t.Errorf("%s: %v and %v, %v and %v", what, a.t, b.t, a.above, b.above)
	}
}

// closes finds every element, and the charge, after a step, in what came in or in what left.
func closes(t *testing.T, before, after State, left Left) {
	t.Helper()
	out := left.Out()
	for e := range elementCount {
		was := before.amount.Element(e) + left.In.Element(e)
		near(t, e.String(), after.amount.Element(e)+out.Element(e), was, 1e-12*(math.Abs(was)+before.amount.grams()))
	}
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: %.10g, want %.10g ± %g", what, got, want, tol)
	}
}

func litres(x float64) units.Volume { return units.Litre.Of(checked.Number(x)) }

// isNaN reports a state that is none.
func (s *State) isNaN() bool {
	for _, n := range s.amount {
		if math.IsNaN(n) || math.IsInf(n, 0) {
			return true
		}
	}
	return false
}
