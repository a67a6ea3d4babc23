package gravity

import (
	"errors"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// How far a final gravity may lie under the dry floor and count as dry: in standard
// uncertainties of both readings, and in gravity for the floor's own.
const (
	underFloor      = 4
	underFloorLeast = 0.001
)

// StrengthByHydrometer returns the strength from two gravities, each with its
// uncertainty, for a yield with a relative standard uncertainty, its spread: 1 % for
// malt, 3 % for a sugar wash. correlation is how far the two gravities share their
// error: 0 for two instruments, near 1 for the fault of one scale.
//
//   - Source: [FromOriginalAndApparent], propagated after JCGM 100:2008 eq. 13. Under the dry
//     floor, where no state is, the strength goes on straight for the uncertainty, so that a
//     reading at the floor is as unsure as one above it.
//   - Range: gravities of a fermentation, where a final one under the dry floor counts as
//     dry if it is within 0.001 and 4 standard uncertainties of it; a spread from 0 to 20 %, a
//     correlation from −1 to 1. Otherwise the error is a [*units.RangeError].
//   - Uncertainty: the result's own; near the floor it is the larger of what could be said, as
//     it leaves out that no wash is drier than dry. "May this instrument support a label
//     tolerance?" is [units.Measured.Capability] of it.
func StrengthByHydrometer(original, final units.MeasuredNumber, y Yield, spread units.Share, correlation float64) (units.MeasuredStrength, error) {
	if err := checkSpread("gravity.StrengthByHydrometer", spread); err != nil {
		return units.MeasuredStrength{}, limit.Named("gravity.StrengthByHydrometer", err)
	}
	yield, err := units.Measure(units.One.Of(1), number(spread.In(units.Percent)/100))
	if err != nil {
		return units.MeasuredStrength{}, limit.Named("gravity.StrengthByHydrometer", err)
	}
	leeway := underFloor*(original.Uncertainty().In(units.One)+final.Uncertainty().In(units.One)) + underFloorLeast
	var at *reading // the readings themselves: Propagate begins with them
	m, err := units.Propagate(func(x units.Trial) (units.StrengthByVolume, error) {
		now, err := continued(units.At(x, &original).In(units.One), units.At(x, &final).In(units.One), y.times(units.At(x, &yield).In(units.One)))
		if at == nil {
			at = &now
			if err == nil && now.under > leeway {
				err = now.outside
			}
		}
		return percentVolume(now.strength + now.slope*now.under), limit.Named("gravity.StrengthByHydrometer", err)
	}, &original, &final, &yield, units.Correlation{A: &original, B: &final, R: correlation})
	if err != nil || at.under == 0 {
		return m, limit.Named("gravity.StrengthByHydrometer", err)
	}
	return units.Measure(percentVolume(at.strength), m.Uncertainty()) // dry is dry
}

// A reading is the strength by two gravities, and how far under the floor the second lies.
type reading struct {
	strength float64 // % vol, at most that of the dry wash
	under    float64 // gravity
	slope    float64 // % vol for a gravity of 1, at the floor
	outside  error   // what says so
}

// continued is [FromOriginalAndApparent], with a straight line under the floor.
func continued(original, final float64, y Yield) (reading, error) {
	og, err := FromSG(original)
	if err != nil {
		return reading{}, err
	}
	fg, err := FromSG(final)
	if err != nil {
		return reading{}, err
	}
	f, err := FromOriginalAndApparent(og.Extract(), fg.Extract(), y)
	e, ok := errors.AsType[*units.RangeError](err)
	if !ok || e.Quantity != "apparent extract" || e.Value >= e.Min {
		return reading{strength: f.liquid.strength()}, err
	}
	p := og.Extract().In(units.DegreePlato)
	end, err := stateOf(e.Func, p, p, y)
	if err != nil { // not reached: the range that was left ends there
		return reading{}, err
	}
	dry, floor := end.liquid.strength(), end.liquid.Gravity()
	damp, err := stateOf(e.Func, p, p*(1-min(0.25/(e.Max-e.Min), 0.5)), y) // about 0.25 °P above it
	if err != nil {                                                        // not reached: the end has one, and this lies before it
		return reading{}, err
	}
	wet, above := damp.liquid.strength(), damp.liquid.Gravity()
	r := reading{strength: dry, under: floor.SG() - final, outside: e}
	if above.SG() > floor.SG() { // else there is no extract, and no strength
		r.slope = (dry - wet) / (above.SG() - floor.SG())
	}
	return r, nil
}

// checkSpread refuses a spread of a yield that no fermentation has.
func checkSpread(fn string, spread units.Share) error {
	return limit.Check(fn, "spread of the yield", spread.In(units.Percent), "%", 0, 20, "a fermentation")
}
