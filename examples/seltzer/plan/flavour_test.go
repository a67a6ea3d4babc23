package plan_test

import (
	"errors"
	"fmt"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// syruped is the built-in request with a syrup as its flavouring: so many grams of sugar in a
// litre of it, so many millilitres in a litre of drink.
func syruped(t testing.TB, sugar, dose float64) plan.Request {
	r := request(t)
	g := units.GramPerLitre.Of(checked.Number(sugar))
	r.Flavour = &plan.Flavour{
		Name: "elderflower syrup", Sample: units.Litre.Of(1),
		Added: units.Millilitre.Of(checked.Number(dose)), Sugar: &g,
	}
	return r
}

// The volumes of a base drink and of a syrup add up within a few thousandths, and the masses
// exactly: 50 mL to a litre are 2.857 L in 60 L. A syrup of 600 g/L is 49.0 % mass and has
// 1.2242 kg/L (ICUMSA SPS-4).
func TestSyrupHasItsVolume(t *testing.T) {
	r := syruped(t, 600, 50)
	r.Packs, r.Packs[0].Volume, r.Buffer = r.Packs[:1], r.Volume, nil
	p := made(t, r)
	added := p.Flavour.Added.In(units.Litre)
	near(t, "syrup, L", added, 60*0.05/1.05, 0.005)
	for _, line := range p.Balance.In {
		if line.What == "flavouring and priming" {
			near(t, "its mass, kg", line.Mass.In(units.Kilogram), 1.2242*added, 0.001)
		}
	}
	near(t, "sugar, g/L", p.Flavour.Sugar.In(units.GramPerLitre), 600*0.05/1.05, 0.05)
	// Base drink: what is in the fermenter less what stays with the yeast.
	base := p.Vessels[6].Cold.In(units.Litre) - r.Fermenter.Loss.In(units.Litre)
	near(t, "base and syrup, L", base+added, 60, 0.1)
}

// Primer by its own composition, counted by hand from atomic weights: a gram of white sugar
// gives 0.9994 · 0.51428 g of CO2, of fructose 0.48856, of invert syrup (77.9 % dry matter,
// half of it inverted) 0.3895 · (0.48856 + 0.51428).
func TestPrimerByComposition(t *testing.T) {
	r := request(t)
	prime := func(with string) float64 {
		r.Packs[1].Priming = with
		return made(t, r).Packs[1].Bottle.Priming.Asked.In(units.Gram)
	}
	gas := prime("white sugar") * 0.9994 * 0.51428
	for _, row := range []struct {
		name string
		co2  float64
	}{
		{"fructose", 0.48856}, {"invert sugar syrup", 0.3895 * (0.48856 + 0.51428)}, {"dextrose monohydrate", 0.44415},
		{"honey", 0.695*0.48856 + 0.086*0.51428}, {"maple syrup", 0.64 * 0.51428},
	} {
		// The strength that a primer brings moves the volumes by a few thousandths.
		near(t, row.name, prime(row.name)*row.co2/gas, 1, 0.005)
	}
}

// Where the flavourings of two packs are too sweet, each is told what it may be by itself: the first is not blamed for the second.
func TestTwoTooSweet(t *testing.T) {
	r := syruped(t, 600, 5)
	bottles := r.Packs[1]
	bottles.Volume = units.Litre.Of(30)
	r.Packs = []plan.Pack{bottles, bottles}
	for i := range r.Packs {
		f := *r.Flavour
		f.Added = units.Millilitre.Of(checked.Number(20 + 20*float64(i)))
		r.Packs[i].Flavour = &f
	}
	r.Flavour = nil
	most := make([]float64, 2)
	for i := range most {
		_, err := plan.Make(r)
		e, ok := errors.AsType[*plan.RequestError](err)
		limit, known := errors.AsType[*units.RangeError](err)
		if !ok || !known || e.Field != fmt.Sprintf("packs[%d].flavour.added", i) || !strings.Contains(e.Allowed, fmt.Sprintf("packs[%d]", i)) {
			t.Fatal(err)
		}
		most[i] = limit.Max
		r.Packs[i].Flavour.Added = units.Millilitre.Of(checked.Number(limit.Max))
	}
	made(t, r)
	near(t, "of the same bottles, mL", most[0], most[1], 0.02*most[0])
}
