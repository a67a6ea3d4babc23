package ferment

import (
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/acidity"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"pgregory.net/rapid"
)

// hall is the wash of the village hall in pure water: 60 L at 4.6 % vol, fed by one
// source for a medium strain, 67 mg/L of nitrogen.
func hall(s material.Material) Tank {
	b := check.Must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60)))
	n := s.Composition().Nitrogen().In(units.Fraction)
	return Tank{Brew: b, Feed: []material.Dose{{Material: s, Mass: amount.Grams(0.067 * 60 / n)}}, Additions: 3, Temperature: amount.Room}
}

var end = units.Percent.Of(100)

// The limit cases: a wash without alkalinity fed with ammonium salts alone ends between
// pH 2.3 and 3.0 (sugar washes were seen to fall to 2.5 to 3); fed with amino nitrogen
// alone between 3.0 and 3.6; half a gram of potassium bicarbonate a litre lifts either by
// a unit.
func TestEndPHOfTheLimitCases(t *testing.T) {
	for _, s := range []material.Material{material.DiammoniumPhosphate(), material.MonoammoniumPhosphate(), material.AmmoniumSulfate()} {
		p := check.Must(hall(s).At(end)).PH
		if !(p.Low >= 2.3 && p.High <= 3.0) {
			t.Errorf("%s: %+v, want 2.3 to 3.0", s, p)
		}
	}
	p := check.Must(hall(material.AutolysedYeast()).At(end)).PH
	if !(p.Low >= 3.0 && p.High <= 3.6+0.05) || p.Value < 3.0 || p.Value > 3.6 {
		t.Errorf("amino: %+v, want 3.0 to 3.6", p)
	}
	for _, s := range []material.Material{material.DiammoniumPhosphate(), material.AutolysedYeast()} {
		f := hall(s)
		before := check.Must(f.At(end)).PH.Value
		f.Buffer = material.PotassiumBicarbonate().Dose(units.Gram.Of(30))
		if after := check.Must(f.At(end)).PH.Value; after < before+1 {
			t.Errorf("%s: from %.2f to %.2f with 0.5 g/L of potassium bicarbonate", s, before, after)
		}
	}
	// The phosphate takes a part of its protons with it; the sulfate does not.
	dap, sulfate := check.Must(hall(material.DiammoniumPhosphate()).At(end)).PH.Value, check.Must(hall(material.AmmoniumSulfate()).At(end)).PH.Value
	if dap < sulfate+0.3 {
		t.Errorf("DAP %.2f, sulfate %.2f", dap, sulfate)
	}
}

// Strong acid by hand: 67 mg/L of ammonium N as sulfate leaves 4.78 mmol/L of protons, of
// which the 2.39 mmol/L of sulfate bind a part: pK 1.99 (NIST 46), 1.86 at this ionic
// strength; the activity coefficient of H+ is 0.93.
func TestEndPHByHand(t *testing.T) {
	f := hall(material.AmmoniumSulfate())
	f.Metabolism = UsualMetabolism()
	f.Metabolism.Succinic, f.Metabolism.Acetic, f.Metabolism.Lactic = units.Share{}, units.Share{}, units.Share{}
	c := check.Must(f.checked("test"))
	rest := check.Must(c.rests(f.Metabolism, 1))
	got := rest.PH()
	acid := 0.067 / 14.007 / c.water // mol in a litre of the water that it is in
	h := acid
	for range 100 {
		h = acid - acid/2*h/(h+math.Pow(10, -1.86))
	}
	check.Near(t, "pH", got, -math.Log10(0.93*h), 0.01, "by hand")
}

// What yeast gives off and takes up stands in the alkalinity, proton by proton.
func TestFermentKeepsCharge(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFerment(t)
		x := rapid.Float64Range(0.01, 1).Draw(t, "sugar used")
		c := check.Must(f.checked("test"))
		b := c.balance(c.Metabolism, x)
		before := c.start.Fed(c.feed, c.fed(x))
		after := c.acidity(b, x)
		per := 1000 / c.litres
		acids := per * (2*b.moles().succinic + b.moles().acetic + b.moles().lactic)
		alkalinity := func(a acidity.Liquid) float64 {
			return a.Strong - a.Phosphate - 2*a.Organic[acidity.Succinic] - a.Organic[acidity.Acetic] - a.Organic[acidity.Lactic] - 3*a.Organic[acidity.Citric]
		}
		want := -per*b.Protons.In(units.Mole) - acids
		if got := alkalinity(after) - alkalinity(before); math.Abs(got-want) > 1e-10*math.Max(1, math.Abs(want)) {
			t.Fatalf("alkalinity changes by %g mEq/L, protons and acids are %g", got, want)
		}
		// Nitrogen: fed and in the water = taken up and left.
		fed := c.start.Ammonium*formula.WeightN + c.fed(x)*c.feed.Nitrogen().In(units.MilligramPerLitre)
		p := check.Must(f.At(amount.Share(x)))
		taken := b.Ammonium.Plus(b.Amino).Plus(b.Urea).In(units.Milligram) / c.litres
		if d := fed - taken - p.Nitrogen.In(units.MilligramPerLitre); math.Abs(d) > 1e-8 {
			t.Fatalf("nitrogen: %g mg/L missing", d)
		}
		// The liquid as a water holds the same.
		back := acidity.Of(p.Liquid)
		if math.Abs(back.Strong-after.Strong) > 1e-9 || math.Abs(back.Phosphate-after.Phosphate) > 1e-9 ||
			math.Abs(back.Organic[acidity.Succinic]-after.Organic[acidity.Succinic]) > 1e-9 {
			t.Fatalf("as a water: %+v, %+v", back, after)
		}
	})
}

func drawFerment(t *rapid.T) Tank {
	var feed []material.Dose
	for _, s := range []material.Material{material.DiammoniumPhosphate(), material.AmmoniumSulfate(), material.AutolysedYeast()} {
		feed = append(feed, material.Dose{Material: s, Mass: check.Must(units.Gram.Try(rapid.Float64Range(0, 30).Draw(t, s.Name()+", g")))})
	}
	ion := func(what string, most float64) units.MassConcentration {
		return check.Must(units.MilligramPerLitre.Try(rapid.Float64Range(0, most).Draw(t, what+", mg/L")))
	}
	alkalinity := check.Must(units.MilligramPerLitreCaCO3.Try(rapid.Float64Range(0, 300).Draw(t, "alkalinity")))
	return Tank{
		Brew: check.Must(sugar.ForStrength(material.WhiteSugar(), check.Must(units.PercentVolume.Try(rapid.Float64Range(2, 10).Draw(t, "strength, % vol"))),
			units.Litre.Of(60))),
		Water: check.Must(water.NewProfile(units.Celsius.Of(15), alkalinity, water.Potassium.At(ion("potassium", 300)), water.Sodium.At(ion("sodium", 100)),
			water.Calcium.At(ion("calcium", 100)), water.Phosphate.At(ion("phosphate", 20)), water.Ammonium.At(ion("ammonium", 5)))),
		Feed: feed, Additions: rapid.IntRange(1, 5).Draw(t, "additions"), Temperature: amount.Room,
		Buffer: Buffers()[rapid.IntRange(0, 3).Draw(t, "buffer")].Dose(check.Must(units.Gram.Try(rapid.Float64Range(0, 60).Draw(t, "buffer, g")))),
	}
}

func TestBufferDoseRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFerment(t)
		b := Buffers()[rapid.IntRange(0, 3).Draw(t, "the buffer to add")]
		f.Buffer = material.Dose{}
		floor := rapid.Float64Range(2.6, 4.5).Draw(t, "floor")
		d := check.Must(f.BufferFor(b, floor))
		if d.Mass.Value.IsZero() {
			if p := check.Must(f.At(end)).PH.Value; p < floor-1e-9 {
				t.Fatalf("no dose at pH %g", p)
			}
			return
		}
		f.Buffer = b.Dose(d.Mass.Value)
		if p := check.Must(f.At(end)).PH.Value; math.Abs(p-floor) > 1e-6 {
			t.Fatalf("ends at %g, wanted %g", p, floor)
		}
		if d.Mass.Low.Compare(d.Mass.Value) > 0 || d.Mass.High.Compare(d.Mass.Value) < 0 {
			t.Fatalf("%+v", d.Mass)
		}
		// The water with the ions of the dose is the same as the dose beside the water.
		g := f
		g.Water, g.Buffer = d.Water, material.Dose{}
		if p, q := check.Must(f.At(end)).PH.Value, check.Must(g.At(end)).PH.Value; math.Abs(p-q) > 1e-6 {
			t.Fatalf("%g with the dose, %g with its ions in the water", p, q)
		}
	})
}

// Potassium citrate is left out: yeast short of potassium takes it up, sets H+ free and
// leaves the citric acid, so that a little of it can lower the pH.
func TestMoreBufferMeansHigherPH(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		f := drawFerment(t)
		if f.Buffer.Material == shelf.Material("tripotassium citrate monohydrate") {
			f.Buffer.Material = shelf.Material("trisodium citrate dihydrate")
		}
		before := check.Must(f.At(end)).PH.Value
		f.Buffer.Mass = f.Buffer.Mass.Plus(units.Gram.Of(5))
		if after := check.Must(f.At(end)).PH.Value; after <= before {
			t.Fatalf("%g after %g", after, before)
		}
	})
}

func TestCorrect(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	half := units.Percent.Of(50)
	foreseen := check.Must(f.At(half)).PH.Value
	c := check.Must(f.Correct(material.PotassiumBicarbonate(), half, foreseen, 3.6))
	check.Near(t, "unexplained", c.Unexplained.In(units.MilliequivalentPerLitre), 0, 1e-6, "the pH foreseen")
	// The advice tried to its end: the ferment with the dose beside its water falls to 3.6
	// with the last of its sugar, and stood higher when the dose was stirred in.
	with := f
	with.Buffer = material.PotassiumBicarbonate().Dose(c.Dose.Mass.Value)
	check.Near(t, "end", check.Must(with.At(end)).PH.Value, 3.6, 1e-6, "asked")
	now := check.Must(f.checked("test"))
	a := now.acidity(now.balance(now.Metabolism, 0.5), 0.5)
	mmol := c.Dose.Mass.Value.In(units.Gram) / material.PotassiumBicarbonate().MolarMass().In(units.GramPerMole) / 60 * 1000
	check.Near(t, "pH now", check.Must(check.Must(bufferOf("test", material.PotassiumBicarbonate())).in(a, mmol).PH(now.around(0.5))),
		c.Now.Value, 1e-6, "the dose stirred in")
	if !(c.End.Low < c.End.Value && c.End.Value < c.End.High && c.Now.Value > 3.6) || len(c.Cautions) != 1 {
		t.Errorf("%+v", c)
	}
	// A sourer one than foreseen holds more acid and takes more.
	d := check.Must(f.Correct(material.PotassiumBicarbonate(), half, foreseen-0.1, 3.6))
	if d.Unexplained.In(units.MilliequivalentPerLitre) <= 0 || d.Dose.Mass.Value.Compare(c.Dose.Mass.Value) <= 0 {
		t.Errorf("%+v", d)
	}
	_, err := f.Correct(material.PotassiumBicarbonate(), half, 1.9, 3.6)
	check.Refused(t, err, "measured pH", 2, 6)
	_, err = f.Correct(material.PotassiumBicarbonate(), half, 3, 2.9)
	check.Refused(t, err, "pH", 3, 6.5)
	_, err = f.Correct(material.PotassiumBicarbonate(), units.Share{}, 3, 3.5)
	check.Refused(t, err, "share of the sugar used", 0.1, 100)
	if _, err = (Tank{}).Correct(material.PotassiumBicarbonate(), half, 3, 3.5); err == nil {
		t.Error("no brew is taken")
	}
}

func TestCourse(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	c := check.Must(f.Course(6))
	if len(c.Points) != 7 {
		t.Fatal(len(c.Points))
	}
	for i, p := range c.Points {
		if i > 0 && !(p.PH.Value < c.Points[i-1].PH.Value && p.Gravity.SG() < c.Points[i-1].Gravity.SG() && p.CO2.Compare(c.Points[i-1].CO2) > 0) {
			t.Errorf("point %d: %+v", i, p)
		}
	}
	check.Near(t, "nitrogen at the start", c.Points[0].Nitrogen.In(units.MilligramPerLitre), 67.0/3, 1e-6, "a third of the feed")
	check.Near(t, "nitrogen at the end", c.Points[6].Nitrogen.In(units.MilligramPerLitre), 0, 1e-6, "all of it used")
	check.Near(t, "strength", c.Points[6].Strength.In(units.PercentVolume), 4.6, 1e-9, "asked")
	all := strings.Join(c.Cautions.Texts(), "\n")
	if !strings.Contains(all, "likely to stop") || !strings.Contains(all, "Potassium is about 0 mg/L") {
		t.Errorf("%s", all)
	}
	f.Buffer = material.PotassiumBicarbonate().Dose(units.Gram.Of(50))
	if c = check.Must(f.Course(6)); len(c.Cautions) != 1 || !strings.Contains(c.Cautions[0].Text(), "Keep half of the buffer back until a sixth") {
		t.Errorf("%q", c.Cautions)
	}
	// What the caution says of that sixth: half of the buffer, below 7.
	f.Buffer.Mass = units.Gram.Of(25)
	if ph := check.Must(f.At(amount.Share(1.0 / 6))).PH.Value; ph >= 7 {
		t.Errorf("pH %.2f at a sixth", ph)
	}
	f.Buffer.Mass = units.Gram.Of(21)
	if c = check.Must(f.Course(6)); !strings.Contains(strings.Join(c.Cautions.Texts(), "\n"), "may fall to") {
		t.Errorf("%q", c.Cautions)
	}
	f.Feed = append(f.Feed, material.Dose{Material: material.DiammoniumPhosphate(), Mass: units.Gram.Of(120)})
	if c = check.Must(f.Course(6)); !strings.Contains(strings.Join(c.Cautions.Texts(), "\n"), "is left at the end") {
		t.Errorf("%q", c.Cautions)
	}
	for _, steps := range []int{0, 201} {
		_, err := f.Course(steps)
		check.Refused(t, err, "steps", 1, 200)
	}
	if _, err := (Tank{}).Course(3); err == nil {
		t.Error("no brew is taken")
	}
}

func TestFiguresOfTheFerment(t *testing.T) {
	floor := FloorPH()
	check.Near(t, "floor", floor.Value, 3.5, 0, floor.Evidence.Source)
	check.Near(t, "floor low", floor.Low, 3.5, 0, floor.Evidence.Source)
	check.Near(t, "floor high", floor.High, 4, 0, floor.Evidence.Source)
	pitch := PitchPH()
	check.Near(t, "pitch", pitch.Value, 8.3, 0, "common practice, no source")
	check.Near(t, "pitch low", pitch.Low, 8, 0, "common practice, no source")
	check.Near(t, "pitch high", pitch.High, 8.5, 0, "common practice, no source")
	gone := NitrogenUptake()
	check.Near(t, "gone", gone.Value.In(units.Percent), 50, 0, "common practice, no source")
	check.Near(t, "gone low", gone.Low.In(units.Percent), 100.0/3, 1e-9, "common practice, no source")
	check.Near(t, "gone high", gone.High.In(units.Percent), 200.0/3, 1e-9, "common practice, no source")
	na, k, cit := TasteThresholds()
	for _, c := range []struct {
		f                evidence.Figure[units.MassConcentration]
		value, low, high float64
	}{{na, 200, 100, 200}, {k, 400, 300, 600}, {cit, 300, 100, 400}} {
		check.Near(t, "taste", c.f.Value.In(units.MilligramPerLitre), c.value, 0, "98/83/EC for sodium; common practice, no source")
		check.Near(t, "taste low", c.f.Low.In(units.MilligramPerLitre), c.low, 0, "common practice, no source")
		check.Near(t, "taste high", c.f.High.In(units.MilligramPerLitre), c.high, 0, "common practice, no source")
	}
}

// 100.114, 84.006 g/mol; citrates 324.41 and 294.10 with their crystal water.
func TestBuffers(t *testing.T) {
	for b, want := range map[material.Material]float64{material.PotassiumBicarbonate(): 100.114, material.BakingSoda(): 84.006,
		shelf.Material("tripotassium citrate monohydrate"): 324.41, shelf.Material("trisodium citrate dihydrate"): 294.10} {
		check.Near(t, b.String(), b.MolarMass().In(units.GramPerMole), want, 0.006, "CIAAW 2021, computed")
	}
	for text, want := range map[string]material.Material{"khco3": material.PotassiumBicarbonate(), "baking soda": material.BakingSoda(),
		"potassium citrate": shelf.Material("tripotassium citrate monohydrate"), "sodium citrate": shelf.Material("trisodium citrate dihydrate")} {
		if got, err := material.FindAmong(text, Buffers()...); err != nil || got != want {
			t.Errorf("%s: %v, %v", text, got, err)
		}
	}
	f := hall(material.DiammoniumPhosphate())
	for _, none := range []material.Material{{}, material.Chalk()} {
		f.Buffer = none.Dose(units.Gram.Of(1))
		_, at := f.At(end)
		_, dose := hall(material.DiammoniumPhosphate()).BufferFor(none, 3.5)
		_, correct := hall(material.DiammoniumPhosphate()).Correct(none, end, 3, 3.5)
		for _, err := range []error{at, dose, correct} {
			if e, ok := errors.AsType[*units.NameError](err); !ok || e.What != "buffer" || len(e.Choices) != 4 {
				t.Error(err)
			}
		}
	}
	// 5 mmol/L of each: charge, potassium and citrate.
	for m, want := range map[material.Material][3]float64{material.PotassiumBicarbonate(): {5, 5, 0}, material.BakingSoda(): {5, 0, 0},
		shelf.Material("tripotassium citrate monohydrate"): {15, 15, 5}, shelf.Material("trisodium citrate dihydrate"): {15, 0, 5}} {
		a := check.Must(bufferOf("test", m)).in(acidity.Liquid{}, 5)
		if a.Strong != want[0] || a.Potassium != want[1] || a.Organic[acidity.Citric] != want[2] {
			t.Errorf("%v: %+v", m, a)
		}
	}
	d := check.Must(hall(material.AmmoniumSulfate()).BufferFor(material.BakingSoda(), 4.8))
	if !strings.Contains(strings.Join(d.Cautions.Texts(), "\n"), "sodium may taste") {
		t.Errorf("%q", d.Cautions)
	}
	_, err := hall(material.AmmoniumSulfate()).BufferFor(material.BakingSoda(), 2.4)
	check.Refused(t, err, "pH", 2.5, 6)
	_, err = hall(material.AmmoniumSulfate()).BufferFor(material.BakingSoda(), 6.1)
	check.Refused(t, err, "pH", 2.5, 6)
}

func TestFermentRefusesNonsense(t *testing.T) {
	ok := hall(material.DiammoniumPhosphate())
	_, err := ok.At(units.Share{}.Minus(units.Percent.Of(1)))
	check.Refused(t, err, "share of the sugar used", 0, 100)
	for _, c := range []struct {
		change   func(*Tank)
		what     string
		min, max float64
	}{
		{func(f *Tank) { f.Brew = sugar.Brew{} }, "volume of the brew", amount.LeastVolume, amount.MostVolume},
		{func(f *Tank) { f.Temperature = units.Celsius.Of(41) }, "temperature", 0, 40},
		{func(f *Tank) { f.Pressure = units.Kilopascal.Of(401) }, "pressure", 50, 400},
		{func(f *Tank) { f.Pressure = units.Kilopascal.Of(49) }, "pressure", 50, 400},
		{func(f *Tank) { f.Additions = 11 }, "additions", 1, 10},
		{func(f *Tank) { f.Metabolism = Metabolism{Glycerol: units.Percent.Of(3)} }, "lean nitrogen", 3, 12},
		{func(f *Tank) {
			f.Feed = []material.Dose{{Material: shelf.Material("urea"), Mass: units.Kilogram.Of(1)}}
		}, "nitrogen fed", 0, 1000},
		{func(f *Tank) { f.Buffer = material.PotassiumBicarbonate().Dose(units.Kilogram.Of(2)) }, "potassium bicarbonate", 0, 20},
		{func(f *Tank) {
			f.Feed = []material.Dose{{Material: shelf.Material("urea"), Mass: units.Mass{}.Minus(units.Gram.Of(1))}}
		}, "dose", 0, amount.MostMass},
	} {
		f := ok
		c.change(&f)
		_, err := f.At(end)
		check.Refused(t, err, c.what, c.min, c.max)
	}
}

// A yield made of the balance plans the same ethanol as the balance gives.
func TestBalanceYield(t *testing.T) {
	b := check.Must(UsualMetabolism().Ferment(Substrate{Hexose: units.Gram.Of(105.263), Ammonium: units.Gram.Of(0.1)}))
	y := check.Must(b.Yield(units.Gram.Of(100)))
	check.Near(t, "ethanol", y.Ethanol().In(units.Fraction), b.Ethanol.In(units.Gram)/100, 1e-9, "the balance")
	check.Near(t, "CO2", y.CO2().In(units.Fraction), b.CO2.In(units.Gram)/100, 1e-9, "the balance")
	check.Near(t, "water", y.Water().In(units.Fraction), 0.05263, 1e-9, "inversion")
	check.Near(t, "residue", y.Residue().In(units.Fraction), b.Glycerol.Plus(b.Succinic).Plus(b.Acetic).Plus(b.Lactic).In(units.Gram)/100, 1e-9, "the balance")
	// Without anything to grow on a little water beside the inversion's is used up, and nothing is yeast.
	b = check.Must(UsualMetabolism().Ferment(Substrate{Hexose: units.Gram.Of(105.263)}))
	y = check.Must(b.Yield(units.Gram.Of(100)))
	check.Near(t, "yeast", y.Biomass().In(units.Fraction), 0, 1e-12, "no nitrogen")
	check.Near(t, "water", y.Water().In(units.Fraction), 0.05263-b.Water.In(units.Gram)/100, 1e-5, "inversion and what the balance uses up")
	_, err := Balance{}.Yield(units.Mass{})
	check.Refused(t, err, "extract", 1e-9, 0)
	_, err = b.Yield(units.Gram.Of(106))
	check.Refused(t, err, "extract", 0.9*b.Hexose.In(units.Gram), b.Hexose.In(units.Gram))
}

func BenchmarkFermentAt(b *testing.B) {
	f := hall(material.DiammoniumPhosphate())
	b.ReportAllocs()
	for b.Loop() {
		if _, err := f.At(end); err != nil {
			b.Fatal(err)
		}
	}
}
