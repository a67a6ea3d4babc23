package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/rival"
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

// What a plan or a column of a sheet calls many times allocates nothing.
func TestNoAllocations(t *testing.T) {
	w, e, c := massPct(5), plato(12), celsius(18)
	d, _ := gravity.EthanolDensity(w, c)
	s, _ := gravity.NewSolution(kg(90), kg(5), kg(4))
	y := gravity.SugarWashYield(gravity.AsSucrose)
	g := s.Gravity()
	r, _ := gravity.Hydrometer{}.Reading(s, c)
	for name, f := range map[string]func(){
		"water":     func() { _, _ = gravity.WaterDensity(c) },
		"ethanol":   func() { _, _ = gravity.EthanolDensity(w, c) },
		"strength":  func() { _, _ = gravity.EthanolStrength(d, c) },
		"by volume": func() { _ = gravity.ByMass(gravity.ByVolume(w)) },
		"sucrose":   func() { d, _ := gravity.SucroseDensity(e, c); _, _ = gravity.SucroseExtract(d, c) },
		"sugar":     func() { _, _ = gravity.AsGlucose.Density(e, c) },
		"gravity":   func() { g, _ := gravity.FromExtract(e); _ = g.Extract(); _ = g.SG(); _ = g.Density() },
		"reference": func() { _, _ = g.As(gravity.At60F, gravity.InAir); _ = g.Baume() },
		"index": func() {
			n, _ := gravity.RefractiveIndex(e)
			_, _ = gravity.BrixFromIndex(n)
			_, _ = s.RefractiveIndex()
		},
		"solution": func() {
			_ = s.Gravity()
			_ = s.ByVolume()
			_, _ = s.Volume(c)
			o, _ := s.AddWater(kg(1))
			o, _ = o.Plus(s)
			_, _, _ = o.Ferment(kg(1), y)
		},
		"hydrometer":   func() { _, _ = gravity.Hydrometer{}.Correct(r, volPct(5), c) },
		"fermentation": func() { _, _ = gravity.FromOriginalAndApparent(e, plato(2), y) },
		"balling":      func() { _, _ = rival.OriginalExtractBalling(w, e); _, _ = rival.StrengthBalling(e, plato(2)) },
		"scale":        func() { _, _ = rival.BrixNBS(1.05) },
		"energy":       func() { _ = label.EnergyEU(s) },
		"drinks":       func() { _, _ = label.DrinkUS.Count(volPct(5), litre(1)) },
	} {
		if n := testing.AllocsPerRun(20, f); n != 0 {
			t.Errorf("%s: %v allocations", name, n)
		}
	}
}

func BenchmarkSolutionGravity(b *testing.B) {
	b.ReportAllocs()
	s, _ := gravity.NewSolution(kg(90), kg(5), kg(4))
	for b.Loop() {
		sink += s.Gravity().SG()
	}
}

func BenchmarkGravityExtract(b *testing.B) {
	b.ReportAllocs()
	gs := make([]gravity.Gravity, 256)
	for i := range gs {
		gs[i], _ = gravity.FromSG(0.99 + float64(i*37%256)/2000)
	}
	i := 0
	for b.Loop() {
		sink += gs[i&255].Extract().In(units.DegreePlato)
		i++
	}
}

func BenchmarkFermentation(b *testing.B) {
	b.ReportAllocs()
	y := gravity.SugarWashYield(gravity.AsSucrose)
	for b.Loop() {
		f, _ := gravity.FromOriginalAndApparent(plato(10), plato(1), y)
		sink += f.RealExtract().In(units.DegreePlato)
	}
}
