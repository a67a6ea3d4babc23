package must

import (
	"cmp"
	"errors"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Reading is what a maker measures of a juice, a must or a wine.
type Reading struct {
	PH          float64
	Acidity     units.MassConcentration // by titration
	Titration   water.Titration         // where it ends, and the acid it is stated as
	Temperature units.Temperature       // of the pH reading
	Strength    units.StrengthByVolume
}

// Drink returns the drink that shows the reading: of acids in the proportions given, as
// much as the titration finds, and of strong cations, as much as the pH then asks for. They
// are counted as potassium, of which a juice holds most; where potassium is among the known
// ions, it stays as it is known, and the rest is charge without a name. Known acids
// (phosphate of an analysis, sulfite) stay as they are and leave the rest of the acidity to
// the others.
//
// Errors are a [*units.RangeError]: a pH outside 2 to 6, an acidity below what the known
// ions and the pH alone make, or above 1000 mmol/L of acid; strong ions below zero (no
// mixture of these acids is as sour as that with so little acidity); and those of
// [water.NewProfile] and [New]. An ion among the acids that is no weak acid is a [*units.NameError].
//
//   - Source: electroneutrality and the balance of the titration, solved for the two unknowns.
//   - Uncertainty: that of the readings. 0.05 in pH is 10 % of the strong ions of a must at
//     pH 3.3, and 0.1 g/L of acidity 1 to 2 %. What is taken for the proportion of the acids
//     counts most: at pH 3.3 malic acid alone is a third less than half tartaric and half
//     malic, tartaric acid alone 60 % more.
func (r Reading) Drink(acids AcidShares, known ...water.Content) (Drink, error) {
	const fn = "must.Reading.Drink"
	if err := limit.Check(fn, "pH", r.PH, "", leastPH, mostPH, source); err != nil {
		return Drink{}, err
	}
	x, err := r.unknown(fn, acids, known)
	if err != nil {
		return Drink{}, err
	}
	return x.solve(func(acid float64) (water.Profile, error) { return x.atPH(acid, r.PH) })
}

const (
	leastPH  = 2
	mostPH   = 6
	mostAcid = 1000 // mmol/L

	mostAcidity = 100000 // mg/L
)

// unknown is a drink whose amount of acid is to be found.
type unknown struct {
	fn      string
	r       Reading
	acids   [len(weak)]float64 // mmol in a mmol of the acids together
	ions    []water.Content    // known
	of      []water.Content    // room for all
	has     map[water.Ion]bool
	acidity float64 // mg/L
	rest    float64 // mEq/L of the cations that the pH asks for besides
}

func (r Reading) unknown(fn string, acids AcidShares, known []water.Content) (*unknown, error) {
	x := &unknown{fn: fn, r: r, ions: known, has: map[water.Ion]bool{}, acidity: r.Acidity.In(units.MilligramPerLitre)}
	var err error
	if x.acids, err = acids.shares(fn); err != nil {
		return nil, err
	}
	if err := limit.Check(fn, "titratable acidity", x.acidity, "mg/L", 0, mostAcidity, source); err != nil {
		return nil, err
	}
	for _, c := range known {
		x.has[c.Ion] = true
	}
	return x, nil
}

// profile returns the water with so many mmol/L of the acids, potassium besides and that
// alkalinity (mEq/L).
func (x *unknown) profile(acid, potassium, alk float64) (water.Profile, error) {
	x.of = append(x.of[:0], x.ions...)
	add := func(i water.Ion, mmol float64) {
		if mmol <= 0 {
			return
		}
		mg := mmol * i.MolarMass().In(units.GramPerMole)
		for k := range x.ions {
			if x.of[k].Ion == i {
				mg += x.of[k].Concentration.In(units.MilligramPerLitre)
				x.of[k].Concentration = units.MilligramPerLitre.Of(checked.Number(mg))
				return
			}
		}
		x.of = append(x.of, i.At(units.MilligramPerLitre.Of(checked.Number(mg))))
	}
	for k, w := range weak {
		add(w.ion, acid*x.acids[k])
	}
	add(water.Potassium, potassium)
	add(water.Chloride, -potassium) // on the way to the solution
	p, err := water.NewProfile(x.r.Temperature, units.MilligramPerLitreCaCO3.Of(checked.Number(alk*caCO3)), x.of...)
	return p, limit.Named(x.fn, err)
}

// balance returns the charge of the named ions of a water besides its alkalinity, in mEq/L:
// its cations less its anions, each with the charge that alkalinity counts from.
func balance(p water.Profile) float64 {
	var sum float64
	for _, i := range water.Ions() {
		if i != water.Bicarbonate {
			sum += mmol(p, i) * float64(i.Charge())
		}
	}
	// Phosphate, sulfite and glutamate count from H2PO4-, HSO3- and their amino group with its proton.
	return sum + 2*mmol(p, water.Phosphate) + mmol(p, water.Sulfite) + mmol(p, water.Glutamate)
}

// atPH returns the water with so much acid whose pH is ph, potassium closing the charge
// where it is not known.
func (x *unknown) atPH(acid, ph float64) (water.Profile, error) {
	var potassium, alk float64
	for range mostRounds {
		p, err := x.profile(acid, potassium, alk)
		if err != nil {
			return p, err
		}
		with, err := p.WithEthanol(x.r.Strength)
		a, also := with.AlkalinityAt(ph, units.AbsolutePressure{})
		if err := cmp.Or(err, also); err != nil {
			return p, limit.Named(x.fn, err)
		}
		last := alk
		alk = a.In(units.MilligramPerLitreCaCO3) / caCO3
		if !x.has[water.Potassium] {
			potassium += alk - balance(p) // a rest that is negative stands as chloride until the end
		}
		if math.Abs(alk-last) < closely {
			break
		}
	}
	x.rest = potassium
	return x.profile(acid, potassium, alk)
}

const (
	mostRounds = 50
	closely    = 1e-8 // mEq/L
)

// solve finds the acid with which the titration of the water that make returns finds the
// acidity.
func (x *unknown) solve(make func(acid float64) (water.Profile, error)) (Drink, error) {
	var p water.Profile
	var found float64 // mg/L, by the last titration
	over := func(acid float64) (float64, error) {
		var err error
		if p, err = make(acid); err != nil {
			return 0, err
		}
		ta, err := titrated(p, x.r.Titration)
		found = ta.In(units.MilligramPerLitre)
		return found - x.acidity, limit.Named(x.fn, err)
	}
	if off, err := over(0); err != nil || off > 0 {
		return Drink{}, cmp.Or(err, limit.Check(x.fn, "titratable acidity", x.acidity, "mg/L", found, mostAcidity,
			"what the pH and the known ions make without more acid"))
	}
	// From half of the equivalents up by small steps: no try is far saltier than the answer.
	half := x.acidity / x.r.Titration.As.MolarMass().In(units.GramPerMole)
	if _, err := numeric.Rising(over, max(closely, half), 1.25, mostAcid, closely); err != nil {
		if errors.Is(err, numeric.ErrBracket) {
			err = limit.Check(x.fn, "titratable acidity", x.acidity, "mg/L", 0, found, "what 1 mol/L of acid makes")
		}
		return Drink{}, err
	}
	if x.rest < 0 {
		return Drink{}, limit.Check(x.fn, "strong cations at this pH and acidity", x.rest, "mEq/L", 0, mostAcid, "the acids without any salt are less sour")
	}
	return newDrink(x.fn, p, x.r.Strength)
}
