package main

func Example_whatAVolumeWeighs() {
	show(whatAVolumeWeighs())
	// Output:
	// Real 1.9770, ideal 1.9635 g/L: 0.7 % apart, so say which.
	// The equation of state finds 1.9768 kg/m³.
	// => real: 1.9770 g/L (check 1.9770, within 0.0001)
	// => ideal: 1.9635 g/L (check 1.9635, within 0.0001)
	// => equation of state: 1.977 g/L (check 1.9767, within 0.001)
}

func Example_roomOfAKilogram() {
	show(roomOfAKilogram())
	// Output:
	// Second virial coefficient -127.9 cm³/mol: the gas is a little denser than an ideal one.
	// Density 1.8393 kg/m³, so a kilogram fills 0.5437 m³.
	// => volume: 0.5437 m³ (check 0.5437, within 0.0001)
}

func Example_secondVirialAtRoom() {
	show(secondVirialAtRoom())
	// Output:
	// Span & Wagner 1996: B = -123.01 cm³/mol at 25 °C.
	// At 20 °C and 3 bar the gas acts with 98.43 % of its pressure.
	// => second virial coefficient: -123.0 cm³/mol (check -123.9, within 1.5)
	// => fugacity coefficient: 0.9843 (check 0.98427, within 0.0005)
}

func Example_henryTable() {
	show(henryTable())
	// Output:
	// At 4 °C 0.06649 mol/(kg·atm), at 20 °C 0.03916: the cold takes up 1.70 times as much.
	// The smooth formula behind the drinks (Plummer & Busenberg 1982) has 0.06670 and 0.03919.
	// => at 4 °C: 0.06649 mol/(kg·atm) (check 0.06649, within 0.000005)
	// => at 20 °C: 0.03916 mol/(kg·atm) (check 0.03916, within 0.000005)
}

func Example_seaWater() {
	show(seaWater())
	// Output:
	// ln K0 = A1 + A2·(100/T) + A3·ln(T/100) + S·(B1 + B2·(T/100) + B3·(T/100)²), eq. 12; fresh water 0.07758 mol/(kg·atm) at 0 °C.
	// Sea water takes up 19.0 % less than fresh water at 0 °C; a brewing water has a thirtieth of its salt, which is nothing.
	// => at 0 °C: 0.06287 mol/(kg·atm) (check 0.06287, within 0.000006)
	// => at 5 °C: 0.05213 mol/(kg·atm) (check 0.05213, within 0.000006)
}

func Example_handbookMoleFraction() {
	show(handbookMoleFraction())
	// Output:
	// Carroll, Slupsky & Mather 1991, the relation behind that table: 0.0006143 and 0.0009503.
	// Plummer & Busenberg: 0.0006019 and 0.0009497.
	// => at 25 °C: 0.614 thousandths (check 0.614, within 0.002)
	// => at 10 °C: 0.950 thousandths (check 0.950, within 0.002)
}

func Example_bunsenAtTwenty() {
	show(bunsenAtTwenty())
	// Output:
	// At 20 °C with 2.339 kPa absolute of vapour: 1.7123 g/L CO2.
	// At 5 °C with 0.873 kPa absolute of vapour: 2.8050 g/L CO2.
	// => at 20 °C: 0.866 volumes (check 0.8652, within 0.01)
	// => at 5 °C: 1.419 volumes (check 1.4199, within 0.017)
}

func Example_cylinderGauge() {
	show(cylinderGauge())
	// Output:
	// Liquid and gas together have one pressure for each temperature, from 5.18 bar absolute to 73.77 bar absolute between the two points.
	// At 20 °C the gauge shows 56.4 bar gauge, full or nearly empty: weigh the cylinder.
	// => triple point: 517.96 kPa (check 517.964, within 0.02)
	// => critical point: 7377.3 kPa (check 7377.3, within 0.15)
}

func Example_boilingInTheHall() {
	show(boilingInTheHall())
	// Output:
	// The air of the hall presses with 93.869 kPa absolute.
	// The vapour pressure of water is solved for the pressure of the air: 99.974 °C and 97.85 °C.
	// => at sea level: 99.97 °C (check 99.974, within 0.01)
	// => in the hall: 97.8 °C (check 97.87, within 0.1)
}
