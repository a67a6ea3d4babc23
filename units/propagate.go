package units

import (
	"fmt"
	"math"
	"math/rand/v2"
	"slices"
)

// An Input is a *[Measured] that goes into [Propagate], or the [Correlation] of two of them.
type Input interface {
	estimate() (value, u float64)
}

func (m *Measured[D, E]) estimate() (value, u float64) {
	if m != nil {
		value, u = m.value.v, m.u
	}
	return value, u
}

// Trial is one set of values of the inputs; [At] reads it.
type Trial struct {
	inputs []Input
	x      []float64
}

// At returns the value that an input has in a trial. An input that was not given
// to [Propagate] keeps its own value.
func At[D, E Dimension](x Trial, m *Measured[D, E]) Quantity[D, E] {
	for i, in := range x.inputs {
		if in == Input(m) {
			return Quantity[D, E]{v: x.x[i]}
		}
	}
	v, _ := m.estimate()
	return Quantity[D, E]{v: v}
}

// Correlation is the correlation coefficient R of two inputs, from −1 to 1: two readings on one
// instrument share its error. It goes into [Propagate] beside them.
type Correlation struct {
	A, B Input
	R    float64
}

func (Correlation) estimate() (value, u float64) { return }

// correlated parts the correlations from the measured inputs.
func correlated(all []Input) (measured []Input, with []Correlation) {
	for i, in := range all {
		c, is := in.(Correlation)
		switch {
		case is && with == nil:
			measured, with = slices.Clone(all[:i]), []Correlation{c}
		case is:
			with = append(with, c)
		case with != nil:
			measured = append(measured, in)
		}
	}
	if with == nil {
		return all, nil
	}
	return measured, with
}

// Propagate returns f of the measured inputs with the standard uncertainty that
// theirs give it. They are independent, but for those whose [Correlation] is given beside them.
//
//		strength, err := units.Propagate(func(x units.Trial) (units.StrengthByVolume, error) {
//			return abv(units.At(x, &original), units.At(x, &final))
//		}, &original, &final)
//
//	  - Source: JCGM 100:2008 (GUM) 5.1.2, eq. 10, correlated inputs 5.2.2, eq. 16; with the differences of 5.1.3 note 2:
//	    half of f(x+u) − f(x−u) for each input. Where f fails on one side, the step from
//	    the value to the other side counts.
//	  - Range: up to 100 inputs. Errors: what f returns at the values, or on both sides
//	    of one of them; a [*RangeError] if f is not a finite number, or for a correlation beyond −1 to 1 or not of two inputs given.
//	  - Uncertainty: first order. Where f is nonlinear within the uncertainty of an input,
//	    see [Simulate].
func Propagate[R, RE Dimension](f func(Trial) (Quantity[R, RE], error), inputs ...Input) (Measured[R, RE], error) {
	const fn = "units.Propagate"
	inputs, with := correlated(inputs)
	y, parts, err := budget(fn, f, inputs)
	if err != nil {
		return Measured[R, RE]{}, err
	}
	r, err := correlations(fn, with, inputs)
	if err != nil {
		return Measured[R, RE]{}, err
	}
	sum := 0.0
	for i, a := range parts { // eq. 16: the double sum, r(i,i) = 1
		for j, b := range parts {
			sum += a * b * r[i][j]
		}
	}
	u := math.Sqrt(max(sum, 0))
	if !(u <= bound) {
		return Measured[R, RE]{}, outside[RE, RE](fn, u, 0, most)
	}
	return Measured[R, RE]{value: y, u: u}, nil
}

// Budget returns what each input contributes to the standard uncertainty of f, in
// the order given, with the sign of the effect: which instrument to improve first.
//
//   - Source, range and errors: [Propagate]; a correlation changes no contribution.
func Budget[R, RE Dimension](f func(Trial) (Quantity[R, RE], error), inputs ...Input) ([]Quantity[RE, RE], error) {
	inputs, _ = correlated(inputs)
	_, parts, err := budget("units.Budget", f, inputs)
	if err != nil {
		return nil, err
	}
	out := make([]Quantity[RE, RE], len(parts))
	for i, p := range parts {
		out[i].v = p
	}
	return out, nil
}

func budget[R, RE Dimension](fn string, f func(Trial) (Quantity[R, RE], error), inputs []Input) (y Quantity[R, RE], parts []float64, err error) {
	x, u, err := estimates(fn, inputs)
	if err != nil {
		return y, nil, err
	}
	trial := Trial{inputs: inputs, x: x}
	if y, err = f(trial); err != nil {
		return y, nil, err
	}
	if !(math.Abs(y.v) <= bound) {
		return y, nil, outside[R, RE](fn, y.v, -most, most)
	}
	parts = make([]float64, len(inputs))
	for i, v := range x {
		if u[i] == 0 {
			continue
		}
		x[i] = v + u[i]
		up, errUp := f(trial)
		x[i] = v - u[i]
		down, errDown := f(trial)
		x[i] = v
		switch { // 5.1.3 note 2
		case errUp == nil && errDown == nil:
			parts[i] = (up.v - down.v) / 2
		case errUp == nil:
			parts[i] = up.v - y.v
		case errDown == nil:
			parts[i] = y.v - down.v
		default:
			return y, nil, fmt.Errorf("%s: input %d: %w", fn, i+1, errUp)
		}
	}
	return y, parts, nil
}

func estimates(fn string, inputs []Input) (x, u []float64, err error) {
	if len(inputs) > 100 {
		return nil, nil, &RangeError{Func: fn, Quantity: "number of inputs", Value: float64(len(inputs)), Min: 0, Max: 100, Source: "a limit of the function"}
	}
	x, u = make([]float64, len(inputs)), make([]float64, len(inputs))
	for i, in := range inputs {
		if in != nil {
			x[i], u[i] = in.estimate()
		}
	}
	return x, u, nil
}

// correlations fills the matrix of the coefficients.
func correlations(fn string, with []Correlation, inputs []Input) ([][]float64, error) {
	r := make([][]float64, len(inputs))
	for i := range r {
		r[i] = make([]float64, len(inputs))
		r[i][i] = 1
	}
	for _, c := range with {
		i, j := slices.Index(inputs, c.A), slices.Index(inputs, c.B)
		if !(c.R >= -1 && c.R <= 1) || i < 0 || j < 0 || i == j {
			return nil, &RangeError{Func: fn, Quantity: "correlation of two inputs", Value: c.R, Min: -1, Max: 1, Source: "JCGM 100:2008 5.2.2"}
		}
		r[i][j], r[j][i] = c.R, c.R
	}
	return r, nil
}

// Simulate returns the mean and standard deviation of f over n draws of the
// inputs, each normal and independent: the check of [Propagate] where f is
// nonlinear. Draws where f fails are left out; failed is how many. The same seed gives the
// same draws.
//
//   - Source: JCGM 101:2008, propagation of distributions by a Monte Carlo method,
//     7.2 to 7.6.
//   - Range: n from 100 to 10,000,000, up to 100 inputs; otherwise the error is a
//     [*RangeError], for a [Correlation] a [*StateError]. If more than half of the draws fail, the error
//     is that of the last.
//   - Uncertainty: u/√n in the mean, u/√(2n) in the standard deviation.
func Simulate[R, RE Dimension](f func(Trial) (Quantity[R, RE], error), n int, seed uint64, inputs ...Input) (m Measured[R, RE], failed int, err error) {
	const fn = "units.Simulate"
	if n < 100 || n > 10_000_000 {
		return m, failed, &RangeError{Func: fn, Quantity: "number of draws", Value: float64(n), Min: 100, Max: 10_000_000, Source: "a limit of the function"}
	}
	if _, with := correlated(inputs); with != nil {
		return m, failed, &StateError{Func: fn, What: "correlation", Why: "is not drawn: Simulate takes independent inputs"}
	}
	x0, u, err := estimates(fn, inputs)
	if err != nil {
		return m, failed, err
	}
	draw := rand.New(rand.NewPCG(seed, 0))
	trial := Trial{inputs: inputs, x: make([]float64, len(inputs))}
	var mean, squares float64
	count := 0
	for range n {
		for i := range x0 {
			trial.x[i] = x0[i] + u[i]*draw.NormFloat64()
		}
		y, e := f(trial)
		if e != nil || !(math.Abs(y.v) <= bound) {
			failed++
			if e != nil {
				err = e
			}
			continue
		}
		count++ // Welford's running sums
		d := y.v - mean
		mean += d / float64(count)
		squares += d * (y.v - mean)
	}
	if failed > n/2 {
		if err == nil {
			err = outside[R, RE](fn, math.NaN(), -most, most)
		}
		return m, failed, err
	}
	return Measured[R, RE]{value: Quantity[R, RE]{v: mean}, u: math.Sqrt(squares / float64(count-1))}, failed, nil
}
