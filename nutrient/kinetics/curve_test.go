package kinetics

import (
	"math"
	"testing"
	"time"

	"example.org/zymase/internal/check"
	"example.org/zymase/units"
)

// A curve typed by hand, half a ripe hour from figure to figure: 0, 10, 50, 60 and 95 % of the sugar. Between
// them it is straight, before them nothing is used, past them what is used then.
func TestCurveByHand(t *testing.T) {
	p := &Pace{used: []float64{0, 0.1, 0.5, 0.6, 0.95}, ripe: []float64{0, 2, 4}}
	for ripe, want := range map[float64]float64{-1: 0, 0: 0, 0.25: 0.05, 0.5: 0.1, 1.25: 0.55, 1.75: 0.775, 2: 0.95, 7: 0.95} {
		check.Near(t, "share", p.shareAt(ripe), want, 1e-12, "by hand")
	}
	for share, want := range map[float64]float64{0: 0, 0.05: 0.25, 0.3: 0.75, 0.95: 2} {
		check.Near(t, "ripe hours", p.ripeFor(share), want, 1e-12, "by hand")
	}
	if r := p.ripeFor(0.951); !math.IsInf(r, 1) {
		t.Errorf("what is never used is used after %g", r)
	}
	// Half is used by one ripe hour; the fastest half hour is the one before it, at 0.75: 40 % in half an
	// hour. Past the middle the last one gives 70 % an hour at a tail of one, so that 0.8 makes it the fastest.
	f := &Fit{pace: p, ripeMiddle: 1}
	for i, want := range []peak{{1.75, 0.7 / 0.8}, {0.75, 0.8}, {0.75, 0.8}, {0.75, 0.8}} {
		got := f.peaks()[i]
		check.Near(t, "peak", got.share, want.share, 1e-12, "by hand")
		check.Near(t, "its hour", got.ripe, want.ripe, 1e-12, "by hand")
	}
	// A ferment that is fastest at once.
	f.pace = &Pace{used: []float64{0, 0.5, 0.6}, ripe: []float64{0, 2}}
	check.Near(t, "fastest at once", f.peaks()[1].ripe, 0.25, 1e-12, "by hand")
}

// Ripe hours by hand: at 20 °C one an hour; an hour has the temperature of its middle. Back from
// them to the clock where the temperature changes, from the first hour to the last.
func TestRipeHoursByHand(t *testing.T) {
	warm := math.Exp(0.0771 * 2) // 22 °C against 20: the slope of Coleman et al. 2007 as read
	for from, second := range map[float64]float64{1.49: warm, 1.51: 1} {
		p, _, _ := made(t, 75, 100, 0.6, []float64{0, 20, from, 22, 2159, 20})
		for hour, want := range map[float64]float64{-3: 0, 0: 0, 0.5: 0.5, 1: 1, 1.5: 1 + second/2, 2: 1 + second, 4: 1 + second + 2*warm,
			2159.5: 1.5 + second + 2157*warm, 2160: 2 + second + 2157*warm, 9999: 2 + second + 2157*warm} {
			check.Near(t, "ripe hours", p.ripeAt(hour), want, 1e-9, "by hand")
			if hour >= 0 && hour <= 2160 {
				back, within := p.hourAt(want)
				check.Near(t, "and back", back, hour, 1e-9, "by hand")
				if !within {
					t.Errorf("%g h lies beyond 90 days", hour)
				}
			}
		}
		if _, within := p.hourAt(2.1 + second + 2157*warm); within {
			t.Error("beyond 90 days, and within them")
		}
	}
	p, _, _ := made(t, 75, 100, 0.6, []float64{0, 20, 10, 22})
	hour, _ := p.hourAt(10 + 5*warm)
	check.Near(t, "at two temperatures", hour, 15, 1e-9, "by hand")
	p, _, _ = made(t, 75, 100, 0.6, []float64{0, 22})
	hour, within := p.hourAt(10 * warm)
	check.Near(t, "at one temperature", hour, 10, 1e-9, "by hand")
	if _, beyond := p.hourAt(2161 * warm); beyond || !within {
		t.Error("90 days at one temperature")
	}
}

// The equations of Coleman, Fish & Block 2007 integrated a second time, by small steps of Euler with every
// number typed again (as two carriers give them; middle intercept; 22 °C and colder, 70 to 277 mg/L).
func TestAgainstASecondIntegration(t *testing.T) {
	for _, c := range []struct {
		sugar, nitrogen, yeast, ethanol float64
		holds                           []float64
	}{
		{75, 100, 0.6, 0, []float64{0, 20}},
		{280, 250, 0.2, 0, []float64{0, 14, 70, 22}},
		{150, 80, 1, 60, []float64{0, 18, 30, 12, 60, 21}},
		{10, 200, 30, 0, []float64{0, 20}},
	} {
		s := Start{
			Sugar:    check.Must(units.GramPerLitre.Try(c.sugar)),
			Nitrogen: check.Must(units.MilligramPerLitre.Try(c.nitrogen)),
			Yeast:    check.Must(units.GramPerLitre.Try(c.yeast)),
			Ethanol:  check.Must(units.GramPerLitre.Try(c.ethanol)),
		}
		var holds []Hold
		for i := 0; i < len(c.holds); i += 2 {
			holds = append(holds, Hold{hoursOf(c.holds[i]), check.Must(units.Celsius.Try(c.holds[i+1]))})
		}
		p := check.Must(NewPace(s, holds...))
		const steps = 200 // an hour
		active, nitrogen, ethanol, sugar := c.yeast, c.nitrogen/1000, c.ethanol, c.sugar
		for h := range 240 {
			check.Near(t, "used", p.Used(time.Duration(h)*time.Hour).In(units.Fraction), 1-sugar/c.sugar, 0.005,
				"a second program: Euler's steps of 18 s; straight over half an hour")
			celsius := 0.0
			for i := 0; i < len(c.holds); i += 2 {
				if c.holds[i] <= float64(h) {
					celsius = c.holds[i+1]
				}
			}
			cold := math.Max(celsius, 11.3)
			for range steps {
				growth := math.Exp(-3.92+0.0782*celsius) * nitrogen / (math.Exp(-4.73) + nitrogen) * active
				made := math.Exp(-2.64+0.0771*celsius) * sugar / (math.Exp(2.33) + sugar) * active
				active += (growth - math.Exp(-9.81-0.108*cold+0.00478*cold*cold)*ethanol*active) / steps
				nitrogen = math.Max(0, nitrogen-growth/math.Exp(3.50-0.00361*c.nitrogen)/steps)
				ethanol += made / steps
				sugar = math.Max(0, sugar-made/0.55/steps)
			}
		}
	}
}

// The zero values stand for nothing and say so: no time, none used, nothing next.
func TestZeroValuesByHand(t *testing.T) {
	var p Pace
	if u := p.Used(5 * time.Hour); u != units.Percent.Of(0) {
		t.Error("used", u)
	}
	if d, err := p.When(units.Percent.Of(50)); err == nil {
		t.Error("half is used after", d)
	}
	if at, most := p.Fastest(); at != 0 || most != units.Percent.Of(0) {
		t.Error("fastest", at, most)
	}
	for _, f := range []*Fit{{}, new(Forecast).Fit()} {
		if b := f.InAnHour(time.Hour); b != (Band{}) {
			t.Error("in an hour", b)
		}
		if when, most := f.Fastest(); when != (TimeBand{}) || most != (Band{}) {
			t.Error("fastest", when, most)
		}
		if w, err := f.When(units.Percent.Of(50)); err == nil {
			t.Error("when", w)
		}
		if n := f.Next(3 * time.Hour); n != 3*time.Hour {
			t.Error("next", n)
		}
	}
	if since, stalled := new(Forecast).Stalled(); since != 0 || stalled {
		t.Error("stalled", since)
	}
	if at, faster, leaves := new(Forecast).Leaves(); at != 0 || faster || leaves {
		t.Error("leaves", at)
	}
}
