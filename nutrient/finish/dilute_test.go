package finish

import (
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

// 10 L of 10 % vol diluted to 5 % vol fill 20 L: the ethanol is the same, and the
// volumes hardly shrink.
func TestDilute(t *testing.T) {
	b := check.Must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(10), units.Litre.Of(10)))
	d := check.Must(Dilute(b.Finish, gravity.Solution{}, units.PercentVolume.Of(5)))
	check.Near(t, "strength", d.Liquid.ByVolume().In(units.PercentVolume), 5, 1e-9, "asked")
	check.Near(t, "volume", check.Must(d.Liquid.Volume(amount.Room)).In(units.Litre), 20, 1e-7, "the same ethanol at half the strength")
	check.Near(t, "water", d.Water.In(units.Kilogram), 10, 0.05, "by hand")
	if len(d.Cautions) != 1 {
		t.Errorf("%q", d.Cautions)
	}
	d = check.Must(Dilute(b.Finish, gravity.Solution{}, b.Finish.ByVolume()))
	check.Near(t, "no water", d.Water.In(units.Kilogram), 0, 1e-10, "the strength is there")
	d = check.Must(Dilute(b.Finish, gravity.Solution{}, units.PercentVolume.Of(0.11)))
	check.Near(t, "weak", d.Liquid.ByVolume().In(units.PercentVolume), 0.11, 1e-9, "asked")
	_, err := Dilute(b.Finish, gravity.Solution{}, units.PercentVolume.Of(11))
	check.Refused(t, err, "strength", 0.1, b.Finish.ByVolume().In(units.PercentVolume))
	_, err = Dilute(gravity.Solution{}, gravity.Solution{}, units.PercentVolume.Of(1))
	check.Refused(t, err, "strength", 0.1, 0)
}

func TestDiluteCountsTheFlavouring(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := check.Must(sugar.ForStrength(material.WhiteSugar(), check.Must(units.PercentVolume.Try(rapid.Float64Range(6, 14).Draw(t, "base, % vol"))),
			units.Litre.Of(30)))
		f := check.Must(Flavouring{Strength: check.Must(units.PercentVolume.Try(rapid.Float64Range(0, 60).Draw(t, "flavouring, % vol")))}.Liquid(units.Litre.Of(0.4)))
		want := rapid.Float64Range(0.5, 5).Draw(t, "strength, % vol")
		d := check.Must(Dilute(b.Finish, f, check.Must(units.PercentVolume.Try(want))))
		if e := d.Liquid.ByVolume().In(units.PercentVolume) - want; math.Abs(e) > 1e-9 {
			t.Fatalf("off by %g", e)
		}
		if e := d.Liquid.Mass().Minus(b.Finish.Mass()).Minus(f.Mass()).Minus(d.Water).In(units.Kilogram); math.Abs(e) > 1e-9 {
			t.Fatalf("mass off by %g", e)
		}
		if e := d.Liquid.Ethanol().Minus(b.Finish.Ethanol()).Minus(f.Ethanol()).In(units.Kilogram); math.Abs(e) > 1e-12 {
			t.Fatalf("ethanol off by %g", e)
		}
	})
}

func TestStrongBrew(t *testing.T) {
	w := sugar.Wash{Fermentable: material.WhiteSugar(), Attenuation: units.Percent.Of(100)}
	b, d, err := StrongBrew(w, units.PercentVolume.Of(9), units.PercentVolume.Of(4.5), units.Litre.Of(60))
	if err != nil {
		t.Fatal(err)
	}
	check.Near(t, "base", check.Must(b.Finish.Volume(amount.Room)).In(units.Litre), 30, 1e-9, "the same ethanol")
	check.Near(t, "finished", check.Must(d.Liquid.Volume(amount.Room)).In(units.Litre), 60, 1e-6, "asked")
	check.Near(t, "strength", d.Liquid.ByVolume().In(units.PercentVolume), 4.5, 1e-9, "asked")
	_, _, err = StrongBrew(w, units.PercentVolume.Of(4), units.PercentVolume.Of(4.5), units.Litre.Of(60))
	check.Refused(t, err, "strength", 0.1, 4)
	if _, _, err = StrongBrew(w, units.PercentVolume.Of(25), units.PercentVolume.Of(4.5), units.Litre.Of(60)); err == nil {
		t.Error("a base of 25 % vol is taken")
	}
}
