package plan

import (
	"os"
	"testing"
	"time"

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

// A plan without draws costs at most ten walks of its batch through all its packs, its forecast of days as
// much again (7 and 16 reached); worlds are as many walks beside the plan and the walk of the usual world; a walk
// does not allocate. Each is the
// fastest of several runs, one after the other, so that whatever else the machine does falls on all alike.
func TestAPlanIsTenWalks(t *testing.T) {
	if testing.Short() {
		t.Skip("it compares times")
	}
	r := builtIn(t)
	m, err := newMaker(r)
	if err != nil {
		t.Fatal(err)
	}
	all, err := m.toDraw()
	if err != nil {
		t.Fatal(err)
	}
	worlds := forward.Draw(50, m.known())
	walk := func() {
		for i := range worlds {
			if err := all.carry(&worlds[i]); err != nil {
				t.Fatal(err)
			}
		}
	}
	list := all.list
	all.list = nil
	if n := testing.AllocsPerRun(3, walk); n != 0 {
		t.Errorf("%d walks allocate %g times", len(worlds), n)
	}
	all.list = list
	plain := r // no days, no room: no forecast of how fast it goes, which no walk tells
	plain.Schedule, plain.Room = nil, nil
	fastest := func(was time.Duration, f func()) time.Duration {
		start := time.Now()
		f()
		if is := time.Since(start); was == 0 || is < was {
			return is
		}
		return was
	}
	var walks, makes, plains, doubts, draws time.Duration
	const drawn = 200
	for n := range 60 {
		walks = fastest(walks, walk)
		makes = fastest(makes, func() { _, err = newMaker(r) })
		plains = fastest(plains, func() { _, err = newMaker(plain) })
		doubts = fastest(doubts, func() { _, err = m.doubt() })
		draws = fastest(draws, func() { _, err = Draw(r, drawn) })
		if n > 10 && float64(plains)/float64(walks)*float64(len(worlds)) < 9 {
			break // where the machine is busy it goes on
		}
	}
	if err != nil {
		t.Fatal(err)
	}
	one := float64(walks) / float64(len(worlds))
	t.Logf("in walks of %.0f µs: a plan %.1f, without days %.1f, of it its doubt %.2f; a draw of %d worlds beside its plan %.1f", one/1000, float64(makes)/one, float64(plains)/one, float64(doubts)/one, drawn, float64(draws-makes)/one)
	if n := float64(plains) / one; n > 10 {
		t.Errorf("a plan without days costs %.1f walks", n)
	}
	if n := float64(makes) / one; n > 20 { // half of it how fast the ferment goes
		t.Errorf("a plan costs %.1f walks", n)
	}
	if n := float64(draws-makes) / one; n > 1.3*(drawn+1) {
		t.Errorf("%d worlds cost %.1f walks", drawn, n)
	}
}
