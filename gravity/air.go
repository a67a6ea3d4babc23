package gravity

import (
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Standard air and the weights of a balance, kg/m³: conventional values of weighing
// (OIML D 28:2004, Conventional value of the result of weighing in air, as the Swiss
// ordinances 941.213 and 941.214 take it over; these were read).
const (
	airDensity    = 1.2
	weightDensity = 8000
)

// Air says whether a specific gravity is of masses or of weights in air. Handbook
// tables of 60/60 °F and the brewers' tables are in air; a density meter is in
// vacuum. At 1.050 the two differ by 0.00006.
type Air int

// In vacuum or in air.
const (
	InVacuum Air = iota
	InAir
)

var airs = choice.Of[Air]("gravity.Air", "air", "in vacuum", "in air")

// String returns the name: "in air".
func (a Air) String() string { return airs.Text(a) }

// MarshalText is [Air.String]; an unknown air is a [*units.NameError].
func (a Air) MarshalText() ([]byte, error) { return airs.Marshal(a) }

// UnmarshalText reads what [Air.MarshalText] writes; other text is a [*units.NameError].
func (a *Air) UnmarshalText(text []byte) error { return airs.Unmarshal(text, a) }

// ratio returns the specific gravity of a liquid of density rho over water.
func (a Air) ratio(rho, water float64) float64 {
	if a == InAir {
		return (rho - airDensity) / (water - airDensity)
	}
	return rho / water
}

// density is the inverse of ratio.
func (a Air) density(sg, water float64) float64 {
	if a == InAir {
		return sg*(water-airDensity) + airDensity
	}
	return sg * water
}

// DensityInAir returns the mass that a balance shows for a volume of liquid weighed
// in air, over that volume.
//
//   - Source: buoyancy of air of 1.2 kg/m³ on the liquid and on weights of 8000
//     kg/m³ (OIML D 28:2004, read in ordinances): (ρ − 1.2)/(1 − 1.2/8000). Air at the
//     place differs by 5 %; the Canadian table of 1996 (788.15899 kg/m³ for ethanol,
//     789.239 in vacuum) used air of 1.1982.
//   - Range: 100 to 20,000 kg/m³; beyond it the error is a [*units.RangeError].
//   - Uncertainty: 0.06 kg/m³ for the density of the air.
func DensityInAir(d units.Density) (units.Density, error) {
	rho := d.In(units.KilogramPerCubicMetre)
	if err := limit.Check("gravity.DensityInAir", "density", rho, "kg/m³", 100, 20000, "liquids on a balance"); err != nil {
		return units.Density{}, err
	}
	return kgPerM3((rho - airDensity) / (1 - airDensity/weightDensity)), nil
}

// DensityInVacuum returns the density from the mass that a balance shows in air:
// the inverse of [DensityInAir], with its source and range.
func DensityInVacuum(d units.Density) (units.Density, error) {
	rho := d.In(units.KilogramPerCubicMetre)
	if err := limit.Check("gravity.DensityInVacuum", "density in air", rho, "kg/m³", 100, 20000, "liquids on a balance"); err != nil {
		return units.Density{}, err
	}
	return kgPerM3(rho*(1-airDensity/weightDensity) + airDensity), nil
}
