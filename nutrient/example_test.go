package nutrient_test

import (
	"fmt"

	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Nitrogen for a demanding strain in a wash of 200 g/L of sugar: a salt up to the law's
// limit, the rest from yeast, in three stages.
func ExampleFeedInOrder() {
	need, _ := nutrient.NeedBySugar(units.GramPerLitre.Of(200), nutrient.HighDemand)
	feed, err := nutrient.FeedInOrder(need.Nitrogen.Value, units.Litre.Of(60), law.US,
		nutrient.Offers(material.DiammoniumPhosphate(), material.AutolysedYeast())...)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("need", need.Nitrogen.Value.Text(units.MilligramPerLitre, 0), "from", need.Nitrogen.Low.Text(units.MilligramPerLitre, 0),
		"to", need.Nitrogen.High.Text(units.MilligramPerLitre, 0))
	scale, _ := units.ParseExact[units.Mass]("0.1 g")
	schedule, _ := nutrient.InStages(3, scale, feed.Doses...)
	for i, d := range feed.Doses {
		fmt.Println(d.Material, schedule.Totals[i])
	}
	for _, s := range schedule.Stages {
		fmt.Println("at", s.Used.Text(units.Percent, 0), "of the sugar:", s.Weigh[0], "and", s.Weigh[1])
	}
	fmt.Println(feed.Limits[0])
	// Output:
	// need 250 mg/L from 150 mg/L to 250 mg/L
	// diammonium phosphate 57.5 g
	// autolysed yeast 69.9 g
	// at 0 % of the sugar: 19.2 g and 23.3 g
	// at 17 % of the sugar: 19.2 g and 23.3 g
	// at 33 % of the sugar: 19.1 g and 23.3 g
	// ammonium phosphate: at most 0.96 g/L (8 lb/1000 US gal), wine, 27 CFR 24.246 (2015 edition), US; check the law in force
}

// The methods for need differ widely.
func ExampleNeeds() {
	all, _ := nutrient.Needs(units.GramPerLitre.Of(230), units.DegreePlato.Of(22), nutrient.MediumDemand)
	for _, n := range all {
		fmt.Println(n.Method+":", n.Nitrogen.Value.Text(units.MilligramPerLitre, 0), "-", n.Nitrogen.Evidence.Grade)
	}
	// Output:
	// by sugar and strain: 207 mg/L - recalled from memory
	// of a must by its sugar: 225 mg/L - recalled from memory
	// least of a must: 140 mg/L - recalled from memory
	// of a white must, low risk: 150 mg/L - read
	// free amino nitrogen of a must: 275 mg/L - read
}
