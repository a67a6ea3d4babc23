package gravity_test

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func ExampleHydrometer_Reading() {
	dry, _, _ := wash().Dry(wash().WashYield())
	r, err := gravity.Hydrometer{}.Reading(dry, units.Celsius.Of(28))
	fmt.Printf("%.4f at 28 °C, %s at 20 °C %v\n", r, dry.Gravity().Text(4), err)
	// Output: 0.9919 at 28 °C, 0.9938 at 20 °C <nil>
}

func ExampleHydrometer_Correct() {
	g, err := gravity.Hydrometer{Reference: gravity.At60F}.Correct(1.046, units.StrengthByVolume{}, units.Celsius.Of(25))
	fmt.Println(g.Text(4), err)
	// Output: 1.0480 <nil>
}

func ExampleHydrometer_MeasuredGravity() {
	reading, _ := units.ReadTo(units.One.Of(0.992), units.One.Of(0.002))
	sample, _ := units.Measure(units.Celsius.Of(25), units.KelvinDifference.Of(0.5))
	strength, _ := units.Measure(units.PercentVolume.Of(4.6), units.PercentagePoint.Of(0.5))
	g, err := gravity.Hydrometer{}.MeasuredGravity(reading, strength, sample)
	fmt.Println(g.Text(units.One, 4, 2), err)
	// Output: 0.9931 ± 0.0012 (k = 2) <nil>
}

// Strength from two readings of a hydrometer with divisions of 0.002, and whether that
func ExampleStrengthByHydrometer() {
	// supports a label tolerance of ± 0.3 % vol.
	og, _ := units.ReadTo(units.One.Of(1.038), units.One.Of(0.002))
	fg, _ := units.ReadTo(units.One.Of(1.000), units.One.Of(0.002))
	v, err := gravity.StrengthByHydrometer(og, fg, gravity.SugarWashYield(gravity.AsSucrose), units.Percent.Of(3), 0)
	fmt.Println(v.Text(units.PercentVolume, 1, 2), err)
	c, _ := v.Capability(units.PercentagePoint.Of(0.3))
	fmt.Println("supports it:", c >= 1)
	// Output:
	// 5.1 ± 0.3 % vol (k = 2) <nil>
	// supports it: false
}

func ExampleRefractometer() {
	og, _ := units.Measure(units.DegreePlato.Of(9), units.DegreePlato.Of(0.1))
	now, _ := units.Measure(units.DegreePlato.Of(4), units.DegreePlato.Of(0.1))
	wash, _ := units.Measure(units.One.Of(1), units.One.Of(0))
	sg, abv, err := gravity.Refractometer(og, now, wash, gravity.SugarWashYield(gravity.AsSucrose))
	fmt.Println(sg.Text(units.One, 3, 2), abv.Text(units.PercentVolume, 1, 2), err)
	// Output: 1.004 ± 0.002 (k = 2) 4.3 ± 0.5 % vol (k = 2) <nil>
}

func ExampleWortFactor() {
	fmt.Println(gravity.WortFactor().Text(units.One, 2, 1))
	og, _ := units.Measure(units.DegreePlato.Of(12), units.DegreePlato.Of(0.1)) // by hydrometer
	now, _ := units.Measure(units.DegreePlato.Of(6.4), units.DegreePlato.Of(0.1))
	_, abv, err := gravity.Refractometer(og, now, gravity.WortFactor(), gravity.BallingYield())
	fmt.Println(abv.Text(units.PercentVolume, 1, 2), err)
	// Output:
	// 1.04 ± 0.02 (k = 1)
	// 4.8 ± 0.5 % vol (k = 2) <nil>
}

func ExampleSolution_MeasuredFloor() {
	floor, err := wash().MeasuredFloor(wash().WashYield(), units.Percent.Of(3), units.GramPerLitre.Of(0.3), units.GramPerLitre.Of(0.8))
	fmt.Println(floor.Text(units.One, 4, 2), err)
	// Output: 0.9942 ± 0.0006 (k = 2) <nil>
}

func ExamplePycnometer() {
	d, err := gravity.Pycnometer(units.Gram.Of(25), units.Gram.Of(74.85), units.Gram.Of(76.844), units.Celsius.Of(20))
	fmt.Println(d.Text(units.KilogramPerCubicMetre, 2), err)
	// Output: 1038.08 kg/m³ <nil>
}

func ExampleFromDensityAt() {
	g, err := gravity.FromDensityAt(units.KilogramPerCubicMetre.Of(989.1), units.PercentVolume.Of(4.6), units.Celsius.Of(25))
	fmt.Println(g.Text(4), err)
	// Output: 0.9921 <nil>
}

func ExampleSolution_FermentByWeight() {
	now, _, err := wash().FermentByWeight(units.Kilogram.Of(1.9), units.GramCO2PerLitre.Of(1.7), wash().WashYield())
	fmt.Println(now.Gravity().Text(4), now.ByVolume().Text(units.PercentVolume, 2), err)
	// Output: 0.9965 4.44 % vol <nil>
}

func ExampleSpiritIndication() {
	v, err := gravity.SpiritIndication(sgOf(1.0100), sgOf(1.0165))
	fmt.Println(v.Text(units.PercentVolume, 2), err)
	// Output: 4.51 % vol <nil>
}

func ExampleDistillateStrength() {
	v, err := gravity.DistillateStrength(units.Millilitre.Of(100), units.Millilitre.Of(100), units.KilogramPerCubicMetre.Of(991.1), units.Celsius.Of(20))
	fmt.Println(v.Text(units.PercentVolume, 2), err)
	// Output: 4.97 % vol <nil>
}

func ExampleSolution_At() {
	p, err := wash().At(sgOf(1.002), wash().WashYield())
	fmt.Println(p.Floor.Text(4), p.Part.Text(units.Percent, 0), p.Left.Text(units.Gram, 0), p.CO2Content.Text(units.GramCO2PerLitre, 1), err)
	// Output: 0.9938 77 % 1063 g 9.1 g/L CO2 <nil>
}

func ExampleSolution_AtWorst() {
	floor, _, _ := wash().Dry(wash().WashYield())
	reading, _ := units.ReadTo(units.One.Of(0), units.One.Of(0.002))
	sg, _ := units.One.Try(floor.Gravity().SG())
	reading, _ = units.Measure(sg, reading.Uncertainty())
	p, err := wash().AtWorst(reading, wash().WashYield(), 2)
	fmt.Println(p.CO2Content.Text(units.GramCO2PerLitre, 1), err)
	// Output: 1.3 g/L CO2 <nil>
}

func ExampleProgress_Cautions() {
	p, _ := wash().At(sgOf(1.002), wash().WashYield())
	for _, c := range p.Cautions() {
		fmt.Println(c)
	}
	// Output: Closed up now, this liquid can still make 9.1 g/L CO2. Glass bursts: pack only at or near the floor, unchanged over days, and within the maker's pressure rating of the pack.
}
