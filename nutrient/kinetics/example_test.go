package kinetics_test

import (
	"fmt"
	"math"
	"time"

	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

// A sugar wash of 75 g/L at 20 °C, with 100 mg/L of nitrogen: by the plan alone, and as three
// readings come in.
func Example() {
	pace, err := kinetics.NewPace(kinetics.Start{
		Sugar:    units.GramPerLitre.Of(75),
		Nitrogen: units.MilligramPerLitre.Of(100),
		Yeast:    units.GramPerLitre.Of(0.6),
	}, kinetics.Hold{Temperature: units.Celsius.Of(20)})
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(pace.Caution())

	forecast := kinetics.NewForecast(pace)
	say := func() {
		dry, err := forecast.Fit().When(units.Percent.Of(95))
		if err != nil {
			fmt.Println(err)
			return
		}
		fmt.Printf("95 %% used after %.1f days, nine in ten within %.1f to %.1f\n",
			dry.Median.Hours()/24, dry.Low90.Hours()/24, dry.High90.Hours()/24)
	}
	say()
	readings := []struct {
		hours int
		used  units.Share
	}{{24, units.Percent.Of(10)}, {48, units.Percent.Of(38)}, {72, units.Percent.Of(63)}}
	for _, r := range readings {
		if err := forecast.Add(time.Duration(r.hours)*time.Hour, r.used, units.Percent.Of(2)); err != nil {
			fmt.Println(err)
			return
		}
		say()
	}
	// Output:
	// The pace is a model's of grape must; outside what it was fitted to: sugar (265 to 300 g/L). Trust readings before it.
	// 95 % used after 3.7 days, nine in ten within 1.7 to 8.0
	// 95 % used after 5.2 days, nine in ten within 3.1 to 9.5
	// 95 % used after 5.5 days, nine in ten within 3.8 to 9.3
	// 95 % used after 5.4 days, nine in ten within 4.2 to 7.6
}

// What the pace alone says: when a third is used, and the hour that gives most gas and heat.
func ExampleNewPace() {
	pace, err := kinetics.NewPace(kinetics.Start{
		Sugar:    units.GramPerLitre.Of(280),
		Nitrogen: units.MilligramPerLitre.Of(250),
		Yeast:    units.GramPerLitre.Of(0.2),
	},
		kinetics.Hold{Temperature: units.Celsius.Of(16)},
		kinetics.Hold{From: 5 * 24 * time.Hour, Temperature: units.Celsius.Of(20)})
	if err != nil {
		fmt.Println(err)
		return
	}
	third, err := pace.When(units.Percent.Of(33.3))
	if err != nil {
		fmt.Println(err)
		return
	}
	peak, inAnHour := pace.Fastest()
	fmt.Printf("a third used after %.1f days\n", third.Hours()/24)
	fmt.Printf("fastest after %.1f days: %s of the sugar in an hour\n", peak.Hours()/24, inAnHour.Text(units.Percent, 2))
	fmt.Println(pace.Used(7*24*time.Hour).Text(units.Percent, 0), "used after a week")
	// Output:
	// a third used after 3.8 days
	// fastest after 5.0 days: 0.64 % of the sugar in an hour
	// 75 % used after a week
}

// A ferment that has stopped is told by three readings at least.
func ExampleForecast_Stalled() {
	pace, err := kinetics.NewPace(kinetics.Start{
		Sugar:    units.GramPerLitre.Of(75),
		Nitrogen: units.MilligramPerLitre.Of(60),
		Yeast:    units.GramPerLitre.Of(0.6),
	}, kinetics.Hold{Temperature: units.Celsius.Of(20)})
	if err != nil {
		fmt.Println(err)
		return
	}
	forecast := kinetics.NewForecast(pace)
	for i, used := range []units.Share{units.Percent.Of(18), units.Percent.Of(52), units.Percent.Of(54), units.Percent.Of(55)} {
		if err := forecast.Add(time.Duration(1+i)*24*time.Hour, used, units.Percent.Of(2)); err != nil {
			fmt.Println(err)
			return
		}
		since, stalled := forecast.Stalled()
		fmt.Println(stalled, since)
	}
	fmt.Println("stays below 90 %:", forecast.Fit().Stops(units.Percent.Of(90)).Text(units.Percent, 0))
	fmt.Println("read again after", forecast.Fit().Next(96*time.Hour))
	_, faster, leaves := forecast.Leaves()
	fmt.Println("not as planned:", leaves, "faster:", faster)
	// Output:
	// false 0s
	// false 0s
	// false 0s
	// true 48h0m0s
	// stays below 90 %: 27 %
	// read again after 216h0m0s
	// not as planned: false faster: false
}

// The peak of gas and heat of a wash of 4.3 kg of sugar, and whether its readings speak for a
// colder one.
func ExampleFit_Fastest() {
	start := kinetics.Start{
		Sugar:    units.GramPerLitre.Of(75),
		Nitrogen: units.MilligramPerLitre.Of(100),
		Yeast:    units.GramPerLitre.Of(0.6),
	}
	pace, err := kinetics.NewPace(start, kinetics.Hold{Temperature: units.Celsius.Of(20)})
	if err != nil {
		fmt.Println(err)
		return
	}
	cold, err := kinetics.NewPace(start, kinetics.Hold{Temperature: units.Celsius.Of(14)})
	if err != nil {
		fmt.Println(err)
		return
	}
	forecast := kinetics.NewForecast(pace)
	for hours, used := range map[int]units.Share{30: units.Percent.Of(8), 54: units.Percent.Of(25), 78: units.Percent.Of(42)} {
		if err := forecast.Add(time.Duration(hours)*time.Hour, used, units.Percent.Of(2)); err != nil {
			fmt.Println(err)
			return
		}
	}
	when, share := forecast.Fit().Fastest()
	fmt.Printf("fastest after %.1f days: %s of the sugar in an hour, up to %s\n", when.Median.Hours()/24, share.Median.Text(units.Percent, 2),
		share.High90.Text(units.Percent, 2))
	fmt.Println("in the hour after four days:", forecast.Fit().InAnHour(96*time.Hour).Median.Text(units.Percent, 2))
	told := forecast.On(cold).Fit().Evidence() - forecast.On(pace).Fit().Evidence()
	fmt.Printf("the colder wash is %.1f times as likely\n", math.Exp(told))
	fmt.Println(forecast.Pace().Caution() != "")
	// Output:
	// fastest after 2.2 days: 0.82 % of the sugar in an hour, up to 1.04 %
	// in the hour after four days: 0.51 %
	// the colder wash is 4.4 times as likely
	// true
}
