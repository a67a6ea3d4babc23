package gravity_test

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Tolman & Riley, A study of American beers and ales, USDA Bulletin 493 (1917), tables I
// to IV: gravity of wort and of beer at 15.6/15.6 °C, alcohol by distillation in g/100
// mL, all measured. Beer brewed in 1911: the alcohol that went off, and other wort in the
// tank, make the original extract from the beer fall up to 0.6 °P below that of the
// wort. (The extract columns of the bulletin are by another table and are not used.)
var usda493 = [][3]float64{
	{1.0518, 1.0125, 3.85},
	{1.0517, 1.0124, 3.91},
	{1.0517, 1.0135, 3.83},
	{1.0517, 1.0130, 3.72},
	{1.0515, 1.0147, 3.66},
	{1.0455, 1.0171, 3.02},
	{1.0455, 1.0167, 3.12},
	{1.0454, 1.0180, 2.87},
	{1.0459, 1.0121, 3.31},
	{1.0464, 1.0139, 3.18},
	{1.0489, 1.0149, 3.45},
	{1.0489, 1.0159, 3.33},
	{1.0496, 1.0152, 3.41},
	{1.0496, 1.0157, 3.29},
	{1.0572, 1.0151, 4.30},
	{1.0572, 1.0135, 4.48},
	{1.0625, 1.0165, 4.75},
	{1.0623, 1.0170, 4.72},
	{1.0633, 1.0178, 4.70},
	{1.0633, 1.0162, 4.82},
	{1.0608, 1.0139, 4.82},
	{1.0608, 1.0124, 4.97},
	{1.0610, 1.0123, 5.11},
	{1.0610, 1.0106, 5.26},
	{1.0611, 1.0124, 4.93},
	{1.0642, 1.0133, 5.17},
	{1.0668, 1.0145, 5.34},
	{1.0668, 1.0134, 5.52},
	{1.0760, 1.0253, 5.43},
	{1.0760, 1.0208, 5.80},
	{1.0767, 1.0228, 5.67},
	{1.0781, 1.0244, 5.53},
	{1.0781, 1.0210, 5.67},
	{1.0793, 1.0242, 5.69},
}

func TestUSDA493(t *testing.T) {
	var sum float64
	for i, r := range usda493 {
		wort := ok[gravity.Gravity](t)(gravity.FromReference(r[0], gravity.At60F, gravity.InAir))
		// the beer at 60 °F, as a liquid of this strength
		v := 10 * r[2] / 7.9303 // % vol at 60 °F: ethanol weighs 793.0 kg/m³ there
		rho := r[1] * (ok[units.Density](t)(gravity.WaterDensity(units.Fahrenheit.Of(60))).In(units.KilogramPerCubicMetre) - 1.2)
		beer := ok[gravity.Gravity](t)(gravity.FromDensityAt(kgm3(rho+1.2), volPct(v), units.Fahrenheit.Of(60)))
		f := ok[gravity.Fermentation](t)(gravity.FromApparentAndStrength(beer.Extract(), volPct(v), gravity.BallingYield()))
		d := f.OriginalExtract().In(units.DegreePlato) - wort.Extract().In(units.DegreePlato)
		sum += d
		if d < -0.75 || d > 0.45 {
			t.Errorf("pair %d: original extract %.2f from the beer, %.2f of the wort", i+1, f.OriginalExtract().In(units.DegreePlato),
				wort.Extract().In(units.DegreePlato))
		}
	}
	near(t, "mean difference", sum/float64(len(usda493)), -0.1, 0.2)
}
