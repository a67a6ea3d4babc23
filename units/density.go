package units

// Density is a mass in a volume, in vacuum (true density) unless a function says
// otherwise, stored in kilograms a cubic metre.
//
// In: KilogramPerCubicMetre.Of(4.2), [Unit.Try], Parse[Density](text). Out: q.In(KilogramPerCubicMetre). Methods: [Quantity].
type Density = Quantity[density, density]

// Units of [Density].
const (
	// KilogramPerCubicMetre (kg/m³): the base unit.
	KilogramPerCubicMetre Unit[density, density] = densityUnits
	// GramPerMillilitre (g/mL): 1000 kg/m³.
	GramPerMillilitre Unit[density, density] = densityUnits + 1
	// PoundPerUSGallon (lb/US gal): 453592370000/3785411784 kg/m³.
	PoundPerUSGallon Unit[density, density] = densityUnits + 2
)

var theDensity = &dimension{
	name: "density", min: 0, max: most,
	units: densityUnits, table: []unit{
		{symbol: "kg/m³", num: 1, den: 1, names: []string{"kg/m3", "g/L"}},
		{symbol: "g/mL", num: 1000, den: 1, names: []string{"g/ml", "g/cm3", "g/cm³", "kg/L", "kg/l"}},
		{symbol: "lb/US gal", num: 453592370000, den: 3785411784, names: []string{"lb/gal US"}},
	},
	ambiguous: map[string]string{
		"lb/gal": "say lb/US gal or kg/m³",
	},
}

func (density) describe() *dimension { return theDensity }
