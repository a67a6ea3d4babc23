package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func airInput() Input {
	return choice("weighing", "masses, or weights as a balance in air shows them", "in vacuum", "in air").orOption("in vacuum")
}

// gravityReferences are the temperatures and the air that a gravity stands for.
func gravityReferences() []Function {
	const source = icumsa + "; OIML R 22 (1973); Bettin & Spieweck 1990"
	return []Function{
		{
			Name:    "gravity_at_reference",
			Meaning: "a specific gravity 20/20 °C as another pair of temperatures or air has it",
			Source:  source,
			Inputs:  []Input{gravityInput("gravity", "specific gravity", 0.791, 1.414, 1.048), references(), airInput()},
			Outputs: []Output{pure("reading", "", "specific gravity for that reference")},
			call: func(in, out []float64) error {
				g, err := gravity.FromSG(in[0])
				if err != nil {
					return err
				}
				out[0], err = g.As(gravity.Reference(in[1]), gravity.Air(in[2]))
				return err
			},
		},
		{
			Name:    "gravity_from_reference",
			Meaning: "specific gravity 20/20 °C from one for another pair of temperatures or in air",
			Source:  source,
			Inputs:  []Input{number("reading", "", "specific gravity for that reference", 0.791, 1.414, 1.048), references(), airInput()},
			Outputs: []Output{
				pure("gravity", "", "specific gravity 20/20 °C, in vacuum"),
				out("extract", units.DegreePlato, "apparent extract"),
			},
			call: func(in, out []float64) error {
				g, err := gravity.FromReference(in[0], gravity.Reference(in[1]), gravity.Air(in[2]))
				out[0], out[1] = g.SG(), g.Extract().In(units.DegreePlato)
				return err
			},
		},
		{
			Name:    "gravity_of_mixture",
			Meaning: "specific gravity of a liquid of ethanol, sucrose and water for a reference",
			Source:  tabarie,
			Inputs: []Input{
				in("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the liquid", 0, 100, 3.7),
				in("real_extract", units.DegreePlato, "extract in 100 masses of the liquid", 0, 80, 0.5).or(0),
				references(), airInput(),
			},
			Outputs: []Output{pure("reading", "", "specific gravity for that reference")},
			call: func(in, out []float64) error {
				s, err := mixtureOf(gravity.AsSucrose, in[0], in[1])
				if err != nil {
					return err
				}
				out[0], err = s.SpecificGravity(gravity.Reference(in[2]), gravity.Air(in[3]))
				return err
			},
		},
		entry("density_in_air", "what a balance in air makes of a density", "buoyancy of air of 1.2 kg/m³ on liquid and weights of 8000 kg/m³ (OIML D 28)",
			of1(takes("density", units.KilogramPerCubicMetre, "density in vacuum", 100, 20000, 998.2), gravity.DensityInAir),
			gives("density_in_air", units.KilogramPerCubicMetre, "mass that the balance shows over the volume")),
		entry("density_in_vacuum", "density from what a balance in air shows", "buoyancy of air of 1.2 kg/m³ on liquid and weights of 8000 kg/m³ (OIML D 28)",
			of1(takes("density_in_air", units.KilogramPerCubicMetre, "mass that the balance shows over the volume", 100, 19900, 997.2), gravity.DensityInVacuum),
			gives("density", units.KilogramPerCubicMetre, "density in vacuum")),
		{
			Name:    "scales_from_sg",
			Meaning: "degrees Oechsle, Baumé and sake meter value of a specific gravity",
			Source:  "moduli 144.3 at 15/4 °C (Kyoto Electronics, manual DA-650, p. 69) and 145 at 60/60 °F (National Bureau of Standards)",
			Inputs:  []Input{gravityInput("gravity", "specific gravity", 0.79, 1.4147, 1.048)},
			Outputs: []Output{
				pure("oechsle", "°Oe", "degrees Oechsle"),
				pure("baume", "°Bé", "degrees Baumé of the international scale"),
				pure("baume_us", "°Bé", "degrees Baumé of the US scale"),
				pure("sake_meter", "", "sake meter value"),
			},
			call: func(in, out []float64) error {
				g, err := gravity.FromSG(in[0])
				out[0], out[1], out[2], out[3] = g.Oechsle(), g.Baume(), g.BaumeUS(), g.SakeMeter()
				return err
			},
		},
		{
			Name:    "sg_from_baume",
			Meaning: "specific gravity 20/20 °C of degrees Baumé of the international scale",
			Source:  "modulus 144.3 at 15/4 °C (Kyoto Electronics, manual DA-650, p. 69)",
			Inputs:  []Input{number("baume", "°Bé", "degrees Baumé", -37, 42, 6.6)},
			Outputs: []Output{pure("gravity", "", "specific gravity 20/20 °C, in vacuum")},
			call: func(in, out []float64) error {
				g, err := gravity.FromBaume(in[0])
				out[0] = g.SG()
				return err
			},
		},
	}
}

// mixtureOf is 100 kg of ethanol, one sugar and water.
func mixtureOf(sugar gravity.Sugar, ethanol, extract float64) (gravity.Solution, error) {
	s, err := gravity.NewSolution(as(units.Kilogram, max(0, 100-ethanol-extract)), units.Mass{}, as(units.Kilogram, ethanol))
	if err != nil {
		return s, err
	}
	return s.AddExtract(sugar, as(units.Kilogram, extract))
}
