package carbonation

import (
	"cmp"
	"math"
	"time"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// A CarbonationRate says how fast a vessel takes up gas: a rate of 0.0125 an hour closes
// 1.25 % of the remaining gap to equilibrium each hour. It belongs to a vessel, its fill and
// its handling, not to a drink. The zero value is none; the functions refuse it.
type CarbonationRate struct{ perHour float64 }

// StillKeg is a keg left alone in the cold under its set pressure: it closes 1.25 % of the
// remaining gap each hour, 95 % of it in 10 days, in the middle of the 7 to 14 days that
// suppliers' articles give near 3 °C. A fitted rate, [RateFromReadings], is better.
func StillKeg() CarbonationRate { return CarbonationRate{3.0 / 240} }

// RolledKeg is a keg rolled or shaken all the time: 95 % in 20 minutes; common practice,
// no source.
func RolledKeg() CarbonationRate { return CarbonationRate{9} }

const (
	approachRange = "first-order approach to equilibrium"
	longest       = 10 * 365 * 24 // h
	slowestRate   = 1e-5          // 1/h
	fastestRate   = 1e3
	leastWay      = 1e-6 // g/L
	mostWay       = 1e3
	mostOfTheWay  = 0.9999
)

// NewCarbonationRate returns a rate in 1/h.
//
//   - Range: 1e-5 to 1000 1/h; beyond it the error is a [*units.RangeError].
func NewCarbonationRate(perHour float64) (CarbonationRate, error) {
	if err := limit.Check("carbonation.NewCarbonationRate", "rate", perHour, "1/h", slowestRate, fastestRate, approachRange); err != nil {
		return CarbonationRate{}, err
	}
	return CarbonationRate{perHour}, nil
}

// PerHour returns the rate in 1/h.
func (r CarbonationRate) PerHour() float64 { return r.perHour }

// RateFromReadings fits the rate to two contents of the same keg, a time apart, on
// their way to the content at equilibrium.
//
//   - Source: first-order approach dC/dt = k·(C∞ − C): k = ln((C∞ − C1)/(C∞ −
//     C2))/Δt. Counting pressure times hours in a straight line, as the trade
//     does, is wrong.
//   - Range: the second content between the first and 99.99 % of the way to that at
//     equilibrium, which is 1e-6 to 1000 g/L away, a time of 0.001 to 100,000 h, a rate as
//     [NewCarbonationRate]; otherwise the error is a
//     [*units.RangeError].
//   - Units: g/L; 1/h.
//   - Uncertainty: near equilibrium it grows without bound; take the second reading about
//     half-way.
func RateFromReadings(first, second, atRest units.CarbonDioxideContent, apart time.Duration) (CarbonationRate, error) {
	const fn = "carbonation.RateFromReadings"
	a, b, r := first.In(units.GramCO2PerLitre), second.In(units.GramCO2PerLitre), atRest.In(units.GramCO2PerLitre)
	if err := cmp.Or(
		limit.Check(fn, "time", apart.Hours(), "h", 1e-3, 1e5, approachRange),
		limit.Check(fn, "second content", b, "g/L", math.Min(a, r), math.Max(a, r), approachRange),
		limit.Check(fn, "way to rest", math.Abs(r-a), "g/L", leastWay, mostWay, "a first content that is not at rest"),
		limit.Check(fn, "share of the way to rest", (b-a)/(r-a), "", 0, mostOfTheWay, "rest itself is never quite reached"),
	); err != nil {
		return CarbonationRate{}, err
	}
	k, err := NewCarbonationRate(math.Log((r-a)/(r-b)) / apart.Hours())
	return k, limit.Named(fn, err)
}

// After returns the content of a keg a time after it had the content from, on its way
// to that at equilibrium.
//
//   - Source: C = C∞ + (C0 − C∞)·exp(−k·t).
//   - Range: a rate that is not zero, a time from zero to 10 years; otherwise the
//     error is a [*units.RangeError].
//   - Units: g/L.
//   - Uncertainty: that of the rate.
func (r CarbonationRate) After(from, atRest units.CarbonDioxideContent, t time.Duration) (units.CarbonDioxideContent, error) {
	const fn = "carbonation.CarbonationRate.After"
	if err := r.check(fn); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	if err := limit.Check(fn, "time", t.Hours(), "h", 0, longest, approachRange); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	return r.after(from, atRest, t), nil
}

// after is After without the checks.
func (r CarbonationRate) after(from, atRest units.CarbonDioxideContent, t time.Duration) units.CarbonDioxideContent {
	a, e := from.In(units.GramCO2PerLitre), atRest.In(units.GramCO2PerLitre)
	return grams(e + (a-e)*math.Exp(-r.perHour*t.Hours()))
}

// Until returns how long a keg takes from one content to another on its way to that
// at equilibrium, which it never quite reaches.
//
//   - Source: t = ln((C∞ − C0)/(C∞ − C))/k.
//   - Range: a content between the first and 99.99 % of the way to that at equilibrium, a rate
//     that is not zero, at most 10 years; otherwise the error is a [*units.RangeError].
//   - Units: g/L.
//   - Uncertainty: that of the rate.
func (r CarbonationRate) Until(from, to, atRest units.CarbonDioxideContent) (d time.Duration, err error) {
	const fn = "carbonation.CarbonationRate.Until"
	if err := r.check(fn); err != nil {
		return d, err
	}
	a, b, e := from.In(units.GramCO2PerLitre), to.In(units.GramCO2PerLitre), atRest.In(units.GramCO2PerLitre)
	if a == b {
		return d, nil
	}
	if err := limit.Check(fn, "content", b, "g/L", math.Min(a, e), math.Max(a, e), "on the way to rest"); err != nil {
		return d, err
	}
	if err := limit.Check(fn, "share of the way to rest", (b-a)/(e-a), "", 0, mostOfTheWay, "rest itself is never quite reached"); err != nil {
		return d, err
	}
	h := math.Log((e-a)/(e-b)) / r.perHour
	if err := limit.Check(fn, "time", h, "h", 0, longest, approachRange); err != nil {
		return d, err
	}
	return time.Duration(h * float64(time.Hour)), nil
}

func (r CarbonationRate) check(fn string) error {
	return limit.Check(fn, "rate", r.perHour, "1/h", slowestRate, fastestRate, "a rate such as StillKeg")
}
