package kinetics

import (
	"math"
	"time"

	"example.org/zymase/units"
)

// Start is what sets the pace of a ferment at its beginning.
type Start struct {
	Sugar    units.MassConcentration // that yeast ferments, 10 to 350 g/L
	Nitrogen units.MassConcentration // that yeast assimilates, with all feeds, 20 to 600 mg/L
	Yeast    units.MassConcentration // live cells pitched, as dry mass, 0.005 to 30 g/L
	PH       float64                 // 2.5 to 9; nought for one that is not known
	Ethanol  units.MassConcentration // there already, to 150 g/L: what fresh yeast meets in a ferment that stands still
}

// Hold is a temperature from a moment on, until the next one.
type Hold struct {
	From        time.Duration // since the yeast was pitched
	Temperature units.Temperature
}

// The model's own limits of temperature, and how long a pace is followed.
const (
	coldest = 10.0 // °C
	warmest = 35.0
	horizon = 90 * 24 * time.Hour
)

// check refuses what the pace cannot start from.
func (s Start) check() error {
	for _, q := range []struct {
		name            string
		value, min, max float64
		unit, source    string
	}{
		{"fermentable sugar", s.Sugar.In(units.GramPerLitre), 10, 350, "g/L", ""},
		{"assimilable nitrogen", s.Nitrogen.In(units.MilligramPerLitre), 20, 600, "mg/L", ""},
		{"yeast pitched, dry", s.Yeast.In(units.GramPerLitre), 0.005, 30, "g/L", ""},
		{"pH", s.PH, 2.5, 9, "", lowPH},
		{"ethanol", s.Ethanol.In(units.GramPerLitre), 0, 150, "g/L", ""},
	} {
		if q.name == "pH" && q.value == 0 {
			continue // not known
		}
		if !(q.value >= q.min && q.value <= q.max) {
			return &units.RangeError{Func: "kinetics.NewPace", Quantity: q.name, Value: q.value, Unit: q.unit, Min: q.min, Max: q.max, Source: q.source}
		}
	}
	return nil
}

const lowPH = "Liu et al. 2015: yeast still fermented at pH 2.50, later and slower than at 3.00"

// slowing is the pace at a pH against that at 3.0 and above. The source says slower at 2.75
// and 2.50, without a figure that was read: 0.7 at 2.5 is chosen, and so is the line.
func (s Start) slowing() float64 {
	if s.PH == 0 {
		return 1
	}
	return 1 - 0.6*math.Max(0, 3-s.PH)
}

// checkHolds refuses temperatures out of order or outside the model.
func checkHolds(holds []Hold) error {
	if len(holds) == 0 {
		return &units.StateError{Func: "kinetics.NewPace", What: "ferment", Why: "has no temperature: give one Hold at least"}
	}
	for i, h := range holds {
		if i == 0 && h.From != 0 || i > 0 && h.From <= holds[i-1].From || h.From > horizon {
			return &units.RangeError{Func: "kinetics.NewPace", Quantity: "time of a temperature, the first at the pitch and each after the one before it",
				Value: h.From.Hours(), Unit: "h", Min: 0, Max: horizon.Hours(), Source: "how far a forecast reaches"}
		}
		if t := h.Temperature.In(units.Celsius); !(t >= coldest && t <= warmest) {
			return &units.RangeError{Func: "kinetics.NewPace", Quantity: "temperature of the ferment", Value: t, Unit: "°C", Min: coldest, Max: warmest,
				Source: "Coleman, Fish & Block 2007, 11 to 35 °C"}
		}
	}
	return nil
}
