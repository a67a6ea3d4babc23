package gravity_test

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func TestNutrition(t *testing.T) {
	s := solution(t, 90, 3, 4)
	s = ok[gravity.Solution](t)(s.AddExtract(gravity.AsDextrin, kg(2)))
	s = ok[gravity.Solution](t)(s.AddExtract(gravity.AsGlycerol, kg(1)))
	s = ok[gravity.Solution](t)(s.AddExtract(gravity.AsOrganicAcid, kg(0.5)))
	n := s.Nutrition()
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
	if z := (gravity.Solution{}).Nutrition(); z != (gravity.Nutrition{}) {
		t.Error(z)
	}
}

// kcal/100 g = 6.9·A + 4.0·(RE − ash), times the gravity (The Oxford Companion to Beer
// 2012): a beer of 4 % mass and 4 °P, ash 0.1, gravity 1.0086 has 43.6 kcal.
func TestEnergyUS(t *testing.T) {
	s := solution(t, 92, 4, 4)
	e := ok[units.Energy](t)(s.EnergyUS(percent(0.1)))
	near(t, "kcal", e.In(units.Kilocalorie), (6.9*4+4*3.9)*s.Gravity().SG(), 1e-9)
	near(t, "kcal", e.In(units.Kilocalorie), 43.6, 0.1)
	near(t, "kJ", e.In(units.Kilojoule), 43.6*4.184, 0.4)
	for _, a := range []float64{-0.1, 1.1, math.NaN()} {
		_, err := s.EnergyUS(percent(a))
		refused(t, "ash", err, "ash")
	}
	ok[units.Energy](t)(s.EnergyUS(percent(1)))
	_, err := solution(t, 96, 0, 4).EnergyUS(percent(0.1))
	refused(t, "ash", err, "ash")
}

// 21 CFR 101.9(c)(1), recalled from memory.
func TestRoundCaloriesUS(t *testing.T) {
	for kcal, want := range map[float64]float64{0: 0, 4.9: 0, 5: 5, 7.4: 5, 47.4: 45, 50: 50, 51: 50, 54.9: 50, 55: 60, 98: 100, 143: 140} {
		got := ok[units.Energy](t)(gravity.RoundCaloriesUS(kcalOf(kcal)))
		near(t, "rounded", got.In(units.Kilocalorie), want, 1e-9)
	}
	for _, kcal := range []float64{-1, 1.1e6, math.NaN()} {
		_, err := gravity.RoundCaloriesUS(kcalOf(kcal))
		refused(t, "energy", err, "energy")
	}
	ok[units.Energy](t)(gravity.RoundCaloriesUS(kcalOf(1e6)))
}

// Regulation (EU) 1169/2011 annex XII (read); 27 CFR 19.356: label 40, 39.7 to 40.3 (read);
// 27 CFR 7.65: 0.3 from 0.5 % vol up, none below (recalled from memory).
func TestLabelTolerance(t *testing.T) {
	for _, c := range []struct {
		c       gravity.Category
		v, want float64
		name    string
	}{
		{gravity.EUBeer, 4.6, 0.5, "EU beer"}, {gravity.EUBeer, 5.5, 0.5, "EU beer"}, {gravity.EUBeer, 5.6, 1.0, "EU beer"}, {gravity.EUCider, 4.6, 1.0, "EU cider, perry, mead, fruit wine"}, {gravity.EUMacerated, 4.6, 1.5, "EU drink with macerated fruit or plants"},
		{gravity.EUOther, 4.6, 0.3, "EU other drink"}, {gravity.USMaltDrink, 5, 0.3, "US malt beverage"}, {gravity.USMaltDrink, 0.5, 0.3, "US malt beverage"}, {gravity.USMaltDrink, 0.4, 0, "US malt beverage"}, {gravity.USSpirit, 40, 0.3, "US distilled spirit"}, {gravity.EUGrape, 8, 0.5, "EU still grape drink of 2206 00"}, {gravity.USWine, 14, 1.5, "US wine"}, {gravity.USWine, 14.1, 1.0, "US wine"},
	} {
		got := ok[units.PercentagePoints](t)(gravity.LabelTolerance(c.c, volPct(c.v)))
		near(t, c.c.String(), got.In(units.PercentagePoint), c.want, 0)
		if c.c.String() != c.name {
			t.Errorf("%q, not %q", c.c, c.name)
		}
	}
	for _, c := range []gravity.Category{-1, 8} {
		_, err := gravity.LabelTolerance(c, volPct(5))
		unknown(t, err, "category of drink")
		if _, err := c.MarshalText(); err == nil || !strings.HasPrefix(c.String(), "unknown") {
			t.Error(c)
		}
	}
	for _, v := range []float64{-1, 101} {
		_, err := gravity.LabelTolerance(gravity.EUOther, volPct(v))
		refused(t, "strength", err, "strength")
	}
	for v, want := range map[float64]float64{4.64: 4.6, 4.66: 4.7, -1: 0, 120: 100} {
		near(t, "label", gravity.LabelStrength(volPct(v)).In(units.PercentVolume), want, 1e-12)
	}
}

// Guidance document on tolerances (2012), table 4, recalled from memory.
func TestRoundEU(t *testing.T) {
	g := func(v float64) units.Mass { return kg(v / 1000) }
	n := gravity.Nutrition{Ethanol: g(3.8), Carbohydrate: g(10.6), Sugars: g(9.94), Polyols: g(0.5)}
	n.Energy.Kilojoules, n.Energy.Kilocalories = units.Kilojoule.Of(153.5), kcalOf(37.4)
	r := n.RoundEU()
	near(t, "kJ", r.Energy.Kilojoules.In(units.Kilojoule), 154, 1e-12)
	near(t, "kcal", r.Energy.Kilocalories.In(units.Kilocalorie), 37, 1e-12)
	near(t, "carbohydrate", r.Carbohydrate.In(units.Gram), 11, 1e-12)
	near(t, "sugars", r.Sugars.In(units.Gram), 9.9, 1e-12)
	near(t, "polyols", r.Polyols.In(units.Gram), 0, 0)
	near(t, "polyols", gravity.Nutrition{Polyols: g(0.56)}.RoundEU().Polyols.In(units.Gram), 0.6, 1e-12)
	near(t, "polyols", gravity.Nutrition{Polyols: g(0.52)}.RoundEU().Polyols.In(units.Gram), 0.5, 1e-12)
	near(t, "ethanol", r.Ethanol.In(units.Gram), 3.8, 1e-12)
}

// Organic acids weigh and bend light as glycerol does, for want of a table: said, and held.
func TestOrganicAcidIsAsGlycerol(t *testing.T) {
	acid := ok[gravity.Solution](t)(solution(t, 95, 0, 4).AddExtract(gravity.AsOrganicAcid, kg(1)))
	glycerol := ok[gravity.Solution](t)(solution(t, 95, 0, 4).AddExtract(gravity.AsGlycerol, kg(1)))
	near(t, "gravity", acid.Gravity().SG(), glycerol.Gravity().SG(), 1e-12)
	near(t, "index", ok[float64](t)(acid.RefractiveIndex()), ok[float64](t)(glycerol.RefractiveIndex()), 1e-12)
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
	n, v := dry.Nutrition(), dry.ByVolume().In(units.PercentVolume)
	near(t, "strength", v, 11.85, 0.03)
	near(t, "polyols", n.Polyols.In(units.Gram), 0.599*v/11.85, 0.001)
	near(t, "acids", n.OrganicAcids.In(units.Gram), 0.127*v/11.85, 0.001)
	near(t, "carbohydrate", n.Carbohydrate.In(units.Gram), 0.599*v/11.85, 0.001)
	near(t, "sugars", n.Sugars.In(units.Gram), 0, 1e-9)
	near(t, "on the label", n.RoundEU().Carbohydrate.In(units.Gram), 0.6, 1e-12)
	near(t, "kJ", n.Energy.Kilojoules.In(units.Kilojoule), 29*0.78924*v+10*0.599+13*0.127, 0.1)
}
