package material

// The salts, by their formulas.
const (
	saltGypsum = iota
	saltCalciumChlorideDihydrate
	saltCalciumChloride
	saltEpsomSalt
	saltMagnesiumChlorideHexahydrate
	saltTableSalt
	saltBakingSoda
	saltPotassiumBicarbonate
	saltPotassiumChloride
	saltChalk
	saltSlakedLime
	saltCalciumSulfate
	saltSodiumSulfate
	saltPotassiumSulfate
	saltSodiumCarbonate
	saltPotassiumCarbonate
	saltSodiumHydroxide
	saltPotassiumHydroxide
	saltMagnesiumCarbonate
	saltCalciumLactatePentahydrate
	saltPotassiumDihydrogenPhosphate
	saltDipotassiumPhosphate
	saltDiammoniumPhosphate
	saltMonoammoniumPhosphate
	saltAmmoniumSulfate
	saltAmmoniumChloride
	saltZincSulfateHeptahydrate
	saltZincSulfateMonohydrate
	saltTripotassiumCitrate
	saltTrisodiumCitrate
	saltSodiumMetabisulfite
	saltPotassiumMetabisulfite
	saltSodiumBisulfite
	saltSodiumSulfite
	saltCount
)

var salts = [saltCount]*facts{
	saltGypsum:                       salt("gypsum", "CaSO4.2H2O", "calcium sulfate dihydrate|burtonising salt", 2, count{calcium, 1}, count{sulfate, 1}),
	saltCalciumChlorideDihydrate:     salt("calcium chloride dihydrate", "CaCl2.2H2O", "calcium chloride flakes", 2, count{calcium, 1}, count{chloride, 2}),
	saltCalciumChloride:              salt("calcium chloride anhydrous", "CaCl2", "anhydrous calcium chloride", 0, count{calcium, 1}, count{chloride, 2}),
	saltEpsomSalt:                    salt("Epsom salt", "MgSO4.7H2O", "magnesium sulfate heptahydrate|epsom salts", 7, count{magnesium, 1}, count{sulfate, 1}),
	saltMagnesiumChlorideHexahydrate: salt("magnesium chloride hexahydrate", "MgCl2.6H2O", "", 6, count{magnesium, 1}, count{chloride, 2}),
	saltTableSalt:                    salt("table salt", "NaCl", "sodium chloride|salt|common salt|canning salt", 0, count{sodium, 1}, count{chloride, 1}),
	saltBakingSoda: salt("baking soda", "NaHCO3", "sodium bicarbonate|sodium hydrogen carbonate|bicarbonate of soda", 0,
		count{sodium, 1}, count{bicarbonate, 1}),
	saltPotassiumBicarbonate: salt("potassium bicarbonate", "KHCO3", "potassium hydrogen carbonate", 0, count{potassium, 1}, count{bicarbonate, 1}),
	saltPotassiumChloride:    salt("potassium chloride", "KCl", "", 0, count{potassium, 1}, count{chloride, 1}),
	saltChalk:                salt("chalk", "CaCO3", "calcium carbonate", 0, count{calcium, 1}, count{carbonate, 1}),
	saltSlakedLime: caustic("slaked lime", "Ca(OH)2", "calcium hydroxide|lime|pickling lime|hydrated lime", 0, count{calcium, 1},
		count{hydroxide, 2}),
	saltCalciumSulfate:               salt("calcium sulfate anhydrous", "CaSO4", "anhydrite", 0, count{calcium, 1}, count{sulfate, 1}),
	saltSodiumSulfate:                salt("sodium sulfate anhydrous", "Na2SO4", "sodium sulfate", 0, count{sodium, 2}, count{sulfate, 1}),
	saltPotassiumSulfate:             salt("potassium sulfate", "K2SO4", "", 0, count{potassium, 2}, count{sulfate, 1}),
	saltSodiumCarbonate:              caustic("sodium carbonate anhydrous", "Na2CO3", "soda ash|sodium carbonate", 0, count{sodium, 2}, count{carbonate, 1}),
	saltPotassiumCarbonate:           caustic("potassium carbonate", "K2CO3", "potash", 0, count{potassium, 2}, count{carbonate, 1}),
	saltSodiumHydroxide:              caustic("sodium hydroxide", "NaOH", "caustic soda|lye", 0, count{sodium, 1}, count{hydroxide, 1}),
	saltPotassiumHydroxide:           caustic("potassium hydroxide", "KOH", "caustic potash", 0, count{potassium, 1}, count{hydroxide, 1}),
	saltMagnesiumCarbonate:           salt("magnesium carbonate", "MgCO3", "magnesite", 0, count{magnesium, 1}, count{carbonate, 1}),
	saltCalciumLactatePentahydrate:   salt("calcium lactate pentahydrate", "Ca(C3H5O3)2.5H2O", "", 5, count{calcium, 1}, count{lactate, 2}),
	saltPotassiumDihydrogenPhosphate: salt("potassium dihydrogen phosphate", "KH2PO4", "monopotassium phosphate|mkp", 0, count{potassium, 1}, count{phosphate, 1}),
	saltDipotassiumPhosphate:         salt("dipotassium phosphate", "K2HPO4", "dipotassium hydrogen phosphate", 0, count{potassium, 2}, count{phosphate, 1}),
	saltDiammoniumPhosphate:          salt("diammonium phosphate", "(NH4)2HPO4", "dap|diammonium hydrogen phosphate", 0, count{ammonium, 2}, count{phosphate, 1}),
	saltMonoammoniumPhosphate:        salt("monoammonium phosphate", "NH4H2PO4", "ammonium dihydrogen phosphate|map", 0, count{ammonium, 1}, count{phosphate, 1}),
	saltAmmoniumSulfate:              salt("ammonium sulfate", "(NH4)2SO4", "", 0, count{ammonium, 2}, count{sulfate, 1}),
	saltAmmoniumChloride:             salt("ammonium chloride", "NH4Cl", "", 0, count{ammonium, 1}, count{chloride, 1}),
	saltZincSulfateHeptahydrate:      salt("zinc sulfate heptahydrate", "ZnSO4.7H2O", "", 7, count{zinc, 1}, count{sulfate, 1}),
	saltZincSulfateMonohydrate:       salt("zinc sulfate monohydrate", "ZnSO4.H2O", "", 1, count{zinc, 1}, count{sulfate, 1}),
	saltTripotassiumCitrate: salt("tripotassium citrate monohydrate", "K3C6H5O7.H2O", "potassium citrate|tripotassium citrate", 1,
		count{potassium, 3}, count{citrate, 1}),
	saltTrisodiumCitrate: salt("trisodium citrate dihydrate", "Na3C6H5O7.2H2O", "sodium citrate|trisodium citrate", 2, count{sodium, 3},
		count{citrate, 1}),
	saltSodiumMetabisulfite:    salt("sodium metabisulfite", "Na2S2O5", "", 0, count{sodium, 2}, count{sulfite, 2}),
	saltPotassiumMetabisulfite: salt("potassium metabisulfite", "K2S2O5", "kms", 0, count{potassium, 2}, count{sulfite, 2}),
	saltSodiumBisulfite:        salt("sodium bisulfite", "NaHSO3", "sodium hydrogen sulfite", 0, count{sodium, 1}, count{sulfite, 1}),
	saltSodiumSulfite:          salt("sodium sulfite anhydrous", "Na2SO3", "sodium sulfite", 0, count{sodium, 2}, count{sulfite, 1}),
}

// Gypsum is CaSO4·2H2O.
func Gypsum() Material { return Material{salts[saltGypsum]} }

// CalciumChlorideDihydrate is CaCl2·2H2O.
func CalciumChlorideDihydrate() Material { return Material{salts[saltCalciumChlorideDihydrate]} }

// CalciumChloride is CaCl2, without crystal water.
func CalciumChloride() Material { return Material{salts[saltCalciumChloride]} }

// EpsomSalt is MgSO4·7H2O: 9.9 % Mg.
func EpsomSalt() Material { return Material{salts[saltEpsomSalt]} }

// MagnesiumChlorideHexahydrate is MgCl2·6H2O.
func MagnesiumChlorideHexahydrate() Material {
	return Material{salts[saltMagnesiumChlorideHexahydrate]}
}

// TableSalt is NaCl.
func TableSalt() Material { return Material{salts[saltTableSalt]} }

// BakingSoda is NaHCO3.
func BakingSoda() Material { return Material{salts[saltBakingSoda]} }

// PotassiumBicarbonate is KHCO3.
func PotassiumBicarbonate() Material { return Material{salts[saltPotassiumBicarbonate]} }

// PotassiumChloride is KCl: 52.4 % K.
func PotassiumChloride() Material { return Material{salts[saltPotassiumChloride]} }

// Chalk is CaCO3.
func Chalk() Material { return Material{salts[saltChalk]} }

// SlakedLime is Ca(OH)2.
func SlakedLime() Material { return Material{salts[saltSlakedLime]} }

// CalciumSulfate is CaSO4, without crystal water.
func CalciumSulfate() Material { return Material{salts[saltCalciumSulfate]} }

// SodiumSulfate is Na2SO4, without crystal water.
func SodiumSulfate() Material { return Material{salts[saltSodiumSulfate]} }

// PotassiumSulfate is K2SO4.
func PotassiumSulfate() Material { return Material{salts[saltPotassiumSulfate]} }

// SodiumCarbonate is Na2CO3.
func SodiumCarbonate() Material { return Material{salts[saltSodiumCarbonate]} }

// PotassiumCarbonate is K2CO3.
func PotassiumCarbonate() Material { return Material{salts[saltPotassiumCarbonate]} }

// SodiumHydroxide is NaOH.
func SodiumHydroxide() Material { return Material{salts[saltSodiumHydroxide]} }

// PotassiumHydroxide is KOH.
func PotassiumHydroxide() Material { return Material{salts[saltPotassiumHydroxide]} }

// MagnesiumCarbonate is MgCO3.
func MagnesiumCarbonate() Material { return Material{salts[saltMagnesiumCarbonate]} }

// CalciumLactatePentahydrate is Ca(C3H5O3)2·5H2O.
func CalciumLactatePentahydrate() Material { return Material{salts[saltCalciumLactatePentahydrate]} }

// PotassiumDihydrogenPhosphate is KH2PO4: 28.7 % K, 22.8 % P.
func PotassiumDihydrogenPhosphate() Material {
	return Material{salts[saltPotassiumDihydrogenPhosphate]}
}

// DipotassiumPhosphate is K2HPO4.
func DipotassiumPhosphate() Material { return Material{salts[saltDipotassiumPhosphate]} }

// DiammoniumPhosphate is (NH4)2HPO4, the trade's DAP: 21.2 % N, 23.5 % P.
func DiammoniumPhosphate() Material { return Material{salts[saltDiammoniumPhosphate]} }

// MonoammoniumPhosphate is NH4H2PO4, the trade's MAP: 12.2 % N, 26.9 % P.
func MonoammoniumPhosphate() Material { return Material{salts[saltMonoammoniumPhosphate]} }

// AmmoniumSulfate is (NH4)2SO4: 21.2 % N.
func AmmoniumSulfate() Material { return Material{salts[saltAmmoniumSulfate]} }

// AmmoniumChloride is NH4Cl: 26.2 % N.
func AmmoniumChloride() Material { return Material{salts[saltAmmoniumChloride]} }

// ZincSulfateHeptahydrate is ZnSO4·7H2O: 22.7 % Zn.
func ZincSulfateHeptahydrate() Material { return Material{salts[saltZincSulfateHeptahydrate]} }

// ZincSulfateMonohydrate is ZnSO4·H2O: 36.4 % Zn.
func ZincSulfateMonohydrate() Material { return Material{salts[saltZincSulfateMonohydrate]} }

// TripotassiumCitrate is K3C6H5O7·H2O.
func TripotassiumCitrate() Material { return Material{salts[saltTripotassiumCitrate]} }

// TrisodiumCitrate is Na3C6H5O7·2H2O.
func TrisodiumCitrate() Material { return Material{salts[saltTrisodiumCitrate]} }

// SodiumMetabisulfite is Na2S2O5: 67.4 % SO2 while fresh.
func SodiumMetabisulfite() Material { return Material{salts[saltSodiumMetabisulfite]} }

// PotassiumMetabisulfite is K2S2O5: 57.6 % SO2 while fresh.
func PotassiumMetabisulfite() Material { return Material{salts[saltPotassiumMetabisulfite]} }

// SodiumBisulfite is NaHSO3: 61.6 % SO2 while fresh.
func SodiumBisulfite() Material { return Material{salts[saltSodiumBisulfite]} }

// SodiumSulfite is Na2SO3: 50.8 % SO2 while fresh.
func SodiumSulfite() Material { return Material{salts[saltSodiumSulfite]} }
