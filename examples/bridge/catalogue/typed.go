package catalogue

import (
	"fmt"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// What makes entries is not inlined (go:noinline) here and in input.go and output.go: written out in each of
// two hundred entries it made the package build twice as long and weigh more. A column runs as fast with it as without.

// An arg is what a function of the library takes, and the inputs that it is made of: name,
// unit and limits of each stand once. The type is all that is generic of it, as of a result: what they hold is
// of one type for all, which makes the library for other languages smaller by far.
type arg[T any] struct{ made *inputs }

// inputs are those of an arg, and what makes it. Where it is made of several args, their inputs follow each
// other, and at says where those of each begin.
type inputs struct {
	all   []*Input
	of    any // func(in []float64) (T, error), where they are those of an arg[T]
	parts [8]*inputs
	at    [8]int
	f     any // what makes it of the parts
}

// reads is an arg of one input.
//
//go:noinline
func reads[T any](p *Input, of func(float64) (T, error)) arg[T] {
	m := one(p)
	m.f = of
	return arg[T]{m.by(func(in []float64) (T, error) {
		of, _ := m.f.(func(float64) (T, error))
		return of(in[0])
	})}
}

// readsNumber is an arg of one input that is its number.
//
//go:noinline
func readsNumber(p *Input) arg[float64] { return arg[float64]{one(p).by(first)} }

func first(in []float64) (float64, error) { return in[0], nil }

//go:noinline
func one(p *Input) *inputs { return &inputs{all: []*Input{p}} }

//go:noinline
func (m *inputs) by(of any) *inputs {
	m.of = of
	return m
}

// takes is a quantity.
//
//go:noinline
func takes[D, E units.Dimension](name string, unit units.Unit[D, E], meaning string, min, max, example float64) arg[units.Quantity[D, E]] {
	return arg[units.Quantity[D, E]]{one(in(name, unit, meaning, min, max, example)).by(func(in []float64) (units.Quantity[D, E], error) {
		return unit.Of(checked.Number(in[0])), nil
	})}
}

// takesStated is a quantity as its number in the unit.
//
//go:noinline
func takesStated[D, E units.Dimension](name string, unit units.Unit[D, E], meaning string, min, max, example float64) arg[float64] {
	return readsNumber(in(name, unit, meaning, min, max, example))
}

// takesNumber is a pure number, or one in a unit that package units does not have.
//
//go:noinline
func takesNumber(name, unit, meaning string, min, max, example float64) arg[float64] {
	return readsNumber(number(name, unit, meaning, min, max, example))
}

// takesTime is a time, stated in h, min, s, d or wk.
//
//go:noinline
func takesTime(name, unit, meaning string, min, max, example float64) arg[time.Duration] {
	one := oneOf(unit)
	return reads(span(name, unit, meaning, min, max, example), func(x float64) (time.Duration, error) { return hours(x * one.Hours()), nil })
}

// picks is one of a list, by the word that each prints; example is the first.
//
//go:noinline
func picks[T fmt.Stringer](name, meaning string, list []T) arg[T] {
	return picksBy(name, meaning, list, wordsOf(list)...)
}

// picksBy is one of a list, by words of its own.
//
//go:noinline
func picksBy[T any](name, meaning string, list []T, words ...string) arg[T] {
	return arg[T]{one(choice(name, meaning, words...)).by(func(in []float64) (T, error) { return list[int(in[0])], nil })}
}

// or gives an arg of one input its default.
func (a arg[T]) or(value float64) arg[T] { return arg[T]{a.made.with(a.made.all[0].or(value))} }

// orOption gives a choice its default.
func (a arg[T]) orOption(option string) arg[T] {
	return arg[T]{a.made.with(a.made.all[0].orOption(option))}
}

// named gives an arg of one input another name and meaning.
func (a arg[T]) named(name, meaning string) arg[T] {
	p := *a.made.all[0]
	p.Name, p.Meaning = name, meaning
	return arg[T]{a.made.with(&p)}
}

// with is an arg of one input with another in its place.
func (m *inputs) with(p *Input) *inputs {
	n := *m
	n.all = []*Input{p}
	return &n
}

// A filling is a call while its args are made of the numbers, until one is refused.
type filling struct {
	in   []float64
	made *inputs
	err  error
}

// read is the i-th arg of a call.
//
//go:noinline
func read[T any](r *filling, i int) T {
	made, in := r.part(i)
	of, _ := made.(func([]float64) (T, error))
	v, err := of(in)
	if err != nil {
		r.refused(err)
	}
	return v
}

//go:noinline
func (r *filling) part(i int) (of any, in []float64) { return r.made.parts[i].of, r.in[r.made.at[i]:] }

//go:noinline
func (r *filling) refused(err error) {
	if r.err == nil {
		r.err = err
	}
}

// of1 is what f makes of an arg: the result of a function, or an arg for another. of2 to of8 are what f makes of so
// many, whose inputs follow each other. They are written out: by pairs of pairs they make the library for other
// languages a tenth larger.
//
//go:noinline
func of1[A, R any](a arg[A], f func(A) (R, error)) arg[R] {
	m := joined(f, a.made)
	return arg[R]{m.by(func(in []float64) (out R, err error) {
		of, _ := m.parts[0].of.(func([]float64) (A, error))
		v1, err := of(in)
		if err != nil {
			return out, err
		}
		f, _ := m.f.(func(A) (R, error))
		return f(v1)
	})}
}

//go:noinline
func of2[A, B, R any](a arg[A], b arg[B], f func(A, B) (R, error)) arg[R] {
	m := joined(f, a.made, b.made)
	return arg[R]{m.by(func(in []float64) (out R, err error) {
		r := filling{in: in, made: m}
		v1 := read[A](&r, 0)
		v2 := read[B](&r, 1)
		if r.err != nil {
			return out, r.err
		}
		f, _ := m.f.(func(A, B) (R, error))
		return f(v1, v2)
	})}
}

//go:noinline
func of3[A, B, C, R any](a arg[A], b arg[B], c arg[C], f func(A, B, C) (R, error)) arg[R] {
	m := joined(f, a.made, b.made, c.made)
	return arg[R]{m.by(func(in []float64) (out R, err error) {
		r := filling{in: in, made: m}
		v1 := read[A](&r, 0)
		v2 := read[B](&r, 1)
		v3 := read[C](&r, 2)
		if r.err != nil {
			return out, r.err
		}
		f, _ := m.f.(func(A, B, C) (R, error))
		return f(v1, v2, v3)
	})}
}

//go:noinline
func of4[A, B, C, D, R any](a arg[A], b arg[B], c arg[C], d arg[D], f func(A, B, C, D) (R, error)) arg[R] {
	m := joined(f, a.made, b.made, c.made, d.made)
	return arg[R]{m.by(func(in []float64) (out R, err error) {
		r := filling{in: in, made: m}
		v1 := read[A](&r, 0)
		v2 := read[B](&r, 1)
		v3 := read[C](&r, 2)
		v4 := read[D](&r, 3)
		if r.err != nil {
			return out, r.err
		}
		f, _ := m.f.(func(A, B, C, D) (R, error))
		return f(v1, v2, v3, v4)
	})}
}

//go:noinline
func of5[A, B, C, D, E, R any](a arg[A], b arg[B], c arg[C], d arg[D], e arg[E], f func(A, B, C, D, E) (R, error)) arg[R] {
	m := joined(f, a.made, b.made, c.made, d.made, e.made)
	return arg[R]{m.by(func(in []float64) (out R, err error) {
		r := filling{in: in, made: m}
		v1 := read[A](&r, 0)
		v2 := read[B](&r, 1)
		v3 := read[C](&r, 2)
		v4 := read[D](&r, 3)
		v5 := read[E](&r, 4)
		if r.err != nil {
			return out, r.err
		}
		f, _ := m.f.(func(A, B, C, D, E) (R, error))
		return f(v1, v2, v3, v4, v5)
	})}
}

//go:noinline
func of6[A, B, C, D, E, F, R any](a arg[A], b arg[B], c arg[C], d arg[D], e arg[E], g arg[F], f func(A, B, C, D, E, F) (R, error)) arg[R] {
	m := joined(f, a.made, b.made, c.made, d.made, e.made, g.made)
	return arg[R]{m.by(func(in []float64) (out R, err error) {
		r := filling{in: in, made: m}
		v1 := read[A](&r, 0)
		v2 := read[B](&r, 1)
		v3 := read[C](&r, 2)
		v4 := read[D](&r, 3)
		v5 := read[E](&r, 4)
		v6 := read[F](&r, 5)
		if r.err != nil {
			return out, r.err
		}
		f, _ := m.f.(func(A, B, C, D, E, F) (R, error))
		return f(v1, v2, v3, v4, v5, v6)
	})}
}

//go:noinline
func of7[A, B, C, D, E, F, G, R any](
	a arg[A], b arg[B], c arg[C], d arg[D], e arg[E], g arg[F], h arg[G], f func(A, B, C, D, E, F, G) (R, error),
) arg[R] {
	m := joined(f, a.made, b.made, c.made, d.made, e.made, g.made, h.made)
	return arg[R]{m.by(func(in []float64) (out R, err error) {
		r := filling{in: in, made: m}
		v1 := read[A](&r, 0)
		v2 := read[B](&r, 1)
		v3 := read[C](&r, 2)
		v4 := read[D](&r, 3)
		v5 := read[E](&r, 4)
		v6 := read[F](&r, 5)
		v7 := read[G](&r, 6)
		if r.err != nil {
			return out, r.err
		}
		f, _ := m.f.(func(A, B, C, D, E, F, G) (R, error))
		return f(v1, v2, v3, v4, v5, v6, v7)
	})}
}

//go:noinline
func of8[A, B, C, D, E, F, G, H, R any](
	a arg[A], b arg[B], c arg[C], d arg[D], e arg[E], g arg[F], h arg[G], k arg[H], f func(A, B, C, D, E, F, G, H) (R, error),
) arg[R] {
	m := joined(f, a.made, b.made, c.made, d.made, e.made, g.made, h.made, k.made)
	return arg[R]{m.by(func(in []float64) (out R, err error) {
		r := filling{in: in, made: m}
		v1 := read[A](&r, 0)
		v2 := read[B](&r, 1)
		v3 := read[C](&r, 2)
		v4 := read[D](&r, 3)
		v5 := read[E](&r, 4)
		v6 := read[F](&r, 5)
		v7 := read[G](&r, 6)
		v8 := read[H](&r, 7)
		if r.err != nil {
			return out, r.err
		}
		f, _ := m.f.(func(A, B, C, D, E, F, G, H) (R, error))
		return f(v1, v2, v3, v4, v5, v6, v7, v8)
	})}
}

// joined are the inputs of some args, one after the other, of which f makes another.
//
//go:noinline
func joined(f any, of ...*inputs) *inputs {
	m := inputs{f: f}
	for i, one := range of {
		m.parts[i], m.at[i] = one, len(m.all)
		m.all = append(m.all, one.all...)
	}
	return &m
}

// A pair is two results as one.
type pair[A, B any] struct {
	a A
	b B
}

// sure is a function that cannot fail, as one that can.
func sure[A, R any](f func(A) R) func(A) (R, error) {
	return func(a A) (R, error) { return f(a), nil }
}

// itself is what a result shows of itself.
func itself[T any](v T) T { return v }

// A result is an output that knows the type it comes from.
type result[T any] struct{ shown *Output }

// gives is a quantity that is itself the result.
//
//go:noinline
func gives[D, E units.Dimension](name string, unit units.Unit[D, E], meaning string) result[units.Quantity[D, E]] {
	return from(itself[units.Quantity[D, E]], name, unit, meaning)
}

// from is a quantity of a result.
//
//go:noinline
func from[T any, D, E units.Dimension](get func(T) units.Quantity[D, E], name string, unit units.Unit[D, E], meaning string) result[T] {
	var how any = get
	return result[T]{out(name, unit, meaning).by(func(v T) float64 {
		get, _ := how.(func(T) units.Quantity[D, E])
		return get(v).In(unit)
	})}
}

// stated is a number of a result that is worked out in the unit.
//
//go:noinline
func stated[T any, D, E units.Dimension](get func(T) float64, name string, unit units.Unit[D, E], meaning string) result[T] {
	return result[T]{out(name, unit, meaning).by(get)}
}

// givesNumber is a number that is itself the result: pure, or in a unit that package units
// does not have.
//
//go:noinline
func givesNumber(name, unit, meaning string) result[float64] {
	return numberFrom(same, name, unit, meaning)
}

// numberFrom is a number of a result.
//
//go:noinline
func numberFrom[T any](get func(T) float64, name, unit, meaning string) result[T] {
	return result[T]{pure(name, unit, meaning).by(get)}
}

// band is a figure of a result with its ends, named in that order, each with its meaning.
//
//go:noinline
func band[T any, D, E units.Dimension](
	get func(T) evidence.Figure[units.Quantity[D, E]], unit units.Unit[D, E], value, low, high [2]string,
) []result[T] {
	return []result[T]{
		from(func(v T) units.Quantity[D, E] { return get(v).Value }, value[0], unit, value[1]),
		from(func(v T) units.Quantity[D, E] { return get(v).Low }, low[0], unit, low[1]),
		from(func(v T) units.Quantity[D, E] { return get(v).High }, high[0], unit, high[1]),
	}
}

// says is what whoever uses a result of package carbonation must know.
//
//go:noinline
func says[T any](get func(T) caution.List) result[T] {
	return result[T]{cautionOutput().by(func(v T) float64 { return float64(set(get(v)...)) })}
}

// saysAlways is as says, the same whatever the result.
//
//go:noinline
func saysAlways[T any](words ...string) result[T] {
	return result[T]{sentences(words...).by(func(T) float64 { return float64(uint64(1)<<len(words) - 1) })}
}

// entry is a function whose result is made of its inputs, and the outputs that show it. What is kept as any is
// taken out as what was put in: the types of arg and result see to it.
//
//go:noinline
func entry[R any](name, meaning, source string, of arg[R], outputs ...result[R]) *Function {
	f := function(name, meaning, source, of.made)
	for _, o := range outputs {
		f.shows(o.shown)
	}
	m := of.made
	return f.calls(func(given, out []float64) error {
		made, _ := m.of.(func([]float64) (R, error))
		v, err := made(given)
		if err != nil {
			return err
		}
		for i := range out {
			get, _ := f.gets[i].(func(R) float64)
			out[i] = get(v)
		}
		return nil
	})
}

//go:noinline
func function(name, meaning, source string, of *inputs) *Function {
	f := &Function{Name: name, Meaning: meaning, Source: source}
	for _, p := range of.all {
		f.Inputs = append(f.Inputs, *p)
	}
	return f
}

//go:noinline
func (f *Function) calls(call func(in, out []float64) error) *Function {
	f.call = call
	return f
}

//go:noinline
func (o *Output) by(of any) *Output {
	o.of = of
	return o
}

//go:noinline
func (f *Function) shows(o *Output) { f.Outputs, f.gets = append(f.Outputs, *o), append(f.gets, o.of) }

// heavy marks an entry whose call allocates.
//
//go:noinline
func heavy(f *Function) *Function {
	f.heavy = true
	return f
}

// as makes a quantity of a number that [Function.Call] has checked.
func as[D, E units.Dimension](unit units.Unit[D, E], v float64) units.Quantity[D, E] {
	return unit.Of(checked.Number(v))
}

// upTo are the values of an enumeration from the first to last.
func upTo[T ~int](last T) []T {
	list := make([]T, last+1)
	for i := range list {
		list[i] = T(i)
	}
	return list
}

// yesNo is how an output says it.
func yesNo(yes bool) float64 {
	if yes {
		return 1
	}
	return 0
}
