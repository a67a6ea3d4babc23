package yeast

import "example.org/zymase/internal/choice"

// packForm is how yeast is sold. The zero value is dry.
type packForm int

// The forms of yeast.
const (
	dryYeast packForm = iota
	liquidYeast
)

var forms = choice.Of[packForm]("form of yeast", "dry", "liquid")

// String is "dry" or "liquid".
func (f packForm) String() string { return forms.Text(f) }

// MarshalText is [packForm.String]; an unknown form is a [*units.NameError].
func (f packForm) MarshalText() ([]byte, error) {
	return forms.Marshal("yeast.Pack.MarshalJSON", f)
}

// UnmarshalText reads "dry" or "liquid"; another text is a [*units.NameError].
func (f *packForm) UnmarshalText(text []byte) error {
	return forms.Unmarshal("yeast.Pack.UnmarshalJSON", text, f)
}
