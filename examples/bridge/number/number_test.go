package number

import (
	"math"
	"strconv"
	"strings"
	"testing"

	"pgregory.net/rapid"
)

func TestParse(t *testing.T) {
	for _, c := range []struct {
		text string
		mark byte
		want float64
		ok   bool
	}{
		{"1.045", '.', 1.045, true},
		{"1,045", ',', 1.045, true},
		{"-0.5", '.', -0.5, true},
		{"+12", '.', 12, true},
		{".5", '.', 0.5, true},
		{"5.", '.', 5, true},
		{"1E+021", '.', 1e21, true},
		{"2e-3", '.', 0.002, true},
		{"0.1000000000000000055511151231257827", '.', 0.1, true},
		{"123456789012345678901234567890", '.', 123456789012345678901234567890, true},
		{"1e-400", '.', 0, true},
		{"1e400", '.', 0, false},
		{"", '.', 0, false},
		{".", '.', 0, false},
		{"-", '.', 0, false},
		{"1,5", '.', 0, false},
		{"1.5", ',', 0, false},
		{"1.2.3", '.', 0, false},
		{"1.234,5", ',', 0, false},
		{"1e", '.', 0, false},
		{"1e+", '.', 0, false},
		{"1e5x", '.', 0, false},
		{"NaN", '.', 0, false},
		{"Inf", '.', 0, false},
		{"0x10", '.', 0, false},
		{"1_000", '.', 0, false},
		{" 1", '.', 0, false},
		{"1e-", '.', 0, false},
		{"1e:", '.', 0, false},
		{"1e/", '.', 0, false},
		{"1:", '.', 0, false},
		{"-9007199254740991", '.', -9007199254740991, true},
		{"9007199254740993", '.', 9007199254740992, true},
		{"99999999999999999999e-10", '.', 1e10, true},
		{"123e22", '.', 1.23e24, true},
		{"123e23", '.', 1.23e25, true},
		{"1e23", '.', 1e23, true},
		{"1e-22", '.', 1e-22, true},
		{"1e-23", '.', 1e-23, true},
		{"1 000", '.', 0, false},
		{"12 °C", '.', 0, false},
		{strings.Repeat("1", MaxLength+1), '.', 0, false},
		{"1e99999999999999999999", '.', 0, false},
		{"0e99999999999999999999", '.', 0, true},
	} {
		got, ok := Parse([]byte(c.text), c.mark)
		if ok != c.ok || ok && got != c.want {
			t.Errorf("Parse(%q, %q) = %v, %v; want %v, %v", c.text, c.mark, got, ok, c.want, c.ok)
		}
	}
}

// The short way and strconv agree to the last bit.
func TestParseAsStrconv(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		text := rapid.StringMatching(`[-+]?[0-9]{1,22}(\.[0-9]{0,22})?([eE][-+]?[0-9]{1,3})?`).Draw(t, "text")
		want, err := strconv.ParseFloat(text, 64)
		got, ok := Parse([]byte(text), '.')
		if ok != (err == nil && len(text) <= MaxLength) || ok && math.Float64bits(got) != math.Float64bits(want) {
			t.Fatalf("Parse(%q) = %v, %v; strconv has %v, %v", text, got, ok, want, err)
		}
	})
}

// checkAppend: Append writes the digits of strconv, and they read back as the
// same number to 12 digits.
func checkAppend(t interface{ Fatalf(string, ...any) }, v float64) {
	text := string(Append(nil, v))
	want, _ := strconv.ParseFloat(strconv.FormatFloat(v, 'e', 11, 64), 64)
	got, ok := Parse([]byte(text), '.')
	if !ok || got != want || len(text) > 24 || strings.HasPrefix(text, "-0") && !strings.Contains(text, ".") {
		t.Fatalf("%v is written %s; strconv has %v", v, text, want)
	}
	if strings.Contains(text, ".") && !strings.Contains(text, "e") && strings.HasSuffix(text, "0") {
		t.Fatalf("%v is written %s", v, text)
	}
}

func TestAppendAsStrconv(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		checkAppend(t, rapid.Float64Range(-1e20, 1e20).Draw(t, "v"))
		checkAppend(t, rapid.Float64Range(0.9, 1.2).Draw(t, "gravity"))
		checkAppend(t, rapid.Float64Range(-math.MaxFloat64/2, math.MaxFloat64/2).Draw(t, "any"))
	})
	for e := -330; e < 308; e++ { // each power of ten, and beside it
		v := math.Pow(10, float64(e))
		for _, k := range []float64{1, 0.999999999999, 0.9999999999995, 0.99999999999949, 1.0000000000005, 9.9999999999985} {
			checkAppend(t, v*k)
			checkAppend(t, -math.Nextafter(v*k, 0))
		}
	}
}

func TestAppend(t *testing.T) {
	for v, want := range map[float64]string{
		0.1: "0.1", 1.2e6: "1200000", 1e21: "1e+21", 0.00001: "0.00001", 0.000001: "1e-06",
		-3: "-3", math.Copysign(0, -1): "0", 999999999999: "999999999999", 999999999999999: "1000000000000000", 1e15: "1e+15",
		0.9999999999999999: "1", 0.1 + 0.2: "0.3", 148.67500000000001: "148.675", 1.0 / 3: "0.333333333333",
		123456789012345: "123456789012000",
	} {
		if got := string(Append(nil, v)); got != want {
			t.Errorf("%v is written %s, want %s", v, got, want)
		}
	}
}

func TestParseAllocatesNothing(t *testing.T) {
	var room [64]byte
	short, long := []byte("1.045"), []byte("0.100000000000000005551115123125")
	if n := testing.AllocsPerRun(100, func() {
		Parse(short, '.')
		Parse(long, '.')
		Append(room[:0], 1.0/3)
		Append(room[:0], 1e-9/3)
	}); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

var sink float64

func BenchmarkParse(b *testing.B) {
	texts := [][]byte{[]byte("1.045"), []byte("12.34567"), []byte("20"), []byte("-3.25")}
	b.ReportAllocs()
	for b.Loop() {
		for _, text := range texts {
			v, _ := Parse(text, '.')
			sink += v
		}
	}
}

func BenchmarkAppend(b *testing.B) {
	numbers := []float64{1.0 / 3, 98.675, 1013.2512345678, -0.0213456789}
	var room [64]byte
	b.ReportAllocs()
	for b.Loop() {
		for _, v := range numbers {
			Append(room[:0], v)
		}
	}
}

func BenchmarkAppendStrconv(b *testing.B) {
	numbers := []float64{1.0 / 3, 98.675, 1013.2512345678, -0.0213456789}
	var room [64]byte
	for b.Loop() {
		for _, v := range numbers {
			strconv.AppendFloat(room[:0], v, 'f', -1, 64)
		}
	}
}
