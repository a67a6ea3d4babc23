package water

import "math"

// speciesRow is a dissolved form: what it is made of, how strongly, how active, and who
// says so. Its charge follows from what it is made of; log K is that of
// metal + anion + protons·H+ = species, at infinite dilution, in mol/kg of water.
type speciesRow struct {
	formula  string
	metal    component
	anion    component
	protons  int // taken up; given off where negative
	activity activity
	k        fit
	from     origin
}

// withLactone is log K of gluconic acid together with its delta-lactone, which it is at equilibrium with, the acid
// less a water: 3.92 of the acid, 10^-0.81 of it as lactone. That takes hours; the gamma-lactone is left out.
var withLactone = 3.92 + math.Log10(1+math.Pow(10, -0.81))

// speciesTable has a row for each species; the rest of the package loops over it.
//
// What is not in it, and why:
//
//   - Malate with any metal, and magnesium lactate: no measured constant was found ("Mal" of
//     one data base is malonate; the 1.37 of magnesium lactate is an estimate from a
//     correlation). Such waters bind less here than they do.
//   - Calcium lactate at log K 1.42, -2.4 kJ/mol, an estimate from the same correlation: the
//     row has 1.69, 31 kJ/mol, measured at 25 °C and carried to no strength.
//   - Acetate with sodium (-0.18) and potassium (-0.20): with Davies they put the standard
//     of 0.1 mol/kg of acetic acid and sodium acetate 0.026 below its pH; without, within 0.01.
//   - Na2(citrate)- (1.5): two metals in one; 0.3 % of the citrate in 10 mmol/L of sodium.
//   - Lactate with sodium and potassium (0.05, 0.03): estimates, 0.1 % of it at 1 mmol/L.
//   - Quinic and chlorogenic acid: no constant was found; galacturonic: only "about 3.5" on a page that sells it.
var speciesTable = [speciesCount]speciesRow{
	hydrogen:      {"H+", nothing, nothing, 1, jones(9, 0), fit{}, basis},
	hydroxideFree: {"OH-", nothing, nothing, -1, jones(3.5, 0), fitWater, phreeqc},

	CarbonDioxide:          {"CO2", nothing, partCO3, 2, neutral(0.1), fitBothBack, plummer},
	BicarbonateFree:        {"HCO3-", nothing, partCO3, 1, jones(5.4, 0), fitSecondBack, plummer},
	CarbonateFree:          {"CO3-2", nothing, partCO3, 0, jones(5.4, 0), fit{}, basis},
	calciumFree:            {"Ca+2", partCa, nothing, 0, jones(5, 0.165), fit{}, basis},
	magnesiumFree:          {"Mg+2", partMg, nothing, 0, jones(5.5, 0.20), fit{}, basis},
	sodiumFree:             {"Na+", partNa, nothing, 0, jones(4.08, 0.082), fit{}, basis},
	potassiumFree:          {"K+", partK, nothing, 0, jones(3.5, 0.015), fit{}, basis},
	sulfateFree:            {"SO4-2", nothing, partSO4, 0, jones(5, -0.04), fit{}, basis},
	bisulfate:              {"HSO4-", nothing, partSO4, 1, jones(4.5, 0), fitBisulfate, wateq},
	calciumBicarbonate:     {"CaHCO3+", partCa, partCO3, 1, jones(6, 0), fit{a: 1209.12, b: 0.31294, c: -34765.05, d: -478.782}.plus(fitSecondBack), plummer},
	calciumCarbonatePair:   {"CaCO3", partCa, partCO3, 0, neutral(0.1), fit{a: -1228.732, b: -0.299444, c: 35512.75, d: 485.818}, plummer},
	calciumSulfatePair:     {"CaSO4", partCa, partSO4, 0, neutral(0.0445), fit{a: 1.478, b: 8.29e-3, c: -538.2}, phreeqc},
	calciumHydroxidePair:   {"CaOH+", partCa, nothing, -1, jones(6, 0), log25(-12.78), wateq},
	calciumBisulfate:       {"CaHSO4+", partCa, partSO4, 1, davies(), fitBisulfate.plus(log25(1.08)), phreeqc},
	magnesiumBicarbonate:   {"MgHCO3+", partMg, partCO3, 1, jones(4, 0), fit{a: 48.6721, b: 0.03252849, c: -2614.335, d: -18.00263, e: 563713.9}, phreeqc},
	magnesiumCarbonatePair: {"MgCO3", partMg, partCO3, 0, neutral(0.1), fit{a: 0.9910, b: 0.00667}, phreeqc},
	magnesiumSulfatePair:   {"MgSO4", partMg, partSO4, 0, neutral(0.20), fit{b: 9.64e-3, c: -136}, phreeqc},
	magnesiumHydroxidePair: {"MgOH+", partMg, nothing, -1, jones(6.5, 0), kcal(-11.44, 15.952), phreeqc},
	sodiumBicarbonatePair:  {"NaHCO3", partNa, partCO3, 1, neutral(0.1), fitSecondBack.plus(log25(-0.25)), wateq},
	sodiumCarbonatePair:    {"NaCO3-", partNa, partCO3, 0, jones(5.4, 0), kcal(1.27, 8.910), wateq},
	sodiumSulfatePair:      {"NaSO4-", partNa, partSO4, 0, jones(5.4, 0), kcal(0.7, 1.120), wateq},
	potassiumSulfatePair:   {"KSO4-", partK, partSO4, 0, jones(5.4, 0), fit{a: 3.106, c: -673.6}, wateq},
	ammoniumFree:           {"NH4+", partNH4, nothing, 0, davies(), fit{}, basis},
	ammonia:                {"NH3", partNH4, nothing, -1, neutral(0.1), heat(-9.244, 52), nist46},
	ammoniumSulfatePair:    {"NH4SO4-", partNH4, partSO4, 0, jones(5, 0), log25(1.11), wateq},
	phosphateFree:          {"PO4-3", nothing, partPO4, 0, jones(4, 0), fit{}, basis},
	hydrogenPhosphate:      {"HPO4-2", nothing, partPO4, 1, jones(5, 0), fitHPO4, phreeqc},
	dihydrogenPhosphate:    {"H2PO4-", nothing, partPO4, 2, jones(5.4, 0), fitH2PO4, phreeqc},
	phosphoricAcidFree:     {"H3PO4", nothing, partPO4, 3, neutral(0.1), heat(21.721, -10.1), nist46},

	caPO4:   {"CaPO4-", partCa, partPO4, 0, jones(5.4, 0), kcal(6.459, 3.10), phreeqc},
	caHPO4:  {"CaHPO4", partCa, partPO4, 1, neutral(0.1), kcal(2.739, 3.3).plus(fitHPO4), phreeqc},
	caH2PO4: {"CaH2PO4+", partCa, partPO4, 2, jones(5.4, 0), kcal(1.408, 3.4).plus(fitH2PO4), phreeqc},
	mgPO4:   {"MgPO4-", partMg, partPO4, 0, jones(5.4, 0), kcal(6.589, 3.10), phreeqc},
	mgHPO4:  {"MgHPO4", partMg, partPO4, 1, neutral(0.1), kcal(2.87, 3.3).plus(fitHPO4), phreeqc},
	mgH2PO4: {"MgH2PO4+", partMg, partPO4, 2, jones(5.4, 0), kcal(1.513, 3.4).plus(fitH2PO4), phreeqc},
	naHPO4:  {"NaHPO4-", partNa, partPO4, 1, jones(5.4, 0), log25(0.29).plus(fitHPO4), phreeqc},
	kHPO4:   {"KHPO4-", partK, partPO4, 1, jones(5.4, 0), log25(0.29).plus(fitHPO4), phreeqc},

	lactateFree:   {"lactate-", nothing, partLactate, 0, davies(), fit{}, basis},
	lacticH:       {"H(lactate)", nothing, partLactate, 1, neutral(0.1), protonation(pKa{3.863, -0.29}), obigt},
	acetateFree:   {"acetate-", nothing, partAcetate, 0, davies(), fit{}, basis},
	aceticH:       {"H(acetate)", nothing, partAcetate, 1, neutral(0.1), protonation(pKa{4.757, -0.41}), nist46},
	citrateFree:   {"citrate-3", nothing, partCitrate, 0, davies(), fit{}, basis},
	citricH:       {"H(citrate)-2", nothing, partCitrate, 1, davies(), protonation(pKa{6.396, -3.3472}), nist46},
	citricH2:      {"H2(citrate)-", nothing, partCitrate, 2, davies(), protonation(pKa{6.396, -3.3472}, pKa{4.761, 2.0502}), nist46},
	citricH3:      {"H3(citrate)", nothing, partCitrate, 3, neutral(0.1), protonation(pKa{6.396, -3.3472}, pKa{4.761, 2.0502}, pKa{3.128, 4.0584}), nist46},
	malateFree:    {"malate-2", nothing, partMalate, 0, davies(), fit{}, basis},
	malicH:        {"H(malate)-", nothing, partMalate, 1, davies(), protonation(pKa{5.094, -1.17}), obigt},
	malicH2:       {"H2(malate)", nothing, partMalate, 2, neutral(0.1), protonation(pKa{5.094, -1.17}, pKa{3.460, 2.93}), obigt},
	tartrateFree:  {"tartrate-2", nothing, partTartrate, 0, davies(), fit{}, basis},
	tartaricH:     {"H(tartrate)-", nothing, partTartrate, 1, davies(), protonation(pKa{4.366, 0.7531}), nist46},
	tartaricH2:    {"H2(tartrate)", nothing, partTartrate, 2, neutral(0.1), protonation(pKa{4.366, 0.7531}, pKa{3.036, 2.9288}), nist46},
	succinateFree: {"succinate-2", nothing, partSuccinate, 0, davies(), fit{}, basis},
	succinicH:     {"H(succinate)-", nothing, partSuccinate, 1, davies(), protonation(pKa{5.629, 0.0}), obigt},
	succinicH2:    {"H2(succinate)", nothing, partSuccinate, 2, neutral(0.1), protonation(pKa{5.629, 0.0}, pKa{4.207, 2.72}), obigt},
	sulfiteFree:   {"SO3-2", nothing, partSulfite, 0, davies(), fit{}, basis},
	bisulfite:     {"HSO3-", nothing, partSulfite, 1, davies(), protonation(pKa{7.170, -3.67}), thermoddem},
	sulfurousH2:   {"SO2", nothing, partSulfite, 2, neutral(0.1), protonation(pKa{7.170, -3.67}, pKa{1.860, -17.4}), thermoddem},
	sorbateFree:   {"sorbate-", nothing, partSorbate, 0, davies(), fit{}, basis},
	sorbicH:       {"H(sorbate)", nothing, partSorbate, 1, neutral(0.1), protonation(pKa{4.76, 0}), davis},

	gluconateFree: {"gluconate-", nothing, partGluconate, 0, davies(), fit{}, basis},
	gluconicH:     {"H(gluconate)", nothing, partGluconate, 1, neutral(0.1), log25(withLactone), zubiaur},
	glutamateFree: {"glutamate-2", nothing, partGlutamate, 0, davies(), fit{}, basis},
	glutamicH:     {"H(glutamate)-", nothing, partGlutamate, 1, davies(), heat(9.96, -41.0032), nist46},
	glutamicH2:    {"H2(glutamate)", nothing, partGlutamate, 2, neutral(0.1), heat(14.26, -43.5136), nist46},
	glutamicH3:    {"H3(glutamate)+", nothing, partGlutamate, 3, davies(), heat(16.42, -46.8608), nist46},

	caCitrate:    {"Ca(citrate)-", partCa, partCitrate, 0, davies(), heat(4.87, -8.368), nist46},
	caHCitrate:   {"CaH(citrate)", partCa, partCitrate, 1, neutral(0.1), heat(9.26, -0.8368), nist46},
	caH2Citrate:  {"CaH2(citrate)+", partCa, partCitrate, 2, davies(), log25(12.257), critical},
	mgCitrate:    {"Mg(citrate)-", partMg, partCitrate, 0, davies(), heat(4.89, 8.368), nist46},
	mgHCitrate:   {"MgH(citrate)", partMg, partCitrate, 1, neutral(0.1), heat(8.91, 3.3472), nist46},
	mgH2Citrate:  {"MgH2(citrate)+", partMg, partCitrate, 2, davies(), log25(12.2), critical},
	naCitrate:    {"Na(citrate)-2", partNa, partCitrate, 0, davies(), heat(1.03, -2.8033), critical},
	naHCitrate:   {"NaH(citrate)-", partNa, partCitrate, 1, davies(), heat(6.45, -3.5982), critical},
	kCitrate:     {"K(citrate)-2", partK, partCitrate, 0, davies(), heat(1.1, 5.4392), nist46},
	caTartrate:   {"Ca(tartrate)", partCa, partTartrate, 0, neutral(0.1), heat(2.8, -8.368), nist46},
	caHTartrate:  {"CaH(tartrate)+", partCa, partTartrate, 1, davies(), heat(5.86, -9.1211), nist46},
	mgTartrate:   {"Mg(tartrate)", partMg, partTartrate, 0, neutral(0.1), log25(2.3), nist46},
	mgHTartrate:  {"MgH(tartrate)+", partMg, partTartrate, 1, davies(), log25(5.75), nist46},
	naTartrate:   {"Na(tartrate)-", partNa, partTartrate, 0, davies(), heat(0.9, -0.8368), nist46},
	naHTartrate:  {"NaH(tartrate)", partNa, partTartrate, 1, neutral(0.1), heat(4.58, -2.8451), nist46},
	kTartrate:    {"K(tartrate)-", partK, partTartrate, 0, davies(), log25(0.8), nist46},
	caAcetate:    {"Ca(acetate)+", partCa, partAcetate, 0, davies(), heat(1.18, 4), nist46},
	mgAcetate:    {"Mg(acetate)+", partMg, partAcetate, 0, davies(), log25(1.27), nist46},
	caSuccinate:  {"Ca(succinate)", partCa, partSuccinate, 0, neutral(0.1), log25(2.34), sit},
	caHSuccinate: {"CaH(succinate)+", partCa, partSuccinate, 1, davies(), log25(6.79 - 5.71).plus(protonation(pKa{5.629, 0.0})), sit},
	mgSuccinate:  {"Mg(succinate)", partMg, partSuccinate, 0, neutral(0.1), log25(2.27), sit},
	mgHSuccinate: {"MgH(succinate)+", partMg, partSuccinate, 1, davies(), log25(6.72 - 5.71).plus(protonation(pKa{5.629, 0.0})), sit},
	caLactate:    {"Ca(lactate)+", partCa, partLactate, 0, davies(), heat(1.69, 31), vavrusova},
	caGluconate:  {"Ca(gluconate)+", partCa, partGluconate, 0, davies(), heat(1.94, 34), vavrusova},
	caGlutamate:  {"Ca(glutamate)", partCa, partGlutamate, 0, neutral(0.1), log25(2.06), nist46},
	caHGlutamate: {"CaH(glutamate)+", partCa, partGlutamate, 1, davies(), log25(11.13), nist46},
	mgGlutamate:  {"Mg(glutamate)", partMg, partGlutamate, 0, neutral(0.1), log25(2.8), nist46},
}
