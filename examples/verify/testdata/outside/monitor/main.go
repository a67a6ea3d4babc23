// Command monitor follows a ferment: lines of hours and gravity in, what they mean out.
package main

import (
	"bufio"
	"fmt"
	"log"
	"os"
	"strings"
	"time"

	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/units"
)

func main() {
	log.SetFlags(0)
	wash, err := gravity.NewSolution(units.Kilogram.Of(55), units.Kilogram.Of(4.5), units.Mass{})
	if err != nil {
		log.Fatal(err)
	}
	pace, err := kinetics.NewPace(kinetics.Start{
		Sugar: wash.Concentration(gravity.AsSucrose), Nitrogen: units.MilligramPerLitre.Of(120), Yeast: units.GramPerLitre.Of(0.4),
	}, kinetics.Hold{Temperature: units.Celsius.Of(20)})
	if err != nil {
		log.Fatal(err)
	}
	forecast := kinetics.NewForecast(pace)
	for in := bufio.NewScanner(os.Stdin); in.Scan(); {
		after, read, _ := strings.Cut(in.Text(), " ")
		at, err := time.ParseDuration(after)
		if err != nil {
			log.Fatal(err)
		}
		sg, err := gravity.ParseGravity(read)
		if err != nil {
			log.Fatal(err)
		}
		p, err := wash.At(sg, wash.WashYield())
		if err != nil {
			fmt.Println(after, err) // the next reading may be better
			continue
		}
		if err := forecast.Add(at, p.Part, units.Percent.Of(3)); err != nil {
			log.Fatal(err)
		}
		line := fmt.Sprintf("%s: %s of the sugar used, %s", after, p.Part.Text(units.Percent, 0), p.Liquid.ByVolume().Text(units.PercentVolume, 1))
		if when, err := forecast.Fit().When(units.Percent.Of(95)); err == nil {
			line += fmt.Sprintf(", nearly dry between %.0f and %.0f h", when.Low90.Hours(), when.High90.Hours())
		}
		fmt.Println(line)
		for _, c := range p.Cautions() {
			fmt.Println("  " + c.Text())
		}
	}
}
