package units_test

import (
	"encoding/json"
	"errors"
	"flag"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/units"
)

// reads reports a text that is not read as want base units.
func reads[Q interface{ units.Quantity[D, E] }, D, E units.Dimension](t *testing.T, base units.Unit[D, E], rows map[string]float64) {
	t.Helper()
	for text, want := range rows {
		q, err := units.Parse[Q](text)
		if got := units.Quantity[D, E](q).In(base); err != nil || math.Abs(got-want) > 1e-14*math.Abs(want) {
			t.Errorf("%q: %.17g, %v; want %.17g", text, got, err, want)
		}
	}
}

// refuses reports a text that is read, or refused in other words.
func refuses[Q interface{ units.Quantity[D, E] }, D, E units.Dimension](t *testing.T, rows map[string]string) {
	t.Helper()
	for text, want := range rows {
		q, err := units.Parse[Q](text)
		_, isParse := errors.AsType[*units.ParseError](err)
		_, isRange := errors.AsType[*units.RangeError](err)
		if !isParse && !isRange || !strings.Contains(err.Error(), want) || units.Quantity[D, E](q) != (units.Quantity[D, E]{}) {
			t.Errorf("%q: %v, %v; want an error with %q", text, q, err, want)
		}
	}
}

func TestParse(t *testing.T) {
	reads[units.Mass](t, units.Kilogram, map[string]float64{
		"1.5kg": 1.5, "1.5 kg": 1.5, " 1,5 kg ": 1.5, "1500 g": 1.5, "3 lb 4 oz": 3.25 * 0.45359237, "3lb4oz": 3.25 * 0.45359237,
		"1g5mg": 0.001005, "3 pounds 4 ounces": 3.25 * 0.45359237, "0.5 kilos": 0.5,
		"1e3 g": 1, "1E-3kg": 0.001, "+2 kg": 2, ".5 kg": 0.5, "5. kg": 5, "1 kg 200 g": 1.2, "1\u00a0kg": 1, "0 g": 0, "2 KG": 2,
		"7 Kilogram": 7, "7 GRAMS": 0.007, "0,250 kg": 0.25, "12,25 kg": 12.25, "1234,567 g": 1.234567,
	})
	reads[units.Volume](t, units.Litre, map[string]float64{
		"5 US gal": 5 * 3.785411784, "5 imp gal": 22.73045, "20 L": 20, "20 l": 20, "20 LTR": 20, "330 mL": 0.33, "1 US bbl": 117.347765304,
		"1 m³": 1000, "12 US fl oz": 12 * 0.0295735295625, "2 US gal 1 US qt": 2.25 * 3.785411784, "1 hl": 100, "20 liters": 20, "5 Us Gallons": 5 * 3.785411784,
	})
	reads[units.Temperature](t, units.Celsius, map[string]float64{"68 °F": 20, "68F": 20, "20 C": 20, "20 °C": 20, "293.15 K": 20,
		"-4 °F": -20, "−4 °F": -20, "- 4 °F": -20, "20 degrees Celsius": 20, "32 deg F": 0})
	reads[units.TemperatureDifference](t, units.KelvinDifference, map[string]float64{"5 K": 5, "9 F°": 5, "-9 Δ°F": -5})
	reads[units.GaugePressure](t, units.KilopascalGauge,
		map[string]float64{"12 psi": 12 * 6.894757293168361, "12 psig": 12 * 6.894757293168361, "1 bar": 100, "1 bar (gauge)": 100, "-20 kPa": -20})
	reads[units.AbsolutePressure](t, units.Kilopascal,
		map[string]float64{"1 atm": 101.325, "29 psia": 29 * 6.894757293168361, "1013.25 hPa": 101.325, "940 mbar": 94, "94 kPa abs": 94, "2 bar absolute": 200})
	reads[units.StrengthByVolume](t, units.PercentVolume, map[string]float64{"4.6 % vol": 4.6, "4.6 %vol": 4.6, "4.6% ABV": 4.6, "4.6 %abv": 4.6})
	reads[units.PercentagePoints](t, units.PercentagePoint, map[string]float64{"0.3 percentage points": 0.3, "-1 percentage point": -1})
	reads[units.StrengthByMass](t, units.PercentMass, map[string]float64{"3.6 % mass": 3.6, "3.6 %ABW": 3.6})
	reads[units.Extract](t, units.DegreePlato, map[string]float64{"12 °P": 12, "-2.2 °P": -2.2, "12 Brix": 12, "-65 °P": -65})
	reads[units.MassConcentration](t, units.MilligramPerLitre,
		map[string]float64{"50 mg/L": 50, "50 ppm": 50, "1 g/l": 1000, "1 lb/1000 US gal": 119.82642731689663})
	reads[units.CalciumCarbonate](t, units.MilligramPerLitreCaCO3, map[string]float64{"50 mg/L as CaCO3": 50, "-50 ppm as CaCO3": -50, "10 °fH": 100})
	reads[units.EquivalentConcentration](t, units.MilliequivalentPerLitre, map[string]float64{"2 mEq/L": 2, "-1 meq/L": -1})
	reads[units.CarbonDioxideVolumes](t, units.VolumesCO2, map[string]float64{"2.8 vol": 2.8, "2.8 volumes": 2.8})
	reads[units.Energy](t, units.Kilojoule, map[string]float64{"1 kcal": 4.184, "1 kWh": 3600})
	reads[units.Length](t, units.Metre, map[string]float64{"5 ft 3 in": 1.6002, "640 m": 640, "-6 ft 6 in": -1.9812, "2100 ft": 640.08})
	reads[units.Share](t, units.Percent, map[string]float64{"95 %": 95, "5 percent": 5})
	reads[units.PureNumber](t, units.One, map[string]float64{"1.048": 1.048, " -3 ": -3})
	reads[units.Cells](t, units.BillionCells, map[string]float64{"612.5 billion cells": 612.5})
	reads[units.PitchRate](t, units.MillionPerMillilitrePlato, map[string]float64{"0.75 million cells/mL/°P": 0.75})
	reads[units.DynamicViscosity](t, units.MillipascalSecond, map[string]float64{"1.002 mPa·s": 1.002, "2 cP": 2})
	reads[units.Speed](t, units.MetrePerSecond, map[string]float64{"0.5 m/s": 0.5})
	reads[units.Rate](t, units.PerHour, map[string]float64{"0.0125 per hour": 0.0125, "2/h": 2})
	reads[units.PasteurisationUnits](t, units.PU, map[string]float64{"15 PU": 15})
	reads[units.MolarMass](t, units.GramPerMole, map[string]float64{"44.009 g/mol": 44.009})
	reads[units.VolumeFlow](t, units.LitrePerMinute, map[string]float64{"2 L/min": 2, "60 L/h": 1})
}

func TestParseRefuses(t *testing.T) {
	refuses[units.Volume](t, map[string]string{
		"5 gal": "say US gal or imp gal", "5 Gallons": "say US gal or imp gal", "5 GAL": "say US gal or imp gal", "5 QT": "not one of its units",
		"1 qt": "say US qt", "1 pint": "say US pt", "12 fl oz": "say US fl oz", "3 oz": "an ounce is a mass", "1 bbl": "say US bbl",
		"1 cup": "cups differ", "5 kg": "not one of its units", "5": "no unit; write one of L, mL",
		"-1 L": "outside", "": "empty", "  ": "empty", "L": "does not start with a number", "1e40 L": "an exponent above 30", "1e20 L": "outside",
		"1,500 L": "decimal or a thousands mark", "1.5.2 L": "more than one decimal mark", "1,234,567 L": "more than one decimal mark",
		"1.234,5 L": "more than one decimal mark", "5, L": "a comma after the number", "1 L 2 hL": "units must become smaller",
		"1 L 1 L": "units must become smaller", "1 hL -5 L": "not one of its units", "NaN L": "does not start with a number",
		"Inf L": "does not start", "0x10 L": "not one of its units",
		strings.Repeat("1", 64) + " L": "longer than 64 bytes", "1 L\x00": "not one of its units", "1e": "\"e\" is not one of its units",
		"5 US gal 3": "no unit", "1e-400 L": "below -340", "1e31 L": "above 30",
	})
	refuses[units.Mass](t, map[string]string{"-3 kg": "outside", "1 t": "US and UK tons differ", "1 tsp": "weigh it", "3 lb -4 oz": "not one",
		"1 000 g": "a space inside the number", "3 lb 4": "no unit", "5 mL": "not one of its units", strings.Repeat("9", 40) + " kg": "outside"})
	refuses[units.Temperature](t, map[string]string{"20": "say °C or °F", "20°": "say °C or °F", "-300 °C": "outside -273.15 °C to",
		"-460 °F": "outside -459.67 °F to", "5 °C 3 K": "not one of its units"})
	refuses[units.TemperatureDifference](t, map[string]string{"5 °C": "20 °C is a temperature"})
	refuses[units.AbsolutePressure](t, map[string]string{"12 psig": "an atmosphere (barometer or altitude) stands between them",
		"1 bar g": "gauge pressure", "-1 hPa": "outside", "12 psi": "say absolute or gauge", "2 bar": "say absolute or gauge",
		"2 Bars": "say absolute or gauge", "83 kPa": "say absolute or gauge"})
	refuses[units.GaugePressure](t, map[string]string{"12 psia": "absolute pressure and gauge pressure is wanted", "12 bar absolute": "absolute"})
	refuses[units.StrengthByVolume](t, map[string]string{"5 %": "say % vol or % mass", "5 % mass": "strength by mass",
		"80 proof": "differs by country", "101 % vol": "outside 0 % vol to 100 % vol", "-1 % vol": "outside"})
	refuses[units.PercentagePoints](t, map[string]string{"0.3 % vol": "4.6 % vol is a strength", "0.3 %": "say percentage points",
		"3 points": "points of gravity"})
	refuses[units.StrengthByMass](t, map[string]string{"5 %": "say % mass or % vol", "5 % ABV": "strength by volume"})
	refuses[units.CalciumCarbonate](t, map[string]string{"50 mg/L": "as CaCO3", "50 ppm": "as CaCO3"})
	refuses[units.MassConcentration](t, map[string]string{"50 mg/L as CaCO3": "the mass of the ion itself", "2 mEq/L": "mg/L of the ion", "1 oz/gal": "oz/US gal"})
	refuses[units.Energy](t, map[string]string{"100 cal": "say kcal or kJ", "100 Calories": "say kcal or kJ"})
	refuses[units.CarbonDioxideVolumes](t, map[string]string{"5 g/L": "volumes are wanted"})
	refuses[units.CarbonDioxideContent](t, map[string]string{"2.5 vol": "package carbonation converts"})
	refuses[units.AnhydrousMass](t, map[string]string{"5 g": "crystal water"})
	refuses[units.Extract](t, map[string]string{"12 %": "say °P", "1.048 SG": "package gravity", "101 °P": "outside", "-71 °P": "outside"})
	refuses[units.Share](t, map[string]string{"0.5": "say %", "101 %": "outside"})
	refuses[units.MolarConcentration](t, map[string]string{"1 M": "say mol/L"})
	refuses[units.Density](t, map[string]string{"8 lb/gal": "say lb/US gal"})
	refuses[units.VolumeFlow](t, map[string]string{"2 gpm": "say US gal/min"})
	refuses[units.Cells](t, map[string]string{"600": "no unit", "600 million cells": "not one of its units", "-1 billion cells": "outside"})
	refuses[units.Power](t, map[string]string{"1 hp": "say W"})
}

// ParseError names the text, what was wanted and what to write.
func TestParseError(t *testing.T) {
	_, err := units.Parse[units.Volume]("5 gal")
	const want = `"5 gal" is not a volume: "gal": say US gal or imp gal: 3.785411784 L or 4.54609 L`
	if err == nil || err.Error() != want {
		t.Errorf("got  %v\nwant %s", err, want)
	}
	e, isParse := errors.AsType[*units.ParseError](err)
	if !isParse || e.Input != "5 gal" || e.Want != "volume" {
		t.Errorf("%+v", e)
	}
	_, err = units.Parse[units.Volume](strings.Repeat("x\xff", 500))
	if e, isParse = errors.AsType[*units.ParseError](err); !isParse || len(e.Input) > 70 {
		t.Errorf("%d bytes quoted", len(e.Input))
	}
}

// A unit's own Parse takes a bare number in that unit.
func TestUnitParse(t *testing.T) {
	for text, want := range map[string]float64{"68": 20, "68 °F": 20, "20 °C": 20} {
		if q, err := units.Fahrenheit.Parse(text); err != nil || q.In(units.Celsius) != want {
			t.Errorf("%q: %v %v", text, q, err)
		}
	}
	if q, err := units.Kilogram.Parse("5"); err != nil || q != units.Kilogram.Of(5) {
		t.Errorf("%v %v", q, err)
	}
	if _, err := units.Pound.Parse("3 lb 4"); err == nil {
		t.Error("the second number needs a unit")
	}
}

func TestUnitFind(t *testing.T) {
	for name, want := range map[string]string{"L": "L", "litres": "L", "Liters": "L", "US gal": "US gal", "us gallons": "US gal", "imp pt": "imp pt"} {
		u, err := units.Litre.Find(name)
		if err != nil || u.Symbol() != want {
			t.Errorf("%q: %v %v", name, u, err)
		}
	}
	for _, name := range []string{"gal", "kg", "", "ML5", strings.Repeat("x", 500)} {
		u, err := units.Litre.Find(name)
		if _, isParse := errors.AsType[*units.ParseError](err); !isParse || u.Symbol() != "L" || len(err.Error()) > 500 { // the zero unit is the base unit
			t.Errorf("%q: %v %v", name, u, err)
		}
	}
}

// Text reads back as the same bits, in JSON and flags too.
func TestTextRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		x := rapid.OneOf(rapid.Float64Range(0, 1e15), rapid.Float64Range(0, 1), rapid.Float64Range(0, 100)).Draw(t, "base units")
		same(t, units.Kilogram, x)
		same(t, units.Litre, x)
		same(t, units.Celsius, x)
		same(t, units.Celsius, -273.15*min(x, 1))
		same(t, units.KelvinDifference, -x)
		same(t, units.Kilopascal, x)
		same(t, units.KilopascalGauge, -x)
		same(t, units.PercentVolume, min(x, 100))
		same(t, units.PercentMass, min(x, 100))
		same(t, units.DegreePlato, -min(x, 70))
		same(t, units.MilligramPerLitre, x)
		same(t, units.MilliequivalentPerLitre, -x)
		same(t, units.MilligramPerLitreCaCO3, -x)
		same(t, units.MillimolePerLitre, x)
		same(t, units.VolumesCO2, x)
		same(t, units.GramCO2PerLitre, x)
		same(t, units.Kilojoule, -x)
		same(t, units.Watt, x)
		same(t, units.Metre, -x)
		same(t, units.Mole, x)
		same(t, units.MicrosiemensPerCentimetre, x)
		same(t, units.LitrePerMinute, x)
		same(t, units.Percent, min(x, 100))
		same(t, units.One, -x)
		same(t, units.KilogramAnhydrous, x)
		same(t, units.KilogramPerCubicMetre, x)
	})
}

func same[D, E units.Dimension](t *rapid.T, base units.Unit[D, E], x float64) {
	q, err := base.Try(x)
	if err != nil {
		t.Fatalf("%v %s: %v", x, base, err)
	}
	if q.In(base) != x {
		t.Fatalf("%v %s is %v", x, base, q.In(base))
	}
	back, err := units.Parse[units.Quantity[D, E]](q.String())
	if err != nil || back != q {
		t.Fatalf("%q comes back as %v: %v", q, back, err)
	}
	b, err := json.Marshal(q)
	var j units.Quantity[D, E]
	if err != nil || json.Unmarshal(b, &j) != nil || j != q {
		t.Fatalf("%s comes back as %v: %v", b, j, err)
	}
	if a, err := q.AppendText([]byte("x")); err != nil || string(a) != "x"+q.String() {
		t.Fatalf("%s", a)
	}
}

// A quantity is a flag by itself.
func TestFlag(t *testing.T) {
	var v units.Volume
	f := flag.NewFlagSet("", flag.ContinueOnError)
	f.SetOutput(&strings.Builder{})
	f.TextVar(&v, "volume", units.Litre.Of(20), "")
	if err := f.Parse([]string{"-volume", "5 US gal"}); err != nil || v != units.USGallon.Of(5) {
		t.Errorf("%v %v", v, err)
	}
	if err := f.Parse([]string{"-volume", "5 gal"}); err == nil || !strings.Contains(err.Error(), "US gal") {
		t.Errorf("%v", err)
	}
	if v != units.USGallon.Of(5) {
		t.Errorf("an error changed it to %v", v)
	}
}
