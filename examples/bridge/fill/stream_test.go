package fill

import (
	"bytes"
	"errors"
	"fmt"
	"io"
	"runtime"
	"strconv"
	"strings"
	"testing"

	"example.org/zymase/examples/bridge/delimited"
)

// full fails after some bytes, as a disk does.
type full struct{ room int }

var errFull = errors.New("disk full")

func (w *full) Write(b []byte) (int, error) {
	if w.room -= len(b); w.room < 0 {
		return 0, errFull
	}
	return len(b), nil
}

func TestDiskFull(t *testing.T) {
	for _, room := range []int{0, 1000, 10 * batchSize} {
		in := io.MultiReader(strings.NewReader("pressure (bar)\n"), strings.NewReader(strings.Repeat("2\n", 200_000)))
		if _, err := Run(&full{room}, in, function(t, "pressure_gauge_from_absolute"), Options{}); err != errFull {
			t.Errorf("room %d: %v", room, err)
		}
	}
}

// Many batches, in order.
func TestOrder(t *testing.T) {
	const n = 50_000
	var in bytes.Buffer
	in.WriteString("n,altitude (m)\n")
	for i := range n {
		fmt.Fprintf(&in, "%d,%d\n", i, i%11000)
	}
	var out bytes.Buffer
	count, err := Run(&out, &in, function(t, "atmosphere_at_altitude"), Options{})
	if err != nil || count != (Count{n, 0}) {
		t.Fatal(count, err)
	}
	lines := strings.Split(out.String(), "\n")
	for i := range n {
		if !strings.HasPrefix(lines[i+1], strconv.Itoa(i)+",") {
			t.Fatalf("line %d is %q", i+1, lines[i+1])
		}
	}
}

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

// Memory does not grow with the file.
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
	small, large := used(4<<20), used(24<<20)
	if large > small+(2<<20) {
		t.Errorf("%d bytes were allocated for 4 MB, %d for 24 MB", small, large)
	}
}
