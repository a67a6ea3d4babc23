package units

// Density is a mass in a volume, in vacuum (true density) unless a function says
// otherwise, stored in kilograms a cubic metre.
//
// In: KilogramPerCubicMetre.Of(4.2), [Unit.Try], Parse[Density](text). Out: q.In(KilogramPerCubicMetre). Methods: [Quantity].
type Density = Quantity[density, density]

// Units of [Density].
var (
	// KilogramPerCubicMetre (kg/m³): the base unit.
	KilogramPerCubicMetre = define[density, density]("kg/m³", 1, 1, "kg/m3", "g/L")
	// GramPerMillilitre (g/mL): 1000 kg/m³.
	GramPerMillilitre = define[density, density]("g/mL", 1000, 1, "g/ml", "g/cm3", "g/cm³", "kg/L", "kg/l")
	// PoundPerUSGallon (lb/US gal): 453592370000/3785411784 kg/m³.
	PoundPerUSGallon = define[density, density]("lb/US gal", 453592370000, 3785411784, "lb/gal US")
)

var theDensity = &dimension{
	name: "density", min: 0, max: most,
	ambiguous: map[string]string{
		"lb/gal": "say lb/US gal or kg/m³",
	},
}

func (density) describe() *dimension { return theDensity }
func (density) table() []*unit {
	return []*unit{KilogramPerCubicMetre.u, GramPerMillilitre.u, PoundPerUSGallon.u}
}
