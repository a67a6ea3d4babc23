package main

import (
	"bytes"
	"context"
	"io"
	"strings"
	"syscall"
	"testing"
)

// writing are the uses that write to the standard output, and what they read.
var writing = []struct {
	in   string
	args []string
}{
	{"", []string{"help"}},
	{"", []string{"functions"}},
	{"", []string{"functions", "atmosphere"}},
	{"", []string{"functions", "-json"}},
	{"", []string{"call", "atmosphere_at_altitude", "altitude=0"}},
	{"", []string{"call", "-json", "atmosphere_at_altitude", "altitude=0"}},
	{"altitude (m)\n0\n", []string{"fill", "atmosphere_at_altitude"}},
	{"altitude (m)\nhigh\n", []string{"fill", "atmosphere_at_altitude"}}, // a full disk goes before a row that fails
	{"altitude (m)\n" + strings.Repeat("0\n", 100_000), []string{"fill", "atmosphere_at_altitude"}},
	{"", []string{"module"}},
}

// faulty takes some bytes, and then fails as the system does.
type faulty struct {
	room int
	err  error
}

func (w *faulty) Write(b []byte) (int, error) {
	n := min(len(b), w.room)
	if w.room -= n; n < len(b) {
		return n, w.err
	}
	return n, nil
}

// Wherever the output is cut, the exit code is 2 and one line on the standard
// error says why.
func TestOutputFaults(t *testing.T) {
	for _, use := range writing {
		var whole bytes.Buffer
		if code := run(context.Background(), use.args, strings.NewReader(use.in), &whole, io.Discard); code > 1 || whole.Len() == 0 {
			t.Fatalf("%q: exit code %d, %d bytes", use.args, code, whole.Len())
		}
		for _, fault := range []error{syscall.ENOSPC, syscall.EPIPE, io.ErrShortWrite} {
			for _, room := range []int{0, 1, whole.Len() / 2, whole.Len() - 1} {
				var stderr bytes.Buffer
				code := run(context.Background(), use.args, strings.NewReader(use.in), &faulty{room, fault}, &stderr)
				if code != 2 || !strings.HasPrefix(stderr.String(), "bridge: ") || !strings.HasSuffix(stderr.String(), fault.Error()+"\n") ||
					strings.Count(stderr.String(), "\n") != 1 {
					t.Errorf("%q, %v after %d bytes: exit code %d, %q", use.args, fault, room, code, stderr.String())
				}
			}
		}
	}
}
