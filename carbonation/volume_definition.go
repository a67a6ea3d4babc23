package carbonation

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/choice"
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

// grams returns the mass of CO2 in a litre of liquid that holds one
// volume, in g/L: 1.9770 (real) or 1.9635 (ideal).
//
//   - Source: IUPAC-NIST Solubility Database, SRD 106, molar volume 22.2605 L/mol
//     (real); R·273.15 K/101.325 kPa (ideal); M(CO2) = 44.009 g/mol.
//   - Range: any definition that is not [IdealVolume] counts as [RealVolume].
//   - Units: g/L for one volume.
//   - Uncertainty: none as a definition; handbooks print 1.9769 for the real gas.
func (d VolumeDefinition) grams() float64 {
	if d == IdealVolume {
		return chemistry.CO2 / chemistry.IdealVolume
	}
	return chemistry.CO2 / chemistry.CO2Volume
}

// Volumes returns a content as volumes of CO2.
func (d VolumeDefinition) Volumes(c units.CarbonDioxideContent) units.CarbonDioxideVolumes {
	return units.VolumesCO2.Of(checked.Number(c.In(units.GramCO2PerLitre) / d.grams()))
}

// Content returns volumes of CO2 as a content in g/L.
func (d VolumeDefinition) Content(v units.CarbonDioxideVolumes) units.CarbonDioxideContent {
	return units.GramCO2PerLitre.Of(checked.Number(v.In(units.VolumesCO2) * d.grams()))
}

var definitions = choice.Of[VolumeDefinition]("carbonation.VolumeDefinition", "definition of a volume", "real gas, 1.9770 g/L", "ideal gas, 1.9635 g/L")

// String is "real gas, 1.9770 g/L" or "ideal gas, 1.9635 g/L".
func (d VolumeDefinition) String() string { return definitions.Text(d) }

// MarshalText is [VolumeDefinition.String]; an unknown definition is a
// [*units.NameError].
func (d VolumeDefinition) MarshalText() ([]byte, error) { return definitions.Marshal(d) }

// UnmarshalText reads what [VolumeDefinition.MarshalText] writes; another text is a
// [*units.NameError].
func (d *VolumeDefinition) UnmarshalText(text []byte) error { return definitions.Unmarshal(text, d) }
