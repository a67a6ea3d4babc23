package mash

import (
	"errors"
	"testing"

	ask "example.org/zymase/internal/check"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Doses by hand, in distilled water: a kilogram of malt that takes 30 mEq for a pH, moved by 0.2, takes 6.000 mEq. In 3 L
// the H+ of pH 5.52 (3.02 µmol/L by activity, 3.1 by concentration) takes 0.009 mEq more, that of pH 5.92 takes off
// 0.004 from a base. Of the lime's hydroxide the malt's phosphate takes back 1/3.5 with the calcium (Kolbach). HCl has
// 36.458 g/mol, baking soda 84.006, slaked lime 37.046 g/Eq (IUPAC atomic weights).
func TestDoseByHand(t *testing.T) {
	m := Mash{[]Malt{malt(1, 5.72, 30)}, liquor(t, 0, 0, 0), litres(3)}
	gram := func(d Adjustment, err error) float64 {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return d.Mass.In(units.Gram)
	}
	near(t, "HCl", gram(m.WithAcid(water.HydrochloricAcid, 5.52)), 6.0092*36.458/1000, 6e-5)
	near(t, "baking soda", gram(m.WithBase(material.BakingSoda(), 5.92)), 5.9964*84.006/1000, 1.5e-4)
	near(t, "slaked lime", gram(m.WithBase(material.SlakedLime(), 5.92)), 5.9964/(1-1/3.5)*37.046/1000, 1e-4)
	d, err := m.WithAcid(water.HydrochloricAcid, 5.52)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "temperature of the sample", d.Water.Temperature().In(units.Celsius), 20, 0) // a cooled sample, as PH has it
	// 6.0092 mmol in 3 L is 71.0 mg/L of chloride (35.45 g/mol): the water that is handed on has it.
	near(t, "chloride", d.Water.Ion(water.Chloride).In(units.MilligramPerLitre), 6.0092/3*35.45, 0.02)
}

// Ends of the band are kept within pH 3.5 and 8.5, where a mash cannot be. By hand: a malt of 4.3 with 100 mg/L of calcium
// is at 4.16, and at its low end of 3.5 would be at 3.36. A malt of 6.4 and 150 mEq/pH in 3 L of 5 mEq/L is at 6.5, and
// with its low end of 5 mEq/pH would be at 9.4.
func TestBandEnds(t *testing.T) {
	sour := Mash{[]Malt{{Name: "sour", Mass: kg(1), PH: band(4.3, 3.5, 4.4), BufferPerKilogram: amounts(about(30, 0))}}, liquor(t, 0, 100, 0), litres(3)}
	e, err := sour.PH()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "sour", e.Value, 4.157, 0.01) // H+ of the water itself is 0.2 mEq
	near(t, "low end", e.Value+e.Parts[0].Low, 3.5, 1e-6)
	flat := Mash{[]Malt{{Name: "flat", Mass: kg(1), PH: about(6.4, 0), BufferPerKilogram: amounts(band(150, 5, 150))}}, liquor(t, 250.2, 0, 0), litres(3)}
	if e, err = flat.PH(); err != nil {
		t.Fatal(err)
	}
	near(t, "flat", e.Value, 6.5, 0.002)
	near(t, "high end", e.Value+e.Parts[1].Low, 8.5, 1e-6)
}

// A soft water keeps its CO2 too: 25.02 mg/L is 0.5 mEq/L, 1.5 mEq in 3 L, 0.05 pH to 5.77; there a fifth of the carbon
// is bicarbonate (pK 6.38 at 20 °C less 0.02 of activity: 10^-0.59/(1 + 10^-0.59) = 0.204), 0.307 mEq, -0.010.
func TestSoftWaterKeepsCO2(t *testing.T) {
	e, err := Mash{[]Malt{malt(1, 5.72, 30)}, liquor(t, 25.02, 0, 0), litres(3)}.PH()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "value", e.Value, 5.77, 0.001)
	near(t, "CO2 kept", e.Parts[4].High, -0.0102, 0.0007)
}

// What a refusal says it allows.
func TestBoundsSaid(t *testing.T) {
	most := func(err error) float64 {
		re, ok := errors.AsType[*units.RangeError](err)
		if !ok {
			t.Fatal(err)
		}
		return re.Max
	}
	strong := Mash{[]Malt{malt(4, 5.7, 150)}, liquor(t, 0, 0, 0), litres(4)}
	_, err := strong.WithAcid(water.LacticAcid, 4.0) // 150 × 1.7 mEq and more in a litre
	ask.Refused(t, err, "dose", 0, 200)
	_, err = strong.WithBase(material.Gypsum(), 6)
	ask.Refused(t, err, "alkalinity of the base", 1e-3, 100)
	many := Mash{Water: liquor(t, 0, 0, 0), Volume: litres(3003)}
	for range 1001 {
		many.Malts = append(many.Malts, malt(1, 5.7, 30))
	}
	_, err = many.PH()
	near(t, "malts", most(err), 1000, 0)
}
