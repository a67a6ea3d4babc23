package carbonation_test

import (
	"math"
	"reflect"
	"testing"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

func reading(minutes, c float64) carbonation.LoggedTemperature {
	return carbonation.LoggedTemperature{At: time.Duration(minutes * float64(time.Minute)), Temperature: celsius(c)}
}

// The two published forms, by hand: 1.393^(T−60) and 10^((T−60)/7).
func TestLethality(t *testing.T) {
	for _, row := range []struct {
		form    carbonation.Lethality
		c, rate float64
	}{
		{carbonation.DelVecchio(), 60, 1}, {carbonation.DelVecchio(), 61, 1.393}, {carbonation.DelVecchio(), 65, 5.24506}, {carbonation.DelVecchio(), 50, 0.036350},
		{carbonation.Handbook(), 60, 1}, {carbonation.Handbook(), 67, 10}, {carbonation.Handbook(), 53, 0.1}, {carbonation.Handbook(), 72, 51.7947},
	} {
		close(t, row.form.String(), ok[units.PasteurisationUnits](t)(row.form.Rate(celsius(row.c))).In(units.PU), row.rate, 1e-4)
	}
	own := ok[carbonation.Lethality](t)(carbonation.NewLethality(units.KelvinDifference.Of(5)))
	near(t, "own", ok[units.PasteurisationUnits](t)(own.Rate(celsius(65))).In(units.PU), 10, 1e-9)
	for _, z := range []float64{2.9, 20.1} {
		q := ok[units.TemperatureDifference](t)(units.KelvinDifference.Try(z))
		_, err := carbonation.NewLethality(q)
		refused(t, "z", err, "z")
	}
	_, err := carbonation.Lethality{}.Rate(celsius(60))
	refused(t, "zero form", err, "z")
	for _, c := range []float64{-0.1, 90.1} {
		_, err := carbonation.Handbook().Rate(celsius(c))
		refused(t, "temperature", err, "temperature")
	}
	if carbonation.DelVecchio().String() != "1.393^(T-60)" || carbonation.Handbook().String() != "10^((T-60)/7)" || own.String() != "own" {
		t.Error("names")
	}
}

// By hand: 15 min at 60 °C are 15 PU. Warming from 40 to 60 °C in 20 min by the
// handbook's form: (1 − 10^(−20/7))·7/ln 10 = 3.0358 PU; cooling likewise in 10 min half.
func TestPasteurise(t *testing.T) {
	log := []carbonation.LoggedTemperature{reading(0, 40), reading(20, 60), reading(35, 60), reading(45, 40)}
	p := ok[carbonation.Pasteurisation](t)(carbonation.Handbook().Pasteurise(log, nil))
	near(t, "warming", p.Warming.In(units.PU), 3.03584, 1e-4)
	near(t, "holding", p.Holding.In(units.PU), 15, 1e-12)
	near(t, "cooling", p.Cooling.In(units.PU), 3.03584/2, 1e-4)
	near(t, "all", p.Units.In(units.PU), 15+1.5*3.03584, 2e-4)
	near(t, "highest", p.Highest.In(units.Celsius), 60, 0)
	if p.HasPeak || !p.Cautions.Has(carbonation.HotVessel) {
		t.Errorf("%+v", p)
	}
	// A reading within half a kelvin of the top still counts as holding, one below does not.
	log = []carbonation.LoggedTemperature{reading(0, 59.6), reading(5, 60), reading(10, 59.49), reading(11, 20)}
	p = ok[carbonation.Pasteurisation](t)(carbonation.DelVecchio().Pasteurise(log, nil))
	near(t, "warming", p.Warming.In(units.PU), 0, 0)
	near(t, "holding", p.Holding.In(units.PU), 5*(1-math.Pow(1.393, -0.4))/(0.4*math.Log(1.393)), 1e-9)

	// Hottest at the start: nothing is held.
	p = ok[carbonation.Pasteurisation](t)(carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, 60), reading(20, 40)}, nil))
	near(t, "holding", p.Holding.In(units.PU), 0, 0)
	near(t, "cooling", p.Cooling.In(units.PU), 3.03584, 1e-4)

	c := closed(t, bottle(), filling(5.7))
	log = []carbonation.LoggedTemperature{reading(0, 15), reading(30, 62), reading(45, 61), reading(70, 20)}
	p = ok[carbonation.Pasteurisation](t)(carbonation.DelVecchio().Pasteurise(log, &c))
	hot := at(t, c, 62)
	if !p.HasPeak || !reflect.DeepEqual(p.Peak, hot) {
		t.Errorf("peak %+v, want that at 62 °C %+v", p.Peak, hot)
	}
	if p.Peak.Verdict != carbonation.OverRating || !p.Cautions.Has(carbonation.OverRatingCaution) {
		t.Errorf("%v %v", p.Peak.Verdict, p.Cautions)
	}
}

// Splitting a leg changes nothing; a hotter log gives more.
func TestPasteuriseProperties(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		a, b := rapid.Float64Range(0, 75).Draw(t, "from"), rapid.Float64Range(0, 75).Draw(t, "to")
		m := rapid.Float64Range(0.1, 60).Draw(t, "minutes")
		whole := ok[carbonation.Pasteurisation](t)(carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, a), reading(m, b)}, nil))
		split := ok[carbonation.Pasteurisation](t)(carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, a),
			reading(m/2, (a+b)/2), reading(m, b)}, nil))
		close(t, "units", split.Units.In(units.PU), whole.Units.In(units.PU), 1e-6)
		hotter := ok[carbonation.Pasteurisation](t)(carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, a+1), reading(m, b+1)}, nil))
		close(t, "a kelvin", hotter.Units.In(units.PU)/whole.Units.In(units.PU), math.Pow(10, 1./7), 1e-6)
		near(t, "sum", whole.Warming.In(units.PU)+whole.Holding.In(units.PU)+whole.Cooling.In(units.PU), whole.Units.In(units.PU), 1e-12*whole.Units.In(units.PU))
	})
}

func TestPasteuriseRefuses(t *testing.T) {
	_, err := carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, 60)}, nil)
	refused(t, "one reading", err, "number of readings")
	_, err = carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, 60), reading(0, 61)}, nil)
	refused(t, "same time", err, "time")
	_, err = carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(-1, 60), reading(0, 61)}, nil)
	refused(t, "before the start", err, "time")
	_, err = carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, 60), reading(1, 91)}, nil)
	refused(t, "boiling", err, "temperature")
	_, err = carbonation.Handbook().Pasteurise([]carbonation.LoggedTemperature{reading(0, 60), reading(366*24*60, 61)}, nil)
	refused(t, "over a year", err, "time")
	_, err = carbonation.Lethality{}.Pasteurise([]carbonation.LoggedTemperature{reading(0, 60), reading(1, 61)}, nil)
	refused(t, "no form", err, "z")
}
