package carbonation

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// inWater is a kilogram of a solution by mass.
func inWater(t *testing.T, ethanol, extract float64) gravity.Solution {
	t.Helper()
	kg := func(pct float64) units.Mass { return units.Kilogram.Of(checked.Number(pct / 100)) }
	s, err := gravity.NewSolution(kg(100-ethanol-extract), kg(extract), kg(ethanol))
	if err != nil {
		t.Fatal(err)
	}
	return s
}

// E. C. Bingham & R. F. Jackson, Bull. Bur. Stand. 14 (1918) 59, in mPa·s at 10 and 20 %
// mass of ethanol, as abridged in a book on the properties of alcohol (read). The fit was
// made to the rows at 0, 20, 40, 60 and 80 °C; those between only check it. One row, 20 %
// at 10 °C, stands 3 % off the curve of its neighbours; a drink has 16 % at most.
func TestViscosityOfEthanol(t *testing.T) {
	for i, row := range [...]struct{ ten, twenty float64 }{
		{3.311, 5.319}, {2.179, 3.165}, {1.538, 2.183}, {1.160, 1.553}, {0.907, 1.160}, {0.734, 0.907}, {0.609, 0.736}, {0.514, 0.608}, {0.430, 0.505},
	} {
		c := 10 * float64(i)
		got, err := Viscosity(inWater(t, 10, 0), units.Celsius.Of(checked.Number(c)))
		if err != nil || math.Abs(got.In(units.MillipascalSecond)/row.ten-1) > 0.017 {
			t.Errorf("10 %% at %g °C: %g, %v, want %g", c, got, err, row.ten)
		}
		within := 0.011
		if i == 1 {
			within = 0.034
		}
		if got := waterViscosity(c) * math.Exp(ethanolThickens(c, 20)); math.Abs(got/row.twenty-1) > within {
			t.Errorf("20 %% at %g °C: %g, want %g", c, got, row.twenty)
		}
	}
}

// The fits by hand at 60 °C: 0.6784·0.9003·exp(−1.0488 + 0.159912) = 0.251093 for 10 % of
// ethanol; 0.2685/0.898·exp(−0.19852) = 0.245161 for 10 °P.
func TestFitsByHand(t *testing.T) {
	if got := ethanolThickens(60, 10); math.Abs(got-0.251093) > 1e-6 {
		t.Errorf("ethanol: %.7f", got)
	}
	if got := extractThickens(60, 10); math.Abs(got-0.245161) > 1e-6 {
		t.Errorf("extract: %.7f", got)
	}
}

// Sucrose, CRC Handbook of Chemistry and Physics, mPa·s (read in the data of a public
// program). The fit was made to 20 % at 0, 20, 40 and 80 °C, and to 5 and 30 % at 20 °C;
// the other rows only check it.
func TestViscosityOfSucrose(t *testing.T) {
	for _, row := range [...]struct{ c, pct, mu float64 }{
		{0, 20, 3.804}, {10, 20, 2.652}, {20, 20, 1.960}, {30, 20, 1.504}, {40, 20, 1.193}, {50, 20, 0.970}, {60, 20, 0.808}, {70, 20, 0.685}, {80, 20, 0.590},
		{20, 5, 1.1497}, {20, 10, 1.3397}, {20, 15, 1.5969}, {20, 24, 2.3376}, {20, 30, 3.1969},
	} {
		got, err := Viscosity(inWater(t, 0, row.pct), units.Celsius.Of(checked.Number(row.c)))
		if err != nil || math.Abs(got.In(units.MillipascalSecond)/row.mu-1) > 0.01 {
			t.Errorf("%g %% at %g °C: %g, %v, want %g", row.pct, row.c, got, err, row.mu)
		}
	}
}

// G. Liger-Belair & C. Cilindre, ACS Omega 6 (2021) 9672, table 1: a lager of about 5 % vol
// 2.42 mPa·s at 6 °C, champagne of about 12.5 % vol 2.2 at 10 °C (read; the extracts, 4 and
// 2 °P, are common practice). The stated 15 %.
func TestViscosityOfDrinks(t *testing.T) {
	for _, row := range [...]struct{ c, vol, extract, mu float64 }{{6, 5, 4, 2.42}, {10, 12.5, 2, 2.2}} {
		s, err := DrinkOf(units.PercentVolume.Of(checked.Number(row.vol)), units.DegreePlato.Of(checked.Number(row.extract)))
		if err != nil {
			t.Fatal(err)
		}
		got, err := Viscosity(s, units.Celsius.Of(checked.Number(row.c)))
		if err != nil || math.Abs(got.In(units.MillipascalSecond)/row.mu-1) > 0.15 {
			t.Errorf("%g %% vol at %g °C: %g, %v, want %g", row.vol, row.c, got, err, row.mu)
		}
	}
}

// Thicker with more of either, thinner with heat, all over the range, so that the fits
// turn nowhere.
func TestViscosityIsMonotone(t *testing.T) {
	for c := -2.; c <= 80; c++ {
		for w := 0.; w < 30; w++ {
			if e := ethanolThickens(c, w+1) - ethanolThickens(c, w); w < 16 && !(e > 0) {
				t.Errorf("ethanol at %g °C, %g %%: %g", c, w, e)
			}
			if x := extractThickens(c, w+1) - extractThickens(c, w); !(x > 0) {
				t.Errorf("extract at %g °C, %g %%: %g", c, w, x)
			}
		}
		if c < 80 && (ethanolThickens(c+1, 10) >= ethanolThickens(c, 10) || extractThickens(c+1, 10) >= extractThickens(c, 10)) {
			t.Errorf("%g °C", c)
		}
	}
}
