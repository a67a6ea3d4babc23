package main

func Example_twoGallons() {
	show(twoGallons())
	// Output:
	// The text as it stands is refused: "5 gal" is not a volume: "gal": say US gal or imp gal: 3.785411784 L or 4.54609 L.
	// 5 US gal = 18.9271 L; 5 imp gal = 22.7305 L.
	// The imperial gallon is larger by a factor of 1.2009.
	// => US: 18.927 L (check 18.927, within 0.0005)
	// => imperial: 22.730 L (check 22.730, within 0.0005)
}

func Example_poundsInThousandGallons() {
	show(poundsInThousandGallons())
	// Output:
	// 1 lb = 453.59237 g and 1 US gal = 3.785411784 L, so 1 lb/1000 US gal = 0.119826 g/L.
	// Times 8, 3 and 25: 0.9586 g/L, 0.3595 g/L, 2.9957 g/L.
	// => ammonium phosphate: 0.96 g/L (check 0.96, within 0.005)
	// => yeast cell walls: 0.36 g/L (check 0.36, within 0.005)
	// => fumaric acid: 3.0 g/L (check 3.0, within 0.05)
}

func Example_airAtThousandMetres() {
	show(airAtThousandMetres())
	// Output:
	// p = 101.325·(1 − 0.0065·H/288.15)^5.25588 kPa (ISO 2533:1975).
	// At 500 m 95.461 kPa absolute, at 1000 m 89.875 kPa absolute.
	// Each of these 500 m takes about 0.81 psi absolute.
	// => at 500 m: 95.461 kPa (check 95.461, within 0.001)
	// => at 1000 m: 89.875 kPa (check 89.875, within 0.001)
}

func Example_gaugeInTheHall() {
	show(gaugeInTheHall())
	// Output:
	// 12 psi on the gauge are 82.737 kPa gauge.
	// The air at 640 m presses with 93.869 kPa absolute.
	// Together 176.606 kPa absolute. At sea level the same gauge would mean 184.062 kPa absolute.
	// => absolute: 176.61 kPa (check 176.61, within 0.01)
}

func Example_sugarInSevenParts() {
	show(sugarInSevenParts())
	// Output:
	// The parts in whole steps of the scale: 14.4 g, 14.4 g, 14.3 g, 14.3 g, 14.3 g, 14.3 g, 14.3 g.
	// Their sum is 100.3 g, to the last digit.
	// => the first two, each: 14.4 g (check 14.4, exact)
	// => the other five, each: 14.3 g (check 14.3, exact)
	// => sum: 100.3 g (check 100.3, exact)
}
