package mash_test

import (
	"fmt"

	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/mash"
)

// A pale ale in a liquor of middling alkalinity.
func paleAle() mash.Mash {
	liquor, err := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(120),
		water.Calcium.At(units.MilligramPerLitre.Of(60)), water.Magnesium.At(units.MilligramPerLitre.Of(8)))
	if err != nil {
		panic(err)
	}
	return mash.Mash{Water: liquor, Volume: units.Litre.Of(15), Malts: []mash.Malt{
		mash.Pale.Malt(units.Kilogram.Of(4.5)), mash.Caramel.Malt(units.Kilogram.Of(0.3)),
	}}
}

func ExampleMash_PH() {
	e, err := paleAle().PH()
	if err != nil {
		panic(err)
	}
	fmt.Println("pH", e)
	for _, p := range e.Parts {
		fmt.Printf("  %s: %+.2f, %+.2f\n", p.Name, p.Low, p.High)
	}
	// Output:
	// pH 5.80 (5.66 to 5.90)
	//   pH of pale malt: -0.11, +0.07
	//   buffering of pale malt: +0.04, -0.03
	//   pH of caramel malt: -0.01, +0.01
	//   buffering of caramel malt: +0.02, -0.03
	//   calcium with malt phosphate: +0.04, -0.07
	//   magnesium with malt phosphate: +0.00, -0.01
	//   CO2 that stays in the mash: +0.00, -0.05
}

// The same mash with the malt measured: a sample mashed in distilled water, and another with a
// known dose of acid.
func ExampleMalt() {
	m, mmol := paleAle(), units.Millimole
	m.Malts[0].PH = evidence.Figure[float64]{Value: 5.74, Low: 5.71, High: 5.77}
	m.Malts[0].BufferPerKilogram = evidence.Figure[units.Amount]{Value: mmol.Of(33), Low: mmol.Of(30), High: mmol.Of(36)}
	e, err := m.PH()
	fmt.Println("pH", e, err)
	// Output:
	// pH 5.82 (5.73 to 5.87) <nil>
}

func ExampleMash_WithAcid() {
	d, err := paleAle().WithAcid(water.LacticAcid, 5.4)
	if err != nil {
		panic(err)
	}
	fmt.Printf("%s (%s to %s) of lactic acid\n", d.Mass.Text(units.Gram, 1), d.Low.Text(units.Gram, 1), d.High.Text(units.Gram, 1))
	for _, c := range d.Cautions {
		fmt.Println(c)
	}
	// Output:
	// 5.4 g (3.1 g to 7.7 g) of lactic acid
	// Concentrated acid burns: goggles, gloves, and the acid into the liquid, never the liquid into the acid; food grade only.
	// A mash is not known this well: add half, stir, measure a cooled sample, then the rest.
}

// A stout in soft water needs the other way.
func ExampleMash_WithBase() {
	soft, err := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(20), water.Calcium.At(units.MilligramPerLitre.Of(10)))
	if err != nil {
		panic(err)
	}
	stout := mash.Mash{Water: soft, Volume: units.Litre.Of(16), Malts: []mash.Malt{
		mash.Pale.Malt(units.Kilogram.Of(4)), mash.Chocolate.Malt(units.Kilogram.Of(0.3)), mash.Black.Malt(units.Kilogram.Of(0.4)),
	}}
	d, err := stout.WithBase(material.BakingSoda(), 5.6)
	if err != nil {
		panic(err)
	}
	fmt.Printf("%s (%s to %s) of baking soda\n", d.Mass.Text(units.Gram, 1), d.Low.Text(units.Gram, 1), d.High.Text(units.Gram, 1))
	// Output:
	// 0.9 g (0.0 g to 2.4 g) of baking soda
}

func ExampleMash_Rivals() {
	list, err := paleAle().Rivals()
	if err != nil {
		panic(err)
	}
	for _, r := range list {
		if r.Known {
			fmt.Printf("%s: %.2f (%.2f to %.2f)\n", r.Method, r.PH.Value, r.PH.Low, r.PH.High)
		} else {
			fmt.Printf("%s: not read\n", r.Method)
		}
	}
	// Output:
	// balance of protons: 5.80 (5.66 to 5.90)
	// residual alkalinity: 5.77 (5.64 to 5.92)
	// residual alkalinity, modified for mashes: not read
}

func ExampleClass_Malt() {
	for _, c := range mash.Classes() {
		m, mmol := c.Malt(units.Kilogram.Of(1)), units.Millimole
		b := m.BufferPerKilogram
		fmt.Printf("%s pH %.2f (%.2f to %.2f) buffering %s (%s to %s)\n", c, m.PH.Value, m.PH.Low, m.PH.High, b.Value.Text(mmol, 0),
			b.Low.Text(mmol, 0), b.High.Text(mmol, 0))
	}
	// Output:
	// pale malt pH 5.72 (5.60 to 5.80) buffering 30 mmol (20 mmol to 45 mmol)
	// pilsner malt pH 5.80 (5.60 to 6.00) buffering 30 mmol (20 mmol to 45 mmol)
	// caramel malt pH 4.65 (4.50 to 4.80) buffering 30 mmol (20 mmol to 45 mmol)
	// chocolate malt pH 4.40 (4.30 to 4.50) buffering 30 mmol (20 mmol to 45 mmol)
	// black malt pH 4.10 (4.00 to 4.20) buffering 30 mmol (20 mmol to 45 mmol)
}
