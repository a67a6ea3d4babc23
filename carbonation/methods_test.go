package carbonation_test

import (
	"errors"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// above is how far a way lies above the first, %.
func above(list []carbonation.Comparison, way int) float64 {
	return 100 * (ok2(units.Ratio(list[way].Content, list[0].Content)) - 1)
}

func TestCompare(t *testing.T) {
	beer := ok2(carbonation.DrinkOf(volPct(5.35), plato(5.78)))
	list := ok[[]carbonation.Comparison](t)(carbonation.Compare(beer, bar(2), celsius(4)))
	if len(list) != 4 {
		t.Fatalf("%d ways", len(list))
	}
	if own := ok2(ok2(carbonation.NewLiquid(beer)).Content(bar(2), celsius(4))); list[0].Content != own || list[0].Err != nil {
		t.Errorf("own: %+v", list[0])
	}
	// The chart gives 3 to 6 % more, the European form 1.5 % more than the chart.
	near(t, "chart", above(list, 1), 4.5, 1.5)
	near(t, "European", above(list, 2), 6, 1.5)
	refused(t, "wine at 4 °C", list[3].Err, "temperature")
	list = ok[[]carbonation.Comparison](t)(carbonation.Compare(beer, bar(2), celsius(20)))
	refused(t, "chart at 20 °C", list[1].Err, "temperature")
	near(t, "wine at 20 °C", above(list, 3), -6, 1.5)
	_, err := carbonation.Compare(beer, bar(2), celsius(99))
	refused(t, "too hot", err, "temperature")
}

// Each way back is the way there, for a drink in the range of all four.
func TestMethodsRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		drink := ok2(carbonation.DrinkOf(volPct(rapid.Float64Range(0, 12).Draw(t, "strength")), plato(rapid.Float64Range(0, 10).Draw(t, "extract"))))
		for _, m := range []carbonation.Method{carbonation.InWater, carbonation.BeerChart, carbonation.EuropeanBeer, carbonation.EUWine} {
			c := rapid.Float64Range(0, 15).Draw(t, "celsius")
			if m == carbonation.EUWine {
				c = 20
			}
			p := ok[units.AbsolutePressure](t)(m.Pressure(drink, gramsCO2(rapid.Float64Range(3.5, 7.5).Draw(t, "content")), celsius(c)))
			content := ok[units.CarbonDioxideContent](t)(m.Content(drink, p, celsius(c)))
			back := ok[units.AbsolutePressure](t)(m.Pressure(drink, content, celsius(c)))
			close(t, m.String(), back.In(units.Kilopascal), p.In(units.Kilopascal), 1e-9)
		}
	})
}

func TestMethodsByName(t *testing.T) {
	drink := ok2(carbonation.DrinkOf(volPct(5), plato(3)))
	for m := carbonation.InWater; m <= carbonation.EUWine; m++ {
		text := ok[[]byte](t)(m.MarshalText())
		var back carbonation.Method
		if err := back.UnmarshalText(text); err != nil || back != m {
			t.Errorf("%s is %v, %v", text, back, err)
		}
		_, err := m.Content(drink, bar(30), celsius(20))
		if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Func != "carbonation.Method.Content" {
			t.Error(err)
		}
		_, err = m.Pressure(drink, gramsCO2(200), celsius(20))
		if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Func != "carbonation.Method.Pressure" {
			t.Error(err)
		}
	}
	unknown := carbonation.EUWine + 1
	_, content := unknown.Content(drink, bar(2), celsius(4))
	_, pressure := unknown.Pressure(drink, gramsCO2(5), celsius(4))
	_, text := unknown.MarshalText()
	for _, err := range []error{content, pressure, text, new(carbonation.Method).UnmarshalText([]byte("by eye"))} {
		if e, ok := errors.AsType[*units.NameError](err); !ok || len(e.Choices) != 4 {
			t.Error(err)
		}
	}
	spirit := ok[gravity.Solution](t)(gravity.NewSolution(units.Kilogram.Of(0.6), units.Mass{}, units.Kilogram.Of(0.4)))
	_, err := carbonation.InWater.Content(spirit, bar(2), celsius(4))
	refusedAs(t, err, "carbonation.Method.Content")
	_, err = carbonation.InWater.Pressure(spirit, gramsCO2(5), celsius(4))
	refusedAs(t, err, "carbonation.Method.Pressure")
	// The wine relation at another temperature.
	_, err = carbonation.EUWine.Pressure(drink, gramsCO2(5), celsius(19))
	refusedAs(t, err, "carbonation.Method.Pressure")
}

func refusedAs(t *testing.T, err error, fn string) {
	t.Helper()
	if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Func != fn {
		t.Error(err)
	}
}

func ok2[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}
