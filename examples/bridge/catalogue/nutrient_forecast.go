package catalogue

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// mostReadings is how many readings a call takes.
const mostReadings = 8

// nutrientForecast is when a ferment is done, from its start and its readings.
func nutrientForecast() []*Function {
	sg := func(name, meaning string, min, example float64) *Input {
		return number(name, "", meaning, min, 1.2, example)
	}
	inputs := inputs{all: []*Input{
		in("sugar", units.GramPerLitre, "sugar to ferment in a litre", 10, 350, 75),
		in("nitrogen", units.MilligramPerLitre, "that yeast takes up, with all feeds", 20, 600, 100),
		in("temperature", units.Celsius, "of the ferment", 10, 35, 20),
		sg("original", "original gravity, 20/20 °C", 1.002, 1.0283),
		sg("end", "gravity of its dry floor, 20/20 °C", 0.97, 0.9946),
		in("yeast", units.GramPerLitre, "live yeast pitched, as dry mass", 0.005, 30, 0.6).or(0.5),
		number("ph", "", "while it ferments; 0 if it is not known", 0, 9, 3.6).or(0),
		number("division", "", "of the hydrometer", 0.0001, 0.01, 0.001).or(0.001),
	}}
	first := len(inputs.all)
	for i := range mostReadings {
		hour := span(fmt.Sprintf("hour_%d", i+1), "h", fmt.Sprintf("of reading %d, since the yeast was pitched", i+1), 0, 2136, 0).or(0)
		hour.Series = "hours"
		read := number(fmt.Sprintf("gravity_%d", i+1), "", fmt.Sprintf("of reading %d, at 20 °C; 0 if there is none", i+1), 0, 1.2, 0).or(0)
		read.Series = "gravities"
		switch i {
		case 0:
			hour.Example, read.Example = 24, 1.0240
		case 1:
			hour.Example, read.Example = 48, 1.0150
		}
		inputs.all = append(inputs.all, hour, read)
	}
	f := function("ferment_forecast",
		"when a ferment is a third used, dry and unchanged, from its start and up to 8 readings; a range of cells goes in as hours and "+
			"gravities, joined by semicolons",
		"Coleman, Fish & Block 2007 as two carriers give it, Foster et al. 2022; width held against 38 measured worts and musts", &inputs)
	f.shows(pure("end_gravity", "", "that is to be expected, 20/20 °C"))
	f.shows(pure("third", "d", "since the pitch, when a third of the sugar is used"))
	for _, of := range []struct{ name, meaning string }{{"dry", "when 99 % of the sugar is used"}, {"settled", "when the gravity was the same for three days"}} {
		f.shows(pure(of.name, "d", "since the pitch, "+of.meaning))
		for _, b := range []struct{ name, says string }{{"low_90", "one in twenty is earlier"}, {"low_50", "one in four is earlier"},
			{"high_50", "one in four is later"}, {"high_90", "one in twenty is later"}} {
			f.shows(pure(of.name+"_"+b.name, "d", "the same; "+b.says))
		}
	}
	f.shows(out("stops", units.Percent, "chance that it stops for good with a tenth of the sugar or more left"))
	f.call = func(in, out []float64) error { return forecast(in, out, first) }
	return []*Function{heavy(f)}
}

func forecast(in, out []float64, first int) error {
	const fn = "ferment_forecast"
	start := kinetics.Start{Sugar: as(units.GramPerLitre, in[0]), Nitrogen: as(units.MilligramPerLitre, in[1]), Yeast: as(units.GramPerLitre, in[5]), PH: in[6]}
	pace, err := kinetics.NewPace(start, kinetics.Hold{Temperature: as(units.Celsius, in[2])})
	if err != nil {
		return err
	}
	original, end, division := in[3], in[4], in[7]
	if falls := original - end; !(falls >= 2*division) {
		return &units.RangeError{Func: fn, Quantity: "original gravity less the floor", Value: falls, Min: 2 * division, Max: 0.23,
			Source: "two divisions of the hydrometer"}
	}
	f := kinetics.NewForecast(pace)
	const perRoot12, least, most = 0.2886751345948129, 1, 50 // 1/√12; % of the sugar
	spread := as(units.Percent, min(max(100*division*perRoot12/(original-end), least), most))
	for i := first; i < len(in); i += 2 {
		hour, gravity := in[i], in[i+1]
		if gravity == 0 {
			continue
		}
		if gravity < 0.97 {
			return &units.RangeError{Func: fn, Quantity: fmt.Sprintf("gravity %d", (i-first)/2+1), Value: gravity, Min: 0.97, Max: 1.2,
				Source: "as a hydrometer shows it"}
		}
		if hour == 0 && i > first {
			return &units.RangeError{Func: fn, Quantity: fmt.Sprintf("hour %d", (i-first)/2+1), Value: hour, Unit: "h", Min: 0.01, Max: 2136,
				Source: "a gravity has its hour; only the first can be at the pitch"}
		}
		used := min(max((original-gravity)/(original-end), 0), 1)
		if err := f.Add(hours(hour), as(units.Fraction, used), spread); err != nil {
			return err
		}
	}
	fit := f.Fit()
	third, err := fit.When(as(units.Fraction, 1./3))
	if err != nil {
		return err
	}
	dry, err := fit.When(units.Percent.Of(99))
	if err != nil {
		return err
	}
	out[0] = original - (original-end)*fit.Used(90*24*time.Hour).Median.In(units.Fraction)
	days := func(t time.Duration) float64 { return t.Hours() / 24 }
	out[1] = days(third.Median)
	for k, more := range []float64{0, 3} {
		for i, t := range []time.Duration{dry.Median, dry.Low90, dry.Low50, dry.High50, dry.High90} {
			out[2+5*k+i] = days(t) + more
		}
	}
	out[12] = fit.Stops(units.Percent.Of(90)).In(units.Percent)
	return nil
}
