package plan

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// A moment of a pack, and how warm it is then.
type moment struct {
	when string
	t    units.Temperature
}

// moments are those of a bottle from closing to serving, in whatever order of temperatures. It
// is filled at 20 °C; yeast that primes it works at the temperature of the ferment, or there.
func (r *recipe) moments(p packRecipe) []moment {
	first := moment{"closed", at20}
	if p.counterPressure() {
		first.t = p.filledAt()
	}
	if p.primes() {
		first.when = "conditioned"
		if t := r.req.Fermenter.Temperature; t.Compare(at20) > 0 {
			first.t = t
		}
	}
	return []moment{{"stored", *p.Store}, first, {"served", p.Temperature}}
}

// highest is the state of a bottle with the highest pressure, all its sugar fermented.
func (r *recipe) highest(p packRecipe, closed carbonation.ClosedVessel) (HighestPlan, error) {
	var high HighestPlan
	var all caution.List
	freezes := false
	for i, at := range r.moments(p) {
		s, err := closed.Worst(at.t)
		if err != nil {
			return high, err
		}
		all = all.With(s.Cautions...)
		freezes = freezes || s.Verdict == carbonation.MayFreeze
		if i == 0 || s.Gauge.Compare(high.Gauge) > 0 {
			high = HighestPlan{When: at.when, Temperature: at.t, Gauge: s.Gauge, AtLeast: s.AtLeast, Verdict: s.Verdict}
		}
	}
	high.Sugar = all.Has(carbonation.SugarCanFerment)
	if freezes && !over(high.Verdict) {
		high.Verdict = carbonation.MayFreeze
	}
	high.say(all)
	return high, nil
}

// over tells whether the rating does not cover a pack.
func over(v carbonation.Verdict) bool {
	return v == carbonation.OverRating || v == carbonation.Locked || v == carbonation.BeyondComputed
}

// own are the cautions of one pack; the others go with every pack.
var own = caution.List{
	carbonation.OverRatingCaution, carbonation.HydraulicLock, carbonation.Freezing, carbonation.LittleHeadspace,
	carbonation.AboveComputed, carbonation.SugarCanFerment, carbonation.BelowAtmosphere, carbonation.HotVessel,
}

// say notes the cautions of a pack.
func (h *HighestPlan) say(all caution.List) {
	for _, c := range carbonation.Cautions() {
		if !all.Has(c) {
			continue
		}
		h.cautions = append(h.cautions, c)
		if own.Has(c) {
			h.Cautions = append(h.Cautions, c.Text())
		}
	}
}

// atLeast is the pressure of a state in words.
func atLeast(h HighestPlan) string {
	text := h.Gauge.Text(units.BarGauge, 1)
	if h.AtLeast {
		return "above " + text
	}
	return text
}
