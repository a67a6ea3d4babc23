package dioxide

import (
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// SpanWagner is the source of CO2 as a gas, as a refusal names it.
const SpanWagner = "Span & Wagner 1996"

// Critical point of CO2 (Span & Wagner 1996, table 3).
const (
	CriticalKelvin = 304.1282
	CriticalKPa    = 7377.3
	criticalMolar  = 10624.9063 // mol/m³
)

// Coldest and Warmest gas, °C, and the highest pressure, kPa, that the two
// virial coefficients carry within 0.5 % of the whole equation of state.
const (
	gasColdest = -10
	gasWarmest = 100
	Highest    = 2000
	gasRange   = "two virial coefficients follow Span & Wagner 1996 here within 0.5 %"
)

// SecondVirial returns the second virial coefficient of CO2 in cm³/mol.
//
//   - Source: R. Span & W. Wagner, J. Phys. Chem. Ref. Data 25 (1996) 1509, eq.
//     6.5 and table 31: the zero-density limit of the residual Helmholtz energy,
//     so the terms 1 to 4, 8, 17 and 18. The non-analytic terms, at most
//     0.003 cm³/mol, are left out.
//   - Range: −10 to 100 °C; beyond it the error is a [*units.RangeError].
//   - Units: cm³/mol; negative below 440 °C.
//   - Uncertainty: 0.5 cm³/mol or so against other published fits; the CRC
//     polynomial is 3 to 5 cm³/mol more negative.
func SecondVirial(t units.Temperature) (b float64, err error) {
	x := t.In(units.Celsius)
	if err := limit.Check("dioxide.SecondVirial", "temperature", x, "°C", gasColdest, gasWarmest, SpanWagner); err != nil {
		return b, err
	}
	b, _ = Virials(1 / (x + chemistry.ZeroCelsius))
	return b * 1e3, nil
}

// ThirdVirial returns the third virial coefficient of CO2 in cm⁶/mol².
//
//   - Source: as [SecondVirial]; the terms of second order in density: 5, 6, 8,
//     9 and 24. The Gaussian terms are below 1e-5 of it.
//   - Range: −10 to 100 °C; beyond it the error is a [*units.RangeError].
//   - Units: cm⁶/mol².
//   - Uncertainty: not stated by the source; measured values scatter by 3 %.
func ThirdVirial(t units.Temperature) (c float64, err error) {
	x := t.In(units.Celsius)
	if err := limit.Check("dioxide.ThirdVirial", "temperature", x, "°C", gasColdest, gasWarmest, SpanWagner); err != nil {
		return c, err
	}
	_, c = Virials(1 / (x + chemistry.ZeroCelsius))
	return c * 1e6, nil
}

// Virials returns B in L/mol and C in L²/mol² at u = 1/T in 1/K.
func Virials(u float64) (b, c float64) {
	const (
		n1, n2, n3, n4 = 0.38856823203161, 2.9385475942740, -5.5867188534934, -0.76753199592477
		n5, n6         = 0.31729005580416, 0.54803315897767
		n8, n9         = 2.1658961543220, 1.5841735109724
		n17, n18       = -0.37055685270086, -0.016775879700426
		n24            = -0.021810121289527
		perMole        = 1e3 / criticalMolar // L/mol
	)
	tau := CriticalKelvin * u
	half := math.Sqrt(tau)
	t34 := half * math.Sqrt(half)
	t32 := half * tau
	t2 := tau * tau
	t3 := t2 * tau
	b = perMole * ((n1 + n3*tau) + (n2*t34 + n4*t2) + (n8*t32 + t3*(n17+n18*t3)))  // eq. 6.5, δ→0
	c = 2 * perMole * perMole * ((n5*t34 + n6*t2) + ((n9-n8)*t32 + n24*t3*t3*tau)) // second order in δ; −n8 from its e^−δ
	return b, c
}

// Series is CO2 gas at one temperature as a series in pressure:
// Z = 1 + B·p + C·p² + D·p³, p in kPa.
type Series struct{ B, C, D float64 }

// GasAt turns B and C into the series in pressure.
//
//   - Source: the reversion of Z = 1 + Bρ + Cρ² (for example J. M. Prausnitz et
//     al., Molecular Thermodynamics of Fluid-Phase Equilibria (1999) section 5.4):
//     b = B/RT, c = (C − B²)/(RT)², d = (2B³ − 3BC)/(RT)³.
//   - Units: L/mol, kPa; u = 1/T in 1/K.
func GasAt(u float64) Series {
	B, C := Virials(u)
	rt := u * (1 / chemistry.Gas)
	b := B * rt
	return Series{B: b, C: C*rt*rt - b*b, D: b * (2*b*b - 3*C*rt*rt)}
}

// Compressibility is Z at a pressure in kPa.
func (s Series) Compressibility(p float64) float64 {
	return 1 + p*(s.B+p*(s.C+p*s.D))
}

// Slope is the change of Z with p, 1/kPa.
func (s Series) Slope(p float64) float64 { return s.B + p*(2*s.C+3*p*s.D) }

// LogFugacity is ln(f/p), the integral of (Z−1)/p.
func (s Series) LogFugacity(p float64) float64 {
	return p * (s.B + p*(s.C/2+p*s.D/3))
}
