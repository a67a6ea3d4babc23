package units_test

import (
	"errors"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

func close(t interface {
	Helper()
	Errorf(string, ...any)
}, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.10g, want %.10g ± %g", what, got, want, tol)
	}
}

func number(v float64) units.PureNumber { return units.One.Of(checked.Number(v)) }

type measuredNumber = units.MeasuredNumber

func TestMeasured(t *testing.T) {
	m, err := units.Measure(units.PercentVolume.Of(4.63), units.PercentagePoint.Of(0.149))
	if err != nil || m.Value() != units.PercentVolume.Of(4.63) || m.Uncertainty() != units.PercentagePoint.Of(0.149) {
		t.Error(m, err)
	}
	if got := m.Text(units.PercentVolume, 1, 2); got != "4.6 ± 0.3 % vol (k = 2)" {
		t.Error(got)
	}
	if got := m.Text(units.PercentVolume, 2, 0.5); got != "4.63 ± 0.07 % vol (k = 0.5)" {
		t.Error(got)
	}
	if got := m.Text(units.PercentVolume, 99, 0); got != "4.630000000000000 ± 0.000000000000000 % vol (k = 0)" { // 15 places at most
		t.Error(got)
	}
	if got := m.String(); got != "4.63 ± 0.298 % vol (k = 2)" {
		t.Error(got)
	}
	if got := m.Text(units.PercentVolume, 3, 1.96); got != "4.630 ± 0.292 % vol (k = 1.96)" {
		t.Error(got)
	}
	for _, k := range []float64{-1, 11, math.NaN()} {
		if got := m.Text(units.PercentVolume, -1, k); got != "5 ± 0 % vol (k = 2)" {
			t.Error(got)
		}
		_, err := m.Expanded(k)
		isRange(t, err, "coverage factor", 0, 10)
	}
	for _, k := range []float64{0, 2, 10} {
		u, err := m.Expanded(k)
		if err != nil {
			t.Error(err)
		}
		close(t, "expanded", u.In(units.PercentagePoint), k*0.149, 1e-15)
	}
	// a temperature and its uncertainty are of two dimensions
	w, err := units.Measure(units.Celsius.Of(20), units.KelvinDifference.Of(0.5))
	if err != nil || w.Text(units.Fahrenheit, 1, 2) != "68.0 ± 1.8 °F (k = 2)" {
		t.Error(w.Text(units.Fahrenheit, 1, 2), err)
	}
	_, err = units.Measure(units.Celsius.Of(20), units.KelvinDifference.Of(-0.5))
	isRange(t, err, "temperature difference", 0, 1e15)
	_, err = units.Measure(units.Celsius.Of(20), units.KelvinDifference.Of(checked.Number(math.NaN())))
	isRange(t, err, "temperature difference", 0, 1e15)
}

// JCGM 100:2008 4.3.7: limits ± a have u² = a²/3; F.2.2.1: a resolution δ has
// u = 0.29 δ.
func TestReadAndLimited(t *testing.T) {
	r, err := units.ReadTo(number(1.012), number(0.001))
	if err != nil {
		t.Fatal(err)
	}
	close(t, "read", r.Uncertainty().In(units.One), 0.00029, 0.000002)
	l, err := units.Limited(number(1.012), number(0.001))
	if err != nil {
		t.Fatal(err)
	}
	close(t, "limited", math.Pow(l.Uncertainty().In(units.One), 2), 1e-6/3, 1e-15)
	both, err := r.Widened(l.Uncertainty())
	if err != nil {
		t.Fatal(err)
	}
	close(t, "both", math.Pow(both.Uncertainty().In(units.One), 2), 1e-6/3+1e-6/12, 1e-15)
	_, err = r.Widened(number(-1))
	isRange(t, err, "pure number", 0, 1e15)
	_, err = units.ReadTo(number(1), number(-1))
	isRange(t, err, "pure number", 0, 1e15)
	_, err = units.Limited(number(1), number(-1))
	isRange(t, err, "pure number", 0, 1e15)
}

// May this support a label tolerance of ± 0.3 % vol?
func TestCapability(t *testing.T) {
	for _, c := range [][2]float64{{0.15, 1}, {0.1, 1.5}, {0.3, 0.5}, {0, 1000}} {
		m, err := units.Measure(units.PercentVolume.Of(4.6), units.PercentagePoint.Of(checked.Number(c[0])))
		if err != nil {
			t.Fatal(err)
		}
		got, err := m.Capability(units.PercentagePoint.Of(0.3))
		if err != nil {
			t.Error(err)
		}
		close(t, "capability", got, c[1], 1e-12)
		got, err = m.Capability(units.PercentagePoint.Of(0))
		if got != 0 {
			t.Errorf("%v beside an error", got)
		}
		isRange(t, err, "tolerance", 0, 1e15)
	}
}

func measure(t interface {
	Helper()
	Fatal(...any)
}, v, u float64) measuredNumber {
	t.Helper()
	return must[measuredNumber](t)(units.Measure(number(v), number(u)))
}

// JCGM 100:2008 annex H.2 is a worked example of eq. 16: R = (V/I)·cos φ with
// V = 4.9990(32) V, I = 19.6610(95) mA, φ = 1.04446(75) rad and correlations
// r(V,I) = −0.36, r(V,φ) = 0.86, r(I,φ) = −0.65 (recalled from memory); printed R = 127.732(71) Ω.
// X = (V/I)·sin φ = 219.847(295) Ω; Z = V/I = 254.260(236) Ω.
func TestPropagateGUMH2(t *testing.T) {
	v, i, phi := measure(t, 4.9990, 0.0032), measure(t, 19.6610e-3, 0.0095e-3), measure(t, 1.04446, 0.00075)
	with := []units.Correlation{{A: &v, B: &i, R: -0.36}, {A: &v, B: &phi, R: 0.86}, {A: &phi, B: &i, R: -0.65}}
	for _, c := range []struct {
		name    string
		f       func(v, i, phi float64) float64
		y, u    float64
		tol     float64
		printed float64
	}{
		{"R", func(v, i, phi float64) float64 { return v / i * math.Cos(phi) }, 127.732, 0.071, 0.002, 0.0015},
		{"X", func(v, i, phi float64) float64 { return v / i * math.Sin(phi) }, 219.847, 0.295, 0.002, 0.0015},
		{"Z", func(v, i, phi float64) float64 { return v / i }, 254.260, 0.236, 0.002, 0.0015},
	} {
		f := func(x units.Trial) (units.PureNumber, error) {
			return units.One.Try(c.f(units.At(x, &v).In(units.One), units.At(x, &i).In(units.One), units.At(x, &phi).In(units.One)))
		}
		m, err := units.Propagate(f, &v, with[0], &i, with[1], &phi, with[2])
		if err != nil {
			t.Fatal(err)
		}
		close(t, c.name, m.Value().In(units.One), c.y, c.tol)
		close(t, "u("+c.name+")", m.Uncertainty().In(units.One), c.u, c.printed)
	}
}

// First order and Monte Carlo agree where the function is nearly straight, and the
// exact formulas of sums and products come out (JCGM 100:2008 eq. 11a, 12).
func TestPropagateAgainstMonteCarlo(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a := measure(t, rapid.Float64Range(1, 10).Draw(t, "a"), rapid.Float64Range(0.001, 0.02).Draw(t, "u(a)"))
		b := measure(t, rapid.Float64Range(1, 10).Draw(t, "b"), rapid.Float64Range(0.001, 0.02).Draw(t, "u(b)"))
		av, bv, ua, ub := a.Value().In(units.One), b.Value().In(units.One), a.Uncertainty().In(units.One), b.Uncertainty().In(units.One)
		f := func(x units.Trial) (units.PureNumber, error) {
			return units.One.Try(units.At(x, &a).In(units.One) * units.At(x, &b).In(units.One))
		}
		m, err := units.Propagate(f, &a, &b)
		if err != nil {
			t.Fatal(err)
		}
		u := m.Uncertainty().In(units.One)
		close(t, "product", u, math.Hypot(bv*ua, av*ub), 1e-9)
		close(t, "value", m.Value().In(units.One), av*bv, 1e-12)
		parts, err := units.Budget(f, &a, &b)
		if err != nil || len(parts) != 2 {
			t.Fatal(parts, err)
		}
		close(t, "budget", parts[0].In(units.One), bv*ua, 1e-9)
		close(t, "budget", parts[1].In(units.One), av*ub, 1e-9)
		const n = 4000
		mc, failed, err := units.Simulate(f, n, uint64(rapid.Uint32().Draw(t, "seed")), &a, &b)
		if err != nil || failed != 0 {
			t.Fatal(failed, err)
		}
		close(t, "mean", mc.Value().In(units.One), av*bv, 6*u/math.Sqrt(n))
		close(t, "standard deviation", mc.Uncertainty().In(units.One), u, 6*u/math.Sqrt(2*n))
		// fully together, and against each other
		for r, want := range map[float64]float64{1: bv*ua + av*ub, -1: math.Abs(bv*ua - av*ub)} {
			m, err := units.Propagate(f, &a, &b, units.Correlation{A: &a, B: &b, R: r})
			if err != nil {
				t.Fatal(err)
			}
			close(t, "correlated", m.Uncertainty().In(units.One), want, 1e-7)
		}
	})
}

func TestPropagateEdges(t *testing.T) {
	a, b, c := measure(t, 1, 0.5), measure(t, 2, 0), measure(t, 3, 0.1)
	wall := errors.New("wall")
	one := func(lo, hi float64) func(units.Trial) (units.PureNumber, error) {
		return func(x units.Trial) (units.PureNumber, error) {
			v := units.At(x, &a)
			if n := v.In(units.One); n < lo || n > hi {
				return units.PureNumber{}, wall
			}
			return units.One.Try(3*v.In(units.One) + units.At(x, &b).In(units.One) + units.At(x, &c).In(units.One)) // c is not an input
		}
	}
	for _, r := range [][2]float64{{0, 2}, {0.9, 2}, {0, 1.1}} { // both sides, one side
		m, err := units.Propagate(one(r[0], r[1]), &a, &b)
		if err != nil {
			t.Fatal(err)
		}
		close(t, "value", m.Value().In(units.One), 8, 1e-12)
		close(t, "uncertainty", m.Uncertainty().In(units.One), 1.5, 1e-12)
	}
	if _, err := units.Propagate(one(0.9, 1.1), &a); !errors.Is(err, wall) {
		t.Error(err)
	}
	if _, err := units.Propagate(one(2, 3), &a); !errors.Is(err, wall) {
		t.Error(err)
	}
	if _, err := units.Budget(one(2, 3), &a); !errors.Is(err, wall) {
		t.Error(err)
	}
	if m, err := units.Propagate(one(0, 2)); err != nil || m.Uncertainty() != (units.PureNumber{}) {
		t.Error(m, err)
	}
	if _, err := units.Propagate(one(0, 2), nil, (*measuredNumber)(nil)); err != nil {
		t.Error(err)
	}
	for _, r := range []float64{1.1, -1.1, math.NaN()} {
		_, err := units.Propagate(one(0, 2), &a, &b, units.Correlation{A: &a, B: &b, R: r})
		isRange(t, err, "correlation of two inputs", -1, 1)
	}
	for _, with := range []units.Correlation{{A: &a, B: &c}, {A: &c, B: &a}, {A: &a, B: &a}} {
		_, err := units.Propagate(one(0, 2), &a, &b, with)
		isRange(t, err, "correlation of two inputs", -1, 1)
	}
	if _, err := units.Propagate(one(0, 2), make([]units.Input, 100)...); err != nil {
		t.Error(err)
	}
	_, err := units.Propagate(one(0, 2), make([]units.Input, 101)...)
	isRange(t, err, "number of inputs", 0, 100)
	_, _, err = units.Simulate(one(0, 2), 1000, 1, make([]units.Input, 101)...)
	isRange(t, err, "number of inputs", 0, 100)
	for _, n := range []int{99, 10_000_001} {
		_, _, err = units.Simulate(one(0, 2), n, 1, &a)
		isRange(t, err, "number of draws", 100, 10_000_000)
	}
	if _, failed, err := units.Simulate(one(2, 3), 100, 1, &a); !errors.Is(err, wall) || failed < 80 {
		t.Error(failed, err)
	}
	m, failed, err := units.Simulate(one(0, 2), 1000, 1, &a)
	if err != nil || failed < 20 || failed > 80 { // 4.6 % lie outside 2 u
		t.Error(failed, err)
	}
	again, _, _ := units.Simulate(one(0, 2), 1000, 1, &a)
	if again != m {
		t.Error("the same seed gives the same draws")
	}
	nan := func(units.Trial) (units.PureNumber, error) { return number(math.NaN()), nil }
	if _, err := units.Propagate(nan, &a); err == nil {
		t.Error("NaN")
	}
	if _, _, err := units.Simulate(nan, 100, 1, &a); err == nil {
		t.Error("NaN")
	}
}
