package yeast

import (
	"testing"
	"time"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/units"
)

func TestRehydrate(t *testing.T) {
	const source = "supplier sheets"
	r := check.Must(Rehydrate(units.Gram.Of(40), WineYeast, units.Celsius.Of(18)))
	check.Near(t, "water", r.Water.Value.In(units.Millilitre), 400, 1e-9, source)
	check.Near(t, "least", r.Water.Low.In(units.Millilitre), 400, 1e-9, source)
	check.Near(t, "most", r.Water.High.In(units.Millilitre), 800, 1e-9, source)
	check.Near(t, "hardness", r.Hardness.Low.In(units.MilligramPerLitreCaCO3), 250, 0, source)
	check.Near(t, "hardness taken", r.Hardness.Value.In(units.MilligramPerLitreCaCO3), 250, 0, source)
	check.Near(t, "hardness, most", r.Hardness.High.In(units.MilligramPerLitreCaCO3), 500, 0, source)
	if r.Time != 20*time.Minute || r.StepPause != 5*time.Minute || len(r.Cautions) != 2 {
		t.Errorf("%+v", r)
	}
	for i, want := range []float64{27.5, 18} {
		check.Near(t, "step", r.Steps[i].In(units.Celsius), want, 1e-9, "steps of at most 10 K: common practice, no source")
	}
	if len(r.Steps) != 2 {
		t.Errorf("%v", r.Steps)
	}
	for kind, want := range map[Kind][2]float64{WineYeast: {35, 40}, AleYeast: {25, 29}, LagerYeast: {21, 25}} {
		r := check.Must(Rehydrate(units.Gram.Of(10), kind, units.Celsius.Of(20)))
		check.Near(t, kind.String()+" low", r.Temperature.Low.In(units.Celsius), want[0], 0, source)
		check.Near(t, kind.String()+" high", r.Temperature.High.In(units.Celsius), want[1], 0, source)
		check.Near(t, kind.String(), r.Temperature.Value.In(units.Celsius), (want[0]+want[1])/2, 0, source)
	}
	for k, name := range map[Kind]string{WineYeast: "wine", AleYeast: "ale", LagerYeast: "lager"} {
		if k.String() != name {
			t.Error(name)
		}
	}
	_, err := Rehydrate(units.Mass{}, WineYeast, amount.Room)
	check.Refused(t, err, "dry yeast", 0.01, 1e6)
	_, err = Rehydrate(units.Gram.Of(1), WineYeast, units.Celsius.Of(41))
	check.Refused(t, err, "temperature of the wash", 0, 40)
}
