package carbonation

import (
	"cmp"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Gases is what a closed vessel holds of each gas, dissolved and above the liquid together.
type Gases struct{ CO2, Nitrogen, Oxygen units.Mass }

// Hold returns the vessel as it stands with so much of a drink and of gases in it, however they
// came there: where a batch is carried forward by what is in it. [Vessel.Close] fills one.
// Only the kind of liquid counts in the solution; the volume is that of the gas-free drink at
// 20 °C.
//
//   - Source, units, uncertainty: as [Vessel.Close].
//   - Range: a vessel of [Vessel.Close] that has room for the drink at 20 °C; CO2 up to 100 g
//     and each other gas up to 20 g in a litre of the vessel; otherwise the error is a
//     [*units.RangeError].
func (v Vessel) Hold(drink gravity.Solution, at20 units.Volume, gases Gases, outside units.Atmosphere) (ClosedVessel, error) {
	const fn = "carbonation.Vessel.Hold"
	if err := v.check(); err != nil {
		return ClosedVessel{}, limit.Named(fn, err)
	}
	l, err := NewLiquid(drink)
	grows, noVolume := newExpansion(drink.Volume)
	if err = cmp.Or(err, noVolume); err != nil {
		return ClosedVessel{}, limit.Named(fn, err)
	}
	capacity, litres := v.Capacity.In(units.Litre), at20.In(units.Litre)
	if err := limit.Check(fn, "volume of liquid", litres, "L", 1e-9, capacity, "the vessel's capacity"); err != nil {
		return ClosedVessel{}, err
	}
	of := [...]float64{gases.CO2.In(units.Gram), gases.Nitrogen.In(units.Gram), gases.Oxygen.In(units.Gram)}
	for i, most := range [...]float64{100, 20, 20} {
		if err := limit.Check(fn, [...]string{"CO2", "nitrogen", "oxygen"}[i], of[i], "g", 0, most*capacity, vesselRange); err != nil {
			return ClosedVessel{}, err
		}
	}
	return ClosedVessel{
		vessel: v, outside: outside, drink: l, grows: grows.scaled(litres / grows.litres(20)), at20: litres,
		co2: of[0], nitrogen: of[1] / molarMassNitrogen, oxygen: of[2] / molarMassOxygen,
		trapped: of[1]+of[2] > 0, room: (capacity - litres) / capacity,
	}, nil
}
