package water

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

// speciesTable has a row for each species; the rest of the package loops over it.
var speciesTable = [speciesCount]speciesRow{
	Hydrogen:      {"H+", nothing, nothing, 1, jones(9, 0), fit{}, basis},
	HydroxideFree: {"OH-", nothing, nothing, -1, jones(3.5, 0), fitWater, phreeqc},

	CarbonDioxide:          {"CO2", nothing, partCO3, 2, neutral(0.1), fitBothBack, plummer},
	BicarbonateFree:        {"HCO3-", nothing, partCO3, 1, jones(5.4, 0), fitSecondBack, plummer},
	CarbonateFree:          {"CO3-2", nothing, partCO3, 0, jones(5.4, 0), fit{}, basis},
	CalciumFree:            {"Ca+2", partCa, nothing, 0, jones(5, 0.165), fit{}, basis},
	MagnesiumFree:          {"Mg+2", partMg, nothing, 0, jones(5.5, 0.20), fit{}, basis},
	SodiumFree:             {"Na+", partNa, nothing, 0, jones(4.08, 0.082), fit{}, basis},
	PotassiumFree:          {"K+", partK, nothing, 0, jones(3.5, 0.015), fit{}, basis},
	SulfateFree:            {"SO4-2", nothing, partSO4, 0, jones(5, -0.04), fit{}, basis},
	Bisulfate:              {"HSO4-", nothing, partSO4, 1, davies(), fitBisulfate, phreeqc},
	CalciumBicarbonate:     {"CaHCO3+", partCa, partCO3, 1, jones(5.4, 0), fitSecondBack.plus(log25(-1.0)), plummer},
	CalciumCarbonatePair:   {"CaCO3", partCa, partCO3, 0, neutral(0.1), fit{a: -1228.732, b: -0.299440, c: 35512.75, d: 485.818}, plummer},
	CalciumSulfatePair:     {"CaSO4", partCa, partSO4, 0, neutral(0.1), fit{a: 1.312541235, b: 0.008554883333, c: -511.8851807}, phreeqc},
	CalciumHydroxidePair:   {"CaOH+", partCa, nothing, -1, davies(), log25(-12.78), phreeqc},
	CalciumBisulfate:       {"CaHSO4+", partCa, partSO4, 1, davies(), fitBisulfate.plus(log25(1.08)), phreeqc},
	MagnesiumBicarbonate:   {"MgHCO3+", partMg, partCO3, 1, jones(4, 0), fit{a: 48.6721, b: 0.03252849, c: -2614.335, d: -18.00263, e: 563713.9}, phreeqc},
	MagnesiumCarbonatePair: {"MgCO3", partMg, partCO3, 0, neutral(0.1), fit{a: 0.9910, b: 0.00667}, phreeqc},
	MagnesiumSulfatePair:   {"MgSO4", partMg, partSO4, 0, neutral(0.1), fit{b: 9.64e-3, c: -136}, phreeqc},
	MagnesiumHydroxidePair: {"MgOH+", partMg, nothing, -1, jones(5.4, 0), kcal(-11.44, 15.952), phreeqc},
	SodiumBicarbonatePair:  {"NaHCO3", partNa, partCO3, 1, neutral(0.1), fitSecondBack.plus(log25(-0.25)), wateq},
	SodiumCarbonatePair:    {"NaCO3-", partNa, partCO3, 0, jones(5.4, 0), kcal(1.27, 8.910), wateq},
	SodiumSulfatePair:      {"NaSO4-", partNa, partSO4, 0, jones(5.4, 0), kcal(0.7, 1.120), wateq},
	PotassiumSulfatePair:   {"KSO4-", partK, partSO4, 0, jones(5.4, 0), kcal(0.85, 2.250), wateq},
	AmmoniumFree:           {"NH4+", partNH4, nothing, 0, davies(), fit{}, basis},
	Ammonia:                {"NH3", partNH4, nothing, -1, neutral(0.1), heat(-9.244, 52), nist46},
	AmmoniumSulfatePair:    {"NH4SO4-", partNH4, partSO4, 0, davies(), log25(1.11), wateq},
	PhosphateFree:          {"PO4-3", nothing, partPO4, 0, jones(4, 0), fit{}, basis},
	HydrogenPhosphate:      {"HPO4-2", nothing, partPO4, 1, jones(5, 0), fitHPO4, phreeqc},
	DihydrogenPhosphate:    {"H2PO4-", nothing, partPO4, 2, jones(5.4, 0), fitH2PO4, phreeqc},
	PhosphoricAcidFree:     {"H3PO4", nothing, partPO4, 3, neutral(0.1), heat(21.721, -10.1), nist46},

	caPO4:   {"CaPO4-", partCa, partPO4, 0, jones(5.4, 0), kcal(6.459, 3.10), phreeqc},
	caHPO4:  {"CaHPO4", partCa, partPO4, 1, neutral(0.1), kcal(2.739, 3.3).plus(fitHPO4), phreeqc},
	caH2PO4: {"CaH2PO4+", partCa, partPO4, 2, jones(5.4, 0), kcal(1.408, 3.4).plus(fitH2PO4), phreeqc},
	mgPO4:   {"MgPO4-", partMg, partPO4, 0, jones(5.4, 0), kcal(6.589, 3.10), phreeqc},
	mgHPO4:  {"MgHPO4", partMg, partPO4, 1, neutral(0.1), kcal(2.87, 3.3).plus(fitHPO4), phreeqc},
	mgH2PO4: {"MgH2PO4+", partMg, partPO4, 2, jones(5.4, 0), kcal(1.513, 3.4).plus(fitH2PO4), phreeqc},
	naHPO4:  {"NaHPO4-", partNa, partPO4, 1, davies(), log25(0.29).plus(fitHPO4), phreeqc},
	kHPO4:   {"KHPO4-", partK, partPO4, 1, davies(), log25(0.29).plus(fitHPO4), phreeqc},

	lactateFree:   {"lactate-", nothing, partLactate, 0, davies(), fit{}, basis},
	lacticH:       {"H(lactate)", nothing, partLactate, 1, neutral(0.1), protonation(pKa{3.86, -0.3}), obigt},
	acetateFree:   {"acetate-", nothing, partAcetate, 0, davies(), fit{}, basis},
	aceticH:       {"H(acetate)", nothing, partAcetate, 1, neutral(0.1), protonation(pKa{4.757, -0.41}), nist46},
	citrateFree:   {"citrate-3", nothing, partCitrate, 0, davies(), fit{}, basis},
	citricH:       {"H(citrate)-2", nothing, partCitrate, 1, davies(), protonation(pKa{6.396, -3.35}), nist46},
	citricH2:      {"H2(citrate)-", nothing, partCitrate, 2, davies(), protonation(pKa{6.396, -3.35}, pKa{4.761, 2.05}), nist46},
	citricH3:      {"H3(citrate)", nothing, partCitrate, 3, neutral(0.1), protonation(pKa{6.396, -3.35}, pKa{4.761, 2.05}, pKa{3.128, 4.06}), nist46},
	malateFree:    {"malate-2", nothing, partMalate, 0, davies(), fit{}, basis},
	malicH:        {"H(malate)-", nothing, partMalate, 1, davies(), protonation(pKa{5.2, -1.0}), obigt},
	malicH2:       {"H2(malate)", nothing, partMalate, 2, neutral(0.1), protonation(pKa{5.2, -1.0}, pKa{3.40, 3.0}), obigt},
	tartrateFree:  {"tartrate-2", nothing, partTartrate, 0, davies(), fit{}, basis},
	tartaricH:     {"H(tartrate)-", nothing, partTartrate, 1, davies(), protonation(pKa{4.34, 1.0}), nist46},
	tartaricH2:    {"H2(tartrate)", nothing, partTartrate, 2, neutral(0.1), protonation(pKa{4.34, 1.0}, pKa{2.98, 3.2}), nist46},
	succinateFree: {"succinate-2", nothing, partSuccinate, 0, davies(), fit{}, basis},
	succinicH:     {"H(succinate)-", nothing, partSuccinate, 1, davies(), protonation(pKa{5.64, -0.5}), fromm},
	succinicH2:    {"H2(succinate)", nothing, partSuccinate, 2, neutral(0.1), protonation(pKa{5.64, -0.5}, pKa{4.21, 3.0}), fromm},
	sulfiteFree:   {"SO3-2", nothing, partSulfite, 0, davies(), fit{}, basis},
	bisulfite:     {"HSO3-", nothing, partSulfite, 1, davies(), protonation(pKa{7.2, -3.7}), compiled},
	sulfurousH2:   {"SO2", nothing, partSulfite, 2, neutral(0.1), protonation(pKa{7.2, -3.7}, pKa{1.85, -17.8}), compiled},
	sorbateFree:   {"sorbate-", nothing, partSorbate, 0, davies(), fit{}, basis},
	sorbicH:       {"H(sorbate)", nothing, partSorbate, 1, neutral(0.1), protonation(pKa{4.76, 0}), davis},
}
