package nutrient

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// AcidCaution goes with every dose of acid.
const AcidCaution = "Acids burn eyes and skin: add acid to the drink, not the drink to the acid, with eyes covered. " + CheckTheLaw

// TitrationEnd is the pH at which titratable acidity ends.
//
//   - Source: AOAC and US practice 8.2; OIV-MA-AS313-01 takes 7.0 (recalled from memory).
const TitrationEnd = 8.2

// TitratableAcidity returns the base that brings a drink, free of CO2, to
// [TitrationEnd]. It is below zero in a drink that is less acid than that.
//
//   - Source: charge balance of the liquid; equilibria of package water.
//   - Range: those of [water.Profile.Closed]; beyond it the error is a
//     [*units.RangeError].
//   - Units: mEq/L; [TitratableAs] gives it as an acid.
//   - Uncertainty: 0.02 in pH, 1 % of the acidity.
func TitratableAcidity(drink water.Profile) (units.EquivalentConcentration, error) {
	a, s := flat(drink)
	end, err := a.atPH(TitrationEnd, s)
	if err != nil {
		return units.EquivalentConcentration{}, err
	}
	return units.MilliequivalentPerLitre.Try(end.strong - a.strong)
}

// TitratableAs returns an acidity as the mass of an acid that gives off all its protons,
// as wine makers say "as tartaric" (75.04 g/Eq) and cider makers "as malic".
//
//   - Source: molar mass over charge of the anion.
//   - Range: acidity 0 to 10,000 mEq/L; beyond it the error is a [*units.RangeError].
func TitratableAs(acidity units.EquivalentConcentration, a water.Acid) (units.MassConcentration, error) {
	mEq := acidity.In(units.MilliequivalentPerLitre)
	if err := limit.Check("nutrient.TitratableAs", "acidity", mEq, "mEq/L", 0, 10000, "drinks"); err != nil {
		return units.MassConcentration{}, err
	}
	if err := limit.Check("nutrient.TitratableAs", "molar mass of the acid", a.MolarMass(), "g/mol", 1, 1000, "the acids of package water"); err != nil {
		return units.MassConcentration{}, err
	}
	return mgPerL(mEq * a.MolarMass() / math.Abs(float64(a.Ion().Charge()))), nil
}

// flat is a drink without its CO2.
func flat(drink water.Profile) (acidity, surroundings) {
	s := surroundings{at: drink.Temperature(), flat: true}
	for _, i := range [...]water.Ion{water.Calcium, water.Magnesium, water.Chloride, water.Sulfate, water.Nitrate, water.Zinc} {
		if c := drink.Ion(i); !c.IsZero() {
			s.others = append(s.others, i.At(c))
		}
	}
	return acidityOf(drink), s
}

// Soured is a drink made sour.
type Soured struct {
	Acid          water.Acid
	Mass          units.Mass              // of the acid as sold
	Concentration units.MassConcentration // of pure acid added
	// Titratable acidity before and after.
	Before, After units.EquivalentConcentration
	Drink         water.Profile // without CO2, its pH known
	Limits        []Limit       // of the law asked
	Passed        []Limit       // those that the acid added is above
	Cautions      []string
}

// Acidify returns the acid that brings a drink to a pH, measured without its CO2.
// measured is the pH that a meter shows in it now; it fixes what the composition leaves
// open. With 0 the composition alone counts. strength is the pure acid in the good as sold:
// 80 % for the usual lactic acid, 91.43 % for citric acid monohydrate.
//
//   - Source: [water.Profile.AcidToPH].
//   - Range: target pH 2.5 to 7, below the pH now; measured pH 2.5 to 9; strength 1 to 100
//     %; at most 20 g/L of pure acid; beyond it the error is a [*units.RangeError].
//   - Uncertainty: 0.02 in pH, and that of the weak acids in the drink. Taste decides: make
//     a bench trial.
func Acidify(drink water.Profile, measured, target float64, acid water.Acid, strength units.Share, v units.Volume, law Jurisdiction) (Soured, error) {
	const fn, source = "nutrient.Acidify", "drinks"
	litres, part := v.In(units.Litre), strength.In(units.Percent)/100
	if err := limit.Check(fn, "volume", litres, "L", leastVolume, mostVolume, "a volume of liquid"); err != nil {
		return Soured{}, err
	}
	if err := limit.Check(fn, "strength of the acid", 100*part, "%", 1, 100, "acids as sold"); err != nil {
		return Soured{}, err
	}
	if err := limit.Check(fn, "target pH", target, "", 2.5, 7, source); err != nil {
		return Soured{}, err
	}
	a, s := flat(drink)
	if measured != 0 {
		if err := limit.Check(fn, "measured pH", measured, "", 2.5, 9, source); err != nil {
			return Soured{}, err
		}
		var err error
		if a, err = a.atPH(measured, s); err != nil {
			return Soured{}, err
		}
	}
	p, err := a.profile(s.at, s.others)
	if err != nil {
		return Soured{}, err
	}
	now, err := p.Closed(units.MolarConcentration{})
	if err != nil {
		return Soured{}, err
	}
	mmol, after, err := now.Water().AcidPerLitre(acid, target, water.CO2Kept)
	if err != nil {
		return Soured{}, err
	}
	g := mmol.In(units.MillimolePerLitre) * acid.MolarMass() / 1000
	if err := limit.Check(fn, "acid", g, "g/L", 0, 20, "what a drink can bear"); err != nil {
		return Soured{}, err
	}
	out := Soured{
		Acid: acid, Mass: grams(g / part * litres), Concentration: mgPerL(1000 * g), Drink: after,
		Cautions: []string{AcidCaution},
	}
	if out.Before, err = TitratableAcidity(p); err != nil {
		return Soured{}, err
	}
	if out.After, err = TitratableAcidity(after); err != nil {
		return Soured{}, err
	}
	if acid == water.CitricAcid {
		out.Limits = Limits(law, CitricAcid)
	}
	for _, l := range out.Limits {
		if !l.Allows(out.Concentration) {
			out.Passed = append(out.Passed, l)
		}
	}
	if len(out.Passed) > 0 {
		out.Cautions = append(out.Cautions, "The dose is above a limit of the law asked: "+out.Passed[0].String()+".")
	}
	return out, nil
}
