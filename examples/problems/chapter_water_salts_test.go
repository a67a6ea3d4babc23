package main

func Example_crystalWater() {
	show(crystalWater())
	// Output:
	// A gram of the dihydrate holds 272.62 mg of calcium, of the anhydrous salt 361.13 mg.
	// 11 g of the dihydrate are 8.30 g anhydrous.
	// => dihydrate: 11.00 g (check 11.004, within 0.005)
	// => anhydrous: 8.31 g (check 8.307, within 0.005)
}

func Example_softenedWithPure() {
	show(softenedWithPure())
	// Output:
	// Ions and alkalinity keep to the share of the water, 40/60 = 0.6667.
	// Calcium falls to 40.0 mg/L, sulfate to 33.3 mg/L.
	// => hardness: 127.34 mg/L as CaCO3 (check 127.345, within 0.01)
	// => alkalinity: 96.00 mg/L as CaCO3 (check 96.00, within 0.01)
}

func Example_saltsForATarget() {
	show(saltsForATarget())
	// Output:
	// gypsum: 6.452 g.
	// calcium chloride dihydrate: 6.220 g.
	// The water then has a hardness of 7.5 °dH and meets both targets.
	// => gypsum: 6.45 g (check 6.452, within 0.005)
	// => calcium chloride dihydrate: 6.22 g (check 6.22, within 0.005)
	// => calcium: 53.3 mg/L (check 53.29, within 0.05)
}

func Example_saltsOnAScale() {
	show(saltsOnAScale())
	// Output:
	// No other doses on this scale come nearer: that is proven, not only tried.
	// sulfate 60.443 mg/L, off by +0.443 mg/L.
	// chloride 49.836 mg/L, off by -0.164 mg/L.
	// => gypsum: 6.5 g (check 6.5, exact)
	// => calcium chloride dihydrate: 6.2 g (check 6.2, exact)
	// => off in all: 0.472 mg/L (check 0.473, within 0.003)
}

func Example_bicarbonateSalts() {
	show(bicarbonateSalts())
	// Output:
	// A gram of potassium bicarbonate brings 9.989 mEq, a gram of baking soda 11.904.
	// 15.108 g of baking soda in 60 L: 150.00 mg/L as CaCO3, sodium 68.9 mg/L.
	// => alkalinity from 15.108 g of baking soda: 150.0 mg/L as CaCO3 (check 150.0, within 0.05)
	// => alkalinity from 18.005 g of potassium bicarbonate: 150.0 mg/L as CaCO3 (check 150.0, within 0.05)
	// => sodium: 68.9 mg/L (check 68.9, within 0.05)
}
