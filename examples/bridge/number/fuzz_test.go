package number

import (
	"bytes"
	"math"
	"strconv"
	"testing"
)

// Parse takes the decimal numbers of strconv up to [MaxLength], no others, and
// gives the same bits.
func FuzzParse(f *testing.F) {
	for _, s := range []string{"1.5", "-1e-5", "1,5", "9007199254740993", "1e23", ".", "+"} {
		f.Add([]byte(s))
	}
	f.Fuzz(func(t *testing.T, text []byte) {
		for _, mark := range []byte{'.', ','} {
			v, ok := Parse(text, mark)
			plain := bytes.ReplaceAll(text, []byte{mark}, []byte{'.'})
			want, err := strconv.ParseFloat(string(plain), 64)
			decimal := len(text) <= MaxLength && len(bytes.Trim(text, "0123456789eE+-"+string(mark))) == 0
			if ok != (decimal && err == nil) {
				t.Fatalf("Parse(%q, %q) is %v; strconv has %v, %v", text, mark, ok, want, err)
			}
			if ok && (math.Float64bits(v) != math.Float64bits(want) || math.IsInf(v, 0)) {
				t.Fatalf("Parse(%q, %q) = %v; strconv has %v", text, mark, v, want)
			}
		}
	})
}

func FuzzAppend(f *testing.F) {
	for _, v := range []float64{0, 1, 0.1, 1e15, 1e-5, 0.9999999999995, 999999999999.5, math.MaxFloat64, math.SmallestNonzeroFloat64} {
		f.Add(v)
		f.Add(-v)
	}
	f.Fuzz(func(t *testing.T, v float64) {
		if math.IsNaN(v) || math.IsInf(v, 0) {
			return // no function of the catalogue gives these
		}
		checkAppend(t, v)
	})
}
