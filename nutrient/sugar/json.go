package sugar

import (
	"encoding/json"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// The form of a [Basis] in JSON: one of its three kinds by its quantity.
type basisJSON struct {
	Finished    *units.Volume      `json:"finished,omitempty"`
	Kettle      *units.Volume      `json:"kettle,omitempty"`
	Temperature *units.Temperature `json:"temperature,omitempty"`
	Water       *units.Mass        `json:"water,omitempty"`
}

// MarshalJSON writes what the basis is: {"finished":"60 L"}, {"kettle":"70 L","temperature":"95
// °C"} or {"water":"5 kg"}. The zero Basis is a [*units.StateError].
func (b Basis) MarshalJSON() ([]byte, error) {
	litres, kilograms := units.Litre.Of(checked.Number(b.litre)), units.Kilogram.Of(checked.Number(b.kg))
	switch b.kind {
	case finishedVolume:
		return json.Marshal(basisJSON{Finished: &litres})
	case kettleVolume:
		return json.Marshal(basisJSON{Kettle: &litres, Temperature: &b.at})
	case waterMass:
		return json.Marshal(basisJSON{Water: &kilograms})
	}
	return nil, &units.StateError{Func: "sugar.Basis.MarshalJSON", What: "basis", Why: "is none: make it with Finished, Kettle or WaterAtHand"}
}

// UnmarshalJSON reads what [Basis.MarshalJSON] writes. A text that names none of the three, or
// more than one, is a [*units.ParseError].
func (b *Basis) UnmarshalJSON(text []byte) error {
	var in basisJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	switch in {
	case basisJSON{Finished: in.Finished}:
		if in.Finished != nil {
			*b = Finished(*in.Finished)
			return nil
		}
	case basisJSON{Kettle: in.Kettle, Temperature: in.Temperature}:
		if in.Kettle != nil && in.Temperature != nil {
			*b = Kettle(*in.Kettle, *in.Temperature)
			return nil
		}
	case basisJSON{Water: in.Water}:
		*b = WaterAtHand(*in.Water)
		return nil
	}
	return &units.ParseError{Input: clipped(text), Want: "basis of a brew",
		Reason: `name one of finished, kettle with its temperature, and water: {"finished":"60 L"}`}
}

func clipped(text []byte) string { return strings.ToValidUTF8(string(text[:min(len(text), 64)]), "?") }
