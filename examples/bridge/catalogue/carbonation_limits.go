package catalogue

import (
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// onRegulator is one keg after some time on a set pressure.
func onRegulator(set units.GaugePressure, k carbonation.Keg, after time.Duration, r units.Rate, l carbonation.Liquid,
	air units.Atmosphere) (carbonation.KegOnRegulator, error) {
	k.Liquid, k.Rate = l, r
	kegs, err := carbonation.OnRegulator([]carbonation.Keg{k}, set, after, air)
	if err != nil {
		return carbonation.KegOnRegulator{}, err
	}
	return kegs[0], nil
}

// A most is a content that brings a pack to its rating.
type most struct {
	content units.CarbonDioxideContent
	verdict carbonation.Verdict
	warned  caution.List
}

// carbonationLimits are a keg left on its regulator, and the most that a rating lets in.
func carbonationLimits() []*Function {
	type keg = carbonation.KegOnRegulator
	rates := []units.Rate{carbonation.StillKeg(), carbonation.RolledKeg()}
	return []*Function{
		rated("gauge_pressure_set", entry("keg_on_regulator", "what a keg holds after some time on a set pressure, and when it has its target",
			henryDrink+"; approach to rest by a rate, common practice, no source",
			of6(takes("gauge_pressure_set", units.KilopascalGauge, "on the regulator", -50, 1000, 110),
				of3(takes("temperature", units.Celsius, "of the drink", -2, 40, 4), takesVolumes("now", "CO2 in the drink now, real gas", 0, 7.5, 0.8),
					takesVolumes("target", "CO2 wanted, real gas", 0, 7.5, 2.8),
					func(t units.Temperature, now, target units.CarbonDioxideContent) (carbonation.Keg, error) {
						return carbonation.Keg{Temperature: t, Content: now, Target: target}, nil
					}),
				takesTime("time", "h", "on that pressure", 0.01, 87600, 72), picksBy("keg", "how it stands", rates, "still", "rolled").orOption("still"),
				takesLiquid(), takesPlace(), onRegulator),
			from(func(k keg) units.CarbonDioxideVolumes { return carbonation.RealVolume.Volumes(k.Content) },
				"volumes", units.VolumesCO2, "CO2 after that time, real gas"),
			from(func(k keg) units.CarbonDioxideVolumes { return carbonation.RealVolume.Volumes(k.AtRest) },
				"at_rest", units.VolumesCO2, "CO2 if it is left for good, real gas"),
			from(func(k keg) units.GaugePressure { return k.Needs }, "needs", units.KilopascalGauge, "pressure that would hold the target"),
			numberFrom(func(k keg) float64 {
				if !k.HasReached {
					return -1
				}
				return k.Reaches.Hours()
			}, "reaches", "h", "when it has its target; -1 if it never does at this pressure"))),
		heavy(entry("content_for_rating", "most CO2 that a closed bottle or can may hold, by its rating and the warmest it gets",
			henryDrink+"; conservation of CO2, nitrogen and oxygen, solved for the rating",
			of5(takes("warmest", units.Celsius, "that the closed vessel gets", -2, 90, 35), takesPack("in it, counted as fermented"), takesDrink(), takesPlace(),
				takes(ratingName, units.KilopascalGauge, "the maker's pressure rating of the vessel", 1, 1e5, 800),
				func(t units.Temperature, p packed, s gravity.Solution, air units.Atmosphere, rating units.GaugePressure) (most, error) {
					p.vessel.Rating = rating
					c, err := p.vessel.MostContent(s, p.filling, t, air)
					verdict, warned := carbonation.Rated(rating, rating)
					return most{c, verdict, warned}, err
				}),
			from(func(m most) units.CarbonDioxideVolumes { return carbonation.RealVolume.Volumes(m.content) }, "volumes", units.VolumesCO2,
				"most CO2 dissolved when it is closed, real gas; 15 g/L where it holds more"),
			judges(func(m most) carbonation.Verdict { return m.verdict }), says(func(m most) caution.List { return m.warned }))),
	}
}
