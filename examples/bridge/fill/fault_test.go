package fill

import (
	"errors"
	"io"
	"strings"
	"testing"
	"time"
)

// full fails after some bytes, as a disk does: what there is room for is taken.
type full struct{ room int }

var errFull = errors.New("disk full")

func (w *full) Write(b []byte) (int, error) {
	if len(b) <= w.room {
		w.room -= len(b)
		return len(b), nil
	}
	n := w.room
	w.room = 0
	return n, errFull
}

// Only rows that are out count, and the error of the disk is the one told.
func TestDiskFull(t *testing.T) {
	for _, room := range []int{0, 10, 1000, batchSize, 10 * batchSize} {
		in := io.MultiReader(strings.NewReader("pressure (bar)\n"), strings.NewReader(strings.Repeat("2\n", 200_000)))
		count, err := Run(&full{room}, in, function(t, "pressure_gauge_from_absolute"), Options{})
		if err != errFull || count.Rows > room/len("2,98.675,\n") {
			t.Errorf("room %d: %+v, %v", room, count, err)
		}
	}
}

// When nobody reads on, the end does not wait for an input that has come to a
// halt.
func TestPipeClosed(t *testing.T) {
	in, feed := io.Pipe()
	defer feed.Close()
	go io.WriteString(feed, "pressure (bar)\n"+strings.Repeat("2\n", batchSize))
	told, out := io.Pipe()
	go func() {
		io.ReadFull(told, make([]byte, 100))
		told.Close()
	}()
	done := make(chan error, 1)
	f := function(t, "pressure_gauge_from_absolute")
	go func() {
		_, err := Run(out, in, f, Options{})
		done <- err
	}()
	select {
	case err := <-done:
		if err != io.ErrClosedPipe {
			t.Error(err)
		}
	case <-time.After(10 * time.Second):
		t.Error("still waits for the input")
	}
}
