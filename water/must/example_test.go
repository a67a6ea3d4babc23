package must_test

import (
	"fmt"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

// A juice for cider: pH and acidity were measured.
func juice() must.Drink {
	r := must.Reading{PH: 3.6, Acidity: units.GramPerLitre.Of(4.6), Titration: water.MalicAcid.TitratedTo(8.2), Temperature: units.Celsius.Of(20)}
	d, err := r.Drink(must.FromApple.Acids())
	if err != nil {
		panic(err)
	}
	return d
}

func ExampleReading_Drink() {
	d := juice()
	fmt.Println(d.Water().Ion(water.Malate).Text(units.GramPerLitre, 1), "of malate")
	fmt.Println(d.StrongIons().Text(units.MilliequivalentPerLitre, 0), "of salts")
	fmt.Println("buffer", d.BufferCapacity().Text(units.MilliequivalentPerLitre, 0))
	// Output:
	// 6.8 g/L of malate
	// 34 mEq/L of salts
	// buffer 35 mEq/L
}

// Acid for taste: what it does to the pH, and to the acidity.
func ExampleDrink_WithAcid() {
	t, err := juice().WithAcid(water.MalicAcid, must.ToPH(3.4))
	if err != nil {
		panic(err)
	}
	ta, _ := t.After.Acidity(water.MalicAcid.TitratedTo(8.2))
	fmt.Printf("%s, pH %.2f, acidity %s\n", t.PerLitre.Text(units.GramPerLitre, 1), t.After.PH(), ta.Text(units.GramPerLitre, 1))
	fmt.Println(t.Cautions)
	// Output:
	// 1.8 g/L, pH 3.40, acidity 6.4 g/L
	// acid, trial, law
}

// A sour wine is brought to an acidity with potassium bicarbonate.
func ExampleDrink_WithSalt() {
	r := must.Reading{PH: 3.0, Acidity: units.GramPerLitre.Of(10), Titration: water.TartaricAcid.TitratedTo(8.2), Temperature: units.Celsius.Of(20),
		Strength: units.PercentVolume.Of(11)}
	wine, err := r.Drink(must.FromGrape.Acids())
	if err != nil {
		panic(err)
	}
	t, err := wine.WithSalt(material.PotassiumBicarbonate(), must.ToAcidity(units.GramPerLitre.Of(8), water.TartaricAcid.TitratedTo(8.2)))
	if err != nil {
		panic(err)
	}
	fmt.Printf("%s, pH %.2f\n", t.PerLitre.Text(units.GramPerLitre, 2), t.After.PH())
	// Of that potassium some settles again, as cream of tartar.
	settled, err := t.After.Settled(units.GramPerLitre.Of(1))
	if err != nil {
		panic(err)
	}
	ta, _ := settled.Acidity(water.TartaricAcid.TitratedTo(8.2))
	fmt.Printf("1 g/L settled: pH %.2f, acidity %s\n", settled.PH(), ta.Text(units.GramPerLitre, 1))
	fmt.Println(t.Cautions)
	// Output:
	// 2.67 g/L, pH 3.48
	// 1 g/L settled: pH 3.47, acidity 7.6 g/L
	// foams, trial, law, settles
}

// Sharp juice and bland: the blend for a pH.
func ExampleDrink_WithDrink() {
	r := must.Reading{PH: 3.1, Acidity: units.GramPerLitre.Of(11), Titration: water.MalicAcid.TitratedTo(8.2), Temperature: units.Celsius.Of(20)}
	sharp, err := r.Drink(must.FromApple.Acids())
	if err != nil {
		panic(err)
	}
	t, err := juice().WithDrink(sharp, must.ToPH(3.4))
	if err != nil {
		panic(err)
	}
	ta, _ := t.After.Acidity(water.MalicAcid.TitratedTo(8.2))
	fmt.Printf("%s of the sharp one, acidity %s\n", t.Share.Text(units.Percent, 0), ta.Text(units.GramPerLitre, 1))
	// Output:
	// 27 % of the sharp one, acidity 6.3 g/L
}

// From the acidity alone the pH is a guess.
func ExampleOrigin_FromAcidity() {
	e, err := must.FromApple.FromAcidity(units.GramPerLitre.Of(4.6), water.MalicAcid.TitratedTo(8.2))
	if err != nil {
		panic(err)
	}
	fmt.Printf("pH %.1f, from %.1f to %.1f\n", e.PH, e.Low, e.High)
	fmt.Println(e.Evidence)
	// Output:
	// pH 3.7, from 3.4 to 4.0
	// Kumar et al., J. Am. Soc. Hort. Sci. 2021, JASHS05056: 109 cider-apple juices, odd rows (fitted); malic acid is more than 85 % of the acids of an apple
}

// A wine by its analysis; sulfate is seldom in it.
func ExampleAnalysis_Drink() {
	mg := func(i water.Ion, c units.MassConcentration) water.Content { return i.At(c) }
	a := must.Analysis{
		Ions: []water.Content{
			mg(water.Tartrate, units.GramPerLitre.Of(1.57)), mg(water.Malate, units.GramPerLitre.Of(1.92)), mg(water.Potassium, units.MilligramPerLitre.Of(985)),
			mg(water.Calcium, units.MilligramPerLitre.Of(47)), mg(water.Magnesium, units.MilligramPerLitre.Of(113)), mg(water.Chloride, units.MilligramPerLitre.Of(49)),
			mg(water.Phosphate, units.MilligramPerLitre.Of(580)), mg(water.Sulfate, units.MilligramPerLitre.Of(300)),
		},
		Acidity: units.GramPerLitre.Of(5.62), Titration: water.TartaricAcid.TitratedTo(7), Temperature: units.Celsius.Of(20), Strength: units.PercentVolume.Of(14.4),
	}
	wine, err := a.Drink(must.AcidShares{water.Lactate.At(units.GramPerLitre.Of(1))})
	if err != nil {
		panic(err)
	}
	fmt.Printf("pH %.1f\n", wine.PH())
	// Output:
	// pH 3.4
}

func ExampleDrink_Titrate() {
	curve, err := juice().Titrate(8.2, 6)
	if err != nil {
		panic(err)
	}
	for _, p := range curve {
		fmt.Printf("pH %.2f: %s\n", p.PH, p.Base.Text(units.MilliequivalentPerLitre, 1))
	}
	// Output:
	// pH 3.60: 0.0 mEq/L
	// pH 4.52: 32.4 mEq/L
	// pH 5.44: 59.9 mEq/L
	// pH 6.36: 67.4 mEq/L
	// pH 7.28: 68.5 mEq/L
	// pH 8.20: 68.6 mEq/L
}

// Bacteria take the sharpness of a cider.
func ExampleDrink_Malolactic() {
	before := juice()
	after, err := before.Malolactic(units.Percent.Of(100))
	if err != nil {
		panic(err)
	}
	ta, _ := after.Acidity(water.MalicAcid.TitratedTo(8.2))
	fmt.Printf("pH %.2f to %.2f, acidity now %s\n", before.PH(), after.PH(), ta.Text(units.GramPerLitre, 1))
	// Output:
	// pH 3.60 to 4.07, acidity now 1.2 g/L
}

// What is dissolved is known: a wash with citric acid and potassium bicarbonate.
func ExampleNew() {
	p, err := water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(100), water.Potassium.At(units.MilligramPerLitre.Of(78)))
	if err != nil {
		panic(err)
	}
	d, err := must.New(p, units.PercentVolume.Of(5))
	if err != nil {
		panic(err)
	}
	sour, err := d.AddAcid(water.CitricAcid, units.GramPerLitre.Of(2))
	if err != nil {
		panic(err)
	}
	softer, err := sour.AddSalt(material.PotassiumBicarbonate(), units.GramPerLitre.Of(0.5))
	if err != nil {
		panic(err)
	}
	half, err := sour.Blend(softer, units.Percent.Of(50))
	if err != nil {
		panic(err)
	}
	fmt.Printf("pH %.2f, %.2f, %.2f\n", sour.PH(), softer.PH(), half.PH())
	// Output:
	// pH 2.86, 3.46, 3.15
}

// What a mead maker starts from, and how well it is known.
func ExampleOrigin_Usual() {
	u, err := must.FromHoney.Usual()
	if err != nil {
		panic(err)
	}
	fmt.Printf("%s of solids, pH %.2f (%.2f to %.2f)\n", u.Extract.Text(units.GramPerLitre, 0), u.PH.Value, u.PH.Low, u.PH.High)
	p := u.Parts[1]
	fmt.Println(p.Name, p.Content.Value.Text(units.MilligramPerLitre, 0), p.Content.Evidence)
	// Output:
	// 101 g/L of solids, pH 3.91 (3.42 to 6.10)
	// potassium 93 mg/L 70 honeys of Turkey, PMC6828168; spread: honeys of New Zealand, Food Chem. 128 (2011) 236 (read)
}

// A wash of 290 g/L of honey in distilled water, and the same once pH and acidity were measured.
func ExampleOrigin_Brings() {
	distilled, err := water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{})
	if err != nil {
		panic(err)
	}
	for _, r := range []must.Reading{{}, {PH: 3.6, Acidity: units.GramPerLitre.Of(1.1), Titration: water.TartaricAcid.TitratedTo(8.2),
		Temperature: units.Celsius.Of(20)}} {
		b, err := must.FromHoney.Brings(units.GramPerLitre.Of(290), distilled, r)
		if err != nil {
			panic(err)
		}
		fmt.Printf("pH %.2f ± %.2f, %s of potassium, %s of nitrogen\n", b.Drink.PH(), b.Band,
			b.Drink.Water().Ion(water.Potassium).Text(units.MilligramPerLitre, 0), b.Ammonium.Plus(b.Amino).Text(units.MilligramPerLitre, 0))
	}
	// Output:
	// pH 3.87 ± 0.50, 268 mg/L of potassium, 11 mg/L of nitrogen
	// pH 3.60 ± 0.05, 212 mg/L of potassium, 11 mg/L of nitrogen
}
