package nutrient

import (
	"strings"

	"example.org/zymase/internal/limit"
)

// Demand is how much nitrogen a yeast strain asks for, as its maker states it.
// The zero value is medium.
type Demand int

// The demands of a strain.
const (
	MediumDemand Demand = iota
	LowDemand
	HighDemand
)

// String reads "low", "medium" or "high".
func (d Demand) String() string {
	switch d {
	case LowDemand:
		return "low"
	case HighDemand:
		return "high"
	}
	return "medium"
}

// ParseDemand reads "low", "medium" or "high". The error is a [*units.ParseError].
func ParseDemand(text string) (Demand, error) {
	for _, d := range []Demand{LowDemand, MediumDemand, HighDemand} {
		if strings.EqualFold(strings.TrimSpace(text), d.String()) {
			return d, nil
		}
	}
	return 0, limit.Unknown(text, "nitrogen demand", "low, medium, high")
}
