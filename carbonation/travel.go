package carbonation

import (
	"encoding/json"
	"errors"
	"strconv"
	"strings"

	"example.org/zymase/units"
)

// What has no fields to read goes out as text, or says that it does not.

// MarshalText is [Lethality.String] of [DelVecchio] and [Handbook], and "z 8 K" of another.
// The zero Lethality is a [*units.StateError].
func (l Lethality) MarshalText() ([]byte, error) {
	if l.z == 0 {
		return nil, &units.StateError{Func: "carbonation.Lethality.MarshalText", What: "lethality", Why: "is none: take Handbook, DelVecchio or NewLethality"}
	}
	if l == DelVecchio() || l == Handbook() {
		return []byte(l.name), nil
	}
	return []byte("z " + strconv.FormatFloat(l.z, 'g', -1, 64) + " K"), nil
}

// UnmarshalText reads what [Lethality.MarshalText] writes. Errors are a
// [*units.ParseError], and that of [NewLethality].
func (l *Lethality) UnmarshalText(text []byte) error {
	for _, known := range []Lethality{DelVecchio(), Handbook()} {
		if known.name == string(text) {
			*l = known
			return nil
		}
	}
	z, ok := strings.CutPrefix(string(text), "z ")
	k, err := units.Parse[units.TemperatureDifference](z)
	if !ok || err != nil {
		return &units.ParseError{Input: clipped(text), Want: "lethality", Reason: "write its z (z 8 K), 1.393^(T-60) or 10^((T-60)/7)"}
	}
	read, err := NewLethality(k)
	if err == nil {
		*l = read
	}
	return err
}

func clipped(text []byte) string {
	return strings.ToValidUTF8(string(text[:min(len(text), 64)]), "?")
}

// MarshalJSON refuses: a Liquid is worked out from a solution, so write that. The error is
// a [*units.StateError].
func (l Liquid) MarshalJSON() ([]byte, error) {
	return nil, &units.StateError{Func: "carbonation.Liquid.MarshalJSON", What: "liquid", Why: "is not written: write the solution that NewLiquid made it of"}
}

// MarshalJSON refuses: a ClosedVessel is worked out, so write the vessel, the drink and the
// filling that it is of. The error is a [*units.StateError].
func (c ClosedVessel) MarshalJSON() ([]byte, error) {
	return nil, &units.StateError{Func: "carbonation.ClosedVessel.MarshalJSON", What: "closed vessel",
		Why: "is not written: write the vessel, the drink and the filling that Close made it of"}
}

// The form of a [Comparison] in JSON.
type comparisonJSON struct {
	Method  Method                     `json:"method"`
	Content units.CarbonDioxideContent `json:"content"`
	Refused *units.RangeError          `json:"refused,omitempty"`
}

// MarshalJSON writes the comparison with the range that was left, where one was.
func (c Comparison) MarshalJSON() ([]byte, error) {
	out := comparisonJSON{Method: c.Method, Content: c.Content}
	if c.Err != nil {
		var ok bool
		if out.Refused, ok = errors.AsType[*units.RangeError](c.Err); !ok {
			return nil, &units.StateError{Func: "carbonation.Comparison.MarshalJSON", What: "comparison", Why: "has an error that is no RangeError"}
		}
	}
	return json.Marshal(out)
}

// UnmarshalJSON reads what [Comparison.MarshalJSON] writes.
func (c *Comparison) UnmarshalJSON(text []byte) error {
	var in comparisonJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	*c = Comparison{Method: in.Method, Content: in.Content}
	if in.Refused != nil {
		c.Err = in.Refused
	}
	return nil
}
