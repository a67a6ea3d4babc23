package main

func Example_acidFromTheBottle() {
	show(acidFromTheBottle())
	// Output:
	// A litre of it holds 14.659 mol/L.
	// 0.15 mol are 17.29 g of it as weighed.
	// => amount in a litre: 14.659 mol/L (check 14.659, within 0.0005)
	// => mass: 17.29 g (check 17.293, within 0.0005)
	// => volume: 10.23 mL (check 10.233, within 0.0005)
}

func Example_acidAgainstAlkalinity() {
	show(acidAgainstAlkalinity())
	// Output:
	// 112.7 mmol of lactic acid leave 50.0 mg/L as CaCO3.
	// 112.7 mmol of phosphoric acid leave 50.0 mg/L as CaCO3.
	// 56.4 mmol of sulfuric acid leave 50.0 mg/L as CaCO3.
	// => lactic acid: 112.7 mmol (check 112.7, within 0.01)
	// => phosphoric acid: 112.7 mmol (check 112.7, within 0.01)
	// => sulfuric acid: 56.4 mmol (check 56.35, within 0.01)
}

func Example_twoConventions() {
	show(twoConventions())
	// Output:
	// To pH 7.0 as tartaric acid: 3.000 g/L.
	// To pH 7.0 as sulfuric acid: 1.960 g/L; to pH 8.2 as lactic acid: 3.603 g/L.
	// The French figure from the other by the masses of an equivalent: 1.960 g/L.
	// => as tartaric acid: 3.000 g/L (check 2.999, within 0.003)
	// => as sulfuric acid: 1.960 g/L (check 1.960, within 0.002)
	// => as lactic acid: 3.603 g/L (check 3.603, within 0.003)
}

func Example_acidityFactors() {
	show(acidityFactors())
	// Output:
	// An equivalent of tartaric acid is half a mole, 75.043 g; of citric acid a third, 64.041 g.
	// There is 80.0 mEq/L of acid in all, whatever it is called.
	// => as sulfuric acid: 3.921 g/L (check 3.918, within 0.006)
	// => as malic acid: 5.360 g/L (check 5.358, within 0.006)
	// => as citric acid: 5.120 g/L (check 5.118, within 0.006)
}

func Example_threeBases() {
	show(threeBases())
	// Output:
	// 5.04 g of baking soda: sodium 23.0 mg/L, potassium 0.0 mg/L, calcium 0.0 mg/L.
	// 6.00 g of potassium bicarbonate: sodium 0.0 mg/L, potassium 39.1 mg/L, calcium 0.0 mg/L.
	// 2.22 g of slaked lime: sodium 0.0 mg/L, potassium 0.0 mg/L, calcium 20.0 mg/L.
	// => baking soda: 5.036 g (check 5.036, within 0.001)
	// => potassium bicarbonate: 6.002 g (check 6.002, within 0.001)
	// => slaked lime: 2.221 g (check 2.221, within 0.001)
	// => calcium from the lime: 20.0 mg/L (check 20.0, within 0.05)
}

func Example_lyeInSoftWater() {
	show(lyeInSoftWater())
	// Output:
	// Carbon before 1.686 mmol/L; a closed water keeps it, lye turns CO2 into HCO3−.
	// CO2 falls from 0.686 mmol/L to 0.299 mmol/L.
	// Baking soda in its place would take 19 g, as it brings carbon of its own.
	// => sodium hydroxide: 1.55 g (check 1.546, within 0.01)
}

func Example_limeWater() {
	show(limeWater())
	// Output:
	// Calcium 814 mg/L, of which 4.33 mmol/L stand as CaOH+.
	// 60 L of it would take 90 g of lime.
	// => pH: 12.46 (check 12.454, within 0.02)
	// => lime dissolved: 1.50 g/L (check 1.504, within 0.045)
}
