package ferment

import (
	"math"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// From rest with air to its own CO2 the pH falls without a step: the liquid holds what was
// made until it is saturated.
func TestPHPassesThroughSaturation(t *testing.T) {
	for _, f := range []Tank{hall(material.DiammoniumPhosphate()), hall(material.AutolysedYeast())} {
		f.Buffer = material.PotassiumBicarbonate().Dose(units.Gram.Of(30))
		was := check.Must(f.At(units.Share{}))
		for _, used := range []float64{1e-4, 1e-3, 0.01, 0.03, 0.1, 0.3, 1, 2, 3, 4, 5, 6, 7, 8} {
			p := check.Must(f.At(amount.Share(used / 100)))
			if !(p.PH.Value <= was.PH.Value && p.PH.Value > was.PH.Value-1.2) || p.Gas.In(units.Kilopascal) < was.Gas.In(units.Kilopascal)-1e-9 {
				t.Errorf("%g %%: pH %.2f under %v after %.2f under %v", used, p.PH.Value, p.Gas, was.PH.Value, was.Gas)
			}
			if used == 1e-4 && was.PH.Value-p.PH.Value > 0.05 {
				t.Errorf("a step at the start: %.2f to %.2f", was.PH.Value, p.PH.Value)
			}
			was = p
		}
		check.Near(t, "saturated, atm", was.Gas.In(units.StandardAtmosphere), 1, 1e-9, "the gas above")
	}
}

// The CO2 that the liquid holds at 2 % of the sugar, solved apart: free CO2 by Henry's
// constant 0.0390 mol/kg/atm at 20 °C and pK1 6.38 (Plummer & Busenberg 1982), HCO3- by the
// charge; activities and what phosphate and organic acids hold left out, to 5 %.
func TestUnsaturatedByHand(t *testing.T) {
	f := hall(material.AutolysedYeast())
	f.Feed, f.Temperature = nil, units.Celsius.Of(20)
	f.Metabolism = UsualMetabolism()
	f.Metabolism.Succinic, f.Metabolism.Acetic, f.Metabolism.Lactic = units.Share{}, units.Share{}, units.Share{}
	f.Buffer = material.BakingSoda().Dose(units.Gram.Of(60))
	p := check.Must(f.At(units.Percent.Of(2)))
	c := check.Must(f.checked("test"))
	strong := c.start.Strong // mEq/L, all of it bicarbonate here
	made := p.Balance.CO2.In(units.Gram) / 44.009 / c.litres * 1000
	// Under air at pH 8 to 9 all carbon is bicarbonate but a hundredth.
	free := made
	h := 0.0390 * 1000 // mmol/L for an atmosphere
	check.Near(t, "pressure", p.Gas.In(units.StandardAtmosphere), free/h, 0.05*free/h, "Henry's law")
	check.Near(t, "pH", p.PH.Value, 6.38+math.Log10(strong/free), 0.1, "Henderson-Hasselbalch, pK' 0.06 below pK by activities")
}

// At 3,000 m (70.109 kPa, ISO 2533:1975) the air holds 0.692 of the CO2 of sea level and a
// bicarbonate water is more alkaline by −log10 of that, 0.16.
func TestWashUnderThinAir(t *testing.T) {
	f := hall(material.AutolysedYeast())
	f.Feed = nil
	f.Buffer = material.BakingSoda().Dose(units.Gram.Of(15))
	low := check.Must(f.At(units.Share{})).PH.Value
	air := check.Must(units.AtAltitude(units.Metre.Of(3000)))
	f.Pressure = air.Pressure()
	high := check.Must(f.At(units.Share{}))
	check.Near(t, "pH", high.PH.Value-low, -math.Log10(70.109/101.325), 0.01, "CO2 of the air")
	check.Near(t, "CO2", high.Gas.In(units.Kilopascal), 420e-6*70.109, 1e-5, "420 µmol a mole")
	// A vessel that is to hold a pressure is closed on the air of sea level.
	f.Pressure = units.Kilopascal.Of(250)
	check.Near(t, "sealed", check.Must(f.At(units.Share{})).PH.Value, low, 1e-9, "the air before it is closed")
	check.Near(t, "sealed", check.Must(f.At(units.Share{})).Gas.In(units.Kilopascal), 420e-6*101.325, 1e-9, "sea level")
}
