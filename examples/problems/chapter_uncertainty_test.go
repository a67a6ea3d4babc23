package main

func Example_aScaleIsRead() {
	show(aScaleIsRead())
	// Output:
	// Anywhere within half a step with the same chance: 1/√12.
	// The hydrometer: 1.0480 ± 0.0012 (k = 2).
	// => of a step: 0.29 (check 0.29, within 0.005)
	// => of the hydrometer: 0.5774 thousandths (check 0.57735, within 0.0001)
}

func Example_threeWeighings() {
	show(threeWeighings())
	// Output:
	// Density in vacuum 1038.086 kg/m³.
	// Gravity 1.03995, 9.99 °P.
	// => density: 1038.09 kg/m³ (check 1038.085, within 0.01)
}

func Example_distilled() {
	show(distilled())
	// Output:
	// The distillate has 4.015 % mass.
	// It fills as much as the sample did, so its strength is the beer's: 5.041 % vol.
	// => strength: 5.04 % vol (check 5.02, within 0.08)
}

func Example_boiledOff() {
	show(boiledOff())
	// Output:
	// The ethanol took 7.2 points from the gravity.
	// An error of 0.0002 in one reading is 0.15 % vol.
	// => strength: 5.03 % vol (check 5.02, within 0.08)
}

func Example_strengthWithDoubt() {
	show(strengthWithDoubt())
	// Output:
	// From the readings alone 4.33 ± 0.12 % vol (k = 1), with the yield 4.33 ± 0.15 % vol (k = 1).
	// If the fault is one hydrometer's and the same in both readings, most of it drops out: 4.326 ± 0.001 % vol (k = 1).
	// EU law allows ± 0.3 % vol on such a label; at k = 2 the uncertainty is 0.31 % vol. Capability 1.0, where 1 is just enough.
	// => strength: 4.33 % vol (check 4.33, within 0.02)
	// => uncertainty from the readings: 0.115 % vol (check 0.114, within 0.006)
}

func Example_doubtsInSquares() {
	show(doubtsInSquares())
	// Output:
	// The uncertainty of the sugar moves it by 0.0150 °P, that of the water by 0.0058 °P: a better scale for the sugar first.
	// 20,000 random draws agree: 0.0162 °P.
	// => extract: 7.140 °P (check 7.140, within 0.0005)
	// => standard uncertainty: 0.01609 °P (check 0.01609, within 0.00002)
}

func Example_twoWitnesses() {
	show(twoWitnesses())
	// Output:
	// The hydrometer is 1.11 standard uncertainties below the other: they agree.
	// The distillation is 1.11 standard uncertainties above the other: they agree.
	// => best value: 4.738 % vol (check 4.7385, within 0.0005)
	// => its uncertainty: 0.0832 % vol (check 0.08321, within 0.00005)
}

func Example_scaleUnderTheFermenter() {
	show(scaleUnderTheFermenter())
	// Output:
	// CO2 in all 1.582 kg, ethanol 1.656 kg.
	// The hydrometer should show 1.0029; 1.15 kg of sugar are left.
	// => ethanol: 1.656 kg (check 1.656, within 0.002)
	// => strength: 3.61 % vol (check 3.61, within 0.02)
}

func Example_whatAReadingHides() {
	show(whatAReadingHides())
	// Output:
	// The floor is 0.9940; 97.1 % of the sugar is used.
	// With an uncertainty of 0.0006 (k = 2) it may be up to 2.4 g/L CO2.
	// => sugar left: 2.1 g/L (check 2.15, within 0.1)
	// => CO2 that it would make: 1.08 g/L (check 1.11, within 0.05)
}
