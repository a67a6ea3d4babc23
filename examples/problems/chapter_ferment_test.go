package main

func Example_allOfTheSugar() {
	show(allOfTheSugar())
	// Output:
	// Sucrose takes up water when it is inverted: 52.63 g of the 9 kg.
	// Ethanol 538.35 g, CO2 514.28 g.
	// Liquid left 9.48572 kg; with the gas 10.00000 kg, the mass of sugar and water together.
	// => ethanol: 538.4 g (check 538.35, within 0.05)
	// => CO2: 514.3 g (check 514.28, within 0.05)
}

func Example_ballingComplete() {
	show(ballingComplete())
	// Output:
	// A = (p − n)/(2.0665 − 0.010665·p) = 6.1903 % mass.
	// By the masses: 100 g of wort leave 93.807 g of beer; CO2 5.554 g and yeast 0.639 g went.
	// For 100 g of beer all of it times 1.06602.
	// => strength: 6.190 % mass (check 6.190, within 0.001)
	// => CO2: 5.921 g (check 5.921, within 0.002)
	// => yeast: 0.681 g (check 0.681, within 0.001)
}

func Example_ballingBeerTest() {
	show(ballingBeerTest())
	// Output:
	// p − n = 5.627.
	// b = 1/(2.0665 − 0.010665·p), so A = b·(p − n) = 2.8896 % mass.
	// => strength: 2.890 % mass (check 2.888, within 0.003)
	// => factor b: 0.5135 (check 0.5134, within 0.0003)
}

func Example_ballingBackwards() {
	show(ballingBackwards())
	// Output:
	// p = 100·(2.0665·A + n)/(100 + 1.0665·A) = 11.1739 °P.
	// The balance of masses, without the formula, finds 11.1739 °P.
	// => original extract: 11.174 °P (check 11.177, within 0.006)
	// => by the balance: 11.174 °P (check 11.177, within 0.008)
}

func Example_ballingTables() {
	show(ballingTables())
	// Output:
	// The apparent loss of 5.310 °P is a real one of 4.310 °P: the attenuation quotient of a wort of 12 % is 1.2320.
	// Real extract 7.690 °P, strength 2.2234 % mass.
	// => extract used: 4.310 °P (check 4.310, within 0.001)
	// => strength: 2.223 % mass (check 2.223, within 0.002)
}

func Example_meanOfManyBrews() {
	show(meanOfManyBrews())
	// Output:
	// The regression of Cutaia, Reid & Speers (2009): A = (0.372 + 0.00357·OE)·(OE − AE) = 5.091 % mass, real extract 4.914 °P.
	// densities and Balling's balance: 5.06 % mass, real extract 4.87 °P.
	// Balling's tables: 5.09 % mass, real extract 4.81 °P.
	// handbook constant 0.8192: 5.15 % mass, real extract 4.70 °P.
	// MEBAK constant 0.81: 5.09 % mass, real extract 4.81 °P.
	// Cutaia et al. 2009: 5.09 % mass, real extract 4.91 °P.
	// Pawlowski/Doemens: 5.11 % mass, real extract 4.81 °P.
	// => strength, regression: 5.09 % mass (check 5.14, within 0.06)
	// => real extract, regression: 4.91 °P (check 4.88, within 0.05)
}
