package mash

import (
	"fmt"

	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// Figure is a value with its band.
type Figure struct{ Value, Low, High float64 }

// About is a figure whose band is half on either side: About(5.72, 0.03) is 5.69 to 5.75.
func About(value, half float64) Figure { return Figure{value, value - half, value + half} }

// String reads "5.52 (5.31 to 5.70)".
func (f Figure) String() string { return fmt.Sprintf("%.2f (%.2f to %.2f)", f.Value, f.Low, f.High) }

func (f Figure) check(fn, what, unit string, low, high float64) error {
	for _, v := range [...]float64{f.Value, f.Low, f.High} {
		if err := limit.Check(fn, what, v, unit, low, high, source); err != nil {
			return err
		}
	}
	if err := limit.Check(fn, "low end of "+what, f.Low, unit, low, f.Value, "a band about its value"); err != nil {
		return err
	}
	return limit.Check(fn, "high end of "+what, f.High, unit, f.Value, high, "a band about its value")
}

const source = "what a malt can be, package mash"

// Malt is a malt of a grist.
type Malt struct {
	Name   string
	Mass   units.Mass
	PH     Figure // of its mash in distilled water, cooled
	Buffer Figure // mEq of acid or base that moves the mash of a kilogram by one pH
	// Evidence says where PH and Buffer come from.
	Evidence evidence.Evidence
}

// Class is a kind of malt of which only the kind is known. The zero value is Pale.
type Class int

// Classes.
const (
	Pale Class = iota
	Pilsner
	Caramel
	Chocolate
	Black
)

var classes = choice.Of[Class]("malt", "pale malt", "pilsner malt", "caramel malt", "chocolate malt", "black malt")

// Classes returns every class in the order of the constants.
func Classes() []Class {
	var all []Class
	for c := range classes.All() {
		all = append(all, c)
	}
	return all
}

// String returns "pale malt".
func (c Class) String() string { return classes.Text(c) }

// MarshalText is [Class.String]; the error is a [*units.NameError].
func (c Class) MarshalText() ([]byte, error) { return classes.Marshal("mash.Class.MarshalText", c) }

// UnmarshalText reads what [Class.MarshalText] writes; the error is a [*units.NameError].
func (c *Class) UnmarshalText(text []byte) error {
	return classes.Unmarshal("mash.Class.UnmarshalText", text, c)
}

// anyBuffer is the buffering of a malt of which nothing is known.
//
//   - Source: 21 mEq/(kg pH) from a maltster's rule of thumb, and 30.5 from Kolbach's 290 mg of
//     lactic acid to a kilogram for 0.1 pH (94.8 % of it dissociated), both read at third hand. The
//     ends are chosen: coloured malts were not found.
var anyBuffer = Figure{30, 20, 45}

var classTable = [...]struct {
	ph   Figure
	from evidence.Evidence
}{
	Pale: {Figure{5.72, 5.6, 5.8}, evidence.Evidence{Source: palmer, Grade: evidence.Read,
		Note: "second hand, base malts 5.7 to 5.8; 5.74 by Taylor 1990, about 5.6 by a maltster; " + chosen}},
	Pilsner: {Figure{5.8, 5.6, 6.0}, evidence.Evidence{Source: "Palmer & Kaminski p. 76 and 80", Grade: evidence.Read,
		Note: "second hand, congress worts by lot, the value is the middle; " + chosen}},
	Caramel:   {Figure{4.65, 4.5, 4.8}, evidence.Evidence{Source: palmer, Grade: evidence.Read, Note: "second hand; " + chosen}},
	Chocolate: {Figure{4.4, 4.3, 4.5}, evidence.Evidence{Source: palmer, Grade: evidence.Read, Note: "second hand; " + chosen}},
	Black:     {Figure{4.1, 4.0, 4.2}, evidence.Evidence{Source: palmer, Grade: evidence.Read, Note: "second hand; " + chosen}},
}

const (
	palmer = "J. Palmer, pH in distilled water, as quoted"
	chosen = "the buffering, 30 (20 to 45) mEq/(kg pH), is chosen between two rules of thumb"
)

// Malt returns so much of a malt of the class, with the wide band of the class. A class that is
// none has no band, and [Mash.PH] refuses it.
func (c Class) Malt(mass units.Mass) Malt {
	if classes.Check("mash.Class.Malt", c) != nil {
		return Malt{Name: c.String(), Mass: mass}
	}
	return Malt{Name: c.String(), Mass: mass, PH: classTable[c].ph, Buffer: anyBuffer, Evidence: classTable[c].from}
}
