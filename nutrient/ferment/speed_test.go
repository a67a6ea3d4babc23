package ferment

import (
	"math"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// The measure of all budgets.
func BenchmarkExp(b *testing.B) {
	x, sum := -1.0, 0.0
	for b.Loop() {
		sum += math.Exp(x)
		if x += 0.01; x > 1 {
			x = -1
		}
	}
	if sum == 0 {
		b.Fatal("nothing")
	}
}

// The balance of atoms and charge alone.
func BenchmarkBalance(b *testing.B) {
	m := UsualMetabolism()
	in := Substrate{Hexose: units.Kilogram.Of(1), Ammonium: units.Gram.Of(1), Phosphorus: units.Gram.Of(1), Potassium: units.Gram.Of(1)}
	b.ReportAllocs()
	for b.Loop() {
		if _, err := m.Ferment(in); err != nil {
			b.Fatal(err)
		}
	}
}

// A full ferment balance with its pH: one metabolism, to the end of the sugar.
func BenchmarkFermentBalance(b *testing.B) {
	c := check.Must(hall(material.DiammoniumPhosphate()).checked("test"))
	b.ReportAllocs()
	for b.Loop() {
		if _, err := c.rests(c.Metabolism, 1); err != nil {
			b.Fatal(err)
		}
	}
}

// The buffer that holds a floor, three times solved.
func BenchmarkBufferFor(b *testing.B) {
	f := hall(material.DiammoniumPhosphate())
	b.ReportAllocs()
	for b.Loop() {
		if _, err := f.BufferFor(material.PotassiumBicarbonate(), 3.5); err != nil {
			b.Fatal(err)
		}
	}
}

func TestHotPathsAllocateNothing(t *testing.T) {
	m := UsualMetabolism()
	in := Substrate{Hexose: units.Kilogram.Of(1), Ammonium: units.Gram.Of(1)}
	c := check.Must(hall(material.DiammoniumPhosphate()).checked("test"))
	c.rest()
	warm := units.Celsius.Of(22)
	var p water.Profile
	for what, f := range map[string]func(){
		"balance": func() { check.Must(m.Ferment(in)) },
		"pH":      func() { check.Must(c.rests(m, 1)) },
		"need":    func() { check.Must(nutrient.NeedBySugar(units.GramPerLitre.Of(80), nutrient.HighDemand)) },
		"water":   func() { p = check.Must(water.NewProfile(warm, units.CalciumCarbonate{})) },
	} {
		if n := testing.AllocsPerRun(100, f); n != 0 {
			t.Errorf("%s: %g allocations", what, n)
		}
	}
	_ = p
}
