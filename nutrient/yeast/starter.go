package yeast

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// perDryGram is the cells in a gram of new dry yeast matter.
func perDryGram() evidence.Figure[units.Cells] {
	return evidence.Figure[units.Cells]{Value: units.BillionCells.Of(20), Low: units.BillionCells.Of(15), High: units.BillionCells.Of(25),
		Evidence: evidence.Evidence{Source: "cell mass 40 to 60 pg", Grade: evidence.Recalled}}
}

// CellsIn returns the cells of so much new dry yeast, such as [ferment.Balance].DryYeast.
//
//   - Source: 1.5 to 2.5e10 cells to the gram, 40 to 60 pg each (recalled from memory).
//   - Range: 0 to 1e9 kg; beyond it the error is a [*units.RangeError].
func CellsIn(dry units.Mass) (evidence.Figure[units.Cells], error) {
	g := dry.In(units.Gram)
	if err := limit.Check("yeast.CellsIn", "dry yeast", g/1000, "kg", 0, amount.MostMass/1000, "a mass"); err != nil {
		return evidence.Figure[units.Cells]{}, err
	}
	f := perDryGram()
	return evidence.Figure[units.Cells]{Value: billions(g * inBillions(f.Value)), Low: billions(g * inBillions(f.Low)),
		High: billions(g * inBillions(f.High)), Evidence: f.Evidence}, nil
}

// Starter is a small ferment that grows yeast.
type Starter struct {
	Extract  units.Mass   // dry malt extract or sugar, as extract
	Volume   units.Volume // at the extract given
	Grown    units.Cells
	Balance  ferment.Balance
	Feed     units.Mass // nitrogen that the new yeast holds; malt brings it, sugar does not
	Cautions caution.List
}

// StarterFor returns the starter that takes live cells to a number wanted, without
// aeration, by what a mass of extract grows: 5.3 g of dry yeast from 100 g. A starter
// on a stirrer, with air, grows up to twice that.
//
//   - Source: dry yeast 5.323 of 100 extract (Balling, Die Gährungschemie, read);
//     [CellsIn]; balance of [ferment.Metabolism.Ferment].
//   - Range: 0 to 1e6 billion cells, wanted at least have; extract 2 to 20 °P; beyond it
//     the error is a [*units.RangeError].
//   - Uncertainty: a factor of 1.7 from the cells in a gram alone.
func StarterFor(have, wanted units.Cells, strength units.Extract) (Starter, error) {
	const fn, source = "yeast.StarterFor", "Balling, yeast grown from extract"
	from, to := inBillions(have), inBillions(wanted)
	if err := limit.Check(fn, "cells to start with", from, "billion", 0, 1e6, source); err != nil {
		return Starter{}, err
	}
	if err := limit.Check(fn, "cells wanted", to, "billion", from, 1e6, source); err != nil {
		return Starter{}, err
	}
	p := strength.In(units.DegreePlato)
	if err := limit.Check(fn, "extract", p, "°P", 2, 20, source); err != nil {
		return Starter{}, err
	}
	dry := (to - from) / inBillions(perDryGram().Value) // g
	hexose := dry / ferment.UsualMetabolism().MostYeast.In(units.Fraction)
	nitrogen := dry * formula.NitrogenOfYeast
	b, err := ferment.UsualMetabolism().Ferment(ferment.Substrate{Hexose: amount.Grams(hexose), Amino: amount.Grams(nitrogen)})
	if err != nil { // not reached: sugar and nitrogen of the yeast's own composition
		return Starter{}, err
	}
	extract := hexose / formula.GainOfDi
	out := Starter{
		Extract: amount.Grams(extract), Grown: billions(dry * inBillions(perDryGram().Value)), Balance: b, Feed: amount.Grams(nitrogen),
		// g of liquid over its density, 1 + 0.004 for each °P
		Volume: units.Millilitre.Of(checked.Number(extract * 100 / p / (1 + 0.004*p))),
	}
	if from > 0 && to/from > 10 {
		out.Cautions = caution.List{tenfold}
	}
	return out, nil
}

// PitchCheck says whether the yeast pitched and what it may grow to fit each other.
type PitchCheck struct {
	Doublings evidence.Figure[float64] // from the cells pitched to the cells at the end
	Cautions  caution.List
}

// CheckPitch compares the cells pitched with the yeast that can grow on the nitrogen.
// Yeast that cannot double at all ferments with what was pitched, and tires.
//
//   - Source: log2 of the cells at the end over those pitched, with
//     [CellsIn]; 1 to 5 doublings are usual (common practice, no source).
//   - Range: cells pitched above 0; otherwise the error is a [*units.RangeError].
func CheckPitch(pitched units.Cells, b ferment.Balance) (PitchCheck, error) {
	if err := limit.Check("yeast.CheckPitch", "cells pitched", inBillions(pitched), "billion", 1e-9, mostCells, "a pitch"); err != nil {
		return PitchCheck{}, err
	}
	g, err := CellsIn(b.DryYeast)
	if err != nil {
		return PitchCheck{}, limit.Named("yeast.CheckPitch", err)
	}
	doublings := func(c units.Cells) float64 { return math.Log2(1 + inBillions(c)/inBillions(pitched)) }
	out := PitchCheck{Doublings: evidence.Figure[float64]{Value: doublings(g.Value), Low: doublings(g.Low), High: doublings(g.High), Evidence: g.Evidence}}
	switch {
	case out.Doublings.Value < 1:
		out.Cautions = caution.List{fewDoublings.With(out.Doublings.Value)}
	case out.Doublings.Value > 5:
		out.Cautions = caution.List{manyDoublings.With(out.Doublings.Value)}
	}
	return out, nil
}

const (
	tenfold       caution.Caution = "tenfold: More than tenfold in one step: grow it in two, as a thin start invites spoilage."
	fewDoublings  caution.Caution = "few_doublings: The nitrogen lets the yeast double %.1f times only: feed more, or pitch more."
	manyDoublings caution.Caution = "many_doublings: The yeast has to double %.1f times: pitch more, as a long start invites spoilage."
)
