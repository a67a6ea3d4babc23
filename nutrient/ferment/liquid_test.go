package ferment

import (
	"errors"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// What yeast leaves alone is in the liquid as it was in the water, in proportion, and
// with what the feed brings: 0.1 mg/L of zinc as well as 80 of calcium.
func TestLiquidKeepsTheOtherIons(t *testing.T) {
	f := hall(material.ZincSulfateHeptahydrate())
	f.Feed = nil
	ions := map[water.Ion]float64{
		water.Calcium: 80, water.Magnesium: 0.5, water.Chloride: 30, water.Sulfate: 0.7, water.Nitrate: 12, water.Zinc: 0.1,
	}
	var in []water.Content
	for i, mg := range ions {
		in = append(in, i.At(amount.MgPerL(mg)))
	}
	f.Water = check.Must(water.NewProfile(amount.Room, units.MilligramPerLitreCaCO3.Of(100), in...))
	per := f.Brew.Water.In(units.Kilogram) / 0.9982 / 60
	liquid := check.Must(f.At(end)).Liquid
	for i, mg := range ions {
		check.Near(t, i.Name(), liquid.Ion(i).In(units.MilligramPerLitre), per*mg, 1e-9, "by hand")
	}
	// 0.006 g of the zinc salt in 60 L: 0.1 mg/L, of which Zn is 65.38/287.54.
	f.Feed = []material.Dose{{Material: material.ZincSulfateHeptahydrate(), Mass: units.Gram.Of(0.006)}}
	check.Near(t, "zinc fed", check.Must(f.At(end)).Liquid.Ion(water.Zinc).In(units.MilligramPerLitre), per*0.1+0.1*65.38/287.54, 1e-6, "stoichiometry")
	none := check.Must(hall(material.DiammoniumPhosphate()).At(end)).Liquid
	for i := range ions {
		if !none.Ion(i).IsZero() {
			t.Errorf("%s: %v from nowhere", i.Name(), none.Ion(i))
		}
	}
}

// Rounding leaves no less than nothing, and a little stays a little.
func TestCleanKeepsWhatIsThere(t *testing.T) {
	a := acidity.Liquid{Strong: -1, Ammonium: 0.1, Potassium: 0.2, Phosphate: 0.3}
	if got := a.Clean(); got != a {
		t.Errorf("%+v", got)
	}
	if got := (acidity.Liquid{Ammonium: -1e-18, Potassium: -1e-18, Phosphate: -1e-18}).Clean(); got != (acidity.Liquid{}) {
		t.Errorf("%+v", got)
	}
}

// Of n additions the first goes in with the yeast, the last when a third of the sugar is
// used, the others evenly between; without a number there is one.
func TestFedByAdditions(t *testing.T) {
	for _, c := range []struct {
		n    int
		used float64
		want float64
	}{
		{0, 0, 1}, {1, 0, 1}, {1, 1, 1}, {2, 0, 0.5}, {2, 0.333, 0.5}, {2, 1.0 / 3, 1}, {2, 1, 1},
		{4, 0, 0.25}, {4, 0.11, 0.25}, {4, 1.0 / 9, 0.5}, {4, 0.22, 0.5}, {4, 2.0 / 9, 0.75}, {4, 0.33, 0.75}, {4, 1, 1},
	} {
		f := hall(material.DiammoniumPhosphate())
		f.Additions = c.n
		checked := check.Must(f.checked("test"))
		check.Near(t, "fed", checked.fed(c.used), c.want, 1e-12, "common practice, no source")
		check.Near(t, "nitrogen", check.Must(f.At(amount.Share(0))).Nitrogen.In(units.MilligramPerLitre), 67/float64(max(1, c.n)), 1e-9, "by hand")
	}
	for n := 1; n <= 10; n++ { // at the very shares of StageShares
		f := hall(material.DiammoniumPhosphate())
		f.Additions = n
		c := check.Must(f.checked("test"))
		for i, s := range check.Must(nutrient.StageShares(n)) {
			check.Near(t, "stage", c.fed(s.In(units.Fraction)), float64(i+1)/float64(n), 1e-12, "StageShares")
		}
	}
}

// Nothing that ferments gives nothing to use, and no pH that is not a number.
func TestFermentWithoutSugar(t *testing.T) {
	water := check.Must(gravity.NewSolution(units.Kilogram.Of(10), units.Mass{}, units.Mass{}))
	b := sugar.Brew{Start: water, Finish: water, Yield: sugar.Of(material.WhiteSugar()).Yield()}
	if !b.Hexose().IsZero() {
		t.Error(b.Hexose())
	}
	p := check.Must(Tank{Brew: b, Temperature: amount.Room}.At(end))
	// It makes no CO2 and stays at equilibrium with that of air: [H+]² = K1·0.039·420e-6.
	check.Near(t, "pH of water in air", p.PH.Value, 5.58, 0.01, "carbonic acid: pK1 6.38, 0.039 mol/L an atmosphere")
	// One kilogram of glucose is used as one.
	wash := check.Must(water.AddExtract(gravity.AsGlucose, units.Kilogram.Of(1)))
	check.Near(t, "glucose", sugar.Brew{Start: wash, Finish: wash, Used: units.Kilogram.Of(1)}.Hexose().In(units.Kilogram), 1, 1e-12, "no inversion")
}

// A brine is beyond the activity coefficients: every way to its pH says so.
func TestFermentOfBrine(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	f.Water = check.Must(water.NewProfile(amount.Room, units.CalciumCarbonate{}, water.Sodium.At(amount.MgPerL(15000)), water.Chloride.At(amount.MgPerL(23130))))
	half := units.Percent.Of(50)
	for what, try := range map[string]func() error{
		"At":        func() error { _, err := f.At(half); return err },
		"Course":    func() error { _, err := f.Course(2); return err },
		"BufferFor": func() error { _, err := f.BufferFor(material.BakingSoda(), 3.5); return err },
		"Correct":   func() error { _, err := f.Correct(material.BakingSoda(), half, 3, 3.5); return err },
	} {
		if e, ok := errors.AsType[*units.RangeError](try()); !ok || e.Quantity != "ionic strength" {
			t.Errorf("%s: %v", what, e)
		}
	}
}

// The ammonium, phosphate and potassium of the water feed the yeast like any other: all of
// them are used when they are short.
func TestWaterFeedsTheYeast(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	f.Feed = nil
	mg := func(i water.Ion, mmol float64) water.Content {
		return i.At(amount.MgPerL(mmol * i.MolarMass().In(units.GramPerMole)))
	}
	f.Water = check.Must(water.NewProfile(amount.Room, units.MilligramPerLitreCaCO3.Of(100), mg(water.Ammonium, 1), mg(water.Phosphate, 0.01),
		mg(water.Potassium, 0.01)))
	b := check.Must(f.At(end)).Balance
	litres := f.Brew.Water.In(units.Kilogram) / 0.9982
	check.Near(t, "nitrogen", b.Ammonium.In(units.Gram), 0.014007*litres, 1e-6, "1 mmol/L")
	check.Near(t, "phosphorus", b.Phosphorus.In(units.Gram), 0.00030974*litres, 1e-8, "0.01 mmol/L")
	check.Near(t, "potassium", b.Potassium.In(units.Gram), 0.00039098*litres, 1e-8, "0.01 mmol/L")
}
