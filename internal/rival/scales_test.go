package rival_test

import (
	"math"
	"testing"

	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// Each formula as it is printed, by exact arithmetic at 1 and 1.040, and its range.
func TestScales(t *testing.T) {
	for _, c := range []struct {
		name         string
		f            func(float64) (units.Extract, error)
		most         float64
		at1, at1p040 float64
	}{
		{"NBS", rival.BrixNBS, 1.17874, 182.46007 - 775.68212 + 1262.7794 - 669.56218, 182.46007*1.124864 - 775.68212*1.0816 + 1262.7794*1.04 - 669.56218},
		{"ASBC", rival.PlatoASBC, 1.0830, 135.997 - 630.272 + 1111.14 - 616.868, 135.997*1.124864 - 630.272*1.0816 + 1111.14*1.04 - 616.868},
		{"Lincoln", rival.PlatoLincoln, 1.1, 0, (463 - 205*1.04) * 0.04},
		{"linear", rival.BrixLinear, 1.18, 231.61 * 0.0023, 231.61 * 0.0423},
		{"hyperbola", rival.PlatoHyperbola, 1.15, 0, 260 * (1 - 1/1.04)},
	} {
		near(t, c.name+" at 1", ok[units.Extract](t)(c.f(1)).In(units.DegreePlato), c.at1, 1e-9)
		near(t, c.name+" at 1.040", ok[units.Extract](t)(c.f(1.040)).In(units.DegreePlato), c.at1p040, 1e-9)
		for _, s := range []float64{1 - 1e-6, c.most + 1e-5, math.NaN(), math.Inf(1)} {
			_, err := c.f(s)
			edges(t, err, "specific gravity", 1, c.most)
		}
		ok[units.Extract](t)(c.f(c.most))
	}
}
