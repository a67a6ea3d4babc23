package water

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// The four waters of speciationRows (PHREEQC 3, U.S. Geological Survey): at their pH and
// the CO2 pressure of that program they have the alkalinity they were given, and what
// CaHCO3+ adds, which its data base of December 2025 has at log K -4.06 and Plummer and
// Busenberg at 1.106: a tenth of a unit of log K of calcium in mol/kg times the alkalinity.
func TestAlkalinityAtPHOfReports(t *testing.T) {
	for _, r := range speciationRows {
		w := reports[r.w]
		p := w.profile(t, r.t)
		want := p.Alkalinity().In(units.MilligramPerLitreCaCO3)
		p.alk = 0 // what it was is not asked
		got, err := p.AlkalinityAt(w.ph, atm(math.Pow(10, r.logP)))
		if err != nil {
			t.Fatal(err)
		}
		// CaHCO3+ by hand: 10^1.106 times the activities, γ² of Ca+2 over one of each of the others.
		i := math.Sqrt(r.i)
		gamma := math.Pow(10, -0.51*4*(i/(1+i)-0.3*r.i))
		pair := 1 + math.Pow(10, 1.106)*gamma*p.mg[Calcium]/40078
		near(t, w.name, got.In(units.MilligramPerLitreCaCO3), want*pair, 0.011*want)
	}
}

// Water alone has none at the pH that the same program gives it under CO2, to 0.006 in pH.
func TestAlkalinityAtPHOfWaterAlone(t *testing.T) {
	for _, r := range co2Rows {
		got, err := Profile{t: r.t}.AlkalinityAt(r.ph, atm(r.atm))
		if err != nil {
			t.Fatal(err)
		}
		h := 1000 * math.Pow(10, -r.ph) // mEq/L; HCO3- follows the pH as far as H+ does
		near(t, "alkalinity", got.In(units.MilligramPerLitreCaCO3)/cacO3PerEquivalent, 0, 2*0.006*math.Ln10*h)
	}
}

// It is Under, read the other way.
func TestAlkalinityAtPHRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t, "water")
		p.drawAcids(t)
		gas := atm(rapid.Float64Range(0, 3).Draw(t, "atm"))
		ph := rapid.Float64Range(2.5, 6.5).Draw(t, "pH")
		a, err := p.AlkalinityAt(ph, gas)
		if err != nil {
			t.Fatal(err)
		}
		p.alk = a.In(units.MilligramPerLitreCaCO3) / cacO3PerEquivalent
		e, err := p.Under(gas)
		if err != nil {
			t.Fatal(err)
		}
		if math.Abs(e.PH()-ph) > 1e-7 {
			t.Fatalf("pH %v came back as %v", ph, e.PH())
		}
	})
}

func TestAlkalinityAtPHRefuses(t *testing.T) {
	p := reports[0].profile(t, 20)
	hot := reports[0].profile(t, 91)
	for name, c := range map[string]struct {
		of       Profile
		ph, kPa  float64
		min, max float64
	}{
		"pH below": {p, 0.999, 100, 1, 13}, "pH above": {p, 13.001, 0, 1, 13}, "NaN": {p, math.NaN(), 100, 1, 13},
		"pressure": {p, 4, 1000.1, 0, 1000}, "temperature": {hot, 4, 100, 0, 90},
		"brine": {p, 7.7, 100, 0, 0.5}, // 0.6 mol/kg of bicarbonate
	} {
		_, err := c.of.AlkalinityAt(c.ph, atm(c.kPa/kPaPerAtm))
		var e *units.RangeError
		if !errors.As(err, &e) || e.Min != c.min || e.Max != c.max {
			t.Errorf("%s: %v", name, err)
		}
	}
	// The ends of the range are in it: H+ of pH 1, and OH- of pH 13 where pKw is 14.17,
	// with their activity coefficients of about 0.83.
	for ph, want := range map[float64]float64{1: -120, 13: 82} {
		a, err := p.AlkalinityAt(ph, units.AbsolutePressure{})
		if err != nil {
			t.Fatal(err)
		}
		near(t, "end of the range", a.In(units.MilligramPerLitreCaCO3)/cacO3PerEquivalent, want, 4)
	}
}

func TestAlkalinityAtPHDoesNotAllocate(t *testing.T) {
	p, gas := reports[0].profile(t, 20), atm(1)
	if n := testing.AllocsPerRun(100, func() {
		if _, err := p.AlkalinityAt(4, gas); err != nil {
			t.Fatal(err)
		}
	}); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

func BenchmarkAlkalinityAt(b *testing.B) {
	p, gas := reports[0].profile(b, 20), atm(1)
	b.ReportAllocs()
	for b.Loop() {
		if _, err := p.AlkalinityAt(4, gas); err != nil {
			b.Fatal(err)
		}
	}
}
