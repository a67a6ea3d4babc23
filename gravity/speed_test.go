package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// The inputs of the benchmarks vary, so that nothing is predicted.
func strengths(n int) []units.StrengthByMass {
	s := make([]units.StrengthByMass, n)
	for i := range s {
		s[i] = units.PercentMass.Of(checked.Number(float64(i*37%n) / float64(n) * 100))
	}
	return s
}

func temperatures(n int, lo, hi float64) []units.Temperature {
	s := make([]units.Temperature, n)
	for i := range s {
		s[i] = units.Celsius.Of(checked.Number(lo + (hi-lo)*float64(i*61%n)/float64(n)))
	}
	return s
}

var sink float64

func BenchmarkMathExp(b *testing.B) {
	b.ReportAllocs()
	var xs [256]float64
	for i := range xs {
		xs[i] = float64(i*37%256)/64 - 2
	}
	i, s := 0, 0.0
	for b.Loop() {
		s += math.Exp(xs[i&255])
		i++
	}
	sink = s
}

func BenchmarkEthanolDensity(b *testing.B) {
	b.ReportAllocs()
	w, t := strengths(256), temperatures(256, -20, 40)
	i := 0
	for b.Loop() {
		d, _ := gravity.EthanolDensity(w[i&255], t[i&255])
		sink += d.In(units.KilogramPerCubicMetre)
		i++
	}
}

func BenchmarkEthanolStrength(b *testing.B) {
	b.ReportAllocs()
	w, t := strengths(256), temperatures(256, -20, 40)
	d := make([]units.Density, 256)
	for i := range d {
		d[i], _ = gravity.EthanolDensity(w[i], t[i])
	}
	i := 0
	for b.Loop() {
		p, _ := gravity.EthanolStrength(d[i&255], t[i&255])
		sink += p.In(units.PercentMass)
		i++
	}
}

func extracts(n int) []units.Extract {
	s := make([]units.Extract, n)
	for i := range s {
		s[i] = units.DegreePlato.Of(checked.Number(float64(i*37%n) / float64(n) * 80))
	}
	return s
}

func BenchmarkSucroseDensity(b *testing.B) {
	b.ReportAllocs()
	e, t := extracts(256), temperatures(256, 0, 100)
	i := 0
	for b.Loop() {
		d, _ := gravity.SucroseDensity(e[i&255], t[i&255])
		sink += d.In(units.KilogramPerCubicMetre)
		i++
	}
}

func BenchmarkSucroseExtract(b *testing.B) {
	b.ReportAllocs()
	e, t := extracts(256), temperatures(256, 0, 100)
	d := make([]units.Density, 256)
	for i := range d {
		d[i], _ = gravity.SucroseDensity(e[i], t[i])
	}
	i := 0
	for b.Loop() {
		x, _ := gravity.SucroseExtract(d[i&255], t[i&255])
		sink += x.In(units.DegreePlato)
		i++
	}
}
