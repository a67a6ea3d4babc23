package plan

import (
	"time"

	"example.org/zymase/units"
)

// Duration is a time in text form: "15 min", "1 h 30 min".
type Duration time.Duration

// UnmarshalText reads what units.ParseDuration reads.
func (d *Duration) UnmarshalText(text []byte) error {
	t, err := units.ParseDuration(string(text))
	*d = Duration(t)
	return err
}

// MarshalText writes what units.ParseDuration reads: "15 min".
func (d Duration) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// String writes whole days or hours where they are, minutes otherwise: "10 d", "2 h",
// "15 min".
func (d Duration) String() string {
	t := time.Duration(d)
	switch {
	case t >= day && t%day == 0:
		return trim(float64(t/day)) + " d"
	case t >= time.Hour && t%time.Hour == 0:
		return trim(t.Hours()) + " h"
	}
	return trim(t.Minutes()) + " min"
}

const day = 24 * time.Hour
