package carbonation

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// A Primer is what is added to make gas in the closed container, with the mass of
// CO2 that a gram of it, as weighed, can make. The zero value is not a primer;
// the functions refuse it.
type Primer struct {
	name string
	co2  float64 // g of CO2 from a g as weighed
}

// Molar masses in g/mol (IUPAC abridged atomic weights 2021).
const (
	molarMassGlucose = 6*12.011 + 12*1.008 + 6*15.999
	molarMassSucrose = 12*12.011 + 22*1.008 + 11*15.999
	molarMassWater   = 2*1.008 + 15.999

	perGlucose = 2 * molarMassCO2 / molarMassGlucose // C6H12O6 → 2 C2H5OH + 2 CO2: 0.48856
	perSucrose = 4 * molarMassCO2 / molarMassSucrose // with the water of its hydrolysis: 0.51428
)

// Primers made of one sugar. Every gram is counted as fermented to ethanol and
// CO2 (Gay-Lussac's equation): yeast that grows keeps 5 to 10 % of it, so the
// drink ends a little below the content asked for, never above.
var (
	// Sucrose is table sugar: 0.51428 g CO2 per g.
	Sucrose = Primer{"sucrose", perSucrose}
	// DextroseMonohydrate is corn sugar as sold: 9.09 % crystal water, 0.44415 g
	// CO2 per g.
	DextroseMonohydrate = Primer{"dextrose monohydrate", perGlucose * molarMassGlucose / (molarMassGlucose + molarMassWater)}
	// DextroseAnhydrous is dextrose without crystal water: 0.48856 g CO2 per g.
	DextroseAnhydrous = Primer{"dextrose anhydrous", perGlucose}
	// Honey of average composition: 17.2 % water; 31.3 % glucose, 38.2 %
	// fructose, 1.3 % sucrose, 7.3 % maltose and the like (White et al., USDA
	// Technical Bulletin 1261 (1962)), all counted as fermentable; the higher
	// sugars are not.
	Honey = Primer{"honey", (0.313+0.382)*perGlucose + (0.013+0.073)*perSucrose}
)

// NewPrimer returns a primer of a stated composition: a syrup, a honey with its
// analysis, a malt extract. hexose is the share of simple sugars that yeast gets out of
// it, of its mass as weighed: its glucose and fructose as they are, its sucrose and
// maltose 1.0526 times, its maltotriose 1.0714 times, as each takes up water when it
// falls apart. White sugar has 105.3 %, a syrup of 75 % solids, half of it sucrose and half
// invert, 77.0 %. The Parts of a fermentable of package nutrient give it as AsHexose.
//
//   - Source: 2 CO2 for a hexose, 0.48856 g/g (Gay-Lussac's equation); gains in mass from
//     the molar masses.
//   - Range: 0.1 to 108 %; otherwise the error is a [*units.RangeError].
//   - Units: share of mass.
//   - Uncertainty: that of the composition.
func NewPrimer(name string, hexose units.Share) (Primer, error) {
	if err := limit.Check("carbonation.NewPrimer", "hexose", hexose.In(units.Percent), "%", 0.1, 108, "a primer ferments; maltotriose gives 107.1 %"); err != nil {
		return Primer{}, err
	}
	return Primer{name: name, co2: hexose.In(units.Fraction) * perGlucose}, nil
}

// Name returns the name of the primer.
func (p Primer) Name() string { return p.name }

// CO2Per returns the mass of CO2 that the mass m of the primer, as weighed, makes
// when all of it ferments.
func (p Primer) CO2Per(m units.Mass) units.Mass {
	return units.Kilogram.Of(checked.Number(p.co2 * m.In(units.Kilogram)))
}
