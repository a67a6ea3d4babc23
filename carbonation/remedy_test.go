package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
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
	refused(t, "never", err, "pressure over the rating at −2 °C")
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
	if g := ok[units.CarbonDioxideContent](t)(v.MostContent(seltzer(t), filling(0), celsius(4), units.Atmosphere{})).In(units.GramCO2PerLitre); g >= 15 || g < 14.9 {
		t.Errorf("%g g/L", g)
	}
	// Not even 1 g/L is within, a flat drink is.
	open := filling(0)
	open.AtRest, open.Air = false, percent(100)
	half := open
	half.Content = gramsCO2(0.5)
	v.Rating = at(t, closed(t, v, half), 45).Gauge
	close(t, "half a gram", ok[units.CarbonDioxideContent](t)(v.MostContent(seltzer(t), open, celsius(45), units.Atmosphere{})).In(units.GramCO2PerLitre), 0.5, 1e-9)
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
	near(t, "no more than 15 g/L", ok[units.CarbonDioxideContent](t)(strong.MostContent(seltzer(t), filling(0), celsius(4), units.Atmosphere{})).In(units.GramCO2PerLitre), 15, 0)
	_, err := carbonation.Vessel{Capacity: litre(1)}.MostContent(seltzer(t), filling(0), celsius(45), units.Atmosphere{})
	refused(t, "no rating", err, "rating")
	full := filling(0)
	full.Priming = gramsPerLitre(40)
	_, err = bottle().MostContent(seltzer(t), full, celsius(45), units.Atmosphere{})
	refused(t, "too much sugar", err, "pressure of the flat drink over the rating")
	_, err = bottle().MostContent(seltzer(t), filling(0), celsius(99), units.Atmosphere{})
	refused(t, "too hot", err, "temperature")
}
