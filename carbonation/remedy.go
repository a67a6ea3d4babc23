package carbonation

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// WarmestWithin returns the highest temperature at which the vessel stays within
// its rating, the sugar left counted as fermented. It is 90 °C, the end of the
// range, for a vessel that never passes it. A full vessel passes any rating.
//
//   - Source: [ClosedVessel.Worst], solved for the rating.
//   - Range: a vessel with a rating that holds at −2 °C; otherwise the error is a
//     [*units.RangeError].
//   - Units: °C.
//   - Uncertainty: as [ClosedVessel.At]; 5 % of the pressure is about 3 K.
func (c ClosedVessel) WarmestWithin() (units.Temperature, error) {
	const fn = "carbonation.ClosedVessel.WarmestWithin"
	rating := c.vessel.Rating.In(units.KilopascalGauge)
	if err := limit.Check(fn, "rating", rating, "kPa gauge", leastRating, mostRating, "a rating is needed"); err != nil {
		return units.Temperature{}, err
	}
	// over is how far a state passes the rating; what has no figure passes it by far.
	over := func(celsius float64) float64 {
		s, _ := c.settle(celsius, true)
		if s.locked || s.beyond {
			return highest
		}
		return s.total - c.outside.Pressure().In(units.Kilopascal) - rating
	}
	cold, hot := over(coldest), over(warmest)
	if err := limit.Check(fn, "pressure over the rating at −2 °C", cold, "kPa", -math.MaxFloat64, 0, "no temperature is within the rating"); err != nil {
		return units.Temperature{}, err
	}
	if hot <= 0 {
		return units.Celsius.Of(warmest), nil
	}
	t, err := numeric.Root(over, coldest, warmest, 0)
	return checked.Unless(err, units.Celsius.Of(checked.Number(t)))
}

// MostContent returns the highest content at filling that keeps the vessel within
// its rating at a temperature, everything else as in the filling; sugar and priming
// count as fermented.
//
//   - Source: [ClosedVessel.Worst], solved for the rating.
//   - Range: a vessel with a rating that a flat drink does not pass; otherwise the
//     error is a [*units.RangeError].
//   - Units: g/L at 20 °C.
//   - Uncertainty: as [ClosedVessel.At].
func (v Vessel) MostContent(drink gravity.Solution, f Filling, t units.Temperature, outside units.Atmosphere) (units.CarbonDioxideContent, error) {
	const fn, most = "carbonation.Vessel.MostContent", 15 // g/L
	if err := limit.Check(fn, "rating", v.Rating.In(units.KilopascalGauge), "kPa gauge", leastRating, mostRating, "a rating is needed"); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	var failed error
	over := func(g float64) float64 {
		h := f
		h.Content = grams(g)
		c, err := v.Close(drink, h, outside)
		if err != nil {
			failed = err
			return highest
		}
		p, err := c.Worst(t)
		if err != nil {
			failed = err
			return highest
		}
		if p.AtLeast {
			return highest
		}
		return p.Gauge.In(units.KilopascalGauge) - v.Rating.In(units.KilopascalGauge)
	}
	flat := over(0)
	if failed != nil {
		return units.CarbonDioxideContent{}, failed
	}
	if err := limit.Check(fn, "pressure of the flat drink over the rating", flat, "kPa", -math.MaxFloat64, 0, "no content is within the rating"); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	if over(most) <= 0 {
		return grams(most), nil
	}
	g, err := upTo(most, over)
	return checked.Unless(err, grams(g))
}
