package gravity_test

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// A yield makes 0.01 to 1 g of ethanol of a gram; the zero one is refused everywhere.
func TestLimitsOfYield(t *testing.T) {
	var none gravity.Yield
	s := solution(t, 90, 10, 0)
	refusals(t, []refusal{
		{of2(s.Ferment(kg(1), none)), "ethanol yield", 0, 0.01, 1},
		{of(newYield(0.005, 0.9, 0.095, 0, 0)), "ethanol", 0.005, 0.01, 1},
		{of(newYield(1.1, 0, 0, 0, 0)), "ethanol", 1.1, 0, 1},
		{of(newYield(0.5, 0.4, 0, 0, 0.05)), "sum of the products", 0.9, 1.05 - 1e-6, 1.05 + 1e-6},
	})
	ok[gravity.Yield](t)(newYield(0.01, 0.99, 0, 0, 0))
	ok[gravity.Yield](t)(newYield(1, 0, 0, 0, 0))
}

func TestLimitsOfFermentation(t *testing.T) {
	y := gravity.BallingYield()
	refusals(t, []refusal{
		{of(gravity.FromOriginalAndReal(plato(51), plato(5), y)), "original extract", 51, 0, 50},
		{of(gravity.FromApparentAndStrength(plato(1), volPct(21), y)), "strength", 21, 0, 20},
		{of(gravity.FromStrengthAndReal(volPct(21), plato(5), y)), "strength", 21, 0, 20},
		{of(gravity.FromStrengthAndReal(volPct(5), plato(35), y)), "real extract", 35, 0, 30},
	})
	fructose := gravity.SugarWashYield(gravity.AsFructose)
	_, err := gravity.FromOriginalAndReal(plato(49), plato(40), fructose)
	refused(t, "past the table of fructose", err, "original extract")
	d := ok[units.Density](t)(gravity.AsFructose.Density(plato(48), celsius(20)))
	reads := ok[gravity.Gravity](t)(gravity.FromDensity(d)).Extract().In(units.DegreePlato)
	ok[gravity.Fermentation](t)(gravity.FromOriginalAndReal(plato(reads-1e-6), plato(40), fructose))
	_, err = gravity.FromOriginalAndReal(plato(reads+0.01), plato(40), fructose)
	// one more °P of 48 % mass fructose is near enough one more % mass of it
	if r := rangeError(t, err); r != nil {
		near(t, "value", r.Value, 48.01, 0.001)
		near(t, "least", r.Min, 0, 0)
		near(t, "most", r.Max, 48, 0)
	}
	// 1 °P of a glucose wash is a little more than 1 % mass, as at any other extract
	f := ok[gravity.Fermentation](t)(gravity.FromOriginalAndReal(plato(1), plato(1), gravity.SugarWashYield(gravity.AsGlucose)))
	near(t, "glucose at 1 °P", inKg(f.Wort().Extract()), 1+6.367/385.2, 0.002) // −6.367·b of 385.2·b kg/m³
	near(t, "1 °P", f.OriginalExtract().In(units.DegreePlato), 1, 1e-9)

	wash := gravity.SugarWashYield(gravity.AsSucrose)
	dry := ok[gravity.Fermentation](t)(gravity.FromOriginalAndReal(plato(9), plato(0.37), wash))
	_, err = gravity.FromStrengthAndReal(dry.ByVolume(), plato(0.1), wash)
	if r := rangeError(t, err); r != nil { // the residue of that much ethanol
		near(t, "value", r.Value, 0.1, 1e-12)
		near(t, "least", r.Min, wash.Residue().In(units.Fraction)/wash.Ethanol().In(units.Fraction)*dry.ByMass().In(units.PercentMass), 0.001)
		near(t, "most", r.Max, 30, 0)
	}
	// gravities from dry to 30 % mass of sugar
	most := solution(t, 66, 30, 4)
	_, err = gravity.FromApparentAndStrength(plato(60), volPct(0), y)
	edges(t, err, "gravity with this strength", ok[gravity.Gravity](t)(gravity.FromExtract(plato(60))).SG(), 1,
		ok[gravity.Gravity](t)(gravity.FromExtract(plato(30))).SG())
	ok[gravity.Fermentation](t)(gravity.FromApparentAndStrength(plato(most.Gravity().Extract().In(units.DegreePlato)-1e-6), most.ByVolume(), y))
}

// Hydrometer and refractometer together: up to 15 % mass of ethanol, where a liquid
// that the yield can make holds so much.
func TestLimitsOfApparentAndBrix(t *testing.T) {
	y := gravity.BallingYield() // leaves no residue
	reads := func(s gravity.Solution) (gravity.Solution, units.Extract, float64) {
		return s, s.Gravity().Extract(), ok[units.Extract](t)(s.RefractometerBrix()).In(units.DegreePlato)
	}
	_, g, b := reads(solution(t, 80, 5, 15))
	f := ok[gravity.Fermentation](t)(gravity.FromApparentAndBrix(g, plato(b-1e-6), 1, y))
	near(t, "ethanol", f.ByMass().In(units.PercentMass), 15, 1e-4)
	_, err := gravity.FromApparentAndBrix(g, plato(b+0.01), 1, y)
	if r := rangeError(t, err); r != nil {
		near(t, "value", r.Value, b+0.01, 1e-9)
		near(t, "most", r.Max, b, 1e-9)
	}
	// lighter than 15 % mass of ethanol, dry
	_, err = gravity.FromApparentAndBrix(plato(-7), plato(5), 1, y)
	edges(t, err, "apparent extract", -7, 0, 30)
	// so heavy that 15 % mass of ethanol would ask for more sugar than is covered
	_, g, b = reads(solution(t, 65.5, 27.5, 7))
	f = ok[gravity.Fermentation](t)(gravity.FromApparentAndBrix(g, plato(b), 1, y))
	near(t, "ethanol", f.ByMass().In(units.PercentMass), 7, 1e-6)
}
