package finish

import (
	"errors"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// A law that is none of the list is refused, not read as one without limits.
func TestNoSuchLaw(t *testing.T) {
	const nowhere law.Jurisdiction = 9
	some, litre := units.MilligramPerLitre.Of(30), units.Litre.Of(1)
	sulfite := func(j law.Jurisdiction) (any, error) {
		return SulfiteFor(material.PotassiumMetabisulfite(), some, units.MassConcentration{}, units.MassConcentration{}, litre, j)
	}
	sorbate := func(j law.Jurisdiction) (any, error) { return SorbateFor(some, 3.5, litre, j) }
	sweeten := func(j law.Jurisdiction) (any, error) {
		return SweetenLike(check.Must(ParseSweetener("sucralose")), units.GramPerLitre.Of(20), litre, j)
	}
	sour := func(j law.Jurisdiction) (any, error) {
		return Acidify(pure(t), sold(t, water.LacticAcid, 80), 0, 3.5, water.TartaricAcid.TitratedTo(8.2), litre, j)
	}
	for name, f := range map[string]func(law.Jurisdiction) (any, error){"SulfiteFor": sulfite, "SorbateFor": sorbate, "SweetenLike": sweeten, "Acidify": sour} {
		if _, err := f(law.EU); err != nil {
			t.Error(err)
		}
		_, err := f(nowhere)
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.What != "law" || e.Func != "finish."+name {
			t.Errorf("%s: %v", name, err)
		}
	}
}

// A salt without sulfur dioxide is refused, and so is none at all.
func TestNoSuchSulfite(t *testing.T) {
	some := units.MilligramPerLitre.Of(30)
	for _, m := range []material.Material{{}, material.Gypsum()} {
		_, err := SulfiteFor(m, some, units.MassConcentration{}, units.MassConcentration{}, units.Litre.Of(1), law.EU)
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.What != "sulfite" || e.Func != "finish.SulfiteFor" {
			t.Error(err)
		}
	}
}

// The sentence that ends other cautions is that of the law's own.
func TestCheckTheLaw(t *testing.T) {
	if law.CheckTheLaw.Text() != checkTheLaw {
		t.Error(checkTheLaw)
	}
}
