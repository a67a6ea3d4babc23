package gravity_test

import (
	"errors"
	"fmt"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// The forms for one value are held to the published tables; the columns to them.
func TestColumnsAreTheSameToTheBit(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		n := rapid.IntRange(0, 20).Draw(t, "rows")
		temperature := celsius(rapid.Float64Range(0, 40).Draw(t, "°C"))
		w, d := make([]units.StrengthByMass, n), make([]units.Density, n)
		e, s := make([]units.Extract, n), make([]units.Density, n)
		back := make([]units.StrengthByMass, n)
		for i := range n {
			w[i] = massPct(rapid.Float64Range(0, 100).Draw(t, "% mass"))
			e[i] = plato(rapid.Float64Range(0, 80).Draw(t, "°P"))
		}
		if err := errors.Join(
			gravity.EthanolDensities(d, w, temperature),
			gravity.EthanolStrengths(back, d, temperature),
			gravity.SucroseDensities(s, e, temperature),
		); err != nil {
			t.Fatal(err)
		}
		for i := range n {
			if one := ok[units.Density](t)(gravity.EthanolDensity(w[i], temperature)); d[i] != one {
				t.Fatalf("%v: %v, alone %v", w[i], d[i], one)
			}
			if one := ok[units.StrengthByMass](t)(gravity.EthanolStrength(d[i], temperature)); back[i] != one {
				t.Fatalf("%v: %v, alone %v", d[i], back[i], one)
			}
			if one := ok[units.Density](t)(gravity.SucroseDensity(e[i], temperature)); s[i] != one {
				t.Fatalf("%v: %v, alone %v", e[i], s[i], one)
			}
		}
	})
}

func TestColumnRefusesARow(t *testing.T) {
	room, cold, hot := units.Celsius.Of(20), units.Celsius.Of(-20.5), units.Celsius.Of(100.5)
	one := make([]units.Density, 1)
	two := make([]units.Density, 2)
	for name, c := range map[string]struct {
		err                error
		text               string
		min, max           float64
		quantity, function string
	}{
		"strength at": {err: gravity.EthanolDensities(two, make([]units.StrengthByMass, 2), cold),
			quantity: "temperature", min: -20, max: 40},
		"density at": {err: gravity.EthanolStrengths(make([]units.StrengthByMass, 2), two, units.Celsius.Of(40.5)),
			quantity: "temperature", min: -20, max: 40},
		"row of strengths": {err: gravity.EthanolDensities(two, []units.StrengthByMass{massPct(5), massPct(101)}, room),
			quantity: "strength", text: "row 2: ", min: 0, max: 100},
		"row of densities": {err: gravity.EthanolStrengths(make([]units.StrengthByMass, 2),
			[]units.Density{units.KilogramPerCubicMetre.Of(990), units.KilogramPerCubicMetre.Of(700)}, room),
			quantity: "density", text: "row 2: ",
			min: ok[units.Density](t)(gravity.EthanolDensity(units.PercentMass.Of(100), room)).In(units.KilogramPerCubicMetre),
			max: ok[units.Density](t)(gravity.EthanolDensity(units.PercentMass.Of(0), room)).In(units.KilogramPerCubicMetre)},
		"sugar at": {err: gravity.SucroseDensities(two, make([]units.Extract, 2), hot),
			quantity: "temperature", min: 0, max: 100},
		"row of extracts": {err: gravity.SucroseDensities(one, []units.Extract{units.DegreePlato.Of(81)}, room),
			quantity: "extract", text: "row 1: ", min: 0, max: 80},
	} {
		r, is := errors.AsType[*units.RangeError](c.err)
		if !is || r.Quantity != c.quantity || r.Min != c.min || r.Max != c.max || r.Source == "" {
			t.Errorf("%s: %v", name, c.err)
			continue
		}
		if want := c.text + r.Error(); c.err.Error() != want {
			t.Errorf("%s: %q, not %q", name, c.err, want)
		}
	}
	for name, err := range map[string]error{
		"gravity.EthanolDensities: a column of 2 for the results of 1": gravity.EthanolDensities(two, make([]units.StrengthByMass, 1), room),
		"gravity.EthanolStrengths: a column of 0 for the results of 2": gravity.EthanolStrengths(nil, two, room),
		"gravity.SucroseDensities: a column of 1 for the results of 0": gravity.SucroseDensities(one, nil, room),
	} {
		if err == nil || err.Error() != name {
			t.Errorf("%v, not %s", err, name)
		}
	}
}

const columnRows = 64

func BenchmarkEthanolDensities(b *testing.B) {
	w, d := columnOfStrengths()
	b.ReportAllocs()
	for b.Loop() {
		if err := gravity.EthanolDensities(d, w, units.Celsius.Of(20)); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/columnRows, "ns/row")
}

func BenchmarkEthanolStrengths(b *testing.B) {
	w, d := columnOfStrengths()
	if err := gravity.EthanolDensities(d, w, units.Celsius.Of(20)); err != nil {
		b.Fatal(err)
	}
	b.ReportAllocs()
	for b.Loop() {
		if err := gravity.EthanolStrengths(w, d, units.Celsius.Of(20)); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/columnRows, "ns/row")
}

func BenchmarkSucroseDensities(b *testing.B) {
	e, d := make([]units.Extract, columnRows), make([]units.Density, columnRows)
	for i := range e {
		e[i] = plato(float64(i))
	}
	b.ReportAllocs()
	for b.Loop() {
		if err := gravity.SucroseDensities(d, e, units.Celsius.Of(20)); err != nil {
			b.Fatal(err)
		}
	}
	b.ReportMetric(float64(b.Elapsed().Nanoseconds())/float64(b.N)/columnRows, "ns/row")
}

func columnOfStrengths() ([]units.StrengthByMass, []units.Density) {
	w := make([]units.StrengthByMass, columnRows)
	for i := range w {
		w[i] = massPct(float64(i) * 1.5)
	}
	return w, make([]units.Density, columnRows)
}

func ExampleEthanolDensities() {
	strengths := []units.StrengthByMass{units.PercentMass.Of(0), units.PercentMass.Of(40), units.PercentMass.Of(100)}
	densities := make([]units.Density, len(strengths))
	if err := gravity.EthanolDensities(densities, strengths, units.Celsius.Of(20)); err != nil {
		fmt.Println(err)
		return
	}
	back := make([]units.StrengthByMass, len(strengths))
	if err := gravity.EthanolStrengths(back, densities, units.Celsius.Of(20)); err != nil {
		fmt.Println(err)
		return
	}
	for i := range densities {
		fmt.Println(densities[i].Text(units.KilogramPerCubicMetre, 2), back[i].Text(units.PercentMass, 2))
	}
	// Output:
	// 998.20 kg/m³ 0.00 % mass
	// 935.15 kg/m³ 40.00 % mass
	// 789.24 kg/m³ 100.00 % mass
}

func ExampleSucroseDensities() {
	extracts := []units.Extract{units.DegreePlato.Of(10), units.DegreePlato.Of(20)}
	densities := make([]units.Density, len(extracts))
	if err := gravity.SucroseDensities(densities, extracts, units.Celsius.Of(20)); err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(densities[0].Text(units.KilogramPerCubicMetre, 2), densities[1].Text(units.KilogramPerCubicMetre, 2))
	// Output: 1038.12 kg/m³ 1080.98 kg/m³
}
