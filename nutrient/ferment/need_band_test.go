package ferment

import (
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// The bands of the needs, as OtherNeeds states them: a factor of two for phosphorus, potassium
// from a third of what a ferment wants to finish, magnesium up to that of a malt wort, and what a
// tenth of a milligram of thiamine and half a milligram of pantothenate leave at the low end.
func TestBandsOfNeeds(t *testing.T) {
	n := needsOf(t, hall(material.DiammoniumPhosphate()))
	mg := units.MilligramPerLitre
	p := 67 / 0.064 * 0.013 // dry yeast of 67 mg/L of nitrogen, recalled from memory
	check.Near(t, "phosphorus, low", n["phosphorus"].Need.Low.In(mg), p/2, 0.05, "a factor of two")
	check.Near(t, "phosphorus, high", n["phosphorus"].Need.High.In(mg), 2*p, 0.2, "a factor of two")
	check.Near(t, "potassium, low", n["potassium"].Need.Low.In(mg), 100, 0, "recalled from memory")
	check.Near(t, "magnesium, high", n["magnesium"].Need.High.In(mg), 90, 0, "malt wort, citing Gibson 2011, read")
	check.Near(t, "thiamine, low", n["thiamine"].Need.Low.In(mg), 0.1, 0, "common practice, no source")
	check.Near(t, "vitamins, high", n["other vitamins"].Need.High.In(mg), 0.5+1+10+0.02, 0.03, "Olson & Johnson 1949, read")
	check.Near(t, "vitamins, low", n["other vitamins"].Need.Low.In(mg), 0.5, 0, "pantothenate alone, Olson & Johnson 1949, read")
}

// Amino nitrogen of the wash is taken up whole, as far as it is no more than musts have; a brew beyond the strength that the
// acids are known to has a pH still.
func TestAminoOfTheWash(t *testing.T) {
	f := hall(material.AmmoniumSulfate())
	none := check.Must(f.At(end)).Balance.Amino
	f.Amino = units.Gram.Of(6)
	check.Near(t, "amino nitrogen", check.Must(f.At(end)).Balance.Amino.Minus(none).In(units.Gram), 6, 1e-9, "conservation")
	f.Amino = units.Gram.Of(61)
	_, err := f.At(end)
	check.Refused(t, err, "amino nitrogen of the wash", 0, 1000)
	f.Amino = units.Mass{}
	f.Brew = check.Must(sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(17.5), units.Litre.Of(60)))
	check.Must(f.At(end))
}

// Half a gram of a buffer counts: in 60 L of distilled wash it brings its alkalinity, 0.5 g of
// potassium bicarbonate being 4.99 mmol, 0.083 mEq/L.
func TestALittleBufferCounts(t *testing.T) {
	f := hall(material.AmmoniumSulfate())
	none := check.Must(f.At(units.Fraction.Of(0)))
	f.Buffer = material.PotassiumBicarbonate().Dose(units.Gram.Of(0.5))
	some := check.Must(f.At(units.Fraction.Of(0)))
	if !(some.PH.Value > none.PH.Value+0.05) {
		t.Errorf("pH %v with half a gram, %v without", some.PH.Value, none.PH.Value)
	}
}
