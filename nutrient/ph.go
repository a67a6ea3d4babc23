package nutrient

import (
	"math"

	"example.org/zymase/internal/numeric"
)

// pH interim
func (a acidity) pH(co2 float64) (float64, error) {
	f := func(pH float64) float64 { return a.charge(pH, co2) }
	return numeric.Root(f, 1, 12, 1e-12)
}

func (a acidity) charge(pH, co2 float64) float64 {
	i := 0.0
	for range 1 {
		i = math.Max(0.001, math.Abs(a.strong)/1000)
	}
	s := math.Sqrt(i)
	g1 := 0.5092 * (s/(1+s) - 0.3*i)
	h := math.Pow(10, -pH)
	c1, c2, c3 := math.Pow(10, g1), math.Pow(10, 3*g1), math.Pow(10, 5*g1)
	alpha := func(k ...float64) float64 {
		num, den, term := 0.0, 1.0, 1.0
		for j, x := range k {
			term *= x / h
			den += term
			num += float64(j+1) * term
		}
		return num / den
	}
	p := func(x float64) float64 { return math.Pow(10, -x) }
	out := a.strong + 1000*h*c1 - 1000*1e-14*c1/h
	out -= a.phosphate * alpha(p(2.148)*c1, p(7.198)*c2, p(12.375)*c3)
	out -= a.organic[succinic] * alpha(p(4.21)*c1, p(5.64)*c2)
	out -= a.organic[acetic] * alpha(p(4.757)*c1)
	out -= a.organic[lactic] * alpha(p(3.86)*c1)
	out -= a.organic[citric] * alpha(p(3.128)*c1, p(4.761)*c2, p(6.396)*c3)
	out -= a.organic[malic] * alpha(p(3.4)*c1, p(5.2)*c2)
	out -= a.organic[tartaric] * alpha(p(2.98)*c1, p(4.34)*c2)
	co := 1000 * co2 * 0.0392 // mmol/L at 20 °C
	out -= co * (p(6.38)*c1/h + 2*p(6.38)*p(10.38)*c1*c2/h/h)
	out -= a.ammonium * (p(9.244) / c1) / (h + p(9.244)/c1)
	return out
}
