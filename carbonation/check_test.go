package carbonation_test

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/published"
	"example.org/zymase/units"
)

// Quantities from numbers known at run time.
func celsius(v float64) units.Temperature    { return units.Celsius.Of(checked.Number(v)) }
func kpa(v float64) units.AbsolutePressure   { return units.Kilopascal.Of(checked.Number(v)) }
func bar(v float64) units.AbsolutePressure   { return units.Bar.Of(checked.Number(v)) }
func barGauge(v float64) units.GaugePressure { return units.BarGauge.Of(checked.Number(v)) }
func gramsCO2(v float64) units.CarbonDioxideContent {
	return units.GramCO2PerLitre.Of(checked.Number(v))
}
func litre(v float64) units.Volume  { return units.Litre.Of(checked.Number(v)) }
func percent(v float64) units.Share { return units.Percent.Of(checked.Number(v)) }
func gramsPerLitre(v float64) units.MassConcentration {
	return units.GramPerLitre.Of(checked.Number(v))
}
func volPct(v float64) units.StrengthByVolume { return units.PercentVolume.Of(checked.Number(v)) }
func plato(v float64) units.Extract           { return units.DegreePlato.Of(checked.Number(v)) }
func metre(v float64) units.Length            { return units.Metre.Of(checked.Number(v)) }

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

// The drink of the examples: 4.6 % vol, dry.
func seltzer(t tester) gravity.Solution {
	t.Helper()
	return ok[gravity.Solution](t)(carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.DegreePlato.Of(0.5)))
}

func liquid(t tester, strength, extract float64) carbonation.Liquid {
	t.Helper()
	s := ok[gravity.Solution](t)(carbonation.DrinkOf(volPct(strength), plato(extract)))
	return ok[carbonation.Liquid](t)(carbonation.NewLiquid(s))
}

func kg(v float64) units.Mass { return units.Kilogram.Of(checked.Number(v)) }

func ppm(x float64) units.Share { return units.PartPerMillion.Of(checked.Number(x)) }
