package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Alcoholometric table of the United States Pharmacopeia 29, from Bulletin of the
// Bureau of Standards 9, pp. 424-425: specific gravity in air, 4 decimals, at 25/25
// and 15.56/15.56 °C, for exact per cent by mass. Tolerance 0.0001: half the last
// digit, and the table's own ethanol.
func TestSpecificGravityUSP(t *testing.T) {
	for p, r := range [][2]float64{
		{1.0000, 1.0000}, {0.9981, 0.9981}, {0.9963, 0.9963}, {0.9945, 0.9945}, {0.9927, 0.9928}, {0.9911, 0.9912}, {0.9894, 0.9896},
		{0.9879, 0.9881}, {0.9863, 0.9867}, {0.9848, 0.9852},
		{0.9833, 0.9839}, {0.9818, 0.9825}, {0.9804, 0.9812}, {0.9789, 0.9799}, {0.9776, 0.9787}, {0.9762, 0.9774}, {0.9748, 0.9763},
		{0.9734, 0.9751}, {0.9720, 0.9738}, {0.9706, 0.9726},
		{0.9692, 0.9714}, {0.9677, 0.9701}, {0.9663, 0.9688}, {0.9648, 0.9675}, {0.9633, 0.9662}, {0.9617, 0.9648}, {0.9601, 0.9635},
		{0.9585, 0.9620}, {0.9568, 0.9605}, {0.9551, 0.9590}, {0.9534, 0.9574}, {0.9516, 0.9558}, {0.9498, 0.9541},
	} {
		s := solution(t, 100-float64(p), 0, float64(p))
		near(t, fmt.Sprint(p, " % mass, 25/25"), ok[float64](t)(s.SpecificGravity(gravity.At25, gravity.InAir)), r[0], 0.0001)
		near(t, fmt.Sprint(p, " % mass, 15.56/15.56"), ok[float64](t)(s.SpecificGravity(gravity.At60F, gravity.InAir)), r[1], 0.0001)
	}
	// the same table by volume at 60 °F: % vol against % mass, 2 decimals
	for i, want := range []float64{0, 0.80, 1.59, 2.39, 3.19, 4.00, 4.80, 5.61, 6.42, 7.23, 8.05, 8.86, 9.68, 10.50, 11.32, 12.14,
		12.96, 13.79, 14.61, 15.44, 16.27, 17.10, 17.93, 18.77, 19.60, 20.44, 21.29, 22.13, 22.97, 23.82, 24.67, 25.52, 26.38} {
		const c = (60 - 32) / 1.8
		v := want * ethanol(t, want, c) / ethanol(t, 100, c)
		near(t, fmt.Sprint(i, " % vol at 60 °F"), v, float64(i), 0.011)
	}
	for v, p := range map[float64]float64{1.26: 1, 2.51: 2, 3.76: 3, 5: 4, 6.24: 5, 12.39: 10, 18.47: 15, 24.47: 20, 30.39: 25, 36.18: 30, 38.46: 32} {
		const c = (60 - 32) / 1.8
		near(t, fmt.Sprint(p, " % mass"), p*ethanol(t, p, c)/ethanol(t, 100, c), v, 0.01)
	}
}

// 27 CFR 30.41 and 30.64: wine gallons a pound at 60 °F are 0.120074/SG in air: 190
// proof 0.14718, so 0.81583; 200 proof gives 0.30258/2 proof gallons, so 0.79367. R 22
// rests on drier ethanol: 0.79356.
func TestSpecificGravityCFR(t *testing.T) {
	const c = (60 - 32) / 1.8
	lo, hi := 0.0, 100.0
	for range 60 {
		if p := (lo + hi) / 2; p*ethanol(t, p, c)/ethanol(t, 100, c) < 95 {
			lo = p
		} else {
			hi = p
		}
	}
	for _, r := range []struct{ p, gal, factor float64 }{{lo, 0.14718, 1}, {100, 0.30258, 2}, {0, 0.120074, 1}} {
		s := solution(t, 100-r.p, 0, r.p)
		near(t, fmt.Sprint(r.p, " % mass"), 0.120074/ok[float64](t)(s.SpecificGravity(gravity.At60F, gravity.InAir))*r.factor, r.gal, 0.00002*r.factor)
	}
	s := solution(t, 100-lo, 0, lo)
	near(t, "190 proof, proof gallons", 0.120074/ok[float64](t)(s.SpecificGravity(gravity.At60F, gravity.InAir))*1.9, 0.27964, 0.00002)
	// the pound in a gallon of water in air, from the definitions: 8.32823 lb/US gal
	water := ok[units.Density](t)(gravity.WaterDensity(units.Fahrenheit.Of(60)))
	near(t, "water", 1/ok[units.Density](t)(gravity.DensityInAir(water)).In(units.PoundPerUSGallon), 0.120074, 0.000004)
}

// The German official table of 1900: extract as sucrose in g/100 mL at 15 °C from the
// specific gravity 15/15 °C, printed to 0.01 (0.1 at places). Tolerance 0.01
// in vacuum, 0.015 in air: which of the two it is for is not said.
func TestExtractPer100mL(t *testing.T) {
	for _, r := range [][2]float64{
		{1.0000, 0}, {1.0010, 0.26}, {1.0020, 0.52}, {1.0030, 0.77}, {1.0040, 1.03}, {1.0050, 1.29}, {1.0060, 1.55}, {1.0070, 1.81},
		{1.0080, 2.07}, {1.0090, 2.32}, {1.0100, 2.58},
		{1.0110, 2.84}, {1.0120, 3.10}, {1.0130, 3.36}, {1.0140, 3.62}, {1.0150, 3.87}, {1.0160, 4.13}, {1.0170, 4.39}, {1.0190, 4.91},
	} {
		for _, a := range []gravity.Air{gravity.InVacuum, gravity.InAir} {
			g := ok[gravity.Gravity](t)(gravity.FromReference(r[0], gravity.At15, a))
			c := ok[units.MassConcentration](t)(gravity.ExtractConcentration(g.Extract(), celsius(15)))
			near(t, fmt.Sprint(r[0], " ", a), c.In(units.GramPerLitre)/10, r[1], 0.011+0.004*float64(a))
		}
	}
}

// CRC Handbook, sucrose: grams a litre at 20 °C.
func TestExtractConcentrationCRC(t *testing.T) {
	for _, r := range [][2]float64{{0, 0}, {1, 10}, {2, 20.1}, {5, 50.9}, {8, 82.4}, {10, 103.8}, {15, 158.9}, {20, 216.2}, {30, 338.1},
		{40, 470.6}, {50, 614.8}, {60, 771.9}, {70, 943.1}, {80, 1129.4}} {
		got := ok[units.MassConcentration](t)(gravity.ExtractConcentration(plato(r[0]), celsius(20))).In(units.GramPerLitre)
		near(t, fmt.Sprint(r[0], " %"), got, r[1], 0.1+0.0003*r[1])
		back := ok[units.Extract](t)(gravity.ExtractFromConcentration(units.GramPerLitre.Of(1).Plus(units.MassConcentration{}), celsius(20)))
		near(t, "1 g/L", back.In(units.DegreePlato), 0.10014, 0.00001)
	}
	rapid.Check(t, func(t *rapid.T) {
		b, c := rapid.Float64Range(0, 80).Draw(t, "°P"), rapid.Float64Range(0, 100).Draw(t, "°C")
		g := ok[units.MassConcentration](t)(gravity.ExtractConcentration(plato(b), celsius(c)))
		back := ok[units.Extract](t)(gravity.ExtractFromConcentration(g, celsius(c)))
		near(t, "back", back.In(units.DegreePlato), b, 1e-9*b+1e-12)
		s := solution(t, 100-b, b, 0)
		near(t, "of a solution", s.Concentration(gravity.AsSucrose).In(units.GramPerLitre), b/100*sucrose(t, b, 20), 1e-9)
	})
	for c := 0.0; c <= 100; c += 1.0 / 64 { // the end of the range, whatever the last digit does
		g := ok[units.MassConcentration](t)(gravity.ExtractConcentration(plato(80), celsius(c)))
		near(t, "the end", ok[units.Extract](t)(gravity.ExtractFromConcentration(g, celsius(c))).In(units.DegreePlato), 80, 1e-9)
	}
	_, err := gravity.ExtractConcentration(plato(81), celsius(20))
	refused(t, "extract", err, "extract")
	for _, g := range []float64{-1, 1130, math.NaN()} {
		_, err = gravity.ExtractFromConcentration(mgL(1000*g), celsius(20))
		refused(t, "concentration", err, "concentration")
	}
	for _, c := range []float64{-1, 101} {
		_, err = gravity.ExtractFromConcentration(mgL(1000), celsius(c))
		refused(t, "temperature", err, "temperature")
	}
	s := solution(t, 1, 1, 0)
	if !s.Concentration(9).IsZero() || !s.Concentration(-1).IsZero() || !(gravity.Solution{}).Concentration(gravity.AsSucrose).IsZero() {
		t.Error("no such extract")
	}
}

// Set A of the check rows attributed to NBS Circular 440: degrees Baumé as 144.3·(1 −
// 1/S) of S 20/20 °C; the scale proper takes S at 15/4 °C, 0.15 °Bé more at 50 %.
func TestBaume(t *testing.T) {
	for _, r := range [][2]float64{{0, 0}, {10, 5.55}, {20, 11.04}, {50, 27.15}, {70, 37.38}} {
		g := ok[gravity.Gravity](t)(gravity.FromExtract(plato(r[0])))
		near(t, "modulus 144.3 on S 20/20", 144.3*(1-1/g.SG()), r[1], 0.03)
		near(t, "S 15/4", g.Baume(), r[1], 0.15)
		near(t, "US", g.BaumeUS(), 145*(1-1/ok[float64](t)(g.As(gravity.At60F, gravity.InVacuum))), 1e-12)
		near(t, "inverse", ok[gravity.Gravity](t)(gravity.FromBaume(g.Baume())).SG(), g.SG(), 1e-12)
		near(t, "sake meter", g.SakeMeter(), -10*g.Baume(), 1e-9)
	}
	// 145 − 145/1.5 = 48.33 by hand, for a modulus alone
	near(t, "US modulus", 145*(1-1/1.5), 48.333, 0.001)
	for _, b := range []float64{-37.1, 42.1, math.NaN()} {
		_, err := gravity.FromBaume(b)
		refused(t, "Baumé", err, "degrees Baumé")
	}
	ok[gravity.Gravity](t)(gravity.FromBaume(-37))
	ok[gravity.Gravity](t)(gravity.FromBaume(42))
	if g := ok[gravity.Gravity](t)(gravity.FromSG(1.085)); math.Abs(g.Oechsle()-85) > 1e-9 {
		t.Error(g.Oechsle())
	}
}

// A specific gravity of any reference comes back; water is 1 wherever both
// temperatures are the same.
func TestReferenceRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := ok[gravity.Gravity](t)(gravity.FromSG(rapid.OneOf(rapid.Float64Range(0.8, 1.40), rapid.Float64Range(0.99, 1.1)).Draw(t, "SG")))
		r := gravity.Reference(rapid.IntRange(0, 6).Draw(t, "reference"))
		a := gravity.Air(rapid.IntRange(0, 1).Draw(t, "air"))
		back := ok[gravity.Gravity](t)(gravity.FromReference(ok[float64](t)(g.As(r, a)), r, a))
		near(t, "back", back.SG(), g.SG(), 1e-12)
		if liquid, water, err := r.Temperatures(); err == nil && liquid == water {
			near(t, "water", ok[float64](t)(gravity.Gravity{}.As(r, a)), 1, 1e-12)
		}
	})
	for _, sg := range []float64{0.7909, 1.4141, math.NaN(), -1} {
		_, err := gravity.FromReference(sg, gravity.At15, gravity.InAir)
		refused(t, "reference", err, "specific gravity")
	}
	for _, sg := range []float64{0.7915, 1.414} {
		ok[gravity.Gravity](t)(gravity.FromReference(sg, gravity.At20, gravity.InVacuum))
	}
}

// A plain solution, and a spirit, read the same by Gravity and by Solution.
func TestReferenceOfSolution(t *testing.T) {
	beer := solution(t, 92, 4, 4)
	for r := gravity.At20; r <= gravity.At15On4; r++ {
		for _, a := range []gravity.Air{gravity.InVacuum, gravity.InAir} {
			syrup := solution(t, 70, 30, 0)
			near(t, "syrup", ok[float64](t)(syrup.Gravity().As(r, a)), ok[float64](t)(syrup.SpecificGravity(r, a)), 1e-12)
			spirit := solution(t, 70, 0, 30)
			near(t, "spirit", ok[float64](t)(spirit.Gravity().As(r, a)), ok[float64](t)(spirit.SpecificGravity(r, a)), 1e-12)
			near(t, "beer, as a sugar solution", ok[float64](t)(beer.Gravity().As(r, a)), ok[float64](t)(beer.SpecificGravity(r, a)), 0.0003)
		}
	}
	near(t, "20/20", ok[float64](t)(beer.SpecificGravity(gravity.At20, gravity.InVacuum)), beer.Gravity().SG(), 1e-12)
}

// Ethanol at 20 °C in air of 1.2 kg/m³ on weights of 8000: 788.157 (by hand from
// 789.239); Canada's table of 1996 prints 788.1589894 with air of 1.19818.
func TestDensityInAir(t *testing.T) {
	air := ok[units.Density](t)(gravity.DensityInAir(kgm3(789.2391233)))
	near(t, "ethanol", air.In(units.KilogramPerCubicMetre), (789.2391233-1.2)/(1-1.2/8000), 1e-9)
	near(t, "Canada 1996", air.In(units.KilogramPerCubicMetre), 788.1589894, 0.002)
	back := ok[units.Density](t)(gravity.DensityInVacuum(air))
	near(t, "back", back.In(units.KilogramPerCubicMetre), 789.2391233, 1e-9)
	for _, d := range []float64{99, 20001, math.NaN()} {
		_, err := gravity.DensityInAir(kgm3(d))
		refused(t, "in air", err, "density")
		_, err = gravity.DensityInVacuum(kgm3(d))
		refused(t, "in vacuum", err, "density in air")
	}
	for _, d := range []float64{100, 20000} {
		ok[units.Density](t)(gravity.DensityInAir(kgm3(d)))
		ok[units.Density](t)(gravity.DensityInVacuum(kgm3(d)))
	}
	// "At 1.050 the two differ by 0.00006"
	g := ok[gravity.Gravity](t)(gravity.FromSG(1.050))
	near(t, "in air", ok[float64](t)(g.As(gravity.At20, gravity.InAir))-1.050, 0.00006, 0.000001)
	if gravity.InAir.String() != "in air" || gravity.InVacuum.String() != "in vacuum" {
		t.Error("names")
	}
}
