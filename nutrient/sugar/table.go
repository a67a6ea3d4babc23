package sugar

import (
	"math"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// White returns sucrose as sold: 99.94 % dry, all of it counted as sucrose.
//
//   - Source: Council Directive 2001/111/EC annex A, loss on drying at most 0.06 %
//     (read); Codex CXS 212-1999, polarisation at least 99.7 °Z (read), which is the
//     spread.
func White() Fermentable {
	return Fermentable{
		name: "white sugar", di: 1 - 0.0006, spread: 0.001,
		evidence: evidence.Evidence{Source: "Council Directive 2001/111/EC annex A", Grade: evidence.Read},
	}
}

// Sucrose returns the pure compound, C12H22O11.
func Sucrose() Fermentable {
	return Fermentable{name: "sucrose", di: 1, evidence: formula.Stoichiometry}
}

// SoftBrown returns soft brown sugar: at least 88 % sucrose and invert sugar.
// The sugar above that is not known from the standard, so that a brew may end
// stronger by a tenth.
//
//   - Source: Codex CXS 212-1999, sucrose plus invert sugar at least 88 % (read);
//     moisture 4 % (common practice, no source).
func SoftBrown() Fermentable {
	return Fermentable{
		name: "soft brown sugar", di: 0.88, rest: 1 - 0.88 - 0.04, spread: 0.03,
		evidence: evidence.Evidence{Source: "Codex CXS 212-1999", Grade: evidence.Read},
		cautions: caution.List{"least_sugar: The standard gives the least sugar: the drink may come out stronger."},
	}
}

// DextroseMonohydrate returns C6H12O6·H2O, the dextrose powder of the trade: 9.09 %
// is crystal water.
//
//   - Source: molar masses from CIAAW atomic weights 2021, 18.015/198.171; Codex CXS
//     212-1999 asks at least 99.5 % D-glucose in the solids and 90.0 % solids (read),
//     which is the spread.
func DextroseMonohydrate() Fermentable {
	w := formula.WaterFormula.Molar() / formula.DextroseHydrate.Molar()
	return Fermentable{
		name: "dextrose monohydrate", glucose: 1 - w, crystal: w, spread: 0.005,
		evidence: formula.Stoichiometry,
	}
}

// DextroseAnhydrous returns dextrose without crystal water.
//
//   - Source: the compound; Codex CXS 212-1999 asks at least 99.5 % D-glucose in the
//     solids and 98.0 % solids (read), which is the spread.
func DextroseAnhydrous() Fermentable {
	return Fermentable{name: "dextrose anhydrous", glucose: 1, spread: 0.008, evidence: formula.Stoichiometry}
}

// Fructose returns crystalline fructose.
//
//   - Source: the compound, C6H12O6.
func Fructose() Fermentable {
	return Fermentable{name: "fructose", fructose: 1, spread: 0.005, evidence: formula.Stoichiometry}
}

// InvertSyrup returns a syrup of sucrose that is inverted in part. solids is its dry
// matter, inverted the share of the dry matter that is glucose and fructose.
//
//   - Source: Council Directive 2001/111/EC annex A: dry matter at least 62 % (read);
//     invert sugar 3 to 50 % of the dry matter in invert sugar solution (read), above
//     50 % in invert sugar syrup (recalled from memory).
//   - Range: solids 62 to 90 %; beyond it the error is a [*units.RangeError].
func InvertSyrup(solids, inverted units.Share) (Fermentable, error) {
	const source = "Council Directive 2001/111/EC annex A"
	d, i := solids.In(units.Percent)/100, inverted.In(units.Percent)/100
	if err := limit.Check("sugar.InvertSyrup", "solids", solids.In(units.Percent), "%", 62, 90, source); err != nil {
		return Fermentable{}, err
	}
	return Fermentable{
		name: "invert sugar syrup", glucose: d * i / 2, fructose: d * i / 2, di: d * (1 - i), spread: 0.01,
		evidence: evidence.Evidence{Source: source, Grade: evidence.Read},
	}, nil
}

// MediumInvert returns the usual invert syrup: 77.9 % dry matter, half inverted.
//
//   - Source: Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I, dry
//     substance of medium invert (read in a copy with broken columns).
func MediumInvert() Fermentable {
	f, _ := InvertSyrup(units.Percent.Of(77.9), units.Percent.Of(50))
	f.evidence.Source = wartman
	return f
}

const wartman = "Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I"

// HighFructoseSyrup returns an isomerised glucose syrup by its fructose share in the
// dry substance: 42, 55 or 90 %. Other figures are refused.
//
//   - Source: Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I: dry
//     substance 70.7, 76.9 and 80.7 % (read in a copy with broken columns). Sugars of
//     three units and more: 6, 5 and 1 % of the dry substance (recalled from memory).
//   - Range: 42, 55 or 90 %; otherwise the error is a [*units.RangeError].
func HighFructoseSyrup(fructose units.Share) (Fermentable, error) {
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
		return Fermentable{}, &units.RangeError{
			Func: "sugar.HighFructoseSyrup", Quantity: "fructose (42, 55 and 90 only)", Value: fructose.In(units.Percent), Unit: "%",
			Min: 42, Max: 90, Source: wartman,
		}
	}
	return Fermentable{
		name: "high fructose syrup", fructose: solids * fruit / 100, glucose: solids * (1 - higher - fruit/100), rest: solids * higher, spread: 0.02,
		evidence: evidence.Evidence{Source: wartman, Grade: evidence.Read},
	}, nil
}

// Honey returns honey of average composition.
//
//   - Source: White et al., USDA Technical Bulletin 1261 (1962), 490 samples: water
//     17.2, fructose 38.2, glucose 31.3, sucrose 1.3, maltose and other reducing
//     disaccharides 7.3 % (read). The disaccharides count as fermentable.
//   - Uncertainty: standard deviation of the water 1.46 %; which part of the
//     disaccharides yeast leaves is not known, up to 7 % of the sugar.
func Honey() Fermentable {
	f, _ := HoneyWithWater(units.Percent.Of(17.2))
	return f
}

// HoneyWithWater returns honey of average solids with a water content that was
// measured.
//
//   - Source: as [Honey]; the solids scale with the water.
//   - Range: water 13.4 to 22.9 %, the range of the 490 samples; beyond it the error
//     is a [*units.RangeError].
func HoneyWithWater(moisture units.Share) (Fermentable, error) {
	const source = "White et al., USDA Technical Bulletin 1261 (1962)"
	w := moisture.In(units.Percent)
	if err := limit.Check("sugar.HoneyWithWater", "water", w, "%", 13.4, 22.9, source); err != nil {
		return Fermentable{}, err
	}
	k := (100 - w) / (100 - 17.2) / 100
	di := (1.3 + 7.3) * k
	fruit, grape := 38.2*k, 31.3*k
	return Fermentable{
		name: "honey", fructose: fruit, glucose: grape, di: di, rest: (100-w)/100 - fruit - grape - di, spread: 0.03,
		evidence: evidence.Evidence{Source: source, Grade: evidence.Read},
		cautions: caution.List{"honey_lacks_nitrogen: Honey brings less than 20 mg/L of nitrogen to a must of 25 °Bx: feed the yeast."},
	}, nil
}

// MapleSyrup returns maple syrup at the least solids that may be sold, counted as
// sucrose.
//
//   - Source: 21 CFR 168.140, soluble solids at least 66 % (recalled from memory).
func MapleSyrup() Fermentable {
	return Fermentable{name: "maple syrup", di: 0.64, rest: 0.02, spread: 0.02, evidence: evidence.Evidence{Source: "21 CFR 168.140", Grade: evidence.Recalled}}
}

// DryMaltExtract returns spray-dried malt extract of a pale malt.
//
//   - Source: common practice, no source: 97 % solids, of which 65 % is fermentable,
//     as real attenuation of a pale wort; of the sugar 15 % hexoses, 69 % maltose, the
//     rest maltotriose.
//   - Uncertainty: the fermentable part of extracts runs from 50 to 70 %.
func DryMaltExtract() Fermentable { return maltExtract("dry malt extract", 0.97) }

// LiquidMaltExtract returns malt extract syrup of a pale malt.
//
//   - Source: common practice, no source: 80 % solids, otherwise as [DryMaltExtract].
func LiquidMaltExtract() Fermentable { return maltExtract("liquid malt extract", 0.80) }

func maltExtract(name string, solids float64) Fermentable {
	sugar := 0.65 * solids
	return Fermentable{
		name: name, glucose: glucoseOfMalt * sugar, di: 0.69 * sugar, tri: (1 - 0.69 - glucoseOfMalt) * sugar,
		rest: solids - sugar, malt: sugar, spread: 0.08,
		cautions: caution.List{"malt_extracts_differ: Malt extracts differ in how much of them ferments: trust the hydrometer, not the plan."},
	}
}

// glucoseOfMalt is the share of hexoses in the fermentable sugar of malt.
const glucoseOfMalt = 0.15

// Lactose returns lactose monohydrate, which brewing yeast does not ferment.
//
//   - Source: the compound, C12H22O11·H2O; not fermented by Saccharomyces cerevisiae
//     (recalled from memory).
func Lactose() Fermentable {
	w := formula.WaterFormula.Molar() / formula.LactoseHydrate.Molar()
	return Fermentable{name: "lactose monohydrate", rest: 1 - w, crystal: w, evidence: formula.Stoichiometry}
}

// fermentables are those known by name.
var fermentables = [...]func() Fermentable{
	White, Sucrose, SoftBrown, DextroseMonohydrate, DextroseAnhydrous, Fructose,
	MediumInvert, Honey, MapleSyrup, DryMaltExtract, LiquidMaltExtract, Lactose,
}

// Fermentables returns those known by name.
func Fermentables() []Fermentable {
	out := make([]Fermentable, len(fermentables))
	for i, f := range fermentables {
		out[i] = f()
	}
	return out
}

// Parse returns the fermentable of that name; "sugar", "table sugar",
// "corn sugar", "invert sugar", "DME" and "LME" are taken too. Plain "dextrose" is
// refused, as it does not say whether its crystals hold water. The error is a
// [*units.ParseError] that lists the names.
func Parse(text string) (Fermentable, error) {
	name := strings.ToLower(strings.TrimSpace(text))
	switch name {
	case "sugar", "table sugar", "cane sugar", "beet sugar":
		return White(), nil
	case "corn sugar":
		return DextroseMonohydrate(), nil
	case "dextrose", "glucose":
		return Fermentable{}, &units.ParseError{Input: text, Want: "fermentable", Reason: "say dextrose monohydrate (the powder of the trade) or dextrose anhydrous"}
	case "invert sugar", "invert syrup", "medium invert":
		return MediumInvert(), nil
	case "dme":
		return DryMaltExtract(), nil
	case "lme", "malt syrup":
		return LiquidMaltExtract(), nil
	case "lactose":
		return Lactose(), nil
	}
	var names []string
	for _, known := range fermentables {
		f := known()
		if strings.ToLower(f.name) == name {
			return f, nil
		}
		names = append(names, f.name)
	}
	return Fermentable{}, limit.Unknown(text, "fermentable", strings.Join(names, ", "))
}
