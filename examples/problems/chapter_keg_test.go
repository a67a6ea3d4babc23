package main

func Example_printedBeerChart() {
	show(printedBeerChart())
	// Output:
	// 38 °F, 12 psi gauge is 3.3 °C and 0.83 bar gauge: 2.572 vol CO2.
	// 36 °F, 9 psi gauge is 2.2 °C and 0.62 bar gauge: 2.379 vol CO2.
	// 45 °F, 12 psi gauge is 7.2 °C and 0.83 bar gauge: 2.254 vol CO2.
	// => 38 °F, 12 psi gauge: 2.57 volumes (check 2.57, within 0.04)
	// => 36 °F, 9 psi gauge: 2.38 volumes (check 2.38, within 0.04)
	// => 45 °F, 12 psi gauge: 2.25 volumes (check 2.26, within 0.04)
	// => pressure for 2.57 volumes: 12.0 psi (check 12.0, within 0.4)
}

func Example_europeanChart() {
	show(europeanChart())
	// Output:
	// 4.516 g/L CO2 and 4.008 g/L CO2.
	// In volumes: 2.28 vol CO2 and 2.03 vol CO2.
	// => 10 °C, 1.0 bar: 4.5 g/L (check 4.5, within 0.05)
	// => 5 °C, 0.5 bar: 4.0 g/L (check 4.0, within 0.05)
}

func Example_lagerAndChampagne() {
	show(lagerAndChampagne())
	// Output:
	// CO2 dissolves in the water of the drink; ethanol and extract take its place.
	// Lager 2.473 g/L CO2, champagne 2.026 g/L CO2; pure water would hold 2.67 g/L CO2 and 2.32 g/L CO2.
	// => lager: 2.5 g/L (check 2.4, within 0.1)
	// => champagne: 2.0 g/L (check 2.1, within 0.084)
}

func Example_sparklingWine() {
	show(sparklingWine())
	// Output:
	// 4.2065 g/L CO2, 2.13 vol CO2.
	// The other way round it needs 3.000 bar absolute again.
	// => content: 4.2065 g/L (check 4.2065, within 0.00006)
}

func Example_regulatorForTheKeg() {
	show(regulatorForTheKeg())
	// Output:
	// 5.7 g/L CO2 are 2.88 vol CO2.
	// The drink needs 210.0 kPa absolute over it.
	// At sea level the gauge would show 15.8 psi gauge, in the hall 16.8 psi gauge: the same drink.
	// => absolute: 210.0 kPa (check 210.5, within 1.5)
	// => gauge in the hall: 16.8 psi (check 16.9, within 0.2)
}

func Example_howColdMustItBe() {
	show(howColdMustItBe())
	// Output:
	// Over the water stand 201.32 kPa absolute, of which the water's own vapour takes 0.87 kPa absolute at 5 °C.
	// At 5 °C it would hold 5.51 g/L CO2, at 10 °C 4.60 g/L CO2; solved for the temperature: 7.65 °C.
	// => temperature: 7.7 °C (check 7.7, within 0.2)
}

func Example_blendOfGases() {
	show(blendOfGases())
	// Output:
	// Pure CO2 210.0 kPa absolute, the blend 349.3 kPa absolute.
	// The other way round, that pressure asks for 60.0 % of CO2.
	// => blend: 349 kPa (check 350.2, within 2.5)
}

func Example_stillWineLimit() {
	show(stillWineLimit())
	// Output:
	// 0.392 g/100 mL is 3.92 g/L CO2.
	// US still wine: at most 3.92 g/L CO2 (26 USC 5041; 27 CFR 24.245 (2015); read). Check the law in force.
	// => real gas: 1.983 volumes (check 1.983, within 0.0005)
	// => ideal gas: 1.996 volumes (check 1.996, within 0.0005)
}

func Example_kegInTheCold() {
	show(kegInTheCold())
	// Output:
	// The rate is 0.00845 of the distance an hour.
	// After a week it holds 4.91 g/L CO2.
	// => rate: 0.8447 % an hour (check 0.84472, within 0.00005)
	// => time to 5.5 g/L: 260.1 h (check 260.1, within 0.1)
}
