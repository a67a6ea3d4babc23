package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/check"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

func bottle() carbonation.Vessel {
	return carbonation.Vessel{Capacity: units.Millilitre.Of(345), Rating: units.BarGauge.Of(7)}
}

func filling(content float64) carbonation.Filling {
	return carbonation.Filling{Volume: units.Millilitre.Of(330), Temperature: units.Celsius.Of(4), Content: gramsCO2(content),
		AtRest: true, AirRemoved: percent(100)}
}

func closed(t tester, v carbonation.Vessel, f carbonation.Filling) carbonation.ClosedVessel {
	t.Helper()
	return ok[carbonation.ClosedVessel](t)(v.Close(seltzer(t), f, units.Atmosphere{}))
}

func at(t tester, c carbonation.ClosedVessel, temperature float64) carbonation.PackState {
	t.Helper()
	return ok[carbonation.PackState](t)(c.At(celsius(temperature)))
}

// A bottle filled at rest and kept at its temperature is as it was: the pressure is
// that of its content.
func TestClosedVesselStaysAsFilled(t *testing.T) {
	l := ok[carbonation.Liquid](t)(carbonation.NewLiquid(seltzer(t)))
	want := ok[units.AbsolutePressure](t)(l.Pressure(gramsCO2(5.7), celsius(4))).In(units.Kilopascal)
	p := at(t, closed(t, bottle(), filling(5.7)), 4)
	close(t, "pressure", p.Pressure.In(units.Kilopascal), want, 1e-9)
	close(t, "content", p.Content.In(units.GramCO2PerLitre), 5.7, 1e-9)
	near(t, "head-space", p.HeadspaceShare.In(units.Percent), 100*15./345, 1e-6)
}

// By hand at 40 °C with a large head-space: 100 mL of water at 20 °C in 200 mL, 5 g/L
// and no air. The gas balance n = c·V + p·Vh/(Z·R·T) with c = K·f.
func TestClosedVesselByHand(t *testing.T) {
	water := ok2(carbonation.DrinkOf(volPct(0), plato(0)))
	c := ok[carbonation.ClosedVessel](t)(carbonation.Vessel{Capacity: units.Millilitre.Of(200)}.Close(water, carbonation.Filling{
		Volume: units.Millilitre.Of(100), Temperature: units.Celsius.Of(20), Content: gramsCO2(5), AirRemoved: percent(100)}, units.Atmosphere{}))
	l := ok[carbonation.Liquid](t)(carbonation.NewLiquid(water))
	// Its gas is 32.3 mL/mol of the 100 mL: 99.634 mL without it.
	const bare = 100 / (1 + 32.3e-3*5/44.009)
	// Shut at 1 atm less 2.339 kPa of vapour: 98.986 kPa of CO2 in 100 mL at 20 °C, Z = 0.99483.
	shut := 44.009 * 98.986 * 0.1 / (8.314463 * 293.15 * 0.99483)
	close(t, "CO2", c.CO2().In(units.Gram), bare*0.005+shut, 2e-5)
	p := at(t, c, 40)
	// Water at 20 °C grows by 998.206/992.216 to 40 °C; its gas swells it by 32.3 mL/mol.
	swell := 32.3 * p.InLiquid.In(units.Gram) / 44.009
	near(t, "head-space, mL", p.Headspace.In(units.Millilitre), 200-bare*1.00604-swell, 0.002)
	co2 := p.CO2.In(units.Kilopascal)
	rho := ok[units.Density](t)(carbonation.GasDensity(p.CO2, celsius(40))).In(units.KilogramPerCubicMetre)
	close(t, "in the head-space", p.InSpace.In(units.Gram), rho*p.Headspace.In(units.Litre), 1e-9)
	held := ok[units.CarbonDioxideContent](t)(l.Content(p.Pressure, celsius(40))).In(units.GramCO2PerLitre)
	close(t, "content", p.Content.In(units.GramCO2PerLitre), held, 1e-12)
	near(t, "pressures add up", p.Pressure.In(units.Kilopascal), co2+p.Vapours.In(units.Kilopascal)+p.Air.In(units.Kilopascal), 1e-9)
	near(t, "vapour", p.Vapours.In(units.Kilopascal), 7.38, 0.01)
}

// CO2 is conserved to 1e-10 at every temperature, with air, stretch and sugar.
func TestClosedVesselConservesCO2(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		v := carbonation.Vessel{
			Capacity:           litre(0.5),
			StretchPerBar:      percent(rapid.Float64Range(0, 0.5).Draw(t, "stretch")),
			ExpansionPerKelvin: percent(rapid.Float64Range(0, 0.01).Draw(t, "expansion")),
		}
		f := carbonation.Filling{
			Volume:      litre(rapid.Float64Range(0.05, 0.48).Draw(t, "fill")),
			Temperature: celsius(rapid.Float64Range(0, 25).Draw(t, "filled at")),
			Content:     gramsCO2(rapid.Float64Range(0, 7).Draw(t, "content")),
			AtRest:      rapid.Bool().Draw(t, "at rest"),
			Air:         percent(rapid.Float64Range(0, 100).Draw(t, "air")),
			AirRemoved:  percent(rapid.Float64Range(0, 100).Draw(t, "air removed")),
			Priming:     gramsPerLitre(rapid.Float64Range(0, 8).Draw(t, "priming")),
		}
		c := closed(t, v, f)
		p := at(t, c, rapid.Float64Range(-2, 90).Draw(t, "celsius"))
		if p.AtLeast {
			return
		}
		close(t, "CO2", p.InLiquid.In(units.Gram)+p.InSpace.In(units.Gram), c.CO2().In(units.Gram), 1e-10)
		near(t, "pressures", p.CO2.In(units.Kilopascal)+p.Air.In(units.Kilopascal)+p.Vapours.In(units.Kilopascal), p.Pressure.In(units.Kilopascal),
			1e-9*p.Pressure.In(units.Kilopascal))
	})
}

// The pressure rises with temperature, content, air and sugar; it falls with
// stretch, thermal growth and head-space of a bottle warmed up.
func TestClosedVesselDirections(t *testing.T) {
	last := 0.0
	c := closed(t, bottle(), filling(5.7))
	for k := range 90 {
		g := at(t, c, float64(k)).Gauge.In(units.BarGauge)
		if g <= last {
			t.Fatalf("pressure does not rise at %d °C", k)
		}
		last = g
		if g > 18 {
			break
		}
	}
	gauge := func(v carbonation.Vessel, f carbonation.Filling) float64 {
		return at(t, closed(t, v, f), 40).Gauge.In(units.BarGauge)
	}
	plain := gauge(bottle(), filling(5.7))
	for what, g := range map[string]float64{
		"content": gauge(bottle(), filling(6)),
		"air":     gauge(bottle(), func() carbonation.Filling { f := filling(5.7); f.Air = percent(50); return f }()),
		"priming": gauge(bottle(), func() carbonation.Filling { f := filling(5.7); f.Priming = gramsPerLitre(1); return f }()),
		"fill":    gauge(bottle(), func() carbonation.Filling { f := filling(5.7); f.Volume = units.Millilitre.Of(336); return f }()),
	} {
		if g <= plain {
			t.Errorf("more %s: %g bar, not above %g", what, g, plain)
		}
	}
	for what, v := range map[string]carbonation.Vessel{
		"stretch":  {Capacity: units.Millilitre.Of(345), StretchPerBar: percent(0.2)},
		"growth":   {Capacity: units.Millilitre.Of(345), ExpansionPerKelvin: percent(0.003)},
		"capacity": {Capacity: units.Millilitre.Of(355)},
	} {
		if g := gauge(v, filling(5.7)); g >= plain {
			t.Errorf("more %s: %g bar, not below %g", what, g, plain)
		}
	}
}

// Air alone: a bottle of flat water with 10 % head-space, shut at 20 °C and 1 atm,
// follows the gas law in the room that the water leaves, and gives off the air that warm
// water does not hold. Air in water: mole fractions for 1 bar at 20 and 50 °C, R. W.
// Hyland & A. Wexler, J. Res. Natl. Bur. Stand. 77A (1973) 133, table 3 (read); water
// 998.206 and 988.035 kg/m³, its vapour 2.339 and 12.352 kPa.
func TestClosedVesselAirAlone(t *testing.T) {
	water := ok2(carbonation.DrinkOf(volPct(0), plato(0)))
	c := ok[carbonation.ClosedVessel](t)(carbonation.Vessel{Capacity: litre(1)}.Close(water, carbonation.Filling{
		Volume: litre(0.9), Temperature: celsius(20), Air: percent(100)}, units.Atmosphere{}))
	p := at(t, c, 50)
	const held20, held50 = 14.93e-8, 10.44e-8 // for 1 kPa
	const mol = 0.9 * 998.206 / 18.015        // of water
	space := 1 - 0.9*998.206/988.035
	shut := (101.325 - 2.339) * (0.1/(8.314463*293.15) + held20*mol)
	want := shut / (space/(8.314463*323.15) + held50*mol)
	close(t, "air", p.Air.In(units.Kilopascal), want, 0.005)
	near(t, "vapour", p.Vapours.In(units.Kilopascal), 12.352, 0.005)
	gone := at(t, closed(t, carbonation.Vessel{Capacity: litre(1)}, carbonation.Filling{
		Volume: litre(0.9), Temperature: celsius(20), Air: percent(100), AirRemoved: percent(100)}), 50)
	if gone.Air.Compare(p.Air) >= 0 {
		t.Errorf("a drink without air: %v of air, not below %v", gone.Air, p.Air)
	}
	if !p.InLiquid.IsZero() || !p.InSpace.IsZero() {
		t.Error("CO2 out of nothing")
	}
	if !p.Cautions.Has("trapped_air") {
		t.Error("no caution of air")
	}
}

func TestVerdicts(t *testing.T) {
	c := closed(t, bottle(), filling(6.5))
	cold, hot := at(t, c, 10), at(t, c, 60)
	if cold.Verdict != carbonation.WithinRating || cold.Cautions.Has(carbonation.OverRatingCaution) {
		t.Errorf("cold: %v %v at %v", cold.Verdict, cold.Cautions, cold.Gauge)
	}
	// An over-rating result carries its caution in the type.
	if hot.Verdict != carbonation.OverRating || !hot.Cautions.Has(carbonation.OverRatingCaution) || hot.Gauge.Compare(hot.Rating) <= 0 {
		t.Errorf("hot: %v %v at %v", hot.Verdict, hot.Cautions, hot.Gauge)
	}
	if !hot.Cautions.Has(carbonation.HotVessel) || cold.Cautions.Has(carbonation.HotVessel) {
		t.Error("caution of heat")
	}
	unrated := at(t, closed(t, carbonation.Vessel{Capacity: units.Millilitre.Of(345)}, filling(1)), 4)
	if unrated.Verdict != carbonation.Unrated || !unrated.Cautions.Has("no_rating") {
		t.Errorf("without a rating: %v %v", unrated.Verdict, unrated.Cautions)
	}
	for _, p := range []carbonation.PackState{cold, hot, unrated} {
		if !p.Cautions.Has(carbonation.PressureVessel) {
			t.Error("no caution of pressure vessels")
		}
	}
}

// At the rating itself the verdict is within, just above it over.
func TestVerdictAtTheRating(t *testing.T) {
	f := filling(5.7)
	g := at(t, closed(t, bottle(), f), 30).Gauge
	v := bottle()
	v.Rating = g
	if p := at(t, closed(t, v, f), 30); p.Verdict != carbonation.WithinRating {
		t.Errorf("at the rating: %v", p.Verdict)
	}
	v.Rating = g.Minus(check.Must(units.KilopascalGauge.Find("mbar gauge")).Of(1))
	if p := at(t, closed(t, v, f), 30); p.Verdict != carbonation.OverRating {
		t.Errorf("over the rating: %v", p.Verdict)
	}
}

func TestHydraulicLock(t *testing.T) {
	f := filling(5.7)
	f.Volume = units.Millilitre.Of(341)
	c := closed(t, bottle(), f)
	p := at(t, c, 60)
	if p.Verdict != carbonation.Locked || !p.AtLeast || !p.Cautions.Has(carbonation.HydraulicLock) {
		t.Errorf("full of liquid: %v %v %v", p.Verdict, p.AtLeast, p.Cautions)
	}
	// Between: a head-space of less than 2 %.
	f.Volume = units.Millilitre.Of(338.3)
	p = at(t, closed(t, bottle(), f), 4)
	if !p.Cautions.Has(carbonation.LittleHeadspace) || p.AtLeast {
		t.Errorf("little head-space: %v", p.Cautions)
	}
	if q := at(t, closed(t, bottle(), filling(5.7)), 4); q.Cautions.Has(carbonation.LittleHeadspace) {
		t.Errorf("enough head-space: %v of %v", q.Cautions, q.HeadspaceShare)
	}
}

// More than 20 bar: no figure, and not an error either.
func TestBeyondComputed(t *testing.T) {
	f := filling(14)
	v := bottle()
	v.Rating = units.BarGauge.Of(25)
	p := at(t, closed(t, v, f), 60)
	if p.Verdict != carbonation.BeyondComputed || !p.AtLeast || !p.Cautions.Has(carbonation.AboveComputed) {
		t.Errorf("beyond: %v %v", p.Verdict, p.Cautions)
	}
	near(t, "at least", p.Pressure.In(units.Kilopascal), 2000, 1e-9)
	p = at(t, closed(t, bottle(), f), 60)
	if p.Verdict != carbonation.OverRating {
		t.Errorf("beyond and over: %v", p.Verdict)
	}
}

// A state is beyond what is computed from 20 bar on, no sooner.
func TestBeyondFromTheHighest(t *testing.T) {
	last := 0.0
	for content := 12.0; content < 14; content += 0.005 {
		p := at(t, closed(t, bottle(), filling(content)), 60)
		if p.AtLeast {
			near(t, "the last one before", last, 2000, 3)
			return
		}
		last = p.Pressure.In(units.Kilopascal)
	}
	t.Errorf("not beyond at %g kPa", last)
}

func TestWorstCase(t *testing.T) {
	f := filling(5.7)
	f.SugarLeft = gramsPerLitre(12)
	c := closed(t, bottle(), f)
	p, w := at(t, c, 25), ok[carbonation.PackState](t)(c.Worst(celsius(25)))
	if p.Verdict != carbonation.WithinRating || !p.Cautions.Has(carbonation.SugarCanFerment) || !p.Cautions.Has("worst_over_rating") {
		t.Errorf("as it is: %v %v", p.Verdict, p.Cautions)
	}
	if w.Verdict != carbonation.OverRating {
		t.Errorf("worst: %v at %v", w.Verdict, w.Gauge)
	}
	close(t, "CO2", w.InLiquid.In(units.Gram)+w.InSpace.In(units.Gram), c.CO2().In(units.Gram)+12*0.51428*0.33*(1.0022/1.0013)/(1+32.3e-3*5.7/44.009), 1.5e-3)
	f.Priming, f.SugarLeft = gramsPerLitre(12), units.MassConcentration{}
	q := at(t, closed(t, bottle(), f), 25)
	near(t, "as priming", q.Gauge.In(units.BarGauge), w.Gauge.In(units.BarGauge), 1e-9)
	if q.Cautions.Has(carbonation.SugarCanFerment) {
		t.Error("priming is meant to ferment")
	}
}

// The gauge at an altitude shows more for the same bottle shut at sea level's pressure.
func TestGaugeAtAltitude(t *testing.T) {
	air := ok[units.Atmosphere](t)(units.AtAltitude(metre(1500)))
	f := filling(5.7)
	c := ok[carbonation.ClosedVessel](t)(bottle().Close(seltzer(t), f, air))
	low, high := at(t, closed(t, bottle(), f), 20), at(t, c, 20)
	near(t, "gauge", high.Gauge.In(units.KilopascalGauge)-low.Gauge.In(units.KilopascalGauge), 101.325-84.556, 0.01)
}

func TestCloseRefuses(t *testing.T) {
	s := seltzer(t)
	for quantity, change := range map[string]func(*carbonation.Vessel, *carbonation.Filling){
		"capacity":                   func(v *carbonation.Vessel, _ *carbonation.Filling) { v.Capacity = units.Volume{} },
		"rating":                     func(v *carbonation.Vessel, _ *carbonation.Filling) { v.Rating = units.BarGauge.Of(-1) },
		"stretch":                    func(v *carbonation.Vessel, _ *carbonation.Filling) { v.StretchPerBar = percent(5.1) },
		"thermal expansion":          func(v *carbonation.Vessel, _ *carbonation.Filling) { v.ExpansionPerKelvin = percent(0.11) },
		"air in the head-space":      func(_ *carbonation.Vessel, f *carbonation.Filling) { f.Air = percent(100.1) },
		"air removed from the drink": func(_ *carbonation.Vessel, f *carbonation.Filling) { f.AirRemoved = percent(-0.1) },
		"filling temperature":        func(_ *carbonation.Vessel, f *carbonation.Filling) { f.Temperature = units.Celsius.Of(41) },
		"priming":                    func(_ *carbonation.Vessel, f *carbonation.Filling) { f.Priming = gramsPerLitre(301) },
		"sugar left":                 func(_ *carbonation.Vessel, f *carbonation.Filling) { f.SugarLeft = gramsPerLitre(301) },
		"volume of liquid":           func(_ *carbonation.Vessel, f *carbonation.Filling) { f.Volume = units.Millilitre.Of(346) },
		"content":                    func(_ *carbonation.Vessel, f *carbonation.Filling) { f.Content = gramsCO2(500) },
	} {
		v, f := bottle(), filling(5.7)
		change(&v, &f)
		_, err := v.Close(s, f, units.Atmosphere{})
		refused(t, quantity, err, quantity)
	}
	c := closed(t, bottle(), filling(5.7))
	for _, x := range []float64{-2.1, 90.1} {
		_, err := c.At(celsius(x))
		refused(t, "state", err, "temperature")
		_, err = c.Worst(celsius(x))
		refused(t, "worst", err, "temperature")
	}
}

// A bottle that stretches does not shrink below its size under a vacuum: closed at 20 °C with 10 mL of air over a litre that
// holds none, it takes air up and cools, and its pressure falls below that outside. By hand: 10 mL at 0.99 bar are 9.1 mL at 0 °C and
// 1 atm; at 5 °C a litre takes 25.5 of them for an atm (Bunsen's coefficients, 0.0209 for nitrogen and 0.0428 for oxygen, recalled
// from memory), and the room, 11.7 mL by then, 11.5.
func TestStretchUnderVacuum(t *testing.T) {
	v := carbonation.Vessel{Capacity: units.Millilitre.Of(1010), StretchPerBar: percent(5), Rating: units.BarGauge.Of(3)}
	f := carbonation.Filling{Volume: units.Litre.Of(1), Temperature: celsius(20), Air: percent(100), AirRemoved: percent(100)}
	c, err := v.Close(seltzer(t), f, units.Atmosphere{})
	if err != nil {
		t.Fatal(err)
	}
	p := ok[carbonation.PackState](t)(c.At(celsius(5)))
	if p.AtLeast || p.Verdict != carbonation.WithinRating {
		t.Errorf("%v, at least %v, %v", p.Gauge, p.AtLeast, p.Verdict)
	}
	near(t, "bar absolute", p.Pressure.In(units.Bar), 9.1/(25.5+11.5)*1.013+0.009, 0.02)
}
