package water

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/units"
)

func TestParseIon(t *testing.T) {
	for text, want := range map[string]Ion{
		"calcium": Calcium, "Ca": Calcium, "Ca2+": Calcium, "Ca+2": Calcium, "Ca++": Calcium, "CA": Calcium,
		"SO4": Sulfate, "SO4--": Sulfate, "SO42-": Sulfate, "SO4-2": Sulfate, "sulphate": Sulfate, "HCO3": Bicarbonate,
		"HCO3-": Bicarbonate, "Cl−": Chloride, "F−": Fluoride, "F-1": Fluoride, "K+1": Potassium, " Na+ ": Sodium, "NH4+": Ammonium,
	} {
		if got, err := ParseIon(text); err != nil || got != want {
			t.Errorf("%q: %v, %v", text, got, err)
		}
	}
	for _, text := range []string{"", "+", "Ca+x", "gold", "SO42"} {
		if got, err := ParseIon(text); err == nil {
			t.Errorf("%q is %v", text, got)
		}
	}
	for _, i := range Ions() {
		b, err := i.MarshalText()
		var back Ion
		if err != nil || back.UnmarshalText(b) != nil || back != i {
			t.Errorf("%v: %q", i, b)
		}
		if got, err := ParseIon(i.Symbol()); err != nil || got != i {
			t.Errorf("%v by symbol %q: %v, %v", i, i.Symbol(), got, err)
		}
	}
	if _, err := Ion(99).MarshalText(); err == nil || Ion(-1).Name() != "unknown ion" {
		t.Error("an unknown ion has a name")
	}
}

// Molar masses of ions from the abridged atomic weights 2021 by another program,
// and the charges that chemistry gives them.
func TestIonFacts(t *testing.T) {
	rows := map[Ion]struct {
		mass   float64
		charge int
	}{
		Calcium: {40.078, 2}, Magnesium: {24.305, 2}, Sodium: {22.990, 1}, Potassium: {39.098, 1},
		Ammonium: {18.039, 1}, Iron: {55.845, 2}, Manganese: {54.938, 2}, Zinc: {65.38, 2}, Copper: {63.546, 2},
		Chloride: {35.45, -1}, Sulfate: {96.056, -2}, Nitrate: {62.004, -1}, Nitrite: {46.005, -1},
		Fluoride: {18.998, -1}, Bicarbonate: {61.016, -1}, Carbonate: {60.008, -2}, Hydroxide: {17.007, -1},
		Phosphate: {94.970, -3}, Lactate: {90.078 - 1.008, -1}, Acetate: {60.052 - 1.008, -1},
		Citrate: {192.123 - 3*1.008, -3}, Malate: {134.087 - 2*1.008, -2}, Tartrate: {150.086 - 2*1.008, -2},
		Succinate: {118.088 - 2*1.008, -2}, Sulfite: {80.057, -2}, Sorbate: {112.128 - 1.008, -1},
		Gluconate: {196.155 - 1.008, -1}, Glutamate: {147.130 - 2*1.008, -2},
	}
	if len(rows) != int(ionCount) {
		t.Fatalf("%d rows", len(rows))
	}
	for i, r := range rows {
		if math.Abs(i.MolarMass().In(units.GramPerMole)-r.mass) > 0.0011 || i.Charge() != r.charge {
			t.Errorf("%v: %v g/mol, %d", i, i.MolarMass().In(units.GramPerMole), i.Charge())
		}
	}
}

func FuzzParseIon(f *testing.F) {
	f.Add("Ca2+")
	f.Add("SO4-2")
	f.Fuzz(func(t *testing.T, text string) {
		i, err := ParseIon(text)
		if err != nil {
			return
		}
		if back, err := ParseIon(i.Name()); err != nil || back != i {
			t.Errorf("%q is %v, %v", text, i, back)
		}
	})
}

// A name is read in 64 bytes; whatever charge a symbol has.
func TestLongestName(t *testing.T) {
	if i, err := ParseIon("Ca" + strings.Repeat("+", 62)); err != nil || i != Calcium {
		t.Errorf("%v, %v", i, err)
	}
	if _, err := ParseIon("Ca" + strings.Repeat("+", 63)); err == nil {
		t.Error("65 bytes are read")
	}
}
