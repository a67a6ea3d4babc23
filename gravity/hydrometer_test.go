package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Balling's table of corrections for a saccharometer of 14 °R (17.5 °C), in per cent
// of extract to add. It names neither extract (worts of 10 to 14 % were usual) nor
// glass, and is older than good tables of water. Modern densities agree within 0.07
// up to 21 °C; above it his corrections are smaller, by 0.2 at 30 °C.
func TestHydrometerBallingCorrection(t *testing.T) {
	h := gravity.Hydrometer{Reference: gravity.At17p5}
	for _, r := range [][2]float64{
		{5, -0.40}, {6.25, -0.37}, {7.5, -0.33}, {8.75, -0.29}, {10, -0.25}, {11.25, -0.21}, {12.5, -0.17}, {13.75, -0.13}, {15, -0.09}, {16.25, -0.04}, {17.5, 0},
		{18.75, 0.04}, {20, 0.09}, {21.25, 0.14}, {22.5, 0.20}, {23.75, 0.26}, {25, 0.32}, {26.25, 0.38}, {27.5, 0.45}, {28.75, 0.52}, {30, 0.60},
	} {
		wort := solution(t, 88, 12, 0)
		warm := ok[float64](t)(h.Reading(wort, celsius(r[0])))
		// what a scale at 17.5 °C calls that reading, in °P
		lo, hi := 0.0, 40.0
		for range 50 {
			mid := (lo + hi) / 2
			s := solution(t, 100-mid, mid, 0)
			if ok[float64](t)(h.Reading(s, celsius(17.5))) < warm {
				lo = mid
			} else {
				hi = mid
			}
		}
		tol := 0.07
		if r[0] > 21.25 {
			tol = 0.2 * (r[0] - 15) / 15
			if 12-lo < r[1] {
				t.Errorf("%v °C: %v is below Balling's %v", r[0], 12-lo, r[1])
			}
		}
		near(t, fmt.Sprint(r[0], " °C"), 12-lo, r[1], tol+0.005)
	}
}

// At the temperature of its reference a hydrometer shows the gravity itself; for
// 60/60 °F water is 1.000 there.
func TestHydrometerAtReference(t *testing.T) {
	water := solution(t, 1, 0, 0)
	for r, c := range map[gravity.Reference]float64{gravity.At20: 20, gravity.At60F: (60 - 32) / 1.8, gravity.At15: 15, gravity.At17p5: 17.5, gravity.At25: 25} {
		near(t, r.String(), ok[float64](t)(gravity.Hydrometer{Reference: r}.Reading(water, celsius(c))), 1, 1e-15)
		liquid, w, err := r.Temperatures()
		if err != nil {
			t.Error(err)
		}
		near(t, r.String(), liquid.In(units.Celsius), c, 1e-12)
		near(t, r.String(), w.In(units.Celsius), c, 1e-12)
	}
	near(t, "20/4 °C: water", ok[float64](t)(gravity.Hydrometer{Reference: gravity.At20On4}.Reading(water, celsius(20))), 998.2031/999.9720, 1e-6)
	for r, want := range map[gravity.Reference]string{gravity.At20: "20/20 °C", gravity.At60F: "15.56/15.56 °C", gravity.At20On4: "20/4 °C",
		gravity.At15: "15/15 °C", gravity.At17p5: "17.5/17.5 °C", gravity.At25: "25/25 °C", gravity.At15On4: "15/4 °C",
		-1: "unknown reference -1", 7: "unknown reference 7"} {
		if r.String() != want {
			t.Errorf("%d: %s", r, r)
		}
	}
	for _, r := range []gravity.Reference{-1, 7} {
		_, _, err := r.Temperatures()
		unknown(t, err, "reference")
		_, err = gravity.Hydrometer{Reference: r}.Reading(water, celsius(20))
		unknown(t, err, "reference")
		_, err = gravity.Hydrometer{Reference: r}.Correct(1, volPct(0), celsius(20))
		unknown(t, err, "reference")
		_, err = water.SpecificGravity(r, gravity.InAir)
		unknown(t, err, "reference")
		_, err = gravity.Gravity{}.As(r, gravity.InAir)
		unknown(t, err, "reference")
		_, err = gravity.FromReference(1, r, gravity.InAir)
		unknown(t, err, "reference")
	}
	for _, a := range []gravity.Air{-1, 2} {
		_, err := water.SpecificGravity(gravity.At20, a)
		unknown(t, err, "air")
		_, err = gravity.Gravity{}.As(gravity.At20, a)
		unknown(t, err, "air")
		_, err = gravity.FromReference(1, gravity.At20, a)
		unknown(t, err, "air")
	}
}

// The glass alone: at 30 °C its 25e-6/K (ISO 1768:1975, read) makes
// the reading 0.00025 of itself higher than the density says.
func TestHydrometerGlass(t *testing.T) {
	s := solution(t, 90, 10, 0)
	rho := ok[units.Density](t)(s.Density(celsius(30))).In(units.KilogramPerCubicMetre)
	water := ok[units.Density](t)(gravity.WaterDensity(celsius(20))).In(units.KilogramPerCubicMetre)
	near(t, "reading", ok[float64](t)(gravity.Hydrometer{}.Reading(s, celsius(30)))*water/rho-1, 0.00025, 1e-12)
}

// What it shows in a liquid at any temperature is corrected back to the gravity of
// that liquid.
func TestHydrometerRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.Float64Range(0, 25).Draw(t, "extract")
		e := rapid.SampledFrom([]float64{0, 1}).Draw(t, "fermented") * rapid.Float64Range(0.1, 15).Draw(t, "ethanol")
		c := rapid.Float64Range(0, 40).Draw(t, "°C")
		h := gravity.Hydrometer{Reference: gravity.Reference(rapid.IntRange(0, 6).Draw(t, "reference"))}
		s, err := gravity.NewSolution(kg(100-x-e), kg(x), kg(e))
		if err != nil {
			t.Fatal(err)
		}
		r, err := h.Reading(s, celsius(c))
		if err != nil {
			t.Fatal(err)
		}
		g, err := h.Correct(r, s.ByVolume(), celsius(c))
		if err != nil || math.Abs(g.SG()-s.Gravity().SG()) > 1e-10 {
			t.Fatalf("%v corrected to %v, want %v: %v", r, g, s.Gravity(), err)
		}
		// a strength that is off by 1 % vol matters little near 20 °C
		v := s.ByVolume().In(units.PercentVolume)
		if e > 1 && c > 5 && c < 30 && x > 1 {
			g, err = h.Correct(r, volPct(v-1), celsius(c))
			if err != nil || math.Abs(g.SG()-s.Gravity().SG()) > 0.0003 {
				t.Fatalf("strength off by 1 %%: %v, want %v: %v", g, s.Gravity(), err)
			}
		}
	})
}

func TestHydrometerRefuses(t *testing.T) {
	h := gravity.Hydrometer{}
	s := solution(t, 90, 5, 5)
	_, err := h.Reading(s, celsius(40.1))
	refused(t, "reading", err, "temperature")
	for _, c := range []struct {
		r, c, v float64
		about   string
	}{
		{1.05, 100.1, 0, "temperature"}, {1.05, -0.1, 0, "temperature"}, {1.05, 40.1, 5, "temperature"}, {1.0, 20, 23.1, "strength"}, {1.0, 20, -1, "strength"},
		{1.3, 20, 0, "reading"}, {1.05, 20, 23.1, "strength"}, {0.95, 20, 0, "reading"}, {1.13, 20, 5, "reading"}, {0.94, 20, 5, "reading"},
		{math.NaN(), 20, 0, "reading"}, {1.05, math.NaN(), 0, "temperature"}, {1.05, 20, math.NaN(), "strength"},
	} {
		_, err := h.Correct(c.r, volPct(c.v), celsius(c.c))
		refused(t, fmt.Sprint(c), err, c.about)
	}
	for _, c := range [][3]float64{{1.28, 20, 0}, {0.963, 20, 0}, {1.12, 20, 5}, {0.957, 20, 5}, {1.02, 100, 0}} {
		ok[gravity.Gravity](t)(h.Correct(c[0], volPct(c[2]), celsius(c[1])))
	}
}
