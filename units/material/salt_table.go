package material

// The salts, by their formulas.
var salts = []*facts{
	salt("gypsum", "CaSO4.2H2O", "calcium sulfate dihydrate|burtonising salt", 2, count{calcium, 1}, count{sulfate, 1}),
	salt("calcium chloride dihydrate", "CaCl2.2H2O", "calcium chloride flakes", 2, count{calcium, 1}, count{chloride, 2}),
	salt("calcium chloride anhydrous", "CaCl2", "anhydrous calcium chloride", 0, count{calcium, 1}, count{chloride, 2}),
	salt("Epsom salt", "MgSO4.7H2O", "magnesium sulfate heptahydrate|epsom salts", 7, count{magnesium, 1}, count{sulfate, 1}),
	salt("magnesium chloride hexahydrate", "MgCl2.6H2O", "", 6, count{magnesium, 1}, count{chloride, 2}),
	salt("table salt", "NaCl", "sodium chloride|salt|common salt|canning salt", 0, count{sodium, 1}, count{chloride, 1}),
	salt("baking soda", "NaHCO3", "sodium bicarbonate|sodium hydrogen carbonate|bicarbonate of soda", 0,
		count{sodium, 1}, count{bicarbonate, 1}),
	salt("potassium bicarbonate", "KHCO3", "potassium hydrogen carbonate", 0, count{potassium, 1}, count{bicarbonate, 1}),
	salt("potassium chloride", "KCl", "", 0, count{potassium, 1}, count{chloride, 1}),
	salt("chalk", "CaCO3", "calcium carbonate", 0, count{calcium, 1}, count{carbonate, 1}),
	caustic("slaked lime", "Ca(OH)2", "calcium hydroxide|lime|pickling lime|hydrated lime", 0, count{calcium, 1},
		count{hydroxide, 2}),
	salt("calcium sulfate anhydrous", "CaSO4", "anhydrite", 0, count{calcium, 1}, count{sulfate, 1}),
	salt("sodium sulfate anhydrous", "Na2SO4", "sodium sulfate", 0, count{sodium, 2}, count{sulfate, 1}),
	salt("potassium sulfate", "K2SO4", "", 0, count{potassium, 2}, count{sulfate, 1}),
	caustic("sodium carbonate anhydrous", "Na2CO3", "soda ash|sodium carbonate", 0, count{sodium, 2}, count{carbonate, 1}),
	caustic("potassium carbonate", "K2CO3", "potash", 0, count{potassium, 2}, count{carbonate, 1}),
	caustic("sodium hydroxide", "NaOH", "caustic soda|lye", 0, count{sodium, 1}, count{hydroxide, 1}),
	caustic("potassium hydroxide", "KOH", "caustic potash", 0, count{potassium, 1}, count{hydroxide, 1}),
	salt("magnesium carbonate", "MgCO3", "magnesite", 0, count{magnesium, 1}, count{carbonate, 1}),
	salt("calcium lactate pentahydrate", "Ca(C3H5O3)2.5H2O", "", 5, count{calcium, 1}, count{lactate, 2}),
	salt("potassium dihydrogen phosphate", "KH2PO4", "monopotassium phosphate|mkp", 0, count{potassium, 1}, count{phosphate, 1}),
	salt("dipotassium phosphate", "K2HPO4", "dipotassium hydrogen phosphate", 0, count{potassium, 2}, count{phosphate, 1}),
	salt("diammonium phosphate", "(NH4)2HPO4", "dap|diammonium hydrogen phosphate", 0, count{ammonium, 2}, count{phosphate, 1}),
	salt("monoammonium phosphate", "NH4H2PO4", "ammonium dihydrogen phosphate|map", 0, count{ammonium, 1}, count{phosphate, 1}),
	salt("ammonium sulfate", "(NH4)2SO4", "", 0, count{ammonium, 2}, count{sulfate, 1}),
	salt("ammonium chloride", "NH4Cl", "", 0, count{ammonium, 1}, count{chloride, 1}),
	salt("zinc sulfate heptahydrate", "ZnSO4.7H2O", "", 7, count{zinc, 1}, count{sulfate, 1}),
	salt("zinc sulfate monohydrate", "ZnSO4.H2O", "", 1, count{zinc, 1}, count{sulfate, 1}),
	salt("tripotassium citrate monohydrate", "K3C6H5O7.H2O", "potassium citrate|tripotassium citrate", 1,
		count{potassium, 3}, count{citrate, 1}),
	salt("trisodium citrate dihydrate", "Na3C6H5O7.2H2O", "sodium citrate|trisodium citrate", 2, count{sodium, 3},
		count{citrate, 1}),
	salt("sodium metabisulfite", "Na2S2O5", "", 0, count{sodium, 2}, count{sulfite, 2}),
	salt("potassium metabisulfite", "K2S2O5", "kms", 0, count{potassium, 2}, count{sulfite, 2}),
	salt("sodium bisulfite", "NaHSO3", "sodium hydrogen sulfite", 0, count{sodium, 1}, count{sulfite, 1}),
	salt("sodium sulfite anhydrous", "Na2SO3", "sodium sulfite", 0, count{sodium, 2}, count{sulfite, 1}),
}

// Gypsum is CaSO4·2H2O.
func Gypsum() Material { return byName["gypsum"] }

// CalciumChlorideDihydrate is CaCl2·2H2O.
func CalciumChlorideDihydrate() Material { return byName["calcium chloride dihydrate"] }

// CalciumChloride is CaCl2, without crystal water.
func CalciumChloride() Material { return byName["calcium chloride anhydrous"] }

// EpsomSalt is MgSO4·7H2O: 9.9 % Mg.
func EpsomSalt() Material { return byName["epsom salt"] }

// TableSalt is NaCl.
func TableSalt() Material { return byName["table salt"] }

// BakingSoda is NaHCO3.
func BakingSoda() Material { return byName["baking soda"] }

// PotassiumBicarbonate is KHCO3.
func PotassiumBicarbonate() Material { return byName["potassium bicarbonate"] }

// PotassiumChloride is KCl: 52.4 % K.
func PotassiumChloride() Material { return byName["potassium chloride"] }

// Chalk is CaCO3.
func Chalk() Material { return byName["chalk"] }

// SlakedLime is Ca(OH)2.
func SlakedLime() Material { return byName["slaked lime"] }

// SodiumHydroxide is NaOH.
func SodiumHydroxide() Material { return byName["sodium hydroxide"] }

// DiammoniumPhosphate is (NH4)2HPO4, the trade's DAP: 21.2 % N, 23.5 % P.
func DiammoniumPhosphate() Material { return byName["diammonium phosphate"] }

// MonoammoniumPhosphate is NH4H2PO4, the trade's MAP: 12.2 % N, 26.9 % P.
func MonoammoniumPhosphate() Material { return byName["monoammonium phosphate"] }

// AmmoniumSulfate is (NH4)2SO4: 21.2 % N.
func AmmoniumSulfate() Material { return byName["ammonium sulfate"] }

// ZincSulfateHeptahydrate is ZnSO4·7H2O: 22.7 % Zn.
func ZincSulfateHeptahydrate() Material { return byName["zinc sulfate heptahydrate"] }

// SodiumMetabisulfite is Na2S2O5: 67.4 % SO2 while fresh.
func SodiumMetabisulfite() Material { return byName["sodium metabisulfite"] }

// PotassiumMetabisulfite is K2S2O5: 57.6 % SO2 while fresh.
func PotassiumMetabisulfite() Material { return byName["potassium metabisulfite"] }
