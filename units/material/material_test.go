package material_test

import (
	"encoding/json"
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

func find(t testing.TB, name string) material.Material {
	t.Helper()
	m, err := material.Find(name)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

func mgPerGram(s units.Share) float64 { return s.In(units.Percent) * 10 }

// What stands in a salt, by the field that holds it, mg/g.
var fields = map[string]func(material.Composition) units.Share{
	"Ca": func(c material.Composition) units.Share { return c.Calcium }, "Mg": func(c material.Composition) units.Share { return c.Magnesium },
	"Na": func(c material.Composition) units.Share { return c.Sodium }, "K": func(c material.Composition) units.Share { return c.Potassium },
	"Zn": func(c material.Composition) units.Share { return c.Zinc }, "N": func(c material.Composition) units.Share { return c.AmmoniumNitrogen },
	"Cl": func(c material.Composition) units.Share { return c.Chloride }, "SO4": func(c material.Composition) units.Share { return c.Sulfate },
	"HCO3": func(c material.Composition) units.Share { return c.Bicarbonate }, "CO3": func(c material.Composition) units.Share { return c.Carbonate },
	"OH": func(c material.Composition) units.Share { return c.Hydroxide }, "P": func(c material.Composition) units.Share { return c.Phosphorus },
	"lactate": func(c material.Composition) units.Share { return c.Lactate }, "citrate": func(c material.Composition) units.Share { return c.Citrate },
	"SO2": func(c material.Composition) units.Share { return c.SulfurDioxide },
}

// mg of each part a gram, from the abridged atomic weights 2021 by another program,
// to 0.01 mg/g. HCO3, CO3 and OH are as written in the formula.
func TestSaltsByFormula(t *testing.T) {
	rows := map[string]map[string]float64{
		"CaSO4.2H2O": {"Ca": 232.79, "SO4": 557.93}, "CaSO4": {"Ca": 294.40, "SO4": 705.60},
		"CaCl2": {"Ca": 361.13, "Cl": 638.87}, "CaCl2.2H2O": {"Ca": 272.62, "Cl": 482.29},
		"MgSO4.7H2O": {"Mg": 98.61, "SO4": 389.73}, "MgCl2.6H2O": {"Mg": 119.56, "Cl": 348.75},
		"NaCl": {"Na": 393.39, "Cl": 606.61}, "NaHCO3": {"Na": 273.67, "HCO3": 726.33}, "KHCO3": {"K": 390.53, "HCO3": 609.47},
		"KCl": {"K": 524.47, "Cl": 475.53}, "K2CO3": {"K": 565.80, "CO3": 434.20}, "Na2CO3": {"Na": 433.82, "CO3": 566.18},
		"CaCO3": {"Ca": 400.44, "CO3": 599.56}, "Ca(OH)2": {"Ca": 540.92, "OH": 459.08}, "Na2SO4": {"Na": 323.72, "SO4": 676.28},
		"KH2PO4": {"K": 287.31, "P": 227.61}, "(NH4)2HPO4": {"N": 212.14, "P": 234.55}, "NH4H2PO4": {"N": 121.77, "P": 269.28},
		"(NH4)2SO4": {"N": 212.01, "SO4": 726.96}, "NH4Cl": {"N": 261.87, "Cl": 662.75},
		"ZnSO4.7H2O": {"Zn": 227.38, "SO4": 334.06}, "ZnSO4.H2O": {"Zn": 364.33, "SO4": 535.28},
		// By hand: 2·39.098/174.252 and 96.056/174.252; 22.990/39.997, 17.007/39.997;
		// 39.098/56.105, 17.007/56.105; 24.305/84.313, 60.008/84.313; 40.078/308.293,
		// 178.140/308.293; 78.196/174.174, 30.974/174.174.
		"K2SO4": {"K": 448.75, "SO4": 551.25}, "NaOH": {"Na": 574.79, "OH": 425.21}, "KOH": {"K": 696.87, "OH": 303.13},
		"MgCO3": {"Mg": 288.27, "CO3": 711.73}, "Ca(C3H5O3)2.5H2O": {"Ca": 130.00, "lactate": 577.83}, "K2HPO4": {"K": 448.95, "P": 177.83},
		// 3·39.098/324.408 and 189.099/324.408; 3·22.990/294.099 and 189.099/294.099.
		"K3C6H5O7.H2O": {"K": 361.56, "citrate": 582.90}, "Na3C6H5O7.2H2O": {"Na": 234.51, "citrate": 642.98},
		// 2·64.058/190.095 and 2·22.990/190.095; 2·64.058/222.311 and 78.196/222.311;
		// 64.058/104.057 and 22.990/104.057; 64.058/126.037 and 45.980/126.037.
		"Na2S2O5": {"SO2": 673.96, "Na": 241.88}, "K2S2O5": {"SO2": 576.29, "K": 351.74},
		"NaHSO3": {"SO2": 615.62, "Na": 220.94}, "Na2SO3": {"SO2": 508.25, "Na": 364.81},
	}
	for formula, want := range rows {
		m := find(t, formula)
		for name, of := range fields {
			if got := mgPerGram(of(m.Composition())); math.Abs(got-want[name]) > 0.0101 {
				t.Errorf("%v: %.3f mg/g of %s, want %.2f", m, got, name, want[name])
			}
		}
	}
	ions := 0
	for _, m := range material.All() {
		c := m.Composition()
		if m.Formula() != "" && c.Sugar().IsZero() && c.UreaNitrogen.IsZero() && c.Thiamine.IsZero() && c.UnfermentedSolids.IsZero() &&
			m != shelf.Material("ascorbic acid") {
			ions++
		}
	}
	if ions != len(rows) {
		t.Errorf("%d salts, %d rows", ions, len(rows))
	}
}

// Alkalinity as stoichiometry has it: 1000·n/M mEq/g, of which 19.98 is chalk's.
func TestAlkalinity(t *testing.T) {
	for name, want := range map[string]float64{
		"chalk": 19.98, "slaked lime": 26.99, "baking soda": 1000 / 84.006, "soda ash": 2000 / 105.988,
		"potassium bicarbonate": 1000 / 100.114, "potash": 2000 / 138.204, "lye": 1000 / 39.997,
		"caustic potash": 1000 / 56.105, "magnesite": 2000 / 84.313, "dap": 1000 / 132.056, "K2HPO4": 1000 / 174.174,
		"gypsum": 0, "map": 0, "calcium lactate pentahydrate": 0, "sodium citrate": 0, "K2S2O5": 0, "Na2SO3": 1000 / 126.037,
	} {
		got := find(t, name).Composition().Alkalinity.In(units.Percent) / 100 * 1000 / 17.007
		if math.Abs(got-want) > 0.0051 {
			t.Errorf("%s: %.4f mEq/g, want %.4f", name, got, want)
		}
	}
}

// Crystal water: 36.030/147.008 of calcium chloride dihydrate, 18.015/198.171 of dextrose.
func TestAnhydrous(t *testing.T) {
	dry := material.CalciumChlorideDihydrate().Anhydrous(units.Gram.Of(100)).In(units.GramAnhydrous)
	if math.Abs(dry-100*110.978/147.008) > 1e-9 {
		t.Errorf("got %v", dry)
	}
	if w := material.DextroseMonohydrate().Composition().CrystalWater.In(units.Percent); math.Abs(w-100*18.015/198.171) > 1e-9 {
		t.Errorf("dextrose: %v", w)
	}
}

// One of each name, each found by every name it has, written and read back.
func TestFindAll(t *testing.T) {
	seen := map[string]bool{}
	for _, m := range material.All() {
		for _, name := range append(m.OtherNames(), m.Name(), "  "+m.Name()+" ", m.Formula()) {
			if name == "" || name == "C6H12O6" {
				continue
			}
			if got, err := material.Find(name); err != nil || got != m {
				t.Errorf("%q: %v, %v; want %v", name, got, err, m)
			}
		}
		if seen[m.Name()] {
			t.Errorf("two %v", m)
		}
		seen[m.Name()] = true
		text, err := json.Marshal(m)
		var back material.Material
		if again := json.Unmarshal(text, &back); err != nil || again != nil || back != m || string(text) != `"`+m.Name()+`"` {
			t.Errorf("%v: %s %v %v", m, text, err, again)
		}
		if m.IsZero() || m.String() != m.Name() || !m.Equal(m) || m.Equal(material.Material{}) {
			t.Errorf("%v is none", m)
		}
	}
	if got := find(t, "calcium sulphate dihydrate"); got != material.Gypsum() {
		t.Error(got)
	}
}

func TestUnknownNames(t *testing.T) {
	for name, want := range map[string][]string{
		"calcium chloride": {"calcium chloride dihydrate", "calcium chloride anhydrous"},
		"dextrose":         {"dextrose monohydrate", "dextrose anhydrous"},
		"gypsun":           {"gypsum"},
		"honny":            {"honey"},
		"table saltt":      {"table salt", "white sugar"}, // white sugar is table sugar
		"C6H12O6":          {"dextrose anhydrous", "fructose"},
		"unobtainium":      nil,
		"":                 nil,
	} {
		m, err := material.Find(name)
		e, ok := errors.AsType[*units.NameError](err)
		if !ok || !m.IsZero() || !slices.Equal(e.Choices, want) {
			t.Errorf("%q: %v, %v", name, m, err)
		}
	}
	was := material.Gypsum()
	for _, text := range []string{`"unobtainium"`, `{"name":"gypsum","brings":{}}`, `{"name":"x","brings":{"calcium":"101 %"}}`,
		`{"name":`, `{`, `7`, `{"name":"x","brings":{"calcium":7}}`} {
		if err := was.UnmarshalJSON([]byte(text)); err == nil || was != material.Gypsum() {
			t.Errorf("%s: %v, %v", text, was, err)
		}
	}
	for _, text := range []string{"{", "sulfate"} {
		if err := was.UnmarshalText([]byte(text)); err == nil || was != material.Gypsum() {
			t.Errorf("%s: %v, %v", text, was, err)
		}
	}
	if _, err := json.Marshal(material.Material{}); err == nil {
		t.Error("no material is written")
	}
	var none material.Material
	if none.Name() != "" || !none.Composition().Sugar().IsZero() || !none.MolarMass().IsZero() || len(none.OtherNames()) != 0 {
		t.Error(none)
	}
}

func percent(t testing.TB, v float64) units.Share {
	t.Helper()
	s, err := units.Percent.Try(v)
	if err != nil {
		t.Fatal(err)
	}
	return s
}

func TestByLabel(t *testing.T) {
	for name, c := range map[string]material.Composition{
		"more than the whole": {AminoNitrogen: percent(t, 60), Potassium: percent(t, 40.1)},
		"below zero":          {Zinc: units.Share{}.Minus(percent(t, 1))},
		"alkalinity":          {Alkalinity: units.Share{}.Minus(percent(t, 1))},
		"malt without sugar":  {OfMalt: percent(t, 1)},
	} {
		m, err := material.ByLabel(name, c)
		if _, ok := errors.AsType[*units.RangeError](err); !ok || !m.IsZero() {
			t.Errorf("%s: %v, %v", name, m, err)
		}
	}
	for _, name := range []string{"", " ", "Gypsum", "dap", "a\xff", strings.Repeat("a", 257)} {
		_, err := material.ByLabel(name, material.Composition{})
		if _, ok := errors.AsType[*units.ParseError](err); !ok {
			t.Errorf("%q: %v", name, err)
		}
	}
	food, err := material.ByLabel("yeast food", material.Composition{AmmoniumNitrogen: percent(t, 10), Phosphorus: percent(t, 10)})
	if err != nil || len(food.Cautions()) != 1 || food.Cautions()[0].Code() != "ammonium_sets_acid_free" {
		t.Error(food.Cautions(), err)
	}
}

// Whatever a label may say comes back as it was, from JSON and from text.
func TestLabelsTravel(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		part := func(name string) units.Share {
			s, err := units.Percent.Try(rapid.SampledFrom([]float64{0, 0.1, 3, 7.7}).Draw(t, name))
			if err != nil {
				t.Fatal(err)
			}
			return s
		}
		was, err := material.ByLabel("own {1}", material.Composition{
			Calcium: part("calcium"), AmmoniumNitrogen: part("ammonium"), AminoNitrogen: part("amino"), UreaNitrogen: part("urea"),
			Zinc: part("zinc"), Glucose: part("glucose"), Alkalinity: part("alkalinity"), CrystalWater: part("crystal water"),
		})
		if err != nil {
			t.Fatal(err)
		}
		text, err := json.Marshal(was.Dose(units.Gram.Of(5)))
		var back material.Dose
		if again := json.Unmarshal(text, &back); err != nil || again != nil || !back.Material.Equal(was) || back.Mass != units.Gram.Of(5) {
			t.Fatalf("%s: %v %v", text, err, again)
		}
		plain, err := was.MarshalText()
		var read material.Material
		if again := read.UnmarshalText(plain); err != nil || again != nil || !read.Equal(was) || !slices.Equal(read.Cautions(), was.Cautions()) {
			t.Fatalf("%s: %v %v", plain, err, again)
		}
	})
}

// Syrups and honeys by their figures travel as their composition.
func TestSyrupsTravel(t *testing.T) {
	honey, err1 := material.HoneyWithWater(percent(t, 18))
	syrup, err2 := material.GlucoseSyrup(percent(t, 80), percent(t, 42))
	invert, err3 := material.InvertSyrup(percent(t, 70), percent(t, 30))
	fruit, err4 := material.HighFructoseSyrup(percent(t, 55))
	juice, err5 := material.Juice(units.DegreePlato.Of(12), units.Share{})
	if err := errors.Join(err1, err2, err3, err4, err5); err != nil {
		t.Fatal(err)
	}
	for _, was := range []material.Material{honey, syrup, invert, fruit, juice} {
		text, err := json.Marshal(was)
		var back material.Material
		if again := json.Unmarshal(text, &back); err != nil || again != nil || !back.Equal(was) {
			t.Errorf("%s: %v %v", text, err, again)
		}
	}
	if honey.Equal(material.Honey()) {
		t.Error("honey of 18 % water is that of 17.2 %")
	}
}

func TestLookingUpDoesNotAllocate(t *testing.T) {
	m := material.Gypsum()
	if n := testing.AllocsPerRun(100, func() { _ = m.Composition(); _ = m.Name(); _ = m.Dose(units.Gram.Of(1)) }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}

func FuzzFind(f *testing.F) {
	for _, s := range []string{"gypsum", "CaCl2·2H2O", "sulphate", "{", "c6h12o6"} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		m, err := material.Find(text)
		if (err != nil) != m.IsZero() {
			t.Fatalf("%q: %v, %v", text, m, err)
		}
		if err != nil {
			return
		}
		b, err := m.MarshalText()
		var back material.Material
		if again := back.UnmarshalText(b); err != nil || again != nil || back != m {
			t.Errorf("%q is %v, %q is %v", text, m, b, back)
		}
	})
}

// A liquid is measured by its density, and keeps it on its way; what is weighed only has no volume.
func TestLiquid(t *testing.T) {
	own, err := material.ByLabel("a lye", material.Composition{Sodium: units.Percent.Of(5.7478), Hydroxide: units.Percent.Of(4.2519),
		Alkalinity: units.Percent.Of(4.2519)})
	if err != nil {
		t.Fatal(err)
	}
	liquid, err := own.WithDensity(units.GramPerMillilitre.Of(1.109))
	if err != nil || liquid.Density() != units.GramPerMillilitre.Of(1.109) || liquid.Equal(own) || !own.Density().IsZero() {
		t.Fatal(liquid.Density(), err)
	}
	check.Near(t, "volume", liquid.Dose(units.Gram.Of(221.8)).Volume().In(units.Millilitre), 200, 1e-9, "221.8/1.109")
	if v := own.Dose(units.Gram.Of(5)).Volume(); !v.IsZero() {
		t.Error(v)
	}
	var back material.Material
	text, err := json.Marshal(liquid)
	if err := errors.Join(err, json.Unmarshal(text, &back)); err != nil || !back.Equal(liquid) {
		t.Errorf("%s: %v", text, err)
	}
	for _, d := range []float64{499, 3001, math.NaN()} {
		_, err := own.WithDensity(units.KilogramPerCubicMetre.Of(checked.Number(d)))
		check.Refused(t, err, "density", 500, 3000)
	}
	if err := json.Unmarshal([]byte(strings.Replace(string(text), "1109 kg/m³", "9 kg/m³", 1)), &back); err == nil {
		t.Errorf("%s is read", text)
	}
	_, err = material.ByLabel("too sour", material.Composition{Acidity: units.Percent.Of(101)})
	check.Refused(t, err, "acidity as hydroxide", 0, 100)
}
