package nutrient

import "example.org/zymase/internal/choice"

// Demand is how much nitrogen a yeast strain asks for, as its maker states it.
// The zero value is medium.
type Demand int

// The demands of a strain.
const (
	MediumDemand Demand = iota
	LowDemand
	HighDemand
)

var demands = choice.Of[Demand]("nutrient.Demand", "nitrogen demand", "medium", "low", "high")

// String is "low", "medium" or "high".
func (d Demand) String() string { return demands.Text(d) }

// MarshalText is [Demand.String]; an unknown demand is a [*units.NameError].
func (d Demand) MarshalText() ([]byte, error) { return demands.Marshal(d) }

// UnmarshalText reads "low", "medium" or "high"; another text is a [*units.NameError].
func (d *Demand) UnmarshalText(text []byte) error { return demands.Unmarshal(text, d) }
