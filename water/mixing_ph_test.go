package water

import (
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Known pH follows doses, blends and dilution as that of the closed water.
func TestPHFollows(t *testing.T) {
	a, b := reports[0].equilibrium(t, 20).Water(), reports[1].equilibrium(t, 20).Water()
	m, err := Blend(Portion{a, litres(1)}, Portion{b, litres(3)})
	if err != nil {
		t.Fatal(err)
	}
	near(t, "carbon", m.carbon, (a.carbon+3*b.carbon)/4, 1e-12)
	e, err := m.Equilibrium()
	if err != nil || e.PH() <= 7 || e.PH() >= 7.5 {
		t.Errorf("pH %v (%v)", e.PH(), err)
	}
	d, err := a.Dilute(litres(1), litres(1))
	if err != nil {
		t.Fatal(err)
	}
	near(t, "half the calcium", d.ion(Calcium), 30, 1e-9)
	near(t, "half the carbon", d.carbon, a.carbon/2, 1e-12)
	soda, err := a.Add(litres(10), material.BakingSoda().Dose(grams(10)))
	if err != nil || soda.ph <= a.ph {
		t.Errorf("pH %v (%v)", soda.ph, err)
	}
	near(t, "carbon of the soda", soda.carbon-a.carbon, 1000/84.006, 0.001)
	gyp, err := a.Add(litres(10), material.Gypsum().Dose(grams(10)))
	if err != nil || gyp.ph >= a.ph {
		t.Errorf("pH %v with gypsum (%v)", gyp.ph, err)
	}
	warm, err := a.AtTemperature(units.Celsius.Of(60))
	if err != nil || warm.ph != 0 || warm.t != 60 || warm.carbon != 0 {
		t.Errorf("%v, %v", warm, err)
	}
	if unknown, _ := Blend(Portion{a, litres(1)}, Portion{reports[1].profile(t, 20), litres(1)}); unknown.ph != 0 || unknown.carbon != 0 {
		t.Errorf("pH %v", unknown.ph)
	}
	near(t, "unreported charge", reports[3].equilibrium(t, 20).Unreported().In(units.MilliequivalentPerLitre), 7.9921-8.2346, 0.0003)
}
