package units_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// A record as a service would store it.
type record struct {
	Mass     units.Mass
	Air      units.Atmosphere
	Strength units.MeasuredStrength
	Warm     units.MeasuredTemperature
	Weighed  units.ExactMass
	How      units.Rounding
}

func TestValuesTravel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		draw := func(name string, low, high float64) checked.Number {
			return checked.Number(rapid.Float64Range(low, high).Draw(t, name))
		}
		wide := func(low, high float64) float64 { return rapid.Float64Range(low, high).Draw(t, "u") }
		was := record{
			Mass: units.Gram.Of(draw("g", 0, 1e6)),
			Air:  must[units.Atmosphere](t)(units.Barometer(units.Kilopascal.Of(draw("kPa", 20, 110)))),
			Strength: must[units.MeasuredStrength](t)(units.Measure(units.PercentVolume.Of(draw("% vol", 0, 100)),
				must[units.PercentagePoints](t)(units.PercentagePoint.Try(wide(0, 3))))),
			Warm: must[units.MeasuredTemperature](t)(units.Measure(units.Fahrenheit.Of(draw("°F", -100, 250)),
				must[units.TemperatureDifference](t)(units.KelvinDifference.Try(wide(0, 3))))),
			Weighed: must[units.ExactMass](t)(units.ParseExact[units.Mass](fmt.Sprintf("%.1f g", wide(0, 1e4)))),
			How:     rapid.SampledFrom([]units.Rounding{units.Nearest, units.Up, units.Down}).Draw(t, "how"),
		}
		text, err := json.Marshal(was)
		if err != nil {
			t.Fatal(err)
		}
		var is record
		if err := json.Unmarshal(text, &is); err != nil {
			t.Fatalf("%s: %v", text, err)
		}
		if !is.Weighed.Decimal().Equal(was.Weighed.Decimal()) || is.Weighed.Unit() != was.Weighed.Unit() {
			t.Fatalf("%s comes back as %v", text, is.Weighed)
		}
		is.Weighed = was.Weighed // the same number, its digits stored otherwise
		if is != was {
			t.Fatalf("%s comes back as %+v", text, is)
		}
	})
}

func TestMeasuredString(t *testing.T) {
	m := must[units.MeasuredMass](t)(units.Measure(units.Kilogram.Of(4.2), units.Kilogram.Of(0.0123456)))
	if got := m.String(); got != "4.2 ± 0.0247 kg (k = 2)" {
		t.Error(got)
	}
}

func TestAtmosphereText(t *testing.T) {
	var air units.Atmosphere
	if text, err := json.Marshal(air); string(text) != `"101.325 kPa absolute"` || err != nil {
		t.Errorf("%s %v", text, err)
	}
	if err := air.UnmarshalText([]byte("940 mbar")); err != nil || math.Abs(air.Pressure().In(units.Kilopascal)-94) > 1e-12 {
		t.Error(air, err)
	}
	was := air
	for text, want := range map[string]string{"12 psi gauge": "pressure", "5 kPa absolute": "barometer", "": "empty"} {
		if err := air.UnmarshalText([]byte(text)); err == nil || !strings.Contains(err.Error(), want) || air != was {
			t.Errorf("%q: %v", text, err)
		}
	}
}

func TestMeasuredText(t *testing.T) {
	for _, r := range []struct {
		text     string
		value, u float64
	}{
		{"4.6 ± 0.3 % vol (k = 2)", 4.6, 0.15},
		{"4.6±0.3% vol(k=1)", 4.6, 0.3},
		{" 4,6 ± 0,3 % vol (k = 3) ", 4.6, 0.1},
		{"4.6 ± 0 % vol (k = 2)", 4.6, 0},
	} {
		var m units.MeasuredStrength
		if err := m.UnmarshalText([]byte(r.text)); err != nil || m.Value().In(units.PercentVolume) != r.value ||
			math.Abs(m.Uncertainty().In(units.PercentagePoint)-r.u) > 1e-15 {
			t.Errorf("%q: %v %v", r.text, m, err)
		}
	}
	var warm units.MeasuredTemperature
	if err := warm.UnmarshalText([]byte("68 ± 1.8 °F (k = 2)")); err != nil || warm.Value() != units.Celsius.Of(20) ||
		math.Abs(warm.Uncertainty().In(units.KelvinDifference)-0.5) > 1e-15 {
		t.Error(warm, err)
	}
	if err := warm.UnmarshalText([]byte("20 ± 0.5" + strings.Repeat("0", 107) + " °C (k = 1)")); err != nil { // 128 bytes
		t.Error(err)
	}
	was := warm
	for _, text := range []string{
		"20 ± 0.5" + strings.Repeat("0", 108) + " °C (k = 1)",
		"", "20 °C", "20 ± 1 °C", "20 ± °C (k = 2)", "20 ± 1 kg (k = 2)", "20 ± 1 °C (k = 0)", "20 ± 1 °C (k = 11)",
		"20 ± 1 °C (k = NaN)", "20 ± 1 °C (k = x)",
		"20 ± -1 °C (k = 2)", "-300 ± 1 °C (k = 2)", "x ± 1 °C (k = 2)", "20 ± 1 °C (k = 2", "20 ± 1e29 °C (k = 2)",
		strings.Repeat("2", 130) + " ± 1 °C (k = 2)",
	} {
		err := warm.UnmarshalText([]byte(text))
		_, range_ := errors.AsType[*units.RangeError](err)
		_, parse := errors.AsType[*units.ParseError](err)
		if !range_ && !parse || warm != was {
			t.Errorf("%q: %v, %v", text, warm, err)
		}
	}
}

// What could not be read back is not written.
func TestNothingUnreadableIsWritten(t *testing.T) {
	minus := units.Kilogram.Of(1).Minus(units.Kilogram.Of(2))
	if minus.String() != "-1 kg" {
		t.Error(minus)
	}
	_, err := json.Marshal(minus)
	isRange(t, errors.Unwrap(err), "mass", 0, 1e15)
	exact := must[units.ExactMass](t)(minus.Round(must[units.ExactMass](t)(units.ParseExact[units.Mass]("0.1 g")), units.Nearest))
	_, err = exact.MarshalText()
	isRange(t, err, "mass", 0, 1e18)
	_, err = must[units.MeasuredMass](t)(units.Measure(minus, units.Gram.Of(1))).MarshalText()
	isRange(t, err, "mass", 0, 1e15)
	if text, err := units.Celsius.Of(2).Minus(units.Celsius.Of(5)).MarshalText(); string(text) != "-3 K" || err != nil {
		t.Errorf("%s %v", text, err)
	}
}

func TestRoundingText(t *testing.T) {
	var r units.Rounding
	if err := r.UnmarshalText([]byte("sideways")); err == nil ||
		err.Error() != `units.Rounding.UnmarshalText: unknown rounding "sideways"; one of nearest, up, down` {
		t.Error(err)
	}
	for _, r := range []units.Rounding{-1, 3} {
		_, err := r.MarshalText()
		if _, ok := errors.AsType[*units.NameError](err); !ok {
			t.Error(err)
		}
		_, err = units.Gram.Of(1).Round(must[units.ExactMass](t)(units.ParseExact[units.Mass]("1 g")), r)
		if e, ok := errors.AsType[*units.NameError](err); !ok || e.Func != "units.Quantity.Round" {
			t.Error(err)
		}
		if r.String() != "unknown" {
			t.Error(r)
		}
	}
}

func TestUnitText(t *testing.T) {
	u := units.Kilogram
	if err := u.UnmarshalText([]byte("lb")); err != nil || u != units.Pound {
		t.Error(u, err)
	}
	if err := u.UnmarshalText([]byte("stone")); err == nil || u != units.Pound {
		t.Error(u, err)
	}
}

// The zero Exact is 0 of the base unit, whatever way the unit was named.
func TestZeroExact(t *testing.T) {
	sum, err := units.ExactMass{}.Plus(must[units.ExactMass](t)(units.ParseExact[units.Mass]("2.5 kg")))
	if err != nil || sum.String() != "2.5 kg" {
		t.Error(sum, err)
	}
}

func ExampleQuantity_Format() {
	sugar := units.Kilogram.Of(4.25)
	fmt.Printf("%v, %.1f, %8.3f\n", sugar, sugar, sugar)
	fmt.Printf("%s %d\n", units.Celsius.Of(20), sugar)
	// Output:
	// 4.25 kg, 4.2 kg,    4.250 kg
	// 20 °C %!d(4.25 kg)
}

func ExampleMeasured_MarshalText() {
	strength, err := units.Measure(units.PercentVolume.Of(4.6), units.PercentagePoint.Of(0.15))
	if err != nil {
		fmt.Println(err)
		return
	}
	text, err := json.Marshal(strength)
	fmt.Println(string(text), err)
	// Output: "4.6 ± 0.3 % vol (k = 2)" <nil>
}

func ExampleMeasured_Format() {
	m, err := units.Measure(units.PercentVolume.Of(4.63), units.PercentagePoint.Of(0.149))
	fmt.Printf("%.1f; %v %v\n", m, m, err)
	// Output: 4.6 ± 0.3 % vol (k = 2); 4.63 ± 0.298 % vol (k = 2) <nil>
}

func ExampleExact_Format() {
	x, err := units.ParseExact[units.Mass]("12.40 g")
	fmt.Printf("%v; %.1f %v\n", x, x, err)
	// Output: 12.4 g; 12.4 g <nil>
}
