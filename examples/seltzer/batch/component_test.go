package batch

import (
	"encoding/json"
	"math"
	"testing"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Molar masses are those of the formulas, by package water's own reading of them.
func TestComponentsWeighWhatTheirFormulaDoes(t *testing.T) {
	for c, formula := range map[Component]string{
		Water: "H2O", Ethanol: "C2H6O", Sucrose: "C12H22O11", Glucose: "C6H12O6", Fructose: "C6H12O6", Dextrin: "C6H10O5",
		Glycerol: "C3H8O3", Phosphate: "H2PO4", Sulfite: "HSO3", Glutamate: "C5H8NO4", CarbonDioxide: "CO2", Nitrogen: "N2", Oxygen: "O2", Proton: "H",
		Unnamed: "H", Amino: "C3H7NO2", Urea: "CH4N2O", YeastNitrogen: "NH3", YeastPhosphorus: "H3PO4",
	} {
		if want := chemistry.MustMass(formula); math.Abs(c.MolarMass()/want-1) > 1e-12 {
			t.Errorf("%v: %g g/mol, %s is %g", c, c.MolarMass(), formula, want)
		}
	}
	for _, i := range ions {
		if i.c == Phosphate || i.c == Sulfite || i.c == Glutamate {
			continue
		}
		if math.Abs(i.c.MolarMass()/i.ion.MolarMass().In(units.GramPerMole)-1) > 1e-12 || i.c.Of(Charge) != float64(i.ion.Charge()) {
			t.Errorf("%v: %g g/mol of charge %g; the ion %g of %d", i.c, i.c.MolarMass(), i.c.Of(Charge), i.ion.MolarMass().In(units.GramPerMole), i.ion.Charge())
		}
	}
	if c := componentCount; c.String() != "unknown component" || c.Of(C) != 0 || c.MolarMass() != 0 || (State{}).Of(c) != 0 {
		t.Error("a component that is none")
	}
	if e := elementCount; e.String() != "unknown element" || new(Amounts).Element(e) != 0 || Water.Of(e) != 0 || Charge.String() != "charge" {
		t.Error("an element that is none")
	}
	for i, x := range ions { // the last eight are those that package gravity has as extract
		if acid := x.ion == water.Lactate || x.ion == water.Acetate || x.ion == water.Citrate || x.ion == water.Malate || x.ion == water.Tartrate ||
			x.ion == water.Succinate || x.ion == water.Gluconate || x.ion == water.Glutamate; acid != (i >= firstAcid) {
			t.Errorf("%v stands at %d", x.c, i)
		}
	}
}

// A gram of every material weighs a gram and has no charge; a salt's crystal water is whole.
func TestMaterialsWeighAGram(t *testing.T) {
	for name, m := range stuffs {
		if g := m.per.grams(); math.Abs(g-1) > 1e-12 {
			t.Errorf("%s: %g g", name, g)
		}
		if z := m.per.Element(Charge); math.Abs(z) > 1e-15 {
			t.Errorf("%s: charge %g", name, z)
		}
		for c, n := range m.per {
			if n < -1e-12 && Component(c) != Proton && Component(c) != Water {
				t.Errorf("%s: %g mol of %v", name, n, Component(c))
			}
		}
	}
	for _, m := range material.All() { // the protons are the alkalinity that package material has
		if got, want := -stuffs[m.Name()].per[Proton]*chemistry.MustMass("OH"), m.Composition().Alkalinity.In(units.Fraction); math.Abs(got-want) > 1e-9 &&
			m != material.AutolysedYeast() {
			t.Errorf("%v: alkalinity %g, want %g", m, got, want)
		}
	}
	for s, moles := range map[material.Material]float64{
		material.Gypsum(): 2, material.EpsomSalt(): 7, material.TableSalt(): 0, material.BakingSoda(): 1, shelf.Material("sodium carbonate anhydrous"): 1,
		material.SlakedLime(): 2, material.SodiumHydroxide(): 1, material.DiammoniumPhosphate(): 0, shelf.Material("calcium lactate pentahydrate"): 5,
		material.Chalk(): 1,
	} { // crystal water, and that of carbonate (CO3 is CO2 and a water less 2 H+) and of hydroxide
		if got := stuffs[s.Name()].per[Water] * s.MolarMass().In(units.GramPerMole); math.Abs(got-moles) > 1e-9 {
			t.Errorf("%v: %g of water, want %g", s, got, moles)
		}
	}
	for text, name := range map[string]string{"DAP": "diammonium phosphate", "lactic": "lactic acid", "sugar": "white sugar", "Gypsum": "gypsum"} {
		if m, err := weighed(&Step{What: text}, asSalt|asAcid|asSugar|asFood); err != nil || m != *stuffs[name] {
			t.Errorf("%q: %v", text, err)
		}
	}
	for _, bad := range []string{"unobtainium", "", "gypsum"} {
		if _, err := weighed(&Step{What: bad}, asAcid); err == nil {
			t.Errorf("%q is taken as an acid", bad)
		}
	}
}

// A material of one's own counts by its label.
func TestOwnMaterial(t *testing.T) {
	juice := must(material.ByLabel("apple juice", material.Composition{Glucose: units.Percent.Of(2.4), Fructose: units.Percent.Of(6),
		Disaccharides: units.Percent.Of(2), UnfermentedSolids: units.Percent.Of(1)}))
	s := after(must(FromWater(well(), units.Litre.Of(1))), Step{Kind: Dissolve, Own: juice, Mass: units.Kilogram.Of(1)})
	near(t, "sugar", s.Fermentable().In(units.Gram), 104, 1e-9)
	near(t, "dextrin", s.Of(Dextrin)*162.141, 10, 1e-3)
	refused(t, s, Step{Kind: Feed, Own: juice, Mass: units.Kilogram.Of(1)})
	st := Step{Kind: Dissolve, Own: juice}
	var again Step
	if text, err := json.Marshal(st); err != nil || json.Unmarshal(text, &again) != nil || !again.Own.Equal(juice) {
		t.Errorf("%v: %s", err, text)
	}
}

// What the other packages dose by a name, a step reads.
func TestEveryNameIsRead(t *testing.T) {
	for _, s := range nutrient.Sources() {
		if _, err := weighed(&Step{What: s.Name()}, asFood|asSalt); err != nil {
			t.Error(err)
		}
	}
	for _, b := range ferment.Buffers() {
		if _, err := weighed(&Step{What: b.String()}, asFood|asSalt); err != nil {
			t.Error(err)
		}
	}
	for _, f := range sugar.Fermentables() {
		if _, err := weighed(&Step{What: f.Name()}, asSugar); err != nil {
			t.Error(err)
		}
	}
	for _, a := range water.Acids() {
		if _, err := weighed(&Step{What: a.Name()}, asAcid); err != nil {
			t.Error(err)
		}
	}
}
