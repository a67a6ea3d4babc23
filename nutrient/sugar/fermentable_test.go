package sugar

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/check"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// Composition as the sources print it.
func TestFermentables(t *testing.T) {
	inv := func(d, i float64) material.Material {
		return check.Must(material.InvertSyrup(check.Must(units.Percent.Try(d)), check.Must(units.Percent.Try(i))))
	}
	hfs := func(x float64) material.Material {
		return check.Must(material.HighFructoseSyrup(check.Must(units.Percent.Try(x))))
	}
	for _, c := range []struct {
		f                                   material.Material
		solids, crystal, fermentable, gain  float64
		tolSolids, tolFermentable, spreadPC float64
		source                              string
	}{
		{material.WhiteSugar(), 99.94, 0, 100, 5.263, 1e-9, 1e-9, 0.1, "2001/111/EC: loss on drying 0.06 %; 18.015/342.297"},
		{material.Sucrose(), 100, 0, 100, 5.263, 1e-9, 1e-9, 0, "compound"},
		{shelf.Material("soft brown sugar"), 96, 0, 100 * 88 / 96.0, 5.263, 1e-9, 1e-9, 3, "Codex CXS 212: sucrose plus invert 88 %"},
		{material.DextroseMonohydrate(), 90.91, 9.09, 100, 0, 0.005, 1e-9, 0.5, "18.015/198.171 = 9.09 %"},
		{material.DextroseAnhydrous(), 100, 0, 100, 0, 1e-9, 1e-9, 0.8, "compound"},
		{shelf.Material("fructose"), 100, 0, 100, 0, 1e-9, 1e-9, 0.5, "compound"},
		{shelf.Material("invert sugar syrup"), 77.9, 0, 100, 5.263 / 2, 1e-9, 1e-9, 1, "Wartman et al. 1980 table I"},
		{inv(62, 3), 62, 0, 100, 5.263 * 0.97, 1e-9, 1e-9, 1, "2001/111/EC"},
		{hfs(42), 70.7, 0, 94, 0, 1e-9, 1e-9, 2, "Wartman et al. 1980 table I; higher sugars recalled from memory"},
		{hfs(55), 76.9, 0, 95, 0, 1e-9, 1e-9, 2, "Wartman et al. 1980 table I; higher sugars recalled from memory"},
		{hfs(90), 80.7, 0, 99, 0, 1e-9, 1e-9, 2, "Wartman et al. 1980 table I; higher sugars recalled from memory"},
		{material.Honey(), 82.8, 0, 100 * (38.2 + 31.3 + 1.3 + 7.3) / 82.8, 5.263 * 8.6 / 78.1, 1e-9, 1e-9, 3, "USDA Technical Bulletin 1261"},
		{shelf.Material("maple syrup"), 66, 0, 100 * 64 / 66.0, 5.263, 1e-9, 1e-9, 2, "21 CFR 168.140, recalled from memory"},
		{shelf.Material("dry malt extract"), 97, 0, 65, 0.69*5.263 + 0.16*7.143, 1e-9, 1e-9, 8, "common practice, no source"},
		{shelf.Material("liquid malt extract"), 80, 0, 65, 0.69*5.263 + 0.16*7.143, 1e-9, 1e-9, 8, "common practice, no source"},
		{shelf.Material("lactose monohydrate"), 95, 5, 0, 0, 0.005, 1e-9, 0, "18.015/360.312 = 5.00 %"},
	} {
		n := c.f.Name()
		check.Near(t, n+" solids", Of(c.f).Solids().In(units.Percent), c.solids, c.tolSolids, c.source)
		check.Near(t, n+" crystal water", Of(c.f).CrystalWater().In(units.Percent), c.crystal, 0.005, c.source)
		check.Near(t, n+" fermentability", Of(c.f).Fermentability().In(units.Percent), c.fermentable, c.tolFermentable, c.source)
		check.Near(t, n+" inversion gain", Of(c.f).InversionGain().In(units.Percent), c.gain, 0.0006, c.source)
		check.Near(t, n+" spread", c.f.Spread().In(units.Percent), c.spreadPC, 1e-9, c.source)
	}
}

// Gay-Lussac's equation with CIAAW weights: 0.51144 g ethanol and 0.48856 g CO2 of a
// gram of glucose, 0.53835 and 0.51428 of sucrose, CO2 0.44415 of the monohydrate.
// Balling gives 51.11 of alcohol for 100 of sugar.
func TestGayLussac(t *testing.T) {
	const source = "C6H12O6 = 2 C2H5OH + 2 CO2, IUPAC weights"
	one := units.Kilogram.Of(1)
	for _, c := range []struct {
		f            material.Material
		ethanol, co2 float64
	}{
		{material.DextroseAnhydrous(), 0.51144, 0.48856},
		{material.Sucrose(), 0.53835, 0.51428},
		{material.DextroseMonohydrate(), 0.51144 * 180.156 / 198.171, 0.44415},
	} {
		p := check.Must(Of(c.f).Of(one))
		check.Near(t, c.f.Name()+" ethanol", p.GayLussac.In(units.Kilogram), c.ethanol, 6e-6, source)
		check.Near(t, c.f.Name()+" CO2 of a part", Of(c.f).MostCO2().In(units.Fraction), c.co2, 6e-6, source)
		check.Near(t, c.f.Name()+" CO2", p.CO2.In(units.Kilogram), c.co2, 6e-6, source)
	}
	check.Near(t, "Balling", 100*check.Must(Of(material.DextroseAnhydrous()).Of(one)).GayLussac.In(units.Kilogram), 51.11, 0.04, "Balling, Die Gährungschemie")
	maltotriose := Of(check.Must(material.ByLabel("maltotriose", material.Composition{Trisaccharides: units.Percent.Of(100)})))
	check.Near(t, "maltotriose", check.Must(maltotriose.Of(one)).AsHexose.In(units.Kilogram), 3*180.156/504.438, 1e-6, "molar masses")
}

func TestPartsAddUp(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		all := Fermentables()
		f := all[rapid.IntRange(0, len(all)-1).Draw(t, "fermentable")]
		kg := rapid.Float64Range(0, 1e4).Draw(t, "mass, kg")
		p := check.Must(Of(f).Of(check.Must(units.Kilogram.Try(kg))))
		for what, d := range map[string]float64{
			"water + solids = mass":      p.Water.Plus(p.Solids).In(units.Kilogram) - kg,
			"sugar + residue = solids":   p.Sugar.Plus(p.Residue).Minus(p.Solids).In(units.Kilogram),
			"sugar + inversion = hexose": p.Sugar.Plus(p.Inversion).Minus(p.AsHexose).In(units.Kilogram),
			"ethanol + CO2 = hexose":     p.GayLussac.Plus(p.CO2).Minus(p.AsHexose).In(units.Kilogram),
		} {
			if math.Abs(d) > 1e-12*math.Max(1, kg) {
				t.Fatalf("%s: off by %g kg", what, d)
			}
		}
	})
	_, err := Of(material.Honey()).Of(units.Mass{}.Minus(units.Gram.Of(1)))
	check.Refused(t, err, "mass", 0, 1e9)
}

func TestMix(t *testing.T) {
	m := check.Must(material.Mix(material.Ingredient{Material: material.Sucrose(), Share: units.Percent.Of(75)},
		material.Ingredient{Material: material.Honey(), Share: units.Percent.Of(25)}))
	check.Near(t, "solids", Of(m).Solids().In(units.Percent), 75+0.25*82.8, 1e-9, "by hand")
	check.Near(t, "spread", m.Spread().In(units.Percent), 3*0.25*78.1/(75+0.25*78.1), 1e-9, "by hand")
	if m.Name() != "sucrose and honey" || m.Evidence().Grade != evidence.Computed || len(m.Cautions()) != 1 {
		t.Errorf("%+v", m)
	}
	d := check.Must(material.Mix(material.Ingredient{Material: material.DextroseMonohydrate(), Share: units.Percent.Of(100)}))
	check.Near(t, "crystal", Of(d).CrystalWater().In(units.Percent), 9.09, 0.005, "18.015/198.171")
	l := check.Must(material.Mix(material.Ingredient{Material: shelf.Material("lactose monohydrate"), Share: units.Percent.Of(100)}))
	check.Near(t, "spread of lactose", l.Spread().In(units.Percent), 0, 0, "no sugar")
	_, err := material.Mix(material.Ingredient{Material: material.Sucrose(), Share: units.Percent.Of(100)},
		material.Ingredient{Material: material.Honey(), Share: units.Share{}.Minus(units.Percent.Of(1))},
		material.Ingredient{Material: material.Honey(), Share: units.Percent.Of(1)})
	check.Refused(t, err, "share", 0, 100)
	_, err = material.Mix()
	check.Refused(t, err, "sum of the shares", 100-1e-6, 100+1e-6)
	_, err = material.Mix(material.Ingredient{Material: material.Sucrose(), Share: units.Percent.Of(99)})
	check.Refused(t, err, "sum of the shares", 100-1e-6, 100+1e-6)
}

func TestFermentablesRefuse(t *testing.T) {
	_, err := material.InvertSyrup(units.Percent.Of(61), units.Percent.Of(50))
	check.Refused(t, err, "solids", 62, 90)
	_, err = material.InvertSyrup(units.Percent.Of(91), units.Percent.Of(50))
	check.Refused(t, err, "solids", 62, 90)
	_, err = material.HoneyWithWater(units.Percent.Of(13.3))
	check.Refused(t, err, "water", 13.4, 22.9)
	_, err = material.HoneyWithWater(units.Percent.Of(23))
	check.Refused(t, err, "water", 13.4, 22.9)
	_, err = material.HighFructoseSyrup(units.Percent.Of(43))
	check.Refused(t, err, "fructose (42, 55 and 90 only)", 42, 90)
	if f := check.Must(material.HoneyWithWater(units.Percent.Of(20))); math.Abs(Of(f).Solids().In(units.Percent)-80) > 1e-9 {
		t.Error(Of(f).Solids())
	}
}

func TestParseFermentable(t *testing.T) {
	for _, f := range Fermentables() {
		if got, err := material.FindAmong(" "+strings.ToUpper(f.Name())+" ", Fermentables()...); err != nil || got.Name() != f.Name() {
			t.Errorf("%s: %v, %v", f, got, err)
		}
	}
	for text, want := range map[string]string{
		"sugar": "white sugar", "table sugar": "white sugar", "corn sugar": "dextrose monohydrate", "DME": "dry malt extract",
		"LME": "liquid malt extract", "invert sugar": "invert sugar syrup", "lactose": "lactose monohydrate",
	} {
		if got, err := material.FindAmong(text, Fermentables()...); err != nil || got.Name() != want {
			t.Errorf("%s: %v, %v", text, got, err)
		}
	}
	for _, text := range []string{"", "dextrose", "glucose", "gravel", "gypsum"} {
		if _, err := material.FindAmong(text, Fermentables()...); err == nil {
			t.Errorf("%q is taken", text)
		}
	}
}

func TestEvidenceReads(t *testing.T) {
	for _, c := range []struct {
		e    evidence.Evidence
		want string
	}{
		{evidence.Evidence{}, "common practice, no source"},
		{evidence.Evidence{Source: "A. Author 1999", Grade: evidence.Recalled}, "A. Author 1999 (recalled from memory)"},
		{evidence.Evidence{Source: "A. Author 1999", Grade: evidence.Computed}, "A. Author 1999 (computed)"},
		{material.WhiteSugar().Evidence(), "Council Directive 2001/111/EC annex A (read)"},
	} {
		if got := c.e.String(); got != c.want {
			t.Errorf("got %q, want %q", got, c.want)
		}
	}
}

func TestAddToRefusesLessThanNothing(t *testing.T) {
	_, err := Of(material.WhiteSugar()).AddTo(gravity.Solution{}, units.Mass{}.Minus(units.Gram.Of(1)))
	check.Refused(t, err, "mass", 0, 1e9)
}
