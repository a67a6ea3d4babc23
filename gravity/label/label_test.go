package label_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/internal/check"
	"example.org/zymase/units"
)

func TestNutrition(t *testing.T) {
	s := solution(t, 90, 3, 4)
	s = ok[gravity.Solution](t)(s.AddExtract(gravity.AsDextrin, kg(2)))
	s = ok[gravity.Solution](t)(s.AddExtract(gravity.AsGlycerol, kg(1)))
	s = ok[gravity.Solution](t)(s.AddExtract(gravity.AsOrganicAcid, kg(0.5)))
	n := label.NutritionOf(s)
	per := 100 / ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre) // g in 100 mL of 1 kg in the whole
	for _, c := range []struct {
		what string
		got  units.Mass
		want float64
	}{{"ethanol", n.Ethanol, 4}, {"carbohydrate", n.Carbohydrate, 6}, {"sugars", n.Sugars, 3}, {"polyols", n.Polyols, 1}, {"acids", n.OrganicAcids, 0.5}} {
		near(t, c.what, c.got.In(units.Gram), c.want*per, 1e-9)
	}
	near(t, "kJ", n.Energy.Kilojoules.In(units.Kilojoule), per*(4*29+5*17+1*10+0.5*13), 1e-9)
	near(t, "kcal", n.Energy.Kilocalories.In(units.Kilocalorie), per*(4*7+5*4+1*2.4+0.5*3), 1e-9)
	if z := label.NutritionOf(gravity.Solution{}); z != (label.Nutrition{}) {
		t.Error(z)
	}
}

// kcal/100 g = 6.9·A + 4.0·(RE − ash), times the gravity (The Oxford Companion to Beer
// 2012): a beer of 4 % mass and 4 °P, ash 0.1, gravity 1.0086 has 43.6 kcal.
func TestEnergyUS(t *testing.T) {
	s := solution(t, 92, 4, 4)
	e := ok[units.Energy](t)(label.EnergyUS(s, percent(0.1)))
	near(t, "kcal", e.In(units.Kilocalorie), (6.9*4+4*3.9)*s.Gravity().SG(), 1e-9)
	near(t, "kcal", e.In(units.Kilocalorie), 43.6, 0.1)
	near(t, "kJ", e.In(units.Kilojoule), 43.6*4.184, 0.4)
	for _, a := range []float64{-0.1, 1.1, math.NaN()} {
		_, err := label.EnergyUS(s, percent(a))
		refused(t, "ash", err, "ash")
	}
	ok[units.Energy](t)(label.EnergyUS(s, percent(1)))
	_, err := label.EnergyUS(solution(t, 96, 0, 4), percent(0.1))
	refused(t, "ash", err, "ash")
}

// 21 CFR 101.9(c)(1), recalled from memory.
func TestRoundCaloriesUS(t *testing.T) {
	for kcal, want := range map[float64]float64{0: 0, 4.9: 0, 5: 5, 7.4: 5, 47.4: 45, 50: 50, 51: 50, 54.9: 50, 55: 60, 98: 100, 143: 140} {
		got := ok[units.Energy](t)(label.RoundCaloriesUS(kcalOf(kcal)))
		near(t, "rounded", got.In(units.Kilocalorie), want, 1e-9)
	}
	for _, kcal := range []float64{-1, 1.1e6, math.NaN()} {
		_, err := label.RoundCaloriesUS(kcalOf(kcal))
		refused(t, "energy", err, "energy")
	}
	ok[units.Energy](t)(label.RoundCaloriesUS(kcalOf(1e6)))
}

// Regulation (EU) 1169/2011 annex XII (read); 27 CFR 19.356: label 40, 39.7 to 40.3 (read);
// 27 CFR 7.65: 0.3 from 0.5 % vol up, none below (recalled from memory).
func TestLabelTolerance(t *testing.T) {
	for _, c := range []struct {
		c       label.Category
		v, want float64
		name    string
	}{
		{label.EUBeer, 4.6, 0.5, "EU beer"}, {label.EUBeer, 5.5, 0.5, "EU beer"}, {label.EUBeer, 5.6, 1.0, "EU beer"},
		{label.EUCider, 4.6, 1.0, "EU cider, perry, mead, fruit wine"}, {label.EUMacerated, 4.6, 1.5, "EU drink with macerated fruit or plants"},
		{label.EUOther, 4.6, 0.3, "EU other drink"}, {label.USMaltDrink, 5, 0.3, "US malt beverage"}, {label.USMaltDrink, 0.5, 0.3, "US malt beverage"},
		{label.USMaltDrink, 0.4, 0, "US malt beverage"}, {label.USSpirit, 40, 0.3, "US distilled spirit"},
		{label.EUGrape, 8, 0.5, "EU still grape drink of 2206 00"}, {label.USWine, 14, 1.5, "US wine"}, {label.USWine, 14.1, 1.0, "US wine"},
	} {
		got := ok[units.PercentagePoints](t)(c.c.Tolerance(volPct(c.v)))
		near(t, c.c.String(), got.In(units.PercentagePoint), c.want, 0)
		if c.c.String() != c.name {
			t.Errorf("%q, not %q", c.c, c.name)
		}
	}
	for _, c := range []label.Category{-1, 8} {
		_, err := c.Tolerance(volPct(5))
		unknown(t, err, "category of drink")
		if _, err := c.MarshalText(); err == nil || !strings.HasPrefix(c.String(), "unknown") {
			t.Error(c)
		}
	}
	for _, v := range []float64{-1, 101} {
		_, err := label.EUOther.Tolerance(volPct(v))
		refused(t, "strength", err, "strength")
	}
	for v, want := range map[float64]float64{4.64: 4.6, 4.66: 4.7, 0.44: 0.4, -1: 0, 120: 100, math.NaN(): 0, math.Inf(1): 100} {
		near(t, "label", label.Strength(volPct(v)).In(units.PercentVolume), want, 1e-12)
	}
}

// Guidance document on tolerances (2012), table 4, recalled from memory.
func TestRoundEU(t *testing.T) {
	g := func(v float64) units.Mass { return kg(v / 1000) }
	n := label.Nutrition{Ethanol: g(3.8), Carbohydrate: g(10.6), Sugars: g(9.94), Polyols: g(0.5)}
	n.Energy.Kilojoules, n.Energy.Kilocalories = units.Kilojoule.Of(153.5), kcalOf(37.4)
	r := n.RoundEU()
	near(t, "kJ", r.Energy.Kilojoules.In(units.Kilojoule), 154, 1e-12)
	near(t, "kcal", r.Energy.Kilocalories.In(units.Kilocalorie), 37, 1e-12)
	near(t, "carbohydrate", r.Carbohydrate.In(units.Gram), 11, 1e-12)
	near(t, "sugars", r.Sugars.In(units.Gram), 9.9, 1e-12)
	near(t, "polyols", r.Polyols.In(units.Gram), 0, 0)
	near(t, "polyols", label.Nutrition{Polyols: g(0.56)}.RoundEU().Polyols.In(units.Gram), 0.6, 1e-12)
	near(t, "polyols", label.Nutrition{Polyols: g(0.52)}.RoundEU().Polyols.In(units.Gram), 0.5, 1e-12)
	near(t, "ethanol", r.Ethanol.In(units.Gram), 3.8, 1e-12)
}

// A dry sugar wash of 11.85 % vol, by hand: 16.83 g of hexose a litre for each % vol (French
// order of 3 May 1996) are 199.4 g/L, of which Pasteur (1860, recalled) found 3.16 in 105.26
// as glycerol and 0.67 as succinic acid: 5.99 and 1.27 g/L. Carbohydrate includes polyols
// (Regulation (EU) No 1169/2011 annex I, read); no sugar is left.
func TestNutritionOfADryWash(t *testing.T) {
	y := gravity.SugarWashYield(gravity.AsSucrose)
	f := ok[gravity.Fermentation](t)(gravity.FromStrengthAndReal(volPct(11.85), plato(0.7400), y))
	dry, _, err := f.Wort().Dry(y)
	if err != nil {
		t.Fatal(err)
	}
	n, v := label.NutritionOf(dry), dry.ByVolume().In(units.PercentVolume)
	near(t, "strength", v, 11.85, 0.03)
	near(t, "polyols", n.Polyols.In(units.Gram), 0.599*v/11.85, 0.001)
	near(t, "acids", n.OrganicAcids.In(units.Gram), 0.127*v/11.85, 0.001)
	near(t, "carbohydrate", n.Carbohydrate.In(units.Gram), 0.599*v/11.85, 0.001)
	near(t, "sugars", n.Sugars.In(units.Gram), 0, 1e-9)
	near(t, "on the label", n.RoundEU().Carbohydrate.In(units.Gram), 0.6, 1e-12)
	near(t, "kJ", n.Energy.Kilojoules.In(units.Kilojoule), 29*0.78924*v+10*0.599+13*0.127, 0.1)
}

// Half a kilogram has the label of any other amount.
func TestNutritionOfLittle(t *testing.T) {
	s := solution(t, 0.45, 0.03, 0.02)
	d := ok[units.Density](t)(s.Density(celsius(20))).In(units.KilogramPerCubicMetre)
	near(t, "sugars", label.NutritionOf(s).Sugars.In(units.Gram), 0.06*d/10, 1e-9)
	near(t, "ethanol", label.NutritionOf(s).Ethanol.In(units.Gram), 0.04*d/10, 1e-9)
}

// Refusals name the quantity and the limits that the doc comments state, and no number stands
// beside them.
func TestLimits(t *testing.T) {
	type of struct {
		v   float64
		err error
	}
	number := func(v float64, err error) of { return of{v, err} }
	energy := func(e units.Energy, err error) of { return of{e.In(units.Kilojoule), err} }
	points := func(p units.PercentagePoints, err error) of { return of{p.In(units.PercentagePoint), err} }
	for _, c := range []struct {
		got         of
		quantity    string
		least, most float64
	}{
		{number(label.DrinkUS.Count(volPct(5), litre(-1))), "volume", 0, 1e12},
		{number(label.DrinkUS.Count(volPct(5), litre(1.01e12))), "volume", 0, 1e12},
		{number(label.DrinkUS.Count(volPct(101), litre(1))), "strength", 0, 100},
		{number(label.DrinkUS.Count(volPct(-5), litre(1))), "strength", 0, 100},
		{number(label.RoundDrinks(-1)), "measures", 0, 1e12},
		{number(label.RoundDrinks(1.01e12)), "measures", 0, 1e12},
		{points(label.EUBeer.Tolerance(volPct(101))), "strength", 0, 100},
		{energy(label.RoundCaloriesUS(kcalOf(-1))), "energy", 0, 1e6},
		{energy(label.EnergyUS(solution(t, 95.5, 0.5, 4), percent(2))), "ash", 0, 0.5}, // the real extract
		{energy(label.EnergyUS(solution(t, 90, 6, 4), percent(2))), "ash", 0, 1},
	} {
		e := check.OutOfRange(t, c.quantity, c.got.err, c.quantity)
		near(t, c.quantity+", least", e.Min, c.least, 1e-12)
		near(t, c.quantity+", most", e.Max, c.most, 1e-12)
		near(t, c.quantity, c.got.v, 0, 0)
	}
}

// Facts and enumerations come back from JSON as they were; unknown ones are refused.
func TestTravels(t *testing.T) {
	s := solution(t, 90, 3, 4)
	check.Travels(t, label.NutritionOf(s))
	check.Travels(t, label.EnergyEU(s))
	check.Travels(t, []label.StandardDrink{label.DrinkUS, label.UnitUK, label.DrinkAU})
	for c := label.EUBeer; c <= label.USWine; c++ {
		check.Travels(t, c)
	}
	for _, v := range []any{label.StandardDrink(-1), label.StandardDrink(3), label.Category(8)} {
		_, err := json.Marshal(v)
		if _, ok := errors.AsType[*units.NameError](err); !ok {
			t.Errorf("%T: %v", v, err)
		}
	}
	var c label.Category
	var d label.StandardDrink
	if json.Unmarshal([]byte(`"EU bier"`), &c) == nil || json.Unmarshal([]byte(`"pint"`), &d) == nil {
		t.Error("read")
	}
}
