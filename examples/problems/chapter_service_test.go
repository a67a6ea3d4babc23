package main

func Example_pasteurisationUnits() {
	show(pasteurisationUnits())
	// Output:
	// 1.393^(T-60): 1.9404 a minute; 10^((T-60)/7): 1.9307.
	// At 72 °C they are 53.4 and 51.8: 3 % apart.
	// => form of 1951: 19.40 PU (check 19.40, within 0.005)
	// => handbooks: 19.31 PU (check 19.31, within 0.005)
}

func Example_unitsOverALog() {
	show(unitsOverALog())
	// Output:
	// On a straight leg the rate goes from r1 to r2: (r2 − r1)·Δt/ln(r2/r1). At 20 °C it is 0.0000019 a minute, at 60 °C 1.
	// Warming 1.520, holding 15.000, cooling 1.520.
	// => units: 18.04 PU (check 18.04, within 0.005)
}

func Example_frictionInAPipe() {
	show(frictionInAPipe())
	// Output:
	// Below Re 2300 the flow is laminar, 64/Re; above it Haaland's form stands for Colebrook's, without iteration.
	// Haaland: 1/√f = −1.8·log((ε/3.7)^1.11 + 6.9/Re).
	// => laminar: 0.0640 (check 0.0640, within 0.00005)
	// => turbulent, smooth: 0.0178 (check 0.01799, within 0.00027)
	// => turbulent, rough: 0.0220 (check 0.02217, within 0.00033)
}

func Example_lengthOfLine() {
	show(lengthOfLine())
	// Output:
	// Speed 3.542 m/s, Reynolds number 16803, viscosity 1.0020 mPa·s.
	// Fittings and the drink's own speed take 6.26 kPa gauge, each metre 35.38 kPa gauge (1.56 psi a foot).
	// The trade counts 3.0 psi a foot for it, at any flow.
	// That is twice the friction of a smooth line: a figure of practice, whose flow and wall no source states. Cut the line long, try it, shorten it.
	// => length: 2.65 m (check 2.65, within 0.01)
}

func Example_fillAndVent() {
	show(fillAndVent())
	// Output:
	// One round leaves 33.6 % of the air; five spend 351 g of CO2.
	// To come below 100 ppm it takes 8 rounds.
	// => air left: 0.430 % (check 0.430, within 0.0005)
	// => oxygen: 901 ppm (check 901, within 1)
}

func Example_flushingAKeg() {
	show(flushingAKeg())
	// Output:
	// Well mixed, each volume of gas leaves 1/e of the air: exp(−V). Without any mixing one volume would do.
	// Oxygen 10429 ppm; CO2 spent 104.8 g.
	// => air left: 4.979 % (check 4.979, within 0.0005)
	// => gas: 104.8 g (check 104.8, within 0.1)
}

func Example_kegsFromACylinder() {
	show(kegsFromACylinder())
	// Output:
	// For each keg: carbonating 79.0 g, serving 74.0 g.
	// After the last whole keg 126 g are left.
	// => each keg: 153 g (check 153, within 0.7)
	// => kegs: 14 (check 14, exact)
}

func Example_chargeInACellar() {
	show(chargeInACellar())
	// Output:
	// A kilogram fills 0.5437 m³ at this temperature.
	// 1.233 m³ of gas, mixed into the room; oxygen falls to 20.1 %.
	// => CO2: 41505 ppm (check 41505, within 5)
}

func Example_workplaceLimit() {
	show(workplaceLimit())
	// Output:
	// CO2 weighs 1.8079 kg/m³; 5000 millionths of it are 9040 mg/m³.
	// OSHA PEL, 8 h: 5000 ppm (29 CFR 1910.1000 table Z-1 (2015); read).
	// ACGIH TLV, 8 h: 5000 ppm (ACGIH, as quoted in the OSHA preamble; read).
	// ACGIH short-term, 15 min: 30000 ppm (ACGIH, as quoted in the OSHA preamble; read).
	// NIOSH REL, 10 h: 5000 ppm (NIOSH, Immediately Dangerous to Life or Health Concentrations, carbon dioxide (May 1994); read).
	// NIOSH short-term, 15 min: 30000 ppm (NIOSH, Immediately Dangerous to Life or Health Concentrations, carbon dioxide (May 1994); read).
	// NIOSH immediately dangerous: 40000 ppm (NIOSH, Immediately Dangerous to Life or Health Concentrations, carbon dioxide (May 1994); read).
	// => limit: 9040 mg/m³ (check 9000, within 100)
}

func Example_airingTheCellar() {
	show(airingTheCellar())
	// Output:
	// The gas comes at 27.18 L/h.
	// Closed up, the limit is reached after 5.1 h and danger of life after 44 h.
	// => fresh air: 5.94 m³/h (check 5.936, within 0.01)
	// => air changes: 0.198 an hour (check 0.198, within 0.0005)
}

func Example_peakOverALog() {
	show(peakOverALog())
	// Output:
	// Warming 7.798, holding 28.960, cooling 2.379.
	// At 62 °C: CO2 8.16 bar absolute, vapours 0.25 bar absolute, head-space 9.3 mL, within the rating given.
	// => units: 39.14 PU (check 39.14, within 0.005)
	// => highest gauge: 7.4 bar (check 7.4, within 0.2)
}
