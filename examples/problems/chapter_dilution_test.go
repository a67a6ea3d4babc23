package main

func Example_fiftyAndFifty() {
	show(fiftyAndFifty())
	// Output:
	// 100 proof: 100 mL weigh 93.336 g, of which 39.652 g (42.483 % mass) are ethanol; the rest is 53.737 mL of water. The mixture shrinks by 3.74 mL.
	// 112 proof: 100 mL weigh 92.119 g, of which 44.410 g (48.209 % mass) are ethanol; the rest is 47.757 mL of water. The mixture shrinks by 3.76 mL.
	// 191 proof: 100 mL weigh 81.324 g, of which 75.735 g (93.128 % mass) are ethanol; the rest is 5.594 mL of water. The mixture shrinks by 1.09 mL.
	// => water for 100 proof: 53.74 volumes (check 53.73, within 0.011)
	// => water for 112 proof: 47.76 volumes (check 47.75, within 0.011)
	// => water for 191 proof: 5.59 volumes (check 5.59, within 0.011)
}

func Example_lettingDown() {
	show(lettingDown())
	// Output:
	// The base weighs 29.578 kg and holds 2130.9 g of ethanol.
	// 28.625 kg of water make 58.70 L, which weigh 58.202 kg.
	// => water: 28.62 kg (check 28.62, within 0.02)
	// => finished: 58.70 L (check 58.69, within 0.02)
}

func Example_twoBatches() {
	show(twoBatches())
	// Output:
	// The parts have 0.9896 and 1.0483 by gravity.
	// Volumes: 29.804 L before, 29.808 L after.
	// Strength by volume: 5.10 % vol.
	// => strength: 4.000 % mass (check 4.000, within 0.0005)
	// => extract: 4.000 % mass (check 4.000, within 0.0005)
	// => gravity: 1.0082 (check 1.0083, within 0.0001)
}

func Example_spiritSyrupWater() {
	show(spiritSyrupWater())
	// Output:
	// A litre of the blend holds 39.46 g of ethanol; the blend weighs 10.066 kg, of which 4 % is extract.
	// Gravity 1.0084. The parts measure 9.996 L before they are mixed.
	// => spirit: 1.185 kg (check 1.185, within 0.001)
	// => syrup: 0.671 kg (check 0.671, within 0.001)
	// => water: 8.210 kg (check 8.210, within 0.003)
}

func Example_boilingDown() {
	show(boilingDown())
	// Output:
	// Gravity 1.0359 before, 1.0416 after.
	// In the hot kettle, at 98 °C, it stands at 52.02 L.
	// => extract: 10.385 °P (check 10.385, within 0.0005)
	// => shrunk by: 8.01 L (check 8.01, within 0.02)
}

func Example_madeUpToTheMark() {
	show(madeUpToTheMark())
	// Output:
	// The syrup has 30.0 °P and fills 17.75 L.
	// Made up it weighs 62.20 kg and has 9.65 °P.
	// => water to add: 42.20 kg (check 42.20, within 0.01)
	// => gravity: 1.0385 (check 1.0385, within 0.0001)
}
