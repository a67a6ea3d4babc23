package carbonation

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// expansion is how the volume of a liquid goes with temperature.
type expansion struct {
	volume func(units.Temperature) (units.Volume, error) // 0 to 40 °C, 100 °C without ethanol
	part   float64                                       // of that volume
	at40   float64                                       // L
	extra  float64                                       // 1/K at 35 °C, over water
	growth float64                                       // 1/K², of extra
}

// newExpansion takes the volume of a liquid as package gravity has it, between 0
// and 40 °C, and carries it on to −2 and 90 °C: below 0 °C the volume is that at
// 0 °C (0.03 % at most); above 40 °C a liquid with ethanol expands as water does
// and by an excess that goes on to grow with temperature as it did from
// 20–30 °C to 30–40 °C.
//
//   - Source: package gravity; above 40 °C gravity.WaterDensity and an extension
//     without a source.
//   - Uncertainty: the part over water is 0.08 % of the volume at 65 °C for a drink
//     of 5 % vol; half of that is a fair doubt.
func newExpansion(volume func(units.Temperature) (units.Volume, error)) (expansion, error) {
	var v, w [3]float64
	for i, t := range [...]units.Temperature{units.Celsius.Of(20), units.Celsius.Of(30), units.Celsius.Of(40)} {
		x, err := volume(t)
		if err != nil {
			return expansion{}, err
		}
		v[i] = x.In(units.Litre)
		w[i] = water(t.In(units.Celsius))
	}
	rate := func(i int) float64 { return math.Log(v[i+1]/v[i]*w[i+1]/w[i]) / 10 } // over water, in 10 K
	e := expansion{volume: volume, part: 1, at40: v[2], extra: rate(1), growth: (rate(1) - rate(0)) / 10}
	return e, nil
}

func (e expansion) scaled(part float64) expansion {
	e.part *= part
	return e
}

// litres is the volume at c in °C: that of package gravity where it has one, to 40 °C
// and without ethanol to 90 °C, carried on from there.
func (e expansion) litres(c float64) float64 {
	if v, err := e.volume(units.Celsius.Of(checked.Number(math.Max(c, 0)))); err == nil {
		return e.part * v.In(units.Litre)
	}
	excess := e.extra*(c-40) + e.growth*((c-35)*(c-35)-(40-35)*(40-35))/2
	return e.part * e.at40 * water(40) / water(c) * math.Exp(excess)
}

// water is the density of water in kg/m³ at c in °C, 20 to 90 °C: inside the range of
// its formula.
func water(c float64) float64 {
	d, _ := gravity.WaterDensity(units.Celsius.Of(checked.Number(c)))
	return d.In(units.KilogramPerCubicMetre)
}
