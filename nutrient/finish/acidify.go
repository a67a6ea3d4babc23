package finish

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// flat is a drink without its CO2.
func flat(drink water.Profile) (acidity.Liquid, acidity.Surroundings) {
	s := acidity.Surroundings{At: drink.Temperature(), Strength: drink.Ethanol(), Flat: true}
	for _, i := range [...]water.Ion{water.Calcium, water.Magnesium, water.Chloride, water.Sulfate, water.Nitrate, water.Zinc, water.Glutamate,
		water.Sulfite, water.Sorbate} {
		if c := drink.Ion(i); !c.IsZero() {
			s.Others = append(s.Others, i.At(c))
		}
	}
	return acidity.Of(drink), s
}

// Acidified is a drink made sour.
type Acidified struct {
	Dose          material.Dose           // of the acid as sold
	Concentration units.MassConcentration // of pure acid added
	// Titratable acidity before and after, by the convention asked.
	Before, After units.MassConcentration
	Drink         water.Profile // without CO2, its pH known
	Limits        []law.Limit   // of the law asked
	Passed        []law.Limit   // those that the acid added is above
	Cautions      caution.List
}

// Acidify returns the acid that brings a drink to a pH, measured without its CO2, and
// the titratable acidity before and after. measured is the pH that a meter shows in it
// now; it fixes what the composition leaves open. With 0 the composition alone counts.
//
//   - Source: [water.Profile.AcidToPH], [water.Profile.TitratableAcidity].
//   - Range: target pH 2.5 to 7, below the pH now; measured pH 2.5 to 9; at most 20 g/L of
//     pure acid; beyond it the error is a [*units.RangeError].
//   - Uncertainty: 0.02 in pH, and that of the weak acids in the drink. Taste decides: make
//     a bench trial.
func Acidify(drink water.Profile, acid material.Material, measured float64, target float64, titration water.Titration, v units.Volume,
	j law.Jurisdiction) (Acidified, error) {
	const fn, source = "finish.Acidify", "drinks"
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, amount.MostVolume, "a volume of liquid"); err != nil {
		return Acidified{}, limit.Named(fn, err)
	}
	of, share, err := water.AcidOf(acid)
	if err != nil {
		return Acidified{}, limit.Named(fn, err)
	}
	if err := limit.Check(fn, "share of pure acid", share.In(units.Percent), "%", 1, 100, "an acid as sold"); err != nil {
		return Acidified{}, limit.Named(fn, err)
	}
	if err := limit.Check(fn, "target pH", target, "", 2.5, 7, source); err != nil {
		return Acidified{}, limit.Named(fn, err)
	}
	a, s := flat(drink)
	if measured != 0 {
		if err := limit.Check(fn, "measured pH", measured, "", 2.5, 9, source); err != nil {
			return Acidified{}, limit.Named(fn, err)
		}
		if a, err = a.AtPH(measured, s); err != nil {
			return Acidified{}, limit.Named(fn, err)
		}
	}
	p, err := a.Profile(s)
	var now water.Equilibrium
	if err == nil {
		now, err = p.Closed(units.MolarConcentration{})
	}
	if err != nil {
		return Acidified{}, limit.Named(fn, err)
	}
	mmol, after, err := now.Water().AcidPerLitre(of, target, water.CO2Loss{})
	if err != nil {
		return Acidified{}, limit.Named(fn, err)
	}
	g := mmol.In(units.MillimolePerLitre) * of.MolarMass().In(units.GramPerMole) / 1000
	if err := limit.Check(fn, "acid", g, "g/L", 0, 20, "what a drink can bear"); err != nil {
		return Acidified{}, limit.Named(fn, err)
	}
	out := Acidified{
		Dose: acid.Dose(amount.Grams(g / share.In(units.Fraction) * litres)), Concentration: amount.MgPerL(1000 * g), Drink: after,
		Cautions: caution.List{water.AcidBurns, law.CheckTheLaw},
	}
	if out.Before, err = p.TitratableAcidity(titration); err == nil {
		out.After, err = after.TitratableAcidity(titration)
	}
	if err != nil {
		return Acidified{}, limit.Named(fn, err)
	}
	limits, passed, said, err := limited(fn, j, citricAcid, "dose", out.Concentration)
	if err != nil {
		return Acidified{}, err
	}
	if of == water.CitricAcid && len(limits) > 0 {
		out.Limits, out.Passed = limits, passed
		out.Cautions = out.Cautions.With(otherDrinks).With(said...)
	}
	return out, nil
}

// citricAcid is as the lists of additions have it.
var citricAcid = listed("citric acid")
