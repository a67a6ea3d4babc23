package border

import (
	"errors"

	"example.org/zymase/examples/seltzer/batch"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// A WalkRequest is a liquid and what is done to it: either a State, or a Volume of a Water of
// known pH.
type WalkRequest struct {
	State  *batch.State   `json:"state,omitempty"`
	Water  *water.Profile `json:"water,omitempty"`
	Volume units.Volume   `json:"volume,omitzero"`
	Steps  []batch.Step   `json:"steps"`
}

// A WalkAnswer is the liquid at the start and after each step, what can be measured in each, and
// what came in and left over all of them, in moles of each component.
type WalkAnswer struct {
	States   []batch.State                 `json:"states"`
	Measured []Measured                    `json:"measured"`
	Left     map[string]map[string]float64 `json:"left"`
}

// Measured is what can be read in a liquid. What cannot be worked out for it is left out.
type Measured struct {
	After       string                 `json:"after,omitempty"` // the step
	Volume      units.Volume           `json:"volume,omitzero"` // at 20 °C
	Mass        units.Mass             `json:"mass"`
	Temperature units.Temperature      `json:"temperature"`
	Gravity     float64                `json:"gravity,omitzero"` // 20/20 °C, as a hydrometer shows it without gas
	Strength    units.StrengthByVolume `json:"strength"`
	PH          float64                `json:"pH,omitzero"`
	CO2         string                 `json:"co2,omitempty"`
	Yeast       units.Mass             `json:"yeast"`
	Fermentable units.Mass             `json:"fermentable"`
}

func walked(request []byte) (any, error) {
	q, err := read[WalkRequest](request)
	if err != nil {
		return nil, err
	}
	var s batch.State
	switch {
	case q.State != nil && q.Water == nil && q.Volume == (units.Volume{}):
		s = *q.State
	case q.State == nil && q.Water != nil:
		if s, err = batch.FromWater(*q.Water, q.Volume); err != nil {
			return nil, err
		}
	default:
		return nil, errors.New("a walk starts from a state, or from a water and its volume")
	}
	u := batch.Usual()
	var like water.Series
	states, left, err := batch.Walk([]batch.State{s}, q.Steps, s, &u, &like)
	if err != nil {
		return nil, err
	}
	a := WalkAnswer{States: states, Measured: make([]Measured, len(states)), Left: map[string]map[string]float64{
		"in": moles(left.In), "vapour": moles(left.Vapour), "gas": moles(left.Gas),
		"scale": moles(left.Scale), "sediment": moles(left.Sediment), "liquid": moles(left.Liquid),
	}}
	for i, s := range states {
		a.Measured[i] = measure(s)
		if i > 0 {
			a.Measured[i].After = q.Steps[i-1].Kind.String()
		}
	}
	return a, nil
}

func moles(a batch.Amounts) map[string]float64 {
	out := map[string]float64{}
	for c, n := range a {
		if n != 0 {
			out[batch.Component(c).String()] = n
		}
	}
	return out
}

func measure(s batch.State) Measured {
	m := Measured{Mass: s.Mass(), Temperature: s.Temperature(), Yeast: s.Yeast(), Fermentable: s.Fermentable()}
	m.Volume, _ = s.Volume(units.Celsius.Of(20))
	if g, err := s.Gravity(); err == nil {
		m.Gravity = g.SG()
	}
	m.Strength, _ = s.Strength()
	m.PH, _ = s.PH()
	if c, err := s.Content(); err == nil {
		m.CO2 = c.String()
	}
	return m
}
