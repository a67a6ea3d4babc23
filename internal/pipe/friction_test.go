package pipe_test

import (
	"errors"
	"fmt"
	"math"
	"testing"

	"example.org/zymase/internal/pipe"
	"example.org/zymase/units"
)

func factor(t *testing.T) func(float64, error) float64 {
	return func(f float64, err error) float64 {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return f
	}
}

func near(t *testing.T, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.12g, want %.12g", what, got, want)
	}
}

func refused(t *testing.T, err error, quantity string, least, most float64) {
	t.Helper()
	if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Quantity != quantity || e.Min != least || e.Max != most {
		t.Error(err)
	}
}

// Colebrook's equation solved by iteration, an independent method: within 2 %.
func TestFrictionFactor(t *testing.T) {
	for _, rough := range []float64{0, 1e-6, 1e-4, 1e-3, 0.01, 0.05} {
		for _, re := range []float64{4e3, 1e4, 1e5, 1e6, 1e7, 1e8} {
			f := 0.02
			for range 100 {
				f = math.Pow(-2*math.Log10(rough/3.7+2.51/(re*math.Sqrt(f))), -2)
			}
			got := factor(t)(pipe.FrictionFactor(re, rough))
			near(t, "turbulent", got, f, 0.021*f)
		}
	}
	// Haaland by hand: (1e-3/3.7)^1.11 = 1.09472e-4, 6.9e-5; 1.8·log(1.78472e-4) = −6.74717.
	near(t, "Haaland", factor(t)(pipe.FrictionFactor(1e5, 1e-3)), 0.0219663, 2e-7)
	// Moody's chart: smooth, Re 1e5: 0.0180; laminar at 1000: 0.064.
	near(t, "smooth", factor(t)(pipe.FrictionFactor(1e5, 0)), 0.0180, 0.00018)
	near(t, "laminar", factor(t)(pipe.FrictionFactor(1000, 0.01)), 0.064, 1e-15)
	near(t, "just laminar", factor(t)(pipe.FrictionFactor(2299, 0.05)), 64./2299, 1e-15)
	if f := factor(t)(pipe.FrictionFactor(2301, 0)); f < 0.045 {
		t.Errorf("just turbulent: %g", f)
	}
	for _, re := range []float64{0.9, 1.1e8} {
		_, err := pipe.FrictionFactor(re, 0)
		refused(t, err, "Reynolds number", 1, 1e8)
	}
	for _, r := range []float64{-0.001, 0.051} {
		_, err := pipe.FrictionFactor(1e5, r)
		refused(t, err, "relative roughness", 0, 0.05)
	}
}

// Moody's chart reads 0.018 for a smooth pipe at Re 100,000.
func ExampleFrictionFactor() {
	f, err := pipe.FrictionFactor(1e5, 0)
	fmt.Printf("%.4f %v\n", f, err)
	// Output:
	// 0.0178 <nil>
}

// Flow is laminar to a Reynolds number of 2300 (64/Re, Hagen and Poiseuille), and its friction jumps there: that of a
// smooth pipe by Blasius, 0.3164/Re^¼, is 0.0457.
func TestWhereFlowTurns(t *testing.T) {
	near(t, "laminar", factor(t)(pipe.FrictionFactor(2299.5, 0)), 64/2299.5, 1e-12)
	near(t, "turbulent", factor(t)(pipe.FrictionFactor(2300.5, 0)), 0.0457, 0.004)
}
