package ferment_test

import (
	"fmt"

	"example.org/zymase/nutrient/ferment"
)

// Heat by two of the published values.
func ExampleHeatRate_KilojoulesPerKilogram() {
	for _, h := range ferment.HeatRates()[1:] {
		fmt.Printf("%.0f kJ/kg: %s\n", h.KilojoulesPerKilogram(), h.Evidence())
	}
	// Output:
	// 652 kJ/kg: common practice, no source
	// 563 kJ/kg: NBS tables 1982; Goldberg & Tewari 1989, enthalpies of formation in water (recalled from memory)
}
