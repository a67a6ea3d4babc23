package gravity

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Label facts. The articles are cited as they stood when this was written: check the
// law in force where you sell.

// Nutrition is what 100 mL of a drink hold, at 20 °C.
type Nutrition struct {
	Energy       LabelEnergy
	Ethanol      units.Mass
	Carbohydrate units.Mass // all extract but organic acids; polyols are in it, as the law defines it
	Sugars       units.Mass // of these: sucrose, glucose and fructose; other extract counts as none
	Polyols      units.Mass // of these: glycerol
	OrganicAcids units.Mass // beside them: no line on the label, but energy
}

// Nutrition returns the facts of 100 mL at 20 °C with the energy of EU law. Extract
// given in °P counts as sugars, since it is not told apart: for beer state the sugars
// from an analysis.
//
//   - Source: Regulation (EU) No 1169/2011 annex I ("carbohydrate" includes polyols, "sugars"
//     excludes them; both read) and annex XIV (factors, read).
//   - Range: every solution.
//   - Uncertainty: that of the composition.
func (s Solution) Nutrition() Nutrition {
	in := s.gramsPer100mL()
	g := func(v float64) units.Mass { return units.Gram.Of(checked.Number(v)) }
	return Nutrition{
		Energy: s.EnergyEU(), Ethanol: g(in.ethanol), Carbohydrate: g(in.carbohydrate + in.polyol), Sugars: g(in.sugars),
		Polyols: g(in.polyol), OrganicAcids: g(in.acid),
	}
}

// EnergyUS returns the energy of 100 mL of beer at 20 °C as American analysts
// calculate it.
//
//   - Source: kcal/100 g = 6.9·A + 4.0·(RE − ash), A % mass of ethanol, RE % mass of real
//     extract; times the specific gravity for 100 mL (The Oxford Companion to Beer (2012),
//     "calories", after ASBC; method Beer-33 recalled from memory).
//   - Range: ash from 0 to the real extract and at most 1 % mass, 0.1 is customary for
//     beer (recalled from memory) and nothing for a sugar wash; otherwise the error is a
//     [*units.RangeError].
//   - Uncertainty: that of the composition. A drink may hold up to 20 % more than its label
//     states (TTB Procedure 2020-1 of 28 September 2020; read). Real extract counts whole,
//     glycerol and acids with it, as carbohydrate by difference does.
func (s Solution) EnergyUS(ash units.Share) (units.Energy, error) {
	e, x := s.fractions()
	a := ash.In(units.Percent)
	if err := limit.Check("gravity.Solution.EnergyUS", "ash", a, "% mass", 0, min(1, 100*x), "beer"); err != nil {
		return units.Energy{}, err
	}
	kcal := (6.9*100*e + 4.0*(100*x-a)) * s.density20() / syrup20[0]
	return units.Kilocalorie.Of(checked.Number(kcal)), nil
}

// RoundCaloriesUS rounds kilocalories of a serving as US food law does: below 5 to
// 0, to the nearest 5 up to 50, to the nearest 10 above.
//
//   - Source: 21 CFR 101.9(c)(1) (read second hand).
//   - Range: 0 to 1e6 kcal; otherwise the error is a [*units.RangeError].
func RoundCaloriesUS(e units.Energy) (units.Energy, error) {
	kcal := e.In(units.Kilocalorie)
	if err := limit.Check("gravity.RoundCaloriesUS", "energy", kcal, "kcal", 0, 1e6, "a serving"); err != nil {
		return units.Energy{}, err
	}
	switch {
	case kcal < 5:
		kcal = 0
	case kcal <= 50:
		kcal = 5 * math.Round(kcal/5)
	default:
		kcal = 10 * math.Round(kcal/10)
	}
	return units.Kilocalorie.Of(checked.Number(kcal)), nil
}

// LabelStrength rounds a strength to one decimal, as EU and US labels state it.
//
//   - Source: Regulation (EU) No 1169/2011 annex XII (one decimal at most); 27 CFR 7.65
//     (nearest 0.1 %, below 0.5 % vol also 0.01; recalled from memory).
//   - Range: 0 to 100 % vol; a constant beyond that, which only [units.Unit.Of] takes,
//     counts as the nearer end.
func LabelStrength(v units.StrengthByVolume) units.StrengthByVolume {
	return percentVolume(math.Round(10*clamp(v.In(units.PercentVolume), 0, 100)) / 10)
}

// Category is a kind of drink for which a law states how far the strength may be
// from the label.
//
// A seltzer of sugar is [EUOther] in the EU. In the US it is no malt beverage, which has
// malted barley and hops (27 CFR 7.1, read): fermented sugar is "beer" for tax (27 CFR
// 25.15, read), and where it is not brewed from both, its label is under the rules of food
// (TTB Ruling 2008-3; FDA guidance of 2014, revised April 2023; both read). Those state no
// tolerance for strength that this package knows.
type Category int

// Categories and the law that they are from.
const (
	EUBeer      Category = iota // beer (CN 2203 00)
	EUCider                     // cider, perry, mead and other fermented fruit drinks; sparkling grape drinks of 2206 00
	EUMacerated                 // drinks with macerated fruit or plants
	EUOther                     // any other drink: a seltzer of sugar
	USMaltDrink                 // malt beverages: of malted barley and hops
	USSpirit                    // distilled spirits, since 4 May 2020
	EUGrape                     // still drinks of CN 2206 00 made from grapes
	USWine                      // wine of 7 % vol and more, fruit and other wines among it
)

var categories = choice.Of[Category]("category of drink",
	"EU beer", "EU cider, perry, mead, fruit wine", "EU drink with macerated fruit or plants", "EU other drink",
	"US malt beverage", "US distilled spirit", "EU still grape drink of 2206 00", "US wine",
)

// String returns the category with its law: "EU other drink".
func (c Category) String() string { return categories.Text(c) }

// MarshalText is [Category.String]; an unknown category is a [*units.NameError].
func (c Category) MarshalText() ([]byte, error) {
	return categories.Marshal("gravity.Category.MarshalText", c)
}

// UnmarshalText reads what [Category.MarshalText] writes; other text is a [*units.NameError].
func (c *Category) UnmarshalText(text []byte) error {
	return categories.Unmarshal("gravity.Category.UnmarshalText", text, c)
}

// LabelTolerance returns how far the strength may be from the label, either way,
// before the error of the analysis.
//
//   - Source: Regulation (EU) No 1169/2011 annex XII: 0.5 % vol for beer up to 5.5 % vol and
//     still grape drinks of CN 2206 00, 1.0 for stronger beer, cider, perry and mead, 1.5 with macerated fruit or plants, 0.3 for all
//     other drinks. US: 0.3 for malt beverages of 0.5 % vol and more (27 CFR 7.65, recalled
//     from memory; in force since 11 March 2022, 87 FR 7526, read); one that is labelled below
//     0.5 % vol has none: it may hold no more than the label says, and 0.0 is for what has no
//     alcohol (same). With the tolerance none labelled 0.5 or more may hold less than 0.5, none
//     labelled low in alcohol 2.5 or more. Spirits 0.3 since 4 May 2020 (85 FR 18704, read;
//     27 CFR 19.356(c), read; now also 27 CFR 5.65), 0.15 below before (recalled from memory).
//     Wine 1.5 up to 14 % vol and 1.0 above, but never across 14 % vol (27 CFR 4.36(b), as
//     quoted in 2010, read).
//   - Range: label from 0 to 100 % vol; otherwise the error is a [*units.RangeError]. A
//     category that is not named here is a [*units.NameError]. EU law asks for the statement above 1.2 % vol.
func LabelTolerance(c Category, label units.StrengthByVolume) (units.PercentagePoints, error) {
	const fn = "gravity.LabelTolerance"
	v := label.In(units.PercentVolume)
	if err := categories.Check(fn, c); err != nil {
		return units.PercentagePoints{}, err
	}
	if err := limit.Check(fn, "strength", v, "% vol", 0, 100, "a strength"); err != nil {
		return units.PercentagePoints{}, err
	}
	switch {
	case c == EUBeer && v <= 5.5, c == EUGrape:
		return units.PercentagePoint.Of(0.5), nil
	case c == EUBeer, c == EUCider:
		return units.PercentagePoint.Of(1.0), nil
	case c == EUMacerated, c == USWine && v <= 14:
		return units.PercentagePoint.Of(1.5), nil
	case c == USWine:
		return units.PercentagePoint.Of(1.0), nil
	case c == USMaltDrink && v < 0.5:
		return units.PercentagePoint.Of(0), nil
	}
	return units.PercentagePoint.Of(0.3), nil
}

// RoundEU returns the facts as an EU label rounds them: energy to whole kJ and kcal;
// carbohydrate, sugars and polyols to 1 g from 10 g up, to 0.1 g below, and to nothing
// up to 0.5 g.
//
//   - Source: European Commission, Guidance document on tolerances for nutrient values
//     declared on a label (2012), table 4 (recalled from memory). It also allows the
//     content to differ from the label by 2 g below 10 g and 20 % from 10 to 40 g.
//   - Range: every [Nutrition].
func (n Nutrition) RoundEU() Nutrition {
	n.Energy.Kilojoules = units.Kilojoule.Of(checked.Number(math.Round(n.Energy.Kilojoules.In(units.Kilojoule))))
	n.Energy.Kilocalories = units.Kilocalorie.Of(checked.Number(math.Round(n.Energy.Kilocalories.In(units.Kilocalorie))))
	for _, m := range []*units.Mass{&n.Carbohydrate, &n.Sugars, &n.Polyols} {
		*m = roundNutrient(*m)
	}
	return n
}

func roundNutrient(m units.Mass) units.Mass {
	g := m.In(units.Gram)
	switch {
	case g <= 0.5:
		g = 0
	case g < 10:
		g = math.Round(10*g) / 10
	default:
		g = math.Round(g)
	}
	return units.Gram.Of(checked.Number(g))
}
