package nutrient

import (
	"errors"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

func TestSourcesByName(t *testing.T) {
	for _, m := range Sources() {
		if got, err := material.FindAmong(" "+strings.ToUpper(m.Name())+" ", Sources()...); err != nil || got != m {
			t.Errorf("%s: got %v, %v", m, got, err)
		}
	}
	for text, want := range map[string]string{
		"DAP": "diammonium phosphate", "MAP": "monoammonium phosphate",
		"organic": "autolysed yeast", "yeast autolysate": "autolysed yeast", "thiamine": "thiamine hydrochloride",
	} {
		if got, err := material.FindAmong(text, Sources()...); err != nil || got.Name() != want {
			t.Errorf("%s: got %v, %v", text, got, err)
		}
	}
	for text, choice := range map[string]string{"": "urea", "zinc sulfate": "zinc sulfate monohydrate", "nitrogen": "urea", "gypsum": "urea",
		"yeast hulls": "autolysed yeast", strings.Repeat("é", 1000): "urea"} {
		_, err := material.FindAmong(text, Sources()...)
		if e, ok := errors.AsType[*units.NameError](err); !ok || !strings.Contains(strings.Join(e.Choices, "|"), choice) {
			t.Errorf("%q: %v", text, err)
		}
	}
}

// Which limit of 27 CFR 24.246 a material falls under: the substances it names.
func TestGroupOfAnOffer(t *testing.T) {
	food := check.Must(material.ByLabel("food", material.Composition{AmmoniumNitrogen: units.Percent.Of(8), AminoNitrogen: units.Percent.Of(4),
		Phosphorus: units.Percent.Of(10)}))
	for m, want := range map[material.Material]string{
		material.DiammoniumPhosphate(): "ammonium phosphate", material.MonoammoniumPhosphate(): "ammonium phosphate", food: "ammonium phosphate",
		material.AmmoniumSulfate(): "ammonium sulfate", shelf.Material("ammonium chloride"): "no listed substance", shelf.Material("urea"): "no listed substance",
		material.AutolysedYeast(): "no listed substance", shelf.Material("thiamine hydrochloride"): "thiamine hydrochloride",
		shelf.Material("zinc sulfate monohydrate"): "zinc",
		material.EpsomSalt():                       "no listed substance", {}: "no listed substance",
	} {
		if got := (Offer{Material: m}).group(); got.String() != want {
			t.Errorf("%s: %v, want %s", m, got, want)
		}
	}
	if got := (Offer{Material: food, Group: law.YeastCellWalls}).group(); got != law.YeastCellWalls {
		t.Error(got)
	}
	_, err := FeedInOrder(units.MilligramPerLitre.Of(50), units.Litre.Of(1), law.US, Offer{Material: food, Group: 99})
	if e, ok := errors.AsType[*units.NameError](err); !ok || e.Func != "nutrient.FeedInOrder" {
		t.Error(err)
	}
}

// 1 g/L of diammonium phosphate brings 212.14 mg/L of nitrogen, and the US limit of
// 0.95861 g/L 203.4 mg/L (stoichiometry).
func TestSupply(t *testing.T) {
	s := check.Must(SupplyOf(units.Litre.Of(60), material.DiammoniumPhosphate().Dose(units.Gram.Of(60))))
	check.Near(t, "N", s.Nitrogen().In(units.MilligramPerLitre), 212.14, 0.005, "stoichiometry")
	l := check.Must(law.US.Limits(law.AmmoniumPhosphate, law.Wine))[0]
	m := units.Gram.Of(0.95861)
	check.Near(t, "limit", l.Concentration().In(units.GramPerLitre), 0.95861, 5e-6, "27 CFR 24.246")
	s = check.Must(SupplyOf(units.Litre.Of(1), material.DiammoniumPhosphate().Dose(m)))
	check.Near(t, "N at the limit", s.Nitrogen().In(units.MilligramPerLitre), 203.4, 0.05, "stoichiometry")
}

func TestSupplyAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := Sources()
		v := units.Litre.Of(1)
		a := rapid.Float64Range(0, 100).Draw(t, "first, g")
		b := rapid.Float64Range(0, 100).Draw(t, "second, g")
		s := all[rapid.IntRange(0, len(all)-1).Draw(t, "source")]
		ma, mb := check.Must(units.Gram.Try(a)), check.Must(units.Gram.Try(b))
		one := check.Must(SupplyOf(v, s.Dose(ma), s.Dose(mb)))
		two := check.Must(SupplyOf(v, s.Dose(ma.Plus(mb))))
		d := one.Nitrogen().In(units.MilligramPerLitre) - two.Nitrogen().In(units.MilligramPerLitre)
		if d > 1e-6 || d < -1e-6 {
			t.Fatalf("differs by %g mg/L", d)
		}
	})
}

func TestSupplyRefuses(t *testing.T) {
	_, err := SupplyOf(units.Volume{})
	check.Refused(t, err, "volume", amount.LeastVolume, amount.MostVolume)
	minus := units.Mass{}.Minus(units.Gram.Of(1))
	_, err = SupplyOf(units.Litre.Of(1), shelf.Material("urea").Dose(minus))
	check.Refused(t, err, "dose", 0, amount.MostMass)
}
