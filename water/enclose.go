package water

import "math"

// enclosed returns where f, which rises, crosses zero between low and high, as near as
// float64 comes; where it is of one sign between them, the end that is nearer to zero.
// Each value of f but the first halves the interval at least: it always ends.
//
//   - Source: I. F. D. Oliveira and R. H. C. Takahashi, ACM Trans. Math. Softw. 47
//     (2020) 5: the secant, moved to the middle, as far as halving is kept up with;
//     here with κ1 = 1 over the first interval, κ2 = 2 and n0 = 1.
func enclosed(f func(float64) float64, low, high float64) float64 {
	above := f(high)
	if !(above > 0) {
		return high
	}
	below := f(low)
	if !(below < 0) {
		return low
	}
	whole := high - low
	for most := whole; ; most /= 2 {
		mid, width := (low+high)/2, high-low
		if mid == low || mid == high {
			break
		}
		x := low - below*width/(above-below)
		if off, inwards := mid-x, width*width/whole; math.Abs(off) > inwards {
			x += math.Copysign(inwards, off)
		} else {
			x = mid
		}
		x = max(high-most, min(low+most, x))
		y := f(x)
		switch {
		case y < 0:
			low, below = x, y
		case y > 0:
			high, above = x, y
		default:
			return x
		}
	}
	if -below < above {
		return low
	}
	return high
}
