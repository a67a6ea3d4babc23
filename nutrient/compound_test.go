package nutrient

import "testing"

// Molar masses worked out from the CIAAW abridged weights of 2021 by a general tool.
func TestMolarMasses(t *testing.T) {
	const source = "CIAAW 2021 abridged weights, computed"
	for _, c := range []struct {
		name string
		c    compound
		want float64
	}{
		{"water", waterFormula, 18.015},
		{"glucose", hexose, 180.156},
		{"sucrose", disaccharide, 342.297},
		{"maltotriose", trisaccharide, 504.438},
		{"lactose monohydrate", lactoseHydrate, 360.312},
		{"dextrose monohydrate", dextroseHydrate, 198.171},
		{"ethanol", ethanolFormula, 46.069},
		{"carbon dioxide", carbonDioxide, 44.009},
		{"ammonia", ammonia, 17.031},
		{"diammonium phosphate", diammonium, 132.056},
		{"monoammonium phosphate", monoammonium, 115.025},
		{"ammonium sulfate", ammoniumSulfate, 132.134},
		{"ammonium chloride", ammoniumChloride, 53.489},
		{"urea", ureaFormula, 60.056},
		{"potassium dihydrogen phosphate", potassiumDihydro, 136.084},
		{"potassium chloride", potassiumChloride, 74.548},
		{"Epsom salt", epsomSalt, 246.466},
		{"zinc sulfate heptahydrate", zincHeptahydrate, 287.541},
		{"zinc sulfate monohydrate", zincMonohydrate, 179.451},
	} {
		near(t, c.name, c.c.molar(), c.want, 0.0006, source)
	}
}

// Degrees of reduction, electrons a mole: glucose 24, ethanol 12, glycerol 14,
// succinic 14, acetic 8, lactic 12, CH1.8O0.5N0.2 4.2 (textbook values, recalled from
// memory).
func TestDegreesOfReduction(t *testing.T) {
	for _, c := range []struct {
		name string
		c    compound
		want float64
	}{
		{"glucose", hexose, 24}, {"ethanol", ethanolFormula, 12}, {"glycerol", glycerolFormula, 14},
		{"succinic", succinicAcid, 14}, {"acetic", aceticAcid, 8}, {"lactic", lacticAcid, 12},
		{"yeast", yeastSkeleton, 4.2}, {"carbon dioxide", carbonDioxide, 0}, {"water", waterFormula, 0},
		{"ammonia", ammonia, 0}, {"alanine", alanine, 12}, {"urea", ureaFormula, 0},
	} {
		near(t, c.name, c.c.reduction(), c.want, 1e-12, "textbook, recalled from memory")
	}
	near(t, "glycerol", glycerolFormula.molar(), 92.094, 0.001, "molar mass")
	near(t, "succinic", succinicAcid.molar(), 118.088, 0.001, "molar mass")
	near(t, "acetic", aceticAcid.molar(), 60.052, 0.001, "molar mass")
	near(t, "lactic", lacticAcid.molar(), 90.078, 0.001, "molar mass")
	near(t, "alanine", alanine.molar(), 89.094, 0.001, "molar mass")
	near(t, "phosphoric", phosphoricAcid.molar(), 97.994, 0.001, "molar mass")
	near(t, "ammonium", ammoniumIon.molar(), 18.039, 0.001, "molar mass")
	near(t, "dihydrogen phosphate", dihydrophosphate.molar(), 96.986, 0.001, "molar mass")
	// Nitrogen of CH1.8O0.5N0.2: 11.4 % of the ash-free matter.
	near(t, "yeast N", 0.2*weightN/(yeastSkeleton.molar()+0.2*ammonia.molar()), 0.1138, 0.0001, "CH1.8O0.5N0.2, 24.6 g/C-mol")
}
