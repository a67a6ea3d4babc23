package ferment

import (
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func needsOf(t *testing.T, f Tank) map[string]OtherNeed {
	t.Helper()
	all := check.Must(f.OtherNeeds())
	out := map[string]OtherNeed{}
	for _, n := range all {
		if n.Remedy == "" || !(n.Need.Low.Compare(n.Need.Value) <= 0 && n.Need.Value.Compare(n.Need.High) <= 0) {
			t.Errorf("%+v", n)
		}
		out[n.Name] = n
	}
	return out
}

// Sugar, distilled water and diammonium phosphate: phosphorus by its formula, 23.45 % of 60 L's
// dose; of magnesium, zinc and vitamins nothing.
func TestOtherNeedsOfSugarAndOneSalt(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	n := needsOf(t, f)
	mg := units.MilligramPerLitre
	check.Near(t, "phosphorus", n["phosphorus"].Have.In(mg), f.Feed[0].Mass.In(units.Milligram)/60*0.23454, 0.01, "atomic weights CIAAW 2021")
	// 67 mg/L of nitrogen at 6.4 % of dry yeast, of which 1.3 % is phosphorus.
	check.Near(t, "phosphorus wanted", n["phosphorus"].Need.Value.In(mg), 67/0.064*0.013, 0.1, "dry yeast, recalled from memory")
	check.Near(t, "magnesium wanted", n["magnesium"].Need.Value.In(mg), 5, 0, "common practice, no source")
	check.Near(t, "magnesium held", n["magnesium"].Need.Low.In(mg), 67/0.064*0.0015, 0.02, "of dry yeast, recalled from memory")
	check.Near(t, "potassium wanted", n["potassium"].Need.Value.In(mg), 300, 0, "Kudo et al. 1998, recalled from memory")
	check.Near(t, "zinc wanted", n["zinc"].Need.Value.In(mg), 0.15, 0, "Nobis et al. 2022, read")
	check.Near(t, "zinc low", n["zinc"].Need.Low.In(mg), 0.1, 0, "Rees & Stewart 1998, read")
	check.Near(t, "zinc high", n["zinc"].Need.High.In(mg), 1.07, 0, "De Nicola & Walker 2011, read")
	check.Near(t, "thiamine", n["thiamine"].Need.Value.In(mg), 0.5, 0, "common practice, no source")
	check.Near(t, "thiamine high", n["thiamine"].Need.High.In(mg), 4, 0, "Olson & Johnson 1949, read")
	check.Near(t, "vitamins", n["other vitamins"].Need.Value.In(mg), 0.5+1+10+0.02, 0.03, "Olson & Johnson 1949, read")
	for _, name := range []string{"potassium", "magnesium", "zinc", "thiamine", "other vitamins"} {
		if !n[name].Short() {
			t.Errorf("%s is not short", name)
		}
	}
	if n["phosphorus"].Short() {
		t.Error("phosphorus is short beside a phosphate")
	}
	if n := needsOf(t, hall(material.AmmoniumSulfate())); !n["phosphorus"].Short() {
		t.Error("ammonium sulfate brings no phosphorus")
	}
}

// What brings it, by hand: 4.4 g of Epsom salt hold 434 mg of magnesium (9.861 %), 88 mg of
// zinc sulfate heptahydrate 20.0 mg of zinc (22.74 %), in 60 L.
func TestOtherNeedsBrought(t *testing.T) {
	f := hall(material.DiammoniumPhosphate())
	f.Feed = append(f.Feed, material.Dose{Material: material.EpsomSalt(), Mass: units.Gram.Of(4.4)},
		material.Dose{Material: material.ZincSulfateHeptahydrate(), Mass: units.Milligram.Of(88)},
		material.Dose{Material: shelf.Material("thiamine hydrochloride"), Mass: units.Milligram.Of(36)},
		material.Dose{Material: material.AutolysedYeast(), Mass: units.Gram.Of(3.1)})
	f.Buffer = material.PotassiumBicarbonate().Dose(units.Gram.Of(60))
	f.Water = check.Must(water.NewProfile(amount.Room, units.CalciumCarbonate{}, water.Magnesium.At(amount.MgPerL(10)), water.Sulfate.At(amount.MgPerL(39.5))))
	n := needsOf(t, f)
	mg := units.MilligramPerLitre
	check.Near(t, "magnesium", n["magnesium"].Have.In(mg), 10*0.957+434.0/60+3.1*1.5/60, 0.05, "by hand; 57.4 kg of water in 60 L")
	check.Near(t, "zinc", n["zinc"].Have.In(mg), 20.0/60+3.1*0.1/60, 0.003, "by hand")
	check.Near(t, "thiamine", n["thiamine"].Have.In(mg), 0.6, 1e-6, "by hand")
	check.Near(t, "potassium", n["potassium"].Have.In(mg), 60000*0.39053/60+3.1*20/60, 0.5, "atomic weights CIAAW 2021")
	for name, v := range n {
		if v.Short() {
			t.Errorf("%s is short: %+v", name, v)
		}
	}
	f.Feed = f.Feed[:len(f.Feed)-1]
	if n := needsOf(t, f); !n["other vitamins"].Short() || n["other vitamins"].Unsure {
		t.Error("thiamine alone is not all vitamins")
	}
	for grams, unsure := range map[float64]bool{2.9: false, 2.97: false, 3.03: true} { // 50 mg/L are 3 g in 60 L
		f.Feed = append(f.Feed[:1], material.Dose{Material: material.AutolysedYeast(), Mass: amount.Grams(grams)})
		if n := needsOf(t, f); n["thiamine"].Unsure != unsure {
			t.Errorf("%v g of yeast matter: %v", grams, n["thiamine"])
		}
	}
	just := OtherNeed{Need: n["zinc"].Need, Have: n["zinc"].Need.Value}
	if just.Short() {
		t.Error("what is needed is short of itself")
	}
	if _, err := (Tank{}).OtherNeeds(); err == nil {
		t.Error("no brew is taken")
	}
}
