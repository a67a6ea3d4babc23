package carbonation

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// A Comparison is what one published way makes of a drink under a pressure.
type Comparison struct {
	Method  string
	Fits    string // which drink it was made for
	Content units.CarbonDioxideContent
	// Difference is how far the content is from that of [Liquid.Content], in
	// per cent of it.
	Difference float64
	// Err is a [*units.RangeError] where the method does not hold; the rest is then
	// zero.
	Err error
}

// Compare puts the published ways side by side for a drink at a temperature and
// an absolute pressure: this package's own first, then the beer chart, the
// European form for beer and the EU/OIV wine relation. The wine relation holds at
// 20 °C only; there the drink's extract counts as its sugar.
//
// Which fits: a seltzer or a light drink of 0 to 8 % vol is nearest to water, so
// [Liquid.Content] (the drink's own strength and extract count). For an ordinary
// beer the chart is what others mean by a number of volumes, and the European
// form is its like; for sparkling wine the EU relation is what the law measures by.
//
//   - Source: as the functions named.
//   - Range: that of [Liquid.Content]; beyond it the error is a [*units.RangeError].
//   - Units: contents in g/L; the chart's volumes counted as [RealVolume].
//   - Uncertainty: the spread shown is the uncertainty.
func Compare(drink gravity.Solution, t units.Temperature, p units.AbsolutePressure) ([]Comparison, error) {
	l, err := NewLiquid(drink)
	if err != nil {
		return nil, limit.Named("carbonation.Compare", err)
	}
	own, err := l.Content(t, p)
	if err != nil {
		return nil, limit.Named("carbonation.Compare", err)
	}
	list := []Comparison{{Method: "Henry's law in the water of the drink", Fits: "seltzer, mead, cider, any drink by its strength and extract", Content: own}}
	add := func(method, fits string, c units.CarbonDioxideContent, err error) {
		x := Comparison{Method: method, Fits: fits, Err: err}
		if err == nil {
			x.Content = c // at half a bar or more, where own is above zero
			x.Difference = 100 * (c.In(units.GramCO2PerLitre)/own.In(units.GramCO2PerLitre) - 1)
		}
		list = append(list, x)
	}
	v, err := BeerChartVolumes(t, p)
	add("printed beer chart", "beer near 5.3 % vol and 5.8 °P of real extract", RealVolume.Content(v), err)
	c, err := EuropeanBeerContent(t, p)
	add("European exponential form", "beer of ordinary strength", c, err)
	c, err = wineAt(drink, t, p)
	add("EU/OIV wine relation", "wine at 20 °C", c, err)
	return list, nil
}

func wineAt(drink gravity.Solution, t units.Temperature, p units.AbsolutePressure) (units.CarbonDioxideContent, error) {
	if celsius := t.In(units.Celsius); celsius != 20 {
		return units.CarbonDioxideContent{}, &units.RangeError{
			Func: "carbonation.WineContent", Quantity: "temperature", Value: celsius, Unit: "°C", Min: 20, Max: 20, Source: wineOIV,
		}
	}
	sugar := units.GramPerLitre.Of(checked.Number(drink.Extract().In(units.Gram) / drink.VolumeAt20().In(units.Litre)))
	return WineContent(p, drink.ByVolume(), sugar)
}
