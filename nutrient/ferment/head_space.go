package ferment

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// GasCaution goes with every result about gas given off.
const GasCaution caution.Caution = "gas: CO2 suffocates without warning and gathers low: ferment in an aired room, and never lock a vessel that " +
	"ferments. Workplace limit 5000 ppm over 8 h (29 CFR 1910.1000 table Z-1); check the law in force."

// HeadSpace is what a ferment asks of the room above the liquid.
type HeadSpace struct {
	Room     units.Volume // above the liquid
	Wanted   units.Volume // for the foam to stay inside
	BlowOff  bool         // whether to lead the foam off through a wide tube
	Cautions caution.List
}

// HeadSpaceNeed compares the room above a ferment with what foam takes: a fifth of
// the liquid, a tenth for a sugar wash that hardly foams.
//
//   - Source: common practice, no source: 20 % of the volume for wort, from 10 % for
//     sugar washes to 25 % for warm wheat worts.
//   - Range: a capacity above the volume; otherwise the error is a
//     [*units.RangeError].
func HeadSpaceNeed(capacity, v units.Volume, foams bool) (HeadSpace, error) {
	const fn = "ferment.HeadSpaceNeed"
	litres := v.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", amount.LeastVolume, capacity.In(units.Litre), "the capacity of the vessel"); err != nil {
		return HeadSpace{}, err
	}
	wanted := 0.10
	if foams {
		wanted = 0.20
	}
	out := HeadSpace{
		Room:     capacity.Minus(v),
		Wanted:   units.Litre.Of(checked.Number(wanted * litres)),
		Cautions: caution.List{GasCaution},
	}
	out.BlowOff = out.Room.Compare(out.Wanted) < 0
	out.Cautions = out.Cautions.WithIf(out.BlowOff, blockedAirlock)
	return out, nil
}

const blockedAirlock caution.Caution = "blocked_airlock: Foam may reach the airlock: lead the gas through a wide tube into water, as a blocked airlock " +
	"turns the vessel into a bomb."
