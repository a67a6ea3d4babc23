package border

import (
	"hash/fnv"
	"math"
	"sync"

	"example.org/zymase/examples/bridge/catalogue"
)

// form is the version of what crosses: the entry points, their arguments, the shape of a
// refusal.
const form = "1"

// Contract is a number for the form of the questions and for all that a place, a number or a
// word of the catalogue stands for: two programs that have the same understand one another.
func Contract() uint64 { return contract() }

var contract = sync.OnceValue(func() uint64 { return contractOf(functions) })

func contractOf(list []catalogue.Function) uint64 {
	h := fnv.New64a()
	say := func(texts ...string) {
		for _, t := range texts {
			h.Write([]byte(t))
			h.Write([]byte{0})
		}
	}
	say(form)
	for i := range list {
		f := &list[i]
		say("function", f.Name)
		for j := range f.Inputs {
			in := &f.Inputs[j]
			say("in", in.Name, in.Unit)
			say(in.Options...)
			if in.HasDefault {
				b := math.Float64bits(in.Default)
				for range 8 {
					h.Write([]byte{byte(b)})
					b >>= 8
				}
			}
		}
		for j := range f.Outputs {
			out := &f.Outputs[j]
			say("out", out.Name, out.Unit)
			say(out.Words...)
		}
	}
	return h.Sum64()
}
