package main

func Example_measuredBeer() {
	show(measuredBeer())
	// Output:
	// At 20/20 °C the wort has 1.0590 (14.53 °P), the beer 1.0159 (4.06 °P apparent).
	// With Balling's yield: real extract 6.12 °P, strength 4.40 % mass.
	// => strength: 5.65 % vol (check 5.58, within 0.12)
}

func Example_sugarForOnePercent() {
	show(sugarForOnePercent())
	// Output:
	// 1 % vol of a litre is 10 mL of ethanol, 7.8924 g.
	// A gram of hexose gives 0.46895 g of it, a gram of sucrose 0.49363 g.
	// => hexose for 1 % vol: 16.83 g/L (check 16.83, within 0.005)
	// => hexose for 10 % vol: 168.3 g/L (check 168.3, within 0.05)
	// => sucrose for 1 % vol: 15.99 g/L (check 15.99, within 0.005)
}

func Example_dryFloor() {
	show(dryFloor())
	// Output:
	// It starts at 1.0300, 7.56 °P.
	// Ethanol 2.221 kg, gas 2.122 kg, yeast 0.221 kg, glycerol and acids 0.172 kg.
	// The dry liquid: 0.9937, 4.88 % vol, -1.65 °P apparent.
	// A reading of 1.000 is not dry: about 14 g of sugar are still in a litre.
	// => dry gravity: 0.9937 (check 0.9937, within 0.0003)
}

func Example_attenuations() {
	show(attenuations())
	// Output:
	// Strength 5.26 % vol; the hydrometer shows 2.07 °P.
	// Yeast has used 68.07 % of the extract by mass.
	// => apparent extract: 2.07 °P (check 2.07, within 0.02)
	// => apparent attenuation: 82.8 % (check 82.8, within 0.15)
	// => real attenuation: 66.67 % (check 66.67, within 0.01)
	// => real degree of fermentation: 68.07 % (check 68.07, within 0.01)
}
