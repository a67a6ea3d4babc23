package carbonation_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// sane reports a result that is neither a finite number nor a RangeError.
func sane(t *testing.T, what string, err error, values ...float64) {
	t.Helper()
	var e *units.RangeError
	if err != nil {
		if !errors.As(err, &e) {
			t.Errorf("%s: %v is no RangeError", what, err)
		}
		return
	}
	for _, v := range values {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			t.Errorf("%s: %v", what, v)
		}
	}
}

// Whatever the numbers, also NaN and infinities, every answer is finite or a
// RangeError.
func FuzzDrink(f *testing.F) {
	f.Add(4.0, 220.0, 4.6, 0.5, 5.7)
	f.Add(math.NaN(), math.Inf(1), -1.0, 1e300, 0.0)
	f.Add(-2.0, 0.5, 20.0, 30.0, 1e-300)
	f.Add(90.0, 2000.0, 0.0, 0.0, 60.0)
	f.Fuzz(func(t *testing.T, c, p, strength, extract, g float64) {
		s, err := carbonation.DrinkOf(volPct(strength), plato(extract))
		sane(t, "Drink", err, s.Mass().In(units.Kilogram))
		if err != nil {
			s = ok2(carbonation.DrinkOf(volPct(5), plato(1)))
		}
		l := ok[carbonation.Liquid](t)(carbonation.NewLiquid(s))
		content, err := l.Content(kpa(p), celsius(c))
		sane(t, "Content", err, content.In(units.GramCO2PerLitre))
		pressure, err := l.Pressure(gramsCO2(g), celsius(c))
		sane(t, "Pressure", err, pressure.In(units.Kilopascal))
		temperature, err := l.Temperature(gramsCO2(g), kpa(p))
		sane(t, "Temperature", err, temperature.In(units.Celsius))
		list, err := carbonation.Compare(s, kpa(p), celsius(c))
		sane(t, "Compare", err)
		for _, x := range list {
			sane(t, x.Method.String(), x.Err, x.Content.In(units.GramCO2PerLitre))
		}
		d, err := carbonation.GasDensity(kpa(p), celsius(c))
		sane(t, "GasDensity", err, d.In(units.KilogramPerCubicMetre))
		x, err := dioxide.MoleFraction(celsius(c), kpa(p))
		sane(t, "MoleFraction", err, x)
		sat, err := carbonation.SaturationTemperature(kpa(p))
		sane(t, "SaturationTemperature", err, sat.In(units.Celsius))
		mu, err := carbonation.Viscosity(s, celsius(c))
		sane(t, "Viscosity", err, mu.In(units.MillipascalSecond))
		blend, err := l.BlendFor(gramsCO2(g), kpa(p), celsius(c))
		sane(t, "BlendFor", err, blend.In(units.Percent))
	})
}

func FuzzPack(f *testing.F) {
	f.Add(345.0, 330.0, 18.0, 50.0, 1.5, 8.0, 0.0, 100.0, true)
	f.Add(1.0, 1.0, -2.0, 90.0, 15.0, 300.0, 300.0, 0.0, false)
	f.Add(math.Inf(1), math.NaN(), 1e9, -1e9, -1.0, 1e300, math.NaN(), 1e3, true)
	f.Fuzz(func(t *testing.T, capacity, fill, filled, now, g, priming, left, air float64, rest bool) {
		v := carbonation.Vessel{Capacity: litre(capacity / 1000), Rating: units.BarGauge.Of(6)}
		c, err := v.Close(seltzer(t), carbonation.Filling{
			Volume: litre(fill / 1000), Temperature: celsius(filled), Content: gramsCO2(g), AtRest: rest,
			Air: percent(air), Priming: gramsPerLitre(priming), SugarLeft: gramsPerLitre(left),
		}, units.Atmosphere{})
		sane(t, "Close", err, c.CO2().In(units.Gram))
		if err != nil {
			return
		}
		for what, state := range map[string]func(units.Temperature) (carbonation.PackState, error){"At": c.At,
			"Worst": func(t units.Temperature) (carbonation.PackState, error) { return c.Worst(t) }} {
			p, err := state(celsius(now))
			sane(t, what, err, p.Pressure.In(units.Kilopascal), p.Content.In(units.GramCO2PerLitre), p.Headspace.In(units.Litre))
			if err == nil && p.Gauge.Compare(p.Rating) > 0 && p.Verdict != carbonation.Locked &&
				(p.Verdict != carbonation.OverRating || !p.Cautions.Has(carbonation.OverRatingCaution)) {
				t.Errorf("%v over %v: %v %v", p.Gauge, p.Rating, p.Verdict, p.Cautions)
			}
		}
		w, err := c.WarmestWithin()
		sane(t, "WarmestWithin", err, w.In(units.Celsius))
	})
}

func FuzzService(f *testing.F) {
	f.Add(5.0, 110.0, 2.5, 0.6, 3.0, 4.0)
	f.Add(0.0, -1.0, math.NaN(), math.Inf(-1), 1e300, 20.0)
	f.Add(3.0, 1.0, 0.05, 30.0, 0.0, -2.0)
	f.Fuzz(func(t *testing.T, a, b, c, d, e, temperature float64) {
		n := func(v float64) checked.Number { return checked.Number(v) }
		at, s := celsius(temperature), seltzer(t)
		line := carbonation.Line{Bore: millimetre(a), Rise: metre(d), Losses: e}
		x, err := line.Balance(s, at, units.KilopascalGauge.Of(n(b)), flow(c))
		sane(t, "Balance", err, x.Length.In(units.Metre), x.Speed.In(units.MetrePerSecond), x.Reynolds)
		x, err = line.FlowOf(s, at, units.KilopascalGauge.Of(n(b)), metre(c))
		sane(t, "FlowOf", err, x.Flow.In(units.LitrePerMinute), x.Reynolds)
		p, err := carbonation.FillAndVent(litre(a), at, units.KilopascalGauge.Of(n(b)), 3, units.Atmosphere{})
		sane(t, "FillAndVent", err, p.Oxygen.In(units.Percent), p.Gas.In(units.Gram))
		p, err = carbonation.Flush(litre(a), at, b, units.Atmosphere{})
		sane(t, "Flush", err, p.Oxygen.In(units.Percent), p.Gas.In(units.Gram))
		rounds, err := carbonation.RoundsFor(ppm(a), units.KilopascalGauge.Of(n(b)), units.Atmosphere{})
		sane(t, "RoundsFor", err, float64(rounds))
		r, err := carbonation.Released(units.Kilogram.Of(n(a)), units.CubicMetre.Of(n(b)), at, ppm(c), units.Atmosphere{})
		sane(t, "Released", err, r.Level.In(units.PartPerMillion), r.Oxygen.In(units.Percent))
		v, err := carbonation.Ventilate(units.Gram.Of(n(a)), units.CubicMetre.Of(n(b)), at, ppm(c), ppm(d), units.Atmosphere{})
		sane(t, "Ventilate", err, v.FreshAir.In(units.LitrePerMinute), v.AirChanges.In(units.PerHour))
		k, err := carbonation.RateFromReadings(gramsCO2(a), gramsCO2(b), gramsCO2(c), time.Duration(d))
		sane(t, "RateFromReadings", err, k.In(units.PerHour))
		until, err := keg(carbonation.StillKeg(), a, b).Until(gramsCO2(c))
		sane(t, "Until", err, until.Hours())
		after, err := keg(carbonation.StillKeg(), a, b).After(gramsCO2(b), time.Duration(c))
		sane(t, "After", err, after.In(units.GramCO2PerLitre))
		pu, err := carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, a), reading(1, b), reading(2, c)}, nil)
		sane(t, "Pasteurise", err, pu.Units.In(units.PU))
		crash, err := carbonation.Fermenter{Drink: litre(c), Headspace: litre(d)}.Crash(s, celsius(a), celsius(b), units.Atmosphere{})
		sane(t, "Crash", err, crash.AtRest.In(units.Litre), crash.Content.In(units.GramCO2PerLitre))
		prime, err := carbonation.PrimingSugar(material.Sucrose(), gramsCO2(a), gramsCO2(b), gramsPerLitre(d), litre(c))
		sane(t, "PrimingSugar", err, prime.Primer.Mass.In(units.Gram))
		if sg, bad := gravity.FromSG(e); bad == nil {
			wort, err := carbonation.PrimeWithWort(sg, percent(75), gramsCO2(a), gramsCO2(b), gramsPerLitre(d), litre(c))
			sane(t, "PrimeWithWort", err, wort.Volume.In(units.Litre))
		}
	})
}
