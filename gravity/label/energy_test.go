package label_test

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/gravity/label"
	"example.org/zymase/units"
)

// Regulation (EU) 1169/2011 annex XIV, by hand: 100 mL at 12 % vol are 12 mL ×
// 0.78924 g/mL of ethanol, 274.7 kJ and 66.3 kcal; 5 g of sugar in 100 mL are 85 kJ
// and 20 kcal; 5 g of glycerol 50 kJ and 12 kcal; 5 g of an organic acid 65 kJ and 15 kcal.
func TestEnergyEU(t *testing.T) {
	p := gravity.ByMass(volPct(12)).In(units.PercentMass)
	s := solution(t, 100-p, 0, p)
	e := label.EnergyEU(s)
	near(t, "kJ", e.Kilojoules.In(units.Kilojoule), 274.7, 0.05)
	near(t, "kcal", e.Kilocalories.In(units.Kilocalorie), 66.3, 0.05)
	for _, c := range []struct {
		kind     gravity.Sugar
		kJ, kcal float64
	}{{gravity.AsSucrose, 85, 20}, {gravity.AsGlucose, 85, 20}, {gravity.AsDextrin, 85, 20}, {gravity.AsGlycerol, 50, 12}, {gravity.AsOrganicAcid, 65, 15}} {
		s := solution(t, 95, 0, 0)
		s = ok[gravity.Solution](t)(s.AddExtract(c.kind, kg(5)))
		s = ok[gravity.Solution](t)(s.Take(percent(100 * 5 / 100 / (s.ExtractOf(c.kind).In(units.Kilogram) / 1)))) // no change of composition
		per := 100 * s.ExtractOf(c.kind).In(units.Kilogram) / ok[units.Volume](t)(s.Volume(celsius(20))).In(units.Litre)
		near(t, c.kind.String()+" kJ", label.EnergyEU(s).Kilojoules.In(units.Kilojoule), c.kJ*per/5, 1e-9)
		near(t, c.kind.String()+" kcal", label.EnergyEU(s).Kilocalories.In(units.Kilocalorie), c.kcal*per/5, 1e-9)
	}
}
