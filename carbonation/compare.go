package carbonation

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// A Method is a published way from the pressure over a drink to its content of CO2 and
// back. The zero value is [InWater], which the rest of this package computes with.
//
// Which fits: a seltzer or a light drink of 0 to 8 % vol is nearest to water, so
// [InWater], where the drink's own strength and extract count. For an ordinary beer the
// [BeerChart] is what others mean by a number of volumes, and [EuropeanBeer] is its like;
// for sparkling wine [EUWine] is what the law measured by. [Compare] shows them side by
// side.
type Method uint8

const (
	// InWater is Henry's law in the water of the drink: [Liquid.Content].
	InWater Method = iota

	// BeerChart is the chart that hangs in breweries. Its beer, by Speers & MacIntosh
	// (2013), has 4.22 % mass of ethanol and a real extract of 5.78 °P; the drink at hand
	// is not asked.
	//
	//   - Source: a fit to the printed chart (BrewingTechniques 2 (1994) no. 1, table I;
	//     the same family as the ASBC's): P = −16.6999 − 0.0101059·T + 0.00116512·T² +
	//     0.173354·T·V + 4.24267·V − 0.0684226·V², psi over 14.696 psi, °F, volumes. The
	//     coefficients are recalled from memory; no first publication is known.
	//   - Range: 30 to 60 °F, 1.5 to 4 volumes; do not extrapolate: it is 2 psi off at no
	//     gas.
	//   - Uncertainty: 0.10 psi and 0.009 volumes rms, 0.36 psi and 0.036 volumes at most
	//     against 292 printed points; the chart does not say which volumes. They count as
	//     [RealVolume].
	BeerChart

	// EuropeanBeer is the exponential form of European brewing practice, whatever the
	// beer's strength.
	//
	//   - Source: c = 10·(p + 1.013 bar)·exp(−10.73797 + 2617.25/T), p over the
	//     atmosphere; recalled from memory. A printed chart in g/L without an author
	//     agrees to its 0.1 g/L.
	//   - Range: −1 to 25 °C, 0.5 to 5 bar absolute.
	//   - Uncertainty: not stated; 0.04 volumes above the printed beer chart.
	EuropeanBeer

	// EUWine is the method of analysis that EU law had for sparkling wine until 2009, at
	// 20 °C only. The drink's extract counts as its sugar.
	//
	//   - Source: Regulation (EEC) 2676/90 (1990, in force until 2009; since then EU law
	//     refers to the methods of the OIV), Community methods for the analysis of wines,
	//     carbon dioxide: 1.951e-5·P·(0.86 − 0.01·A)·(1 − 0.00144·S), P in Pa at 20 °C, A
	//     in % vol, S sugar in g/L.
	//   - Range: 20 °C, 0 to 20 % vol, 0 to 200 g/L of sugar, 0.5 to 10 bar absolute. The
	//     text gives no range.
	//   - Uncertainty: not stated. In water it is 2 % below [InWater]; each % vol takes
	//     1.16 %, each g/L of sugar 0.144 % of it.
	EUWine
)

var methods = choice.Of[Method]("carbonation.Method", "method", "Henry's law in the water of the drink", "printed beer chart",
	"European exponential form", "EU/OIV wine relation")

// String is the name of the method: "printed beer chart".
func (m Method) String() string { return methods.Text(m) }

// MarshalText is [Method.String]; an unknown method is a [*units.NameError].
func (m Method) MarshalText() ([]byte, error) { return methods.Marshal(m) }

// UnmarshalText reads what [Method.MarshalText] writes; another text is a
// [*units.NameError].
func (m *Method) UnmarshalText(text []byte) error { return methods.Unmarshal(text, m) }

// Content returns the CO2 that a drink holds at equilibrium under an absolute pressure. The
// error is a [*units.RangeError] beyond the range of the method, a [*units.NameError] for
// an unknown one.
func (m Method) Content(drink gravity.Solution, p units.AbsolutePressure, t units.Temperature) (units.CarbonDioxideContent, error) {
	const fn = "carbonation.Method.Content"
	var c units.CarbonDioxideContent
	err := methods.Check(fn, m)
	switch {
	case err != nil:
	case m == BeerChart:
		var v units.CarbonDioxideVolumes
		v, err = dioxide.BeerChartVolumes(t, p)
		c = RealVolume.Content(v)
	case m == EuropeanBeer:
		c, err = dioxide.EuropeanBeerContent(t, p)
	case m == EUWine:
		if err = at20Only(fn, t); err == nil {
			c, err = dioxide.WineContent(p, drink.ByVolume(), sugarOf(drink))
		}
	default:
		var l Liquid
		if l, err = NewLiquid(drink); err == nil {
			c, err = l.Content(p, t)
		}
	}
	if err != nil {
		return units.CarbonDioxideContent{}, limit.Named(fn, err)
	}
	return c, nil
}

// Pressure returns the absolute pressure at which a drink holds a content at equilibrium,
// the inverse of [Method.Content], with its errors.
func (m Method) Pressure(drink gravity.Solution, c units.CarbonDioxideContent, t units.Temperature) (units.AbsolutePressure, error) {
	const fn = "carbonation.Method.Pressure"
	var p units.AbsolutePressure
	err := methods.Check(fn, m)
	switch {
	case err != nil:
	case m == BeerChart:
		p, err = dioxide.BeerChartPressure(t, RealVolume.Volumes(c))
	case m == EuropeanBeer:
		p, err = dioxide.EuropeanBeerPressure(t, c)
	case m == EUWine:
		if err = at20Only(fn, t); err == nil {
			p, err = dioxide.WinePressure(c, drink.ByVolume(), sugarOf(drink))
		}
	default:
		var l Liquid
		if l, err = NewLiquid(drink); err == nil {
			p, err = l.Pressure(c, t)
		}
	}
	if err != nil {
		return units.AbsolutePressure{}, limit.Named(fn, err)
	}
	return p, nil
}

func at20Only(fn string, t units.Temperature) error {
	return limit.Check(fn, "temperature", t.In(units.Celsius), "°C", 20, 20, dioxide.WineEU)
}

func sugarOf(drink gravity.Solution) units.MassConcentration {
	return units.GramPerLitre.Of(checked.Number(drink.Extract().In(units.Gram) / drink.VolumeAt20().In(units.Litre)))
}

// A Comparison is what one published way makes of a drink under a pressure.
type Comparison struct {
	Method  Method
	Content units.CarbonDioxideContent
	// Err is a [*units.RangeError] where the method does not hold; Content is then zero.
	Err error
}

// Compare puts the published ways side by side for a drink under an absolute pressure at a
// temperature, in the order of the constants.
//
//   - Range: that of [InWater]; beyond it the error is a [*units.RangeError]. Another
//     method that does not hold says so in its Err.
//   - Uncertainty: the spread of the contents is the uncertainty.
func Compare(drink gravity.Solution, p units.AbsolutePressure, t units.Temperature) ([]Comparison, error) {
	var list []Comparison
	for m := range methods.All() {
		x := Comparison{Method: m}
		x.Content, x.Err = m.Content(drink, p, t)
		list = append(list, x)
	}
	if err := list[InWater].Err; err != nil {
		return nil, limit.Named("carbonation.Compare", err)
	}
	return list, nil
}
