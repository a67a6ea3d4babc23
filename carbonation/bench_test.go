package carbonation

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Inputs that vary, so that no branch or value is predicted: temperatures from 0
// to 40 °C, pressures from 100 to 500 kPa.
func varying() (ts [256]units.Temperature, ps [256]units.AbsolutePressure, xs [256]float64) {
	for i := range ts {
		u := math.Mod(float64(i)*0.6180339887, 1)
		ts[i] = units.Celsius.Of(checked.Number(40 * u))
		ps[i] = units.Kilopascal.Of(checked.Number(100 + 400*math.Mod(float64(i)*0.7548776662, 1)))
		xs[i] = -10 + 20*u
	}
	return ts, ps, xs
}

func BenchmarkMathExp(b *testing.B) {
	_, _, xs := varying()
	b.ReportAllocs()
	var sum float64
	i := 0
	for b.Loop() {
		sum += math.Exp(xs[i&255])
		i++
	}
	sink = sum
}

var sink float64

// About 4.6 % vol and 4 g/L of extract.
var drink = liquidOf(0.9475, 0.004, 0.0363)

func liquidOf(water, extract, ethanol float64) Liquid {
	l, err := NewLiquid(solutionOf(water, extract, ethanol))
	if err != nil {
		panic(err)
	}
	return l
}

func solutionOf(water, extract, ethanol float64) gravity.Solution {
	s, err := gravity.NewSolution(units.Kilogram.Of(checked.Number(water)), units.Kilogram.Of(checked.Number(extract)), units.Kilogram.Of(checked.Number(ethanol)))
	if err != nil {
		panic(err)
	}
	return s
}

func BenchmarkContent(b *testing.B) {
	ts, ps, _ := varying()
	b.ReportAllocs()
	var sum float64
	i := 0
	for b.Loop() {
		c, _ := drink.Content(ps[i&255], ts[i&255])
		sum += c.In(units.GramCO2PerLitre)
		i++
	}
	sink = sum
}

func BenchmarkPressure(b *testing.B) {
	ts, ps, _ := varying()
	var cs [256]units.CarbonDioxideContent
	for i := range cs {
		cs[i], _ = drink.Content(ps[i], ts[i])
	}
	b.ReportAllocs()
	var sum float64
	i := 0
	for b.Loop() {
		p, _ := drink.Pressure(cs[i&255], ts[i&255])
		sum += p.In(units.Kilopascal)
		i++
	}
	sink = sum
}
