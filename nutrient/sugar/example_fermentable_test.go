package sugar_test

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

// What each fermentable is, and how well that is known.
func ExampleFermentables() {
	for _, f := range sugar.Fermentables() {
		fmt.Printf("%-22s solids %s, of them fermentable %s, gain by inversion %s: %s\n", f.Name(),
			sugar.Of(f).Solids().Text(units.Percent, 1), sugar.Of(f).Fermentability().Text(units.Percent, 1), sugar.Of(f).InversionGain().Text(units.Percent, 2),
			f.Evidence())
	}
	// Output:
	// white sugar            solids 99.9 %, of them fermentable 100.0 %, gain by inversion 5.26 %: Council Directive 2001/111/EC annex A (read)
	// sucrose                solids 100.0 %, of them fermentable 100.0 %, gain by inversion 5.26 %: stoichiometry, CIAAW atomic weights 2021 (computed)
	// soft brown sugar       solids 96.0 %, of them fermentable 91.7 %, gain by inversion 5.26 %: Codex CXS 212-1999 (read)
	// dextrose monohydrate   solids 90.9 %, of them fermentable 100.0 %, gain by inversion 0.00 %: stoichiometry, CIAAW atomic weights 2021 (computed)
	// dextrose anhydrous     solids 100.0 %, of them fermentable 100.0 %, gain by inversion 0.00 %: stoichiometry, CIAAW atomic weights 2021 (computed)
	// fructose               solids 100.0 %, of them fermentable 100.0 %, gain by inversion 0.00 %: stoichiometry, CIAAW atomic weights 2021 (computed)
	// invert sugar syrup     solids 77.9 %, of them fermentable 100.0 %, gain by inversion 2.63 %: Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I (read)
	// honey                  solids 82.8 %, of them fermentable 94.3 %, gain by inversion 0.58 %: White et al., USDA Technical Bulletin 1261 (1962) (read)
	// maple syrup            solids 66.0 %, of them fermentable 97.0 %, gain by inversion 5.26 %: 21 CFR 168.140 (recalled from memory)
	// dry malt extract       solids 97.0 %, of them fermentable 65.0 %, gain by inversion 4.77 %: common practice, no source
	// liquid malt extract    solids 80.0 %, of them fermentable 65.0 %, gain by inversion 4.77 %: common practice, no source
	// lactose monohydrate    solids 95.0 %, of them fermentable 0.0 %, gain by inversion 0.00 %: stoichiometry, CIAAW atomic weights 2021 (computed)
}

// A glucose syrup of 42 DE and 80 % solids: less than half of it ferments.
func ExampleOf_glucoseSyrup() {
	f, err := material.GlucoseSyrup(units.Percent.Of(80), units.Percent.Of(42))
	fmt.Println(sugar.Of(f).Fermentability().Text(units.Percent, 0), "±", f.Spread().Text(units.Percent, 0), err)
	// Output: 45 % ± 10 % <nil>
}

// A syrup bought as 77 % dry matter, two thirds inverted.
func ExampleOf_invertSyrup() {
	f, _ := material.InvertSyrup(units.Percent.Of(77), units.Percent.Of(67))
	p, _ := sugar.Of(f).Of(units.Kilogram.Of(1))
	fmt.Println(p.Sugar.Text(units.Gram, 0), "of sugar,", p.AsHexose.Text(units.Gram, 0), "after inversion")
	// Output: 770 g of sugar, 783 g after inversion
}

// Syrups from maize by their fructose.
func ExampleOf_highFructoseSyrup() {
	f, _ := material.HighFructoseSyrup(units.Percent.Of(55))
	fmt.Println(f, sugar.Of(f).Solids().Text(units.Percent, 1))
	_, err := material.HighFructoseSyrup(units.Percent.Of(60))
	fmt.Println(err)
	// Output:
	// high fructose syrup 76.9 %
	// material.HighFructoseSyrup: fructose (42, 55 and 90 only) 60 % outside 42 % to 90 % (Wartman, Bridges & Eliason, J. Chem. Eng. Data (1980) table I)
}

// Honey with the water that a refractometer showed.
func ExampleOf_honey() {
	f, _ := material.HoneyWithWater(units.Percent.Of(18.5))
	p, _ := sugar.Of(f).Of(units.Kilogram.Of(1))
	fmt.Println(p.Sugar.Text(units.Gram, 0), "ferments,", p.Residue.Text(units.Gram, 0), "stays;", f.Cautions()[0])
	// Output: 769 g ferments, 46 g stays; Honey brings less than 20 mg/L of nitrogen to a must of 25 °Bx: feed the yeast.
}

// A cider: 20 L of apple juice at 12 °Bx. How strong does it get, and how much sugar takes
// it to 8 % vol?
func ExampleWash_juice() {
	juice, _ := material.Juice(units.DegreePlato.Of(12), units.Share{})
	pressed, _ := sugar.Of(juice).AddTo(gravity.Solution{}, units.Kilogram.Of(20.9))
	w := sugar.Wash{
		Fermentable: material.WhiteSugar(), Attenuation: units.Percent.Of(100),
		Base: pressed, Basis: sugar.WaterAtHand(units.Mass{}),
	}
	plain, _ := w.From(units.Mass{})
	strong, _ := w.For(units.PercentVolume.Of(8))
	fmt.Println(plain.Finish.ByVolume().Text(units.PercentVolume, 1), "from the juice;", strong.Fermentable.Text(units.Gram, 0), "of sugar for 8 % vol")
	// Output: 7.1 % vol from the juice; 302 g of sugar for 8 % vol
}

// Three parts of sugar to one of honey.
func ExampleForStrength_mix() {
	f, _ := material.Mix(
		material.Ingredient{Material: material.WhiteSugar(), Share: units.Percent.Of(75)},
		material.Ingredient{Material: material.Honey(), Share: units.Percent.Of(25)},
	)
	b, _ := sugar.ForStrength(f, units.PercentVolume.Of(5), units.Litre.Of(20))
	fmt.Println(f.Name()+":", b.Fermentable.Text(units.Kilogram, 2))
	// Output: white sugar and honey: 1.71 kg
}

// What a gram of ethanol costs from sugar at 1.05 a kilogram and from honey at 14.00 for
// 2.5 kg.
func ExampleCostPerGramEthanol() {
	kilo, _ := units.ParseExact[units.Mass]("1 kg")
	pail, _ := units.ParseExact[units.Mass]("2.5 kg")
	white, _ := sugar.CostPerGramEthanol(material.WhiteSugar(), decimal.RequireFromString("1.05"), kilo)
	honey, _ := sugar.CostPerGramEthanol(material.Honey(), decimal.RequireFromString("14.00"), pail)
	fmt.Println(white, honey)
	// Output: 0.002128 0.015202
}

// A kilogram of sugar makes 10 L of water 0.6 L more.
func ExampleFermentable_VolumeTaken() {
	v, _ := sugar.Of(material.WhiteSugar()).VolumeTaken(units.Kilogram.Of(1), units.Kilogram.Of(10))
	fmt.Println(v.Text(units.Litre, 3))
	// Output: 0.617 L
}

// The yield counts what inversion adds.
func ExampleFermentable_Yield() {
	for _, f := range []material.Material{material.WhiteSugar(), material.DextroseAnhydrous(), shelf.Material("dry malt extract")} {
		fmt.Printf("%s: %.4f g of ethanol a gram of sugar\n", f, sugar.Of(f).Yield().Ethanol().In(units.Fraction))
	}
	// Output:
	// white sugar: 0.4936 g of ethanol a gram of sugar
	// dextrose anhydrous: 0.4689 g of ethanol a gram of sugar
	// dry malt extract: 0.4839 g of ethanol a gram of sugar
}

// Hydrometer, strength and gas when a third of the sugar is used: the time for the last
// nitrogen.
func ExampleBrew_At() {
	b, _ := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	s, made, _ := b.At(nutrient.LastAddition())
	fmt.Printf("%.3f, %s, %s of CO2 so far\n", s.Gravity().SG(), s.ByVolume().Text(units.PercentVolume, 1), made.CO2.Text(units.Kilogram, 2))
	// Output: 1.017, 1.5 % vol, 0.69 kg of CO2 so far
}
