package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// spirit is a volume at a temperature of ethanol and water of a strength.
func spirit(litres, strength, celsius float64) (gravity.Solution, error) {
	w := gravity.ByMass(as(units.PercentVolume, strength)).In(units.PercentMass)
	d, err := gravity.EthanolDensity(as(units.PercentMass, w), as(units.Celsius, celsius))
	if err != nil {
		return gravity.Solution{}, err
	}
	kg := litres * d.In(units.KilogramPerCubicMetre) / 1000
	return gravity.NewSolution(as(units.Kilogram, kg*(1-w/100)), units.Mass{}, as(units.Kilogram, kg*w/100))
}

func volumeAndStrength(which string, litres, strength float64) (volume, percent Input) {
	return in("volume_"+which, units.Litre, "volume of the "+which+" liquid", 0.001, 1e6, litres),
		in("strength_"+which, units.PercentVolume, "strength of the "+which+" liquid, at 20 °C", 0, 100, strength)
}

// gravityBlends are liquids of ethanol and water, mixed.
func gravityBlends() []Function {
	const source = "masses add, contraction by " + r22
	v1, s1 := volumeAndStrength("first", 40, 9)
	v2, s2 := volumeAndStrength("second", 40, 0)
	return []Function{
		{
			Name:    "mix_volumes",
			Meaning: "volume and strength of two liquids of ethanol and water when they are mixed; volumes do not add",
			Source:  source,
			Inputs: []Input{
				v1, s1, v2, s2,
				temperatureInput("liquids, for their volumes", 0, 40).or(20),
			},
			Outputs: []Output{
				out("volume", units.Litre, "volume of the mixture at that temperature"),
				out("strength", units.PercentVolume, "strength of the mixture, at 20 °C"),
				out("lost", units.Litre, "what the volumes lose by contraction"),
			},
			call: func(in, out []float64) error {
				a, err := spirit(in[0], in[1], in[4])
				if err != nil {
					return err
				}
				b, err := spirit(in[2], in[3], in[4])
				if err != nil {
					return err
				}
				m, err := a.Plus(b)
				if err != nil {
					return err
				}
				d, err := gravity.EthanolDensity(m.ByMass(), as(units.Celsius, in[4]))
				if err != nil {
					return err
				}
				out[0] = 1000 * m.Mass().In(units.Kilogram) / d.In(units.KilogramPerCubicMetre)
				out[1], out[2] = m.ByVolume().In(units.PercentVolume), in[0]+in[2]-out[0]
				return nil
			},
		},
		{
			Name:    "spirit_density",
			Meaning: "density of a liquid of ethanol and water by its strength by volume",
			Source:  r22 + "; buoyancy of air of 1.2 kg/m³ (OIML D 28)",
			Inputs: []Input{
				in("strength", units.PercentVolume, "ethanol of the liquid, at 20 °C", 0, 100, 40),
				temperatureInput("liquid", -20, 40).or(20),
				airInput(),
			},
			Outputs: []Output{out("density", units.KilogramPerCubicMetre, "density, or what a balance in air makes of it")},
			call: func(in, out []float64) error {
				d, err := gravity.EthanolDensity(gravity.ByMass(as(units.PercentVolume, in[0])), as(units.Celsius, in[1]))
				if err != nil {
					return err
				}
				if gravity.Air(in[2]) == gravity.InAir {
					d, err = gravity.DensityInAir(d)
				}
				out[0] = d.In(units.KilogramPerCubicMetre)
				return err
			},
		},
		{
			Name:    "blend_to_strength",
			Meaning: "how much of two liquids of ethanol and water makes a volume of a strength",
			Source:  source,
			Inputs: []Input{
				s1, s2,
				in("wanted", units.PercentVolume, "strength wanted", 0, 100, 4.6),
				in("volume", units.Litre, "volume wanted, at 20 °C", 0.001, 1e6, 60),
			},
			Outputs: []Output{
				out("volume_first", units.Litre, "of the first liquid, at 20 °C"),
				out("volume_second", units.Litre, "of the second liquid, at 20 °C"),
				out("mass_first", units.Kilogram, "of the first liquid"),
				out("mass_second", units.Kilogram, "of the second liquid"),
			},
			call: func(in, out []float64) error {
				a, err := spirit(1, in[0], 20)
				if err != nil {
					return err
				}
				b, err := spirit(1, in[1], 20)
				if err != nil {
					return err
				}
				p, q, _, err := gravity.BlendToStrength(a, b, as(units.PercentVolume, in[2]), as(units.Litre, in[3]))
				out[0], out[1] = p.Volume.In(units.Litre), q.Volume.In(units.Litre)
				out[2], out[3] = p.Mass.In(units.Kilogram), q.Mass.In(units.Kilogram)
				return err
			},
		},
	}
}
