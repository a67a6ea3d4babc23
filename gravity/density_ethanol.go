package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const sourceR22 = "OIML R 22"

// EthanolDensity returns the density of a mixture of ethanol and water at
// 101.325 kPa, free of air.
//
//   - Source: OIML R 22, International alcoholometric tables (1973), general
//     formula; the same in Council Directive 76/766/EEC annex.
//   - Range: 0 to 100 % mass, −20 to 40 °C; beyond it the error is a
//     [*units.RangeError]. Where the mixture would be frozen the formula stands
//     for the supercooled liquid.
//   - Units: strength by mass; temperature on IPTS-68, within 0.01 K of ITS-90
//     here (below 0.01 kg/m³, not applied).
//   - Uncertainty: not stated by the source; it prints the table to 0.01 kg/m³.
//     The data of Osborne et al. 1913 lie up to 0.12 kg/m³ higher.
//   - The density falls with strength everywhere in this range.
func EthanolDensity(w units.StrengthByMass, t units.Temperature) (units.Density, error) {
	const fn = "gravity.EthanolDensity"
	p, c := w.In(units.PercentMass), t.In(units.Celsius)
	if err := limit.Check(fn, "strength", p, "% mass", 0, 100, sourceR22); err != nil {
		return units.Density{}, err
	}
	if err := limit.Check(fn, "temperature", c, "°C", -20, 40, sourceR22); err != nil {
		return units.Density{}, err
	}
	var m mixture
	m.at(c)
	return kgPerM3(m.density(p / 100)), nil
}

// A mixture is the formula of R 22 at one temperature: a polynomial in the mass
// fraction of ethanol.
type mixture [12]float64

// at sums the temperature terms of each power of the mass fraction. Row k holds
// A(k+1), then C(1,k), C(2,k) …; the first row A1 and B1 to B6.
func (c *mixture) at(t float64) {
	d := t - 20
	c[0] = 998.20123 + d*(-0.20618513+d*(-0.0052682542+d*(3.6130013e-05+d*(-3.8957702e-07+d*(7.169354e-09-d*9.9739231e-11)))))
	c[1] = -192.9769495 + d*(0.1693443461530087+d*(-0.0119301300505701+d*(-0.0006802995733503803+d*(4.075376675622027e-06-d*2.788074354782409e-08))))
	c[2] = 389.1238958 + d*(-10.46914743455169+d*(0.2517399633803461+d*(0.01876837790289664+d*(-8.76305857347111e-06+d*1.345612883493354e-08))))
	c[3] = -1668.103923 + d*(71.96353469546523+d*(-2.170575700536993+d*(-0.2002561813734156+d*6.515031360099368e-06)))
	c[4] = 13522.15441 + d*(-704.7478054272792+d*(13.53034988843029+d*(1.02299296671922-d*1.51578483698721e-06)))
	c[5] = -88292.78388 + d*(3924.090430035045+d*(-50.29988758547014-d*2.895696483903638))
	c[6] = 306287.4042 + d*(-12101.64659068747+d*(109.635566657757+d*4.810060584300675))
	c[7] = -613838.1234 + d*(22486.46550400788+d*(-142.2753946421155-d*4.672147440794683))
	c[8] = 747017.2998 + d*(-26055.62982188164+d*(108.043594285623+d*2.458043105903461))
	c[9] = -547846.1354 + d*(18523.73922069467+d*(-44.14153236817392-d*0.5411227621436812))
	c[10] = 223446.0334 + d*(-7420.201433430137+d*7.442971530188783)
	c[11] = -39032.85426 + d*1285.617841998974
}

// density is the polynomial, summed in pairs so that the products do not wait
// for each other.
func (c *mixture) density(p float64) float64 {
	p2 := p * p
	p4 := p2 * p2
	lo := (c[0] + c[1]*p) + (c[2]+c[3]*p)*p2
	mid := (c[4] + c[5]*p) + (c[6]+c[7]*p)*p2
	hi := (c[8] + c[9]*p) + (c[10]+c[11]*p)*p2
	return lo + p4*(mid+p4*hi)
}

// slope is the derivative of the density by the mass fraction.
func (c *mixture) slope(p float64) float64 {
	p2 := p * p
	p4 := p2 * p2
	lo := (c[1] + 2*c[2]*p) + (3*c[3]+4*c[4]*p)*p2
	mid := (5*c[5] + 6*c[6]*p) + (7*c[7]+8*c[8]*p)*p2
	hi := (9*c[9] + 10*c[10]*p) + 11*c[11]*p2
	return lo + p4*(mid+p4*hi)
}

// At 20 °C, where strength by volume and gravity are defined.
var (
	mixture20 = mixtureAt(20)
	ethanol20 = mixture20.density(1) // pure ethanol
)

func mixtureAt(t float64) mixture {
	var m mixture
	m.at(t)
	return m
}
