package material_test

import (
	"math"
	"testing"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

func pct(s units.Share) float64 { return s.In(units.Percent) }

func shareNear(t *testing.T, what string, got units.Share, want, within float64) {
	t.Helper()
	if !(math.Abs(pct(got)-want) <= within) {
		t.Errorf("%s: %.4f %%, want %g ± %g", what, pct(got), want, within)
	}
}

// What a gram of each sugar brings, typed from its source a second time: Directive 2001/111/EC
// annex A, Codex CXS 212-1999, Wartman, Bridges & Eliason 1980, White et al. 1962, 21 CFR 168.140;
// malt extract is common practice.
func TestSugarsByTheirSources(t *testing.T) {
	const near = 1e-9
	white := material.WhiteSugar()
	shareNear(t, "white sugar", white.Composition().Disaccharides, 99.94, near)
	shareNear(t, "its spread", white.Spread(), 0.1, near)
	brown := shelf.Material("soft brown sugar")
	shareNear(t, "brown sugar", brown.Composition().Disaccharides, 88, near)
	shareNear(t, "its other solids", brown.Composition().UnfermentedSolids, 8, near)
	shareNear(t, "its spread", brown.Spread(), 3, near)
	dextrose := material.DextroseMonohydrate() // 18.015/198.171
	shareNear(t, "dextrose", dextrose.Composition().Glucose, 90.909, 0.001)
	shareNear(t, "its water", dextrose.Composition().CrystalWater, 9.091, 0.001)
	shareNear(t, "its spread", dextrose.Spread(), 0.5, near)
	shareNear(t, "anhydrous dextrose", material.DextroseAnhydrous().Composition().Glucose, 100, near)
	shareNear(t, "its spread", material.DextroseAnhydrous().Spread(), 0.8, near)
	shareNear(t, "fructose", shelf.Material("fructose").Composition().Fructose, 100, near)
	shareNear(t, "its spread", shelf.Material("fructose").Spread(), 0.5, near)
	maple := shelf.Material("maple syrup")
	shareNear(t, "maple syrup, solids", maple.Composition().Disaccharides.Plus(maple.Composition().UnfermentedSolids), 66, near)
	shareNear(t, "its sugar", maple.Composition().Disaccharides, 64, near)
	shareNear(t, "its spread", maple.Spread(), 2, near)
	invert := shelf.Material("invert sugar syrup").Composition() // 77.9 % dry, half of it inverted
	shareNear(t, "medium invert, sucrose", invert.Disaccharides, 38.95, 0.01)
	shareNear(t, "medium invert, glucose", invert.Glucose, 38.95/2, 0.6)
	honey := material.Honey().Composition()
	shareNear(t, "honey, fructose", honey.Fructose, 38.2, 1e-6)
	shareNear(t, "honey, glucose", honey.Glucose, 31.3, 1e-6)
	shareNear(t, "honey, disaccharides", honey.Disaccharides, 1.3+7.3, 1e-6)
	shareNear(t, "invert syrup, spread", shelf.Material("invert sugar syrup").Spread(), 1, near)
	shareNear(t, "medium invert, glucose", invert.Glucose, 19.475, 1e-6)
	shareNear(t, "honey, other solids", honey.UnfermentedSolids, 100-17.2-38.2-31.3-1.3-7.3, 1e-6)
	shareNear(t, "sucrose", material.Sucrose().Composition().Disaccharides, 100, near)
	shareNear(t, "lactose, its water", shelf.Material("lactose monohydrate").Composition().CrystalWater, 5.000, 0.001) // 18.015/360.312
	shareNear(t, "lactose", shelf.Material("lactose monohydrate").Composition().UnfermentedSolids, 95.000, 0.001)
	shareNear(t, "urea", shelf.Material("urea").Composition().UreaNitrogen, 46.646, 0.002) // 28.014/60.056
	if m := shelf.Material("urea").MolarMass().In(units.GramPerMole); math.Abs(m-60.056) > 0.0005 {
		t.Errorf("urea: %v g/mol", m)
	}
	yeast := material.AutolysedYeast().Composition() // recalled from memory
	shareNear(t, "autolysed yeast, nitrogen", yeast.AminoNitrogen, 4, near)
	shareNear(t, "phosphorus", yeast.Phosphorus, 1.3, near)
	shareNear(t, "potassium", yeast.Potassium, 2, near)
	shareNear(t, "magnesium", yeast.Magnesium, 0.15, near)
	shareNear(t, "zinc", yeast.Zinc, 0.01, near)
	shareNear(t, "thiamine", shelf.Material("thiamine hydrochloride").Composition().Thiamine, 100, near)
	for of, solids := range map[float64]material.Material{97: shelf.Material("dry malt extract"), 80: shelf.Material("liquid malt extract")} {
		c := of
		all := solids.Composition()
		sugar := pct(all.Glucose) + pct(all.Fructose) + pct(all.Disaccharides) + pct(all.Trisaccharides)
		if math.Abs(sugar-0.65*c) > 1e-6 || math.Abs(sugar+pct(all.UnfermentedSolids)-c) > 1e-6 {
			t.Errorf("malt extract of %g %%: %g %% of sugar, %v", c, sugar, all.UnfermentedSolids)
		}
		shareNear(t, "its maltose", all.Disaccharides, 0.65*0.69*c, 1e-6)
		shareNear(t, "its hexoses", all.Glucose.Plus(all.Fructose), 0.65*0.15*c, 1e-6)
		shareNear(t, "its spread", solids.Spread(), 8, near)
	}
}

// Syrups: high fructose syrup by Wartman et al. 1980 (70.7, 76.9 and 80.7 % dry), glucose syrup by
// the trade's tables (recalled from memory) at each row and half-way, juice by 90 % of its solids.
func TestSyrupsByTheirSources(t *testing.T) {
	for _, c := range []struct{ kind, dry, higher float64 }{{42, 70.7, 6}, {55, 76.9, 5}, {90, 80.7, 1}} {
		m, err := material.HighFructoseSyrup(share(t, c.kind))
		if err != nil {
			t.Fatal(err)
		}
		all := m.Composition()
		shareNear(t, "fructose", all.Fructose, c.dry*c.kind/100, 1e-6)
		shareNear(t, "glucose", all.Glucose, c.dry*(100-c.kind-c.higher)/100, 1e-6)
		shareNear(t, "higher sugars", all.UnfermentedSolids, c.dry*c.higher/100, 1e-6)
		shareNear(t, "spread", m.Spread(), 2, 1e-9)
	}
	for _, c := range [][4]float64{{30, 10, 9, 10}, {33, 12, 10.5, 10.5}, {36, 14, 12, 11}, {42, 19, 14, 12}, {48.5, 25, 16, 12.5},
		{55, 31, 18, 13}, {64, 37, 32, 11}} {
		m, err := material.GlucoseSyrup(share(t, 80), share(t, c[0]))
		if err != nil {
			t.Fatal(err)
		}
		all := m.Composition()
		shareNear(t, "glucose", all.Glucose, 0.8*c[1], 1e-6)
		shareNear(t, "maltose", all.Disaccharides, 0.8*c[2], 1e-6)
		shareNear(t, "maltotriose", all.Trisaccharides, 0.8*c[3], 1e-6)
		shareNear(t, "the rest", all.UnfermentedSolids, 80-0.8*(c[1]+c[2]+c[3]), 1e-6)
		shareNear(t, "spread", m.Spread(), 10, 1e-9)
	}
	juice, err := material.Juice(units.DegreePlato.Of(12), units.Share{})
	if err != nil {
		t.Fatal(err)
	}
	shareNear(t, "juice, glucose", juice.Composition().Glucose, 5.4, 1e-9)
	shareNear(t, "juice, fructose", juice.Composition().Fructose, 5.4, 1e-9)
	shareNear(t, "juice, other solids", juice.Composition().UnfermentedSolids, 1.2, 1e-9)
	// Each range at its ends, and a little beyond.
	for _, c := range []struct {
		what string
		err  error
		ok   bool
	}{
		{"13.4 % of water", second(material.HoneyWithWater(share(t, 13.4))), true},
		{"13.3", second(material.HoneyWithWater(share(t, 13.3))), false},
		{"22.9", second(material.HoneyWithWater(share(t, 22.9))), true},
		{"23.0", second(material.HoneyWithWater(share(t, 23))), false},
		{"70 % dry", second(material.GlucoseSyrup(share(t, 70), share(t, 42))), true},
		{"69.9", second(material.GlucoseSyrup(share(t, 69.9), share(t, 42))), false},
		{"90", second(material.GlucoseSyrup(share(t, 90), share(t, 42))), true},
		{"90.1", second(material.GlucoseSyrup(share(t, 90.1), share(t, 42))), false},
		{"29.9 DE", second(material.GlucoseSyrup(share(t, 80), share(t, 29.9))), false},
		{"64.1 DE", second(material.GlucoseSyrup(share(t, 80), share(t, 64.1))), false},
		{"3 °Bx", second(material.Juice(units.DegreePlato.Of(3), units.Share{})), true},
		{"2.9 °Bx", second(material.Juice(units.DegreePlato.Of(2.9), units.Share{})), false},
		{"70 °Bx", second(material.Juice(units.DegreePlato.Of(70), units.Share{})), true},
		{"70.1 °Bx", second(material.Juice(units.DegreePlato.Of(70.1), units.Share{})), false},
		{"half of it ferments", second(material.Juice(units.DegreePlato.Of(12), share(t, 50))), true},
		{"49.9 %", second(material.Juice(units.DegreePlato.Of(12), share(t, 49.9))), false},
		{"all of it", second(material.Juice(units.DegreePlato.Of(12), share(t, 100))), true},
		{"invert syrup of 62 %", second(material.InvertSyrup(share(t, 62), share(t, 50))), true},
		{"61.9", second(material.InvertSyrup(share(t, 61.9), share(t, 50))), false},
		{"90", second(material.InvertSyrup(share(t, 90), share(t, 100))), true},
		{"90.1", second(material.InvertSyrup(share(t, 90.1), share(t, 0))), false},
		{"inverted not at all", second(material.InvertSyrup(share(t, 70), share(t, 0))), true},
		{"43 % fructose", second(material.HighFructoseSyrup(share(t, 43))), false},
	} {
		if (c.err == nil) != c.ok {
			t.Errorf("%s: %v", c.what, c.err)
		}
	}
}

// The alkalinity of salts as the mass of hydroxide that neutralises as much, by hand from
// atomic weights 2021: a salt of a strong acid has none.
func TestAlkalinityOfSalts(t *testing.T) {
	for name, want := range map[string]float64{
		"gypsum": 0, "calcium chloride dihydrate": 0, "calcium chloride anhydrous": 0, "Epsom salt": 0, "magnesium chloride hexahydrate": 0,
		"table salt": 0, "potassium chloride": 0, "calcium sulfate anhydrous": 0, "sodium sulfate anhydrous": 0, "potassium sulfate": 0,
		"ammonium sulfate": 0, "ammonium chloride": 0, "zinc sulfate heptahydrate": 0, "zinc sulfate monohydrate": 0,
		"baking soda": 20.245, "potassium bicarbonate": 16.988, "chalk": 33.985, "slaked lime": 45.908,
		"sodium carbonate anhydrous": 32.092, "potassium carbonate": 24.612, "sodium hydroxide": 42.520, "potassium hydroxide": 30.312, "magnesium carbonate": 40.343,
	} {
		m, err := material.Find(name)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		shareNear(t, name, m.Composition().Alkalinity, want, 0.005)
	}
}

// Crystal water of salts, by hand from atomic weights 2021: n·18.015 over the mass of the hydrate;
// of every other salt none.
func TestCrystalWaterOfSalts(t *testing.T) {
	for name, want := range map[string]float64{
		"gypsum": 20.927, "calcium chloride dihydrate": 24.509, "Epsom salt": 51.165, "magnesium chloride hexahydrate": 53.169,
		"calcium lactate pentahydrate": 29.217, "zinc sulfate heptahydrate": 43.859, "zinc sulfate monohydrate": 10.039,
		"tripotassium citrate monohydrate": 5.553, "trisodium citrate dihydrate": 12.251,
		"calcium chloride anhydrous": 0, "table salt": 0, "baking soda": 0, "potassium bicarbonate": 0, "potassium chloride": 0, "chalk": 0,
		"slaked lime": 0, "calcium sulfate anhydrous": 0, "sodium sulfate anhydrous": 0, "potassium sulfate": 0, "sodium carbonate anhydrous": 0,
		"potassium carbonate": 0, "sodium hydroxide": 0, "potassium hydroxide": 0, "magnesium carbonate": 0, "potassium dihydrogen phosphate": 0,
		"dipotassium phosphate": 0, "diammonium phosphate": 0, "monoammonium phosphate": 0, "ammonium sulfate": 0, "ammonium chloride": 0,
		"sodium metabisulfite": 0, "potassium metabisulfite": 0, "sodium bisulfite": 0, "sodium sulfite anhydrous": 0,
	} {
		m, err := material.Find(name)
		if err != nil {
			t.Errorf("%s: %v", name, err)
			continue
		}
		shareNear(t, name, m.Composition().CrystalWater, want, 0.01)
	}
}

func share(t *testing.T, percent float64) units.Share {
	t.Helper()
	s, err := units.Percent.Try(percent)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func second[T any](_ T, err error) error { return err }

// A mix by hand: half white sugar and half dextrose monohydrate are 0.4997 and 0.45455 of sugar,
// known to 0.1 and 0.5 %: √(0.4997² + 2.27273²)/0.95425 = 2.4386 ‰. Its shares add up to the whole.
func TestMixByHand(t *testing.T) {
	half := func(m material.Material, percent float64) material.Ingredient {
		return material.Ingredient{Material: m, Share: share(t, percent)}
	}
	m, err := material.Mix(half(material.WhiteSugar(), 50), half(material.DextroseMonohydrate(), 50))
	if err != nil {
		t.Fatal(err)
	}
	shareNear(t, "spread", m.Spread(), 0.24386, 0.00002)
	shareNear(t, "sucrose", m.Composition().Disaccharides, 49.97, 1e-6)
	shareNear(t, "glucose", m.Composition().Glucose, 45.4545, 0.0005)
	for _, sum := range []float64{49.9, 50.1, 50.00001, 49.99999} {
		if _, err := material.Mix(half(material.WhiteSugar(), 50), half(material.DextroseMonohydrate(), sum)); err == nil {
			t.Errorf("shares of 50 and %v %% are taken", sum)
		}
	}
	if _, err := material.Mix(half(material.WhiteSugar(), 100), half(material.Chalk(), 0)); err != nil {
		t.Error(err)
	}
}
