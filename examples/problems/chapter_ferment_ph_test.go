package main

func Example_protonsFromAmmonium() {
	show(protonsFromAmmonium())
	// Output:
	// The gram lets 15.6 g of yeast grow.
	// Charge in 0.07139 mol, out 0.07139 mol; carbon in 33.3045 mol, out 33.3045 mol: nothing is lost.
	// From amino nitrogen: 0.00 mmol of H+.
	// => H+ from ammonium: 71.39 mmol (check 71.39, within 0.01)
}

func Example_pasteursBalance() {
	show(pasteursBalance())
	// Output:
	// Glycerol 3.16 g, succinic acid 0.67 g, yeast 1.00 g.
	// The electrons left over make the ethanol, the carbon left over the CO2.
	// => ethanol: 51.2 g (check 51.11, within 0.75)
	// => CO2: 49.6 g (check 49.42, within 0.75)
}

func Example_whereTheWashEnds() {
	show(whereTheWashEnds())
	// Output:
	// 0 % of the sugar used: gravity 1.028, pH 7.90 (7.90 to 7.90).
	// 25 % of the sugar used: gravity 1.020, pH 3.47 (3.37 to 3.59).
	// 50 % of the sugar used: gravity 1.011, pH 2.88 (2.86 to 2.90).
	// 75 % of the sugar used: gravity 1.003, pH 2.87 (2.84 to 2.90).
	// 100 % of the sugar used: gravity 0.994, pH 2.86 (2.82 to 2.89).
	// Yeast takes up 4.745 mmol/L of ammonium and sets free 4.329 of H+; it makes 4.173 of succinic, 2.578 of acetic and 0.859 of lactic acid, and leaves 1.94 of phosphate.
	// => pH at the end: 2.86 (check 2.873, within 0.02)
}

func Example_bufferForAFloor() {
	show(bufferForAFloor())
	// Output:
	// 15.1 g for the usual acids; 11.7 g if yeast makes least, 19.4 g if most.
	// The water then has an alkalinity of 157 mg/L as CaCO3 and 104 mg/L of potassium.
	// Yeast takes up 4.745 mmol/L of ammonium and sets free 4.735 of H+; it makes 4.173 of succinic, 2.578 of acetic and 0.859 of lactic acid, and leaves 1.94 of phosphate.
	// => potassium bicarbonate: 15.1 g (check 15.03, within 0.1)
	// => alkalinity of the water: 157 mg/L as CaCO3 (check 156.9, within 1)
}

func Example_cellsToPitch() {
	show(cellsToPitch())
	// Output:
	// Rate 1.0 million cells for each millilitre and degree, times 60000 mL, times 7.1.
	// From 213 billion cells to 639 billion cells by the spread of the rate.
	// => cells: 426 billion (check 426, within 0.5)
}

func Example_dryYeastToWeigh() {
	show(dryYeastToWeigh())
	// Output:
	// 96.0 % of the cells are alive.
	// With the most cells in a gram 18 g would do, with the fewest it takes 89 g.
	// => dry yeast: 44.4 g (check 44.4, within 0.2)
}

func Example_oldLiquidYeast() {
	show(oldLiquidYeast())
	// Output:
	// The living die in proportion to what is left: 65.7 billion cells after 60 days.
	// The 426 billion of the batch would take 6.5 such packs; better a starter.
	// => alive: 65.7 billion (check 65.7, within 0.1)
}

func Example_yeastFromExtract() {
	show(yeastFromExtract())
	// Output:
	// New cells 120 billion cells, which weigh 6.00 g dry.
	// 112.7 g of extract in 1.084 L; the new yeast holds 0.60 g of nitrogen, which malt brings and sugar does not.
	// => extract: 112.7 g (check 112.7, within 0.1)
	// => volume: 1.08 L (check 1.084, within 0.005)
}

func Example_alkalinityForPH4() {
	show(alkalinityForPH4())
	// Output:
	// Alkalinity counts the protons that the acids still hold as negative: at pH 4 it is -158 mg/L as CaCO3, without a base -274 mg/L as CaCO3.
	// Left alone it would end at pH 2.90.
	// A gram of potassium bicarbonate brings 9.989 mEq; to bring are 117 mg/L as CaCO3, 14.00 g of it.
	// => alkalinity at pH 4: -157.6 mg/L as CaCO3 (check -157.4, within 1)
	// => potassium bicarbonate: 14.0 g (check 14.03, within 0.1)
	// => pH with it: 4.00 (check 4.00, within 0.01)
}
