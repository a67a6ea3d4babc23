package yeast_test

import (
	"fmt"

	"example.org/zymase/nutrient/yeast"
)

// Cells add up.
func ExampleCells_Plus() {
	a, _ := yeast.Billion(100)
	sum := a.Plus(yeast.CellsPerDryGram().Value)
	fmt.Println(sum.Billion(), yeast.UsualRate().Value.Million())
	// Output: 120 1
}
