package main

func Example_sugarForTheHall() {
	show(sugarForTheHall())
	// Output:
	// 4.415 kg of sugar in 57.42 kg of water.
	// The start fills 60.24 L and reads 1.0282; dry it fills 60.00 L and reads 0.9940.
	// CO2 set free 2.081 kg, new yeast 0.217 kg.
	// => white sugar: 4.415 kg (check 4.415, within 0.001)
	// => start: 1.0282 (check 1.0283, within 0.0002)
	// => finish: 0.9940 (check 0.9940, within 0.0002)
}

func Example_dextroseInstead() {
	show(dextroseInstead())
	// Output:
	// 5.110 kg, of which 0.464 kg are crystal water and 4.645 kg sugar.
	// It starts at 1.0293, lower than table sugar would for so much ethanol.
	// => dextrose monohydrate: 5.110 kg (check 5.110, within 0.001)
}

func Example_honeyForMead() {
	show(honeyForMead())
	// Output:
	// Water 172.0 g, sugar that yeast takes up 781.0 g, other solids 47.0 g.
	// 94.3 % of the solids ferment; known within 3.0 % (one standard uncertainty).
	// 20 L of mead at 12 % vol take 5.14 kg of it.
	// => water: 172 g (check 172, within 0.5)
	// => sugar: 781 g (check 781, within 0.5)
	// => ethanol at the most: 401.7 g (check 401.7, within 0.2)
}

func Example_grainToSpirit() {
	show(grainToSpirit())
	// Output:
	// Of 100 parts of wort extract 48.391 become ethanol; the rest is gas and yeast.
	// Of 100 parts of hexose, without yeast, 51.14.
	// => wheat: 33.87 parts (check 33.87, within 0.006)
	// => rye: 31.45 parts (check 31.45, within 0.006)
	// => rice: 35.81 parts (check 35.80, within 0.02)
	// => sugar: 51.14 parts (check 51.11, within 0.05)
}

func Example_juiceToCider() {
	show(juiceToCider())
	// Output:
	// Sugar 2.160 kg, other solids 0.240 kg.
	// It starts at 1.0482 and ends at 0.9964 with 1012.9 g of ethanol; 0.968 kg of CO2 went.
	// => ethanol: 1013 g (check 1012.9, within 1)
	// => strength: 6.74 % vol (check 6.743, within 0.01)
}

func Example_strongerThenWeaker() {
	show(strongerThenWeaker())
	// Output:
	// 4.415 kg of sugar for 30.67 L of base of 9.00 % vol.
	// 29.26 kg of water bring it to 60.00 L, 4.60 % vol.
	// => base: 30.67 L (check 30.67, within 0.01)
	// => water: 29.3 kg (check 29.25, within 0.1)
}

func Example_priceOfAlcohol() {
	show(priceOfAlcohol())
	// Output:
	// A kilogram of white sugar gives 493.3 g of ethanol, of dextrose monohydrate 426.3 g.
	// A gram of ethanol costs 0.002736 from white sugar and 0.00563 from dextrose monohydrate.
	// => white sugar, a thousand grams: 2.736 (check 2.736, within 0.001)
	// => dextrose monohydrate, a thousand grams: 5.630 (check 5.630, within 0.001)
}
