package units_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"

	"github.com/shopspring/decimal"

	"example.org/zymase/units"
)

func Example() {
	sugar := units.Kilogram.Of(4.2)
	total := sugar.Plus(units.Gram.Of(300))
	fmt.Println(total, total.Text(units.Pound, 2))
	_, err := units.Parse[units.Volume]("5 gal")
	fmt.Println(err)
	// Output:
	// 4.5 kg 9.92 lb
	// "5 gal" is not a volume: "gal": say US gal or imp gal: 3.785411784 L or 4.54609 L
}

func ExampleQuantity_In() {
	fmt.Println(units.USGallon.Of(5).In(units.Litre))
	// Output: 18.92705892
}

func ExampleQuantity_Plus() {
	fmt.Println(units.Celsius.Of(18).Plus(units.KelvinDifference.Of(2)))
	// Output: 20 °C
}

func ExampleQuantity_Minus() {
	fmt.Println(units.Celsius.Of(20).Minus(units.Celsius.Of(12.5)))
	// Output: 7.5 K
}

func ExampleQuantity_Compare() {
	fmt.Println(units.USGallon.Of(5).Compare(units.ImperialGallon.Of(5)))
	// Output: -1
}

func ExampleQuantity_IsZero() {
	fmt.Println(units.Mass{}.IsZero(), units.Celsius.Of(20).IsZero())
	// Output: true false
}

func ExampleQuantity_Text() {
	fmt.Println(units.Celsius.Of(20).Text(units.Fahrenheit, 1))
	// Output: 68.0 °F
}

func ExampleQuantity_String() {
	fmt.Println(units.PSIGauge.Of(12), units.PercentVolume.Of(4.6))
	// Output: 82.73708751802033 kPa gauge 4.6 % vol
}

func ExampleQuantity_AppendText() {
	b, _ := units.Litre.Of(20).AppendText([]byte("fermenter "))
	fmt.Println(string(b))
	// Output: fermenter 20 L
}

func ExampleQuantity_MarshalText() {
	b, _ := json.Marshal(map[string]units.Volume{"batch": units.Litre.Of(60)})
	fmt.Println(string(b))
	// Output: {"batch":"60 L"}
}

func ExampleQuantity_UnmarshalText() {
	var request struct{ Batch units.Volume }
	err := json.Unmarshal([]byte(`{"Batch": "16 US gal"}`), &request)
	fmt.Println(request.Batch.Text(units.Litre, 2), err)
	// Output: 60.57 L <nil>
}

func ExampleQuantity_Round() {
	step, _ := units.ParseExact[units.Mass]("0.1 g")
	dose, _ := units.Gram.Of(12.3456).Round(step, units.Nearest)
	buy, _ := units.Gram.Of(12.3456).Round(step, units.Up)
	fmt.Println(dose, buy)
	// Output: 12.3 g 12.4 g
}

func ExampleUnit_Of() {
	fmt.Println(units.Pound.Of(3))
	// Output: 1.36077711 kg
}

func ExampleUnit_Try() {
	_, err := units.Kilogram.Try(-3)
	fmt.Println(err)
	// Output: units.Unit.Try: mass -3 kg outside 0 kg to 1e+15 kg (what the quantity can be)
}

func ExampleUnit_Parse() {
	q, err := units.Fahrenheit.Parse("68") // a bare number is in the unit
	fmt.Println(q, err)
	// Output: 20 °C <nil>
}

func ExampleUnit_Find() {
	u, err := units.Litre.Find("US gallons")
	fmt.Println(u, err)
	// Output: US gal <nil>
}

func ExampleUnit_Symbol() {
	fmt.Println(units.USFluidOunce.Symbol(), units.MilligramPerLitreCaCO3.Symbol())
	// Output: US fl oz mg/L as CaCO3
}

func ExampleUnit_String() {
	fmt.Println(units.BarGauge)
	// Output: bar gauge
}

func ExampleUnit_Exact() {
	x, err := units.Gram.Exact(decimal.RequireFromString("12.50"))
	fmt.Println(x.Text(2), err)
	// Output: 12.50 g <nil>
}

func ExampleParse() {
	for _, text := range []string{"3 lb 4 oz", "1,5 kg", "1,500 kg"} {
		m, err := units.Parse[units.Mass](text)
		fmt.Println(m.Text(units.Gram, 0), err)
	}
	// Output:
	// 1474 g <nil>
	// 1500 g <nil>
	// 0 g "1,500 kg" is not a mass: the comma can be a decimal or a thousands mark; write a point or leave it out
}

func ExampleParseError() {
	_, err := units.Parse[units.StrengthByVolume]("5 %")
	if e, ok := errors.AsType[*units.ParseError](err); ok {
		fmt.Println(e.Want, "|", e.Reason)
	}
	// Output: strength by volume | "%": say % vol or % mass
}

func ExampleRangeError() {
	_, err := units.AtAltitude(units.Metre.Of(12_000))
	if e, ok := errors.AsType[*units.RangeError](err); ok {
		fmt.Println(e.Quantity, e.Value, e.Unit, "of", e.Min, "to", e.Max)
	}
	// Output: altitude 12000 m of -500 to 11000
}

func ExampleTimes() {
	fmt.Println(units.Times(units.Gram.Of(5), 40))
	// Output: 0.2 kg
}

func ExampleTryTimes() {
	bottles := 40.0
	m, err := units.TryTimes(units.Gram.Of(5), bottles)
	fmt.Println(m, err)
	_, err = units.TryTimes(m, math.Inf(1))
	fmt.Println(err)
	// Output:
	// 0.2 kg <nil>
	// units.TryTimes: mass +Inf kg outside -1e+15 kg to 1e+15 kg (what the quantity can be)
}

func ExampleRatio() {
	n, err := units.Ratio(units.Litre.Of(20), units.Millilitre.Of(330))
	fmt.Printf("%.1f bottles %v\n", n, err)
	// Output: 60.6 bottles <nil>
}

func ExampleParseDuration() {
	d, err := units.ParseDuration("2 d 12 h")
	fmt.Println(d, err)
	// Output: 60h0m0s <nil>
}

func ExampleParseExact() {
	x, err := units.ParseExact[units.Mass]("4.20 kg")
	fmt.Println(x, err)
	// Output: 4.2 kg <nil>
}

func ExampleExact() {
	a, _ := units.ParseExact[units.Mass]("0.1 g")
	b, _ := units.ParseExact[units.Mass]("0.2 g")
	sum, _ := a.Plus(b)
	fmt.Println(sum) // no 0.30000000000000004
	// Output: 0.3 g
}

func ExampleExact_Plus() {
	a, _ := units.ParseExact[units.Mass]("0.1 g")
	b, _ := units.ParseExact[units.Mass]("2 oz")
	_, err := a.Plus(b)
	fmt.Println(err)
	// Output: "2 oz" is not a mass: the unit is not g
}

func ExampleExact_Split() {
	whole, _ := units.ParseExact[units.Mass]("10.0 g")
	step, _ := units.ParseExact[units.Mass]("0.1 g")
	parts, err := whole.Split(3, step)
	fmt.Println(parts, err)
	// Output: [3.4 g 3.3 g 3.3 g] <nil>
}

func ExampleExact_Decimal() {
	x, _ := units.ParseExact[units.Volume]("2.50 L")
	fmt.Println(x.Decimal().Mul(decimal.NewFromInt(3)), x.Unit())
	// Output: 7.5 L
}

func ExampleExact_Unit() {
	x, _ := units.ParseExact[units.Volume]("12 US fl oz")
	fmt.Println(x.Unit())
	// Output: US fl oz
}

func ExampleExact_Quantity() {
	x, _ := units.ParseExact[units.Mass]("16 oz")
	fmt.Println(x.Quantity())
	// Output: 0.45359237 kg
}

func ExampleExact_Text() {
	x, _ := units.ParseExact[units.Mass]("4.2 kg")
	fmt.Println(x.Text(3))
	// Output: 4.200 kg
}

func ExampleExact_String() {
	x, _ := units.ParseExact[units.Mass]("1e3 g")
	fmt.Println(x.String())
	// Output: 1000 g
}

func ExampleExact_MarshalText() {
	x, _ := units.ParseExact[units.Mass]("0.10 g")
	b, err := x.MarshalText()
	fmt.Println(string(b), err)
	// Output: 0.1 g <nil>
}

func ExampleExact_UnmarshalText() {
	var x units.ExactVolume
	err := x.UnmarshalText([]byte("330 mL"))
	fmt.Println(x, err)
	// Output: 330 mL <nil>
}

func ExampleAtAltitude() {
	air, err := units.AtAltitude(units.Metre.Of(640))
	fmt.Println(air.Pressure().Text(units.Millibar, 1), err)
	// Output: 938.7 mbar absolute <nil>
}

func ExampleBarometer() {
	air, err := units.Barometer(units.Millibar.Of(938.7))
	fmt.Println(air.Gauge(units.Bar.Of(2)).Text(units.BarGauge, 3), err)
	// Output: 1.061 bar gauge <nil>
}

func ExampleAtmosphere() {
	var sea units.Atmosphere
	fmt.Println(sea.Pressure())
	// Output: 101.325 kPa absolute
}

func ExampleAtmosphere_Pressure() {
	var sea units.Atmosphere
	fmt.Println(sea.Pressure().Text(units.PSI, 3))
	// Output: 14.696 psi absolute
}

func ExampleAtmosphere_Gauge() {
	hall, _ := units.AtAltitude(units.Metre.Of(640))
	p := units.Kilopascal.Of(200)
	fmt.Println(hall.Gauge(p).Text(units.KilopascalGauge, 1), units.Atmosphere{}.Gauge(p).Text(units.KilopascalGauge, 1))
	// Output: 106.1 kPa gauge 98.7 kPa gauge
}

func ExampleAtmosphere_Absolute() {
	p, err := units.Atmosphere{}.Absolute(units.PSIGauge.Of(12))
	fmt.Println(p.Text(units.PSI, 2), err)
	// Output: 26.70 psi absolute <nil>
}

func ExampleMass() {
	fmt.Println(units.Ounce.Of(12).Text(units.Gram, 1))
	// Output: 340.2 g
}

func ExampleAnhydrousMass() {
	fmt.Println(units.GramAnhydrous.Of(7.5))
	// Output: 0.0075 kg anhydrous
}

func ExampleTemperature() {
	fmt.Println(units.Fahrenheit.Of(68).Text(units.Kelvin, 2))
	// Output: 293.15 K
}

func ExampleGaugePressure() {
	p, err := units.Parse[units.GaugePressure]("12 psi")
	fmt.Println(p.Text(units.BarGauge, 3), err)
	// Output: 0.827 bar gauge <nil>
}

func ExampleCalciumCarbonate() {
	_, err := units.Parse[units.CalciumCarbonate]("50 mg/L")
	fmt.Println(err)
	// Output: "50 mg/L" is not a concentration as CaCO3: "mg/L": say "mg/L as CaCO3": alkalinity and hardness are also reported as HCO3 or Ca
}

func ExampleParseError_Error() {
	e := units.ParseError{Input: "5 gal", Want: "volume", Reason: "say US gal or imp gal"}
	fmt.Println(e.Error())
	// Output: "5 gal" is not a volume: say US gal or imp gal
}

func ExampleRangeError_Error() {
	e := units.RangeError{Func: "gravity.WaterDensity", Quantity: "temperature", Value: 101, Unit: "°C", Max: 100, Source: "Bettin & Spieweck 1990"}
	fmt.Println(e.Error())
	// Output: gravity.WaterDensity: temperature 101 °C outside 0 °C to 100 °C (Bettin & Spieweck 1990)
}
