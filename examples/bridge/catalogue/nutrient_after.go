package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/units"
)

func spiritOf(v units.Volume, s units.StrengthByVolume) (gravity.Solution, error) {
	return finish.Flavouring{Strength: s}.Liquid(v)
}

// nutrientAfter are what is done when the ferment is over.
func nutrientAfter() []*Function {
	type (
		flavoured = finish.Flavoured
		diluted   = finish.Diluted
	)
	return []*Function{
		heavy(entry("flavour_for_batch", "flavouring for a batch by a bench trial, and what it does to the strength",
			"proportion; masses by OIML R 22; legal share 27 CFR 25.15(b) and 7.5",
			of4(takes("sample", units.Millilitre, "drink in the trial", 0.1, 1e6, 200), takes("added", units.Millilitre, "flavouring in the trial", 0.0001, 1e5, 0.6),
				of2(takes("volume", units.Litre, "of the batch", 0.001, 1e7, 60), takes("strength", units.PercentVolume, "of the batch", 0, 20, 4.6), spiritOf),
				takes("flavour_strength", units.PercentVolume, "of the flavouring", 0, 100, 40).or(0),
				func(sample, added units.Volume, batch gravity.Solution, s units.StrengthByVolume) (flavoured, error) {
					return finish.BenchTrial{Sample: sample, Added: added}.Scale(batch, finish.Flavouring{Strength: s})
				}),
			from(func(f flavoured) units.Volume { return f.Flavouring }, "flavouring", units.Millilitre, "to add to the batch"),
			from(func(f flavoured) units.StrengthByVolume { return f.After }, "strength_after", units.PercentVolume, "of the batch with it"),
			from(func(f flavoured) units.Share { return f.AlcoholShare }, "alcohol_share", units.Percent, "of its alcohol that the flavouring brings"))),
		heavy(entry("dilution_water", "water that lets a dry drink down to a strength", "OIML R 22",
			of2(of2(takes("volume", units.Litre, "of the drink at 20 °C", 0.001, 1e7, 30),
				takes("strength", units.PercentVolume, "of the drink", 0.2, 60, 9), spiritOf),
				takes("wanted", units.PercentVolume, "strength wanted", 0.1, 60, 4.6),
				func(base gravity.Solution, wanted units.StrengthByVolume) (diluted, error) {
					return finish.Dilute(base, gravity.Solution{}, wanted)
				}),
			from(func(d diluted) units.Mass { return d.Water }, "water", units.Kilogram, "water to add"),
			from(func(d diluted) units.Volume { return d.Liquid.VolumeAt20() }, "volume_after", units.Litre, "of the drink with it, at 20 °C"))),
		entry("so2_pk", "dissociation constant of SO2 in water and ethanol, as pK", "OIV-MA-AS323-04C table 1",
			of2(takes("strength", units.PercentVolume, "of the drink", 0, 15, 10), takes("temperature", units.Celsius, "of the drink", 20, 40, 20),
				finish.SulfurDioxidePK),
			givesNumber("pk", "", "thermodynamic pK")),
	}
}
