package plan

import (
	"cmp"
	"errors"
	"fmt"
	"math"
	"slices"
	"sort"

	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// Cause is something that can make a ferment go otherwise than planned, tried on the batch: the
// wash as it would then be, and how well the readings go with it.
type Cause struct {
	Name string  `json:"name"` // "temperature", "nitrogen", "pH" or "yeast"
	What string  `json:"what"` // that was tried
	Odds float64 `json:"odds"` // how many times as likely the readings are with it as without
}

// Said is the odds in words: 1 is what says nothing.
func (c Cause) Said() string {
	switch {
	case c.Odds < 1/1.5:
		return "the readings speak against it"
	case c.Odds < 1.5:
		return "the readings do not tell"
	}
	return fmt.Sprintf("the readings are %.1f times as likely with it", c.Odds)
}

// Steps by which a cause is tried (chosen): what a cellar gets wrong without noticing.
const (
	warmthOff   = 4.0  // K
	nitrogenOff = 0.5  // of what was planned
	yeastOff    = 0.1  // of the live cells
	sour        = 2.7  // pH
	leastNit    = 20.0 // mg/L, of the model
)

// causes are what can have made the ferment faster or slower than planned, the likeliest first.
func (m *maker) causes(f *kinetics.Forecast, faster bool) ([]Cause, error) {
	start, holds := m.begins(), m.warmths()
	plan := f.Fit().Evidence()
	var all []Cause
	try := func(name, what string, s kinetics.Start, h []kinetics.Hold) error {
		p, err := kinetics.NewPace(s, h...)
		if _, outside := errors.AsType[*units.RangeError](err); outside {
			return nil // the model says nothing of it
		}
		if err != nil {
			return err
		}
		odds := math.Exp(f.On(p).Fit().Evidence() - plan)
		all = append(all, Cause{name, what, odds})
		return nil
	}
	times := func(q units.MassConcentration, k, least float64) units.MassConcentration {
		return units.MilligramPerLitre.Of(checked.Number(math.Max(k*q.In(units.MilligramPerLitre), least)))
	}
	more := func(k float64) float64 { // the other way round for one that is faster
		if faster {
			return 1 / k
		}
		return k
	}
	shifted, word := -warmthOff, "colder"
	if faster {
		shifted, word = warmthOff, "warmer"
	}
	other := slices.Clone(holds)
	for i := range other {
		t := math.Min(math.Max(other[i].Temperature.In(units.Celsius)+shifted, 10), 35)
		other[i].Temperature = units.Celsius.Of(checked.Number(t))
	}
	fed, pitched, word2 := start, start, "half of the nitrogen"
	fed.Nitrogen = times(start.Nitrogen, more(nitrogenOff), leastNit)
	pitched.Yeast = times(start.Yeast, more(yeastOff), 5)
	cells := "a tenth of the live cells"
	if faster {
		word2, cells = "twice the nitrogen", "ten times the live cells"
	}
	err := cmp.Or(
		try("temperature", fmt.Sprintf("%.0f K %s than planned, from the start", warmthOff, word), start, other),
		try("nitrogen", word2, fed, holds),
		try("yeast", cells, pitched, holds),
	)
	if !faster && err == nil {
		low := start
		low.PH = sour
		err = try("pH", fmt.Sprintf("pH %.1f", sour), low, holds)
	}
	sort.SliceStable(all, func(i, k int) bool { return all[i].Odds > all[k].Odds })
	return all, err
}
