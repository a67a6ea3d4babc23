package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// By hand: water-like drink at 20 °C, 5 g/L wanted, 20 L with 4 L over it. The gas for
// the drink is 20·(5 − c(1 atm)), for the head-space that of two densities.
func TestSpund(t *testing.T) {
	l := liquid(t, 4.6, 0.5)
	f := carbonation.Fermenter{Drink: litre(20), Headspace: litre(4), Rating: barGauge(3)}
	y := gravity.SugarWashYield(gravity.AsSucrose)
	s := ok[carbonation.Spunding](t)(l.Spund(gramsCO2(5), f, y, celsius(20), units.Atmosphere{}))
	held := ok[units.CarbonDioxideContent](t)(l.Content(s.Pressure, celsius(20)))
	close(t, "content at the setting", held.In(units.GramCO2PerLitre), 5, 1e-9)
	near(t, "gauge", s.Valve.In(units.KilopascalGauge), s.Pressure.In(units.Kilopascal)-101.325, 1e-9)
	had := ok[units.CarbonDioxideContent](t)(l.Content(kpa(101.325), celsius(20))).In(units.GramCO2PerLitre)
	v := vapours(t, l, 20)
	rho := func(p float64) float64 {
		return ok[units.Density](t)(carbonation.GasDensity(kpa(p-v), celsius(20))).In(units.KilogramPerCubicMetre)
	}
	want := 20*(5-had) + 4*(rho(s.Pressure.In(units.Kilopascal))-rho(101.325))
	close(t, "CO2", s.CO2.In(units.Gram), want, 1e-9)
	close(t, "extract", s.Extract.In(units.GramPerLitre), want/20/y.CO2().In(units.Fraction), 1e-9)
	near(t, "about 2.3 g/L of extract a volume", s.Extract.In(units.GramPerLitre), 9.0, 1)
	if s.Verdict != carbonation.WithinRating || !s.Cautions.Has(carbonation.PressureVessel) || !s.Cautions.Has(carbonation.SugarCanFerment) {
		t.Errorf("%v %v", s.Verdict, s.Cautions)
	}
	f.Rating = barGauge(1)
	s = ok[carbonation.Spunding](t)(l.Spund(gramsCO2(5), f, y, celsius(20), units.Atmosphere{}))
	if s.Verdict != carbonation.OverRating || !s.Cautions.Has(carbonation.OverRatingCaution) {
		t.Errorf("over: %v %v", s.Verdict, s.Cautions)
	}
	f.Rating = units.GaugePressure{}
	s = ok[carbonation.Spunding](t)(l.Spund(gramsCO2(5), f, y, celsius(20), units.Atmosphere{}))
	if s.Verdict != carbonation.Unrated || !s.Cautions.Has("no_rating") {
		t.Errorf("unrated: %v %v", s.Verdict, s.Cautions)
	}
	for quantity, g := range map[string]carbonation.Fermenter{
		"volume of the drink": {Headspace: litre(4)}, "head-space": {Drink: litre(1), Headspace: litre(1001)}, "rating": {Drink: litre(1), Rating: barGauge(-1)},
	} {
		_, err := l.Spund(gramsCO2(5), g, y, celsius(20), units.Atmosphere{})
		refused(t, quantity, err, quantity)
	}
	_, err := l.Spund(gramsCO2(5), f, gravity.Yield{}, celsius(20), units.Atmosphere{})
	refused(t, "yield", err, "CO2 yield")
	_, err = l.Spund(gramsCO2(0.5), f, y, celsius(20), units.Atmosphere{})
	refused(t, "setting", err, "valve setting")
	_, err = l.Spund(gramsCO2(500), f, y, celsius(20), units.Atmosphere{})
	refused(t, "content", err, "content")
}

// By hand, 20 to 2 °C: CO2 of 98.986 kPa (1 atm less 2.339 kPa of water) in 10 L has
// at 100.62 kPa (0.706 kPa of water) 10·(98.986/100.62)·(275.15/293.15)·(0.99346/0.99480) =
// 9.221 L; 20 L of water at 20 °C shrink by 0.035 L.
func TestCrash(t *testing.T) {
	water := ok2(carbonation.DrinkOf(volPct(0), plato(0)))
	f := carbonation.Fermenter{Drink: litre(20), Headspace: litre(10)}
	r := ok[carbonation.ColdCrash](t)(f.Crash(water, celsius(20), celsius(2), units.Atmosphere{}))
	near(t, "at once", r.AtOnce.In(units.Litre), 10-9.221+0.035, 0.002)
	// At rest the cold water takes up CO2: all of it is 20·1.690·0.977 + 10·1.80 g.
	if r.AtRest.Compare(r.AtOnce) <= 0 || !r.Cautions.Has("air_drawn_in") {
		t.Errorf("at rest %v, at once %v, %v", r.AtRest, r.AtOnce, r.Cautions)
	}
	// What is at rest is in balance: contents of drink and head-space add up.
	l := ok[carbonation.Liquid](t)(carbonation.NewLiquid(water))
	before := 20*ok[units.CarbonDioxideContent](t)(l.Content(kpa(101.325), celsius(20))).In(units.GramCO2PerLitre) +
		10*ok[units.Density](t)(carbonation.GasDensity(kpa(101.325-vapours(t, l, 20)), celsius(20))).In(units.KilogramPerCubicMetre)
	room := 10 + 20*(1-998.206/999.943)
	// The CO2 above it is what keeps the content; the rest of the pressure is air.
	p := ok[units.AbsolutePressure](t)(l.Pressure(r.Content, celsius(2))).In(units.Kilopascal) - vapours(t, l, 2)
	air := 101.325 - vapours(t, l, 2) - p
	// Air in water at 2 °C: 22.03e-6 mole fraction for 1 bar, between 23.20 at 0 and 20.53
	// at 5 °C (Hyland & Wexler, J. Res. Natl. Bur. Stand. 77A (1973) 133, table 3).
	moles := air * (room/(8.314463*275.15) + 22.03e-8*20*998.206/18.015)
	close(t, "air", r.AtRest.In(units.Litre), moles*8.314463*275.15/101.325, 0.005)
	after := 20*r.Content.In(units.GramCO2PerLitre) + room*ok[units.Density](t)(carbonation.GasDensity(kpa(p), celsius(2))).In(units.KilogramPerCubicMetre)
	close(t, "CO2", after, before, 2e-4)
	close(t, "oxygen", r.Oxygen.In(units.Gram), 31.998*0.209476*101.325*r.AtRest.In(units.Litre)/(8.314463*275.15), 1e-6)
	close(t, "oxygen in the drink", r.OxygenPerLitre.In(units.MilligramPerLitre), 50*r.Oxygen.In(units.Gram), 1e-9)
	full := 20*ok[units.CarbonDioxideContent](t)(l.Content(kpa(101.325), celsius(2))).In(units.GramCO2PerLitre) +
		room*ok[units.Density](t)(carbonation.GasDensity(kpa(101.325-vapours(t, l, 2)), celsius(2))).In(units.KilogramPerCubicMetre)
	close(t, "CO2 to fill", r.CO2ToFill.In(units.Gram), full-before, 1e-4)

	same := ok[carbonation.ColdCrash](t)(f.Crash(water, celsius(10), celsius(10), units.Atmosphere{}))
	near(t, "not cooled", same.AtRest.In(units.Litre)+same.AtOnce.In(units.Litre)+same.CO2ToFill.In(units.Gram), 0, 1e-6)
	for quantity, call := range map[string]func() error{
		// Below 4 °C water grows again: with no room it runs over, and takes in no air.
		"head-space in the cold": func() error {
			_, err := carbonation.Fermenter{Drink: litre(20), Headspace: litre(0.001)}.Crash(water, celsius(4), celsius(0), units.Atmosphere{})
			return err
		},
		"warm temperature": func() error {
			_, err := f.Crash(water, celsius(41), celsius(2), units.Atmosphere{})
			return err
		},
		"cold temperature": func() error {
			_, err := f.Crash(water, celsius(2), celsius(3), units.Atmosphere{})
			return err
		},
		"volume of the drink": func() error {
			_, err := carbonation.Fermenter{Headspace: litre(1)}.Crash(water, celsius(20), celsius(2), units.Atmosphere{})
			return err
		},
		"head-space": func() error {
			_, err := carbonation.Fermenter{Drink: litre(1)}.Crash(water, celsius(20), celsius(2), units.Atmosphere{})
			return err
		},
	} {
		refused(t, quantity, call(), quantity)
	}
}

// By hand: wort of 1.048 (11.91 °P, 124.6 g/L at 20 °C), 75 % fermentable: 93.4 g/L of
// sugar, 48.05 g/L of CO2; 20 L from 1.6 to 5 g/L take 20·3.4/(48.05 − 5) = 1.580 L.
func TestPrimeWithWort(t *testing.T) {
	wort := ok[gravity.Gravity](t)(gravity.FromSG(1.048))
	p := ok[carbonation.WortPriming](t)(carbonation.PrimeWithWort(wort, percent(75), gramsCO2(5), gramsCO2(1.6), units.MassConcentration{}, litre(20)))
	near(t, "volume", p.Volume.In(units.Litre), 1.580, 0.004)
	near(t, "made", p.Made.In(units.GramCO2PerLitre), 48.05, 0.1)
	near(t, "mixed", p.Mixed.In(units.Litre), 21.580, 0.004)
	near(t, "final", p.Final.In(units.GramCO2PerLitre), 5, 1e-9)
	near(t, "sugar", p.Fermenting.In(units.GramPerLitre)*0.51428*p.Mixed.In(units.Litre), (5*p.Mixed.In(units.Litre) - 1.6*20), 1e-2)
	left := ok[carbonation.WortPriming](t)(carbonation.PrimeWithWort(wort, percent(75), gramsCO2(5), gramsCO2(1.6), gramsPerLitre(2), litre(20)))
	near(t, "with sugar left", left.Volume.In(units.Litre), 20*(3.4-1.0286)/(48.05-5), 0.004)
	near(t, "final", left.Final.In(units.GramCO2PerLitre), 5, 1e-9)
	none := ok[carbonation.WortPriming](t)(carbonation.PrimeWithWort(wort, percent(75), gramsCO2(5), gramsCO2(6), units.MassConcentration{}, litre(20)))
	if !none.Volume.IsZero() || !none.Cautions.Has("no_sugar_needed") {
		t.Errorf("%v %v", none.Volume, none.Cautions)
	}
	_, err := carbonation.PrimeWithWort(gravity.Gravity{}, percent(75), gramsCO2(5), gramsCO2(1.6), units.MassConcentration{}, litre(20))
	refused(t, "water", err, "gravity of the wort")
	_, err = carbonation.PrimeWithWort(wort, percent(0.5), gramsCO2(5), gramsCO2(1.6), units.MassConcentration{}, litre(20))
	refused(t, "share", err, "fermentable share")
	_, err = carbonation.PrimeWithWort(ok[gravity.Gravity](t)(gravity.FromSG(1.004)), percent(75), gramsCO2(5), gramsCO2(1.6),
		units.MassConcentration{}, litre(20))
	refused(t, "thin", err, "CO2 from the wort")
	_, err = carbonation.PrimeWithWort(wort, percent(75), gramsCO2(16), gramsCO2(1.6), units.MassConcentration{}, litre(20))
	refused(t, "target", err, "target")
}

func step(t tester, text string) units.ExactMass {
	return ok[units.ExactMass](t)(units.ParseExact[units.Mass](text))
}

// By hand: 4 g/L of CO2 from sucrose is 7.7779 g/L: 2.5667 g in 0.33 L, 5.8334 g in 0.75 L.
func TestSpread(t *testing.T) {
	p := ok[carbonation.Priming](t)(carbonation.PrimingSugar(material.Sucrose(), gramsCO2(5.6), gramsCO2(1.6), units.MassConcentration{}, litre(20)))
	s := ok[carbonation.Spread](t)(p.Spread([]carbonation.Bottles{{Fill: litre(0.33), Count: 40}, {Fill: litre(0.75), Count: 9}}, step(t, "0.1 g")))
	for i, want := range []string{"2.5 g", "5.8 g"} {
		if got := s.Doses[i].Each.String(); got != want {
			t.Errorf("dose %d: %s, want %s", i, got, want)
		}
	}
	if s.Total.String() != "152.2 g" || s.Batch.String() != "155.1 g" {
		t.Errorf("total %v, batch %v", s.Total, s.Batch)
	}
	near(t, "volume", s.Volume.In(units.Litre), 19.95, 1e-9)
	near(t, "content", s.Doses[0].Content.In(units.GramCO2PerLitre), 1.6+0.51428*2.5/0.33, 1e-4)
	if s.Cautions.Has("uneven_spread") || !s.Cautions.Has(carbonation.PressureVessel) {
		t.Errorf("%v", s.Cautions)
	}
	coarse := ok[carbonation.Spread](t)(p.Spread([]carbonation.Bottles{{Fill: litre(0.33), Count: 40}}, step(t, "0.5 g")))
	if !coarse.Cautions.Has("uneven_spread") {
		t.Errorf("half a gram on 2.6 g: %v", coarse.Cautions)
	}
	for quantity, b := range map[string][]carbonation.Bottles{
		"number of sizes": nil, "filled volume": {{Count: 1}}, "number of bottles": {{Fill: litre(1)}},
	} {
		_, err := p.Spread(b, step(t, "0.1 g"))
		refused(t, quantity, err, quantity)
	}
	if _, err := p.Spread([]carbonation.Bottles{{Fill: litre(1), Count: 1}}, units.ExactMass{}); err == nil {
		t.Error("a step of nothing")
	}
	// The zero Priming spreads nothing.
	z := ok[carbonation.Spread](t)(carbonation.Priming{}.Spread([]carbonation.Bottles{{Fill: litre(1), Count: 1}}, step(t, "1 g")))
	if z.Batch.Decimal().Sign() != 0 {
		t.Errorf("%v", z.Batch)
	}
}

// No bottle passes the content asked for, and none falls short by more than a step.
func TestSpreadNeverOver(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		target := rapid.Float64Range(2, 8).Draw(t, "target")
		v := rapid.Float64Range(0.2, 2).Draw(t, "bottle")
		p := ok[carbonation.Priming](t)(carbonation.PrimingSugar(material.DextroseMonohydrate(), gramsCO2(target), gramsCO2(1.5),
			units.MassConcentration{}, litre(20)))
		s := ok[carbonation.Spread](t)(p.Spread([]carbonation.Bottles{{Fill: litre(v), Count: 3}}, step(t, "0.1 g")))
		got := s.Doses[0].Content.In(units.GramCO2PerLitre)
		if got > target*(1+1e-12) || got < target-0.1*0.445/v {
			t.Errorf("%g g/L of %g", got, target)
		}
	})
}

func yield(t tester) gravity.Yield {
	t.Helper()
	return gravity.SugarWashYield(gravity.AsSucrose)
}

func wortOf(t tester, sg float64) gravity.Gravity {
	t.Helper()
	return ok[gravity.Gravity](t)(gravity.FromSG(sg))
}
