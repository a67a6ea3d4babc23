package dioxide_test

import (
	"fmt"

	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

// Weiss (1974) table III at 20 °C prints 3.916 for fresh water and 3.241 at 35 ‰, in
// 1e-2 mol/(kg·atm).
func ExampleHenryWeiss() {
	fresh, _ := dioxide.HenryWeiss(units.Celsius.Of(20), units.Share{})
	sea, _ := dioxide.HenryWeiss(units.Celsius.Of(20), units.Percent.Of(3.5))
	fmt.Printf("%.5f %.5f\n", fresh, sea)
	// Output:
	// 0.03916 0.03241
}

// The USGS data base prints log K = −1.468 at 25 °C.
func ExampleHenryPlummerBusenberg() {
	k, err := dioxide.HenryPlummerBusenberg(units.Celsius.Of(25))
	fmt.Printf("%.5f mol/(kg·atm) %v\n", k, err)
	_, err = dioxide.HenryPlummerBusenberg(units.Celsius.Of(95))
	fmt.Println(err)
	// Output:
	// 0.03405 mol/(kg·atm) <nil>
	// dioxide.HenryPlummerBusenberg: temperature 95 °C outside -2 °C to 90 °C (Plummer & Busenberg 1982)
}

func ExampleHenryCarroll() {
	h, err := dioxide.HenryCarroll(units.Celsius.Of(25))
	fmt.Printf("%.2f MPa %v\n", h.In(units.Bar)/10, err)
	// Output:
	// 161.97 MPa <nil>
}

// The CRC Handbook prints 0.704e-3 at 20 °C and 100 kPa.
func ExampleMoleFractionCarroll() {
	x, err := dioxide.MoleFractionCarroll(units.Celsius.Of(20), units.Kilopascal.Of(100))
	fmt.Printf("%.3e %v\n", x, err)
	// Output:
	// 7.037e-04 <nil>
}

// Murray & Riley (1971) measured 7.009e-4 at 20 °C and 1 atm.
func ExampleMoleFraction() {
	x, err := dioxide.MoleFraction(units.Celsius.Of(20), units.StandardAtmosphere.Of(1))
	fmt.Printf("%.3e %v\n", x, err)
	// Output:
	// 7.017e-04 <nil>
}

func ExampleSecondVirial() {
	b, err := dioxide.SecondVirial(units.Celsius.Of(20))
	fmt.Printf("%.2f cm³/mol %v\n", b, err)
	// Output:
	// -127.88 cm³/mol <nil>
}

func ExampleThirdVirial() {
	c, err := dioxide.ThirdVirial(units.Celsius.Of(20))
	fmt.Printf("%.0f cm⁶/mol² %v\n", c, err)
	// Output:
	// 4838 cm⁶/mol² <nil>
}

func ExampleFugacityCoefficient() {
	phi, err := dioxide.FugacityCoefficient(units.Celsius.Of(20), units.Bar.Of(3))
	fmt.Printf("%.4f %v\n", phi, err)
	// Output:
	// 0.9843 <nil>
}

func ExampleBeerChartPressure() {
	p, err := dioxide.BeerChartPressure(units.Fahrenheit.Of(38), units.VolumesCO2.Of(2.5))
	fmt.Println(units.Atmosphere{}.Gauge(p).Text(units.PSIGauge, 1), err)
	// Output:
	// 11.2 psi gauge <nil>
}

// 32 °F and 10 psi: the chart prints 2.70 volumes.
func ExampleBeerChartVolumes() {
	p, _ := units.Atmosphere{}.Absolute(units.PSIGauge.Of(10))
	v, err := dioxide.BeerChartVolumes(units.Fahrenheit.Of(32), p)
	fmt.Println(v.Text(units.VolumesCO2, 2), err)
	// Output:
	// 2.69 vol CO2 <nil>
}

func ExampleEuropeanBeerContent() {
	c, err := dioxide.EuropeanBeerContent(units.Celsius.Of(5), units.Bar.Of(2.013))
	fmt.Println(c.Text(units.GramCO2PerLitre, 2), err)
	// Output:
	// 5.33 g/L CO2 <nil>
}

func ExampleEuropeanBeerPressure() {
	p, err := dioxide.EuropeanBeerPressure(units.Celsius.Of(5), units.GramCO2PerLitre.Of(5.33))
	fmt.Println(p.Text(units.Bar, 2), err)
	// Output:
	// 2.01 bar absolute <nil>
}

// A sparkling wine of 8 % vol and 10 g/L of sugar at 4.5 bar absolute.
func ExampleWineContent() {
	c, err := dioxide.WineContent(units.Bar.Of(4.5), units.PercentVolume.Of(8), units.GramPerLitre.Of(10))
	fmt.Println(c.Text(units.GramCO2PerLitre, 4), err)
	// Output:
	// 6.7494 g/L CO2 <nil>
}

func ExampleWinePressure() {
	p, err := dioxide.WinePressure(units.GramCO2PerLitre.Of(8), units.PercentVolume.Of(12), units.GramPerLitre.Of(8))
	fmt.Println(p.Text(units.Bar, 2), err)
	// Output:
	// 5.61 bar absolute <nil>
}
