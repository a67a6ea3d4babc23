package dioxide_test

import (
	"math"
	"testing"

	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

// All 223 values of Weiss (1974) table III.
func TestHenryWeissTableIII(t *testing.T) {
	tab := table(t, "co2_weiss1974", 223)
	for r := range tab.Rows() {
		k := ok[float64](t)(dioxide.HenryWeiss(cell(t, r, "temperature", units.Celsius), cell(t, r, "salinity", units.Percent)))
		within(t, tab, r, "henry", k)
	}
}

// Dickson, Sabine & Christian, Guide to Best Practices (2007) chapter 5: ln K0 =
// −3.5617 at 25 °C and S = 35; recalled from memory.
func TestHenryWeissGuide(t *testing.T) {
	k := ok[float64](t)(dioxide.HenryWeiss(celsius(25), percent(3.5)))
	near(t, "ln K0", math.Log(k), -3.5617, 5e-5)
}

// The data base of the USGS prints log K = −1.468 at 25 °C beside the coefficients.
// The other values were computed from the formula by another program, to 4 digits.
func TestHenryPlummerBusenberg(t *testing.T) {
	k := ok[float64](t)(dioxide.HenryPlummerBusenberg(celsius(25)))
	near(t, "log K", math.Log10(k), -1.468, 0.0005)
	for _, row := range []struct{ c, k float64 }{
		{0, 0.07791}, {5, 0.06426}, {10, 0.05378}, {15, 0.04562}, {20, 0.03919}, {25, 0.03405}, {30, 0.02989},
		{35, 0.02651}, {40, 0.02372}, {45, 0.02140}, {50, 0.01946}, {55, 0.01783}, {60, 0.01644},
	} {
		near(t, "constant", ok[float64](t)(dioxide.HenryPlummerBusenberg(celsius(row.c))), row.k, 5.1e-6)
	}
}

// Computed from the formula by another program.
func TestHenryCarroll(t *testing.T) {
	for _, row := range []struct{ c, mpa float64 }{
		{0, 74.29}, {5, 88.63}, {10, 104.61}, {15, 122.21}, {20, 141.36}, {25, 161.97}, {30, 183.88},
		{35, 206.94}, {40, 230.94}, {45, 255.65}, {50, 280.86}, {55, 306.30}, {60, 331.72},
	} {
		h := ok[units.AbsolutePressure](t)(dioxide.HenryCarroll(celsius(row.c)))
		near(t, "constant", h.In(units.Bar)/10, row.mpa, 0.0051)
	}
}

// What the doc comments say of the distance between the constants.
func TestHenryConstantsDiffer(t *testing.T) {
	plummer := func(c float64) float64 { return ok[float64](t)(dioxide.HenryPlummerBusenberg(celsius(c))) }
	for _, row := range []struct{ c, percent float64 }{{-1, 0.5}, {0, 0.4}, {20, 0.1}, {30, -0.2}, {40, -0.7}} {
		w := ok[float64](t)(dioxide.HenryWeiss(celsius(row.c), units.Share{}))
		near(t, "% over Weiss", 100*(plummer(row.c)/w-1), row.percent, 0.06)
	}
	for _, row := range []struct{ c, percent float64 }{{0, -2.8}, {20, 1.5}, {40, 2.7}} {
		h := ok[units.AbsolutePressure](t)(dioxide.HenryCarroll(celsius(row.c))).In(units.StandardAtmosphere)
		near(t, "% of Carroll over it", 100*(1000/18.015/h/plummer(row.c)-1), row.percent, 0.1)
	}
}

func TestHenryRefuses(t *testing.T) {
	_, err := dioxide.HenryPlummerBusenberg(celsius(-2.1))
	refused(t, "below", err, "temperature")
	_, err = dioxide.HenryPlummerBusenberg(celsius(90.1))
	refused(t, "above", err, "temperature")
	_, err = dioxide.HenryWeiss(celsius(-1.1), units.Share{})
	refused(t, "below", err, "temperature")
	_, err = dioxide.HenryWeiss(celsius(40.1), units.Share{})
	refused(t, "above", err, "temperature")
	_, err = dioxide.HenryWeiss(celsius(20), percent(4.01))
	refused(t, "salt", err, "salinity")
	_, err = dioxide.HenryCarroll(celsius(-0.1))
	refused(t, "below", err, "temperature")
	_, err = dioxide.HenryCarroll(celsius(160.1))
	refused(t, "above", err, "temperature")
	for _, c := range []float64{-2, 90} {
		ok[float64](t)(dioxide.HenryPlummerBusenberg(celsius(c)))
	}
	for _, c := range []float64{-1, 40} {
		ok[float64](t)(dioxide.HenryWeiss(celsius(c), percent(4)))
	}
	for _, c := range []float64{0, 160} {
		ok[units.AbsolutePressure](t)(dioxide.HenryCarroll(celsius(c)))
	}
}

// How far hot solubilities part, as stated: Carroll, Slupsky & Mather (1991) hold more than
// Plummer & Busenberg (1982), 3 % at 60 °C and 4.6 % at 90 °C.
func TestHotSpread(t *testing.T) {
	for c, want := range map[float64]float64{60: 3, 90: 4.6} {
		k := ok[float64](t)(dioxide.HenryPlummerBusenberg(celsius(c)))
		h := ok[units.AbsolutePressure](t)(dioxide.HenryCarroll(celsius(c))).In(units.Kilopascal)
		near(t, "Carroll over Plummer, %", 100*(101.325*1000/18.015/h/k-1), want, 0.4)
	}
}
