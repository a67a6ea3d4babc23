package label_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/gravity/label"
)

// Australian standard-drink card (std0910): one decimal below 10, whole numbers
// above. One row is not the arithmetic of its own law: 330 mL at 5 % vol hold 13.02 g,
// and the card prints 1.2 drinks (other cards 1.3).
func TestStandardDrinksAustralia(t *testing.T) {
	for _, r := range [][3]float64{
		{285, 4.8, 1.1}, {285, 3.5, 0.8}, {285, 2.7, 0.6}, {425, 4.8, 1.6}, {425, 3.5, 1.2}, {425, 2.7, 0.9}, {375, 4.8, 1.4}, {375, 3.5, 1}, {375, 2.7, 0.8},
		{150, 13, 1.5}, {100, 13, 1}, {60, 17.5, 0.8}, {150, 11.5, 1.4}, {100, 11.5, 0.9}, {750, 12, 7.1}, {750, 13, 7.7}, {4000, 13, 41}, {2000, 13, 21},
		{750, 11.5, 6.8}, {4000, 11.5, 36}, {2000, 11.5, 18}, {2000, 17.5, 28}, {275, 5, 1.1}, {330, 5, 1.2}, {660, 5, 2.6}, {275, 7, 1.5},
		{330, 7, 1.8}, {660, 7, 3.6},
	} {
		tol := 0.05
		if r[2] >= 10 {
			tol = 0.5
		}
		if r[0] == 330 && r[1] == 5 {
			tol = 0.11
		}
		got := ok[float64](t)(label.DrinkAU.Count(volPct(r[1]), litre(r[0]/1000)))
		near(t, fmt.Sprint(r[0], " mL at ", r[1], " % vol"), got, r[2], tol+1e-9)
		if r[0] != 330 || r[1] != 5 {
			near(t, fmt.Sprint("label of ", r[0], " mL at ", r[1], " % vol"), ok[float64](t)(label.RoundDrinks(got)), r[2], 1e-12)
		}
	}
}

func TestStandardDrinks(t *testing.T) {
	near(t, "UK pint of 568 mL at 5.2 % vol", ok[float64](t)(label.UnitUK.Count(volPct(5.2), litre(0.568))), 2.95, 0.005)
	near(t, "US 12 fl oz at 5.0 % vol: 14.00 g", ok[float64](t)(label.DrinkUS.Count(volPct(5), litre(0.35488))), 1.000, 0.0005)
	for d, want := range map[label.StandardDrink]string{label.DrinkUS: "US standard drink", label.UnitUK: "UK unit",
		label.DrinkAU: "Australian or New Zealand standard drink", -1: "unknown measure of drink -1", 9: "unknown measure of drink 9"} {
		if d.String() != want {
			t.Errorf("%d: %s", d, d)
		}
	}
}

func TestStandardDrinksRefuses(t *testing.T) {
	_, err := label.DrinkUS.Count(volPct(5), litre(-1))
	refused(t, "volume", err, "volume")
	_, err = label.DrinkUS.Count(volPct(5), litre(math.Inf(1)))
	refused(t, "volume", err, "volume")
	for _, n := range []float64{-1, 1e13, math.NaN()} {
		_, err = label.RoundDrinks(n)
		refused(t, "label", err, "measures")
	}
	near(t, "9.94", ok[float64](t)(label.RoundDrinks(9.94)), 9.9, 1e-12)
	near(t, "9.96", ok[float64](t)(label.RoundDrinks(9.96)), 10, 1e-12)
	_, err = label.DrinkUS.Count(volPct(101), litre(1))
	refused(t, "strength", err, "strength")
	for _, d := range []label.StandardDrink{-1, 3} {
		_, err = d.Count(volPct(5), litre(1))
		unknown(t, err, "measure of drink")
	}
}
