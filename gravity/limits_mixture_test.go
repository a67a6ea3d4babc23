package gravity_test

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// densities20 are those of pure ethanol and of water in OIML R 22 at 20 °C, kg/m³.
func densities20(t tester) (ethanol, water float64) {
	t.Helper()
	at := func(w float64) float64 {
		return ok[units.Density](t)(gravity.EthanolDensity(massPct(w), celsius(20))).In(units.KilogramPerCubicMetre)
	}
	return at(100), at(0)
}

// Two liquids that exist may make one that no formula covers: a spirit in a syrup. With a
// mass fraction e of ethanol there may be 0.06/e of extract (Hackbarth 2009).
func TestMixturesThatNoFormulaCovers(t *testing.T) {
	spirit, syrup, water := solution(t, 50, 0, 50), solution(t, 20, 80, 0), solution(t, 1, 0, 0)
	for name, call := range map[string]outcome{
		"gravity.BlendToStrength":    of3(gravity.BlendToStrength(spirit, syrup, volPct(30), litre(1))),
		"gravity.Solution.FortifyTo": of2(syrup.FortifyTo(volPct(30), spirit)),
		"gravity.Solution.Plus":      of(spirit.Plus(syrup)),
	} {
		r := rangeError(t, call.err)
		if r == nil || r.Func != name || call.beside {
			t.Fatal(name, call)
		}
		e := 0.5 * (1 - r.Value/80) // the rest of it is spirit
		edges(t, call.err, "extract with this much ethanol", r.Value, 0, 100*min(0.06/e, 0.65-e))
	}
	// Three liquids: by the density of water at first.
	pure, _ := densities20(t)
	call := of2(gravity.BlendToStrengthAndExtract(spirit, syrup, water, volPct(25), plato(40), litre(1)))
	if r := rangeError(t, call.err); r == nil || call.beside {
		t.Error(call)
	} else {
		edges(t, call.err, "extract with this much ethanol", 40, 0, r.Max)
		near(t, "most", r.Max, 100*0.06/(0.25*pure/998.2), 1e-3)
	}
}

// What is fermented must have a density on the way, and water enough.
func TestFermentationsThatNoFormulaCovers(t *testing.T) {
	thirsty := ok[gravity.Yield](t)(newYield(0.7, 0.7, 0.05, 0.05, 0.5))
	acid := ok[gravity.Yield](t)(newYield(0.3, 0.3, 0, 0.4, 0)) // 4 g of residue to 3 g of ethanol
	spirit := ok[gravity.Yield](t)(newYield(1, 0, 0, 0, 0))
	syrup := solution(t, 20, 80, 0)
	left := 100 - 40*(1-0.48391) // kg, less CO2 and yeast of 40 kg
	e := 40 * 0.48391 / left
	pure, none := densities20(t)
	e12 := 0.12 * pure / none // mass fraction in a liquid as heavy as water
	refusals(t, []refusal{
		{of2(solution(t, 20, 60, 0).Ferment(kg(60), thirsty)), "water taken up", 30, 0, 20},
		{of2(syrup.Ferment(kg(40), gravity.BallingYield())), "extract with this much ethanol", 100 * 40 / left, 0, 100 * 0.06 / e},
		// 50 kg leave 20 kg of residue in 50 kg of water
		{of(gravity.FromOriginalAndApparent(plato(50), plato(10), acid)), "extract with glycerol", 100. * 20 / 70, 0, 20},
		// half of the wort turned into ethanol, past the table of the index
		{of(gravity.FromOriginalAndBrix(plato(50), plato(40), 1, spirit)), "strength", 50, 0, 40},
		// 30 % mass of sugar over the residue, in the liquid without its ethanol
		{of(gravity.FromApparentAndStrength(plato(0), volPct(12), acid)), "extract with glycerol", 100 * (0.3 + e12*4/3) / (1 - e12), 0, 20},
	})
	call := of(gravity.FromStrengthAndReal(volPct(20), plato(30), acid))
	if r := rangeError(t, call.err); r == nil || call.beside {
		t.Error(call)
	} else { // by the density of water at first
		edges(t, call.err, "extract with glycerol", r.Value, 0, 20)
		near(t, "value", r.Value, 30/(1-0.2*pure/998.2), 1e-3)
	}
	// Half-way from syrup to spirit there is more of both than any formula covers.
	for _, g := range []float64{1.15, 1.2} {
		call := of(syrup.At(sg(t, g), gravity.BallingYield()))
		refused(t, "half-way", call.err, "extract with this much ethanol")
		if call.beside {
			t.Error("a value beside", call.err)
		}
	}
}

// A heavy wash whose yeast leaves much glycerol passes states that no formula covers. On
// either side of them the figures lead back to the state that they are of; within them they
// are refused, never taken for another state.
func TestStatesOnBothSidesOfAGap(t *testing.T) {
	y := ok[gravity.Yield](t)(newYield(0.44, 0.43, 0.05, 0.08, 0))
	wort := solution(t, 55, 45, 0)
	original := wort.Gravity().Extract()
	var covered, gap int
	for used := 0.5; used < 45; used += 0.5 {
		real := plato(100 * (45 - 0.92*used) / (100 - 0.48*used)) // 8 % of what is used stays, 48 % of it goes
		s, _, err := wort.Ferment(kg(used), y)
		if err != nil {
			gap++
			call := of(gravity.FromOriginalAndReal(original, real, y))
			refused(t, "in the gap", call.err, rangeError(t, err).Quantity)
			if call.beside {
				t.Error("a value beside", call.err)
			}
			continue
		}
		covered++
		brix := ok[units.Extract](t)(s.RefractometerBrix())
		for what, f := range map[string]func() (gravity.Fermentation, error){
			"apparent": func() (gravity.Fermentation, error) {
				return gravity.FromOriginalAndApparent(original, s.Gravity().Extract(), y)
			},
			"real": func() (gravity.Fermentation, error) { return gravity.FromOriginalAndReal(original, real, y) },
			"strength": func() (gravity.Fermentation, error) {
				return gravity.FromOriginalAndStrength(original, s.ByVolume(), y)
			},
			"Brix": func() (gravity.Fermentation, error) { return gravity.FromOriginalAndBrix(original, brix, 1, y) },
		} {
			state, err := f()
			if err != nil {
				t.Fatal(what, used, err)
			}
			near(t, what, inKg(state.Liquid().Ethanol()), inKg(s.Ethanol()), 1e-8)
		}
		p, err := wort.At(s.Gravity(), y)
		if err != nil {
			t.Fatal(used, err)
		}
		near(t, "left", inKg(p.Left), 45-used, 1e-8)
	}
	if covered < 20 || gap < 5 {
		t.Errorf("%d states covered, %d not", covered, gap)
	}
}
