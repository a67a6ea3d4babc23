package gravity

import (
	"cmp"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Ferment returns the liquid after the yeast has used that mass of extract, and
// what was made. Each fermentable kind is used in proportion.
//
//   - Source: the balance of [Yield]; the masses of water, extract, ethanol, CO2 and
//     yeast add up to what was there before.
//   - Range: extract from 0 to [Solution.Fermentable], and water enough for the
//     inversion; otherwise the error is a [*units.RangeError].
func (s Solution) Ferment(extract units.Mass, y Yield) (Solution, Fermented, error) {
	const fn = "gravity.Solution.Ferment"
	used := extract.In(units.Kilogram)
	if err := cmp.Or(
		limit.Check(fn, "extract used", used, "kg", 0, s.fermentable(), "the fermentable extract there is"),
		y.check(fn),
		limit.Check(fn, "water taken up", used*y.water, "kg", 0, s.water, "the water there is"),
	); err != nil {
		return Solution{}, Fermented{}, err
	}
	after, err := s.fermented(used, y).checked(fn)
	if err != nil {
		return Solution{}, Fermented{}, err
	}
	return after, Fermented{
		CO2: kilograms(used * y.co2), Biomass: kilograms(used * y.biomass), Ethanol: kilograms(used * y.ethanol),
		Residue: kilograms(used * y.residue), Water: kilograms(used * y.water),
	}, nil
}

// fermented is Ferment without the checks, for a search between two states that exist.
func (s Solution) fermented(used float64, y Yield) Solution {
	have := s.fermentable()
	for k := range s.extract {
		if Sugar(k).Fermentable() && have > 0 {
			s.extract[k] *= 1 - used/have
		}
	}
	s.leave(used * y.residue)
	s.ethanol += used * y.ethanol
	s.water -= used * y.water
	return s
}

// acidShare is the part of what yeast leaves that is acid: 0.67 g succinic acid beside
// 3.16 g glycerol (Pasteur 1860; recalled from memory).
const acidShare = 0.67 / (3.16 + 0.67)

// leave adds what the yeast leaves of the sugar.
func (s *Solution) leave(residue float64) {
	s.extract[AsGlycerol] += (1 - acidShare) * residue
	s.extract[AsOrganicAcid] += acidShare * residue
}

// WashYield returns the [SugarWashYield] of the sugars that are in the liquid, each
// by its share. Without any it is that of sucrose.
func (s Solution) WashYield() Yield {
	have := s.fermentable()
	if have == 0 {
		return SugarWashYield(AsSucrose)
	}
	var y Yield
	for k, x := range s.extract {
		if !Sugar(k).Fermentable() {
			continue
		}
		of, part := SugarWashYield(Sugar(k)), x/have
		y.ethanol += part * of.ethanol
		y.co2 += part * of.co2
		y.residue += part * of.residue
		y.water += part * of.water
	}
	y.biomass = 1 + y.water - y.ethanol - y.co2 - y.residue
	return y
}

// Dry returns the liquid after all fermentable extract is used: the floor that a
// hydrometer can reach. Errors are those of [Solution.Ferment].
func (s Solution) Dry(y Yield) (Solution, Fermented, error) {
	dry, made, err := s.Ferment(s.Fermentable(), y)
	return dry, made, limit.Named("gravity.Solution.Dry", err)
}
