package water

import (
	"encoding"
	"encoding/json"
	"errors"
	"fmt"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// refused reports whether an error says what was wrong: a number out of its range, an
// unknown name, or a value in the wrong state.
func refused(err error) bool {
	_, isRange := errors.AsType[*units.RangeError](err)
	_, isName := errors.AsType[*units.NameError](err)
	_, isState := errors.AsType[*units.StateError](err)
	return isRange || isName || isState
}

// Each enumeration writes its text, reads it back, and refuses a number or a text that it
// does not know: not one of them becomes the first in silence.
func TestEnumerationsAsText(t *testing.T) {
	type reader interface {
		encoding.TextUnmarshaler
		fmt.Stringer
	}
	check := func(name string, count int, make func(int) (encoding.TextMarshaler, reader)) {
		seen := map[string]bool{}
		for i := range count {
			from, into := make(i)
			text, err := from.MarshalText()
			if err != nil || len(text) == 0 || seen[string(text)] {
				t.Errorf("%s %d: %q, %v", name, i, text, err)
			}
			seen[string(text)] = true
			if err := into.UnmarshalText(text); err != nil || into.String() != fmt.Sprint(from) {
				t.Errorf("%s %q: %v, %v", name, text, into, err)
			}
		}
		for _, i := range []int{-1, count} {
			from, into := make(i)
			if _, err := from.MarshalText(); !refused(err) {
				t.Errorf("%s %d: error %v", name, i, err)
			}
			if _, err := json.Marshal(from); err == nil {
				t.Errorf("%s %d: no error", name, i)
			}
			if err := into.UnmarshalText([]byte("unobtainium")); !refused(err) {
				t.Errorf("%s: error %v", name, err)
			}
		}
	}
	check("acid", int(acidCount), func(i int) (encoding.TextMarshaler, reader) { return Acid(i), new(Acid) })
	check("ion", int(ionCount), func(i int) (encoding.TextMarshaler, reader) { return Ion(i), new(Ion) })
	check("species", int(speciesCount), func(i int) (encoding.TextMarshaler, reader) { return Species(i), new(Species) })
	check("mineral", int(mineralCount), func(i int) (encoding.TextMarshaler, reader) { return Mineral(i), new(Mineral) })
	check("form", 10, func(i int) (encoding.TextMarshaler, reader) { return Form(i), new(Form) })
	check("authority", 3, func(i int) (encoding.TextMarshaler, reader) { return Authority(i), new(Authority) })
	check("chlorine", 2, func(i int) (encoding.TextMarshaler, reader) { return ChlorineAs(i), new(ChlorineAs) })
}

// As an argument, too, a value that is none of the constants is refused by name.
func TestUnknownKindsAsArguments(t *testing.T) {
	known := reports[0].equilibrium(t, 20).Water()
	_, acid := known.AddAcid(-1, units.Amount{}, litres(1))
	_, ion := known.DilutionFor(-1, mgL(1))
	_, mineral := known.AtRestWith(-1, CO2Loss{})
	_, form := (ReportLine{Calcium, 1, -1}).millimoles("test")
	for what, err := range map[string]error{"acid": acid, "ion": ion, "mineral": mineral, "form of a reading": form} {
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.What != what || e.Name != "-1" {
			t.Errorf("%s: %v", what, err)
		}
	}
}

// A water whose pH nobody gave is in the wrong state, not out of a range.
func TestUnknownPHIsAState(t *testing.T) {
	p := reports[0].profile(t, 20)
	_, state := p.Equilibrium()
	_, acid := p.AcidToPH(LacticAcid, 5, litres(1), CO2Loss{})
	_, base := p.BaseToPH(material.BakingSoda(), 8, litres(1))
	_, membrane := p.Permeate(units.Percent.Of(95))
	_, rest := p.AtRestWith(Calcite, CO2Loss{})
	for fn, err := range map[string]error{"Equilibrium": state, "AcidToPH": acid, "BaseToPH": base, "Permeate": membrane, "AtRestWith": rest} {
		if e, ok := errors.AsType[*units.StateError](err); !ok || e.Func != "water.Profile."+fn {
			t.Errorf("%s: %v", fn, err)
		}
	}
}
