// Package chemistry holds the constants of nature that more than one package computes
// with, each once.
package chemistry

// Atomic weights in g/mol.
//
//   - Source: T. Prohaska et al., Standard atomic weights of the elements 2021
//     (IUPAC Technical Report), Pure Appl. Chem. 94 (2022) 573, abridged values;
//     each lies in the interval that CIAAW prints.
const (
	H  = 1.0080
	C  = 12.011
	N  = 14.007
	O  = 15.999
	F  = 18.998
	Na = 22.990
	Mg = 24.305
	P  = 30.974
	S  = 32.06
	Cl = 35.45
	K  = 39.098
	Ca = 40.078
	Mn = 54.938
	Fe = 55.845
	Cu = 63.546
	Zn = 65.38
)

// Molar masses in g/mol of what is counted in moles all over.
const (
	Water   = 2*H + O
	CO2     = C + 2*O
	Ethanol = 2*C + 6*H + O
	Hexose  = 6*C + 12*H + 6*O   // glucose and fructose
	Sucrose = 12*C + 22*H + 11*O // maltose too
	Triose  = 18*C + 32*H + 16*O // maltotriose
)
