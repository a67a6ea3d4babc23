package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// ByVolumeAt returns the strength by volume of a mixture of ethanol and water with
// both volumes at another temperature than 20 °C: 60 °F for US proof, which is twice
// this number.
//
//   - Source: OIML R 22 (1973): 100·p·ρ(p, t)/ρ(1, t). The table of USP 29 for 60 °F
//     agrees within 0.011 % vol.
//   - Range: 0 to 100 % mass, −20 to 40 °C; otherwise the error is a
//     [*units.RangeError].
//   - Uncertainty: that of R 22.
func ByVolumeAt(w units.StrengthByMass, t units.Temperature) (units.StrengthByVolume, error) {
	const fn = "gravity.ByVolumeAt"
	p, c := w.In(units.PercentMass), t.In(units.Celsius)
	if err := limit.Check(fn, "strength", p, "% mass", 0, 100, sourceR22); err != nil {
		return units.StrengthByVolume{}, err
	}
	if err := limit.Check(fn, "temperature", c, "°C", -20, 40, sourceR22); err != nil {
		return units.StrengthByVolume{}, err
	}
	m := mixtureAt(c)
	return percentVolume(clamp(p*m.density(p/100)/m.density(1), 0, 100)), nil
}

// ByMassAt is the inverse of [ByVolumeAt], with its source and uncertainty.
//
//   - Range: 0 to 100 % vol, −20 to 40 °C; otherwise the error is a
//     [*units.RangeError].
func ByMassAt(v units.StrengthByVolume, t units.Temperature) (units.StrengthByMass, error) {
	const fn = "gravity.ByMassAt"
	x, c := v.In(units.PercentVolume), t.In(units.Celsius)
	if err := limit.Check(fn, "strength", x, "% vol", 0, 100, sourceR22); err != nil {
		return units.StrengthByMass{}, err
	}
	if err := limit.Check(fn, "temperature", c, "°C", -20, 40, sourceR22); err != nil {
		return units.StrengthByMass{}, err
	}
	m := mixtureAt(c)
	return percentMass(100 * m.fractionInVolume(x/100*m.density(1))), nil
}
