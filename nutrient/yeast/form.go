package yeast

import "example.org/zymase/internal/choice"

// Form is how yeast is sold. The zero value is dry.
type Form int

// The forms of yeast.
const (
	DryYeast Form = iota
	LiquidYeast
)

var forms = choice.Of[Form]("form of yeast", "dry", "liquid")

// String is "dry" or "liquid".
func (f Form) String() string { return forms.Text(f) }

// MarshalText is [Form.String]; an unknown form is a [*units.NameError].
func (f Form) MarshalText() ([]byte, error) { return forms.Marshal("yeast.Form.MarshalText", f) }

// UnmarshalText reads "dry" or "liquid"; another text is a [*units.NameError].
func (f *Form) UnmarshalText(text []byte) error {
	return forms.Unmarshal("yeast.Form.UnmarshalText", text, f)
}
