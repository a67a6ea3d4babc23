package yeast

import (
	"math"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
)

// 5.323 g of dry yeast from 100 g of extract (Balling), 20 billion cells in a gram (15 to
// 25, recalled from memory): 100 g of extract grow 106 billion cells.
func TestStarterFor(t *testing.T) {
	s := check.Must(StarterFor(units.BillionCells.Of(50), units.BillionCells.Of(50+106.46), units.DegreePlato.Of(10)))
	check.Near(t, "extract", s.Extract.In(units.Gram), 100, 0.01, "Balling")
	check.Near(t, "volume", s.Volume.In(units.Litre), 1/1.04, 0.0002, "1 kg of 10 °P at SG 1.040")
	check.Near(t, "grown", s.Grown.In(units.BillionCells), 106.46, 1e-9, "asked")
	check.Near(t, "dry yeast", s.Balance.DryYeast.In(units.Gram), 5.323, 1e-6, "Balling")
	check.Near(t, "nitrogen", s.Feed.In(units.Gram), 0.5323, 1e-9, "10 % of dry matter")
	if len(s.Cautions) != 0 {
		t.Errorf("%q", s.Cautions)
	}
	if s = check.Must(StarterFor(units.BillionCells.Of(10), units.BillionCells.Of(101), units.DegreePlato.Of(10))); len(s.Cautions) != 1 {
		t.Errorf("%q", s.Cautions)
	}
	if s = check.Must(StarterFor(units.BillionCells.Of(0.5), units.BillionCells.Of(5.1), units.DegreePlato.Of(10))); len(s.Cautions) != 1 {
		t.Errorf("%q", s.Cautions)
	}
	if s = check.Must(StarterFor(units.Cells{}, units.BillionCells.Of(100), units.DegreePlato.Of(10))); len(s.Cautions) != 0 {
		t.Errorf("nothing to multiply: %q", s.Cautions)
	}
	if s = check.Must(StarterFor(units.BillionCells.Of(10), units.BillionCells.Of(99), units.DegreePlato.Of(10))); len(s.Cautions) != 0 {
		t.Errorf("%q", s.Cautions)
	}
	_, err := StarterFor(units.BillionCells.Of(100), units.BillionCells.Of(50), units.DegreePlato.Of(10))
	check.Refused(t, err, "cells wanted", 100, 1e6)
	_, err = StarterFor(units.BillionCells.Of(-1), units.BillionCells.Of(50), units.DegreePlato.Of(10))
	check.Refused(t, err, "cells to start with", 0, 1e6)
	_, err = StarterFor(units.BillionCells.Of(10), units.BillionCells.Of(50), units.DegreePlato.Of(1))
	check.Refused(t, err, "extract", 2, 20)
	_, err = StarterFor(units.BillionCells.Of(10), units.BillionCells.Of(50), units.DegreePlato.Of(21))
	check.Refused(t, err, "extract", 2, 20)
}

func TestGrown(t *testing.T) {
	g := check.Must(CellsIn(units.Gram.Of(2)))
	check.Near(t, "value", g.Value.In(units.BillionCells), 40, 1e-12, "recalled from memory")
	check.Near(t, "low", g.Low.In(units.BillionCells), 30, 1e-12, "recalled from memory")
	check.Near(t, "high", g.High.In(units.BillionCells), 50, 1e-12, "recalled from memory")
	_, err := CellsIn(units.Mass{}.Minus(units.Gram.Of(1)))
	check.Refused(t, err, "dry yeast", 0, 1e9)
	_, err = CellsIn(units.Kilogram.Of(1.0005e9))
	check.Refused(t, err, "dry yeast", 0, 1e9)
}

func TestCheckPitch(t *testing.T) {
	grow := func(g float64) ferment.Balance { return ferment.Balance{DryYeast: check.Must(units.Gram.Try(g))} }
	pitch := units.BillionCells.Of(20)
	c := check.Must(CheckPitch(pitch, grow(3)))
	check.Near(t, "doublings", c.Doublings.Value, 2, 1e-12, "20 billion and 60 new: fourfold")
	check.Near(t, "low", c.Doublings.Low, math.Log2(1+45.0/20), 1e-12, "by hand")
	check.Near(t, "high", c.Doublings.High, math.Log2(1+75.0/20), 1e-12, "by hand")
	for g, want := range map[float64]int{0.9: 1, 1.1: 0, 30: 0, 32: 1} {
		if c := check.Must(CheckPitch(pitch, grow(g))); len(c.Cautions) != want {
			t.Errorf("%g g: %q", g, c.Cautions)
		}
	}
	_, err := CheckPitch(units.Cells{}, grow(1))
	check.Refused(t, err, "cells pitched", 1e-9, 1e12)
	_, err = CheckPitch(pitch, ferment.Balance{DryYeast: units.Mass{}.Minus(units.Gram.Of(1))})
	check.Refused(t, err, "dry yeast", 0, 1e9)
}
