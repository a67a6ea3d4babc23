package yeast_test

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

// Dry yeast a year old for 60 L at 7 °P.
func ExamplePack_Need() {
	cells, _ := yeast.CellsToPitch(yeast.UsualRate().Value, units.DegreePlato.Of(7), units.Litre.Of(60))
	pack, _ := yeast.DryPack(units.Cells{}, units.Celsius.Of(6))
	pitch, err := pack.Need(cells, 365*24*time.Hour)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(cells.Text(units.BillionCells, 0), "in", pitch.Mass.Value.Text(units.Gram, 0), "of dry yeast,", pitch.Viable.Text(units.Percent, 0), "of it alive")
	fmt.Println(pitch.Mass.Evidence)
	// Output:
	// 420 billion cells in 44 g of dry yeast, 95 % of it alive
	// supplier sheets, dry yeast (recalled from memory)
}
