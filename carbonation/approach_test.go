package carbonation_test

import (
	"errors"
	"math"
	"testing"
	"time"

	"pgregory.net/rapid"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

const hour = time.Hour

// keg holds so much on its way to a target, g/L.
func keg(k units.Rate, content, target float64) carbonation.Keg {
	return carbonation.Keg{Content: gramsCO2(content), Target: gramsCO2(target), Rate: k}
}

// By hand: from 1 to 3 of 5 g/L is half of the way: k = ln 2/Δt.
func TestRateFromReadings(t *testing.T) {
	r := ok[units.Rate](t)(carbonation.RateFromReadings(gramsCO2(1), gramsCO2(3), gramsCO2(5), 24*hour))
	near(t, "rate", r.In(units.PerHour), math.Ln2/24, 1e-12)
	near(t, "after a day", ok[units.CarbonDioxideContent](t)(keg(r, 1, 3).After(gramsCO2(5), 24*hour)).In(units.GramCO2PerLitre), 3, 1e-12)
	near(t, "hours to 4", ok[time.Duration](t)(keg(r, 1, 4).Until(gramsCO2(5))).Hours(), 48, 1e-9)
	near(t, "hours down to 5.5", ok[time.Duration](t)(keg(r, 6, 5.5).Until(gramsCO2(5))).Hours(), 24, 1e-9)
	if d := ok[time.Duration](t)(keg(r, 3, 3).Until(gramsCO2(5))); d != 0 {
		t.Errorf("there already: %v", d)
	}
	// The stated defaults: 95 % in 10 days, in 20 minutes.
	for _, row := range []struct {
		r units.Rate
		d time.Duration
	}{{carbonation.StillKeg(), 240 * hour}, {carbonation.RolledKeg(), 20 * time.Minute}} {
		c := ok[units.CarbonDioxideContent](t)(keg(row.r, 0, 1).After(gramsCO2(1), row.d)).In(units.GramCO2PerLitre)
		near(t, "95 %", c, 0.95, 0.0003)
	}
}

func TestApproachRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		from, rest := rapid.Float64Range(0, 8).Draw(t, "from"), rapid.Float64Range(0, 8).Draw(t, "at rest")
		if math.Abs(from-rest) < 0.01 {
			return
		}
		way := rapid.Float64Range(0.01, 0.99).Draw(t, "way")
		k := units.PerHour.Of(checked.Number(rapid.Float64Range(0.001, 10).Draw(t, "rate")))
		to := from + way*(rest-from)
		d := ok[time.Duration](t)(keg(k, from, to).Until(gramsCO2(rest)))
		near(t, "content", ok[units.CarbonDioxideContent](t)(keg(k, from, to).After(gramsCO2(rest), d)).In(units.GramCO2PerLitre), to, 1e-9)
		if d > 10*time.Second {
			fit := ok[units.Rate](t)(carbonation.RateFromReadings(gramsCO2(from), gramsCO2(to), gramsCO2(rest), d))
			close(t, "rate", fit.In(units.PerHour), k.In(units.PerHour), 1e-6)
		}
	})
}

func TestApproachRefuses(t *testing.T) {
	_, err := carbonation.RateFromReadings(gramsCO2(1), gramsCO2(3), gramsCO2(5), 0)
	refused(t, "time", err, "time")
	for _, c := range []float64{0.9, 5.1} {
		_, err = carbonation.RateFromReadings(gramsCO2(1), gramsCO2(c), gramsCO2(5), hour)
		refused(t, "second", err, "second content")
	}
	_, err = carbonation.RateFromReadings(gramsCO2(1), gramsCO2(1), gramsCO2(5), hour)
	refused(t, "no way at all", err, "rate")
	_, err = carbonation.RateFromReadings(gramsCO2(1), gramsCO2(5), gramsCO2(5), hour)
	refused(t, "all of the way", err, "share of the way to rest")
	_, err = carbonation.RateFromReadings(gramsCO2(5), gramsCO2(5), gramsCO2(5), hour)
	refused(t, "at rest already", err, "way to rest")
	for _, k := range []checked.Number{0, 0.99e-5, 1001} {
		_, err = keg(units.PerHour.Of(k), 1, 2).After(gramsCO2(5), hour)
		refused(t, "rate", err, "rate")
		_, err = keg(units.PerHour.Of(k), 1, 2).Until(gramsCO2(5))
		refused(t, "rate", err, "rate")
	}
	still := carbonation.StillKeg()
	for _, d := range []time.Duration{-hour, 88000 * hour} {
		_, err = keg(still, 1, 5).After(gramsCO2(5), d)
		refused(t, "time", err, "time")
	}
	_, err = keg(still, 1, 5).Until(gramsCO2(5))
	refused(t, "at rest itself", err, "share of the way to rest")
	_, err = keg(units.PerHour.Of(1e-5), 1, 4.9).Until(gramsCO2(5))
	refused(t, "more than 10 years", err, "time")
	for _, c := range []float64{0.5, 6} {
		_, err = keg(still, 1, c).Until(gramsCO2(5))
		refused(t, "not on the way", err, "content")
	}
	_, err = keg(still, 6, 4).Until(gramsCO2(5))
	refused(t, "not on the way down", err, "content")
}

func TestPlanBurst(t *testing.T) {
	l := liquid(t, 4.6, 0.5)
	k := units.PerHour.Of(0.05)
	b := ok[carbonation.Burst](t)(l.PlanBurst(gramsCO2(1.6), gramsCO2(5.5), barGauge(3), barGauge(4), k, celsius(3), units.Atmosphere{}))
	rest := ok[units.CarbonDioxideContent](t)(l.Content(kpa(401.325), celsius(3))).In(units.GramCO2PerLitre)
	near(t, "forgotten", b.Forgotten.In(units.GramCO2PerLitre), rest, 1e-9)
	near(t, "stop, hours", b.Stop.Hours(), math.Log((rest-1.6)/(rest-5.5))/0.05, 1e-6)
	near(t, "an hour late", b.HourLate.In(units.GramCO2PerLitre), rest-(rest-5.5)*math.Exp(-0.05), 1e-9)
	then := ok[units.AbsolutePressure](t)(l.Pressure(gramsCO2(5.5), celsius(3))).In(units.Kilopascal)
	near(t, "set back to", b.Then.In(units.KilopascalGauge), then-101.325, 1e-9)
	if !b.Cautions.Has(carbonation.Overshoot) || b.Verdict != carbonation.WithinRating || b.Gauge != barGauge(3) {
		t.Errorf("%+v", b)
	}
	b = ok[carbonation.Burst](t)(l.PlanBurst(gramsCO2(1.6), gramsCO2(5.5), barGauge(3), barGauge(2), k, celsius(3), units.Atmosphere{}))
	if b.Verdict != carbonation.OverRating || !b.Cautions.Has(carbonation.OverRatingCaution) {
		t.Errorf("over: %v", b.Cautions)
	}
	b = ok[carbonation.Burst](t)(l.PlanBurst(gramsCO2(1.6), gramsCO2(5.5), barGauge(3), units.GaugePressure{}, k, celsius(3), units.Atmosphere{}))
	if !b.Cautions.Has("no_rating") {
		t.Errorf("unrated: %v", b.Cautions)
	}
	if b.Cautions.Has(carbonation.BelowAtmosphere) {
		t.Errorf("over the atmosphere: %v", b.Cautions)
	}
	b = ok[carbonation.Burst](t)(l.PlanBurst(gramsCO2(1), gramsCO2(2), barGauge(3), barGauge(4), k, celsius(3), units.Atmosphere{}))
	if b.Then.In(units.KilopascalGauge) >= 0 || !b.Cautions.Has(carbonation.BelowAtmosphere) {
		t.Errorf("set back to %v: %v", b.Then, b.Cautions)
	}
	// A pressure just over that of the atmosphere can be set.
	justOver := ok[units.CarbonDioxideContent](t)(l.Content(kpa(101.8), celsius(3)))
	b = ok[carbonation.Burst](t)(l.PlanBurst(gramsCO2(1), justOver, barGauge(3), barGauge(4), k, celsius(3), units.Atmosphere{}))
	if b.Cautions.Has(carbonation.BelowAtmosphere) {
		t.Errorf("set back to %v: %v", b.Then, b.Cautions)
	}
	_, err := l.PlanBurst(gramsCO2(1.6), gramsCO2(5.5), barGauge(0.5), barGauge(4), k, celsius(3), units.Atmosphere{})
	refused(t, "never there", err, "content")
	_, err = l.PlanBurst(gramsCO2(1.6), gramsCO2(5.5), barGauge(-2), barGauge(4), k, celsius(3), units.Atmosphere{})
	refused(t, "below vacuum", err, "gauge pressure")
	_, err = l.PlanBurst(gramsCO2(1.6), gramsCO2(5.5), barGauge(3), barGauge(4), k, celsius(99), units.Atmosphere{})
	refused(t, "hot", err, "temperature")
	// On the way down, at a content that no pressure in range holds.
	b, err = l.PlanBurst(gramsCO2(80), gramsCO2(70), barGauge(3), barGauge(4), k, celsius(20), units.Atmosphere{})
	refused(t, "out of reach", err, "content")
	if e, is := errors.AsType[*units.RangeError](err); !is || e.Func != "carbonation.Liquid.PlanBurst" || b.Cautions != nil || !b.Gauge.IsZero() {
		t.Errorf("%+v, %v", b, err)
	}
}

func TestOnRegulator(t *testing.T) {
	l := liquid(t, 4.6, 0.5)
	keg := carbonation.Keg{Liquid: l, Temperature: celsius(4), Content: gramsCO2(1.6), Target: gramsCO2(5.8), Rate: carbonation.StillKeg(), Rating: barGauge(4)}
	less := keg
	less.Target = gramsCO2(4)
	list := ok[[]carbonation.KegOnRegulator](t)(carbonation.OnRegulator([]carbonation.Keg{keg, less}, barGauge(1.2), 72*hour, units.Atmosphere{}))
	rest := ok[units.CarbonDioxideContent](t)(l.Content(kpa(221.325), celsius(4))).In(units.GramCO2PerLitre)
	near(t, "at rest", list[0].AtRest.In(units.GramCO2PerLitre), rest, 1e-9)
	near(t, "after", list[0].Content.In(units.GramCO2PerLitre), rest-(rest-1.6)*math.Exp(-0.9), 1e-9)
	near(t, "needs", list[1].Needs.In(units.KilopascalGauge),
		ok[units.AbsolutePressure](t)(l.Pressure(gramsCO2(4), celsius(4))).In(units.Kilopascal)-101.325, 1e-9)
	if list[0].Cautions.Has(carbonation.Overshoot) || !list[1].Cautions.Has(carbonation.Overshoot) || !list[0].Cautions.Has("shared_regulator") {
		t.Errorf("%v, %v", list[0].Cautions, list[1].Cautions)
	}
	if !list[1].HasReached || math.Abs(list[1].Reaches.Hours()-math.Log((rest-1.6)/(rest-4))/0.0125) > 1e-6 {
		t.Errorf("%v", list[1].Reaches)
	}
	low := ok[[]carbonation.KegOnRegulator](t)(carbonation.OnRegulator([]carbonation.Keg{keg}, barGauge(0.5), 72*hour, units.Atmosphere{}))
	if low[0].HasReached || low[0].Cautions.Has("shared_regulator") || low[0].Verdict != carbonation.WithinRating {
		t.Errorf("%+v", low[0])
	}
	if list[0].Cautions.Has(carbonation.BelowAtmosphere) || low[0].Cautions.Has(carbonation.BelowAtmosphere) {
		t.Errorf("over the atmosphere: %v", list[0].Cautions)
	}
	flat := keg
	flat.Target = gramsCO2(1) // less than the drink keeps under 1 atm in the cold
	flat.Target = ok[units.CarbonDioxideContent](t)(l.Content(kpa(101.8), flat.Temperature))
	if got := ok[[]carbonation.KegOnRegulator](t)(carbonation.OnRegulator([]carbonation.Keg{flat}, barGauge(0.5), 72*hour,
		units.Atmosphere{})); got[0].Cautions.Has(carbonation.BelowAtmosphere) {
		t.Errorf("needs %v: %v", got[0].Needs, got[0].Cautions)
	}
	flat.Target = gramsCO2(1)
	for set, kegs := range map[float64]carbonation.Keg{0.5: flat, -0.5: keg} {
		got := ok[[]carbonation.KegOnRegulator](t)(carbonation.OnRegulator([]carbonation.Keg{kegs}, barGauge(set), 72*hour, units.Atmosphere{}))
		if !got[0].Cautions.Has(carbonation.BelowAtmosphere) {
			t.Errorf("set to %g bar: %v", set, got[0].Cautions)
		}
	}
	keg.Rating = barGauge(0.4)
	low = ok[[]carbonation.KegOnRegulator](t)(carbonation.OnRegulator([]carbonation.Keg{keg}, barGauge(0.5), 72*hour, units.Atmosphere{}))
	if !low[0].Cautions.Has(carbonation.OverRatingCaution) {
		t.Errorf("%v", low[0].Cautions)
	}
	keg.Rating = units.GaugePressure{}
	// 5 % over the target is not called too much, 6 % is.
	for _, row := range []struct {
		part float64
		over bool
	}{{1.049, false}, {1.051, true}} {
		keg.Target = gramsCO2(rest / row.part)
		one := ok[[]carbonation.KegOnRegulator](t)(carbonation.OnRegulator([]carbonation.Keg{keg}, barGauge(1.2), hour, units.Atmosphere{}))
		if one[0].Cautions.Has(carbonation.Overshoot) != row.over || !one[0].Cautions.Has("no_rating") {
			t.Errorf("%g: %v", row.part, one[0].Cautions)
		}
	}
	_, err := carbonation.OnRegulator(nil, barGauge(1), hour, units.Atmosphere{})
	refused(t, "no kegs", err, "number of kegs")
	_, err = carbonation.OnRegulator([]carbonation.Keg{{}}, barGauge(1), hour, units.Atmosphere{})
	refused(t, "zero rate", err, "rate")
	keg.Target = gramsCO2(1e3)
	_, err = carbonation.OnRegulator([]carbonation.Keg{keg}, barGauge(1), hour, units.Atmosphere{})
	refused(t, "target", err, "content")
	keg.Temperature = celsius(-5)
	_, err = carbonation.OnRegulator([]carbonation.Keg{keg}, barGauge(1), hour, units.Atmosphere{})
	refused(t, "cold", err, "temperature")
	_, err = carbonation.OnRegulator([]carbonation.Keg{keg}, barGauge(-2), hour, units.Atmosphere{})
	refused(t, "vacuum", err, "gauge pressure")
}
