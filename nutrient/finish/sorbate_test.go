package finish

import (
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
)

// Potassium sorbate by strength as printed: 200, 170, 130, 100, 70 mg/L at 10 to 14 % vol;
// 165 to 270 mg/L at 10 % vol in another table.
func TestSorbateByStrength(t *testing.T) {
	const source = "How to add potassium sorbate"
	for i, want := range []float64{200, 170, 130, 100, 70} {
		f := check.Must(SorbateByStrength(3.3, check.Must(units.PercentVolume.Try(10+float64(i)))))
		check.Near(t, "sorbate", f.Value.In(units.MilligramPerLitre), want, 1e-9, source)
	}
	f := check.Must(SorbateByStrength(3.3, units.PercentVolume.Of(10)))
	check.Near(t, "low", f.Low.In(units.MilligramPerLitre), 165, 1e-9, "table of a home-wine book")
	check.Near(t, "high", f.High.In(units.MilligramPerLitre), 270, 1e-9, "table of a home-wine book")
	check.Near(t, "between", check.Must(SorbateByStrength(3.3, units.PercentVolume.Of(11.5))).Value.In(units.MilligramPerLitre), 150, 1e-9, "interpolated")
	_, err := SorbateByStrength(3.3, units.PercentVolume.Of(4.6))
	check.Refused(t, err, "strength", 10, 14)
	if err == nil || !strings.Contains(err.Error(), "no published table covers this strength") {
		t.Error(err)
	}
	_, err = SorbateByStrength(3.3, units.PercentVolume.Of(14.1))
	check.Refused(t, err, "strength", 10, 14)
	_, err = SorbateByStrength(3.6, units.PercentVolume.Of(12))
	check.Refused(t, err, "pH", 2.8, 3.5)
	_, err = SorbateByStrength(2.7, units.PercentVolume.Of(12))
	check.Refused(t, err, "pH", 2.8, 3.5)
}

// 746.44 mg of sorbic acid in a gram, one gram in 1.3397 of the salt; half undissociated at
// pK 4.76 (recalled from memory).
func TestSorbateFor(t *testing.T) {
	check.Near(t, "acid", 10*SorbicAcidShare().In(units.Percent), 746.44, 0.006, "CIAAW 2021, computed")
	check.Near(t, "salt", 100/SorbicAcidShare().In(units.Percent), 1.3397, 0.00005, "CIAAW 2021, computed")
	check.Near(t, "half", check.Must(Undissociated(4.76)).In(units.Percent), 50, 1e-9, "recalled from memory")
	check.Near(t, "pH 3.76", check.Must(Undissociated(3.76)).In(units.Percent), 1000.0/11, 1e-9, "a factor of ten")
	d := check.Must(SorbateFor(units.MilligramPerLitre.Of(200), 3.76, units.Litre.Of(20), law.EU))
	check.Near(t, "mass", d.Mass.In(units.Gram), 4, 1e-12, "by hand")
	check.Near(t, "sorbic acid", d.SorbicAcid.In(units.MilligramPerLitre), 149.29, 0.005, "by hand")
	check.Near(t, "acts", d.Undissociated.In(units.MilligramPerLitre), 149.29/1.1, 0.005, "by hand")
	if len(d.Passed) != 0 || len(d.Limits) != 3 || d.Cautions[1] != otherDrinks || len(d.Cautions) != 3 {
		t.Errorf("%+v", d)
	}
	if d = check.Must(SorbateFor(units.MilligramPerLitre.Of(270), 3.3, units.Litre.Of(20), law.EU)); len(d.Passed) != 3 || len(d.Cautions) != 4 {
		t.Errorf("%+v", d)
	}
	if d = check.Must(SorbateFor(units.MilligramPerLitre.Of(270), 3.3, units.Litre.Of(20), law.US)); len(d.Passed) != 0 {
		t.Errorf("%+v", d)
	}
	_, err := SorbateFor(units.GramPerLitre.Of(2.2), 3.3, units.Litre.Of(20), law.US)
	check.Refused(t, err, "sorbic acid", 0, 1600)
	_, err = SorbateFor(units.GramPerLitre.Of(0.2), 9, units.Litre.Of(20), law.US)
	check.Refused(t, err, "pH", 2, 8)
	_, err = SorbateFor(units.GramPerLitre.Of(0.2), 3, units.Volume{}, law.US)
	check.Refused(t, err, "volume", amount.LeastVolume, amount.MostVolume)
}
