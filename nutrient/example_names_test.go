package nutrient_test

import (
	"fmt"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Words of a request become values.
func ExampleSources() {
	source, _ := material.FindAmong("DAP", nutrient.Sources()...)
	var demand nutrient.Demand
	var whose law.Jurisdiction
	fmt.Println(demand.UnmarshalText([]byte("high")), whose.UnmarshalText([]byte("EU")))
	buffer, _ := material.FindAmong("potassium citrate", ferment.Buffers()...)
	fmt.Println(source, "/", demand, "/", whose, "/", buffer)
	fmt.Println(buffer.MolarMass().Text(units.GramPerMole, 2))
	_, err := material.FindAmong("zinc sulfate", nutrient.Sources()...)
	fmt.Println(err)
	// Output:
	// <nil> <nil>
	// diammonium phosphate / high / EU / tripotassium citrate monohydrate
	// 324.41 g/mol
	// material.FindAmong: unknown material "zinc sulfate"; one of zinc sulfate heptahydrate, zinc sulfate monohydrate
}

// What the salts bring, in a gram.
func ExampleSources_composition() {
	show := func(s material.Material) {
		p := s.Composition()
		fmt.Printf("%s: N %.1f, P %.1f, K %.1f, Mg %.1f, Zn %.1f %%\n", s, s.Composition().Nitrogen().In(units.Percent),
			p.Phosphorus.In(units.Percent), p.Potassium.In(units.Percent), p.Magnesium.In(units.Percent), p.Zinc.In(units.Percent))
	}
	show(material.MonoammoniumPhosphate())
	show(material.AmmoniumSulfate())
	show(shelf.Material("ammonium chloride"))
	show(material.EpsomSalt())
	show(shelf.Material("potassium dihydrogen phosphate"))
	show(material.PotassiumChloride())
	show(shelf.Material("zinc sulfate monohydrate"))
	fmt.Println(shelf.Material("thiamine hydrochloride").Composition().Thiamine.Text(units.Percent, 0))
	fmt.Println(shelf.Material("urea").Cautions()[0])
	// Output:
	// monoammonium phosphate: N 12.2, P 26.9, K 0.0, Mg 0.0, Zn 0.0 %
	// ammonium sulfate: N 21.2, P 0.0, K 0.0, Mg 0.0, Zn 0.0 %
	// ammonium chloride: N 26.2, P 0.0, K 0.0, Mg 0.0, Zn 0.0 %
	// Epsom salt: N 0.0, P 0.0, K 0.0, Mg 9.9, Zn 0.0 %
	// potassium dihydrogen phosphate: N 0.0, P 22.8, K 28.7, Mg 0.0, Zn 0.0 %
	// potassium chloride: N 0.0, P 0.0, K 52.4, Mg 0.0, Zn 0.0 %
	// zinc sulfate monohydrate: N 0.0, P 0.0, K 0.0, Mg 0.0, Zn 36.4 %
	// 100 %
	// Urea leads to ethyl carbamate in the drink and is not in the lists of additions for wine that were read; do not use it in anything to drink.
}

// The methods for the nitrogen of musts, and of the yeast that grows.
func ExampleNeedByGrowth() {
	grown, _ := nutrient.NeedByGrowth(units.GramPerLitre.Of(1.5))
	all := []nutrient.Need{grown}
	for _, method := range []string{"of a must by its sugar", "least of a must", "of a white must, low risk", "free amino nitrogen of a must"} {
		n, _ := nutrient.NeedOfMust(method, units.DegreePlato.Of(24))
		all = append(all, n)
	}
	for _, n := range all {
		f := n.Nitrogen
		fmt.Println(n.Method+":", f.Value.Text(units.MilligramPerLitre, 0), "from", f.Low.Text(units.MilligramPerLitre, 0), "to",
			f.High.Text(units.MilligramPerLitre, 0))
	}
	// Output:
	// by the yeast that grows: 150 mg/L from 96 mg/L to 150 mg/L
	// of a must by its sugar: 275 mg/L from 275 mg/L to 275 mg/L
	// least of a must: 140 mg/L from 140 mg/L to 500 mg/L
	// of a white must, low risk: 150 mg/L from 150 mg/L to 350 mg/L
	// free amino nitrogen of a must: 275 mg/L from 250 mg/L to 300 mg/L
}
