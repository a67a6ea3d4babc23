package material

import (
	"errors"
	"strings"
	"testing"

	"example.org/zymase/units"
)

// Parts that pass the whole by half a part in a hundred are refused, with what is allowed; malt's share of the sugar that
// passes the sugar by as much is refused too.
func TestMoreThanTheWhole(t *testing.T) {
	for name, c := range map[string]Composition{
		"parts":         {Glucose: units.Percent.Of(60), Fructose: units.Percent.Of(40.5)},
		"sugar of malt": {Glucose: units.Percent.Of(50), OfMalt: units.Percent.Of(50.5)},
	} {
		_, err := ByLabel("a syrup of mine", c)
		if re, ok := errors.AsType[*units.RangeError](err); !ok || re.Max > 100.01 {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := ByLabel("a syrup of mine", Composition{Glucose: units.Percent.Of(60), Fructose: units.Percent.Of(40)}); err != nil {
		t.Error(err)
	}
}

// More than one part of zinc in a hundred is weighed as a stock solution; a food with less is not (common practice, no source).
func TestZincIsSaid(t *testing.T) {
	for percent, want := range map[float64]bool{0.9: false, 1.5: true} {
		share, err := units.Percent.Try(percent)
		if err != nil {
			t.Fatal(err)
		}
		m, err := ByLabel("a food of mine", Composition{Zinc: share})
		if err != nil || m.Cautions().Has(zincLittle) != want {
			t.Errorf("%g %%: %v, %v", percent, m.Cautions(), err)
		}
	}
}

// No part passes the whole, by a little or by much: shares of constants may be written beyond it.
func TestNoPartIsMoreThanTheWhole(t *testing.T) {
	over, half := units.Percent.Of(100.5), units.Percent.Of(50)
	for quantity, f := range map[string]func() (Material, error){
		"alkalinity as hydroxide": func() (Material, error) { return ByLabel("a base of mine", Composition{Alkalinity: over}) },
		"acidity as hydroxide":    func() (Material, error) { return ByLabel("an acid of mine", Composition{Acidity: over}) },
		"inverted":                func() (Material, error) { return InvertSyrup(units.Percent.Of(70), over) },
		"fermentable share":       func() (Material, error) { return Juice(units.DegreePlato.Of(12), over) },
		"share":                   func() (Material, error) { return Mix(Ingredient{Sucrose(), over}) },
		"sum of the shares": func() (Material, error) {
			return Mix(Ingredient{Sucrose(), half}, Ingredient{byName["fructose"], units.Percent.Of(50.5)})
		},
	} {
		_, err := f()
		if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Quantity != quantity || e.Max < 100 || e.Max > 100.0001 {
			t.Errorf("%s: %v", quantity, err)
		}
	}
}

// Lactic acid of more than half its mass holds lactoyllactic acid, which 80 and 88 % do; a weaker one is
// measured as it is (common practice, no source).
func TestLactoyllacticIsSaid(t *testing.T) {
	for percent, want := range map[units.Share]bool{units.Percent.Of(49.5): false, units.Percent.Of(50.5): true} {
		m, err := ByLabel("an acid of mine", Composition{Lactate: percent, Acidity: units.Percent.Of(9)})
		if err != nil || m.Cautions().Has(lactoyllactic) != want {
			t.Errorf("%v: %v, %v", percent, m.Cautions(), err)
		}
	}
}

// A name is looked up in 64 bytes, and one near name of a list is offered alone.
func TestNamesLookedUp(t *testing.T) {
	if _, err := Find("gypsum" + strings.Repeat(" ", 58)); err != nil {
		t.Error(err)
	}
	if _, err := Find("gypsum" + strings.Repeat(" ", 59)); err == nil {
		t.Error("65 bytes are read")
	}
	_, err := FindAmong("gypsm", Gypsum(), Sucrose())
	if e, ok := errors.AsType[*units.NameError](err); !ok || len(e.Choices) != 1 || e.Choices[0] != Gypsum().Name() {
		t.Errorf("%v", err)
	}
}

// An invert syrup of 70 % solids, half of them inverted: 17.5 % each of glucose and fructose, 35 % sucrose, by its definition
// (Council Directive 2001/111/EC: a share of the dry matter).
func TestInvertSyrupByHand(t *testing.T) {
	m, err := InvertSyrup(units.Percent.Of(70), units.Percent.Of(50))
	if err != nil {
		t.Fatal(err)
	}
	c := m.Composition()
	for what, of := range map[string][2]float64{
		"glucose": {c.Glucose.In(units.Percent), 17.5}, "fructose": {c.Fructose.In(units.Percent), 17.5}, "sucrose": {c.Disaccharides.In(units.Percent), 35},
	} {
		if d := of[0] - of[1]; d > 1e-9 || d < -1e-9 {
			t.Errorf("%s: %v %%, want %v", what, of[0], of[1])
		}
	}
}
