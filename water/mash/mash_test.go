package mash

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"pgregory.net/rapid"
)

func kg(v float64) units.Mass       { return units.Kilogram.Of(checked.Number(v)) }
func litres(v float64) units.Volume { return units.Litre.Of(checked.Number(v)) }

func liquor(t rapid.TB, alkalinity float64, calcium, magnesium float64) water.Profile {
	t.Helper()
	p, err := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(checked.Number(alkalinity)),
		water.Calcium.At(units.MilligramPerLitre.Of(checked.Number(calcium))), water.Magnesium.At(units.MilligramPerLitre.Of(checked.Number(magnesium))))
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func near(t rapid.TB, what string, got, want, within float64) {
	t.Helper()
	if !(math.Abs(got-want) <= within) {
		t.Errorf("%s: %v, want %v within %v", what, got, want, within)
	}
}

func malt(mass, ph, buffer float64) Malt {
	return Malt{Name: "malt", Mass: kg(mass), PH: about(ph, 0), BufferPerKilogram: amounts(about(buffer, 0))}
}

// about is a figure whose band is half on either side.
func about(value, half float64) figure { return band(value, value-half, value+half) }

// By hand, in distilled water and in liquors of 3 L to the kilogram.
func TestPHByHand(t *testing.T) {
	for _, r := range []struct {
		name                          string
		malts                         []Malt
		alkalinity, calcium, magnesum float64
		want, within                  float64
	}{
		{"one malt in distilled water has its own pH", []Malt{malt(1, 5.72, 30)}, 0, 0, 0, 5.72, 0.001},
		// (4 × 30 × 5.7 + 1 × 60 × 4.5)/(4 × 30 + 1 × 60) = 5.30
		{"two malts meet at the mean weighed by buffering", []Malt{malt(4, 5.7, 30), malt(1, 4.5, 60)}, 0, 0, 0, 5.30, 0.001},
		// 100.09 mg/L as CaCO3 is 2.000 mEq/L: 6.00 mEq to 30 mEq/pH, 0.200
		{"alkalinity", []Malt{malt(1, 5.5, 30)}, 100.086, 0, 0, 5.700, 0.002},
		// 100 mg/L of calcium is 4.990 mEq/L: /3.5 × 3 L = 4.277 mEq to 30 mEq/pH, 0.143
		{"calcium", []Malt{malt(1, 5.74, 30)}, 0, 100, 0, 5.597, 0.002},
		// 24.305 mg/L of magnesium is 2.000 mEq/L: /7 × 3 L = 0.857 mEq, 0.029
		{"magnesium", []Malt{malt(1, 5.74, 30)}, 0, 0, 24.305, 5.711, 0.002},
	} {
		total := 0.0
		for _, m := range r.malts {
			total += m.Mass.In(units.Kilogram)
		}
		e, err := Mash{r.malts, liquor(t, r.alkalinity, r.calcium, r.magnesum), litres(3 * total)}.PH()
		if err != nil {
			t.Fatal(err)
		}
		near(t, r.name, e.Value, r.want, r.within)
		if r.alkalinity == 0 && r.calcium == 0 && r.magnesum == 0 && e.High-e.Low > 1e-6 {
			t.Errorf("%s: %v has a band without anything unknown", r.name, e)
		}
	}
}

// The band by hand: pH of the malt 5.72 ± 0.1, buffering 30 (20 to 45), 3 L of 2 mEq/L: 5.92. The pH moves it
// by 0.1 each way; the buffering to 6/20 and 6/45 instead of 6/30: +0.1 and −0.0667; CO2 kept (at pH 5.92 and 20 °C,
// pK 6.38 less 0.02 of activity, 26 % is still bicarbonate: 1.6 mEq of the 6) by −0.05 or so. Low 5.92 −
// √(0.01 + 0.0044 + 0.0025), high 5.92 + √(0.01 + 0.01).
func TestBandByHand(t *testing.T) {
	m := Mash{[]Malt{{Name: "malt", Mass: kg(1), PH: about(5.72, 0.1), BufferPerKilogram: amounts(band(30, 20, 45))}}, liquor(t, 100.086, 0, 0), litres(3)}
	e, err := m.PH()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "value", e.Value, 5.92, 0.003)
	near(t, "low", e.Low, 5.79, 0.006)
	near(t, "high", e.High, 6.061, 0.006)
	if len(e.Parts) != 5 || e.Parts[4].Name != "CO2 that stays in the mash" || e.Parts[4].Low != 0 || e.Parts[4].High > -0.03 {
		t.Errorf("%+v", e.Parts)
	}
}

// A dose weighed into the liquor brings the mash to the pH, its band holds it, and what is known
// better has a narrower band.
func TestDoses(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		class := rapid.SampledFrom([]Class{Pale, Pilsner}).Draw(t, "base")
		m := Mash{[]Malt{class.Malt(kg(rapid.Float64Range(3, 6).Draw(t, "base mass")))},
			liquor(t, rapid.Float64Range(0, 200).Draw(t, "alkalinity"), rapid.Float64Range(0, 120).Draw(t, "calcium"),
				rapid.Float64Range(0, 30).Draw(t, "magnesium")), litres(15)}
		if rapid.Bool().Draw(t, "dark") {
			m.Malts = append(m.Malts, rapid.SampledFrom(Classes()[2:]).Draw(t, "class").Malt(kg(rapid.Float64Range(0.1, 0.5).Draw(t, "dark mass"))))
		}
		e, err := m.PH()
		if err != nil {
			t.Fatal(err)
		}
		if e.Low > e.Value || e.High < e.Value {
			t.Fatalf("%v", e)
		}
		known := m
		known.Malts = nil
		for _, x := range m.Malts {
			x.PH, x.BufferPerKilogram = about(x.PH.Value, 0.02), amounts(about(inMillimoles(x.BufferPerKilogram).Value, 3))
			known.Malts = append(known.Malts, x)
		}
		if k, err := known.PH(); err != nil || k.High-k.Low > e.High-e.Low || math.Abs(k.Value-e.Value) > 1e-6 {
			t.Fatalf("%v of known malts, %v of classes: %v", k, e, err)
		}
		aim := e.Value - rapid.Float64Range(0, 0.4).Draw(t, "lower")
		var d Adjustment
		if rapid.Bool().Draw(t, "base") {
			aim = e.Value + rapid.Float64Range(0, 0.4).Draw(t, "higher")
			d, err = m.WithBase(rapid.SampledFrom([]material.Material{material.BakingSoda(), material.SlakedLime()}).Draw(t, "salt"), aim)
		} else {
			d, err = m.WithAcid(rapid.SampledFrom([]water.Acid{water.LacticAcid, water.PhosphoricAcid, water.SulfuricAcid}).Draw(t, "acid"), aim)
		}
		if r, far := errors.AsType[*units.RangeError](err); far && r.Quantity == "dose" {
			return // an end of the band of the malts takes more than 200 mmol in a litre
		}
		if err != nil {
			t.Fatal(err)
		}
		after, err := Mash{m.Malts, d.Water, m.Volume}.PH()
		if err != nil {
			t.Fatal(err)
		}
		near(t, "pH after the dose", after.Value, aim, 1e-6)
		g := func(x units.Mass) float64 { return x.In(units.Gram) }
		if g(d.Low) > g(d.Mass) || g(d.High) < g(d.Mass) || !d.Cautions.Has(MeasurePH) {
			t.Errorf("%+v", d)
		}
	})
}

// More alkalinity is a higher pH, more calcium a lower one, a thicker mash nearer to its malt.
func TestMonotony(t *testing.T) {
	ph := func(alkalinity, calcium, l float64) float64 {
		e, err := Mash{[]Malt{Pale.Malt(kg(1))}, liquor(t, alkalinity, calcium, 0), litres(l)}.PH()
		if err != nil {
			t.Fatal(err)
		}
		return e.Value
	}
	if !(ph(200, 0, 3) > ph(100, 0, 3) && ph(100, 100, 3) < ph(100, 0, 3) && ph(100, 0, 2) < ph(100, 0, 4)) {
		t.Error("not monotone")
	}
}

// Kolbach: 0.3 pH for 10 °dH (3.57 mEq/L) of residual alkalinity (recalled from memory).
func TestRivals(t *testing.T) {
	for _, r := range []struct{ alkalinity, calcium, want float64 }{
		{3.57 * 50.043, 0, 5.72 + 0.3},
		{0, 3.5 * 3.57 * 20.039, 5.72 - 0.3}, // as much the other way, by calcium
	} {
		list, err := Mash{[]Malt{Pale.Malt(kg(4))}, liquor(t, r.alkalinity, r.calcium, 0), litres(12)}.Rivals()
		if err != nil || len(list) != 3 {
			t.Fatal(list, err)
		}
		near(t, "Kolbach", list[1].PH.Value, r.want, 0.001)
		near(t, "low", list[1].PH.Value-list[1].PH.Low, math.Hypot(0.12, map[bool]float64{true: 0.15, false: 0.3}[r.calcium == 0]), 0.001)
		near(t, "high", list[1].PH.High-list[1].PH.Value, math.Hypot(0.08, map[bool]float64{true: 0.3, false: 0.15}[r.calcium == 0]), 0.001)
		for k, v := range list {
			if v.Known != (k < 2) || v.Method == "" || v.PH.Evidence.Source == "" {
				t.Errorf("%+v", v)
			}
		}
	}
}

func TestRefusals(t *testing.T) {
	good := Mash{[]Malt{Pale.Malt(kg(4))}, liquor(t, 100, 50, 10), litres(12)}
	with := func(change func(m *Mash)) Mash {
		m := good
		m.Malts = append([]Malt(nil), good.Malts...)
		change(&m)
		return m
	}
	one := func(_ any, err error) error { return err }
	sea, err := water.NewProfile(units.Celsius.Of(12), units.CalciumCarbonate{}, water.Sodium.At(units.GramPerLitre.Of(15)),
		water.Chloride.At(units.GramPerLitre.Of(23)))
	if err != nil {
		t.Fatal(err)
	}
	for name, err := range map[string]error{
		"no malt":      one(with(func(m *Mash) { m.Malts = nil }).PH()),
		"mass":         one(with(func(m *Mash) { m.Malts[0].Mass = units.Mass{} }).PH()),
		"pH":           one(with(func(m *Mash) { m.Malts[0].PH = about(7.1, 0) }).PH()),
		"low end":      one(with(func(m *Mash) { m.Malts[0].PH = band(5.7, 5.8, 5.9) }).PH()),
		"high end":     one(with(func(m *Mash) { m.Malts[0].PH = band(5.7, 5.6, 5.65) }).PH()),
		"buffer":       one(with(func(m *Mash) { m.Malts[0].BufferPerKilogram = amounts(about(4, 0)) }).PH()),
		"no class":     one(with(func(m *Mash) { m.Malts[0] = Class(9).Malt(kg(1)) }).PH()),
		"thick":        one(with(func(m *Mash) { m.Volume = litres(3) }).PH()),
		"thin":         one(with(func(m *Mash) { m.Volume = litres(90) }).PH()),
		"too high":     one(with(func(m *Mash) { m.Water = liquor(t, 1000, 0, 0) }).PH()),
		"too low":      one(with(func(m *Mash) { m.Malts[0].PH = about(4.0, 0); m.Water = liquor(t, 0, 500, 0) }).PH()),
		"rivals":       one(with(func(m *Mash) { m.Malts = nil }).Rivals()),
		"salty":        one(with(func(m *Mash) { m.Water = sea }).PH()),
		"salty dose":   one(with(func(m *Mash) { m.Water = sea }).WithAcid(water.LacticAcid, 5.4)),
		"rivals of it": one(with(func(m *Mash) { m.Water = sea }).Rivals()),
		"much at an end": one(with(func(m *Mash) {
			m.Malts[0].BufferPerKilogram, m.Volume = amounts(band(60, 50, 150)), litres(4)
		}).WithAcid(water.LacticAcid, 4.2)),
		"aim":          one(good.WithAcid(water.LacticAcid, 3.9)),
		"aim is up":    one(good.WithAcid(water.LacticAcid, 6.5)),
		"aim is down":  one(good.WithBase(material.BakingSoda(), 5.0)),
		"no base":      one(good.WithBase(material.Gypsum(), 6)),
		"no acid":      one(good.WithAcid(99, 5.4)),
		"dose of none": one(with(func(m *Mash) { m.Malts = nil }).WithAcid(water.LacticAcid, 5.4)),
		"too much":     one(with(func(m *Mash) { m.Malts[0].BufferPerKilogram = amounts(about(150, 0)); m.Volume = litres(4) }).WithAcid(water.LacticAcid, 4.0)),
	} {
		var re *units.RangeError
		var ne *units.NameError
		if !errors.As(err, &re) && !errors.As(err, &ne) {
			t.Errorf("%s: %v", name, err)
		}
	}
	if d, err := good.WithBase(material.Chalk(), 6.2); err != nil || !d.Cautions.Has(slow) {
		t.Error(d, err)
	}
}

func FuzzClass(f *testing.F) {
	f.Add("pale malt")
	f.Add(" Black malt")
	f.Add("rye")
	f.Fuzz(func(t *testing.T, text string) {
		var v Class
		if v.UnmarshalText([]byte(text)) != nil {
			return
		}
		back, err := v.MarshalText()
		var w Class
		if err != nil || w.UnmarshalText(back) != nil || w != v || string(back) != v.String() {
			t.Errorf("%q reads as %v, writes %q", text, v, back)
		}
	})
}
