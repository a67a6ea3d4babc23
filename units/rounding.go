package units

import (
	"slices"
	"strconv"
)

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

// MarshalText is [Rounding.String]; a value that is none of the three is a [*NameError].
func (r Rounding) MarshalText() ([]byte, error) {
	if err := r.check("units.Rounding.MarshalText"); err != nil {
		return nil, err
	}
	return []byte(r.String()), nil
}

// UnmarshalText reads what [Rounding.MarshalText] writes. The error is a [*NameError].
func (r *Rounding) UnmarshalText(text []byte) error {
	i := slices.Index(roundings, string(text))
	if i < 0 {
		return &NameError{Func: "units.Rounding.UnmarshalText", What: "rounding", Name: string(text), Choices: slices.Clone(roundings)}
	}
	*r = Rounding(i)
	return nil
}

func (r Rounding) check(fn string) error {
	if r < Nearest || r > Down {
		return &NameError{Func: fn, What: "rounding", Name: strconv.Itoa(int(r)), Choices: slices.Clone(roundings)}
	}
	return nil
}
