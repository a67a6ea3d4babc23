package ferment

import (
	"cmp"
	"slices"

	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// FloorPH returns the pH that a sugar wash should not fall below.
//
//   - Source: Best practices: hard seltzer fermentation (yeast supplier, 2021), keep above
//     3.5 to 4.0 (read). Growth of wine yeast slows sharply between 3.00 and 2.75 (Liu et
//     al., J. Food Sci., read).
func FloorPH() evidence.Figure[float64] {
	return evidence.Figure[float64]{Value: 3.5, Low: 3.5, High: 4.0,
		Evidence: evidence.Evidence{Source: "Best practices: hard seltzer fermentation (yeast supplier, 2021)", Grade: evidence.Read}}
}

// PitchPH returns the pH, at equilibrium with air, that a wash should not be above when it is
// pitched.
//
//   - Source: common practice, no source. At 8.3 and 20 °C a thirteenth of the ammonium
//     stands as ammonia (pK 9.40), which leaves the liquid and harms yeast.
func PitchPH() evidence.Figure[float64] {
	return evidence.Figure[float64]{Value: 8.3, Low: 8, High: 8.5, Evidence: evidence.Evidence{}}
}

// slowPH is where growth slows sharply (Liu et al.).
const slowPH = 3.0

// leastPotassium is what a ferment wants to finish, mg/L, and how many to a proton.
const leastPotassium = 300 // Kudo, Vagnoli & Bisson, Am. J. Enol. Vitic. 1998, recalled from memory

const (
	likelyToStop caution.Caution = "likely_to_stop: The pH falls to about %.1f: yeast is likely to stop with sugar left. Add a buffer, or feed amino " +
		"nitrogen in place of ammonium."
	mayFall  caution.Caution = "may_fall: The pH may fall to %.1f: measure it when half of the sugar is used, and keep bicarbonate at hand."
	alkaline caution.Caution = "alkaline: At rest with air the wash comes to about pH %.1f: yeast starts slowly there, and part of the ammonium " +
		"stands as ammonia. %s"
	fedTooMuch   caution.Caution = "fed_too_much: About %.0f mg/L of nitrogen is left at the end and feeds spoilage: feed less."
	lowPotassium caution.Caution = "little_potassium: Potassium is about %.0f mg/L: musts want 300 to finish, and with little of it ammonium harms yeast. " +
		"Potassium bicarbonate brings it."
)

// Cautions returns what whoever ferments it must know, by the pH at equilibrium with air before the yeast and the lowest of
// the ferment: of a [Course], or as another balance or a meter has them.
//
//   - Source: [FloorPH], [PitchPH]; Liu et al. for growth below pH 3 (read), Kudo, Vagnoli & Bisson 1998 for potassium
//     (recalled from memory).
//   - Range: that of [Tank.At]; a pH of 1 to 13. Otherwise the error is a [*units.RangeError].
func (f Tank) Cautions(start float64, lowest evidence.Figure[float64]) (caution.List, error) {
	const fn = "ferment.Tank.Cautions"
	for _, ph := range [...]float64{start, lowest.Value, lowest.Low} {
		if err := limit.Check(fn, "pH", ph, "", 1, 13, fermentSource); err != nil {
			return nil, err
		}
	}
	c, err := f.checked(fn)
	if err != nil {
		return nil, limit.Named(fn, err)
	}
	return c.cautions(start, lowest, c.nitrogen(c.balance(c.Metabolism, allUsed), allUsed)), nil
}

// lowest is the point of the lowest pH.
func lowest(points []Point) evidence.Figure[float64] {
	return slices.MinFunc(points, func(a, b Point) int { return cmp.Compare(a.PH.Value, b.PH.Value) }).PH
}

func (f *fermenting) cautions(start float64, lowest evidence.Figure[float64], left units.MassConcentration) caution.List {
	var out caution.List
	switch {
	case lowest.Value < slowPH:
		out = out.With(likelyToStop.With(lowest.Value))
	case lowest.Low < FloorPH().Value:
		out = out.With(mayFall.With(lowest.Low))
	}
	if start > PitchPH().Value {
		advice := "Leave it a day under its yeast before the first nutrient, or take a water of less alkalinity."
		if !f.Buffer.Mass.IsZero() {
			advice = "Keep half of the buffer back until a sixth of the sugar is used: by then the yeast's own CO2 holds the pH below 7."
		}
		out = out.With(alkaline.With(start, advice))
	}
	if n := left.In(units.MilligramPerLitre); n > 20 {
		out = out.With(fedTooMuch.With(n))
	}
	k := f.start.Potassium*formula.WeightK + f.feed.Potassium.In(units.MilligramPerLitre)
	if k < leastPotassium && f.feed.Ammonium.In(units.MilligramPerLitre) > 0 {
		out = out.With(lowPotassium.With(k))
	}
	return out
}
