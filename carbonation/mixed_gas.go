package carbonation

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// MixedGasPressure returns the absolute pressure of a blend of CO2 and nitrogen that
// keeps a content: the blend's CO2 must press as hard as pure CO2 would. Long lines
// are served so, or slow ones with little CO2.
//
//   - Source: Dalton's law on the dry gas: P = p(CO2)/x + vapours, with p(CO2) from
//     [Liquid.Pressure].
//   - Range: 5 to 100 % of CO2, a result up to 2000 kPa absolute; otherwise the error
//     is a [*units.RangeError].
//   - Units: share of the dry gas by volume.
//   - Uncertainty: that of the content; what CO2 and nitrogen do to each other and the
//     nitrogen that dissolves, below 1 % each at these pressures, are left out.
func (l Liquid) MixedGasPressure(c units.CarbonDioxideContent, co2 units.Share, t units.Temperature) (units.AbsolutePressure, error) {
	const fn = "carbonation.Liquid.MixedGasPressure"
	x := co2.In(units.Percent)
	if err := limit.Check(fn, "CO2 in the blend", x, "% vol", 5, 100, "blends for serving"); err != nil {
		return units.AbsolutePressure{}, err
	}
	alone, v, err := l.split(t, c)
	if err != nil {
		return units.AbsolutePressure{}, limit.Named(fn, err)
	}
	p := alone*100/x + v
	if err := limit.Check(fn, "pressure of the blend", p, "kPa absolute", 0, highest, dioxide.DissolvedRange); err != nil {
		return units.AbsolutePressure{}, err
	}
	return kilopascals(p), nil
}

// BlendFor returns the share of CO2 in a blend that keeps a content under an absolute
// pressure, the inverse of [Liquid.MixedGasPressure].
//
//   - Source, units, uncertainty: as [Liquid.MixedGasPressure].
//   - Range: a content of 0.001 g/L or more, a pressure from that of pure CO2 up to twenty times
//     its CO2; otherwise the error is a [*units.RangeError].
func (l Liquid) BlendFor(c units.CarbonDioxideContent, p units.AbsolutePressure, t units.Temperature) (units.Share, error) {
	const fn = "carbonation.Liquid.BlendFor"
	// Without CO2 any blend that has none would do.
	if err := limit.Check(fn, "content", c.In(units.GramCO2PerLitre), "g/L", 0.001, 50, "a blend with CO2"); err != nil {
		return units.Share{}, err
	}
	alone, v, err := l.split(t, c)
	if err != nil {
		return units.Share{}, limit.Named(fn, err)
	}
	kpa := p.In(units.Kilopascal)
	if err := limit.Check(fn, "pressure", kpa, "kPa absolute", (alone+v)*(1-rounding), min(20*alone+v, highest), "a blend of 5 to 100 % CO2"); err != nil {
		return units.Share{}, err
	}
	return units.Percent.Of(checked.Number(min(100*alone/(kpa-v), 100))), nil
}

// split gives the pressure of CO2 alone and of the vapours, in kPa.
func (l Liquid) split(t units.Temperature, c units.CarbonDioxideContent) (alone, vapours float64, err error) {
	p, err := l.Pressure(c, t)
	if err != nil {
		return alone, vapours, err
	}
	T := t.In(units.Celsius) + chemistry.ZeroCelsius
	v := l.vapours(T, 1/T)
	return p.In(units.Kilopascal) - v, v, nil
}
