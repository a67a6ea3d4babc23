package acidity

import (
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Charge that a feed brings, mEq/L by hand: one for ammonium and potassium, two for
// magnesium and zinc, less two for sulfate and one for chloride; phosphate is a weak acid.
func TestFedCharge(t *testing.T) {
	for what, c := range map[string]struct {
		s    nutrient.Supply
		want float64
	}{
		"ammonium":  {nutrient.Supply{Ammonium: amount.MgPerL(14.007)}, 1},
		"potassium": {nutrient.Supply{Potassium: amount.MgPerL(39.098)}, 1},
		"magnesium": {nutrient.Supply{Magnesium: amount.MgPerL(24.305)}, 2},
		"zinc":      {nutrient.Supply{Zinc: amount.MgPerL(65.38)}, 2},
		"sulfate":   {nutrient.Supply{Sulfate: amount.MgPerL(96.056)}, -2},
		"chloride":  {nutrient.Supply{Chloride: amount.MgPerL(35.45)}, -1},
		"phosphate": {nutrient.Supply{Phosphorus: amount.MgPerL(30.974)}, 0},
		"amino":     {nutrient.Supply{Amino: amount.MgPerL(14.007)}, 0},
	} {
		check.Near(t, what, Liquid{}.Fed(c.s, 1).Strong, c.want, 1e-9, "by hand")
		check.Near(t, what+", half of it", Liquid{}.Fed(c.s, 0.5).Strong, c.want/2, 1e-9, "by hand")
	}
	check.Near(t, "phosphate", Liquid{}.Fed(nutrient.Supply{Phosphorus: amount.MgPerL(30.974)}, 1).Phosphate, 1, 1e-9, "by hand")
}

// A water as its pH sees it and back: little of each ion stays, too.
func TestAcidityAndWater(t *testing.T) {
	mg := func(i water.Ion, mmol float64) water.Content {
		return i.At(amount.MgPerL(mmol * i.MolarMass().In(units.GramPerMole)))
	}
	p := check.Must(water.NewProfile(amount.Room, units.MilligramPerLitreCaCO3.Of(100),
		mg(water.Phosphate, 0.3), mg(water.Citrate, 0.2), mg(water.Succinate, 0.1), mg(water.Ammonium, 0.05), mg(water.Potassium, 0.4), mg(water.Sodium, 0.5)))
	a := Of(p)
	check.Near(t, "strong charge", a.Strong, 100/50.043+0.3+3*0.2+2*0.1, 1e-4, "1 mEq/L is 50.043 mg/L as CaCO3")
	check.Near(t, "twice", a.Scaled(2).Strong, 2*a.Strong, 1e-12, "by hand")
	q := check.Must(a.Profile(Surroundings{At: amount.Room}))
	for _, i := range []water.Ion{water.Phosphate, water.Citrate, water.Succinate, water.Ammonium, water.Potassium, water.Sodium} {
		check.Near(t, i.Name(), Millimole(q, i), Millimole(p, i), 1e-9, "the same")
	}
	check.Near(t, "alkalinity", q.Alkalinity().In(units.MilligramPerLitreCaCO3), 100, 1e-9, "the same")
}

// A number that was not found is zero, so that nobody takes a guess for a result.
func TestNoPHComesWithAnError(t *testing.T) {
	ph, err := Liquid{Strong: 2000}.PH(Surroundings{At: amount.Room})
	check.Nothing(t, "alkalinity of a brine", ph, err)
	ph, err = Liquid{}.PH(Surroundings{At: amount.Room, Gas: units.Kilopascal.Of(2000)})
	check.Nothing(t, "2000 kPa", ph, err)
	lack, err := Liquid{Strong: 2000}.Lacks(3, Surroundings{At: amount.Room})
	check.Nothing(t, "lack of a brine", lack, err)
	_, err = Liquid{}.AtPH(3, Surroundings{At: amount.Room, Gas: units.Kilopascal.Of(2000)})
	check.Nothing(t, "a pH under 2000 kPa", 0, err)
}

// Little stays, less than nothing is taken out.
func TestClean(t *testing.T) {
	a := Liquid{Ammonium: 0.5, Potassium: 0.25, Phosphate: 0.125}
	if got := a.Clean(); got != a {
		t.Errorf("%+v", got)
	}
	if got := (Liquid{Ammonium: -1e-18, Potassium: -1e-18, Phosphate: -1e-18}).Clean(); got != (Liquid{}) {
		t.Errorf("%+v", got)
	}
}

// A liquid with less CO2 than the gas above would give it rests with what it has, however little.
func TestRestsWithItsCarbon(t *testing.T) {
	s := Surroundings{At: amount.Room, Gas: units.StandardAtmosphere.Of(1), Carbon: 0.5}
	e := check.Must(Liquid{Strong: 0.2}.Rest(s))
	check.Near(t, "carbon", e.InorganicCarbon().In(units.MillimolePerLitre), 0.5, 1e-6, "conservation")
}
