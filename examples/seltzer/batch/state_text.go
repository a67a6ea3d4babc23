package batch

import (
	"encoding/json"
	"strconv"

	"example.org/zymase/units"
)

func trim(x float64) string { return strconv.FormatFloat(x, 'g', -1, 64) }

// stateText is a State as JSON: moles of what is there.
type stateText struct {
	Moles       map[string]float64     `json:"mol"`
	Temperature units.Temperature      `json:"temperature"`
	Pressure    units.AbsolutePressure `json:"pressure,omitzero"`
	Gas         bool                   `json:"under_co2,omitzero"`
	Capacity    units.Volume           `json:"capacity,omitzero"`
	Stretch     units.Share            `json:"stretch,omitzero"`
	Closed      bool                   `json:"closed,omitzero"`
}

// MarshalJSON writes the moles of every component that is there by name, and what surrounds the
// liquid; UnmarshalJSON reads the same State back.
func (s State) MarshalJSON() ([]byte, error) {
	t := stateText{Moles: map[string]float64{}, Temperature: s.t,
		Pressure: s.above.Pressure, Gas: s.above.Gas, Capacity: s.above.Capacity, Stretch: s.above.Stretch, Closed: s.above.Closed}
	for c, n := range s.amount {
		if n != 0 {
			t.Moles[Component(c).String()] = n
		}
	}
	return json.Marshal(t)
}

// UnmarshalJSON reads what MarshalJSON wrote. A name that is no component is a
// [*units.NameError].
func (s *State) UnmarshalJSON(text []byte) error {
	var t stateText
	if err := json.Unmarshal(text, &t); err != nil {
		return err
	}
	out := State{t: t.Temperature, above: Above{Pressure: t.Pressure, Gas: t.Gas, Capacity: t.Capacity, Stretch: t.Stretch, Closed: t.Closed}}
	for name, n := range t.Moles {
		c, ok := named[name]
		if !ok {
			return &units.NameError{Func: "batch.State.UnmarshalJSON", What: "component", Name: name}
		}
		out.amount[c] = n
	}
	*s = out
	return nil
}

var named = func() map[string]Component {
	all := map[string]Component{}
	for _, c := range Components() {
		all[c.String()] = c
	}
	return all
}()
