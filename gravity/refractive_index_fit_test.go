package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// The rows of the CRC Handbook, 102nd ed., "Concentrative properties of aqueous
// solutions": % mass and index at 20 °C.
var (
	glucoseIndex = [][2]float64{
		{0.5, 1.3337}, {2, 1.3358}, {4, 1.3387}, {6, 1.3417}, {8, 1.3447}, {10, 1.3477}, {12, 1.3508}, {14, 1.3539}, {16, 1.3571}, {18, 1.3603}, {20, 1.3635},
		{24, 1.3702}, {28, 1.3770}, {32, 1.3840}, {36, 1.3912}, {40, 1.3986}, {44, 1.4062}, {48, 1.4141}, {52, 1.4222}, {56, 1.4306}, {60, 1.4394},
	}
	fructoseIndex = [][2]float64{
		{0.5, 1.3337}, {2, 1.3358}, {4, 1.3387}, {6, 1.3417}, {8, 1.3446}, {10, 1.3476}, {12, 1.3507}, {14, 1.3538}, {16, 1.3569}, {18, 1.3601}, {20, 1.3634},
		{24, 1.3700}, {28, 1.3768}, {32, 1.3839}, {36, 1.3911}, {40, 1.3985}, {44, 1.4062}, {48, 1.4141},
	}
)

// The curves of glucose and fructose are fitted here again: the least squares of what
// the rows differ from the curve of sucrose, by powers of the mass fraction.
func TestRefractiveIndexFit(t *testing.T) {
	for _, c := range []struct {
		k     gravity.Sugar
		rows  [][2]float64
		terms int
		worst float64 // as the comment of the curves states
	}{{gravity.AsGlucose, glucoseIndex, 3, 0.00011}, {gravity.AsFructose, fructoseIndex, 2, 0.00007}} {
		sucrose := func(b float64) float64 { return ok[float64](t)(gravity.RefractiveIndex(plato(b))) }
		m := make([][]float64, c.terms) // normal equations
		for i := range m {
			m[i] = make([]float64, c.terms+1)
			for _, r := range c.rows {
				b := r[0] / 100
				for j := range c.terms {
					m[i][j] += math.Pow(b, float64(i+j+2))
				}
				m[i][c.terms] += math.Pow(b, float64(i+1)) * (r[1] - sucrose(r[0]))
			}
		}
		a := solved(m)
		for _, r := range c.rows {
			b, fit := r[0]/100, sucrose(r[0])
			for i, x := range a {
				fit += x * math.Pow(b, float64(i+1))
			}
			// small amounts: the index does not depend on how much there is
			s := solution(t, (1-b)/10, 0, 0)
			s = ok[gravity.Solution](t)(s.AddExtract(c.k, kg(b/10)))
			got := ok[float64](t)(s.RefractiveIndex())
			near(t, fmt.Sprint(c.k, " ", r[0], " fit"), got, fit, 3e-7)
			near(t, fmt.Sprint(c.k, " ", r[0]), got, r[1], c.worst)
		}
	}
}

// solved is Gauss's elimination without a change of rows: the matrix is positive.
func solved(m [][]float64) []float64 {
	n := len(m)
	for i := range m {
		for k := range m {
			if k != i {
				f := m[k][i] / m[i][i]
				for j := range m[k] {
					m[k][j] -= f * m[i][j]
				}
			}
		}
	}
	x := make([]float64, n)
	for i := range m {
		x[i] = m[i][n] / m[i][i]
	}
	return x
}

// From extract to index and back to a few units of the last place: the steps meet the
// root itself.
func TestRefractiveIndexMeets(t *testing.T) {
	for i := range 801 {
		b := float64(i) / 10
		n := ok[float64](t)(gravity.RefractiveIndex(plato(b)))
		near(t, fmt.Sprint(b, " °Bx"), ok[units.Extract](t)(gravity.BrixFromIndex(n)).In(units.DegreePlato), b, 4e-13)
	}
}
