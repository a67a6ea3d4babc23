package sugar

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// European wine law counts 16.83 g/L of sugar (hexose) as 1 % vol (French order of 3 May
// 1996, art. 2); sucrose gains 5.26 % by inversion, so it takes 15.99 g/L.
func TestSugarForOnePercent(t *testing.T) {
	const source = "French order of 3 May 1996, art. 2"
	one, v := units.PercentVolume.Of(1), units.Litre.Of(1000)
	check.Near(t, "dextrose", check.Must(ForStrength(material.DextroseAnhydrous(), one, v)).Fermentable.In(units.Kilogram), 16.83, 0.003, source)
	check.Near(t, "sucrose", check.Must(ForStrength(material.Sucrose(), one, v)).Fermentable.In(units.Kilogram), 16.83/1.05263, 0.003, source)
	check.Near(t, "monohydrate", check.Must(ForStrength(material.DextroseMonohydrate(), one, v)).Fermentable.In(units.Kilogram),
		16.83*198.171/180.156, 0.004, source)
}

// 60 L at 4.6 % vol from white sugar: about 16 g/L for each % vol, 4.4 kg; the wash begins
// near 7.2 °P and ends below 1.000.
func TestSugarForTheHall(t *testing.T) {
	b := check.Must(ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60)))
	check.Near(t, "sugar", b.Fermentable.In(units.Kilogram), 60*4.6*0.01599/0.9994, 0.01, "16.83 g/L hexose for 1 % vol")
	check.Near(t, "strength", b.Finish.ByVolume().In(units.PercentVolume), 4.6, 1e-9, "asked")
	check.Near(t, "volume", check.Must(b.Finish.Volume(amount.Room)).In(units.Litre), 60, 1e-9, "asked")
	check.Near(t, "ethanol", b.Made.Ethanol.In(units.Kilogram), 60*0.046*0.78924, 1e-4, "OIML R 22: 789.24 kg/m³")
	if g := b.Finish.Gravity().SG(); g >= 1 || g < 0.990 {
		t.Errorf("finish %g: a dry sugar wash ends at 0.990 to 0.996 (common practice, no source)", g)
	}
	if len(b.Cautions) != 0 {
		t.Errorf("%q", b.Cautions)
	}
}

func drawWash(t *rapid.T) Wash {
	all := []material.Material{material.WhiteSugar(), material.DextroseMonohydrate(), material.DextroseAnhydrous(),
		shelf.Material("invert sugar syrup"), material.Honey(), shelf.Material("maple syrup"), shelf.Material("soft brown sugar"),
		shelf.Material("dry malt extract"), shelf.Material("liquid malt extract")}
	w := Wash{
		Fermentable: all[rapid.IntRange(0, len(all)-1).Draw(t, "fermentable")],
		Attenuation: check.Must(units.Percent.Try(rapid.Float64Range(60, 100).Draw(t, "attenuation, %"))),
	}
	size := rapid.Float64Range(0.5, 5000).Draw(t, "size, L or kg")
	v := check.Must(units.Litre.Try(size))
	switch rapid.IntRange(0, 2).Draw(t, "basis") {
	case 0:
		w.Basis = Finished(v)
	case 1:
		w.Basis = Kettle(v, check.Must(units.Celsius.Try(rapid.Float64Range(5, 99).Draw(t, "kettle, °C"))))
	default:
		w.Basis = WaterAtHand(check.Must(units.Kilogram.Try(size)))
	}
	if rapid.Bool().Draw(t, "with a base") {
		w.Base = check.Must(gravity.NewSolution(check.Must(units.Kilogram.Try(size/4)),
			check.Must(units.Kilogram.Try(size*rapid.Float64Range(0, 0.02).Draw(t, "base sugar"))), units.Mass{}))
	}
	return w
}

func TestSugarAndStrengthRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := drawWash(t)
		want := rapid.Float64Range(2.5, 11).Draw(t, "strength, % vol")
		b := check.Must(w.For(check.Must(units.PercentVolume.Try(want))))
		if d := b.Finish.ByVolume().In(units.PercentVolume) - want; math.Abs(d) > 1e-8 {
			t.Fatalf("strength off by %g", d)
		}
		again := check.Must(w.From(b.Fermentable))
		if d := again.Finish.ByVolume().In(units.PercentVolume) - want; math.Abs(d) > 1e-8 {
			t.Fatalf("reverse: strength off by %g", d)
		}
		in := b.Fermentable.Plus(b.Water).Plus(w.Base.Mass()).In(units.Kilogram)
		out := b.Finish.Mass().Plus(b.Made.CO2).Plus(b.Made.Biomass).In(units.Kilogram)
		if math.Abs(in-out) > 1e-11*in {
			t.Fatalf("mass: %g in, %g out", in, out)
		}
		switch w.Basis.kind {
		case finishedVolume:
			if v := check.Must(b.Finish.Volume(amount.Room)).In(units.Litre); math.Abs(v-w.Basis.litre) > 1e-9*v {
				t.Fatalf("finished volume %g", v)
			}
		case kettleVolume:
			if v := check.Must(b.Start.Volume(w.Basis.at)).In(units.Litre); math.Abs(v-w.Basis.litre) > 1e-9*v {
				t.Fatalf("kettle volume %g", v)
			}
		default:
			if b.Water.In(units.Kilogram) != w.Basis.kg {
				t.Fatalf("water %v", b.Water)
			}
		}
	})
}

// Half of the sugar makes half of the ethanol and gas, and the reading falls all the way.
func TestBrewAt(t *testing.T) {
	b := check.Must(ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60)))
	before := 2.0
	for i := range 11 {
		s, made, err := b.At(amount.Share(float64(i) / 10))
		if err != nil {
			t.Fatal(err)
		}
		check.Near(t, "ethanol", made.Ethanol.In(units.Gram), b.Made.Ethanol.In(units.Gram)*float64(i)/10, 1e-9, "in proportion")
		check.Near(t, "CO2", made.CO2.In(units.Gram), b.Made.CO2.In(units.Gram)*float64(i)/10, 1e-9, "in proportion")
		if g := s.Gravity().SG(); g >= before {
			t.Errorf("gravity %g after %g", g, before)
		} else {
			before = g
		}
	}
	check.Near(t, "end", before, b.Finish.Gravity().SG(), 1e-12, "the same")
	if _, _, err := (Brew{}).At(units.Percent.Of(50)); err == nil {
		t.Error("a zero Brew is taken")
	}
}

func TestMoreSugarIsStronger(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		w := drawWash(t)
		a := rapid.Float64Range(2.5, 10).Draw(t, "weaker, % vol")
		b := a + rapid.Float64Range(0.01, 1).Draw(t, "more, % vol")
		x := check.Must(w.For(check.Must(units.PercentVolume.Try(a)))).Fermentable
		y := check.Must(w.For(check.Must(units.PercentVolume.Try(b)))).Fermentable
		if x.Compare(y) >= 0 {
			t.Fatalf("%v for %g %% vol, %v for %g", x, a, y, b)
		}
	})
}

// Malt extract ferments with Balling's yield, sugar with the sugar wash's, a mix of
// both in between.
func TestYieldOfFermentables(t *testing.T) {
	check.Near(t, "malt", Of(shelf.Material("dry malt extract")).Yield().Ethanol().In(units.Fraction), 0.48391, 1e-9, "Balling")
	check.Near(t, "sucrose", Of(material.WhiteSugar()).Yield().Ethanol().In(units.Fraction), 0.46895*1.05263, 1e-4, "16.83 g/L for 1 % vol")
	check.Near(t, "dextrose", Of(material.DextroseMonohydrate()).Yield().Ethanol().In(units.Fraction), 7.8924/16.83, 1e-4, "16.83 g/L for 1 % vol")
	check.Near(t, "invert", Of(shelf.Material("invert sugar syrup")).Yield().Ethanol().In(units.Fraction), 0.46895*(1+0.05263/2), 1e-4, "half of each")
	check.Near(t, "lactose", Of(shelf.Material("lactose monohydrate")).Yield().Ethanol().In(units.Fraction), 0.46895*1.05263, 1e-4, "counts as sucrose")
	half := check.Must(material.Mix(material.Ingredient{Material: shelf.Material("dry malt extract"), Share: units.Percent.Of(50)},
		material.Ingredient{Material: material.DextroseAnhydrous(), Share: units.Percent.Of(50)}))
	malt := 0.97 * 0.65
	check.Near(t, "mix", Of(half).Yield().Ethanol().In(units.Fraction), (malt*0.48391+1*0.46895)/(malt+1), 3e-5, "by mass of sugar")
}

// A brew of nothing has used nothing.
func TestHexoseOfNothing(t *testing.T) {
	if got := (Brew{}).Hexose(); got != (units.Mass{}) {
		t.Error(got)
	}
}

func TestWashRefuses(t *testing.T) {
	ok := Wash{Fermentable: material.WhiteSugar(), Attenuation: units.Percent.Of(100), Basis: Finished(units.Litre.Of(60))}
	_, err := ok.For(units.PercentVolume.Of(30))
	check.Refused(t, err, "strength", 0.01, 20)
	_, err = ok.For(units.StrengthByVolume{})
	check.Refused(t, err, "strength", 0.01, 20)
	w := ok
	w.Attenuation = units.Share{}
	_, err = w.For(units.PercentVolume.Of(5))
	check.Refused(t, err, "attenuation", 0.1, 100)
	w = ok
	w.Basis = Basis{}
	_, err = w.For(units.PercentVolume.Of(5))
	check.Refused(t, err, "basis", 1, 3)
	w.Basis = Finished(units.Volume{})
	_, err = w.For(units.PercentVolume.Of(5))
	check.Refused(t, err, "volume", 1e-6, amount.MostVolume)
	w.Basis = WaterAtHand(units.Mass{})
	_, err = w.From(units.Kilogram.Of(1))
	check.Refused(t, err, "water", 1e-6, amount.MostVolume)
	w = ok
	w.Fermentable = shelf.Material("lactose monohydrate")
	_, err = w.For(units.PercentVolume.Of(5))
	check.Refused(t, err, "sugar that yeast takes up", 0.1, 100)
	w = ok
	w.Base = check.Must(gravity.NewSolution(units.Kilogram.Of(50), units.Kilogram.Of(5), units.Mass{}))
	_, err = w.For(units.PercentVolume.Of(2))
	if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Max != 20 || math.Abs(e.Min-100*5*0.46895*1.05263/0.78924/60) > 0.001 {
		t.Errorf("%v, want 5.21 %% vol: 5 kg of sucrose in 60 L", err)
	}
	w.Basis = WaterAtHand(units.Kilogram.Of(10))
	_, err = w.For(units.PercentVolume.Of(2))
	check.Refused(t, err, "strength", check.Must(w.From(units.Mass{})).Finish.ByVolume().In(units.PercentVolume), 20)
	w.Basis = ok.Basis
	w.Base = check.Must(gravity.NewSolution(units.Kilogram.Of(80), units.Mass{}, units.Mass{}))
	_, err = w.From(units.Mass{})
	// With a ten thousandth of the 60 L as the least water.
	least := check.Must(check.Must(w.Base.AddWater(units.Gram.Of(6))).Volume(amount.Room)).In(units.Litre)
	if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Quantity != "volume" || math.Abs(e.Min-least) > 1e-5 {
		t.Errorf("%v, want at least %g L", err, least)
	}
	w.Basis = Kettle(units.Litre.Of(60), amount.Room)
	if _, err = w.For(units.PercentVolume.Of(2)); err == nil {
		t.Error("a base above the volume is taken")
	}
	// Must of 12 °Bx holds 6 % vol; a kilogram of water beside it leaves a little less.
	must12 := Wash{Fermentable: check.Must(material.Juice(units.DegreePlato.Of(12), units.Share{})), Attenuation: units.Percent.Of(100),
		Basis: WaterAtHand(units.Kilogram.Of(1))}
	_, err = must12.For(units.PercentVolume.Of(8))
	if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Min != 0.01 || !(e.Max > 5 && e.Max < 6.2) {
		t.Errorf("%v, want 0.01 to about 5.7", err)
	}
	check.Must(must12.For(units.PercentVolume.Of(5)))
	w = ok
	w.Attenuation = units.Percent.Of(1)
	if _, err = w.For(units.PercentVolume.Of(15)); err == nil {
		t.Error("15 % vol from a hundredth of the sugar is taken")
	}
	if _, err = ok.From(units.Mass{}.Minus(units.Kilogram.Of(1))); err == nil {
		t.Error("less than no sugar is taken")
	}
	if b := check.Must(ok.For(units.PercentVolume.Of(14.1))); len(b.Cautions) != 1 {
		t.Errorf("%q", b.Cautions)
	}
	if b := check.Must(ok.For(units.PercentVolume.Of(13.9))); len(b.Cautions) != 0 {
		t.Errorf("%q", b.Cautions)
	}
}

func BenchmarkSugarForStrength(b *testing.B) {
	b.ReportAllocs()
	for b.Loop() {
		if _, err := ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60)); err != nil {
			b.Fatal(err)
		}
	}
}

func TestMostStrength(t *testing.T) {
	check.Near(t, "strongest", mostStrength, 20, 0, "a limit of the package")
}
