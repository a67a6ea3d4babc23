package carbonation

import (
	"time"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// A Keg is one of several on a regulator.
type Keg struct {
	Liquid      Liquid
	Temperature units.Temperature
	Content     units.CarbonDioxideContent // now
	Target      units.CarbonDioxideContent
	Rate        units.Rate          // part of the remaining gap to equilibrium that it closes an hour
	Rating      units.GaugePressure // zero if it is not known
}

// KegOnRegulator is what becomes of a keg.
type KegOnRegulator struct {
	Content units.CarbonDioxideContent // after the time asked for
	AtRest  units.CarbonDioxideContent // if left for good
	Needs   units.GaugePressure        // that would hold its own target
	// Reaches is when it comes to its target, if it does at this pressure.
	Reaches    time.Duration
	HasReached bool // it comes to its target at this pressure
	Verdict    Verdict
	Cautions   caution.List
}

// OnRegulator returns what becomes of several kegs that share one pressure for a
// time. A keg whose target needs less pressure passes it: the result carries
// [Overshoot]; a target that needs less than the atmosphere, or such a setting, carries
// [BelowAtmosphere].
//
//   - Source: [Keg.After] and [Liquid.Content] for each.
//   - Range: 1 to 1000 kegs; otherwise as [Liquid.Content], [Liquid.Pressure] and
//     [Keg.After]; the error is a [*units.RangeError].
//   - Units: gauge in the atmosphere given.
//   - Uncertainty: that of the rates.
func OnRegulator(kegs []Keg, set units.GaugePressure, after time.Duration, outside units.Atmosphere) ([]KegOnRegulator, error) {
	if err := limit.Check("carbonation.OnRegulator", "number of kegs", float64(len(kegs)), "", 1, 1000, "kegs on a regulator"); err != nil {
		return nil, err
	}
	p, err := outside.Absolute(set)
	if err != nil {
		return nil, limit.Named("carbonation.OnRegulator", err)
	}
	list := make([]KegOnRegulator, 0, len(kegs))
	for _, k := range kegs {
		rest, err := k.Liquid.Content(p, k.Temperature)
		if err != nil {
			return nil, limit.Named("carbonation.OnRegulator", err)
		}
		needs, err := k.Liquid.Pressure(k.Target, k.Temperature)
		if err != nil {
			return nil, limit.Named("carbonation.OnRegulator", err)
		}
		then, err := k.After(rest, after)
		if err != nil {
			return nil, limit.Named("carbonation.OnRegulator", err)
		}
		verdict, warned := rated(set, k.Rating)
		verdict, warned = iced(verdict, warned, k.Temperature.In(units.Celsius) < k.Liquid.freezes)
		r := KegOnRegulator{
			Content: then, AtRest: rest, Needs: outside.Gauge(needs), Verdict: verdict,
			Cautions: (warned|cautions(Cylinder)).with(sharedRegulator, len(kegs) > 1).
				with(BelowAtmosphere, outside.Gauge(needs).In(units.KilopascalGauge) < 0).
				with(Overshoot, rest.In(units.GramCO2PerLitre) > (1+taste)*k.Target.In(units.GramCO2PerLitre)).list(),
		}
		if d, err := k.Until(rest); err == nil {
			r.Reaches, r.HasReached = d, true
		}
		list = append(list, r)
	}
	return list, nil
}

// taste is by how much a content may pass its target before it is called too much:
// common practice, no source.
const taste = 0.05
