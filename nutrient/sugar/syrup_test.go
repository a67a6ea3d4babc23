package sugar

import (
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// Sugars of acid-converted syrups by dextrose equivalent: recalled from memory.
func TestGlucoseSyrup(t *testing.T) {
	for _, c := range []struct{ de, glucose, maltose, maltotriose float64 }{
		{30, 10, 9, 10}, {36, 14, 12, 11}, {42, 19, 14, 12}, {55, 31, 18, 13}, {64, 37, 32, 11}, {39, 16.5, 13, 11.5}, {48.5, 25, 16, 12.5},
	} {
		f := check.Must(material.GlucoseSyrup(units.Percent.Of(80), check.Must(units.Percent.Try(c.de))))
		check.Near(t, "glucose", 100*Of(f).shares().glucose/0.8, c.glucose, 1e-9, "recalled from memory")
		check.Near(t, "maltose", 100*Of(f).shares().di/0.8, c.maltose, 1e-9, "recalled from memory")
		check.Near(t, "maltotriose", 100*Of(f).shares().tri/0.8, c.maltotriose, 1e-9, "recalled from memory")
		check.Near(t, "solids", Of(f).Solids().In(units.Percent), 80, 1e-9, "given")
		check.Near(t, "spread", f.Spread().In(units.Percent), 10, 1e-9, "stated")
	}
	_, err := material.GlucoseSyrup(units.Percent.Of(69), units.Percent.Of(42))
	check.Refused(t, err, "solids", 70, 90)
	_, err = material.GlucoseSyrup(units.Percent.Of(91), units.Percent.Of(42))
	check.Refused(t, err, "solids", 70, 90)
	_, err = material.GlucoseSyrup(units.Percent.Of(80), units.Percent.Of(29))
	check.Refused(t, err, "dextrose equivalent", 30, 64)
	_, err = material.GlucoseSyrup(units.Percent.Of(80), units.Percent.Of(65))
	check.Refused(t, err, "dextrose equivalent", 30, 64)
}

// Reducing power is one end a molecule: solids of DE hold at least that share of their
// reducing power in glucose, maltose and maltotriose. By the definition of the dextrose
// equivalent, sugars of one to three units are at most DE/35.7 of the solids.
func TestGlucoseSyrupAgreesWithItsDefinition(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		de := rapid.Float64Range(30, 64).Draw(t, "DE")
		f := check.Must(material.GlucoseSyrup(units.Percent.Of(80), check.Must(units.Percent.Try(de))))
		power := 100 * (Of(f).shares().glucose + Of(f).shares().di*180.156/342.297 + Of(f).shares().tri*180.156/504.438) / 0.8
		if power > de {
			t.Fatalf("its small sugars alone have %g DE of %g", power, de)
		}
		if s := Of(f).Fermentability().In(units.Percent); s < de*0.9 || s > de*2.8 {
			t.Fatalf("%g %% fermentable at %g DE", s, de)
		}
	})
}

func TestJuice(t *testing.T) {
	j := check.Must(material.Juice(units.DegreePlato.Of(12), units.Share{}))
	check.Near(t, "solids", Of(j).Solids().In(units.Percent), 12, 1e-9, "given")
	check.Near(t, "sugar", 100*Of(j).shares().sugar(), 10.8, 1e-9, "90 %: common practice, no source")
	check.Near(t, "glucose", 100*Of(j).shares().glucose, 5.4, 1e-9, "half of each")
	check.Near(t, "spread", j.Spread().In(units.Percent), 5, 1e-9, "stated")
	j = check.Must(material.Juice(units.DegreePlato.Of(12), units.Percent.Of(80)))
	check.Near(t, "sugar", 100*Of(j).shares().sugar(), 9.6, 1e-9, "given")
	_, err := material.Juice(units.DegreePlato.Of(2.9), units.Share{})
	check.Refused(t, err, "extract", 3, 70)
	_, err = material.Juice(units.DegreePlato.Of(71), units.Share{})
	check.Refused(t, err, "extract", 3, 70)
	_, err = material.Juice(units.DegreePlato.Of(12), units.Percent.Of(49))
	check.Refused(t, err, "fermentable share", 50, 100)
	check.Must(material.Juice(units.DegreePlato.Of(12), units.Percent.Of(99.5)))
	_, err = material.Juice(units.DegreePlato.Of(12), units.Percent.Of(100.5))
	check.Refused(t, err, "fermentable share", 50, 100)
}
