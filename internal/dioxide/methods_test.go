package dioxide_test

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// All 292 printed points of the beer chart, and the values of the fit in psi.
func TestBeerChart(t *testing.T) {
	tab := table(t, "co2_beer_chart1994", 292)
	var sum float64
	for r := range tab.Rows() {
		p := ok[units.AbsolutePressure](t)(units.Atmosphere{}.Absolute(cell(t, r, "gauge_pressure", units.PSIGauge)))
		v := ok[units.CarbonDioxideVolumes](t)(dioxide.BeerChartVolumes(cell(t, r, "temperature", units.Fahrenheit), p))
		within(t, tab, r, "volumes", v.In(units.VolumesCO2))
		d := v.In(units.VolumesCO2) - ok[float64](t)(r.Number("volumes"))
		sum += d * d
	}
	near(t, "rms of the fit", math.Sqrt(sum/292), 0.0093, 0.0002)
	tab = table(t, "co2_beer_regression", 25)
	for r := range tab.Rows() {
		p := ok[units.AbsolutePressure](t)(dioxide.BeerChartPressure(cell(t, r, "temperature", units.Fahrenheit), cell(t, r, "volumes", units.VolumesCO2)))
		within(t, tab, r, "gauge_pressure", p.In(units.PSI)-14.696)
	}
}

func TestBeerChartRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := rapid.Float64Range(30, 60).Draw(t, "fahrenheit")
		v := rapid.Float64Range(1.5, 4).Draw(t, "volumes")
		at := ok[units.Temperature](t)(units.Fahrenheit.Try(f))
		p := ok[units.AbsolutePressure](t)(dioxide.BeerChartPressure(at, volumes(v)))
		back := ok[units.CarbonDioxideVolumes](t)(dioxide.BeerChartVolumes(at, p))
		close(t, "volumes", back.In(units.VolumesCO2), v, 1e-9)
	})
}

func TestEuropeanBeer(t *testing.T) {
	for name, rows := range map[string]int{"co2_european_beer": 45, "co2_european_chart": 5} {
		tab := table(t, name, rows)
		for r := range tab.Rows() {
			at := cell(t, r, "temperature", units.Celsius)
			c := ok[units.CarbonDioxideContent](t)(dioxide.EuropeanBeerContent(at, cell(t, r, "pressure", units.Bar)))
			within(t, tab, r, "content", c.In(units.GramCO2PerLitre))
			p := ok[units.AbsolutePressure](t)(dioxide.EuropeanBeerPressure(at, c))
			close(t, "pressure", p.In(units.Bar), ok[float64](t)(r.Number("pressure")), 1e-12)
		}
	}
}

func TestWine(t *testing.T) {
	tab := table(t, "co2_wine_eu", 5)
	for r := range tab.Rows() {
		a, s := cell(t, r, "strength", units.PercentVolume), cell(t, r, "sugar", units.GramPerLitre)
		c := ok[units.CarbonDioxideContent](t)(dioxide.WineContent(cell(t, r, "pressure", units.Bar), a, s))
		within(t, tab, r, "content", c.In(units.GramCO2PerLitre))
		p := ok[units.AbsolutePressure](t)(dioxide.WinePressure(c, a, s))
		close(t, "pressure", p.In(units.Bar), ok[float64](t)(r.Number("pressure")), 1e-12)
	}
}

func TestMethodsRefuse(t *testing.T) {
	cold, warm := ok[units.Temperature](t)(units.Fahrenheit.Try(29.9)), ok[units.Temperature](t)(units.Fahrenheit.Try(60.1))
	for _, at := range []units.Temperature{cold, warm} {
		_, err := dioxide.BeerChartPressure(at, volumes(2.5))
		refused(t, "chart", err, "temperature")
		_, err = dioxide.BeerChartVolumes(at, bar(2))
		refused(t, "chart", err, "temperature")
	}
	for _, v := range []float64{1.49, 4.01} {
		_, err := dioxide.BeerChartPressure(celsius(4), volumes(v))
		refused(t, "chart", err, "content")
	}
	for _, p := range []float64{0.5, 6} {
		_, err := dioxide.BeerChartVolumes(celsius(4), bar(p))
		refused(t, "chart", err, "pressure")
	}
	for _, c := range []float64{-1.01, 25.01} {
		_, err := dioxide.EuropeanBeerContent(celsius(c), bar(2))
		refused(t, "European", err, "temperature")
		_, err = dioxide.EuropeanBeerPressure(celsius(c), gramsCO2(5))
		refused(t, "European", err, "temperature")
	}
	for _, p := range []float64{0.49, 5.01} {
		_, err := dioxide.EuropeanBeerContent(celsius(4), bar(p))
		refused(t, "European", err, "pressure")
	}
	for _, g := range []float64{1, 15} {
		_, err := dioxide.EuropeanBeerPressure(celsius(4), gramsCO2(g))
		refused(t, "European", err, "content")
	}
	for _, p := range []float64{0.49, 10.01} {
		_, err := dioxide.WineContent(bar(p), volPct(12), gramsPerLitre(10))
		refused(t, "wine", err, "pressure")
	}
	for _, g := range []float64{0.5, 20} {
		_, err := dioxide.WinePressure(gramsCO2(g), volPct(12), gramsPerLitre(10))
		refused(t, "wine", err, "content")
	}
	_, err := dioxide.WineContent(bar(5), volPct(20.1), gramsPerLitre(10))
	refused(t, "wine", err, "strength")
	_, err = dioxide.WinePressure(gramsCO2(5), volPct(12), gramsPerLitre(201))
	refused(t, "wine", err, "sugar")
}

// Values of the CRC Handbook, and measured ones of SRD 106.
func TestMoleFraction(t *testing.T) {
	tab := table(t, "co2_crc_mole_fraction", 147)
	for r := range tab.Rows() {
		x := ok[float64](t)(dioxide.MoleFractionCarroll(cell(t, r, "temperature", units.Celsius), cell(t, r, "pressure", units.Kilopascal)))
		within(t, tab, r, "mole_fraction", x)
	}
	tab = table(t, "co2_crc_mole_fraction_default", 38)
	for r := range tab.Rows() {
		x := ok[float64](t)(dioxide.MoleFraction(cell(t, r, "temperature", units.Celsius), cell(t, r, "pressure", units.Kilopascal)))
		within(t, tab, r, "mole_fraction", x)
	}
	for name, rows := range map[string]int{"co2_murray_riley1971": 8, "co2_vanslyke1939": 4, "co2_kunerth1922": 8} {
		tab := table(t, name, rows)
		for r := range tab.Rows() {
			x := ok[float64](t)(dioxide.MoleFraction(cell(t, r, "temperature", units.Celsius), kpa(101.325)))
			within(t, tab, r, "mole_fraction", x)
		}
	}
	for _, c := range []float64{-2.1, 91} {
		_, err := dioxide.MoleFraction(celsius(c), kpa(100))
		refused(t, "default", err, "temperature")
	}
	_, err := dioxide.MoleFraction(celsius(4), kpa(2001))
	refused(t, "default", err, "pressure")
	for _, c := range []float64{-0.1, 100.1} {
		_, err := dioxide.MoleFractionCarroll(celsius(c), kpa(100))
		refused(t, "Carroll", err, "temperature")
	}
	_, err = dioxide.MoleFractionCarroll(celsius(4), kpa(1001))
	refused(t, "Carroll", err, "pressure")
}

// Limits that go with the other inputs.
func TestLimitsThatVary(t *testing.T) {
	limitsOf := func(_ any, err error) (least, most float64) {
		t.Helper()
		e, ok := errors.AsType[*units.RangeError](err)
		if !ok {
			t.Fatalf("no RangeError: %v", err)
		}
		return e.Min, e.Max
	}
	// The chart's 1.5 and 4 volumes.
	for i, v := range []float64{1.5, 4} {
		p := ok[units.AbsolutePressure](t)(dioxide.BeerChartPressure(celsius(4), volumes(v))).In(units.PSI) - 14.696
		least, most := limitsOf(dioxide.BeerChartVolumes(celsius(4), bar(9)))
		near(t, "chart", []float64{least, most}[i], p, 2e-9)
	}
	// 0.5 to 5 bar, 0.5 to 10 bar.
	for i, b := range []float64{0.5, 5} {
		c := ok[units.CarbonDioxideContent](t)(dioxide.EuropeanBeerContent(celsius(4), bar(b))).In(units.GramCO2PerLitre)
		least, most := limitsOf(dioxide.EuropeanBeerPressure(celsius(4), gramsCO2(99)))
		close(t, "European", []float64{least, most}[i], c, 1.1e-9)
		c = ok[units.CarbonDioxideContent](t)(dioxide.WineContent(bar(b*float64(1+i)), volPct(12), gramsPerLitre(10))).In(units.GramCO2PerLitre)
		least, most = limitsOf(dioxide.WinePressure(gramsCO2(99), volPct(12), gramsPerLitre(10)))
		close(t, "wine", []float64{least, most}[i], c, 1.1e-9)
	}
}
