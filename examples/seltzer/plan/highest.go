package plan

import (
	"slices"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
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
	var all carbonation.Cautions
	for i, at := range r.moments(p) {
		s, err := closed.Worst(at.t)
		if err != nil {
			return high, err
		}
		all |= s.Cautions
		if i == 0 || s.Gauge.Compare(high.Gauge) > 0 {
			high = HighestPlan{When: at.when, Temperature: at.t, Gauge: s.Gauge, AtLeast: s.AtLeast, Verdict: s.Verdict}
		}
	}
	high.Sugar = all.Has(carbonation.SugarCanFerment)
	high.say(all)
	return high, nil
}

// own are the cautions of one pack; the others go with every pack.
var own = []carbonation.Caution{
	carbonation.OverRatingCaution, carbonation.HydraulicLock, carbonation.AboveComputed, carbonation.LittleHeadspace,
	carbonation.SugarCanFerment, carbonation.HotVessel,
}

// say notes the cautions of a pack.
func (h *HighestPlan) say(all carbonation.Cautions) {
	h.cautions = all
	for _, c := range all.List() {
		if slices.Contains(own, c) {
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
