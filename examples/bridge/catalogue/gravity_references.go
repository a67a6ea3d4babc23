package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func weighing() arg[gravity.Air] {
	return picksBy("weighing", "masses, or weights as a balance in air shows them", upTo(gravity.InAir), "in vacuum", "in air").orOption("in vacuum")
}

// mixtureOf is 100 kg of ethanol, one sugar and water.
func mixtureOf(ethanol units.StrengthByMass, extract units.Extract, sugar gravity.Sugar) (gravity.Solution, error) {
	e, x := ethanol.In(units.PercentMass), extract.In(units.DegreePlato)
	s, err := gravity.NewSolution(as(units.Kilogram, max(0, 100-e-x)), units.Mass{}, as(units.Kilogram, e))
	if err != nil {
		return s, err
	}
	return s.AddExtract(sugar, as(units.Kilogram, x))
}

// gravityReferences are the temperatures and the air that a gravity stands for.
func gravityReferences() []*Function {
	const (
		source   = icumsa + "; OIML R 22 (1973); Bettin & Spieweck 1990"
		buoyancy = "buoyancy of air of 1.2 kg/m³ on liquid and weights of 8000 kg/m³ (OIML D 28)"
	)
	return []*Function{
		entry("gravity_at_reference", "a specific gravity 20/20 °C as another pair of temperatures or air has it", source,
			of3(takesGravity("gravity", "specific gravity", 0.791, 1.414, 1.048), references(), weighing(), gravity.Gravity.As),
			givesNumber("reading", "", "specific gravity for that reference")),
		entry("gravity_from_reference", "specific gravity 20/20 °C from one for another pair of temperatures or in air", source,
			of3(takesNumber("reading", "", "specific gravity for that reference", 0.791, 1.414, 1.048), references(), weighing(), gravity.FromReference),
			numberFrom(gravity.Gravity.SG, "gravity", "", "specific gravity 20/20 °C, in vacuum"),
			from(gravity.Gravity.Extract, "extract", units.DegreePlato, "apparent extract")),
		entry("gravity_of_mixture", "specific gravity of a liquid of ethanol, sucrose and water for a reference", tabarie,
			of4(takes("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the liquid", 0, 100, 3.7),
				takes("real_extract", units.DegreePlato, "extract in 100 masses of the liquid", 0, 80, 0.5).or(0), references(), weighing(),
				func(e units.StrengthByMass, x units.Extract, r gravity.Reference, a gravity.Air) (float64, error) {
					s, err := mixtureOf(e, x, gravity.AsSucrose)
					if err != nil {
						return 0, err
					}
					return s.SpecificGravity(r, a)
				}),
			givesNumber("reading", "", "specific gravity for that reference")),
		entry("density_in_air", "what a balance in air makes of a density", buoyancy,
			of1(takes("density", units.KilogramPerCubicMetre, "density in vacuum", 100, 20000, 998.2), gravity.DensityInAir),
			gives("density_in_air", units.KilogramPerCubicMetre, "mass that the balance shows over the volume")),
		entry("density_in_vacuum", "density from what a balance in air shows", buoyancy,
			of1(takes("density_in_air", units.KilogramPerCubicMetre, "mass that the balance shows over the volume", 100, 19900, 997.2), gravity.DensityInVacuum),
			gives("density", units.KilogramPerCubicMetre, "density in vacuum")),
		entry("scales_from_sg", "degrees Oechsle, Baumé and sake meter value of a specific gravity",
			"moduli 144.3 at 15/4 °C (Kyoto Electronics, manual DA-650, p. 69) and 145 at 60/60 °F (National Bureau of Standards)",
			takesGravity("gravity", "specific gravity", 0.79, 1.4147, 1.048),
			numberFrom(gravity.Gravity.Oechsle, "oechsle", "°Oe", "degrees Oechsle"),
			numberFrom(gravity.Gravity.Baume, "baume", "°Bé", "degrees Baumé of the international scale"),
			numberFrom(gravity.Gravity.BaumeUS, "baume_us", "°Bé", "degrees Baumé of the US scale"),
			numberFrom(gravity.Gravity.SakeMeter, "sake_meter", "", "sake meter value")),
		entry("sg_from_baume", "specific gravity 20/20 °C of degrees Baumé of the international scale",
			"modulus 144.3 at 15/4 °C (Kyoto Electronics, manual DA-650, p. 69)",
			of1(takesNumber("baume", "°Bé", "degrees Baumé", -37, 42, 6.6), gravity.FromBaume),
			numberFrom(gravity.Gravity.SG, "gravity", "", "specific gravity 20/20 °C, in vacuum")),
	}
}
