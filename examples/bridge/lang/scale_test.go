package lang

import (
	"encoding/json"
	"math"
	"os"
	"testing"
	"time"

	"example.org/zymase/examples/bridge/catalogue"
)

// A million readings of a hydrometer in Parquet, through DuckDB with two registered functions: the
// means that Go has, row by row and by pairs, with one thread and with two.
func TestDuckDB(t *testing.T) {
	elsewhere(t)
	where := os.Getenv("ZYMASE_DUCKDB")
	if where == "" {
		lacking(t, "the Node package @duckdb/node-api (ZYMASE_DUCKDB names the directory that it is installed in)")
	}
	node := program(t, "ZYMASE_NODE", "node")
	dir := written(t, "js", JavaScript)
	const pairs, rows = "1000000", "100000"
	for _, c := range []struct{ rows, files, threads, how string }{
		{pairs, "4", "1", "pairs"}, {pairs, "4", "2", "pairs"}, {rows, "4", "1", "rows"}, {rows, "4", "2", "rows"},
	} {
		var s struct {
			Rows, Answered, Gravity, Strength float64
			MS, CPUMS, Megabytes              float64
		}
		said := run(t, "testdata", nil, node, "duckdb.mjs", dir, c.rows, c.files, c.threads, c.how)
		if err := json.Unmarshal([]byte(said), &s); err != nil {
			t.Fatal(err, said)
		}
		n := map[string]int{pairs: 1e6, rows: 1e5}[c.rows]
		want := goReadings(t, 20_000)
		// A wash that began at 1.050 cannot stand above it: such rows have no strength, here as in Go. The first
		// 20,000 readings stand for all, as they go round every 10,007 and 9,973.
		if s.Rows != float64(n) || math.Abs(s.Answered/s.Rows-want.answered) > 2e-3 {
			t.Errorf("a strength for %v of %v rows; %d were written, and Go has one for a share of %v", s.Answered, s.Rows, n, want.answered)
		}
		if math.Abs(s.Gravity-want.gravity) > 1e-5 || math.Abs(s.Strength-want.strength) > 2e-3 {
			t.Errorf("means %v and %v %% vol, in Go %v and %v", s.Gravity, s.Strength, want.gravity, want.strength)
		}
		t.Logf("%s rows by %s, %s threads: %.2f million rows/s (%.2f million in a second of processor), Go row by row on one core %.2f million/s; %.0f MB",
			c.rows, c.how, c.threads, s.Rows/s.MS/1e3, s.Rows/s.CPUMS/1e3, 1/want.row.Seconds()/1e6, s.Megabytes)
	}
}

// readings are what Go makes of the first readings that duckdb.mjs writes.
type readings struct {
	gravity, strength float64       // means
	answered          float64       // share of the rows that have a strength
	row               time.Duration // of one core
}

func goReadings(t *testing.T, n int) (r readings) {
	t.Helper()
	correct, err := catalogue.Find("hydrometer_correct")
	if err != nil {
		t.Fatal(err)
	}
	ferment, err := catalogue.Find("ferment_from_gravities")
	if err != nil {
		t.Fatal(err)
	}
	out, fermented := make([]float64, len(correct.Outputs)), make([]float64, len(ferment.Outputs))
	// The shortest of many stretches, as other programs share the machine.
	const stretch = 100
	start := time.Now()
	r.row = time.Hour
	for i := range n {
		if i%stretch == 0 && i > 0 {
			r.row = min(r.row, time.Since(start)/stretch)
			start = time.Now()
		}
		reading := math.Round(1e4*(0.998+0.05*float64(i*7919%10007)/10007)) / 1e4
		temperature := math.Round(10*(8+20*float64(i*104729%9973)/9973)) / 10
		if err := correct.Call([]float64{reading, temperature, 0, 0}, out); err != nil {
			t.Fatal(err)
		}
		r.gravity += out[0]
		if ferment.Call([]float64{1.05, out[0], 1}, fermented) == nil {
			r.answered++
			r.strength += fermented[0]
		}
	}
	r.strength /= r.answered
	r.answered /= float64(n)
	r.gravity /= float64(n)
	return r
}
