package formula

import (
	"testing"

	"example.org/zymase/internal/check"
)

// Molar masses worked out from the CIAAW abridged weights of 2021 by a general tool.
func TestMolarMasses(t *testing.T) {
	const source = "CIAAW 2021 abridged weights, computed"
	for _, c := range []struct {
		name string
		c    Compound
		want float64
	}{
		{"water", WaterFormula, 18.015},
		{"glucose", Hexose, 180.156},
		{"sucrose", disaccharide, 342.297},
		{"maltotriose", trisaccharide, 504.438},
		{"lactose monohydrate", LactoseHydrate, 360.312},
		{"dextrose monohydrate", DextroseHydrate, 198.171},
		{"ethanol", EthanolFormula, 46.069},
		{"carbon dioxide", CarbonDioxide, 44.009},
		{"ammonia", Ammonia, 17.031},
		{"urea", UreaFormula, 60.056},
	} {
		check.Near(t, c.name, c.c.Molar(), c.want, 0.0006, source)
	}
}

// Degrees of reduction, electrons a mole: glucose 24, ethanol 12, glycerol 14,
// succinic 14, acetic 8, lactic 12, CH1.8O0.5N0.2 4.2 (textbook values, recalled from
// memory).
func TestDegreesOfReduction(t *testing.T) {
	for _, c := range []struct {
		name string
		c    Compound
		want float64
	}{
		{"glucose", Hexose, 24}, {"ethanol", EthanolFormula, 12}, {"glycerol", GlycerolFormula, 14},
		{"succinic", SuccinicAcid, 14}, {"acetic", AceticAcid, 8}, {"lactic", LacticAcid, 12},
		{"yeast", YeastSkeleton, 4.2}, {"carbon dioxide", CarbonDioxide, 0}, {"water", WaterFormula, 0},
		{"ammonia", Ammonia, 0}, {"alanine", Alanine, 12}, {"urea", UreaFormula, 0},
	} {
		check.Near(t, c.name, c.c.Reduction(), c.want, 1e-12, "textbook, recalled from memory")
	}
	check.Near(t, "glycerol", GlycerolFormula.Molar(), 92.094, 0.001, "molar mass")
	check.Near(t, "succinic", SuccinicAcid.Molar(), 118.088, 0.001, "molar mass")
	check.Near(t, "acetic", AceticAcid.Molar(), 60.052, 0.001, "molar mass")
	check.Near(t, "lactic", LacticAcid.Molar(), 90.078, 0.001, "molar mass")
	check.Near(t, "alanine", Alanine.Molar(), 89.094, 0.001, "molar mass")
	check.Near(t, "phosphoric", PhosphoricAcid.Molar(), 97.994, 0.001, "molar mass")
	check.Near(t, "ammonium", AmmoniumIon.Molar(), 18.039, 0.001, "molar mass")
	check.Near(t, "dihydrogen phosphate", Dihydrophosphate.Molar(), 96.986, 0.001, "molar mass")
	// Nitrogen of CH1.8O0.5N0.2: 11.4 % of the ash-free matter.
	check.Near(t, "yeast N", 0.2*WeightN/(YeastSkeleton.Molar()+0.2*Ammonia.Molar()), 0.1138, 0.0001, "CH1.8O0.5N0.2, 24.6 g/C-mol")
}

// Sugars and Gay-Lussac by molar masses: 2·180.156/342.297, 3·180.156/504.438, 2·46.069/180.156.
func TestGains(t *testing.T) {
	const source = "CIAAW 2021 abridged weights, by hand"
	check.Near(t, "two units", GainOfDi, 2*180.156/342.297, 1e-5, source)
	check.Near(t, "three units", GainOfTri, 3*180.156/504.438, 1e-5, source)
	check.Near(t, "ethanol of hexose", EthanolOfHexose, 2*46.069/180.156, 1e-5, source)
}
