package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// The ranges as the comments of the functions state them.
func TestLimitsOfMethods(t *testing.T) {
	y := gravity.BallingYield()
	refusals(t, []refusal{
		{of(y.OriginalExtract(massPct(21), plato(1))), "strength", 21, 0, 20},
		{of(y.OriginalExtract(massPct(1), plato(61))), "real extract", 61, 0, 60},
		{of(gravity.FromReference(0.7, gravity.At20, gravity.InVacuum)), "specific gravity", 0.7, 0.791, 1.414},
		{of(gravity.FromBaume(50)), "degrees Baumé", 50, -37, 42},
	})
}

// The two extracts in the wrong order are no fermentation.
func TestWrongOrderIsRefused(t *testing.T) {
	y := gravity.BallingYield()
	_, err := gravity.FromOriginalAndApparent(plato(3), plato(12), y)
	refused(t, "apparent", err, "apparent extract")
	_, err = gravity.FromOriginalAndReal(plato(4.5), plato(12), y)
	refused(t, "real", err, "real extract")
	_, err = gravity.FromOriginalAndBrix(plato(6), plato(12), 1, y)
	refused(t, "Brix", err, "refractometer reading")
	_, err = gravity.FromApparentAndBrix(plato(6), plato(3), 1, y)
	refused(t, "apparent and Brix", err, "refractometer reading with this gravity")
}

func TestLimitsOfStrength(t *testing.T) {
	for v, want := range map[float64]float64{-1: 0, 101: 100, 200: 100, math.Inf(1): 100} { // no error: the nearest there is
		near(t, "by mass", gravity.ByMass(volPct(v)).In(units.PercentMass), want, 1e-12)
		near(t, "by volume", gravity.ByVolume(massPct(v)).In(units.PercentVolume), want, 1e-12)
	}
	refusals(t, []refusal{
		{of(gravity.ByVolumeAt(massPct(101), celsius(20))), "strength", 101, 0, 100},
		{of(gravity.ByMassAt(volPct(101), celsius(20))), "strength", 101, 0, 100},
		{of(gravity.ByVolumeAt(massPct(1), celsius(41))), "temperature", 41, -20, 40},
		{of(gravity.ByMassAt(volPct(1), celsius(41))), "temperature", 41, -20, 40},
		{of(gravity.EthanolStrength(kgm3(900), celsius(41))), "temperature", 41, -20, 40},
	})
}

func TestLimitsOfMeasurement(t *testing.T) {
	g := func(v float64) units.Mass { return kg(v / 1000) }
	rho := 5*(ok[units.Density](t)(gravity.WaterDensity(celsius(20))).In(units.KilogramPerCubicMetre)-1.2) + 1.2
	fifty := ok[units.Density](t)(gravity.EthanolDensity(gravity.ByMass(volPct(50)), celsius(20)))
	pure := ok[units.Density](t)(gravity.EthanolDensity(massPct(100), celsius(20))).In(units.KilogramPerCubicMetre)
	none := ok[units.Density](t)(gravity.EthanolDensity(massPct(0), celsius(20))).In(units.KilogramPerCubicMetre)
	// from −10 °P, here to 30 °P with ethanol and 60 °P without
	for _, e := range []float64{0, 5} {
		most := 60 - 6*e
		s := solution(t, 100-most-e, most, e)
		v := s.ByVolume()
		d := ok[units.Density](t)(s.Density(celsius(20))).In(units.KilogramPerCubicMetre)
		_, err := gravity.FromDensityAt(kgm3(2000), v, celsius(20))
		refused(t, "too dense", err, "density")
		if r := rangeError(t, err); r != nil {
			near(t, "most", r.Max, d, 1e-6)
		}
	}
	// −10 °P by the polynomial of SPS-4 at 20 °C, the first row of its coefficients
	least := ok[units.Density](t)(gravity.WaterDensity(celsius(20))).In(units.KilogramPerCubicMetre)
	for k, a := range sps4[0] {
		least += a * math.Pow(-0.1, float64(k+1))
	}
	_, err := gravity.FromDensityAt(kgm3(900), volPct(0), celsius(20))
	if r := rangeError(t, err); r != nil {
		near(t, "least", r.Min, least, 1e-6)
	}
	// a reference on which the ends of the scale are closer: pure ethanol at 25 °C
	end := ok[gravity.Gravity](t)(gravity.FromSG(pure / none))
	ok[gravity.Gravity](t)(gravity.FromReference(0.800, gravity.At15, gravity.InVacuum))
	refusals(t, []refusal{
		{of(gravity.Pycnometer(g(25), g(75), g(76), celsius(101))), "temperature", 101, 0, 100},
		{of(gravity.Pycnometer(g(-1), g(75), g(76), celsius(20))), "empty flask", -1, 0, 1e6},
		{of(gravity.Pycnometer(g(25), g(25.5), g(76), celsius(20))), "water in the flask", 0.5, 1, 1e6},
		{of(gravity.Pycnometer(g(0), g(10), g(50), celsius(20))), "density", rho, 500, 2000},
		{of(gravity.DistillateStrength(litre(0.0001), litre(0.1), kgm3(990), celsius(20))), "volume of the sample", 0.0001, 0.001, 1000},
		{of(gravity.DistillateStrength(litre(0.1), litre(0.0001), kgm3(990), celsius(20))), "volume of the distillate", 0.0001, 0.001, 1000},
		{of(gravity.DistillateStrength(litre(0.1), litre(0.3), fifty, celsius(20))), "strength of the sample", 150, 0, 100},
		{of(gravity.SpiritIndication(sg(t, 1.02), sg(t, 1.01))), "gravity of the alcohol solution", 1.01, pure / none, 1},
		{of2(gravity.Solution{}.FermentByWeight(kg(1), gCO2(11), gravity.BallingYield())), "dissolved CO2", 11, 0, 10},
		{of(gravity.FromDensityAt(kgm3(1000), volPct(0), celsius(101))), "temperature", 101, 0, 100},
		{of(gravity.FromDensityAt(kgm3(1000), volPct(0.5), celsius(60))), "temperature", 60, 0, 40},
		{of(gravity.FromDensityAt(kgm3(1000), volPct(24), celsius(20))), "strength", 24, 0, 23},
		{of(gravity.FromReference(0.7911, gravity.At15, gravity.InVacuum)), "specific gravity", 0.7911,
			ok[float64](t)(end.As(gravity.At15, gravity.InVacuum)),
			ok[float64](t)(ok[gravity.Gravity](t)(gravity.FromExtract(plato(80))).As(gravity.At15, gravity.InVacuum))},
	})
}

func TestLimitsOfSolution(t *testing.T) {
	s := solution(t, 90, 10, 0)
	for _, k := range []float64{0.001, 1, 1000} { // how much there is of it plays no part
		water := solution(t, 40*k, 0, 0)
		refusals(t, []refusal{
			{of(gravity.NewSolution(kg(10*k), kg(90*k), kg(0))), "extract in the liquid without ethanol", 90, 0, 80},
			{of(water.AddExtract(gravity.AsFructose, kg(60*k))), "extract with fructose", 60, 0, 48},
			{of(gravity.NewSolution(kg(40*k), kg(20*k), kg(40*k))), "extract with this much ethanol", 20, 0, 15}, // e·x up to 0.06, Hackbarth 2009
		})
	}
	// a trace of another sugar, up to 2 % of the liquid, may be beyond its own table
	syrup := solution(t, 40, 58, 0)
	ok[gravity.Solution](t)(syrup.AddExtract(gravity.AsFructose, kg(1.95)))
	// 0.03 of two and 0.06 of three in squares, where little of each is in it
	u, _ := solution(t, 99.98, 0.01, 0.01).DensityUncertainty()
	near(t, "uncertainty", u.In(units.KilogramPerCubicMetre), math.Hypot(0.03, 0.06), 0.0005)
	spirit := solution(t, 60, 0, 40)
	most := spirit.ByVolume().In(units.PercentVolume)
	refusals(t, []refusal{
		{of(s.Times(-1)), "factor", -1, 0, 1e6},
		{of(ok[gravity.Solution](t)(s.Times(1e6)).Times(1e5)), "mass", 1e13, 0, 1e12},
		{of(s.Take(percent(101))), "share", 101, 0, 100},
		{of(s.Remaining(percent(101))), "share lost", 101, 0, 100},
		{of(s.AddWater(kg(-1))), "water", -1, 0, 1e12},
		{of(s.BoilOff(kg(91))), "water", 91, 0, 90},
		{of(gravity.NewSolution(kg(-1), kg(0), kg(0))), "water", -1, 0, 1e12},
		{of(gravity.NewSolution(kg(0), kg(-1), kg(0))), "extract", -1, 0, 1e12},
		{of(gravity.NewSolution(kg(0), kg(0), kg(-1))), "ethanol", -1, 0, 1e12},
		{of(gravity.NewSolution(kg(34), kg(6), kg(60))), "extract with this much ethanol", 6, 0, 5}, // 65 % of solutes, Hackbarth 2009
		{of(gravity.ExtractFromConcentration(mgL(2e6), celsius(20))), "concentration", 2000, 0,
			ok[units.MassConcentration](t)(gravity.ExtractConcentration(plato(80), celsius(20))).In(units.GramPerLitre)},
		{of(syrup.AddExtract(gravity.AsFructose, kg(2.05))), "extract with fructose", 100 * 60.05 / 100.05, 0, 48},
		{of(s.Density(celsius(101))), "temperature", 101, 0, 100},
		{of(solution(t, 0.9, 0.05, 0.05).Density(celsius(41))), "temperature", 41, 0, 40},
		{of2(s.DiluteTo(volPct(5))), "strength", 5, 0.01, 0},
		{of2(s.FortifyTo(volPct(90), spirit)), "strength", 90, 0, most - 0.01},
		{of2(s.TakeVolume(litre(-1), celsius(20))), "volume", -1, 0, ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre)},
		{of2(spirit.BoilDownTo(litre(1), celsius(20))), "ethanol", 40, 0, 0},
		{of2(s.MakeUpTo(litre(2e9), celsius(20))), "volume", 2e9, ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre), 1e9},
		{of2(gravity.BlendToStrengthAndExtract(spirit, s, s, volPct(101), plato(1), litre(1))), "strength", 101, 0, 100},
		{of2(gravity.BlendToStrengthAndExtract(spirit, s, s, volPct(1), plato(81), litre(1))), "real extract", 81, 0, 80},
		{of2(gravity.BlendToStrengthAndExtract(spirit, s, s, volPct(1), plato(1), litre(2e9))), "volume", 2e9, 0, 1e9},
		{of2(gravity.BlendToStrengthAndExtract(spirit, s, s, volPct(1), plato(1), litre(1))), "independent liquids", 2, 3, 3},
	})
}
