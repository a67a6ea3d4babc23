package gravity

import (
	"math"

	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// EthanolStrength returns the strength of a mixture of ethanol and water from
// its density: the inverse of [EthanolDensity].
//
//   - Source: OIML R 22 (1973), general formula, solved for the strength.
//   - Range: the densities of 0 to 100 % mass at −20 to 40 °C; beyond it the error
//     is a [*units.RangeError].
//   - Uncertainty: that of the density divided by the slope, which is 1.3 (near 16 %
//     mass) to 3.1 kg/m³ for 1 % mass at 20 °C: 0.1 kg/m³ near 0 % is 0.05 % mass.
func EthanolStrength(d units.Density, t units.Temperature) (units.StrengthByMass, error) {
	const fn = "gravity.EthanolStrength"
	rho, c := d.In(units.KilogramPerCubicMetre), t.In(units.Celsius)
	if err := limit.Check(fn, "temperature", c, "°C", -20, 40, sourceR22); err != nil {
		return units.StrengthByMass{}, err
	}
	var m mixture
	m.at(c)
	pure := m.density(1)
	if err := limit.Check(fn, "density", rho, "kg/m³", pure, m[0], sourceR22); err != nil {
		return units.StrengthByMass{}, err
	}
	return percentMass(100 * m.fraction(rho, pure)), nil
}

// fraction finds the mass fraction whose density is rho, between pure ethanol
// and water. Newton's steps, kept inside the bracket; the start is the strength
// at 20 °C that stands at the same part of the way from water to ethanol.
func (c *mixture) fraction(rho, pure float64) float64 {
	lo, hi := 0.0, 1.0
	p := startFraction((c[0] - rho) / (c[0] - pure))
	for range mostSteps {
		f := c.density(p) - rho
		if f > 0 { // too dense: the strength is higher
			lo = p
		} else {
			hi = p
		}
		step := f / c.slope(p)
		next := p - step
		if math.Abs(step) < nearly { // the error after this step is its square
			return min(max(next, 0), 1)
		}
		if !(next > lo && next < hi) {
			next = (lo + hi) / 2
		}
		p = next
	}
	return p
}

// starts[i] is the mass fraction at 20 °C where the density has gone i/64 of the
// way from water to ethanol. It only saves steps.
var starts = startTable()

const startSteps = 64

func startTable() (s [startSteps + 2]float64) {
	m := mixture20
	lo := 0.0
	for i := range s {
		rho := m[0] - (m[0]-ethanol20)*float64(i)/startSteps
		a, b := lo, 1.0
		for b-a > nearly {
			if mid := (a + b) / 2; m.density(mid) > rho {
				a = mid
			} else {
				b = mid
			}
		}
		s[i], lo = a, a
	}
	return s
}

func startFraction(y float64) float64 {
	y *= startSteps
	i := min(int(y), startSteps-1)
	return starts[i] + (y-float64(i))*(starts[i+1]-starts[i])
}

// ByVolume converts a strength by mass to one by volume.
//
//   - Source: OIML R 22 (1973): volume of ethanol at 20 °C over volume of the
//     mixture at 20 °C, so 100·p·ρ(p, 20 °C)/ρ(1, 20 °C).
//   - Range: a mixture of ethanol and water, 0 to 100 % mass; a constant beyond that, which
//     only [units.Unit.Of] takes, counts as the nearer end. With extract in it use
//     [Solution.ByVolume].
//   - Uncertainty: that of R 22, below 0.01 % vol.
func ByVolume(w units.StrengthByMass) units.StrengthByVolume {
	p := clamp(w.In(units.PercentMass)/100, 0, 1)
	return percentVolume(clamp(100*p*mixture20.density(p)/ethanol20, 0, 100))
}

// ByMass converts a strength by volume to one by mass: the inverse of
// [ByVolume], for a mixture of ethanol and water.
//
//   - Source: OIML R 22 (1973), solved for the strength by mass.
//   - Range: 0 to 100 % vol; a constant beyond that, which only [units.Unit.Of] takes,
//     counts as the nearer end.
//   - Uncertainty: that of R 22, below 0.01 % mass.
func ByMass(v units.StrengthByVolume) units.StrengthByMass {
	return percentMass(100 * mixture20.fractionInVolume(ethanol20*clamp(v.In(units.PercentVolume)/100, 0, 1)))
}

// fractionInVolume finds the mass fraction p with p·ρ(p) = c, c being kg of
// ethanol in a m³ of the mixture. p·ρ(p) rises with p over the whole range.
func (m *mixture) fractionInVolume(c float64) float64 {
	p := c / m[0]
	for range mostSteps {
		rho := m.density(p)
		step := (p*rho - c) / (rho + p*m.slope(p))
		p = clamp(p-step, 0, 1)
		if math.Abs(step) < nearly {
			break
		}
	}
	return p
}

func clamp(x, lo, hi float64) float64 {
	if !(x > lo) { // a NaN, too
		return lo
	}
	if x > hi {
		return hi
	}
	return x
}
