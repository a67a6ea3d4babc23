package carbonation

import (
	"cmp"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// Spunding is how a fermenter is closed before the end, so that the drink carbonates
// itself under a relief valve.
type Spunding struct {
	Valve    units.GaugePressure    // set the relief valve to this at the temperature given
	Pressure units.AbsolutePressure // the same, absolute
	// Extract must still be there to ferment when the valve is closed, in g from a
	// litre. With less the content is not reached; with more the valve lets go
	// what is too much.
	Extract  units.MassConcentration
	CO2      units.Mass // that it makes: for the drink and for the head-space
	Rating   units.GaugePressure
	Verdict  Verdict
	Cautions caution.List
}

// A Fermenter is what is spunded: how much drink, how much room over it, and the
// pressure its maker allows (zero if it is not known).
type Fermenter struct {
	Drink, Headspace units.Volume
	Rating           units.GaugePressure
}

// Spund returns the setting of the valve and what must be left to ferment.
//
//   - Source: [Liquid.Pressure] for the setting; the CO2 that the drink and the
//     head-space take up from the pressure of the atmosphere to the setting, over
//     the CO2 yield of the yeast.
//   - Range: as [Liquid.Pressure]; drink 1 mL to 10,000 m³, head-space up to a thousand
//     times as much; a setting above the pressure of the atmosphere; a yield that makes
//     CO2; otherwise the error is a [*units.RangeError].
//   - Units: content in g/L of liquid at 20 °C.
//   - Uncertainty: that of the content, about 5 %; valves of the trade are set to
//     about 0.1 bar.
func (l Liquid) Spund(target units.CarbonDioxideContent, f Fermenter, y gravity.Yield, t units.Temperature, outside units.Atmosphere) (Spunding, error) {
	const fn = "carbonation.Liquid.Spund"
	drink, space := f.Drink.In(units.Litre), f.Headspace.In(units.Litre)
	if err := cmp.Or(
		limit.Check(fn, "volume of the drink", drink, "L", leastVolume, mostVolume, vesselRange),
		limit.Check(fn, "head-space", space, "L", 0, 1000*drink, vesselRange),
		limit.Check(fn, "rating", f.Rating.In(units.KilopascalGauge), "kPa gauge", 0, mostRating, "a rating is not negative"),
		limit.Check(fn, "CO2 yield", y.CO2().In(units.Fraction), "g/g", 0.01, 1, "a fermentation makes CO2"),
	); err != nil {
		return Spunding{}, err
	}
	p, err := l.Pressure(target, t)
	if err != nil {
		return Spunding{}, limit.Named(fn, err)
	}
	around := outside.Pressure()
	gauge := outside.Gauge(p)
	if err := limit.Check(fn, "valve setting", gauge.In(units.KilopascalGauge), "kPa gauge", 0, highest, "a valve holds more than the atmosphere"); err != nil {
		return Spunding{}, err
	}
	had, err := l.Content(around, t)
	if err != nil {
		return Spunding{}, limit.Named(fn, err)
	}
	T := t.In(units.Celsius) + chemistry.ZeroCelsius
	v := l.vapours(T, 1/T)
	gas := func(p units.AbsolutePressure) float64 { return gasMass(T, p.In(units.Kilopascal)-v, space) }
	need := drink*(target.In(units.GramCO2PerLitre)-had.In(units.GramCO2PerLitre)) + gas(p) - gas(around)
	verdict, warned := rated(gauge, f.Rating)
	verdict, warned = iced(verdict, warned, t.In(units.Celsius) < l.freezes)
	return Spunding{Valve: gauge, Pressure: p, Rating: f.Rating,
		CO2:     units.Gram.Of(checked.Number(need)),
		Extract: units.GramPerLitre.Of(checked.Number(need / y.CO2().In(units.Fraction) / drink)),
		Verdict: verdict, Cautions: (warned | cautions(SugarCanFerment)).list(),
	}, nil
}

// gasMass is the mass in g of CO2 at p in kPa in v litres, T in K.
func gasMass(T, p, v float64) float64 {
	return chemistry.CO2 * p * v / (chemistry.Gas * T * dioxide.GasAt(1/T).Compressibility(p))
}
