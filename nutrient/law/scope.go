package law

import "example.org/zymase/internal/choice"

// Scope is the drink or the use that the text of a limit speaks of. Those without a name
// here are read by their text. The zero value is wine.
type Scope uint8

// Scopes that are asked for.
const (
	Wine               Scope = iota // still and sparkling, main fermentation
	DistillingMaterial              // to be distilled
	CiderAndPerry
	secondFermentation
	appleWine
	whiteWine
	redWine
	organicRedWine
	organicWhiteWine
	flavouredDrink
	flavouredAlcoholic
	fruitWine
	alcoholFreeBeer
)

var scopes = choice.Of[Scope]("law.Scope", "scope of a limit",
	"wine", "distilling material", "cider and perry", "second fermentation of sparkling wine", "apple wine",
	"white and rosé wine", "red wine", "organic red wine, sugar below 2 g/L", "organic white and rosé wine, sugar below 2 g/L",
	"14.1.4 flavoured drinks, energy reduced or without added sugar", "14.2.8 other alcoholic drinks, mixtures with non-alcoholic ones",
	"14.2.4 fruit wine and made wine", "alcohol-free beer or up to 1.2 % vol",
)

// String is the drink or the use, "wine".
func (s Scope) String() string { return scopes.Text(s) }

// MarshalText is [Scope.String]; an unknown scope is a [*units.NameError].
func (s Scope) MarshalText() ([]byte, error) { return scopes.Marshal(s) }

// UnmarshalText reads what [Scope.MarshalText] writes; another text is a
// [*units.NameError].
func (s *Scope) UnmarshalText(text []byte) error { return scopes.Unmarshal(text, s) }
