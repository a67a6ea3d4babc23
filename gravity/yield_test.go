package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Gay-Lussac with the abridged atomic weights of CIAAW: ethanol 46.069, CO2 44.009,
// glucose 180.156, sucrose 342.297, water 18.015.
func TestStoichiometricYield(t *testing.T) {
	g, s := gravity.StoichiometricYield(gravity.AsGlucose), gravity.StoichiometricYield(gravity.AsSucrose)
	near(t, "ethanol of glucose", g.Ethanol().In(units.Fraction), 2*46.069/180.156, 1e-9)
	near(t, "CO2 of glucose", g.CO2().In(units.Fraction), 2*44.009/180.156, 1e-9)
	near(t, "water of glucose", g.Water().In(units.Fraction), 0, 0)
	near(t, "ethanol of sucrose", s.Ethanol().In(units.Fraction), 4*46.069/342.297, 1e-9)
	near(t, "CO2 of sucrose", s.CO2().In(units.Fraction), 4*44.009/342.297, 1e-9)
	near(t, "water of sucrose", s.Water().In(units.Fraction), 18.015/342.297, 1e-9)
	for _, y := range []gravity.Yield{g, s} {
		near(t, "yeast", y.Biomass().In(units.Fraction), 0, 0)
		near(t, "residue", y.Residue().In(units.Fraction), 0, 0)
	}
	if gravity.StoichiometricYield(gravity.AsFructose).Ethanol().In(units.Fraction) != g.Ethanol().In(units.Fraction) {
		t.Error("fructose")
	}
}

// French order of 3 May 1996 art. 2: 16.83 g of sugar a litre give 1 % vol.
func TestSugarWashYield(t *testing.T) {
	y := gravity.SugarWashYield(gravity.AsGlucose)
	near(t, "g/L for 1 % vol", 7.8924/y.Ethanol().In(units.Fraction), 16.83, 1e-6)
	s := gravity.SugarWashYield(gravity.AsSucrose)
	near(t, "sucrose", s.Ethanol().In(units.Fraction)/y.Ethanol().In(units.Fraction), 1+18.015/342.297, 1e-9)
	near(t, "residue, Pasteur 1860 (recalled from memory)", s.Residue().In(units.Fraction)*100, 3.16+0.67, 0.005)
	// The yeast lies between Pasteur's 1 g and Balling's 5.3 g of 100 g.
	if b := 100 * s.Biomass().In(units.Fraction); b < 1 || b > 5.4 {
		t.Errorf("%v g of yeast", b)
	}
	near(t, "balance", s.Ethanol().In(units.Fraction)+s.CO2().In(units.Fraction)+s.Biomass().In(units.Fraction)+s.Residue().In(units.Fraction),
		1+s.Water().In(units.Fraction), 1e-15)
	near(t, "CO2 and ethanol in step", s.CO2().In(units.Fraction)/s.Ethanol().In(units.Fraction), 44.009/46.069, 1e-9)
	if gravity.SugarWashYield(gravity.AsDextrin) == y {
		t.Error("other kinds count as sucrose")
	}
}

// A kind that is none has no yield, and none goes nowhere.
func TestYieldOfNothing(t *testing.T) {
	for _, k := range []gravity.Sugar{-1, 6} {
		if gravity.SugarWashYield(k) != (gravity.Yield{}) || gravity.StoichiometricYield(k) != (gravity.Yield{}) {
			t.Error(k)
		}
	}
	_, _, err := solution(t, 90, 10, 0).Ferment(kg(1), gravity.SugarWashYield(6))
	refused(t, "ferment", err, "ethanol yield")
	_, err = gravity.NewYield(kg(0), gravity.Fermented{Ethanol: kg(1)})
	refused(t, "of nothing", err, "extract")
}

func TestNewYield(t *testing.T) {
	y, err := newYield(0.48, 0.46, 0.05, 0.01, 0)
	if err != nil || y.Ethanol().In(units.Fraction) != 0.48 || y.CO2().In(units.Fraction) != 0.46 ||
		math.Abs(y.Biomass().In(units.Fraction)-0.05) > 1e-12 || y.Residue().In(units.Fraction) != 0.01 || y.Water().In(units.Fraction) != 0 {
		t.Errorf("%+v %v", y, err)
	}
	y, err = newYield(0.5114, 0.4886, 0, 0, 0)
	if err != nil || y.Biomass().In(units.Fraction) < 0 {
		t.Errorf("%+v %v", y, err)
	}
	y, err = newYield(0.5114, 0.4886004, 0, 0, 0)
	if err != nil || y.Biomass().In(units.Fraction) != 0 || y.Ethanol().In(units.Fraction)+y.CO2().In(units.Fraction) != 1 {
		t.Errorf("%+v %v", y, err)
	}
	for _, c := range []struct {
		v     [5]float64
		about string
	}{
		{[5]float64{-0.1, 1, 0.1, 0, 0}, "ethanol"}, {[5]float64{0.005, 0.995, 0, 0, 0}, "ethanol"}, {[5]float64{0.5, -0.1, 0.6, 0, 0}, "CO2"},
		{[5]float64{0.5, 0.6, -0.1, 0, 0}, "biomass"},
		{[5]float64{0.5, 0.6, 0, -0.1, 0}, "residue"}, {[5]float64{0.5, 0.4, 0, 0, -0.1}, "water"}, {[5]float64{0.5, 0.4, 0, 0, 0}, "sum of the products"},
		{[5]float64{math.NaN(), 0.4, 0, 0, 0}, "ethanol"},
		{[5]float64{0.5, 0.500002, 0, 0, 0}, "sum of the products"}, {[5]float64{0.5, 0.499998, 0, 0, 0}, "sum of the products"},
	} {
		_, err := newYield(c.v[0], c.v[1], c.v[2], c.v[3], c.v[4])
		refused(t, "NewYield", err, c.about)
	}
}

// Each sugar by its own yield gives what the mean of the mix gives.
func TestWashYieldOfMix(t *testing.T) {
	s := solution(t, 90, 4, 0)
	s = ok[gravity.Solution](t)(s.AddExtract(gravity.AsGlucose, kg(6)))
	s = ok[gravity.Solution](t)(s.AddExtract(gravity.AsDextrin, kg(1)))
	y := s.WashYield()
	near(t, "ethanol", 10*y.Ethanol().In(units.Fraction),
		4*gravity.SugarWashYield(gravity.AsSucrose).Ethanol().In(units.Fraction)+6*gravity.SugarWashYield(gravity.AsGlucose).Ethanol().In(units.Fraction), 1e-12)
	near(t, "CO2", 10*y.CO2().In(units.Fraction), 4*gravity.SugarWashYield(gravity.AsSucrose).CO2().In(units.Fraction)+
		6*gravity.SugarWashYield(gravity.AsGlucose).CO2().In(units.Fraction), 1e-12)
	near(t, "residue", 10*y.Residue().In(units.Fraction),
		4*gravity.SugarWashYield(gravity.AsSucrose).Residue().In(units.Fraction)+6*gravity.SugarWashYield(gravity.AsGlucose).Residue().In(units.Fraction), 1e-12)
	near(t, "water", 10*y.Water().In(units.Fraction), 4*18.015/342.297, 1e-9)
	near(t, "balance", y.Ethanol().In(units.Fraction)+y.CO2().In(units.Fraction)+y.Biomass().In(units.Fraction)+y.Residue().In(units.Fraction),
		1+y.Water().In(units.Fraction), 1e-15)
	if water := solution(t, 1, 0, 0); water.WashYield() != gravity.SugarWashYield(gravity.AsSucrose) {
		t.Error("without sugar")
	}
	dry, made, err := s.Dry(y)
	if err != nil || dry.Fermentable() != (units.Mass{}) || inKg(dry.ExtractOf(gravity.AsDextrin)) != 1 {
		t.Errorf("%v %v", dry, err)
	}
	near(t, "glycerol to succinic acid", inKg(dry.ExtractOf(gravity.AsGlycerol))/inKg(dry.ExtractOf(gravity.AsOrganicAcid)), 3.16/0.67,
		1e-9) // Pasteur 1860, recalled from memory
	near(t, "glycerol and acids", inKg(dry.ExtractOf(gravity.AsGlycerol))+inKg(dry.ExtractOf(gravity.AsOrganicAcid)), inKg(made.Residue), 1e-15)
}

// About 17 g/L of sugar for 1 % vol, the rule of the trade (common practice, no
// source), and a floor below 1.000.
func TestSugarWashByHand(t *testing.T) {
	s := solution(t, 92, 8, 0)
	dry, _, err := s.Dry(s.WashYield())
	if err != nil {
		t.Fatal(err)
	}
	v := ok[units.Volume](t)(dry.Volume(celsius(20))).In(units.Litre)
	rule := 8000 / v / dry.ByVolume().In(units.PercentVolume)
	near(t, "g/L for 1 % vol", rule, 16.5, 0.6)
	if sg := dry.Gravity().SG(); sg < 0.990 || sg > 0.996 {
		t.Errorf("a dry sugar wash ends at %v, not 0.990 to 0.996 (common practice, no source)", sg)
	}
}
