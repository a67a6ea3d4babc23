package catalogue

import (
	"errors"
	"math"
	"strconv"
	"strings"
	"testing"

	"example.org/zymase/units"
)

// Each input at its ends, a rounding inside them, at zero and at numbers so small that
// products of them vanish, alone and with its neighbour at an end: the answer is finite,
// or the refusal says what is outside of what. No bare error of a search comes through.
func TestEdgesAreAnsweredOrRefused(t *testing.T) {
	for _, f := range All() {
		in, out := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
		for i, p := range f.Inputs {
			span := p.Max - p.Min
			for _, v := range []float64{p.Min, p.Max, 0, 5e-324, 1e-310, 1e-200, 1e-100, 1e-30, 1e-12,
				math.Nextafter(p.Min, p.Max), math.Nextafter(p.Max, p.Min), p.Min + 1e-9*span, p.Max - 1e-9*span} {
				for mode := range 3 {
					for j := range f.Inputs {
						in[j] = f.Inputs[j].Example
					}
					switch k := (i + 1) % len(in); mode {
					case 1:
						in[k] = f.Inputs[k].Min
					case 2:
						in[k] = f.Inputs[k].Max
					}
					in[i] = v
					if err := f.Call(in, out); err != nil {
						clearRefusal(t, f.Name, in, err)
					}
				}
			}
		}
	}
}

func clearRefusal(t *testing.T, name string, in []float64, err error) {
	t.Helper()
	text := err.Error()
	var r *units.RangeError
	switch {
	case strings.Contains(text, " is one of "), strings.Contains(text, "is a whole number"):
	case !errors.As(err, &r):
		t.Errorf("%s%v: %T %v", name, in, err, err)
	case r.Value >= r.Min && r.Value <= r.Max:
		t.Errorf("%s%v: %v is inside", name, in, err)
	default:
		// As printed, too: no "20 outside 0 to 20".
		_, said, cut := strings.Cut(text, " outside ")
		for _, end := range strings.SplitN(said, " to ", 2) {
			if value := r.Quantity + " " + strings.Fields(end + " x")[0]; cut && strings.Contains(text, ": "+value+" ") {
				t.Errorf("%s%v: %v", name, in, err)
			}
		}
	}
}

// The reading of pure water on any hydrometer is no extract, not a rounding less than it.
func TestConcentrationOfWater(t *testing.T) {
	f, err := Find("concentration_from_sg")
	if err != nil {
		t.Fatal(err)
	}
	out := make([]float64, len(f.Outputs))
	for i, o := range f.Inputs[1].Options {
		a, b, _ := strings.Cut(strings.Fields(o)[0], "/")
		if a != b {
			continue // its 1.000 is not that of water
		}
		if err := f.Call([]float64{1, float64(i)}, out); err != nil || out[0] != 0 || out[1] != 0 {
			t.Errorf("%s: %v, %v", o, out, err)
		}
	}
}

// A flavouring of any strength up to pure ethanol is answered.
func TestFlavourOfAnyStrength(t *testing.T) {
	f, err := Find("flavour_for_batch")
	if err != nil {
		t.Fatal(err)
	}
	in, out := make([]float64, len(f.Inputs)), make([]float64, len(f.Outputs))
	at, _ := f.Input("flavour_strength")
	for j := range f.Inputs {
		in[j] = f.Inputs[j].Example
	}
	for k := range 5001 {
		in[at] = 95 + float64(k)/1000
		if err := f.Call(in, out); err != nil {
			t.Fatal(strconv.Itoa(k), err)
		}
	}
}
