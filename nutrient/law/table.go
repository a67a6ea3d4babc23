package law

import (
	"example.org/zymase/units/evidence"
	"github.com/shopspring/decimal"
)

// The texts that limits stand in.
const (
	cfr246       = "27 CFR 24.246 (2015 edition)"
	ttb185       = "27 CFR 24.246 as amended by T.D. TTB-185 (2022)"
	eu934        = "Reg. (EU) 2019/934 annex I part A (2019)"
	organic      = "Reg. (EU) 203/2012 (2012)"
	eu1333       = "Reg. (EC) 1333/2008 annex II (list of 2011)"
	amended      = "the section was amended by T.D. TTB-185 (2022)"
	laterOrganic = "replaced from 2022 by Reg. (EU) 2018/848 and 2021/1165 (recalled from memory)"
	goodPractice = "as food for the yeast TTB goes on to allow what good commercial practice takes, until it makes a new rule (bulletin on T.D. TTB-185, " +
		"August 2022, read)"
)

// thiamineShare is the mass of thiamine, C12H17N4OS, in its hydrochloride,
// C12H17ClN4OS·HCl: 265.36/337.26 (atomic weights 2021).
const thiamineShare = 265.36 / 337.26

// lawTable holds the limits as printed, each with the year of the text. Rows recalled
// from memory say so. An autolysate of yeast has none in either law: the limits for yeast
// are for cell walls.
var lawTable = []Limit{
	us("8", poundPerThousandGallons, "0.96 g/L", Wine, cfr246, amended, AmmoniumPhosphate),
	us("0.005", poundPerThousandGallons, "0.6 mg/L", Wine, cfr246, amended, thiamine),
	us("3", poundPerThousandGallons, "0.36 g/L", Wine, cfr246, amended, YeastCellWalls),
	us("2", poundPerThousandGallons, "0.24 g/L", Wine, cfr246, amended, soyFlour),
	us("0.004", poundPerThousandGallons, "0.1 lb/25,000 gal", appleWine, cfr246, amended, calciumPantothenate),
	us("10", poundPerThousandGallons, "1.2 g/L", DistillingMaterial, "27 CFR 24.247 (editions of 2015 and after 2022)", "", AmmoniumPhosphate),
	us("5.8", poundPerThousandGallons, "0.7 g/L", Wine, cfr246, amended, citricAcid),
	us("25", poundPerThousandGallons, "3.0 g/L", Wine, cfr246, amended, fumaricAcid),
	us("6", milligramPerLitre, "", Wine, cfr246, "at most 0.5 mg/L of copper may stay in the wine", copperSulfate),
	us("30", poundPerThousandGallons, "3.59 g/L", Wine, cfr246, "for cold stabilisation", calciumCarbonate),
	us("35", poundPerThousandGallons, "4.19 g/L", Wine, cfr246, amended, potassiumBitartrate),
	us("200", milligramPerLitre, "", Wine, cfr246, "cumulative", dimethylDicarbonate),
	us("500", milligramPerLitre, "", Wine, cfr246, amended, lysozyme),
	us("2", poundPerThousandGallons, "0.24 g/L", Wine, cfr246, amended, acacia),
	us("300", milligramPerLitre, "", Wine, cfr246, amended, SorbicAcid),
	recalled(us("0.025", milligramPerLitre, "25 ppb", Wine, ttb185, goodPractice, biotin)),
	recalled(us("0.1", milligramPerLitre, "100 ppb", Wine, ttb185, goodPractice, folicAcid)),
	recalled(us("2", milligramPerLitre, "2 ppm", Wine, ttb185, goodPractice, inositol)),
	recalled(us("15", milligramPerLitre, "15 ppm", Wine, ttb185, goodPractice, magnesiumSulfate)),
	recalled(us("1", milligramPerLitre, "1 ppm", Wine, ttb185, goodPractice, niacin)),
	recalled(us("1.5", milligramPerLitre, "1.5 ppm", Wine, ttb185, goodPractice, calciumPantothenate)),
	recalled(us("0.15", milligramPerLitre, "150 ppb", Wine, ttb185, goodPractice, pyridoxine)),
	us("350", milligramPerLitre, "", Wine, "27 CFR 4.22(b)(1) (2015 edition)",
		"ppm of total SO2; declare from 10 ppm (27 CFR 4.32(e), recalled from memory)", SulfurDioxide),

	eu("1", gramPerLitre, Wine, eu934, "as the salt", evidence.Recalled, AmmoniumPhosphate, ammoniumSulfate),
	eu("0.3", gramPerLitre, secondFermentation, eu934, "as the salt", evidence.Recalled, AmmoniumPhosphate, ammoniumSulfate),
	asThiamine(eu("0.6", milligramPerLitre, Wine, eu934, "for each treatment; the OIV has the same figure, as thiamine (Oeno 7/95, read)",
		evidence.Recalled, thiamine)),
	eu("0.4", gramPerLitre, Wine, eu934+", by OIV file II.2.3.4", "40 g/hL (read in the OIV file)", evidence.Recalled, YeastCellWalls),
	eu("200", milligramPerLitre, Wine, eu934, "", evidence.Recalled, SorbicAcid),
	eu("150", milligramPerLitre, redWine, eu934, "50 more from 5 g/L of sugar; declare above 10 mg/L", evidence.Recalled, SulfurDioxide),
	eu("200", milligramPerLitre, whiteWine, eu934, "50 more from 5 g/L of sugar; declare above 10 mg/L", evidence.Recalled, SulfurDioxide),
	eu("100", milligramPerLitre, organicRedWine, organic, laterOrganic, evidence.Read, SulfurDioxide),
	eu("150", milligramPerLitre, organicWhiteWine, organic, laterOrganic, evidence.Read, SulfurDioxide),

	eu("200", milligramPerLitre, CiderAndPerry, eu1333, "", evidence.Recalled, SorbicAcid),
	eu("200", milligramPerLitre, fruitWine, eu1333, "", evidence.Recalled, SorbicAcid),
	eu("200", milligramPerLitre, CiderAndPerry, eu1333, "", evidence.Recalled, SulfurDioxide),
	eu("200", milligramPerLitre, fruitWine, eu1333, "", evidence.Recalled, SulfurDioxide),

	eu("300", milligramPerLitre, flavouredDrink, eu1333, "", evidence.Recalled, sucralose),
	eu("250", milligramPerLitre, flavouredAlcoholic, eu1333, "", evidence.Recalled, sucralose),
	eu("50", milligramPerLitre, CiderAndPerry, eu1333, "", evidence.Recalled, sucralose),
	eu("250", milligramPerLitre, alcoholFreeBeer, eu1333, "", evidence.Recalled, sucralose),
	eu("350", milligramPerLitre, flavouredDrink, eu1333, "", evidence.Recalled, acesulfameK),
	eu("350", milligramPerLitre, flavouredAlcoholic, eu1333, "", evidence.Recalled, acesulfameK),
	eu("600", milligramPerLitre, flavouredDrink, eu1333, "", evidence.Recalled, aspartame),
	eu("600", milligramPerLitre, flavouredAlcoholic, eu1333, "", evidence.Recalled, aspartame),
	eu("250", milligramPerLitre, flavouredDrink, eu1333, "as the acid", evidence.Recalled, cyclamate),
	eu("250", milligramPerLitre, flavouredAlcoholic, eu1333, "as the acid", evidence.Recalled, cyclamate),
	eu("80", milligramPerLitre, flavouredDrink, eu1333, "", evidence.Recalled, saccharin),
	eu("80", milligramPerLitre, flavouredAlcoholic, eu1333, "", evidence.Recalled, saccharin),
	eu("30", milligramPerLitre, flavouredDrink, eu1333, "", evidence.Recalled, neohesperidinDC),
	eu("30", milligramPerLitre, flavouredAlcoholic, eu1333, "", evidence.Recalled, neohesperidinDC),
	eu("20", milligramPerLitre, flavouredDrink, eu1333, "", evidence.Recalled, neotame),
	eu("20", milligramPerLitre, flavouredAlcoholic, eu1333, "", evidence.Recalled, neotame),
	eu("80", milligramPerLitre, flavouredDrink, eu1333, "", evidence.Recalled, steviolGlycosides),
	eu("150", milligramPerLitre, flavouredAlcoholic, eu1333, "", evidence.Recalled, steviolGlycosides),
	eu("6", milligramPerLitre, flavouredDrink, eu1333, "", evidence.Recalled, advantame),
	eu("6", milligramPerLitre, flavouredAlcoholic, eu1333, "", evidence.Recalled, advantame),
}

func us(n string, u limitUnit, printed string, scope Scope, article, note string, covers ...Substance) Limit {
	return Limit{
		Covers: covers, Jurisdiction: US, Scope: scope, Article: article, Printed: printed, Note: note,
		Grade: evidence.Read, amount: decimal.RequireFromString(n), unit: u,
	}
}

func eu(n string, u limitUnit, scope Scope, article, note string, g evidence.Grade, covers ...Substance) Limit {
	return Limit{
		Covers: covers, Jurisdiction: EU, Scope: scope, Article: article, Note: note,
		Grade: g, amount: decimal.RequireFromString(n), unit: u,
	}
}

func recalled(l Limit) Limit {
	l.Grade = evidence.Recalled
	return l
}

func asThiamine(l Limit) Limit {
	l.as, l.counts = " as thiamine", thiamineShare
	return l
}
