package kinetics_test

import (
	"math"
	"testing"
	"time"

	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// wash is the start of a sugar wash of our own.
func wash() kinetics.Start {
	return kinetics.Start{
		Sugar:    units.GramPerLitre.Of(75),
		Nitrogen: units.MilligramPerLitre.Of(100),
		Yeast:    units.GramPerLitre.Of(0.6),
	}
}

func at(t float64) kinetics.Hold {
	c, err := units.Celsius.Try(t)
	if err != nil {
		panic(err)
	}
	return kinetics.Hold{Temperature: c}
}

func pace(t *testing.T, s kinetics.Start, holds ...kinetics.Hold) *kinetics.Pace {
	t.Helper()
	p, err := kinetics.NewPace(s, holds...)
	if err != nil {
		t.Fatal(err)
	}
	return p
}

func hours(h float64) time.Duration { return time.Duration(h * float64(time.Hour)) }

func share(x float64) units.Share {
	s, err := units.Fraction.Try(math.Min(math.Max(x, 0), 1))
	if err != nil {
		panic(err)
	}
	return s
}

// days is when a pace has used 95 % of the sugar.
func days(t *testing.T, p *kinetics.Pace) float64 {
	t.Helper()
	d, err := p.When(units.Percent.Of(95))
	if err != nil {
		t.Fatal(err)
	}
	return d.Hours() / 24
}

func add(t *testing.T, f *kinetics.Forecast, hour, used, u float64) {
	t.Helper()
	if err := f.Add(hours(hour), share(used), share(u)); err != nil {
		t.Fatal(err)
	}
}
