package gravity

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// BoilDownTo returns the liquid after enough water has gone that the rest has a
// volume, taken at a temperature, and the water that went.
//
//   - Source: [Solution.Volume] solved for the water.
//   - Range: a liquid without ethanol; a volume up to the one it has, and not so small
//     that the rest is more than 80 % extract (60 with glucose, 48 with fructose, 20 with
//     glycerol in it). Otherwise the error is a [*units.RangeError].
func (s Solution) BoilDownTo(v units.Volume, t units.Temperature) (Solution, units.Mass, error) {
	const fn = "gravity.Solution.BoilDownTo"
	if err := limit.Check(fn, "ethanol", s.ethanol, "kg", 0, 0, "ethanol boils off with the water"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	var least float64 // water that must stay
	for k, x := range s.extract {
		if x > 0 { // as far as the table of that sugar goes
			least = max(least, s.sugars()*(100/(lighters[k].most*(1-hair))-1))
		}
	}
	least = min(least-s.water, 0)
	rho, err := s.densityAt(fn, t)
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	whole, end := 1000*s.total()/rho, s.volumeWith(least, t)
	slack := hair * whole
	if err := limit.Check(fn, "volume", v.In(units.Litre), "L", end-slack, whole+slack, "what less water can make"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	return s.waterTo(clamp(v.In(units.Litre), end, whole), t, least)
}

// MakeUpTo returns the liquid with enough water added that it has a volume, taken at
// a temperature, and the water that takes: topping up after a boil or a loss.
//
//   - Source: [Solution.Volume] solved for the water.
//   - Range: a volume from the one it has to 1e9 L; otherwise the error is a
//     [*units.RangeError].
func (s Solution) MakeUpTo(v units.Volume, t units.Temperature) (Solution, units.Mass, error) {
	const fn = "gravity.Solution.MakeUpTo"
	rho, err := s.densityAt(fn, t)
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	whole, want := 1000*s.total()/rho, v.In(units.Litre)
	if err := limit.Check(fn, "volume", want, "L", whole*(1-hair), mostVolume, "what more water can make"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	want = max(want, whole)
	return s.waterTo(want, t, want) // a kilogram of water is more than a litre
}

// volumeWith is the litres of the liquid with that much more water.
func (s Solution) volumeWith(water float64, t units.Temperature) float64 {
	s.water += water
	return 1000 * s.total() / s.rho(t.In(units.Celsius))
}

// waterTo adds as much water, up to most kg, that the volume is want, which lies between
// that of the liquid and that with all of it; most may be negative. A formula that covers
// the liquid with the least water covers all with more.
func (s Solution) waterTo(want float64, t units.Temperature, most float64) (Solution, units.Mass, error) {
	water, err := numeric.Root(func(water float64) float64 {
		return s.volumeWith(water, t) - want
	}, 0, most, sharp*(s.total()+want))
	if err != nil { // not reached: the volume wanted lies between the two
		return Solution{}, units.Mass{}, err
	}
	s.water = max(0, s.water+water)
	return s, kilograms(math.Abs(water)), nil
}
