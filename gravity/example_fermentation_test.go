package gravity_test

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func ExampleSolution_Ferment() {
	s := wash()
	after, made, err := s.Ferment(units.Kilogram.Of(2), s.WashYield())
	fmt.Println(after.Gravity().Text(4), made.CO2.Text(units.Kilogram, 3), made.Biomass.Text(units.Gram, 0), err)
	// Output: 1.0139 0.943 kg 98 g <nil>
}

func ExampleSolution_Dry() {
	dry, _, err := wash().Dry(wash().WashYield())
	fmt.Println(dry.Gravity().Text(4), dry.ByVolume().Text(units.PercentVolume, 2), err)
	// Output: 0.9938 4.81 % vol <nil>
}

func ExampleSolution_WashYield() {
	fmt.Printf("%.3f g of ethanol from 1 g of sugar\n", wash().WashYield().Ethanol().In(units.Fraction))
	// Output: 0.494 g of ethanol from 1 g of sugar
}

func ExampleBallingYield() {
	y := gravity.BallingYield()
	fmt.Printf("%.3f %.3f %.3f\n", 100*y.Ethanol().In(units.Fraction), 100*y.CO2().In(units.Fraction), 100*y.Biomass().In(units.Fraction))
	// Output: 48.391 46.286 5.323
}

func ExampleStoichiometricYield() {
	fmt.Printf("%.4f %.4f\n", gravity.StoichiometricYield(gravity.AsGlucose).Ethanol().In(units.Fraction),
		gravity.StoichiometricYield(gravity.AsSucrose).Ethanol().In(units.Fraction))
	// Output: 0.5114 0.5384
}

// 16.83 g/L of glucose for 1 % vol; of sucrose less, as it takes up water.
func ExampleSugarWashYield() {
	for _, k := range []gravity.Sugar{gravity.AsGlucose, gravity.AsSucrose} {
		fmt.Printf("%.2f g/L\n", 7.8924/gravity.SugarWashYield(k).Ethanol().In(units.Fraction))
	}
	// Output:
	// 16.83 g/L
	// 15.99 g/L
}

func ExampleNewYield() {
	_, err := gravity.NewYield(units.Gram.Of(100), gravity.Fermented{Ethanol: units.Gram.Of(48), CO2: units.Gram.Of(46),
		Biomass: units.Gram.Of(4), Residue: units.Gram.Of(1)})
	fmt.Println(err)
	// Output: gravity.NewYield: sum of the products 0.99 g/g outside 0.999999 g/g to 1.000001 g/g (the masses must balance)
}

func ExampleYield_Ethanol() {
	fmt.Println(gravity.BallingYield().Ethanol().In(units.Fraction))
	// Output: 0.48391
}

func ExampleYield_CO2() {
	fmt.Println(gravity.BallingYield().CO2().In(units.Fraction))
	// Output: 0.46286
}

func ExampleYield_Biomass() {
	fmt.Printf("%.5f\n", gravity.BallingYield().Biomass().In(units.Fraction))
	// Output: 0.05323
}

func ExampleYield_Residue() {
	fmt.Printf("%.4f\n", gravity.SugarWashYield(gravity.AsGlucose).Residue().In(units.Fraction))
	// Output: 0.0364
}

func ExampleYield_Water() {
	fmt.Printf("%.4f\n", gravity.SugarWashYield(gravity.AsSucrose).Water().In(units.Fraction))
	// Output: 0.0526
}

func ExampleYield_OriginalExtract() {
	e, err := gravity.BallingYield().OriginalExtract(units.PercentMass.Of(2.888), units.DegreePlato.Of(5.550))
	fmt.Println(e.Text(units.DegreePlato, 2), err)
	// Output: 11.17 °P <nil>
}

func ExampleFromOriginalAndApparent() {
	f, err := gravity.FromOriginalAndApparent(units.DegreePlato.Of(12), units.DegreePlato.Of(3), gravity.BallingYield())
	fmt.Println(f.RealExtract().Text(units.DegreePlato, 2), f.ByVolume().Text(units.PercentVolume, 2), err)
	// Output: 4.76 °P 4.78 % vol <nil>
}

func ExampleFromOriginalAndReal() {
	f, err := gravity.FromOriginalAndReal(units.DegreePlato.Of(12), units.DegreePlato.Of(4.76), gravity.BallingYield())
	fmt.Println(f.ApparentExtract().Text(units.DegreePlato, 1), f.ByVolume().Text(units.PercentVolume, 1), err)
	// Output: 3.0 °P 4.8 % vol <nil>
}

func ExampleFromOriginalAndStrength() {
	f, err := gravity.FromOriginalAndStrength(units.DegreePlato.Of(12), units.PercentVolume.Of(4.7), gravity.BallingYield())
	fmt.Println(f.Gravity().Text(4), err)
	// Output: 1.0123 <nil>
}

func ExampleFromOriginalAndBrix() {
	f, err := gravity.FromOriginalAndBrix(units.DegreePlato.Of(12), units.DegreePlato.Of(6.4), 1.04, gravity.BallingYield())
	fmt.Println(f.Gravity().Text(3), err)
	// Output: 1.012 <nil>
}

func ExampleFromApparentAndStrength() {
	f, err := gravity.FromApparentAndStrength(units.DegreePlato.Of(3), units.PercentVolume.Of(4.8), gravity.BallingYield())
	fmt.Println(f.OriginalExtract().Text(units.DegreePlato, 1), err)
	// Output: 12.0 °P <nil>
}

func ExampleFromApparentAndBrix() {
	f, err := gravity.FromApparentAndBrix(units.DegreePlato.Of(3), units.DegreePlato.Of(6.4), 1.04, gravity.BallingYield())
	fmt.Println(f.OriginalExtract().Text(units.DegreePlato, 1), err)
	// Output: 11.9 °P <nil>
}

func ExampleFromStrengthAndReal() {
	f, err := gravity.FromStrengthAndReal(units.PercentVolume.Of(4.8), units.DegreePlato.Of(4.7), gravity.BallingYield())
	fmt.Println(f.OriginalExtract().Text(units.DegreePlato, 1), err)
	// Output: 12.0 °P <nil>
}

func ExampleFermentation_Wort() {
	fmt.Println(beer().Wort().Mass())
	// Output: 100 kg
}

func ExampleFermentation_Liquid() {
	fmt.Println(beer().Liquid().Mass().Text(units.Kilogram, 2))
	// Output: 96.17 kg
}

func ExampleFermentation_Yield() {
	fmt.Println(beer().Yield() == gravity.BallingYield())
	// Output: true
}

func ExampleFermentation_OriginalGravity() {
	fmt.Println(beer().OriginalGravity().Text(4))
	// Output: 1.0483
}

func ExampleFermentation_OriginalExtract() {
	fmt.Println(beer().OriginalExtract().Text(units.DegreePlato, 2))
	// Output: 12.00 °P
}

func ExampleFermentation_Gravity() {
	fmt.Println(beer().Gravity().Text(4))
	// Output: 1.0117
}

func ExampleFermentation_ApparentExtract() {
	fmt.Println(beer().ApparentExtract().Text(units.DegreePlato, 2))
	// Output: 3.00 °P
}

func ExampleFermentation_RealExtract() {
	fmt.Println(beer().RealExtract().Text(units.DegreePlato, 2))
	// Output: 4.76 °P
}

func ExampleFermentation_ByMass() {
	fmt.Println(beer().ByMass().Text(units.PercentMass, 2))
	// Output: 3.73 % mass
}

func ExampleFermentation_ByVolume() {
	fmt.Println(beer().ByVolume().Text(units.PercentVolume, 2))
	// Output: 4.78 % vol
}

func ExampleFermentation_RefractometerBrix() {
	e, err := beer().RefractometerBrix()
	fmt.Println(e.Text(units.DegreePlato, 1), err)
	// Output: 6.2 °P <nil>
}

func ExampleFermentation_ApparentAttenuation() {
	fmt.Println(beer().ApparentAttenuation().Text(units.Percent, 1))
	// Output: 75.0 %
}

func ExampleFermentation_RealAttenuation() {
	fmt.Println(beer().RealAttenuation().Text(units.Percent, 1))
	// Output: 60.3 %
}

func ExampleFermentation_RealDegreeOfFermentation() {
	fmt.Println(beer().RealDegreeOfFermentation().Text(units.Percent, 1))
	// Output: 61.8 %
}

func ExampleFermentation_Fermented() {
	fmt.Println(beer().Fermented().Text(units.Percent, 1))
	// Output: 61.8 %
}

func ExampleStrengthMethods() {
	all, err := gravity.StrengthMethods(units.DegreePlato.Of(12), units.DegreePlato.Of(3))
	for _, m := range all {
		fmt.Printf("%-32s %.3f %.3f %+.3f\n", m.Name, m.RealExtract.In(units.DegreePlato), m.ByMass.In(units.PercentMass),
			m.ByMass.Minus(all[0].ByMass).In(units.PercentagePoint))
	}
	fmt.Println(err)
	// Output:
	// densities and Balling's balance  4.762 3.734 +0.000
	// Balling's tables                 4.695 3.768 +0.035
	// handbook constant 0.8192         4.627 3.803 +0.069
	// MEBAK constant 0.81              4.710 3.761 +0.027
	// Cutaia et al. 2009               4.767 3.734 -0.000
	// Pawlowski/Doemens                4.691 3.782 +0.048
	// <nil>
}
