package catalogue

import (
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// ppm is a share stated in parts per million, which the sheets know as a pure number.
func ppm(name, meaning string, min, max, example float64) arg[units.Share] {
	return reads(number(name, "", meaning+", ppm", min, max, example), func(x float64) (units.Share, error) { return as(units.PartPerMillion, x), nil })
}

// ppmFrom is a share of a result in parts per million.
func ppmFrom[T any](get func(T) units.Share, name, meaning string) result[T] {
	return numberFrom(func(v T) float64 { return get(v).In(units.PartPerMillion) }, name, "", meaning)
}

// A purged is a vessel purged, and the pressure that did it against the rating.
type purged struct {
	carbonation.Purge
	verdict carbonation.Verdict
	warned  caution.List
}

func fillAndVent(v units.Volume, to units.GaugePressure, rounds float64, t units.Temperature, air units.Atmosphere,
	rating units.GaugePressure) (purged, error) {
	p, err := carbonation.FillAndVent(v, t, to, int(rounds), air)
	verdict, warned := carbonation.Rated(to, rating)
	return purged{p, verdict, append(p.Cautions[:len(p.Cautions):len(p.Cautions)], warned...)}, err
}

// airLeft are the outputs of a purge.
func airLeft(more ...result[purged]) []result[purged] {
	return append([]result[purged]{
		from(func(p purged) units.Share { return p.Air }, "air", units.Percent, "of the gas that is left air"),
		ppmFrom(func(p purged) units.Share { return p.Oxygen }, "oxygen", "parts per million of the gas"),
		from(func(p purged) units.Mass { return p.Gas }, "gas", units.Gram, "CO2 used"),
	}, more...)
}

// takesService is what a keg takes from a cylinder.
func takesService() arg[carbonation.KegService] {
	return of6(takes("keg", units.Litre, "volume of a keg", 0.1, 1000, 19),
		takes("content", units.GramCO2PerLitre, "CO2 that the drink takes from the cylinder", 0, 30, 4.3),
		takes("temperature", units.Celsius, "of serving", -2, 40, 4), takes("gauge_pressure", units.KilopascalGauge, "of serving", 0, 500, 110),
		takes("purge", units.Gram, "CO2 to purge a keg", 0, 1e5, 150), takes("leak", units.Percent, "of all the gas", 0, 90, 10),
		func(v units.Volume, c units.CarbonDioxideContent, t units.Temperature, g units.GaugePressure, purge units.Mass,
			leak units.Share) (carbonation.KegService, error) {
			return carbonation.KegService{Volume: v, Drink: v, Carbonate: c, Temperature: t, Serving: g, Purge: purge, Leak: leak}, nil
		})
}

// carbonationSafety are purging, cylinders and rooms.
func carbonationSafety() []*Function {
	type (
		use         = carbonation.CylinderUse
		release     = carbonation.Release
		ventilation = carbonation.Ventilation
		airing      = pair[time.Duration, caution.List]
	)
	const mixed = "balance of a well-mixed room; 29 CFR 1910.1000 table Z-1"
	vessel := takes("volume", units.Litre, "of the vessel", 0.001, 1e6, 19)
	temperature := takes("temperature", units.Celsius, "temperature of the gas", 0, 40, 20).or(20)
	room := takes("room", units.CubicMetre, "volume of the room", 0.1, 1e6, 25)
	fresh := ppm("fresh_air_co2", "CO2 of the fresh air", 0, 5000, 420).or(420)
	most := ppm("limit", "CO2 allowed", 1, 40000, 5000).or(5000)
	warnings := says(func(p purged) caution.List { return p.warned })
	return []*Function{
		entry("purge_fill_and_vent", "air left in a vessel that was filled with CO2 and vented several times", "definition: (p0/p1)^n, gas well mixed",
			of6(vessel, takes("gauge_pressure", units.KilopascalGauge, "to which it is filled", 0, 1000, 200),
				readsNumber(count("rounds", "how many times", 0, 1000, 5)),
				temperature, takesPlace(), takesRating(), fillAndVent),
			airLeft(judges(func(p purged) carbonation.Verdict { return p.verdict }), warnings)...),
		entry("purge_flush", "air left in a vessel through which CO2 was passed", "definition: exp(−V), gas well mixed",
			of4(vessel, takesNumber("volumes", "", "volumes of the vessel passed through it", 0, 100, 3), temperature, takesPlace(),
				func(v units.Volume, times float64, t units.Temperature, air units.Atmosphere) (purged, error) {
					p, err := carbonation.Flush(v, t, times, air)
					return purged{Purge: p, warned: p.Cautions}, err
				}),
			airLeft(warnings)...),
		heavy(entry("cylinder_kegs", "how many kegs a charge of CO2 serves", virialSource+"; gas balance",
			of3(takes("charge", units.Kilogram, "CO2 in the cylinder", 0.001, 1000, 2.27), takesService(), takesPlace(),
				func(m units.Mass, k carbonation.KegService, air units.Atmosphere) (use, error) { return k.Kegs(m, air) }),
			numberFrom(func(u use) float64 { return float64(u.Kegs) }, "kegs", "", "served whole"),
			from(func(u use) units.Mass { return u.Each }, "each", units.Gram, "CO2 for a keg"),
			says(func(u use) caution.List { return u.Cautions }))),
		entry("room_co2", "CO2 in the air of a closed room after a release, well mixed; it is worse near the floor", virialSource+"; well-mixed room",
			of5(takes("mass", units.Kilogram, "CO2 set free", 0, 1e6, 2.268), room, temperature, fresh, takesPlace(), carbonation.Released),
			ppmFrom(func(r release) units.Share { return r.Level }, "co2", "ppm by volume; 5000 is the limit of a working day, 40000 an immediate danger"),
			from(func(r release) units.Share { return r.Oxygen }, "oxygen", units.Percent, "of the air"),
			says(func(r release) caution.List { return r.Cautions })),
		entry("room_ventilation", "fresh air that keeps a room under a limit of CO2, well mixed; draw the air from the floor", mixed,
			of6(takes("rate", units.Gram, "CO2 given off in an hour, at the peak", 0.001, 1e6, 60), room, temperature, most, fresh, takesPlace(),
				carbonation.Ventilate),
			from(func(v ventilation) units.VolumeFlow { return v.FreshAir }, "fresh_air", units.CubicMetrePerHour, "that holds the limit"),
			numberFrom(func(v ventilation) float64 { return v.Reached.Hours() }, "reached", "h", "time to the limit without fresh air"),
			says(func(v ventilation) caution.List { return v.Cautions })),
		entry("room_airing", "how long a room must be aired until its CO2 is down to a limit, once nothing more is given off, well mixed", mixed,
			of5(ppm("co2", "CO2 in the room", 0, 1e6, 41500), room,
				takes("fresh_air", units.CubicMetrePerHour, "blown or drawn through it", 0.001, 1e7, 100), most, fresh,
				func(level units.Share, room units.Volume, air units.VolumeFlow, most, fresh units.Share) (airing, error) {
					d, warned, err := carbonation.AirOut(room, air, level, most, fresh)
					return airing{d, warned}, err
				}),
			numberFrom(func(a airing) float64 { return a.a.Hours() }, "time", "h", "after which a meter is sent in; corners and pits take several times as long"),
			says(func(a airing) caution.List { return a.b })),
	}
}
