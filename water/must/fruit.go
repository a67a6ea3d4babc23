package must

import (
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
)

// Fruit is a juice whose acids and salts are roughly known. The zero value is Apple.
type Fruit int

// Fruits.
const (
	Apple Fruit = iota
	Grape
)

var fruits = choice.Of[Fruit]("fruit", "apple", "grape")

// String returns "apple" or "grape".
func (f Fruit) String() string { return fruits.Text(f) }

// MarshalText is [Fruit.String]; the error is a [*units.NameError].
func (f Fruit) MarshalText() ([]byte, error) { return fruits.Marshal("must.Fruit.MarshalText", f) }

// UnmarshalText reads what [Fruit.MarshalText] writes; the error is a [*units.NameError].
func (f *Fruit) UnmarshalText(text []byte) error {
	return fruits.Unmarshal("must.Fruit.UnmarshalText", text, f)
}

type fruitFacts struct {
	acids       AcidShares
	strong      units.EquivalentConcentration
	least, most float64 // mg/L of acidity as tartaric
	evidence    evidence.Evidence
}

// fruitTable: strong ions are the median of what [Reading.Drink] finds in the odd rows of the
// apples in internal/published, and the mean of the medians of the two sets of grapes (57 and
// 40 mEq/L); the even rows were not looked at.
var fruitTable = [...]fruitFacts{
	Apple: {AcidShares{water.Malate.At(units.GramPerLitre.Of(1))}, units.MilliequivalentPerLitre.Of(39), 1200, 13000, evidence.Evidence{
		Source: "Kumar et al., J. Am. Soc. Hort. Sci. 2021, JASHS05056: 109 cider-apple juices, odd rows", Grade: evidence.Fitted,
		Note: "malic acid is more than 85 % of the acids of an apple"}},
	Grape: {AcidShares{water.Tartrate.At(units.GramPerLitre.Of(1)), water.Malate.At(units.GramPerLitre.Of(1))}, units.MilliequivalentPerLitre.Of(48), 3900, 20000, evidence.Evidence{
		Source: "Migicovsky et al., rootstock trial 1995-1999, and a ripening series: 378 musts, odd rows", Grade: evidence.Fitted,
		Note: "as much tartaric as malic acid is taken; musts have from 1 to 4 to 4 to 1"}},
}

// Acids returns the acids of the juice in their usual proportion: malic in an apple, as
// much tartaric as malic in a grape (chosen; ripe grapes have more tartaric). A Fruit that is
// none has none, and [Reading.Drink] refuses them.
func (f Fruit) Acids() AcidShares {
	if fruits.Check("must.Fruit.Acids", f) != nil {
		return nil
	}
	return append(AcidShares(nil), fruitTable[f].acids...)
}

// Estimate is a pH that is guessed, with its band.
type Estimate struct {
	PH, Low, High float64
	Drink         Drink // a drink that shows PH
	Evidence      evidence.Evidence
}

// band is how far from the truth the pH of a juice from its acidity alone may be.
const band = 0.3

// FromAcidity returns the pH of a juice of which only the titratable acidity is known, at
// 20 °C: that of a juice with a usual content of salts. Measure the pH where it counts.
//
// Errors are a [*units.RangeError]: an acidity outside the juices of the set (as tartaric 1.2
// to 13 g/L for apples, 3.9 to 20 g/L for grapes) and those of [Analysis.Drink]; a
// [*units.NameError] for a Fruit that is none.
//
//   - Source: [Fruit.Acids], and one content of strong ions for each fruit, fitted to the
//     sets that [Estimate.Evidence] names.
//   - Uncertainty: 0.3. Of the odd rows of the sets it holds 54 of 55 apples (bias -0.01,
//     rms 0.14) and 180 of 190 musts (rms 0.16 and bias -0.10 in one set, 0.13 and 0.11 in the
//     other): not every juice. Sweet Coppin, quoted with 1.7 g/L as malic acid and pH 4.03, is
//     guessed 0.42 too high.
func (f Fruit) FromAcidity(acidity units.MassConcentration, t water.Titration) (Estimate, error) {
	const fn = "must.Fruit.FromAcidity"
	if err := fruits.Check(fn, f); err != nil {
		return Estimate{}, err
	}
	facts := &fruitTable[f]
	as, err := water.ConvertAcidity(acidity, t.As, water.TartaricAcid)
	if err == nil {
		err = limit.Check(fn, "titratable acidity as tartaric", as.In(units.MilligramPerLitre), "mg/L", facts.least, facts.most, "the juices of the set")
	}
	if err != nil {
		return Estimate{}, limit.Named(fn, err)
	}
	salts := facts.strong.In(units.MilliequivalentPerLitre) * water.Potassium.MolarMass()
	a := Analysis{
		Ions:    []water.Content{water.Potassium.At(milligrams(salts))},
		Acidity: acidity, Titration: t, Temperature: units.Celsius.Of(20),
	}
	d, err := a.Drink(facts.acids)
	if err != nil {
		return Estimate{}, limit.Named(fn, err)
	}
	return Estimate{PH: d.ph, Low: d.ph - band, High: d.ph + band, Drink: d, Evidence: facts.evidence}, nil
}
