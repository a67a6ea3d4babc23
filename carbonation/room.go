package carbonation

import (
	"cmp"
	"math"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// An ExposureLimit is a limit of CO2 in the air that people breathe.
type ExposureLimit struct {
	Name   string
	Level  units.Share   // by volume
	Over   time.Duration // averaged over; zero for an immediate danger
	Source evidence.Evidence
}

// ExposureLimits returns the limits for CO2. Local law comes first.
func ExposureLimits() []ExposureLimit {
	return []ExposureLimit{
		{"OSHA PEL, 8 h", ppm(workplace), 8 * time.Hour, evidence.Evidence{Source: "29 CFR 1910.1000 table Z-1 (2015)", Grade: evidence.Read}},
		{"ACGIH TLV, 8 h", ppm(workplace), 8 * time.Hour, evidence.Evidence{Source: "ACGIH, as quoted in the OSHA preamble", Grade: evidence.Read}},
		{"ACGIH short-term, 15 min", ppm(shortTerm), 15 * time.Minute, evidence.Evidence{Source: "ACGIH, as quoted in the OSHA preamble", Grade: evidence.Read}},
		{"NIOSH REL, 10 h", ppm(workplace), 10 * time.Hour, evidence.Evidence{Source: niosh, Grade: evidence.Read}},
		{"NIOSH short-term, 15 min", ppm(shortTerm), 15 * time.Minute, evidence.Evidence{Source: niosh, Grade: evidence.Read}},
		{"NIOSH immediately dangerous", ppm(dangerous), 0, evidence.Evidence{Source: niosh, Grade: evidence.Read}},
	}
}

const niosh = "NIOSH, Immediately Dangerous to Life or Health Concentrations, carbon dioxide (May 1994)"

// dangerous is where CO2 is an immediate danger, ppm (niosh).
const dangerous = 40000

// workplace is the limit for a working day, ppm (29 CFR 1910.1000 table Z-1).
const workplace = 5000

// shortTerm is the limit for a quarter of an hour, ppm (niosh).
const shortTerm = 30000

func ppm(x float64) units.Share { return units.PartPerMillion.Of(checked.Number(x)) }

// Release is CO2 set free in a room.
type Release struct {
	Gas      units.Volume // at the room's temperature and pressure
	Level    units.Share  // in the room by volume, well mixed, nothing let out, with that of the air before
	Oxygen   units.Share  // of the air then
	Cautions caution.List
}

const roomRange = "CO2 in a room"

// Released returns what a mass of CO2 does to the air of a closed room: a cylinder
// that lets go, a ferment without a window. Near the floor it is worse.
//
//   - Source: well-mixed room, the gas added in its place for as much air;
//     [GasDensity]; oxygen 20.95 % of fresh air.
//   - Range: mass 0 to 1e6 kg, room 0.1 to 1e6 m³, 0 to 40 °C, outside air 0 to 5000 ppm;
//     otherwise the error is a [*units.RangeError].
//   - Uncertainty: mixing: CO2 collects low, so that a knee-high layer may hold many
//     times as much.
func Released(mass units.Mass, room units.Volume, t units.Temperature, fresh units.Share, outside units.Atmosphere) (Release, error) {
	const fn = "carbonation.Released"
	before := fresh.In(units.PartPerMillion)
	if err := limit.Check(fn, "mass", mass.In(units.Kilogram), "kg", 0, 1e6, roomRange); err != nil {
		return Release{}, err
	}
	if err := checkRoom(fn, room, t, before); err != nil {
		return Release{}, err
	}
	T := t.In(units.Celsius) + chemistry.ZeroCelsius
	gas := volumeOf(T, outside.Pressure().In(units.Kilopascal), mass.In(units.Gram))
	added := math.Min(gas/room.In(units.Litre), 1)
	share := added + before/1e6*(1-added)
	return Release{
		Gas: units.Litre.Of(checked.Number(gas)), Level: ppm(1e6 * share),
		Oxygen:   units.Fraction.Of(checked.Number(oxygenShare * (1 - added))),
		Cautions: breathed(1e6 * share),
	}, nil
}

// breathed are the cautions of air with so much CO2 in it, in ppm.
func breathed(ppm float64) caution.List {
	return cautions(Asphyxiation).with(OverExposure, ppm > workplace).with(ImmediateDanger, ppm >= dangerous).list()
}

func checkRoom(fn string, room units.Volume, t units.Temperature, fresh float64) error {
	if err := limit.Check(fn, "temperature", t.In(units.Celsius), "°C", 0, 40, roomRange); err != nil {
		return err
	}
	return checkAir(fn, room, fresh)
}

// checkAir refuses a room and so many ppm of CO2 in its fresh air.
func checkAir(fn string, room units.Volume, fresh float64) error {
	if err := limit.Check(fn, "room", room.In(units.CubicMetre), "m³", 0.1, 1e6, roomRange); err != nil {
		return err
	}
	return limit.Check(fn, "CO2 of the fresh air", fresh, "ppm", 0, 5000, roomRange)
}

// Ventilation is the fresh air that a source of CO2 asks for.
type Ventilation struct {
	FreshAir   units.VolumeFlow // that holds the limit, well mixed
	Gas        units.VolumeFlow // of CO2 given off
	AirChanges units.Rate       // of the room
	// Without fresh air the limit is reached after Reached, the level that is an
	// immediate danger after Dangerous.
	Reached, Dangerous time.Duration
	Cautions           caution.List
}

// Ventilate returns the fresh air that keeps a room under a limit while CO2 is given
// off at a steady rate: take the rate of the ferment's peak.
//
//   - Source: balance of a well-mixed room: Q = G/(limit − fresh air); without fresh
//     air the level rises by G·t/V, here for 100,000 h at most. Danger at 40,000 ppm
//     (NIOSH 1994).
//   - Range: rate 0.001 g/h to 1000 kg/h; limit above the fresh air and to 40,000 ppm;
//     room 0.1 to 1e6 m³; otherwise the error is a [*units.RangeError].
//   - Units: rate as a mass in an hour.
//   - Uncertainty: mixing; draw the air from the floor, and take a multiple.
func Ventilate(perHour units.Mass, room units.Volume, t units.Temperature, most, fresh units.Share, outside units.Atmosphere) (Ventilation, error) {
	const fn = "carbonation.Ventilate"
	limitPPM, freshPPM := most.In(units.PartPerMillion), fresh.In(units.PartPerMillion)
	if err := cmp.Or(
		limit.Check(fn, "CO2 in an hour", perHour.In(units.Gram), "g", 1e-3, 1e6, roomRange),
		checkRoom(fn, room, t, freshPPM),
		limit.Check(fn, "limit", limitPPM, "ppm", freshPPM+1, dangerous, roomRange),
	); err != nil {
		return Ventilation{}, err
	}
	T := t.In(units.Celsius) + chemistry.ZeroCelsius
	gas := volumeOf(T, outside.Pressure().In(units.Kilopascal), perHour.In(units.Gram)) // L/h
	air := gas / (limitPPM - freshPPM) * 1e6
	litres := room.In(units.Litre)
	until := func(ppm float64) time.Duration {
		h := litres * (ppm - freshPPM) / 1e6 / gas
		return time.Duration(math.Min(h, 1e5) * float64(time.Hour))
	}
	return Ventilation{
		FreshAir: units.LitrePerHour.Of(checked.Number(air)), Gas: units.LitrePerHour.Of(checked.Number(gas)),
		AirChanges: units.PerHour.Of(checked.Number(air / litres)), Reached: until(limitPPM), Dangerous: until(dangerous),
		Cautions: breathed(limitPPM),
	}, nil
}

// AirOut returns how long a room with so much fresh air takes from one level of CO2 to
// a limit, once nothing more is given off: how long to stay out. It is zero where the
// level is not above the limit.
//
//   - Source: balance of a well-mixed room: t = V/Q·ln((C − fresh air)/(limit − fresh
//     air)).
//   - Range: room 0.1 to 1e6 m³, fresh air 0.001 to 1e7 m³/h with 0 to 5000 ppm, level 0
//     to 1e6 ppm, limit above the fresh air and to 40,000 ppm, at most 10 years;
//     otherwise the error is a [*units.RangeError].
//   - Uncertainty: mixing: corners and pits air several times more slowly. The time is
//     when to send a meter in, not when to walk in without one.
func AirOut(room units.Volume, freshAir units.VolumeFlow, level, most, fresh units.Share) (d time.Duration, c caution.List, err error) {
	const fn = "carbonation.AirOut"
	levelPPM, limitPPM, freshPPM := level.In(units.PartPerMillion), most.In(units.PartPerMillion), fresh.In(units.PartPerMillion)
	if err := checkAir(fn, room, freshPPM); err != nil {
		return d, c, err
	}
	flow := freshAir.In(units.CubicMetrePerHour)
	if err := cmp.Or(
		limit.Check(fn, "fresh air", flow, "m³/h", 1e-3, 1e7, roomRange),
		limit.Check(fn, "level", levelPPM, "ppm", 0, 1e6, roomRange),
		limit.Check(fn, "limit", limitPPM, "ppm", freshPPM+1, dangerous, roomRange),
	); err != nil {
		return d, c, err
	}
	above := math.Max(levelPPM, limitPPM) - freshPPM
	h := room.In(units.CubicMetre) / flow * math.Log(above/(limitPPM-freshPPM))
	if err := limit.Check(fn, "time", h, "h", 0, longest, roomRange); err != nil {
		return d, c, err
	}
	return time.Duration(h * float64(time.Hour)), breathed(levelPPM), nil
}

// GivenOff returns the CO2 that a ferment sets free while it uses an amount of
// extract: the mass, and the gas at a temperature and the pressure of the atmosphere.
//
//   - Source: the CO2 yield of the yeast (package gravity); [GasDensity].
//   - Range: extract 0 to 1e6 kg, yield 0 to 1 of its mass, 0 to 40 °C; otherwise the error is
//     a [*units.RangeError].
//   - Uncertainty: 2 %, and 1 to 2 g/L that stays in the drink.
func GivenOff(extract units.Mass, yield units.Share, t units.Temperature, outside units.Atmosphere) (units.Mass, units.Volume, error) {
	const fn = "carbonation.GivenOff"
	if err := limit.Check(fn, "extract", extract.In(units.Kilogram), "kg", 0, 1e6, roomRange); err != nil {
		return units.Mass{}, units.Volume{}, err
	}
	if err := limit.Check(fn, "CO2 yield", yield.In(units.Fraction), "g/g", 0, 1, roomRange); err != nil {
		return units.Mass{}, units.Volume{}, err
	}
	c := t.In(units.Celsius)
	if err := limit.Check(fn, "temperature", c, "°C", 0, 40, roomRange); err != nil {
		return units.Mass{}, units.Volume{}, err
	}
	g := extract.In(units.Gram) * yield.In(units.Fraction)
	v := volumeOf(c+chemistry.ZeroCelsius, outside.Pressure().In(units.Kilopascal), g)
	return units.Gram.Of(checked.Number(g)), units.Litre.Of(checked.Number(v)), nil
}
