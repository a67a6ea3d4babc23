package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// primers are what a choice of priming offers, in its order.
var primers = []string{
	"sucrose", "dextrose monohydrate", "dextrose anhydrous", "honey", "fructose", "invert sugar syrup", "maple syrup", "dry malt extract", "liquid malt extract",
}

func primerChoice() arg[material.Material] {
	return picksBy("primer", "what is added", shelf.Materials(primers...), primers...).orOption("sucrose")
}

// A packed is a vessel and what it was filled with.
type packed struct {
	vessel  carbonation.Vessel
	filling carbonation.Filling
}

// takesPack is a bottle or can as it is closed; sugar says how what is left in it counts.
func takesPack(sugar string) arg[packed] {
	return of5(takes("capacity", units.Millilitre, "brim-full volume of the vessel", 1, 1e6, 345),
		takes("fill", units.Millilitre, "drink in it at the filling temperature", 1, 1e6, 330),
		takes("filling_temperature", units.Celsius, "temperature when it is closed", -2, 40, 18),
		takes("air", units.Percent, "share of the head-space that is air when it is closed", 0, 100, 100).or(100),
		takes("sugar_left", units.GramPerLitre, "fermentable sugar "+sugar, 0, 300, 0).or(0),
		func(capacity, fill units.Volume, t units.Temperature, air units.Share, left units.MassConcentration) (packed, error) {
			return packed{carbonation.Vessel{Capacity: capacity}, carbonation.Filling{Volume: fill, Temperature: t, Air: air, SugarLeft: left}}, nil
		})
}

// A closed is a pack at a temperature, as it is and at its worst.
type closed struct{ now, worst carbonation.PackState }

// closePack closes it, and shows it at a temperature.
func closePack(t units.Temperature, p packed, s gravity.Solution, air units.Atmosphere) (c closed, err error) {
	pack, err := p.vessel.Close(s, p.filling, air)
	if err != nil {
		return c, err
	}
	if c.now, err = pack.At(t); err != nil {
		return c, err
	}
	c.worst, err = pack.Worst(t)
	return c, err
}

// A primed is a priming, and the CO2 that the drink held before it.
type primed struct {
	carbonation.Priming
	have units.CarbonDioxideContent
}

func primeWith(
	wanted units.CarbonDioxideContent, v units.Volume, warmest units.Temperature, left units.MassConcentration, primer material.Material,
	l carbonation.Liquid, air units.Atmosphere,
) (primed, error) {
	have, err := l.ResidualContent(air.Pressure(), warmest)
	if err != nil {
		return primed{}, err
	}
	p, err := carbonation.PrimingSugar(primer, wanted, have, left, v)
	return primed{p, have}, err
}

// carbonationPacks are priming and closed vessels.
func carbonationPacks() []*Function {
	return []*Function{
		entry("priming_sugar", "sugar that brings a drink to a CO2 content in the bottle, if all of it turns to gas; yeast usually makes some 3 % less",
			"Gay-Lussac's equation, IUPAC atomic weights 2021",
			of7(takesVolumes("volumes", "CO2 wanted, real gas", 0, 7.5, 2.9), takes("volume", units.Litre, "drink to be primed", 0.001, 1e6, 20),
				takes("warmest", units.Celsius, "its warmest temperature since gas last came off", -2, 40, 20),
				takes("sugar_left", units.GramPerLitre, "fermentable sugar still in the drink", 0, 30, 0).or(0),
				primerChoice(), takesLiquid(), takesPlace(), primeWith),
			from(func(p primed) units.Mass { return p.Primer.Mass }, "mass", units.Gram, "of the primer as weighed, for all of the drink"),
			from(func(p primed) units.CarbonDioxideContent { return p.have }, "dissolved", units.GramCO2PerLitre, "CO2 that the drink holds already"),
			from(func(p primed) units.CarbonDioxideContent { return p.Final }, "final", units.GramCO2PerLitre, "CO2 once all has fermented"),
			says(func(p primed) caution.List { return p.Cautions })),
		heavy(entry("closed_vessel_pressure", "pressure of a closed bottle or can at a temperature, against its rating",
			henryDrink+"; air in it by IAPWS G7-04; conservation of CO2, nitrogen and oxygen",
			of8(takes("temperature", units.Celsius, "temperature of the closed vessel", -2, 90, 35),
				takesVolumes("volumes", "CO2 dissolved when it is closed, before any priming ferments, real gas", 0, 10, 2.9),
				takesPack("that can still ferment"), takesDrink(), takesPlace(), takesRating(),
				takes("priming", units.GramPerLitre, "sugar added to ferment in it, as sucrose; counted as fermented", 0, 300, 0).or(0),
				takes("air_removed", units.Percent, "share of the air that open water holds which the drink does not bring: near 100 after a boil or a ferment; 0 "+
					"gives the higher pressure", 0, 100, 0).or(0),
				func(t units.Temperature, c units.CarbonDioxideContent, p packed, s gravity.Solution, air units.Atmosphere, rating units.GaugePressure,
					priming units.MassConcentration, removed units.Share) (closed, error) {
					p.vessel.Rating = rating
					p.filling.Content, p.filling.Priming, p.filling.AirRemoved = c, priming, removed
					return closePack(t, p, s, air)
				}),
			from(func(c closed) units.GaugePressure { return c.now.Gauge }, "gauge_pressure", units.KilopascalGauge,
				"pressure; the rating is held against the worst"),
			from(func(c closed) units.GaugePressure { return c.worst.Gauge }, "worst_gauge_pressure", units.KilopascalGauge,
				"the same if the sugar left ferments"),
			from(func(c closed) units.CarbonDioxideVolumes { return carbonation.RealVolume.Volumes(c.now.Content) },
				"at_rest", units.VolumesCO2, "CO2 in the drink then, real gas"),
			from(func(c closed) units.Share { return c.now.HeadspaceShare }, "headspace", units.Percent, "head-space, share of the capacity"),
			numberFrom(func(c closed) float64 { return yesNo(c.now.AtLeast || c.worst.AtLeast) }, "only_a_lower_bound", "",
				"1 if the vessel is full of liquid or above 20 bar absolute: there is no figure then, and the pressure stands at 20 bar absolute"),
			judges(func(c closed) carbonation.Verdict { return c.worst.Verdict }),
			says(func(c closed) caution.List {
				return append(c.now.Cautions[:len(c.now.Cautions):len(c.now.Cautions)], c.worst.Cautions...)
			}))),
	}
}
