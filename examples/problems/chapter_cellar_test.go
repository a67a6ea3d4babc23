package main

func Example_kettleEnergy() {
	show(kettleEnergy())
	// Output:
	// To the boil: 59.946 kg of water take 5.93 kWh. A wash takes less for its sugar, 2 % less at 5 °P (common practice).
	// Boiled off: 3.993 kg take 2.50 kWh, more than a third of what brought all of it there.
	// What the kettle loses to the room comes on top: a lid and a jacket save more than a shorter boil.
	// => to the boil: 5.93 kWh (check 5.931, within 0.005)
	// => power that boils off 4 L an hour: 2.50 kW (check 2.503, within 0.003)
	// => time to the boil: 70 min (check 69.8, within 0.1)
}

func Example_oxygenUnderAir() {
	show(oxygenUnderAir())
	// Output:
	// A yeast that starts with air finds what its water holds; with pure oxygen it could be up to five times that, and too much.
	// By its water alone a wort of 15 °P would hold 8.3 mg/L at 20 °C. Measured it is 6.6: sugar drives out more, a quarter in all.
	// => at 10 °C: 11.29 mg/L (check 11.30, within 0.15)
	// => at 20 °C: 9.17 mg/L (check 9.09, within 0.1)
	// => on the mountain: 7.50 mg/L (check 7.50, within 0.1)
}

func Example_packageOxygen() {
	show(packageOxygen())
	// Output:
	// The gas brings 0.302 mg/L of drink, six times what was dissolved.
	// A meter in the drink alone sees 43 % of it at rest: shake the pack first, or count both.
	// => total: 0.352 mg/L (check 0.352, within 0.001)
	// => share in the drink at rest: 0.426 (check 0.423, within 0.006)
}

func Example_diacetylRest() {
	show(diacetylRest())
	// Output:
	// Half is gone after 1.3 days at 16 °C, after 3.8 at 10 °C.
	// Two days alone fix that energy badly: a reading of 0.51 in the place of 0.50 makes it 136 kJ/mol.
	// So the rest is warm and on the yeast, and ends by the test, not by the calendar.
	// => days at 16 °C: 3.32 d (check 3.324, within 0.002)
	// => activation energy: 123 kJ/mol (check 123, within 0.2)
	// => diacetyl of a milligram: 0.6516 mg (check 0.6516, within 0.0001)
}

func Example_freezesInTheGarage() {
	show(freezesInTheGarage())
	// Output:
	// Each molecule counts: a gram of ethanol lowers it as much as 7.4 g of sucrose. A drink of 4.6 % vol and 0.5 °P begins at -1.6 °C.
	// What is left liquid is stronger and freezes lower, so that slush grows slowly; 5 g/L of CO2 lower it by another 0.2 K.
	// => 8.47 % vol: -2.9 °C (check -3.0, within 0.2)
	// => 14 % vol: -5.0 °C (check -5.0, within 0.2)
	// => 3.42 °P: -0.192 °C (check -0.185, within 0.01)
}
