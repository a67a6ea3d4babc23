package material_test

import (
	"encoding/json"
	"fmt"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// What a gram of Epsom salt brings, and a dose of it.
func Example() {
	salt, err := material.Find("Epsom salts")
	c := salt.Composition()
	fmt.Println(salt, salt.Formula(), c.Magnesium.Text(units.Percent, 2), "Mg,", c.Sulfate.Text(units.Percent, 2), "SO4", err)
	fmt.Println(salt.Anhydrous(units.Gram.Of(100)).Text(units.GramAnhydrous, 2), salt.Evidence())
	dose := salt.Dose(units.Gram.Of(3))
	text, err := json.Marshal(dose)
	fmt.Println(string(text), err)
	// Output:
	// Epsom salt MgSO4.7H2O 9.86 % Mg, 38.97 % SO4 <nil>
	// 48.83 g anhydrous stoichiometry, CIAAW atomic weights 2021 (computed)
	// {"Material":"Epsom salt","Mass":"0.003 kg"} <nil>
}

// A name that is sold with and without crystal water says too little.
func ExampleFind() {
	_, err := material.Find("calcium chloride")
	fmt.Println(err)
	_, err = material.Find("gypsun")
	fmt.Println(err)
	fmt.Println(len(material.All()), "are known by name")
	// Output:
	// material.Find: unknown material "calcium chloride"; one of calcium chloride dihydrate, calcium chloride anhydrous
	// material.Find: unknown material "gypsun"; one of gypsum
	// 50 are known by name
}

// A yeast food by its label.
func ExampleByLabel() {
	food, err := material.ByLabel("club yeast food", material.Composition{
		AmmoniumNitrogen: units.Percent.Of(9), AminoNitrogen: units.Percent.Of(2), Phosphorus: units.Percent.Of(10),
	})
	fmt.Println(food, food.Composition().Nitrogen(), food.Evidence(), err)
	text, err := json.Marshal(food)
	fmt.Println(len(text) > 0, err)
	_, err = material.ByLabel("too much", material.Composition{Potassium: units.Percent.Of(101)})
	fmt.Println(err)
	// Output:
	// club yeast food 11 % the label (read) <nil>
	// true <nil>
	// material.ByLabel: potassium 101 % outside 0 % to 100 % (a label)
}

// Shares of the sugar in what is bought, and what yeast gets out of it.
func ExampleMaterial_Composition() {
	for _, m := range []material.Material{material.WhiteSugar(), material.DextroseMonohydrate(), material.Honey(), shelf.Material("dry malt extract")} {
		c := m.Composition()
		fmt.Printf("%s: sugar %s, as hexose from a kilogram %s\n", m, c.Sugar().Text(units.Percent, 1), c.Hexose(units.Kilogram.Of(1)).Text(units.Kilogram, 3))
	}
	// Output:
	// white sugar: sugar 99.9 %, as hexose from a kilogram 1.052 kg
	// dextrose monohydrate: sugar 90.9 %, as hexose from a kilogram 0.909 kg
	// honey: sugar 78.1 %, as hexose from a kilogram 0.786 kg
	// dry malt extract: sugar 63.0 %, as hexose from a kilogram 0.661 kg
}

// Syrups, honey and juice by their figures.
func ExampleGlucoseSyrup() {
	corn, err := material.GlucoseSyrup(units.Percent.Of(80), units.Percent.Of(42))
	fmt.Println(corn, corn.Composition().Sugar().Text(units.Percent, 1), corn.Spread(), err)
	invert, err := material.InvertSyrup(units.Percent.Of(75), units.Percent.Of(50))
	fmt.Println(invert, invert.Composition().Sugar().Text(units.Percent, 1), err)
	fruit, err := material.HighFructoseSyrup(units.Percent.Of(55))
	fmt.Println(fruit, fruit.Composition().Fructose.Text(units.Percent, 1), err)
	honey, err := material.HoneyWithWater(units.Percent.Of(19))
	fmt.Println(honey, honey.Composition().Sugar().Text(units.Percent, 1), err)
	juice, err := material.Juice(units.DegreePlato.Of(11), units.Share{})
	fmt.Println(juice, juice.Composition().Sugar().Text(units.Percent, 1), err)
	// Output:
	// glucose syrup 36.0 % 10 % <nil>
	// invert sugar syrup 75.0 % <nil>
	// high fructose syrup 42.3 % <nil>
	// honey 76.4 % <nil>
	// juice 9.9 % <nil>
}

// A name among those that ferment: plain dextrose may hold crystal water or not.
func ExampleFindAmong() {
	sugars := []material.Material{material.WhiteSugar(), material.DextroseMonohydrate(), material.DextroseAnhydrous()}
	m, err := material.FindAmong("table sugar", sugars...)
	fmt.Println(m, err)
	_, err = material.FindAmong("dextrose", sugars...)
	fmt.Println(err)
	// Output:
	// white sugar <nil>
	// material.FindAmong: unknown material "dextrose"; one of dextrose monohydrate, dextrose anhydrous
}

// Three parts of sugar to one of honey, written down and read back.
func ExampleMix() {
	m, err := material.Mix(
		material.Ingredient{Material: material.WhiteSugar(), Share: units.Percent.Of(75)},
		material.Ingredient{Material: material.Honey(), Share: units.Percent.Of(25)},
	)
	fmt.Println(m, m.Composition().Sugar().Text(units.Percent, 1), m.Evidence(), err)
	text, err := json.Marshal(m)
	var again material.Material
	fmt.Println(json.Unmarshal(text, &again), again.Equal(m), err)
	// Output:
	// white sugar and honey 94.5 % Council Directive 2001/111/EC annex A (read) <nil>
	// <nil> true <nil>
}
