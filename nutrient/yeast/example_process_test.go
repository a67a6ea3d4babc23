package yeast_test

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Rehydrating 40 g of wine yeast for a wash of 18 °C.
func ExampleRehydrate() {
	r, _ := yeast.Rehydrate(units.Gram.Of(40), yeast.WineYeast, units.Celsius.Of(18))
	fmt.Println(r.Water.Low.Text(units.Litre, 1), "to", r.Water.High.Text(units.Litre, 1), "at", r.Temperature.Value.Text(units.Celsius, 0), "for", r.Time)
	for _, t := range r.Steps {
		fmt.Println("then", t.Text(units.Celsius, 1), "after", r.StepPause)
	}
	// Output:
	// 0.4 L to 0.8 L at 38 °C for 20m0s
	// then 27.5 °C after 5m0s
	// then 18.0 °C after 5m0s
}

// A starter that takes 80 billion cells to 200.
func ExampleStarterFor() {
	have := units.BillionCells.Of(80)
	want := units.BillionCells.Of(200)
	s, _ := yeast.StarterFor(have, want, units.DegreePlato.Of(10))
	fmt.Println(s.Extract.Text(units.Gram, 0), "of extract in", s.Volume.Text(units.Litre, 2), "grow", s.Grown.Text(units.BillionCells, 0),
		"and hold", s.Feed.Text(units.Gram, 2), "of nitrogen")
	// Output: 113 g of extract in 1.08 L grow 120 billion cells and hold 0.60 g of nitrogen
}

// Does the nitrogen let the yeast double often enough?
func ExampleCheckPitch() {
	p, _ := hall().At(units.Percent.Of(100))
	pitched := units.BillionCells.Of(420)
	c, _ := yeast.CheckPitch(pitched, p.Balance)
	grown, _ := yeast.CellsIn(p.Balance.DryYeast)
	fmt.Printf("%.1f doublings (%.1f to %.1f); %s grow\n", c.Doublings.Value, c.Doublings.Low, c.Doublings.High, grown.Value.Text(units.BillionCells, 0))
	// Output: 2.0 doublings (1.7 to 2.2); 1260 billion cells grow
}

// Liquid yeast, two months old.
func ExampleLiquidPack() {
	p, _ := yeast.LiquidPack(units.Cells{})
	alive, _ := p.Alive(60 * 24 * time.Hour)
	fmt.Println(p.Form(), alive.Text(units.BillionCells, 1), "-", p.Evidence())
	rate := units.MillionPerMillilitrePlato.Of(0.75)
	cells, _ := yeast.CellsToPitch(rate, units.DegreePlato.Of(12), units.Litre.Of(20))
	n, _ := p.Need(cells, 60*24*time.Hour)
	fmt.Printf("%.1f packs for %s\n", n.Packs.Value, cells)
	pitch, peak := yeast.WinePitch()
	fmt.Println("wine:", pitch.Low, "to", pitch.High, "in a litre, growing to", peak.Value)
	// Output:
	// liquid 65.7 billion cells - common practice, no source
	// 2.7 packs for 180 billion cells
	// wine: 3 billion cells to 4 billion cells in a litre, growing to 125 billion cells
}

// hall is a wash of the village hall, fed with ammonium phosphate.
func hall() ferment.Tank {
	b, _ := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	soft, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(38),
		water.Calcium.At(units.MilligramPerLitre.Of(14)), water.Potassium.At(units.MilligramPerLitre.Of(1)))
	return ferment.Tank{
		Brew: b, Water: soft, Temperature: units.Celsius.Of(20), Additions: 3,
		Feed: []material.Dose{{Material: material.DiammoniumPhosphate(), Mass: units.Gram.Of(19)}},
	}
}
