package sugar

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// GlucoseSyrup returns a glucose (corn) syrup by its solids and its dextrose
// equivalent, the reducing power of the solids against dextrose. Two syrups of one
// equivalent may differ in how they were made, and so in how much of them ferments;
// the spread says so.
//
//   - Source: sugars of acid-converted syrups, % of the solids: at 30, 36, 42, 55 and 64
//     DE glucose 10, 14, 19, 31, 37; maltose 9, 12, 14, 18, 32; maltotriose 10, 11, 12,
//     13, 11 (trade tables, recalled from memory); between them straight lines. 64 DE is
//     made with enzymes. Codex CXS 212-1999: at least 20 DE (read), solids at least 70 %
//     (recalled from memory). At 100 DE all is glucose.
//   - Range: solids 70 to 90 %, 30 to 64 DE; beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: a tenth of the sugar. From the definition alone, the share of sugars
//     of one to three units lies between DE and 2.8 DE.
func GlucoseSyrup(solids units.Share, dextroseEquivalent units.Share) (Fermentable, error) {
	const fn, source = "sugar.GlucoseSyrup", "trade tables of glucose syrups"
	d, de := solids.In(units.Percent)/100, dextroseEquivalent.In(units.Percent)
	if err := limit.Check(fn, "solids", solids.In(units.Percent), "%", 70, 90, source); err != nil {
		return Fermentable{}, err
	}
	if err := limit.Check(fn, "dextrose equivalent", de, "%", 30, 64, source); err != nil {
		return Fermentable{}, err
	}
	table := [...]struct{ de, glucose, maltose, maltotriose float64 }{
		{30, 10, 9, 10}, {36, 14, 12, 11}, {42, 19, 14, 12}, {55, 31, 18, 13}, {64, 37, 32, 11},
	}
	i := 0
	for i < len(table)-2 && de > table[i+1].de {
		i++
	}
	a, b := table[i], table[i+1]
	u := (de - a.de) / (b.de - a.de)
	at := func(x, y float64) float64 { return d * (x + u*(y-x)) / 100 }
	f := Fermentable{
		name:    "glucose syrup",
		glucose: at(a.glucose, b.glucose), di: at(a.maltose, b.maltose), tri: at(a.maltotriose, b.maltotriose),
		spread: 0.1, evidence: evidence.Evidence{Source: source, Grade: evidence.Recalled},
		cautions: caution.List{"glucose_syrups_differ: Glucose syrups of one dextrose equivalent differ in how much ferments: take the maker's sugar spectrum where there is one."},
	}
	f.rest = d - f.sugar()
	return f, nil
}

// Juice returns a fruit juice or a must by its degrees Brix and the share of the
// dissolved solids that ferments; the zero share takes 90 %. The sugar counts as glucose
// and fructose in equal parts.
//
//   - Source: common practice, no source: 90 % of the solids of a must ferment, 80 to
//     95 % of fruit juices, the rest being acids, sorbitol and pectin.
//   - Range: 3 to 70 °Bx, share 50 to 100 %; beyond it the error is a
//     [*units.RangeError].
//   - Units: °Bx by mass, from a hydrometer or a refractometer.
//   - Uncertainty: 5 % of the sugar.
func Juice(brix units.Extract, fermentable units.Share) (Fermentable, error) {
	const fn, source = "sugar.Juice", "fruit juices"
	b, part := brix.In(units.DegreePlato), fermentable.In(units.Percent)/100
	if part == 0 {
		part = 0.90
	}
	if err := limit.Check(fn, "extract", b, "°Bx", 3, 70, source); err != nil {
		return Fermentable{}, err
	}
	if err := limit.Check(fn, "fermentable share", 100*part, "%", 50, 100, source); err != nil {
		return Fermentable{}, err
	}
	return Fermentable{
		name: "juice", glucose: b / 100 * part / 2, fructose: b / 100 * part / 2, rest: b / 100 * (1 - part), spread: 0.05,
		cautions: caution.List{"juice_has_acid: Juices hold acids and nitrogen of their own: measure both before you add any."},
	}, nil
}
