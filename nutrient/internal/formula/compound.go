package formula

import (
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units/evidence"
)

// Compound counts the atoms of a formula.
type Compound struct{ C, H, N, O, P, K float64 }

// Atomic weights, g/mol.
//
//   - Source: [chemistry].
const (
	WeightH  = chemistry.H
	weightC  = chemistry.C
	WeightN  = chemistry.N
	WeightO  = chemistry.O
	WeightMg = chemistry.Mg
	WeightP  = chemistry.P
	WeightCl = chemistry.Cl
	WeightK  = chemistry.K
	WeightZn = chemistry.Zn
)

// Molar returns the molar mass in g/mol.
func (c Compound) Molar() float64 {
	return c.C*weightC + c.H*WeightH + c.N*WeightN + c.O*WeightO + c.P*WeightP + c.K*WeightK
}

// Compounds of the ferment and its feed.
var (
	WaterFormula     = Compound{H: 2, O: 1}
	Hexose           = Compound{C: 6, H: 12, O: 6}
	disaccharide     = Compound{C: 12, H: 22, O: 11}
	trisaccharide    = Compound{C: 18, H: 32, O: 16}
	LactoseHydrate   = Compound{C: 12, H: 24, O: 12}
	DextroseHydrate  = Compound{C: 6, H: 14, O: 7}
	EthanolFormula   = Compound{C: 2, H: 6, O: 1}
	CarbonDioxide    = Compound{C: 1, O: 2}
	GlycerolFormula  = Compound{C: 3, H: 8, O: 3}
	SuccinicAcid     = Compound{C: 4, H: 6, O: 4}
	AceticAcid       = Compound{C: 2, H: 4, O: 2}
	LacticAcid       = Compound{C: 3, H: 6, O: 3}
	Ammonia          = Compound{N: 1, H: 3}
	AmmoniumIon      = Compound{N: 1, H: 4}
	PhosphoricAcid   = Compound{H: 3, P: 1, O: 4}
	Dihydrophosphate = Compound{H: 2, P: 1, O: 4}
	UreaFormula      = Compound{C: 1, H: 4, N: 2, O: 1}
)

// NitrogenInAmmonia is the mass share of N in NH3.
var NitrogenInAmmonia = WeightN / Ammonia.Molar()

// YeastSkeleton is yeast without its nitrogen and ash, CH1.2O0.5: with 0.2 NH3 it is the
// usual CH1.8O0.5N0.2.
//
//   - Source: Roels, Energetics and Kinetics in Biotechnology (1983), average biomass
//     CH1.8O0.5N0.2 (recalled from memory).
var YeastSkeleton = Compound{C: 1, H: 1.2, O: 0.5}

// Alanine stands for the amino acids that yeast takes up.
var Alanine = Compound{C: 3, H: 7, N: 1, O: 2}

// Reduction is the electrons of a compound when it burns to CO2, water, ammonia and
// phosphate: 4C + H − 2O − 3N.
func (c Compound) Reduction() float64 { return 4*c.C + c.H - 2*c.O - 3*c.N }

// The gain in mass when a sugar takes up water and falls apart into hexoses.
var (
	GainOfDi  = 2 * Hexose.Molar() / disaccharide.Molar()  // 1.0526
	GainOfTri = 3 * Hexose.Molar() / trisaccharide.Molar() // 1.0714
)

// EthanolOfHexose is Gay-Lussac's yield, 0.51144 g/g.
var EthanolOfHexose = 2 * EthanolFormula.Molar() / Hexose.Molar()

// Nitrogen in dry yeast matter.
const (
	NitrogenOfYeast     = 0.10        // of dry matter, well fed (Dharmadhikari)
	NitrogenOfLeanYeast = 0.40 / 6.25 // 40 % crude protein
)

// Stoichiometry is the evidence of what follows from a formula.
var Stoichiometry = evidence.Evidence{Source: "stoichiometry, CIAAW atomic weights 2021", Grade: evidence.Computed}
