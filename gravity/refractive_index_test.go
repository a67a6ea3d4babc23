package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// ICUMSA 1974 as anchors (5 decimals, tolerance 0.00001) and the CRC Handbook (4
// decimals; tolerance 0.00007: half a digit and the difference of the two).
func TestRefractiveIndexSucrose(t *testing.T) {
	index := func(b float64) float64 { return ok[float64](t)(gravity.RefractiveIndex(plato(b))) }
	for _, r := range [][2]float64{{0, 1.33299}, {10, 1.34782}, {20, 1.36384}, {50, 1.42009}, {70, 1.46546}} {
		near(t, fmt.Sprint("ICUMSA ", r[0]), index(r[0]), r[1], 0.00001)
		near(t, fmt.Sprint("°Bx ", r[1]), ok[units.Extract](t)(gravity.BrixFromIndex(math.Max(r[1], 1.33299))).In(units.DegreePlato), r[0], 0.006)
	}
	for _, r := range [][2]float64{
		{0.5, 1.3337}, {1, 1.3344}, {2, 1.3359}, {3, 1.3373}, {4, 1.3388}, {5, 1.3403}, {6, 1.3418}, {7, 1.3433}, {8, 1.3448}, {9, 1.3463},
		{10, 1.3478}, {12, 1.3509}, {14, 1.3541}, {16, 1.3573}, {18, 1.3606},
		{20, 1.3639}, {24, 1.3706}, {28, 1.3776}, {32, 1.3848}, {36, 1.3922}, {40, 1.3999}, {44, 1.4078}, {48, 1.4159}, {52, 1.4243},
		{56, 1.4330}, {60, 1.4419}, {64, 1.4511}, {68, 1.4606}, {72, 1.4703}, {76, 1.4803}, {80, 1.4906},
	} {
		near(t, fmt.Sprint("CRC ", r[0]), index(r[0]), r[1], 0.00007)
	}
	// glucose, fructose, glycerol (recalled from memory) and ethanol, CRC Handbook,
	// tolerance 0.0002
	for k, rows := range map[gravity.Sugar][][2]float64{
		gravity.AsGlucose: {{0.5, 1.3337}, {2, 1.3358}, {6, 1.3417}, {10, 1.3477}, {14, 1.3539}, {20, 1.3635}, {28, 1.3770}, {36, 1.3912},
			{44, 1.4062}, {52, 1.4222}, {60, 1.4394}},
		gravity.AsFructose: {{0.5, 1.3337}, {2, 1.3358}, {6, 1.3417}, {10, 1.3476}, {14, 1.3538}, {20, 1.3634}, {28, 1.3768}, {36, 1.3911},
			{44, 1.4062}, {48, 1.4141}},
		gravity.AsGlycerol: {{10, 1.3448}},
	} {
		for _, r := range rows {
			s := solution(t, 100-r[0], 0, 0)
			s = ok[gravity.Solution](t)(s.AddExtract(k, kg(r[0])))
			tol := 0.0002
			if k == gravity.AsGlycerol { // its one number is from this row
				tol = 0.0001
			}
			near(t, fmt.Sprint(k, " ", r[0]), ok[float64](t)(s.RefractiveIndex()), r[1], tol)
		}
	}
	for _, r := range [][2]float64{{0.5, 1.3333}, {2, 1.3342}, {4, 1.3354}, {6, 1.3367}, {8, 1.3381}, {10, 1.3395}, {12, 1.3410},
		{14, 1.3425}, {16, 1.3440}, {18, 1.3455}, {20, 1.3469}, {24, 1.3498}, {28, 1.3524}, {32, 1.3546}, {36, 1.3566}, {40, 1.3583}} {
		s := solution(t, 100-r[0], 0, r[0])
		near(t, fmt.Sprint("ethanol ", r[0]), ok[float64](t)(s.RefractiveIndex()), r[1], 0.0001)
	}
}

func TestRefractiveIndexRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		b := rapid.Float64Range(0, 80).Draw(t, "°Bx")
		n := ok[float64](t)(gravity.RefractiveIndex(plato(b)))
		near(t, "back", ok[units.Extract](t)(gravity.BrixFromIndex(n)).In(units.DegreePlato), b, 1e-9*b+1e-12)
		// the polynomial in circulation is low by about 0.02
		near(t, "polynomial", ok[units.Extract](t)(rival.BrixFromIndexPolynomial(n)).In(units.DegreePlato), b-0.02, 0.06)
		s := solution(t, 100-b, b, 0)
		near(t, "solution", ok[units.Extract](t)(s.RefractometerBrix()).In(units.DegreePlato), b, 1e-9)
	})
	// against the anchors of ICUMSA 1974 it gives 9.979, 19.980, 49.980, 69.978
	for n, want := range map[float64]float64{1.34782: 9.979, 1.36384: 19.980, 1.42009: 49.980, 1.46546: 69.978, 1.33299: -0.0131} {
		near(t, "polynomial", ok[units.Extract](t)(rival.BrixFromIndexPolynomial(n)).In(units.DegreePlato), want, 0.001)
	}
}

func TestRefractiveIndexRefuses(t *testing.T) {
	for _, b := range []float64{-0.1, 80.1, math.NaN()} {
		_, err := gravity.RefractiveIndex(plato(b))
		refused(t, "extract", err, "extract")
	}
	for _, n := range []float64{1.33298, 1.4908, math.NaN()} {
		_, err := gravity.BrixFromIndex(n)
		refused(t, "index", err, "refractive index")
		_, err = rival.BrixFromIndexPolynomial(n)
		refused(t, "index", err, "refractive index")
	}
	ok[units.Extract](t)(gravity.BrixFromIndex(1.33299))
	ok[units.Extract](t)(gravity.BrixFromIndex(1.4905))
	ok[units.Extract](t)(rival.BrixFromIndexPolynomial(1.4907))
	s := solution(t, 59, 0, 41)
	_, err := s.RefractiveIndex()
	refused(t, "spirit", err, "strength")
	_, err = s.RefractometerBrix()
	refused(t, "spirit", err, "strength")
}

// What a refractometer shows in a fermented wash is more than the extract: about half
// a degree for each % mass of ethanol.
func TestRefractometerInFermented(t *testing.T) {
	wort := solution(t, 90, 10, 0)
	dry, _, err := wort.Dry(wort.WashYield())
	if err != nil {
		t.Fatal(err)
	}
	read := ok[units.Extract](t)(dry.RefractometerBrix()).In(units.DegreePlato)
	near(t, "dry wash", read-dry.RealExtract().In(units.DegreePlato), 0.4*dry.ByMass().In(units.PercentMass), 0.15)
}
