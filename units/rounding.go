package units

import "slices"

// Rounding says which multiple of a step is taken.
type Rounding int

// Ways to round.
const (
	Nearest Rounding = iota // the nearest multiple, halves away from zero
	Up                      // the next multiple up: what to buy
	Down                    // the next multiple down: what a limit allows
)

var roundings = []string{"nearest", "up", "down"}

// String is "nearest", "up" or "down".
func (r Rounding) String() string {
	if r < 0 || int(r) >= len(roundings) {
		return "unknown"
	}
	return roundings[r]
}

// MarshalText is [Rounding.String]; a value that is none of the three is a [*RangeError].
func (r Rounding) MarshalText() ([]byte, error) {
	if r < Nearest || r > Down {
		return nil, &RangeError{Func: "units.Rounding.MarshalText", Quantity: "rounding", Value: float64(r), Max: float64(Down), Source: "nearest, up or down"}
	}
	return []byte(r.String()), nil
}

// UnmarshalText reads what [Rounding.MarshalText] writes. The error is a [*ParseError].
func (r *Rounding) UnmarshalText(text []byte) error {
	i := slices.Index(roundings, string(text))
	if i < 0 {
		return reject(string(text), &dimension{name: "rounding"}, "write nearest, up or down")
	}
	*r = Rounding(i)
	return nil
}
