package carbonation_test

import (
	"encoding/json"
	"errors"
	"reflect"
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

func back[T any](t *testing.T, was T) {
	t.Helper()
	text, err := json.Marshal(was)
	var is T
	if again := json.Unmarshal(text, &is); err != nil || again != nil || !reflect.DeepEqual(is, was) {
		t.Errorf("%s: %+v, %v, %v; want %+v", text, is, err, again, was)
	}
}

// Rates, lethalities and results with their cautions come back from JSON as they were.
func TestValuesTravel(t *testing.T) {
	for _, r := range []carbonation.CarbonationRate{carbonation.StillKeg(), carbonation.RolledKeg(), ok[carbonation.CarbonationRate](t)(carbonation.NewCarbonationRate(1.0 / 3))} {
		back(t, r)
	}
	for _, l := range []carbonation.Lethality{carbonation.DelVecchio(), carbonation.Handbook(), ok[carbonation.Lethality](t)(carbonation.NewLethality(units.KelvinDifference.Of(8.1)))} {
		back(t, l)
	}
	back(t, ok[carbonation.CylinderState](t)(carbonation.CylinderAt(celsius(20), units.Atmosphere{})))
	back(t, at(t, closed(t, bottle(), filling(5.7)), 30))
	back(t, ok[carbonation.Release](t)(carbonation.Released(kg(1), litre(20000), celsius(15), ppm(420), units.Atmosphere{})))
	back(t, ok[carbonation.Ventilation](t)(carbonation.Ventilate(units.Gram.Of(100), units.CubicMetre.Of(20), celsius(20), ppm(5000), ppm(420), units.Atmosphere{})))
	back(t, carbonation.ExposureLimits())
	back(t, carbonation.ContentLimits())
}

// What is none, or worked out from other things, says that it is not written.
func TestWhatDoesNotTravel(t *testing.T) {
	for _, v := range []any{carbonation.CarbonationRate{}, carbonation.Lethality{}, liquid(t, 4.6, 0.5), closed(t, bottle(), filling(5.7))} {
		_, err := json.Marshal(v)
		if _, is := errors.AsType[*units.StateError](err); !is {
			t.Errorf("%T: %v", v, err)
		}
	}
	r, l := carbonation.StillKeg(), carbonation.Handbook()
	for _, text := range []string{"", "0.0125", "x 1/h", "0.0125 1/min", "z 8", "8 K", "z x K"} {
		for _, err := range []error{r.UnmarshalText([]byte(text)), l.UnmarshalText([]byte(text))} {
			if _, is := errors.AsType[*units.ParseError](err); !is {
				t.Errorf("%q: %v", text, err)
			}
		}
	}
	refused(t, "rate", r.UnmarshalText([]byte("1001 1/h")), "rate")
	refused(t, "z", l.UnmarshalText([]byte("z 21 K")), "z")
	if r != carbonation.StillKeg() || l != carbonation.Handbook() {
		t.Error("a refused text changed the value")
	}
}
