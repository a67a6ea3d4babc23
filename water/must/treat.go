package must

import (
	"cmp"
	"errors"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func milligrams(c float64) units.MassConcentration {
	return units.MilligramPerLitre.Of(checked.Number(c))
}

// AddAcid returns the drink with so much of a pure acid in each litre.
//
// Errors are those of [water.Profile.AddAcid] and [New].
func (d Drink) AddAcid(a water.Acid, c units.MassConcentration) (Drink, error) {
	return d.addAcid("must.Drink.AddAcid", a, c.In(units.MilligramPerLitre))
}

func (d Drink) addAcid(fn string, a water.Acid, mg float64) (Drink, error) {
	p, err := d.water.AddAcid(a, units.Millimole.Of(checked.Number(mg/a.MolarMass().In(units.GramPerMole))), units.Litre.Of(1))
	if err != nil {
		return Drink{}, limit.Named(fn, err)
	}
	return newDrink(fn, p, d.Strength())
}

// AddSalt returns the drink with so much of a salt in each litre; the CO2 of a carbonate has
// left, and nothing has settled.
//
// Errors are those of [water.Profile.Add] and [New].
func (d Drink) AddSalt(m material.Material, c units.MassConcentration) (Drink, error) {
	return d.addSalt("must.Drink.AddSalt", m, c.In(units.MilligramPerLitre))
}

func (d Drink) addSalt(fn string, m material.Material, mg float64) (Drink, error) {
	p, err := d.water.Add(units.Litre.Of(1), m.Dose(units.Milligram.Of(checked.Number(mg))))
	if err != nil {
		return Drink{}, limit.Named(fn, err)
	}
	return newDrink(fn, p, d.Strength())
}

// Blend returns the mixture of two drinks, share being that of the other by volume. That
// the volumes of drinks of unlike strength do not quite add up is left out.
//
// Errors are those of [New], and a share outside 0 to 100 %.
func (d Drink) Blend(other Drink, share units.Share) (Drink, error) {
	return d.blend("must.Drink.Blend", other, share.In(units.Fraction))
}

func (d Drink) blend(fn string, other Drink, x float64) (Drink, error) {
	if err := limit.Check(fn, "share", 100*x, "%", 0, 100, "a share of the blend"); err != nil {
		return Drink{}, err
	}
	p, err := water.Blend(water.Portion{Water: d.water, Volume: units.Litre.Of(checked.Number(1 - x))},
		water.Portion{Water: other.water, Volume: units.Litre.Of(checked.Number(x))})
	if err != nil { // not reached: two parts of a litre
		return Drink{}, limit.Named(fn, err)
	}
	return newDrink(fn, p, units.PercentVolume.Of(checked.Number((1-x)*d.strength+x*other.strength)))
}

// Aim is what a treatment is to reach: a pH ([ToPH]) or a titratable acidity ([ToAcidity]).
type Aim struct {
	ph        float64 // 0: the acidity
	acidity   float64 // mg/L
	titration water.Titration
}

// ToPH is the aim of a pH.
func ToPH(ph float64) Aim { return Aim{ph: ph} }

// ToAcidity is the aim of a titratable acidity by a convention.
func ToAcidity(c units.MassConcentration, t water.Titration) Aim {
	return Aim{acidity: c.In(units.MilligramPerLitre), titration: t}
}

func (a Aim) check(fn string) error {
	if a.acidity == 0 && a.titration == (water.Titration{}) {
		return limit.Check(fn, "pH wanted", a.ph, "", leastPH, mostPH, source)
	}
	return limit.Check(fn, "acidity wanted", a.acidity, "mg/L", 0, mostAcidity, source)
}

// off returns how far a drink is from the aim: above zero where it is less sour than wanted.
func (a Aim) off(d Drink) (float64, error) {
	if a.titration == (water.Titration{}) {
		return d.ph - a.ph, nil
	}
	ta, err := d.Acidity(a.titration)
	return a.acidity - ta.In(units.MilligramPerLitre), err
}

// Treatment is a dose with what it makes of a drink.
type Treatment struct {
	PerLitre units.MassConcentration // of the pure acid, or of the salt as weighed
	Share    units.Share             // of the other drink in the blend
	After    Drink                   // its pH, acidity and buffer capacity
	Cautions caution.List
}

// WithAcid returns the pure acid that brings the drink to a pH below its own, or to an acidity
// above its own.
//
// Errors are a [*units.RangeError]: a pH outside 2 to 6; an aim that the acid does not
// reach, from 0 to 50 g/L of it; and those of [Drink.AddAcid].
//
//   - Source: electroneutrality.
//   - Uncertainty: for a drink of known pH and acidity 10 % of the dose.
func (d Drink) WithAcid(a water.Acid, aim Aim) (Treatment, error) {
	const fn = "must.Drink.WithAcid"
	x, after, err := d.treat(fn, aim, false, func(x float64) (Drink, error) { return d.addAcid(fn, a, x) })
	if err != nil {
		return Treatment{}, err
	}
	said := caution.List{water.AcidBurns, TrialFirst, Law}.WithIf(mmol(after.water, water.Tartrate) > 0, Settles)
	return Treatment{PerLitre: milligrams(x), After: after, Cautions: said}, nil
}

// WithSalt returns the carbonate, bicarbonate or other salt of a base that brings the drink to a
// pH above its own, or to an acidity below its own. What may settle afterwards is still in it
// ([Drink.Settled]).
//
// Errors are a [*units.RangeError]: a salt that brings no alkalinity; a pH outside 2 to 6; an
// aim that the salt does not reach, from 0 to 50 g/L of it; and those of [Drink.AddSalt].
//
//   - Source: electroneutrality; the CO2 leaves.
//   - Uncertainty: for a drink of known pH and acidity 10 % of the dose.
func (d Drink) WithSalt(m material.Material, aim Aim) (Treatment, error) {
	const fn = "must.Drink.WithSalt"
	if err := limit.Check(fn, "alkalinity of the salt", m.Composition().Alkalinity.In(units.Percent), "% as OH-", 1e-3, 100,
		"a salt that brings alkalinity"); err != nil {
		return Treatment{}, err
	}
	x, after, err := d.treat(fn, aim, true, func(x float64) (Drink, error) { return d.addSalt(fn, m, x) })
	if err != nil {
		return Treatment{}, err
	}
	said := m.Cautions().With(Foams, TrialFirst, Law).WithIf(mmol(after.water, water.Tartrate) > 0, Settles)
	return Treatment{PerLitre: milligrams(x), After: after, Cautions: said}, nil
}

// WithDrink returns the share of another drink in a blend that reaches the aim.
//
// Errors are a [*units.RangeError]: a pH outside 2 to 6; an aim that lies not between the two
// drinks; and those of [Drink.Blend].
//
//   - Source: electroneutrality; each ion by volume.
func (d Drink) WithDrink(other Drink, aim Aim) (Treatment, error) {
	const fn = "must.Drink.WithDrink"
	if err := aim.check(fn); err != nil {
		return Treatment{}, err
	}
	here, err := aim.off(d)
	if err != nil {
		return Treatment{}, limit.Named(fn, err)
	}
	there, err := aim.off(other)
	if err != nil {
		return Treatment{}, limit.Named(fn, err)
	}
	if here*there > 0 {
		return Treatment{}, aim.beyond(fn, here, there, d, other)
	}
	var failed error
	x, err := numeric.Root(func(x float64) float64 {
		after, err := d.blend(fn, other, x)
		off, also := aim.off(after)
		if failed = cmp.Or(failed, err, also); failed != nil {
			return math.NaN()
		}
		return off
	}, 0, 1, 0)
	if err != nil {
		return Treatment{}, limit.Named(fn, cmp.Or(failed, err))
	}
	after, err := d.blend(fn, other, x)
	if err != nil { // not reached: it was tried
		return Treatment{}, err
	}
	return Treatment{Share: units.Fraction.Of(checked.Number(x)), After: after, Cautions: caution.List{TrialFirst}}, nil
}

const mostDose float64 = 50000 // mg/L

// treat finds the dose in mg/L that brings a drink to its aim; softer is that a dose makes it less sour.
func (d Drink) treat(fn string, aim Aim, softer bool, dosed func(float64) (Drink, error)) (float64, Drink, error) {
	if err := aim.check(fn); err != nil {
		return 0, Drink{}, err
	}
	var after Drink
	over := func(x float64) (off float64, err error) {
		if after, err = dosed(x); err == nil {
			off, err = aim.off(after)
		}
		if !softer {
			off = -off
		}
		return off, limit.Named(fn, err)
	}
	if here, err := over(0); err != nil || here > closely {
		if !softer {
			here = -here
		}
		return 0, Drink{}, cmp.Or(err, aim.refuse(fn, d.ph, aim.acidity-here, softer))
	}
	x, err := numeric.Rising(over, mostDose/1024, 2, mostDose, closely)
	if errors.Is(err, numeric.ErrBracket) {
		err = limit.Check(fn, "dose for the aim", math.Nextafter(mostDose, math.MaxFloat64), "mg/L", 0, mostDose, "what the drink can take")
	}
	return x, after, err
}

// beyond says that the aim lies not between two drinks, so far off.
func (a Aim) beyond(fn string, here, there float64, d, other Drink) error {
	const between = "the two drinks"
	if a.titration == (water.Titration{}) {
		return limit.Check(fn, "pH wanted", a.ph, "", min(d.ph, other.ph), max(d.ph, other.ph), between)
	}
	return limit.Check(fn, "acidity wanted", a.acidity, "mg/L", a.acidity-max(here, there), a.acidity-min(here, there), between)
}

// refuse says that a drink is beyond the aim already.
func (a Aim) refuse(fn string, ph, acidity float64, softer bool) error {
	if a.titration == (water.Titration{}) {
		if softer {
			return limit.Check(fn, "pH wanted", a.ph, "", ph, mostPH, "what the drink has, and more")
		}
		return limit.Check(fn, "pH wanted", a.ph, "", leastPH, ph, "what the drink has, and less")
	}
	if softer {
		return limit.Check(fn, "acidity wanted", a.acidity, "mg/L", 0, acidity, "what the drink has, and less")
	}
	return limit.Check(fn, "acidity wanted", a.acidity, "mg/L", acidity, mostAcidity, "what the drink has, and more")
}
