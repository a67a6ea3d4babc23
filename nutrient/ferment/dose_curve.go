package ferment

import "math"

// doseCurve is the newest points of a curve of dose, mmol/L, by the charge that is lacking,
// mEq/L, no two at one charge. The zero value knows none.
type doseCurve struct {
	n          int
	mmol, lack [curvePoints]float64
}

const curvePoints = 5

// add takes in a point, in the place of another at the same charge, and forgets the oldest
// where there is no room.
func (c *doseCurve) add(mmol, lack float64) {
	for i := range c.n {
		if c.lack[i] == lack {
			c.mmol[i] = mmol
			return
		}
	}
	if c.n == curvePoints {
		copy(c.mmol[:], c.mmol[1:])
		copy(c.lack[:], c.lack[1:])
		c.n--
	}
	c.mmol[c.n], c.lack[c.n] = mmol, lack
	c.n++
}

// known reports whether there is a curve, not a point.
func (c *doseCurve) known() bool { return c.n > 1 }

// dose is where the polynomial of dose by charge through the points has a charge.
func (c *doseCurve) dose(at float64) float64 {
	mmol, _ := c.settling(at)
	return mmol
}

// settling is dose, and how far the newest point took it from the polynomial through the others.
//
//   - Source: E. H. Neville, J. Indian Math. Soc. 20 (1934) 87, iterated linear
//     interpolation (recalled from memory).
func (c *doseCurve) settling(at float64) (mmol, moved float64) {
	y := c.mmol
	for k := 1; k < c.n; k++ {
		for i := c.n - 1; i >= k; i-- {
			y[i] += (y[i] - y[i-1]) * (at - c.lack[i]) / (c.lack[i] - c.lack[i-k])
		}
	}
	mmol = y[c.n-1]
	if c.n > 1 {
		moved = math.Abs(mmol - y[c.n-2])
	}
	return mmol, moved
}
