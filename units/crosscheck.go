package units

import "math"

// CrossCheck compares what several independent methods say about one quantity. It returns
// their weighted mean, and for each how far it is from the mean of the others, in standard
// uncertainties of that difference: beyond 2 on either side it disagrees at the 95 % level.
//
//   - Source: weights 1/u² and the comparison of each value with the mean of the others
//     (M. G. Cox, Metrologia 39 (2002) 589, procedure A; recalled from memory).
//   - Range: 2 to 100 values, each with an uncertainty above 1e-12 of its value and
//     above 1e-100 base units, so that the weights are numbers; otherwise the error is a
//     [*RangeError].
//   - Uncertainty: that of the mean is that of the values alone; when some disagree, find
//     out why rather than average.
func CrossCheck[D, E Dimension](values ...Measured[D, E]) (mean Measured[D, E], deviations []float64, err error) {
	const fn = "units.CrossCheck"
	if len(values) < 2 || len(values) > 100 {
		return mean, nil, &RangeError{Func: fn, Quantity: "number of values", Value: float64(len(values)), Min: 2, Max: 100, Source: "a comparison"}
	}
	var sum, weights float64
	for _, c := range values {
		if least := math.Max(1e-12*math.Abs(c.value.v), 1e-100); !(c.u > least) {
			return mean, nil, outside[E, E](fn, c.u, least, most)
		}
		w := 1 / (c.u * c.u)
		sum += w * c.value.v
		weights += w
	}
	for i, c := range values {
		var others, rest float64 // summed again: a difference could lose every digit
		for j, o := range values {
			if j != i {
				w := 1 / (o.u * o.u)
				others += w * o.value.v
				rest += w
			}
		}
		d := (c.value.v - others/rest) / math.Sqrt(c.u*c.u+1/rest)
		deviations = append(deviations, d)
	}
	return Measured[D, E]{value: Quantity[D, E]{v: sum / weights}, u: math.Sqrt(1 / weights)}, deviations, nil
}
