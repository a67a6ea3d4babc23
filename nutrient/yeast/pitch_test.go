package yeast

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/zymase/internal/check"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// 1 million cells a millilitre and degree: 20 L at 12 °P need 240 billion.
func TestCellsToPitch(t *testing.T) {
	const source = "Briggs et al. 2004, recalled from memory"
	usual := UsualRate()
	check.Near(t, "usual", usual.Value.In(units.MillionPerMillilitrePlato), 1, 0, source)
	check.Near(t, "low", usual.Low.In(units.MillionPerMillilitrePlato), 0.5, 0, source)
	check.Near(t, "high", usual.High.In(units.MillionPerMillilitrePlato), 1.5, 0, source)
	c := check.Must(CellsToPitch(usual.Value, units.DegreePlato.Of(12), units.Litre.Of(20)))
	check.Near(t, "cells", c.In(units.BillionCells), 240, 1e-9, "by hand")
	if c.String() != "240 billion cells" {
		t.Error(c)
	}
	_, err := CellsToPitch(usual.Value, units.DegreePlato.Of(12), units.Volume{})
	check.Refused(t, err, "volume", 1e-3, amount.MostVolume)
	check.Must(CellsToPitch(usual.Value, units.DegreePlato.Of(12), units.Millilitre.Of(1.001)))
	_, err = CellsToPitch(usual.Value, units.DegreePlato.Of(12), units.Litre.Of(1.0005e9))
	check.Refused(t, err, "volume", 1e-3, 1e9)
	_, err = CellsToPitch(usual.Value, units.DegreePlato.Of(61), units.Litre.Of(1))
	check.Refused(t, err, "extract", 0, 60)
	_, err = CellsToPitch(usual.Value, units.DegreePlato.Of(-1), units.Litre.Of(1))
	check.Refused(t, err, "extract", 0, 60)
	for _, x := range []checked.Number{0.04, 21, checked.Number(math.NaN())} {
		_, err = CellsToPitch(units.MillionPerMillilitrePlato.Of(x), units.DegreePlato.Of(12), units.Litre.Of(1))
		check.Refused(t, err, "pitch rate", 0.05, 20)
	}
	for _, x := range []checked.Number{0.05, 20} {
		check.Must(CellsToPitch(units.MillionPerMillilitrePlato.Of(x), units.DegreePlato.Of(12), units.Litre.Of(1)))
	}
}

// Importance of rehydrating wine yeast: 3–4e6 and 100–150e6 cells/mL, so many billion in a litre.
func TestWinePitch(t *testing.T) {
	pitch, peak := WinePitch()
	check.Near(t, "pitch", inBillions(pitch.Value), 3.5, 0, pitch.Evidence.Source)
	check.Near(t, "pitch low", inBillions(pitch.Low), 3, 0, pitch.Evidence.Source)
	check.Near(t, "pitch high", inBillions(pitch.High), 4, 0, pitch.Evidence.Source)
	check.Near(t, "peak", inBillions(peak.Value), 125, 0, peak.Evidence.Source)
	check.Near(t, "peak low", inBillions(peak.Low), 100, 0, peak.Evidence.Source)
	check.Near(t, "peak high", inBillions(peak.High), 150, 0, peak.Evidence.Source)
}

// Losses of 4 % a year at 4 °C and 20 % at 20 °C (recalled from memory).
func TestDryYeast(t *testing.T) {
	const year = 365 * 24 * time.Hour
	for _, c := range []struct{ temperature, want float64 }{{4, 9.6}, {20, 8}} {
		p := check.Must(DryPack(units.Cells{}, check.Must(units.Celsius.Try(c.temperature))))
		check.Near(t, "alive", check.Must(p.Alive(year)).In(units.BillionCells), c.want, 1e-9, "recalled from memory")
	}
	p := check.Must(DryPack(units.BillionCells.Of(8), units.Celsius.Of(4)))
	need := check.Must(p.Need(units.BillionCells.Of(480), 0))
	check.Near(t, "dry yeast", need.Mass.Value.In(units.Gram), 60, 1e-9, "by hand")
	check.Near(t, "low", need.Mass.Low.In(units.Gram), 60, 1e-9, "by hand")
	check.Near(t, "high", need.Mass.High.In(units.Gram), 60, 1e-9, "by hand")
	if len(need.Cautions) != 0 || need.Packs.Value != 0 || p.Form() != "dry" {
		t.Errorf("%+v", need)
	}
	p = check.Must(DryPack(units.Cells{}, units.Celsius.Of(4)))
	need = check.Must(p.Need(units.BillionCells.Of(600), 0))
	check.Near(t, "usual", need.Mass.Value.In(units.Gram), 60, 1e-9, "recalled from memory")
	check.Near(t, "low", need.Mass.Low.In(units.Gram), 24, 1e-9, "25 billion a gram, recalled from memory")
	check.Near(t, "high", need.Mass.High.In(units.Gram), 120, 1e-9, "5 billion a gram, recalled from memory")
	if len(need.Cautions) != 1 || need.Mass.Evidence.Grade != evidence.Recalled {
		t.Errorf("%+v", need)
	}
	_, err := DryPack(units.BillionCells.Of(51), units.Celsius.Of(4))
	check.Refused(t, err, "cells in a gram", 1, 50)
	_, err = DryPack(units.BillionCells.Of(0.9), units.Celsius.Of(4))
	check.Refused(t, err, "cells in a gram", 1, 50)
	_, err = DryPack(units.Cells{}, units.Celsius.Of(31))
	check.Refused(t, err, "storage temperature", -25, 30)
	_, err = DryPack(units.Cells{}, units.Celsius.Of(-26))
	check.Refused(t, err, "storage temperature", -25, 30)
}

// 0.7 % a day: common practice, no source. In 30 days a fifth is lost, in 120 days more
// than half.
func TestLiquidYeast(t *testing.T) {
	const day = 24 * time.Hour
	p := check.Must(LiquidPack(units.Cells{}))
	check.Near(t, "alive", check.Must(p.Alive(30*day)).In(units.BillionCells), 100*math.Exp(-0.21), 1e-9, "common practice, no source")
	need := check.Must(p.Need(units.BillionCells.Of(240), 0))
	check.Near(t, "packs", need.Packs.Value, 2.4, 1e-12, "by hand")
	check.Near(t, "low", need.Packs.Low, 1.2, 1e-12, "by hand")
	check.Near(t, "high", need.Packs.High, 4.8, 1e-12, "by hand")
	if !need.Mass.Value.IsZero() || len(need.Cautions) != 1 || p.Form() != "liquid" || p.Evidence().Grade != evidence.CommonPractice {
		t.Errorf("%+v", need)
	}
	if old := check.Must(p.Need(units.Cells{}, 98*day)); len(old.Cautions) != 1 {
		t.Errorf("%+v", old) // 50.4 % live
	}
	if old := check.Must(p.Need(units.Cells{}, 100*day)); len(old.Cautions) != 2 {
		t.Errorf("%+v", old) // 49.7 % live
	}
	given := check.Must(LiquidPack(units.BillionCells.Of(200)))
	if n := check.Must(given.Need(units.BillionCells.Of(100), 0)); n.Packs.Value != 0.5 || n.Packs.Low != 0.5 || n.Packs.High != 0.5 ||
		n.Viable != amount.Share(1) {
		t.Errorf("%+v", n)
	}
	_, err := LiquidPack(units.BillionCells.Of(0.5))
	check.Refused(t, err, "cells in a pack", 1, 1e5)
	_, err = p.Alive(-day)
	check.Refused(t, err, "age", 0, 3650)
	_, err = p.Need(units.Cells{}, 3651*day)
	check.Refused(t, err, "age", 0, 3650)
	_, err = Pack{}.Need(units.Cells{}, 0)
	check.Refused(t, err, "cells in the pack", 1, 1e5)
	for _, n := range []checked.Number{-1, 1.01e12} {
		_, err = p.Need(units.BillionCells.Of(n), 0)
		check.Refused(t, err, "cells", 0, 1e12)
	}
	check.Must(p.Need(units.BillionCells.Of(1e12), 0))
}

func TestNamesTravel(t *testing.T) {
	for k := WineYeast; k <= LagerYeast; k++ {
		check.Travels(t, k)
	}
	var k Kind
	_, unknown := Rehydrate(units.Gram.Of(10), 3, amount.Room)
	for _, err := range []error{k.UnmarshalText([]byte("cake")), second(Kind(-1).MarshalText()), unknown} {
		if e, ok := errors.AsType[*units.NameError](err); !ok || len(e.Choices) < 2 {
			t.Error(err)
		}
	}
}

func second[T any](_ T, err error) error { return err }

// A number that was not found is zero, so that nobody takes a guess for a result.
func TestNoCellsComeWithAnError(t *testing.T) {
	alive, err := check.Must(LiquidPack(units.Cells{})).Alive(-time.Hour)
	check.Nothing(t, "Pack.Alive", alive, err)
	alive, err = Pack{}.Alive(time.Hour)
	check.Nothing(t, "Pack{}.Alive", alive, err)
}
