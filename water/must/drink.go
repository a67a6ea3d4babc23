package must

import (
	"cmp"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Drink is a juice, must, wine or any other still drink as its acidity sees it: what is
// dissolved in it, and its strength. Its CO2 is driven out, as for a titration; below pH 4
// CO2 moves the pH by less than 0.01. Drinks compare with ==; the zero value is no
// drink: its pH is 0.
type Drink struct {
	water    water.Profile // ions and alkalinity; its pH is not known
	strength float64       // % vol
	ph       float64
	capacity float64 // mEq/L
}

const source = "what a juice or a wine can be, package must"

// New returns the drink that holds what is dissolved in p, its alkalinity by charge
// balance ([water.Profile]: the anions of organic acids count whole, phosphate as H2PO4-). A strength that p has itself
// ([water.Profile.WithEthanol]) is not used.
//
// Errors are a [*units.RangeError]: a strength above 16 % vol, and those of
// [water.Profile.Under].
//
//   - Source: electroneutrality, as [water.Profile.Under]; ethanol by [water.Profile.WithEthanol].
//   - Uncertainty: 0.05 in pH for known contents; 0.2 for a wine by its analysis ([Analysis.Drink]).
func New(p water.Profile, strength units.StrengthByVolume) (Drink, error) {
	return newDrink("must.New", p, strength)
}

func newDrink(fn string, p water.Profile, strength units.StrengthByVolume) (Drink, error) {
	// The pH of the water is not that of the drink, and its ethanol is counted here.
	still, err := p.WithEthanol(units.StrengthByVolume{})
	with, also := p.WithEthanol(strength)
	e, last := with.Under(units.AbsolutePressure{})
	if err := cmp.Or(err, also, last); err != nil {
		return Drink{}, limit.Named(fn, err)
	}
	return Drink{
		water:    still,
		strength: strength.In(units.PercentVolume),
		ph:       e.PH(),
		capacity: e.BufferCapacity().In(units.MilliequivalentPerLitre),
	}, nil
}

// PH returns the pH that a meter shows.
func (d Drink) PH() float64 { return d.ph }

// Strength returns the strength.
func (d Drink) Strength() units.StrengthByVolume {
	return units.PercentVolume.Of(checked.Number(d.strength))
}

// Water returns what is dissolved: the ions and the alkalinity, of unknown pH.
func (d Drink) Water() water.Profile { return d.water }

// BufferCapacity returns the strong base that raises the pH by one unit, at first, in
// mEq/L.
//
//   - Source: as [water.Equilibrium.BufferCapacity].
//   - Uncertainty: of 14 measured solutions (C. Dartiguenave et al., Am. J. Enol. Vitic. 51
//     (2000) 352) 10 agree within 10 %, the four of one acid in water within 8 %, if the lye was
//     0.1 mol/L and its water counted; how they titrated was not read, and if nothing
//     was diluted this is 9 to 20 % above the four. Malic acid in 11 % vol of
//     ethanol measures 15 % lower, by a line that fits its own points badly; the sums of the same authors
//     ask for a figure that this meets within 3 %. Tartaric with malic acid measures 18 % (water) and 24 % (ethanol)
//     lower than the sum that they compute, and this is 13 and 26 % above it; tartaric with citric acid in ethanol
//     21 % higher than their sum, and this is 16 % below: these sums themselves it meets within 8 %.
func (d Drink) BufferCapacity() units.EquivalentConcentration {
	return units.MilliequivalentPerLitre.Of(checked.Number(d.capacity))
}

// Acidity returns the titratable acidity by a convention.
//
// A drink of more than about 12 g/L is titrated thinned with three times as much distilled water, as its salts at the
// end are beyond the constants: where the anions of its acids, each with all the charge that a wine's pH gives it, and
// as much sodium have an ionic strength of 420 mmol/L or more.
//
// Errors are those of [water.Profile.TitratableAcidity].
func (d Drink) Acidity(t water.Titration) (units.MassConcentration, error) {
	ta, err := titrated(d.water, t)
	return ta, limit.Named("must.Drink.Acidity", err)
}

// titrated is the titratable acidity of a water, thinned where its acids neutralised would be too strong.
func titrated(p water.Profile, t water.Titration) (units.MassConcentration, error) {
	const thinner = 4
	var strength float64 // mmol/L, of the acids and the sodium at the end
	for _, w := range weak {
		n := mmol(p, w.ion)
		strength += n * w.charge * (w.charge + 1) / 2
	}
	if strength < mostSalt {
		return p.TitratableAcidity(t)
	}
	thin, err := p.Dilute(units.Litre.Of(1), units.Litre.Of(thinner-1))
	if err != nil { // not reached: a litre and three
		return units.MassConcentration{}, err
	}
	ta, err := thin.TitratableAcidity(t)
	return milligrams(thinner * ta.In(units.MilligramPerLitre)), err
}

const mostSalt = 420 // mmol/L of ionic strength, somewhat below the end of the constants

// weak are the ions of weak acids that charge counts by their protons, with the charge that
// alkalinity counts from.
var weak = [...]weakAnion{
	{water.Phosphate, 1}, {water.Lactate, 1}, {water.Acetate, 1}, {water.Citrate, 3}, {water.Malate, 2},
	{water.Tartrate, 2}, {water.Succinate, 2}, {water.Sulfite, 1}, {water.Sorbate, 1},
	{water.Gluconate, 1}, {water.Glutamate, 1},
}

type weakAnion struct {
	ion    water.Ion
	charge float64
}

// mmol returns the content of an ion in mmol/L.
func mmol(p water.Profile, i water.Ion) float64 {
	return p.Ion(i).In(units.MilligramPerLitre) / i.MolarMass().In(units.GramPerMole)
}

// StrongIons returns the charge that the acids of the drink carry as salts: potassium and
// the other cations (ammonium too) less chloride, sulfate and nitrate, whether they were
// measured or follow from the pH.
func (d Drink) StrongIons() units.EquivalentConcentration {
	return units.MilliequivalentPerLitre.Of(checked.Number(strongIons(d.water)))
}

func strongIons(p water.Profile) float64 {
	sum := alkalinity(p)
	for _, w := range weak {
		sum += w.charge * mmol(p, w.ion)
	}
	return sum
}

// alkalinity returns mEq/L.
func alkalinity(p water.Profile) float64 {
	return p.Alkalinity().In(units.MilligramPerLitreCaCO3) / caCO3
}

// caCO3 is the mass of an equivalent of CaCO3: half its molar mass, in g.
const caCO3 = (chemistry.Ca + chemistry.C + 3*chemistry.O) / 2
