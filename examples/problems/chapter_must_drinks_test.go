package main

func Example_raspberryAndLime() {
	show(raspberryAndLime())
	// Output:
	// A drink of sugar holds few salts (2.6 mEq/L), so that acid for taste takes its pH far down.
	// Malic acid: 2.30 g/L, pH 2.88. It tastes longer, and leaves no citric acid to bacteria.
	// Of the sorbate 99 % acts now, 94 % before.
	// => citric acid: 2.20 g/L (check 2.20, within 0.02)
	// => malic acid in its place: 2.30 g/L (check 2.30, within 0.02)
	// => pH with citric acid: 2.82 (check 2.825, within 0.02)
	// => free SO2 before: 50.1 mg/L (check 50.1, within 0.2)
	// => free SO2 after: 9.1 mg/L (check 9.1, within 0.5)
}

func Example_honeyHoldsItsAcidBack() {
	show(honeyHoldsItsAcidBack())
	// Output:
	// 101 g/L of solids; half of the acid is there as salt, of potassium above all: 3.0 mEq/L in a litre.
	// So little buffers a mead: 3.7 mEq/L at its pH, where a must of grapes has about 50.
	// => gluconic acid: 9.4 g/kg (check 9.4, within 0.1)
}

func Example_tartarInTheCold() {
	show(tartarInTheCold())
	// Output:
	// In 12 % vol at 2 °C only 1.2 g of it would stay.
	// In a wine colloids hold it up for months: what is at rest is the most that can come.
	// => cream of tartar: 3.1 g (check 3.08, within 0.05)
}
