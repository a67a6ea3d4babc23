package chemistry

// Gas is the molar gas constant, in J/(mol·K) and so in L·kPa/(mol·K): exact by the SI
// of 2019, cut after ten digits.
const Gas = 8.314462618

// The state in which volumes of gas are counted, and 0 °C.
const (
	ZeroCelsius = 273.15  // K
	StandardKPa = 101.325 // the standard atmosphere, kPa
)

// CO2Volume is the volume of a mole of CO2 gas at 0 °C and 101.325 kPa, in L/mol.
//
//   - Source: IUPAC-NIST Solubility Database (SRD 106) page 62_31.
const CO2Volume = 22.2605

// IdealVolume is that of an ideal gas, 22.41397 L/mol.
const IdealVolume = Gas * ZeroCelsius / StandardKPa
