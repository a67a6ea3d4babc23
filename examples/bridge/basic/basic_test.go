package basic

import (
	"flag"
	"os"
	"path/filepath"
	"regexp"
	"strings"
	"testing"

	"github.com/google/go-cmp/cmp"

	"example.org/zymase/examples/bridge/catalogue"
)

var update = flag.Bool("update", false, "write the golden file anew")

// some are functions whose names, units and order the catalogue promises, and
// one that stands for those with several outputs and a choice.
func some(t *testing.T) []catalogue.Function {
	t.Helper()
	var list []catalogue.Function
	for _, name := range []string{"atmosphere_at_altitude", "pressure_gauge_from_absolute"} {
		f, err := catalogue.Find(name)
		if err != nil {
			t.Fatal(err)
		}
		list = append(list, *f)
	}
	return append(list, catalogue.Function{
		Name: "sugar_for_strength", Meaning: "sugar and water for a strength",
		Inputs: []catalogue.Input{
			{Name: "volume", Unit: "L"},
			{Name: "sugar", Options: []string{"white", "invert"}, HasDefault: true},
		},
		Outputs: []catalogue.Output{
			{Name: "sugar", Unit: "kg", Meaning: "sugar to weigh"},
			{Name: "water", Unit: "L", Meaning: "water to measure"},
		},
	})
}

func TestModule(t *testing.T) {
	got, err := Module("127.0.0.1:8460", some(t))
	if err != nil {
		t.Fatal(err)
	}
	name := filepath.Join("testdata", "module.golden")
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

var declared = regexp.MustCompile(`(?m)^(?:Private )?Function (\w+)\(`)

// The whole catalogue makes a module: one function for each output, each name
// once whatever the case, none of it longer than Basic takes.
func TestWholeCatalogue(t *testing.T) {
	all := catalogue.All()
	text, err := Module("127.0.0.1:8460", all)
	if err != nil {
		t.Fatal(err)
	}
	want := strings.Count(moduleText, "Private Function ")
	for _, f := range all {
		want += len(f.Outputs)
	}
	seen := map[string]bool{}
	for _, m := range declared.FindAllStringSubmatch(string(text), -1) {
		name := strings.ToUpper(m[1])
		if seen[name] || len(name) > 100 {
			t.Errorf("the name %s", name)
		}
		seen[name] = true
	}
	if len(seen) != want {
		t.Errorf("%d functions, want %d", len(seen), want)
	}
	for i, line := range strings.Split(string(text), "\n") {
		if len(line) > 1000 {
			t.Errorf("line %d has %d bytes", i+1, len(line))
		}
	}
}

func TestOneNameTwice(t *testing.T) {
	f := some(t)
	other := f[0]
	other.Name = "sugar_for_strength_water"
	if _, err := Module("127.0.0.1:8460", append(f, other)); err == nil {
		t.Error("two functions of one name make a module")
	}
}
