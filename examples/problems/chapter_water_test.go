package main

func Example_frenchAndGermanDegrees() {
	show(frenchAndGermanDegrees())
	// Output:
	// 4 mg/L of calcium are 9.989 mg/L as CaCO3.
	// 2.43 mg/L of magnesium count as much: 10.007 mg/L as CaCO3.
	// => in French degrees: 1.00 °fH (check 1.00, within 0.005)
	// => in German degrees: 0.56 °dH (check 0.56, within 0.005)
	// => charge: 0.20 mEq/L (check 0.20, within 0.005)
	// => magnesium: 1.00 °fH (check 1.00, within 0.005)
}

func Example_hardnessByCalculation() {
	show(hardnessByCalculation())
	// Output:
	// Calcium alone: 149.84 mg/L as CaCO3; with magnesium 191.02 mg/L as CaCO3.
	// That is 10.7 °dH, or 11.2 gr/US gal.
	// => hardness: 191.02 mg/L as CaCO3 (check 191.02, within 0.01)
	// => temporary hardness: 144 mg/L as CaCO3 (check 144, within 0.0005)
}

func Example_kolbach() {
	show(kolbach())
	// Output:
	// Alkalinity 144 mg/L as CaCO3 less what the hardness offsets.
	// In German degrees it is 5.34 °dH.
	// => residual alkalinity: 95.31 mg/L as CaCO3 (check 95.31, within 0.01)
}

func Example_doesTheReportBalance() {
	show(doesTheReportBalance())
	// Output:
	// Cations 4.7637 mEq/L, anions 4.7648 mEq/L.
	// The verdict: cations and anions differ by 0.01 %; 2.0 % is allowed at this content.
	// => cations: 4.764 mEq/L (check 4.7637, within 0.0005)
	// => anions: 4.765 mEq/L (check 4.7648, within 0.0005)
}

func Example_gramOfGypsum() {
	show(gramOfGypsum())
	// Output:
	// A mole of gypsum weighs 172.164 g.
	// In a litre of pure water: hardness 581.3 mg/L as CaCO3.
	// => calcium: 232.8 mg/L (check 232.79, within 0.05)
	// => sulfate: 557.9 mg/L (check 557.93, within 0.1)
}
