package kinetics

import (
	"time"

	"example.org/zymase/units"
)

// Stalled says whether the readings show a ferment that has stopped short, and since when:
// after a tenth of the sugar and before it is nearly all used, two spans of twelve hours or
// more, one after the other, in each of which less than 4 % of the sugar a day went. It takes
// three readings at least: none alone makes a stall. As sugar does not come back, one that shows 3 % less of it used
// than the one before is wrong, in its time or otherwise, and does not count; where the next shows less too, the one
// before them is.
//
//   - Uncertainty: chosen figures. Of the 41 measured ferments of internal/ferments it calls
//     the three that stopped, worts at 42 °C, a day or two after they did, and no other.
func (f *Forecast) Stalled() (since time.Duration, stalled bool) {
	const least, most, aDay, span = 0.10, 0.93, 0.04, 12.0
	var flat int
	var before, low bin // low: the last that showed less
	for _, b := range f.bins {
		hour, used, _, ok := b.mean()
		if !ok {
			continue
		}
		fromHour, fromUsed, _, begun := before.mean()
		if _, _, _, again := low.mean(); again && used < fromUsed-sharedError {
			before, flat = low, 0
			fromHour, fromUsed, _, _ = before.mean()
		}
		low = bin{}
		switch {
		case !begun || used < least || used > most:
			flat = 0
		case used < fromUsed-sharedError:
			low = b
			continue
		case hour-fromHour < span:
			continue // too close to tell: the span goes on
		case (used-fromUsed)/(hour-fromHour)*24 >= aDay:
			flat = 0
		default:
			if flat++; flat == 1 {
				since = time.Duration(fromHour * float64(time.Hour))
			}
		}
		before = b
	}
	if flat < 2 {
		return 0, false
	}
	return since, true
}

// Leaves is the first moment from which two readings one after the other lie outside what
// nine in ten outcomes of the pace alone would show, on the same side: the ferment is not the
// one that was planned. Faster says on which side.
func (f *Forecast) Leaves() (at time.Duration, faster, leaves bool) {
	var first time.Duration
	var above, below bool
	plan := NewForecast(f.pace).Fit()
	for _, b := range f.bins {
		hour, used, _, ok := b.mean()
		if !ok || hour == 0 {
			continue
		}
		when := time.Duration(hour * float64(time.Hour))
		band := plan.Used(when)
		over, under := used > band.High90.In(units.Fraction)+sharedError, used < band.Low90.In(units.Fraction)-sharedError
		if over && above || under && below {
			return first, over, true
		}
		above, below, first = over, under, when
	}
	return at, faster, false
}
