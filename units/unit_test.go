package units

import (
	"math"
	"testing"
)

// Each dimension stands at its own place, its base unit first; no two units have one number, no symbol
// is there twice, and no sum or multiple of two units is a unit.
func TestUnitsHaveTheirPlaces(t *testing.T) {
	seen := map[int]bool{}
	for i, d := range dimensions {
		if d.units != (first+i)*slots || len(d.table) == 0 || len(d.table) > slots {
			t.Errorf("%s: %d units from %d on", d.name, len(d.table), d.units)
		}
		symbols := map[string]bool{}
		for k, u := range d.table {
			if symbols[u.symbol] || !(u.num > 0 && u.den > 0) {
				t.Errorf("%s: %+v", d.name, u)
			}
			symbols[u.symbol], seen[d.units+k] = true, true
		}
		if b := d.table[0]; b.num != b.den || b.offset != 0 {
			t.Errorf("%s: the first is %+v", d.name, b)
		}
	}
	for a := range seen {
		for b := range seen {
			if seen[a+b] || a+b > math.MaxUint16 {
				t.Fatalf("%d + %d is a unit", a, b)
			}
		}
	}
	if Kilogram != massUnits || Ounce.Symbol() != "oz" || PureNumber(One.Of(1)) != One.Of(1) || One != pureNumberUnits || PartPerMillion.Symbol() != "ppm" {
		t.Error("a constant is out of its place")
	}
}

// What is no unit counts as the base unit, as the comment of Unit says.
func TestPlainNumberIsNoUnit(t *testing.T) {
	m := Pound.Of(1)
	for _, u := range []Unit[mass, mass]{0, 3, 31, 1000, Kilogram * 2, Gram + Pound, Pound * 3, Kilogram + 31, math.MaxUint16} {
		if got := m.In(u); got != 0.45359237 || u.Of(0.45359237) != m || u.Symbol() != "kg" {
			t.Errorf("%d: %v %s", uint16(u), got, u)
		}
		if text, err := u.MarshalText(); err != nil || string(text) != "kg" {
			t.Errorf("%d: %s, %v", uint16(u), text, err)
		}
	}
	if q, err := Unit[mass, mass](7).Parse("2"); err != nil || q != Kilogram.Of(2) {
		t.Error(q, err)
	}
}
