package nutrient_test

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient"
	"example.org/zymase/units"
)

// White sugar for 60 L at 4.6 % vol: what to weigh, and where the hydrometer starts and
// ends.
func ExampleSugarForStrength() {
	b, err := nutrient.SugarForStrength(nutrient.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Fermentable.Text(units.Kilogram, 2), "in", b.Water.Text(units.Kilogram, 1), "of water")
	fmt.Printf("from %.4f to %.4f\n", b.Start.Gravity().SG(), b.Finish.Gravity().SG())
	// Output:
	// 4.42 kg in 57.4 kg of water
	// from 1.0282 to 0.9940
}

// A kettle of 70 L at 95 °C is full: how much sugar for 5 % vol?
func ExampleWash_For() {
	w := nutrient.Wash{
		Fermentable: nutrient.WhiteSugar(),
		Attenuation: units.Percent.Of(100),
		Basis:       nutrient.Kettle(units.Litre.Of(70), units.Celsius.Of(95)),
	}
	b, err := w.For(units.PercentVolume.Of(5))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Fermentable.Text(units.Kilogram, 2))
	// Output: 5.37 kg
}

// 500 g of sugar in 5 kg of water: how strong?
func ExampleWash_From() {
	w := nutrient.Wash{
		Fermentable: nutrient.WhiteSugar(),
		Attenuation: units.Percent.Of(100),
		Basis:       nutrient.WaterAtHand(units.Kilogram.Of(5)),
	}
	b, err := w.From(units.Gram.Of(500))
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(b.Finish.ByVolume().Text(units.PercentVolume, 2))
	// Output: 5.91 % vol
}

// Nitrogen for a demanding strain in a wash of 200 g/L of sugar: a salt up to the law's
// limit, the rest from yeast, in three stages.
func ExampleFeedInOrder() {
	need, _ := nutrient.NeedBySugar(units.GramPerLitre.Of(200), nutrient.HighDemand)
	feed, err := nutrient.FeedInOrder(need.Nitrogen.Value, units.Litre.Of(60), nutrient.US,
		nutrient.DiammoniumPhosphate(), nutrient.AutolysedYeast())
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println("need", need.Nitrogen.Value.Text(units.MilligramPerLitre, 0), "from", need.Nitrogen.Low.Text(units.MilligramPerLitre, 0), "to", need.Nitrogen.High.Text(units.MilligramPerLitre, 0))
	scale, _ := units.ParseExact[units.Mass]("0.1 g")
	schedule, _ := nutrient.InStages(3, scale, feed.Doses...)
	for i, d := range feed.Doses {
		fmt.Println(d.Source, schedule.Totals[i])
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

// Dry yeast a year old for 60 L at 7 °P.
func ExamplePack_Need() {
	cells, _ := nutrient.CellsToPitch(units.Litre.Of(60), units.DegreePlato.Of(7), nutrient.UsualPitch().Value)
	pack, _ := nutrient.DryPack(nutrient.Cells{}, units.Celsius.Of(6))
	pitch, err := pack.Need(cells, 365*24*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(cells, "in", pitch.Mass.Text(units.Gram, 0), "of dry yeast,", pitch.Viable.Text(units.Percent, 0), "of it alive")
	fmt.Println(pitch.Evidence)
	// Output:
	// 420 billion cells in 44 g of dry yeast, 95 % of it alive
	// supplier sheets, dry yeast (recalled from memory)
}

// What a kilogram of dextrose powder is.
func ExampleFermentable_Of() {
	p, _ := nutrient.DextroseMonohydrate().Of(units.Kilogram.Of(1))
	fmt.Println("water", p.Water.Text(units.Gram, 1), "dextrose", p.Sugar.Text(units.Gram, 1), "at most", p.GayLussac.Text(units.Gram, 1), "of ethanol")
	// Output: water 90.9 g dextrose 909.1 g at most 464.9 g of ethanol
}

// Plain dextrose may hold crystal water or not.
func ExampleParseFermentable() {
	_, err := nutrient.ParseFermentable("dextrose")
	fmt.Println(err)
	// Output: "dextrose" is not a fermentable: say dextrose monohydrate (the powder of the trade) or dextrose anhydrous
}
