package yeast

import (
	"errors"
	"math"
	"testing"
	"time"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// 1 million cells a millilitre and degree: 20 L at 12 °P need 240 billion.
func TestCellsToPitch(t *testing.T) {
	const source = "Briggs et al. 2004, recalled from memory"
	usual := UsualRate()
	check.Near(t, "usual", usual.Value.Million(), 1, 0, source)
	check.Near(t, "low", usual.Low.Million(), 0.5, 0, source)
	check.Near(t, "high", usual.High.Million(), 1.5, 0, source)
	c := check.Must(CellsToPitch(units.Litre.Of(20), units.DegreePlato.Of(12), usual.Value))
	check.Near(t, "cells", c.Billion(), 240, 1e-9, "by hand")
	if c.String() != "240 billion cells" {
		t.Error(c)
	}
	_, err := CellsToPitch(units.Volume{}, units.DegreePlato.Of(12), usual.Value)
	check.Refused(t, err, "volume", 1e-3, amount.MostVolume)
	check.Must(CellsToPitch(units.Millilitre.Of(1.001), units.DegreePlato.Of(12), usual.Value))
	_, err = CellsToPitch(units.Litre.Of(1.0005e9), units.DegreePlato.Of(12), usual.Value)
	check.Refused(t, err, "volume", 1e-3, 1e9)
	_, err = CellsToPitch(units.Litre.Of(1), units.DegreePlato.Of(61), usual.Value)
	check.Refused(t, err, "extract", 0, 60)
	_, err = CellsToPitch(units.Litre.Of(1), units.DegreePlato.Of(-1), usual.Value)
	check.Refused(t, err, "extract", 0, 60)
	for _, x := range []float64{0.04, 21, math.NaN()} {
		_, err = MillionPerPlato(x)
		check.Refused(t, err, "pitch rate", 0.05, 20)
	}
	check.Near(t, "rate", check.Must(MillionPerPlato(0.75)).Million(), 0.75, 0, "given")
}

// Importance of rehydrating wine yeast: 3–4e6 and 100–150e6 cells/mL.
func TestWinePitch(t *testing.T) {
	pitch, peak := WinePitch()
	check.Near(t, "pitch", pitch.Value, 3.5, 0, pitch.Evidence.Source)
	check.Near(t, "pitch low", pitch.Low, 3, 0, pitch.Evidence.Source)
	check.Near(t, "pitch high", pitch.High, 4, 0, pitch.Evidence.Source)
	check.Near(t, "peak", peak.Value, 125, 0, peak.Evidence.Source)
	check.Near(t, "peak low", peak.Low, 100, 0, peak.Evidence.Source)
	check.Near(t, "peak high", peak.High, 150, 0, peak.Evidence.Source)
}

// Losses of 4 % a year at 4 °C and 20 % at 20 °C (recalled from memory).
func TestDryYeast(t *testing.T) {
	const year = 365 * 24 * time.Hour
	for _, c := range []struct{ temperature, want float64 }{{4, 9.6}, {20, 8}} {
		p := check.Must(DryPack(Cells{}, check.Must(units.Celsius.Try(c.temperature))))
		check.Near(t, "alive", check.Must(p.Alive(year)).Billion(), c.want, 1e-9, "recalled from memory")
	}
	p := check.Must(DryPack(check.Must(Billion(8)), units.Celsius.Of(4)))
	need := check.Must(p.Need(check.Must(Billion(480)), 0))
	check.Near(t, "dry yeast", need.Mass.In(units.Gram), 60, 1e-9, "by hand")
	check.Near(t, "low", need.Low, 60, 1e-9, "by hand")
	check.Near(t, "high", need.High, 60, 1e-9, "by hand")
	if len(need.Cautions) != 0 || need.Packs != 0 || p.Form() != DryYeast {
		t.Errorf("%+v", need)
	}
	p = check.Must(DryPack(Cells{}, units.Celsius.Of(4)))
	need = check.Must(p.Need(check.Must(Billion(600)), 0))
	check.Near(t, "usual", need.Mass.In(units.Gram), 60, 1e-9, "recalled from memory")
	check.Near(t, "low", need.Low, 24, 1e-9, "25 billion a gram, recalled from memory")
	check.Near(t, "high", need.High, 120, 1e-9, "5 billion a gram, recalled from memory")
	if len(need.Cautions) != 1 || need.Evidence.Grade != evidence.Recalled {
		t.Errorf("%+v", need)
	}
	_, err := DryPack(check.Must(Billion(51)), units.Celsius.Of(4))
	check.Refused(t, err, "cells in a gram", 1, 50)
	_, err = DryPack(check.Must(Billion(0.9)), units.Celsius.Of(4))
	check.Refused(t, err, "cells in a gram", 1, 50)
	_, err = DryPack(Cells{}, units.Celsius.Of(31))
	check.Refused(t, err, "storage temperature", -25, 30)
	_, err = DryPack(Cells{}, units.Celsius.Of(-26))
	check.Refused(t, err, "storage temperature", -25, 30)
}

// 0.7 % a day: common practice, no source. In 30 days a fifth is lost, in 120 days more
// than half.
func TestLiquidYeast(t *testing.T) {
	const day = 24 * time.Hour
	p := check.Must(LiquidPack(Cells{}))
	check.Near(t, "alive", check.Must(p.Alive(30*day)).Billion(), 100*math.Exp(-0.21), 1e-9, "common practice, no source")
	need := check.Must(p.Need(check.Must(Billion(240)), 0))
	check.Near(t, "packs", need.Packs, 2.4, 1e-12, "by hand")
	check.Near(t, "low", need.Low, 1.2, 1e-12, "by hand")
	check.Near(t, "high", need.High, 4.8, 1e-12, "by hand")
	if !need.Mass.IsZero() || len(need.Cautions) != 1 || p.Form() != LiquidYeast || p.Evidence().Grade != evidence.CommonPractice {
		t.Errorf("%+v", need)
	}
	if old := check.Must(p.Need(Cells{}, 98*day)); len(old.Cautions) != 1 {
		t.Errorf("%+v", old) // 50.4 % live
	}
	if old := check.Must(p.Need(Cells{}, 100*day)); len(old.Cautions) != 2 {
		t.Errorf("%+v", old) // 49.7 % live
	}
	given := check.Must(LiquidPack(check.Must(Billion(200))))
	if n := check.Must(given.Need(check.Must(Billion(100)), 0)); n.Packs != 0.5 || n.Low != 0.5 || n.High != 0.5 || n.Viable != amount.Share(1) {
		t.Errorf("%+v", n)
	}
	_, err := LiquidPack(check.Must(Billion(0.5)))
	check.Refused(t, err, "cells in a pack", 1, 1e5)
	_, err = p.Alive(-day)
	check.Refused(t, err, "age", 0, 3650)
	_, err = p.Need(Cells{}, 3651*day)
	check.Refused(t, err, "age", 0, 3650)
	_, err = Pack{}.Need(Cells{}, 0)
	check.Refused(t, err, "cells in the pack", 1, 1e5)
	_, err = Billion(math.Inf(1))
	check.Refused(t, err, "cells", 0, 1e12)
}

func TestNamesTravel(t *testing.T) {
	check.Travels(t, DryYeast)
	check.Travels(t, LiquidYeast)
	for k := WineYeast; k <= LagerYeast; k++ {
		check.Travels(t, k)
	}
	var f PackForm
	var k Kind
	_, unknown := Rehydrate(units.Gram.Of(10), 3, amount.Room)
	for _, err := range []error{f.UnmarshalText([]byte("cake")), k.UnmarshalText([]byte("cake")), second(PackForm(2).MarshalText()), second(Kind(-1).MarshalText()), unknown} {
		if e, ok := errors.AsType[*units.NameError](err); !ok || len(e.Choices) < 2 {
			t.Error(err)
		}
	}
}

func second[T any](_ T, err error) error { return err }

func TestCellsAddUp(t *testing.T) {
	sum := Cells{1}.Plus(Cells{2})
	check.Near(t, "sum", sum.Billion(), 3, 0, "by hand")
}

// A number that was not found is zero, so that nobody takes a guess for a result.
func TestNoCellsComeWithAnError(t *testing.T) {
	alive, err := check.Must(LiquidPack(Cells{})).Alive(-time.Hour)
	check.Nothing(t, "Pack.Alive", alive, err)
	alive, err = Pack{}.Alive(time.Hour)
	check.Nothing(t, "Pack{}.Alive", alive, err)
}

func TestCellsAndRatesTravel(t *testing.T) {
	for _, n := range []float64{0, 612.5, 1.0 / 3} {
		check.Travels(t, check.Must(Billion(n)))
	}
	check.Travels(t, check.Must(MillionPerPlato(0.75)))
	check.Travels(t, UsualRate())
	for _, text := range []string{"", "600", "600 million cells", "many billion cells", "NaN billion cells", "-1 billion cells"} {
		c := Cells{7}
		if err := c.UnmarshalText([]byte(text)); err == nil || c != (Cells{7}) {
			t.Errorf("%q: %v, %v", text, c, err)
		}
		r := PitchRate{1}
		if err := r.UnmarshalText([]byte(text)); err == nil || r != (PitchRate{1}) {
			t.Errorf("%q: %v, %v", text, r, err)
		}
	}
	var r PitchRate
	if err := r.UnmarshalText([]byte("0.01 million cells/mL/°P")); err == nil {
		t.Error(r)
	}
}
