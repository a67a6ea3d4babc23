package law_test

import (
	"fmt"

	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
)

// Limits in law, exact to the digit.
func ExampleJurisdiction_Limits() {
	all, _ := law.US.Limits(law.AmmoniumPhosphate)
	for _, l := range all {
		n, unit := l.Amount()
		fmt.Println(n, unit, "=", l.GramsPerLitre(5), "g/L, printed", l.Printed+",", l.Scope.String()+",", l.Article)
	}
	thiamine, _ := law.ParseSubstance("thiamine hydrochloride")
	wine, err := law.EU.Limits(thiamine, law.Wine)
	fmt.Println(wine, err)
	fmt.Println(wine[0].Allows(units.MilligramPerLitre.Of(0.7)))
	// Output:
	// 8 lb/1000 US gal = 0.95861 g/L, printed 0.96 g/L, wine, 27 CFR 24.246 (2015 edition)
	// 10 lb/1000 US gal = 1.19826 g/L, printed 1.2 g/L, distilling material, 27 CFR 24.247 (editions of 2015 and after 2022)
	// [thiamine hydrochloride: at most 0.6 mg/L as thiamine, wine, Reg. (EU) 2019/934 annex I part A (2019), EU (recalled from memory); check the law in force] <nil>
	// false
}
