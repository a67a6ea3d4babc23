package fill

import (
	"errors"
	"io"
	"os"
	"runtime"
	"strings"
	"testing"

	"example.org/zymase/examples/bridge/delimited"
)

// repeated is a long file that nobody has to hold: a head, then one row again
// and again.
type repeated struct {
	head, row string
	left      int // bytes
	at        int
}

func (r *repeated) Read(b []byte) (int, error) {
	if r.left <= 0 {
		return 0, io.EOF
	}
	n := 0
	for n < len(b) && r.left > 0 {
		text := r.row
		if r.head != "" {
			text = r.head
		}
		k := copy(b[n:], text[r.at:])
		n += k
		r.left -= k
		if r.at += k; r.at == len(text) {
			r.at, r.head = 0, ""
		}
	}
	return n, nil
}

// What is allocated does not grow with the file.
func TestMemory(t *testing.T) {
	used := func(size int) uint64 {
		var before, after runtime.MemStats
		runtime.ReadMemStats(&before)
		_, err := Run(io.Discard, &repeated{head: "pressure (bar),remark\n", row: "2,clear and dry; poured with care\n", left: size},
			function(t, "pressure_gauge_from_absolute"), Options{Fixed: map[string]string{"altitude": "0"}})
		if _, ok := errors.AsType[*delimited.FormError](err); err != nil && !ok {
			t.Fatal(err)
		}
		runtime.ReadMemStats(&after)
		return after.TotalAlloc - before.TotalAlloc
	}
	small, large := used(2<<20), used(8<<20)
	if large > small+(1<<20) {
		t.Errorf("%d bytes were allocated for 2 MB, %d for 8 MB", small, large)
	}
}

// weighed looks at the heap each megabyte of what is read through it.
type weighed struct {
	io.Reader
	next int
	peak uint64
}

func (w *weighed) Read(b []byte) (int, error) {
	n, err := w.Reader.Read(b)
	if w.next -= n; w.next <= 0 {
		w.next = 1 << 20
		var m runtime.MemStats
		runtime.ReadMemStats(&m)
		w.peak = max(w.peak, m.HeapAlloc)
	}
	return n, err
}

// The heap has a ceiling: where the collector starts, and for each batch twice
// what it holds, since as much again may await collection. Reasons of rows that
// fail are garbage too, and the longest rows swell their batches. On two cores
// it is 16 MiB, and 32 MiB for the worst of files.
func TestMemoryCeiling(t *testing.T) {
	const mega = 1 << 20
	batches := uint64(runtime.GOMAXPROCS(0) + 2)
	usual, worst := (8+2*batches)*mega, (8+6*batches)*mega
	_, soak := os.LookupEnv("ZYMASE_SOAK")
	for _, c := range []struct {
		name, row  string
		size, long int // bytes in an ordinary run, and in a soak
		ceiling    uint64
	}{
		{"common rows", "2,clear and dry; poured with care\n", 4 * mega, 256 * mega, usual},
		{"short rows", "2,\n", mega, 128 * mega, usual},
		{"blank rows", "\n", mega, 128 * mega, usual},
		{"rows that fail", "much,\"a remark, \"\"quoted\"\"\"\n", mega, 128 * mega, worst},
		{"the longest rows", "2,\"" + strings.Repeat("long\n", (delimited.MaxRow-10)/5) + "\"\n", 8 * mega, 256 * mega, worst},
	} {
		t.Run(c.name, func(t *testing.T) {
			if soak {
				c.size = c.long
			}
			const head = "pressure (bar),remark\n"
			size := len(head) + c.size/len(c.row)*len(c.row)
			in := &weighed{Reader: &repeated{head: head, row: c.row, left: size}}
			runtime.GC()
			var before runtime.MemStats
			runtime.ReadMemStats(&before)
			count, err := Run(io.Discard, in, function(t, "pressure_gauge_from_absolute"), Options{Fixed: map[string]string{"altitude": "0"}})
			if err != nil {
				t.Fatal(err)
			}
			peak := in.peak - min(in.peak, before.HeapAlloc)
			t.Logf("%d MB in %d rows: the heap grew by %.1f MiB at most; the ceiling is %d MiB",
				size/1_000_000, count.Rows, float64(peak)/mega, c.ceiling/mega)
			if peak > c.ceiling {
				t.Errorf("the heap grew by %d bytes, over %d", peak, c.ceiling)
			}
		})
	}
}
