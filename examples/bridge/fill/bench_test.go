package fill

import (
	"bufio"
	"encoding/csv"
	"fmt"
	"io"
	"math/rand/v2"
	"os"
	"path/filepath"
	"strconv"
	"testing"
	"time"

	"example.org/zymase/examples/bridge/delimited"
	"example.org/zymase/examples/bridge/number"
)

// BenchmarkFill is of the density of ethanol and water, BenchmarkFillPower of a
// function that raises to a power.
func BenchmarkFill(b *testing.B) {
	benchmark(b, "ethanol_density", "strength_by_mass (% mass)", "temperature (°C)", 40, 30)
}

func BenchmarkFillPower(b *testing.B) {
	benchmark(b, "pressure_gauge_from_absolute", "pressure (kPa)", "altitude (m)", 300, 2000)
}

// benchmark compares, in one run over one file of 1,000,000 rows: filling it;
// reading, parsing the two columns and writing it, with this module's own
// reader and with encoding/csv. "of-copy" is the speed of filling as a share of
// that of the copy.
func benchmark(b *testing.B, name, first, second string, most, mostSecond float64) {
	const rows = 1_000_000
	dir := b.TempDir()
	f := function(b, name)
	name = filepath.Join(dir, "in.csv")
	writeTable(b, name, rows, first, second, most, mostSecond)
	timed := func(do func(in io.Reader, out io.Writer) error) time.Duration {
		in, err := os.Open(name)
		if err != nil {
			b.Fatal(err)
		}
		defer in.Close()
		out, err := os.Create(filepath.Join(dir, "out.csv"))
		if err != nil {
			b.Fatal(err)
		}
		defer out.Close()
		start := time.Now()
		if err := do(in, out); err != nil {
			b.Fatal(err)
		}
		return time.Since(start)
	}
	var fill, own, std time.Duration
	for b.Loop() {
		fill += timed(func(in io.Reader, out io.Writer) error {
			count, err := Run(out, in, f, Options{})
			if count != (Count{rows, 0}) {
				b.Fatal(count, err)
			}
			return err
		})
		own += timed(copyOwn)
		std += timed(copyStandard)
	}
	perRow := func(d time.Duration) float64 { return float64(d.Nanoseconds()) / float64(b.N) / rows }
	b.ReportMetric(perRow(fill), "ns/row-fill")
	b.ReportMetric(perRow(own), "ns/row-own-copy")
	b.ReportMetric(perRow(std), "ns/row-std-copy")
	b.ReportMetric(own.Seconds()/fill.Seconds(), "of-own-copy")
	b.ReportMetric(std.Seconds()/fill.Seconds(), "of-std-copy")
}

func writeTable(b *testing.B, name string, rows int, first, second string, most, mostSecond float64) {
	file, err := os.Create(name)
	if err != nil {
		b.Fatal(err)
	}
	defer file.Close()
	w := bufio.NewWriter(file)
	defer w.Flush()
	random := rand.New(rand.NewPCG(1, 2))
	fmt.Fprintf(w, "batch,%s,%s,remark\n", first, second)
	for i := range rows {
		fmt.Fprintf(w, "%d,%.4f,%.1f,dry and clear\n", i, most*random.Float64(), mostSecond*random.Float64())
	}
}

func copyOwn(in io.Reader, out io.Writer) error {
	rows := delimited.NewReader(in, ',')
	w := bufio.NewWriterSize(out, batchSize)
	var row delimited.Row
	sum := 0.0
	for {
		raw, err := rows.Next()
		if err == io.EOF {
			return w.Flush()
		}
		if err != nil {
			return err
		}
		row.Split(raw, ',')
		a, _ := number.Parse(row.Text(1), '.')
		c, _ := number.Parse(row.Text(2), '.')
		sum += a + c
		w.Write(raw)
	}
}

func copyStandard(in io.Reader, out io.Writer) error {
	r := csv.NewReader(in)
	r.ReuseRecord = true
	w := csv.NewWriter(out)
	sum := 0.0
	for {
		row, err := r.Read()
		if err == io.EOF {
			w.Flush()
			return w.Error()
		}
		if err != nil {
			return err
		}
		a, _ := strconv.ParseFloat(row[1], 64)
		c, _ := strconv.ParseFloat(row[2], 64)
		sum += a + c
		if err := w.Write(row); err != nil {
			return err
		}
	}
}
