package rival_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// Balling's tables A and B, by D = n − m and original extract: p − n and A. Printed
// to 0.001; his interpolation rounds in the last digit. In table A, D = 1, 10 °P the
// copy prints 4.374 for 4.347; the cell at 14 °P of table B cannot be read.
func TestBallingTables(t *testing.T) {
	pn := map[float64][8]float64{
		1.0: {4.366, 4.347, 4.329, 4.310, 4.292, 4.273, 4.255, 4.237},
		1.5: {6.549, 6.520, 6.493, 6.465, 6.438, 6.409, 6.382, 6.355},
	}
	a := map[float64][8]float64{
		1.0: {2.216, 2.218, 2.220, 2.223, 2.226, math.NaN(), 2.232, 2.235},
		1.2: {2.659, 2.662, 2.664, 2.667, 2.671, 2.674, 2.678, 2.682},
		1.5: {3.325, 3.328, 3.331, 3.335, 3.339, 3.343, 3.348, 3.352},
	}
	for _, d := range []float64{1, 1.2, 1.5} {
		for i := range 8 {
			p := float64(9 + i)
			q := 1.2290 + 0.0010*float64(i) // as printed
			m := p - q*d/(q-1)
			got := ok[rival.Attenuated](t)(rival.AttenuatedBallingTables(plato(p), plato(m)))
			if rows, good := pn[d]; good {
				near(t, fmt.Sprint("p − n, D ", d, ", OE ", p), p-got.RealExtract.In(units.DegreePlato), rows[i], 0.002)
			}
			if want := a[d][i]; !math.IsNaN(want) {
				near(t, fmt.Sprint("A, D ", d, ", OE ", p), got.ByMass.In(units.PercentMass), want, 0.0015)
			}
		}
	}
	got := ok[rival.Attenuated](t)(rival.AttenuatedBallingTables(plato(11.177), plato(4.250)))
	near(t, "worked example, n", got.RealExtract.In(units.DegreePlato), 5.550, 0.003)
	near(t, "worked example, A", got.ByMass.In(units.PercentMass), 2.888, 0.003)
}

// The means of the five sets in table III of Cutaia et al. 2009: means of nearly
// linear functions are near the function of the means. Tolerance 0.1 % mass and 0.15
// °P; the real extract of that table was itself calculated, by another equation.
func TestCutaiaMeans(t *testing.T) {
	for _, r := range []struct {
		set           string
		oe, a, re, ae float64
	}{{"RPB-I", 14.08, 4.72, 5.28, 3.11}, {"RPB-II", 14.54, 5.14, 4.88, 2.53}, {"Proprietary", 17.67, 6.56, 5.38, 2.45},
		{"CMBTC", 11.34, 3.82, 3.8, 2.01}, {"Navarro", 12.75, 4.21, 4.74, 2.79}} {
		got := ok[rival.Attenuated](t)(rival.AttenuatedCutaia(plato(r.oe), plato(r.ae)))
		near(t, r.set+" A", got.ByMass.In(units.PercentMass), r.a, 0.1)
		near(t, r.set+" RE", got.RealExtract.In(units.DegreePlato), r.re, 0.15)
		// the quotient of the two regressions for A is the third
		q := (r.oe - got.RealExtract.In(units.DegreePlato)) / (r.oe - r.ae)
		near(t, r.set+" Q", q, (0.372+0.00357*r.oe)/(0.459+0.00469*r.oe), 0.005)
		near(t, r.set+" A of RE", ok[units.StrengthByMass](t)(rival.StrengthCutaiaReal(plato(r.oe), plato(r.re))).In(units.PercentMass), r.a, 0.15)
		doemens := ok[rival.Attenuated](t)(rival.AttenuatedDoemens(plato(r.oe), plato(r.ae)))
		near(t, r.set+" A, Doemens", doemens.ByMass.In(units.PercentMass), r.a, 0.12)
		near(t, r.set+" RE, Doemens", doemens.RealExtract.In(units.DegreePlato), r.re, 0.25)
	}
}

// The formulas as printed, at 12 and 3 °P by hand.
func TestStrengthMethodsByHand(t *testing.T) {
	for _, c := range []struct {
		name  string
		f     func(a, b units.Extract) (rival.Attenuated, error)
		re, a float64
	}{
		{"Balling's tables", rival.AttenuatedBallingTables, 12 - 9/1.232, 9 / 1.232 * 100 / (206.65 - 12.798)},
		{"handbook", rival.AttenuatedHandbook, 0.1808*12 + 0.8192*3, 7.3728 / (2.0665 - 0.12798)},
		{"MEBAK", rival.AttenuatedMEBAK, 12 - 7.29, 7.29 / (2.0665 - 0.12798)},
		{"Cutaia", rival.AttenuatedCutaia, 12 - 0.803656*9, 0.41484 * 9},
		{"Doemens", rival.AttenuatedDoemens, 12 - 0.81208*9, 0.4202 * 9},
	} {
		got := ok[rival.Attenuated](t)(c.f(plato(12), plato(3)))
		near(t, c.name+" RE", got.RealExtract.In(units.DegreePlato), c.re, 1e-9)
		near(t, c.name+" A", got.ByMass.In(units.PercentMass), c.a, 1e-9)
	}
	near(t, "Cutaia, real", ok[units.StrengthByMass](t)(rival.StrengthCutaiaReal(plato(12), plato(4.5))).In(units.PercentMass), 0.51528*7.5, 1e-9)
}

func TestStrengthMethodsRefuse(t *testing.T) {
	for _, c := range []struct {
		f         func(a, b units.Extract) (rival.Attenuated, error)
		low, high float64
	}{{rival.AttenuatedBallingTables, 9, 16}, {rival.AttenuatedHandbook, 4, 25}, {rival.AttenuatedMEBAK, 4, 25}, {rival.AttenuatedCutaia, 9.4, 18.1},
		{rival.AttenuatedDoemens, 9.4, 18.1}} {
		for _, p := range []float64{c.low - 0.01, c.high + 0.01, math.NaN()} {
			_, err := c.f(plato(p), plato(3))
			refused(t, "method", err, "original extract")
		}
		for _, m := range []float64{-2.01, 12.01, math.NaN()} {
			_, err := c.f(plato(12), plato(m))
			refused(t, "method", err, "apparent extract")
		}
		for _, p := range []float64{c.low, c.high} {
			if a, err := c.f(plato(p), plato(-2)); err != nil {
				refused(t, "all extract used", err, "apparent extract")
				if p > 4 {
					t.Error(p, err)
				}
			} else if a.RealExtract.In(units.DegreePlato) < 0 {
				t.Errorf("original %v: real extract %v", p, a.RealExtract)
			}
			ok[rival.Attenuated](t)(c.f(plato(p), plato(p)))
		}
	}
	_, err := rival.StrengthCutaiaReal(plato(9.3), plato(3))
	refused(t, "real", err, "original extract")
	_, err = rival.StrengthCutaiaReal(plato(18.2), plato(3))
	refused(t, "real", err, "original extract")
	_, err = rival.StrengthCutaiaReal(plato(12), plato(-0.1))
	refused(t, "real", err, "real extract")
	_, err = rival.StrengthCutaiaReal(plato(12), plato(12.1))
	refused(t, "real", err, "real extract")
}

// 0.81·(4 + 0.938271…) = 4: at the edge all extract is used, below it more than all.
func TestHandbookConstantsUseNoMoreThanAll(t *testing.T) {
	a := ok[rival.Attenuated](t)(rival.AttenuatedMEBAK(plato(4), plato(-0.938)))
	if re := a.RealExtract.In(units.DegreePlato); re < 0 || re > 0.001 {
		t.Error(re)
	}
	for _, f := range []func(a, b units.Extract) (rival.Attenuated, error){rival.AttenuatedMEBAK, rival.AttenuatedHandbook} {
		_, err := f(plato(4), plato(-0.939))
		refused(t, "more than all", err, "apparent extract")
	}
}

// The ranges that the documentation states.
func TestLimitsOfStrength(t *testing.T) {
	_, err := rival.AttenuatedBallingTables(plato(8), plato(1))
	edges(t, err, "original extract", 9, 16)
	_, err = rival.AttenuatedMEBAK(plato(3), plato(1))
	edges(t, err, "original extract", 4, 25)
	_, err = rival.AttenuatedCutaia(plato(9), plato(1))
	edges(t, err, "original extract", 9.4, 18.1)
	_, err = rival.AttenuatedDoemens(plato(9), plato(1))
	edges(t, err, "original extract", 9.4, 18.1)
	_, err = rival.AttenuatedDoemens(plato(10), plato(11))
	edges(t, err, "apparent extract", -2, 10)
	_, err = rival.StrengthCutaiaReal(plato(9), plato(1))
	edges(t, err, "original extract", 9.4, 18.1)
	_, err = rival.StrengthCutaiaReal(plato(12), plato(13))
	edges(t, err, "real extract", 0, 12)
}
