package nutrient

import "example.org/zymase/units/material"

// compound counts the atoms of a formula.
type compound struct{ c, h, n, o, na, mg, p, s, cl, k, zn float64 }

// Atomic weights, g/mol.
//
//   - Source: [water.MolarMass].
var (
	weightH  = mustMass("H")
	weightC  = mustMass("C")
	weightN  = mustMass("N")
	weightO  = mustMass("O")
	weightNa = mustMass("Na")
	weightMg = mustMass("Mg")
	weightP  = mustMass("P")
	weightS  = mustMass("S")
	weightCl = mustMass("Cl")
	weightK  = mustMass("K")
	weightZn = mustMass("Zn")
)

// mustMass is the molar mass of a formula that package water knows; a test reads them all.
func mustMass(formula string) float64 {
	w, err := material.MolarMass(formula)
	if err != nil {
		panic(err)
	}
	return w
}

// molar returns the molar mass in g/mol.
func (c compound) molar() float64 {
	return c.c*weightC + c.h*weightH + c.n*weightN + c.o*weightO +
		c.na*weightNa + c.mg*weightMg + c.p*weightP + c.s*weightS +
		c.cl*weightCl + c.k*weightK + c.zn*weightZn
}

// Compounds of the ferment and its feed.
var (
	waterFormula      = compound{h: 2, o: 1}
	hexose            = compound{c: 6, h: 12, o: 6}
	disaccharide      = compound{c: 12, h: 22, o: 11}
	trisaccharide     = compound{c: 18, h: 32, o: 16}
	lactoseHydrate    = compound{c: 12, h: 24, o: 12}
	dextroseHydrate   = compound{c: 6, h: 14, o: 7}
	ethanolFormula    = compound{c: 2, h: 6, o: 1}
	carbonDioxide     = compound{c: 1, o: 2}
	glycerolFormula   = compound{c: 3, h: 8, o: 3}
	succinicAcid      = compound{c: 4, h: 6, o: 4}
	aceticAcid        = compound{c: 2, h: 4, o: 2}
	lacticAcid        = compound{c: 3, h: 6, o: 3}
	ammonia           = compound{n: 1, h: 3}
	ammoniumIon       = compound{n: 1, h: 4}
	phosphoricAcid    = compound{h: 3, p: 1, o: 4}
	dihydrophosphate  = compound{h: 2, p: 1, o: 4}
	diammonium        = compound{n: 2, h: 9, p: 1, o: 4}
	monoammonium      = compound{n: 1, h: 6, p: 1, o: 4}
	ammoniumSulfate   = compound{n: 2, h: 8, s: 1, o: 4}
	ammoniumChloride  = compound{n: 1, h: 4, cl: 1}
	ureaFormula       = compound{c: 1, h: 4, n: 2, o: 1}
	potassiumDihydro  = compound{k: 1, h: 2, p: 1, o: 4}
	potassiumChloride = compound{k: 1, cl: 1}
	epsomSalt         = compound{mg: 1, s: 1, o: 11, h: 14}
	zincHeptahydrate  = compound{zn: 1, s: 1, o: 11, h: 14}
	zincMonohydrate   = compound{zn: 1, s: 1, o: 5, h: 2}
)

// nitrogenInAmmonia is the mass share of N in NH3.
var nitrogenInAmmonia = weightN / ammonia.molar()

// yeastSkeleton is yeast without its nitrogen and ash, CH1.2O0.5: with 0.2 NH3 it is the
// usual CH1.8O0.5N0.2.
//
//   - Source: Roels, Energetics and Kinetics in Biotechnology (1983), average biomass
//     CH1.8O0.5N0.2 (recalled from memory).
var yeastSkeleton = compound{c: 1, h: 1.2, o: 0.5}

// alanine stands for the amino acids that yeast takes up.
var alanine = compound{c: 3, h: 7, n: 1, o: 2}

// reduction is the electrons of a compound when it burns to CO2, water, ammonia and
// phosphate: 4C + H − 2O − 3N.
func (c compound) reduction() float64 { return 4*c.c + c.h - 2*c.o - 3*c.n }

// The gain in mass when a sugar takes up water and falls apart into hexoses.
var (
	gainOfDi  = 2 * hexose.molar() / disaccharide.molar()  // 1.0526
	gainOfTri = 3 * hexose.molar() / trisaccharide.molar() // 1.0714
)

// ethanolOfHexose is Gay-Lussac's yield, 0.51144 g/g.
var ethanolOfHexose = 2 * ethanolFormula.molar() / hexose.molar()

// Nitrogen in dry yeast matter.
const (
	nitrogenOfYeast     = 0.10        // of dry matter, well fed (Dharmadhikari)
	nitrogenOfLeanYeast = 0.40 / 6.25 // 40 % crude protein
)

// stoichiometry is the evidence of what follows from a formula.
var stoichiometry = Evidence{"stoichiometry, CIAAW atomic weights 2021", Computed}
