package gravity

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Yield is what a gram of extract turns into when yeast uses it, in grams. The sum
// of ethanol, CO2, biomass and residue is the extract and the water taken up. The
// zero value is no yield; [Solution.Ferment] refuses it.
type Yield struct {
	ethanol, co2, biomass, residue float64
	water                          float64 // taken up from the liquid
	kind                           Sugar   // of what it was made for
}

// Molar masses in g/mol from the abridged atomic weights of CIAAW 2021: C 12.011,
// H 1.008, O 15.999.
const (
	carbon, hydrogen, oxygen = 12.011, 1.008, 15.999

	molarHexose  = 6*carbon + 12*hydrogen + 6*oxygen // glucose, fructose
	molarEthanol = 2*carbon + 6*hydrogen + oxygen
	molarCO2     = carbon + 2*oxygen
	molarWater   = 2*hydrogen + oxygen
	molarSucrose = 12*carbon + 22*hydrogen + 11*oxygen // maltose, too
)

// NewYield returns the yield of a mass of extract that became what was made: the residue
// is glycerol and, a sixth of it, succinic acid, as Pasteur found.
//
//   - Range: an extract of 1 µg to 1e12 kg; nothing made is negative or more than the
//     extract; CO2, biomass, ethanol and residue add up to extract and water within 1e-6 of
//     the extract. Otherwise the error is a [*units.RangeError].
func NewYield(extract units.Mass, made Fermented) (Yield, error) {
	const fn = "gravity.NewYield"
	const source = "the masses must balance"
	m := extract.In(units.Kilogram)
	if err := limit.Check(fn, "extract", m, "kg", leastMass, mostMass, "there must be some"); err != nil {
		return Yield{}, err
	}
	per := func(made units.Mass) float64 { return made.In(units.Kilogram) / m }
	y := Yield{ethanol: per(made.Ethanol), co2: per(made.CO2), biomass: per(made.Biomass), residue: per(made.Residue), water: per(made.Water)}
	for _, v := range []struct {
		what string
		x    float64
	}{{"ethanol", y.ethanol}, {"CO2", y.co2}, {"biomass", y.biomass}, {"residue", y.residue}, {"water", y.water}} {
		if err := limit.Check(fn, v.what, v.x, "g/g", 0, 1, source); err != nil {
			return Yield{}, err
		}
	}
	if err := limit.Check(fn, "ethanol", y.ethanol, "g/g", leastEthanol, 1, "an alcoholic fermentation"); err != nil {
		return Yield{}, err
	}
	if err := limit.Check(fn, "sum of the products", y.ethanol+y.co2+y.biomass+y.residue, "g/g", 1+y.water-1e-6, 1+y.water+1e-6, source); err != nil {
		return Yield{}, err
	}
	y.biomass = 1 + y.water - y.ethanol - y.co2 - y.residue
	if y.biomass < 0 {
		y.biomass, y.co2 = 0, y.co2+y.biomass
	}
	return y, nil
}

// Blend returns the yield of extract of which a part ferments as o and the rest as y. A
// part below nothing counts as nothing, one above the whole as the whole.
func (y Yield) Blend(o Yield, part units.Share) Yield {
	p := min(max(part.In(units.Fraction), 0), 1)
	of := func(y, o float64) float64 { return (1-p)*y + p*o }
	kind := y.kind // of the larger part
	if p > 0.5 {
		kind = o.kind
	}
	return Yield{
		kind: kind, ethanol: of(y.ethanol, o.ethanol), co2: of(y.co2, o.co2), biomass: of(y.biomass, o.biomass),
		residue: of(y.residue, o.residue), water: of(y.water, o.water),
	}
}

// check refuses a yield that makes no ethanol, such as the zero one.
func (y Yield) check(fn string) error {
	return limit.Check(fn, "ethanol yield", y.ethanol, "g/g", leastEthanol, 1, "the zero Yield is none")
}

// leastEthanol is the least of a fermentation that is called alcoholic, g/g.
const leastEthanol = 0.01

// BallingYield is that of malt wort: 100 g of extract give 48.391 g ethanol,
// 46.286 g CO2 and 5.323 g dry yeast.
//
//   - Source: C. J. N. Balling, Die Gährungschemie (1854/1865) p. 370; in the modern
//     form 2.0665 g of extract give 1 g ethanol, 0.9565 g CO2 and 0.11 g yeast.
//   - Range: malt wort of 4 to 20 °P. It is for extract in °P and takes up no water:
//     Balling found it by weight.
//   - Uncertainty: measured beers scatter by up to 0.6 °P in the original extract
//     (Tolman & Riley, USDA Bulletin 493 (1917)).
func BallingYield() Yield {
	return Yield{ethanol: 0.48391, co2: 0.46286, biomass: 1 - 0.48391 - 0.46286}
}

// StoichiometricYield is all of a sugar turned into ethanol and CO2: the upper
// limit. Sucrose takes up 5.26 % of its mass of water first (inversion), so that
// it gives 0.538 g/g where glucose gives 0.511.
//
//   - Source: Gay-Lussac 1815, C6H12O6 → 2 C2H5OH + 2 CO2, with the abridged atomic
//     weights of CIAAW 2021.
//   - Range: sucrose, glucose and fructose; other kinds count as sucrose. Of an unknown
//     kind it is the zero Yield, which is refused wherever it goes.
//   - Uncertainty: none; no yeast reaches it.
func StoichiometricYield(k Sugar) Yield { return hexoseYield(k, 1, 0) }

// SugarWashYield is that of a sugar wash: stoichiometry less what goes into yeast
// and glycerol. 100 g of sucrose give 49.4 g ethanol, so that 16 g/L of sucrose in
// the finished drink are 1 % vol; of glucose it takes 16.83.
//
//   - Source: for ethanol 16.83 g/L of hexose to 1 % vol (French order of 3 May 1996
//     art. 2, the figure of European wine law), which is 91.7 % of Gay-Lussac. Of the
//     rest, 3.64 % of the hexose stays as glycerol and succinic acid (Pasteur 1860:
//     3.16 and 0.67 g from 105.26 g; recalled from memory), the remainder is yeast.
//   - Range: washes of table sugar, dextrose, invert sugar or honey, fed well enough
//     to finish.
//   - Uncertainty: about 3 % of the ethanol; Pasteur's own yield was 95 % of
//     Gay-Lussac, a stressed wash gives less than 90 %.
func SugarWashYield(k Sugar) Yield { return hexoseYield(k, washEfficiency, washGlycerol) }

const (
	// g ethanol in 1 L at 1 % vol, 7.892, over the hexose that the law counts for it
	washEfficiency = 7.8924 / 16.83 / (2 * molarEthanol / molarHexose)
	washGlycerol   = (3.16 + 0.67) / 105.26
)

// hexoseYield is per gram of the sugar k; efficiency and glycerol are shares of
// the hexose it turns into.
func hexoseYield(k Sugar, efficiency, glycerol float64) Yield {
	if sugars.Check("", k) != nil {
		return Yield{}
	}
	h := 1 + molarWater/molarSucrose
	if k == AsGlucose || k == AsFructose {
		h = 1
	}
	y := Yield{
		ethanol: h * efficiency * 2 * molarEthanol / molarHexose,
		co2:     h * efficiency * 2 * molarCO2 / molarHexose,
		residue: h * glycerol,
		water:   h - 1,
		kind:    k,
	}
	y.biomass = h - (y.ethanol + y.co2 + y.residue)
	if math.Abs(y.biomass) < 1e-12 { // rounding
		y.biomass = 0
	}
	return y
}

// Ethanol returns the ethanol made of the extract, as a share of its mass.
func (y Yield) Ethanol() units.Share { return part(y.ethanol) }

// CO2 returns the carbon dioxide made of the extract, as a share of its mass.
func (y Yield) CO2() units.Share { return part(y.co2) }

// Biomass returns the dry yeast made of the extract, as a share of its mass.
func (y Yield) Biomass() units.Share { return part(y.biomass) }

// Residue returns the glycerol and acids left of the extract, as a share of its mass.
func (y Yield) Residue() units.Share { return part(y.residue) }

// Water returns the water taken up by the extract, as a share of its mass.
func (y Yield) Water() units.Share { return part(y.water) }

func part(x float64) units.Share { return units.Fraction.Of(checked.Number(x)) }

// Fermented is what a fermentation made besides the liquid that it left. The mass
// before is that of the liquid after, CO2 and yeast.
type Fermented struct {
	CO2     units.Mass // gone, or still dissolved
	Biomass units.Mass // dry yeast, settled
	Ethanol units.Mass // in the liquid
	Residue units.Mass // in the liquid as [AsGlycerol] and, a sixth of it, [AsOrganicAcid]
	Water   units.Mass // taken out of the liquid by inversion
}
