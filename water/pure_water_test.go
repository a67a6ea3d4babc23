package water

import (
	"testing"

	"example.org/zymase/units"
)

func TestDistilled(t *testing.T) {
	p, err := Distilled(celsius(25))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "pH in air", p.ph, 5.60, 0.01)
	if _, err := Distilled(celsius(91)); err == nil {
		t.Error("hot")
	}
}

// Permeate keeps the CO2 of its feed: lower pH by about log10 of the share of
// bicarbonate that passes.
func TestPermeate(t *testing.T) {
	p := reports[0].equilibrium(t, 20).Water()
	q, err := p.Permeate(units.Percent.Of(97))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "calcium", q.ion(Calcium), 1.8, 1e-9)
	near(t, "alkalinity", q.Alkalinity().In(units.MilligramPerLitreCaCO3), 4.32, 1e-9)
	near(t, "pH", q.ph, 7.5-1.523+0.03, 0.03)
	all, err := p.Permeate(units.Share{})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "no membrane", all.ph, 7.5, 1e-9)
	none, err := p.Permeate(units.Percent.Of(100))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "carbonic acid alone", none.ph, 5.05, 0.1)
	if _, err := reports[0].profile(t, 20).Permeate(units.Percent.Of(97)); err == nil {
		t.Error("a feed of unknown pH")
	}
}
