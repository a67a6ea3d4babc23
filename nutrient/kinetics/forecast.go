package kinetics

import (
	"math"
	"time"

	"example.org/zymase/units"
)

// Forecast is a pace that learns from readings. The readings stand in it as means over six
// hours, so that their order makes no difference, a stream of thousands costs what a few
// do, and the same reading twice does next to nothing. It is a plain value: copy it, keep it
// as text. Writing to one from two goroutines needs a lock.
type Forecast struct {
	pace *Pace
	bins [binCount]bin
}

const (
	binHours = 6
	binCount = int(horizon/time.Hour) / binHours
)

// bin is the readings of six hours, weighted by their certainty.
type bin struct{ weight, used, hour float64 }

// NewForecast starts from the pace alone.
func NewForecast(p *Pace) *Forecast { return &Forecast{pace: p} }

// Pace is what the forecast started from, as where one was read from text; nil if it is zero.
func (f *Forecast) Pace() *Pace { return f.pace }

// Add takes in a reading: the share of the fermentable sugar that is used, as a hydrometer,
// a refractometer or the weight lost shows it, and its standard uncertainty. A reading above
// the original gravity is none used.
//
//   - Range: from the pitch to 90 days; an uncertainty of 0.01 to 50 %; beyond it a
//     [*units.RangeError], and nothing is taken in.
func (f *Forecast) Add(at time.Duration, used, uncertainty units.Share) error {
	return f.add(at, used, uncertainty, 0.01)
}

// surest is the least uncertainty of a mean, per cent: that of a hundred million of the surest
// readings.
const surest = 1e-6

// add takes in a reading, or the mean of many, which may be surer than any one.
func (f *Forecast) add(at time.Duration, used, uncertainty units.Share, least float64) error {
	if at < 0 || at >= horizon {
		return &units.RangeError{Func: "kinetics.Forecast.Add", Quantity: "time since the pitch", Value: at.Hours() / 24, Unit: "days", Min: 0,
			Max: horizon.Hours() / 24, Source: "how far a forecast reaches"}
	}
	u := uncertainty.In(units.Percent)
	if !(u >= least && u <= 50) {
		return &units.RangeError{Func: "kinetics.Forecast.Add", Quantity: "uncertainty of the share used", Value: u, Unit: "%", Min: least, Max: 50,
			Source: "instruments that show a ferment"}
	}
	w := 1 / (u * u / 1e4)
	b := &f.bins[int(at.Hours())/binHours]
	b.weight += w
	b.used += w * used.In(units.Fraction)
	b.hour += w * at.Hours()
	return nil
}

// Readings of one instrument within hours share its error, and the model's: however many
// there are, their mean is no surer than this. Chosen.
const sharedError = 0.03

// mean is the reading that a bin stands for; false for an empty one.
func (b bin) mean() (hour, used, variance float64, ok bool) {
	if ok = b != (bin{}); ok {
		hour, used, variance = b.hour/b.weight, b.used/b.weight, 1/b.weight+sharedError*sharedError
	}
	return hour, used, variance, ok
}

// The prior: what may differ from the pace, each on a grid of its own.
//
//   - paceWidth: standard deviation of the logarithm of the pace: nine in ten lie within a
//     factor of two either way, which is what published forecasts from a plan alone support.
//     With the middle intercept they came to 0.79 (Varela et al. 2004) and 2.4 (Palma) of
//     the measured time.
//   - lags: ripe hours before anything goes, beyond the model's own growth; chosen.
//   - tails: how much slower it goes from the middle on than the model says; chosen wide,
//     from the worts of Foster et al. 2022, whose second half took 1.3 to 2.5 times as long.
//   - ends: the share at which it stays; 1 to 5 % of commercial ferments are abnormal
//     (Hernandez, Leon & Urtubia 2015); the rest of the spread is what is not known of the
//     sugar that ferments.
const paceWidth, paceCount = 0.42, 19

var (
	lags  = [...]weighted{{0, 0.5}, {4, 0.3}, {10, 0.15}, {24, 0.05}}
	tails = [...]weighted{{0.8, 0.2}, {1.3, 0.4}, {2, 0.3}, {3.2, 0.1}}
	ends  = [...]weighted{{1.02, 0.25}, {1, 0.45}, {0.95, 0.2}, {0.85, 0.06}, {0.5, 0.03}, {0.25, 0.01}}
)

type weighted struct{ value, weight float64 }

const (
	wayCount  = paceCount * len(lags) * len(tails)
	nodeCount = wayCount * len(ends)
)

// node is one way in which the ferment may go.
type node struct{ speed, lag, tail, end float64 }

// middle is the share from which the tail counts.
const middle = 0.5

// nodes are all ways, and priors their weights. Nodes of one end follow each other, so that
// what belongs to an end alone is worked out once.
var nodes, priors = func() (all [nodeCount]node, weights [nodeCount]float64) {
	i := 0
	for _, end := range ends {
		for k := range paceCount {
			z := 2.4 * (2*float64(k)/(paceCount-1) - 1) // standard deviations
			speed, prior := math.Exp(z*paceWidth), end.weight*math.Exp(-z*z/2)
			for _, lag := range lags {
				for _, tail := range tails {
					all[i], weights[i] = node{speed, lag.value, tail.value, end.value}, prior*lag.weight*tail.weight
					i++
				}
			}
		}
	}
	return all, weights
}()

// each calls do with every node and its weight of the prior.
func each(do func(i int, n node, prior float64)) {
	for i := range nodes {
		n := nodes[i]
		do(i, n, priors[i])
	}
}

// share is what a node has used at an hour of the clock. ripeMiddle is the pace's own.
func (n node) share(p *Pace, ripe, ripeMiddle float64) float64 {
	return n.end * n.way(p, ripe, ripeMiddle)
}

// way is how far a node is on the way to its end.
func (n node) way(p *Pace, ripe, ripeMiddle float64) float64 {
	r := n.speed * (ripe - n.lag)
	if r > ripeMiddle {
		r = ripeMiddle + (r-ripeMiddle)/n.tail
	}
	return p.shareAt(r)
}

// hour is when a node has used what takes the pace some ripe hours; infinite if never.
func (n node) hour(p *Pace, ripe, ripeMiddle float64) float64 {
	if ripe > ripeMiddle {
		ripe = ripeMiddle + (ripe-ripeMiddle)*n.tail
	}
	h, _ := p.hourAt(ripe/n.speed + n.lag)
	return h
}
