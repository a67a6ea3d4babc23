package water

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// A water that was stored reads back as the same water, to rounding where the unit of the
// text is not that of the field.
func TestProfileAsJSON(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		p := anyProfile(t, "water")
		p.drawAcids(t)
		p.alk = rapid.Float64Range(-20, 20).Draw(t, "alkalinity")
		p.ethanol = rapid.Float64Range(0, 12).Draw(t, "strength")
		e, err := p.Under(atm(rapid.Float64Range(1e-4, 1).Draw(t, "atm")))
		if err != nil {
			t.Fatal(err)
		}
		for _, p := range []Profile{p, e.Water()} {
			text, err := json.Marshal(p)
			if err != nil {
				t.Fatal(err)
			}
			var q Profile
			if err := json.Unmarshal(text, &q); err != nil {
				t.Fatalf("%s: %v", text, err)
			}
			same := func(what string, a, b float64) { near(t, what, a, b, 1e-14*math.Abs(b)) }
			for i := range p.mg {
				same(Ion(i).Name(), q.mg[i], p.mg[i])
			}
			same("alkalinity", q.alk, p.alk)
			same("temperature", q.t, p.t)
			same("pH", q.ph, p.ph)
			same("carbon", q.carbon, p.carbon)
			same("ethanol", q.ethanol, p.ethanol)
		}
		text, err := json.Marshal(e)
		var back Equilibrium
		if err := errors.Join(err, json.Unmarshal(text, &back)); err != nil {
			t.Fatal(err)
		}
		near(t, "pH of the equilibrium", back.PH(), e.PH(), 1e-7)
		near(t, "strength", inMmolL(back.IonicStrength()), inMmolL(e.IonicStrength()), 1e-7*inMmolL(e.IonicStrength()))
	})
}

// What else has no field to see travels too, or says that it does not.
func TestValuesTravel(t *testing.T) {
	back := func(v any, into any) {
		text, err := json.Marshal(v)
		if err := errors.Join(err, json.Unmarshal(text, into)); err != nil {
			t.Errorf("%T: %v", v, err)
		}
	}
	for _, s := range SoldAcids() {
		var q material.Material
		if back(s, &q); !q.Equal(s) || q.Density() != s.Density() {
			t.Errorf("%+v is %+v", s, q)
		}
	}
	for _, c := range []CO2Loss{CO2Loss{}, CO2LostTo(AirCO2(units.Atmosphere{})), CO2LostTo(units.AbsolutePressure{})} {
		q := CO2LostTo(units.Kilopascal.Of(5))
		if back(c, &q); q != c {
			t.Errorf("%+v is %+v", c, q)
		}
	}
	for _, r := range []Residual{FreeChlorine(mgL(0.5), AsCl2), Monochloramine(mgL(2), AsItself)} {
		var q Residual
		if back(r, &q); q != r {
			t.Errorf("%+v is %+v", r, q)
		}
	}
	report := Report{Temperature: celsius(12), Readings: []ReportLine{{Nitrate, 5, AsNitrogen}}, Alkalinity: 2, AlkalinityAs: AsEquivalents, PH: 7}
	var again Report
	if back(report, &again); again.Readings[0] != report.Readings[0] || again.AlkalinityAs != AsEquivalents || again.PH != 7 {
		t.Errorf("%+v", again)
	}
	for _, v := range []any{Sodium.AtMost(mgL(10)), new(Series), Equilibrium{}} {
		if text, err := json.Marshal(v); err == nil {
			t.Errorf("%T is %s, no error", v, text)
		}
	}
	for text, quantity := range map[string]string{
		`{"temperature":"20 °C","alkalinity":"1 mEq/L","ions":{"calcium":"-1 mg/L"}}`:     "calcium",
		`{"temperature":"105.5 °C","alkalinity":"1 mEq/L"}`:                               "temperature",
		`{"temperature":"20 °C","alkalinity":"1001 mEq/L"}`:                               "alkalinity",
		`{"temperature":"20 °C","alkalinity":"1 mEq/L","pH":15}`:                          "pH",
		`{"temperature":"20 °C","alkalinity":"1 mEq/L","ethanol":"17 % vol"}`:             "ethanol",
		`{"temperature":"20 °C","alkalinity":"1 mEq/L","inorganic_carbon":"1001 mmol/L"}`: "inorganic carbon",
	} {
		var p Profile
		err := json.Unmarshal([]byte(text), &p)
		if r, ok := errors.AsType[*units.RangeError](err); (!ok || r.Quantity != quantity) && !strings.Contains(err.Error(), "-1 mg/L") || p != (Profile{}) {
			t.Errorf("%s: %v", text, err)
		}
	}
}
