package plan

import (
	"errors"
	"strconv"
	"strings"

	"example.org/zymase/units"
)

// Content is a CO2 content as a brewer writes it: "2.9 vol", "5.7 g/L", "still" for what
// the ferment leaves or "degassed". It keeps which of them it was.
type Content struct {
	volumes units.CarbonDioxideVolumes
	grams   units.CarbonDioxideContent
	byMass  bool
	still   bool // or degassed
	none    bool // degassed
}

const (
	still    = "still"
	degassed = "degassed"
)

// UnmarshalText reads volumes, g/L, "still" or "degassed".
func (c *Content) UnmarshalText(text []byte) error {
	if string(text) == still {
		*c = Content{still: true}
		return nil
	}
	if string(text) == degassed {
		*c = Content{still: true, none: true}
		return nil
	}
	v, err := units.Parse[units.CarbonDioxideVolumes](string(text))
	if err == nil {
		*c = Content{volumes: v}
		return nil
	}
	g, errGrams := units.Parse[units.CarbonDioxideContent](string(text))
	if errGrams == nil {
		*c = Content{grams: g, byMass: true}
		return nil
	}
	if r, ok := errors.AsType[*units.RangeError](errGrams); ok {
		return r
	}
	return &units.ParseError{Input: strings.ToValidUTF8(string(text[:min(len(text), 64)]), "?"), Want: "CO2 content",
		Reason: `write volumes or g/L, "2.9 vol" or "5.7 g/L"; or "still", "degassed"`}
}

// MarshalText writes what was read.
func (c Content) MarshalText() ([]byte, error) { return []byte(c.String()), nil }

// String writes what was read.
func (c Content) String() string {
	if c.none {
		return degassed
	}
	if c.still {
		return still
	}
	if c.byMass {
		return trim(c.grams.In(units.GramCO2PerLitre)) + " g/L"
	}
	return trim(c.volumes.In(units.VolumesCO2)) + " vol"
}

func trim(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }
