package finish_test

import (
	"fmt"

	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// 0.6 mL of an extract of 40 % vol in a glass of 200 mL was right: how much for 60 L, and
// what does it do to the strength?
func ExampleBenchTrial_Scale() {
	b, _ := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	trial := finish.BenchTrial{Sample: units.Millilitre.Of(200), Added: units.Millilitre.Of(0.6)}
	f, _ := trial.Scale(b.Finish, finish.Flavouring{Strength: units.PercentVolume.Of(40), OilBased: true})
	fmt.Println(f.Flavouring.Text(units.Millilitre, 0), "from", f.Before.Text(units.PercentVolume, 2), "to", f.After.Text(units.PercentVolume, 2))
	fmt.Println(f.AlcoholShare.Text(units.Percent, 1), "of the alcohol is the extract's")
	fmt.Println(f.Cautions.Has("haze"))
	// Output:
	// 180 mL from 4.60 % vol to 4.71 % vol
	// 2.5 % of the alcohol is the extract's
	// true
}

// A flavouring of 30 % vol with 200 g/L of sugar, as masses.
func ExampleFlavouring_Liquid() {
	f := finish.Flavouring{Strength: units.PercentVolume.Of(30), Sugar: units.GramPerLitre.Of(200)}
	l, _ := f.Liquid(units.Millilitre.Of(500))
	fmt.Println(l.Ethanol().Text(units.Gram, 1), "ethanol,", l.Extract().Text(units.Gram, 1), "sugar,", l.Water().Text(units.Gram, 1), "water")
	// Output: 118.4 g ethanol, 100.0 g sugar, 301.0 g water
}

// Water for a base of 9 % vol with 0.2 L of an extract in it, down to 4.6 % vol.
func ExampleDilute() {
	b, _ := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(9), units.Litre.Of(30))
	extract, _ := finish.Flavouring{Strength: units.PercentVolume.Of(60)}.Liquid(units.Litre.Of(0.2))
	d, _ := finish.Dilute(b.Finish, extract, units.PercentVolume.Of(4.6))
	plain, _ := finish.Dilute(b.Finish, gravity.Solution{}, units.PercentVolume.Of(4.6))
	fmt.Println(d.Water.Text(units.Kilogram, 1), "with the extract,", plain.Water.Text(units.Kilogram, 1), "without")
	// Output: 31.0 kg with the extract, 28.6 kg without
}

// Carbon that cleared 0.5 L with 0.2 g, for the batch.
func ExampleScaleDose() {
	m, _ := finish.ScaleDose(units.Litre.Of(0.5), units.Gram.Of(0.2), units.Litre.Of(60))
	fmt.Println(m.Text(units.Gram, 1))
	// Output: 24.0 g
}

// 20 g/L of sugar after the ferment, and what it would do in a closed bottle.
func ExampleSweetenWith() {
	b, _ := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	s, _ := finish.SweetenWith(material.WhiteSugar(), units.GramPerLitre.Of(20), b.Finish)
	fmt.Println(s.Fermentable.Text(units.Kilogram, 2), s.Strength.Text(units.PercentVolume, 2), s.IfItFerments.Text(units.GramCO2PerLitre, 1), "if it ferments")
	// Output: 1.22 kg 4.54 % vol 10.3 g/L CO2 if it ferments
}

// Sweeteners that yeast leaves, as sweet as 20 g/L of sugar in 60 L.
func ExampleSweetenLike() {
	for _, name := range []string{"erythritol", "sucralose", "E 960"} {
		s, _ := finish.ParseSweetener(name)
		d, _ := finish.SweetenLike(s, units.GramPerLitre.Of(20), units.Litre.Of(60), law.EU)
		f := d.Concentration
		fmt.Println(s.Name()+":", d.Mass.Text(units.Gram, 1), "from", f.Low.Text(units.MilligramPerLitre, 0), "to", f.High.Text(units.MilligramPerLitre, 0),
			"limits passed:", len(d.Passed))
	}
	// Output:
	// erythritol: 1714.3 g from 25000 mg/L to 33333 mg/L limits passed: 0
	// sucralose: 1.8 g from 27 mg/L to 36 mg/L limits passed: 0
	// steviol glycosides: 4.0 g from 50 mg/L to 100 mg/L limits passed: 0
}

// Which sweeteners does yeast leave?
func ExampleSweeteners() {
	for _, s := range finish.Sweeteners()[:9] {
		fmt.Println(s.Name(), s.Survives(), s.Sweetness().Value)
	}
	// Output:
	// sucrose false 1
	// glucose false 0.75
	// fructose false 1.5
	// invert sugar false 1
	// honey false 1.25
	// maltose false 0.5
	// trehalose false 0.45
	// isomaltulose false 0.45
	// lactose true 0.2
}

// Free SO2 for 0.8 mg/L molecular at pH 3.4, by practice and by the OIV's table.
func ExampleFreeSulfite() {
	target := finish.MolecularTarget().Value
	practice, _ := finish.MolecularSharePractice(3.4)
	table, _ := finish.MolecularShareOIV(3.4, units.PercentVolume.Of(10), units.Celsius.Of(20))
	a, _ := finish.FreeSulfite(target, practice)
	b, _ := finish.FreeSulfite(target, table)
	fmt.Println(a.Text(units.MilligramPerLitre, 0), b.Text(units.MilligramPerLitre, 0))
	pK, _ := finish.SulfurDioxidePK(units.PercentVolume.Of(10), units.Celsius.Of(20))
	fmt.Println("pK", pK)
	_, err := finish.MolecularShareOIV(3.4, units.PercentVolume.Of(4.6), units.Celsius.Of(4))
	fmt.Println(err)
	// Output:
	// 32 mg/L 21 mg/L
	// pK 1.997
	// finish.MolecularShareOIV: temperature 4 °C outside 20 °C to 40 °C (OIV-MA-AS323-04C table 1)
}

// 30 mg/L of free SO2 for 60 L that hold none.
func ExampleSulfiteFor() {
	d, _ := finish.SulfiteFor(material.PotassiumMetabisulfite(), units.MilligramPerLitre.Of(30), units.MassConcentration{},
		units.MassConcentration{}, units.Litre.Of(60), law.US)
	fmt.Println(d.Mass.Text(units.Gram, 2), "of", material.PotassiumMetabisulfite(), "of which",
		material.PotassiumMetabisulfite().Composition().SulfurDioxide.Text(units.Percent, 1), "is SO2")
	fmt.Println(d.Limits[0])
	fmt.Println(d.Cautions[0] == finish.SulfiteCaution)
	// Output:
	// 3.12 g of potassium metabisulfite of which 57.6 % is SO2
	// sulfur dioxide, total: at most 350 mg/L, wine, 27 CFR 4.22(b)(1) (2015 edition), US; check the law in force
	// true
}

// Sorbate for a wine of 12 % vol; below 10 % vol no table says.
func ExampleSorbateByStrength() {
	f, _ := finish.SorbateByStrength(3.3, units.PercentVolume.Of(12))
	fmt.Println(f.Value.Text(units.MilligramPerLitre, 0), "from", f.Low.Text(units.MilligramPerLitre, 0), "to", f.High.Text(units.MilligramPerLitre, 0))
	_, err := finish.SorbateByStrength(3.3, units.PercentVolume.Of(4.6))
	fmt.Println(err)
	// Output:
	// 130 mg/L from 107 mg/L to 176 mg/L
	// finish.SorbateByStrength: strength 4.6 % vol outside 10 % vol to 14 % vol (potassium sorbate table; no published table covers this strength)
}

// 200 mg/L of potassium sorbate in 20 L at pH 3.4: most of the acid is in the form that acts.
func ExampleSorbateFor() {
	d, _ := finish.SorbateFor(units.MilligramPerLitre.Of(200), 3.4, units.Litre.Of(20), law.EU)
	part, _ := finish.Undissociated(3.4)
	fmt.Println(d.Mass.Text(units.Gram, 1), "brings", d.SorbicAcid.Text(units.MilligramPerLitre, 0), "of sorbic acid,",
		finish.SorbicAcidShare().Text(units.Percent, 1), "of the salt;", part.Text(units.Percent, 0), "of it acts")
	fmt.Println(len(d.Passed), "limits passed;", d.Cautions[0] == finish.SorbateCaution)
	// Output:
	// 4.0 g brings 149 mg/L of sorbic acid, 74.6 % of the salt; 96 % of it acts
	// 0 limits passed; true
}

// Citric acid that brings the dry drink to pH 3.3, and what the glass then tastes of.
func ExampleAcidify() {
	p, _ := hall().At(units.Percent.Of(100))
	powder, _ := water.CitricAcid.AsSold(units.Percent.Of(100), units.Density{})
	s, err := finish.Acidify(p.Liquid, powder, 3.6, 3.3, water.CitricAcid.TitratedTo(8.2), units.Litre.Of(60), law.US)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(s.Dose.Mass.Text(units.Gram, 0), "takes the acidity from", s.Before.Text(units.GramPerLitre, 2), "to",
		s.After.Text(units.GramPerLitre, 2), "as citric acid")
	fmt.Println(s.Cautions[0] == water.AcidBurns)
	// Output:
	// 17 g takes the acidity from 0.82 g/L to 1.09 g/L as citric acid
	// true
}

// hall is a wash of the village hall, fed with ammonium phosphate.
func hall() ferment.Tank {
	b, _ := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	soft, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(38),
		water.Calcium.At(units.MilligramPerLitre.Of(14)), water.Potassium.At(units.MilligramPerLitre.Of(1)))
	return ferment.Tank{
		Brew: b, Water: soft, Temperature: units.Celsius.Of(20), Additions: 3,
		Feed: []material.Dose{{Material: material.DiammoniumPhosphate(), Mass: units.Gram.Of(19)}},
	}
}
