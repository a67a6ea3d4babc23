package finish

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// A litre at 40 % vol holds 0.4 · 789.24 g of ethanol (OIML R 22) and weighs 948.05 g; a
// litre of water with 100 g of sugar weighs 1036.7 g (ICUMSA, 9.65 % mass).
func TestFlavouringLiquid(t *testing.T) {
	l := check.Must(Flavouring{Strength: units.PercentVolume.Of(40)}.Liquid(units.Litre.Of(1)))
	check.Near(t, "ethanol", l.Ethanol().In(units.Gram), 0.4*789.24, 0.01, "OIML R 22")
	check.Near(t, "mass", l.Mass().In(units.Gram), 948.05, 0.05, "OIML R 22 at 40 % vol")
	check.Near(t, "strength", l.ByVolume().In(units.PercentVolume), 40, 1e-9, "given")
	l = check.Must(Flavouring{Sugar: units.GramPerLitre.Of(100)}.Liquid(units.Litre.Of(1)))
	check.Near(t, "mass", l.Mass().In(units.Gram), 1036.7, 0.3, "ICUMSA SPS-4")
	check.Near(t, "sugar", l.Extract().In(units.Gram), 100, 1e-9, "given")
	l = check.Must(Flavouring{Strength: units.PercentVolume.Of(96)}.Liquid(units.Millilitre.Of(10)))
	check.Near(t, "volume", check.Must(l.Volume(amount.Room)).In(units.Millilitre), 10, 1e-9, "given")
	// At every strength to pure ethanol, where hardly any water is left to search for.
	for i := range 20_001 {
		want := float64(i) / 200
		l := check.Must(Flavouring{Strength: check.Must(units.PercentVolume.Try(want))}.Liquid(units.Litre.Of(1)))
		check.Near(t, "strength", l.ByVolume().In(units.PercentVolume), want, 1e-9, "given")
		check.Near(t, "volume", l.VolumeAt20().In(units.Litre), 1, 1e-11, "given")
	}
	// 600 g in a litre are 49.0 % mass at 1224.2 kg/m³.
	l = check.Must(Flavouring{Sugar: units.GramPerLitre.Of(600)}.Liquid(units.Litre.Of(1)))
	check.Near(t, "syrup", l.Mass().In(units.Gram), 1224.2, 0.3, "ICUMSA SPS-4")
	_, err := Flavouring{}.Liquid(units.Volume{})
	check.Refused(t, err, "volume", 1e-9, amount.MostVolume)
	_, err = Flavouring{Sugar: units.GramPerLitre.Of(701)}.Liquid(units.Litre.Of(1))
	check.Refused(t, err, "sugar", 0, 700)
	_, err = Flavouring{Sugar: units.GramPerLitre.Of(500), Strength: units.PercentVolume.Of(75)}.Liquid(units.Litre.Of(1))
	check.Refused(t, err, "strength and sugar", 0, 1)
	if e, ok := errors.AsType[*units.RangeError](err); ok {
		check.Near(t, "parts", e.Value, 0.75+0.62*0.5, 1e-12, "sugar takes about 0.62 L/kg")
	}
}

// 0.6 mL in 200 mL is 180 mL in 60 L; at 40 % vol that adds 72 mL of alcohol, 0.12 % vol
// less the dilution of the base.
func TestTrialScale(t *testing.T) {
	b := check.Must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60)))
	trial := BenchTrial{Sample: units.Millilitre.Of(200), Added: units.Millilitre.Of(0.6)}
	f := check.Must(trial.Scale(b.Finish, Flavouring{Strength: units.PercentVolume.Of(40), Sugar: units.GramPerLitre.Of(50), OilBased: true}))
	check.Near(t, "volume", f.Flavouring.In(units.Millilitre), 180, 1e-9, "by hand")
	check.Near(t, "after", f.After.In(units.PercentVolume), (60*4.6+0.18*40)/60.18, 0.0005, "by volumes")
	check.Near(t, "before", f.Before.In(units.PercentVolume), 4.6, 1e-9, "given")
	check.Near(t, "ratio", f.Ratio.In(units.Percent), 100*0.6/200.6, 1e-9, "by hand")
	check.Near(t, "sugar", f.Sugar.In(units.GramPerLitre), 0.18*50/60.18, 0.0001, "by hand")
	check.Near(t, "share", f.AlcoholShare.In(units.Percent), 100*0.18*40/(0.18*40+60*4.6), 0.001, "by hand")
	if f.OverShare || len(f.Cautions) != 2 {
		t.Errorf("%+v", f)
	}
	// Half of the alcohol from the flavouring: over 49 %; a little less: under.
	plain := check.Must(gravity.NewSolution(units.Kilogram.Of(10), units.Mass{}, units.Mass{}))
	weak := check.Must(plain.AddEthanol(units.Gram.Of(100)))
	for ml, over := range map[float64]bool{121: true, 119: false} {
		tr := BenchTrial{Sample: units.Millilitre.Of(1000), Added: check.Must(units.Millilitre.Try(ml / 10))}
		f := check.Must(tr.Scale(weak, Flavouring{Strength: units.PercentVolume.Of(100)}))
		if f.OverShare != over {
			t.Errorf("%g mL: %v brings %v", ml, f.Flavouring, f.AlcoholShare)
		}
	}
	// Water in water: no alcohol at all.
	if f := check.Must(trial.Scale(check.Must(plain.AddSugar(units.Gram.Of(1))), Flavouring{})); !f.AlcoholShare.IsZero() || len(f.Cautions) != 0 {
		t.Errorf("%+v", f)
	}
}

func TestTrialScaleKeepsTheRatio(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		litres := rapid.Float64Range(0.5, 2000).Draw(t, "batch, L")
		b := check.Must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(5), check.Must(units.Litre.Try(litres))))
		added := rapid.Float64Range(0.01, 50).Draw(t, "added, mL")
		f := check.Must(BenchTrial{units.Millilitre.Of(250), check.Must(units.Millilitre.Try(added))}.Scale(b.Finish,
			Flavouring{Strength: units.PercentVolume.Of(38)}))
		if d := f.Flavouring.In(units.Litre)/litres - added/250; math.Abs(d) > 1e-9 {
			t.Fatalf("ratio off by %g", d)
		}
		if f.After.Compare(f.Before) <= 0 {
			t.Fatalf("%v after %v", f.After, f.Before)
		}
	})
}

func TestTrialRefuses(t *testing.T) {
	b := check.Must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))).Finish
	_, err := BenchTrial{}.Scale(b, Flavouring{})
	check.Refused(t, err, "sample", 0.1, 1e9)
	_, err = BenchTrial{Sample: units.Millilitre.Of(1), Added: units.Millilitre.Of(2)}.Scale(b, Flavouring{})
	check.Refused(t, err, "flavouring added", 1e-6, 1)
	if _, err = (BenchTrial{units.Millilitre.Of(1), units.Millilitre.Of(1)}).Scale(gravity.Solution{}, Flavouring{}); err == nil {
		t.Error("no batch is taken")
	}
	if _, err = (BenchTrial{units.Millilitre.Of(1), units.Millilitre.Of(1)}).Scale(b, Flavouring{Sugar: units.GramPerLitre.Of(900)}); err == nil {
		t.Error("900 g/L is taken")
	}
}

func TestScaleDose(t *testing.T) {
	check.Near(t, "carbon", check.Must(ScaleDose(units.Millilitre.Of(500), units.Gram.Of(0.25), units.Litre.Of(60))).In(units.Gram), 30, 1e-9, "by hand")
	_, err := ScaleDose(units.Volume{}, units.Gram.Of(1), units.Litre.Of(1))
	check.Refused(t, err, "sample", 0.1, 1e9)
	_, err = ScaleDose(units.Litre.Of(1), units.Gram.Of(1), units.Volume{})
	check.Refused(t, err, "batch", 0.1, 1e12)
	check.Must(ScaleDose(units.Litre.Of(1), units.Gram.Of(49.97), units.Litre.Of(1)))
	_, err = ScaleDose(units.Litre.Of(1), units.Gram.Of(50.01), units.Litre.Of(1))
	check.Refused(t, err, "dose", 0, 50)
}

func TestTrialOfNoBatch(t *testing.T) {
	_, err := BenchTrial{units.Millilitre.Of(1), units.Millilitre.Of(1)}.Scale(gravity.Solution{}, Flavouring{})
	check.Refused(t, err, "batch", amount.LeastVolume, amount.MostVolume)
}
