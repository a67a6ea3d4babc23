package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// spirit is too strong a drink to hold CO2 by any published formula: 32 % mass.
func spirit(t tester) gravity.Solution {
	t.Helper()
	return ok[gravity.Solution](t)(gravity.NewSolution(kg(0.68), kg(0), kg(0.32)))
}

// A drink out of range is refused by whatever takes one.
func TestSpiritIsRefused(t *testing.T) {
	s, f := spirit(t), carbonation.Fermenter{Drink: litre(20), Headspace: litre(2)}
	_, err := f.Crash(s, celsius(20), celsius(2), units.Atmosphere{})
	refused(t, "Crash", err, "strength")
	_, err = carbonation.Compare(s, bar(2), celsius(20))
	refused(t, "Compare", err, "strength")
	_, err = bottle().Close(s, filling(3), units.Atmosphere{})
	refused(t, "Close", err, "strength")
	_, err = carbonation.Viscosity(s, celsius(20))
	refused(t, "Viscosity", err, "strength")
}

// The zero vessel is none.
func TestZeroVesselIsRefused(t *testing.T) {
	var c carbonation.ClosedVessel
	_, err := c.At(celsius(20))
	refused(t, "At", err, "capacity")
	_, err = c.Worst(celsius(20))
	refused(t, "Worst", err, "capacity")
	_, err = c.WarmestWithin()
	refused(t, "WarmestWithin", err, "rating")
	log := []carbonation.LoggedTemperature{{Temperature: celsius(20)}, {At: 60e9, Temperature: celsius(60)}}
	_, err = carbonation.Handbook().Pasteurise(log, &c)
	refused(t, "Pasteurise", err, "capacity")
	if c.CO2() != (units.Mass{}) {
		t.Error(c.CO2())
	}
}

// A vat at 90 °C on a mountain boils before its valve lets go.
func TestSpundBoils(t *testing.T) {
	thin := ok[units.Atmosphere](t)(units.Barometer(kpa(50)))
	_, err := liquid(t, 4.6, 0.5).Spund(gramsCO2(0.1), carbonation.Fermenter{Drink: litre(20), Headspace: litre(2)}, yield(t), celsius(90), thin)
	refused(t, "Spund", err, "pressure")
}

// More sugar in all than a float64 counts in whole steps.
func TestSpreadTooFine(t *testing.T) {
	p := ok[carbonation.Priming](t)(carbonation.PrimingSugar(material.Sucrose(), gramsCO2(5), gramsCO2(1), units.MassConcentration{}, litre(1)))
	_, err := p.Spread([]carbonation.Bottles{{Fill: litre(1e5), Count: 1_000_000}}, step(t, "0.0001 g"))
	if err == nil {
		t.Error("1e11 L in steps of 0.1 mg")
	}
	// Three sizes, each of which is counted in whole steps.
	some := carbonation.Bottles{Fill: litre(1e5), Count: 50_000}
	s, err := p.Spread([]carbonation.Bottles{some, some, some}, step(t, "0.0001 g"))
	if err == nil || s.Doses != nil || s.Volume != (units.Volume{}) {
		t.Errorf("1.5e10 L in steps of 0.1 mg: %+v, %v", s, err)
	}
}

// Edges that are in: 1 and 50 mm of bore, a primer at the end of its range, a blend that is all
// CO2 though its pressure lies a rounding below.
func TestEdgesAreIn(t *testing.T) {
	for _, mm := range []float64{1, 50} {
		line := carbonation.Line{Bore: metre(mm / 1000)}
		if _, err := line.FlowOf(seltzer(t), celsius(4), units.BarGauge.Of(1), metre(100)); err != nil {
			t.Error(err)
		}
	}
	thin := ok[material.Material](t)(material.ByLabel("thin syrup", material.Composition{Glucose: percent(0.11)}))
	ok[carbonation.Priming](t)(carbonation.PrimingSugar(thin, gramsCO2(5), gramsCO2(1), units.MassConcentration{}, litre(1)))
	l := liquid(t, 4.6, 0.5)
	p := ok[units.AbsolutePressure](t)(l.Pressure(gramsCO2(5), celsius(4))).In(units.Kilopascal)
	x := ok[units.Share](t)(l.BlendFor(gramsCO2(5), kpa(p*(1-0.9e-9)), celsius(4)))
	near(t, "blend", x.In(units.Percent), 100, 0)
}

// A trace of CO2, less than a kilopascal of it, and none at all.
func TestTraceOfCO2(t *testing.T) {
	for _, g := range []float64{0, 1e-3} {
		f := filling(g)
		f.AtRest, f.Air, f.AirRemoved = false, percent(100), percent(0)
		c := closed(t, bottle(), f)
		p := at(t, c, 20)
		near(t, "conserved", p.InLiquid.In(units.Gram)+p.InSpace.In(units.Gram), c.CO2().In(units.Gram), 1e-15)
		near(t, "CO2", c.CO2().In(units.Gram), g*0.33, 2e-3*g)
		if p.AtLeast || p.CO2.In(units.Kilopascal) > 1 || p.Air.In(units.Kilopascal) < 90 {
			t.Errorf("%g g/L: %+v", g, p)
		}
	}
	near(t, "at rest without", closed(t, bottle(), filling(0)).CO2().In(units.Gram), 0, 1e-15)
}

// By hand: under 101.325 kPa gauge each round halves the air; 209476 ppm halved ten
// times is 204.57 ppm.
func TestRoundsOnTheEdge(t *testing.T) {
	for x, want := range map[float64]int{204.6: 10, 204.5: 11} {
		n, err := carbonation.RoundsFor(ppm(x), check.Must(units.KilopascalGauge.Find("atm gauge")).Of(1), units.Atmosphere{})
		if err != nil || n != want {
			t.Errorf("%g ppm: %d rounds, want %d, %v", x, n, want, err)
		}
	}
}
