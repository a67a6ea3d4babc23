package plan

import (
	"strings"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Fruit is a juice that goes into a wash of sugar; the rest of the sugar is the fermentable's. What the pulp of whole
// fruit holds back is not counted: give what its juice holds.
type Fruit struct {
	Juice string      `json:"juice"`         // "grape juice 22 °Bx", "apple juice 12 °Bx", "juice 9 °Bx"
	Part  units.Share `json:"part_of_sugar"` // of all the sugar, what the juice brings: "35 %"
}

// Must is what was measured of the juice as it comes, or of the wash of honey or malt before the yeast (a trial
// of its gravity will do). What is left out is the usual, with its spread.
type Must struct {
	PH        float64                  `json:"pH,omitempty"`                 // optional: with the titratable acidity; of malt it does alone
	Acidity   *Acidity                 `json:"titratable_acidity,omitempty"` // optional: "6 g/L as malic acid to pH 8.2"
	Acids     []AcidPart               `json:"acids,omitempty"`              // optional: which they are, where they are not the usual ones
	Nitrogen  *units.MassConcentration `json:"yan,omitempty"`                // optional: nitrogen that yeast can take up, as N, by report
	Ammonium  *units.MassConcentration `json:"ammonium_nitrogen,omitempty"`  // optional: the part of it that is ammonium, as N
	Potassium *units.MassConcentration `json:"potassium,omitempty"`          // optional: by report; else by the charge, or the usual
	Blend     *Blend                   `json:"blend,omitempty"`              // optional: another juice of the same fruit, to a pH or to an acidity
}

// Blend is another juice of the same fruit and Brix, sharper or milder, of which so much goes in as reaches the aim.
type Blend struct {
	PH        float64  `json:"pH"`                   // of the other juice
	Acidity   Acidity  `json:"titratable_acidity"`   // of the other juice: "11 g/L as malic acid to pH 8.2"
	ToPH      float64  `json:"to_pH,omitempty"`      // optional: one of the two
	ToAcidity *Acidity `json:"to_acidity,omitempty"` // optional: "5.5 g/L as malic acid to pH 8.2"
}

// AcidPart is an acid of a juice, in parts by mass.
type AcidPart struct {
	What  string  `json:"what"`  // a name of water.Acids: "citric acid"
	Parts float64 `json:"parts"` // 3 and 1: three times as much
}

// Acid is an acid to add, or a salt that takes acid away, to a pH or to an acidity.
type Acid struct {
	What    string   `json:"what"`                 // a name of water.Acids: "citric acid"; or, to make it less sour, "potassium bicarbonate", "chalk"
	When    string   `json:"when"`                 // "before the yeast" or "after the ferment"
	PH      float64  `json:"to_pH,omitempty"`      // optional: one of the two
	Acidity *Acidity `json:"to_acidity,omitempty"` // optional: "5.5 g/L as tartaric acid to pH 8.2"
}

// Cold is a rest in the cold, in which cream of tartar settles.
type Cold struct {
	Temperature units.Temperature `json:"temperature"` // 0 to 20 °C
	Settled     units.Share       `json:"settled"`     // of the way to rest: 100 % with seed crystals and time, less without
}

// Stabilise is what keeps a drink that is not primed from going on.
type Stabilise struct {
	Molecular *units.MassConcentration `json:"molecular_so2,omitempty"`     // optional: of the SO2, the form that acts: "0.8 mg/L"
	Free      *units.MassConcentration `json:"free_so2,omitempty"`          // optional: what there is of it by a test; left out, none
	Sorbate   *units.MassConcentration `json:"potassium_sorbate,omitempty"` // optional: "200 mg/L"
}

// Acidity is a titratable acidity as a maker writes it: "6 g/L as malic acid to pH 8.2".
type Acidity struct {
	content units.MassConcentration
	by      water.Titration
}

const acidityForm = `write it with its acid and where the titration ends, "6 g/L as malic acid to pH 8.2"`

// UnmarshalText reads a content, an acid and an end point. The error is a [*units.ParseError].
func (a *Acidity) UnmarshalText(text []byte) error {
	refuse := &units.ParseError{Input: strings.ToValidUTF8(string(text[:min(len(text), 64)]), "?"), Want: "titratable acidity", Reason: acidityForm}
	content, rest, ok := strings.Cut(string(text), " as ")
	name, end, also := strings.Cut(rest, " to pH ")
	if !ok || !also {
		return refuse
	}
	c, err := units.Parse[units.MassConcentration](content)
	if err != nil {
		return refuse
	}
	acid, err := water.ParseAcid(name)
	if err != nil {
		return refuse
	}
	ph, ok := decimalNumber(end)
	if !ok || ph < 4 || ph > 10 {
		return refuse
	}
	*a = Acidity{c, water.Titration{End: ph, As: acid}}
	return nil
}

// MarshalText writes what was read.
func (a Acidity) MarshalText() ([]byte, error) { return []byte(a.String()), nil }

// String writes what was read.
func (a Acidity) String() string {
	return trim(a.content.In(units.GramPerLitre)) + " g/L as " + a.by.As.Name() + " to pH " + trim(a.by.End)
}

// In returns the acidity by its convention.
func (a Acidity) In() (units.MassConcentration, water.Titration) { return a.content, a.by }
