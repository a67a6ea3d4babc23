package water

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Every salt of the list dissolves, and its ions and alkalinity are neutral.
func TestSaltsAreNeutral(t *testing.T) {
	if len(Salts()) != 28 {
		t.Errorf("%d salts", len(Salts()))
	}
	for _, s := range Salts() {
		p, err := Profile{t: 20}.Add(litres(1), s.Dose(grams(1)))
		b := p.IonicBalance()
		if err != nil || math.Abs(b.Cations.Minus(b.Anions).In(units.MilliequivalentPerLitre)) > 1e-9 || b.Cations.IsZero() {
			t.Errorf("%v: %v, %v", s, b, err)
		}
	}
}

// 1 g/L of a salt, mg/L of its ions and mEq/L of alkalinity, from the abridged atomic weights
// of 2021 by hand: NH4 18.039/14.007 of N, PO4 94.970/30.974 of P, SO3 80.057/64.058 of SO2.
func TestIonsOfSalts(t *testing.T) {
	for _, r := range []struct {
		salt material.Material
		ion  Ion
		mg   float64
		alk  float64
	}{
		{material.Gypsum(), Calcium, 232.79, 0}, {material.Gypsum(), Sulfate, 557.93, 0}, {material.DiammoniumPhosphate(), Ammonium, 273.21, 7.5725},
		{material.DiammoniumPhosphate(), Phosphate, 719.16, 7.5725}, {material.Chalk(), Calcium, 400.44, 19.983}, {material.SlakedLime(), Calcium, 540.92, 26.993},
		{shelf.Material("calcium lactate pentahydrate"), Lactate, 577.83, 0}, {shelf.Material("tripotassium citrate monohydrate"), Citrate, 582.90, 0},
		{shelf.Material("sodium sulfite anhydrous"), Sulfite, 635.19, 7.9342},
		{shelf.Material("zinc sulfate monohydrate"), Zinc, 364.33, 0}, {material.BakingSoda(), Sodium, 273.67, 11.904},
	} {
		p, err := Profile{t: 20}.Add(litres(1), r.salt.Dose(grams(1)))
		if err != nil || math.Abs(p.ion(r.ion)-r.mg) > 0.0151 || math.Abs(p.alk-r.alk) > 0.00051 {
			t.Errorf("%v: %v of %v, %v mEq/L, %v", r.salt, p.ion(r.ion), r.ion, p.alk, err)
		}
	}
}

// One's own salt by its label counts as the known one; what does not balance is refused.
func TestSaltsByLabel(t *testing.T) {
	flakes, err := material.ByLabel("flakes", material.Composition{Calcium: units.Percent.Of(27.26), Chloride: units.Percent.Of(48.23)})
	if err != nil {
		t.Fatal(err)
	}
	p, err := Profile{t: 20}.Add(litres(1), flakes.Dose(grams(1)))
	if err != nil || math.Abs(p.ion(Calcium)-272.6) > 1e-9 {
		t.Error(p.ion(Calcium), err)
	}
	off, err := material.ByLabel("off", material.Composition{Calcium: units.Percent.Of(28), Chloride: units.Percent.Of(48.23)})
	if err != nil {
		t.Fatal(err)
	}
	for _, m := range []material.Material{{}, off, material.Honey(), material.AutolysedYeast(), shelf.Material("ascorbic acid"), shelf.Material("urea")} {
		_, added := Profile{t: 20}.Add(litres(1), m.Dose(grams(1)))
		_, raised := Profile{t: 20}.BaseToAlkalinity(m, caco3(10), litres(1))
		_, solved := Request{Profile{t: 20}, litres(1), []Stock{{Salt: m}}, []Target{Calcium.Aim(mgL(10))}, nil}.Solve()
		for _, err := range []error{added, raised, solved} {
			if _, ok := errors.AsType[*units.StateError](err); !ok {
				t.Errorf("%v: %v", m, err)
			}
		}
	}
}

// What is a salt brings ions that balance within a hundredth, however little of them: saline of 0.9 % is one. 39.340 % of
// sodium and 60.660 % of chloride balance (22.990 and 35.45 g/mol); 2.02 % more of one of two is 1 % of their sum.
func TestSaltsBalanceWithinAHundredth(t *testing.T) {
	saline := func(sodium, chloride float64) error {
		of := func(percent float64) units.Share {
			s, err := units.Percent.Try(percent)
			if err != nil {
				t.Fatal(err)
			}
			return s
		}
		m, err := material.ByLabel("saline", material.Composition{Sodium: of(sodium), Chloride: of(chloride)})
		if err != nil {
			t.Fatal(err)
		}
		_, err = Profile{t: 20}.Add(litres(1), m.Dose(grams(1)))
		return err
	}
	const na, cl = 0.9 * 0.39340, 0.9 * 0.60660
	for more, salt := range map[float64]bool{1: true, 1.0199: true, 1.0208: false} { // 2/(1/0.01 − 1) is 2.0202 %
		if err := saline(na*more, cl); (err == nil) != salt {
			t.Errorf("%v times the sodium: %v", more, err)
		}
	}
}
