package carbonation_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Oxygen in pure water under moist air at 101.325 kPa: 14.62, 9.09, 8.26 and 6.41 mg/L at 0, 20,
// 25 and 40 °C (Benson & Krause, Limnol. Oceanogr. 29 (1984) 620, as the tables of the U.S.
// Geological Survey print it; recalled from memory). Nitrogen with argon at 20 °C: 14.9 and
// 0.56 mg/L (Weiss, Deep-Sea Research 17 (1970) 721; recalled from memory).
func TestAerated(t *testing.T) {
	var water carbonation.Liquid
	atm := units.StandardAtmosphere.Of(1)
	for c, want := range map[float64]float64{0: 14.62, 20: 9.09, 25: 8.26, 40: 6.41} {
		_, o, err := water.Aerated(atm, units.Celsius.Of(checked.Number(c)))
		if got := o.In(units.MilligramPerLitre); err != nil || math.Abs(got/want-1) > 0.025 {
			t.Errorf("%g °C: oxygen %g mg/L, want %g; %v", c, got, want, err)
		}
	}
	n, _, err := water.Aerated(atm, units.Celsius.Of(20))
	if got := n.In(units.MilligramPerLitre); err != nil || math.Abs(got/15.3-1) > 0.03 {
		t.Errorf("nitrogen and argon %g mg/L, want 15.3; %v", got, err)
	}
	for _, bad := range []struct {
		t units.Temperature
		p units.AbsolutePressure
	}{{units.Celsius.Of(95), atm}, {units.Celsius.Of(20), units.Kilopascal.Of(1)}, {units.Celsius.Of(20), units.Kilopascal.Of(500)}} {
		if _, _, err := water.Aerated(bad.p, bad.t); err == nil {
			t.Errorf("no error at %v, %v", bad.t, bad.p)
		}
	}
}

// The ends of what is held in air: what the liquid gives off alone, and four bar.
func TestAeratedLimits(t *testing.T) {
	l := liquid(t, 0, 0)
	_, _, err := l.Aerated(kpa(401), celsius(20))
	e := check.OutOfRange(t, "too much", err, "pressure")
	near(t, "most", e.Max, 400, 0)
	near(t, "least", e.Min, vapours(t, l, 20), 1e-12)
}

// A vessel that is held by what is in it is the one that was filled: CO2 alone in a keg, and
// with the air of a bottle by the gas law.
func TestHoldIsWhatWasClosed(t *testing.T) {
	drink, err := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.Extract{})
	if err != nil {
		t.Fatal(err)
	}
	keg := carbonation.Vessel{Capacity: units.Litre.Of(19), Rating: units.BarGauge.Of(9)}
	closed, err := keg.Close(drink, carbonation.Filling{Volume: units.Litre.Of(18), Temperature: units.Celsius.Of(20),
		Content: units.GramCO2PerLitre.Of(5), AtRest: true, AirRemoved: units.Percent.Of(100)}, units.Atmosphere{})
	if err != nil {
		t.Fatal(err)
	}
	at20 := 18 / (1 + 5/44.009*32.3e-3) // swollen by its gas
	held, err := keg.Hold(drink, units.Litre.Of(checked.Number(at20)), carbonation.Gases{CO2: closed.CO2()}, units.Atmosphere{})
	if err != nil {
		t.Fatal(err)
	}
	for _, c := range []float64{-1, 4, 20, 35, 60} {
		a, _ := closed.At(units.Celsius.Of(checked.Number(c)))
		b, err := held.At(units.Celsius.Of(checked.Number(c)))
		if p, q := a.Pressure.In(units.Kilopascal), b.Pressure.In(units.Kilopascal); err != nil || math.Abs(p/q-1) > 1e-9 {
			t.Errorf("%g °C: %g kPa held, %g closed; %v", c, q, p, err)
		}
	}

	// 1 L of head-space full of air at 101.325 kPa less the vapours: 40.5 mmol by the gas law;
	// the drink was boiled and brings none.
	l, _ := carbonation.NewLiquid(drink)
	vapours, _ := l.Pressure(units.CarbonDioxideContent{}, units.Celsius.Of(20))
	bottle := carbonation.Vessel{Capacity: units.Litre.Of(19)}
	air, _ := bottle.Close(drink, carbonation.Filling{Volume: units.Litre.Of(18), Temperature: units.Celsius.Of(20),
		Air: units.Percent.Of(100), AirRemoved: units.Percent.Of(100)}, units.Atmosphere{})
	mol := (101.325 - vapours.In(units.Kilopascal)) / (8.314463 * 293.15)
	held, err = bottle.Hold(drink, units.Litre.Of(18), carbonation.Gases{
		Nitrogen: units.Gram.Of(checked.Number(0.78084 * mol * 28.014)), Oxygen: units.Gram.Of(checked.Number(0.21916 * mol * 31.998)),
	}, units.Atmosphere{})
	if err != nil {
		t.Fatal(err)
	}
	a, _ := air.At(units.Celsius.Of(30))
	b, _ := held.At(units.Celsius.Of(30))
	if p, q := a.Air.In(units.Kilopascal), b.Air.In(units.Kilopascal); math.Abs(p/q-1) > 1e-3 {
		t.Errorf("air %g kPa held, %g closed", q, p)
	}
}

func TestHoldRefuses(t *testing.T) {
	drink, _ := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.Extract{})
	spirit, _ := gravity.NewSolution(units.Kilogram.Of(1), units.Mass{}, units.Kilogram.Of(1))
	one, v := units.Litre.Of(1), carbonation.Vessel{Capacity: units.Litre.Of(2)}
	for name, f := range map[string]func() error{
		"no vessel": func() error {
			_, err := carbonation.Vessel{}.Hold(drink, one, carbonation.Gases{}, units.Atmosphere{})
			return err
		},
		"spirit": func() error {
			_, err := v.Hold(spirit, one, carbonation.Gases{}, units.Atmosphere{})
			return err
		},
		"too full": func() error {
			_, err := v.Hold(drink, units.Litre.Of(3), carbonation.Gases{}, units.Atmosphere{})
			return err
		},
		"too much gas": func() error {
			_, err := v.Hold(drink, one, carbonation.Gases{Oxygen: units.Gram.Of(50)}, units.Atmosphere{})
			return err
		},
	} {
		if f() == nil {
			t.Errorf("%s: no error", name)
		}
	}
}

// What can be held goes with the vessel, as [carbonation.Vessel.Hold] says: 100 g of CO2 in a litre of it,
// 20 g of each other gas.
func TestHoldLimits(t *testing.T) {
	drink := ok[gravity.Solution](t)(carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.Extract{}))
	v := carbonation.Vessel{Capacity: litre(2)}
	for what, c := range map[string]struct {
		litres      float64
		gases       carbonation.Gases
		least, most float64
	}{
		"volume of liquid": {0, carbonation.Gases{}, 1e-9, 2},
		"CO2":              {1, carbonation.Gases{CO2: units.Gram.Of(201)}, 0, 200},
		"nitrogen":         {1, carbonation.Gases{Nitrogen: units.Gram.Of(41)}, 0, 40},
		"oxygen":           {1, carbonation.Gases{Oxygen: units.Gram.Of(41)}, 0, 40},
	} {
		_, err := v.Hold(drink, litre(c.litres), c.gases, units.Atmosphere{})
		e := check.OutOfRange(t, what, err, what)
		if e.Min != c.least || e.Max != c.most {
			t.Errorf("%s: %g to %g, want %g to %g", what, e.Min, e.Max, c.least, c.most)
		}
	}
}

// How much oxygen a splash brings into a drink of 4.6 % vol at 20 °C.
func ExampleLiquid_Aerated() {
	drink, _ := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.Extract{})
	l, _ := carbonation.NewLiquid(drink)
	_, oxygen, err := l.Aerated(units.StandardAtmosphere.Of(1), units.Celsius.Of(20))
	fmt.Println(oxygen.Text(units.MilligramPerLitre, 1), err)
	// Output: 8.7 mg/L <nil>
}

// A keg of 19 L that holds 18 L of drink and 110 g of CO2: its pressure at 25 °C.
func ExampleVessel_Hold() {
	drink, _ := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.Extract{})
	keg := carbonation.Vessel{Capacity: units.Litre.Of(19), Rating: units.BarGauge.Of(9)}
	held, _ := keg.Hold(drink, units.Litre.Of(18), carbonation.Gases{CO2: units.Gram.Of(110)}, units.Atmosphere{})
	warm, err := held.At(units.Celsius.Of(25))
	fmt.Println(warm.Gauge.Text(units.BarGauge, 1), warm.Verdict, err)
	// Output: 3.2 bar gauge within the rating given <nil>
}
