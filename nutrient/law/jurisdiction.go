package law

import "example.org/zymase/internal/choice"

// Jurisdiction is whose law is asked. The zero value is US law.
type Jurisdiction int

// The jurisdictions whose limits are known here.
const (
	US Jurisdiction = iota
	EU
)

var jurisdictions = choice.Of[Jurisdiction]("law.Jurisdiction", "law", "US", "EU")

// String is "US" or "EU".
func (j Jurisdiction) String() string { return jurisdictions.Text(j) }

// MarshalText is [Jurisdiction.String]; an unknown law is a [*units.NameError].
func (j Jurisdiction) MarshalText() ([]byte, error) { return jurisdictions.Marshal(j) }

// UnmarshalText reads "US" or "EU"; another text is a [*units.NameError].
func (j *Jurisdiction) UnmarshalText(text []byte) error { return jurisdictions.Unmarshal(text, j) }
