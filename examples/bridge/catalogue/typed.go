package catalogue

import "example.org/zymase/units"

// An arg is an input that knows the type it becomes: name, unit and limits stand once, and
// a call that is no more than one of the library takes the value from it.
type arg[T any] struct {
	Input
	of func(float64) T
}

// or gives an arg its default.
func (a arg[T]) or(value float64) arg[T] {
	a.Input = a.Input.or(value)
	return a
}

// takes is an input with a unit.
func takes[D, E units.Dimension](name string, unit units.Unit[D, E], meaning string, min, max, example float64) arg[units.Quantity[D, E]] {
	return arg[units.Quantity[D, E]]{in(name, unit, meaning, min, max, example), func(x float64) units.Quantity[D, E] { return as(unit, x) }}
}

// takesNumber is an input that is a pure number, as [number].
func takesNumber(name, unit, meaning string, min, max, example float64) arg[float64] {
	return arg[float64]{number(name, unit, meaning, min, max, example), same}
}

// A result is an output that knows the type it comes from.
type result[T any] struct {
	Output
	in func(T) float64
}

// gives is an output with a unit.
func gives[D, E units.Dimension](name string, unit units.Unit[D, E], meaning string) result[units.Quantity[D, E]] {
	return result[units.Quantity[D, E]]{out(name, unit, meaning), func(q units.Quantity[D, E]) float64 { return q.In(unit) }}
}

// givesNumber is an output that is a pure number, as [pure].
func givesNumber(name, unit, meaning string) result[float64] {
	return result[float64]{pure(name, unit, meaning), same}
}

// of1 is a function of one argument.
func of1[A, R any](name, meaning, source string, a arg[A], r result[R], f func(A) (R, error)) Function {
	return Function{
		Name: name, Meaning: meaning, Source: source, Inputs: []Input{a.Input}, Outputs: []Output{r.Output},
		call: func(in, out []float64) error {
			v, err := f(a.of(in[0]))
			out[0] = r.in(v)
			return err
		},
	}
}

// of2 is a function of two arguments.
func of2[A, B, R any](name, meaning, source string, a arg[A], b arg[B], r result[R], f func(A, B) (R, error)) Function {
	return Function{
		Name: name, Meaning: meaning, Source: source, Inputs: []Input{a.Input, b.Input}, Outputs: []Output{r.Output},
		call: func(in, out []float64) error {
			v, err := f(a.of(in[0]), b.of(in[1]))
			out[0] = r.in(v)
			return err
		},
	}
}

// of3 is a function of three arguments.
func of3[A, B, C, R any](name, meaning, source string, a arg[A], b arg[B], c arg[C], r result[R], f func(A, B, C) (R, error)) Function {
	return Function{
		Name: name, Meaning: meaning, Source: source, Inputs: []Input{a.Input, b.Input, c.Input}, Outputs: []Output{r.Output},
		call: func(in, out []float64) error {
			v, err := f(a.of(in[0]), b.of(in[1]), c.of(in[2]))
			out[0] = r.in(v)
			return err
		},
	}
}
