package water

import (
	"errors"
	"testing"

	"example.org/zymase/units"
)

func mmolL(v float64) units.MolarConcentration {
	q, err := units.MillimolePerLitre.Try(v)
	if err != nil {
		panic(err)
	}
	return q
}

func mEqL(v float64) units.EquivalentConcentration {
	q, err := units.MilliequivalentPerLitre.Try(v)
	if err != nil {
		panic(err)
	}
	return q
}

// Half neutralised, a weak acid has the pH of its pKa, less what the activity of the
// anion takes: at 25 °C and 0.0005 mol/kg that is 0.011.
func TestWashAtHalfNeutralisation(t *testing.T) {
	for name, r := range map[string]struct {
		w  Totals
		pk float64
	}{
		"acetic (NIST 46)": {Totals{Acetate: mmolL(1), StrongIons: mEqL(0.5)}, 4.757},
		"sorbic":           {Totals{Sorbate: mmolL(1), StrongIons: mEqL(0.5)}, 4.76},
	} {
		ph, err := washPH(r.w, units.Celsius.Of(25))
		if err != nil {
			t.Fatal(err)
		}
		near(t, name, ph, r.pk-0.0115+0.0308, 0.003) // H+ itself adds 0.018 mEq/L to the anion
	}
}

// Buffers of known pH at 25 °C (NIST standards, R. G. Bates, Determination of pH
// (1973), recalled from memory): 0.025 mol/kg each of KH2PO4 and Na2HPO4, 6.865;
// 0.05 mol/kg potassium dihydrogen citrate, 3.776.
func TestWashStandardBuffers(t *testing.T) {
	phosphate, err := washPH(Totals{Phosphate: mmolL(50 * kilogramsPerLitre), StrongIons: mEqL(75 * kilogramsPerLitre)}, units.Celsius.Of(25))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "phosphate", phosphate, 6.865, 0.03)
	citrate, err := washPH(Totals{Citrate: mmolL(50 * kilogramsPerLitre), StrongIons: mEqL(50 * kilogramsPerLitre)}, units.Celsius.Of(25))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "citrate", citrate, 3.776, 0.03)
}

func TestWashBuffer(t *testing.T) {
	// β by the slope of two pH; the coefficients move with the salt, by 3 %.
	w := Totals{Succinate: mmolL(5), Phosphate: mmolL(2), Ammonium: mmolL(3), Citrate: mmolL(1), StrongIons: mEqL(6)}
	a, err := washPH(w, units.Celsius.Of(20))
	if err != nil {
		t.Fatal(err)
	}
	b, err := washBuffer(w, units.Celsius.Of(20))
	if err != nil {
		t.Fatal(err)
	}
	w.StrongIons = mEqL(6.01)
	c, _ := washPH(w, units.Celsius.Of(20))
	near(t, "buffer", 0.01/(c-a), b.In(units.MilliequivalentPerLitre), 0.05*b.In(units.MilliequivalentPerLitre))
}

func TestWashRefuses(t *testing.T) {
	for name, w := range map[string]Totals{
		"charge":   {StrongIons: mEqL(1001)},
		"acid":     {StrongIons: mEqL(-900)},
		"others":   {Others: mmolL(1001)},
		"lactate":  {Lactate: mmolL(1001)},
		"pressure": {CO2: atm(11)},
		"strength": {Others: mmolL(700)},
	} {
		_, err := washPH(w, units.Celsius.Of(20))
		_, err2 := washBuffer(w, units.Celsius.Of(20))
		var re *units.RangeError
		if !errors.As(err, &re) || err2 == nil {
			t.Errorf("%s: %v", name, err)
		}
	}
	if _, err := washPH(Totals{}, celsius(95)); err == nil {
		t.Error("hot")
	}
}

func washPH(w Totals, t units.Temperature) (float64, error) {
	e, err := w.Equilibrium(t)
	if err != nil {
		return 0, err
	}
	return e.PH(), nil
}

func washBuffer(w Totals, t units.Temperature) (units.EquivalentConcentration, error) {
	e, err := w.Equilibrium(t)
	return e.BufferCapacity(), err
}
