package carbonation_test

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// Handbooks: 1.9769 g/L; IUPAC-NIST SRD 106: 22.2605 L/mol; the EU text's 1.951 and
// 0.987: 1.9767. Ideal gas: 1.9635.
func TestOneVolume(t *testing.T) {
	grams := func(d carbonation.VolumeDefinition) float64 {
		return d.Content(units.VolumesCO2.Of(1)).In(units.GramCO2PerLitre)
	}
	near(t, "real", grams(carbonation.RealVolume), 1.9770, 5e-5)
	near(t, "ideal", grams(carbonation.IdealVolume), 1.9635, 5e-5)
	near(t, "ideal", 44.009/grams(carbonation.IdealVolume), 22.41397, 1e-5)
	d := ok[units.Density](t)(carbonation.GasDensity(kpa(101.325), celsius(0)))
	near(t, "real gas density", d.In(units.KilogramPerCubicMetre), grams(carbonation.RealVolume), 5e-4)
	// 27 CFR 24.245: 0.392 g in 100 mL; 1.983 volumes.
	near(t, "limit of still wine", carbonation.RealVolume.Volumes(gramsCO2(3.92)).In(units.VolumesCO2), 1.983, 5e-4)
}

func TestVolumesRoundTrip(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		g := rapid.Float64Range(0, 100).Draw(t, "g/L")
		for _, d := range []carbonation.VolumeDefinition{carbonation.RealVolume, carbonation.IdealVolume} {
			close(t, d.String(), d.Content(d.Volumes(gramsCO2(g))).In(units.GramCO2PerLitre), g, 1e-14)
		}
	})
}

func TestVolumeDefinitionSaysWhich(t *testing.T) {
	if s := carbonation.RealVolume.String(); s != "real gas, 1.9770 g/L" {
		t.Error(s)
	}
	if s := carbonation.IdealVolume.String(); s != "ideal gas, 1.9635 g/L" {
		t.Error(s)
	}
}
