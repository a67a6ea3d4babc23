package nutrient

import "github.com/shopspring/decimal"

// The scopes that limits speak of.
const (
	Wine               = "wine"                                                           // still and sparkling, main fermentation
	SecondFermentation = "second fermentation of sparkling wine"                          //
	DistillingMaterial = "distilling material"                                            //
	AppleWine          = "apple wine"                                                     //
	WhiteWine          = "white and rosé wine"                                            //
	RedWine            = "red wine"                                                       //
	FlavouredDrink     = "14.1.4 flavoured drinks, energy reduced or without added sugar" //
	FlavouredAlcoholic = "14.2.8 other alcoholic drinks, mixtures with non-alcoholic ones"
	CiderAndPerry      = "cider and perry"
	AlcoholFreeBeer    = "alcohol-free beer or up to 1.2 % vol"
	cfr246             = "27 CFR 24.246 (2015 edition)"
	eu934              = "Reg. (EU) 2019/934 annex I part A"
	eu1333             = "Reg. (EC) 1333/2008 annex II"
	scottish           = "Sweeteners in Food Amendment (Scotland) Regulations, SI 2002/61"
	amended            = "amended since 2015"
)

// lawTable holds the limits as printed. Rows recalled from memory say so.
var lawTable = []Limit{
	us("8", poundPerThousandGallons, "0.96 g/L", Wine, cfr246, amended, AmmoniumPhosphate),
	us("0.005", poundPerThousandGallons, "0.6 mg/L", Wine, cfr246, amended, Thiamine),
	us("3", poundPerThousandGallons, "0.36 g/L", Wine, cfr246, amended, YeastMatter),
	us("2", poundPerThousandGallons, "0.24 g/L", Wine, cfr246, amended, SoyFlour),
	us("0.004", poundPerThousandGallons, "0.1 lb/25,000 gal", AppleWine, cfr246, amended, CalciumPantothenate),
	us("10", poundPerThousandGallons, "1.2 g/L", DistillingMaterial, "27 CFR 24.247", "", AmmoniumPhosphate),
	us("5.8", poundPerThousandGallons, "0.7 g/L", Wine, cfr246, amended, CitricAcid),
	us("25", poundPerThousandGallons, "3.0 g/L", Wine, cfr246, amended, FumaricAcid),
	us("6", milligramPerLitre, "", Wine, cfr246, "at most 0.5 mg/L of copper may stay in the wine", CopperSulfate),
	us("30", poundPerThousandGallons, "3.59 g/L", Wine, cfr246, "for cold stabilisation", CalciumCarbonate),
	us("35", poundPerThousandGallons, "4.19 g/L", Wine, cfr246, amended, PotassiumBitartrate),
	us("200", milligramPerLitre, "", Wine, cfr246, "cumulative", DimethylDicarbonate),
	us("500", milligramPerLitre, "", Wine, cfr246, amended, Lysozyme),
	us("2", poundPerThousandGallons, "0.24 g/L", Wine, cfr246, amended, Acacia),
	us("300", milligramPerLitre, "", Wine, cfr246, amended, SorbicAcid),
	us("350", milligramPerLitre, "", Wine, "27 CFR 4.22(b)(1)", "ppm of total SO2; declare from 10 ppm (27 CFR 4.32(e), recalled from memory)", SulfurDioxide),

	eu("1", gramPerLitre, Wine, eu934, "as the salt", Recalled, AmmoniumPhosphate, AmmoniumSulfateSalt),
	eu("0.3", gramPerLitre, SecondFermentation, eu934, "as the salt", Recalled, AmmoniumPhosphate, AmmoniumSulfateSalt),
	eu("0.6", milligramPerLitre, Wine, eu934, "as thiamine, per treatment", Recalled, Thiamine),
	eu("0.4", gramPerLitre, Wine, eu934, "40 g/hL", Recalled, YeastMatter),
	eu("200", milligramPerLitre, Wine, eu934, "", Recalled, SorbicAcid),
	eu("150", milligramPerLitre, RedWine, eu934, "50 more from 5 g/L of sugar; declare above 10 mg/L", Recalled, SulfurDioxide),
	eu("200", milligramPerLitre, WhiteWine, eu934, "50 more from 5 g/L of sugar; declare above 10 mg/L", Recalled, SulfurDioxide),
	eu("100", milligramPerLitre, "organic red wine, sugar below 2 g/L", "Reg. (EU) 203/2012", "", Read, SulfurDioxide),
	eu("150", milligramPerLitre, "organic white and rosé wine, sugar below 2 g/L", "Reg. (EU) 203/2012", "", Read, SulfurDioxide),

	eu("300", milligramPerLitre, FlavouredDrink, scottish, "", Read, Sucralose),
	eu("250", milligramPerLitre, FlavouredAlcoholic, scottish, "", Read, Sucralose),
	eu("250", milligramPerLitre, CiderAndPerry, scottish, "", Read, Sucralose),
	eu("250", milligramPerLitre, AlcoholFreeBeer, scottish, "", Read, Sucralose),
	eu("350", milligramPerLitre, FlavouredDrink, eu1333, "", Recalled, AcesulfameK),
	eu("350", milligramPerLitre, FlavouredAlcoholic, eu1333, "", Recalled, AcesulfameK),
	eu("600", milligramPerLitre, FlavouredDrink, eu1333, "", Recalled, Aspartame),
	eu("600", milligramPerLitre, FlavouredAlcoholic, eu1333, "", Recalled, Aspartame),
	eu("250", milligramPerLitre, FlavouredDrink, eu1333, "as the acid", Recalled, Cyclamate),
	eu("250", milligramPerLitre, FlavouredAlcoholic, eu1333, "as the acid", Recalled, Cyclamate),
	eu("80", milligramPerLitre, FlavouredDrink, eu1333, "", Recalled, Saccharin),
	eu("80", milligramPerLitre, FlavouredAlcoholic, eu1333, "", Recalled, Saccharin),
	eu("30", milligramPerLitre, FlavouredDrink, eu1333, "", Recalled, NeohesperidinDC),
	eu("30", milligramPerLitre, FlavouredAlcoholic, eu1333, "", Recalled, NeohesperidinDC),
	eu("20", milligramPerLitre, FlavouredDrink, eu1333, "", Recalled, Neotame),
	eu("20", milligramPerLitre, FlavouredAlcoholic, eu1333, "", Recalled, Neotame),
	eu("80", milligramPerLitre, FlavouredDrink, eu1333, "", Recalled, SteviolGlycosides),
	eu("150", milligramPerLitre, FlavouredAlcoholic, eu1333, "", Recalled, SteviolGlycosides),
	eu("6", milligramPerLitre, FlavouredDrink, eu1333, "", Recalled, Advantame),
	eu("6", milligramPerLitre, FlavouredAlcoholic, eu1333, "", Recalled, Advantame),
}

func us(n string, u limitUnit, printed, scope, article, note string, covers ...Substance) Limit {
	return Limit{
		Covers: covers, Jurisdiction: US, Scope: scope, Article: article, Printed: printed, Note: note,
		Grade: Read, amount: decimal.RequireFromString(n), unit: u,
	}
}

func eu(n string, u limitUnit, scope, article, note string, g Grade, covers ...Substance) Limit {
	return Limit{
		Covers: covers, Jurisdiction: EU, Scope: scope, Article: article, Note: note,
		Grade: g, amount: decimal.RequireFromString(n), unit: u,
	}
}
