package sugar

import (
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Of returns a material as what ferments: its sugars, the solids that yeast leaves, and the
// rest as water. One without sugar is as good as water to the yeast.
func Of(m material.Material) Fermentable {
	c := m.Composition()
	return Fermentable{
		name: m.Name(), glucose: part(c.Glucose), fructose: part(c.Fructose), di: part(c.Disaccharides), tri: part(c.Trisaccharides),
		rest: part(c.UnfermentedSolids), malt: part(c.OfMalt), crystal: part(c.CrystalWater),
		spread: part(m.Spread()), evidence: m.Evidence(), cautions: m.Cautions(),
	}
}

func part(s units.Share) float64 { return s.In(units.Percent) / 100 }

// named returns a material made by its figures as a Fermentable; fn is what the caller wrote.
func named(fn string) func(material.Material, error) (Fermentable, error) {
	return func(m material.Material, err error) (Fermentable, error) {
		if err != nil {
			return Fermentable{}, limit.Named(fn, err)
		}
		return Of(m), nil
	}
}

// White returns sucrose as sold: 99.94 % dry, all of it counted as sucrose.
//
//   - Source: Council Directive 2001/111/EC annex A, loss on drying at most 0.06 %
//     (read); Codex CXS 212-1999, polarisation at least 99.7 °Z (read), which is the
//     spread.
func White() Fermentable { return Of(material.WhiteSugar()) }

// Sucrose returns the pure compound, C12H22O11.
func Sucrose() Fermentable { return Of(material.Sucrose()) }

// SoftBrown returns soft brown sugar: at least 88 % sucrose and invert sugar.
// The sugar above that is not known from the standard, so that a brew may end
// stronger by a tenth.
//
//   - Source: Codex CXS 212-1999, sucrose plus invert sugar at least 88 % (read);
//     moisture 4 % (common practice, no source).
func SoftBrown() Fermentable { return Of(material.SoftBrownSugar()) }

// DextroseMonohydrate returns C6H12O6·H2O, the dextrose powder of the trade: 9.09 %
// is crystal water.
//
//   - Source: molar masses from CIAAW atomic weights 2021, 18.015/198.171; Codex CXS
//     212-1999 asks at least 99.5 % D-glucose in the solids and 90.0 % solids (read),
//     which is the spread.
func DextroseMonohydrate() Fermentable { return Of(material.DextroseMonohydrate()) }

// DextroseAnhydrous returns dextrose without crystal water.
//
//   - Source: the compound; Codex CXS 212-1999 asks at least 99.5 % D-glucose in the
//     solids and 98.0 % solids (read), which is the spread.
func DextroseAnhydrous() Fermentable { return Of(material.DextroseAnhydrous()) }

// Fructose returns crystalline fructose.
//
//   - Source: the compound, C6H12O6.
func Fructose() Fermentable { return Of(material.Fructose()) }

// InvertSyrup returns a syrup of sucrose that is inverted in part. solids is its dry
// matter, inverted the share of the dry matter that is glucose and fructose.
//
//   - Source: Council Directive 2001/111/EC annex A: dry matter at least 62 % (read);
//     invert sugar 3 to 50 % of the dry matter in invert sugar solution (read), above
//     50 % in invert sugar syrup (recalled from memory).
//   - Range: solids 62 to 90 %; beyond it the error is a [*units.RangeError].
func InvertSyrup(solids, inverted units.Share) (Fermentable, error) {
	return named("sugar.InvertSyrup")(material.InvertSyrup(solids, inverted))
}

// MediumInvert returns the usual invert syrup: 77.9 % dry matter, half inverted.
//
//   - Source: Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I, dry
//     substance of medium invert (read in a copy with broken columns).
func MediumInvert() Fermentable { return Of(material.MediumInvert()) }

// HighFructoseSyrup returns an isomerised glucose syrup by its fructose share in the
// dry substance: 42, 55 or 90 %. Other figures are refused.
//
//   - Source: Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I: dry
//     substance 70.7, 76.9 and 80.7 % (read in a copy with broken columns). Sugars of
//     three units and more: 6, 5 and 1 % of the dry substance (recalled from memory).
//   - Range: 42, 55 or 90 %; otherwise the error is a [*units.RangeError].
func HighFructoseSyrup(fructose units.Share) (Fermentable, error) {
	return named("sugar.HighFructoseSyrup")(material.HighFructoseSyrup(fructose))
}

// Honey returns honey of average composition.
//
//   - Source: White et al., USDA Technical Bulletin 1261 (1962), 490 samples: water
//     17.2, fructose 38.2, glucose 31.3, sucrose 1.3, maltose and other reducing
//     disaccharides 7.3 % (read). The disaccharides count as fermentable.
//   - Uncertainty: standard deviation of the water 1.46 %; which part of the
//     disaccharides yeast leaves is not known, up to 7 % of the sugar.
func Honey() Fermentable { return Of(material.Honey()) }

// HoneyWithWater returns honey of average solids with a water content that was
// measured.
//
//   - Source: as [Honey]; the solids scale with the water.
//   - Range: water 13.4 to 22.9 %, the range of the 490 samples; beyond it the error
//     is a [*units.RangeError].
func HoneyWithWater(moisture units.Share) (Fermentable, error) {
	return named("sugar.HoneyWithWater")(material.HoneyWithWater(moisture))
}

// MapleSyrup returns maple syrup at the least solids that may be sold, counted as
// sucrose.
//
//   - Source: 21 CFR 168.140, soluble solids at least 66 % (recalled from memory).
func MapleSyrup() Fermentable { return Of(material.MapleSyrup()) }

// DryMaltExtract returns spray-dried malt extract of a pale malt.
//
//   - Source: common practice, no source: 97 % solids, of which 65 % is fermentable,
//     as real attenuation of a pale wort; of the sugar 15 % hexoses, 69 % maltose, the
//     rest maltotriose.
//   - Uncertainty: the fermentable part of extracts runs from 50 to 70 %.
func DryMaltExtract() Fermentable { return Of(material.DryMaltExtract()) }

// LiquidMaltExtract returns malt extract syrup of a pale malt.
//
//   - Source: common practice, no source: 80 % solids, otherwise as [DryMaltExtract].
func LiquidMaltExtract() Fermentable { return Of(material.LiquidMaltExtract()) }

// Lactose returns lactose monohydrate, which brewing yeast does not ferment.
//
//   - Source: the compound, C12H22O11·H2O; not fermented by Saccharomyces cerevisiae
//     (recalled from memory).
func Lactose() Fermentable { return Of(material.Lactose()) }

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
