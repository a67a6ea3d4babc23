package main

func Example_alreadyDissolved() {
	show(alreadyDissolved())
	// Output:
	// The warmest temperature since gas last came off counts: 1.430 g/L CO2.
	// Taken at 4 °C it would be 2.56 g/L CO2, and the bottles would come out flat.
	// => dissolved: 1.43 g/L (check 1.436, within 0.015)
}

func Example_sugarForTheBottles() {
	show(sugarForTheBottles())
	// Output:
	// A gram of sucrose makes 0.51428 g of CO2. The primer is to bring 4.30 g/L CO2.
	// With 2 g/L left, that sugar brings 1.029 g/L CO2 by itself.
	// => sugar, dry drink: 167.2 g (check 167.2, within 0.1)
	// => sugar, 2 g/L left: 127.2 g (check 127.2, within 0.1)
}

func Example_threePrimers() {
	show(threePrimers())
	// Output:
	// Crystal water makes no gas: the monohydrate gives 86.4 % of what table sugar gives.
	// 100 g of table sugar are replaced by 115.8 g of dextrose monohydrate.
	// => table sugar: 51.43 g (check 51.428, within 0.005)
	// => dextrose monohydrate: 44.42 g (check 44.415, within 0.005)
	// => anhydrous dextrose: 48.86 g (check 48.856, within 0.005)
}

func Example_primingWithJuice() {
	show(primingWithJuice())
	// Output:
	// Glucose and fructose make 0.48856 g of CO2 a gram, sucrose 0.51428: 92 % of such sugar counts as 87.4 % of sucrose.
	// A litre of the juice makes 58.41 g/L CO2.
	// The juice adds volume too: 21.24 L together, at 5.00 g/L CO2.
	// => juice: 1.236 L (check 1.237, within 0.002)
}

func Example_bottleInTheSun() {
	show(bottleInTheSun())
	// Output:
	// 4 °C: 1.80 bar gauge (CO2 1.95 bar absolute, air 0.86 bar absolute), head-space 15.5 mL, within the rating given.
	// 18 °C: 3.10 bar gauge (CO2 3.10 bar absolute, air 0.99 bar absolute), head-space 15.1 mL, within the rating given.
	// 40 °C: 5.71 bar gauge (CO2 5.38 bar absolute, air 1.26 bar absolute), head-space 12.9 mL, within the rating given.
	// The figure is good to about 5 % of the absolute pressure, 0.34 bar. A bottle rated 6 bar would be within its rating by 0.29 bar, less than that: not safe to rely on.
	// => gauge at 40 °C: 5.7 bar (check 5.7, within 0.25)
}

func Example_underAValve() {
	show(underAValve())
	// Output:
	// The valve has to hold 2.376 bar absolute; that takes 117.3 g of CO2 for drink and room, at 0.4716 g from a gram of sugar.
	// With the rating of 2 bar: within the rating given.
	// => valve: 1.36 bar (check 1.36, within 0.03)
	// => sugar left: 6.2 g/L (check 6.2, within 0.15)
}

func Example_coldCrash() {
	show(coldCrash())
	// Output:
	// At once 1.08 L; once the cold drink has taken up gas from the room above, 5.7 L.
	// That air brings 28 mg/L of oxygen to the drink; 85 g of CO2 let in from a regulator keep it out.
	// => air at once: 1.08 L (check 1.05, within 0.06)
}

func Example_twoBottleSizes() {
	show(twoBottleSizes())
	// Output:
	// 40 × 330 mL: 2.7 g each.
	// 9 × 750 mL: 6.2 g each.
	// Doses are rounded down, so that no bottle passes the target. Mixed into the 19.95 L that are filled it would be 166.8 g, and every bottle alike.
	// => for 330 mL: 2.7 g (check 2.7, exact)
	// => for 750 mL: 6.2 g (check 6.2, exact)
	// => in all: 163.8 g (check 163.8, exact)
	// => content, 330 mL: 5.638 g/L (check 5.638, within 0.001)
	// => content, 750 mL: 5.681 g/L (check 5.681, within 0.001)
	// => mixed in: 166.8 g (check 166.8, exact)
}

func Example_filledToTheBrim() {
	show(filledToTheBrim())
	// Output:
	// 343 mL: hydraulic lock at 40 °C; the rating is passed at 34 °C already.
	// 341.6 mL: 4.8 bar gauge, head-space 0.7 mL, within the rating given.
	// 338.1 mL: 4.7 bar gauge, head-space 4.2 mL, within the rating given.
	// 331.2 mL: 4.6 bar gauge, head-space 11.2 mL, within the rating given.
	// => the drink grows by: 0.82 % (check 0.812, within 0.015)
	// => most that fits at 40 °C: 342.2 mL (check 342.2, within 0.1)
	// => head-space at 40 °C of 331.2 mL: 11.2 mL (check 11.1, within 0.1)
}
