package main

func Example_flavourByTrial() {
	show(flavourByTrial())
	// Output:
	// By volume the extract is 0.50 % of the finished drink.
	// Before 4.60 % vol, after 4.78 % vol.
	// => extract: 300 mL (check 300, within 0.1)
	// => strength after: 4.776 % vol (check 4.776, within 0.002)
	// => share of the alcohol: 4.17 % (check 4.167, within 0.01)
}

func Example_souredToTaste() {
	show(souredToTaste())
	// Output:
	// Pure acid 0.319 g/L, as sold 21.7 g.
	// pH and sourness are two things: a buffered drink takes far more acid to the same pH.
	// => lactic acid as sold: 21.7 g (check 21.66, within 0.1)
	// => titratable acidity: 0.319 g/L as lactic acid (check 0.318, within 0.0015)
}

func Example_finingsByTrial() {
	show(finingsByTrial())
	// Output:
	// In each litre 0.08 g.
	// The row of glasses goes on until more does no more: half of it again is 2.4 g.
	// => bentonite: 4.80 g (check 4.80, within 0.0001)
}
