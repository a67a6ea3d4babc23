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
		gravity, strength, took := goReadings(t, 20_000)
		if s.Rows != float64(n) || s.Answered != s.Rows {
			t.Errorf("%v of %v rows, %d were written", s.Answered, s.Rows, n)
		}
		// The first 20,000 readings stand for all, as they go round every 10,007 and 9,973.
		if math.Abs(s.Gravity-gravity) > 1e-5 || math.Abs(s.Strength-strength) > 2e-3 {
			t.Errorf("means %v and %v %% vol, in Go %v and %v", s.Gravity, s.Strength, gravity, strength)
		}
		t.Logf("%s rows by %s, %s threads: %.2f million rows/s (%.2f million in a second of processor), Go row by row on one core %.2f million/s; %.0f MB",
			c.rows, c.how, c.threads, s.Rows/s.MS/1e3, s.Rows/s.CPUMS/1e3, 1/took.Seconds()/1e6, s.Megabytes)
	}
}

// goReadings are the means over the first readings that duckdb.mjs writes, and the time for a row.
func goReadings(t *testing.T, n int) (gravity, strength float64, row time.Duration) {
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
	start := time.Now()
	for r := range n {
		reading := math.Round(1e4*(0.998+0.05*float64(r*7919%10007)/10007)) / 1e4
		temperature := math.Round(10*(8+20*float64(r*104729%9973)/9973)) / 10
		if err := correct.Call([]float64{reading, temperature, 0, 0}, out); err != nil {
			t.Fatal(err)
		}
		if err := ferment.Call([]float64{1.05, out[0], 1}, fermented); err != nil {
			t.Fatal(err)
		}
		gravity += out[0]
		strength += fermented[0]
	}
	return gravity / float64(n), strength / float64(n), time.Since(start) / time.Duration(n)
}
