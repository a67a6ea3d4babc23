package yeast

import "example.org/zymase/internal/choice"

// PackForm is how yeast is sold. The zero value is dry.
type PackForm int

// The forms of yeast.
const (
	DryYeast PackForm = iota
	LiquidYeast
)

var forms = choice.Of[PackForm]("form of yeast", "dry", "liquid")

// String is "dry" or "liquid".
func (f PackForm) String() string { return forms.Text(f) }

// MarshalText is [PackForm.String]; an unknown form is a [*units.NameError].
func (f PackForm) MarshalText() ([]byte, error) { return forms.Marshal("yeast.PackForm.MarshalText", f) }

// UnmarshalText reads "dry" or "liquid"; another text is a [*units.NameError].
func (f *PackForm) UnmarshalText(text []byte) error {
	return forms.Unmarshal("yeast.PackForm.UnmarshalText", text, f)
}
