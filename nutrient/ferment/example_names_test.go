package ferment_test

import (
	"fmt"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
)

// Heat by two of the published values.
func ExampleHeatRate_Of() {
	for _, h := range ferment.HeatRates()[1:] {
		q, _ := h.Of(units.Kilogram.Of(1))
		fmt.Printf("%s for a kilogram: %s\n", q.Text(units.Kilojoule, 0), h.Evidence())
	}
	// Output:
	// 652 kJ for a kilogram: common practice, no source
	// 563 kJ for a kilogram: NBS tables 1982; Goldberg & Tewari 1989, enthalpies of formation in water (recalled from memory)
}
