package material

import (
	"encoding/json"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// ByLabel returns a material of one's own by the figures on its label or in its analysis:
// an organic blend, a mixed yeast food, a syrup. Ammonium and amino nitrogen are two
// fields: ammonium sets acid free, amino nitrogen does not.
//
// Errors are a [*units.RangeError]: a share below zero, parts that add up to more than the
// whole; a [*units.ParseError] for a name that is empty, longer than 256 bytes, or that of a
// known material.
func ByLabel(name string, c Composition) (Material, error) {
	const fn = "material.ByLabel"
	f := facts{name: strings.TrimSpace(name), brings: c, evidence: read("the label"), cautions: cautionsOf(&c)}
	if err := f.check(fn); err != nil {
		return Material{}, err
	}
	return Material{&f}, nil
}

// check refuses what is not a material of one's own.
func (f *facts) check(fn string) error {
	refuse := func(reason string) error {
		return &units.ParseError{Input: strings.ToValidUTF8(f.name[:min(len(f.name), longestOwn)], "?"), Want: "name for a material", Reason: reason}
	}
	if f.name == "" || len(f.name) > longestOwn || strings.ToValidUTF8(f.name, "") != f.name {
		return refuse("it must have 1 to 256 bytes of text")
	}
	if _, taken := byName[key(f.name)]; taken && !variable[f.name] {
		return refuse("this is a known material; call yours by the maker's name")
	}
	if err := f.brings.check(fn); err != nil {
		return err
	}
	return limit.Check(fn, "spread", 100*f.spread, "%", 0, 100, "a relative uncertainty")
}

const (
	longestName = 64  // of what is looked up
	longestOwn  = 256 // a mix has the names of its parts
)

// variable are the names of what differs from pack to pack, so that a known material and
// one by its analysis share them.
var variable = map[string]bool{"honey": true, "invert sugar syrup": true}

// written is a material of one's own as JSON has it.
type written struct {
	Name     string            `json:"name"`
	Brings   Composition       `json:"brings"`
	Spread   units.Share       `json:"spread,omitzero"`
	Density  units.Density     `json:"density,omitzero"`
	Evidence evidence.Evidence `json:"evidence,omitzero"`
	Cautions caution.List      `json:"cautions,omitempty"`
}

// MarshalText is the name of a known material, and of one's own the JSON object that
// [Material.MarshalJSON] gives: what is written can be read anywhere. The zero Material is
// a [*units.StateError].
func (m Material) MarshalText() ([]byte, error) { return m.text("material.Material.MarshalText") }

func (m Material) text(fn string) ([]byte, error) {
	f := m.facts()
	if f == &nothing {
		return nil, &units.StateError{Func: fn, What: "material", Why: "is none: take a known one, Find or ByLabel"}
	}
	if byName[key(f.name)] == m { // its own facts, not a label of that name
		return []byte(f.name), nil
	}
	return json.Marshal(written{f.name, f.brings, share(f.spread), m.Density(), f.evidence, f.cautions})
}

// UnmarshalText reads what [Material.MarshalText] writes: any name that [Find] knows, or
// the JSON object of a material of one's own. Errors are those of [Find] and [ByLabel].
func (m *Material) UnmarshalText(text []byte) error {
	const fn = "material.Material.UnmarshalText"
	if trimmed := strings.TrimSpace(string(text)); strings.HasPrefix(trimmed, "{") {
		return m.readOwn(fn, []byte(trimmed))
	}
	found, err := find(fn, string(text))
	if err == nil {
		*m = found
	}
	return err
}

func (m *Material) readOwn(fn string, text []byte) error {
	var w written
	if err := json.Unmarshal(text, &w); err != nil {
		return err
	}
	f := facts{name: w.Name, brings: w.Brings, spread: w.Spread.In(units.Fraction), evidence: w.Evidence, cautions: w.Cautions}
	if err := f.check(fn); err != nil {
		return err
	}
	own := Material{&f}
	if !w.Density.IsZero() {
		var err error
		if own, err = own.WithDensity(w.Density); err != nil {
			return limit.Named(fn, err)
		}
	}
	*m = own
	return nil
}

// MarshalJSON is the name of a known material as a string, and of one's own an object with
// its name, what it brings, evidence and cautions.
func (m Material) MarshalJSON() ([]byte, error) {
	text, err := m.text("material.Material.MarshalJSON")
	if err != nil || text[0] == '{' {
		return text, err
	}
	return json.Marshal(string(text))
}

// UnmarshalJSON reads what [Material.MarshalJSON] writes.
func (m *Material) UnmarshalJSON(text []byte) error {
	if strings.HasPrefix(strings.TrimSpace(string(text)), "{") {
		return m.readOwn("material.Material.UnmarshalJSON", text)
	}
	var name string
	if err := json.Unmarshal(text, &name); err != nil {
		return err
	}
	return m.UnmarshalText([]byte(name))
}
