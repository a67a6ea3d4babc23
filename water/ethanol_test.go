package water

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/units"
)

func volPercent(t testing.TB, v float64) units.StrengthByVolume {
	t.Helper()
	s, err := units.PercentVolume.Try(v)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// Constants in concentrations, at 25 °C in KCl: E. Prenesti et al., Sci. World J. 2012,
// 249041, table 4 (read). In water they test the constants at infinite dilution with the
// activity coefficients; 0.03 for what these two leave.
func TestEthanolWeakensAcids(t *testing.T) {
	logOf := func(e Equilibrium, acid, anion Species, protons float64) float64 {
		return math.Log10(e.s.species(acid)/e.s.species(anion)) - protons*math.Log10(e.s.hydrogen)
	}
	for _, r := range []struct {
		salt, strength           float64 // mol/L, % vol
		lactic, succinic1, both2 float64 // zero is not printed
	}{
		{0.05, 0, 3.70, 5.319, 9.347}, {0.05, 12, 3.87, 5.49, 9.68},
		{0.1, 0, 3.66, 5.24, 0}, {0.1, 12, 3.83, 5.39, 0},
	} {
		w := Totals{Others: mmolL(1000 * r.salt), Lactate: mmolL(1), Succinate: mmolL(1), StrongIons: mEqL(1.5), Strength: volPercent(t, r.strength)}
		e, err := w.Equilibrium(celsius(25))
		if err != nil {
			t.Fatal(err)
		}
		near(t, "lactic", logOf(e, lacticH, lactateFree, 1), r.lactic, 0.03)
		near(t, "succinic, first proton", logOf(e, succinicH, succinateFree, 1), r.succinic1, 0.03)
		if r.both2 != 0 {
			near(t, "succinic, both", logOf(e, succinicH2, succinateFree, 2), r.both2, 0.03)
		}
	}
}

// Half neutralised, the pH rises as the pKa does, along a straight line; a strong acid's
// does not, and none of the strength is lost on the way.
func TestEthanolRaisesPH(t *testing.T) {
	at := func(w Totals, strength float64) float64 {
		w.Strength = volPercent(t, strength)
		ph, err := washPH(w, celsius(25))
		if err != nil {
			t.Fatal(err)
		}
		return ph
	}
	sour := Totals{Lactate: mmolL(50), StrongIons: mEqL(25)}
	near(t, "lactic, 12 %", at(sour, 12)-at(sour, 0), 0.17, 0.005)
	near(t, "lactic, 6 %", at(sour, 6)-at(sour, 0), 0.085, 0.003)
	strong := Totals{StrongIons: mEqL(-1)}
	near(t, "strong", at(strong, 12), at(strong, 0), 1e-9)

	p, err := reports[0].profile(t, 20).WithEthanol(volPercent(t, 5))
	if err != nil {
		t.Fatal(err)
	}
	if p, err = p.Dilute(litres(1), litres(1)); err != nil {
		t.Fatal(err)
	}
	near(t, "diluted", p.Ethanol().In(units.PercentVolume), 2.5, 1e-12)
}

// A series takes up the new constants with the strength.
func TestEthanolInSeries(t *testing.T) {
	p, err := NewProfile(celsius(20), units.MilligramPerLitreCaCO3.Of(-50), Lactate.At(mgL(200)), Sodium.At(mgL(30)))
	if err != nil {
		t.Fatal(err)
	}
	var r Series
	for _, v := range []float64{0, 6, 12, 0} {
		q, err := p.WithEthanol(volPercent(t, v))
		if err != nil {
			t.Fatal(err)
		}
		one, err1 := q.Under(atm(1))
		next, err2 := r.Under(q, atm(1))
		if err := errors.Join(err1, err2); err != nil {
			t.Fatal(err)
		}
		near(t, "pH", next.PH(), one.PH(), 1e-7)
	}
}

func TestEthanolRefuses(t *testing.T) {
	_, err := Profile{}.WithEthanol(volPercent(t, 17))
	_, err2 := washPH(Totals{Strength: volPercent(t, 17)}, celsius(20))
	for _, err := range []error{err, err2} {
		if r, ok := errors.AsType[*units.RangeError](err); !ok || r.Quantity != "strength" || r.Max != 16 {
			t.Errorf("error %v", err)
		}
	}
}

// With another strength the pH and the carbon that were known are not those of the water any more.
func TestEthanolForgetsThePH(t *testing.T) {
	known := water(20, map[Ion]float64{Sodium: 46}, 2, 7.2, 2.3)
	p, err := known.WithEthanol(volPercent(t, 5))
	if _, knows := p.PH(); err != nil || knows || p.ph != 0 || p.carbon != 0 {
		t.Errorf("%+v, %v", p, err)
	}
}
