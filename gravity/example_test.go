package gravity_test

import (
	"encoding/json"
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// wash is the example of the others: 60 L of water and sugar for a dry drink of about
// 4.8 % vol.
func wash() gravity.Solution {
	s, _ := gravity.NewSolution(units.Kilogram.Of(57.1), units.Kilogram.Of(4.6), units.Mass{})
	return s
}

// beer is a malt beer of 12 °P, fermented to 3 °P.
func beer() gravity.Fermentation {
	f, _ := gravity.FromOriginalAndApparent(units.DegreePlato.Of(12), units.DegreePlato.Of(3), gravity.BallingYield())
	return f
}

func sgOf(sg float64) gravity.Gravity {
	g, _ := gravity.FromSG(sg)
	return g
}

func Example() {
	s := wash()
	dry, made, err := s.Ferment(s.Fermentable(), s.WashYield())
	fmt.Println(s.Gravity().Text(4), dry.Gravity().Text(4), dry.ByVolume().Text(units.PercentVolume, 2), err)
	fmt.Println(made.CO2.Text(units.Gram, 0), "of CO2")
	// Output:
	// 1.0295 0.9938 4.81 % vol <nil>
	// 2169 g of CO2
}

func ExampleWaterDensity() {
	d, err := gravity.WaterDensity(units.Celsius.Of(20))
	fmt.Println(d.Text(units.KilogramPerCubicMetre, 3), err)
	// Output: 998.203 kg/m³ <nil>
}

// OIML R 22 table I prints 789.24 kg/m³ for pure ethanol at 20 °C.
func ExampleEthanolDensity() {
	d, err := gravity.EthanolDensity(units.PercentMass.Of(100), units.Celsius.Of(20))
	fmt.Println(d.Text(units.KilogramPerCubicMetre, 2), err)
	// Output: 789.24 kg/m³ <nil>
}

func ExampleEthanolStrength() {
	w, err := gravity.EthanolStrength(units.KilogramPerCubicMetre.Of(948.05), units.Celsius.Of(20))
	fmt.Println(w.Text(units.PercentMass, 2), gravity.ByVolume(w).Text(units.PercentVolume, 2), err)
	// Output: 33.30 % mass 40.00 % vol <nil>
}

func ExampleByVolume() {
	fmt.Println(gravity.ByVolume(units.PercentMass.Of(4)).Text(units.PercentVolume, 2))
	// Output: 5.02 % vol
}

func ExampleByMass() {
	fmt.Println(gravity.ByMass(units.PercentVolume.Of(40)).Text(units.PercentMass, 2))
	// Output: 33.30 % mass
}

func ExampleSucroseDensity() {
	d, err := gravity.SucroseDensity(units.DegreePlato.Of(12), units.Celsius.Of(20))
	fmt.Println(d.Text(units.KilogramPerCubicMetre, 1), err)
	// Output: 1046.4 kg/m³ <nil>
}

func ExampleSucroseExtract() {
	e, err := gravity.SucroseExtract(units.KilogramPerCubicMetre.Of(1046.5), units.Celsius.Of(20))
	fmt.Println(e.Text(units.DegreePlato, 2), err)
	// Output: 12.01 °P <nil>
}

// At 10 % mass glucose is 0.6 kg/m³ lighter than sucrose, and fructose 0.4 heavier.
func ExampleSugar_Density() {
	for _, k := range []gravity.Sugar{gravity.AsSucrose, gravity.AsGlucose, gravity.AsFructose} {
		d, _ := k.Density(units.DegreePlato.Of(10), units.Celsius.Of(20))
		fmt.Println(k, d.Text(units.KilogramPerCubicMetre, 1))
	}
	// Output:
	// sucrose 1038.1 kg/m³
	// glucose 1037.5 kg/m³
	// fructose 1038.5 kg/m³
}

func ExampleSugar_String() {
	fmt.Println(gravity.AsGlucose)
	// Output: glucose
}

func ExampleSugar_Fermentable() {
	fmt.Println(gravity.AsFructose.Fermentable(), gravity.AsDextrin.Fermentable())
	// Output: true false
}

func ExampleFromSG() {
	g, err := gravity.FromSG(1.048)
	fmt.Println(g.Extract().Text(units.DegreePlato, 2), err)
	_, err = gravity.FromSG(1048)
	fmt.Println(err)
	// Output:
	// 11.92 °P <nil>
	// gravity.FromSG: specific gravity 1048 outside 0.79 to 1.41474222789 (pure ethanol to 80 °P)
}

func ExampleFromExtract() {
	g, err := gravity.FromExtract(units.DegreePlato.Of(12))
	fmt.Println(g.Text(4), err)
	// Output: 1.0483 <nil>
}

func ExampleFromDensity() {
	g, err := gravity.FromDensity(units.GramPerMillilitre.Of(0.9923))
	fmt.Println(g.Text(4), err)
	// Output: 0.9941 <nil>
}

func ExampleParseGravity() {
	for _, text := range []string{"1.048", "1048", "12 °P", "48"} {
		g, err := gravity.ParseGravity(text)
		fmt.Println(g.Text(4), err)
	}
	// Output:
	// 1.0480 <nil>
	// 1.0480 <nil>
	// 1.0483 <nil>
	// 1.0000 "48" is not a gravity: a gravity is written 1.048; for an extract say °P, for points say points
}

func ExampleGravity_SG() {
	fmt.Println(sgOf(0.992).SG())
	// Output: 0.992
}

func ExampleGravity_Points() {
	fmt.Printf("%.1f\n", sgOf(0.992).Points())
	// Output: -8.0
}

// A dry sugar wash reads below zero.
func ExampleGravity_Extract() {
	fmt.Println(sgOf(0.992).Extract().Text(units.DegreePlato, 2))
	// Output: -2.09 °P
}

func ExampleGravity_Density() {
	fmt.Println(sgOf(1.048).Density().Text(units.KilogramPerCubicMetre, 1))
	// Output: 1046.1 kg/m³
}

func ExampleGravity_Compare() {
	fmt.Println(sgOf(1.010).Compare(sgOf(1.012)))
	// Output: -1
}

func ExampleGravity_Text() {
	fmt.Println(gravity.Gravity{}.Text(3))
	// Output: 1.000
}

func ExampleGravity_String() {
	fmt.Println(sgOf(1.048))
	// Output: 1.048
}

func ExampleGravity_AppendText() {
	b, _ := sgOf(1.048).AppendText([]byte("OG "))
	fmt.Println(string(b))
	// Output: OG 1.048
}

func ExampleGravity_MarshalText() {
	b, _ := json.Marshal(map[string]gravity.Gravity{"og": sgOf(1.048)})
	fmt.Println(string(b))
	// Output: {"og":"1.048"}
}

func ExampleGravity_UnmarshalText() {
	var g gravity.Gravity
	err := g.UnmarshalText([]byte("12 °P"))
	fmt.Println(g.Text(4), err)
	// Output: 1.0483 <nil>
}
