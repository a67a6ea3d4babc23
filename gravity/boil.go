package gravity

import (
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
	least := s.sugars() * (100 - mostSucrose*(1-rounding/1000)) / mostSucrose // water that must stay
	for k, x := range s.extract {
		if x > 0 { // the tables of the other sugars end earlier
			least = max(least, s.sugars()*(100/(lighters[k].most*(1-rounding/1000))-1))
		}
	}
	return s.waterTo(fn, v, t, least-s.water, 0)
}

// MakeUpTo returns the liquid with enough water added that it has a volume, taken at
// a temperature, and the water that takes: topping up after a boil or a loss.
//
//   - Source: [Solution.Volume] solved for the water.
//   - Range: a volume from the one it has to 1e9 L; otherwise the error is a
//     [*units.RangeError].
func (s Solution) MakeUpTo(v units.Volume, t units.Temperature) (Solution, units.Mass, error) {
	const fn = "gravity.Solution.MakeUpTo"
	return s.waterTo(fn, v, t, 0, 1.1*mostVolume)
}

// waterTo adds (or takes) from least to most kg of water so that the volume is v.
func (s Solution) waterTo(fn string, v units.Volume, t units.Temperature, least, most float64) (Solution, units.Mass, error) {
	want := v.In(units.Litre)
	volume := func(water float64) (float64, error) {
		o := s
		o.water += water
		rho, err := o.densityAt(fn, t)
		return 1000 * o.total() / rho, err
	}
	lo, err := volume(min(least, 0))
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	hi, err := volume(most)
	if err != nil {
		return Solution{}, units.Mass{}, err
	}
	slack := rounding / 1000 * hi
	if most > 0 {
		hi, slack = mostVolume, rounding/1000*lo
	}
	if err := limit.Check(fn, "volume", want, "L", lo-slack, hi+slack, "what more or less water can make"); err != nil {
		return Solution{}, units.Mass{}, err
	}
	f := func(water float64) float64 { x, _ := volume(water); return x - want }
	water := 0.0
	if at := f(0); at != 0 {
		least = min(least, 0)
		if most > 0 { // a bracket near the answer: a kilogram is more than 0.9 L and less than 1.1
			most = min(most, 1.2*(want-lo)+leastMass)
		}
		if f(least) < 0 && f(most) > 0 {
			if water, err = numeric.Root(f, least, most, sharp*(s.total()+want)); err != nil {
				return Solution{}, units.Mass{}, err
			}
		}
	}
	after := s
	after.water = max(0, after.water+water)
	if after, err = after.checked(fn); err != nil {
		return Solution{}, units.Mass{}, err
	}
	if water < 0 {
		water = -water
	}
	return after, kilograms(water), nil
}
