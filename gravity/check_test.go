package gravity_test

import (
	"errors"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Quantities from numbers known at run time.
func celsius(v float64) units.Temperature    { return units.Celsius.Of(checked.Number(v)) }
func massPct(v float64) units.StrengthByMass { return units.PercentMass.Of(checked.Number(v)) }
func volPct(v float64) units.StrengthByVolume {
	return units.PercentVolume.Of(checked.Number(v))
}
func plato(v float64) units.Extract             { return units.DegreePlato.Of(checked.Number(v)) }
func kg(v float64) units.Mass                   { return units.Kilogram.Of(checked.Number(v)) }
func kgm3(v float64) units.Density              { return units.KilogramPerCubicMetre.Of(checked.Number(v)) }
func litre(v float64) units.Volume              { return units.Litre.Of(checked.Number(v)) }
func percent(v float64) units.Share             { return units.Percent.Of(checked.Number(v)) }
func mgL(v float64) units.MassConcentration     { return units.MilligramPerLitre.Of(checked.Number(v)) }
func gCO2(v float64) units.CarbonDioxideContent { return units.GramCO2PerLitre.Of(checked.Number(v)) }
func pure(v float64) units.PureNumber           { return units.One.Of(checked.Number(v)) }
func kcalOf(v float64) units.Energy             { return units.Kilocalorie.Of(checked.Number(v)) }

// A tester is a *testing.T or a *rapid.T.
type tester interface {
	Helper()
	Errorf(format string, args ...any)
	Fatal(args ...any)
}

// near reports a value that is off the printed one by more than tol.
func near(t tester, what string, got, want, tol float64) {
	t.Helper()
	if !(math.Abs(got-want) <= tol) {
		t.Errorf("%s: got %.10g, printed %.10g, difference %.2g, tolerance %.2g", what, got, want, got-want, tol)
	}
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
}

// newYield is gravity.NewYield of a kilogram of extract.
func newYield(ethanol, co2, biomass, residue, water float64) (gravity.Yield, error) {
	return gravity.NewYield(kg(1), gravity.Fermented{Ethanol: kg(ethanol), CO2: kg(co2), Biomass: kg(biomass), Residue: kg(residue), Water: kg(water)})
}

// unknown reports a call that did not return a NameError about what is named.
func unknown(t tester, err error, what string) {
	t.Helper()
	if e, ok := errors.AsType[*units.NameError](err); !ok || e.What != what || e.Func == "" || len(e.Choices) == 0 {
		t.Errorf("error %v, want a NameError about a %s", err, what)
	}
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

// solution is a liquid of so many kilograms of each.
func solution(t tester, water, extract, ethanol float64) gravity.Solution {
	t.Helper()
	return ok[gravity.Solution](t)(gravity.NewSolution(kg(water), kg(extract), kg(ethanol)))
}
