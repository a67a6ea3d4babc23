package nutrient

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// GasCaution goes with every result about gas given off.
const GasCaution = "CO2 suffocates without warning and gathers low: ferment in an aired room, and never lock a vessel that ferments. Workplace limit 5000 ppm over 8 h (29 CFR 1910.1000 table Z-1); check the law in force."

// GasVolume returns the volume of so much CO2 gas at a temperature and pressure.
//
//   - Source: ideal gas, R 8.314462618 J/(mol·K) (CODATA 2018).
//   - Range: 0 to 1e9 kg, −10 to 60 °C, 20 to 200 kPa; beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: 0.6 % too large at 20 °C and 1 atm (real gas: 0.5437 m³/kg).
func GasVolume(co2 units.Mass, t units.Temperature, p units.AbsolutePressure) (units.Volume, error) {
	const fn, source = "nutrient.GasVolume", "ideal gas"
	const gasConstant = 8.314462618 // J/(mol·K)
	g, kelvin, kpa := co2.In(units.Gram), t.In(units.Kelvin), p.In(units.Kilopascal)
	if err := limit.Check(fn, "CO2", g/1000, "kg", 0, mostMass/1000, source); err != nil {
		return units.Volume{}, err
	}
	if err := limit.Check(fn, "temperature", t.In(units.Celsius), "°C", -10, 60, source); err != nil {
		return units.Volume{}, err
	}
	if err := limit.Check(fn, "pressure", kpa, "kPa", 20, 200, source); err != nil {
		return units.Volume{}, err
	}
	return units.Litre.Of(checked.Number(g / carbonDioxide.molar() * gasConstant * kelvin / kpa)), nil
}

// HeadSpace is what a ferment asks of the room above the liquid.
type HeadSpace struct {
	Room     units.Volume // above the liquid
	Wanted   units.Volume // for the foam to stay inside
	BlowOff  bool         // whether to lead the foam off through a wide tube
	Cautions []string
}

// HeadSpaceNeed compares the room above a ferment with what foam takes: a fifth of
// the liquid, a tenth for a sugar wash that hardly foams.
//
//   - Source: common practice, no source: 20 % of the volume for wort, from 10 % for
//     sugar washes to 25 % for warm wheat worts.
//   - Range: a capacity above the volume; otherwise the error is a
//     [*units.RangeError].
func HeadSpaceNeed(capacity, v units.Volume, foams bool) (HeadSpace, error) {
	const fn = "nutrient.HeadSpaceNeed"
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", leastVolume, capacity.In(units.Litre), "the capacity of the vessel"); err != nil {
		return HeadSpace{}, err
	}
	wanted := 0.10
	if foams {
		wanted = 0.20
	}
	out := HeadSpace{
		Room:     capacity.Minus(v),
		Wanted:   units.Litre.Of(checked.Number(wanted * litres)),
		Cautions: []string{GasCaution},
	}
	if out.Room.Compare(out.Wanted) < 0 {
		out.BlowOff = true
		out.Cautions = append(out.Cautions, "Foam may reach the airlock: lead the gas through a wide tube into water, as a blocked airlock turns the vessel into a bomb.")
	}
	return out, nil
}

// RoomCO2 returns the share of CO2 in the air of a closed room after so much CO2
// went into it.
//
//   - Source: volume of gas over volume of room, with [GasVolume].
//   - Range: a room of 0.1 to 1e6 m³ that holds more air than gas; beyond it the error
//     is a [*units.RangeError].
func RoomCO2(co2 units.Mass, room units.Volume, t units.Temperature, p units.AbsolutePressure) (units.Share, error) {
	const fn = "nutrient.RoomCO2"
	v, err := GasVolume(co2, t, p)
	if err != nil {
		return units.Share{}, err
	}
	m3 := room.In(units.CubicMetre)
	if err := limit.Check(fn, "room", m3, "m³", 0.1, 1e6, "a room"); err != nil {
		return units.Share{}, err
	}
	s := v.In(units.CubicMetre) / m3
	if err := limit.Check(fn, "gas", 100*s, "% of the room", 0, 100, "a room"); err != nil {
		return units.Share{}, err
	}
	return share(s), nil
}
