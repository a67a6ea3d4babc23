package carbonation_test

import (
	"fmt"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

func solution(t *testing.T, ethanol, extract float64) gravity.Solution {
	t.Helper()
	kg := func(pct float64) units.Mass { return units.Kilogram.Of(checked.Number(pct / 100)) }
	return ok[gravity.Solution](t)(gravity.NewSolution(kg(100-ethanol-extract), kg(extract), kg(ethanol)))
}

// Ethanol: Lange's Handbook of Chemistry, table 5.13, compositions of aqueous antifreeze
// solutions (read; printed to 1 °C for the first rows, in % mass). Sucrose: 3.42 g in 100 g
// freeze at −0.185 °C (W. Ramsay, Modern Chemistry; read); 10 % at −0.63, 20 % at −1.47
// (CRC Handbook; recalled from memory).
func TestFreezingPoint(t *testing.T) {
	for _, row := range []struct{ ethanol, sugar, c, within float64 }{
		{0, 0, 0, 0},
		{2.5, 0, -1.0, 0.05}, {4.8, 0, -2.0, 0.05}, {6.8, 0, -3.0, 0.13}, {11.3, 0, -5.0, 0.1}, {13.8, 0, -6.1, 0.2},
		{0, 3.42, -0.185, 0.01}, {0, 10, -0.63, 0.05}, {0, 20, -1.47, 0.15},
	} {
		got := ok[units.Temperature](t)(carbonation.FreezingPoint(solution(t, row.ethanol, row.sugar)))
		near(t, "freezing point", got.In(units.Celsius), row.c, row.within)
	}
	// The cryoscopic constant of water, 1.860 K·kg/mol (handbooks; recalled from memory).
	small := ok[units.Temperature](t)(carbonation.FreezingPoint(solution(t, 0.046069, 0)))
	near(t, "constant", small.In(units.Celsius), -1.860*0.01, 3e-5)
	// By hand, 10 % of ethanol: 8.314462618·273.15²/6007 = 103.2711; 0.217066/4.995837 mol,
	// ln 1.043449 = 0.0425319.
	near(t, "by hand", ok[units.Temperature](t)(carbonation.FreezingPoint(solution(t, 10, 0))).In(units.Celsius), -4.39232, 2e-4)
	_, err := carbonation.FreezingPoint(gravity.Solution{})
	refused(t, "nothing", err, "mass")
}

// A bottle of a 4.6 % vol drink (−1.5 °C) at −2 °C, far below its rating, is not "within the
// rating given": ice needs a twelfth more room (density of ice 917 kg/m³, of water 1000).
func TestFreezingPack(t *testing.T) {
	v := carbonation.Vessel{Capacity: units.Millilitre.Of(345), Rating: barGauge(8)}
	c := ok[carbonation.ClosedVessel](t)(v.Close(seltzer(t), carbonation.Filling{
		Volume: units.Millilitre.Of(330), Temperature: celsius(4), Content: gramsCO2(5.7), AtRest: true,
	}, units.Atmosphere{}))
	freezes := ok[units.Temperature](t)(carbonation.FreezingPoint(seltzer(t))).In(units.Celsius)
	near(t, "freezing point", freezes, -1.5, 0.1)
	for _, row := range []struct {
		c       float64
		verdict carbonation.Verdict
	}{{-2, carbonation.MayFreeze}, {freezes - 0.001, carbonation.MayFreeze}, {freezes + 0.001, carbonation.WithinRating}} {
		p := ok[carbonation.PackState](t)(c.At(celsius(row.c)))
		if p.Verdict != row.verdict || p.Cautions.Has(carbonation.Freezing) != (row.verdict == carbonation.MayFreeze) {
			t.Errorf("%g °C: %v, %v", row.c, p.Verdict, p.Cautions)
		}
	}
	v.Rating = units.GaugePressure{}
	c = ok[carbonation.ClosedVessel](t)(v.Close(seltzer(t),
		carbonation.Filling{Volume: units.Millilitre.Of(330), Temperature: celsius(4), Content: gramsCO2(5.7)}, units.Atmosphere{}))
	if p := ok[carbonation.PackState](t)(c.At(celsius(-2))); p.Verdict != carbonation.Unrated || !p.Cautions.Has(carbonation.Freezing) {
		t.Errorf("no rating: %v, %v", p.Verdict, p.Cautions)
	}
}

// The same is said of whatever holds the drink: by the side of its freezing point only.
func TestFreezingIsSaid(t *testing.T) {
	l := liquid(t, 4.6, 0.5)
	freezes := ok[units.Temperature](t)(carbonation.FreezingPoint(seltzer(t))).In(units.Celsius)
	for _, row := range []struct {
		c   float64
		ice bool
	}{{freezes - 0.01, true}, {freezes + 0.01, false}} {
		verdict := carbonation.WithinRating
		if row.ice {
			verdict = carbonation.MayFreeze
		}
		at := celsius(row.c)
		is := func(what string, v carbonation.Verdict, c caution.List) {
			t.Helper()
			if v != verdict || c.Has(carbonation.Freezing) != row.ice {
				t.Errorf("%s at %g °C: %v, %v", what, row.c, v, c)
			}
		}
		keg := carbonation.Keg{Liquid: l, Temperature: at, Content: gramsCO2(1.6), Target: gramsCO2(5.8), Rate: carbonation.StillKeg(), Rating: barGauge(4)}
		k := ok[[]carbonation.KegOnRegulator](t)(carbonation.OnRegulator([]carbonation.Keg{keg}, barGauge(1), hour, units.Atmosphere{}))
		is("keg", k[0].Verdict, k[0].Cautions)
		b := ok[carbonation.Burst](t)(l.PlanBurst(gramsCO2(1.6), gramsCO2(5.5), barGauge(3), barGauge(4), carbonation.StillKeg(), at, units.Atmosphere{}))
		is("burst", b.Verdict, b.Cautions)
		f := carbonation.Fermenter{Drink: units.Litre.Of(40), Headspace: units.Litre.Of(10), Rating: barGauge(4)}
		s := ok[carbonation.Spunding](t)(l.Spund(gramsCO2(5), f, gravity.SugarWashYield(gravity.AsSucrose), at, units.Atmosphere{}))
		is("spunding", s.Verdict, s.Cautions)
		crash := ok[carbonation.ColdCrash](t)(f.Crash(seltzer(t), celsius(20), at, units.Atmosphere{}))
		is("crash", verdict, crash.Cautions)
		line := ok[carbonation.LineState](t)(carbonation.Line{Bore: millimetre(5)}.Balance(seltzer(t), at, barGauge(1), flow(2)))
		is("line", verdict, line.Cautions)
	}
}

// A drink of 4.6 % vol with 5 g/L of extract.
func ExampleFreezingPoint() {
	s, err := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.DegreePlato.Of(0.5))
	if err != nil {
		fmt.Println(err)
		return
	}
	t, err := carbonation.FreezingPoint(s)
	fmt.Println(t.Text(units.Celsius, 1), err)
	// Output: -1.6 °C <nil>
}
