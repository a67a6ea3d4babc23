package main

func Example_gasWaterPH() {
	show(gasWaterPH())
	// Output:
	// The fugacity of the gas sets the dissolved CO2; electroneutrality asks for as much HCO3− as H+.
	// Dissolved CO2 33.81 mmol/L; the HCO3− that balances H+ is only 0.1241 mmol/L.
	// => pH: 3.911 (check 3.911, within 0.005)
}

func Example_rainWaterPH() {
	show(rainWaterPH())
	// Output:
	// The air presses with 0.0426 kPa absolute of CO2.
	// Dissolved CO2 0.0143 mmol/L: in proportion to the pressure, but the acidity goes with its root.
	// => pH: 5.60 (check 5.598, within 0.01)
}

func Example_pressureOfCO2InTap() {
	show(pressureOfCO2InTap())
	// Output:
	// Alkalinity and pH leave one content of carbon: 3.0629 mmol/L, of which CO2 0.1966 mmol/L.
	// Open air has 0.0426 kPa absolute, so this water gives off CO2 and its pH rises.
	// It is just saturated with calcite: chalk neither drops out nor dissolves.
	// => inorganic carbon: 3.063 mmol/L (check 3.0651, within 0.01)
	// => CO2 pressure: 0.510 kPa (check 0.5164, within 0.01)
}

func Example_acidToAPH() {
	show(acidToAPH())
	// Output:
	// Inorganic carbon now 3.063 mmol/L; an acid turns HCO3− into CO2.
	// The alkalinity is 144 mg/L as CaCO3. Closed, some of it stays as HCO3− at pH 5.4; open, nearly all must go.
	// => phosphoric, closed: 2.50 mmol/L (check 2.5016, within 0.025)
	// => lactic, closed: 2.63 mmol/L (check 2.6361, within 0.026)
	// => hydrochloric, closed: 2.56 mmol/L (check 2.5684, within 0.026)
	// => hydrochloric, open: 2.88 mmol/L (check 2.8802, within 0.029)
}

func Example_gypsumSolubility() {
	show(gypsumSolubility())
	// Output:
	// 25.0 °C: 2.57 g/kg; of the calcium 3.92 mmol/L are paired with sulfate.
	// 0.5 °C: 2.24 g/kg; of the calcium 1.83 mmol/L are paired with sulfate.
	// => at 25.0 °C: 0.0149 mol/kg (check 0.0151, within 0.00045)
	// => at 0.5 °C: 0.0130 mol/kg (check 0.0128, within 0.00038)
}

func Example_calciteUnderGas() {
	show(calciteUnderGas())
	// Output:
	// At equilibrium 0.00928 mol have dissolved in a kilogram, 0.93 g; the pH is 6.01.
	// Whoever doses it as a salt is warned: “chalk hardly dissolves in water: 0.013 g/L, and more only with CO2 or acid.”
	// => solubility: 0.0093 mol/kg (check 0.00917, within 0.00092)
}

func Example_halfNeutralised() {
	show(halfNeutralised())
	// Output:
	// Electroneutrality: Na+ and H+ against lactate, whose share is set by the pH.
	// Here the buffer is at its strongest: 11.9 mEq/L of base for a unit of pH.
	// => pH: 3.83 (check 3.83, within 0.02)
	// => buffer: 11.9 mEq/L (check 11.9, within 0.4)
}

func Example_deacidify() {
	show(deacidify())
	// Output:
	// Half a mole of tartaric acid, one of H+, weighs 75.043 g; a mole of potassium bicarbonate, which takes one H+, 100.114 g.
	// It brings 521 mg/L of potassium.
	// => potassium bicarbonate: 1.334 g/L (check 1.334, within 0.0005)
}
