package ferment

import (
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
)

// A tenth of a sugar wash, a fifth of a wort: common practice, no source.
func TestHeadSpaceNeed(t *testing.T) {
	h := check.Must(HeadSpaceNeed(units.Litre.Of(67), units.Litre.Of(60), false))
	check.Near(t, "wanted", h.Wanted.In(units.Litre), 6, 1e-9, "common practice, no source")
	check.Near(t, "room", h.Room.In(units.Litre), 7, 1e-9, "by hand")
	if h.BlowOff || len(h.Cautions) != 1 {
		t.Errorf("%+v", h)
	}
	h = check.Must(HeadSpaceNeed(units.Litre.Of(67), units.Litre.Of(60), true))
	check.Near(t, "wanted", h.Wanted.In(units.Litre), 12, 1e-9, "common practice, no source")
	if !h.BlowOff || len(h.Cautions) != 2 {
		t.Errorf("%+v", h)
	}
	// A fifth of 5/8 m³ is 1/8 m³: just enough.
	if h = check.Must(HeadSpaceNeed(units.CubicMetre.Of(0.75), units.CubicMetre.Of(0.625), true)); h.BlowOff || h.Room.Compare(h.Wanted) != 0 {
		t.Errorf("%+v", h)
	}
	_, err := HeadSpaceNeed(units.Litre.Of(50), units.Litre.Of(60), true)
	check.Refused(t, err, "volume", amount.LeastVolume, 50)
}
