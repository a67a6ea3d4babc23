package catalogue

import (
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// scaleMethod is an entry for one of the published formulas from gravity to extract.
func scaleMethod(name, by, reference, source string, most float64, f func(float64) (units.Extract, error)) *Function {
	return entry(name, "extract of a specific gravity by "+by, source,
		of1(takesNumber("gravity", "", "specific gravity, "+reference, 1, most, 1.048), f),
		gives("extract", units.DegreePlato, "extract"))
}

// attenuation is an entry for one of the published ways from original and apparent extract to
// the beer.
func attenuation(name, by, source string, least, most float64, f func(original, apparent units.Extract) (rival.Attenuated, error)) *Function {
	return entry(name, "real extract and strength of a malt beer by "+by, source,
		of2(takes("original_extract", units.DegreePlato, "extract of the wort", least, most, 12),
			takes("apparent_extract", units.DegreePlato, "extract that a hydrometer shows in the beer", -2, most, 2.5), f),
		from(func(a rival.Attenuated) units.Extract { return a.RealExtract }, "real_extract", units.DegreePlato, "extract left in the beer"),
		from(func(a rival.Attenuated) units.StrengthByMass { return a.ByMass }, "strength_by_mass", units.PercentMass, "ethanol in the beer"))
}

// gravityMethods are the published rivals, each by its name.
func gravityMethods() []*Function {
	const air = "20/20 °C in air"
	return []*Function{
		scaleMethod("brix_nbs", "the cubic through NBS Circular 440", air, "fit to Bates et al., NBS Circular 440 (1942) table 114", 1.17874, rival.BrixNBS),
		scaleMethod("plato_asbc", "the cubic of American brewers", air, "fit to the ASBC table of extract, Methods of Analysis", 1.083, rival.PlatoASBC),
		scaleMethod("plato_lincoln", "the quadratic of Lincoln", "20/20 °C", "Lincoln, Computerized brew house calculations", 1.1, rival.PlatoLincoln),
		scaleMethod("brix_linear", "a straight line", "20/20 °C", "article Brix of a general encyclopaedia", 1.18, rival.BrixLinear),
		scaleMethod("plato_hyperbola", "the hyperbola of the saccharometer makers", "17.5/17.5 °C", "Kyoto Electronics, manual DA-650, p. 69",
			1.15, rival.PlatoHyperbola),
		attenuation("beer_balling_tables", "Balling's tables", "C. J. N. Balling, Die Gährungschemie (1865), tables A and B", 9, 16, rival.AttenuatedBallingTables),
		attenuation("beer_cutaia", "the regression over 532 brews", "Cutaia, Reid & Speers, J. Inst. Brew. 115 (2009) 318, table VI", 9.4,
			18.1, rival.AttenuatedCutaia),
		attenuation("beer_doemens", "the older regression", "Pawlowski/Doemens in Cutaia et al. 2009, table VI", 9.4, 18.1, rival.AttenuatedDoemens),
		attenuation("beer_handbook", "one constant of the handbooks", "de Clerck and later handbooks, 0.1808 and 0.8192", 4, 25, rival.AttenuatedHandbook),
		attenuation("beer_mebak", "one constant of the European analysts", "MEBAK B-590.80.530, 0.81", 4, 25, rival.AttenuatedMEBAK),
	}
}
