package gravity_test

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// The international table from 15 °C up, the OIV's below, each to its own ends.
func TestRefractometerCorrection(t *testing.T) {
	for _, c := range []struct{ brix, celsius, want float64 }{
		{5, 15, -0.25}, {75, 30, 0.75}, {10, 20, 0}, {10, 5, -0.82}, {30, 5, -0.99}, {75, 14, -0.45},
	} {
		near(t, "correction", ok[units.Extract](t)(gravity.RefractometerCorrection(plato(c.brix), celsius(c.celsius))).In(units.DegreePlato), c.want, 1e-12)
	}
	crc, oiv := ok[units.Extract](t)(gravity.RefractometerCorrection(plato(10),
		celsius(15))), ok[units.Extract](t)(rival.RefractometerCorrectionOIV(plato(10), celsius(15)))
	near(t, "where they meet", crc.Minus(oiv).In(units.DegreePlato), 0.05, 1e-12)
	for _, c := range []struct {
		brix, celsius float64
		quantity      string
	}{{10, 4.9, "temperature"}, {10, 30.1, "temperature"}, {9.9, 14, "reading"}, {30.1, 9, "reading"}, {4.9, 20, "reading"}} {
		_, err := gravity.RefractometerCorrection(plato(c.brix), celsius(c.celsius))
		refused(t, "correction", err, c.quantity)
		if e := rangeError(t, err); e != nil && e.Func != "gravity.RefractometerCorrection" {
			t.Error(err)
		}
	}
}
