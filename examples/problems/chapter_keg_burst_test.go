package main

func Example_burstOfPressure() {
	show(burstOfPressure())
	// Output:
	// An hour late it has 5.04 g/L CO2; forgotten, 8.37 g/L CO2.
	// At the target's own pressure it would near 5.0 g/L for weeks and never be there.
	// => stop after: 55.8 h (check 55.77, within 0.1)
	// => then set: 81.3 kPa (check 81.3, within 0.2)
	// => forgotten, it comes to: 8.37 g/L (check 8.373, within 0.01)
}

func Example_twoKegsOneRegulator() {
	show(twoKegsOneRegulator())
	// Output:
	// The regulator stands at 0.81 bar gauge; the second keg would hold its own target at 0.45 bar gauge.
	// One pressure holds one content: after the week the second is 0.88 g/L CO2 over what it wants.
	// => left alone, after a week: 4.584 g/L (check 4.584, within 0.001)
	// => rocked, after a week: 4.882 g/L (check 4.882, within 0.001)
	// => rocked, at its target after: 61.19 h (check 61.19, within 0.01)
}
