package yeast

import (
	"cmp"
	"math"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// UsualRate returns the usual pitch rate: 1 million cells a millilitre for each
// degree Plato, from 0.5 million for ales to 1.5 million for lagers.
//
//   - Source: Briggs et al., Brewing: Science and Practice (2004); Kunze (recalled
//     from memory).
//   - Units: million cells/mL/°P.
func UsualRate() evidence.Figure[units.PitchRate] {
	million := units.MillionPerMillilitrePlato
	return evidence.Figure[units.PitchRate]{Value: million.Of(1), Low: million.Of(0.5), High: million.Of(1.5),
		Evidence: evidence.Evidence{Source: "Briggs et al., Brewing: Science and Practice (2004)", Grade: evidence.Recalled}}
}

// CellsToPitch returns the live cells for a volume of a start liquid.
//
//   - Source: rate × volume × extract; [UsualRate] names the source of the rate.
//   - Range: rate 0.05 to 20 million cells/mL/°P, volume 1 mL to 1e9 L, extract 0 to 60 °P;
//     beyond it the error is a [*units.RangeError].
//   - Units: extract as the °P that a hydrometer shows, for which the rule was made; in sugars
//     other than sucrose it is up to 3 % beside the mass share of extract.
//   - Uncertainty: the usual rates span a factor of 3.
func CellsToPitch(rate units.PitchRate, extract units.Extract, v units.Volume) (units.Cells, error) {
	const fn, source = "yeast.CellsToPitch", "pitch rate"
	million, ml, p := rate.In(units.MillionPerMillilitrePlato), v.In(units.Millilitre), extract.In(units.DegreePlato)
	if err := cmp.Or(
		limit.Check(fn, "pitch rate", million, "million cells/mL/°P", 0.05, 20, "what brewers pitch"),
		limit.Check(fn, "volume", ml/1000, "L", 1e-3, amount.MostVolume, source),
		limit.Check(fn, "extract", p, "°P", 0, 60, source),
	); err != nil {
		return units.Cells{}, err
	}
	return billions(million * ml * p / 1000), nil // 1e6 cells in 1e9
}

// WinePitch returns what wine makers pitch, 3 to 4 billion cells a litre
// whatever the sugar, and the peak count that a good ferment reaches from it.
//
//   - Source: Importance of rehydrating wine yeast: pitch 3–4e6, peak 100–150e6
//     cells/mL (read).
//   - Units: cells in a litre.
func WinePitch() (pitch, peak evidence.Figure[units.Cells]) {
	e := evidence.Evidence{Source: "Importance of rehydrating wine yeast", Grade: evidence.Read}
	billion := units.BillionCells // in a litre: a million in a millilitre
	return evidence.Figure[units.Cells]{Value: billion.Of(3.5), Low: billion.Of(3), High: billion.Of(4), Evidence: e},
		evidence.Figure[units.Cells]{Value: billion.Of(125), Low: billion.Of(100), High: billion.Of(150), Evidence: e}
}

func billions(n float64) units.Cells { return units.BillionCells.Of(checked.Number(n)) }

func inBillions(c units.Cells) float64 { return c.In(units.BillionCells) }

// Pack is yeast as sold: how many live cells it held when it was packed, and how
// fast they die.
//
// Make one with [DryPack] or [LiquidPack].
type Pack struct {
	form    form
	count   units.Cells // when packed: in a gram of dry yeast, in a pack of liquid yeast
	perDay  float64     // share of the live cells lost in a day
	figures evidence.Evidence
	low     units.Cells
	high    units.Cells
}

// DryPack returns dry yeast with the live cells in a gram that its maker states. No
// cells take 10 billion, from a published spread of 5 to 25 billion. Storage is
// where it is kept: unopened dry yeast loses about 4 % of its cells in a year in the
// cold and 20 % at 20 °C.
//
//   - Source: spread of cells in a gram: 5e9 to 2.5e10 (recalled from memory).
//     Loss in storage: supplier sheets (recalled from memory); exponential between
//     the two temperatures.
//   - Range: 1 to 50 billion cells a gram, storage −25 to 30 °C; beyond it the error
//     is a [*units.RangeError].
func DryPack(perGram units.Cells, storage units.Temperature) (Pack, error) {
	const fn, source = "yeast.DryPack", "supplier sheets, dry yeast"
	given := !perGram.IsZero()
	if !given {
		perGram = units.BillionCells.Of(10)
	}
	if err := limit.Check(fn, "cells in a gram", inBillions(perGram), "billion", 1, 50, source); err != nil {
		return Pack{}, err
	}
	t := storage.In(units.Celsius)
	if err := limit.Check(fn, "storage temperature", t, "°C", -25, 30, source); err != nil {
		return Pack{}, err
	}
	cold, warm := -math.Log(1-0.04)/365, -math.Log(1-0.20)/365 // a day, at 4 and 20 °C
	p := Pack{
		form: dry, count: perGram, low: perGram, high: perGram,
		perDay:  cold * math.Pow(warm/cold, (t-4)/(20-4)),
		figures: evidence.Evidence{Source: source, Grade: evidence.Recalled},
	}
	if !given {
		p.low, p.high = units.BillionCells.Of(5), units.BillionCells.Of(25)
	}
	return p, nil
}

// LiquidPack returns a pack of liquid yeast with the live cells that its maker
// states for the day of packing. No cells take 100 billion. In the cold the
// cells die by about a fifth in a month.
//
//   - Source: common practice, no source: 100 billion cells in a pack, 0.7 % of the
//     live cells lost each day at 1 to 8 °C.
//   - Range: 1 to 100,000 billion cells; beyond it the error is a [*units.RangeError].
//   - Uncertainty: strains differ by a factor of two in how fast they die; a count
//     under the microscope beats any rule.
func LiquidPack(perPack units.Cells) (Pack, error) {
	given := !perPack.IsZero()
	if !given {
		perPack = units.BillionCells.Of(100)
	}
	if err := limit.Check("yeast.LiquidPack", "cells in a pack", inBillions(perPack), "billion", 1, 1e5, "what is sold"); err != nil {
		return Pack{}, err
	}
	p := Pack{form: liquid, count: perPack, low: perPack, high: perPack, perDay: 0.007}
	if !given {
		p.low, p.high = units.BillionCells.Of(50), units.BillionCells.Of(200)
	}
	return p, nil
}

// Form is "dry" or "liquid".
func (p Pack) Form() string { return forms.Text(p.form) }

// Evidence says where cell count and rate of loss come from.
func (p Pack) Evidence() evidence.Evidence { return p.figures }

// Alive returns the live cells at an age: in a gram of dry yeast, in a pack of
// liquid yeast.
//
//   - Source: first-order loss, see [DryPack] and [LiquidPack].
//   - Range: age 0 to 10 years; beyond it the error is a [*units.RangeError].
func (p Pack) Alive(age time.Duration) (units.Cells, error) {
	share, err := p.viability("yeast.Pack.Alive", age)
	return billions(inBillions(p.count) * share), err
}

func (p Pack) viability(fn string, age time.Duration) (alive float64, err error) {
	days := age.Hours() / 24
	if err := limit.Check(fn, "age", days, "d", 0, 3650, "storage of yeast"); err != nil {
		return alive, err
	}
	if p == (Pack{}) {
		return alive, limit.Check(fn, "cells in the pack", alive, "billion", 1, 1e5, "a pack made by DryPack or LiquidPack")
	}
	return math.Exp(-p.perDay * days), nil
}

// Pitch is yeast to pitch. Its low ends hold if the pack has the most cells of its spread, its
// high ends if it has the fewest.
type Pitch struct {
	Cells    units.Cells
	Mass     evidence.Figure[units.Mass] // of dry yeast; zero for liquid
	Packs    evidence.Figure[float64]    // of liquid yeast, not rounded; zero for dry
	Viable   units.Share                 // of the cells alive at this age
	Cautions caution.List
}

// Need returns the dry yeast to weigh, or the packs of liquid yeast to use, for so
// many live cells at an age.
//
//   - Source: see [DryPack] and [LiquidPack].
//   - Range: up to 1e12 billion cells, age 0 to 10 years; beyond it the error is a
//     [*units.RangeError].
func (p Pack) Need(cells units.Cells, age time.Duration) (Pitch, error) {
	const fn = "yeast.Pack.Need"
	alive, err := p.viability(fn, age)
	if err != nil {
		return Pitch{}, err
	}
	if err := limit.Check(fn, "cells", inBillions(cells), "billion", 0, mostCells, "a count"); err != nil {
		return Pitch{}, err
	}
	out := Pitch{Cells: cells, Viable: amount.Share(alive)}
	of := func(pack units.Cells) float64 { return inBillions(cells) / (inBillions(pack) * alive) }
	if value, low, high := of(p.count), of(p.high), of(p.low); p.form == dry {
		out.Mass = evidence.Figure[units.Mass]{Value: amount.Grams(value), Low: amount.Grams(low), High: amount.Grams(high), Evidence: p.figures}
	} else {
		out.Packs = evidence.Figure[float64]{Value: value, Low: low, High: high, Evidence: p.figures}
	}
	out.Cautions = caution.List{}.WithIf(alive < 0.5, old).WithIf(p.low != p.high, usualCount)
	return out, nil
}

const mostCells = 1e12 // billion

const (
	old        caution.Caution = "old_yeast: Less than half of the cells are likely to live: make a starter, or buy fresh yeast."
	usualCount caution.Caution = "usual_count: The cells in the pack are a usual figure, not its maker's: take the label's where there is one."
)
