package yeast

import "example.org/zymase/internal/choice"

// Kind is what dry yeast was bred for; it decides how warm it is rehydrated. The zero
// value is wine yeast.
type Kind int

// The kinds of dry yeast.
const (
	WineYeast Kind = iota
	AleYeast
	LagerYeast
)

var kinds = choice.Of[Kind]("yeast.Kind", "kind of yeast", "wine", "ale", "lager")

// String is "wine", "ale" or "lager".
func (k Kind) String() string { return kinds.Text(k) }

// MarshalText is [Kind.String]; an unknown kind is a [*units.NameError].
func (k Kind) MarshalText() ([]byte, error) { return kinds.Marshal(k) }

// UnmarshalText reads "wine", "ale" or "lager"; another text is a [*units.NameError].
func (k *Kind) UnmarshalText(text []byte) error { return kinds.Unmarshal(text, k) }
