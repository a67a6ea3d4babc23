package ferment

import (
	"math"
	"testing"

	"example.org/zymase/internal/check"
	"pgregory.net/rapid"
)

// Five points hold a polynomial of the fourth degree, whatever stood before them; two a
// line.
func TestDoseCurve(t *testing.T) {
	quartic := func(ph float64) float64 { return 3 + ph*(-2+ph*(0.7+ph*(-0.5+ph*0.25))) }
	rapid.Check(t, func(t *rapid.T) {
		var c doseCurve
		for i := range rapid.IntRange(0, 3).Draw(t, "points before") {
			c.add(rapid.Float64Range(0, 10).Draw(t, "dose before"), float64(i)-3.5)
		}
		for i := range 5 {
			ph := float64(i) + rapid.Float64Range(0, 0.8).Draw(t, "beside the whole pH")
			c.add(quartic(ph), ph)
		}
		at := rapid.Float64Range(-1, 6).Draw(t, "pH")
		if d := c.dose(at) - quartic(at); math.Abs(d) > 1e-6 {
			t.Fatalf("off the polynomial by %g", d)
		}
	})
	var c doseCurve
	for i, known := range []bool{false, false, true} {
		if c.known() != known {
			t.Errorf("%d points: known %v", i, c.known())
		}
		c.add(10*float64(i), 3+float64(i)/2)
	}
	c = doseCurve{}
	c.add(0, 3)
	c.add(10, 3.5)
	check.Near(t, "line", c.dose(4), 20, 1e-12, "by hand")
	c.add(5, 3.5) // seen again
	check.Near(t, "another line", c.dose(4), 10, 1e-12, "by hand")
}

// Two points are a straight line, and the newer took the dose from the first's own: (1, 3) and (2, 5) give 1 at no lack,
// 2 away from 3.
func TestDoseCurveOfTwo(t *testing.T) {
	c := doseCurve{n: 2}
	c.lack[0], c.mmol[0], c.lack[1], c.mmol[1] = 1, 3, 2, 5
	mmol, moved := c.settling(0)
	check.Near(t, "dose", mmol, 1, 1e-12, "by hand")
	check.Near(t, "moved", moved, 2, 1e-12, "by hand")
	c.n = 1
	mmol, moved = c.settling(0)
	check.Near(t, "dose of one point", mmol, 3, 0, "by hand")
	check.Near(t, "moved by one point", moved, 0, 0, "by hand")
}
