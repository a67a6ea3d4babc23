package main

func Example_brixInAir() {
	show(brixInAir())
	// Output:
	// 10 °P: 1.03998 in vacuum, 1.04003 in air, where both liquid and water lose 1.2 kg/m³.
	// 14 °P: 1.05679 in vacuum, 1.05686 in air, where both liquid and water lose 1.2 kg/m³.
	// => 10 °P in air: 1.04003 (check 1.04003, within 0.00004)
	// => 14 °P in air: 1.05686 (check 1.05683, within 0.00004)
}

func Example_gramsInALitre() {
	show(gramsInALitre())
	// Output:
	// 1.0100 at 15/15 °C is 1.00995 at 20/20 °C, 2.554 °P, and at 15 °C a litre of it holds 25.78 g/L.
	// 1.0170 at 15/15 °C is 1.01691 at 20/20 °C, 4.315 °P, and at 15 °C a litre of it holds 43.85 g/L.
	// => extract at 1.0100: 25.8 g/L (check 25.8, within 0.11)
	// => extract at 1.0170: 43.8 g/L (check 43.9, within 0.11)
}

func Example_readInAWarmJar() {
	show(readInAWarmJar())
	// Output:
	// The liquid is lighter because it is warm; the float is a little larger too. Solved for the extract: 9.69 °P.
	// At 20 °C that is 1.0387, 0.0027 above the reading.
	// => gravity 20/20 °C: 1.0387 (check 1.0387, within 0.0001)
}

func Example_belowOne() {
	show(belowOne())
	// Output:
	// The gravity is 0.99281: ethanol is lighter than water, and no sugar holds against it.
	// The scale of sugar, continued below zero with the same polynomial, reads -1.88 °P.
	// => gravity: 0.9928 (check 0.9928, within 0.00025)
	// => apparent extract: -1.88 °P (check -1.87, within 0.07)
}

func Example_fourRoadsToPlato() {
	show(fourRoadsToPlato())
	// Output:
	// ICUMSA SPS-4: 11.922 °P.
	// NBS Circular 440, cubic: 11.925 °P.
	// ASBC table, cubic: 11.926 °P.
	// Lincoln, quadratic: 11.925 °P.
	// linear: 11.663 °P.
	// 260·(1 − 1/S) at 17.5 °C: 11.951 °P.
	// => default, ICUMSA SPS-4: 11.92 °P (check 11.926, within 0.01)
	// => Lincoln: 11.912 °P (check 11.912, within 0.001)
}

func Example_indexOfSyrup() {
	show(indexOfSyrup())
	// Output:
	// 10 °P: 1.34782.
	// 20 °P: 1.36384.
	// 50 °P: 1.42009.
	// => index at 10 °P: 1.34782 (check 1.34782, within 0.00003)
	// => index at 20 °P: 1.36384 (check 1.36384, within 0.00003)
	// => index at 50 °P: 1.42009 (check 1.42009, within 0.00003)
	// => scale at 1.36384: 20.00 °Bx (check 20.00, within 0.02)
}

func Example_warmRefractometer() {
	show(warmRefractometer())
	// Output:
	// A warm syrup bends light less, so the reading is too low: the correction is added, and taken off below 20 °C. Between the printed columns it is interpolated.
	// At 25 °C add 0.32 °P; at 15 °C take off 0.31 by one table, 0.33 by the other.
	// => must of 25 °C: 12.32 °Bx (check 12.32, within 0.005)
	// => must of 15 °C, CRC: 14.69 °Bx (check 14.69, within 0.005)
	// => must of 15 °C, OIV: 14.67 °Bx (check 14.67, within 0.005)
}
