package units_test

import (
	"math"
	"math/big"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/units"
)

// Factors as exact fractions or decimals. Source of each: NIST Special Publication
// 811 (2008) appendix B (inch 2.54 cm, pound 453.59237 g, pound-force, calorie,
// atmosphere), NIST Handbook 44 (2024) appendix C (gallons, barrel, fluid ounces),
// or the definition of the metric prefix.
func TestFactors(t *testing.T) {
	factor(t, units.Kilogram, units.Kilogram, "1")
	factor(t, units.Gram, units.Kilogram, "0.001")
	factor(t, units.Milligram, units.Kilogram, "0.000001")
	factor(t, units.Pound, units.Kilogram, "0.45359237")
	factor(t, units.Ounce, units.Kilogram, "0.028349523125")
	factor(t, units.Litre, units.Litre, "1")
	factor(t, units.Millilitre, units.Litre, "0.001")
	factor(t, units.Hectolitre, units.Litre, "100")
	factor(t, units.CubicMetre, units.Litre, "1000")
	factor(t, units.USGallon, units.Litre, "3.785411784")
	factor(t, check.Must(units.Litre.Find("US qt")), units.Litre, "0.946352946")
	factor(t, check.Must(units.Litre.Find("US pt")), units.Litre, "0.473176473")
	factor(t, units.USFluidOunce, units.Litre, "0.0295735295625")
	factor(t, units.USBarrel, units.Litre, "117.347765304")
	factor(t, units.ImperialGallon, units.Litre, "4.54609")
	factor(t, check.Must(units.Litre.Find("imp qt")), units.Litre, "1.1365225")
	factor(t, check.Must(units.Litre.Find("imp pt")), units.Litre, "0.56826125")
	factor(t, check.Must(units.Litre.Find("imp fl oz")), units.Litre, "0.0284130625")
	factor(t, units.Kilopascal, units.Kilopascal, "1")
	factor(t, units.Bar, units.Kilopascal, "100")
	factor(t, units.PSI, units.Kilopascal, "8896443230521/1290320000000")
	factor(t, units.StandardAtmosphere, units.Kilopascal, "101.325")
	factor(t, units.Millibar, units.Kilopascal, "0.1")
	factor(t, units.KilopascalGauge, units.KilopascalGauge, "1")
	factor(t, units.BarGauge, units.KilopascalGauge, "100")
	factor(t, units.PSIGauge, units.KilopascalGauge, "8896443230521/1290320000000")
	factor(t, check.Must(units.KilopascalGauge.Find("atm gauge")), units.KilopascalGauge, "101.325")
	factor(t, check.Must(units.KilopascalGauge.Find("mbar gauge")), units.KilopascalGauge, "0.1")
	factor(t, units.Kilojoule, units.Kilojoule, "1")
	factor(t, check.Must(units.Kilojoule.Find("J")), units.Kilojoule, "0.001")
	factor(t, check.Must(units.Kilojoule.Find("MJ")), units.Kilojoule, "1000")
	factor(t, units.Kilocalorie, units.Kilojoule, "4.184")
	factor(t, check.Must(units.Kilojoule.Find("kWh")), units.Kilojoule, "3600")
	factor(t, units.Watt, units.Watt, "1")
	factor(t, check.Must(units.Watt.Find("kW")), units.Watt, "1000")
	factor(t, units.Metre, units.Metre, "1")
	factor(t, units.Millimetre, units.Metre, "0.001")
	factor(t, check.Must(units.Metre.Find("cm")), units.Metre, "0.01")
	factor(t, check.Must(units.Metre.Find("km")), units.Metre, "1000")
	factor(t, units.Inch, units.Metre, "0.0254")
	factor(t, check.Must(units.Metre.Find("ft")), units.Metre, "0.3048")
	factor(t, units.Mole, units.Mole, "1")
	factor(t, units.Millimole, units.Mole, "0.001")
	factor(t, units.KilogramPerCubicMetre, units.KilogramPerCubicMetre, "1")
	factor(t, units.GramPerMillilitre, units.KilogramPerCubicMetre, "1000")
	factor(t, units.PoundPerUSGallon, units.KilogramPerCubicMetre, "453592370000/3785411784")
	factor(t, units.MilligramPerLitre, units.MilligramPerLitre, "1")
	factor(t, units.GramPerLitre, units.MilligramPerLitre, "1000")
	factor(t, units.GramPerHectolitre, units.MilligramPerLitre, "10")
	factor(t, check.Must(units.MilligramPerLitre.Find("µg/L")), units.MilligramPerLitre, "0.001")
	factor(t, check.Must(units.MilligramPerLitre.Find("oz/US gal")), units.MilligramPerLitre, "28349523.125/3785.411784")
	factor(t, units.PoundPerThousandUSGallons, units.MilligramPerLitre, "453592.370/3785.411784")
	factor(t, units.MilligramPerLitreCaCO3, units.MilligramPerLitreCaCO3, "1")
	factor(t, units.GermanDegree, units.MilligramPerLitreCaCO3, "1000.860/56.077")
	factor(t, units.FrenchDegree, units.MilligramPerLitreCaCO3, "10")
	factor(t, units.EnglishDegree, units.MilligramPerLitreCaCO3, "64798.91/4546.09")
	factor(t, check.Must(units.MilligramPerLitreCaCO3.Find("gr/US gal")), units.MilligramPerLitreCaCO3, "64798.91/3785.411784")
	factor(t, units.MillimolePerLitre, units.MillimolePerLitre, "1")
	factor(t, units.MolePerLitre, units.MillimolePerLitre, "1000")
	factor(t, units.MicrosiemensPerCentimetre, units.MicrosiemensPerCentimetre, "1")
	factor(t, check.Must(units.MicrosiemensPerCentimetre.Find("mS/cm")), units.MicrosiemensPerCentimetre, "1000")
	factor(t, check.Must(units.MicrosiemensPerCentimetre.Find("mS/m")), units.MicrosiemensPerCentimetre, "10")
	factor(t, units.LitrePerMinute, units.LitrePerMinute, "1")
	factor(t, units.LitrePerHour, units.LitrePerMinute, "1/60")
	factor(t, check.Must(units.LitrePerMinute.Find("US gal/h")), units.LitrePerMinute, "3.785411784/60")
	factor(t, units.CubicMetrePerHour, units.LitrePerMinute, "1000/60")
	factor(t, check.Must(units.LitrePerMinute.Find("US gal/min")), units.LitrePerMinute, "3.785411784")
	factor(t, units.KilogramAnhydrous, units.KilogramAnhydrous, "1")
	factor(t, units.GramAnhydrous, units.KilogramAnhydrous, "0.001")
	factor(t, units.GramCO2PerLitre, units.GramCO2PerLitre, "1")
	factor(t, check.Must(units.GramCO2PerLitre.Find("g/100 mL CO2")), units.GramCO2PerLitre, "10")
	factor(t, units.KelvinDifference, units.KelvinDifference, "1")
	factor(t, units.FahrenheitDifference, units.KelvinDifference, "5/9")
	factor(t, units.Percent, units.Percent, "1")
	factor(t, units.Fraction, units.Percent, "100")
	factor(t, units.PercentVolume, units.PercentVolume, "1")
	factor(t, units.PercentMass, units.PercentMass, "1")
	factor(t, units.DegreePlato, units.DegreePlato, "1")
	factor(t, units.MilliequivalentPerLitre, units.MilliequivalentPerLitre, "1")
	factor(t, units.VolumesCO2, units.VolumesCO2, "1")
	factor(t, units.One, units.One, "1")
	factor(t, units.BillionCells, units.BillionCells, "1")
	factor(t, units.MillionPerMillilitrePlato, units.MillionPerMillilitrePlato, "1")
	factor(t, units.MillipascalSecond, check.Must(units.MillipascalSecond.Find("cP")), "1")
	factor(t, units.MetrePerSecond, units.MetrePerSecond, "1")
	factor(t, units.PerHour, units.PerHour, "1")
	factor(t, units.PU, units.PU, "1")
	factor(t, units.GramPerMole, units.GramPerMole, "1")
}

func factor[D, E units.Dimension](t *testing.T, u, base units.Unit[D, E], exact string) {
	t.Helper()
	r, good := new(big.Rat).SetString(exact)
	if !good {
		// a fraction of two decimals
		a, b, _ := strings.Cut(exact, "/")
		x, _ := new(big.Rat).SetString(a)
		y, _ := new(big.Rat).SetString(b)
		r = x.Quo(x, y)
	}
	want, _ := r.Float64()
	back, _ := new(big.Rat).Inv(r).Float64()
	if got := u.Of(1).In(base); math.Abs(got-want) > 1.2e-16*want {
		t.Errorf("1 %s is %.17g %s, exactly %s = %.17g", u, got, base, exact, want)
	}
	if got := base.Of(1).In(u); math.Abs(got-back) > 1.2e-16*back {
		t.Errorf("1 %s is %.17g %s, exactly %.17g", base, got, u, back)
	}
	var zero units.Unit[D, E]
	if got := zero.Of(1); got != base.Of(1) || zero.Symbol() != base.Symbol() || zero.String() != base.String() {
		t.Errorf("the zero unit is %s, not %s", zero, base)
	}
}

// More printed figures: computed from the same definitions to 25 digits, and
// confirmed by a general unit program.
func TestFactorsPrinted(t *testing.T) {
	for _, c := range []struct {
		name      string
		got, want float64
	}{
		{"psi in Pa", 1000 * units.PSI.Of(1).In(units.Kilopascal), 6894.757293168361336722673},
		{"atm in psi", units.StandardAtmosphere.Of(1).In(units.PSI), 14.69594877551344872550347},
		{"bar in psi", units.Bar.Of(1).In(units.PSI), 14.5037737730209215154241},
		{"lb/US gal in g/L", units.PoundPerUSGallon.Of(1).In(units.KilogramPerCubicMetre), 119.8264273168966285439133},
		{"lb/1000 US gal in g/L", units.PoundPerThousandUSGallons.Of(1).In(units.GramPerLitre), 0.1198264273168966285439133},
		{"oz/US gal in g/L", check.Must(units.MilligramPerLitre.Find("oz/US gal")).Of(1).In(units.GramPerLitre), 7.489151707306039283994578},
		{"grain/US gal in mg/L", check.Must(units.MilligramPerLitreCaCO3.Find("gr/US gal")).Of(1).In(units.MilligramPerLitreCaCO3), 17.11806104527094693484475},
		{"grain/imp gal in mg/L", units.EnglishDegree.Of(1).In(units.MilligramPerLitreCaCO3), 14.25376752330024262608087},
		{"°dH in mg/L as CaCO3", units.GermanDegree.Of(1).In(units.MilligramPerLitreCaCO3), 17.848},
	} {
		tol := 2e-16
		if c.name == "°dH in mg/L as CaCO3" {
			tol = 1e-5 // printed to 5 digits, from the same atomic weights
		}
		if math.Abs(c.got/c.want-1) > tol {
			t.Errorf("%s: %.17g, printed %.17g", c.name, c.got, c.want)
		}
	}
}

// scales lists units of one dimension, whose tag has no name out here.
func scales[D, E units.Dimension](u ...units.Unit[D, E]) []units.Unit[D, E] { return u }

// NIST Special Publication 811 (2008) appendix B: the fixed points of the scales.
func TestTemperatureScales(t *testing.T) {
	for _, c := range [][3]float64{{0, 32, 273.15}, {100, 212, 373.15}, {-40, -40, 233.15}, {20, 68, 293.15}, {-273.15, -459.67, 0}, {37, 98.6, 310.15}} {
		q, err := units.Celsius.Try(c[0])
		if err != nil {
			t.Fatal(err)
		}
		for i, u := range scales(units.Celsius, units.Fahrenheit, units.Kelvin) {
			if got := q.In(u); math.Abs(got-c[i]) > 1e-13*math.Max(100, math.Abs(c[i])) {
				t.Errorf("%v °C is %.17g %s, not %v", c[0], got, u, c[i])
			}
			back, err := u.Try(c[i])
			if err != nil || math.Abs(back.In(units.Celsius)-c[0]) > 1e-13*500 {
				t.Errorf("%v %s is %v °C, not %v (%v)", c[i], u, back, c[0], err)
			}
		}
	}
	if d := units.Fahrenheit.Of(68).Minus(units.Fahrenheit.Of(50)); d.In(units.FahrenheitDifference) != 18 || d.In(units.KelvinDifference) != 10 {
		t.Errorf("a difference of 18 °F is %v", d)
	}
}
