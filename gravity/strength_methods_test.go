package gravity_test

import (
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// The sources differ by about 1 % in q, 0.1 in real extract.
func TestStrengthMethodsSpread(t *testing.T) {
	all, err := gravity.StrengthMethods(plato(12), plato(3))
	if err != nil || len(all) != 6 || all[0].Name == "" {
		t.Fatal(all, err)
	}
	for _, m := range all {
		near(t, m.Name+" RE", m.RealExtract.In(units.DegreePlato), all[0].RealExtract.In(units.DegreePlato), 0.15)
		near(t, m.Name+" A", m.ByMass.In(units.PercentMass), all[0].ByMass.In(units.PercentMass), 0.08)
		if _, err := m.Evidence.MarshalText(); err != nil || m.Evidence.Source == "" {
			t.Error(m.Name, err)
		}
	}
	if few, err := gravity.StrengthMethods(plato(22), plato(5)); err != nil || len(few) != 3 {
		t.Error(few, err)
	}
	_, err = gravity.StrengthMethods(plato(60), plato(5))
	refused(t, "spread", err, "original extract")
}
