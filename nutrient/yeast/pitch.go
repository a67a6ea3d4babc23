package yeast

import (
	"math"
	"strconv"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// PitchRate is live cells to pitch, in million cells a millilitre for each degree
// Plato.
type PitchRate struct{ million float64 }

// MillionPerPlato returns a pitch rate of n million cells/mL/°P. The error is a
// [*units.RangeError] if n is not from 0.05 to 20.
func MillionPerPlato(n float64) (PitchRate, error) {
	if err := limit.Check("yeast.MillionPerPlato", "pitch rate", n, "million cells/mL/°P", 0.05, 20, "what brewers pitch"); err != nil {
		return PitchRate{}, err
	}
	return PitchRate{n}, nil
}

// rateUnit ends the text of a pitch rate.
const rateUnit = " million cells/mL/°P"

// String reads "0.75 million cells/mL/°P".
func (r PitchRate) String() string { return strconv.FormatFloat(r.million, 'g', -1, 64) + rateUnit }

// MarshalText is [PitchRate.String]; the error is always nil.
func (r PitchRate) MarshalText() ([]byte, error) { return []byte(r.String()), nil }

// UnmarshalText reads what [PitchRate.MarshalText] writes. The error is a
// [*units.ParseError], or that of [MillionPerPlato].
func (r *PitchRate) UnmarshalText(text []byte) error {
	n, err := number("pitch rate", string(text), rateUnit)
	if err != nil {
		return err
	}
	read, err := MillionPerPlato(n)
	if err != nil {
		return limit.Named("yeast.PitchRate.UnmarshalText", err)
	}
	*r = read
	return nil
}

// Million returns the rate in million cells/mL/°P.
func (r PitchRate) Million() float64 { return r.million }

// UsualRate returns the usual pitch rate: 1 million cells a millilitre for each
// degree Plato, from 0.5 million for ales to 1.5 million for lagers.
//
//   - Source: Briggs et al., Brewing: Science and Practice (2004); Kunze (recalled
//     from memory).
//   - Units: million cells/mL/°P.
func UsualRate() evidence.Figure[PitchRate] {
	return evidence.Figure[PitchRate]{Value: PitchRate{1}, Low: PitchRate{0.5}, High: PitchRate{1.5},
		Evidence: evidence.Evidence{Source: "Briggs et al., Brewing: Science and Practice (2004)", Grade: evidence.Recalled}}
}

// CellsToPitch returns the live cells for a volume of a start liquid.
//
//   - Source: rate × volume × extract; [UsualRate] names the source of the rate.
//   - Range: volume 1 mL to 1e9 L, extract 0 to 60 °P; beyond it the error is a
//     [*units.RangeError].
//   - Units: extract as the °P that a hydrometer shows, for which the rule was made; in sugars
//     other than sucrose it is up to 3 % beside the mass share of extract.
//   - Uncertainty: the usual rates span a factor of 3.
func CellsToPitch(rate PitchRate, extract units.Extract, v units.Volume) (Cells, error) {
	const fn, source = "yeast.CellsToPitch", "pitch rate"
	ml, p := v.In(units.Millilitre), extract.In(units.DegreePlato)
	if err := limit.Check(fn, "volume", ml/1000, "L", 1e-3, amount.MostVolume, source); err != nil {
		return Cells{}, err
	}
	if err := limit.Check(fn, "extract", p, "°P", 0, 60, source); err != nil {
		return Cells{}, err
	}
	return Cells{rate.million * ml * p / 1000}, nil // 1e6 cells in 1e9
}

// WinePitch returns what wine makers pitch, 3 to 4 million cells a millilitre
// whatever the sugar, and the peak count that a good ferment reaches from it.
//
//   - Source: Importance of rehydrating wine yeast: pitch 3–4e6, peak 100–150e6
//     cells/mL (read).
//   - Units: million cells/mL.
func WinePitch() (pitch, peak evidence.Figure[float64]) {
	e := evidence.Evidence{Source: "Importance of rehydrating wine yeast", Grade: evidence.Read}
	return evidence.Figure[float64]{Value: 3.5, Low: 3, High: 4, Evidence: e}, evidence.Figure[float64]{Value: 125, Low: 100, High: 150, Evidence: e}
}

// Pack is yeast as sold: how many live cells it held when it was packed, and how
// fast they die.
//
// Make one with [DryPack] or [LiquidPack].
type Pack struct {
	form    PackForm
	count   Cells   // when packed: in a gram of dry yeast, in a pack of liquid yeast
	perDay  float64 // share of the live cells lost in a day
	figures evidence.Evidence
	low     Cells
	high    Cells
}

// DryPack returns dry yeast with the live cells in a gram that its maker states. The
// zero Cells takes 10 billion, from a published spread of 5 to 25 billion. Storage is
// where it is kept: unopened dry yeast loses about 4 % of its cells in a year in the
// cold and 20 % at 20 °C.
//
//   - Source: spread of cells in a gram: 5e9 to 2.5e10 (recalled from memory).
//     Loss in storage: supplier sheets (recalled from memory); exponential between
//     the two temperatures.
//   - Range: 1 to 50 billion cells a gram, storage −25 to 30 °C; beyond it the error
//     is a [*units.RangeError].
func DryPack(perGram Cells, storage units.Temperature) (Pack, error) {
	const fn, source = "yeast.DryPack", "supplier sheets, dry yeast"
	given := perGram.billion != 0
	if !given {
		perGram.billion = 10
	}
	if err := limit.Check(fn, "cells in a gram", perGram.billion, "billion", 1, 50, source); err != nil {
		return Pack{}, err
	}
	t := storage.In(units.Celsius)
	if err := limit.Check(fn, "storage temperature", t, "°C", -25, 30, source); err != nil {
		return Pack{}, err
	}
	cold, warm := -math.Log(1-0.04)/365, -math.Log(1-0.20)/365 // a day, at 4 and 20 °C
	p := Pack{
		form: DryYeast, count: perGram, low: perGram, high: perGram,
		perDay:  cold * math.Pow(warm/cold, (t-4)/(20-4)),
		figures: evidence.Evidence{Source: source, Grade: evidence.Recalled},
	}
	if !given {
		p.low, p.high = Cells{5}, Cells{25}
	}
	return p, nil
}

// LiquidPack returns a pack of liquid yeast with the live cells that its maker
// states for the day of packing. The zero Cells takes 100 billion. In the cold the
// cells die by about a fifth in a month.
//
//   - Source: common practice, no source: 100 billion cells in a pack, 0.7 % of the
//     live cells lost each day at 1 to 8 °C.
//   - Range: 1 to 100,000 billion cells; beyond it the error is a [*units.RangeError].
//   - Uncertainty: strains differ by a factor of two in how fast they die; a count
//     under the microscope beats any rule.
func LiquidPack(perPack Cells) (Pack, error) {
	given := perPack.billion != 0
	if !given {
		perPack.billion = 100
	}
	if err := limit.Check("yeast.LiquidPack", "cells in a pack", perPack.billion, "billion", 1, 1e5, "what is sold"); err != nil {
		return Pack{}, err
	}
	p := Pack{form: LiquidYeast, count: perPack, low: perPack, high: perPack, perDay: 0.007}
	if !given {
		p.low = Cells{50}
		p.high = Cells{200}
	}
	return p, nil
}

// Form returns whether it is dry or liquid.
func (p Pack) Form() PackForm { return p.form }

// Evidence says where cell count and rate of loss come from.
func (p Pack) Evidence() evidence.Evidence { return p.figures }

// Alive returns the live cells at an age: in a gram of dry yeast, in a pack of
// liquid yeast.
//
//   - Source: first-order loss, see [DryPack] and [LiquidPack].
//   - Range: age 0 to 10 years; beyond it the error is a [*units.RangeError].
func (p Pack) Alive(age time.Duration) (Cells, error) {
	share, err := p.viability("yeast.Pack.Alive", age)
	return Cells{p.count.billion * share}, err
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

// Pitch is yeast to pitch.
type Pitch struct {
	Cells    Cells
	Mass     units.Mass        // of dry yeast; zero for liquid
	Packs    float64           // of liquid yeast, not rounded; zero for dry
	Low      float64           // Mass in g, or Packs, if the pack holds the most cells of its spread
	High     float64           // the same, if it holds the fewest
	Viable   units.Share       // of the cells alive at this age
	Evidence evidence.Evidence // of the cells in the pack
	Cautions caution.List
}

// Need returns the dry yeast to weigh, or the packs of liquid yeast to use, for so
// many live cells at an age.
//
//   - Source: see [DryPack] and [LiquidPack].
//   - Range: age 0 to 10 years; beyond it the error is a [*units.RangeError].
func (p Pack) Need(cells Cells, age time.Duration) (Pitch, error) {
	alive, err := p.viability("yeast.Pack.Need", age)
	if err != nil {
		return Pitch{}, err
	}
	out := Pitch{
		Cells: cells, Viable: amount.Share(alive), Evidence: p.figures,
		Low: cells.billion / (p.high.billion * alive), High: cells.billion / (p.low.billion * alive),
	}
	n := cells.billion / (p.count.billion * alive)
	if p.form == DryYeast {
		out.Mass = units.Gram.Of(checked.Number(n))
	} else {
		out.Packs = n
	}
	out.Cautions = caution.List{}.WithIf(alive < 0.5, old).WithIf(p.low != p.high, usualCount)
	return out, nil
}

const (
	old        caution.Caution = "old_yeast: Less than half of the cells are likely to live: make a starter, or buy fresh yeast."
	usualCount caution.Caution = "usual_count: The cells in the pack are a usual figure, not its maker's: take the label's where there is one."
)
