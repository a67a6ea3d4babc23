package nutrient

import (
	"math"
	"testing"

	"example.org/zymase/units"
)

// From rest with air to its own CO2 the pH falls without a step: the liquid holds what was
// made until it is saturated.
func TestPHPassesThroughSaturation(t *testing.T) {
	for _, f := range []Ferment{hall(DiammoniumPhosphate()), hall(AutolysedYeast())} {
		f.Buffer, f.BufferMass = PotassiumBicarbonate, units.Gram.Of(30)
		was := must(f.At(units.Share{}))
		for _, used := range []float64{1e-4, 1e-3, 0.01, 0.03, 0.1, 0.3, 1, 2, 3, 4, 5, 6, 7, 8} {
			p := must(f.At(share(used / 100)))
			if !(p.PH.Value <= was.PH.Value && p.PH.Value > was.PH.Value-1.2) || p.Gas.In(units.Kilopascal) < was.Gas.In(units.Kilopascal)-1e-9 {
				t.Errorf("%g %%: pH %.2f under %v after %.2f under %v", used, p.PH.Value, p.Gas, was.PH.Value, was.Gas)
			}
			if used == 1e-4 && was.PH.Value-p.PH.Value > 0.05 {
				t.Errorf("a step at the start: %.2f to %.2f", was.PH.Value, p.PH.Value)
			}
			was = p
		}
		near(t, "saturated, atm", was.Gas.In(units.StandardAtmosphere), 1, 1e-9, "the gas above")
	}
}

// The CO2 that the liquid holds at 2 % of the sugar, solved apart: free CO2 by Henry's
// constant 0.0390 mol/kg/atm at 20 °C and pK1 6.38 (Plummer & Busenberg 1982), HCO3- by the
// charge; activities and what phosphate and organic acids hold left out, to 5 %.
func TestUnsaturatedByHand(t *testing.T) {
	f := hall(AutolysedYeast())
	f.Feed, f.Temperature = nil, units.Celsius.Of(20)
	f.Metabolism = UsualMetabolism()
	f.Metabolism.Succinic, f.Metabolism.Acetic, f.Metabolism.Lactic = units.Share{}, units.Share{}, units.Share{}
	f.Buffer, f.BufferMass = SodiumBicarbonate, units.Gram.Of(60)
	p := must(f.At(units.Percent.Of(2)))
	c := must(f.checked("test"))
	strong := c.start.strong // mEq/L, all of it bicarbonate here
	made := p.Balance.CO2.In(units.Gram) / 44.009 / c.litres * 1000
	// Under air at pH 8 to 9 all carbon is bicarbonate but a hundredth.
	free := made
	h := 0.0390 * 1000 // mmol/L for an atmosphere
	near(t, "pressure", p.Gas.In(units.StandardAtmosphere), free/h, 0.05*free/h, "Henry's law")
	near(t, "pH", p.PH.Value, 6.38+math.Log10(strong/free), 0.1, "Henderson-Hasselbalch, pK' 0.06 below pK by activities")
}

// At 3,000 m (70.109 kPa, ISO 2533:1975) the air holds 0.692 of the CO2 of sea level and a
// bicarbonate water is more alkaline by −log10 of that, 0.16.
func TestWashUnderThinAir(t *testing.T) {
	f := hall(AutolysedYeast())
	f.Feed = nil
	f.Buffer, f.BufferMass = SodiumBicarbonate, units.Gram.Of(15)
	low := must(f.PH(units.Share{}))
	air := must(units.AtAltitude(units.Metre.Of(3000)))
	f.Pressure = air.Pressure()
	high := must(f.At(units.Share{}))
	near(t, "pH", high.PH.Value-low, -math.Log10(70.109/101.325), 0.01, "CO2 of the air")
	near(t, "CO2", high.Gas.In(units.Kilopascal), 420e-6*70.109, 1e-5, "420 µmol a mole")
	// A vessel that is to hold a pressure is closed on the air of sea level.
	f.Pressure = units.Kilopascal.Of(250)
	near(t, "sealed", must(f.PH(units.Share{})), low, 1e-9, "the air before it is closed")
	near(t, "sealed", must(f.At(units.Share{})).Gas.In(units.Kilopascal), 420e-6*101.325, 1e-9, "sea level")
}
