package water_test

import (
	"fmt"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// The hall's well: soft water at 12 °C.
func well() water.Profile {
	mg := units.MilligramPerLitre.Of
	p, err := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(26),
		water.Calcium.At(mg(10)), water.Magnesium.At(mg(2)), water.Sodium.At(mg(5)),
		water.Chloride.At(mg(8)), water.Sulfate.At(mg(8)))
	if err != nil {
		panic(err)
	}
	return p
}

// measured is the well with the pH that a meter showed.
func measured() water.Profile {
	p, err := well().WithPH(7.0)
	if err != nil {
		panic(err)
	}
	return p
}

func ExampleNewProfile() {
	p := well()
	fmt.Println(p.Ion(water.Calcium), "of calcium")
	fmt.Println("alkalinity", p.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0))
	fmt.Println("hardness", p.Hardness().Text(units.GermanDegree, 2), "calcium alone", p.CalciumHardness().Text(units.GermanDegree, 2))
	fmt.Println("temporary", p.TemporaryHardness().Text(units.MilligramPerLitreCaCO3, 1))
	fmt.Println("residual alkalinity", p.ResidualAlkalinity().Text(units.MilligramPerLitreCaCO3, 1))
	fmt.Println("solids", p.DissolvedSolids().Text(units.MilligramPerLitre, 0), "at", p.Temperature())
	// Output:
	// 10 mg/L of calcium
	// alkalinity 26 mg/L as CaCO3
	// hardness 1.86 °dH calcium alone 1.40 °dH
	// temporary 25.0 mg/L as CaCO3
	// residual alkalinity 17.7 mg/L as CaCO3
	// solids 65 mg/L at 12 °C
}

func ExampleProfile_IonicBalance() {
	b := well().IonicBalance()
	fmt.Println(b.Cations.Text(units.MilliequivalentPerLitre, 3), b.Anions.Text(units.MilliequivalentPerLitre, 3),
		b.Difference().Text(units.Percent, 1), b.Acceptable)
	// Output: 0.881 mEq/L 0.912 mEq/L -1.7 % true
}

func ExampleParseIon() {
	i, _ := water.ParseIon("SO4--")
	fmt.Println(i, i.Name(), i.Symbol(), i.Charge())
	fmt.Printf("%s, %d ions\n", i.MolarMass().Text(units.GramPerMole, 3), len(water.Ions()))
	_, err := water.ParseIon("gold")
	fmt.Println(err)
	// Output:
	// sulfate sulfate SO42- -2
	// 96.056 g/mol, 28 ions
	// water.ParseIon: unknown ion "gold"
}

func ExampleIon_MarshalText() {
	b, _ := water.Calcium.MarshalText()
	var i water.Ion
	err := i.UnmarshalText([]byte("K+"))
	fmt.Printf("%s, %v %v\n", b, i, err)
	// Output: calcium, potassium <nil>
}

func ExampleSalts() {
	for _, s := range water.Salts()[:3] {
		fmt.Println(s, s.Formula(), s.Composition().Calcium.Text(units.Percent, 2))
	}
	fmt.Println(water.Dechlorinators())
	// Output:
	// gypsum CaSO4.2H2O 23.28 %
	// calcium chloride dihydrate CaCl2.2H2O 27.26 %
	// calcium chloride anhydrous CaCl2 36.11 %
	// [sodium metabisulfite potassium metabisulfite sodium bisulfite sodium sulfite anhydrous ascorbic acid]
}

// 6 g of gypsum in 60 L is 100 mg/L: 23.28 mg/L of calcium.
func ExampleProfile_Add() {
	p, err := well().Add(units.Litre.Of(60), material.Gypsum().Dose(units.Gram.Of(6)))
	fmt.Println(p.Ion(water.Calcium).Text(units.MilligramPerLitre, 2), p.Ion(water.Sulfate).Text(units.MilligramPerLitre, 2), err)
	// Output: 33.28 mg/L 63.79 mg/L <nil>
}

func ExampleBlend() {
	pure, _ := water.Distilled(units.Celsius.Of(12))
	m, err := water.Blend(water.Portion{Water: measured(), Volume: units.Litre.Of(20)}, water.Portion{Water: pure, Volume: units.Litre.Of(40)})
	fmt.Println(m.Ion(water.Sodium).Text(units.MilligramPerLitre, 2), err)
	half, _ := well().Dilute(units.Litre.Of(1), units.Litre.Of(1))
	fmt.Println(half.Ion(water.Sodium))
	share, _ := well().DilutionFor(water.Sodium, units.MilligramPerLitre.Of(2))
	fmt.Println(share)
	// Output:
	// 1.67 mg/L <nil>
	// 2.5 mg/L
	// 60 %
}

func ExampleRequest_Solve() {
	mg := units.MilligramPerLitre.Of
	r, err := water.Request{
		Water: well(), Volume: units.Litre.Of(60),
		Salts:   []water.Stock{{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}, {Salt: material.TableSalt()}},
		Targets: []water.Target{water.Calcium.Aim(mg(50)), water.Chloride.Aim(mg(40)), water.Sulfate.Between(mg(50), mg(70))},
		Limits:  append(water.SulfateToChloride(1, 2), water.Sodium.AtMost(mg(20)), water.Calcium.AtLeast(mg(30))),
	}.Solve()
	fmt.Println(err)
	for _, d := range r.Doses {
		fmt.Println(d.Material, d.Mass.Text(units.Gram, 2))
	}
	fmt.Println(r.Water.Ion(water.Calcium).Text(units.MilligramPerLitre, 1))
	// Output:
	// <nil>
	// gypsum 5.65 g
	// calcium chloride dihydrate 3.98 g
	// 50.0 mg/L
}

func ExampleRequest_Solve_stock() {
	mg := units.MilligramPerLitre.Of
	r, err := water.Request{Water: well(), Volume: units.Litre.Of(60),
		Salts:   []water.Stock{{Salt: material.Gypsum()}, {Salt: material.TableSalt(), Most: units.Gram.Of(2)}},
		Targets: []water.Target{water.Calcium.Aim(mg(40)), water.Sodium.Aim(mg(25))}}.Solve()
	for _, d := range r.Doses {
		fmt.Println(d.Material, d.Mass.Text(units.Gram, 2))
	}
	fmt.Println(err)
	// Output:
	// gypsum 7.73 g
	// table salt 2.00 g
	// <nil>
}

func ExampleRequest_SolveSteps() {
	mg := units.MilligramPerLitre.Of
	step, _ := units.ParseExact[units.Mass]("0.5 g")
	w, err := water.Request{
		Water: well(), Volume: units.Litre.Of(60), Salts: []water.Stock{{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}},
		Targets: []water.Target{water.Calcium.Aim(mg(50)), water.Chloride.Aim(mg(40)), water.Sulfate.Aim(mg(60))},
	}.SolveSteps(step)
	fmt.Println(w.Masses, w.Proven, err)
	// Output:
	// [5.5 g 4 g] true <nil>
}

func ExampleRequest_Explain() {
	mg := units.MilligramPerLitre.Of
	limit := water.Sodium.AtMost(mg(20))
	e, err := water.Request{
		Water: well(), Volume: units.Litre.Of(60), Salts: []water.Stock{{Salt: material.TableSalt()}},
		Targets: []water.Target{water.Chloride.Aim(mg(60)), water.Magnesium.Aim(mg(10))}, Limits: []water.Bound{limit},
	}.Explain()
	fmt.Println(limit.Name(), err)
	for _, b := range e.Binding {
		fmt.Println("binds:", b.Name)
	}
	for _, reason := range e.Reasons {
		fmt.Println(reason)
	}
	// Output:
	// sodium <nil>
	// binds: sodium at most 20 mg/L
	// chloride -28.9 mg/L off: a limit or a stock holds the doses back
	// magnesium -8.0 mg/L off: no salt at hand brings it
}

func ExampleHardnessBetween() {
	cc := units.MilligramPerLitreCaCO3.Of
	_, err := water.Request{
		Water: well(), Volume: units.Litre.Of(60), Salts: []water.Stock{{Salt: material.TableSalt()}},
		Targets: []water.Target{water.Sodium.Aim(units.MilligramPerLitre.Of(20))},
		Limits:  []water.Bound{water.HardnessBetween(cc(50), cc(100)), water.ResidualAlkalinityBetween(cc(0), cc(50))},
	}.Solve()
	fmt.Println(err)
	// Output: water.Request.Solve: hardness cannot be met: the water has 33.21 mg/L as CaCO3, at least 50 wanted, and the salts at hand bring it to 33.21 at most
}

func ExampleReport_Profile() {
	p, notes, err := water.Report{
		Temperature: units.Celsius.Of(12),
		Readings: []water.ReportLine{
			{Ion: water.Calcium, Value: 2.5, As: water.AsGermanDegree},
			{Ion: water.Nitrate, Value: 1.2, As: water.AsNitrogen},
			{Ion: water.Sulfate, Value: 0.4, As: water.AsEquivalents},
		},
		Alkalinity: 1.05, AlkalinityAs: water.AsEquivalents, Endpoint: 4.3, Estimate: true,
	}.Profile()
	fmt.Println(p.Ion(water.Calcium).Text(units.MilligramPerLitre, 2), p.Ion(water.Nitrate).Text(units.MilligramPerLitre, 2), err)
	for _, n := range notes {
		fmt.Println(n)
	}
	// Output:
	// 17.87 mg/L 5.31 mg/L <nil>
	// alkalinity: 0.050 mEq/L taken off for the acid left at pH 4.3
	// sodium: 13.7 mg/L added to balance the charges, an estimate
}
