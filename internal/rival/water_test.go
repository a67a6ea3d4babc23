package rival_test

import (
	"math"
	"testing"

	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// Kell's equation at 20 °C as Jones & Harris 1992 would have it without their
// misprint, and at the maximum near 4 °C.
func TestWaterDensityKellNotMisprinted(t *testing.T) {
	near(t, "20 °C", ok[units.Density](t)(rival.WaterDensityKell(celsius(20))).In(units.KilogramPerCubicMetre), 998.2041, 0.00005)
	near(t, "4 °C", ok[units.Density](t)(rival.WaterDensityKell(celsius(4))).In(units.KilogramPerCubicMetre), 999.9720, 0.00005)
	near(t, "100 °C, his table", ok[units.Density](t)(rival.WaterDensityKell(celsius(100))).In(units.KilogramPerCubicMetre), 958.3637,
		0.0002) // recalled from memory
	near(t, "101.85 °C, IAPWS SR6-08 table 8 (375 K)", ok[units.Density](t)(rival.WaterDensityKell(celsius(101.85))).In(units.KilogramPerCubicMetre),
		957.00971, 0.05)
}

// The compound data set that agrees with Tanaka to 0.001, printed to 0.001 (recalled as
// in package gravity, which holds the rows of all three formulas).
func TestWaterDensityTanaka(t *testing.T) {
	for _, r := range []struct{ c, rho float64 }{{5, 999.967}, {10, 999.702}, {15, 999.103}, {20, 998.207}, {25, 997.048}, {30, 995.650},
		{35, 994.030}, {40, 992.220}} {
		near(t, "Tanaka, compound data set", ok[units.Density](t)(rival.WaterDensityTanaka(celsius(r.c))).In(units.KilogramPerCubicMetre), r.rho, 0.0055)
	}
}

func TestWaterDensityRefuses(t *testing.T) {
	for _, c := range []float64{-0.001, 40.001, 150.001, math.NaN()} {
		_, err := rival.WaterDensityTanaka(celsius(c))
		edges(t, err, "temperature", 0, 40)
		if c != 40.001 {
			_, err = rival.WaterDensityKell(celsius(c))
			edges(t, err, "temperature", 0, 150)
		}
	}
}
