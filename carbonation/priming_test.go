package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// g of CO2 from a gram, computed from IUPAC atomic weights: sucrose 0.51428, glucose
// 0.48857, its monohydrate 0.44415. Honey by hand: 0.695·0.48857 + 0.086·0.51428.
func TestPrimers(t *testing.T) {
	for _, row := range []struct {
		p    material.Material
		co2  float64
		name string
	}{
		{material.Sucrose(), 0.51428, "sucrose"}, {material.DextroseAnhydrous(), 0.48857, "dextrose anhydrous"},
		{material.DextroseMonohydrate(), 0.44415, "dextrose monohydrate"}, {material.Honey(), 0.38378, "honey"},
	} {
		near(t, row.name, carbonation.CO2From(row.p.Dose(units.Kilogram.Of(1))).In(units.Kilogram), row.co2, 1.1e-5)
		if row.p.Name() != row.name {
			t.Errorf("%q is called %q", row.name, row.p.Name())
		}
	}
}

// Gas from the composition, counted in moles with the abridged atomic weights of CIAAW 2021:
// a hexose gives two CO2, sucrose and maltose four, maltotriose six.
func TestPrimerByComposition(t *testing.T) {
	const c, h, o = 12.011, 1.008, 15.999
	molar := func(carbon, hydrogen, oxygen float64) float64 { return carbon*c + hydrogen*h + oxygen*o }
	co2 := molar(1, 0, 2)
	for _, row := range []struct {
		name                  string
		simple, double, three float64 // % of the mass as weighed
	}{
		{"fructose", 100, 0, 0}, {"white sugar", 0, 99.94, 0}, {"invert syrup, 77.9 % dry, half inverted", 38.95, 38.95, 0},
		{"malt extract, 97 % dry, 65 % of it fermentable", 9.4575, 43.5045, 10.088}, {"maltotriose", 0, 0, 100},
	} {
		gas := co2 * (2*row.simple/molar(6, 12, 6) + 4*row.double/molar(12, 22, 11) + 6*row.three/molar(18, 32, 16)) / 100
		p := ok[material.Material](t)(material.ByLabel("by label: "+row.name,
			material.Composition{Glucose: percent(row.simple / 2), Fructose: percent(row.simple / 2), Disaccharides: percent(row.double),
				Trisaccharides: percent(row.three)}))
		close(t, row.name, carbonation.CO2From(p.Dose(units.Kilogram.Of(1))).In(units.Kilogram), gas, 1e-12)
	}
}

// By hand: 20 L from 1.7 to 5.7 g/L with sucrose: 20·4.0/0.51428 = 155.56 g; as
// monohydrate 20·4.0/0.44415 = 180.12 g. With 2 g/L of sugar left 20·(4.0 −
// 1.02856)/0.51428 = 115.56 g.
func TestPrimingSugar(t *testing.T) {
	prime := func(left float64, with material.Material) carbonation.Priming {
		return ok[carbonation.Priming](t)(carbonation.PrimingSugar(with, gramsCO2(5.7), gramsCO2(1.7), gramsPerLitre(left), litre(20)))
	}
	dry := prime(0, material.Sucrose())
	near(t, "sucrose", dry.Primer.Mass.In(units.Gram), 155.56, 0.01)
	near(t, "monohydrate", prime(0, material.DextroseMonohydrate()).Primer.Mass.In(units.Gram), 180.12, 0.01)
	left := prime(2, material.Sucrose())
	near(t, "sugar left", left.Primer.Mass.In(units.Gram), 115.56, 0.01)
	near(t, "final", left.Final.In(units.GramCO2PerLitre), 5.7, 1e-12)
	if dry.Cautions.Has(carbonation.SugarCanFerment) || !left.Cautions.Has(carbonation.SugarCanFerment) {
		t.Error("caution of sugar left")
	}
	if !dry.Cautions.Has(carbonation.PressureVessel) {
		t.Error("no caution of pressure")
	}
	over := prime(10, material.Sucrose()) // makes 5.14 g/L by itself
	if !over.Primer.Mass.IsZero() || !over.Cautions.Has("no_sugar_needed") {
		t.Errorf("sugar enough is left, but %v, %v", over.Primer.Mass, over.Cautions)
	}
	near(t, "final", over.Final.In(units.GramCO2PerLitre), 1.7+5.1428, 1e-4)
}

func TestPrimingBalance(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		target := rapid.Float64Range(0, 15).Draw(t, "target")
		have := rapid.Float64Range(0, 10).Draw(t, "dissolved")
		left := rapid.Float64Range(0, 30).Draw(t, "left")
		v := rapid.Float64Range(0.1, 1e4).Draw(t, "litres")
		p := ok[carbonation.Priming](t)(carbonation.PrimingSugar(material.Honey(), gramsCO2(target), gramsCO2(have), gramsPerLitre(left), litre(v)))
		made := carbonation.CO2From(p.Primer).In(units.Gram)/v + p.Dissolved.In(units.GramCO2PerLitre) + p.FromSugar.In(units.GramCO2PerLitre)
		close(t, "CO2", made, p.Final.In(units.GramCO2PerLitre), 1e-12)
		if made < target*(1-1e-12) {
			t.Errorf("%g g/L falls short of %g", made, target)
		}
	})
}

func TestPrimingRefuses(t *testing.T) {
	try := func(target, have, v, left float64, with material.Material) error {
		_, err := carbonation.PrimingSugar(with, gramsCO2(target), gramsCO2(have), gramsPerLitre(left), litre(v))
		return err
	}
	refused(t, "target", try(15.1, 1, 20, 0, material.Sucrose()), "target")
	refused(t, "dissolved", try(5, 15.1, 20, 0, material.Sucrose()), "dissolved CO2")
	refused(t, "volume", try(5, 1, 0, 0, material.Sucrose()), "volume")
	refused(t, "sugar", try(5, 1, 20, 30.1, material.Sucrose()), "sugar left")
	for _, none := range []material.Material{{}, shelf.Material("lactose monohydrate"), material.Gypsum()} {
		refused(t, "no primer", try(5, 1, 20, 0, none), "CO2 from a gram of primer")
	}
}

// Under 1 atm at 20 °C a beer holds about 0.85 volumes, a figure of every brewer's
// table (common practice, no source); colder it holds more.
func TestResidualContent(t *testing.T) {
	l := liquid(t, 5, 4)
	at := func(c float64) float64 {
		g := ok[units.CarbonDioxideContent](t)(l.ResidualContent(kpa(101.325), celsius(c)))
		return carbonation.RealVolume.Volumes(g).In(units.VolumesCO2)
	}
	near(t, "at 20 °C", at(20), 0.80, 0.06)
	near(t, "at 0 °C", at(0), 1.65, 0.1)
}
