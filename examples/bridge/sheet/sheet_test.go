package sheet

import (
	"encoding/xml"
	"errors"
	"flag"
	"io"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/zymase/examples/bridge/catalogue"
)

var update = flag.Bool("update", false, "write the golden file anew")

// small is a sheet whose figures are defined: the standard atmosphere at sea
// level is 101.325 kPa (ISO 2533:1975).
func small() []line {
	return []line{
		heading(results),
		note(`a "note" with <marks> & more`),
		figure("Altitude", "altitude", 0, "m", 0, "of the hall"),
		{
			label: "Air", name: "air", unit: "bar", places: 3,
			function: "atmosphere_at_altitude", output: "pressure", in: "bar",
			inputs: []input{{"altitude", "altitude"}},
		},
		figure("Drink", "drink", 4, "°C", 0, ""), figure("Fizz", "fizz", 2.5, "vol CO2", 1, ""),
		{
			label: "Set to this", name: "set", unit: "kPa gauge", places: 1,
			function: "co2_beer_chart_pressure", inputs: []input{{"temperature", "drink"}, {"volumes", "fizz"}},
		},
		verdict("verdict", "co2_beer_chart_pressure", input{"temperature", "drink"}, input{"volumes", "fizz"}),
		caution("caution", "co2_beer_chart_pressure", input{"temperature", "drink"}, input{"volumes", "fizz"}),
		{
			label: "Half of it", name: "half", unit: "bar", places: 4,
			formula: "air/2", compute: func(get func(string) float64) float64 { return get("air") / 2 },
		},
	}
}

func TestGolden(t *testing.T) {
	got, err := write("127.0.0.1:8460", small())
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join("testdata", "small.golden.fods")
	if *update {
		if err := os.WriteFile(name, got, 0o666); err != nil {
			t.Fatal(err)
		}
	}
	want, err := os.ReadFile(name)
	if err != nil {
		t.Fatal(err)
	}
	if diff := cmp.Diff(string(want), string(got)); diff != "" {
		t.Error(diff)
	}
}

func TestNoAnswer(t *testing.T) {
	for name, change := range map[string]func(*line){
		"out of range":    func(l *line) { v := 99999.0; l.value = &v },
		"unknown name":    func(l *line) { l.name = "height" },
		"text for number": func(l *line) { l.value, l.text = nil, "high" },
	} {
		lines := small()
		change(&lines[2])
		if _, err := write("127.0.0.1:8460", lines); err == nil || !strings.Contains(err.Error(), "line 4, Air") {
			t.Errorf("%s: %v", name, err)
		}
	}
	lines := small()
	lines[3].unit = "kPa"
	if _, err := write("127.0.0.1:8460", lines); err == nil {
		t.Error("a unit that is not that of the answer")
	}
}

// The sheet of the batch has an answer for each question, is well-formed XML,
// and asks the catalogue's functions only.
func TestBatch(t *testing.T) {
	text, err := Write("127.0.0.1:8460")
	if err != nil {
		t.Fatal(err)
	}
	d := xml.NewDecoder(strings.NewReader(string(text)))
	for {
		if _, err := d.Token(); errors.Is(err, io.EOF) {
			break
		} else if err != nil {
			t.Fatal(err)
		}
	}
	cells, err := solve("127.0.0.1:8460", batch())
	if err != nil {
		t.Fatal(err)
	}
	names := map[string]bool{}
	asked := 0
	for _, c := range cells {
		if c.name == "" {
			continue
		}
		if names[c.name] || c.name == addressName {
			t.Errorf("two cells are named %s", c.name)
		}
		names[c.name] = true
		if c.function == "" {
			continue
		}
		asked++
		f, err := catalogue.Find(c.function)
		if err != nil {
			t.Error(err)
			continue
		}
		for _, in := range c.inputs {
			i, ok := f.Input(in.name)
			if !ok {
				t.Errorf("%s has no input %s", f.Name, in.name)
				continue
			}
			if !names[in.cell] {
				t.Errorf("%s: no cell before it is named %s", c.label, in.cell)
			}
			for _, from := range cells { // the cell is in the unit that the function takes for a bare number
				if from.name == in.cell && from.text == "" && from.unit != f.Inputs[i].Unit {
					t.Errorf("%s: the cell %s is in %q, the input %s in %q", c.label, in.cell, from.unit, in.name, f.Inputs[i].Unit)
				}
			}
		}
	}
	if asked == 0 {
		t.Error("no cell asks the bridge")
	}
}
