package gravity_test

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func ExampleGravity_As() {
	g := sgOf(1.048)
	us, _ := g.As(gravity.At60F, gravity.InAir)
	density, err := g.As(gravity.At20On4, gravity.InVacuum)
	fmt.Printf("%.5f %.5f %v\n", us, density, err)
	// Output: 1.04828 1.04615 <nil>
}

func ExampleFromReference() {
	g, err := gravity.FromReference(1.048, gravity.At60F, gravity.InAir)
	fmt.Println(g.Text(5), err)
	// Output: 1.04772 <nil>
}

func ExampleReference_String() {
	fmt.Println(gravity.At60F)
	// Output: 15.56/15.56 °C
}

func ExampleReference_Temperatures() {
	liquid, water, err := gravity.At20On4.Temperatures()
	fmt.Println(liquid, water, err)
	// Output: 20 °C 4 °C <nil>
}

func ExampleAir_String() {
	fmt.Println(gravity.InAir)
	// Output: in air
}

func ExampleDensityInAir() {
	d, err := gravity.DensityInAir(units.KilogramPerCubicMetre.Of(998.20))
	fmt.Println(d.Text(units.KilogramPerCubicMetre, 2), err)
	// Output: 997.15 kg/m³ <nil>
}

func ExampleDensityInVacuum() {
	d, err := gravity.DensityInVacuum(units.KilogramPerCubicMetre.Of(997.15))
	fmt.Println(d.Text(units.KilogramPerCubicMetre, 2), err)
	// Output: 998.20 kg/m³ <nil>
}

func ExampleGravity_ScaleMethods() {
	g, _ := gravity.FromExtract(units.DegreePlato.Of(12))
	for _, m := range g.ScaleMethods() {
		fmt.Printf("%-28s %7.3f %+.3f\n", m.Name, m.Extract.In(units.DegreePlato), m.Extract.Minus(g.Extract()).In(units.DegreePlato))
	}
	// Output:
	// ICUMSA SPS-4                  12.000 +0.000
	// NBS Circular 440, cubic       12.003 +0.003
	// ASBC table, cubic             12.004 +0.004
	// Lincoln, quadratic            12.004 +0.004
	// linear                        11.739 -0.261
	// 260·(1 − 1/S) at 17.5 °C      12.029 +0.029
}

func ExampleGravity_Oechsle() {
	fmt.Printf("%.0f °Oe\n", sgOf(1.085).Oechsle())
	// Output: 85 °Oe
}

func ExampleGravity_Baume() {
	fmt.Printf("%.2f °Bé\n", sgOf(1.085).Baume())
	// Output: 11.24 °Bé
}

func ExampleGravity_BaumeUS() {
	fmt.Printf("%.2f °Bé\n", sgOf(1.085).BaumeUS())
	// Output: 11.41 °Bé
}

func ExampleFromBaume() {
	g, err := gravity.FromBaume(11)
	fmt.Println(g.Text(4), err)
	// Output: 1.0830 <nil>
}

func ExampleGravity_SakeMeter() {
	fmt.Printf("%+.1f\n", sgOf(0.995).SakeMeter())
	// Output: +8.5
}

func ExampleExtractConcentration() {
	c, err := gravity.ExtractConcentration(units.DegreePlato.Of(12), units.Celsius.Of(20))
	fmt.Println(c.Text(units.GramPerLitre, 1), err)
	// Output: 125.6 g/L <nil>
}

func ExampleExtractFromConcentration() {
	e, err := gravity.ExtractFromConcentration(units.GramPerLitre.Of(125.6), units.Celsius.Of(20))
	fmt.Println(e.Text(units.DegreePlato, 2), err)
	// Output: 12.00 °P <nil>
}

func ExampleRefractiveIndex() {
	n, err := gravity.RefractiveIndex(units.DegreePlato.Of(10))
	fmt.Printf("%.5f %v\n", n, err)
	// Output: 1.34782 <nil>
}

func ExampleBrixFromIndex() {
	e, err := gravity.BrixFromIndex(1.34782)
	fmt.Println(e.Text(units.DegreePlato, 2), err)
	// Output: 10.00 °P <nil>
}

func ExampleRefractometerCorrection() {
	read := units.DegreePlato.Of(10)
	for _, t := range []units.Temperature{units.Celsius.Of(25), units.Celsius.Of(10)} {
		add, err := gravity.RefractometerCorrection(read, t)
		fmt.Println(read.Plus(add).Text(units.DegreePlato, 2), err)
	}
	// Output:
	// 10.32 °P <nil>
	// 9.41 °P <nil>
}
