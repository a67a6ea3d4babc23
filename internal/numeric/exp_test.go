package numeric

import (
	"math"
	"math/big"
	"math/rand/v2"
	"testing"
)

func TestExpIsMathExp(t *testing.T) {
	for x := -20.0; x < 20; x += 1.0 / 257 {
		got, want := Exp(x), math.Exp(x)
		if math.Abs(got/want-1) > 5e-16 {
			t.Fatalf("Exp(%g) = %v, math.Exp %v", x, got, want)
		}
	}
	for _, x := range []float64{-690, -300, 300, 690} {
		if got, want := Exp(x), math.Exp(x); math.Abs(got/want-1) > 1e-15 {
			t.Errorf("Exp(%g) = %v, math.Exp %v", x, got, want)
		}
	}
}

// exactly is e^x for |x| < 1 to 35 decimals: Taylor's series in fixed point, in whole numbers of 2^−120.
func exactly(x float64) *big.Float {
	const places = 120
	fixed, _ := new(big.Float).SetMantExp(big.NewFloat(x), places).Int(nil)
	term := new(big.Int).Lsh(big.NewInt(1), places)
	sum := new(big.Int).Set(term)
	for n := int64(1); term.Sign() != 0 && n < 60; n++ {
		term.Rsh(term.Mul(term, fixed), places)
		term.Quo(term, big.NewInt(n))
		sum.Add(sum, term)
	}
	return new(big.Float).SetMantExp(new(big.Float).SetInt(sum), -places)
}

// The rest of the series is below 5e-18, as the comment of Exp has it: a twentieth of a last place, which no single value
// shows and the mean of many does, as their roundings cancel. Each is within two last places.
func TestExpHoldsItsSeries(t *testing.T) {
	draw := rand.New(rand.NewPCG(13, 14))
	for _, end := range []float64{-math.Ln2 / 2, math.Ln2 / 2} {
		const many = 5_000
		var sum float64
		for range many {
			x := end * (1 - 0.03*draw.Float64())
			got := Exp(x)
			off, _ := new(big.Float).Sub(big.NewFloat(got), exactly(x)).Float64()
			if math.Abs(off) > 2*(math.Nextafter(got, 2)-got) {
				t.Errorf("Exp(%v) = %v, off by %g", x, got, off)
			}
			sum += off
		}
		if mean := sum / many; math.Abs(mean) > 5e-18+3e-18 { // three deviations of such a mean
			t.Errorf("near %g it is off by %g in the mean", end, mean)
		}
	}
}
