package main

func Example_australianCard() {
	show(australianCard())
	// Output:
	// 375 mL at 4.8 % vol: 1.4206.
	// 150 mL at 11.5 % vol: 1.3614.
	// 750 mL at 13.0 % vol: 7.6951.
	// => 375 mL at 4.8 % vol: 1.4 (check 1.4, within 0.05)
	// => 150 mL at 11.5 % vol: 1.4 (check 1.4, within 0.05)
	// => 750 mL at 13.0 % vol: 7.7 (check 7.7, within 0.05)
}

func Example_unitsInAPint() {
	show(unitsInAPint())
	// Output:
	// Units = % vol × mL / 1000, as a unit is 10 mL.
	// A pint is 568.26 mL; a unit is 10 mL of ethanol.
	// => units: 2.955 (check 2.955, within 0.0005)
}

func Example_americanDrink() {
	show(americanDrink())
	// Output:
	// A standard drink is 14 g of ethanol.
	// The can is 354.88 mL and holds 14.00 g of ethanol, 0.600 US fl oz.
	// => standard drinks: 1.00 (check 1.00, within 0.005)
}

func Example_energyOfWine() {
	show(energyOfWine())
	// Output:
	// Each unit has its own factors: 274.66 kJ, 66.30 kcal.
	// Converted, the kilojoules would be 65.64 kcal.
	// => energy: 274.7 kJ (check 274.7, within 0.1)
	// => energy in its own factors: 66.3 kcal (check 66.3, within 0.1)
}

func Example_caloriesOfABeer() {
	show(caloriesOfABeer())
	// Output:
	// In 100 mL 52.61 kcal; EU law would have 53 kcal.
	// A US food label would print 190 kcal.
	// => 100 mL: 52.6 kcal (check 52.61, within 0.05)
	// => 12 US fl oz: 187 kcal (check 186.8, within 0.3)
}

func Example_mayTheLabelSaySo() {
	show(mayTheLabelSaySo())
	// Output:
	// Which drink it is decides: the tolerance is for the kind, and for beer it depends on the strength. What the method of analysis is sure of is added to it.
	// A drink of 4.56 % vol is labelled 4.6 % vol.
	// => seltzer: 0.3 % vol (check 0.3, exact)
	// => beer of 5.0: 0.5 % vol (check 0.5, exact)
	// => beer of 7.0: 1.0 % vol (check 1.0, exact)
	// => cider: 1.0 % vol (check 1.0, exact)
}
