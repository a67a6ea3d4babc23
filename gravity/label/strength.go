package label

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Strength rounds a strength to one decimal, as EU and US labels state it.
//
//   - Source: Regulation (EU) No 1169/2011 annex XII (one decimal at most); 27 CFR 7.65
//     (nearest 0.1 %, below 0.5 % vol also 0.01; recalled from memory).
//   - Range: 0 to 100 % vol; a constant beyond that, which only [units.Unit.Of] takes,
//     counts as the nearer end.
func Strength(v units.StrengthByVolume) units.StrengthByVolume {
	percent := v.In(units.PercentVolume)
	if !(percent > 0) { // not a number neither
		percent = 0
	}
	return units.PercentVolume.Of(checked.Number(math.Round(10*min(100, percent)) / 10))
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

var categories = choice.Of[Category]("label.Category", "category of drink",
	"EU beer", "EU cider, perry, mead, fruit wine", "EU drink with macerated fruit or plants", "EU other drink",
	"US malt beverage", "US distilled spirit", "EU still grape drink of 2206 00", "US wine",
)

// String returns the category with its law: "EU other drink".
func (c Category) String() string { return categories.Text(c) }

// MarshalText is [Category.String]; an unknown category is a [*units.NameError].
func (c Category) MarshalText() ([]byte, error) { return categories.Marshal(c) }

// UnmarshalText reads what [Category.MarshalText] writes; other text is a [*units.NameError].
func (c *Category) UnmarshalText(text []byte) error { return categories.Unmarshal(text, c) }

// Tolerance returns how far the strength may be from the label, either way,
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
func (c Category) Tolerance(label units.StrengthByVolume) (units.PercentagePoints, error) {
	const fn = "label.Category.Tolerance"
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
