package batch

import (
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// A tap water of 262 mg/L as CaCO3 came to 70 after 5 min, 45 after 10, 39.5 after 15, 30 and 45
// (one person's drop test, cooled and settled; package water): first order at 0.4 a minute
// towards what stays. Its other ions, and so what stays of it, are not told.
func TestBoilDropsChalk(t *testing.T) {
	p := must(water.NewProfile(deg(20), units.MilligramPerLitreCaCO3.Of(262), water.Calcium.At(units.MilligramPerLitre.Of(104.9))))
	s := must(FromWater(must(p.WithPH(7.4)), units.Litre.Of(10)))
	u := Usual()
	u.Chalk = 0.4
	alkalinity := func(s State) float64 { return must(s.Alkalinity()).In(units.MilligramPerLitreCaCO3) }
	rest, _, _ := Do(boiling(1000, 0), s, &u)
	for minutes, test := range map[float64]float64{5: 70, 10: 45, 15: 39.5, 45: 39.5} {
		b, left, err := Do(boiling(minutes, 0), s, &u)
		if err != nil {
			t.Fatal(err)
		}
		near(t, "still above rest", (alkalinity(b)-alkalinity(rest))/(262-alkalinity(rest)), (test-39.5)/(262-39.5), 0.01)
		near(t, "scale", 1000*left.Scale.grams()/10, 262-alkalinity(b), 0.5) // chalk, mg/L
	}
	at90 := must(p.BoiledAt(deg(97.8), must(units.Barometer(kPa(93.9)))))
	u.Chalk = 100
	b, _, err := Do(boiling(60, 0), s, &u)
	near(t, "at rest", must(b.Alkalinity()).In(units.MilligramPerLitreCaCO3), at90.AtRest.Equilibrium.Water().Alkalinity().In(units.MilligramPerLitreCaCO3), 0.05)
	near(t, "calcite's index then", must(b.CalciteIndex()), 0, 0.002)
	if err != nil {
		t.Error(err)
	}
	u.Chalk = math.Inf(1)
	b, _, err = Do(boiling(60, 0), s, &u)
	near(t, "calcite's index at once", must(b.CalciteIndex()), 0, 1e-4)
	if err != nil {
		t.Error(err)
	}
	u.Chalk = 0
	b, left, _ := Do(boiling(60, 0), s, &u)
	near(t, "none drops", must(b.Alkalinity()).In(units.MilligramPerLitreCaCO3), 262, 1e-9)
	if left.Scale != (Amounts{}) {
		t.Error("chalk where none may drop")
	}
}

// 5 L/h for 15 min take 1.25 L of cold water, 1.248 kg; water boils at 97.8 °C at 640 m
// (steam tables: 97.75 °C at 93.9 kPa).
func TestBoilOff(t *testing.T) {
	s, left := one(wash(), boiling(15, 5))
	near(t, "boiled off", left.Vapour.grams(), 1247.8, 0.1)
	near(t, "boils at", s.Temperature().In(units.Celsius), 97.8, 0.1)
	place := must(units.Barometer(kPa(93.9)))
	near(t, "as package carbonation has it", s.Temperature().In(units.Celsius), must(carbonation.BoilingPoint(place.Pressure())).In(units.Celsius), 1e-9)
	rest := must(must(s.Profile()).Under(water.AirCO2(place))) // steam and the room's air above it
	near(t, "CO2", s.Of(CarbonDioxide), rest.InorganicCarbon().In(units.MolePerLitre)*s.litresOfWater(), 1e-9)
	aired := after(wash(), Step{Kind: Stand, Share: per(100)})
	if b := after(aired, boiling(15, 5)); aired.Of(Oxygen) == 0 || b.Of(Oxygen) != 0 || b.Of(Nitrogen) != 0 {
		t.Error("air stays in a boil")
	}
	near(t, "air", s.Of(Oxygen)+s.Of(Nitrogen), 0, 0)
	refused(t, beer(), boiling(15, 5))
	refused(t, wash(), boiling(60, 100))
	refused(t, wash(), Step{Kind: Boil, For: Duration(6e10), Pressure: kPa(150)})
}

// What is at rest with calcite, by a search that begins anywhere, is what package water finds;
// a soft water drops nothing.
func TestCalciteAsPackageWater(t *testing.T) {
	j := job{u: &usual, like: new(water.Series)}
	for _, alkalinity := range []float64{20, 60, 120, 300} {
		for _, calcium := range []float64{2, 20, 80, 150} {
			p := must(water.NewProfile(deg(80), units.MilligramPerLitreCaCO3.Of(checked.Number(alkalinity)),
				water.Calcium.At(units.MilligramPerLitre.Of(checked.Number(calcium)))))
			e := must(p.InAir())
			s := must(FromWater(e.Water(), units.Litre.Of(1)))
			want := must(must(p.AtTemperature(deg(80))).BoiledAt(deg(80), units.Atmosphere{})).AtRest.Amount.In(units.MillimolePerLitre)
			for _, guess := range []float64{0, 1e-5, want / 2000} {
				got := must(j.calcite(s, water.AirCO2(units.Atmosphere{}), guess))
				if math.Abs(1000*got-want) > 1e-6 {
					t.Errorf("%g, %g mg/L: %g mmol drop, want %g", calcium, alkalinity, 1000*got, want)
				}
			}
		}
	}
}
