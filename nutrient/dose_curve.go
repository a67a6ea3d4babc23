package nutrient

// doseCurve is the newest points of a curve of pH by dose, no two at one pH. The zero
// value knows none.
type doseCurve struct {
	n        int
	mmol, pH [curvePoints]float64
}

const curvePoints = 5

// add takes in a point, in the place of another at the same pH, and forgets the oldest
// where there is no room.
func (c *doseCurve) add(mmol, pH float64) {
	for i := range c.n {
		if c.pH[i] == pH {
			c.mmol[i] = mmol
			return
		}
	}
	if c.n == curvePoints {
		copy(c.mmol[:], c.mmol[1:])
		copy(c.pH[:], c.pH[1:])
		c.n--
	}
	c.mmol[c.n], c.pH[c.n] = mmol, pH
	c.n++
}

// known reports whether there is a curve, not a point.
func (c *doseCurve) known() bool { return c.n > 1 }

// dose is where the polynomial of dose by pH through the points has a pH.
//
//   - Source: E. H. Neville, J. Indian Math. Soc. 20 (1934) 87, iterated linear
//     interpolation (recalled from memory).
func (c *doseCurve) dose(at float64) float64 {
	y := c.mmol
	for k := 1; k < c.n; k++ {
		for i := c.n - 1; i >= k; i-- {
			y[i] += (y[i] - y[i-1]) * (at - c.pH[i]) / (c.pH[i] - c.pH[i-k])
		}
	}
	return y[c.n-1]
}
