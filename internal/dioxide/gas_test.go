package dioxide_test

import (
	"testing"

	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

// Second virial coefficients and fugacity coefficients computed from the
// coefficients of Span & Wagner by another program; and two published fits.
func TestSecondVirial(t *testing.T) {
	for name, rows := range map[string]int{"co2_second_virial": 13, "co2_second_virial_crc": 13, "co2_second_virial_kaye_laby": 13} {
		tab := table(t, name, rows)
		for r := range tab.Rows() {
			b := ok[float64](t)(dioxide.SecondVirial(cell(t, r, "temperature", units.Celsius)))
			within(t, tab, r, "second_virial", b)
		}
	}
}

func TestFugacityCoefficient(t *testing.T) {
	tab := table(t, "co2_fugacity", 39)
	for r := range tab.Rows() {
		phi := ok[float64](t)(dioxide.FugacityCoefficient(cell(t, r, "temperature", units.Celsius), cell(t, r, "pressure", units.Bar)))
		within(t, tab, r, "fugacity_coefficient", phi)
	}
}

// CRC Handbook: 1.977 g/L at 0 °C and 1 atm. 1 kg at 20 °C and 1 atm is 0.5437 m³
// (computed from the second virial coefficient).
func TestGasDensity(t *testing.T) {
	d := ok[units.Density](t)(dioxide.GasDensity(celsius(0), kpa(101.325)))
	near(t, "at 0 °C", d.In(units.KilogramPerCubicMetre), 1.977, 0.0005)
	d = ok[units.Density](t)(dioxide.GasDensity(celsius(20), kpa(101.325)))
	near(t, "m³ of a kilogram", 1/d.In(units.KilogramPerCubicMetre), 0.5437, 0.00005)
}

func TestGasRefuses(t *testing.T) {
	for _, c := range []float64{-10.1, 100.1} {
		_, err := dioxide.GasDensity(celsius(c), kpa(100))
		refused(t, "density", err, "temperature")
		_, err = dioxide.FugacityCoefficient(celsius(c), kpa(100))
		refused(t, "fugacity", err, "temperature")
		_, err = dioxide.SecondVirial(celsius(c))
		refused(t, "B", err, "temperature")
		_, err = dioxide.ThirdVirial(celsius(c))
		refused(t, "C", err, "temperature")
	}
	_, err := dioxide.GasDensity(celsius(0), kpa(2001))
	refused(t, "density", err, "pressure")
	_, err = dioxide.FugacityCoefficient(celsius(0), kpa(2001))
	refused(t, "fugacity", err, "pressure")
	for _, c := range []float64{-10, 100} {
		ok[units.Density](t)(dioxide.GasDensity(celsius(c), kpa(2000)))
		ok[float64](t)(dioxide.SecondVirial(celsius(c)))
		ok[float64](t)(dioxide.ThirdVirial(celsius(c)))
	}
	if d := ok[units.Density](t)(dioxide.GasDensity(celsius(0), kpa(0))); !d.IsZero() {
		t.Errorf("density of no gas is %v", d)
	}
}
