package plan

import (
	"os"
	"testing"

	forward "example.org/zymase/examples/seltzer/batch"
)

// builtIn is the request of the main job.
func builtIn(t testing.TB) Request {
	text, err := os.ReadFile("../request.json")
	if err != nil {
		t.Fatal(err)
	}
	r, err := ParseRequest(text)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

// walked is a plan's batch through all its packs in some worlds, one after the other.
func walked(t testing.TB) func() {
	m, err := newMaker(builtIn(t))
	if err != nil {
		t.Fatal(err)
	}
	all, err := m.toDraw()
	if err != nil {
		t.Fatal(err)
	}
	all.list = nil // carried, and no figure read
	worlds := forward.Draw(50, m.known())
	next := 0
	return func() {
		next = (next + 1) % len(worlds)
		if err := all.carry(&worlds[next]); err != nil {
			t.Fatal(err)
		}
	}
}

func TestAWalkDoesNotAllocate(t *testing.T) {
	if n := testing.AllocsPerRun(100, walked(t)); n != 0 {
		t.Errorf("a walk allocates %g times", n)
	}
}

// What .ci/ratios counts a plan and its draws in.
func BenchmarkWalk(b *testing.B) {
	walk := walked(b)
	for b.Loop() {
		walk()
	}
}

// A plan without days and room, so without a forecast of how fast it goes, which no walk tells.
func BenchmarkMakeWithoutDays(b *testing.B) {
	r := builtIn(b)
	r.Schedule, r.Room = nil, nil
	for b.Loop() {
		if _, err := newMaker(r); err != nil {
			b.Fatal(err)
		}
	}
}

// A plan and 1,000 worlds beside it.
func BenchmarkDraw(b *testing.B) {
	r := builtIn(b)
	for b.Loop() {
		if _, err := Draw(r, 1000); err != nil {
			b.Fatal(err)
		}
	}
}
