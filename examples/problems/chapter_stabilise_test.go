package main

func Example_molecularSulfite() {
	show(molecularSulfite())
	// Output:
	// The share is 1/(1 + 10^(pH − pK)): 2.001 %.
	// At pH 3.2 it would be 3.91 %.
	// => molecular: 2.001 % (check 2.0009, within 0.0005)
	// => free SO2: 39.98 mg/L (check 39.98, within 0.01)
}

func Example_sulfiteInWine() {
	show(sulfiteInWine())
	// Output:
	// pK at 10 % vol and 20 °C: 1.997; ethanol raises it.
	// The cellar's rule (pK 1.81 whatever the strength) has 3.91 %: it asks for a larger dose.
	// => molecular: 5.897 % (check 5.897, within 0.002)
	// => pK at 7.5 % vol: 2.148 (check 2.148, within 0.0005)
}

func Example_metabisulfiteForABatch() {
	show(metabisulfiteForABatch())
	// Output:
	// The salt is 57.63 % SO2 when fresh.
	// The law's figure is for wine: sulfur dioxide, total: at most 350 mg/L, wine, 27 CFR 4.22(b)(1) (2015 edition), US; check the law in force. For a drink from a sugar wash none was read.
	// => salt: 3.12 g (check 3.123, within 0.005)
}

func Example_sorbateForWine() {
	show(sorbateForWine())
	// Output:
	// At 12 % vol from 107 mg/L to 176 mg/L by other tables.
	// At 4.6 % vol there is no answer: the table runs from 10 to 14 % vol, and no published one covers a weaker drink.
	// => 12 % vol: 130 mg/L (check 130, within 0.5)
	// => 10.5 % vol: 185 mg/L (check 185, within 0.5)
}

func Example_sorbateThatActs() {
	show(sorbateThatActs())
	// Output:
	// At pH 4.5 only 65 % of it would act.
	// The law's figure is for wine: sorbic acid: at most 300 mg/L, wine, 27 CFR 24.246 (2015 edition), US; check the law in force. For a drink from a sugar wash none was read.
	// => dose: 4.00 g (check 4.00, within 0.0005)
	// => sorbic acid: 149.3 mg/L (check 149.3, within 0.1)
	// => of it acting: 143.0 mg/L (check 143.0, within 0.1)
}

func Example_sweetWithoutSugar() {
	show(sweetWithoutSugar())
	// Output:
	// From 27 mg/L to 36 mg/L by the spread of its sweetness; yeast leaves it.
	// sucralose: at most 50 mg/L, cider and perry, Reg. (EC) 1333/2008 annex II (list of 2011), EU (recalled from memory); check the law in force. The spread of its sweetness stays under it.
	// => concentration: 30.77 mg/L (check 30.77, within 0.01)
	// => for 60 L: 1.846 g (check 1.846, within 0.001)
}

func Example_sugarThatWakes() {
	show(sugarThatWakes())
	// Output:
	// Sugar takes room: the strength falls to 4.54 % vol.
	// Without the gas: 138 kJ of energy in 100 mL.
	// => CO2 if it ferments: 10.29 g/L (check 10.29, within 0.01)
}
