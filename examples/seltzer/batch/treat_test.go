package batch

import (
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// A gram of gypsum in a US gallon brings 61.5 ppm of calcium and 147.4 of sulfate, a gram of baking soda 75
// of sodium and 191 of bicarbonate (J. J. Palmer, How to Brew, table of salts; recalled from memory).
func TestTreat(t *testing.T) {
	gallon := must(FromWater(must(water.Profile{}.InAir()).Water(), units.Litre.Of(3.785)))
	p := must(after(gallon, Step{Kind: Treat, What: "gypsum", Mass: units.Gram.Of(1)}).Profile())
	near(t, "calcium", p.Ion(water.Calcium).In(units.MilligramPerLitre), 61.5, 0.1)
	near(t, "sulfate", p.Ion(water.Sulfate).In(units.MilligramPerLitre), 147.4, 0.2)
	s := after(gallon, Step{Kind: Treat, What: "baking soda", Mass: units.Gram.Of(1)})
	p = must(s.Profile())
	near(t, "sodium", p.Ion(water.Sodium).In(units.MilligramPerLitre), 72.3, 0.2) // by hand: 22.99/84.006 of 264.2 mg/L
	near(t, "bicarbonate", p.Ion(water.Bicarbonate).In(units.MilligramPerLitre), 191.9, 0.3)
	near(t, "alkalinity", must(s.Alkalinity()).In(units.MilligramPerLitreCaCO3), 191.9/61.017*50.043, 0.3)
	refused(t, gallon, Step{Kind: Treat, What: "white sugar", Mass: units.Gram.Of(1)})
	refused(t, gallon, Step{Kind: Treat, What: "gypsum", Mass: units.Gram.Of(1).Minus(units.Gram.Of(2))})
}
