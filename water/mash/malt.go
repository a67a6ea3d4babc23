package mash

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// figure is a number with its band.
type figure = evidence.Figure[float64]

// band is a figure between two ends.
func band(value, low, high float64) figure { return figure{Value: value, Low: low, High: high} }

// amounts are numbers in millimoles, and inMillimoles the way back.
func amounts(f figure) evidence.Figure[units.Amount] {
	mmol := func(x float64) units.Amount { return units.Millimole.Of(checked.Number(x)) }
	return evidence.Figure[units.Amount]{Value: mmol(f.Value), Low: mmol(f.Low), High: mmol(f.High), Evidence: f.Evidence}
}

func inMillimoles(f evidence.Figure[units.Amount]) figure {
	return figure{Value: f.Value.In(units.Millimole), Low: f.Low.In(units.Millimole), High: f.High.In(units.Millimole), Evidence: f.Evidence}
}

func check(f figure, fn, what, unit string, low, high float64) error {
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
	Name string
	Mass units.Mass
	PH   evidence.Figure[float64] // of its mash in distilled water, cooled
	// BufferPerKilogram is the acid or base of one charge that moves the mash of a kilogram of
	// it, whatever its Mass, by one pH: 30 mmol where malting has 30 mEq/(kg pH).
	BufferPerKilogram evidence.Figure[units.Amount]
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

var classes = choice.Of[Class]("mash.Class", "malt", "pale malt", "pilsner malt", "caramel malt", "chocolate malt", "black malt")

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
func (c Class) MarshalText() ([]byte, error) { return classes.Marshal(c) }

// UnmarshalText reads what [Class.MarshalText] writes; the error is a [*units.NameError].
func (c *Class) UnmarshalText(text []byte) error { return classes.Unmarshal(text, c) }

// anyBuffer is the buffering of a malt of which nothing is known.
//
//   - Source: 21 mEq/(kg pH) from a maltster's rule of thumb, and 30.5 from Kolbach's 290 mg of
//     lactic acid to a kilogram for 0.1 pH (94.8 % of it dissociated), both read at third hand. The
//     ends are chosen: coloured malts were not found.
var anyBuffer = figure{Value: 30, Low: 20, High: 45, Evidence: evidence.Evidence{Grade: evidence.Chosen, Note: "between two rules of thumb"}}

// read is a band that was seen in the source.
func read(f figure, source, note string) figure {
	f.Evidence = evidence.Evidence{Source: source, Grade: evidence.Read, Note: note}
	return f
}

var classTable = [...]figure{
	Pale:      read(band(5.72, 5.6, 5.8), palmer, "second hand, base malts 5.7 to 5.8; 5.74 by Taylor 1990, about 5.6 by a maltster"),
	Pilsner:   read(band(5.8, 5.6, 6.0), "Palmer & Kaminski p. 76 and 80", "second hand, congress worts by lot, the value is the middle"),
	Caramel:   read(band(4.65, 4.5, 4.8), palmer, "second hand"),
	Chocolate: read(band(4.4, 4.3, 4.5), palmer, "second hand"),
	Black:     read(band(4.1, 4.0, 4.2), palmer, "second hand"),
}

const palmer = "J. Palmer, pH in distilled water, as quoted"

// Malt returns so much of a malt of the class, with the wide band of the class. A class that is
// none has no band, and [Mash.PH] refuses it.
func (c Class) Malt(mass units.Mass) Malt {
	if classes.Check("mash.Class.Malt", c) != nil {
		return Malt{Name: c.String(), Mass: mass}
	}
	return Malt{Name: c.String(), Mass: mass, PH: classTable[c], BufferPerKilogram: amounts(anyBuffer)}
}
