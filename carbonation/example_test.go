package carbonation_test

import (
	"fmt"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// The seltzer of the village hall: 4.6 % vol, dry. Errors are dropped in these
// examples only; a program looks at them.
func sparkler() (gravity.Solution, carbonation.Liquid) {
	s, _ := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.DegreePlato.Of(0.5))
	l, _ := carbonation.NewLiquid(s)
	return s, l
}

// What to set on the regulator for 2.9 volumes at 4 °C, at sea level and at 640 m.
func ExampleLiquid_Pressure() {
	_, drink := sparkler()
	want := carbonation.RealVolume.Content(units.VolumesCO2.Of(2.9))
	p, err := drink.Pressure(want, units.Celsius.Of(4))
	hall, _ := units.AtAltitude(units.Metre.Of(640))
	fmt.Println(p.Text(units.Bar, 2), err)
	fmt.Println(units.Atmosphere{}.Gauge(p).Text(units.PSIGauge, 1))
	fmt.Println(hall.Gauge(p).Text(units.PSIGauge, 1))
	// Output:
	// 2.12 bar absolute <nil>
	// 16.0 psi gauge
	// 17.1 psi gauge
}

// A keg at 4 °C under 1.2 bar on the gauge at 640 m.
func ExampleLiquid_Content() {
	_, drink := sparkler()
	hall, _ := units.AtAltitude(units.Metre.Of(640))
	p, _ := hall.Absolute(units.BarGauge.Of(1.2))
	c, err := drink.Content(p, units.Celsius.Of(4))
	fmt.Println(c.Text(units.GramCO2PerLitre, 2), err)
	fmt.Println(carbonation.RealVolume.Volumes(c).Text(units.VolumesCO2, 2))
	// Output:
	// 5.79 g/L CO2 <nil>
	// 2.93 vol CO2
}

// How cold for 5.7 g/L under 2.1 bar absolute?
func ExampleLiquid_Temperature() {
	_, drink := sparkler()
	t, err := drink.Temperature(units.GramCO2PerLitre.Of(5.7), units.Bar.Of(2.1))
	fmt.Println(t.Text(units.Celsius, 1), err)
	// Output:
	// 3.9 °C <nil>
}

// A drink from its recipe: masses of water, extract and ethanol.
func ExampleNewLiquid() {
	s, _ := gravity.NewSolution(units.Kilogram.Of(19.2), units.Gram.Of(80), units.Gram.Of(735))
	l, err := carbonation.NewLiquid(s)
	p, _ := l.Pressure(units.GramCO2PerLitre.Of(5), units.Celsius.Of(20))
	fmt.Println(p.Text(units.Bar, 2), err)
	// Output:
	// 3.17 bar absolute <nil>
}

// A spirit is not a drink that is carbonated.
func ExampleDrinkOf() {
	s, _ := carbonation.DrinkOf(units.PercentVolume.Of(5.3), units.DegreePlato.Of(5.8))
	fmt.Println(s.Gravity(), s.ByMass().Text(units.PercentMass, 2))
	_, err := carbonation.DrinkOf(units.PercentVolume.Of(40), units.Extract{})
	fmt.Println(err)
	// Output:
	// 1.0151112339854031 4.13 % mass
	// carbonation.DrinkOf: strength 40 % vol outside 0 % vol to 20 % vol (drinks that hold CO2)
}

// The two definitions of a volume are 0.7 % apart.
func ExampleVolumeDefinition_Content() {
	v := units.VolumesCO2.Of(2.9)
	for _, d := range []carbonation.VolumeDefinition{carbonation.RealVolume, carbonation.IdealVolume} {
		fmt.Println(d.Content(v).Text(units.GramCO2PerLitre, 3), d)
	}
	// Output:
	// 5.733 g/L CO2 real gas, 1.9770 g/L
	// 5.694 g/L CO2 ideal gas, 1.9635 g/L
}

func ExampleVolumeDefinition_Volumes() {
	limit := units.GramCO2PerLitre.Of(3.92) // US still wine
	fmt.Println(carbonation.RealVolume.Volumes(limit).Text(units.VolumesCO2, 3))
	// Output:
	// 1.983 vol CO2
}

// How far the published ways are apart, for a pale ale at 4 °C.
func ExampleCompare() {
	ale, _ := carbonation.DrinkOf(units.PercentVolume.Of(5.3), units.DegreePlato.Of(4.8))
	list, _ := carbonation.Compare(ale, units.Bar.Of(2), units.Celsius.Of(4))
	for _, x := range list {
		if x.Err != nil {
			fmt.Println(x.Method.String()+":", x.Err)
			continue
		}
		ratio, _ := units.Ratio(x.Content, list[0].Content)
		fmt.Printf("%s: %s, %+.1f %%\n", x.Method, x.Content.Text(units.GramCO2PerLitre, 2), 100*(ratio-1))
	}
	// Output:
	// Henry's law in the water of the drink: 5.23 g/L CO2, +0.0 %
	// printed beer chart: 5.40 g/L CO2, +3.3 %
	// European exponential form: 5.48 g/L CO2, +4.9 %
	// EU/OIV wine relation: carbonation.Method.Content: temperature 4 °C where only 20 °C is possible (EU methods for wine)
}

// Handbooks print 1.977 g/L at 0 °C and 1 atm.
func ExampleGasDensity() {
	d, err := carbonation.GasDensity(units.StandardAtmosphere.Of(1), units.Celsius.Of(0))
	fmt.Printf("%.3f g/L %v\n", d.In(units.KilogramPerCubicMetre), err)
	// Output:
	// 1.977 g/L <nil>
}

func ExampleSaturationPressure() {
	p, err := carbonation.SaturationPressure(units.Celsius.Of(20))
	fmt.Println(p.Text(units.Bar, 2), err)
	_, err = carbonation.SaturationPressure(units.Celsius.Of(35))
	fmt.Println(err)
	// Output:
	// 57.29 bar absolute <nil>
	// carbonation.SaturationPressure: temperature 35 °C outside -56.558 °C to 30.9782 °C (Span & Wagner 1996)
}

func ExampleSaturationTemperature() {
	t, err := carbonation.SaturationTemperature(units.Bar.Of(50))
	fmt.Println(t.Text(units.Celsius, 2), err)
	// Output:
	// 14.28 °C <nil>
}

func ExampleWaterVapourPressure() {
	p, err := carbonation.WaterVapourPressure(units.Celsius.Of(20))
	fmt.Println(p.Text(units.Kilopascal, 3), err)
	// Output:
	// 2.339 kPa absolute <nil>
}

func ExampleEthanolVapourPressure() {
	p, err := carbonation.EthanolVapourPressure(units.Celsius.Of(20))
	fmt.Println(p.Text(units.Kilopascal, 2), err)
	// Output:
	// 5.87 kPa absolute <nil>
}

// 32 °F and 10 psi: the chart prints 2.70 volumes. The European form and EU law's relation
// for wine go by name too.
func ExampleMethod() {
	beer, _ := carbonation.DrinkOf(units.PercentVolume.Of(5.3), units.DegreePlato.Of(5.8))
	p, _ := units.Atmosphere{}.Absolute(units.PSIGauge.Of(10))
	c, err := carbonation.BeerChart.Content(beer, p, units.Fahrenheit.Of(32))
	fmt.Println(carbonation.RealVolume.Volumes(c).Text(units.VolumesCO2, 2), err)
	p, err = carbonation.BeerChart.Pressure(beer, c, units.Fahrenheit.Of(38))
	fmt.Println(units.Atmosphere{}.Gauge(p).Text(units.PSIGauge, 1), err)
	c, err = carbonation.EuropeanBeer.Content(beer, units.Bar.Of(2.013), units.Celsius.Of(5))
	fmt.Println(c.Text(units.GramCO2PerLitre, 2), err)
	c, err = carbonation.EUWine.Content(beer, units.Bar.Of(4.5), units.Celsius.Of(20))
	fmt.Println(c.Text(units.GramCO2PerLitre, 2), err)
	text, err := carbonation.EUWine.MarshalText()
	fmt.Println(string(text), err)
	var m carbonation.Method
	err = m.UnmarshalText([]byte("printed beer chart"))
	fmt.Println(m, err)
	// Output:
	// 2.69 vol CO2 <nil>
	// 13.2 psi gauge <nil>
	// 5.33 g/L CO2 <nil>
	// 6.49 g/L CO2 <nil>
	// EU/OIV wine relation <nil>
	// printed beer chart <nil>
}
