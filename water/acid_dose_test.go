package water

import (
	"math"
	"testing"

	"example.org/zymase/units"
)

func TestDbgAcid(t *testing.T) {
	d, a, err := reports[0].equilibrium(t, 20).Water().AcidPerLitre(HydrochloricAcid, 6, CO2Kept)
	t.Log(d, a.ph, err)
}

func BenchmarkAcidToPH(b *testing.B) {
	p := reports[0].equilibrium(b, 20).Water()
	gas := CO2LostTo(atm(math.Pow(10, -3.4)))
	b.ReportAllocs()
	for b.Loop() {
		if _, _, err := p.AcidPerLitre(PhosphoricAcid, 5.4, gas); err != nil {
			b.Fatal(err)
		}
	}
}

var _ = units.Litre
