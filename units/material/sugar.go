package material

import (
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// WhiteSugar is sucrose as sold: 99.94 % dry, all of it counted as sucrose.
//
//   - Source: Council Directive 2001/111/EC annex A, loss on drying at most 0.06 %
//     (read); Codex CXS 212-1999, polarisation at least 99.7 °Z (read), which is the
//     spread.
func WhiteSugar() Material { return byName["white sugar"] }

// Sucrose is the pure compound, C12H22O11.
func Sucrose() Material { return byName["sucrose"] }

// DextroseMonohydrate is C6H12O6·H2O, the dextrose powder of the trade, corn sugar: 9.09 %
// is crystal water.
//
//   - Source: molar masses from CIAAW atomic weights 2021, 18.015/198.171; Codex CXS
//     212-1999 asks at least 99.5 % D-glucose in the solids and 90.0 % solids (read),
//     which is the spread.
func DextroseMonohydrate() Material { return byName["dextrose monohydrate"] }

// DextroseAnhydrous is dextrose without crystal water.
//
//   - Source: the compound; Codex CXS 212-1999 asks at least 99.5 % D-glucose in the
//     solids and 98.0 % solids (read), which is the spread.
func DextroseAnhydrous() Material { return byName["dextrose anhydrous"] }

// Honey is honey of average composition.
//
//   - Source: White et al., USDA Technical Bulletin 1261 (1962), 490 samples: water
//     17.2, fructose 38.2, glucose 31.3, sucrose 1.3, maltose and other reducing
//     disaccharides 7.3 % (read). The disaccharides count as fermentable.
//   - Uncertainty: standard deviation of the water 1.46 %; which part of the
//     disaccharides yeast leaves is not known, up to 7 % of the sugar.
func Honey() Material { return byName["honey"] }

// The sugars known by name.
var sugars = []*facts{
	{
		name: "white sugar", also: names("sugar|table sugar|cane sugar|beet sugar"), spread: 0.001,
		brings: Composition{Disaccharides: share(1 - 0.0006)}, evidence: read("Council Directive 2001/111/EC annex A"),
	},
	{
		name: "sucrose", formula: "C12H22O11", mass: chemistry.Sucrose, brings: Composition{Disaccharides: share(1)}, evidence: stoichiometry,
	},
	{ // the sugar above the standard is not known: a brew may end stronger by a tenth; moisture 4 % (common practice, no source)
		name: "soft brown sugar", also: names("brown sugar"), spread: 0.03,
		brings:   Composition{Disaccharides: share(0.88), UnfermentedSolids: share(1 - 0.88 - 0.04)},
		evidence: read("Codex CXS 212-1999"), cautions: caution.List{leastSugar},
	},
	{
		name: "dextrose monohydrate", also: names("corn sugar|glucose monohydrate"), formula: "C6H12O6.H2O", mass: chemistry.Hexose + chemistry.Water, spread: 0.005,
		brings:   Composition{Glucose: share(1 - waterOfDextrose), CrystalWater: share(waterOfDextrose)},
		evidence: stoichiometry,
	},
	{
		name: "dextrose anhydrous", also: names("anhydrous dextrose|glucose anhydrous"), formula: "C6H12O6", mass: chemistry.Hexose, spread: 0.008,
		brings: Composition{Glucose: share(1)}, evidence: stoichiometry,
	},
	{name: "fructose", also: names("fruit sugar"), formula: "C6H12O6", mass: chemistry.Hexose, spread: 0.005,
		brings: Composition{Fructose: share(1)}, evidence: stoichiometry},
	// The usual invert syrup: 77.9 % dry matter, half inverted (read in a copy with broken columns).
	invert(0.779, 0.5, wartman, "invert sugar|invert syrup|medium invert"),
	honey(17.2),
	{ // at the least solids that may be sold, counted as sucrose
		name: "maple syrup", spread: 0.02, brings: Composition{Disaccharides: share(0.64), UnfermentedSolids: share(0.02)},
		evidence: evidence.Evidence{Source: "21 CFR 168.140", Grade: evidence.Recalled},
	},
	// The fermentable part of extracts runs from 50 to 70 %.
	maltExtract("dry malt extract", 0.97, "dme"),
	maltExtract("liquid malt extract", 0.80, "lme|malt syrup"),
	{ // not fermented by Saccharomyces cerevisiae (recalled from memory)
		name: "lactose monohydrate", also: names("lactose"), formula: "C12H22O11.H2O", mass: chemistry.Sucrose + chemistry.Water,
		brings: Composition{UnfermentedSolids: share(1 - waterOfLactose), CrystalWater: share(waterOfLactose)}, evidence: stoichiometry,
	},
}

const (
	waterOfDextrose = chemistry.Water / (chemistry.Hexose + chemistry.Water)
	waterOfLactose  = chemistry.Water / (chemistry.Sucrose + chemistry.Water)

	wartman = "Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I"
	white   = "White et al., USDA Technical Bulletin 1261 (1962)"
	invertD = "Council Directive 2001/111/EC annex A"

	leastSugar   caution.Caution = "least_sugar: The standard gives the least sugar: the drink may come out stronger."
	feedHoney    caution.Caution = "honey_lacks_nitrogen: Honey brings less than 20 mg/L of nitrogen to a must of 25 °Bx: feed the yeast."
	maltsDiffer  caution.Caution = "malt_extracts_differ: Malt extracts differ in how much of them ferments: trust the hydrometer, not the plan."
	syrupsDiffer caution.Caution = "glucose_syrups_differ: Glucose syrups of one dextrose equivalent differ in how much ferments: take the maker's sugar " +
		"spectrum where there is one."
	juiceHolds caution.Caution = "juice_has_acid: Juices hold acids and nitrogen of their own: measure both before you add any."
)

func read(source string) evidence.Evidence {
	return evidence.Evidence{Source: source, Grade: evidence.Read}
}

// invert has so much dry matter, of which a share is inverted; fractions.
func invert(solids, inverted float64, source, also string) *facts {
	return &facts{
		name: "invert sugar syrup", also: names(also), spread: 0.01, evidence: read(source),
		brings: Composition{Glucose: share(solids * inverted / 2), Fructose: share(solids * inverted / 2), Disaccharides: share(solids * (1 - inverted))},
	}
}

// honey has so much water, %; its solids are those of the average.
func honey(water float64) *facts {
	k := (100 - water) / (100 - 17.2) / 100
	di, fruit, grape := (1.3+7.3)*k, 38.2*k, 31.3*k
	return &facts{
		name: "honey", spread: 0.03, evidence: read(white), cautions: caution.List{feedHoney},
		brings: Composition{Fructose: share(fruit), Glucose: share(grape), Disaccharides: share(di), UnfermentedSolids: share((100-water)/100 - fruit - grape - di)},
	}
}

// maltExtract is the extract of a pale malt with so much of solids, of which 65 % is
// fermentable, as real attenuation of a pale wort; of the sugar 15 % hexoses, 69 % maltose,
// the rest maltotriose (common practice, no source).
func maltExtract(name string, solids float64, also string) *facts {
	const glucoseOfMalt, maltoseOfMalt = 0.15, 0.69
	sugar := 0.65 * solids
	return &facts{
		name: name, also: names(also), spread: 0.08, cautions: caution.List{maltsDiffer},
		brings: Composition{
			Glucose: share(glucoseOfMalt * sugar), Disaccharides: share(maltoseOfMalt * sugar), Trisaccharides: share((1 - maltoseOfMalt - glucoseOfMalt) * sugar),
			UnfermentedSolids: share(solids - sugar), OfMalt: share(sugar),
		},
	}
}

// InvertSyrup is a syrup of sucrose that is inverted in part. solids is its dry matter,
// inverted the share of the dry matter that is glucose and fructose.
//
//   - Source: Council Directive 2001/111/EC annex A: dry matter at least 62 % (read);
//     invert sugar 3 to 50 % of the dry matter in invert sugar solution (read), above
//     50 % in invert sugar syrup (recalled from memory).
//   - Range: solids 62 to 90 %, inverted 0 to 100 %; beyond it the error is a
//     [*units.RangeError].
func InvertSyrup(solids, inverted units.Share) (Material, error) {
	const fn = "material.InvertSyrup"
	if err := limit.Check(fn, "solids", solids.In(units.Percent), "%", 62, 90, invertD); err != nil {
		return Material{}, err
	}
	if err := limit.Check(fn, "inverted", inverted.In(units.Percent), "%", 0, 100, invertD); err != nil {
		return Material{}, err
	}
	return Material{invert(solids.In(units.Percent)/100, inverted.In(units.Percent)/100, invertD, "")}, nil
}

// HighFructoseSyrup is an isomerised glucose syrup by its fructose share in the dry
// substance: 42, 55 or 90 %. Other figures are refused.
//
//   - Source: Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I: dry
//     substance 70.7, 76.9 and 80.7 % (read in a copy with broken columns). Sugars of
//     three units and more: 6, 5 and 1 % of the dry substance (recalled from memory).
//   - Range: 42, 55 or 90 %; otherwise the error is a [*units.RangeError].
func HighFructoseSyrup(fructose units.Share) (Material, error) {
	var solids, higher float64
	fruit := math.Round(fructose.In(units.Percent)*1e6) / 1e6
	switch fruit {
	case 42:
		solids, higher = 0.707, 0.06
	case 55:
		solids, higher = 0.769, 0.05
	case 90:
		solids, higher = 0.807, 0.01
	default:
		return Material{}, &units.RangeError{
			Func: "material.HighFructoseSyrup", Quantity: "fructose (42, 55 and 90 only)", Value: fructose.In(units.Percent), Unit: "%",
			Min: 42, Max: 90, Source: wartman,
		}
	}
	return Material{&facts{
		name: "high fructose syrup", spread: 0.02, evidence: read(wartman),
		brings: Composition{Fructose: share(solids * fruit / 100), Glucose: share(solids * (1 - higher - fruit/100)), UnfermentedSolids: share(solids * higher)},
	}}, nil
}

// HoneyWithWater is honey of average solids with a water content that was measured.
//
//   - Source: as [Honey]; the solids scale with the water.
//   - Range: water 13.4 to 22.9 %, the range of the 490 samples; beyond it the error
//     is a [*units.RangeError].
func HoneyWithWater(moisture units.Share) (Material, error) {
	w := moisture.In(units.Percent)
	if err := limit.Check("material.HoneyWithWater", "water", w, "%", 13.4, 22.9, white); err != nil {
		return Material{}, err
	}
	return Material{honey(w)}, nil
}

// GlucoseSyrup is a glucose (corn) syrup by its solids and its dextrose equivalent, the
// reducing power of the solids against dextrose. Two syrups of one equivalent may differ
// in how they were made, and so in how much of them ferments; the spread says so.
//
//   - Source: sugars of acid-converted syrups, % of the solids: at 30, 36, 42, 55 and 64
//     DE glucose 10, 14, 19, 31, 37; maltose 9, 12, 14, 18, 32; maltotriose 10, 11, 12,
//     13, 11 (trade tables, recalled from memory); between them straight lines. 64 DE is
//     made with enzymes. Codex CXS 212-1999: at least 20 DE (read), solids at least 70 %
//     (recalled from memory). At 100 DE all is glucose.
//   - Range: solids 70 to 90 %, 30 to 64 DE; beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: a tenth of the sugar. From the definition alone, the share of sugars
//     of one to three units lies between DE and 2.8 DE.
func GlucoseSyrup(solids, dextroseEquivalent units.Share) (Material, error) {
	const fn, source = "material.GlucoseSyrup", "trade tables of glucose syrups"
	d, de := solids.In(units.Percent)/100, dextroseEquivalent.In(units.Percent)
	if err := limit.Check(fn, "solids", solids.In(units.Percent), "%", 70, 90, source); err != nil {
		return Material{}, err
	}
	if err := limit.Check(fn, "dextrose equivalent", de, "%", 30, 64, source); err != nil {
		return Material{}, err
	}
	table := [...]struct{ de, glucose, maltose, maltotriose float64 }{
		{30, 10, 9, 10}, {36, 14, 12, 11}, {42, 19, 14, 12}, {55, 31, 18, 13}, {64, 37, 32, 11},
	}
	i := 0
	for i < len(table)-2 && de > table[i+1].de {
		i++
	}
	a, b := table[i], table[i+1]
	u := (de - a.de) / (b.de - a.de)
	at := func(x, y float64) float64 { return d * (x + u*(y-x)) / 100 }
	glucose, di, tri := at(a.glucose, b.glucose), at(a.maltose, b.maltose), at(a.maltotriose, b.maltotriose)
	return Material{&facts{
		name: "glucose syrup", spread: 0.1, cautions: caution.List{syrupsDiffer}, evidence: evidence.Evidence{Source: source, Grade: evidence.Recalled},
		brings: Composition{Glucose: share(glucose), Disaccharides: share(di), Trisaccharides: share(tri), UnfermentedSolids: share(d - (glucose + di + tri))},
	}}, nil
}

// Juice is a fruit juice or a must by its degrees Brix and the share of the dissolved
// solids that ferments; the zero share takes 90 %. The sugar counts as glucose and
// fructose in equal parts.
//
//   - Source: common practice, no source: 90 % of the solids of a must ferment, 80 to
//     95 % of fruit juices, the rest being acids, sorbitol and pectin.
//   - Range: 3 to 70 °Bx, share 50 to 100 %; beyond it the error is a
//     [*units.RangeError].
//   - Units: °Bx by mass, from a hydrometer or a refractometer.
//   - Uncertainty: 5 % of the sugar.
func Juice(brix units.Extract, fermentable units.Share) (Material, error) {
	const fn, source = "material.Juice", "fruit juices"
	b, part := brix.In(units.DegreePlato), fermentable.In(units.Percent)/100
	if part == 0 {
		part = 0.90
	}
	if err := limit.Check(fn, "extract", b, "°Bx", 3, 70, source); err != nil {
		return Material{}, err
	}
	if err := limit.Check(fn, "fermentable share", 100*part, "%", 50, 100, source); err != nil {
		return Material{}, err
	}
	half := share(b / 100 * part / 2)
	return Material{&facts{
		name: "juice", spread: 0.05, cautions: caution.List{juiceHolds},
		brings: Composition{Glucose: half, Fructose: half, UnfermentedSolids: share(b / 100 * (1 - part))},
	}}, nil
}
