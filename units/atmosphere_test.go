package units_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

func metres(v float64) units.Length { return units.Metre.Of(checked.Number(v)) }

func must[T any](t interface {
	Helper()
	Fatal(...any)
}) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

// Standard atmosphere, published: ASHRAE table to 1 Pa (as the tests of a public
// psychrometric library print it), and pressure levels of ICAO 1964 to half a metre
// (6 Pa).
func TestAtAltitudePublished(t *testing.T) {
	for _, r := range []struct{ h, hPa, tol float64 }{
		{-500, 1074.78, 0.01}, {0, 1013.25, 1e-9}, {500, 954.61, 0.01}, {1000, 898.75, 0.01}, {4000, 616.40, 0.01},
		{111, 1000, 0.07}, {540, 950, 0.07}, {988, 900, 0.07}, {1457, 850, 0.07}, {1949, 800, 0.07}, {3012, 700, 0.07}, {4206, 600, 0.07},
	} {
		air := must[units.Atmosphere](t)(units.AtAltitude(metres(r.h)))
		if got := air.Pressure().In(units.Millibar); math.Abs(got-r.hPa) > r.tol {
			t.Errorf("%v m: %.3f hPa, printed %v", r.h, got, r.hPa)
		}
	}
	if got := must[units.Atmosphere](t)(units.AtAltitude(metres(3048))).Pressure().In(units.PSI); math.Abs(got-10.106) > 0.0005 {
		t.Errorf("10,000 ft: %v psi, 10.106 computed from ISO 2533", got)
	}
}

func TestAtmosphere(t *testing.T) {
	var sea units.Atmosphere
	if sea.Pressure() != units.Kilopascal.Of(101.325) || sea.Gauge(units.Kilopascal.Of(101.325)).In(units.KilopascalGauge) != 0 {
		t.Error("the zero value is 101.325 kPa")
	}
	air := must[units.Atmosphere](t)(units.Barometer(units.Millibar.Of(940)))
	if got := air.Gauge(units.Kilopascal.Of(194)).In(units.KilopascalGauge); math.Abs(got-100) > 1e-12 {
		t.Errorf("%v", got)
	}
	if p := must[units.AbsolutePressure](t)(air.Absolute(units.BarGauge.Of(1))); math.Abs(p.In(units.Kilopascal)-194) > 1e-12 {
		t.Errorf("%v", p)
	}
	// The gauge of a vacuum, the last digit off as some processors round it.
	vacuum := math.Nextafter(sea.Gauge(units.AbsolutePressure{}).In(units.KilopascalGauge), -1e3)
	if p := must[units.AbsolutePressure](t)(sea.Absolute(must[units.GaugePressure](t)(units.KilopascalGauge.Try(vacuum)))); p != (units.AbsolutePressure{}) {
		t.Errorf("vacuum comes back as %v", p)
	}
	rapid.Check(t, func(t *rapid.T) {
		air := must[units.Atmosphere](t)(units.AtAltitude(metres(rapid.Float64Range(-500, 11000).Draw(t, "m"))))
		p := must[units.AbsolutePressure](t)(units.Kilopascal.Try(rapid.Float64Range(0, 5000).Draw(t, "kPa")))
		back := must[units.AbsolutePressure](t)(air.Absolute(air.Gauge(p)))
		if math.Abs(back.In(units.Kilopascal)-p.In(units.Kilopascal)) > 1e-11 {
			t.Fatalf("%v comes back as %v", p, back)
		}
		again := must[units.Atmosphere](t)(units.Barometer(air.Pressure()))
		if math.Abs(again.Pressure().In(units.Kilopascal)-air.Pressure().In(units.Kilopascal)) > 1e-12 {
			t.Fatalf("%v", again)
		}
	})
}

func TestAtmosphereRefuses(t *testing.T) {
	nan := math.NaN()
	for _, h := range []float64{-500.1, 11000.1, nan} {
		_, err := units.AtAltitude(metres(h))
		isRange(t, err, "altitude", -500, 11000)
	}
	for _, p := range []float64{19.9, 110.1, nan} {
		_, err := units.Barometer(units.Kilopascal.Of(checked.Number(p)))
		isRange(t, err, "barometer reading", 20, 110)
	}
	_, err := units.Atmosphere{}.Absolute(units.KilopascalGauge.Of(-102))
	isRange(t, err, "gauge pressure", -101.325, 1e15)
	must[units.AbsolutePressure](t)(units.Atmosphere{}.Absolute(units.KilopascalGauge.Of(-101)))
	for _, h := range []float64{-500, 11000} {
		must[units.Atmosphere](t)(units.AtAltitude(metres(h)))
	}
	for _, p := range []float64{20, 110} {
		must[units.Atmosphere](t)(units.Barometer(units.Kilopascal.Of(checked.Number(p))))
	}
}
