package numeric

import "math"

// closeEnough is how near a solution must come, as a part of its size: far below what
// any scale shows, and above the rounding of float64.
const closeEnough = 1e-12

// settleSteps is where [Settle] gives up.
const settleSteps = 60

// Settle adds to x what is missing until nothing is, as a part of the size of the whole; x
// does not fall below least. It serves where each step leaves a small part of the error, as
// in a volume made up with water: a kilogram more is a litre more, near enough. It stops where
// what is missing is at most 1e-12 of size; the error is that of missing, or [ErrNoConvergence] after
// 60 tries.
func Settle(x, least, size float64, missing func(x float64) (float64, error)) (settled float64, err error) {
	for range settleSteps {
		x = max(x, least)
		d, err := missing(x)
		if err != nil {
			return settled, err
		}
		if math.Abs(d) <= closeEnough*size || d < 0 && x == least {
			return x, nil
		}
		x += d
	}
	return settled, ErrNoConvergence
}
