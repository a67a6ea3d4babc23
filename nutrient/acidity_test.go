package nutrient

import (
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Charge that a feed brings, mEq/L by hand: one for ammonium and potassium, two for
// magnesium and zinc, less two for sulfate and one for chloride; phosphate is a weak acid.
func TestFedCharge(t *testing.T) {
	for what, c := range map[string]struct {
		s    Supply
		want float64
	}{
		"ammonium":  {Supply{Ammonium: mgPerL(14.007)}, 1},
		"potassium": {Supply{Potassium: mgPerL(39.098)}, 1},
		"magnesium": {Supply{Magnesium: mgPerL(24.305)}, 2},
		"zinc":      {Supply{Zinc: mgPerL(65.38)}, 2},
		"sulfate":   {Supply{Sulfate: mgPerL(96.056)}, -2},
		"chloride":  {Supply{Chloride: mgPerL(35.45)}, -1},
		"phosphate": {Supply{Phosphorus: mgPerL(30.974)}, 0},
		"amino":     {Supply{Amino: mgPerL(14.007)}, 0},
	} {
		near(t, what, acidity{}.fed(c.s, 1).strong, c.want, 1e-9, "by hand")
		near(t, what+", half of it", acidity{}.fed(c.s, 0.5).strong, c.want/2, 1e-9, "by hand")
	}
	near(t, "phosphate", acidity{}.fed(Supply{Phosphorus: mgPerL(30.974)}, 1).phosphate, 1, 1e-9, "by hand")
}

// A water as its pH sees it and back: little of each ion stays, too.
func TestAcidityAndWater(t *testing.T) {
	mg := func(i water.Ion, mmol float64) water.Content { return i.At(mgPerL(mmol * i.MolarMass())) }
	p := must(water.NewProfile(room, units.MilligramPerLitreCaCO3.Of(100),
		mg(water.Phosphate, 0.3), mg(water.Citrate, 0.2), mg(water.Succinate, 0.1), mg(water.Ammonium, 0.05), mg(water.Potassium, 0.4), mg(water.Sodium, 0.5)))
	a := acidityOf(p)
	near(t, "strong charge", a.strong, 100/50.043+0.3+3*0.2+2*0.1, 1e-4, "1 mEq/L is 50.043 mg/L as CaCO3")
	near(t, "twice", a.scaled(2).strong, 2*a.strong, 1e-12, "by hand")
	q := must(a.profile(room, nil))
	for _, i := range []water.Ion{water.Phosphate, water.Citrate, water.Succinate, water.Ammonium, water.Potassium, water.Sodium} {
		near(t, i.Name(), millimole(q, i), millimole(p, i), 1e-9, "the same")
	}
	near(t, "alkalinity", q.Alkalinity().In(units.MilligramPerLitreCaCO3), 100, 1e-9, "the same")
}

// A number that was not found is zero, so that nobody takes a guess for a result.
func TestNoPHComesWithAnError(t *testing.T) {
	pH, err := acidity{strong: 2000}.pH(surroundings{at: room})
	nothing(t, "alkalinity of a brine", pH, err)
	pH, err = acidity{}.pH(surroundings{at: room, gas: units.Kilopascal.Of(2000)})
	nothing(t, "2000 kPa", pH, err)
	lack, err := acidity{strong: 2000}.lacks(3, surroundings{at: room})
	nothing(t, "lack of a brine", lack, err)
	_, err = acidity{}.atPH(3, surroundings{at: room, gas: units.Kilopascal.Of(2000)})
	nothing(t, "a pH under 2000 kPa", 0, err)
}
