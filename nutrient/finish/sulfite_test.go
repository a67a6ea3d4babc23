package finish

import (
	"math"
	"slices"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// 1/(1 + 10^(pH - 1.81)) and the free SO2 for 0.5, 0.8 and 1.5 mg/L molecular, worked
// out from that pK of wine practice.
func TestMolecularSharePractice(t *testing.T) {
	const source = "pK 1.81, computed"
	for _, c := range []struct{ ph, share, f05, f08, f15 float64 }{
		{2.8, 0.09283, 5.39, 8.62, 16.16}, {2.9, 0.07517, 6.65, 10.64, 19.95}, {3.0, 0.06065, 8.24, 13.19, 24.73},
		{3.1, 0.04878, 10.25, 16.40, 30.75}, {3.2, 0.03914, 12.77, 20.44, 38.32}, {3.3, 0.03135, 15.95, 25.52, 47.85},
		{3.4, 0.02506, 19.95, 31.92, 59.86}, {3.5, 0.02001, 24.99, 39.98, 74.97}, {3.6, 0.01596, 31.33, 50.13, 93.99},
		{3.7, 0.01272, 39.31, 62.90, 117.94}, {3.8, 0.01013, 49.36, 78.98, 148.09}, {3.9, 0.00806, 62.01, 99.22, 186.04},
		{4.0, 0.00642, 77.94, 124.71, 233.82}, {4.1, 0.00510, 97.99, 156.79, 293.98}, {4.2, 0.00406, 123.24, 197.18, 369.71},
		{4.3, 0.00323, 155.01, 248.02, 465.04}, {4.4, 0.00256, 195.02, 312.04, 585.07}, {4.5, 0.00204, 245.39, 392.62, 736.17},
	} {
		s := check.Must(MolecularSharePractice(c.ph))
		check.Near(t, "share", s.In(units.Fraction), c.share, 5.1e-6, source)
		for _, f := range []struct{ molecular, free float64 }{{0.5, c.f05}, {0.8, c.f08}, {1.5, c.f15}} {
			got := check.Must(FreeSulfite(check.Must(units.MilligramPerLitre.Try(f.molecular)), s)).In(units.MilligramPerLitre)
			check.Near(t, "free", got, f.free, 0.0051, source)
		}
	}
	for _, ph := range []float64{2.4, 5.1, math.NaN()} {
		_, err := MolecularSharePractice(ph)
		check.Refused(t, err, "pH", 2.5, 5)
	}
}

// The table as the OIV prints it, at its own points: at pH = pK half is molecular.
func TestMolecularShareOIV(t *testing.T) {
	const source = "OIV-MA-AS323-04C table 1"
	for a, row := range map[float64][]float64{
		0:  {1.798, 2.000, 2.219, 2.334, 2.493},
		5:  {1.897, 2.098, 2.299, 2.397, 2.527},
		10: {1.997, 2.198, 2.394, 2.488, 2.606},
		15: {2.099, 2.301, 2.503, 2.607, 2.728},
	} {
		for i, pK := range row {
			got := check.Must(MolecularShareOIV(3.2, check.Must(units.PercentVolume.Try(a)), check.Must(units.Celsius.Try(20+5*float64(i)))))
			check.Near(t, "share", got.In(units.Fraction), 1/(1+math.Pow(10, 3.2-pK)), 1e-12, source)
			check.Near(t, "pK", check.Must(SulfurDioxidePK(check.Must(units.PercentVolume.Try(a)), check.Must(units.Celsius.Try(20+5*float64(i))))), pK, 1e-12, source)
		}
	}
	// Half way between four points the pK is their mean.
	got := check.Must(MolecularShareOIV(3.2, units.PercentVolume.Of(7.5), units.Celsius.Of(22.5)))
	check.Near(t, "between", got.In(units.Fraction), 1/(1+math.Pow(10, 3.2-(1.897+2.098+1.997+2.198)/4)), 1e-12, "interpolated")
	_, err := MolecularShareOIV(3.2, units.PercentVolume.Of(15.1), amount.Room)
	check.Refused(t, err, "strength", 0, 15)
	_, err = MolecularShareOIV(3.2, units.PercentVolume.Of(5), units.Celsius.Of(19.9))
	check.Refused(t, err, "temperature", 20, 40)
	_, err = MolecularShareOIV(3.2, units.PercentVolume.Of(5), units.Celsius.Of(41))
	check.Refused(t, err, "temperature", 20, 40)
	_, err = SulfurDioxidePK(units.PercentVolume.Of(5), units.Celsius.Of(41))
	check.Refused(t, err, "temperature", 20, 40)
	_, err = MolecularShareOIV(5.1, units.PercentVolume.Of(5), amount.Room)
	check.Refused(t, err, "pH", 2.5, 5)
}

func TestMolecularShareFallsWithPH(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		ph := rapid.Float64Range(2.5, 4.9).Draw(t, "pH")
		a := check.Must(units.PercentVolume.Try(rapid.Float64Range(0, 15).Draw(t, "strength, % vol")))
		c := check.Must(units.Celsius.Try(rapid.Float64Range(20, 40).Draw(t, "temperature, °C")))
		if check.Must(MolecularShareOIV(ph, a, c)).Compare(check.Must(MolecularShareOIV(ph+0.1, a, c))) <= 0 {
			t.Fatal("the share does not fall")
		}
	})
}

func TestMolecularTarget(t *testing.T) {
	f := MolecularTarget()
	check.Near(t, "value", f.Value.In(units.MilligramPerLitre), 0.8, 0, "common practice, no source")
	check.Near(t, "low", f.Low.In(units.MilligramPerLitre), 0.5, 0, "common practice, no source")
	check.Near(t, "high", f.High.In(units.MilligramPerLitre), 1.5, 0, "common practice, no source")
	_, err := FreeSulfite(units.MilligramPerLitre.Of(6), units.Percent.Of(2))
	check.Refused(t, err, "molecular SO2", 0, 5)
	_, err = FreeSulfite(units.MilligramPerLitre.Of(1), units.Share{})
	check.Refused(t, err, "molecular share", 0.01, 100)
}

// SO2 in a gram: 576.29 mg from the potassium, 673.96 mg from the sodium salt.
func TestSulfiteFor(t *testing.T) {
	check.Near(t, "potassium", 10*material.PotassiumMetabisulfite().Composition().SulfurDioxide.In(units.Percent), 576.29, 0.006, "CIAAW 2021, computed")
	check.Near(t, "sodium", 10*material.SodiumMetabisulfite().Composition().SulfurDioxide.In(units.Percent), 673.96, 0.006, "CIAAW 2021, computed")
	if material.PotassiumMetabisulfite().String() != "potassium metabisulfite" || material.SodiumMetabisulfite().String() != "sodium metabisulfite" {
		t.Error("names")
	}
	mg := func(x float64) units.MassConcentration { return check.Must(units.MilligramPerLitre.Try(x)) }
	d := check.Must(SulfiteFor(material.PotassiumMetabisulfite(), mg(40), mg(10), mg(30), units.Litre.Of(20), law.US))
	check.Near(t, "mass", d.Mass.In(units.Gram), 0.6/0.57629, 1e-4, "by hand")
	check.Near(t, "total", d.Total.In(units.MilligramPerLitre), 60, 1e-9, "by hand")
	if len(d.Passed) != 0 || len(d.Limits) != 1 || !slices.Equal(d.Cautions, caution.List{SulfiteCaution, otherDrinks}) {
		t.Errorf("%+v", d)
	}
	d = check.Must(SulfiteFor(material.PotassiumMetabisulfite(), mg(130), mg(0), mg(0), units.Litre.Of(20), law.EU))
	if len(d.Passed) != 1 || len(d.Limits) != 6 || len(d.Cautions) != 3 {
		t.Errorf("%+v", d) // above the 100 mg/L of organic red wine alone
	}
	_, err := SulfiteFor(material.PotassiumMetabisulfite(), mg(40), mg(501), mg(600), units.Litre.Of(20), law.US)
	check.Refused(t, err, "free SO2", 0, 500)
	_, err = SulfiteFor(material.PotassiumMetabisulfite(), mg(40), mg(50), mg(60), units.Litre.Of(20), law.US)
	check.Refused(t, err, "wanted SO2", 50, 500)
	_, err = SulfiteFor(material.PotassiumMetabisulfite(), mg(40), mg(30), mg(20), units.Litre.Of(20), law.US)
	check.Refused(t, err, "total SO2", 30, 500)
	_, err = SulfiteFor(material.PotassiumMetabisulfite(), mg(40), mg(30), mg(30), units.Volume{}, law.US)
	check.Refused(t, err, "volume", amount.LeastVolume, amount.MostVolume)
}

func TestNoPKComesWithAnError(t *testing.T) {
	pK, err := SulfurDioxidePK(units.PercentVolume.Of(16), units.Celsius.Of(20))
	check.Nothing(t, "strength of SulfurDioxidePK", pK, err)
	pK, err = SulfurDioxidePK(units.PercentVolume.Of(10), units.Celsius.Of(19))
	check.Nothing(t, "temperature of SulfurDioxidePK", pK, err)
}

func TestMolecularShareAllocatesNothing(t *testing.T) {
	strength, warm := units.PercentVolume.Of(8), units.Celsius.Of(22)
	if n := testing.AllocsPerRun(100, func() { check.Must(MolecularShareOIV(3.3, strength, warm)) }); n != 0 {
		t.Errorf("%g allocations", n)
	}
}
