package nutrient

// compound counts the atoms of a formula.
type compound struct{ c, h, n, o, na, mg, p, s, cl, k, zn float64 }

// Abridged standard atomic weights, g/mol.
//
//   - Source: CIAAW standard atomic weights 2021, abridged values (Prohaska et al.,
//     Pure Appl. Chem. 94 (2022) 573).
const (
	weightH  = 1.0080
	weightC  = 12.011
	weightN  = 14.007
	weightO  = 15.999
	weightNa = 22.990
	weightMg = 24.305
	weightP  = 30.974
	weightS  = 32.06
	weightCl = 35.45
	weightK  = 39.098
	weightZn = 65.38
)

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
