package catalogue

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// carbonationSafety are purging, cylinders and rooms.
func carbonationSafety() []Function {
	vessel := in("volume", units.Litre, "of the vessel", 0.001, 1e6, 19)
	temperature := in("temperature", units.Celsius, "temperature of the gas", 0, 40, 20).or(20)
	room := in("room", units.CubicMetre, "volume of the room", 0.1, 1e6, 25)
	fresh := number("fresh_air_co2", "", "CO2 of the fresh air, ppm", 0, 5000, 420).or(420)
	return []Function{
		{
			Name:    "purge_fill_and_vent",
			Meaning: "air left in a vessel that was filled with CO2 and vented several times",
			Source:  "definition: (p0/p1)^n, gas well mixed",
			Inputs: []Input{
				vessel,
				in("gauge_pressure", units.KilopascalGauge, "to which it is filled", 0, 1000, 200),
				count("rounds", "how many times", 0, 1000, 5),
				temperature, altitudeInput(), ratingInput(),
			},
			Outputs: []Output{
				out("air", units.Percent, "of the gas that is left air"),
				pure("oxygen", "", "parts per million of the gas"),
				out("gas", units.Gram, "CO2 used"), verdictOutput(), cautionOutput(),
			},
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[4]))
				if err != nil {
					return err
				}
				p, err := carbonation.FillAndVent(as(units.Litre, in[0]), as(units.Celsius, in[3]), as(units.KilopascalGauge, in[1]), int(in[2]), air)
				verdict, warned := carbonation.Rated(as(units.KilopascalGauge, in[1]), as(units.KilopascalGauge, in[5]))
				out[0], out[1], out[2] = p.Air.In(units.Percent), p.Oxygen.In(units.PartPerMillion), p.Gas.In(units.Gram)
				out[3], out[4] = float64(verdict), float64(set(p.Cautions...)|set(warned...))
				return err
			},
		},
		{
			Name:    "purge_flush",
			Meaning: "air left in a vessel through which CO2 was passed",
			Source:  "definition: exp(−V), gas well mixed",
			Inputs: []Input{
				vessel,
				number("volumes", "", "volumes of the vessel passed through it", 0, 100, 3),
				temperature, altitudeInput(),
			},
			Outputs: []Output{
				out("air", units.Percent, "of the gas that is left air"),
				pure("oxygen", "", "parts per million of the gas"),
				out("gas", units.Gram, "CO2 used"), cautionOutput(),
			},
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[3]))
				if err != nil {
					return err
				}
				p, err := carbonation.Flush(as(units.Litre, in[0]), as(units.Celsius, in[2]), in[1], air)
				out[0], out[1], out[2], out[3] = p.Air.In(units.Percent), p.Oxygen.In(units.PartPerMillion), p.Gas.In(units.Gram), float64(set(p.Cautions...))
				return err
			},
		},
		{
			Name:    "cylinder_kegs",
			Meaning: "how many kegs a charge of CO2 serves",
			Source:  virialSource + "; gas balance",
			Inputs: []Input{
				in("charge", units.Kilogram, "CO2 in the cylinder", 0.001, 1000, 2.27),
				in("keg", units.Litre, "volume of a keg", 0.1, 1000, 19),
				in("content", units.GramCO2PerLitre, "CO2 that the drink takes from the cylinder", 0, 30, 4.3),
				in("temperature", units.Celsius, "of serving", -2, 40, 4),
				in("gauge_pressure", units.KilopascalGauge, "of serving", 0, 500, 110),
				in("purge", units.Gram, "CO2 to purge a keg", 0, 1e5, 150),
				in("leak", units.Percent, "of all the gas", 0, 90, 10),
				altitudeInput(),
			},
			Outputs: []Output{
				pure("kegs", "", "served whole"),
				out("each", units.Gram, "CO2 for a keg"),
				cautionOutput(),
			},
			heavy: true,
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[7]))
				if err != nil {
					return err
				}
				k := carbonation.KegService{
					Volume: as(units.Litre, in[1]), Drink: as(units.Litre, in[1]), Carbonate: as(units.GramCO2PerLitre, in[2]),
					Temperature: as(units.Celsius, in[3]), Serving: as(units.KilopascalGauge, in[4]), Purge: as(units.Gram, in[5]), Leak: as(units.Percent, in[6]),
				}
				u, err := k.Kegs(as(units.Kilogram, in[0]), air)
				out[0], out[1], out[2] = float64(u.Kegs), u.Each.In(units.Gram), float64(set(u.Cautions...))
				return err
			},
		},
		{
			Name:    "room_co2",
			Meaning: "CO2 in the air of a closed room after a release, well mixed; it is worse near the floor",
			Source:  virialSource + "; well-mixed room",
			Inputs: []Input{
				in("mass", units.Kilogram, "CO2 set free", 0, 1e6, 2.268),
				room, temperature, fresh, altitudeInput(),
			},
			Outputs: []Output{
				pure("co2", "", "ppm by volume; 5000 is the limit of a working day, 40000 an immediate danger"),
				out("oxygen", units.Percent, "of the air"),
				cautionOutput(),
			},
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[4]))
				if err != nil {
					return err
				}
				r, err := carbonation.Released(as(units.Kilogram, in[0]), as(units.CubicMetre, in[1]), as(units.Celsius, in[2]), as(units.PartPerMillion, in[3]), air)
				out[0], out[1], out[2] = r.Level.In(units.PartPerMillion), r.Oxygen.In(units.Percent), float64(set(r.Cautions...))
				return err
			},
		},
		{
			Name:    "room_ventilation",
			Meaning: "fresh air that keeps a room under a limit of CO2, well mixed; draw the air from the floor",
			Source:  "balance of a well-mixed room; 29 CFR 1910.1000 table Z-1",
			Inputs: []Input{
				in("rate", units.Gram, "CO2 given off in an hour, at the peak", 0.001, 1e6, 60),
				room, temperature,
				number("limit", "", "CO2 allowed, ppm", 1, 40000, 5000).or(5000),
				fresh, altitudeInput(),
			},
			Outputs: []Output{
				out("fresh_air", units.CubicMetrePerHour, "that holds the limit"),
				pure("reached", "h", "time to the limit without fresh air"),
				cautionOutput(),
			},
			call: func(in, out []float64) error {
				air, err := units.AtAltitude(as(units.Metre, in[5]))
				if err != nil {
					return err
				}
				v, err := carbonation.Ventilate(as(units.Gram, in[0]), as(units.CubicMetre, in[1]), as(units.Celsius, in[2]), as(units.PartPerMillion, in[3]), as(units.PartPerMillion, in[4]), air)
				out[0], out[1], out[2] = v.FreshAir.In(units.CubicMetrePerHour), v.Reached.Hours(), float64(set(v.Cautions...))
				return err
			},
		},
		{
			Name:    "room_airing",
			Meaning: "how long a room must be aired until its CO2 is down to a limit, once nothing more is given off, well mixed",
			Source:  "balance of a well-mixed room; 29 CFR 1910.1000 table Z-1",
			Inputs: []Input{
				number("co2", "", "CO2 in the room, ppm", 0, 1e6, 41500),
				room,
				in("fresh_air", units.CubicMetrePerHour, "blown or drawn through it", 0.001, 1e7, 100),
				number("limit", "", "CO2 allowed, ppm", 1, 40000, 5000).or(5000),
				fresh,
			},
			Outputs: []Output{
				pure("time", "h", "after which a meter is sent in; corners and pits take several times as long"),
				cautionOutput(),
			},
			call: func(in, out []float64) error {
				d, warned, err := carbonation.AirOut(as(units.CubicMetre, in[1]), as(units.CubicMetrePerHour, in[2]), as(units.PartPerMillion, in[0]), as(units.PartPerMillion, in[3]), as(units.PartPerMillion, in[4]))
				out[0], out[1] = d.Hours(), float64(set(warned...))
				return err
			},
		},
	}
}
