package carbonation

import (
	"errors"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/dioxide"
	"example.org/zymase/units"
)

func off(got, want float64) float64 { return math.Abs(got/want - 1) }

// A Liquid is the water in a litre and the activities at the molar masses 18.015, 46.069
// and 342.297 g/mol.
func TestLiquidIsItsSolution(t *testing.T) {
	s := solutionOf(0.93, 0.02, 0.05)
	l, err := NewLiquid(s)
	if err != nil {
		t.Fatal(err)
	}
	v, _ := s.Volume(units.Celsius.Of(20))
	aw, ae := activities(0.93/18.015, 0.05/46.069, 0.02/342.297)
	if off(waterAt20-l.dry, 0.93/v.In(units.Litre)) > 1e-12 || off(1-l.wet, aw) > 1e-9 || off(l.ethanol, ae) > 1e-9 {
		t.Errorf("%+v, want %g %g", l, aw, ae)
	}
	// 998.207 kg/m³ at 20 °C: the zero value is the water of package gravity within 5e-6.
	w, _ := gravity.WaterDensity(units.Celsius.Of(20))
	if off(waterAt20, w.In(units.GramPerMillilitre)) > 5e-6 {
		t.Errorf("water %g, package gravity %v", waterAt20, w)
	}
}

// Above 40 °C the expansion carries on without a jump or a kink, at the excess over
// water whose growth from 25 to 35 °C it keeps.
func TestExpansionAbove40(t *testing.T) {
	s := solutionOf(0.9475, 0.004, 0.0363)
	e, err := newExpansion(s.Volume)
	if err != nil {
		t.Fatal(err)
	}
	at := e.litres
	if off(at(40+1e-9), at(40)) > 1e-11 {
		t.Errorf("a jump at 40 °C: %v, %v", at(40), at(40+1e-9))
	}
	over := func(a, b float64) float64 { // 1/K over water between two temperatures
		return math.Log(at(b)/at(a)*water(b)/water(a)) / (b - a)
	}
	r25, r35 := over(20, 30), over(30, 40)
	for _, c := range []float64{40.5, 45, 50, 65, 85} {
		want := r35 + (r25-r35)/-10*(c-35)
		if got := over(c-0.25, c+0.25); math.Abs(got-want) > 1e-9 {
			t.Errorf("excess at %g °C is %g, want %g", c, got, want)
		}
	}
	for c, like := range map[float64]float64{-1: 0, 0: 0, 0.5: 0.5, 39: 39} { // below 0 °C that at 0 °C
		v, _ := s.Volume(units.Celsius.Of(checked.Number(like)))
		if at(c) != v.In(units.Litre) {
			t.Errorf("at %g °C: %v L, want %v", c, at(c), v)
		}
	}
	none := errors.New("no volume")
	if _, err := newExpansion(func(units.Temperature) (v units.Volume, err error) { return v, none }); !errors.Is(err, none) {
		t.Error(err)
	}
	if v := e.scaled(2).litres(50); off(v, 2*at(50)) > 1e-15 {
		t.Errorf("scaled: %v", v)
	}
	// Without ethanol package gravity knows the density itself, up to 100 °C.
	syrup := solutionOf(0.9, 0.1, 0)
	f, err := newExpansion(syrup.Volume)
	if err != nil {
		t.Fatal(err)
	}
	v := f.litres(70)
	if w, _ := syrup.Volume(units.Celsius.Of(70)); v != w.In(units.Litre) {
		t.Errorf("syrup at 70 °C: %v, want %v", v, w)
	}
}

func TestCapacity(t *testing.T) {
	v := Vessel{Capacity: units.Litre.Of(2), ExpansionPerKelvin: units.Percent.Of(0.01)}
	for _, row := range []struct{ c, litres float64 }{{20, 2}, {60, 2.008}, {0, 1.996}} {
		if got := v.capacityAt(row.c); off(got, row.litres) > 1e-12 {
			t.Errorf("at %g °C: %v L, want %v", row.c, got, row.litres)
		}
	}
}

// The mole fraction is Henry's constant times the fugacity, in 1000/18.015 mol of water.
func TestMoleFractionIsHenry(t *testing.T) {
	at, p := units.Celsius.Of(20), units.Kilopascal.Of(500)
	k, _ := dioxide.HenryPlummerBusenberg(at)
	phi, _ := dioxide.FugacityCoefficient(at, p)
	m := k * phi * 500 / 101.325
	x, err := dioxide.MoleFraction(at, p)
	if want := m / (m + 1000/18.015); err != nil || off(x, want) > 1e-12 {
		t.Errorf("%v, want %v, %v", x, want, err)
	}
	h, _ := dioxide.HenryCarroll(at)
	y, err := dioxide.MoleFractionCarroll(at, p)
	if want := phi * 500 / h.In(units.Kilopascal); err != nil || off(y, want) > 1e-12 {
		t.Errorf("%v, want %v, %v", y, want, err)
	}
}

// Content is Henry's constant times the fugacity of what the vapours leave, in the water of
// a litre, with Krichevsky & Kasarnovsky's 32.3 cm³/mol.
func TestContentIsItsParts(t *testing.T) {
	for _, celsius := range []float64{-2, 4, 20, 60} {
		at := units.Celsius.Of(checked.Number(celsius))
		p := 1800.0
		w, _ := WaterVapourPressure(at)
		e, _ := EthanolVapourPressure(at)
		co2 := p - (1-drink.wet)*w.In(units.Kilopascal) - drink.ethanol*e.In(units.Kilopascal)
		k, _ := dioxide.HenryPlummerBusenberg(at)
		phi, _ := dioxide.FugacityCoefficient(at, units.Kilopascal.Of(checked.Number(co2)))
		poynting := math.Exp(-32.3e-3 * (p - 101.325) / (8.314462618 * (celsius + 273.15)))
		want := (waterAt20 - drink.dry) * 44.009 * k * phi * co2 / 101.325 * poynting
		c, err := drink.Content(units.Kilopascal.Of(checked.Number(p)), at)
		if err != nil || off(c.In(units.GramCO2PerLitre), want) > 1e-12 {
			t.Errorf("%g °C: %v, want %v, %v", celsius, c, want, err)
		}
	}
}

// A vessel that would be brim-full with a billionth more gas dissolved: the trial with all
// of it in the liquid has no head-space and counts as too much.
func TestSettleAtTheBrim(t *testing.T) {
	const co2 = 2.0
	swollen := 0.33 + co2/chemistry.CO2*molarVolumeDissolved
	b := contents{drink: drink, at20: 0.33, liquid: 0.33, capacity: swollen * (1 + 1e-12), co2: co2, outside: chemistry.StandardKPa, T: 293.15}.balance()
	s := b.settle()
	if s.locked || s.beyond || s.space <= 0 || math.Abs(s.inLiquid+s.inSpace-co2) > 1e-9 {
		t.Errorf("%+v", s)
	}
}
