package nutrient

import (
	"math"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Sour is an acid that a drink is made sour with, as it is sold.
type Sour int

// The acids of the trade.
const (
	Citric            Sour = iota // anhydrous
	CitricMonohydrate             // with crystal water
	Lactic80                      // 80 % by mass in water
	Malic
	Tartaric
)

type sourFacts struct {
	name    string
	formula string  // of the pure acid with its crystal water
	share   float64 // of the pure acid in the good
	anion   int     // place in acidity.organic
	protons float64
}

var sourTable = [...]sourFacts{
	Citric:            {"citric acid", "C6H8O7", 1, citric, 3},
	CitricMonohydrate: {"citric acid monohydrate", "C6H8O7.H2O", 1, citric, 3},
	Lactic80:          {"lactic acid 80 %", "C3H6O3", 0.80, lactic, 1},
	Malic:             {"malic acid", "C4H6O5", 1, malic, 2},
	Tartaric:          {"tartaric acid", "C4H6O6", 1, tartaric, 2},
}

func (a Sour) facts() *sourFacts {
	if a < 0 || int(a) >= len(sourTable) {
		return &sourTable[Citric]
	}
	return &sourTable[a]
}

// String returns the name.
func (a Sour) String() string { return a.facts().name }

// EquivalentMass returns the grams of the acid as sold that hold a mole of H+, when all of
// it comes off: 64.04 for citric acid.
//
//   - Source: [water.MolarMass].
func (a Sour) EquivalentMass() float64 {
	f := a.facts()
	return mustMass(f.formula) / f.protons / f.share
}

// ParseSour returns the acid of that name; "lactic acid" is refused, as its strength
// varies. The error is a [*units.ParseError].
func ParseSour(text string) (Sour, error) {
	name := strings.TrimSpace(text)
	var names []string
	for i, f := range sourTable {
		if strings.EqualFold(name, f.name) {
			return Sour(i), nil
		}
		names = append(names, f.name)
	}
	return 0, unknown(text, "acid", strings.Join(names, ", "))
}

// AcidCaution goes with every dose of acid.
const AcidCaution = "Acids burn eyes and skin: add acid to the drink, not the drink to the acid, with eyes covered. " + CheckTheLaw

// TitrationEnd is the pH at which titratable acidity ends.
//
//   - Source: AOAC and US practice 8.2; OIV-MA-AS313-01 takes 7.0 (recalled from memory).
const TitrationEnd = 8.2

// TitratableAcidity returns the base that brings a drink, free of CO2, to [TitrationEnd].
//
//   - Source: charge balance of the liquid; equilibria of package water.
//   - Range: those of [water.Profile.Closed]; beyond it the error is a
//     [*units.RangeError].
//   - Units: mEq/L; times [Sour.EquivalentMass] it is mg/L as that acid.
//   - Uncertainty: 0.02 in pH, 1 % of the acidity.
func TitratableAcidity(drink water.Profile) (units.EquivalentConcentration, error) {
	a, s := flat(drink)
	base, err := a.titrated(s)
	return base, err
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

func (a acidity) titrated(s surroundings) (units.EquivalentConcentration, error) {
	end, err := a.atPH(TitrationEnd, s)
	if err != nil {
		return units.EquivalentConcentration{}, err
	}
	return units.MilliequivalentPerLitre.Try(end.strong - a.strong)
}

// Soured is a drink made sour.
type Soured struct {
	Acid          Sour
	Mass          units.Mass
	Concentration units.MassConcentration // of the acid as sold
	PH            float64                 // without CO2
	// Titratable acidity before and after.
	Before, After units.EquivalentConcentration
	Drink         water.Profile
	Limits        []Limit // of the law asked
	Passed        []Limit
	Cautions      []string
}

// Acidify returns the acid that brings a drink to a pH, measured without its CO2.
// measured is the pH that a meter shows in it now; it fixes what the composition leaves
// open. With 0 the composition alone counts.
//
//   - Source: charge balance of the liquid; equilibria of package water; solved with
//     [numeric.Root].
//   - Range: target pH 2.5 to 7, below the pH now, with at most 20 g/L of acid; measured
//     pH 2.5 to 9; beyond it the error is a [*units.RangeError].
//   - Uncertainty: 0.02 in pH, and that of the weak acids in the drink. Taste decides: make
//     a bench trial.
func Acidify(drink water.Profile, measured, target float64, acid Sour, v units.Volume, law Jurisdiction) (Soured, error) {
	const fn, source, most = "nutrient.Acidify", "drinks", 20 // g/L
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", leastVolume, mostVolume, "a volume of liquid"); err != nil {
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
	now, err := a.pH(s)
	if err != nil {
		return Soured{}, err
	}
	if err := limit.Check(fn, "target pH", target, "", 2.5, min(7, now), "below the pH now"); err != nil {
		return Soured{}, err
	}
	facts := acid.facts()
	perGram := 1000 * facts.share / mustMass(facts.formula) // mmol
	with := func(g float64) acidity {
		b := a
		b.organic[facts.anion] += g * perGram
		return b
	}
	var failed error
	g, err := numeric.Root(func(g float64) float64 {
		pH, err := with(g).pH(s)
		if err != nil {
			failed = err
			return math.NaN()
		}
		return pH - target
	}, 0, most, 1e-11)
	if failed != nil {
		return Soured{}, failed
	}
	if err != nil {
		return Soured{}, limit.Check(fn, "acid", math.Inf(1), "g/L", 0, most, "what a drink can bear")
	}
	end := with(g)
	out := Soured{
		Acid: acid, Mass: grams(g * litres), Concentration: mgPerL(1000 * g), PH: target,
		Cautions: []string{AcidCaution},
	}
	if out.Before, err = a.titrated(s); err != nil {
		return Soured{}, err
	}
	if out.After, err = end.titrated(s); err != nil {
		return Soured{}, err
	}
	if out.Drink, err = end.profile(s.at, s.others); err != nil {
		return Soured{}, err
	}
	if facts.anion == citric {
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
