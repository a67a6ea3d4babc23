package main

func Example_waterAtFifteen() {
	show(waterAtFifteen())
	// Output:
	// Bettin & Spieweck 1990: a quotient of polynomials in the temperature.
	// At 15 °C 999.0991 kg/m³, at 4 °C 999.9720 kg/m³.
	// => at 15 °C: 999.099 kg/m³ (check 999.099, within 0.006)
	// => at 4 °C: 999.972 kg/m³ (check 999.973, within 0.006)
}

func Example_waterForMetrology() {
	show(waterForMetrology())
	// Output:
	// Tanaka et al. 2001, the recommendation for metrology: 997.0470 kg/m³.
	// Bettin & Spieweck 1990, the water of the sugar tables: 997.0433 kg/m³.
	// They differ by 0.0037 kg/m³: nothing to a hydrometer, but a mixture must take one water throughout.
	// => Tanaka: 997.047 kg/m³ (check 997.047013, within 0.001)
	// => Bettin & Spieweck: 997.043 kg/m³ (check 997.047013, within 0.006)
}

func Example_pureEthanol() {
	show(pureEthanol())
	// Output:
	// At 5 °C: 801.9905 kg/m³.
	// At 20 °C: 789.2391 kg/m³.
	// At 40 °C: 771.9323 kg/m³.
	// => at 5 °C: 801.99 kg/m³ (check 801.99, within 0.005)
	// => at 20 °C: 789.24 kg/m³ (check 789.24, within 0.005)
	// => at 40 °C: 771.93 kg/m³ (check 771.93, within 0.005)
}

func Example_tenPercentEthanol() {
	show(tenPercentEthanol())
	// Output:
	// If the volumes simply added, the density would be 0.9725 g/mL.
	// OIML R 22 has 0.98185 g/mL: the mixture shrinks by 1.0 %.
	// => density: 0.9818 g/mL (check 0.9819, within 0.00025)
}

func Example_strengthFromDensity() {
	show(strengthFromDensity())
	// Output:
	// The formula of OIML R 22 is solved for the strength: 44.985 % mass at 20 °C, 45.005 % mass at 10 °C.
	// That is 52.71 % vol.
	// => from 20 °C: 44.98 % mass (check 45.00, within 0.06)
	// => from 10 °C: 45.01 % mass (check 45.00, within 0.06)
}

func Example_sucroseTwentyPercent() {
	show(sucroseTwentyPercent())
	// Output:
	// ICUMSA SPS-4 (1994): 1080.977 kg/m³; water 998.203 kg/m³.
	// The quotient is 1.08292. Half of the sugar gives 1.03998, a little less than half of the excess.
	// => 20 %: 1.08292 (check 1.08287, within 0.00006)
	// => 10 %: 1.03998 (check 1.03998, within 0.00002)
}

func Example_glucoseIsLighter() {
	show(glucoseIsLighter())
	// Output:
	// Glucose 1037.48 kg/m³, sucrose 1038.12 kg/m³.
	// In gravity they are 0.0006 apart: a scale in °Bx is for table sugar.
	// => glucose: 1.0375 g/mL (check 1.0375, within 0.00006)
	// => sucrose: 1.0381 g/mL (check 1.0381, within 0.00006)
}

func Example_roomThatSugarTakes() {
	show(roomThatSugarTakes())
	// Output:
	// Masses add, volumes do not: 9 kg of water are 9.0162 L, 10 kg of syrup 9.6328 L.
	// The difference is 0.6166 L for the kilogram.
	// => growth: 0.617 L (check 0.617, within 0.001)
}
