package water

import (
	"encoding/json"
	"math"
	"testing"

	"example.org/zymase/units"
)

// mg of each ion a gram, from the abridged atomic weights 2021 by another program,
// to 0.01 mg/g. HCO3, CO3 and OH are as written in the formula.
func TestIonsPerGram(t *testing.T) {
	rows := []struct {
		salt Salt
		want map[Ion]float64
	}{
		{Gypsum, map[Ion]float64{Calcium: 232.79, Sulfate: 557.93}},
		{CalciumSulfate, map[Ion]float64{Calcium: 294.40, Sulfate: 705.60}},
		{CalciumChloride, map[Ion]float64{Calcium: 361.13, Chloride: 638.87}},
		{CalciumChlorideDihydrate, map[Ion]float64{Calcium: 272.62, Chloride: 482.29}},
		{EpsomSalt, map[Ion]float64{Magnesium: 98.61, Sulfate: 389.73}},
		{MagnesiumChlorideHexahydrate, map[Ion]float64{Magnesium: 119.56, Chloride: 348.75}},
		{TableSalt, map[Ion]float64{Sodium: 393.39, Chloride: 606.61}},
		{BakingSoda, map[Ion]float64{Sodium: 273.67, Bicarbonate: 726.33}},
		{PotassiumBicarbonate, map[Ion]float64{Potassium: 390.53, Bicarbonate: 609.47}},
		{PotassiumChloride, map[Ion]float64{Potassium: 524.47, Chloride: 475.53}},
		{PotassiumCarbonate, map[Ion]float64{Potassium: 565.80, Carbonate: 434.20}},
		{SodiumCarbonate, map[Ion]float64{Sodium: 433.82, Carbonate: 566.18}},
		{Chalk, map[Ion]float64{Calcium: 400.44, Carbonate: 599.56}},
		{SlakedLime, map[Ion]float64{Calcium: 540.92, Hydroxide: 459.08}},
		{SodiumSulfate, map[Ion]float64{Sodium: 323.72, Sulfate: 676.28}},
		// Phosphorus is printed there: P·94.970/30.974 as PO4; N·18.039/14.007 as NH4.
		{PotassiumDihydrogenPhosphate, map[Ion]float64{Potassium: 287.31, Phosphate: 697.88}},
		{DiammoniumPhosphate, map[Ion]float64{Ammonium: 273.21, Phosphate: 719.16}},
		{AmmoniumDihydrogenPhosphate, map[Ion]float64{Ammonium: 156.83, Phosphate: 825.65}},
		{AmmoniumSulfate, map[Ion]float64{Ammonium: 273.04, Sulfate: 726.96}},
		{AmmoniumChloride, map[Ion]float64{Ammonium: 337.25, Chloride: 662.75}},
		{ZincSulfateHeptahydrate, map[Ion]float64{Zinc: 227.38, Sulfate: 334.06}},
		{ZincSulfateMonohydrate, map[Ion]float64{Zinc: 364.33, Sulfate: 535.28}},
		// By hand: 2·39.098/174.252 and 96.056/174.252.
		{PotassiumSulfate, map[Ion]float64{Potassium: 448.75, Sulfate: 551.25}},
		// By hand: 22.990/39.997, 17.007/39.997; 39.098/56.105, 17.007/56.105.
		{SodiumHydroxide, map[Ion]float64{Sodium: 574.79, Hydroxide: 425.21}},
		{PotassiumHydroxide, map[Ion]float64{Potassium: 696.87, Hydroxide: 303.13}},
		// By hand: 24.305/84.313, 60.008/84.313.
		{MagnesiumCarbonate, map[Ion]float64{Magnesium: 288.27, Carbonate: 711.73}},
		// By hand: 40.078/308.293, 178.140/308.293.
		{CalciumLactatePentahydrate, map[Ion]float64{Calcium: 130.00, Lactate: 577.83}},
		// By hand: 78.196/174.174, 94.970/174.174.
		{DipotassiumPhosphate, map[Ion]float64{Potassium: 448.95, Phosphate: 545.26}},
	}
	if len(rows) != int(saltCount) {
		t.Errorf("%d rows for %d salts", len(rows), saltCount)
	}
	for _, r := range rows {
		got := r.salt.IonsPerGram()
		if len(got) != len(r.want) {
			t.Errorf("%v: %v", r.salt, got)
		}
		for _, g := range got {
			if math.Abs(g.MilligramsPerGram-r.want[g.Ion]) > 0.0101 {
				t.Errorf("%v: %v %.3f mg/g, want %.2f", r.salt, g.Ion, g.MilligramsPerGram, r.want[g.Ion])
			}
		}
	}
}

// Alkalinity as stoichiometry has it. CaCO3 19.98 and Ca(OH)2 26.99 mEq/g are the
// figures of the table above; the rest is 1000·n/M.
func TestAlkalinityPerGram(t *testing.T) {
	for salt, want := range map[Salt]float64{
		Chalk: 19.98, SlakedLime: 26.99, BakingSoda: 1000 / 84.006, SodiumCarbonate: 2000 / 105.988,
		PotassiumBicarbonate: 1000 / 100.114, PotassiumCarbonate: 2000 / 138.204, SodiumHydroxide: 1000 / 39.997,
		PotassiumHydroxide: 1000 / 56.105, MagnesiumCarbonate: 2000 / 84.313,
		DiammoniumPhosphate: 1000 / 132.056, DipotassiumPhosphate: 1000 / 174.174,
		Gypsum: 0, AmmoniumDihydrogenPhosphate: 0, CalciumLactatePentahydrate: 0,
	} {
		if got := salt.AlkalinityPerGram(); math.Abs(got-want) > 0.0051 {
			t.Errorf("%v: %.4f mEq/g, want %.4f", salt, got, want)
		}
	}
}

// A salt is neutral: cations equal anions and alkalinity.
func TestSaltsAreNeutral(t *testing.T) {
	for _, s := range Salts() {
		f := s.facts()
		sum := -f.alkG
		for i, n := range f.perG {
			if alkalinityOf(Ion(i)) == 0 {
				sum += n * float64(referenceCharge(Ion(i)))
			}
		}
		if math.Abs(sum) > 1e-12*f.perG[f.parts[0].ion] {
			t.Errorf("%v carries %g mEq/g", s, sum)
		}
	}
}

// The ions add up to the anhydrous compound, whose share needs the crystal water:
// 110.978/147.008 for the dihydrate of calcium chloride.
func TestAnhydrous(t *testing.T) {
	got := CalciumChlorideDihydrate.Anhydrous(units.Gram.Of(100)).In(units.GramAnhydrous)
	if math.Abs(got-100*110.978/147.008) > 1e-9 {
		t.Errorf("got %v", got)
	}
	proton := mustMass("H")
	for _, s := range Salts() {
		f := s.facts()
		sum := float64(f.protons) * mmolPerMol / f.mass * proton / 1000
		for _, y := range s.IonsPerGram() {
			sum += y.MilligramsPerGram / 1000
			if y.Ion == Phosphate && f.protons == 0 {
				sum += 2 * proton / f.mass
			}
		}
		if math.Abs(sum-f.anhydr) > 1e-12 {
			t.Errorf("%v: ions are %v of a gram, the anhydrous salt %v", s, sum, f.anhydr)
		}
	}
}

func TestParseSalt(t *testing.T) {
	for text, want := range map[string]Salt{
		"gypsum": Gypsum, "Gypsum ": Gypsum, "CaSO4.2H2O": Gypsum, "CaSO4·2H2O": Gypsum, "epsom salts": EpsomSalt,
		"Epsom salt": EpsomSalt, "CaCl2": CalciumChloride, "CaCl2.2H2O": CalciumChlorideDihydrate, "NaCl": TableSalt,
		"sodium bicarbonate": BakingSoda, "pickling lime": SlakedLime, "DAP": DiammoniumPhosphate,
	} {
		if got, err := ParseSalt(text); err != nil || got != want {
			t.Errorf("%q: %v, %v", text, got, err)
		}
	}
	for _, text := range []string{"", "calcium chloride", "sugar", "|"} {
		if got, err := ParseSalt(text); err == nil {
			t.Errorf("%q is %v", text, got)
		}
	}
	seen := map[string]Salt{}
	for _, s := range Salts() {
		b, err := s.MarshalText()
		var back Salt
		if err != nil || back.UnmarshalText(b) != nil || back != s {
			t.Errorf("%v: %q", s, b)
		}
		if other, ok := seen[s.Formula()]; ok {
			t.Errorf("%v and %v have one formula", s, other)
		}
		seen[s.Formula()] = s
		if got, err := ParseSalt(s.Formula()); err != nil || got != s {
			t.Errorf("%v by formula: %v, %v", s, got, err)
		}
	}
	if _, err := Salt(-1).MarshalText(); err == nil || Salt(99).Name() != "unknown salt" {
		t.Error("an unknown salt has a name")
	}
	if err := json.Unmarshal([]byte(`{"gypsum":1}`), &map[Salt]float64{}); err != nil {
		t.Error(err)
	}
}

func FuzzParseSalt(f *testing.F) {
	f.Add("gypsum")
	f.Add("CaCl2·2H2O")
	f.Fuzz(func(t *testing.T, text string) {
		s, err := ParseSalt(text)
		if err != nil {
			return
		}
		b, err := s.MarshalText()
		if err != nil {
			t.Fatal(err)
		}
		if back, err := ParseSalt(string(b)); err != nil || back != s {
			t.Errorf("%q is %v, %q is %v", text, s, b, back)
		}
	})
}
