package carbonation_test

import (
	"errors"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Small amounts count as well as large ones.
func TestSmallAmounts(t *testing.T) {
	prime := func(target, left float64) carbonation.Priming {
		return ok[carbonation.Priming](t)(carbonation.PrimingSugar(material.Sucrose(), gramsCO2(target), gramsCO2(1.5), gramsPerLitre(left), litre(1)))
	}
	if p := prime(5, 0.5); !p.Cautions.Has(carbonation.SugarCanFerment) {
		t.Error("0.5 g/L of sugar left")
	}
	p := prime(1.6, 0)
	near(t, "0.1 g/L more", p.Primer.Mass.In(units.Gram), 0.1/0.51428, 1e-5)
	if p.Cautions.Has("no_sugar_needed") {
		t.Error("some sugar is needed")
	}
	s := ok[carbonation.Spread](t)(p.Spread([]carbonation.Bottles{{Fill: litre(1), Count: 1}}, step(t, "0.1 g")))
	if !s.Cautions.Has("uneven_spread") {
		t.Error("0.1 g steps of 0.19 g")
	}
	// Half a step just above and just below 5 % of a dose of 2.5667 g.
	p = ok[carbonation.Priming](t)(carbonation.PrimingSugar(material.Sucrose(), gramsCO2(5.6), gramsCO2(1.6), units.MassConcentration{}, litre(20)))
	for text, uneven := range map[string]bool{"0.26 g": true, "0.255 g": false} {
		s := ok[carbonation.Spread](t)(p.Spread([]carbonation.Bottles{{Fill: litre(0.33), Count: 1}}, step(t, text)))
		if s.Cautions.Has("uneven_spread") != uneven {
			t.Errorf("%s: %v", text, s.Cautions)
		}
	}
	f := filling(5.7)
	f.SugarLeft = gramsPerLitre(0.5)
	if p := at(t, closed(t, bottle(), f), 4); !p.Cautions.Has(carbonation.SugarCanFerment) || p.Cautions.Has("worst_over_rating") {
		t.Errorf("0.5 g/L: %v", p.Cautions)
	}
	// 0.5 g/L of sugar makes 0.26 g/L of CO2, about 20 kPa of it at 4 °C.
	tight := bottle()
	tight.Rating = units.KilopascalGauge.Of(checked.Number(at(t, closed(t, tight, f), 4).Gauge.In(units.KilopascalGauge) + 1))
	if p := at(t, closed(t, tight, f), 4); p.Verdict != carbonation.WithinRating || !p.Cautions.Has("worst_over_rating") {
		t.Errorf("a rating just above: %v %v", p.Verdict, p.Cautions)
	}
}

// Hot is above 40 °C, a little head-space below 2 % of the capacity.
func TestEdgesOfCautions(t *testing.T) {
	c := closed(t, bottle(), filling(1))
	for celsius, hot := range map[float64]bool{40: false, 40.5: true} {
		if p := at(t, c, celsius); p.Cautions.Has(carbonation.HotVessel) != hot {
			t.Errorf("%g °C: %v", celsius, p.Cautions)
		}
	}
	for ml, little := range map[float64]bool{337.5: false, 338.3: true} { // 2.2 % and 1.9 %
		f := filling(5.7)
		f.Volume = litre(ml / 1000)
		if p := at(t, closed(t, bottle(), f), 4); p.Cautions.Has(carbonation.LittleHeadspace) != little {
			t.Errorf("%g mL: %v of %v", ml, p.Cautions, p.HeadspaceShare)
		}
	}
}

// A head-space of 1.99 % when it was filled is little, though the drink makes room as it cools.
func TestLittleAsFilled(t *testing.T) {
	f := filling(3)
	f.Volume, f.Temperature = litre(0.345*(1-0.0199)), celsius(20)
	p := at(t, closed(t, bottle(), f), 4)
	if !p.Cautions.Has(carbonation.LittleHeadspace) || p.HeadspaceShare.In(units.Percent) < 2 {
		t.Errorf("%v, %v", p.HeadspaceShare, p.Cautions)
	}
}

// The wine relation is that of the drink's sugar by the litre at its temperature.
func TestCompareWine(t *testing.T) {
	beer := ok2(carbonation.DrinkOf(volPct(5), plato(4)))
	list := ok[[]carbonation.Comparison](t)(carbonation.Compare(beer, bar(2), celsius(20)))
	s := beer
	v := ok[units.Volume](t)(s.Volume(celsius(20)))
	want := ok[units.CarbonDioxideContent](t)(dioxide.WineContent(bar(2), s.ByVolume(), gramsPerLitre(s.Extract().In(units.Gram)/v.In(units.Litre))))
	near(t, "wine", list[3].Content.In(units.GramCO2PerLitre), want.In(units.GramCO2PerLitre), 1e-12)
}

// Limits that go with the other inputs.
func TestLimitsThatVary(t *testing.T) {
	l := liquid(t, 4.6, 0.5)
	limitsOf := func(_ any, err error) (least, most float64) {
		t.Helper()
		var e *units.RangeError
		if !errors.As(err, &e) {
			t.Fatalf("no RangeError: %v", err)
		}
		return e.Min, e.Max
	}
	// A blend of 5 % needs twenty times the pressure of pure CO2, over the vapours.
	p := ok[units.AbsolutePressure](t)(l.Pressure(gramsCO2(2), celsius(4))).In(units.Kilopascal)
	v := vapours(t, l, 4)
	least, most := limitsOf(l.BlendFor(gramsCO2(2), kpa(1900), celsius(4)))
	near(t, "pure", least, p, 1e-6)
	near(t, "5 %", most, v+20*(p-v), 1e-6)
	// Where water boils below 90 °C the content may be nothing.
	least, _ = limitsOf(l.Temperature(gramsCO2(50), kpa(60)))
	near(t, "boiling", least, 0, 0)
	ok[units.Temperature](t)(l.Temperature(gramsCO2(0.01), kpa(60)))
	// Fermenters: head-space up to a thousand times the drink, from a millionth in a crash.
	_, most = limitsOf(l.Spund(gramsCO2(5), carbonation.Fermenter{Drink: litre(2), Headspace: litre(3000)}, yield(t), celsius(20), units.Atmosphere{}))
	near(t, "Spund", most, 2000, 0)
	least, most = limitsOf(carbonation.Fermenter{Drink: litre(2)}.Crash(seltzer(t), celsius(20), celsius(4), units.Atmosphere{}))
	near(t, "Crash", least, 2e-6, 1e-18)
	near(t, "Crash", most, 2000, 0)
	// Water swells from 4 °C to 0 °C: a millilitre over 20 L is too little.
	least, most = limitsOf(carbonation.Fermenter{Drink: litre(20),
		Headspace: litre(0.001)}.Crash(ok[gravity.Solution](t)(carbonation.DrinkOf(units.StrengthByVolume{}, units.Extract{})), celsius(4),
		celsius(0), units.Atmosphere{}))
	near(t, "Crash in the cold", least, 2e-6, 1e-18)
	near(t, "Crash in the cold", most, 20020, 0)
	// A wort must make a fifth more gas than is wanted.
	least, _ = limitsOf(carbonation.PrimeWithWort(wortOf(t, 1.004), percent(50), gramsCO2(5), gramsCO2(1), units.MassConcentration{}, litre(1)))
	near(t, "wort", least, 6, 1e-12)
}

// The rating limits hold where the ratings are given.
func TestSecondRefusals(t *testing.T) {
	_, err := carbonation.Ventilate(units.Gram.Of(100), units.CubicMetre.Of(20), celsius(-1), ppm(5000), ppm(420), units.Atmosphere{})
	refused(t, "cold", err, "temperature")
	_, err = carbonation.Ventilate(units.Gram.Of(100), units.CubicMetre.Of(20), celsius(20), ppm(5000), ppm(-1), units.Atmosphere{})
	refused(t, "fresh", err, "CO2 of the fresh air")
	_, err = carbonation.Flush(litre(0), celsius(20), 1, units.Atmosphere{})
	refused(t, "volume", err, "volume")
}
