package main

func Example_cellsDouble() {
	show(cellsDouble())
	// Output:
	// While they grow, the sugar used goes as exp(µt) − 1: after 10, 20 and 30 h 0.0132, 0.034 and 0.0666 %.
	// They double in 15.3 h.
	// => growth rate: 0.045 /h (check 0.050, within 0.005)
}

func Example_warmerByTheTable() {
	show(warmerByTheTable())
	// Output:
	// Days to 95 % of its sugar: 3.8 at 15 °C, 2.2 at 22 °C.
	// The model's own slope is 55 kJ/mol (49 to 63 by its authors' error).
	// => ratio of days: 1.72 (check 1.63, within 0.12)
}

func Example_warmerLevelsOff() {
	show(warmerLevelsOff())
	// Output:
	// Days to 95 % of its sugar: 2.2 at 22 °C, 1.9 at 30 °C.
	// One constant activation energy fails above 22 °C: strains level off, and each in its own way.
	// => ratio of days: 1.19 (check 1.21, within 0.05)
}

func Example_mustOnPaper() {
	show(mustOnPaper())
	// Output:
	// Nine in ten between 113 and 584 h, half between 179 and 355 h.
	// The middle is 251 h.
	// => middle, as the logarithm of the hours: 5.53 (check 5.136, within 0.4)
}

func Example_wortByReadings() {
	show(wortByReadings())
	// Output:
	// Nine in ten between 1.0077 and 1.0184.
	// It is dry after 7.6 days.
	// => after five days: 1.0132 (check 1.0116, within 0.002)
}

func Example_lagerByReadings() {
	show(lagerByReadings())
	// Output:
	// By the plan alone 79 %.
	// By two readings nine in ten between 75 % and 100 %: it ran far ahead of a plan at 10 °C, and the forecast stays careful.
	// => used after five days: 94 % (check 98.8, within 12)
}

func Example_wortThatStopped() {
	show(wortThatStopped())
	// Output:
	// After 1 d: not called stopped.
	// After 2 d: not called stopped.
	// After 3 d: not called stopped.
	// After 4 d: stopped since 48 h.
	// Chance that it stays below nine tenths: 100 %.
	// => gravity on the fifth day: 1.0352 (check 1.0349, within 0.002)
}

func Example_gasOfAnHour() {
	show(gasOfAnHour())
	// Output:
	// Fastest after 15 h by the model's shape: 3.1 g/L.
	// A litre of it gives 1.1 W then: what cooling has to take.
	// => CO2 in the hour half way: 1.9 g/L (check 2.0, within 0.3)
}
