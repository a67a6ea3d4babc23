package sugar

import (
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

// A kilogram of dextrose for 2.00: 469 g of ethanol (7.8924/16.83), 0.004265 a gram.
func TestCostPerGramEthanol(t *testing.T) {
	got := check.Must(CostPerGramEthanol(material.DextroseAnhydrous(), decimal.RequireFromString("2.00"), check.Mass(t, "1 kg")))
	if got.String() != "0.004265" {
		t.Errorf("%v, want 2.00·16.83/7.8924/1000", got)
	}
	twice := check.Must(CostPerGramEthanol(material.DextroseAnhydrous(), decimal.RequireFromString("4.00"), check.Mass(t, "2 kg")))
	if !twice.Equal(got) {
		t.Errorf("%v for twice the pack, %v", twice, got)
	}
	_, err := CostPerGramEthanol(material.Sucrose(), decimal.RequireFromString("-1"), check.Mass(t, "1 kg"))
	check.Refused(t, err, "price", 0, 1e9)
	check.Must(CostPerGramEthanol(material.Sucrose(), decimal.New(1, -30), check.Mass(t, "1 kg")))
	_, err = CostPerGramEthanol(material.Sucrose(), decimal.New(1, -31), check.Mass(t, "1 kg"))
	check.Refused(t, err, "exponent of the price", -30, 30)
	_, err = CostPerGramEthanol(material.Sucrose(), decimal.New(1, -400), check.Mass(t, "1 kg"))
	check.Refused(t, err, "exponent of the price", -30, 30)
	_, err = CostPerGramEthanol(material.Sucrose(), decimal.RequireFromString("1"), check.Mass(t, "0 kg"))
	check.Refused(t, err, "pack", 1e-3, amount.MostMass)
	_, err = CostPerGramEthanol(shelf.Material("lactose monohydrate"), decimal.RequireFromString("1"), check.Mass(t, "1 kg"))
	check.Refused(t, err, "ethanol yield", 0.001, 1)
}

// A kilogram of sugar takes about 0.62 L (brewers' figure; common practice, no source).
// From the sucrose table of ICUMSA: 10 % mass has 1038.1 kg/m³ at 20 °C, so that 1 kg in 9
// kg of water takes 10/1.0381 − 9/0.9982 = 0.6164 L.
func TestVolumeTaken(t *testing.T) {
	v := check.Must(Of(material.Sucrose()).VolumeTaken(units.Kilogram.Of(1), units.Kilogram.Of(9)))
	check.Near(t, "sucrose", v.In(units.Litre), 10/1.0381-9/0.9982, 0.001, "ICUMSA SPS-4")
	_, err := Of(material.Sucrose()).VolumeTaken(units.Kilogram.Of(1), units.Mass{})
	check.Refused(t, err, "water", 1e-6, amount.MostVolume)
	if _, err = Of(material.Sucrose()).VolumeTaken(units.Kilogram.Of(100), units.Kilogram.Of(1)); err == nil {
		t.Error("sugar without water is taken")
	}
}
