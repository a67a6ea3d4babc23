package nutrient

import (
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"pgregory.net/rapid"
)

// Milligrams of each part in a gram, worked out from the CIAAW abridged weights.
func TestSourceComposition(t *testing.T) {
	const source = "CIAAW 2021 abridged weights, computed"
	for _, c := range []struct {
		s                                            Source
		n, ammonium, urea, p, k, mg, zn, so4, cl, b1 float64
	}{
		{s: DiammoniumPhosphate(), n: 212.14, ammonium: 212.14, p: 234.55},
		{s: MonoammoniumPhosphate(), n: 121.77, ammonium: 121.77, p: 269.28},
		{s: AmmoniumSulfate(), n: 212.01, ammonium: 212.01, so4: 726.96},
		{s: AmmoniumChloride(), n: 261.87, ammonium: 261.87, cl: 662.75},
		{s: Urea(), n: 466.46, urea: 466.46},
		{s: PotassiumDihydrogenPhosphate(), k: 287.31, p: 227.61},
		{s: PotassiumChloride(), k: 524.47, cl: 475.53},
		{s: ZincSulfateHeptahydrate(), zn: 227.38, so4: 334.06},
		{s: ZincSulfateMonohydrate(), zn: 364.33, so4: 535.28},
		{s: EpsomSalt(), mg: 98.61, so4: 389.73},
		{s: ThiamineHydrochloride(), b1: 1000},
	} {
		per := c.s.Shares()
		for _, row := range []struct {
			what      string
			got, want float64
		}{
			{"N", c.s.Nitrogen().In(units.Percent), c.n},
			{"ammonium N", per.AmmoniumNitrogen.In(units.Percent), c.ammonium},
			{"urea N", per.UreaNitrogen.In(units.Percent), c.urea},
			{"P", per.Phosphorus.In(units.Percent), c.p},
			{"K", per.Potassium.In(units.Percent), c.k},
			{"Mg", per.Magnesium.In(units.Percent), c.mg},
			{"Zn", per.Zinc.In(units.Percent), c.zn},
			{"SO4", per.Sulfate.In(units.Percent), c.so4},
			{"Cl", per.Chloride.In(units.Percent), c.cl},
			{"thiamine", per.Thiamine.In(units.Percent), c.b1},
		} {
			check.Near(t, c.s.Name()+" "+row.what, 10*row.got, row.want, 0.0051, source)
		}
	}
}

// Figures of dry yeast as stated in the doc comment; the nitrogen of dry matter is
// 10 % (Dharmadhikari), of which the pack's usable part is practice.
func TestAutolysedYeast(t *testing.T) {
	s := AutolysedYeast().Shares()
	const practice = "common practice, no source; recalled from memory"
	check.Near(t, "amino N", s.AminoNitrogen.In(units.Percent), 4, 1e-9, practice)
	check.Near(t, "P", s.Phosphorus.In(units.Percent), 1.3, 1e-9, practice)
	check.Near(t, "K", s.Potassium.In(units.Percent), 2, 1e-9, practice)
	check.Near(t, "Mg", s.Magnesium.In(units.Percent), 0.15, 1e-9, practice)
	check.Near(t, "Zn", s.Zinc.In(units.Percent), 0.01, 1e-9, practice)
	if g := AutolysedYeast().Evidence().Grade; g != evidence.CommonPractice {
		t.Errorf("grade %v", g)
	}
}

func TestParseSource(t *testing.T) {
	for _, s := range Sources() {
		got, err := ParseSource(" " + strings.ToUpper(s.Name()) + " ")
		if err != nil || got.Name() != s.Name() {
			t.Errorf("%s: got %v, %v", s.Name(), got, err)
		}
	}
	for text, want := range map[string]string{
		"DAP": "diammonium phosphate", "MAP": "monoammonium phosphate",
		"organic": "autolysed yeast", "yeast autolysate": "autolysed yeast", "thiamine": "thiamine hydrochloride",
	} {
		if got, err := ParseSource(text); err != nil || got.Name() != want {
			t.Errorf("%s: got %v, %v", text, got, err)
		}
	}
	for _, text := range []string{"", "zinc sulfate", "nitrogen", strings.Repeat("é", 1000)} {
		if _, err := ParseSource(text); err == nil {
			t.Errorf("%q is taken", text)
		}
	}
}

func TestUreaIsFlagged(t *testing.T) {
	blend := check.Must(ByLabel("blend", law.Unlisted, Shares{UreaNitrogen: units.Percent.Of(2)}))
	for _, s := range []Source{Urea(), blend} {
		if c := s.Cautions(); len(c) != 1 || !strings.Contains(c[0], "ethyl carbamate") {
			t.Errorf("%s: %q", s, c)
		}
	}
	if c := check.Must(ByLabel("salts", law.AmmoniumPhosphate, Shares{AmmoniumNitrogen: units.Percent.Of(12)})).Cautions(); len(c) != 1 {
		t.Errorf("%q", c)
	}
}

func TestByLabelRefusesMoreThanTheWhole(t *testing.T) {
	half := units.Percent.Of(10.001)
	_, err := ByLabel("x", law.Unlisted, Shares{half, half, half, half, half, half, half, half, half, half})
	check.Refused(t, err, "sum of the parts", 0, 100)
	_, err = ByLabel("x", law.Unlisted, Shares{Zinc: units.Share{}.Minus(units.Percent.Of(1))})
	check.Refused(t, err, "part", 0, 100)
	tenth := units.Percent.Of(10)
	if _, err := ByLabel("x", law.Unlisted, Shares{tenth, tenth, tenth, tenth, tenth, tenth, tenth, tenth, tenth, tenth}); err != nil {
		t.Error(err)
	}
}

// 1 g/L of diammonium phosphate brings 212.14 mg/L of nitrogen, and the US limit of
// 0.95861 g/L 203.4 mg/L (stoichiometry).
func TestBrings(t *testing.T) {
	s := check.Must(SupplyOf(units.Litre.Of(60), Dose{DiammoniumPhosphate(), units.Gram.Of(60)}))
	check.Near(t, "N", s.Nitrogen().In(units.MilligramPerLitre), 212.14, 0.005, "stoichiometry")
	l := check.Must(law.Limits(law.US, law.AmmoniumPhosphate, law.Wine))[0]
	m := units.Gram.Of(0.95861)
	check.Near(t, "limit", l.Concentration().In(units.GramPerLitre), 0.95861, 5e-6, "27 CFR 24.246")
	s = check.Must(SupplyOf(units.Litre.Of(1), Dose{DiammoniumPhosphate(), m}))
	check.Near(t, "N at the limit", s.Nitrogen().In(units.MilligramPerLitre), 203.4, 0.05, "stoichiometry")
}

func TestBringsAddsUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := Sources()
		v := units.Litre.Of(1)
		a := rapid.Float64Range(0, 100).Draw(t, "first, g")
		b := rapid.Float64Range(0, 100).Draw(t, "second, g")
		s := all[rapid.IntRange(0, len(all)-1).Draw(t, "source")]
		ma, mb := check.Must(units.Gram.Try(a)), check.Must(units.Gram.Try(b))
		one := check.Must(SupplyOf(v, Dose{s, ma}, Dose{s, mb}))
		two := check.Must(SupplyOf(v, Dose{s, ma.Plus(mb)}))
		d := one.Nitrogen().In(units.MilligramPerLitre) - two.Nitrogen().In(units.MilligramPerLitre)
		if d > 1e-6 || d < -1e-6 {
			t.Fatalf("differs by %g mg/L", d)
		}
	})
}

func TestBringsRefuses(t *testing.T) {
	_, err := SupplyOf(units.Volume{})
	check.Refused(t, err, "volume", amount.LeastVolume, amount.MostVolume)
	minus := units.Mass{}.Minus(units.Gram.Of(1))
	_, err = SupplyOf(units.Litre.Of(1), Dose{Urea(), minus})
	check.Refused(t, err, "dose", 0, amount.MostMass)
}
