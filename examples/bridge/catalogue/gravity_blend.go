package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// A spirit is a volume of ethanol and water of a strength at 20 °C.
type spirit struct {
	volume   units.Volume
	strength units.StrengthByVolume
}

// at is it where its volume is that at a temperature.
func (s spirit) at(t units.Temperature) (gravity.Solution, error) {
	w := gravity.ByMass(s.strength).In(units.PercentMass)
	d, err := gravity.EthanolDensity(as(units.PercentMass, w), t)
	if err != nil {
		return gravity.Solution{}, err
	}
	kg := s.volume.In(units.Litre) * d.In(units.KilogramPerCubicMetre) / 1000
	return gravity.NewSolution(as(units.Kilogram, kg*(1-w/100)), units.Mass{}, as(units.Kilogram, kg*w/100))
}

func takesStrength(which string, example float64) arg[units.StrengthByVolume] {
	return takes("strength_"+which, units.PercentVolume, "strength of the "+which+" liquid, at 20 °C", 0, 100, example)
}

func takesSpirit(which string, litres, strength float64) arg[spirit] {
	return of2(takes("volume_"+which, units.Litre, "volume of the "+which+" liquid", 0.001, 1e6, litres), takesStrength(which, strength),
		func(v units.Volume, s units.StrengthByVolume) (spirit, error) { return spirit{v, s}, nil })
}

// A mixture is two liquids of ethanol and water as one.
type mixture struct {
	liquid       gravity.Solution
	volume, lost units.Volume
}

func mix(a, b spirit, t units.Temperature) (mixture, error) {
	first, err := a.at(t)
	if err != nil {
		return mixture{}, err
	}
	second, err := b.at(t)
	if err != nil {
		return mixture{}, err
	}
	m, err := first.Plus(second)
	if err != nil {
		return mixture{}, err
	}
	d, err := gravity.EthanolDensity(m.ByMass(), t)
	if err != nil {
		return mixture{}, err
	}
	litres := 1000 * m.Mass().In(units.Kilogram) / d.In(units.KilogramPerCubicMetre)
	lost := a.volume.In(units.Litre) + b.volume.In(units.Litre) - litres
	return mixture{m, as(units.Litre, litres), as(units.Litre, lost)}, nil
}

// blended makes a volume of a strength out of two.
func blended(first, second, wanted units.StrengthByVolume, v units.Volume) (pair[gravity.BlendPart, gravity.BlendPart], error) {
	litre, at20 := units.Litre.Of(1), units.Celsius.Of(20)
	a, err := spirit{litre, first}.at(at20)
	if err != nil {
		return pair[gravity.BlendPart, gravity.BlendPart]{}, err
	}
	b, err := spirit{litre, second}.at(at20)
	if err != nil {
		return pair[gravity.BlendPart, gravity.BlendPart]{}, err
	}
	p, q, _, err := gravity.BlendToStrength(a, b, wanted, v)
	return pair[gravity.BlendPart, gravity.BlendPart]{p, q}, err
}

// gravityBlends are liquids of ethanol and water, mixed.
func gravityBlends() []*Function {
	const source = "masses add, contraction by " + r22
	type two = pair[gravity.BlendPart, gravity.BlendPart]
	return []*Function{
		entry("mix_volumes", "volume and strength of two liquids of ethanol and water when they are mixed; volumes do not add", source,
			of3(takesSpirit("first", 40, 9), takesSpirit("second", 40, 0), temperatureOf("liquids, for their volumes", 0, 40).or(20), mix),
			from(func(m mixture) units.Volume { return m.volume }, "volume", units.Litre, "volume of the mixture at that temperature"),
			from(func(m mixture) units.StrengthByVolume { return m.liquid.ByVolume() }, "strength", units.PercentVolume, "strength of the mixture, at 20 °C"),
			from(func(m mixture) units.Volume { return m.lost }, "lost", units.Litre, "what the volumes lose by contraction")),
		entry("spirit_density", "density of a liquid of ethanol and water by its strength by volume", r22+"; buoyancy of air of 1.2 kg/m³ (OIML D 28)",
			of3(takes("strength", units.PercentVolume, "ethanol of the liquid, at 20 °C", 0, 100, 40), temperatureOf("liquid", -20, 40).or(20), weighing(),
				func(s units.StrengthByVolume, t units.Temperature, air gravity.Air) (units.Density, error) {
					d, err := gravity.EthanolDensity(gravity.ByMass(s), t)
					if err != nil || air != gravity.InAir {
						return d, err
					}
					return gravity.DensityInAir(d)
				}),
			gives("density", units.KilogramPerCubicMetre, "density, or what a balance in air makes of it")),
		entry("blend_to_strength", "how much of two liquids of ethanol and water makes a volume of a strength", source,
			of4(takesStrength("first", 9), takesStrength("second", 0), takes("wanted", units.PercentVolume, "strength wanted", 0, 100, 4.6),
				takes("volume", units.Litre, "volume wanted, at 20 °C", 0.001, 1e6, 60), blended),
			from(func(t two) units.Volume { return t.a.Volume }, "volume_first", units.Litre, "of the first liquid, at 20 °C"),
			from(func(t two) units.Volume { return t.b.Volume }, "volume_second", units.Litre, "of the second liquid, at 20 °C"),
			from(func(t two) units.Mass { return t.a.Mass }, "mass_first", units.Kilogram, "of the first liquid"),
			from(func(t two) units.Mass { return t.b.Mass }, "mass_second", units.Kilogram, "of the second liquid")),
	}
}
