package units_test

import (
	"encoding/json"
	"errors"
	"strings"
	"testing"

	"github.com/shopspring/decimal"
	"pgregory.net/rapid"

	"example.org/zymase/units"
)

func TestParseExact(t *testing.T) {
	for text, want := range map[string]string{"4.20 kg": "4.2 kg", "0.1 g": "0.1 g", "3,5 lb": "3.5 lb", "1e3 g": "1000 g",
		"123456789012345.123456789 mg": "123456789012345.123456789 mg"} {
		x, err := units.ParseExact[units.Mass](text)
		if err != nil || x.String() != want {
			t.Errorf("%q: %v %v", text, x, err)
		}
		if b, err := json.Marshal(x); err != nil || string(b) != `"`+want+`"` {
			t.Errorf("%s %v", b, err)
		}
		var y units.ExactMass
		if err := y.UnmarshalText([]byte(want)); err != nil || !y.Decimal().Equal(x.Decimal()) || y.Unit() != x.Unit() {
			t.Errorf("%v %v", y, err)
		}
	}
	for text, want := range map[string]string{"3 lb 4 oz": "one number and one unit", "-1 kg": "outside", "1e-31 kg": "NaN",
		"1e400 kg": "exponent", "kg": "number", "5 L": "not one of its units", "1e-40 kg": "NaN"} {
		x, err := units.ParseExact[units.Mass](text)
		if err == nil || !strings.Contains(err.Error(), want) || !x.Decimal().IsZero() {
			t.Errorf("%q: %v %v", text, x, err)
		}
	}
	var x units.ExactMass
	if err := x.UnmarshalText([]byte("5 L")); err == nil || x.String() != "0 kg" {
		t.Errorf("%v %v", x, err)
	}
}

func TestUnitExact(t *testing.T) {
	x, err := units.Gram.Exact(decimal.RequireFromString("12.50"))
	if err != nil || x.Text(2) != "12.50 g" || x.Text(0) != "13 g" || x.Text(-1) != "13 g" || x.Quantity() != units.Gram.Of(12.5) {
		t.Errorf("%v %v", x, err)
	}
	if len(x.Text(99)) != len("12.")+30+len(" g") {
		t.Errorf("%q", x.Text(99))
	}
	for _, s := range []string{"1e31", "1e-31", "-1", "1e19", strings.Repeat("9", 61) + "e-30"} {
		if _, err := units.Gram.Exact(decimal.RequireFromString(s)); err == nil {
			t.Errorf("%s is taken", s)
		}
	}
	for _, s := range []string{"0", "1e15", "0.000000000000000000000000000001"} {
		if _, err := units.Gram.Exact(decimal.RequireFromString(s)); err != nil {
			t.Errorf("%s: %v", s, err)
		}
	}
	f, err := units.Fahrenheit.Exact(decimal.NewFromInt(68))
	if err != nil || f.Quantity() != units.Celsius.Of(20) {
		t.Errorf("%v %v", f.Quantity(), err)
	}
}

func exact(t interface {
	Helper()
	Fatal(...any)
}, text string) units.ExactMass {
	t.Helper()
	return must[units.ExactMass](t)(units.ParseExact[units.Mass](text))
}

func TestExactPlus(t *testing.T) {
	x, err := exact(t, "0.1 g").Plus(exact(t, "0.2 g"))
	if err != nil || x.String() != "0.3 g" {
		t.Errorf("%v %v", x, err)
	}
	if _, err := exact(t, "0.1 g").Plus(exact(t, "0.2 oz")); err == nil || !strings.Contains(err.Error(), "the unit is not g") {
		t.Error(err)
	}
}

func TestRound(t *testing.T) {
	for _, c := range []struct {
		q    string
		step string
		how  units.Rounding
		want string
	}{
		{"12.34 g", "0.1 g", units.Nearest, "12.3 g"}, {"12.35 g", "0.1 g", units.Nearest, "12.4 g"}, {"12.34 g", "0.1 g", units.Up, "12.4 g"},
		{"12.36 g", "0.1 g", units.Down, "12.3 g"},
		{"12.3 g", "0.1 g", units.Up, "12.3 g"}, {"12.3 g", "0.1 g", units.Down, "12.3 g"}, {"0.3 g", "0.1 g", units.Down, "0.3 g"},
		{"4.23 kg", "5 g", units.Nearest, "4230 g"}, {"4.233 kg", "5 g", units.Nearest, "4235 g"},
		{"4.233 kg", "0.25 kg", units.Up, "4.25 kg"}, {"1 lb", "1 oz", units.Nearest, "16 oz"}, {"0 g", "0.1 g", units.Up, "0 g"},
	} {
		q := must[units.Mass](t)(units.Parse[units.Mass](c.q))
		got, err := q.Round(exact(t, c.step), c.how)
		if err != nil || got.String() != c.want {
			t.Errorf("%s in steps of %s, way %d: %v %v, want %s", c.q, c.step, c.how, got, err, c.want)
		}
	}
	if got, err := units.Gram.Of(3).Minus(units.Gram.Of(5.26)).Round(exact(t, "0.1 g"), units.Nearest); err != nil || got.String() != "-2.3 g" {
		t.Errorf("%v %v", got, err)
	}
	// how near a multiple counts as it: 1e-9 of the value or of a step, 1/1000 of a step
	for _, c := range []struct {
		grams float64
		want  string
	}{
		{3 + 2.9e-9, "3 g"}, {3 + 3.1e-9, "4 g"}, {0.9e-9, "0 g"}, {1.5e-9, "1 g"}, {1e7 + 0.98e-3, "10000000 g"}, {1e7 + 1.02e-3, "10000001 g"},
	} {
		q := must[units.Mass](t)(units.Gram.Try(c.grams))
		if got, err := q.Round(exact(t, "1 g"), units.Up); err != nil || got.String() != c.want {
			t.Errorf("%.12g g up: %v %v, want %s", c.grams, got, err, c.want)
		}
	}
	_, err := units.Gram.Of(3).Round(units.ExactMass{}, units.Nearest)
	isRange(t, err, "mass", 0, 1e15)
	_, err = units.Kilogram.Of(1e15).Round(exact(t, "1 g"), units.Nearest)
	isRange(t, err, "mass", -1e18, 1e18)
}

// Rounding is by less than a step, and the ways bracket the value.
func TestRoundBrackets(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := kg(rapid.Float64Range(0, 1e6).Draw(t, "kg"))
		step := exact(t, rapid.SampledFrom([]string{"0.1 g", "1 g", "5 g", "0.25 kg", "1 oz"}).Draw(t, "step"))
		up, down, at := must[units.ExactMass](t)(q.Round(step, units.Up)), must[units.ExactMass](t)(q.Round(step,
			units.Down)), must[units.ExactMass](t)(q.Round(step, units.Nearest))
		s := step.Quantity().In(units.Kilogram)
		tiny := 1e-9 * (q.In(units.Kilogram) + s)
		x, lo, hi, mid := q.In(units.Kilogram), down.Quantity().In(units.Kilogram), up.Quantity().In(units.Kilogram), at.Quantity().In(units.Kilogram)
		if lo > x+tiny || hi < x-tiny || hi-lo > s*1.0001+tiny || mid < lo || mid > hi || mid-x > s/2+tiny || x-mid > s/2+tiny {
			t.Fatalf("%v: %v %v %v", q, down, at, up)
		}
	})
}

// The parts add up to the whole exactly, differ by a step at most, and are whole
// steps.
func TestSplitAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		steps := rapid.Int64Range(0, 1_000_000).Draw(t, "steps")
		step := exact(t, rapid.SampledFrom([]string{"0.1 g", "1 g", "0.25 g", "7 g"}).Draw(t, "step"))
		n := rapid.IntRange(1, 50).Draw(t, "parts")
		whole := must[units.ExactMass](t)(units.Gram.Exact(step.Decimal().Mul(decimal.NewFromInt(steps))))
		parts, err := whole.Split(n, step)
		if err != nil || len(parts) != n {
			t.Fatal(parts, err)
		}
		sum := parts[0]
		for i, p := range parts[1:] {
			if sum, err = sum.Plus(p); err != nil {
				t.Fatal(err)
			}
			if d := parts[i].Decimal().Sub(p.Decimal()); d.IsNegative() || d.GreaterThan(step.Decimal()) ||
				parts[0].Decimal().Sub(p.Decimal()).GreaterThan(step.Decimal()) {
				t.Fatal("unequal", parts)
			}
			if !p.Decimal().Mod(step.Decimal()).IsZero() {
				t.Fatal("not a whole step", p)
			}
		}
		if !sum.Decimal().Equal(whole.Decimal()) {
			t.Fatalf("%v, not %v", sum, whole)
		}
	})
}

func TestSplitRefuses(t *testing.T) {
	whole, step := exact(t, "10 g"), exact(t, "0.1 g")
	for _, n := range []int{0, -1, 10001} {
		_, err := whole.Split(n, step)
		isRange(t, err, "number of parts", 1, 10000)
	}
	if parts, err := whole.Split(10000, exact(t, "0.001 g")); err != nil || len(parts) != 10000 {
		t.Error(err)
	}
	_, err := whole.Split(2, exact(t, "0 g"))
	isRange(t, err, "mass", 0, 1e18)
	_, err = whole.Split(2, exact(t, "0.3 g"))
	isRange(t, err, "remainder", 0, 0)
	if !strings.Contains(err.Error(), "10 g is not a multiple of 0.3 g") {
		t.Error(err)
	}
	if _, err = whole.Split(2, exact(t, "4 g")); err == nil { // 2.5 steps
		t.Error("10 g is no multiple of 4 g")
	}
	_, err = whole.Split(2, exact(t, "0.1 oz"))
	if _, ok := errors.AsType[*units.ParseError](err); !ok {
		t.Error(err)
	}
	minus := must[units.ExactMass](t)(units.Gram.Of(1).Minus(units.Gram.Of(2)).Round(step, units.Nearest))
	parts, err := minus.Split(3, step)
	if err != nil || parts[0].String() != "-0.4 g" || parts[2].String() != "-0.3 g" {
		t.Error(parts, err)
	}
}
