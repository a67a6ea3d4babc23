package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// IAPWS-IF97 table 35, 300 K: 3.53658941 kPa, of another formula; IAPWS-95 tables:
// triple point 0.611657 kPa, 20 °C 2.3393 kPa, 50 °C 12.352 kPa. Recalled from
// memory. 2.34 kPa at 20 °C is read.
func TestWaterVapourPressure(t *testing.T) {
	for _, row := range []struct{ c, p, tol float64 }{
		{0.01, 0.611657, 1e-5}, {20, 2.3393, 1.5e-4}, {26.85, 3.53658941, 3e-4}, {50, 12.352, 5e-4}, {60, 19.946, 2e-3}, {90, 70.182, 3e-3},
	} {
		p := ok[units.AbsolutePressure](t)(carbonation.WaterVapourPressure(celsius(row.c)))
		near(t, "water", p.In(units.Kilopascal), row.p, row.tol)
	}
}

// CRC Handbook, vapour pressure of ethanol: boils at 78.29 °C at 1 atm; 5.87 kPa at
// 20 °C, 7.87 at 25 °C; recalled from memory.
func TestEthanolVapourPressure(t *testing.T) {
	for _, row := range []struct{ c, p, tol float64 }{{78.29, 101.325, 0.25}, {25, 7.87, 0.05}, {20, 5.87, 0.05}, {0, 1.59, 0.02}} {
		p := ok[units.AbsolutePressure](t)(carbonation.EthanolVapourPressure(celsius(row.c)))
		near(t, "ethanol", p.In(units.Kilopascal), row.p, row.tol)
	}
}

// vapours is the pressure at which the drink holds no CO2.
func vapours(t tester, l carbonation.Liquid, c float64) float64 {
	return ok[units.AbsolutePressure](t)(l.Pressure(units.CarbonDioxideContent{}, celsius(c))).In(units.Kilopascal)
}

// Raoult's law for water with sugar; the zero Liquid is water.
func TestVapoursOfWater(t *testing.T) {
	w := ok[units.AbsolutePressure](t)(carbonation.WaterVapourPressure(celsius(40))).In(units.Kilopascal)
	near(t, "zero value", vapours(t, carbonation.Liquid{}, 40), w, 1e-12)
	close(t, "25 °P", vapours(t, liquid(t, 0, 25), 40), w*(1-(0.25/342.297)/(0.25/342.297+0.75/18.015)), 1e-6)
}

func TestVapourRefuses(t *testing.T) {
	for _, c := range []float64{-2.1, 90.1} {
		_, err := carbonation.WaterVapourPressure(celsius(c))
		refused(t, "water", err, "temperature")
		_, err = carbonation.EthanolVapourPressure(celsius(c))
		refused(t, "ethanol", err, "temperature")
	}
	for _, c := range []float64{-2, 90} {
		ok[units.AbsolutePressure](t)(carbonation.WaterVapourPressure(celsius(c)))
		ok[units.AbsolutePressure](t)(carbonation.EthanolVapourPressure(celsius(c)))
	}
}
