package ferment

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"pgregory.net/rapid"
)

// Just enough is found: the floor is met at the dose, and not below it.
func TestBufferForMeetsTheFloorExactly(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFerment(t)
		b := Buffers()[rapid.IntRange(0, 3).Draw(t, "the buffer to add")]
		f.Buffer = material.Dose{}
		start := check.Must(f.At(end)).PH.Value
		// From a hair above what it has anyway to units above.
		floor := start + math.Pow(10, rapid.Float64Range(-14, 0.3).Draw(t, "log of the rise"))
		if floor < 2.5 || floor > 5.5 {
			return
		}
		dose, err := f.BufferFor(b, floor)
		if r, refused := errors.AsType[*units.RangeError](err); refused && r.Quantity == "pH" && r.Max < floor {
			return // 20 g/L do not reach it, with the most acids
		}
		f.Buffer = b.Dose(check.Must(dose, err).Mass.Value)
		off := 1e-6 // 1e-7 mEq/L in a liquid that takes 0.3 for 1 pH, and more
		if rise := floor - start; rise < 5e-4 {
			off = max(off, rise) // yeast that lacks potassium takes the first of it, which lifts nothing
		}
		if p := check.Must(f.At(end)).PH.Value; math.Abs(p-floor) > off {
			t.Fatalf("ends at %.12g, wanted %.12g", p, floor)
		}
	})
}

// The three doses are for the usual, the least and the most acids, each as if alone.
func TestBufferForEachMetabolism(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	for _, b := range Buffers() {
		d := check.Must(f.BufferFor(b, 4))
		for _, c := range []struct {
			what string
			m    Metabolism
			got  units.Mass
		}{{"least", UsualMetabolism().LeastAcids(), d.Mass.Low}, {"most", UsualMetabolism().MostAcids(), d.Mass.High}} {
			g := f
			g.Metabolism = c.m
			want := check.Must(g.BufferFor(b, 4)).Mass.Value.In(units.Gram)
			// Both searches end within sameCharge of the floor, of which a mole takes half or more.
			tol := 4 * sameCharge / 1000 * b.MolarMass().In(units.GramPerMole) * f.Brew.Finish.VolumeAt20().In(units.Litre)
			check.Near(t, b.String()+" "+c.what, c.got.In(units.Gram), want, tol, "alone")
		}
	}
}

// With the acids known every figure is the usual one, of dose, pH and correction, and none has a range.
func TestAcidsKnown(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	known := f
	known.AcidsKnown = true
	one := func(what string, with, without evidence.Figure[float64]) {
		t.Helper()
		check.Near(t, what, with.Value, without.Value, 1e-9, "the same")
		if with.Low != with.Value || with.High != with.Value || without.Low >= without.High {
			t.Errorf("%s: %v, %v", what, with, without)
		}
	}
	grams := func(d BufferDose) evidence.Figure[float64] {
		return evidence.Figure[float64]{Value: d.Mass.Value.In(units.Gram), Low: d.Mass.Low.In(units.Gram), High: d.Mass.High.In(units.Gram)}
	}
	salt := shelf.Material("trisodium citrate dihydrate")
	one("dose", grams(check.Must(known.BufferFor(salt, 4))), grams(check.Must(f.BufferFor(salt, 4))))
	one("pH", check.Must(known.At(end)).PH, check.Must(f.At(end)).PH)
	half := units.Percent.Of(50)
	with, without := check.Must(known.Correct(salt, half, 2.8, 3.2)), check.Must(f.Correct(salt, half, 2.8, 3.2))
	one("correction", grams(with.Dose), grams(without.Dose))
	one("pH at the end", with.End, without.End)
}

// 900 mg/L of nitrogen as sulfate sets 64 mmol/L of H+ free; 20 g/L of citrate hold the
// pH they hold and no higher one.
func TestBufferForRefusesMoreThanADrinkBears(t *testing.T) {
	f := hall(material.AmmoniumSulfate())
	f.Feed[0].Mass = amount.Grams(0.9 * 60 / f.Feed[0].Material.Composition().Nitrogen().In(units.Fraction))
	// The most acids are what cannot be met; the error names the pH reached.
	g := f
	g.Metabolism = UsualMetabolism()
	g.Buffer = shelf.Material("trisodium citrate dihydrate").Dose(units.Gram.Of(19.99999999 * 60))
	_, err := f.BufferFor(shelf.Material("trisodium citrate dihydrate"), 6)
	e, ok := errors.AsType[*units.RangeError](err)
	if !ok || e.Quantity != "pH" || e.Value != 6 || e.Min != 2.5 || math.Abs(e.Max-check.Must(g.At(end)).PH.Value) > 1e-7 {
		t.Errorf("%v", err)
	}
	// A gram below 20 g/L is found.
	g.Buffer.Mass = units.Gram.Of(19.9 * 60)
	floor := check.Must(g.At(end)).PH.Low
	d := check.Must(f.BufferFor(shelf.Material("trisodium citrate dihydrate"), floor))
	check.Near(t, "dose", d.Mass.High.In(units.Gram), 19.9*60, 1e-5, "the same")
	if _, err = (Tank{}).BufferFor(shelf.Material("trisodium citrate dihydrate"), 3.5); err == nil {
		t.Error("no brew is taken")
	}
}

// Cautions of a dose: what it makes taste, and the foam.
func TestBufferDoseCautions(t *testing.T) {
	f := hall(material.AmmoniumSulfate())
	c := check.Must(f.checked("test"))
	dose := func(m material.Material, mmol float64) string {
		b := check.Must(bufferOf("test", m))
		return strings.Join(check.Must(c.doseOf(b, [3]float64{mmol, mmol, mmol})).Cautions.Texts(), "\n")
	}
	// 9 mmol/L of sodium are 207 mg/L.
	if s := dose(material.BakingSoda(), 9); !strings.HasPrefix(s, "207 mg/L of sodium may taste: from 200 mg/L it does.\n") || !strings.Contains(s, "foams") {
		t.Errorf("%q", s)
	}
	for b, want := range map[material.Material]bool{material.BakingSoda(): true, material.PotassiumBicarbonate(): true,
		shelf.Material("trisodium citrate dihydrate"): false, shelf.Material("tripotassium citrate monohydrate"): false} {
		if s := dose(b, 0.5); strings.Contains(s, "foams") != want || strings.Contains(s, "taste") {
			t.Errorf("%s, 0.5 mmol/L: %q", b, s)
		}
		if s := dose(b, 0); s != "" {
			t.Errorf("%s, none: %q", b, s)
		}
	}
	// A salty water: half a mmol of sodium is too much, and no potassium is no fault of it.
	c.start.Sodium, c.start.Potassium = 250/water.Sodium.MolarMass().In(units.GramPerMole), 500/water.Potassium.MolarMass().In(units.GramPerMole)
	if s := dose(material.BakingSoda(), 0.5); !strings.Contains(s, "sodium may taste") || strings.Contains(s, "potassium") {
		t.Errorf("%q", s)
	}
	// Where no water is added, as to juice, there is none to hold the ions.
	c.perLitre = 0
	if d := check.Must(c.doseOf(check.Must(bufferOf("test", material.BakingSoda())), [3]float64{9, 9, 9})); d.Water != f.Water {
		t.Errorf("%+v", d.Water)
	}
}

// After the dose of a correction the rest of the sugar ferments: from the foreseen pH at
// the start of the ferment, with the dose as if it had been there, it ends as foreseen.
func TestCorrectEnd(t *testing.T) {
	f := hall(material.AutolysedYeast())
	f.Additions = 1
	used := units.Percent.Of(40)
	c := check.Must(f.Correct(material.BakingSoda(), used, check.Must(f.At(used)).PH.Value, 4))
	f.Buffer = material.BakingSoda().Dose(c.Dose.Mass.Value)
	check.Near(t, "end", c.End.Value, check.Must(f.At(end)).PH.Value, 1e-6, "the buffer beside the water")
	check.Near(t, "end", c.End.Value, 4, 1e-6, "the pH asked for")

	// With its sugar all but used, now is the end.
	check.Near(t, "now", check.Must(hall(material.AutolysedYeast()).Correct(material.BakingSoda(), units.Percent.Of(100), 3, 3.6)).Now.Value,
		3.6, 1e-6, "nothing is to come")
}

// Where the boil may have dropped chalk, the advice is: the dose without any loss first, and
// the rest by a meter when half of the sugar is used. Carried to its end in the water that
// lost the most, it holds the floor, and takes no more than the dose that was right from the
// start; in the water that lost none the first dose is enough.
func TestStagedBufferAtTheLeastAlkalinity(t *testing.T) {
	const floor = 3.6
	mg := units.MilligramPerLitre.Of
	clear := hall(material.DiammoniumPhosphate())
	clear.Water = check.Must(water.NewProfile(amount.Room, units.MilligramPerLitreCaCO3.Of(90),
		water.Calcium.At(mg(50)), water.Potassium.At(mg(20)), water.Sulfate.At(mg(40)), water.Chloride.At(mg(30))))
	least := clear
	least.Water = check.Must(clear.Water.Boiled()).Equilibrium.Water()
	if was, is := clear.Water.Alkalinity(), least.Water.Alkalinity(); is.In(units.MilligramPerLitreCaCO3) > was.In(units.MilligramPerLitreCaCO3)/2 {
		t.Fatalf("%v of %v is left: the case is not wide", is, was)
	}
	first := check.Must(clear.BufferFor(material.PotassiumBicarbonate(), floor)).Mass.Value
	whole := check.Must(least.BufferFor(material.PotassiumBicarbonate(), floor)).Mass.Value

	least.Buffer = material.PotassiumBicarbonate().Dose(first)
	if low := check.Must(least.At(end)).PH.Value; low > floor-0.3 {
		t.Fatalf("the first dose alone ends at %.2f: the case is not wide", low)
	}
	half := units.Percent.Of(50)
	c := check.Must(least.Correct(material.PotassiumBicarbonate(), half, check.Must(least.At(half)).PH.Value, floor))
	check.Near(t, "both doses", first.Plus(c.Dose.Mass.Value).In(units.Gram), whole.In(units.Gram), 0.02*whole.In(units.Gram), "one buffer, whenever it goes in")
	least.Buffer.Mass = first.Plus(c.Dose.Mass.Value)
	if last := check.Must(least.At(end)).PH.Value; !(last >= floor-1e-6 && last < floor+0.05) {
		t.Errorf("the staged doses end at pH %.3f, the floor is %g", last, floor)
	}
	check.Near(t, "the correction says so", c.End.Value, check.Must(least.At(end)).PH.Value, 1e-6, "the same liquid")

	clear.Buffer = material.PotassiumBicarbonate().Dose(first)
	check.Near(t, "where nothing dropped, the first dose alone", check.Must(clear.At(end)).PH.Value, floor, 1e-5, "the floor")
}
