package units_test

import (
	"errors"
	"math"
	"testing"
	"unsafe"

	"pgregory.net/rapid"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// isRange reports an error that is not a RangeError about this, with these limits.
func isRange(t interface {
	Helper()
	Errorf(string, ...any)
}, err error, quantity string, min, max float64) {
	t.Helper()
	e, ok := errors.AsType[*units.RangeError](err)
	if !ok || e.Quantity != quantity || e.Min != min || e.Max != max || e.Func == "" || e.Source == "" {
		t.Errorf("%+v (%v); want a RangeError about %s, %v to %v", e, err, quantity, min, max)
	}
}

func kg(v float64) units.Mass { return units.Kilogram.Of(checked.Number(v)) }

func TestQuantitySize(t *testing.T) {
	if n := unsafe.Sizeof(units.Mass{}); n != 8 {
		t.Errorf("%d bytes", n)
	}
}

func TestQuantityArithmetic(t *testing.T) {
	a, b := units.Kilogram.Of(4.2), units.Gram.Of(300)
	if a.Plus(b) != units.Kilogram.Of(4.5) || math.Abs(a.Minus(b).In(units.Kilogram)-3.9) > 1e-15 || a.Compare(b) != 1 || b.Compare(a) != -1 || a.Compare(a) != 0 {
		t.Error(a.Plus(b), a.Minus(b))
	}
	if math.Abs(b.Minus(a).In(units.Kilogram)+3.9) > 1e-15 {
		t.Error("a difference may be negative")
	}
	if !(units.Mass{}).IsZero() || a.IsZero() {
		t.Error("IsZero")
	}
	if got := units.Celsius.Of(20).Plus(units.FahrenheitDifference.Of(9)); got != units.Celsius.Of(25) {
		t.Error(got)
	}
	if twice := units.Times(a, 2); twice != units.Kilogram.Of(8.4) {
		t.Error(twice)
	}
	if most := units.Times(a, 1e300); most != units.Kilogram.Of(1e18) || units.Times(a, -1e300) != units.Kilogram.Of(-1e18) {
		t.Error(most)
	}
	if minus, err := units.TryTimes(a, -1); err != nil || minus.In(units.Kilogram) != -4.2 {
		t.Error(minus, err)
	}
	if r, err := units.Ratio(a, units.Kilogram.Of(2.1)); err != nil || r != 2 {
		t.Error(r, err)
	}
}

// No chain of operations ends in an infinity or a NaN.
func TestQuantityIsFinite(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		q := units.Kilogram.Of(1e15)
		for range rapid.IntRange(0, 60).Draw(t, "doublings") {
			q = q.Plus(q)
		}
		if rapid.Bool().Draw(t, "minus") {
			q = units.Mass{}.Minus(q).Minus(q)
		}
		if x := q.In(units.Milligram); math.IsInf(x, 0) || math.IsNaN(x) || math.Abs(q.In(units.Kilogram)) > 1e18 {
			t.Fatal(q)
		}
		k := rapid.SampledFrom([]float64{math.NaN(), math.Inf(1), math.Inf(-1), 1e300, 2, 0, -1}).Draw(t, "k")
		p, err := units.TryTimes(q, k)
		if x := p.In(units.Kilogram); !(math.Abs(x) <= 1e15) {
			t.Fatal(p, err)
		}
		r, err := units.Ratio(q, p)
		if !(math.Abs(r) <= 1e18) {
			t.Fatal(r, err)
		}
	})
	_, err := units.TryTimes(kg(1), math.NaN())
	isRange(t, err, "mass", -1e15, 1e15)
	_, err = units.TryTimes(kg(1e10), 1.1e5)
	isRange(t, err, "mass", -1e15, 1e15)
	r, err := units.Ratio(kg(1), kg(0))
	isRange(t, err, "mass", 0, 1e15)
	if r != 0 {
		t.Errorf("%v beside an error", r)
	}
	_, err = units.Ratio(kg(0), kg(0))
	isRange(t, err, "mass", 0, 1e15)
	if big := kg(1e18); big.Plus(big) != big || big.Minus(kg(-1e18)) != big {
		t.Error("sums stop at 1e18")
	}
}

func TestTry(t *testing.T) {
	tries(t, units.Kilogram, "mass", 0, 1e15)
	tries(t, units.Litre, "volume", 0, 1e15)
	tries(t, units.Celsius, "temperature", -273.15, 1e15)
	tries(t, units.KelvinDifference, "temperature difference", -1e15, 1e15)
	tries(t, units.Kilopascal, "absolute pressure", 0, 1e15)
	tries(t, units.KilopascalGauge, "gauge pressure", -1e15, 1e15)
	tries(t, units.KilogramPerCubicMetre, "density", 0, 1e15)
	tries(t, units.PercentVolume, "strength by volume", 0, 100)
	tries(t, units.PercentMass, "strength by mass", 0, 100)
	tries(t, units.DegreePlato, "extract", -70, 100)
	tries(t, units.MilligramPerLitre, "mass concentration", 0, 1e15)
	tries(t, units.MilliequivalentPerLitre, "equivalent concentration", -1e15, 1e15)
	tries(t, units.MilligramPerLitreCaCO3, "concentration as CaCO3", -1e15, 1e15)
	tries(t, units.MillimolePerLitre, "amount concentration", 0, 1e15)
	tries(t, units.VolumesCO2, "volumes of CO2", 0, 1e15)
	tries(t, units.GramCO2PerLitre, "CO2 content", 0, 1e15)
	tries(t, units.Kilojoule, "energy", -1e15, 1e15)
	tries(t, units.Watt, "power", -1e15, 1e15)
	tries(t, units.Metre, "length", -1e15, 1e15)
	tries(t, units.Mole, "amount of substance", 0, 1e15)
	tries(t, units.MicrosiemensPerCentimetre, "conductivity", 0, 1e15)
	tries(t, units.LitrePerMinute, "volume flow", 0, 1e15)
	tries(t, units.Percent, "share", 0, 100)
	tries(t, units.One, "pure number", -1e15, 1e15)
	tries(t, units.BillionCells, "number of cells", 0, 1e15)
	tries(t, units.MillionPerMillilitrePlato, "pitch rate", 0, 1e15)
	tries(t, units.MillipascalSecond, "dynamic viscosity", 0, 1e15)
	tries(t, units.MetrePerSecond, "speed", 0, 1e15)
	tries(t, units.PerHour, "rate", 0, 1e15)
	tries(t, units.PU, "number of pasteurisation units", 0, 1e15)
	tries(t, units.GramPerMole, "molar mass", 0, 1e15)
	tries(t, units.KilogramAnhydrous, "mass without crystal water", 0, 1e15)
	_, err := units.Fahrenheit.Try(-500)
	if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Min != -459.67 || e.Unit != "°F" || e.Value != -500 {
		t.Error(err)
	}
}

func tries[D, E units.Dimension](t *testing.T, base units.Unit[D, E], name string, min, max float64) {
	t.Helper()
	for _, x := range []float64{min, max, (min + max) / 2} {
		if q, err := base.Try(x); err != nil || q.In(base) != x {
			t.Errorf("%s: %v refused: %v", name, x, err)
		}
	}
	for _, x := range []float64{min - 1e-9*math.Max(1, math.Abs(min)), max * 1.0001, math.NaN(), math.Inf(1), math.Inf(-1)} {
		q, err := base.Try(x)
		isRange(t, err, name, min, max)
		if q != (units.Quantity[D, E]{}) {
			t.Errorf("%s: %v beside an error", name, q)
		}
	}
}

func TestRangeError(t *testing.T) {
	for _, c := range []struct {
		e    units.RangeError
		want string
	}{
		{units.RangeError{Func: "gravity.WaterDensity", Quantity: "temperature", Value: 41.5, Unit: "°C", Min: 0, Max: 40, Source: "Tanaka et al. 2001"},
			"gravity.WaterDensity: temperature 41.5 °C outside 0 °C to 40 °C (Tanaka et al. 2001)"},
		{units.RangeError{Func: "f", Quantity: "pH", Value: math.NaN(), Min: 0, Max: 14}, "f: pH NaN outside 0 to 14"},
		{units.RangeError{Func: "f", Quantity: "q", Value: -1, Min: 0, Max: math.Inf(1)}, "f: q -1 below 0"},
		{units.RangeError{Func: "f", Quantity: "q", Value: math.NaN(), Min: 0, Max: math.Inf(1)}, "f: q NaN is not a finite number from 0 up"},
		{units.RangeError{Func: "f", Quantity: "q", Value: math.NaN(), Unit: "g", Min: math.Inf(-1), Max: math.Inf(1)}, "f: q NaN g is not a finite number"},
		{units.RangeError{Func: "f", Quantity: "q", Value: 20.000000000000004, Unit: "g/L", Max: 20}, "f: q 20.000000000000004 g/L outside 0 g/L to 20 g/L"},
		{units.RangeError{Func: "f", Quantity: "q", Value: 7.499999999999999, Min: 7.5, Max: 12.5}, "f: q 7.499999999999999 outside 7.5 to 12.5"},
		{units.RangeError{Func: "f", Quantity: "q", Value: 4, Unit: "°C", Min: 20, Max: 20}, "f: q 4 °C where only 20 °C is possible"},
		{units.RangeError{Func: "f", Quantity: "q", Value: 8, Min: 7.5, Max: 7.25}, "f: q 8 where nothing is possible: at least 7.5, at most 7.25"},
		{units.RangeError{Func: "f", Quantity: "q", Value: 8, Min: math.Inf(-1), Max: 7}, "f: q 8 above 7"},
		{units.RangeError{Func: "f", Quantity: "q", Value: math.NaN(), Min: math.Inf(-1), Max: 7}, "f: q NaN is not a finite number up to 7"},
		{units.RangeError{Func: "f", Quantity: "q", Value: 200.0 / 3, Max: 7}, "f: q 66.6666666667 outside 0 to 7"}, // twelve digits are enough here
	} {
		if got := c.e.Error(); got != c.want {
			t.Errorf("got  %s\nwant %s", got, c.want)
		}
	}
}

func TestText(t *testing.T) {
	for _, c := range []struct{ got, want string }{
		{units.Kilogram.Of(4.2).Text(units.Kilogram, 2), "4.20 kg"}, {units.Kilogram.Of(4.2).Text(units.Gram, 0), "4200 g"},
		{units.Celsius.Of(-0.04).Text(units.Celsius, 1), "0.0 °C"},
		{units.Celsius.Of(-0.06).Text(units.Celsius, 1), "-0.1 °C"}, {units.Celsius.Of(-0.051).Text(units.Celsius, 1), "-0.1 °C"},
		{units.Celsius.Of(-0.047).Text(units.Celsius, 1), "0.0 °C"}, {units.Celsius.Of(20).Text(units.Fahrenheit, 1), "68.0 °F"},
		{units.PercentVolume.Of(4.6).Text(units.PercentVolume, 1), "4.6 % vol"},
		{units.One.Of(1.048).Text(units.One, 3), "1.048"}, {units.Kilogram.Of(1).Text(units.Kilogram, -3), "1 kg"},
		{units.Kilogram.Of(1).Text(units.Kilogram, 99), "1.000000000000000 kg"},
		{units.Kilogram.Of(4.2).String(), "4.2 kg"}, {units.Mass{}.String(), "0 kg"}, {units.One.Of(1.048).String(), "1.048"},
		{units.PSIGauge.Of(12).Text(units.PSIGauge, 1), "12.0 psi gauge"}, {units.Celsius.Of(-0.4).Text(units.Celsius, 0), "0 °C"},
	} {
		if c.got != c.want {
			t.Errorf("got %q, want %q", c.got, c.want)
		}
	}
}

// What the hot paths use allocates nothing.
func TestNoAllocations(t *testing.T) {
	q, u := units.Kilogram.Of(4.2), units.Pound
	if n := testing.AllocsPerRun(100, func() {
		r, _ := u.Try(q.In(u))
		q = r.Plus(q).Minus(r)
		s := units.Times(q, 1)
		_, _ = units.Ratio(s, q)
		a, _ := units.AtAltitude(units.Metre.Of(640))
		_ = a.Gauge(a.Pressure())
	}); n != 0 {
		t.Errorf("%v allocations", n)
	}
}
