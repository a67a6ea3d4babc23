package carbonation_test

import (
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// A general geochemistry program (USGS PHREEQC 3) finds these moles of CO2 in a
// kilogram of water at a CO2 fugacity of 1 atm; carbonate included, 0.0001 mol. It
// takes the water's density near 1, and so does the comparison: within 2 %.
func TestContentAgainstGeochemistry(t *testing.T) {
	for _, row := range []struct{ c, mol float64 }{
		{0, 7.7585e-2}, {5, 6.4006e-2}, {10, 5.3596e-2}, {15, 4.5494e-2}, {20, 3.9104e-2}, {25, 3.4000e-2},
		{30, 2.9879e-2}, {35, 2.6515e-2}, {40, 2.3743e-2}, {50, 1.9512e-2}, {60, 1.6505e-2},
	} {
		v := vapours(t, carbonation.Liquid{}, row.c)
		// The pressure of CO2 whose fugacity is 1 atm.
		p := 101.325
		for range 20 {
			p = 101.325 / ok[float64](t)(dioxide.FugacityCoefficient(celsius(row.c), kpa(p)))
		}
		c := ok[units.CarbonDioxideContent](t)(carbonation.Liquid{}.Content(celsius(row.c), kpa(p+v)))
		close(t, "content", c.In(units.GramCO2PerLitre), 0.9982*44.009*(row.mol-1e-4), 0.008)
	}
}

// By hand, water at 20 °C and 300 kPa: K 0.03919 mol/(kg·atm), vapour 2.339 kPa, φ =
// 0.98451 (B = −127.88 cm³/mol: −0.015612; C adds 0.00005), Krichevsky &
// Kasarnovsky exp(−32.3e-6·198675/2437.4) = 0.99737.
func TestContentByHand(t *testing.T) {
	c := ok[units.CarbonDioxideContent](t)(carbonation.Liquid{}.Content(celsius(20), kpa(300)))
	want := 0.03919 * 44.009 * 0.998207 * 297.661 / 101.325 * 0.98451 * 0.99737
	close(t, "content", c.In(units.GramCO2PerLitre), want, 3e-4)
}

// The whole chart against Henry's law in the beer that stands behind it.
func TestContentAgainstBeerChart(t *testing.T) {
	tab := table(t, "co2_beer_chart1994_drink", 292)
	beer := liquid(t, 5.35, 5.78)
	var sum float64
	for r := range tab.Rows() {
		p := ok[units.AbsolutePressure](t)(units.Atmosphere{}.Absolute(cell(t, r, "gauge_pressure", units.PSIGauge)))
		c := ok[units.CarbonDioxideContent](t)(beer.Content(cell(t, r, "temperature", units.Fahrenheit), p))
		v := carbonation.RealVolume.Volumes(c).In(units.VolumesCO2)
		within(t, tab, r, "volumes", v)
		n := ok[float64](t)(r.Number("volumes"))
		sum += v/n - 1
	}
	near(t, "mean difference", sum/292, -0.043, 0.005)
}

// The EU/OIV rows at 20 °C: within 4 %.
func TestContentAgainstWine(t *testing.T) {
	tab := table(t, "co2_wine_eu", 5)
	for r := range tab.Rows() {
		strength := cell(t, r, "strength", units.PercentVolume).In(units.PercentVolume)
		sugar := ok[float64](t)(r.Number("sugar"))
		c := ok[units.CarbonDioxideContent](t)(liquid(t, strength, sugar/9.9).Content(celsius(20), cell(t, r, "pressure", units.Bar)))
		close(t, "content", c.In(units.GramCO2PerLitre), ok[float64](t)(r.Number("content")), 0.04)
	}
}

// Measured on a commercial lager at 6 °C: 2.4 g/(L·bar); on champagne at 10 °C: 2.1
// (Liger-Belair & Cilindre, ACS Omega 6 (2021) 9672, table 1, printed as about).
func TestContentOfLagerAndChampagne(t *testing.T) {
	at := func(l carbonation.Liquid, c float64) float64 {
		g := ok[units.CarbonDioxideContent](t)(l.Content(celsius(c), kpa(100+vapours(t, l, c))))
		return g.In(units.GramCO2PerLitre)
	}
	near(t, "lager", at(liquid(t, 5.3, 4.5), 6), 2.4, 0.07)
	near(t, "champagne", at(liquid(t, 12.5, 1.5), 10), 2.1, 0.13)
}

func drawDrink(t *rapid.T) carbonation.Liquid {
	return liquid(t, rapid.Float64Range(0, 20).Draw(t, "strength"), rapid.Float64Range(0, 20).Draw(t, "extract"))
}

func TestContentRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawDrink(t)
		c := rapid.Float64Range(-2, 90).Draw(t, "celsius")
		v := vapours(t, l, c)
		p := v + (2000-v)*rapid.Float64Range(0, 1).Draw(t, "pressure")
		content := ok[units.CarbonDioxideContent](t)(l.Content(celsius(c), kpa(p)))
		back := ok[units.AbsolutePressure](t)(l.Pressure(celsius(c), content))
		close(t, "pressure", back.In(units.Kilopascal), p, 1e-9)
		if p > v*1.001 {
			again := ok[units.Temperature](t)(l.Temperature(content, kpa(p)))
			held := ok[units.CarbonDioxideContent](t)(l.Content(again, kpa(p)))
			near(t, "temperature", again.In(units.Celsius), c, 1e-6)
			close(t, "content", held.In(units.GramCO2PerLitre), content.In(units.GramCO2PerLitre), 1e-9)
		}
	})
}

// Content rises with pressure, falls with temperature, falls with strength and
// extract, everywhere.
func TestContentMonotone(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		l := drawDrink(t)
		warm := rapid.Float64Range(-1.9, 90).Draw(t, "celsius")
		cold := warm - rapid.Float64Range(0.01, 0.1).Draw(t, "cooler")
		v := vapours(t, l, warm)
		p := v + 0.01 + (1990-v)*rapid.Float64Range(0, 1).Draw(t, "pressure")
		at := func(c, p float64) float64 {
			return ok[units.CarbonDioxideContent](t)(l.Content(celsius(c), kpa(p))).In(units.GramCO2PerLitre)
		}
		if at(warm, p+0.1) <= at(warm, p) {
			t.Errorf("content does not rise with pressure at %g °C, %g kPa", warm, p)
		}
		if at(cold, p) <= at(warm, p) {
			t.Errorf("content does not fall with temperature at %g °C, %g kPa", warm, p)
		}
	})
	weak, strong := liquid(t, 5, 3), liquid(t, 6, 3)
	sweet := liquid(t, 5, 4)
	for _, c := range []float64{0, 20, 40} {
		at := func(l carbonation.Liquid) float64 {
			return ok[units.CarbonDioxideContent](t)(l.Content(celsius(c), kpa(300))).In(units.GramCO2PerLitre)
		}
		if at(strong) >= at(weak) || at(sweet) >= at(weak) {
			t.Errorf("ethanol or extract does not lower the content at %g °C", c)
		}
	}
}

func TestContentRefuses(t *testing.T) {
	l := liquid(t, 4.6, 0.5)
	for _, c := range []float64{-2.1, 90.1, math.Inf(1)} {
		_, err := l.Content(celsius(c), kpa(300))
		refused(t, "content", err, "temperature")
		_, err = l.Pressure(celsius(c), gramsCO2(5))
		refused(t, "pressure", err, "temperature")
	}
	_, err := l.Content(celsius(20), kpa(2001))
	refused(t, "content", err, "pressure")
	_, err = l.Content(celsius(60), kpa(10))
	refused(t, "below the vapours", err, "pressure")
	most := ok[units.CarbonDioxideContent](t)(l.Content(celsius(4), kpa(2000))).In(units.GramCO2PerLitre)
	_, err = l.Pressure(celsius(4), gramsCO2(most*1.001))
	refused(t, "pressure", err, "content")
	_, err = l.Pressure(celsius(4), gramsCO2(1e9))
	refused(t, "pressure", err, "content")
	_, err = l.Temperature(gramsCO2(5), kpa(2001))
	refused(t, "temperature", err, "pressure")
	_, err = l.Temperature(gramsCO2(5), kpa(0.1))
	refused(t, "temperature", err, "pressure")
	_, err = l.Temperature(gramsCO2(50), kpa(200))
	refused(t, "temperature", err, "content")
	_, err = l.Temperature(gramsCO2(0.1), kpa(1000))
	refused(t, "temperature", err, "content")
}

func TestNewLiquidRefuses(t *testing.T) {
	_, err := carbonation.NewLiquid(gravity.Solution{})
	refused(t, "nothing", err, "mass")
	for _, row := range []struct {
		water, extract, ethanol float64
		quantity                string
	}{{0.8, 0, 0.2, "strength"}, {0.65, 0.35, 0, "extract"}} {
		s := ok[gravity.Solution](t)(gravity.NewSolution(kg(row.water), kg(row.extract), kg(row.ethanol)))
		_, err := carbonation.NewLiquid(s)
		refused(t, "drink", err, row.quantity)
	}
	_, err = carbonation.DrinkOf(volPct(20.1), plato(0))
	refused(t, "drink", err, "strength")
	_, err = carbonation.DrinkOf(volPct(5), plato(30.1))
	refused(t, "drink", err, "extract")
	_, err = carbonation.DrinkOf(volPct(5), plato(-1))
	refused(t, "drink", err, "extract")
}

func TestDrinkIsItsLabel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v, x := rapid.Float64Range(0, 20).Draw(t, "strength"), rapid.Float64Range(0, 20).Draw(t, "extract")
		s := ok[gravity.Solution](t)(carbonation.DrinkOf(volPct(v), plato(x)))
		near(t, "strength", s.ByVolume().In(units.PercentVolume), v, 1e-9)
		near(t, "extract", s.RealExtract().In(units.DegreePlato), x, 1e-9)
		near(t, "mass", s.Mass().In(units.Kilogram), 1, 1e-12)
	})
}

// The kind of sugar counts in the vapours: glucose thins the water nearly twice as
// much as sucrose.
func TestSugarKinds(t *testing.T) {
	w := ok[gravity.Solution](t)(gravity.NewSolution(kg(0.8), units.Mass{}, units.Mass{}))
	glucose := ok[gravity.Solution](t)(w.AddExtract(gravity.AsGlucose, kg(0.1)))
	both := ok[gravity.Solution](t)(glucose.AddExtract(gravity.AsFructose, kg(0.1)))
	sucrose := ok[gravity.Solution](t)(w.AddSugar(kg(0.2)))
	pure := ok[units.AbsolutePressure](t)(carbonation.WaterVapourPressure(celsius(40))).In(units.Kilopascal)
	for _, row := range []struct {
		s    gravity.Solution
		mole float64
	}{{both, 180.156}, {sucrose, 342.297}} {
		l := ok[carbonation.Liquid](t)(carbonation.NewLiquid(row.s))
		n := 0.2 / row.mole
		close(t, "vapour", vapours(t, l, 40), pure*(1-n/(n+0.8/18.015)), 1e-7)
	}
}

func TestNoAllocation(t *testing.T) {
	l := liquid(t, 4.6, 0.5)
	var c units.CarbonDioxideContent
	for what, f := range map[string]func(){
		"Content":     func() { c, _ = l.Content(celsius(4), kpa(250)) },
		"Pressure":    func() { _, _ = l.Pressure(celsius(4), c) },
		"Temperature": func() { _, _ = l.Temperature(gramsCO2(5), kpa(250)) },
		"GasDensity":  func() { _, _ = carbonation.GasDensity(celsius(4), kpa(250)) },
	} {
		if n := testing.AllocsPerRun(100, f); n != 0 {
			t.Errorf("%s allocates %v times", what, n)
		}
	}
}
