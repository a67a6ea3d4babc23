package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// filled is that volume at a temperature of a liquid of a strength and real extract.
func filled(litres, strength, extract, celsius float64) (s gravity.Solution, err error) {
	if extract == 0 { // up to pure ethanol
		w := gravity.ByMass(as(units.PercentVolume, strength)).In(units.PercentMass)
		s, err = gravity.NewSolution(as(units.Kilogram, 100-w), units.Mass{}, as(units.Kilogram, w))
	} else if strength == 0 {
		s, err = gravity.NewSolution(as(units.Kilogram, 100-extract), as(units.Kilogram, extract), units.Mass{})
	} else {
		s, err = carbonation.DrinkOf(as(units.PercentVolume, strength), as(units.DegreePlato, extract))
	}
	if err != nil {
		return gravity.Solution{}, err
	}
	v, err := s.Volume(as(units.Celsius, celsius))
	if err != nil {
		return gravity.Solution{}, err
	}
	return s.Times(litres / v.In(units.Litre))
}

// gravityVolumes bring a liquid to a volume with more or less water.
func gravityVolumes() []Function {
	const source = "masses of water and extract, volume by " + tabarie
	return []Function{
		{
			Name:    "boil_down_to",
			Meaning: "extract of a wort or syrup boiled down to a volume, and the water that goes",
			Source:  source,
			Inputs: []Input{
				in("volume", units.Litre, "volume before, at the temperature", 0.001, 1e6, 28),
				in("extract", units.DegreePlato, "extract before", 0, 80, 10),
				in("wanted", units.Litre, "volume after, at the same temperature", 0.001, 1e6, 25),
				temperatureInput("liquid, for both volumes", 0, 100).or(20),
			},
			Outputs: []Output{
				out("extract_after", units.DegreePlato, "extract after"),
				pure("gravity_after", "", "specific gravity 20/20 °C after"),
				out("water", units.Kilogram, "water that goes"),
			},
			call: func(in, out []float64) error {
				s, err := filled(in[0], 0, in[1], in[3])
				if err != nil {
					return err
				}
				s, gone, err := s.BoilDownTo(as(units.Litre, in[2]), as(units.Celsius, in[3]))
				out[0], out[1], out[2] = s.RealExtract().In(units.DegreePlato), s.Gravity().SG(), gone.In(units.Kilogram)
				return err
			},
		},
		{
			Name:    "make_up_to",
			Meaning: "water that brings a liquid up to a volume, and what it is then; volumes do not add",
			Source:  source,
			Inputs: []Input{
				in("volume", units.Litre, "volume before, at the temperature", 0.001, 1e6, 24),
				in("strength", units.PercentVolume, "ethanol of the liquid, at 20 °C", 0, 100, 9).or(0),
				in("real_extract", units.DegreePlato, "extract in the liquid, without the ethanol", 0, 80, 0.8).or(0),
				in("wanted", units.Litre, "volume after, at the same temperature", 0.001, 1e6, 46),
				temperatureInput("liquid, for the volumes; with ethanol up to 40 °C", 0, 100).or(20),
			},
			Outputs: []Output{
				out("water", units.Kilogram, "water to add"),
				out("water_volume", units.Litre, "the same at that temperature"),
				out("strength_after", units.PercentVolume, "strength after, at 20 °C"),
				out("extract_after", units.DegreePlato, "real extract after"),
			},
			call: func(in, out []float64) error {
				s, err := filled(in[0], in[1], in[2], in[4])
				if err != nil {
					return err
				}
				s, added, err := s.MakeUpTo(as(units.Litre, in[3]), as(units.Celsius, in[4]))
				if err != nil {
					return err
				}
				d, err := gravity.WaterDensity(as(units.Celsius, in[4]))
				out[0] = added.In(units.Kilogram)
				out[1] = 1000 * out[0] / d.In(units.KilogramPerCubicMetre)
				out[2], out[3] = s.ByVolume().In(units.PercentVolume), s.RealExtract().In(units.DegreePlato)
				return err
			},
		},
	}
}
