package catalogue

import (
	"math"
	"math/rand/v2"
	"regexp"
	"sync"
	"testing"
)

// drawn are inputs in their limits: some at an end, some at the example, some equal to
// another input, most anywhere, by the number or by its logarithm; and every other time
// all but one at the example.
func drawn(f *Function, r *rand.Rand, in []float64) {
	only := -1
	if r.IntN(2) == 0 {
		only = r.IntN(len(f.Inputs))
	}
	for i := range f.Inputs {
		p := &f.Inputs[i]
		if only >= 0 && i != only {
			in[i] = p.Example
			continue
		}
		v := p.Min + r.Float64()*(p.Max-p.Min)
		switch r.IntN(9) {
		case 0:
			v = p.Min
		case 1:
			v = p.Max
		case 2, 3:
			v = p.Example
		case 4:
			v = in[r.IntN(len(in))]
		case 5:
			if p.Min >= 0 && p.Max > 1e-6 {
				v = max(p.Min, math.Exp(math.Log(1e-6)+r.Float64()*math.Log(p.Max/1e-6)))
			}
		}
		if in[i] = min(max(v, p.Min), p.Max); p.Whole {
			in[i] = math.Round(in[i])
		}
	}
}

// notANumber is what no answer and no reason for the want of one may hold.
var notANumber = regexp.MustCompile(`\bNaN\b|\bInf\b|e\+30[0-9]`)

// No function answers with what is not a number, or with the largest there is, and none
// says so in its error. A text stands for words.
func TestRandomInputs(t *testing.T) {
	r := rand.New(rand.NewPCG(7, 33))
	for _, f := range All() {
		in, out := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
		draws, answered := 400, 0
		if f.heavy {
			draws = 40
		}
		for range draws {
			drawn(&f, r, in)
			for i := range out {
				out[i] = math.NaN() // a result that is not set is noticed
			}
			if err := f.Call(in, out); err != nil {
				if notANumber.MatchString(err.Error()) {
					t.Fatalf("%s%v: %v", f.Name, in, err)
				}
				continue
			}
			answered++
			for i, v := range out {
				o := &f.Outputs[i]
				if !(math.Abs(v) < 1e300) {
					t.Fatalf("%s%v: %s = %v", f.Name, in, o.Name, v)
				}
				if whole := v == math.Trunc(v) && v >= 0; o.IsText() &&
					(!whole || !o.Several && v >= float64(len(o.Words)) || o.Several && v >= math.Exp2(float64(len(o.Words)))) {
					t.Fatalf("%s%v: %s = %v, of %d words", f.Name, in, o.Name, v, len(o.Words))
				}
			}
		}
		if answered == 0 {
			t.Errorf("%s answered none of %d", f.Name, draws)
		}
	}
}

// Every function gives the same from 16 goroutines at once as alone; run with -race, a
// variable of a package that a call writes is noticed.
func TestManyAtOnce(t *testing.T) {
	type question struct {
		f       *Function
		in, out []float64
		refused bool
	}
	r := rand.New(rand.NewPCG(16, 33))
	var asked []question
	all := All()
	for i := range all {
		f := &all[i]
		for n := range 3 {
			q := question{f: f, in: examples(f), out: make([]float64, len(f.Outputs))}
			if n > 0 {
				drawn(f, r, q.in)
			}
			q.refused = f.Call(q.in, q.out) != nil
			asked = append(asked, q)
		}
	}
	var all16 sync.WaitGroup
	for k := range 16 {
		all16.Go(func() {
			for i := range asked { // each goroutine begins elsewhere, and all meet
				q := &asked[(i+k*len(asked)/16)%len(asked)]
				out := make([]float64, len(q.out))
				if refused := q.f.Call(q.in, out) != nil; refused != q.refused {
					t.Errorf("%s%v: refused %v, alone %v", q.f.Name, q.in, refused, q.refused)
					continue
				}
				for j := range out {
					if !q.refused && out[j] != q.out[j] {
						t.Errorf("%s%v: %s = %v, alone %v", q.f.Name, q.in, q.f.Outputs[j].Name, out[j], q.out[j])
					}
				}
			}
		})
	}
	// All at once on the same function, too.
	for i := range all {
		f := &all[i]
		start := make(chan struct{})
		var same sync.WaitGroup
		for range 16 {
			same.Go(func() {
				in, out := examples(f), make([]float64, len(f.Outputs))
				<-start
				_ = f.Call(in, out)
			})
		}
		close(start)
		same.Wait()
	}
	all16.Wait()
}
