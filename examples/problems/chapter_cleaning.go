package main

import (
	"math"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// faraday is the charge of a mole, C/mol: exact by the SI of 2019.
const faraday = 96485.33212

// slopeAt is the slope of an ideal electrode in mV for each pH, at °C.
func slopeAt(celsius float64) float64 {
	return math.Ln10 * chemistry.Gas * (celsius + chemistry.ZeroCelsius) / faraday * 1000
}

func slopeOfAnElectrode() Problem {
	return Problem{
		Title: "The slope of an electrode",
		Ask: "How many millivolts does an ideal pH electrode give for each pH at 10, 25 and 50 °C? A meter set to 25 °C and calibrated " +
			"at pH 7 is dipped into a mash of 65 °C, " +
			"whose pH is 5.40 at that temperature. What does it show without compensation?",
		Given: []string{"slope ln 10 × R × T/F", "the electrode crosses zero at pH 7"},
		Source: Source{secondHand, "A table of the Nernst slope by temperature (excerpt of all-about-ph.com, pH temperature compensation): " +
			"56.18 mV at 10 °C, 59.16 at 25 °C, 64.12 at 50 °C. " +
			"The reading by hand: 7 − (7 − 5.40) × 338.15/298.15 = 5.185."},
		Work: func(w *Working) {
			w.Step("The slope goes with the absolute temperature: %.1f mV at 65 °C.", slopeAt(65))
			w.Step("Compensation puts that right and no more: what the sample itself does when it warms stays in the reading. Cool the " +
				"sample, and say at which temperature the pH holds.")
			w.Answer("10 °C", slopeAt(10), 2, "mV", 56.18, 0.006)
			w.Answer("25 °C", slopeAt(25), 2, "mV", 59.16, 0.006)
			w.Answer("50 °C", slopeAt(50), 2, "mV", 64.12, 0.006)
			w.Answer("shown by the mash", 7-(7-5.40)*slopeAt(65)/slopeAt(25), 3, "", 5.185, 0.001)
		},
	}
}

func bufferMovesByItself() Problem {
	return Problem{
		Title: "The buffer moves by itself",
		Ask:   "Which pH has the phosphate buffer of 0.025 mol/kg of each salt at 10, 25 and 50 °C?",
		Given: []string{"0.025 mol/kg KH2PO4 and 0.025 mol/kg Na2HPO4: 49.91 mmol/L of phosphate, 74.865 mEq/L of potassium and sodium"},
		Source: Source{Read, "HJ 1147-2020, pH of water, electrode method, table of the buffer: 6.921 at 10 °C, 6.864 at 25 °C, 6.833 " +
			"at 50 °C. NBS gives 6.865 at 25 °C (Staples & Bates, " +
			"J. Res. NBS 73A (1969), as a standard). 0.048 is allowed in cold and warmth, as enthalpies are taken as constant."},
		Work: func(w *Working) {
			buffer := water.Totals{StrongIons: units.MilliequivalentPerLitre.Of(74.865), Phosphate: units.MillimolePerLitre.Of(49.91)}
			at := func(t units.Temperature) float64 { return must(buffer.Equilibrium(t)).PH() }
			w.Step("A cold buffer entered as 6.86 shifts every reading by %.2f.", at(units.Celsius.Of(10))-at(units.Celsius.Of(25)))
			w.Step("Take the value of the buffer at its own temperature, from its label, and let buffer, electrode and sample be as warm as each other.")
			w.Answer("10 °C", at(units.Celsius.Of(10)), 3, "", 6.921, 0.048)
			w.Answer("25 °C", at(units.Celsius.Of(25)), 3, "", 6.864, 0.015)
			w.Answer("50 °C", at(units.Celsius.Of(50)), 3, "", 6.833, 0.048)
		},
	}
}

const (
	causticCaution = "Caustic soda burns skin and blinds: goggles, gloves and apron. Put it into cold water little by little and stir, " +
		"never water onto it; hot or strong it boils up. " +
		"It eats aluminium and gives off hydrogen. The maker's safety data sheet goes before all of this."
	oxidantCaution = "Never let a chlorinated cleaner meet an acid, or another cleaner: chlorine comes at once. Rinse between caustic, " +
		"acid and sanitiser, air the room, and leave it at the first smell. " +
		"The maker's safety data sheet and local rules go before all of this."
	peraceticCaution = "Concentrated peracetic acid burns, feeds fire and gives off oxygen: keep it cool in its vented container, " +
		"never return any to it, keep it from metals, caustic and organic matter. " +
		"Work by the maker's safety data sheet and label, and in moving air."
)

func causticByMass() Problem {
	return Problem{
		Title: "Two per cent of caustic, and how warm it gets",
		Ask: "20 kg of a cleaning solution of 2 % mass are wanted. How much lye of 50 % mass is that, or of pellets, and how far do " +
			"the pellets warm the solution?",
		Given:  []string{"heat of solution −44.4 kJ/mol (a maker's glossary, caustic soda, read)", "heat capacity 4.18 kJ/kg/K, that of water"},
		Source: Source{ByHand, "20 × 0.02 = 0.400 kg of pellets; 0.400/0.50 = 0.800 kg of lye. 400/39.997 = 10.001 mol × 44.4 = 444.0 kJ; /(20 × 4.18) = 5.31 K."},
		Work: func(w *Working) {
			const batch, share = 20.0, 0.02
			dry := batch * share
			mol := dry * 1000 / material.SodiumHydroxide().MolarMass().In(units.GramPerMole)
			rise := mol * 44.4 / (batch * heatOfWater)
			w.Step("By mass, on a scale: a litre of lye of 50 %% weighs half as much again as water, so that per cent by volume would be wrong by as much.")
			w.Step("In a tenth of the water it would be ten times the rise, %.0f K: from a warm tap it nears the boil.", 10*rise)
			w.Answer("pellets", dry, 3, "kg", 0.400, 0)
			w.Answer("lye of 50 %", dry/0.5, 3, "kg", 0.800, 0)
			w.Answer("rise", rise, 2, "K", 5.31, 0.01)
			w.Caution(causticCaution)
		},
	}
}

func lyeAndAcid() Problem {
	return Problem{
		Title: "What neutralises the spent caustic",
		Ask: "20 kg of spent caustic of 2 % mass go to the drain, whose works ask for less than pH 9. How much citric acid (monohydrate) " +
			"takes all of it, and how far does that warm it?",
		Given: []string{"citric acid takes three of sodium hydroxide", "neutralisation −55.8 kJ/mol (recalled from memory)"},
		Source: Source{ByHand, "400/39.997 = 10.001 mol; /3 = 3.334 mol of citric acid monohydrate of 210.14 g/mol: 0.7005 kg. 10.001 × " +
			"55.8/(20.7 × 4.18) = 6.45 K, " +
			"a little less for the third step of a weak acid."},
		Work: func(w *Working) {
			mol := 400 / material.SodiumHydroxide().MolarMass().In(units.GramPerMole)
			acid := mol / 3 * must(chemistry.MolarMass("C6H8O7·H2O")) / 1000
			w.Step("Cleaning has used some of the caustic, and air has made carbonate of some: add the acid in steps and read the pH.")
			w.Step("Carbonate gives off CO2 and foams: an open vessel, moving air.")
			w.Answer("citric acid monohydrate", acid, 3, "kg", 0.7005, 0.001)
			w.Answer("rise", mol*55.8/((20+acid)*heatOfWater), 2, "K", 6.45, 0.01)
			w.Caution(causticCaution)
			w.Caution(water.AcidCautions().Texts()...)
			w.Caution(oxidantCaution)
			w.Caution("What may go to a drain, and at which pH, is said by the works that take it.")
		},
	}
}

func bleachMeetsAcid() Problem {
	return Problem{
		Title: "Bleach meets acid",
		Ask: "50 mL of a chlorinated cleaner with 5 g of sodium hypochlorite in 100 mL are poured into a bucket with acid. How much " +
			"chlorine can that give in a cellar of 20 m³ at 20 °C, " +
			"and how many times the level that is immediately dangerous to life is it?",
		Given: []string{"NaOCl + 2 H+ + Cl− gives Cl2 + Na+ + H2O, with chloride enough in the cleaner", "an ideal gas at 101.325 kPa, mixed with all the air"},
		Source: Source{secondHand, "NIOSH (excerpt), Immediately Dangerous to Life or Health Concentrations, chlorine (1994): 10 ppm; " +
			"limit of exposure 0.5 ppm (1.45 mg/m3) for 15 minutes. By hand: 2.5/74.44 = 0.03358 mol, × 24.055 L/mol = " +
			"0.808 L in 20,000 L: 40.4 ppm, 4.04 times that; 0.5 × 70.90/24.465 at 25 °C = 1.449 mg/m3, printed as 1.45."},
		Work: func(w *Working) {
			molar := func(celsius float64) float64 {
				return chemistry.Gas * (celsius + chemistry.ZeroCelsius) / chemistry.StandardKPa
			}
			mol := 2.5 / must(chemistry.MolarMass("NaClO"))
			ppm := mol * molar(20) / 20000 * 1e6
			w.Step("%.1f g of chlorine, %.2f L. It is heavier than air: where it lies, at the floor and over the bucket, there is far more.",
				mol*2*chemistry.Cl, mol*molar(20))
			w.Step("12 mL of the cleaner, a tablespoon, would do for %.0f ppm.", ppm*12/50)
			w.Answer("chlorine", ppm, 1, "ppm", 40.4, 0.1)
			w.Answer("over the dangerous level", ppm/10, 2, "times", 4.04, 0.01)
			w.Answer("the limit for 15 minutes", 0.5*2*chemistry.Cl/molar(25), 2, "mg/m³", 1.45, 0.005)
			w.Caution(oxidantCaution)
		},
	}
}

func peraceticAcid() Problem {
	return Problem{
		Title: "Peracetic acid, in the bucket and in the air",
		Ask: "A sanitiser is sold with 5 % mass of peracetic acid. How much makes 60 L with 200 mg/L, a usual strength? The limit of " +
			"exposure is 0.4 ppm: how many milligrams in a cubic metre is that, " +
			"and how much of the concentrate holds as much as a cellar of 20 m³ may?",
		Given: []string{"peracetic acid C2H4O3", "25 °C, 24.465 L/mol", "200 mg/L: common practice; the label of the product decides"},
		Source: Source{secondHand, "The limit of the ACGIH (excerpt) for 15 minutes, 0.4 ppm (1.24 mg/m3), as the American Industrial " +
			"Hygiene Association prints it (2017). By hand: 60 × 0.2 = 12.0 g, /0.05 = 240 g of concentrate; " +
			"0.4 × 76.051/24.465 = 1.243 mg/m3; × 20 m3 = 24.9 mg, in 0.497 g of concentrate."},
		Work: func(w *Working) {
			const share = 0.05
			limit := 0.4 * must(chemistry.MolarMass("C2H4O3")) / (chemistry.Gas * 298.15 / chemistry.StandardKPa)
			w.Step("By mass: a drop too much of a concentrate is no safer, it only lasts longer in the air.")
			w.Step("Half a gram spilt and dried off fills the cellar to the limit: air it, and mix outside the fermenter.")
			w.Answer("concentrate for 60 L", 60*0.2/share, 0, "g", 240, 0.001)
			w.Answer("limit", limit, 2, "mg/m³", 1.24, 0.005)
			w.Answer("concentrate that fills the cellar", limit*20/share/1000, 3, "g", 0.497, 0.001)
			w.Caution(peraceticCaution)
			w.Caution(oxidantCaution)
		},
	}
}
