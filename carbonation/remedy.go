package carbonation

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// WarmestWithin returns the highest temperature up to which the vessel stays within
// its rating, the sugar left counted as fermented; at it the vessel still does. It is
// 90 °C, the end of the range, for a vessel that never passes it. A full vessel passes
// any rating.
//
//   - Source: [ClosedVessel.Worst], solved for the rating.
//   - Range: a vessel with a rating that holds at −2 °C, where it has a head-space;
//     otherwise the error is a [*units.RangeError].
//   - Units: °C.
//   - Uncertainty: as [ClosedVessel.At]; 5 % of the pressure is about 3 K.
func (c ClosedVessel) WarmestWithin() (units.Temperature, error) {
	const fn = "carbonation.ClosedVessel.WarmestWithin"
	rating := c.vessel.Rating.In(units.KilopascalGauge)
	if err := limit.Check(fn, "rating", rating, "kPa gauge", leastRating, mostRating, "a rating is needed"); err != nil {
		return units.Temperature{}, err
	}
	cold := c.stateAt(units.Celsius.Of(coldest), true)
	if err := cold.within(fn, "at −2 °C", c.vessel); err != nil {
		return units.Temperature{}, err
	}
	outside := c.outside.Pressure().In(units.Kilopascal)
	holds := func(celsius float64) bool {
		s, _ := c.settle(celsius, true)
		return !s.locked && !s.beyond && s.total-outside <= rating
	}
	const stride = 2 // K
	low := float64(coldest)
	for high := low + stride; high <= warmest; high += stride {
		if !holds(high) {
			return units.Celsius.Of(checked.Number(last(low, high, holds))), nil
		}
		low = high
	}
	return units.Celsius.Of(warmest), nil
}

// last halves the way from where something holds to where it does not, down to nothing,
// and returns the last place where it does.
func last(low, high float64, holds func(float64) bool) float64 {
	for range 60 {
		if m := (low + high) / 2; holds(m) {
			low = m
		} else {
			high = m
		}
	}
	return low
}

// within is an error if a state is over the rating of its vessel or full of liquid.
func (p PackState) within(fn, when string, v Vessel) error {
	if p.Verdict == Locked {
		return limit.Check(fn, "head-space "+when, 0, "L", 1e-9, v.Capacity.In(units.Litre), "a vessel full of liquid is within no rating")
	}
	most := v.Rating.In(units.KilopascalGauge)
	if p.AtLeast {
		most = math.Min(most, p.Gauge.In(units.KilopascalGauge)*(1-rounding))
	}
	return limit.Check(fn, "pressure "+when, p.Gauge.In(units.KilopascalGauge), "kPa gauge", -chemistry.StandardKPa, most, "within the rating")
}

// MostContent returns the highest content at filling that keeps the vessel within
// its rating at a temperature, everything else as in the filling; sugar and priming
// count as fermented. It is 15 g/L, the end of the range, for a vessel that holds more.
//
//   - Source: [ClosedVessel.Worst], solved for the rating.
//   - Range: a vessel with a rating that a flat drink does not pass, nor fills;
//     otherwise the error is a [*units.RangeError].
//   - Units: g/L at 20 °C.
//   - Uncertainty: as [ClosedVessel.At].
func (v Vessel) MostContent(drink gravity.Solution, f Filling, t units.Temperature, outside units.Atmosphere) (units.CarbonDioxideContent, error) {
	const fn, most = "carbonation.Vessel.MostContent", 15 // g/L
	if err := limit.Check(fn, "rating", v.Rating.In(units.KilopascalGauge), "kPa gauge", leastRating, mostRating, "a rating is needed"); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	with := func(g float64) (PackState, error) {
		h := f
		h.Content = grams(g)
		c, err := v.Close(drink, h, outside)
		if err != nil {
			return PackState{}, err
		}
		return c.Worst(t)
	}
	flat, err := with(0)
	if err != nil {
		return units.CarbonDioxideContent{}, limit.Named(fn, err)
	}
	if err := flat.within(fn, "of the flat drink", v); err != nil {
		return units.CarbonDioxideContent{}, limit.Named(fn, err)
	}
	holds := func(g float64) bool {
		p, err := with(g)
		return err == nil && p.Verdict == WithinRating
	}
	if holds(most) {
		return grams(most), nil
	}
	return grams(last(0, most, holds)), nil
}
