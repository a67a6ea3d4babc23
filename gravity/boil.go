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
//     that the rest is more than 80 % extract. Otherwise the error is a
//     [*units.RangeError].
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
	whole, err := s.volumeWith(fn, 0, t)
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	end, err := s.volumeWith(fn, least, t)
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	slack := hair * whole
	if err := limit.Check(fn, "volume", v.In(units.Litre), "L", end-slack, whole+slack, "what less water can make"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	return s.waterTo(fn, clamp(v.In(units.Litre), end, whole), t, least, 0)
}

// MakeUpTo returns the liquid with enough water added that it has a volume, taken at
// a temperature, and the water that takes: topping up after a boil or a loss.
//
//   - Source: [Solution.Volume] solved for the water.
//   - Range: a volume from the one it has to 1e9 L; otherwise the error is a
//     [*units.RangeError].
func (s Solution) MakeUpTo(v units.Volume, t units.Temperature) (Solution, units.Mass, error) {
	const fn = "gravity.Solution.MakeUpTo"
	whole, err := s.volumeWith(fn, 0, t)
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	want := v.In(units.Litre)
	if err := limit.Check(fn, "volume", want, "L", whole*(1-hair), mostVolume, "what more water can make"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	want = max(want, whole)
	return s.waterTo(fn, want, t, 0, want) // a kilogram of water is more than a litre
}

// volumeWith is the litres of the liquid with that much more water.
func (s Solution) volumeWith(fn string, water float64, t units.Temperature) (float64, error) {
	s.water += water
	rho, err := s.densityAt(fn, t)
	return 1000 * s.total() / rho, err
}

// waterTo adds from least to most kg of water so that the volume is want, which lies
// between those of the two.
func (s Solution) waterTo(fn string, want float64, t units.Temperature, least, most float64) (Solution, units.Mass, error) {
	water, err := numeric.Root(func(water float64) float64 {
		x, _ := s.volumeWith(fn, water, t)
		return x - want
	}, least, most, sharp*(s.total()+want))
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	s.water = max(0, s.water+water)
	after, err := s.checked(fn)
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	return after, kilograms(math.Abs(water)), nil
}
