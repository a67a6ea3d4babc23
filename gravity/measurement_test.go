package gravity_test

import (
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func sg(t tester, v float64) gravity.Gravity {
	t.Helper()
	return ok[gravity.Gravity](t)(gravity.FromSG(v))
}

// Three weighings of a 50 mL flask at 20 °C, by hand: water 49.8500 g in air, liquid
// 1.0400 times that; ρ = 1.04·(998.2031 − 1.2) + 1.2.
func TestPycnometer(t *testing.T) {
	d, err := gravity.Pycnometer(units.Gram.Of(25), units.Gram.Of(74.85), units.Gram.Of(76.844), celsius(20))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "density", d.In(units.KilogramPerCubicMetre), 1.04*(998.2031-1.2)+1.2, 0.0005)
	for _, c := range []struct {
		m0, w, m, c float64
		about       string
	}{{25, 75, 76, -1, "temperature"}, {25, 75, 76, 101, "temperature"}, {-1, 75, 76, 20, "empty flask"}, {25, 25.9, 26, 20, "water in the flask"},
		{25, 75, 49, 20, "density"}, {25, 75, 126, 20, "density"}, {25, 75, math.NaN(), 20, "density"}} {
		_, err := gravity.Pycnometer(kg(c.m0/1000), kg(c.w/1000), kg(c.m/1000), celsius(c.c))
		refused(t, "pycnometer", err, c.about)
	}
}

// A density at any temperature leads to the gravity of the same liquid.
func TestFromDensityAt(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x, e := rapid.Float64Range(0, 25).Draw(t, "extract"), rapid.Float64Range(0, 15).Draw(t, "ethanol")
		c := celsius(rapid.Float64Range(0, 40).Draw(t, "°C"))
		s := solution(t, 100-x-e, x, e)
		g := ok[gravity.Gravity](t)(gravity.FromDensityAt(ok[units.Density](t)(s.Density(c)), s.ByVolume(), c))
		near(t, "gravity", g.SG(), s.Gravity().SG(), 1e-10)
	})
	_, err := gravity.FromDensityAt(kgm3(900), volPct(5), celsius(20))
	refused(t, "density", err, "density")
}

// Boil-off: a liquid, and the same without its ethanol in the same volume, lead back
// to the strength.
func TestSpiritIndication(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x, e := rapid.Float64Range(0, 10).Draw(t, "extract"), rapid.Float64Range(0, 15).Draw(t, "ethanol")
		s := solution(t, 100-x-e, x, e)
		v := ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre)
		c := ok[units.Extract](t)(gravity.ExtractFromConcentration(mgL(1e6*x/v), celsius(20)))
		after := ok[gravity.Gravity](t)(gravity.FromExtract(c))
		got := ok[units.StrengthByVolume](t)(gravity.SpiritIndication(s.Gravity(), after))
		near(t, "strength", got.In(units.PercentVolume), s.ByVolume().In(units.PercentVolume), 1e-8)
	})
	same, more := gravity.Gravity{}, ok[gravity.Gravity](t)(gravity.FromSG(1+1e-12)) // equal, but for rounding
	if v, err := gravity.SpiritIndication(more, same); err != nil || !v.IsZero() {
		t.Error(v, err)
	}
	_, err := gravity.SpiritIndication(sg(t, 1.00001), sg(t, 1))
	refused(t, "heavier before", err, "gravity of the alcohol solution")
	_, err = gravity.SpiritIndication(sg(t, 1.02), sg(t, 1.01))
	refused(t, "heavier before", err, "gravity of the alcohol solution")
	_, err = gravity.SpiritIndication(sg(t, 0.80), sg(t, 1.01))
	refused(t, "too light", err, "gravity of the alcohol solution")
}

// 100 mL of sample, distillate of 100 mL with the density of 5 % vol: 5 % vol; the
// same in half the volume: 2.5.
func TestDistillateStrength(t *testing.T) {
	p := gravity.ByMass(volPct(5))
	d := ok[units.Density](t)(gravity.EthanolDensity(p, celsius(18)))
	near(t, "same volume", ok[units.StrengthByVolume](t)(gravity.DistillateStrength(litre(0.1), litre(0.1), d, celsius(18))).In(units.PercentVolume), 5, 1e-9)
	near(t, "half", ok[units.StrengthByVolume](t)(gravity.DistillateStrength(litre(0.2), litre(0.1), d, celsius(18))).In(units.PercentVolume), 2.5, 1e-9)
	for _, c := range []struct {
		s, v, rho, c float64
		about        string
	}{{0.0009, 0.1, 990, 20, "volume of the sample"}, {1001, 0.1, 990, 20, "volume of the sample"}, {0.1, 0.0009, 990, 20, "volume of the distillate"},
		{0.1, 1001, 990, 20, "volume of the distillate"}, {0.1, 0.1, 700, 20, "density"}, {0.1, 0.1, 990, 50, "temperature"},
		{0.01, 1, 940, 20, "strength of the sample"}} {
		_, err := gravity.DistillateStrength(litre(c.s), litre(c.v), kgm3(c.rho), celsius(c.c))
		refused(t, "distillate", err, c.about)
	}
}

// The scale under the fermenter: the CO2 of a fermentation, part of it dissolved,
// leads back to the liquid.
func TestFromWeightLost(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		wort := solution(t, 90, rapid.Float64Range(2, 20).Draw(t, "sugar"), 0)
		y := wort.WashYield()
		want, made, err := wort.Ferment(kg(inKg(wort.Fermentable())*rapid.Float64Range(0.2, 1).Draw(t, "part")), y)
		if err != nil {
			t.Fatal(err)
		}
		volume := ok[units.Volume](t)(wort.Volume(celsius(20))).In(units.Litre)
		content := rapid.Float64Range(0, 2).Draw(t, "g/L")
		lost := inKg(made.CO2) - content*volume/1000
		if lost < 0 {
			return
		}
		got, _, err := wort.FermentByWeight(kg(lost), units.GramCO2PerLitre.Of(0).Plus(gCO2(content)), y)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "strength", got.ByVolume().In(units.PercentVolume), want.ByVolume().In(units.PercentVolume), 1e-9)
	})
	wort := solution(t, 90, 10, 0)
	y := wort.WashYield()
	_, _, err := wort.FermentByWeight(kg(-0.1), gCO2(0), y)
	refused(t, "lost", err, "CO2 made")
	_, _, err = wort.FermentByWeight(kg(5.5), gCO2(0), y)
	refused(t, "lost", err, "CO2 made")
	for _, c := range []float64{-1, 10.1} {
		_, _, err = wort.FermentByWeight(kg(1), gCO2(c), y)
		refused(t, "dissolved", err, "dissolved CO2")
	}
	_, _, err = wort.FermentByWeight(kg(1), gCO2(0), gravity.Yield{})
	refused(t, "yield", err, "ethanol yield")
	if _, _, err = wort.FermentByWeight(kg(0.01), gCO2(10), y); err != nil {
		t.Error(err)
	}
}

func measured(t tester, v, u float64) units.MeasuredNumber {
	t.Helper()
	return ok[units.MeasuredNumber](t)(units.Measure(units.One.Of(0).Plus(pure(v)), pure(u)))
}

func measuredExtract(t tester, v, u float64) units.MeasuredExtract {
	t.Helper()
	return ok[units.MeasuredExtract](t)(units.Measure(plato(v), plato(u)))
}

// The uncertainty of a strength from two hydrometer readings: first order against
// Monte Carlo (JCGM 101), and the figures that the comments promise.
func TestMeasuredStrength(t *testing.T) {
	og, fg := measured(t, 1.038, 0.001), measured(t, 0.998, 0.001)
	y := gravity.SugarWashYield(gravity.AsSucrose)
	m := ok[units.MeasuredStrength](t)(gravity.StrengthByHydrometer(og, fg, y, percent(0), 0))
	u := m.Uncertainty().In(units.PercentagePoint)
	near(t, "0.001 in each is 0.2 % vol", u, 0.19, 0.02)
	mc, failed, err := units.Simulate(func(x units.Trial) (units.StrengthByVolume, error) {
		a, err := gravity.FromSG(units.At(x, &og).In(units.One))
		if err != nil {
			return units.StrengthByVolume{}, err
		}
		b, err := gravity.FromSG(units.At(x, &fg).In(units.One))
		if err != nil {
			return units.StrengthByVolume{}, err
		}
		f, err := gravity.FromOriginalAndApparent(a.Extract(), b.Extract(), y)
		return f.ByVolume(), err
	}, 2000, 1, &og, &fg)
	if err != nil || failed > 10 {
		t.Fatal(failed, err)
	}
	near(t, "Monte Carlo u", mc.Uncertainty().In(units.PercentagePoint), u, 0.02)
	near(t, "Monte Carlo mean", mc.Value().In(units.PercentVolume), m.Value().In(units.PercentVolume), 0.02)
	// a shared fault of the scale nearly drops out of the difference
	shared := ok[units.MeasuredStrength](t)(gravity.StrengthByHydrometer(og, fg, y, percent(0), 1))
	if s := shared.Uncertainty().In(units.PercentagePoint); s > 0.1*u {
		t.Errorf("shared: %v of %v", s, u)
	}
	// the yield moves the strength, but between two gravities less than its own part
	withYield := ok[units.MeasuredStrength](t)(gravity.StrengthByHydrometer(measured(t, 1.038, 0), measured(t, 0.998, 0), y, percent(3), 0))
	part := withYield.Uncertainty().In(units.PercentagePoint) / withYield.Value().In(units.PercentVolume)
	if part < 0.001 || part > 0.03 {
		t.Errorf("3 %% of the yield: %v of the strength", part)
	}
	// may it support a label tolerance of ± 0.3 % vol?
	c := ok[float64](t)(m.Capability(units.PercentagePoint.Of(0.3)))
	if c > 1 {
		t.Errorf("capability %v: ± 0.001 twice does not support ± 0.3 %% vol", c)
	}
	for _, p := range []float64{0.21} {
		_, err := gravity.StrengthByHydrometer(og, fg, y, percent(100*p), 0)
		refused(t, "part", err, "spread of the yield")
	}
	_, err = gravity.StrengthByHydrometer(og, fg, y, percent(-100), 0)
	refused(t, "part", err, "spread of the yield")
	_, err = gravity.StrengthByHydrometer(og, fg, y, percent(1), 1.1)
	refused(t, "correlation", err, "correlation of two inputs")
	_, err = gravity.StrengthByHydrometer(measured(t, 1.5, 0), fg, y, percent(1), 0)
	refused(t, "original", err, "specific gravity")
	_, err = gravity.StrengthByHydrometer(og, measured(t, 1.5, 0), y, percent(1), 0)
	refused(t, "final", err, "specific gravity")
}

func TestMeasuredGravity(t *testing.T) {
	temp := ok[units.MeasuredTemperature](t)(units.Measure(celsius(30), units.KelvinDifference.Of(0.5)))
	abv := ok[units.MeasuredStrength](t)(units.Measure(volPct(4.6), units.PercentagePoint.Of(1)))
	m := ok[units.MeasuredNumber](t)(gravity.Hydrometer{}.MeasuredGravity(measured(t, 0.993, 0.0006), abv, temp))
	g := ok[gravity.Gravity](t)(gravity.Hydrometer{}.Correct(0.993, volPct(4.6), celsius(30)))
	near(t, "value", m.Value().In(units.One), g.SG(), 1e-15)
	// 0.0006 of the reading, 0.00015 of 0.5 K and 0.0002 of 1 % vol in squares
	near(t, "uncertainty", m.Uncertainty().In(units.One), math.Sqrt(0.0006*0.0006+0.00014*0.00014+0.0001*0.0001), 0.00006)
	_, err := gravity.Hydrometer{}.MeasuredGravity(measured(t, 1.5, 0.001), abv, temp)
	refused(t, "reading", err, "reading")
}

func TestRefractometer(t *testing.T) {
	y := gravity.SugarWashYield(gravity.AsSucrose)
	f := ok[gravity.Fermentation](t)(gravity.FromOriginalAndReal(plato(9), plato(1), y))
	read := ok[units.Extract](t)(f.RefractometerBrix()).In(units.DegreePlato)
	g, abv, err := gravity.Refractometer(measuredExtract(t, 9, 0.1), measuredExtract(t, read, 0.1), measured(t, 1, 0), y)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "gravity", g.Value().In(units.One), f.Gravity().SG(), 1e-9)
	near(t, "strength", abv.Value().In(units.PercentVolume), f.ByVolume().In(units.PercentVolume), 1e-7)
	near(t, "u of the gravity", g.Uncertainty().In(units.One), 0.0015, 0.0007)
	near(t, "u of the strength", abv.Uncertainty().In(units.PercentagePoint), 0.25, 0.12)
	// the model alone is 0.14 °Bx
	g0, _, err := gravity.Refractometer(measuredExtract(t, 9, 0), measuredExtract(t, read, 0), measured(t, 1, 0), y)
	if err != nil {
		t.Fatal(err)
	}
	if u := g0.Uncertainty().In(units.One); u < 0.0005 || u > g.Uncertainty().In(units.One) {
		t.Errorf("model alone: %v", u)
	}
	_, _, err = gravity.Refractometer(measuredExtract(t, 60, 0.1), measuredExtract(t, 5, 0.1), measured(t, 1, 0), y)
	refused(t, "original", err, "original extract")
	_, _, err = gravity.Refractometer(measuredExtract(t, 9, 0.1), measuredExtract(t, 1, 0.1), measured(t, 1, 0), y)
	refused(t, "reading", err, "refractometer reading")
}
