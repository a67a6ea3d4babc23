package yeast_test

import (
	"fmt"

	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

// Cells add up.
func ExampleCells_Plus() {
	a, _ := yeast.Billion(100)
	gram, _ := yeast.CellsIn(units.Gram.Of(1))
	sum := a.Plus(gram.Value)
	fmt.Println(sum.Billion(), yeast.UsualRate().Value.Million())
	// Output: 120 1
}
