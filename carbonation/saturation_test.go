package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

func TestSaturationPressure(t *testing.T) {
	for name, rows := range map[string]int{"co2_saturation": 12, "co2_saturation_ancillary": 12} {
		tab := table(t, name, rows)
		for r := range tab.Rows() {
			p := ok[units.AbsolutePressure](t)(carbonation.SaturationPressure(cell(t, r, "temperature", units.Celsius)))
			within(t, tab, r, "pressure", p.In(units.Kilopascal))
		}
	}
	// Span & Wagner 1996 table 3: triple point 216.592 K, 0.51795 MPa.
	p := ok[units.AbsolutePressure](t)(carbonation.SaturationPressure(celsius(216.592 - 273.15)))
	near(t, "triple point", p.In(units.Kilopascal), 517.95, 0.05)
}

func TestSaturationRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		c := rapid.Float64Range(-56.5, 30.97).Draw(t, "celsius")
		p := ok[units.AbsolutePressure](t)(carbonation.SaturationPressure(celsius(c)))
		back := ok[units.Temperature](t)(carbonation.SaturationTemperature(p))
		near(t, "temperature", back.In(units.Celsius), c, 1e-7)
		q := ok[units.AbsolutePressure](t)(carbonation.SaturationPressure(back))
		close(t, "pressure", q.In(units.Kilopascal), p.In(units.Kilopascal), 1e-9)
	})
}

func TestSaturationRefuses(t *testing.T) {
	for _, c := range []float64{-56.6, 31} {
		_, err := carbonation.SaturationPressure(celsius(c))
		refused(t, "pressure", err, "temperature")
	}
	for _, p := range []float64{517, 7378} {
		_, err := carbonation.SaturationTemperature(kpa(p))
		refused(t, "temperature", err, "pressure")
	}
	ok[units.Temperature](t)(carbonation.SaturationTemperature(kpa(7377.3)))
}
