package water

// weakAcid is an organic acid or sulfite: its anion and the fits of the anion with
// one, two and three protons.
type weakAcid struct {
	ion     Ion
	charge  int // of the bare anion, as a positive number
	zero    int // protons in the form that alkalinity counts from
	protons int // most protons
	steps   [3]fit
}

// pair returns the fits of protonation for dissociation constants pKa at 25 °C with
// their enthalpies in kJ/mol, first step first.
func protonation(steps ...[2]float64) (out [3]fit) {
	sum, kJ := 0.0, 0.0
	for i := range steps {
		s := steps[len(steps)-1-i]
		sum += s[0]
		kJ -= s[1]
		out[i] = heat(sum, kJ)
	}
	return out
}

// weakAcids are the acids of drinks beside carbonic and phosphoric.
//
//   - Source: citric and acetic, NIST Standard Reference Database 46 at zero ionic
//     strength, with their enthalpies; lactic, succinic, L-tartaric, malic and
//     sulfurous by compilation at 25 °C. Enthalpies of lactic (-0.3), tartaric (3.2
//     and 1.0), malic (3.0 and -1.0), succinic (3.0 and -0.5) and sulfurous acid
//     (-17.8 and -3.7) and the pKa of sorbic acid: recalled from memory (R. N.
//     Goldberg et al., J. Phys. Chem. Ref. Data 31 (2002) 231).
//   - Range: 0 to 90 °C with constant enthalpy.
//   - Uncertainty: 0.02 in pKa at 25 °C, but tartaric 0.05 (2.98 and 4.34 read, 3.036 and
//     4.366 by R. G. Bates and R. G. Canham, J. Res. Natl. Bur. Stand. 47 (1951) 343,
//     recalled from memory) and malic second step 0.1 (5.20 read, 5.10 and 5.11
//     recalled). Off 25 °C the constant enthalpy adds 0.05 at 0 and 50 °C.
var weakAcids = [...]weakAcid{
	{Lactate, 1, 0, 1, protonation([2]float64{3.86, -0.3})},
	{Acetate, 1, 0, 1, protonation([2]float64{4.757, -0.41})},
	{Citrate, 3, 0, 3, protonation([2]float64{3.128, 4.06}, [2]float64{4.761, 2.05}, [2]float64{6.396, -3.35})},
	{Malate, 2, 0, 2, protonation([2]float64{3.40, 3.0}, [2]float64{5.2, -1.0})},
	{Tartrate, 2, 0, 2, protonation([2]float64{2.98, 3.2}, [2]float64{4.34, 1.0})},
	{Succinate, 2, 0, 2, protonation([2]float64{4.21, 3.0}, [2]float64{5.64, -0.5})},
	{Sulfite, 2, 1, 2, protonation([2]float64{1.85, -17.8}, [2]float64{7.2, -3.7})},
	{Sorbate, 1, 0, 1, protonation([2]float64{4.76, 0})},
}
