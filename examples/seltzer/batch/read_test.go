package batch

import (
	"testing"

	"example.org/zymase/units"
)

// A liquid with a pH as read shows that pH, and its charge still closes; half of its volume has
// half of everything; diammonium phosphate is 21.21 % nitrogen, by hand.
func TestAsRead(t *testing.T) {
	place := units.StandardAtmosphere.Of(1)
	s := after(wash(), Step{Kind: Ferment, Share: units.Percent.Of(40), Pressure: place})
	for _, ph := range []float64{2.9, 3.4, 4.4, 5.2} {
		read := must(s.WithPH(ph, place))
		near(t, "pH", must(read.PH()), ph, 0.03)
		a := read.Amounts()
		was := s.Amounts()
		near(t, "charge", a.Element(Charge), was.Element(Charge), 1e-9)
	}
	half := must(s.OfVolume(litres(must(s.Volume(at20)).In(units.Litre) / 2)))
	near(t, "half the mass", half.Mass().In(units.Gram), s.Mass().In(units.Gram)/2, 1e-9)
	near(t, "the same gravity", must(half.Gravity()).SG(), must(s.Gravity()).SG(), 1e-12)
	if _, err := s.WithPH(1, place); err == nil {
		t.Error("pH 1")
	}
	if _, err := s.OfVolume(units.Volume{}); err == nil {
		t.Error("no volume")
	}
	if _, err := (State{}).OfVolume(units.Litre.Of(1)); err == nil {
		t.Error("a litre of nothing")
	}
}

func TestYeastNitrogenLeft(t *testing.T) {
	s := wash()
	v := must(s.Volume(at20)).In(units.Litre)
	near(t, "nitrogen", must(s.YeastNitrogenLeft()).In(units.MilligramPerLitre), 0.2121*18000/v, 0.5)
}
