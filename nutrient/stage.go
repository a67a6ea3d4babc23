package nutrient

import (
	"strings"
	"time"

	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// Stage is one addition of nutrient.
type Stage struct {
	Used  units.Share       // of the fermentable sugar, when it goes in
	Weigh []units.ExactMass // of each dose, in their order
}

// Schedule is doses split into stages.
type Schedule struct {
	Stages   []Stage
	Totals   []units.ExactMass // of each dose, what the stages add up to
	Cautions caution.List
}

// LastAddition is the share of the sugar by which the last nitrogen goes in: one
// third. Later, yeast takes up less of it, and what is left feeds spoilage.
//
//   - Source: common practice, no source.
func LastAddition() units.Share { return amount.Share(1.0 / 3) }

// StageShares returns when n additions go in: the first with the yeast, the last when
// one third of the sugar is used, the others evenly between.
//
//   - Source: common practice, no source.
//   - Range: 1 to 10 additions; beyond it the error is a [*units.RangeError].
func StageShares(n int) ([]units.Share, error) {
	if err := limit.Check("nutrient.StageShares", "additions", float64(n), "", 1, 10, "common practice"); err != nil {
		return nil, err
	}
	out := make([]units.Share, n)
	for i := 1; i < n; i++ {
		out[i] = amount.Share(float64(i) / float64(n-1) / 3)
	}
	return out, nil
}

// InStages splits doses into n additions by sugar used, each a multiple of what the
// scale shows. Doses are rounded down to the scale, so that no limit is passed, and
// the stages add up to the rounded dose exactly.
//
//   - Source: [StageShares].
//   - Range: 1 to 10 additions, doses not negative, scale above 0; beyond it the error is a
//     [*units.RangeError].
func InStages(n int, scale units.ExactMass, doses ...material.Dose) (Schedule, error) {
	used, err := StageShares(n)
	if err != nil {
		return Schedule{}, limit.Named("nutrient.InStages", err)
	}
	var small []string // doses below the scale
	out := Schedule{Stages: make([]Stage, n)}
	for i := range used {
		out.Stages[i].Used = used[i]
	}
	for _, d := range doses {
		if err := limit.Check("nutrient.InStages", "dose", d.Mass.In(units.Gram), "g", 0, amount.MostMass, "a mass weighed"); err != nil {
			return Schedule{}, err
		}
		total, err := d.Mass.Round(scale, units.Down)
		if err != nil {
			return Schedule{}, limit.Named("nutrient.InStages", err)
		}
		parts, err := total.Split(n, scale)
		if err != nil {
			return Schedule{}, limit.Named("nutrient.InStages", err)
		}
		if total.Decimal().IsZero() && !d.Mass.IsZero() {
			small = append(small, d.Material.Name()+", "+d.Mass.Text(units.Milligram, 0)+",")
		}
		for i := range parts {
			out.Stages[i].Weigh = append(out.Stages[i].Weigh, parts[i])
		}
		out.Totals = append(out.Totals, total)
	}
	if len(small) > 0 {
		out.Cautions = out.Cautions.With(tooSmall.With(strings.Join(small, " and of ")))
	}
	return out, nil
}

const tooSmall caution.Caution = "too_small_to_weigh: The dose of %s is too small for this scale: make a stock solution and measure its volume."

// EstimatedTime returns about when a share of the sugar is used, from the time that
// the whole ferment is thought to take. It is an estimate: a lag of 12 h and then the
// same sugar each hour, which no ferment keeps to. Go by the hydrometer.
//
//   - Source: common practice, no source.
//   - Range: ferments of 1 to 365 days; beyond it the error is a [*units.RangeError].
//   - Uncertainty: a factor of two.
func EstimatedTime(used units.Share, whole time.Duration) (time.Duration, error) {
	const lag = 12 * time.Hour
	if err := limit.Check("nutrient.EstimatedTime", "length of the ferment", whole.Hours()/24, "d", 1, 365, "common practice"); err != nil {
		return 0, err
	}
	return lag + time.Duration(used.In(units.Fraction)*float64(whole-lag)), nil
}
