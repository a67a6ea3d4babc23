package batch

import (
	"fmt"
	"testing"

	"example.org/zymase/units"
)

func TestPrime(t *testing.T) {
	s := after(beer(), Step{Kind: Prime, What: "dextrose monohydrate", Mass: units.Gram.Of(110)})
	near(t, "dextrose", s.Fermentable().In(units.Gram), 100, 0.05) // 9.09 % of crystal water
	refused(t, beer(), Step{Kind: Prime, What: "DAP"})
}

// A pack without nitrogen makes 3 % less gas of its primer than Gay-Lussac's equation, about the gram from 2 g that
// practice counts with; with nitrogen and the will to grow it makes less, but no pack makes more than the equation.
func TestPrimersGas(t *testing.T) {
	made := must(InPack(units.Gram.Of(105.263))).CO2.In(units.Gram)
	near(t, "CO2 of 100 g of sucrose", made, 49.85, 0.1) // by hand: 24 electrons a hexose, less those of glycerol and acids
	if must(InPack(units.Gram.Of(1))).DryYeast.In(units.Gram) != 0 {
		t.Error("yeast grows on nothing")
	}
	gas := func(s State, u *Unknowns) float64 {
		before, sugar := s.Of(CarbonDioxide), s.Fermentable().In(units.Gram)
		s, _, err := Do(Step{Kind: Ferment, Share: per(100)}, s, u)
		if err != nil {
			t.Fatal(err)
		}
		return (s.Of(CarbonDioxide) - before) * 44.009 / sugar
	}
	u := Usual()
	lean := gas(closedBottle(), &u)
	near(t, "CO2 of a gram in a bottle", lean, 0.4985, 0.0005)
	fed := closedBottle()
	fed.amount[Ammonium] += 1e-3
	near(t, "fed", gas(fed, &u), lean, 1e-9)
	u.Growth = 1
	if g := gas(fed, &u); !(g < 0.96*lean && g > 0.9*lean) {
		t.Errorf("%g g/g as it grows, %g as it does not", g, lean)
	}
	u.Growth, u.Glycerol, u.Acids = 0, 0.65, -1
	if g := gas(fed, &u); !(g > lean && g < 0.5143) {
		t.Errorf("%g g/g of a gram, 0.5143 by Gay-Lussac", g)
	}
}

func ExampleInPack() {
	made, _ := InPack(units.Gram.Of(100))
	fmt.Println(made.CO2.Text(units.Gram, 1))
	// Output: 47.4 g
}
