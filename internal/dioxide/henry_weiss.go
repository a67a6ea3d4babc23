package dioxide

import (
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const weiss = "Weiss 1974"

// HenryWeiss returns the CO2 that a kilogram of water or sea water takes up at a
// fugacity of 1 atm. The salinity (0 for fresh water) shows what salt does: 1 %
// of sea salt takes 6 % of the CO2 away.
//
//   - Source: R. F. Weiss, Marine Chemistry 2 (1974) 203, eq. 12 and table I
//     (gravimetric).
//   - Range: −1 to 40 °C, salinity 0 to 4 % (40 ‰); beyond it the error is a
//     [*units.RangeError]. Not to be stretched above 40 °C: the source's two
//     forms part by 2 % there.
//   - Units: mol/(kg solution·atm); salinity as a share of the mass.
//   - Uncertainty: 0.2 % (source).
func HenryWeiss(t units.Temperature, salinity units.Share) (k float64, err error) {
	c, s := t.In(units.Celsius), 10*salinity.In(units.Percent)
	if err := limit.Check("dioxide.HenryWeiss", "temperature", c, "°C", -1, 40, weiss); err != nil {
		return k, err
	}
	if err := limit.Check("dioxide.HenryWeiss", "salinity", s, "‰", 0, 40, weiss); err != nil {
		return k, err
	}
	const (
		a1, a2, a3 = -60.2409, 93.4517, 23.3585
		b1, b2, b3 = 0.023517, -0.023656, 0.0047036
	)
	h := (c + chemistry.ZeroCelsius) / 100
	return math.Exp(a1 + a2/h + a3*math.Log(h) + s*(b1+h*(b2+h*b3))), nil // eq. 12
}
