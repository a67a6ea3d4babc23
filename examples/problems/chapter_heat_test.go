package main

func Example_warmsByItself() {
	show(warmsByItself())
	// Output:
	// usual, 586.6 kJ/kg: 1.47 K.
	// usual, higher, 652.4 kJ/kg: 1.63 K.
	// thermochemical, 382.4 kJ/kg: 0.96 K.
	// with growth, 1215.6 kJ/kg: 3.04 K.
	// => rise: 1.47 K (check 1.4665, within 0.005)
}

func Example_coolingOnTheBusiestDay() {
	show(coolingOnTheBusiestDay())
	// Output:
	// Heat on that day 860 kJ.
	// With the heat of growth counted it would be 21 W.
	// => cooling power: 10.0 W (check 9.96, within 0.1)
}

func Example_heatOfTheReaction() {
	show(heatOfTheReaction())
	// Output:
	// thermochemical (CRC Handbook, heats of formation (computed)).
	// The usual value is 1.5 times that.
	// => heat: 382 kJ/kg (check 382.4, within 0.5)
}

func Example_gasOfABatch() {
	show(gasOfABatch())
	// Output:
	// A gram of sugar gives 0.47156 g of CO2.
	// 2.0748 kg, 1218.1 L.
	// => mass: 2.075 kg (check 2.0749, within 0.0005)
	// => volume: 1218 L (check 1218, within 1)
}
