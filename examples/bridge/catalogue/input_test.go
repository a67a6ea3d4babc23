package catalogue

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/units"
)

func TestParseInput(t *testing.T) {
	temperature := *in("temperature", units.Celsius, "of the sample", -10, 110, 20)
	gravity := *number("gravity", "", "of the wash", 0.9, 1.2, 1.05).alias("points", func(x float64) float64 { return 1 + x/1000 })
	time := *span("time", "h", "of the boil", 0, 100, 1)
	ion := *choice("ion", "which", "calcium", "sodium chloride")
	for _, c := range []struct {
		p    Input
		text string
		want float64 // NaN: refused
	}{
		{temperature, "12.5 °C", 12.5},
		{temperature, "12.5", 12.5},
		{temperature, " 55 °F ", 115.0 / 9},
		{temperature, "55F", 115.0 / 9},
		{temperature, "293.15 K", 20},
		{temperature, "12,5", 12.5},
		{temperature, "12,5 °C", 12.5},
		{temperature, "1,500", math.NaN()}, // decimal or thousands?
		{temperature, "0,500", 0.5},
		{temperature, "1.5,0", math.NaN()},
		{temperature, "12.5 L", math.NaN()},
		{temperature, "warm", math.NaN()},
		{temperature, "", math.NaN()},
		{temperature, "NaN", math.NaN()},
		{temperature, "1e999", math.NaN()},
		{temperature, strings.Repeat("1", 100), math.NaN()},
		{gravity, "1.05", 1.05},
		{gravity, "50 points", 1.05},
		{gravity, "1,05", 1.05},
		{gravity, "50 pints", math.NaN()},
		{time, "1 h 30 min", 1.5},
		{time, "1.5", 1.5},
		{time, "90 min", 1.5},
		{time, "90 m", math.NaN()},
		{ion, "Sodium-Chloride", 1},
		{ion, "calcium", 0},
		{ion, "1", 1},
		{ion, "lead", math.NaN()},
	} {
		got, err := c.p.Parse(c.text)
		if math.IsNaN(c.want) != (err != nil) || err == nil && math.Abs(got-c.want) > 1e-12 {
			t.Errorf("%s %q: %v, %v, want %v", c.p.Name, c.text, got, err, c.want)
		}
		if err != nil && !strings.HasPrefix(err.Error(), c.p.Name+": ") {
			t.Errorf("%q does not name the input", err)
		}
	}
	// A cell in a comma locale sends 1,125 for 1.125, never a thousands mark.
	if v, err := temperature.ParseCell("1,125"); err != nil || v != 1.125 {
		t.Errorf("cell: %v, %v", v, err)
	}
	for _, text := range []string{"1,234,567", "1.234,5"} {
		if _, err := temperature.ParseCell(text); err == nil {
			t.Errorf("cell %q is taken", text)
		}
	}
	// What Text writes, Parse reads.
	if got := ion.Text(1); got != "sodium chloride" {
		t.Errorf("%q", got)
	}
	if got := temperature.Text(12.5); got != "12.5" {
		t.Errorf("%q", got)
	}
}

func TestConversions(t *testing.T) {
	temperature := *in("temperature", units.Celsius, "of the sample", -10, 110, 20)
	c, err := temperature.Conversion("°F")
	if err != nil || c(68) != 20 {
		t.Errorf("%v", err)
	}
	if n := testing.AllocsPerRun(100, func() { c(68) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
	for _, unit := range []string{"", "°C", "C"} {
		if c, err := temperature.Conversion(unit); err != nil || c(68) != 68 {
			t.Errorf("%q: %v", unit, err)
		}
	}
	if _, err := temperature.Conversion("L"); err == nil || !strings.Contains(err.Error(), "°F") {
		t.Errorf("litres of heat: %v", err)
	}
	o := out("pressure", units.Kilopascal, "of the air")
	if c, err := o.Conversion("bar"); err != nil || c(100) != 1 {
		t.Errorf("%v", err)
	}
	if _, err := o.Conversion("kPa gauge"); err == nil {
		t.Error("an absolute pressure given as a gauge pressure")
	}
	p := pure("ph", "", "of the water")
	if c, err := p.Conversion(""); err != nil || c(7) != 7 {
		t.Errorf("%v", err)
	}
	if _, err := p.Conversion("mg/L"); err == nil {
		t.Error("a pH in mg/L")
	}
	h := span("time", "h", "of the boil", 0, 100, 1)
	if c, err := h.Conversion("min"); err != nil || c(90) != 1.5 {
		t.Errorf("%v", err)
	}
	if _, err := h.Conversion("fortnight"); err == nil {
		t.Error("a fortnight")
	}
}

func TestHeads(t *testing.T) {
	for _, c := range []struct{ head, name, unit string }{
		{"temperature (°F)", "temperature", "°F"},
		{" Sample temperature ( °F ) ", "Sample temperature", "°F"},
		{"pressure (kPa (gauge))", "pressure", "kPa (gauge)"},
		{"gravity", "gravity", ""},
		{"(°F)", "(°F)", ""},
	} {
		if name, unit := SplitHead(c.head); name != c.name || unit != c.unit {
			t.Errorf("%q: %q, %q", c.head, name, unit)
		}
	}
	f, err := Find("pressure_absolute_from_gauge")
	if err != nil {
		t.Fatal(err)
	}
	if i, ok := f.Input("Gauge pressure"); !ok || i != 0 {
		t.Error("a head as people write it is not found")
	}
	if _, ok := f.Output("gauge_pressure"); ok {
		t.Error("an input taken for an output")
	}
	if _, err := Find("gauge"); err == nil || !strings.Contains(err.Error(), "pressure_absolute_from_gauge") {
		t.Errorf("%v", err)
	}
}

// TestMiscounted: a wrong number of values is refused, not a panic.
func TestMiscounted(t *testing.T) {
	f, err := Find("atmosphere_at_altitude")
	if err != nil {
		t.Fatal(err)
	}
	if f.Call(nil, make([]float64, 1)) == nil || f.Call([]float64{1}, nil) == nil {
		t.Error("taken")
	}
}

// BenchmarkCall: what one row of a column costs besides reading it.
func BenchmarkCall(b *testing.B) {
	f, err := Find("pressure_absolute_from_gauge")
	if err != nil {
		b.Fatal(err)
	}
	in, out := []float64{80, 0}, make([]float64, 1)
	b.ReportAllocs()
	for b.Loop() {
		in[1] += 0.001
		if err := f.Call(in, out); err != nil {
			b.Fatal(err)
		}
	}
}

// FuzzParse: whatever text a cell holds, a function gives finite numbers or an
// error.
func FuzzParse(f *testing.F) {
	for _, text := range []string{"12.5 °C", "55 °F", "1,5", "sodium chloride", "1e308", "-0", "3 lb 4 oz", "1 h 30 min", "50 points", "12 °P"} {
		f.Add(text)
	}
	all := All()
	f.Fuzz(func(t *testing.T, text string) {
		for i := range all {
			fn := &all[i]
			for j := range fn.Inputs {
				p := &fn.Inputs[j]
				for _, parse := range []func(string) (float64, error){p.Parse, p.ParseCell} {
					v, err := parse(text)
					if err != nil {
						continue
					}
					in, out := examples(fn), make([]float64, len(fn.Outputs))
					in[j] = v
					if fn.Call(in, out) != nil {
						continue
					}
					for k, got := range out {
						if math.IsNaN(got) || math.IsInf(got, 0) {
							t.Fatalf("%s, %s = %q: %s = %v", fn.Name, p.Name, text, fn.Outputs[k].Name, got)
						}
					}
				}
			}
		}
	})
}
