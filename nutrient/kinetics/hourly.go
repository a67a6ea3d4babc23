package kinetics

import (
	"math"
	"slices"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// InAnHour is the share of the sugar that goes in the hour around a time, with its bands: gas
// and heat of that hour are this share of their whole.
func (f *Fit) InAnHour(at time.Duration) Band {
	from := min(max(at.Hours()-0.5, 0), horizon.Hours()-1)
	before, after := f.pace.ripeAt(from), f.pace.ripeAt(from+1)
	var rates [nodeCount]float64
	each(func(i int, n node, _ float64) {
		rates[i] = n.share(f.pace, after, f.ripeMiddle) - n.share(f.pace, before, f.ripeMiddle)
	})
	return f.band(&rates)
}

// Fastest is when the ferment goes fastest, and the share of the sugar that goes in that
// hour, each with its bands: the peak of gas and heat, for cooling, blow-off and the air of a
// room. What is laid out for High90 of the share is enough nine times in ten and half of the
// tenth.
func (f *Fit) Fastest() (TimeBand, Band) {
	if f.pace.none() { // none: a Forecast makes one
		return TimeBand{}, Band{}
	}
	var hours, rates [nodeCount]float64
	peaks := f.peaks()
	each(func(i int, n node, _ float64) {
		if f.weights[i] < least {
			return
		}
		if len(f.pace.holds) == 1 { // the shape is the pace's own, drawn out or in
			top := peaks[slices.IndexFunc(tails[:], func(t weighted) bool { return t.value == n.tail })]
			hours[i] = min(n.hour(f.pace, top.ripe, f.ripeMiddle), horizon.Hours())
			rates[i] = n.end * n.speed * f.pace.ripe[1] * top.share
			return
		}
		hours[i], rates[i] = f.peakOf(n)
	})
	q := weighted5(&hours, &f.weights)
	at := func(h float64) time.Duration { return time.Duration(h * float64(time.Hour)) }
	return TimeBand{at(q[0]), at(q[1]), at(q[2]), at(q[3]), at(q[4])}, f.band(&rates)
}

// A peak is where most of the sugar goes: the pace's ripe hours, and the share in one of them.
type peak struct{ ripe, share float64 }

// peaks are those of each tail.
func (f *Fit) peaks() (out [len(tails)]peak) {
	var before float64
	for i, used := range f.pace.used {
		ripe, share := (float64(i)-0.5)*ripeStep, (used-before)/ripeStep
		before = used
		for k, t := range tails {
			of := share
			if ripe > f.ripeMiddle {
				of /= t.value
			}
			if of > out[k].share {
				out[k] = peak{ripe, of}
			}
		}
	}
	return out
}

// peakOf looks for the peak of a node whose temperature changes, between the first fiftieth and
// nine tenths of what it uses.
func (f *Fit) peakOf(n node) (hour, rate float64) {
	const parts = 32
	all := f.pace.used[len(f.pace.used)-1]
	from := min(n.hour(f.pace, f.pace.ripeFor(0.02*all), f.ripeMiddle), horizon.Hours())
	to := min(n.hour(f.pace, f.pace.ripeFor(0.9*all), f.ripeMiddle), horizon.Hours())
	wide := max((to-from)/parts, 0.25)
	hour = from
	was := n.share(f.pace, f.pace.ripeAt(from), f.ripeMiddle)
	for k := range parts {
		h := min(from+float64(k+1)*wide, horizon.Hours())
		is := n.share(f.pace, f.pace.ripeAt(h), f.ripeMiddle)
		if r := (is - was) / wide; r > rate {
			hour, rate = h-wide/2, r
		}
		was = is
	}
	return hour, rate
}

// band is what shares come to over all nodes.
func (f *Fit) band(shares *[nodeCount]float64) Band {
	q := weighted5(shares, &f.weights)
	share := func(x float64) units.Share {
		return units.Fraction.Of(checked.Number(math.Min(math.Max(x, 0), 1)))
	}
	return Band{share(q[0]), share(q[1]), share(q[2]), share(q[3]), share(q[4])}
}

// weighted5 are the figures below which the levels of all weight lie.
func weighted5(x, weights *[nodeCount]float64) (out [len(levels)]float64) {
	const cells = 1000
	var histogram [cells]float64
	var high, sum float64
	low := math.MaxFloat64
	for i, w := range weights {
		if w >= least {
			low, high = min(low, x[i]), max(high, x[i])
		}
	}
	if high <= low {
		return [len(levels)]float64{high, high, high, high, high}
	}
	for i, w := range weights {
		if w >= least {
			histogram[cell((x[i]-low)/(high-low)*cells, cells)] += w
			sum += w
		}
	}
	for i := range histogram {
		histogram[i] /= sum
	}
	for k, q := range quantiles(histogram[:]) {
		out[k] = low + q*(high-low)
	}
	return out
}
