package nutrient

import (
	"errors"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// What yeast leaves alone is in the liquid as it was in the water, in proportion, and
// with what the feed brings: 0.1 mg/L of zinc as well as 80 of calcium.
func TestLiquidKeepsTheOtherIons(t *testing.T) {
	f := hall(ZincSulfateHeptahydrate())
	f.Feed = nil
	ions := map[water.Ion]float64{
		water.Calcium: 80, water.Magnesium: 0.5, water.Chloride: 30, water.Sulfate: 0.7, water.Nitrate: 12, water.Zinc: 0.1,
	}
	var in []water.Content
	for i, mg := range ions {
		in = append(in, i.At(mgPerL(mg)))
	}
	f.Water = must(water.NewProfile(room, units.MilligramPerLitreCaCO3.Of(100), in...))
	per := f.Brew.Water.In(units.Kilogram) / 0.9982 / 60
	liquid := must(f.At(end)).Liquid
	for i, mg := range ions {
		near(t, i.Name(), liquid.Ion(i).In(units.MilligramPerLitre), per*mg, 1e-9, "by hand")
	}
	// 0.006 g of the zinc salt in 60 L: 0.1 mg/L, of which Zn is 65.38/287.54.
	f.Feed = []Dose{{ZincSulfateHeptahydrate(), units.Gram.Of(0.006)}}
	near(t, "zinc fed", must(f.At(end)).Liquid.Ion(water.Zinc).In(units.MilligramPerLitre), per*0.1+0.1*65.38/287.54, 1e-6, "stoichiometry")
	none := must(hall(DiammoniumPhosphate()).At(end)).Liquid
	for i := range ions {
		if !none.Ion(i).IsZero() {
			t.Errorf("%s: %v from nowhere", i.Name(), none.Ion(i))
		}
	}
}

// Rounding leaves no less than nothing, and a little stays a little.
func TestCleanKeepsWhatIsThere(t *testing.T) {
	a := acidity{strong: -1, ammonium: 0.1, potassium: 0.2, phosphate: 0.3}
	if got := a.clean(); got != a {
		t.Errorf("%+v", got)
	}
	if got := (acidity{ammonium: -1e-18, potassium: -1e-18, phosphate: -1e-18}).clean(); got != (acidity{}) {
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
		f := hall(DiammoniumPhosphate())
		f.Additions = c.n
		checked := must(f.checked("test"))
		near(t, "fed", checked.fed(c.used), c.want, 1e-12, "common practice, no source")
		near(t, "nitrogen", must(f.At(share(0))).Nitrogen.In(units.MilligramPerLitre), 67/float64(max(1, c.n)), 1e-9, "by hand")
	}
	for n := 1; n <= 10; n++ { // at the very shares of StageShares
		f := hall(DiammoniumPhosphate())
		f.Additions = n
		c := must(f.checked("test"))
		for i, s := range must(StageShares(n)) {
			near(t, "stage", c.fed(s.In(units.Fraction)), float64(i+1)/float64(n), 1e-12, "StageShares")
		}
	}
}

// Nothing that ferments gives nothing to use, and no pH that is not a number.
func TestFermentWithoutSugar(t *testing.T) {
	water := must(gravity.NewSolution(units.Kilogram.Of(10), units.Mass{}, units.Mass{}))
	b := Brew{Start: water, Finish: water, Yield: WhiteSugar().Yield()}
	if !b.Hexose().IsZero() {
		t.Error(b.Hexose())
	}
	p := must(Ferment{Brew: b, Temperature: room}.At(end))
	// It makes no CO2 and stays at rest with that of air: [H+]² = K1·0.039·420e-6.
	near(t, "pH of water in air", p.PH.Value, 5.58, 0.01, "carbonic acid: pK1 6.38, 0.039 mol/L an atmosphere")
	// One kilogram of glucose is used as one.
	wash := must(water.AddExtract(gravity.Glucose, units.Kilogram.Of(1)))
	near(t, "glucose", Brew{Start: wash, Finish: wash, Used: units.Kilogram.Of(1)}.Hexose().In(units.Kilogram), 1, 1e-12, "no inversion")
}

// A brine is beyond the activity coefficients: every way to its pH says so.
func TestFermentOfBrine(t *testing.T) {
	f := hall(DiammoniumPhosphate())
	f.Water = must(water.NewProfile(room, units.CalciumCarbonate{}, water.Sodium.At(mgPerL(15000)), water.Chloride.At(mgPerL(23130))))
	half := units.Percent.Of(50)
	for what, try := range map[string]func() error{
		"At":        func() error { _, err := f.At(half); return err },
		"Course":    func() error { _, err := f.Course(2); return err },
		"BufferFor": func() error { _, err := f.BufferFor(3.5, SodiumBicarbonate); return err },
		"Correct":   func() error { _, err := f.Correct(half, 3, 3.5, SodiumBicarbonate); return err },
	} {
		if e, ok := errors.AsType[*units.RangeError](try()); !ok || e.Quantity != "ionic strength" {
			t.Errorf("%s: %v", what, e)
		}
	}
}

// PH is that of At, and refuses what At refuses.
func TestPHIsThatOfAt(t *testing.T) {
	f := hall(DiammoniumPhosphate())
	for _, used := range []float64{0, 1.0 / 3, 1} {
		if got, want := must(f.PH(share(used))), must(f.At(share(used))).PH.Value; got != want {
			t.Errorf("%v: %v, not %v", used, got, want)
		}
	}
	if v, err := f.PH(units.Percent.Of(101)); err == nil || v != 0 {
		t.Errorf("%v, %v", v, err)
	}
}

// The ammonium, phosphate and potassium of the water feed the yeast like any other: all of
// them are used when they are short.
func TestWaterFeedsTheYeast(t *testing.T) {
	f := hall(DiammoniumPhosphate())
	f.Feed = nil
	mg := func(i water.Ion, mmol float64) water.Content { return i.At(mgPerL(mmol * i.MolarMass())) }
	f.Water = must(water.NewProfile(room, units.MilligramPerLitreCaCO3.Of(100), mg(water.Ammonium, 1), mg(water.Phosphate, 0.01), mg(water.Potassium, 0.01)))
	b := must(f.At(end)).Balance
	litres := f.Brew.Water.In(units.Kilogram) / 0.9982
	near(t, "nitrogen", b.Ammonium.In(units.Gram), 0.014007*litres, 1e-6, "1 mmol/L")
	near(t, "phosphorus", b.Phosphorus.In(units.Gram), 0.00030974*litres, 1e-8, "0.01 mmol/L")
	near(t, "potassium", b.Potassium.In(units.Gram), 0.00039098*litres, 1e-8, "0.01 mmol/L")
}
