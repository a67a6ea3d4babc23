package gravity_test

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func ExampleNewSolution() {
	s, err := gravity.NewSolution(units.Kilogram.Of(9), units.Kilogram.Of(1), units.Mass{})
	fmt.Println(s.Gravity().Text(4), err)
	// Output: 1.0400 <nil>
}

func ExampleSolution_Water() {
	fmt.Println(wash().Water())
	// Output: 57.1 kg
}

func ExampleSolution_Extract() {
	fmt.Println(wash().Extract())
	// Output: 4.6 kg
}

func ExampleSolution_ExtractOf() {
	fmt.Println(wash().ExtractOf(gravity.AsGlucose))
	// Output: 0 kg
}

func ExampleSolution_Fermentable() {
	fmt.Println(wash().Fermentable())
	// Output: 4.6 kg
}

func ExampleSolution_Ethanol() {
	fmt.Println(beer().Liquid().Ethanol().Text(units.Kilogram, 2))
	// Output: 3.59 kg
}

func ExampleSolution_Mass() {
	fmt.Println(wash().Mass())
	// Output: 61.7 kg
}

func ExampleSolution_RealExtract() {
	fmt.Println(wash().RealExtract().Text(units.DegreePlato, 2))
	// Output: 7.46 °P
}

func ExampleSolution_ByMass() {
	fmt.Println(beer().Liquid().ByMass().Text(units.PercentMass, 2))
	// Output: 3.73 % mass
}

func ExampleSolution_ByVolume() {
	fmt.Println(beer().Liquid().ByVolume().Text(units.PercentVolume, 2))
	// Output: 4.78 % vol
}

func ExampleSolution_Gravity() {
	fmt.Println(wash().Gravity().Text(4))
	// Output: 1.0295
}

func ExampleSolution_Density() {
	d, err := wash().Density(units.Celsius.Of(95))
	fmt.Println(d.Text(units.KilogramPerCubicMetre, 1), err)
	// Output: 990.2 kg/m³ <nil>
}

func ExampleSolution_Volume() {
	cold, _ := wash().Volume(units.Celsius.Of(20))
	hot, _ := wash().Volume(units.Celsius.Of(95))
	fmt.Println(cold.Text(units.Litre, 2), hot.Text(units.Litre, 2))
	// Output: 60.04 L 62.31 L
}

func ExampleSolution_VolumeAt20() {
	fmt.Println(wash().VolumeAt20().Text(units.Litre, 2))
	// Output: 60.04 L
}

func ExampleSolution_DensityUncertainty() {
	u, known := beer().Liquid().DensityUncertainty()
	fmt.Println(u.Text(units.KilogramPerCubicMetre, 2), known)
	// Output: 0.07 kg/m³ Tabarié (1830), tried by Hackbarth, J. Am. Soc. Brew. Chem. 69 (2011) 39 (read); up to 5 % extract and 18 % ethanol by mass
}

func ExampleSolution_SpecificGravity() {
	sg, err := beer().Liquid().SpecificGravity(gravity.At60F, gravity.InAir)
	fmt.Printf("%.5f %v\n", sg, err)
	// Output: 1.01183 <nil>
}

func ExampleSolution_Plus() {
	spirit, _ := gravity.NewSolution(units.Kilogram.Of(0.6), units.Mass{}, units.Kilogram.Of(0.4))
	s, err := beer().Liquid().Plus(spirit)
	fmt.Println(s.ByVolume().Text(units.PercentVolume, 2), err)
	// Output: 5.25 % vol <nil>
}

func ExampleSolution_AddWater() {
	s, err := wash().AddWater(units.Kilogram.Of(10))
	fmt.Println(s.Gravity().Text(4), err)
	// Output: 1.0253 <nil>
}

func ExampleSolution_AddSugar() {
	s, err := wash().AddSugar(units.Kilogram.Of(1))
	fmt.Println(s.Gravity().Text(4), err)
	// Output: 1.0356 <nil>
}

func ExampleSolution_AddExtract() {
	s, _ := gravity.NewSolution(units.Kilogram.Of(9), units.Mass{}, units.Mass{})
	s, err := s.AddExtract(gravity.AsGlucose, units.Kilogram.Of(1))
	fmt.Println(s.Gravity().Text(4), err)
	// Output: 1.0394 <nil>
}

func ExampleSolution_AddEthanol() {
	s, err := wash().AddEthanol(units.Kilogram.Of(2))
	fmt.Println(s.ByVolume().Text(units.PercentVolume, 2), err)
	// Output: 4.06 % vol <nil>
}

func ExampleSolution_BoilOff() {
	s, err := wash().BoilOff(units.Kilogram.Of(4))
	fmt.Println(s.Gravity().Text(4), err)
	_, err = wash().BoilOff(units.Kilogram.Of(60))
	fmt.Println(err)
	// Output:
	// 1.0316 <nil>
	// gravity.Solution.BoilOff: water 60 kg outside 0 kg to 57.1 kg (the water there is)
}

func ExampleSolution_Take() {
	s, err := wash().Take(units.Percent.Of(25))
	fmt.Println(s.Mass().Text(units.Kilogram, 3), err)
	// Output: 15.425 kg <nil>
}

func ExampleSolution_Remaining() {
	s, err := wash().Remaining(units.Percent.Of(5))
	fmt.Println(s.Mass().Text(units.Kilogram, 3), err)
	// Output: 58.615 kg <nil>
}

func ExampleSolution_TakeVolume() {
	keg, left, err := wash().TakeVolume(units.Litre.Of(19), units.Celsius.Of(20))
	fmt.Println(keg.Mass().Text(units.Kilogram, 2), left.Mass().Text(units.Kilogram, 2), err)
	// Output: 19.53 kg 42.17 kg <nil>
}

func ExampleSolution_Concentration() {
	fmt.Println(wash().Concentration(gravity.AsSucrose).Text(units.GramPerLitre, 1))
	// Output: 76.6 g/L
}

func ExampleSolution_DiluteTo() {
	s, water, err := beer().Liquid().DiluteTo(units.PercentVolume.Of(4))
	fmt.Println(water.Text(units.Kilogram, 2), "for", beer().Liquid().Mass().Text(units.Kilogram, 2), s.ByVolume().Text(units.PercentVolume, 2), err)
	// Output: 18.48 kg for 96.17 kg 4.00 % vol <nil>
}

func ExampleSolution_FortifyTo() {
	spirit, _ := gravity.NewSolution(units.Kilogram.Of(6), units.Mass{}, units.Kilogram.Of(94))
	s, added, err := beer().Liquid().FortifyTo(units.PercentVolume.Of(10), spirit)
	fmt.Println(added.Text(units.Kilogram, 2), s.ByVolume().Text(units.PercentVolume, 2), err)
	// Output: 4.62 kg 10.00 % vol <nil>
}

func ExampleBlendToStrength() {
	strong, _ := gravity.NewSolution(units.Kilogram.Of(90), units.Kilogram.Of(1), units.Kilogram.Of(9))
	weak, _ := gravity.NewSolution(units.Kilogram.Of(96), units.Kilogram.Of(1), units.Kilogram.Of(3))
	a, b, blend, err := gravity.BlendToStrength(strong, weak, units.PercentVolume.Of(6), units.Litre.Of(20))
	fmt.Println(a.Volume.Text(units.Litre, 2), b.Volume.Text(units.Litre, 2), blend.ByVolume().Text(units.PercentVolume, 2), err)
	// Output: 5.93 L 14.07 L 6.00 % vol <nil>
}

func ExampleBlendToStrengthAndExtract() {
	spirit, _ := gravity.NewSolution(units.Kilogram.Of(6), units.Mass{}, units.Kilogram.Of(94))
	syrup, _ := gravity.NewSolution(units.Kilogram.Of(35), units.Kilogram.Of(65), units.Mass{})
	water, _ := gravity.NewSolution(units.Kilogram.Of(1), units.Mass{}, units.Mass{})
	parts, _, err := gravity.BlendToStrengthAndExtract(spirit, syrup, water, units.PercentVolume.Of(5), units.DegreePlato.Of(6), units.Litre.Of(20))
	for _, p := range parts {
		fmt.Println(p.Mass.Text(units.Kilogram, 3), p.Volume.Text(units.Litre, 3))
	}
	fmt.Println(err)
	// Output:
	// 0.840 kg 1.040 L
	// 1.873 kg 1.423 L
	// 17.577 kg 17.609 L
	// <nil>
}

func ExampleSolution_RefractiveIndex() {
	n, err := beer().Liquid().RefractiveIndex()
	fmt.Printf("%.4f %v\n", n, err)
	// Output: 1.3421 <nil>
}

func ExampleSolution_RefractometerBrix() {
	e, err := beer().Liquid().RefractometerBrix()
	fmt.Println(e.Text(units.DegreePlato, 1), err)
	// Output: 6.2 °P <nil>
}
