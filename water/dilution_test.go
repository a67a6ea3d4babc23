package water

import (
	"testing"

	"example.org/zymase/units"
)

// From 120 to 50 mg/L: 70/120 of the blend is pure water.
func TestDilutionFor(t *testing.T) {
	p := reports[3].profile(t, 20)
	s, err := p.DilutionFor(Calcium, mgL(25))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "share", s.In(units.Percent), 75, 1e-9)
	q, _ := p.Dilute(litres(25), litres(75))
	near(t, "calcium", q.ion(Calcium), 25, 1e-9)
	if s, err := (Profile{}).DilutionFor(Calcium, mgL(0)); err != nil || !s.IsZero() {
		t.Errorf("%v, %v", s, err)
	}
	little, _ := NewProfile(celsius(20), caco3(1), Calcium.At(mgL(0.5)))
	if s, err := little.DilutionFor(Calcium, mgL(0.25)); err != nil || s.In(units.Percent) != 50 {
		t.Errorf("%v, %v", s, err)
	}
	if _, err := little.DilutionFor(Calcium, mgL(0.6)); err == nil {
		t.Error("more by dilution")
	}
	if _, err := p.DilutionFor(Calcium, mgL(101)); err == nil {
		t.Error("more by dilution")
	}
	if _, err := p.DilutionFor(Ion(99), mgL(1)); err == nil {
		t.Error("no ion")
	}
}
