package kinetics

import (
	"math"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Fit is a forecast at one moment: what the pace and the readings so far say.
type Fit struct {
	pace       *Pace
	ripeMiddle float64
	weights    [nodeCount]float64 // sum to 1
	evidence   float64
}

// least is the weight of a way that is left out of times and hourly shares: all of them together come
// to less than a thousandth.
const least = 1e-7

// Fit weighs every way in which the ferment may go by the readings. A reading counts by a
// Student distribution of three degrees of freedom, so that one far off does little.
func (f *Forecast) Fit() *Fit {
	out := &Fit{pace: f.pace, ripeMiddle: f.pace.ripeFor(middle)}
	type reading struct{ ripe, share, precision float64 }
	var room [binCount]reading
	readings := room[:0]
	for _, b := range f.bins {
		if hour, used, variance, ok := b.mean(); ok {
			readings = append(readings, reading{f.pace.ripeAt(hour), used, 1 / variance})
		}
	}
	out.weights = priors
	out.scale()
	const atOnce = 32 // scaled after so many, as hundreds that fit badly would come to nothing
	for len(readings) > 0 {
		some := readings[:min(atOnce, len(readings))]
		readings = readings[len(some):]
		for i, way := range nodes {
			against := 1.0
			for _, r := range some {
				d := r.share - way.share(f.pace, r.ripe, out.ripeMiddle)
				q := 1 + d*d*r.precision/3
				against *= q * q
			}
			out.weights[i] /= against
		}
		out.evidence += math.Log(out.scale())
	}
	return out
}

// scale makes the weights sum to 1 and returns what they summed to.
func (f *Fit) scale() (sum float64) {
	for _, w := range f.weights {
		sum += w
	}
	for i := range f.weights {
		f.weights[i] /= sum
	}
	return sum
}

// Band is what may be expected: half of all outcomes lie from Low50 to High50, nine in ten
// from Low90 to High90.
type Band struct{ Low90, Low50, Median, High50, High90 units.Share }

// Used is the share of the sugar used at a time, with its bands.
func (f *Fit) Used(at time.Duration) Band {
	const cells, low, wide = 600, -0.1, 1.25
	var histogram [cells]float64
	ripe := f.pace.ripeAt(at.Hours())
	each(func(i int, n node, _ float64) {
		histogram[int((n.share(f.pace, ripe, f.ripeMiddle)-low)/wide*cells)] += f.weights[i]
	})
	const blur = 0.015 // the model's own shape, and the grid's steps
	q := quantiles(smooth(histogram[:], blur/wide*cells))
	share := func(x float64) units.Share {
		return units.Fraction.Of(checked.Number(min(max(low+x*wide, 0), 1)))
	}
	return Band{share(q[0]), share(q[1]), share(q[2]), share(q[3]), share(q[4])}
}

// TimeBand is when something may be expected. A time past 90 days is given as 90 days, one of less
// than half an hour as half an hour.
type TimeBand struct{ Low90, Low50, Median, High50, High90 time.Duration }

// When is the time by which a share is used, with its bands, among the outcomes in which it
// is. See [Fit.Stops] for how likely it is not.
func (f *Fit) When(used units.Share) (TimeBand, error) {
	const cells = 600
	low, high := math.Log(0.5), math.Log(horizon.Hours())
	var histogram [cells]float64
	share := used.In(units.Fraction)
	var sum, end, ripe float64
	each(func(i int, n node, _ float64) {
		if f.weights[i] < least {
			return
		}
		if n.end != end {
			end, ripe = n.end, f.pace.ripeFor(share/n.end)
		}
		if h := n.hour(f.pace, ripe, f.ripeMiddle); h <= horizon.Hours() {
			histogram[cell((math.Log(h)-low)/(high-low)*cells, cells)] += f.weights[i]
			sum += f.weights[i]
		}
	})
	if sum < 0.01 {
		return TimeBand{}, &units.RangeError{Func: "kinetics.Fit.When", Quantity: "share of the sugar used", Value: 100 * share,
			Unit: "%", Min: 0, Max: 100 * min(f.most(), share), Source: "what can be expected within 90 days"}
	}
	for i := range histogram {
		histogram[i] /= sum
	}
	const blur = 0.07 // of the logarithm: a step of the grid of paces, and replicates
	q := quantiles(smooth(histogram[:], blur/(high-low)*cells))
	at := func(x float64) time.Duration {
		return time.Duration(min(math.Exp(low+x*(high-low)), horizon.Hours()) * float64(time.Hour))
	}
	return TimeBand{at(q[0]), at(q[1]), at(q[2]), at(q[3]), at(q[4])}, nil
}

// most is the share below which nineteen in twenty outcomes stay.
func (f *Fit) most() float64 {
	var ends [nodeCount]float64
	ripe := f.pace.ripeAt(horizon.Hours())
	each(func(i int, n node, _ float64) { ends[i] = n.share(f.pace, ripe, f.ripeMiddle) })
	return f.band(&ends).High90.In(units.Fraction)
}

// Stops is how likely the ferment stays below a share of its sugar.
func (f *Fit) Stops(below units.Share) units.Share {
	share, sum := below.In(units.Fraction), 0.0
	each(func(i int, n node, _ float64) {
		if n.share(f.pace, f.pace.ripeAt(horizon.Hours()), f.ripeMiddle) < share {
			sum += f.weights[i]
		}
	})
	return units.Fraction.Of(checked.Number(min(sum, 1)))
}

// Next is the hour, from a moment on and within the five days after it, at which a reading
// would tell most: where the outcomes that are still possible lie furthest apart.
func (f *Fit) Next(from time.Duration) time.Duration {
	// Nodes that differ by their end alone go the same way there: their weights are summed first.
	var ways [wayCount]struct{ first, second float64 } // moments of the end
	for i, n := range nodes {
		w := &ways[i%wayCount]
		w.first += f.weights[i] * n.end
		w.second += f.weights[i] * n.end * n.end
	}
	best := from
	var most float64
	for at := from; at <= from+5*24*time.Hour; at += time.Hour {
		ripe := f.pace.ripeAt(at.Hours())
		var mean, square float64
		for i := range ways {
			x := nodes[i].way(f.pace, ripe, f.ripeMiddle)
			mean += ways[i].first * x
			square += ways[i].second * x * x
		}
		if v := square - mean*mean; v > most {
			best, most = at, v
		}
	}
	return best
}

// cell is the cell of a histogram that holds x, counted in cells; what lies outside goes to its first or last.
func cell(x float64, cells int) int { return int(min(max(x, 0), float64(cells-1))) }

// smooth spreads each cell over its neighbours by a normal distribution.
func smooth(histogram []float64, deviation float64) []float64 {
	reach := int(3*deviation) + 1
	kernel := make([]float64, 2*reach+1)
	sum := 0.0
	for i := range kernel {
		z := float64(i-reach) / deviation
		kernel[i] = math.Exp(-z * z / 2)
		sum += kernel[i]
	}
	for i := range kernel {
		kernel[i] /= sum
	}
	out := make([]float64, len(histogram))
	for i, h := range histogram {
		if h == 0 { // as most are
			continue
		}
		for k, w := range kernel {
			out[min(max(i+k-reach, 0), len(out)-1)] += h * w
		}
	}
	return out
}

// levels are the shares of all outcomes that lie below the figures of a band.
var levels = [...]float64{0.05, 0.25, 0.5, 0.75, 0.95}

// quantiles are the places, from 0 to 1 of the histogram, below which the levels lie.
func quantiles(histogram []float64) (out [len(levels)]float64) {
	sum, k := 0.0, 0
	for i, h := range histogram {
		for k < len(levels) && sum+h >= levels[k] {
			out[k] = (float64(i) + (levels[k]-sum)/h) / float64(len(histogram))
			k++
		}
		sum += h
	}
	return out
}
