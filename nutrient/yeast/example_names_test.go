package yeast_test

import (
	"fmt"

	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
)

// Cells add up.
func ExampleCellsIn() {
	a := units.BillionCells.Of(100)
	gram, _ := yeast.CellsIn(units.Gram.Of(1))
	sum := a.Plus(gram.Value)
	fmt.Println(sum.In(units.BillionCells), yeast.UsualRate().Value.In(units.MillionPerMillilitrePlato))
	// Output: 120 1
}
