package material

import (
	"errors"
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
