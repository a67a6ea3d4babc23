package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
)

// nutrientAfter are what is done when the ferment is over.
func nutrientAfter() []Function {
	return []Function{
		{
			Name:    "flavour_for_batch",
			heavy:   true,
			Meaning: "flavouring for a batch by a bench trial, and what it does to the strength",
			Source:  "proportion; masses by OIML R 22; legal share 27 CFR 25.15(b) and 7.5",
			Inputs: []Input{
				in("sample", units.Millilitre, "drink in the trial", 0.1, 1e6, 200),
				in("added", units.Millilitre, "flavouring in the trial", 0.0001, 1e5, 0.6),
				in("volume", units.Litre, "of the batch", 0.001, 1e7, 60),
				in("strength", units.PercentVolume, "of the batch", 0, 20, 4.6),
				in("flavour_strength", units.PercentVolume, "of the flavouring", 0, 100, 40).or(0),
			},
			Outputs: []Output{
				out("flavouring", units.Millilitre, "to add to the batch"),
				out("strength_after", units.PercentVolume, "of the batch with it"),
				out("alcohol_share", units.Percent, "of its alcohol that the flavouring brings"),
			},
			call: func(in, out []float64) error {
				base, err := finish.Flavouring{Strength: as(units.PercentVolume, in[3])}.Liquid(as(units.Litre, in[2]))
				if err != nil {
					return err
				}
				f, err := finish.BenchTrial{Sample: as(units.Millilitre, in[0]), Added: as(units.Millilitre, in[1])}.
					Scale(base, finish.Flavouring{Strength: as(units.PercentVolume, in[4])})
				out[0], out[1], out[2] = f.Flavouring.In(units.Millilitre), f.After.In(units.PercentVolume), f.AlcoholShare.In(units.Percent)
				return err
			},
		},
		{
			Name:    "dilution_water",
			heavy:   true,
			Meaning: "water that lets a dry drink down to a strength",
			Source:  "OIML R 22",
			Inputs: []Input{
				in("volume", units.Litre, "of the drink at 20 °C", 0.001, 1e7, 30),
				in("strength", units.PercentVolume, "of the drink", 0.2, 60, 9),
				in("wanted", units.PercentVolume, "strength wanted", 0.1, 60, 4.6),
			},
			Outputs: []Output{
				out("water", units.Kilogram, "water to add"),
				out("volume_after", units.Litre, "of the drink with it, at 20 °C"),
			},
			call: func(in, out []float64) error {
				base, err := finish.Flavouring{Strength: as(units.PercentVolume, in[1])}.Liquid(as(units.Litre, in[0]))
				if err != nil {
					return err
				}
				d, err := finish.Dilute(base, gravity.Solution{}, as(units.PercentVolume, in[2]))
				out[0], out[1] = d.Water.In(units.Kilogram), d.Liquid.VolumeAt20().In(units.Litre)
				return err
			},
		},
		entry("so2_pk", "dissociation constant of SO2 in water and ethanol, as pK", "OIV-MA-AS323-04C table 1",
			of2(takes("strength", units.PercentVolume, "of the drink", 0, 15, 10), takes("temperature", units.Celsius, "of the drink", 20, 40, 20), finish.SulfurDioxidePK),
			givesNumber("pk", "", "thermodynamic pK")),
	}
}
