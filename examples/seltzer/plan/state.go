package plan

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// StatePlan is where a ferment stands by its readings.
type StatePlan struct {
	State  string       `json:"state"` // [NotBegun], [Fermenting], [Slow], [Near], [Finished], [Stalled] or [Doubtful]
	Points []StatePoint `json:"points"`

	Original float64      `json:"original,omitempty"` // as measured, at 20 °C; 0 if it was not
	Wash     units.Volume `json:"wash"`               // in the fermenter, as last read; 0 if it was not
	AddSugar units.Mass   `json:"add_fermentable"`    // to bring it up to the plan, or
	AddWater units.Mass   `json:"add_water"`          // to bring it down

	Floor float64                    `json:"dry_floor"` // of the wash as measured
	Final units.StrengthByVolume     `json:"strength_when_dry"`
	Gas   units.CarbonDioxideContent `json:"gas_from_sugar_left"`

	Diagnosis  []string `json:"diagnosis,omitempty"` // of a stalled ferment, or of readings in doubt
	Correction *Weight  `json:"correction,omitempty"`

	BegunBy Range `json:"usually_begun"` // of a ferment that shows nothing, or is on its way

	AsItStands *Outcome `json:"as_it_stands,omitempty"` // the rest of the sugar used, nothing done
	Advice     []Advice `json:"advice,omitempty"`       // what can be done, the most wanted first

	first  gravity.Solution // the wash as measured, of its first portion
	begins float64          // its gravity, salts and all

	apart   string // the instruments that contradict each other in the wash
	overdue bool   // not begun, and later than is usual
}

// StatePoint is a reading and what it means.
type StatePoint struct {
	After       Duration                `json:"after"`
	Gravity     float64                 `json:"gravity"` // corrected to 20 °C
	Used        units.Share             `json:"sugar_used"`
	Strength    units.StrengthByVolume  `json:"strength"`
	Uncertainty units.StrengthByVolume  `json:"uncertainty"` // k = 2
	From        string                  `json:"mostly_from"`
	Left        units.MassConcentration `json:"fermentable_left"`
	PH          *float64                `json:"pH,omitempty"`

	blur   float64 // of the share used, by the reading alone, k = 1
	by     string  // the instrument that tells most
	apart  string  // the instruments that contradict each other
	beyond string  // what no ferment of the wash can show

	starts, ends float64 // gravity with what is in by then, before the yeast and when it has used it
	portions     int     // of the sugar that are in
	waits        bool    // others are to come
}
