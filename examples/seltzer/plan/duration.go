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

// MarshalText writes minutes: "15 min".
func (d Duration) MarshalText() ([]byte, error) { return []byte(d.String()), nil }

// String writes minutes: "15 min".
func (d Duration) String() string {
	return trim(time.Duration(d).Minutes()) + " min"
}
