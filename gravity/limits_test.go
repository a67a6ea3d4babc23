package gravity_test

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// edges tells that the error is about a quantity, states its range as the
// documentation of the function does and repeats the value that was given.
func edges(t tester, err error, quantity string, value, least, most float64) {
	t.Helper()
	refused(t, quantity, err, quantity)
	if e, ok := errors.AsType[*units.RangeError](err); ok {
		same := func(what string, got, want float64) {
			if !(math.Abs(got-want) <= 1e-9*math.Max(1, math.Abs(want))) {
				t.Errorf("%s: %s %.12g, documented %.12g", e.Func, what, got, want)
			}
		}
		same("value", e.Value, value)
		same("least", e.Min, least)
		same("most", e.Max, most)
	}
}

// The ranges as the comments of the functions state them.
func TestLimitsOfMethods(t *testing.T) {
	_, err := gravity.OriginalExtractBalling(massPct(21), plato(1))
	edges(t, err, "strength", 21, 0, 20)
	_, err = gravity.OriginalExtractBalling(massPct(1), plato(41))
	edges(t, err, "real extract", 41, 0, 40)
	_, err = gravity.StrengthBalling(plato(41), plato(1))
	edges(t, err, "original extract", 41, 0, 40)
	_, err = gravity.StrengthBalling(plato(12), plato(13))
	edges(t, err, "real extract", 13, 0, 12)
	_, err = gravity.RealExtractBalling(plato(41), massPct(1))
	edges(t, err, "original extract", 41, 0, 40)
	_, err = gravity.RealExtractBalling(plato(12), massPct(7))
	edges(t, err, "strength", 7, 0, 12/(2.0665-0.12798)) // all of 12 °P
	y := gravity.BallingYield()
	_, err = y.OriginalExtract(massPct(21), plato(1))
	edges(t, err, "strength", 21, 0, 20)
	_, err = y.OriginalExtract(massPct(1), plato(61))
	edges(t, err, "real extract", 61, 0, 60)
	_, err = gravity.AttenuatedBallingTables(plato(8), plato(1))
	edges(t, err, "original extract", 8, 9, 16)
	_, err = gravity.AttenuatedMEBAK(plato(3), plato(1))
	edges(t, err, "original extract", 3, 4, 25)
	_, err = gravity.AttenuatedCutaia(plato(9), plato(1))
	edges(t, err, "original extract", 9, 9.4, 18.1)
	_, err = gravity.AttenuatedDoemens(plato(9), plato(1))
	edges(t, err, "original extract", 9, 9.4, 18.1)
	_, err = gravity.AttenuatedDoemens(plato(10), plato(11))
	edges(t, err, "apparent extract", 11, -2, 10)
	_, err = gravity.StrengthCutaiaReal(plato(9), plato(1))
	edges(t, err, "original extract", 9, 9.4, 18.1)
	_, err = gravity.StrengthCutaiaReal(plato(12), plato(13))
	edges(t, err, "real extract", 13, 0, 12)
	_, err = gravity.FromReference(0.7, gravity.At20, gravity.InVacuum)
	edges(t, err, "specific gravity", 0.7, 0.791, 1.414)
	_, err = gravity.FromBaume(50)
	edges(t, err, "degrees Baumé", 50, -37, 42)
}

func TestLimitsOfStrength(t *testing.T) {
	_, err := gravity.ByVolumeAt(massPct(101), celsius(20))
	edges(t, err, "strength", 101, 0, 100)
	_, err = gravity.ByMassAt(volPct(101), celsius(20))
	edges(t, err, "strength", 101, 0, 100)
	_, err = gravity.ByVolumeAt(massPct(1), celsius(41))
	edges(t, err, "temperature", 41, -20, 40)
	_, err = gravity.ByMassAt(volPct(1), celsius(41))
	edges(t, err, "temperature", 41, -20, 40)
	_, err = gravity.EthanolStrength(kgm3(900), celsius(41))
	edges(t, err, "temperature", 41, -20, 40)
	for v, want := range map[float64]float64{-1: 0, 101: 100, 200: 100, math.Inf(1): 100} { // no error: the nearest there is
		near(t, "by mass", gravity.ByMass(volPct(v)).In(units.PercentMass), want, 1e-12)
		near(t, "by volume", gravity.ByVolume(massPct(v)).In(units.PercentVolume), want, 1e-12)
	}
	_, err = gravity.StandardDrinks(litre(-1), volPct(5), gravity.DrinkUS)
	edges(t, err, "volume", -1, 0, 1e12)
	_, err = gravity.StandardDrinks(litre(1), volPct(101), gravity.DrinkUS)
	edges(t, err, "strength", 101, 0, 100)
	_, err = gravity.StandardDrinks(litre(1), volPct(5), 3)
	edges(t, err, "measure", 3, 0, 2)
	_, err = gravity.LabelDrinks(-1)
	edges(t, err, "measures", -1, 0, 1e12)
	_, err = gravity.LabelTolerance(gravity.EUBeer, volPct(101))
	edges(t, err, "strength", 101, 0, 100)
	_, err = gravity.LabelTolerance(7, volPct(10))
	edges(t, err, "category", 7, 0, 6)
	_, err = gravity.RoundCaloriesUS(kcalOf(-1))
	edges(t, err, "energy", -1, 0, 1e6)
	s := ok[gravity.Solution](t)(gravity.NewSolution(kg(95.5), kg(0.5), kg(4)))
	_, err = s.EnergyUS(percent(2))
	edges(t, err, "ash", 2, 0, 0.5) // the real extract
	s = ok[gravity.Solution](t)(gravity.NewSolution(kg(90), kg(6), kg(4)))
	_, err = s.EnergyUS(percent(2))
	edges(t, err, "ash", 2, 0, 1)
}

func TestLimitsOfMeasurement(t *testing.T) {
	g := func(v float64) units.Mass { return kg(v / 1000) }
	_, err := gravity.Pycnometer(g(25), g(75), g(76), celsius(101))
	edges(t, err, "temperature", 101, 0, 100)
	_, err = gravity.Pycnometer(g(-1), g(75), g(76), celsius(20))
	edges(t, err, "empty flask", -1, 0, 1e6)
	_, err = gravity.Pycnometer(g(25), g(25.5), g(76), celsius(20))
	edges(t, err, "water in the flask", 0.5, 1, 1e6)
	rho := 5*(ok[units.Density](t)(gravity.WaterDensity(celsius(20))).In(units.KilogramPerCubicMetre)-1.2) + 1.2
	_, err = gravity.Pycnometer(g(0), g(10), g(50), celsius(20))
	edges(t, err, "density", rho, 500, 2000)
	_, err = gravity.DistillateStrength(litre(0.0001), litre(0.1), kgm3(990), celsius(20))
	edges(t, err, "volume of the sample", 0.0001, 0.001, 1000)
	_, err = gravity.DistillateStrength(litre(0.1), litre(0.0001), kgm3(990), celsius(20))
	edges(t, err, "volume of the distillate", 0.0001, 0.001, 1000)
	fifty := ok[units.Density](t)(gravity.EthanolDensity(gravity.ByMass(volPct(50)), celsius(20)))
	_, err = gravity.DistillateStrength(litre(0.1), litre(0.3), fifty, celsius(20))
	edges(t, err, "strength of the sample", 150, 0, 100)
	pure := ok[units.Density](t)(gravity.EthanolDensity(massPct(100), celsius(20))).In(units.KilogramPerCubicMetre)
	none := ok[units.Density](t)(gravity.EthanolDensity(massPct(0), celsius(20))).In(units.KilogramPerCubicMetre)
	_, err = gravity.SpiritIndication(sg(t, 1.02), sg(t, 1.01))
	edges(t, err, "gravity of the alcohol solution", 1.01, pure/none, 1)
	_, _, err = gravity.FromWeightLost(gravity.Solution{}, kg(1), gCO2(11), gravity.BallingYield())
	edges(t, err, "dissolved CO2", 11, 0, 10)
	_, err = gravity.FromDensityAt(kgm3(1000), celsius(101), volPct(0))
	edges(t, err, "temperature", 101, 0, 100)
	_, err = gravity.FromDensityAt(kgm3(1000), celsius(60), volPct(0.5))
	edges(t, err, "temperature", 60, 0, 40)
	_, err = gravity.FromDensityAt(kgm3(1000), celsius(20), volPct(24))
	edges(t, err, "strength", 24, 0, 23)
	// from −10 °P, here to 30 °P with ethanol and 60 °P without
	for _, e := range []float64{0, 5} {
		most := 60 - 6*e
		s := ok[gravity.Solution](t)(gravity.NewSolution(kg(100-most-e), kg(most), kg(e)))
		v := s.ByVolume()
		d := ok[units.Density](t)(s.Density(celsius(20))).In(units.KilogramPerCubicMetre)
		_, err = gravity.FromDensityAt(kgm3(2000), celsius(20), v)
		refused(t, "too dense", err, "density")
		if r, ok := errors.AsType[*units.RangeError](err); ok {
			near(t, "most", r.Max, d, 1e-6)
		}
	}
	// −10 °P by the polynomial of SPS-4 at 20 °C, the first row of its coefficients
	least := ok[units.Density](t)(gravity.WaterDensity(celsius(20))).In(units.KilogramPerCubicMetre)
	for k, a := range sps4[0] {
		least += a * math.Pow(-0.1, float64(k+1))
	}
	_, err = gravity.FromDensityAt(kgm3(900), celsius(20), volPct(0))
	if r := rangeError(t, err); r != nil {
		near(t, "least", r.Min, least, 1e-6)
	}
	// a reference on which the ends of the scale are closer: pure ethanol at 25 °C
	end := ok[gravity.Gravity](t)(gravity.FromSG(pure / none))
	_, err = gravity.FromReference(0.800, gravity.At15, gravity.InVacuum)
	if err != nil {
		t.Error(err)
	}
	_, err = gravity.FromReference(0.7911, gravity.At15, gravity.InVacuum)
	edges(t, err, "specific gravity", 0.7911, end.As(gravity.At15, gravity.InVacuum), ok[gravity.Gravity](t)(gravity.FromExtract(plato(80))).As(gravity.At15, gravity.InVacuum))
}

func TestLimitsOfSolution(t *testing.T) {
	s := ok[gravity.Solution](t)(gravity.NewSolution(kg(90), kg(10), kg(0)))
	_, err := s.Times(-1)
	edges(t, err, "factor", -1, 0, 1e6)
	_, err = ok[gravity.Solution](t)(s.Times(1e6)).Times(1e5)
	edges(t, err, "mass", 1e13, 0, 1e12)
	_, err = s.Take(percent(101))
	edges(t, err, "share", 101, 0, 100)
	_, err = s.Remaining(percent(101))
	edges(t, err, "share lost", 101, 0, 100)
	_, err = s.AddWater(kg(-1))
	edges(t, err, "water", -1, 0, 1e12)
	_, err = s.BoilOff(kg(91))
	edges(t, err, "water", 91, 0, 90)
	_, err = s.AddExtract(5, kg(1))
	edges(t, err, "kind of sugar", 5, 0, 4)
	_, err = gravity.NewSolution(kg(-1), kg(0), kg(0))
	edges(t, err, "water", -1, 0, 1e12)
	_, err = gravity.NewSolution(kg(0), kg(-1), kg(0))
	edges(t, err, "extract", -1, 0, 1e12)
	_, err = gravity.NewSolution(kg(0), kg(0), kg(-1))
	edges(t, err, "ethanol", -1, 0, 1e12)
	for _, k := range []float64{0.001, 1, 1000} { // how much there is of it plays no part
		_, err = gravity.NewSolution(kg(10*k), kg(90*k), kg(0))
		edges(t, err, "extract in the liquid without ethanol", 90, 0, 80)
		_, err = ok[gravity.Solution](t)(gravity.NewSolution(kg(40*k), kg(0), kg(0))).AddExtract(gravity.Fructose, kg(60*k))
		edges(t, err, "extract with fructose", 60, 0, 48)
		_, err = gravity.NewSolution(kg(40*k), kg(20*k), kg(40*k)) // e·x up to 0.06, Hackbarth 2009
		edges(t, err, "extract with this much ethanol", 20, 0, 15)
	}
	_, err = gravity.NewSolution(kg(34), kg(6), kg(60)) // 65 % of solutes, Hackbarth 2009
	edges(t, err, "extract with this much ethanol", 6, 0, 5)
	_, err = gravity.ExtractFromConcentration(mgL(2e6), celsius(20))
	edges(t, err, "concentration", 2000, 0, ok[units.MassConcentration](t)(gravity.ExtractConcentration(plato(80), celsius(20))).In(units.GramPerLitre))
	// a trace of another sugar, up to 2 % of the liquid, may be beyond its own table
	syrup := ok[gravity.Solution](t)(gravity.NewSolution(kg(40), kg(58), kg(0)))
	ok[gravity.Solution](t)(syrup.AddExtract(gravity.Fructose, kg(1.95)))
	_, err = syrup.AddExtract(gravity.Fructose, kg(2.05))
	edges(t, err, "extract with fructose", 100*60.05/100.05, 0, 48)
	// 0.03 of two and 0.06 of three in squares, where little of each is in it
	u, _ := ok[gravity.Solution](t)(gravity.NewSolution(kg(99.98), kg(0.01), kg(0.01))).DensityUncertainty()
	near(t, "uncertainty", u.In(units.KilogramPerCubicMetre), math.Hypot(0.03, 0.06), 0.0005)
	_, err = s.Density(celsius(101))
	edges(t, err, "temperature", 101, 0, 100)
	_, _, err = s.DiluteTo(volPct(5))
	edges(t, err, "strength", 5, 0.01, 0)
	spirit := ok[gravity.Solution](t)(gravity.NewSolution(kg(60), kg(0), kg(40)))
	most := spirit.ByVolume().In(units.PercentVolume)
	_, _, err = s.FortifyTo(volPct(90), spirit)
	edges(t, err, "strength", 90, 0, most-0.01)
	_, _, err = s.TakeVolume(litre(-1), celsius(20))
	edges(t, err, "volume", -1, 0, ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre))
	_, _, err = spirit.BoilDownTo(litre(1), celsius(20))
	edges(t, err, "ethanol", 40, 0, 0)
	_, _, err = s.MakeUpTo(litre(2e9), celsius(20))
	edges(t, err, "volume", 2e9, ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre), 1e9)
	_, _, err = gravity.BlendToStrengthAndExtract(spirit, s, s, volPct(101), plato(1), litre(1))
	edges(t, err, "strength", 101, 0, 100)
	_, _, err = gravity.BlendToStrengthAndExtract(spirit, s, s, volPct(1), plato(81), litre(1))
	edges(t, err, "real extract", 81, 0, 80)
	_, _, err = gravity.BlendToStrengthAndExtract(spirit, s, s, volPct(1), plato(1), litre(2e9))
	edges(t, err, "volume", 2e9, 0, 1e9)
	_, _, err = gravity.BlendToStrengthAndExtract(spirit, s, s, volPct(1), plato(1), litre(1))
	edges(t, err, "independent liquids", 2, 3, 3)
}
