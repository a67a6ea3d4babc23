package carbonation

import (
	"time"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// Burst is a quick carbonation under a high pressure that is set back in time.
type Burst struct {
	Stop  time.Duration       // after which the pressure is set back
	Then  units.GaugePressure // to which it is set back: the target's own
	Gauge units.GaugePressure // the high pressure
	// Forgotten is what the drink comes to if the pressure is not set back.
	Forgotten units.CarbonDioxideContent
	// HourLate is what it has an hour after the stop time.
	HourLate units.CarbonDioxideContent
	Verdict  Verdict
	Cautions caution.List
}

// PlanBurst returns when to stop a burst.
//
//   - Source: [Keg.Until] towards the content that the high pressure
//     holds, [Liquid.Content].
//   - Range: a target between the content at the start and that at the high
//     pressure; neither needs more than 2000 kPa absolute; otherwise the error is a
//     [*units.RangeError].
//   - Units: gauge in the atmosphere given; contents in g/L at 20 °C.
//   - Uncertainty: that of the rate, easily a factor of two until it is fitted:
//     stop at two thirds of the time and taste.
func (l Liquid) PlanBurst(from units.CarbonDioxideContent, target units.CarbonDioxideContent, high units.GaugePressure, rating units.GaugePressure,
	rate units.Rate, t units.Temperature, outside units.Atmosphere) (Burst, error) {
	p, err := outside.Absolute(high)
	if err != nil {
		return Burst{}, limit.Named("carbonation.Liquid.PlanBurst", err)
	}
	forgotten, err := l.Content(p, t)
	if err != nil {
		return Burst{}, limit.Named("carbonation.Liquid.PlanBurst", err)
	}
	stop, err := Keg{Content: from, Target: target, Rate: rate}.Until(forgotten)
	if err != nil {
		return Burst{}, limit.Named("carbonation.Liquid.PlanBurst", err)
	}
	then, err := l.Pressure(target, t)
	if err != nil {
		return Burst{}, limit.Named("carbonation.Liquid.PlanBurst", err)
	}
	verdict, warned := rated(high, rating)
	verdict, warned = iced(verdict, warned, t.In(units.Celsius) < l.freezes)
	return Burst{
		Stop: stop, Then: outside.Gauge(then), Gauge: high,
		Forgotten: forgotten, HourLate: approached(rate, target, forgotten, time.Hour),
		Verdict:  verdict,
		Cautions: (warned | cautions(Overshoot, Cylinder)).with(BelowAtmosphere, outside.Gauge(then).In(units.KilopascalGauge) < 0).list(),
	}, nil
}
