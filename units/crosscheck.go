package units

import "math"

// A Claim is what one method says about a quantity.
type Claim[D, E Dimension] struct {
	Method string
	Value  Measured[D, E]
}

// StrengthClaim is a [Claim] about a strength by volume.
type StrengthClaim = Claim[strengthByVolume, strengthByVolume]

// A Verdict is how a claim stands against all together.
type Verdict[D, E Dimension] struct {
	Claim Claim[D, E]
	// Deviation is the difference from the mean of the others in standard
	// uncertainties of that difference: above 2 it disagrees at the 95 % level.
	Deviation float64
	Disagrees bool
}

// CrossCheck weighs several independent claims about one quantity: their weighted
// mean, which of them disagree with the others, and by how many standard
// uncertainties.
//
//   - Source: weights 1/u² and the comparison of each value with the mean of the others
//     (M. G. Cox, Metrologia 39 (2002) 589, procedure A; recalled from memory); threshold
//     2.
//   - Range: 2 to 100 claims, each with an uncertainty above 1e-12 of its value and
//     above 1e-100 base units, so that the weights are numbers; otherwise the error is a
//     [*RangeError].
//   - Uncertainty: that of the mean is that of the claims alone; when some disagree, find
//     out why rather than average.
func CrossCheck[D, E Dimension](claims ...Claim[D, E]) (mean Measured[D, E], verdicts []Verdict[D, E], err error) {
	const fn = "units.CrossCheck"
	if len(claims) < 2 || len(claims) > 100 {
		return mean, nil, &RangeError{Func: fn, Quantity: "number of claims", Value: float64(len(claims)), Min: 2, Max: 100, Source: "a comparison"}
	}
	var sum, weights float64
	for _, c := range claims {
		if least := math.Max(1e-12*math.Abs(c.Value.value.v), 1e-100); !(c.Value.u > least) {
			return mean, nil, outside[E, E](fn, c.Value.u, least, most)
		}
		w := 1 / (c.Value.u * c.Value.u)
		sum += w * c.Value.value.v
		weights += w
	}
	for i, c := range claims {
		var others, rest float64 // summed anew: a difference could lose every digit
		for j, o := range claims {
			if j != i {
				w := 1 / (o.Value.u * o.Value.u)
				others += w * o.Value.value.v
				rest += w
			}
		}
		d := (c.Value.value.v - others/rest) / math.Sqrt(c.Value.u*c.Value.u+1/rest)
		verdicts = append(verdicts, Verdict[D, E]{Claim: c, Deviation: d, Disagrees: math.Abs(d) > 2})
	}
	return Measured[D, E]{value: Quantity[D, E]{v: sum / weights}, u: math.Sqrt(1 / weights)}, verdicts, nil
}
