package water

import "math"

// enclosed returns where f crosses zero between low and high, with f(low) = below < 0
// and f(high) = above > 0, as near as float64 comes. Each value of f but the first
// halves the interval at least: it always ends.
//
//   - Source: I. F. D. Oliveira and R. H. C. Takahashi, ACM Trans. Math. Softw. 47
//     (2020) 5: the secant, moved to the middle, as far as halving is kept up with;
//     here with κ1 = 1 over the first interval, κ2 = 2 and n0 = 1.
func enclosed(f func(float64) float64, low, high, below, above float64) float64 {
	whole := high - low
	for most := whole; ; most /= 2 {
		width := high - low
		mid := low + width/2
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
