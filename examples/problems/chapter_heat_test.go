package main

func Example_warmsByItself() {
	show(warmsByItself())
	// Output:
	// usual, 586.6 kJ/kg: 1.47 K.
	// usual, higher, 652.4 kJ/kg: 1.63 K.
	// thermochemical, 563.0 kJ/kg: 1.41 K.
	// => rise: 1.47 K (check 1.4665, within 0.005)
}

func Example_coolingOnTheBusiestDay() {
	show(coolingOnTheBusiestDay())
	// Output:
	// Heat on that day 860 kJ.
	// With the higher of the usual figures it would be 11 W.
	// => cooling power: 10.0 W (check 9.96, within 0.1)
}

func Example_heatOfTheReaction() {
	show(heatOfTheReaction())
	// Output:
	// The thermochemical heat: NBS tables 1982; Goldberg & Tewari 1989, enthalpies of formation in water (recalled from memory).
	// The usual value is 1.04 times that.
	// => heat: 563 kJ/kg (check 563, within 0.2)
}

func Example_gasOfABatch() {
	show(gasOfABatch())
	// Output:
	// A gram of sugar gives 0.47156 g of CO2.
	// 2.0748 kg, 1218.1 L.
	// => mass: 2.075 kg (check 2.0749, within 0.0005)
	// => volume: 1218 L (check 1218, within 1)
}
