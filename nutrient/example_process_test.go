package nutrient_test

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

// Nitrogen, some of it amino, and zinc at the least cost.
func ExampleCheapestFeed() {
	f, _ := nutrient.CheapestFeed(
		nutrient.Wants{Nitrogen: units.MilligramPerLitre.Of(80), Amino: units.MilligramPerLitre.Of(10), Zinc: units.MilligramPerLitre.Of(0.5)},
		units.Litre.Of(60), law.US,
		nutrient.Offer{Material: material.DiammoniumPhosphate(), Price: decimal.RequireFromString("9.50")},
		nutrient.Offer{Material: material.AutolysedYeast(), Price: decimal.RequireFromString("38")},
		nutrient.Offer{Material: material.ZincSulfateHeptahydrate(), Price: decimal.RequireFromString("30")},
	)
	for _, d := range f.Doses {
		fmt.Println(d.Material, d.Mass.Text(units.Gram, 2))
	}
	fmt.Println("phosphorus too:", f.Supply.Phosphorus.Text(units.MilligramPerLitre, 0))
	// Output:
	// diammonium phosphate 19.80 g
	// autolysed yeast 15.00 g
	// zinc sulfate heptahydrate 0.13 g
	// phosphorus too: 81 mg/L
}

// What 20 g of a blend with 12 % nitrogen on its label, a third of it amino, brings to 60 L.
func ExampleSupplyOf() {
	blend, err := material.ByLabel("yeast food", material.Composition{
		AmmoniumNitrogen: units.Percent.Of(8), AminoNitrogen: units.Percent.Of(4), Phosphorus: units.Percent.Of(10),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	s, _ := nutrient.SupplyOf(units.Litre.Of(60), material.Dose{Material: blend, Mass: units.Gram.Of(20)})
	fmt.Println(s.Nitrogen().Text(units.MilligramPerLitre, 1), "of it amino", s.Amino.Text(units.MilligramPerLitre, 1), "from", blend.Evidence())
	// Output: 40.0 mg/L of it amino 13.3 mg/L from the label (read)
}

// The sources by name, what each holds, and the limit it falls under.
func ExampleOffers() {
	for _, o := range nutrient.Offers(nutrient.Sources()[:6]...) {
		c := o.Material.Composition()
		fmt.Println(o.Material, c.Nitrogen().Text(units.Percent, 2), "N,", c.Phosphorus.Text(units.Percent, 2), "P,", law.SubstanceOf(o.Material))
	}
	// Output:
	// diammonium phosphate 21.21 % N, 23.46 % P, ammonium phosphate
	// monoammonium phosphate 12.18 % N, 26.93 % P, ammonium phosphate
	// ammonium sulfate 21.20 % N, 0.00 % P, ammonium sulfate
	// ammonium chloride 26.19 % N, 0.00 % P, no listed substance
	// urea 46.65 % N, 0.00 % P, no listed substance
	// autolysed yeast 4.00 % N, 1.30 % P, no listed substance
}

// A must with 60 mg/L of ammonia and 90 mg/L of alpha amino nitrogen.
func ExampleAssimilable() {
	n, _ := nutrient.Assimilable(units.MilligramPerLitre.Of(60), units.MilligramPerLitre.Of(90))
	fmt.Println(n.Text(units.MilligramPerLitre, 0))
	// Output: 139 mg/L
}

// When the additions go in, and about when that is.
func ExampleStageShares() {
	all, _ := nutrient.StageShares(3)
	for _, s := range all {
		d, _ := nutrient.EstimatedTime(s, 8*24*time.Hour)
		fmt.Println(s.Text(units.Percent, 0), "after about", d.Round(time.Hour))
	}
	// Output:
	// 0 % after about 12h0m0s
	// 17 % after about 42h0m0s
	// 33 % after about 72h0m0s
}
