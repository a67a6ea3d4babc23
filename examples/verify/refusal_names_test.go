package main

import (
	"encoding/json"
	"fmt"
	"go/ast"
	"go/parser"
	"go/token"
	"io/fs"
	"maps"
	"os"
	"os/exec"
	"path"
	"path/filepath"
	"slices"
	"strings"
	"testing"

	checks "example.org/zymase/internal/check"
)

const module = "example.org/zymase"

// Generic functions cannot be taken by their name alone; each is called for one dimension.
var generic = map[string]string{
	"units.At":         "func(x units.Trial, m *units.MeasuredMass) units.Mass { return units.At(x, m) }",
	"units.Budget":     "func(f func(units.Trial) (units.Mass, error), in ...units.Input) ([]units.Mass, error) { return units.Budget(f, in...) }",
	"units.CrossCheck": "func(c ...units.MeasuredMass) (units.MeasuredMass, []float64, error) { return units.CrossCheck(c...) }",
	"units.Limited":    "func(v units.Temperature, u units.TemperatureDifference) (units.MeasuredTemperature, error) { return units.Limited(v, u) }",
	"units.Measure":    "func(v units.Temperature, u units.TemperatureDifference) (units.MeasuredTemperature, error) { return units.Measure(v, u) }",
	"units.Parse":      "units.Parse[units.Temperature]",
	"units.ParseExact": "units.ParseExact[units.Mass]",
	"units.Propagate": "func(f func(units.Trial) (units.Mass, error), in ...units.Input) (units.MeasuredMass, error) { return " +
		"units.Propagate(f, in...) }",
	"units.Ratio":  "func(a, b units.Mass) (float64, error) { return units.Ratio(a, b) }",
	"units.ReadTo": "func(v units.Temperature, u units.TemperatureDifference) (units.MeasuredTemperature, error) { return units.ReadTo(v, u) }",
	"units.Simulate": "func(f func(units.Trial) (units.Mass, error), n int, seed uint64, in ...units.Input) (units.MeasuredMass, int, error) " +
		"{ return units.Simulate(f, n, seed, in...) }",
	"units.Times":    "func(m units.Mass) units.Mass { return units.Times(m, 2) }",
	"units.TryTimes": "func(m units.Mass, k float64) (units.Mass, error) { return units.TryTimes(m, k) }",
}

// What the walk does not meet, with the reason.
var neverSeen = map[string]string{
	"no answer: gravity.NewYield":                      "five masses that must balance",
	"no answer: gravity.Refractometer":                 "three readings that must fit, each with a small uncertainty",
	"no error: carbonation.Caution.MarshalText":        "always nil, for encoding",
	"no error: carbonation.Cautions.MarshalText":       "always nil, for encoding",
	"no error: carbonation.Verdict.MarshalText":        "always nil, for encoding",
	"no error: gravity.Fermentation.RefractometerBrix": "a state that exists has a reading, where it is not far beyond a brewer's",
	"no error: gravity.Gravity.AppendText":             "always nil, for encoding",
	"no error: gravity.Gravity.MarshalText":            "always nil, for encoding",
	"no error: gravity.Solution.AddWater": "more water goes into every liquid of the " +
		"walk, and no mass of it is negative",
	"no error: gravity.Solution.MarshalJSON":                                           "a liquid that exists has masses that can be written",
	"name: gravity.Fermentation.UnmarshalJSON says \"gravity.Yield.UnmarshalJSON\"":    "the yield within it refuses itself",
	"name: gravity.Fermentation.MarshalJSON says \"units.Quantity.MarshalText\"":       "the yield within it refuses itself",
	"name: water.CO2Loss.MarshalJSON says \"units.Quantity.MarshalText\"":              "a pressure below zero, which no function makes, refuses itself",
	"no answer: mash.Mash.WithBase":                                                    "a mash below the pH wanted",
	"no answer: water.Series.MarshalJSON":                                              "always an error: it cannot be written",
	"no error: water.Profile.MarshalJSON":                                              "a profile that exists can be written",
	"no error: water.Residual.MarshalJSON":                                             "a residual that exists can be written",
	"no error: water.Sold.MarshalJSON":                                                 "an acid that exists can be written",
	"name: carbonation.Comparison.MarshalJSON says \"units.Quantity.MarshalText\"":     "a field below zero, which Compare does not make, refuses itself",
	"name: gravity.Progress.MarshalJSON says \"units.Quantity.MarshalText\"":           "a field below zero, which At does not make, refuses itself",
	"no error: gravity.Solution.Remaining":                                             "a share above 100 % comes of a sum alone",
	"no error: gravity.Solution.Take":                                                  "a share above 100 % comes of a sum alone",
	"no error: units.Atmosphere.MarshalText":                                           "always nil, for encoding",
	"no error: units.Budget":                                                           "refuses what its function refuses; those of the walk refuse nothing",
	"no error: units.Measured.MarshalText":                                             "refuses only a value that is a difference below zero",
	"no error: units.Propagate":                                                        "refuses what its function refuses; those of the walk refuse nothing",
	"no error: units.Unit.MarshalText":                                                 "always nil, for encoding",
	"no answer: kinetics.Forecast.UnmarshalJSON":                                       "the texts of the walk are none of a forecast",
	"no error: kinetics.Fit.When":                                                      "a forecast leaves room for any share within 90 days",
	"no error: kinetics.Pace.When":                                                     "a pace that NewPace makes nearly always ends",
	"name: carbonation.Comparison.MarshalJSON says \"carbonation.Method.MarshalText\"": "the method within it refuses itself",
	"name: gravity.Yield.MarshalJSON says \"units.Quantity.MarshalText\"":              "a mass below zero, which no function makes, refuses itself",
	"name: must.Aim.MarshalJSON says \"water.Acid.MarshalText\"":                       "the acid within it refuses itself",
	"name: must.Constituent.MarshalJSON says \"evidence.Evidence.MarshalText\"":        "the evidence within it refuses itself",
	"name: must.Constituent.MarshalJSON says \"units.Quantity.MarshalText\"":           "a content below zero, which no function makes, refuses itself",
	"name: sugar.Fermentable.WithDensity says \"material.Material.WithDensity\"":       "the method is its material's own",
	"name: sugar.Fermentable.MarshalJSON says \"material.Material.MarshalJSON\"":       "the method is its material's own",
	"name: sugar.Fermentable.MarshalText says \"material.Material.MarshalText\"":       "the method is its material's own",
	"name: sugar.Fermentable.UnmarshalText says \"material.Material.UnmarshalText\"":   "the method is its material's own",
	"name: water.DrinkingLimit.MarshalJSON says \"water.Authority.MarshalText\"":       "the authority within it refuses itself",
	"name: water.DrinkingLimit.MarshalJSON says \"units.Quantity.MarshalText\"":        "a limit below zero, which no table has, refuses itself",
	"name: sugar.Basis.MarshalJSON says \"units.Quantity.MarshalText\"":                "a figure below zero, which no function makes, refuses itself",
	"no answer: carbonation.ClosedVessel.MarshalJSON":                                  "always an error: it cannot be written",
	"no answer: carbonation.Liquid.MarshalJSON":                                        "always an error: it cannot be written",
	"no answer: kinetics.Fit.MarshalJSON":                                              "always an error: it cannot be written",
	"no answer: water.Bound.MarshalJSON":                                               "always an error: it cannot be written",
	"no answer: water.Bound.UnmarshalJSON":                                             "always an error: it cannot be written",
	"no answer: kinetics.Fit.When":                                                     "a fit of a pace is not among the values of the walk",
	"no answer: kinetics.Pace.MarshalJSON":                                             "a pace is not among the values of the walk",
	"no answer: kinetics.Pace.UnmarshalJSON":                                           "a pace is not among the values of the walk",
	"not a number: water.Acid.TitratedTo":                                              "a convention as given; what titrates by it refuses it",
	"no answer: ferment.Tank.Correct":                                                  "a ferment that can be computed, and two pH that fit it",
	"no answer: kinetics.NewPace": "a start of three contents that must each be " +
		"a ferment's, and temperatures in order",
	"no answer: kinetics.Pace.When": "a pace is not among the values of the walk",
}

// A refusal names the function that the caller wrote, whichever it is: a program calls each
// public function and method with good and bad values, and prints what is wrong. None
// panics and none returns NaN.
func TestRefusalsNameTheFunctionCalled(t *testing.T) {
	if testing.Short() {
		t.Skip("builds a program and runs it for a quarter of a minute")
	}
	root, err := filepath.Abs("../..")
	if err != nil {
		t.Fatal(err)
	}
	dir := t.TempDir()
	table := filepath.Join(dir, "table.go")
	if err := os.WriteFile(table, []byte(walkTable(t, root)), 0o644); err != nil {
		t.Fatal(err)
	}
	over, err := json.Marshal(map[string]any{"Replace": map[string]string{
		filepath.Join(root, "examples/verify/testdata/walk/table.go"): table,
	}})
	if err != nil {
		t.Fatal(err)
	}
	overlay := filepath.Join(dir, "overlay.json")
	if err := os.WriteFile(overlay, over, 0o644); err != nil {
		t.Fatal(err)
	}
	program := filepath.Join(dir, "walk") // each seed is another walk
	if out, err := exec.Command("go", "build", "-overlay", overlay, "-o", program, "./testdata/walk").CombinedOutput(); err != nil {
		t.Fatalf("%v\n%s", err, out)
	}
	runs, rounds, few := 1, 15, 40 // few are what it misses by chance
	if checks.IsWhole() {
		runs, rounds, few = 2, 50, 6
	}
	met := map[string]int{}
	for seed := range runs {
		out, err := exec.Command(program, fmt.Sprint(seed), fmt.Sprint(rounds)).CombinedOutput()
		if err != nil {
			t.Fatalf("%v\n%s", err, out)
		}
		for line := range strings.Lines(string(out)) {
			met[strings.TrimSpace(line)]++
		}
	}
	var missed []string // by chance: the walk is another one whenever a function is added
	for _, line := range slices.Sorted(maps.Keys(met)) {
		switch {
		case neverSeen[line] != "":
		case !strings.HasPrefix(line, "no "):
			t.Error(line)
		case met[line] == runs:
			missed = append(missed, line)
		}
	}
	if len(missed) > few {
		t.Errorf("the walk no longer meets %d: %q", len(missed), missed)
	}
}

// walkTable lists the public functions, values and types as Go.
func walkTable(t *testing.T, root string) string {
	t.Helper()
	var imports, functions, values, types strings.Builder
	files := token.NewFileSet()
	err := filepath.WalkDir(root, func(dir string, d fs.DirEntry, err error) error {
		if err != nil || !d.IsDir() || dir == root {
			return err
		}
		switch d.Name() {
		case "examples", "internal", "testdata":
			return filepath.SkipDir
		}
		if strings.HasPrefix(d.Name(), ".") {
			return filepath.SkipDir
		}
		names, err := filepath.Glob(filepath.Join(dir, "*.go"))
		if err != nil {
			return err
		}
		rel, err := filepath.Rel(root, dir)
		if err != nil {
			return err
		}
		pkg := path.Base(dir)
		for i, name := range names {
			if i == 0 {
				fmt.Fprintf(&imports, "\t%q\n", path.Join(module, filepath.ToSlash(rel)))
			}
			if strings.HasSuffix(name, "_test.go") {
				continue
			}
			f, err := parser.ParseFile(files, name, nil, 0)
			if err != nil {
				return err
			}
			for _, decl := range f.Decls {
				switch decl := decl.(type) {
				case *ast.FuncDecl:
					full := pkg + "." + decl.Name.Name
					if decl.Recv != nil || !decl.Name.IsExported() {
						continue
					}
					expr := full
					if decl.Type.TypeParams != nil {
						if expr = generic[full]; expr == "" {
							t.Errorf("%s is generic: give it a dimension here", full)
							continue
						}
					}
					fmt.Fprintf(&functions, "\t{%q, %s},\n", full, expr)
				case *ast.GenDecl:
					for _, spec := range decl.Specs {
						switch spec := spec.(type) {
						case *ast.ValueSpec:
							for _, n := range spec.Names {
								if n.IsExported() {
									fmt.Fprintf(&values, "\t{%q, %s.%s},\n", pkg+"."+n.Name, pkg, n.Name)
								}
							}
						case *ast.TypeSpec:
							if _, isInterface := spec.Type.(*ast.InterfaceType); spec.Name.IsExported() && spec.TypeParams == nil && !isInterface {
								fmt.Fprintf(&types, "\treflect.TypeFor[%s.%s](),\n", pkg, spec.Name.Name)
							}
						}
					}
				}
			}
		}
		return nil
	})
	if err != nil {
		t.Fatal(err)
	}
	return fmt.Sprintf("package main\n\nimport (\n\t\"reflect\"\n%s)\n\nconst module = %q\n\nvar functions = []entry{\n%s}\n\nvar values = "+
		"[]entry{\n%s}\n\nvar types = []reflect.Type{\n%s}\n",
		imports.String(), module, functions.String(), values.String(), types.String())
}
