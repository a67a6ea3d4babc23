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
