package main

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// A refusal names the function that the caller wrote, not one that it calls.
func TestRefusalsNameTheFunctionCalled(t *testing.T) {
	plain, err := water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(50))
	if err != nil {
		t.Fatal(err)
	}
	wash, err := gravity.NewSolution(units.Kilogram.Of(10), units.Kilogram.Of(1), units.Mass{})
	if err != nil {
		t.Fatal(err)
	}
	strong, err := gravity.NewSolution(units.Kilogram.Of(5), units.Mass{}, units.Kilogram.Of(5))
	if err != nil {
		t.Fatal(err)
	}
	liquid, err := carbonation.NewLiquid(wash)
	if err != nil {
		t.Fatal(err)
	}
	one, err := units.Measure(units.One.Of(1.01), units.One.Of(0.001))
	if err != nil {
		t.Fatal(err)
	}
	hot := units.Celsius.Of(140)
	y := gravity.BallingYield()
	for name, f := range map[string]func() error{
		"gravity.ExtractConcentration": func() error {
			_, err := gravity.ExtractConcentration(units.DegreePlato.Of(10), hot)
			return err
		},
		"gravity.StrengthMethods": func() error {
			_, err := gravity.StrengthMethods(units.DegreePlato.Of(60), units.DegreePlato.Of(5))
			return err
		},
		"gravity.Solution.Hidden": func() error { _, err := wash.Hidden(one, y, math.NaN()); return err },
		"gravity.FromSG":          func() error { _, err := gravity.FromSG(9); return err },
		"water.Profile.AcidPerLitre": func() error {
			_, _, err := plain.AcidPerLitre(water.LacticAcid, 5, water.CO2Loss{})
			return err
		},
		"water.Profile.AcidToPH": func() error {
			_, err := plain.AcidToPH(units.Litre.Of(1), water.LacticAcid, 5, water.CO2Loss{})
			return err
		},
		"water.Profile.Dilute": func() error { _, err := plain.Dilute(units.Volume{}, units.Volume{}); return err },
		"water.Solve":          func() error { _, err := water.Solve(water.Request{}); return err },
		"water.SolveSteps": func() error {
			step, err := units.ParseExact[units.Mass]("0.1 g")
			if err != nil {
				t.Fatal(err)
			}
			_, err = water.SolveSteps(water.Request{}, step)
			return err
		},
		"water.Explain":               func() error { _, err := water.Explain(water.Request{}); return err },
		"carbonation.FreezingPoint":   func() error { _, err := carbonation.FreezingPoint(strong); return err },
		"carbonation.ResidualContent": func() error { _, err := carbonation.ResidualContent(liquid, hot, units.Bar.Of(1)); return err },
		"nutrient.Needs": func() error {
			_, err := nutrient.Needs(units.GramPerLitre.Of(5000), units.DegreePlato.Of(10), 0)
			return err
		},
		"sugar.ForStrength": func() error {
			_, err := sugar.ForStrength(sugar.White(), units.PercentVolume.Of(90), units.Litre.Of(1))
			return err
		},
		"sugar.Wash.For": func() error {
			_, err := sugar.Wash{Fermentable: sugar.White(), Attenuation: units.Percent.Of(100), Basis: sugar.Finished(units.Litre.Of(1))}.For(units.PercentVolume.Of(90))
			return err
		},
		"units.PropagateCorrelated": func() error {
			_, err := units.PropagateCorrelated(func(units.Trial) (units.PureNumber, error) { return units.One.Of(1), nil }, []units.Correlation{{}})
			return err
		},
	} {
		var r *units.RangeError
		var s *units.StateError
		switch err := f(); {
		case errors.As(err, &r) && r.Func == name, errors.As(err, &s) && s.Func == name:
		default:
			t.Errorf("%s: %T %v", name, err, err)
		}
	}
}
