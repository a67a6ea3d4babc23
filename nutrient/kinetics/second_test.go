package kinetics

import (
	"math"
	"slices"
	"strings"
	"testing"
	"time"

	"example.org/zymase/internal/check"
	"example.org/zymase/units"
)

// A second program for what a Fit says, written from the doc comments of this package: every
// outcome is written out, with the chosen widths typed a second time; sums are plain; quantiles come
// from sorting or halving, not from a histogram. It takes the pace's own curve, which
// TestCurveByHand and TestAgainstASecondIntegration hold, and its warmth, which TestRatesByHand does.
type second struct {
	p      *Pace
	ripe   []float64 // ripe hours at each hour of the clock
	middle float64   // ripe hours by which half is used
	ways   []outcome
	proof  float64 // logarithm of what the readings left of all weight
}

type outcome struct{ speed, lag, tail, end, weight float64 }

type seen struct{ hour, used, uncertainty float64 }

func bySecond(p *Pace, readings ...seen) *second {
	s := &second{p: p, ripe: []float64{0}, middle: p.ripeFor(0.5)}
	for h := range 90 * 24 {
		t := 0.0
		for _, hold := range p.holds {
			if hold.From <= time.Duration(h)*time.Hour+30*time.Minute {
				t = hold.Temperature.In(units.Celsius)
			}
		}
		s.ripe = append(s.ripe, s.ripe[h]+speed(t))
	}
	all := 0.0
	for k := -9; k <= 9; k++ {
		z := 2.4 * float64(k) / 9
		for i, lag := range []float64{0, 4, 10, 24} {
			for j, tail := range []float64{0.8, 1.3, 2, 3.2} {
				for l, end := range []float64{1.02, 1, 0.95, 0.85, 0.5, 0.25} {
					w := math.Exp(-z*z/2) * []float64{0.50, 0.30, 0.15, 0.05}[i] * []float64{0.2, 0.4, 0.3, 0.1}[j] * []float64{0.25, 0.45, 0.20, 0.06, 0.03, 0.01}[l]
					s.ways = append(s.ways, outcome{math.Exp(0.42 * z), lag, tail, end, w})
					all += w
				}
			}
		}
	}
	left := 0.0
	for i := range s.ways {
		o := &s.ways[i]
		o.weight /= all
		for _, r := range readings { // Student, three degrees of freedom
			d := r.used - s.share(*o, r.hour)
			o.weight *= math.Pow(1+d*d/(r.uncertainty*r.uncertainty+0.03*0.03)/3, -2)
		}
		left += o.weight
	}
	for i := range s.ways {
		s.ways[i].weight /= left
	}
	s.proof = math.Log(left)
	return s
}

// ripeAt is the warmth taken up by an hour of the clock.
func (s *second) ripeAt(hour float64) float64 {
	hour = math.Max(0, math.Min(hour, 2160))
	i := int(math.Min(math.Floor(hour), 2159))
	return s.ripe[i] + (hour-float64(i))*(s.ripe[i+1]-s.ripe[i])
}

// share is what an outcome has used by an hour.
func (s *second) share(o outcome, hour float64) float64 {
	r := o.speed * (s.ripeAt(hour) - o.lag)
	if r > s.middle {
		r = s.middle + (r-s.middle)/o.tail
	}
	return o.end * s.p.shareAt(r)
}

// hour is when an outcome has come as far as the pace comes in so many ripe hours; infinite past 90 days.
func (s *second) hour(o outcome, ripe float64) float64 {
	if ripe > s.middle {
		ripe = s.middle + (ripe-s.middle)*o.tail
	}
	ripe = ripe/o.speed + o.lag
	if ripe > s.ripe[2160] {
		return math.Inf(1)
	}
	low, high := 0.0, 2160.0
	for range 40 {
		if m := (low + high) / 2; s.ripeAt(m) < ripe {
			low = m
		} else {
			high = m
		}
	}
	return high
}

var bands = []float64{0.05, 0.25, 0.50, 0.75, 0.95}

// blurred are the quantiles of all outcomes, each spread by a normal distribution.
func blurred(x, w []float64, sd float64) (out []float64) {
	all := 0.0
	for _, one := range w {
		all += one
	}
	for _, level := range bands {
		low, high := slices.Min(x)-9*sd, slices.Max(x)+9*sd
		for range 26 {
			m, below := (low+high)/2, 0.0
			for i := range x {
				if x[i] < m+6*sd { // of those beyond nothing reaches it
					below += w[i] * math.Erfc((x[i]-m)/sd/math.Sqrt2) / 2
				}
			}
			if below < level*all {
				low = m
			} else {
				high = m
			}
		}
		out = append(out, high)
	}
	return out
}

// sorted are the quantiles as they are, and the thousandth of the range that one may be off; outcomes
// of less than 1e-7 are left out.
func (s *second) sorted(x []float64) (out []float64, cell float64) {
	var at []int
	all := 0.0
	for i, o := range s.ways {
		if o.weight >= 1e-7 {
			at = append(at, i)
			all += o.weight
		}
	}
	slices.SortFunc(at, func(i, j int) int {
		if x[i] < x[j] {
			return -1
		}
		return 1
	})
	for _, level := range bands {
		sum := 0.0
		for _, i := range at {
			if sum += s.ways[i].weight; sum >= level*all {
				out = append(out, x[i])
				break
			}
		}
	}
	return out, (x[at[len(at)-1]] - x[at[0]]) / 1000
}

func (s *second) each(of func(outcome) float64) (x, w []float64) {
	for _, o := range s.ways {
		x, w = append(x, of(o)), append(w, o.weight)
	}
	return x, w
}

const bySorting = "a second program: all outcomes written out"

// made is a pace and its forecast, with readings.
func made(t *testing.T, sugar, nitrogen, yeast float64, holds []float64, readings ...seen) (*Pace, *Forecast, *second) {
	t.Helper()
	s := Start{
		Sugar:    check.Must(units.GramPerLitre.Try(sugar)),
		Nitrogen: check.Must(units.MilligramPerLitre.Try(nitrogen)),
		Yeast:    check.Must(units.GramPerLitre.Try(yeast)),
	}
	var all []Hold
	for i := 0; i < len(holds); i += 2 { // hour, °C
		all = append(all, Hold{hoursOf(holds[i]), check.Must(units.Celsius.Try(holds[i+1]))})
	}
	p := check.Must(NewPace(s, all...))
	f := NewForecast(p)
	for _, r := range readings {
		if err := f.Add(hoursOf(r.hour), check.Must(units.Fraction.Try(r.used)), check.Must(units.Fraction.Try(r.uncertainty))); err != nil {
			t.Fatal(err)
		}
	}
	return p, f, bySecond(p, readings...)
}

func hoursOf(h float64) time.Duration { return time.Duration(math.Round(h * float64(time.Hour))) }

// A few ferments to hold the fit to: by the plan alone, as planned, late, stopped, changing in
// warmth, over in an hour or two, and hardly begun after 90 days.
type ferment struct {
	name                   string
	sugar, nitrogen, yeast float64
	holds                  []float64
	readings               []seen
	hours                  []float64 // to look at
	shares                 []float64
}

var aFew = []ferment{
	{"plan", 75, 100, 0.6, []float64{0, 20}, nil, []float64{5, 30, 60, 100, 200}, []float64{0.1, 0.5, 0.9, 0.95}},
	{"as planned", 75, 100, 0.6, []float64{0, 20}, []seen{{24, 0.2, 0.02}, {48, 0.6, 0.02}}, []float64{10, 30, 70}, []float64{0.1, 0.9}},
	{"late", 75, 100, 0.6, []float64{0, 20}, []seen{{20, 0, 0.02}, {32, 0.01, 0.01}, {45, 0.12, 0.02}}, []float64{30, 70, 160}, []float64{0.05, 0.5, 0.95}},
	{"stopped", 120, 60, 0.3, []float64{0, 18}, []seen{{50, 0.2, 0.02}, {140, 0.24, 0.01}, {300, 0.25, 0.01}, {500, 0.25, 0.01}},
		[]float64{200, 900}, []float64{0.2}},
	{"warmed", 280, 250, 0.2, []float64{0, 14, 70, 22, 200, 26}, []seen{{60, 0.1, 0.03}}, []float64{40, 100, 250}, []float64{0.1, 0.5, 0.9}},
	{"quick", 10, 300, 30, []float64{0, 20}, []seen{{3.9, 1, 0.02}}, []float64{0, 0.5, 1.3}, []float64{0.3}},
	{"quick and warmed", 10, 300, 30, []float64{0, 18, 2, 21}, []seen{{3.9, 0.9, 0.02}}, []float64{0, 1.3}, []float64{0.3}},
	{"quick and hot", 10, 300, 30, []float64{0, 31, 1, 34}, []seen{{2, 1, 0.02}}, nil, nil},
	{"spent by warmth", 350, 20, 0.005, []float64{0, 35, 2, 34}, nil, nil, nil},
	{"slow", 350, 20, 0.005, []float64{0, 10, 2159, 35}, nil, []float64{2000, 2160, 3000}, nil},
}

func TestFitBySecondProgram(t *testing.T) {
	for _, c := range aFew {
		_, f, s := made(t, c.sugar, c.nitrogen, c.yeast, c.holds, c.readings...)
		fit := f.Fit()
		check.Near(t, c.name+": evidence", fit.Evidence(), s.proof, 1e-9, bySorting)
		for _, below := range []float64{0.2, 0.4, 0.6, 0.9, 0.97, 1} {
			sum := 0.0
			for _, o := range s.ways {
				if s.share(o, 2160) < below {
					sum += o.weight
				}
			}
			check.Near(t, c.name+": stops", fit.Stops(check.Must(units.Fraction.Try(below))).In(units.Fraction), sum, 1e-9, bySorting)
		}
		for _, h := range c.hours {
			x, w := s.each(func(o outcome) float64 { return s.share(o, h) })
			for i, want := range blurred(x, w, 0.015) {
				// Half a cell of 1/480, and what lies beyond three deviations.
				check.Near(t, c.name+": used", shares(fit.Used(hoursOf(h)))[i], math.Min(math.Max(want, 0), 1), 0.0015, bySorting)
			}
			x, _ = s.each(func(o outcome) float64 {
				from := math.Min(math.Max(h-0.5, 0), 2159)
				return s.share(o, from+1) - s.share(o, from)
			})
			want, cell := s.sorted(x)
			for i, got := range shares(fit.InAnHour(hoursOf(h))) {
				check.Near(t, c.name+": in an hour", got, math.Min(want[i], 1), cell*1.001, bySorting)
			}
		}
		for _, share := range c.shares {
			when := check.Must(fit.When(check.Must(units.Fraction.Try(share))))
			var x, w []float64
			for _, o := range s.ways {
				if h := s.hour(o, s.p.ripeFor(share/o.end)); h <= 2160 {
					x, w = append(x, math.Log(math.Max(h, 0.5))), append(w, o.weight)
				}
			}
			for i, want := range blurred(x, w, 0.07) {
				off := 0.0085 // half a cell of 0.014, and what lies beyond three deviations
				if want < math.Log(0.5) {
					want, off = math.Log(0.5), 0.014
				}
				check.Near(t, c.name+": when", math.Log(times(when)[i]), want, off, bySorting)
			}
		}
	}
}

func shares(b Band) []float64 {
	return []float64{b.Low90.In(units.Fraction), b.Low50.In(units.Fraction), b.Median.In(units.Fraction), b.High50.In(units.Fraction), b.High90.In(units.Fraction)}
}

func times(b TimeBand) []float64 {
	return []float64{b.Low90.Hours(), b.Low50.Hours(), b.Median.Hours(), b.High50.Hours(), b.High90.Hours()}
}

// How wide a figure is spread where all outcomes are one: at the pitch nothing is used, so that the
// share's band is the normal distribution alone, 0.674 and 1.645 deviations from the middle; and a ferment
// that was seen over has no lag, so that a share of nought is used at once, in half an hour or less.
func TestBlurByHand(t *testing.T) {
	_, f, _ := made(t, 10, 300, 30, []float64{0, 20}, seen{3.9, 1, 0.02})
	fit := f.Fit()
	b := shares(fit.Used(0))
	check.Near(t, "share's spread", b[4]-b[3], (1.6449-0.6745)*0.015, 0.0004, "table of the normal distribution; width chosen")
	w := times(check.Must(fit.When(units.Percent.Of(0))))
	check.Near(t, "time's spread", math.Log(w[4]/w[3]), (1.6449-0.6745)*0.07, 0.0017, "table of the normal distribution; width chosen")
	check.Near(t, "half an hour", math.Log(w[3]/0.5), 0.6745*0.07, 0.0085, "table of the normal distribution; width chosen")
}

// What no more than one outcome in a hundred reaches is refused, with the most there is.
func TestWhenIsRefusedByHand(t *testing.T) {
	p, _, _ := made(t, 75, 100, 0.6, []float64{0, 20})
	reach := func(used float64) (s *second, sum float64, f *Forecast) {
		readings := []seen{{60, used, 0.02}, {200, used, 0.02}, {600, used, 0.02}, {2000, used, 0.02}}
		_, f, s = made(t, 75, 100, 0.6, []float64{0, 20}, readings...)
		for _, o := range s.ways {
			if s.hour(o, p.ripeFor(0.97/o.end)) <= 2160 {
				sum += o.weight
			}
		}
		return s, sum, f
	}
	for _, want := range []float64{0.0098, 0.0102} {
		low, high := 0.3, 1.0 // the used share that makes it so
		for range 25 {
			m := (low + high) / 2
			if _, sum, _ := reach(m); sum < want {
				low = m
			} else {
				high = m
			}
		}
		s, sum, f := reach(high)
		check.Near(t, "likely", sum, want, 1e-5, bySorting)
		_, err := f.Fit().When(units.Percent.Of(97))
		if want > 0.01 {
			if err != nil {
				t.Error(err)
			}
			continue
		}
		x, _ := s.each(func(o outcome) float64 { return s.share(o, 2160) })
		most, cell := s.sorted(x)
		check.Near(t, "the most", check.OutOfRange(t, "share", err, "share of the sugar used").Max, 100*math.Min(most[4], 0.97), 100*cell, bySorting)
	}
	_, f, _ := made(t, 75, 100, 0.6, []float64{0, 20})
	check.Near(t, "most", f.Fit().most(), 1, 0, "no more than all is used")
}

// The next reading is at the hour of the five days at which the outcomes lie furthest apart; for a
// ferment that hardly begins in them, at their end.
func TestNextBySecondProgram(t *testing.T) {
	apart := func(s *second, hour float64) float64 {
		mean, square := 0.0, 0.0
		for _, o := range s.ways {
			x := s.share(o, hour)
			mean += o.weight * x
			square += o.weight * x * x
		}
		return square - mean*mean
	}
	for _, c := range aFew {
		_, f, s := made(t, c.sugar, c.nitrogen, c.yeast, c.holds, c.readings...)
		for _, from := range []float64{0, 30} {
			most, at := 0.0, from
			for h := from; h <= from+120; h++ {
				if v := apart(s, h); v > most+1e-12 {
					most, at = v, h
				}
			}
			if got := f.Fit().Next(hoursOf(from)).Hours(); got != at {
				t.Errorf("%s: the next reading after %g h at %g h, by a second program at %g h", c.name, from, got, at)
			}
			if c.name == "slow" && at != from+120 {
				t.Errorf("the slow one's best hour is %g", at)
			}
		}
	}
}

// The peak of each outcome: at one temperature the half hour of the pace that gives most, with the
// tail's slowing from the middle on; where the temperature changes the middle of the part in which most goes,
// of 32 from the hour of the first fiftieth of what the pace uses to that of nine tenths, none shorter than a quarter of an hour.
func TestFastestBySecondProgram(t *testing.T) {
	for _, c := range aFew {
		p, f, s := made(t, c.sugar, c.nitrogen, c.yeast, c.holds, c.readings...)
		var hours, rates []float64
		for _, o := range s.ways {
			hour, rate := 0.0, 0.0
			if len(c.holds) == 2 {
				top := 0.0
				for ripe := 0.25; ripe < 2160*s.ripe[1]; ripe += 0.5 {
					in := (p.shareAt(ripe+0.25) - p.shareAt(ripe-0.25)) / 0.5
					if ripe > s.middle {
						in /= o.tail
					}
					if in > rate {
						top, rate = ripe, in
					}
				}
				hour, rate = math.Min(s.hour(o, top), 2160), rate*o.end*o.speed*s.ripe[1]
			} else {
				all := p.shareAt(9999)
				from, to := math.Min(s.hour(o, p.ripeFor(0.02*all)), 2160), math.Min(s.hour(o, p.ripeFor(0.9*all)), 2160)
				part := math.Max((to-from)/32, 0.25)
				for k := range 32 {
					a, b := math.Min(from+float64(k)*part, 2160), math.Min(from+float64(k+1)*part, 2160)
					if r := (s.share(o, b) - s.share(o, a)) / part; r > rate {
						hour, rate = b-part/2, r
					}
				}
			}
			hours, rates = append(hours, hour), append(rates, rate)
		}
		when, share := f.Fit().Fastest()
		want, cell := s.sorted(hours)
		for i, got := range times(when) {
			if !strings.HasPrefix(c.name, "quick and") { // their quarters of an hour come in pairs that are alike
				check.Near(t, c.name+": hour of the peak", got, want[i], cell*1.001, bySorting)
			}
		}
		want, cell = s.sorted(rates)
		for i, got := range shares(share) {
			check.Near(t, c.name+": peak", got, math.Min(want[i], 1), cell*1.001, bySorting)
		}
	}
}

// A histogram of two figures, and cells at and beyond its ends.
func TestQuantilesByHand(t *testing.T) {
	var x, w [nodeCount]float64
	x[3], w[3], w[7] = 1, 0.5, 0.5
	for i, want := range []float64{0, 0, 0, 1, 1} {
		check.Near(t, "of nought and one", weighted5(&x, &w)[i], want, 0.001, "by hand: half lies at each")
	}
	x[3] = 0
	check.Near(t, "of one figure", weighted5(&x, &w)[4], 0, 0, "by hand")
	for at, want := range map[float64]int{-3: 0, 0.5: 0, 4.5: 4, 9.5: 9, 12: 9} {
		if got := cell(at, 10); got != want {
			t.Errorf("%g is in cell %d, want %d", at, got, want)
		}
	}
	// All in the first and last cell of eleven: a deviation of a cell leaves 0.5 + 0.1995 of the normal
	// distribution in each of them, with what would lie beyond the ends (half of the middle cell by its density).
	h := smooth([]float64{1, 0, 0, 0, 0, 0, 0, 0, 0, 0, 1}, 1)
	check.Near(t, "first", h[0], 0.5+0.1995, 0.002, "density of the normal distribution, 0.3989 at its middle")
	check.Near(t, "last", h[10], 0.5+0.1995, 0.002, "density of the normal distribution, 0.3989 at its middle")
	check.Near(t, "second", h[1], 0.2420, 0.002, "density of the normal distribution at one deviation")
}
