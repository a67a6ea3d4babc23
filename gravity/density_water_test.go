package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

type waterFunction struct {
	name string
	f    func(units.Temperature) (units.Density, error)
	most float64
}

var waterFunctions = []waterFunction{
	{"WaterDensity", gravity.WaterDensity, 100},
	{"WaterDensityTanaka", rival.WaterDensityTanaka, 40},
	{"WaterDensityKell", rival.WaterDensityKell, 150},
}

// Printed rows. Tolerance: Tanaka 0.001 of the data set that follows it; the
// Kell forms 0.006, what Bettin & Spieweck state; old tables half the last digit
// and the same.
func TestWaterDensityPublished(t *testing.T) {
	for _, r := range []struct {
		c, rho float64
		source string
		tol    float64 // beside 0.006 of the formula
	}{
		{25, 997.047013, "IAPWS SR6-08 table 8 (298.15 K)", 0},
		{0, 999.841, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{1, 999.900, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{2, 999.941, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{3, 999.965, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{4, 999.973, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{5, 999.965, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{8, 999.849, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{10, 999.700, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{15, 999.099, "CRC Handbook, 53rd ed., p. F-4", 0.0005},
		{20, 998.2071, "old ITS table", 0.00005},
		{25, 997.0479, "old ITS table", 0.00005},
		{60, 983.2, "old ITS table", 0.05},
		{80, 971.8, "old ITS table", 0.05},
		{100, 958.4, "old ITS table", 0.05},
		{30, 995.650, "compound data set, agrees with Tanaka to 0.001", 0.001},
		{35, 994.030, "compound data set, agrees with Tanaka to 0.001", 0.001},
		{40, 992.220, "compound data set, agrees with Tanaka to 0.001", 0.005},
	} {
		for _, w := range waterFunctions {
			if r.c > w.most {
				continue
			}
			near(t, w.name+" "+r.source, ok[units.Density](t)(w.f(celsius(r.c))).In(units.KilogramPerCubicMetre), r.rho, r.tol+0.006)
		}
	}
}

func TestWaterDensityRefuses(t *testing.T) {
	for _, w := range waterFunctions {
		for _, c := range []float64{-0.001, w.most + 0.001, math.NaN(), math.Inf(1)} {
			_, err := w.f(celsius(c))
			refused(t, w.name, err, "temperature")
		}
		ok[units.Density](t)(w.f(celsius(0)))
		ok[units.Density](t)(w.f(celsius(w.most)))
	}
}

// The two forms of Kell's equation, one on each temperature scale, are the same water:
// t68 − t90 is 0.005 K at 20 °C and 0.026 K at 100 °C (Saunders, WOCE Newsletter 10
// (1990): 1.00024·t90; recalled from memory).
func TestWaterDensityScalesAgree(t *testing.T) {
	for c := 0.0; c <= 99.5; c += 2.5 {
		a := ok[units.Density](t)(gravity.WaterDensity(celsius(c))).In(units.KilogramPerCubicMetre)
		b := ok[units.Density](t)(rival.WaterDensityKell(celsius(1.00024 * c))).In(units.KilogramPerCubicMetre)
		near(t, "Kell on both scales", a, b, 0.003)
	}
}
