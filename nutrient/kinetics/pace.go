package kinetics

import (
	"math"
	"sort"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Pace is the share of the sugar used against time. It does not change: use it from any
// number of goroutines.
type Pace struct {
	start Start
	holds []Hold
	// used stands on a grid of ripe hours: an hour at 20 °C is one, warmer hours count more.
	used []float64
	ripe []float64 // ripe hours at each hour of the clock
}

const (
	step     = 0.25 // hours of the clock, of the integration
	ripeStep = 0.5  // ripe hours between two figures of used
	enough   = 0.99999
)

// NewPace integrates the model from the start through the temperatures, the first from the
// pitch on.
//
//   - Source: Coleman, Fish & Block 2007, table A2, as two carriers give it; the temperature
//     above 22 °C after Foster et al. 2022, Front. Microbiol. 13:747546, fig. S1.
//   - Range: 10 to 35 °C (the model 11 to 35), and [Start]; beyond it a [*units.RangeError].
//     Fitted at 265 to 300 g/L of sugar and 70 to 350 mg/L of nitrogen: [Pace.Caution] says
//     what lies outside.
//   - Uncertainty: a factor of two in time either way: published comparisons from a plan
//     alone are off by 0.5 to 3.3.
func NewPace(s Start, temperatures ...Hold) (*Pace, error) {
	if err := s.check(); err != nil {
		return nil, err
	}
	if err := checkHolds(temperatures); err != nil {
		return nil, err
	}
	p := &Pace{start: s, holds: append([]Hold(nil), temperatures...)}
	hours := int(horizon.Hours())
	p.ripe = make([]float64, hours+1)
	var inAnHour float64
	last := math.NaN()
	for h := range hours {
		if t := p.temperature(float64(h) + 0.5); t != last {
			last, inAnHour = t, speed(t)
		}
		p.ripe[h+1] = p.ripe[h] + inAnHour
	}
	p.integrate()
	return p, nil
}

// temperature is that of the ferment at an hour.
func (p *Pace) temperature(hour float64) float64 {
	i := sort.Search(len(p.holds), func(i int) bool { return p.holds[i].From.Hours() > hour })
	return p.holds[i-1].Temperature.In(units.Celsius)
}

// integrate fills the share used by steps of the midpoint.
func (p *Pace) integrate() {
	sugar := p.start.Sugar.In(units.GramPerLitre)
	l, cells := newLiquid(sugar, p.start.Nitrogen.In(units.MilligramPerLitre), p.start.Yeast.In(units.GramPerLitre))
	last := math.NaN()
	l.ethanol = p.start.Ethanol.In(units.GramPerLitre)
	var r rates
	var before float64          // share used at the step before
	p.used = make([]float64, 1) // none at the pitch
	next := ripeStep            // ripe hours of the next figure
	for at := 0.0; at < horizon.Hours(); at += step {
		t := p.temperature(at)
		if t != last {
			r, last = ratesAt(t, p.start.slowing()), t
		}
		share := 1 - math.Max(l.sugar, 0)/sugar
		// The figures of the grid that lie between this step and the one before it.
		for end, begin := p.ripeAt(at), p.ripeAt(at-step); next <= end; next += ripeStep {
			p.used = append(p.used, before+(next-begin)/(end-begin)*(share-before))
		}
		if share >= enough {
			return
		}
		before = share
		l = l.after(step, l.after(step/2, l.change(r, cells)).change(r, cells))
	}
}

// none tells a pace that NewPace did not make.
func (p *Pace) none() bool { return p == nil || p.ripe == nil }

// never is the hour of what does not come.
func never() float64 { return math.Inf(1) }

// ripeAt is the ripe hours at an hour of the clock: none before the pitch, past the horizon those at it.
func (p *Pace) ripeAt(hour float64) float64 {
	if p.none() {
		return 0
	}
	hour = min(max(hour, 0), horizon.Hours())
	i := min(int(hour), len(p.ripe)-2)
	return p.ripe[i] + (hour-float64(i))*(p.ripe[i+1]-p.ripe[i])
}

// hourAt is the way back; false beyond the horizon.
func (p *Pace) hourAt(ripe float64) (hour float64, within bool) {
	if p.none() {
		return never(), false
	}
	if len(p.holds) == 1 { // one temperature: an hour ripens as much as the next
		hour = ripe / p.ripe[1]
		return hour, hour <= horizon.Hours()
	}
	i := sort.SearchFloat64s(p.ripe, ripe)
	switch {
	case i == 0:
		return 0, true
	case i == len(p.ripe):
		return never(), false
	}
	return float64(i-1) + (ripe-p.ripe[i-1])/(p.ripe[i]-p.ripe[i-1]), true
}

// shareAt is the share used after ripe hours.
func (p *Pace) shareAt(ripe float64) float64 {
	if p.none() {
		return 0
	}
	x := ripe / ripeStep
	switch i := int(x); {
	case ripe <= 0:
		return 0
	case i+1 >= len(p.used):
		return p.used[len(p.used)-1]
	default:
		return p.used[i] + (x-float64(i))*(p.used[i+1]-p.used[i])
	}
}

// ripeFor is the ripe hours by which a share is used; infinite if it never is.
func (p *Pace) ripeFor(share float64) float64 {
	if p.none() {
		return never()
	}
	i := sort.SearchFloat64s(p.used, share)
	switch {
	case i == 0:
		return 0
	case i == len(p.used):
		return never()
	}
	return ripeStep * (float64(i-1) + (share-p.used[i-1])/(p.used[i]-p.used[i-1]))
}

// Used is the share of the sugar used some time after the pitch; before it none, and past 90
// days what it is then.
func (p *Pace) Used(at time.Duration) units.Share {
	return units.Fraction.Of(checked.Number(p.shareAt(p.ripeAt(at.Hours()))))
}

// When is the time by which a share is used. A share that is not reached within 90 days,
// as where ethanol ends the yeast first, is a [*units.RangeError] with the most there is.
func (p *Pace) When(used units.Share) (time.Duration, error) {
	share := used.In(units.Fraction)
	if hour, ok := p.hourAt(p.ripeFor(share)); ok {
		return time.Duration(hour * float64(time.Hour)), nil
	}
	most := p.Used(horizon).In(units.Percent)
	return 0, &units.RangeError{Func: "kinetics.Pace.When", Quantity: "share of the sugar used", Value: 100 * share, Unit: "%", Min: 0, Max: most,
		Source: "what this pace reaches in 90 days"}
}

// Fastest is the hour in which most of the sugar is used, by its middle, and the share that
// goes in it: the peak of gas and of heat.
func (p *Pace) Fastest() (at time.Duration, inAnHour units.Share) {
	var most, before float64
	for h, ripe := range p.ripe {
		used := p.shareAt(ripe)
		if used-before > most {
			most, at = used-before, time.Duration(h)*time.Hour-30*time.Minute
		}
		before = used
	}
	return at, units.Fraction.Of(checked.Number(most))
}

// Caution says what of the start lies outside that to which the model was fitted; it is
// empty where nothing does.
func (p *Pace) Caution() string {
	var outside string
	add := func(s string) {
		if outside != "" {
			outside += ", "
		}
		outside += s
	}
	if g := p.start.Sugar.In(units.GramPerLitre); g < 265 || g > 300 {
		add("sugar (265 to 300 g/L)")
	}
	if n := p.start.Nitrogen.In(units.MilligramPerLitre); n < 70 || n > 350 {
		add("nitrogen (70 to 350 mg/L)")
	}
	for _, h := range p.holds {
		if h.Temperature.In(units.Celsius) < 11 {
			add("temperature (11 to 35 °C)")
			break
		}
	}
	if outside == "" {
		return ""
	}
	return "The pace is a model's of grape must; outside what it was fitted to: " + outside + ". Trust readings before it."
}
