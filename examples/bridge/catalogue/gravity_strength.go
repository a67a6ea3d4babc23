package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// gravityStrengths are strengths with their volumes at another temperature than 20 °C.
func gravityStrengths() []Function {
	temperature := temperatureInput("mixture and of its ethanol; for US proof 60 °F", -20, 40)
	return []Function{
		{
			Name:    "strength_by_volume_at",
			Meaning: "strength by volume at a temperature, from that by mass; US proof is twice that at 60 °F",
			Source:  r22,
			Inputs: []Input{
				in("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture", 0, 100, 33.3),
				temperature,
			},
			Outputs: []Output{
				out("strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, both at that temperature"),
				pure("twice", "", "twice the number; at 60 °F US proof"),
			},
			call: func(in, out []float64) error {
				v, err := gravity.ByVolumeAt(as(units.PercentMass, in[0]), as(units.Celsius, in[1]))
				out[0] = v.In(units.PercentVolume)
				out[1] = 2 * out[0]
				return err
			},
		},
		{
			Name:    "strength_by_mass_at",
			Meaning: "strength by mass from that by volume at a temperature; US proof is twice that at 60 °F",
			Source:  r22,
			Inputs: []Input{
				in("strength", units.PercentVolume, "ethanol in 100 volumes of the mixture, both at that temperature", 0, 100, 40),
				temperature,
			},
			Outputs: []Output{
				out("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the mixture"),
				out("strength_20", units.PercentVolume, "strength by volume at 20 °C"),
			},
			call: func(in, out []float64) error {
				w, err := gravity.ByMassAt(as(units.PercentVolume, in[0]), as(units.Celsius, in[1]))
				out[0], out[1] = w.In(units.PercentMass), gravity.ByVolume(w).In(units.PercentVolume)
				return err
			},
		},
	}
}
