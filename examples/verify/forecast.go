package main

import (
	"fmt"
	"io"
	"math"
	"slices"
	"time"

	"example.org/zymase/internal/ferments"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// A foretelling gives the share used at a time as five figures: below them lie 5, 25, 50, 75
// and 95 % of what may be.
type foretelling func(hour float64) [5]float64

var levels = [5]float64{0.05, 0.25, 0.5, 0.75, 0.95}

// A tally is how one way to foretell did.
type tally struct {
	Way           string
	Score         float64 // mean quantile score; smaller is better
	Figures       int
	In50, In90    int
	clusterScores []float64
}

// A forecastScore is every way over every series, before any reading and after a third.
type forecastScore struct {
	Before, After   []*tally
	Clusters        int
	Series          int
	Stalls, Called  int
	FalseCalls      int
	Times           int     // series whose 95 % the readings bracket within a tenth
	TimeError       float64 // of them, after a third: root mean square of ln(foretold/measured)
	TimeErrorBefore float64
}

// scoreForecasts scores the forecast and its rivals over the measured ferments. A replicate is
// no new ferment: scores are means over clusters of the means in each.
func scoreForecasts() (*forecastScore, error) {
	all, err := ferments.All()
	if err != nil {
		return nil, err
	}
	out := &forecastScore{Series: len(all)}
	clusters := map[string][]ferments.Series{}
	var names []string
	for _, s := range all {
		if clusters[s.Cluster] == nil {
			names = append(names, s.Cluster)
		}
		clusters[s.Cluster] = append(clusters[s.Cluster], s)
	}
	ways := []string{"forecast", "pace within a factor of two", "even pace", "logistic of attenuation"}
	for _, w := range ways {
		out.Before, out.After = append(out.Before, &tally{Way: w}), append(out.After, &tally{Way: w})
	}
	var before, after []float64 // errors of time
	for _, name := range names {
		if err := out.stalls(clusters[name]); err != nil {
			return nil, err
		}
		if clusters[name][0].Celsius > 35 {
			continue // beyond the model: it refuses to foretell
		}
		out.Clusters++
		for k, tallies := range [][]*tally{out.Before, out.After} {
			sums := make([]float64, len(ways))
			for _, s := range clusters[name] {
				told, fit, err := foretell(s, k == 1)
				if err != nil {
					return nil, err
				}
				for w := range ways {
					sums[w] += tallies[w].series(told[w], s) / float64(len(clusters[name]))
				}
				if t, ok := timeOf(s, 0.95); ok {
					f, err := fit.When(units.Percent.Of(95))
					if err != nil {
						return nil, err
					}
					e := math.Log(f.Median.Hours() / t)
					if k == 0 {
						before = append(before, e)
					} else {
						after = append(after, e)
					}
				}
			}
			for w := range ways {
				tallies[w].clusterScores = append(tallies[w].clusterScores, sums[w])
			}
		}
	}
	for _, t := range append(slices.Clone(out.Before), out.After...) {
		t.Score = mean(t.clusterScores)
	}
	out.Times, out.TimeErrorBefore, out.TimeError = len(after), rms(before), rms(after)
	return out, nil
}

// thirdOf is how many of the readings after the pitch count as the first third.
func thirdOf(s ferments.Series) int { return (len(s.Hours) - 1 + 2) / 3 }

// forecastOf is the forecast of a series as it starts.
func forecastOf(s ferments.Series, warmest float64) (*kinetics.Pace, *kinetics.Forecast, error) {
	sugar, err := units.GramPerLitre.Try(s.SugarGramPerLitre)
	if err != nil {
		return nil, nil, err
	}
	nitrogen, err := units.MilligramPerLitre.Try(s.NitrogenMilligramPerLitre)
	if err != nil {
		return nil, nil, err
	}
	yeast, err := units.GramPerLitre.Try(s.YeastGramPerLitre)
	if err != nil {
		return nil, nil, err
	}
	t, err := units.Celsius.Try(math.Min(s.Celsius, warmest))
	if err != nil {
		return nil, nil, err
	}
	p, err := kinetics.NewPace(kinetics.Start{Sugar: sugar, Nitrogen: nitrogen, Yeast: yeast}, kinetics.Hold{Temperature: t})
	if err != nil {
		return nil, nil, err
	}
	return p, kinetics.NewForecast(p), nil
}

// take adds a reading of a series, by an instrument good to 2 % of the sugar.
func take(f *kinetics.Forecast, s ferments.Series, i int) error {
	used, err := units.Fraction.Try(math.Min(math.Max(s.Used[i], 0), 1))
	if err != nil {
		return err
	}
	return f.Add(clock(s.Hours[i]), used, units.Percent.Of(2))
}

func clock(hours float64) time.Duration { return time.Duration(hours * float64(time.Hour)) }

// foretell makes the ways for a series, from the start alone or with its first third.
func foretell(s ferments.Series, third bool) ([]foretelling, *kinetics.Fit, error) {
	p, f, err := forecastOf(s, 35)
	if err != nil {
		return nil, nil, err
	}
	dry, err := p.When(units.Percent.Of(95))
	if err != nil {
		return nil, nil, err
	}
	whole, last := dry.Hours(), 0
	slope, half := 0.06372, 51.22 // Reid et al. 2021, table 2, data set 5: an industrial lager
	if third {
		last = thirdOf(s)
		for i := 1; i <= last; i++ {
			if err := take(f, s, i); err != nil {
				return nil, nil, err
			}
		}
		whole = s.Hours[last] / math.Max(s.Used[last], 0.01)
		slope, half = fitLogistic(s, last)
	}
	fit := f.Fit()
	same := func(x float64) [5]float64 { return [5]float64{x, x, x, x, x} }
	return []foretelling{
		func(h float64) [5]float64 {
			b := fit.Used(clock(h))
			return [5]float64{b.Low90.In(units.Fraction), b.Low50.In(units.Fraction), b.Median.In(units.Fraction), b.High50.In(units.Fraction),
				b.High90.In(units.Fraction)}
		},
		func(h float64) (out [5]float64) {
			for i, l := range levels {
				out[i] = p.Used(clock(h * math.Pow(2, 2*l-1))).In(units.Fraction)
			}
			return out
		},
		func(h float64) [5]float64 { return same(math.Min(h/whole, 1)) },
		func(h float64) [5]float64 { return same(1 / (1 + math.Exp(-slope*(h-half)))) },
	}, fit, nil
}

// fitLogistic finds slope and midpoint by least squares over a grid, the upper level fixed at
// the original gravity.
func fitLogistic(s ferments.Series, last int) (slope, half float64) {
	best := math.Inf(1)
	for b := 0.005; b < 0.4; b *= 1.05 {
		for m := 2.0; m < 1000; m *= 1.05 {
			sum := 0.0
			for i := 1; i <= last; i++ {
				d := s.Used[i] - 1/(1+math.Exp(-b*(s.Hours[i]-m)))
				sum += d * d
			}
			if sum < best {
				best, slope, half = sum, b, m
			}
		}
	}
	return slope, half
}

// series scores one way over the readings after the first third; it returns the mean.
func (t *tally) series(told foretelling, s ferments.Series) float64 {
	sum, n := 0.0, 0
	for i := thirdOf(s) + 1; i < len(s.Hours); i++ {
		q, y := told(s.Hours[i]), math.Min(math.Max(s.Used[i], 0), 1)
		for k, l := range levels { // the quantile score, twice the pinball loss
			d := y - q[k]
			sum += 2 * math.Max(l*d, (l-1)*d) / float64(len(levels))
		}
		const printed = 0.005 // the figures are given to about a hundredth
		if y >= q[0]-printed && y <= q[4]+printed {
			t.In90++
		}
		if y >= q[1]-printed && y <= q[3]+printed {
			t.In50++
		}
		n++
	}
	t.Figures += n
	return sum / float64(n)
}

// stalls counts the calls of a stopped ferment; the worts at 42 °C did stop.
func (f *forecastScore) stalls(all []ferments.Series) error {
	for _, s := range all {
		_, forecast, err := forecastOf(s, 35)
		if err != nil {
			return err
		}
		called := false
		for i := range s.Hours {
			if err := take(forecast, s, i); err != nil {
				return err
			}
			if _, stalled := forecast.Stalled(); stalled {
				called = true
			}
		}
		stopped := s.Celsius > 35
		switch {
		case stopped && called:
			f.Called++
		case called:
			f.FalseCalls++
		}
		if stopped {
			f.Stalls++
		}
	}
	return nil
}

// timeOf is when a share was used, where two readings bracket it within a tenth of the time.
func timeOf(s ferments.Series, share float64) (hour float64, ok bool) {
	for i := 1; i < len(s.Hours); i++ {
		if a, b := s.Used[i-1], s.Used[i]; a < share && b >= share {
			lo, hi := s.Hours[i-1], s.Hours[i]
			at := lo + (share-a)/(b-a)*(hi-lo)
			return at, hi-lo <= 0.2*at // within a tenth either way
		}
	}
	return 0, false
}

func mean(x []float64) float64 {
	sum := 0.0
	for _, v := range x {
		sum += v
	}
	return sum / float64(len(x))
}

func rms(x []float64) float64 {
	sum := 0.0
	for _, v := range x {
		sum += v * v
	}
	return math.Sqrt(sum / float64(len(x)))
}

// wilson is the interval of a share by its count, 95 %.
func wilson(k, n int) (low, high float64) {
	const z = 1.96
	p, m := float64(k)/float64(n), float64(n)
	mid, half := p+z*z/(2*m), z*math.Sqrt(p*(1-p)/m+z*z/(4*m*m))
	return (mid - half) / (1 + z*z/m), (mid + half) / (1 + z*z/m)
}

// writeForecasts prints the scores.
func writeForecasts(w io.Writer) error {
	f, err := scoreForecasts()
	if err != nil {
		return err
	}
	fmt.Fprintf(w, "How well the course of a ferment is foretold: %d measured series in %d clusters (replicates are\n", f.Series-f.Stalls, f.Clusters)
	fmt.Fprintln(w, "one), by the share of sugar used at each reading after the first third. Score: mean quantile score")
	fmt.Fprintln(w, "at 5, 25, 50, 75 and 95 %, smaller is better; a band's share with its binomial 95 % interval.")
	for k, tallies := range [][]*tally{f.Before, f.After} {
		fmt.Fprintln(w, "\n"+[]string{"from the start alone", "after the first third of the readings"}[k])
		fmt.Fprintf(w, "  %-30s %7s   %-24s %-24s\n", "", "score", "in the 50 % band", "in the 90 % band")
		for i, t := range tallies {
			line := fmt.Sprintf("  %-30s %7.4f", t.Way, t.Score)
			if i < 2 {
				for _, n := range []int{t.In50, t.In90} {
					low, high := wilson(n, t.Figures)
					line += fmt.Sprintf("   %3.0f %% (%2.0f to %2.0f) of %3d  ", 100*float64(n)/float64(t.Figures), 100*low, 100*high, t.Figures)
				}
			}
			fmt.Fprintln(w, line)
		}
	}
	if f.Times == 0 {
		fmt.Fprintln(w, "\nNo series has readings within a tenth of its time to 95 % of the end.")
	} else {
		fmt.Fprintf(w, "\nTime to 95 %% of the end, in %d series whose readings bracket it: off by a factor of %.2f from the\n", f.Times, math.Exp(f.TimeErrorBefore))
		fmt.Fprintf(w, "start alone, %.2f after a third of the readings (root mean square).\n", math.Exp(f.TimeError))
	}
	fmt.Fprintln(w, "Many of the later readings are near the end, where every way is right: the bands hold more than")
	fmt.Fprintln(w, "their share for that.")
	fmt.Fprintf(w, "Stopped ferments: %d of %d called, %d of %d others called falsely.\n", f.Called, f.Stalls, f.FalseCalls, f.Series-f.Stalls)
	fmt.Fprintln(w, "No measured series of a plain sugar wash, a cider or a mead was found: these are worts and musts.")
	return nil
}
