package dioxide_test

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/published"
	"example.org/zymase/units"
)

// Quantities from numbers known at run time.
func celsius(v float64) units.Temperature  { return units.Celsius.Of(checked.Number(v)) }
func kpa(v float64) units.AbsolutePressure { return units.Kilopascal.Of(checked.Number(v)) }
func bar(v float64) units.AbsolutePressure { return units.Bar.Of(checked.Number(v)) }
func gramsCO2(v float64) units.CarbonDioxideContent {
	return units.GramCO2PerLitre.Of(checked.Number(v))
}
func volumes(v float64) units.CarbonDioxideVolumes { return units.VolumesCO2.Of(checked.Number(v)) }
func percent(v float64) units.Share                { return units.Percent.Of(checked.Number(v)) }
func gramsPerLitre(v float64) units.MassConcentration {
	return units.GramPerLitre.Of(checked.Number(v))
}
func volPct(v float64) units.StrengthByVolume { return units.PercentVolume.Of(checked.Number(v)) }

// A tester is a *testing.T or a *rapid.T.
type tester interface {
	Helper()
	Errorf(format string, args ...any)
	Fatal(args ...any)
}

// near reports a value that is off the wanted one by more than tol.
func near(t tester, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.12g, want %.12g, difference %.2g, tolerance %.2g", what, got, want, got-want, tol)
	}
}

// close is near with a relative tolerance.
func close(t tester, what string, got, want, tol float64) {
	t.Helper()
	near(t, what, got, want, tol*math.Abs(want))
}

// refused reports a call that did not return a RangeError about the quantity.
func refused(t tester, what string, err error, quantity string) {
	t.Helper()
	e, ok := errors.AsType[*units.RangeError](err)
	if !ok {
		t.Errorf("%s: error %v, want a RangeError", what, err)
		return
	}
	if e.Quantity != quantity {
		t.Errorf("%s: about %q (%v), want %q", what, e.Quantity, err, quantity)
	}
	if e.Func == "" || e.Source == "" {
		t.Errorf("%s: %+v names no function or source", what, e)
	}
	if l, known := limits[e.Func+": "+e.Quantity]; !known {
		t.Errorf("%s: %q: {%v, %v} is not in the list of limits", what, e.Func+": "+e.Quantity, e.Min, e.Max)
	} else if apart(e.Min, l.min) || apart(e.Max, l.max) {
		t.Errorf("%s: %v, want %v to %v", what, err, l.min, l.max)
	}
	if e.Value >= e.Min && e.Value <= e.Max {
		t.Errorf("%s: %v lies inside", what, err)
	}
}

// apart reports whether a limit is not the wanted one; a wanted NaN is any.
func apart(got, want float64) bool {
	return got != want && !(math.Abs(got-want) <= 1e-13*math.Abs(want)) && !math.IsNaN(want)
}

func ok[T any](t tester) func(T, error) T {
	return func(v T, err error) T {
		t.Helper()
		if err != nil {
			t.Fatal(err)
		}
		return v
	}
}

// table is a published table; rows is how many it must have.
func table(t *testing.T, name string, rows int) *published.Table {
	t.Helper()
	tab := ok[*published.Table](t)(published.Find(name))
	if tab.Len() != rows {
		t.Fatalf("%s has %d rows, want %d", name, tab.Len(), rows)
	}
	return tab
}

// cell is a cell of a row as a quantity.
func cell[D, E units.Dimension](t *testing.T, r published.Row, column string, like units.Unit[D, E]) units.Quantity[D, E] {
	t.Helper()
	return ok[units.Quantity[D, E]](t)(published.Value(r, column, like))
}

// within compares a computed value in the unit of the column with the printed cell.
func within(t *testing.T, tab *published.Table, r published.Row, column string, got float64) {
	t.Helper()
	tol, found := tab.Tolerance(column)
	if !found {
		t.Fatalf("%s: no tolerance for %s", tab.Name, column)
	}
	if d, fits := tol.Within(got, r.Text(column)); !fits {
		t.Errorf("%s:%d: %s printed %s, computed %.8g, difference %.2g, allowed %.2g", tab.Name, r.Line, column, r.Text(column), got, d, tol.Allow(r.Text(column)))
	}
}

var vary = math.NaN() // a limit that goes with the other inputs; tested beside them

// limits are the limits that the doc comments state, by function and quantity. Each
// refusal in the tests is held to them.
var limits = map[string]struct{ min, max float64 }{
	"dioxide.BeerChartPressure: content":         {1.5 - 1e-9, 4 + 1e-9},
	"dioxide.BeerChartPressure: temperature":     {30 - 1e-9, 60 + 1e-9},
	"dioxide.BeerChartVolumes: pressure":         {vary, vary},
	"dioxide.BeerChartVolumes: temperature":      {30 - 1e-9, 60 + 1e-9},
	"dioxide.EuropeanBeerContent: pressure":      {0.5, 5},
	"dioxide.EuropeanBeerContent: temperature":   {-1, 25},
	"dioxide.EuropeanBeerPressure: content":      {vary, vary},
	"dioxide.EuropeanBeerPressure: temperature":  {-1, 25},
	"dioxide.FugacityCoefficient: pressure":      {0, 2000},
	"dioxide.FugacityCoefficient: temperature":   {-10, 100},
	"dioxide.GasDensity: pressure":               {0, 2000},
	"dioxide.GasDensity: temperature":            {-10, 100},
	"dioxide.HenryCarroll: temperature":          {0, 160},
	"dioxide.HenryPlummerBusenberg: temperature": {-2, 90},
	"dioxide.HenryWeiss: salinity":               {0, 40},
	"dioxide.HenryWeiss: temperature":            {-1, 40},
	"dioxide.MoleFraction: pressure":             {0, 2000},
	"dioxide.MoleFraction: temperature":          {-2, 90},
	"dioxide.MoleFractionCarroll: pressure":      {0, 1000},
	"dioxide.MoleFractionCarroll: temperature":   {0, 100},
	"dioxide.SecondVirial: temperature":          {-10, 100},
	"dioxide.ThirdVirial: temperature":           {-10, 100},
	"dioxide.WineContent: pressure":              {0.5, 10},
	"dioxide.WineContent: strength":              {0, 20},
	"dioxide.WineContent: temperature":           {20, 20},
	"dioxide.WinePressure: content":              {vary, vary},
	"dioxide.WinePressure: strength":             {0, 20},
	"dioxide.WineContent: sugar":                 {0, 200},
	"dioxide.WinePressure: sugar":                {0, 200},
}
