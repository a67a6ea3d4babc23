package carbonation

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// A VolumeDefinition says what one volume of CO2 weighs. The zero value is
// [RealVolume].
type VolumeDefinition int

// Definitions of one volume, the gas at 0 °C and 101.325 kPa that fills as much
// as the liquid. They differ by 0.7 %.
const (
	// RealVolume counts the gas as it is: 22.2605 L/mol, 1.9770 g/L.
	RealVolume VolumeDefinition = iota
	// IdealVolume counts an ideal gas: 22.41397 L/mol, 1.9635 g/L.
	IdealVolume
)

// Molar mass of CO2, g/mol: 12.011 + 2·15.999 (IUPAC abridged standard atomic
// weights 2021).
const molarMassCO2 = 12.011 + 2*15.999

// Molar volumes at 0 °C and 101.325 kPa, L/mol.
const (
	molarVolumeReal  = 22.2605                                 // IUPAC-NIST Solubility Database (SRD 106) page 62_31
	molarVolumeIdeal = gasConstant * zeroCelsius / standardKPa // 22.41397
)

const (
	gasConstant = 8.314462618 // J/(mol·K) = L·kPa/(mol·K), SI 2019
	zeroCelsius = 273.15      // K
	standardKPa = 101.325     // standard atmosphere
)

// GramsPerVolume returns the mass of CO2 in a litre of liquid that holds one
// volume, in g/L: 1.9770 (real) or 1.9635 (ideal).
//
//   - Source: IUPAC-NIST Solubility Database, SRD 106, molar volume 22.2605 L/mol
//     (real); R·273.15 K/101.325 kPa (ideal); M(CO2) = 44.009 g/mol.
//   - Range: any definition that is not [IdealVolume] counts as [RealVolume].
//   - Units: g/L for one volume.
//   - Uncertainty: none as a definition; handbooks print 1.9769 for the real gas.
func (d VolumeDefinition) GramsPerVolume() float64 {
	if d == IdealVolume {
		return molarMassCO2 / molarVolumeIdeal
	}
	return molarMassCO2 / molarVolumeReal
}

// Volumes returns a content as volumes of CO2.
func (d VolumeDefinition) Volumes(c units.CarbonDioxideContent) units.CarbonDioxideVolumes {
	return units.VolumesCO2.Of(checked.Number(c.In(units.GramCO2PerLitre) / d.GramsPerVolume()))
}

// Content returns volumes of CO2 as a content in g/L.
func (d VolumeDefinition) Content(v units.CarbonDioxideVolumes) units.CarbonDioxideContent {
	return units.GramCO2PerLitre.Of(checked.Number(v.In(units.VolumesCO2) * d.GramsPerVolume()))
}

// String is "real gas, 1.9770 g/L" or "ideal gas, 1.9635 g/L".
func (d VolumeDefinition) String() string {
	if d == IdealVolume {
		return "ideal gas, 1.9635 g/L"
	}
	return "real gas, 1.9770 g/L"
}
