package carbonation_test

import (
	"errors"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// A keg pressure that lift and restriction use up to the last digit: the drink stands
// still, or the pressure is refused; a rounding makes no other error and no length below
// zero.
func TestLineStandsStill(t *testing.T) {
	water := ok[gravity.Solution](t)(gravity.NewSolution(kg(1), kg(0), kg(0)))
	density := ok[units.Density](t)(water.Density(celsius(4))).In(units.KilogramPerCubicMetre)
	kilopascals := func(v float64) units.GaugePressure { return units.KilopascalGauge.Of(checked.Number(v)) }
	still := 0
	for rise := 0.0; rise < 10; rise += 0.01 {
		for _, more := range []float64{50, 100, 200, 500} {
			line := carbonation.Line{Bore: metre(0.005), Rise: metre(rise), Restriction: kilopascals(more)}
			keg := kilopascals(density*9.80665*rise/1000 + more)
			s, err := line.FlowOf(water, celsius(4), keg, metre(3))
			if _, is := errors.AsType[*units.RangeError](err); err != nil && !is {
				t.Fatal(rise, more, err)
			}
			if err == nil {
				still++
			}
			near(t, "speed", s.Speed.In(units.MetrePerSecond), 0, 1e-9)
			// With a little flow, the fittings use 1 velocity head: 1/2·ρ·v².
			v := 0.05 / 60000 / (3.141592653589793 / 4 * 0.005 * 0.005)
			b, err := line.Balance(water, celsius(4), kilopascals(keg.In(units.KilopascalGauge)+density*v*v/2000), units.LitrePerMinute.Of(0.05))
			if _, is := errors.AsType[*units.RangeError](err); err != nil && !is || b.Length.In(units.Metre) < 0 {
				t.Fatal(rise, more, b.Length, err)
			}
			near(t, "length", b.Length.In(units.Metre), 0, 1e-9)
		}
	}
	if still < 1000 {
		t.Error(still)
	}
}
