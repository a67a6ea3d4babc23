package units_test

import (
	"errors"
	"go/ast"
	"go/importer"
	"go/parser"
	"go/token"
	"go/types"
	"io"
	"os"
	"os/exec"
	"strings"
	"testing"
)

// exported opens the package as the compiler left it for those who import it, which
// takes a tenth of the time of reading it and all below it from source.
func exported(t *testing.T) importer.Lookup {
	t.Helper()
	out, err := exec.Command("go", "list", "-export", "-deps", "-f", "{{.ImportPath}} {{.Export}}", ".").Output()
	if err != nil {
		if errors.Is(err, exec.ErrNotFound) || errors.Is(err, errors.ErrUnsupported) {
			t.Skip("no go command here, and no compiled package to check against")
		}
		t.Fatalf("go list: %v", err)
	}
	files := map[string]string{}
	for line := range strings.Lines(string(out)) {
		path, file, _ := strings.Cut(strings.TrimSpace(line), " ")
		files[path] = file
	}
	return func(path string) (io.ReadCloser, error) { return os.Open(files[path]) }
}

// Mistakes that the compiler must refuse, each beside a right form that it takes.
// want is a part of the message.
func TestWhatMustNotCompile(t *testing.T) {
	fset := token.NewFileSet()
	config := types.Config{Importer: importer.ForCompiler(fset, "gc", exported(t))}
	check := func(body string) error {
		src := "package outside\n\nimport \"example.org/zymase/units\"\n\nfunc _(mass units.Mass, volume units.Volume, t units.Temperature, " +
			"gauge units.GaugePressure, x float64) {\n" + body + "\n}\n"
		f, err := parser.ParseFile(fset, "outside.go", src, 0)
		if err != nil {
			t.Fatalf("%s: %v", body, err)
		}
		_, err = config.Check("example.com/outside", fset, []*ast.File{f}, nil)
		return err
	}
	for _, c := range []struct{ wrong, right, want string }{
		{"_ = mass.Plus(volume)", "_ = mass.Plus(mass)", "cannot use volume"},
		{"_ = mass.Minus(volume)", "_ = mass.Minus(mass)", "cannot use volume"},
		{"_ = mass.Compare(volume)", "_ = mass.Compare(mass)", "cannot use volume"},
		{"_ = mass == volume", "_ = mass == mass", "mismatched types"},
		{"_ = mass.Plus(3)", "_ = mass.Plus(units.Kilogram.Of(3))", "cannot use 3"},
		{"_ = mass + mass", "_ = mass.Plus(mass)", "operator + not defined"},
		{"_ = mass * 2", "_ = units.Times(mass, 2)", "mismatched types"},
		{"_ = units.Mass(volume)", "_ = units.Mass(mass)", "cannot convert volume"},
		{"_ = units.Mass(4.2)", "_ = units.Kilogram.Of(4.2)", "cannot convert 4.2"},
		{"_ = float64(mass)", "_ = mass.In(units.Kilogram)", "cannot convert mass"},
		{"_ = units.Mass{4.2}", "_ = units.Mass{}", "implicit assignment to unexported field"},
		{"_ = mass.In(units.Litre)", "_ = mass.In(units.Pound)", "cannot use units.Litre"},
		{"_ = mass.Text(units.Litre, 1)", "_ = mass.Text(units.Gram, 1)", "cannot use units.Litre"},
		{"_ = t.Plus(t)", "_ = t.Plus(units.KelvinDifference.Of(5))", "cannot use t"},
		{"_ = t.Plus(units.Celsius.Of(5))", "_ = t.Plus(t.Minus(units.Celsius.Of(5)))", "cannot use units.Celsius.Of(5)"},
		{"var _ units.Temperature = t.Minus(t)", "var _ units.TemperatureDifference = t.Minus(t)", "cannot use t.Minus(t)"},
		{"_ = units.Times(t, 2)", "_ = units.Times(t.Minus(t), 2)", "does not match"},
		{"_ = units.Times(mass, x)", "_, _ = units.TryTimes(mass, x)", "cannot use x"},
		{"_ = mass.In(x)", "_ = mass.In(units.Gram)", "cannot use x"},
		{"_ = mass.In(\"g\")", "g, _ := units.Kilogram.Find(\"g\"); _ = mass.In(g)", "cannot use \"g\""},
		{"units.Kilogram = units.Gram", "_ = units.Kilogram", ""}, // the message is about the selector
		{"_ = &units.Kilogram", "u := units.Kilogram; _ = &u", "cannot take address"},
		{"var _ = units.Kilogram == units.Litre", "var _ = units.Kilogram == units.Gram", "mismatched types"},
		{"_ = units.Unit[int, int](0)", "_ = units.Kilogram", "does not satisfy"},
		{"v := units.PercentVolume.Of(60); _ = v.Plus(v)", "v := units.PercentVolume.Of(60); _ = v.Plus(units.PercentagePoint.Of(2))", "cannot use v"},
		{"v := units.PercentVolume.Of(60); _ = units.Times(v, 2)", "v := units.PercentVolume.Of(60); _ = units.Times(v.Minus(v), 2)", "does not match"},
		{"var _ units.StrengthByVolume = units.PercentVolume.Of(5).Minus(units.PercentVolume.Of(4))",
			"var _ units.PercentagePoints = units.PercentVolume.Of(5).Minus(units.PercentVolume.Of(4))", "cannot use"},
		{"_, _ = units.Ratio(mass, volume)", "_, _ = units.Ratio(mass, mass)", "does not match"},
		{"var _ units.AbsolutePressure = gauge", "var _ units.GaugePressure = gauge", "cannot use gauge"},
		{"_ = units.AbsolutePressure(gauge)", "_, _ = units.Atmosphere{}.Absolute(gauge)", "cannot convert gauge"},
		{"_ = gauge.In(units.PSI)", "_ = gauge.In(units.PSIGauge)", "cannot use units.PSI"},
		{"_ = units.Atmosphere{}.Gauge(gauge)", "_ = units.Atmosphere{}.Gauge(units.Bar.Of(2))", "cannot use gauge"},
		{"var _ units.StrengthByMass = units.PercentVolume.Of(5)", "var _ units.StrengthByVolume = units.PercentVolume.Of(5)",
			"cannot use units.PercentVolume.Of(5)"},
		{"_ = units.StrengthByMass(units.PercentVolume.Of(5))", "_ = units.StrengthByMass(units.PercentMass.Of(5))", "cannot convert units.PercentVolume.Of(5)"},
		{"var _ units.CalciumCarbonate = units.MilligramPerLitre.Of(50)", "var _ units.CalciumCarbonate = units.MilligramPerLitreCaCO3.Of(50)", "cannot use"},
		{"var _ units.EquivalentConcentration = units.MilligramPerLitre.Of(50)", "var _ units.EquivalentConcentration = units.MilliequivalentPerLitre.Of(50)",
			"cannot use"},
		{"var _ units.MassConcentration = units.MillimolePerLitre.Of(50)", "var _ units.MassConcentration = units.GramPerLitre.Of(50)", "cannot use"},
		{"var _ units.CarbonDioxideContent = units.VolumesCO2.Of(2.5)", "var _ units.CarbonDioxideContent = units.GramCO2PerLitre.Of(5)", "cannot use"},
		{"var _ units.Mass = units.GramAnhydrous.Of(5)", "var _ units.Mass = units.Gram.Of(5)", "cannot use"},
		{"var _ units.Share = units.DegreePlato.Of(5)", "var _ units.Share = units.Percent.Of(5)", "cannot use"},
		{"_ = units.Kilogram.Of(x)", "_, _ = units.Kilogram.Try(x)", "cannot use x"},
		{"_ = units.Kilogram.Of(x * 2)", "_, _ = units.Kilogram.Try(x * 2)", "cannot use x"},
		{"var u units.Unit = units.Kilogram; _ = u", "u := units.Kilogram; _ = u", "without instantiation"},
		{"_ = units.Quantity[string, string]{}", "_ = units.Mass{}", "does not satisfy"},
		{"m, _ := units.Measure(mass, volume); _ = m", "m, _ := units.Measure(mass, mass); _ = m", "does not match"},
		{"m, _ := units.Measure(t, t); _ = m", "m, _ := units.Measure(t, t.Minus(t)); _ = m", "does not match"},
		{"e, _ := units.ParseExact[units.Mass](\"1 kg\"); f, _ := units.ParseExact[units.Volume](\"1 L\"); _, _ = e.Plus(f)",
			"e, _ := units.ParseExact[units.Mass](\"1 kg\"); _, _ = e.Plus(e)", "cannot use f"},
		{"m, _ := units.Parse[units.Mass](\"1 kg\"); var _ units.Volume = m", "m, _ := units.Parse[units.Mass](\"1 kg\"); var _ units.Mass = m", "cannot use m"},
		{"var _ units.ExactMass = mass", "var _, _ = mass.Round(units.ExactMass{}, units.Nearest)", "cannot use mass"},
	} {
		if err := check(c.right); err != nil {
			t.Errorf("%s: does not compile: %v", c.right, err)
		}
		switch err := check(c.wrong); {
		case err == nil:
			t.Errorf("%s: compiles", c.wrong)
		case !strings.Contains(err.Error(), c.want):
			t.Errorf("%s: refused with %q, want %q", c.wrong, err, c.want)
		}
	}
}
