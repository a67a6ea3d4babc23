package numeric

import "math"

// Exp is e^x for |x| < 700, to the last bit or two: math.Exp without its special
// cases, in less than half its time.
//
//   - Source: e^x = 2^k·e^r with |r| ≤ ln2/2 and Taylor's series to r^13, whose
//     rest is below 5e-18.
func Exp(x float64) float64 {
	const (
		rounder = 3 << 51 // adding it leaves a whole number in the low bits
		high    = 0x1.62e42feep-1
		low     = 0x1.a39ef35793c76p-33 // ln 2 − high
	)
	// Reciprocals of the factorials.
	const (
		f2  = 1. / 2
		f3  = f2 / 3
		f4  = f3 / 4
		f5  = f4 / 5
		f6  = f5 / 6
		f7  = f6 / 7
		f8  = f7 / 8
		f9  = f8 / 9
		f10 = f9 / 10
		f11 = f10 / 11
		f12 = f11 / 12
		f13 = f12 / 13
	)
	shifted := x*math.Log2E + rounder
	k := shifted - rounder
	r := x - k*high - k*low
	r2 := r * r
	r4 := r2 * r2
	p := 1 + r + r2*(f2+r*f3) +
		r4*(f4+r*f5+r2*(f6+r*f7)) +
		r4*r4*(f8+r*f9+r2*(f10+r*f11)+r4*(f12+r*f13))
	return p * math.Float64frombits((math.Float64bits(shifted)+1023)<<52)
}
