package nutrient

import (
	"math"
	"slices"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// Feed is doses of nitrogen sources for a need, and what is left of the need.
type Feed struct {
	Doses     []material.Dose // in the order of the offers; those that are not used are left out
	Supply    Supply
	Shortfall units.MassConcentration // nitrogen that the sources may not bring
	Limits    []law.Limit             // of the sources that are used
	Cautions  caution.List
}

// FeedInOrder meets a need for nitrogen from what is at hand, in the order of preference: each
// gives as much as the law's limit for wine allows, the next one the rest. Sources that
// share a limit share it here.
//
//   - Source: composition of each [material.Material]; limits of [law.Jurisdiction.Limits].
//   - Range: need 0 to 1000 mg/L, volume up to 1e9 L; beyond it the error is a
//     [*units.RangeError]. An unknown law or group is a [*units.NameError].
//   - Units: need as mg/L of N on the volume given.
//   - Uncertainty: that of the need, which is the greater by far.
func FeedInOrder(need units.MassConcentration, v units.Volume, j law.Jurisdiction, offers ...Offer) (Feed, error) {
	const fn = "nutrient.FeedInOrder"
	left := need.In(units.GramPerLitre)
	if err := limit.Check(fn, "need", 1000*left, "mg/L", 0, 1000, "needs published for musts"); err != nil {
		return Feed{}, err
	}
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, amount.MostVolume, "a volume of liquid"); err != nil {
		return Feed{}, err
	}
	bounds, err := newCeilings(fn, j, offers)
	if err != nil {
		return Feed{}, err
	}
	var out Feed
	var idle []string // sources without nitrogen
	for _, o := range offers {
		s := o.Material
		n := s.Composition().Nitrogen().In(units.Fraction)
		if n == 0 {
			idle = append(idle, s.Name())
			continue
		}
		place := bounds.find(o.group())
		most := bounds.room(place) // g/L
		dose := left / n
		if dose > most {
			dose = most
			left = max(0, left-dose*n)
		} else {
			left = 0
		}
		if dose <= 0 {
			continue
		}
		bounds.use(place, dose)
		out.Doses = append(out.Doses, material.Dose{Material: s, Mass: amount.Kilograms(dose * litres / 1000)})
		out.Cautions = out.Cautions.With(s.Cautions()...)
	}
	out.Supply, out.Shortfall = supplyOf(litres, out.Doses), amount.MgPerL(1000*left)
	out.Limits = bounds.seen()
	if len(idle) > 0 {
		out.Cautions = out.Cautions.With(noNitrogen.With(strings.Join(idle, ", ")))
	}
	if left > 0 {
		out.Cautions = out.Cautions.With(needOpen.With(1000 * left))
	}
	if len(out.Limits) > 0 {
		out.Cautions = out.Cautions.With(law.CheckTheLaw)
	}
	return out, nil
}

const (
	noNitrogen caution.Caution = "no_nitrogen: No nitrogen is in %s, not dosed here: see ferment.Tank.OtherNeeds."
	needOpen   caution.Caution = "need_left_open: The sources at hand leave %.0f mg/L of the nitrogen need open within the limits: add another source, or " +
		"expect a slower ferment."
	wantOpen caution.Caution = "want_left_open: The sources at hand leave open within the limits: %s."
)

// ceilings tracks how much of each limit for wine is used up.
type ceilings struct {
	law    law.Jurisdiction
	limits []law.Limit // of the sources so far
	used   []float64   // g/L of what is weighed
	met    []bool      // a dose is under it
}

func newCeilings(fn string, j law.Jurisdiction, offers []Offer) (ceilings, error) {
	for _, o := range offers {
		if _, err := o.Group.MarshalText(); err != nil {
			return ceilings{}, limit.Named(fn, err)
		}
	}
	_, err := j.MarshalText()
	return ceilings{law: j}, limit.Named(fn, err)
}

// find returns the place of the limit that covers s, or -1.
func (c *ceilings) find(s law.Substance) int {
	if i := slices.IndexFunc(c.limits, func(l law.Limit) bool { return slices.Contains(l.Covers, s) }); i >= 0 {
		return i
	}
	if s == law.Unlisted {
		return -1
	}
	known, err := c.law.Limits(s, law.Wine)
	if err != nil || len(known) == 0 { // law and group were read
		return -1
	}
	c.limits = append(c.limits, known[0])
	c.used, c.met = append(c.used, 0), append(c.met, false)
	return len(c.limits) - 1
}

// room returns how much more the limit at a place allows, in g/L; without a limit there is
// no end.
func (c *ceilings) room(i int) float64 {
	if i < 0 {
		return math.MaxFloat64
	}
	return max(0, c.limits[i].Weighed().In(units.GramPerLitre)-c.used[i])
}

func (c *ceilings) use(i int, gramsPerLitre float64) {
	if i >= 0 {
		c.used[i] += gramsPerLitre
		c.met[i] = true
	}
}

// seen returns the limits of what is used.
func (c *ceilings) seen() []law.Limit {
	var out []law.Limit
	for i, l := range c.limits {
		if c.met[i] {
			out = append(out, l)
		}
	}
	return out
}
