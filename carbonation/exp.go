package carbonation

import "math"

// exp is e^x for |x| < 700, to the last bit or two: math.Exp without its special
// cases, in less than half its time. Content needs three of them.
//
//   - Source: e^x = 2^k·e^r with |r| ≤ ln2/2 and Taylor's series to r^13, whose
//     rest is below 5e-18.
func exp(x float64) float64 {
	const (
		rounder = 3 << 51 // adding it leaves a whole number in the low bits
		high    = 0x1.62e42feep-1
		low     = 0x1.a39ef35793c76p-33 // ln 2 − high
	)
	shifted := x*math.Log2E + rounder
	k := shifted - rounder
	r := x - k*high - k*low
	r2 := r * r
	r4 := r2 * r2
	p := 1 + r + r2*(1./2+r*(1./6)) +
		r4*(1./24+r*(1./120)+r2*(1./720+r*(1./5040))) +
		r4*r4*(1./40320+r*(1./362880)+r2*(1./3628800+r*(1./39916800))+r4*(1./479001600+r*(1./6227020800)))
	return p * math.Float64frombits((math.Float64bits(shifted)+1023)<<52)
}
