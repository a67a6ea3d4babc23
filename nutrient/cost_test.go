package nutrient

import (
	"testing"

	"example.org/zymase/units"
	"github.com/shopspring/decimal"
)

// A kilogram of dextrose for 2.00: 469 g of ethanol (7.8924/16.83), 0.004265 a gram.
func TestCostPerGramEthanol(t *testing.T) {
	got := must(CostPerGramEthanol(DextroseAnhydrous(), decimal.RequireFromString("2.00"), mass(t, "1 kg")))
	if got.String() != "0.004265" {
		t.Errorf("%v, want 2.00·16.83/7.8924/1000", got)
	}
	twice := must(CostPerGramEthanol(DextroseAnhydrous(), decimal.RequireFromString("4.00"), mass(t, "2 kg")))
	if !twice.Equal(got) {
		t.Errorf("%v for twice the pack, %v", twice, got)
	}
	_, err := CostPerGramEthanol(Sucrose(), decimal.RequireFromString("-1"), mass(t, "1 kg"))
	refused(t, err, "price", 0, 1e9)
	_, err = CostPerGramEthanol(Sucrose(), decimal.New(1, -400), mass(t, "1 kg"))
	refused(t, err, "exponent of the price", -30, 30)
	_, err = CostPerGramEthanol(Sucrose(), decimal.RequireFromString("1"), mass(t, "0 kg"))
	refused(t, err, "pack", 1e-3, mostMass)
	_, err = CostPerGramEthanol(Lactose(), decimal.RequireFromString("1"), mass(t, "1 kg"))
	refused(t, err, "ethanol yield", 0.001, 1)
}

// A kilogram of sugar takes about 0.62 L (brewers' figure; common practice, no source).
// From the sucrose table of ICUMSA: 10 % mass has 1038.1 kg/m³ at 20 °C, so that 1 kg in 9
// kg of water takes 10/1.0381 − 9/0.9982 = 0.6164 L.
func TestVolumeTaken(t *testing.T) {
	v := must(Sucrose().VolumeTaken(units.Kilogram.Of(1), units.Kilogram.Of(9)))
	near(t, "sucrose", v.In(units.Litre), 10/1.0381-9/0.9982, 0.001, "ICUMSA SPS-4")
	_, err := Sucrose().VolumeTaken(units.Kilogram.Of(1), units.Mass{})
	refused(t, err, "water", 1e-6, mostVolume)
	if _, err = Sucrose().VolumeTaken(units.Kilogram.Of(100), units.Kilogram.Of(1)); err == nil {
		t.Error("sugar without water is taken")
	}
}
