package carbonation

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

const (
	highest = dioxide.Highest // kPa absolute

	// Coldest and warmest liquid, °C.
	coldest = dioxide.Coldest
	warmest = dioxide.Warmest
)

// Partial molar volume of dissolved CO2, L/mol (Weiss 1974; Enns et al. 1965
// give 33 to 35 cm³/mol).
const molarVolumeDissolved = 32.3e-3

// Content returns the CO2 that the liquid holds at equilibrium under CO2 gas at the
// total pressure p, which includes the vapours of the liquid.
//
//   - Source: Henry's constant of L. N. Plummer & E. Busenberg, Geochim. Cosmochim. Acta 46
//     (1982) 1011, per kilogram of water in the liquid; fugacity of the gas by the virial
//     coefficients of R. Span & W. Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509; vapours of water and ethanol taken off
//     the pressure; I. R. Krichevsky & J. S. Kasarnovsky, J. Am. Chem. Soc. 57
//     (1935) 2168 for the effect of the total pressure.
//   - Range: −2 to 90 °C; from the pressure of the vapours to 2000 kPa absolute;
//     beyond it the error is a [*units.RangeError].
//   - Units: absolute pressure; g in a litre of the gas-free liquid at 20 °C.
//   - Uncertainty: in water 1 to 2 % from 15 to 40 °C, 3 % at 0 °C and at 60 °C, 5 % at
//     90 °C, where the true content is the higher one; in a drink see [Liquid].
func (l Liquid) Content(p units.AbsolutePressure, t units.Temperature) (units.CarbonDioxideContent, error) {
	c, kpa := t.In(units.Celsius), p.In(units.Kilopascal)
	if err := limit.Check("carbonation.Liquid.Content", "temperature", c, "°C", coldest, warmest, dioxide.DissolvedRange); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	T := c + chemistry.ZeroCelsius
	u := 1 / T
	v := l.vapours(T, u)
	if err := limit.Check("carbonation.Liquid.Content", "pressure", kpa, "kPa absolute", v, highest, dioxide.DissolvedRange); err != nil {
		return units.CarbonDioxideContent{}, err
	}
	return units.GramCO2PerLitre.Of(checked.Number(l.dissolved(T, u, kpa-v, kpa))), nil
}

// dissolved is in g/L at T in K, pressure of CO2 alone and total in kPa.
func (l Liquid) dissolved(T, u, co2, total float64) float64 {
	w := l.warmed(T, u)
	return w.dissolved(co2, total)
}

// warmed is a liquid at a temperature, with the gas above it.
type warmed struct {
	gas            dioxide.Series
	scale          float64
	henry, squeeze float64 // logarithm at 1 atm, its slope with the total pressure
}

func (l Liquid) warmed(T, u float64) warmed {
	return warmed{dioxide.GasAt(u), l.scale(), dioxide.LogHenry(T, u), squeeze(u)}
}

func (w *warmed) dissolved(co2, total float64) float64 {
	return w.scale * co2 * numeric.Exp(w.henry+w.gas.LogFugacity(co2)+w.squeeze*(total-chemistry.StandardKPa))
}

// scale turns mol/(kg·atm) into g/(L·kPa).
func (l Liquid) scale() float64 {
	return l.water() * (chemistry.CO2 / chemistry.StandardKPa)
}

// squeeze is the slope of ln K with the total pressure in 1/kPa: −v/RT
// (Krichevsky & Kasarnovsky 1935), u = 1/T, K standing for 1 atm.
func squeeze(u float64) float64 { return -molarVolumeDissolved / chemistry.Gas * u }

// Pressure returns the total absolute pressure at which the liquid holds the
// content c, the inverse of [Liquid.Content]: the vapours and the CO2 together.
//
//   - Source: as [Liquid.Content], solved by Newton's method to 1e-14.
//   - Range: −2 to 90 °C, up to the content at 2000 kPa absolute; beyond it the
//     error is a [*units.RangeError].
//   - Units: content in g/L of liquid at 20 °C; absolute pressure.
//   - Uncertainty: as [Liquid.Content].
func (l Liquid) Pressure(c units.CarbonDioxideContent, t units.Temperature) (units.AbsolutePressure, error) {
	const fn = "carbonation.Liquid.Pressure"
	celsius, g := t.In(units.Celsius), c.In(units.GramCO2PerLitre)
	if err := limit.Check(fn, "temperature", celsius, "°C", coldest, warmest, dioxide.DissolvedRange); err != nil {
		return units.AbsolutePressure{}, err
	}
	T := celsius + chemistry.ZeroCelsius
	u := 1 / T
	v := l.vapours(T, u)
	co2, ok := l.pressureOf(T, u, g, v)
	if !ok {
		return units.AbsolutePressure{}, limit.Check(fn, "content", g, "g/L", 0, l.dissolved(T, u, highest-v, highest), dioxide.DissolvedRange)
	}
	return units.Kilopascal.Of(checked.Number(math.Min(co2+v, highest))), nil
}

// pressureOf solves dissolved(T, p, p+v) = g for p, the pressure of CO2 alone.
func (l Liquid) pressureOf(T, u, g, v float64) (float64, bool) {
	if g == 0 {
		return g, true
	}
	s, sq := dioxide.GasAt(u), squeeze(u)
	r := g / l.scale() * numeric.Exp(-dioxide.LogHenry(T, u)-sq*(v-chemistry.StandardKPa))
	if !(r < highest) { // without the two corrections p is r, with them more
		return r, false
	}
	p := r - r*r*(s.B+sq)
	for range mostSteps {
		p = math.Min(p, r+highest)
		// ln(r/p) = ln φ + p·sq, in steps of ln p; its slope is Z + p·sq.
		d := (math.Log(r/p) - s.LogFugacity(p) - p*sq) / (s.Compressibility(p) + p*sq)
		p *= numeric.Exp(d)
		if math.Abs(d) < settledWithin {
			return p, p+v <= highest*(1+rounding)
		}
	}
	return p, false
}

// Temperature returns the temperature at which the liquid, at equilibrium under the
// total pressure p, holds the content c: how cold a keg must be.
//
//   - Source: as [Liquid.Content], solved by Brent's method.
//   - Range: contents between those at −2 °C and at 90 °C (or at the
//     temperature where the vapours alone make up p); beyond it the error is a
//     [*units.RangeError].
//   - Units: content in g/L of liquid at 20 °C, absolute pressure.
//   - Uncertainty: 1 % of content is 0.3 K near 5 °C.
func (l Liquid) Temperature(c units.CarbonDioxideContent, p units.AbsolutePressure) (units.Temperature, error) {
	const fn = "carbonation.Liquid.Temperature"
	g, kpa := c.In(units.GramCO2PerLitre), p.In(units.Kilopascal)
	cold := l.vapours(coldest+chemistry.ZeroCelsius, 1/(coldest+chemistry.ZeroCelsius))
	if err := limit.Check(fn, "pressure", kpa, "kPa absolute", cold, highest, dioxide.DissolvedRange); err != nil {
		return units.Temperature{}, err
	}
	held := func(T float64) float64 { // falls with T, below zero once the liquid boils
		u := 1 / T
		return l.dissolved(T, u, kpa-l.vapours(T, u), kpa)
	}
	most, least := held(coldest+chemistry.ZeroCelsius), math.Max(held(warmest+chemistry.ZeroCelsius), 0)
	if err := limit.Check(fn, "content", g, "g/L", least, most, dioxide.DissolvedRange); err != nil {
		return units.Temperature{}, err
	}
	T, err := numeric.Root(func(T float64) float64 { return held(T) - g }, coldest+chemistry.ZeroCelsius, warmest+chemistry.ZeroCelsius, 0)
	if err != nil { // not reached: the ends of the search were checked
		return units.Temperature{}, err
	}
	return units.Celsius.Of(checked.Number(T - chemistry.ZeroCelsius)), nil
}
