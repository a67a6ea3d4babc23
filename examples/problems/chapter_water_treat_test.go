package main

func Example_reportAsPrinted() {
	show(reportAsPrinted())
	// Output:
	// Hardness 200 mg/L as CaCO3, residual alkalinity 90 mg/L as CaCO3.
	// Note: alkalinity: 0.050 mEq/L taken off for the acid left at pH 4.3.
	// Note: ions do not balance: cations and anions differ by 6.48 %; 2.0 % is allowed at this content.
	// => calcium: 80.16 mg/L (check 80.16, within 0.005)
	// => nitrate: 22.13 mg/L (check 22.13, within 0.005)
	// => sulfate: 59.92 mg/L (check 59.92, within 0.005)
	// => alkalinity: 147.6 mg/L as CaCO3 (check 147.6, within 0.3)
}

func Example_boiledHardWater() {
	show(boiledHardWater())
	// Output:
	// CO2 goes with the steam, the pH rises to 8.22 and calcite drops out: 278 mg/L.
	// Softer by 278 mg/L as CaCO3: nearly all of the temporary hardness.
	// => alkalinity left: 22.0 mg/L as CaCO3 (check 21.0, within 1.2)
	// => calcium left: 8.8 mg/L (check 8.43, within 0.5)
	// => scale: 278 mg/L (check 279, within 1.2)
}

func Example_throughTheMembrane() {
	show(throughTheMembrane())
	// Output:
	// CO2 before 0.197 mmol/L, after 0.196 mmol/L.
	// In open air it would come to pH 7.3.
	// => calcium: 3.0 mg/L (check 3.0, within 0.05)
	// => alkalinity: 7.2 mg/L as CaCO3 (check 7.2, within 0.05)
	// => pH: 6.24 (check 6.23, within 0.03)
}

func Example_againstChlorine() {
	show(againstChlorine())
	// Output:
	// It leaves chloride 0.50 mg/L and sulfate 1.35 mg/L, and takes 1.41 mg/L as CaCO3 of alkalinity.
	// A milligram of chlorine takes 1.34 mg of it.
	// => sodium metabisulfite: 80.4 mg (check 80.43, within 0.01)
	// => potassium metabisulfite: 94.1 mg (check 94.07, within 0.01)
	// => sodium metabisulfite with a tenth more: 88.5 mg (check 88.48, within 0.02)
}

func Example_nitrateTwice() {
	show(nitrateTwice())
	// Output:
	// Found: nitrate as N 10.17 mg/L, at most 10 mg/L (US maximum contaminant level, 40 CFR 141.62, 2015).
	// Found: nitrate and nitrite as N 10.17 mg/L, at most 10 mg/L (US maximum contaminant level, 40 CFR 141.62, 2015).
	// => the well as nitrogen: 10.17 mg/L as N (check 10.17, within 0.005)
	// => limit of the United States: 10 mg/L as N (check 10, exact)
	// => limit of the European Union: 50 mg/L as NO3 (check 50, exact)
}

func Example_sodiumAtMost() {
	show(sodiumAtMost())
	// Output:
	// chloride -38.3 mg/L off: a limit or a stock holds the doses back.
	// What binds: sodium at most 40 mg/L.
	// => fall of the sum of squares for 1 mg/L more of it: 118.2 (mg/L)² (check 118.18, within 0.06)
	// => table salt: 101.7 mg (check 101.68, within 0.01)
	// => chloride missing: 38.32 mg/L (check 38.32, within 0.01)
}

func Example_conductivityOfIons() {
	show(conductivityOfIons())
	// Output:
	// Each ion carries its charge at its own speed; at an ionic strength of 0.0068 mol/L they slow each other down.
	// 50 mg/L of table salt would add 101 µS/cm: the 121 µS/cm that are too many are about as much.
	// Beside the report the conductivity is 1.25 times what the ions give; 0.9 to 1.1 is usual. A meter counts ions, not which they are.
	// => at 25 °C: 479 µS/cm (check 499, within 25)
	// => at 20 °C: 429 µS/cm (check 445.5, within 22)
	// => measured over computed: 1.25 (check 1.20, within 0.06)
}
