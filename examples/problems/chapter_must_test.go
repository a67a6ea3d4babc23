package main

func Example_twoMaltsMeet() {
	show(twoMaltsMeet())
	// Output:
	// Each malt gives or takes protons, by its buffering, until all are at one pH.
	// The alkalinity takes protons from both. With malts measured to 0.03 in pH and 3 mEq/(kg pH) the band is still 5.43 to 5.50.
	// => in distilled water: 5.30 (check 5.30, within 0.01)
	// => with alkalinity: 5.47 (check 5.467, within 0.01)
}

func Example_mashByCalcium() {
	show(mashByCalcium())
	// Output:
	// at 100 mg/L: band 5.49 to 5.68.
	// at 200 mg/L: band 5.24 to 5.60.
	// at 300 mg/L: band 4.99 to 5.53.
	// => at 100 mg/L: 5.60 (check 5.48, within 0.15)
	// => at 200 mg/L: 5.46 (check 5.39, within 0.15)
	// => at 300 mg/L: 5.31 (check 5.28, within 0.15)
}

func Example_acidForTheMash() {
	show(acidForTheMash())
	// Output:
	// The water has nothing to say: all of the acid goes to the malt.
	// With the malt as well known as it was measured: 0.72 g to 0.95 g.
	// => lactic acid: 0.834 g (check 0.832, within 0.01)
}

func Example_ethanolMovesPK() {
	show(ethanolMovesPK())
	// Output:
	// Water with ethanol holds ions less willingly: an acid keeps its proton.
	// Where all acids move alike, the pH moves with them, salts and acids the same.
	// => rise of the pH: 0.17 (check 0.17, within 0.02)
}

func Example_bufferOfTartaric() {
	show(bufferOfTartaric())
	// Output:
	// Half neutralised, tartaric acid shows pH 2.96, the mixture 3.01.
	// A curve is flattest, and the buffer stiffest, at a pK; tartaric acid has two that lie close.
	// => tartaric acid: 26.4 mEq/L (check 28.69, within 2.87)
	// => tartaric with citric acid: 25.1 mEq/L (check 23.5, within 2.35)
}

func Example_wineByAnalysis() {
	show(wineByAnalysis())
	// Output:
	// no sulfate: 35 mEq/L of the acids are there as salts; acid without a name counts as lactic.
	// 300 mg/L: 29 mEq/L of the acids are there as salts; acid without a name counts as lactic.
	// 550 mg/L: 24 mEq/L of the acids are there as salts; acid without a name counts as lactic.
	// => pH, no sulfate: 3.54 (check 3.43, within 0.2)
	// => pH, 300 mg/L: 3.42 (check 3.43, within 0.2)
	// => pH, 550 mg/L: 3.30 (check 3.43, within 0.2)
}

func Example_appleByAcidity() {
	show(appleByAcidity())
	// Output:
	// An apple brings malic acid, and as much potassium as the mean of apples: 39 mEq/L of its acid is there as salt.
	// The band is 4.1 to 4.7, and this juice lies below it: it holds less potassium than most. From the acidity alone nobody can tell; a pH meter can.
	// => pH: 4.45 (check 4.03, within 0.45)
}

func Example_bacteriaTakeTheSharpness() {
	show(bacteriaTakeTheSharpness())
	// Output:
	// Salts: 27.0 mEq/L. They stay, and less acid stands against them.
	// The pH goes from 3.40 to 3.59: watch the sulfite.
	// => acidity as malic acid: 4.05 g/L (check 4.05, within 0.03)
}

func Example_tartarTakesTheRest() {
	show(tartarTakesTheRest())
	// Output:
	// The bicarbonate alone: pH 3.10 to 3.28, acidity 9.00 g/L to 8.33 g/L.
	// When 0.82 g/L has settled the acidity is 8.00 g/L, and the pH 3.25.
	// => cream of tartar: 0.816 g/L (check 0.816, within 0.01)
}

func Example_sharpAndBland() {
	show(sharpAndBland())
	// Output:
	// Acidity goes by the share; the pH does not: 3.54, where a quarter of the way would be 3.70.
	// For pH 3.5 it would be 29 %.
	// => the sharp juice: 25.0 % (check 25.0, within 0.2)
}

func Example_sulfiteAfterAcid() {
	show(sulfiteAfterAcid())
	// Output:
	// It takes 4.1 g/L of tartaric acid, if none of it settles; the acidity goes to 9.6 g/L.
	// Before, 2.4 % of the free SO2 was molecular: as much effect now needs that much less sulfite.
	// => molecular part: 5.90 % (check 5.8966, within 0.01)
}
