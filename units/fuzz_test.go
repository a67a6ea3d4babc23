package units_test

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/units"
)

var seeds = []string{"5 gal", "5 US gal", "68 °F", "12 psi", "3 lb 4 oz", "1.5kg", "1,5 kg", "1,500 kg", "-4 °F", "1e400 kg",
	"NaN", "4.6 % vol", "2.8 vol", "50 mg/L as CaCO3", "1 h 30 min", "", "−5 °C", "0x1p-2 kg", "1e-330 kg", "5 ft 3 in", "1\u00a0kg"}

// FuzzParse: no text makes a panic, a NaN or a value beside an error, and what is
// read is written as text that reads back as the same bits.
func FuzzParse(f *testing.F) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		fuzz[units.Mass](t, text)
		fuzz[units.AnhydrousMass](t, text)
		fuzz[units.Volume](t, text)
		fuzz[units.Temperature](t, text)
		fuzz[units.TemperatureDifference](t, text)
		fuzz[units.AbsolutePressure](t, text)
		fuzz[units.GaugePressure](t, text)
		fuzz[units.Density](t, text)
		fuzz[units.StrengthByVolume](t, text)
		fuzz[units.StrengthByMass](t, text)
		fuzz[units.Extract](t, text)
		fuzz[units.MassConcentration](t, text)
		fuzz[units.EquivalentConcentration](t, text)
		fuzz[units.CalciumCarbonate](t, text)
		fuzz[units.MolarConcentration](t, text)
		fuzz[units.CarbonDioxideVolumes](t, text)
		fuzz[units.CarbonDioxideContent](t, text)
		fuzz[units.Energy](t, text)
		fuzz[units.Power](t, text)
		fuzz[units.Length](t, text)
		fuzz[units.Amount](t, text)
		fuzz[units.Conductivity](t, text)
		fuzz[units.VolumeFlow](t, text)
		fuzz[units.Share](t, text)
		fuzz[units.PureNumber](t, text)
		fuzz[units.MolarMass](t, text)
		fuzz[units.DynamicViscosity](t, text)
		fuzz[units.Speed](t, text)
		fuzz[units.Rate](t, text)
		fuzz[units.PasteurisationUnits](t, text)
		fuzz[units.Cells](t, text)
		fuzz[units.PitchRate](t, text)
	})
}

func fuzz[Q interface{ units.Quantity[D, E] }, D, E units.Dimension](t *testing.T, text string) {
	t.Helper()
	p, err := units.Parse[Q](text)
	q := units.Quantity[D, E](p)
	known(t, text, err)
	if err != nil {
		if q != (units.Quantity[D, E]{}) {
			t.Fatalf("%q: %v beside %v", text, q, err)
		}
		return
	}
	var base units.Unit[D, E]
	if x := q.In(base); !(math.Abs(x) <= 1e15) {
		t.Fatalf("%q: %v", text, x)
	}
	back, err := units.Parse[Q](q.String())
	if err != nil || back != p {
		t.Fatalf("%q: %q reads back as %v, %v", text, q, back, err)
	}
}

func known(t *testing.T, text string, err error) {
	t.Helper()
	if err == nil {
		return
	}
	_, isParse := errors.AsType[*units.ParseError](err)
	_, isRange := errors.AsType[*units.RangeError](err)
	if !isParse && !isRange || len(err.Error()) > 1000 {
		t.Fatalf("%q: %v", text, err)
	}
}

// FuzzParseExact: every digit is kept.
func FuzzParseExact(f *testing.F) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		x, err := units.ParseExact[units.Mass](text)
		known(t, text, err)
		if err != nil {
			return
		}
		s := x.String()
		if len(s) > 100 {
			t.Fatalf("%q: %d bytes of text", text, len(s))
		}
		if y, err := units.ParseExact[units.Mass](s); err == nil && (!y.Decimal().Equal(x.Decimal()) || y.Unit() != x.Unit()) {
			t.Fatalf("%q: %q reads back as %v", text, s, y)
		}
		if q := x.Quantity().In(units.Kilogram); !(q >= 0 && q <= 1e15*1.000001) {
			t.Fatalf("%q: %v", text, q)
		}
		step, err := units.ParseExact[units.Mass]("0.1 g")
		if err != nil {
			t.Fatal(err)
		}
		r, err := x.Quantity().Round(step, units.Nearest)
		known(t, text, err)
		_ = r.Text(2)
	})
}

func FuzzParseDuration(f *testing.F) {
	for _, s := range seeds {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		d, err := units.ParseDuration(text)
		known(t, text, err)
		if d < 0 || err != nil && d != 0 {
			t.Fatalf("%q: %v %v", text, d, err)
		}
	})
}

func FuzzFind(f *testing.F) {
	for _, s := range []string{"kg", "lb", "°F", "", "US gal", "K"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		u, err := units.Kilogram.Find(text)
		known(t, text, err)
		if again, err2 := units.Kilogram.Find(u.Symbol()); err2 != nil || err == nil && again != u {
			t.Fatalf("%q: %v %v", text, u, err2)
		}
		_, err = units.Kilogram.Parse(text)
		known(t, text, err)
	})
}
