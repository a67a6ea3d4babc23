package gravity_test

import (
	"fmt"
	"math"
	"testing"
)

// The coefficients of the sources, written down a second time in the order of the
// print, and the general formula summed term by term: a digit changed in one place is
// seen in the other.

// OIML R 22: A1 to A12, B1 to B6, C(i,k); m = 11, 10, 9, 4, 2.
var (
	r22A = []float64{998.20123, -192.9769495, 389.1238958, -1668.103923, 13522.15441, -88292.78388, 306287.4042, -613838.1234, 747017.2998,
		-547846.1354, 223446.0334, -39032.85426}
	r22B = []float64{-0.20618513, -0.0052682542, 3.6130013e-05, -3.8957702e-07, 7.169354e-09, -9.9739231e-11}
	r22C = [][]float64{
		{0.1693443461530087, -10.46914743455169, 71.96353469546523, -704.7478054272792, 3924.090430035045, -12101.64659068747, 22486.46550400788,
			-26055.62982188164, 18523.73922069467, -7420.201433430137, 1285.617841998974},
		{-0.0119301300505701, 0.2517399633803461, -2.170575700536993, 13.53034988843029, -50.29988758547014, 109.635566657757,
			-142.2753946421155, 108.043594285623, -44.14153236817392, 7.442971530188783},
		{-0.0006802995733503803, 0.01876837790289664, -0.2002561813734156, 1.02299296671922, -2.895696483903638, 4.810060584300675,
			-4.672147440794683, 2.458043105903461, -0.5411227621436812},
		{4.075376675622027e-06, -8.76305857347111e-06, 6.515031360099368e-06, -1.51578483698721e-06},
		{-2.788074354782409e-08, 1.345612883493354e-08},
	}
)

func TestEthanolDensityTermByTerm(t *testing.T) {
	for c := -20.0; c <= 40; c += 5 {
		for p := 0.0; p <= 1; p += 0.05 {
			sum := r22A[0]
			for k, a := range r22A[1:] {
				sum += a * math.Pow(p, float64(k+1))
			}
			for k, b := range r22B {
				sum += b * math.Pow(c-20, float64(k+1))
			}
			for i, row := range r22C {
				for k, x := range row {
					sum += x * math.Pow(p, float64(k+1)) * math.Pow(c-20, float64(i+1))
				}
			}
			near(t, fmt.Sprint(100*p, " % mass, ", c, " °C"), ethanol(t, min(100*p, 100), c), sum, 1e-8)
		}
	}
}

// ICUMSA SPS-4: a, b, c, d, e by power of the mass fraction; T = (t − 20)/100.
var sps4 = [][]float64{
	{385.1761, 135.3705, 40.9299, -3.9643, 13.4853, -17.289},
	{-46.272, -7.172, 1.1597, 5.1126, 17.5254},
	{59.7712, 7.2491, 12.363, -35.4791},
	{-47.2207, -21.6977, 27.6301},
	{18.3184, 12.3081},
}

func TestSucroseDensityTermByTerm(t *testing.T) {
	for c := 0.0; c <= 100; c += 10 {
		for b := 0.0; b <= 0.8; b += 0.05 {
			sum := sucrose(t, 0, c)
			for i, row := range sps4 {
				for k, x := range row {
					sum += x * math.Pow(b, float64(k+1)) * math.Pow((c-20)/100, float64(i))
				}
			}
			near(t, fmt.Sprint(100*b, " % mass, ", c, " °C"), sucrose(t, min(100*b, 80), c), sum, 1e-9)
		}
	}
}
