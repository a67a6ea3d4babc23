package mash

import (
	"errors"
	"strings"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Magnesium by hand where it weighs: 243.05 mg/L are 20.00 mEq/L: /7 × 3 L = 8.571 mEq to 30 mEq/pH,
// 0.286 (Kolbach's divisor).
func TestMuchMagnesiumByHand(t *testing.T) {
	e, err := Mash{[]Malt{malt(1, 5.74, 30)}, liquor(t, 0, 0, 243.05), litres(3)}.PH()
	if err != nil {
		t.Fatal(err)
	}
	near(t, "magnesium", e.Value, 5.74-0.2857, 0.003)
}

// What Mash.PH and the doses say that they take, at its ends and a little beyond: the refusal names
// the quantity.
func TestRangesAtTheirEnds(t *testing.T) {
	mash := func(mass, ph, buffer, perKilogram, alkalinity float64) Mash {
		return Mash{[]Malt{malt(mass, ph, buffer)}, liquor(t, alkalinity, 0, 0), litres(mass * perKilogram)}
	}
	for _, c := range []struct {
		what    string
		m       Mash
		refused string // empty: taken
	}{
		{"a gram", mash(0.001, 5.7, 30, 3, 0), ""},
		{"less than a gram", mash(0.00099, 5.7, 30, 3, 0), "mass of malt"},
		{"100 t", mash(100_000, 5.7, 30, 3, 0), ""},
		{"more than 100 t", mash(100_100, 5.7, 30, 3, 0), "mass of malt"},
		{"a malt of pH 3.55 in a mash below 4", mash(1, 3.55, 30, 3, 0), "pH of the mash"},
		{"a malt of pH 3.45", mash(1, 3.45, 30, 3, 0), "pH in distilled water"},
		{"a malt of pH 7.1", mash(1, 7.1, 30, 3, 0), "pH in distilled water"},
		{"a malt of pH 6.99", mash(1, 6.99, 30, 3, 0), ""},
		{"little buffering", mash(1, 5.7, 5, 3, 0), ""},
		{"less", mash(1, 5.7, 4.9, 3, 0), "buffering of malt"},
		{"much buffering", mash(1, 5.7, 150, 3, 0), ""},
		{"more", mash(1, 5.7, 150.5, 3, 0), "buffering of malt"},
		{"a litre to the kilogram", mash(1, 5.7, 30, 1, 0), ""},
		{"less water", mash(1, 5.7, 30, 0.99, 0), "water to the malt"},
		{"20 L to the kilogram", mash(1, 5.7, 30, 20, 0), ""},
		{"more water", mash(1, 5.7, 30, 20.1, 0), "water to the malt"},
		{"a sour mash", mash(1, 4.1, 30, 3, 0), ""},
		{"too sour", mash(1, 3.95, 30, 3, 0), "pH of the mash"},
		{"too flat", mash(1, 6.95, 30, 3, 100.086), "pH of the mash"}, // 6 mEq to 30: 7.15
	} {
		_, err := c.m.PH()
		var e *units.RangeError
		if taken := err == nil; taken != (c.refused == "") || !taken && (!errors.As(err, &e) || !strings.Contains(e.Quantity, c.refused)) {
			t.Errorf("%s: %v, want %q", c.what, err, c.refused)
		}
	}
	m := mash(1, 5.7, 30, 3, 50)
	for _, ph := range []float64{3.95, 7.05} {
		if _, err := m.WithAcid(water.LacticAcid, ph); err == nil {
			t.Errorf("acid to pH %v", ph)
		}
		if _, err := m.WithBase(material.BakingSoda(), ph); err == nil {
			t.Errorf("base to pH %v", ph)
		}
	}
	if _, err := m.WithBase(material.Gypsum(), 6); err == nil {
		t.Error("gypsum brings no alkalinity")
	}
}

// Doses by hand, all of a litre's alkalinity lost as CO2: 0.2 pH of a kilogram that takes 30 mEq to a pH are
// 6 mEq. Hydrochloric acid is 36.46 mg to an equivalent, sodium hydroxide 40.00 mg.
func TestDosesByHand(t *testing.T) {
	m := Mash{[]Malt{malt(1, 5.5, 30)}, liquor(t, 0, 0, 0), litres(3)}
	a, err := m.WithAcid(water.HydrochloricAcid, 5.3)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "hydrochloric acid, g", a.Mass.In(units.Gram), 6*0.03646, 0.002)
	b, err := m.WithBase(material.SodiumHydroxide(), 5.7)
	if err != nil {
		t.Fatal(err)
	}
	near(t, "sodium hydroxide, g", b.Mass.In(units.Gram), 6*0.0400, 0.002)
}

// The parts of the band by hand: calcium between a half and a seventh of its equivalents, magnesium
// between a quarter and a fourteenth, against Kolbach's 1/3.5 and 1/7; 3 L to 30 mEq/pH.
func TestPartsOfTheBandByHand(t *testing.T) {
	for _, c := range []struct {
		name               string
		calcium, magnesium float64
		low, high          float64
	}{
		{"calcium with malt phosphate", 100, 0, 4.990 * 3 / 30 * (1/3.5 - 1./7), 4.990 * 3 / 30 * (1/3.5 - 1./2)},
		{"magnesium with malt phosphate", 0, 243.05, 2 * (1./7 - 1./14), 2 * (1./7 - 1./4)},
	} {
		e, err := Mash{[]Malt{malt(1, 5.74, 30)}, liquor(t, 0, c.calcium, c.magnesium), litres(3)}.PH()
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range e.Parts {
			if p.Name == c.name {
				near(t, c.name+", low", p.Low, c.low, 0.002)
				near(t, c.name+", high", p.High, c.high, 0.002)
				c.name = ""
			}
		}
		if c.name != "" {
			t.Errorf("no part %s in %v", c.name, e.Parts)
		}
	}
}
