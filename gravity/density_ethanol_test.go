package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

func ethanol(t tester, p, c float64) float64 {
	t.Helper()
	return ok[units.Density](t)(gravity.EthanolDensity(massPct(p), celsius(c))).In(units.KilogramPerCubicMetre)
}

// Pure ethanol, OIML R 22 table I, printed to 0.01 kg/m³: it checks the sums of the
// coefficients of each power of the temperature.
func TestEthanolDensityPure(t *testing.T) {
	for _, r := range [][2]float64{{5, 801.99}, {10, 797.76}, {15, 793.51}, {20, 789.24}, {25, 784.95}, {30, 780.65}, {35, 776.31}, {40, 771.93}} {
		near(t, fmt.Sprint(r[0], " °C"), ethanol(t, 100, r[0]), r[1], 0.005)
	}
}

// Water in R 22: A1 (Directive 76/766/EEC annex), and water tables at other
// temperatures, from which R 22 differs by less than 0.01 kg/m³ (998.2071 for
// 998.2012 at 20 °C).
func TestEthanolDensityWater(t *testing.T) {
	near(t, "A1", ethanol(t, 0, 20), 998.20123, 1e-9)
	for _, r := range [][2]float64{{0, 999.841}, {5, 999.965}, {10, 999.700}, {15, 999.099}, {25, 997.0479}, {30, 995.650}, {40, 992.220}} {
		near(t, fmt.Sprint("CRC Handbook and others, ", r[0], " °C"), ethanol(t, 0, r[0]), r[1], 0.0075)
	}
	near(t, "supercooled, IAPWS SR6-08 table 8 (260 K)", ethanol(t, 0, -13.15), 997.06836, 0.04)
}

// Every printed digit of what could be read of the standard and of its verification
// does not reach p < 0.45 away from 15.56 and 25 °C: CRC Handbook, 102nd ed.,
// "Concentrative properties", at 20 °C, tolerance 0.2 kg/m³
// to 40 % and 0.3 above (printed 0.1; other data than R 22).
func TestEthanolDensityCRC(t *testing.T) {
	for _, r := range [][2]float64{
		{0.5, 997.3}, {2, 994.5}, {4, 991.0}, {6, 987.8}, {8, 984.7}, {10, 981.9}, {12, 979.2}, {14, 976.5}, {16, 973.9}, {18, 971.3},
		{20, 968.7}, {24, 963.2}, {28, 957.1}, {32, 950.4}, {36, 943.1}, {40, 935.2}, {44, 926.9}, {48, 918.3}, {52, 909.5}, {56, 900.4},
		{60, 891.1}, {64, 881.8}, {68, 872.4}, {72, 862.9}, {76, 853.3}, {80, 843.6}, {84, 833.5}, {88, 823.2}, {92, 812.5}, {96, 801.3}, {100, 789.3},
	} {
		near(t, fmt.Sprint(r[0], " % mass"), ethanol(t, r[0], 20), r[1], 0.2+math.Copysign(0.05, r[0]-42)+0.05)
	}
}

// Osborne, McKelvy & Bearce 1913 at 10, 15, 20, 25, 30, 35 and 40 °C, in kg/m³;
// tolerance 0.15: R 22 rests on drier ethanol and lies up to 0.12 lower.
func TestEthanolDensityOsborne(t *testing.T) {
	for _, r := range []struct {
		p   float64
		rho [7]float64
	}{
		{45, [7]float64{932.26, 928.52, 924.72, 920.85, 916.92, 912.91, 908.84}},
		{50, [7]float64{921.62, 917.76, 913.84, 909.85, 905.80, 901.68, 897.50}},
		{55, [7]float64{910.55, 906.59, 902.58, 898.50, 894.37, 890.16, 885.89}},
		{60, [7]float64{899.27, 895.23, 891.13, 886.99, 882.78, 878.51, 874.17}},
		{65, [7]float64{887.74, 883.64, 879.48, 875.27, 871.00, 866.67, 862.27}},
		{70, [7]float64{876.02, 871.87, 867.66, 863.40, 859.08, 854.70, 850.25}},
		{75, [7]float64{864.08, 859.88, 855.64, 851.34, 846.98, 842.57, 838.09}},
		{80, [7]float64{851.97, 847.72, 843.44, 839.11, 834.73, 830.29, 825.78}},
		{85, [7]float64{839.51, 835.25, 830.95, 826.60, 822.20, 817.74, 813.22}},
	} {
		for i, want := range r.rho {
			c := 10 + 5*float64(i)
			got := ethanol(t, r.p, c)
			near(t, fmt.Sprint(r.p, " % mass, ", c, " °C"), got, want, 0.15)
			if got > want+0.06 {
				t.Errorf("%v %% mass, %v °C: %.2f above Osborne %.2f, where R 22 is lower or the same", r.p, c, got, want)
			}
		}
	}
}

func TestEthanolDensityRefuses(t *testing.T) {
	for _, p := range []float64{-1e-9, 100.0001, math.NaN(), math.Inf(1)} {
		_, err := gravity.EthanolDensity(massPct(p), celsius(20))
		refused(t, "strength", err, "strength")
	}
	for _, c := range []float64{-20.001, 40.001, math.NaN()} {
		_, err := gravity.EthanolDensity(massPct(10), celsius(c))
		refused(t, "temperature", err, "temperature")
		_, err = gravity.EthanolStrength(kgm3(980), celsius(c))
		refused(t, "temperature", err, "temperature")
	}
	ethanol(t, 0, -20)
	ethanol(t, 100, 40)
	for _, rho := range []float64{789.239, 998.2013, math.NaN()} {
		_, err := gravity.EthanolStrength(kgm3(rho), celsius(20))
		refused(t, "density", err, "density")
	}
}

// The inverse gives back the strength over the whole of R 22.
func TestEthanolStrengthRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := rapid.Float64Range(0, 100).Draw(t, "% mass")
		c := rapid.Float64Range(-20, 40).Draw(t, "°C")
		d, err := gravity.EthanolDensity(massPct(p), celsius(c))
		if err != nil {
			t.Fatal(err)
		}
		back, err := gravity.EthanolStrength(d, celsius(c))
		if err != nil {
			t.Fatal(err)
		}
		// 2e-13 kg/m³ of rounding over the least slope, 6 kg/m³ for the whole.
		if got := back.In(units.PercentMass); math.Abs(got-p) > 1e-9*p+1e-11 {
			t.Fatalf("got %.15g, want %.15g", got, p)
		}
	})
}

// The density falls with strength everywhere, so that the inverse is one value; the
// ends give back 0 and 100 % exactly.
func TestEthanolDensityFalls(t *testing.T) {
	for c := -20.0; c <= 40; c += 0.5 {
		last := math.Inf(1)
		for i := range 1001 {
			rho := ethanol(t, float64(i)/10, c)
			if rho >= last {
				t.Fatalf("%v °C: %v kg/m³ at %v %% mass, %v just below", c, rho, float64(i)/10, last)
			}
			last = rho
		}
		for _, p := range []float64{0, 100} {
			near(t, "end", ok[units.StrengthByMass](t)(gravity.EthanolStrength(kgm3(ethanol(t, p, c)), celsius(c))).In(units.PercentMass), p, 1e-9)
		}
	}
}
