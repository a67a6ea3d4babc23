package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// primers are what a choice of priming offers, in its order.
var primers = [...]material.Material{
	material.Sucrose(), material.DextroseMonohydrate(), material.DextroseAnhydrous(), material.Honey(),
	material.Fructose(), material.MediumInvert(), material.MapleSyrup(), material.DryMaltExtract(), material.LiquidMaltExtract(),
}

// carbonationPacks are priming and closed vessels.
func carbonationPacks() []Function {
	return []Function{
		{
			Name:    "priming_sugar",
			Meaning: "sugar that brings a drink to a CO2 content in the bottle",
			Source:  "Gay-Lussac's equation, IUPAC atomic weights 2021",
			Inputs: []Input{
				in("volumes", units.VolumesCO2, "CO2 wanted, real gas", 0, 7.5, 2.9),
				in("volume", units.Litre, "drink to be primed", 0.001, 1e6, 20),
				in("warmest", units.Celsius, "its warmest temperature since gas last came off", -2, 40, 20),
				in("sugar_left", units.GramPerLitre, "fermentable sugar still in the drink", 0, 30, 0).or(0),
				choice("primer", "what is added", "sucrose", "dextrose monohydrate", "dextrose anhydrous", "honey",
					"fructose", "invert sugar syrup", "maple syrup", "dry malt extract", "liquid malt extract").orOption("sucrose"),
				strengthInput(), extractInput(), altitudeInput(),
			},
			Outputs: []Output{
				out("mass", units.Gram, "of the primer as weighed, for all of the drink"),
				out("dissolved", units.GramCO2PerLitre, "CO2 that the drink holds already"),
				out("final", units.GramCO2PerLitre, "CO2 once all has fermented"),
				cautionOutput(),
			},
			call: func(in, out []float64) error {
				l, err := liquidOf(in[5], in[6])
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[7]))
				if err != nil {
					return err
				}
				have, err := carbonation.ResidualContent(l, as(units.Celsius, in[2]), air.Pressure())
				if err != nil {
					return err
				}
				p, err := carbonation.PrimingSugar(primers[int(in[4])], carbonation.RealVolume.Content(as(units.VolumesCO2, in[0])), have, as(units.GramPerLitre, in[3]), as(units.Litre, in[1]))
				out[0], out[1], out[2] = p.Primer.Mass.In(units.Gram), have.In(units.GramCO2PerLitre), p.Final.In(units.GramCO2PerLitre)
				out[3] = float64(set(p.Cautions...))
				return err
			},
		},
		{
			Name:    "closed_vessel_pressure",
			Meaning: "pressure of a closed bottle or can at a temperature, against its rating",
			Source:  henryDrink + "; air in it by IAPWS G7-04; conservation of CO2, nitrogen and oxygen",
			Inputs: []Input{
				in("temperature", units.Celsius, "temperature of the closed vessel", -2, 90, 35),
				in("volumes", units.VolumesCO2, "CO2 dissolved when it is closed, before any priming ferments, real gas", 0, 10, 2.9),
				in("capacity", units.Millilitre, "brim-full volume of the vessel", 1, 1e6, 345),
				in("fill", units.Millilitre, "drink in it at the filling temperature", 1, 1e6, 330),
				in("filling_temperature", units.Celsius, "temperature when it is closed", -2, 40, 18),
				in("air", units.Percent, "share of the head-space that is air when it is closed", 0, 100, 100).or(100),
				in("sugar_left", units.GramPerLitre, "fermentable sugar that can still ferment", 0, 300, 0).or(0),
				strengthInput(), extractInput(), altitudeInput(), ratingInput(),
				in("priming", units.GramPerLitre, "sugar added to ferment in it, as sucrose; counted as fermented", 0, 300, 0).or(0),
				in("air_removed", units.Percent, "share of the air that open water holds which the drink does not bring: near 100 after a boil or a ferment; 0 "+
					"gives the higher pressure", 0, 100, 0).or(0),
			},
			Outputs: []Output{
				out("gauge_pressure", units.KilopascalGauge, "pressure; the rating is held against the worst"),
				out("worst_gauge_pressure", units.KilopascalGauge, "the same if the sugar left ferments"),
				out("at_rest", units.VolumesCO2, "CO2 in the drink then, real gas"),
				out("headspace", units.Percent, "head-space, share of the capacity"),
				pure("only_a_lower_bound", "", "1 if the vessel is full of liquid or above 20 bar absolute: there is no figure then, and the pressure stands at "+
					"20 bar absolute"),
				verdictOutput(), cautionOutput(),
			},
			heavy: true,
			call: func(in, out []float64) error {
				s, err := carbonation.DrinkOf(as(units.PercentVolume, in[7]), as(units.DegreePlato, in[8]))
				if err != nil {
					return err
				}
				air, err := units.AtAltitude(as(units.Metre, in[9]))
				if err != nil {
					return err
				}
				v := carbonation.Vessel{Capacity: as(units.Millilitre, in[2]), Rating: as(units.KilopascalGauge, in[10])}
				c, err := v.Close(s, carbonation.Filling{
					Volume: as(units.Millilitre, in[3]), Temperature: as(units.Celsius, in[4]),
					Content: carbonation.RealVolume.Content(as(units.VolumesCO2, in[1])),
					Air:     as(units.Percent, in[5]), SugarLeft: as(units.GramPerLitre, in[6]),
					Priming: as(units.GramPerLitre, in[11]), AirRemoved: as(units.Percent, in[12]),
				}, air)
				if err != nil {
					return err
				}
				p, err := c.At(as(units.Celsius, in[0]))
				if err != nil {
					return err
				}
				w, err := c.Worst(as(units.Celsius, in[0]))
				out[0], out[1] = p.Gauge.In(units.KilopascalGauge), w.Gauge.In(units.KilopascalGauge)
				out[2], out[3] = carbonation.RealVolume.Volumes(p.Content).In(units.VolumesCO2), p.HeadspaceShare.In(units.Percent)
				out[4] = 0
				if p.AtLeast || w.AtLeast {
					out[4] = 1
				}
				out[5], out[6] = float64(w.Verdict), float64(set(p.Cautions...)|set(w.Cautions...))
				return err
			},
		},
	}
}
