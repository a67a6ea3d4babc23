package yeast

import (
	"encoding/json"

	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// form is how yeast is sold.
type form int

const (
	dry form = iota
	liquid
)

var forms = choice.Of[form]("yeast.Pack", "form of yeast", "dry", "liquid")

// The form of a [Pack] in JSON.
type packJSON struct {
	Form     string            `json:"form"`
	Cells    units.Cells       `json:"cells"` // when packed: in a gram of dry yeast, in a pack of liquid yeast
	Low      units.Cells       `json:"low"`
	High     units.Cells       `json:"high"`
	Loss     float64           `json:"loss_rate_1/d"`
	Evidence evidence.Evidence `json:"evidence,omitzero"`
}

// MarshalJSON writes the form, the cells with their spread and how fast they die. The zero
// Pack is a [*units.StateError].
func (p Pack) MarshalJSON() ([]byte, error) {
	if p.count.IsZero() {
		return nil, &units.StateError{Func: "yeast.Pack.MarshalJSON", What: "pack", Why: "is none: make it with DryPack or LiquidPack"}
	}
	return json.Marshal(packJSON{forms.Text(p.form), p.count, p.low, p.high, p.perDay, p.figures})
}

// UnmarshalJSON reads what [Pack.MarshalJSON] writes. The error is a [*units.RangeError] for
// cells or a loss that no pack has, a [*units.NameError] for a form that is neither dry nor
// liquid.
func (p *Pack) UnmarshalJSON(text []byte) error {
	const fn, source = "yeast.Pack.UnmarshalJSON", "what is sold"
	var in packJSON
	if err := json.Unmarshal(text, &in); err != nil {
		return err
	}
	form, err := forms.Parse(fn, in.Form)
	if err != nil {
		return err
	}
	for _, c := range [...]struct {
		what        string
		v           float64
		least, most float64
	}{
		{"cells", inBillions(in.Cells), 1, 1e5}, {"low end of the cells", inBillions(in.Low), 1, inBillions(in.Cells)},
		{"high end of the cells", inBillions(in.High), inBillions(in.Cells), 1e5},
	} {
		if err := limit.Check(fn, c.what, c.v, "billion", c.least, c.most, source); err != nil {
			return err
		}
	}
	if err := limit.Check(fn, "loss", in.Loss, "1/d", 0, 1, source); err != nil {
		return err
	}
	*p = Pack{form: form, count: in.Cells, low: in.Low, high: in.High, perDay: in.Loss, figures: in.Evidence}
	return nil
}
