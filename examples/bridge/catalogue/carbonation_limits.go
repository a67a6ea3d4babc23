package catalogue

import (
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// carbonationLimits are a keg left on its regulator, and the most that a rating lets in.
func carbonationLimits() []Function {
	rates := [...]carbonation.CarbonationRate{carbonation.StillKeg(), carbonation.RolledKeg()}
	return []Function{
		rated(Function{
			Name:    "keg_on_regulator",
			Meaning: "what a keg holds after some time on a set pressure, and when it has its target",
			Source:  henryDrink + "; approach to rest by a rate, common practice, no source",
			Inputs: []Input{
				in("gauge_pressure_set", units.KilopascalGauge, "on the regulator", -50, 1000, 110),
				in("temperature", units.Celsius, "of the drink", -2, 40, 4),
				in("now", units.VolumesCO2, "CO2 in the drink now, real gas", 0, 7.5, 0.8),
				in("target", units.VolumesCO2, "CO2 wanted, real gas", 0, 7.5, 2.8),
				span("time", "h", "on that pressure", 0.01, 87600, 72),
				choice("keg", "how it stands", "still", "rolled").orOption("still"),
				strengthInput(), extractInput(), altitudeInput(),
			},
			Outputs: []Output{
				out("volumes", units.VolumesCO2, "CO2 after that time, real gas"),
				out("at_rest", units.VolumesCO2, "CO2 if it is left for good, real gas"),
				out("needs", units.KilopascalGauge, "pressure that would hold the target"),
				pure("reaches", "h", "when it has its target; -1 if it never does at this pressure"),
			},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[6], in[7])
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[8]))
				if err != nil {
					return err
				}
				content := func(v float64) units.CarbonDioxideContent {
					return carbonation.RealVolume.Content(as(units.VolumesCO2, v))
				}
				kegs, err := carbonation.OnRegulator([]carbonation.Keg{{Liquid: l, Temperature: as(units.Celsius, in[1]), Content: content(in[2]), Target: content(in[3]), Rate: rates[int(in[5])]}},
					as(units.KilopascalGauge, in[0]), time.Duration(in[4]*float64(time.Hour)), air)
				if err != nil {
					return err
				}
				k := kegs[0]
				out[0], out[1] = carbonation.RealVolume.Volumes(k.Content).In(units.VolumesCO2), carbonation.RealVolume.Volumes(k.AtRest).In(units.VolumesCO2)
				out[2], out[3] = k.Needs.In(units.KilopascalGauge), -1
				if k.HasReached {
					out[3] = k.Reaches.Hours()
				}
				return nil
			},
		}, func(in, out []float64) (float64, bits) { return in[0], ice(in[1], in[6], in[7]) }),
		{
			Name:    "content_for_rating",
			Meaning: "most CO2 that a closed bottle or can may hold, by its rating and the warmest it gets",
			Source:  henryDrink + "; conservation of CO2, nitrogen and oxygen, solved for the rating",
			Inputs: []Input{
				in("warmest", units.Celsius, "that the closed vessel gets", -2, 90, 35),
				in("capacity", units.Millilitre, "brim-full volume of the vessel", 1, 1e6, 345),
				in("fill", units.Millilitre, "drink in it at the filling temperature", 1, 1e6, 330),
				in("filling_temperature", units.Celsius, "temperature when it is closed", -2, 40, 18),
				in("air", units.Percent, "share of the head-space that is air when it is closed", 0, 100, 100).or(100),
				in("sugar_left", units.GramPerLitre, "fermentable sugar in it, counted as fermented", 0, 300, 0).or(0),
				strengthInput(), extractInput(), altitudeInput(),
				in(ratingName, units.KilopascalGauge, "the maker's pressure rating of the vessel", 1, 1e5, 800),
			},
			Outputs: []Output{
				out("volumes", units.VolumesCO2, "most CO2 dissolved when it is closed, real gas; 15 g/L where it holds more"),
				verdictOutput(), cautionOutput(),
			},
			heavy: true,
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[6]), as(units.DegreePlato, in[7]))
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[8]))
				if err != nil {
					return err
				}
				v := carbonation.Vessel{Capacity: as(units.Millilitre, in[1]), Rating: as(units.KilopascalGauge, in[9])}
				f := carbonation.Filling{Volume: as(units.Millilitre, in[2]), Temperature: as(units.Celsius, in[3]), Air: as(units.Percent, in[4]), SugarLeft: as(units.GramPerLitre, in[5])}
				most, err := v.MostContent(s, f, as(units.Celsius, in[0]), air)
				if err != nil {
					return err
				}
				out[0] = carbonation.RealVolume.Volumes(most).In(units.VolumesCO2)
				verdict, warned := carbonation.Rated(v.Rating, v.Rating)
				out[1], out[2] = float64(verdict), float64(set(warned...))
				return nil
			},
		},
	}
}
