package carbonation

import (
	"cmp"
	"math"
	"time"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// StillKeg is the rate of a keg left alone in the cold under its set pressure: it closes 1.25 %
// of the remaining gap each hour, 95 % of it in 10 days, in the middle of the 7 to 14 days that
// suppliers' articles give near 3 °C. A fitted rate, [RateFromReadings], is better: a rate
// belongs to a vessel, its fill and its handling, not to a drink.
func StillKeg() units.Rate { return units.PerHour.Of(3.0 / 240) }

// RolledKeg is that of a keg rolled or shaken all the time: 95 % in 20 minutes; common practice,
// no source.
func RolledKeg() units.Rate { return units.PerHour.Of(9) }

const (
	approachRange = "first-order approach to equilibrium"
	longest       = 10 * 365 * 24 // h
	slowestRate   = 1e-5          // 1/h
	fastestRate   = 1e3
	leastWay      = 1e-6 // g/L
	mostWay       = 1e3
	mostOfTheWay  = 0.9999
)

// RateFromReadings fits the rate to two contents of the same keg, a time apart, on
// their way to the content at equilibrium.
//
//   - Source: first-order approach dC/dt = k·(C∞ − C): k = ln((C∞ − C1)/(C∞ −
//     C2))/Δt. Counting pressure times hours in a straight line, as the trade
//     does, is wrong.
//   - Range: the second content between the first and 99.99 % of the way to that at
//     equilibrium, which is 1e-6 to 1000 g/L away, a time of 0.001 to 100,000 h, a rate of 1e-5
//     to 1000 an hour; otherwise the error is a [*units.RangeError].
//   - Units: g/L; the part of the gap an hour.
//   - Uncertainty: near equilibrium it grows without bound; take the second reading about
//     half-way.
func RateFromReadings(first, second, atRest units.CarbonDioxideContent, apart time.Duration) (units.Rate, error) {
	const fn = "carbonation.RateFromReadings"
	a, b, r := first.In(units.GramCO2PerLitre), second.In(units.GramCO2PerLitre), atRest.In(units.GramCO2PerLitre)
	if err := cmp.Or(
		limit.Check(fn, "time", apart.Hours(), "h", 1e-3, 1e5, approachRange),
		limit.Check(fn, "second content", b, "g/L", math.Min(a, r), math.Max(a, r), approachRange),
		limit.Check(fn, "way to rest", math.Abs(r-a), "g/L", leastWay, mostWay, "a first content that is not at rest"),
		limit.Check(fn, "share of the way to rest", (b-a)/(r-a), "", 0, mostOfTheWay, "rest itself is never quite reached"),
	); err != nil {
		return units.Rate{}, err
	}
	k := math.Log((r-a)/(r-b)) / apart.Hours()
	if err := checkRate(fn, k); err != nil {
		return units.Rate{}, err
	}
	return units.PerHour.Of(checked.Number(k)), nil
}

// After returns what a keg holds after a time, on its way to the content at equilibrium.
//
//   - Source: C = C∞ + (C0 − C∞)·exp(−k·t).
//   - Range: a rate of 1e-5 to 1000 an hour, a time from zero to 10 years; otherwise the
//     error is a [*units.RangeError].
//   - Units: g/L.
//   - Uncertainty: that of the rate.
func (k Keg) After(atRest units.CarbonDioxideContent, t time.Duration) (units.CarbonDioxideContent, error) {
	const fn = "carbonation.Keg.After"
	if err := checkRate(fn, k.Rate.In(units.PerHour)); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	if err := limit.Check(fn, "time", t.Hours(), "h", 0, longest, approachRange); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	return approached(k.Rate, k.Content, atRest, t), nil
}

// approached is After without the checks.
func approached(k units.Rate, from, atRest units.CarbonDioxideContent, t time.Duration) units.CarbonDioxideContent {
	a, e := from.In(units.GramCO2PerLitre), atRest.In(units.GramCO2PerLitre)
	return grams(e + (a-e)*math.Exp(-k.In(units.PerHour)*t.Hours()))
}

// Until returns how long a keg takes to its target on its way to the content at equilibrium,
// which it never quite reaches.
//
//   - Source: t = ln((C∞ − C0)/(C∞ − C))/k.
//   - Range: a target between the content and 99.99 % of the way to that at equilibrium, a rate
//     of 1e-5 to 1000 an hour, at most 10 years; otherwise the error is a [*units.RangeError].
//   - Units: g/L.
//   - Uncertainty: that of the rate.
func (k Keg) Until(atRest units.CarbonDioxideContent) (d time.Duration, err error) {
	const fn = "carbonation.Keg.Until"
	perHour := k.Rate.In(units.PerHour)
	if err := checkRate(fn, perHour); err != nil {
		return d, err
	}
	a, b, e := k.Content.In(units.GramCO2PerLitre), k.Target.In(units.GramCO2PerLitre), atRest.In(units.GramCO2PerLitre)
	if a == b {
		return d, nil
	}
	if err := limit.Check(fn, "content", b, "g/L", math.Min(a, e), math.Max(a, e), "on the way to rest"); err != nil {
		return d, err
	}
	if err := limit.Check(fn, "share of the way to rest", (b-a)/(e-a), "", 0, mostOfTheWay, "rest itself is never quite reached"); err != nil {
		return d, err
	}
	h := math.Log((e-a)/(e-b)) / perHour
	if err := limit.Check(fn, "time", h, "h", 0, longest, approachRange); err != nil {
		return d, err
	}
	return time.Duration(h * float64(time.Hour)), nil
}

func checkRate(fn string, perHour float64) error {
	return limit.Check(fn, "rate", perHour, "1/h", slowestRate, fastestRate, "a rate such as StillKeg")
}
