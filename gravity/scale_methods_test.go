package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// Each formula as it is printed, by hand at 1.040 and 1.080, and the pitfalls that
// are known of it.
func TestScaleMethods(t *testing.T) {
	for _, c := range []struct {
		name         string
		f            func(float64) (units.Extract, error)
		least, most  float64
		at1, at1p040 float64 // printed polynomial, exact rational arithmetic
		tolerance    float64 // °P against the density table, from 1.004 to the top
	}{
		{"NBS", rival.BrixNBS, 1, 1.17874, 182.46007 - 775.68212 + 1262.7794 - 669.56218, 182.46007*1.124864 - 775.68212*1.0816 + 1262.7794*1.04 - 669.56218, 0.023},
		{"ASBC", rival.PlatoASBC, 1, 1.0830, 135.997 - 630.272 + 1111.14 - 616.868, 135.997*1.124864 - 630.272*1.0816 + 1111.14*1.04 - 616.868, 0.012},
		{"Lincoln", rival.PlatoLincoln, 1, 1.1, 0, (463 - 205*1.04) * 0.04, 0.21},
		{"linear", rival.BrixLinear, 1, 1.18, 231.61 * 0.0023, 231.61 * 0.0423, 2.2},
		{"hyperbola", rival.PlatoHyperbola, 1, 1.15, 0, 260 * (1 - 1/1.04), 0.6},
	} {
		near(t, c.name+" at 1", ok[units.Extract](t)(c.f(1)).In(units.DegreePlato), c.at1, 1e-9)
		near(t, c.name+" at 1.040", ok[units.Extract](t)(c.f(1.040)).In(units.DegreePlato), c.at1p040, 1e-9)
		for _, s := range []float64{c.least - 1e-6, c.most + 1e-5, math.NaN(), math.Inf(1)} {
			_, err := c.f(s)
			refused(t, c.name, err, "specific gravity")
		}
		last := -1.0
		for s := 1.0; s <= c.most; s += 0.001 {
			got := ok[units.Extract](t)(c.f(s)).In(units.DegreePlato)
			if got <= last {
				t.Errorf("%s falls at %v", c.name, s)
			}
			last = got
			g := ok[gravity.Gravity](t)(gravity.FromReference(s, gravity.At20, gravity.InAir))
			near(t, fmt.Sprint(c.name, " at ", s), got, g.Extract().In(units.DegreePlato), c.tolerance)
		}
	}
	// published pitfalls of the cubics
	near(t, "NBS at 1", ok[units.Extract](t)(rival.BrixNBS(1)).In(units.DegreePlato), -0.0048, 0.00005)
	near(t, "ASBC at 1", ok[units.Extract](t)(rival.PlatoASBC(1)).In(units.DegreePlato), -0.0030, 0.00005)
}

func TestScaleMethodsDifference(t *testing.T) {
	g := ok[gravity.Gravity](t)(gravity.FromExtract(plato(12)))
	all := g.ScaleMethods()
	if len(all) != 6 || all[0].Name != "ICUMSA SPS-4" || all[0].Extract != g.Extract() {
		t.Fatal(all)
	}
	for _, m := range all {
		near(t, m.Name, m.Extract.In(units.DegreePlato), 12, 0.35)
		if _, err := m.Evidence.MarshalText(); err != nil || m.Evidence.Source == "" {
			t.Error(m.Name, err)
		}
	}
	if one := ok[gravity.Gravity](t)(gravity.FromSG(0.99)).ScaleMethods(); len(one) != 1 {
		t.Error(one)
	}
	if few := ok[gravity.Gravity](t)(gravity.FromSG(1.12)).ScaleMethods(); len(few) != 4 {
		t.Error(few)
	}
}
