package carbonation_test

import (
	"reflect"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// At the warmest temperature the pressure is the rating; a kelvin more passes it.
func TestWarmestWithin(t *testing.T) {
	f := filling(6.5)
	f.SugarLeft = gramsPerLitre(1)
	c := closed(t, bottle(), f)
	w := ok[units.Temperature](t)(c.WarmestWithin()).In(units.Celsius)
	p := ok[carbonation.PackState](t)(c.Worst(celsius(w)))
	near(t, "pressure", p.Gauge.In(units.BarGauge), 7, 1e-5)
	if p := ok[carbonation.PackState](t)(c.Worst(celsius(w + 1))); p.Verdict != carbonation.OverRating {
		t.Errorf("a kelvin more: %v", p.Verdict)
	}
	strong := bottle()
	strong.Rating = units.BarGauge.Of(18)
	near(t, "strong glass, flat", ok[units.Temperature](t)(closed(t, strong, filling(0.1)).WarmestWithin()).In(units.Celsius), 90, 0)
	_, err := closed(t, carbonation.Vessel{Capacity: litre(1)}, filling(1)).WarmestWithin()
	refused(t, "no rating", err, "rating")
	weak := bottle()
	weak.Rating = units.BarGauge.Of(0.1)
	_, err = closed(t, weak, filling(6)).WarmestWithin()
	refused(t, "never", err, "pressure at −2 °C")
}

// A vessel that passes its rating by a hair, at 90 °C or at 15 g/L, is not one that
// never does.
func TestRemediesAtTheirEnds(t *testing.T) {
	const hair = 0.5 // kPa
	v := bottle()
	v.Rating = units.KilopascalGauge.Of(checked.Number(at(t, closed(t, v, filling(1)), 90).Gauge.In(units.KilopascalGauge) - hair))
	w := ok[units.Temperature](t)(closed(t, v, filling(1)).WarmestWithin()).In(units.Celsius)
	if w >= 90 || w < 89 {
		t.Errorf("%g °C", w)
	}
	v.Rating = units.KilopascalGauge.Of(checked.Number(at(t, closed(t, v, filling(15)), 4).Gauge.In(units.KilopascalGauge) - hair))
	if g := ok[units.CarbonDioxideContent](t)(v.MostContent(seltzer(t), filling(0), celsius(4),
		units.Atmosphere{})).In(units.GramCO2PerLitre); g >= 15 || g < 14.9 {
		t.Errorf("%g g/L", g)
	}
	// Not even 1 g/L is within, a flat drink is.
	open := filling(0)
	open.AtRest, open.Air = false, percent(100)
	half := open
	half.Content = gramsCO2(0.5)
	v.Rating = at(t, closed(t, v, half), 45).Gauge
	close(t, "half a gram", ok[units.CarbonDioxideContent](t)(v.MostContent(seltzer(t), open, celsius(45),
		units.Atmosphere{})).In(units.GramCO2PerLitre), 0.5, 1e-9)
	_, err := v.MostContent(spirit(t), open, celsius(45), units.Atmosphere{})
	refused(t, "spirit", err, "strength")
}

func TestMostContent(t *testing.T) {
	f := filling(0)
	g := ok[units.CarbonDioxideContent](t)(bottle().MostContent(seltzer(t), f, celsius(45), units.Atmosphere{}))
	f.Content = g
	p := at(t, closed(t, bottle(), f), 45)
	near(t, "pressure", p.Gauge.In(units.BarGauge), 7, 1e-6)
	strong := bottle()
	strong.Rating = units.BarGauge.Of(18)
	near(t, "no more than 15 g/L", ok[units.CarbonDioxideContent](t)(strong.MostContent(seltzer(t), filling(0), celsius(4),
		units.Atmosphere{})).In(units.GramCO2PerLitre), 15, 0)
	_, err := carbonation.Vessel{Capacity: litre(1)}.MostContent(seltzer(t), filling(0), celsius(45), units.Atmosphere{})
	refused(t, "no rating", err, "rating")
	full := filling(0)
	full.Priming = gramsPerLitre(40)
	_, err = bottle().MostContent(seltzer(t), full, celsius(45), units.Atmosphere{})
	refused(t, "too much sugar", err, "pressure of the flat drink")
	_, err = bottle().MostContent(seltzer(t), filling(0), celsius(99), units.Atmosphere{})
	refused(t, "too hot", err, "temperature")
}

// The warmest temperature is one at which the vessel still has a head-space: a bottle
// whose rating is above what its gas can do fills with liquid first. One that is full in
// the cold is refused in plain numbers, and so is a content for it.
func TestRemediesNeverFull(t *testing.T) {
	strong := bottle()
	strong.Rating = units.BarGauge.Of(18)
	for _, millilitres := range []float64{340, 342, 343, 344} {
		f := filling(3)
		f.Volume = units.Millilitre.Of(checked.Number(millilitres))
		c := closed(t, strong, f)
		w := ok[units.Temperature](t)(c.WarmestWithin())
		if p := ok[carbonation.PackState](t)(c.Worst(w)); p.Verdict != carbonation.WithinRating {
			t.Errorf("%g mL at %v: %v", millilitres, w, p.Verdict)
		}
		if p := ok[carbonation.PackState](t)(c.Worst(celsius(w.In(units.Celsius) + 0.01))); p.Verdict == carbonation.WithinRating {
			t.Errorf("%g mL at %v and 0.01 K: %v", millilitres, w, p.Verdict)
		}
	}
	f := filling(3)
	f.Volume, f.Temperature = units.Millilitre.Of(345), celsius(-2)
	_, err := closed(t, strong, f).WarmestWithin()
	refused(t, "full in the cold", err, "head-space at −2 °C")
	keg := carbonation.Vessel{Capacity: litre(19), Rating: units.BarGauge.Of(9)} // in which a litre would be room enough
	full := f
	full.Volume = keg.Capacity
	_, err = keg.MostContent(seltzer(t), full, celsius(20), units.Atmosphere{})
	near(t, "of a full keg", check.OutOfRange(t, "full keg", err, "head-space of the flat drink").Value, 0, 0)
	_, err = strong.MostContent(seltzer(t), f, celsius(20), units.Atmosphere{})
	refused(t, "full of a flat drink", err, "head-space of the flat drink")
	// Above 20 bar there is no figure to hold against a rating that is higher still.
	strong.Rating, strong.Capacity = units.BarGauge.Of(30), litre(0.4)
	hot := filling(0)
	hot.Priming = gramsPerLitre(290)
	_, err = closed(t, strong, hot).WarmestWithin()
	refused(t, "beyond", err, "pressure at −2 °C")
}

// Brim-full when it was closed is said even where the drink has shrunk since.
func TestBrimFull(t *testing.T) {
	f := filling(3)
	f.Volume, f.Temperature = units.Millilitre.Of(345), celsius(20)
	p := at(t, closed(t, bottle(), f), 5)
	if p.AtLeast || !p.Cautions.Has(carbonation.HydraulicLock) {
		t.Errorf("brim-full: %v %v", p.AtLeast, p.Cautions)
	}
	f.Volume = units.Millilitre.Of(344)
	if p := at(t, closed(t, bottle(), f), 5); p.Cautions.Has(carbonation.HydraulicLock) || !p.Cautions.Has(carbonation.LittleHeadspace) {
		t.Errorf("nearly: %v", p.Cautions)
	}
}

// The worst of several temperatures is that of the warmest, wherever it stands; full of
// liquid is worse than any pressure.
func TestWorstOfSeveral(t *testing.T) {
	c := closed(t, bottle(), filling(6))
	want := ok[carbonation.PackState](t)(c.Worst(celsius(35)))
	for _, order := range [][3]float64{{35, 2, 20}, {2, 35, 20}, {2, 20, 35}} {
		got := ok[carbonation.PackState](t)(c.Worst(celsius(order[0]), celsius(order[1]), celsius(order[2])))
		if !reflect.DeepEqual(got, want) {
			t.Errorf("%v: %v at %v", order, got.Gauge, got.Temperature)
		}
	}
	f := filling(6)
	f.Volume = units.Millilitre.Of(343)
	c = closed(t, bottle(), f)
	for _, order := range [][2]float64{{4, 60}, {60, 4}} {
		if got := ok[carbonation.PackState](t)(c.Worst(celsius(order[0]), celsius(order[1]))); got.Verdict != carbonation.Locked {
			t.Errorf("%v: %v", order, got.Verdict)
		}
	}
	_, err := c.Worst(celsius(4), celsius(91))
	refused(t, "too hot", err, "temperature")
}
