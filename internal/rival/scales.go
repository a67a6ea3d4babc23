package rival

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// BrixNBS is the cubic laid through NBS Circular 440.
//
//   - Source: fit to Bates et al., Polarimetry, Saccharimetry and the Sugars, NBS
//     Circular 440 (1942) table 114: 182.46007·S³ − 775.68212·S² + 1262.7794·S −
//     669.56218.
//   - Range: S from 1 to 1.17874 (0 to 40 °Bx), in air, 20/20 °C; beyond it the error
//     is a [*units.RangeError].
//   - Uncertainty: 0.0009 °Bx against that table (root mean square), 0.023 against
//     SPS-4 at 40 °Bx; it returns −0.0048 at S = 1.
func BrixNBS(s float64) (units.Extract, error) {
	if err := limit.Check("rival.BrixNBS", "specific gravity", s, "", 1, 1.17874, "NBS Circular 440 table 114"); err != nil {
		return units.Extract{}, err
	}
	return plato(-669.56218 + s*(1262.7794+s*(-775.68212+s*182.46007))), nil
}

// PlatoASBC is the cubic laid through the extract table of American brewers.
//
//   - Source: fit to the ASBC table of extract (Plato), Methods of Analysis:
//     135.997·S³ − 630.272·S² + 1111.14·S − 616.868.
//   - Range: S from 1 to 1.0830 (20 °P), in air, 20/20 °C; beyond it the error is a
//     [*units.RangeError]. Past the table it strays, to 0.1 °P at 40 °P.
//   - Uncertainty: within 0.012 °P of SPS-4 to 20 °P; it returns −0.0030 at S = 1.
func PlatoASBC(s float64) (units.Extract, error) {
	if err := limit.Check("rival.PlatoASBC", "specific gravity", s, "", 1, 1.0830, "ASBC table, to 20 °P"); err != nil {
		return units.Extract{}, err
	}
	return plato(-616.868 + s*(1111.14+s*(-630.272+s*135.997))), nil
}

// PlatoLincoln is the quadratic for use without a calculator.
//
//   - Source: Lincoln, "Computerized brew house calculations", quoted in the article
//     Brix of a general encyclopaedia: (463 − 205·S)·(S − 1).
//   - Range: S from 1 to 1.1 (stated nowhere; it is 0.2 °P off there); beyond it the
//     error is a [*units.RangeError].
//   - Uncertainty: 0.03 °P to 12 °P.
func PlatoLincoln(s float64) (units.Extract, error) {
	if err := limit.Check("rival.PlatoLincoln", "specific gravity", s, "", 1, 1.1, "no range published"); err != nil {
		return units.Extract{}, err
	}
	return plato((463 - 205*s) * (s - 1)), nil
}

// BrixLinear is the straight line through the scale, for a rough guess.
//
//   - Source: article Brix of a general encyclopaedia: 231.61·(S − 0.9977).
//   - Range: S from 1 to 1.18 (stated nowhere); beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: 0.6 °Bx to 1.1, 2 °Bx at 1.18.
func BrixLinear(s float64) (units.Extract, error) {
	if err := limit.Check("rival.BrixLinear", "specific gravity", s, "", 1, 1.18, "no range published"); err != nil {
		return units.Extract{}, err
	}
	return plato(231.61 * (s - 0.9977)), nil
}

// PlatoHyperbola is the old formula of the saccharometer makers.
//
//   - Source: Kyoto Electronics, manual of the density meter DA-650, p. 69: 260·(1 −
//     1/S), S at 17.5 °C.
//   - Range: S from 1 to 1.15 (stated nowhere); beyond it the error is a
//     [*units.RangeError].
//   - Uncertainty: 0.6 °P.
func PlatoHyperbola(s float64) (units.Extract, error) {
	if err := limit.Check("rival.PlatoHyperbola", "specific gravity", s, "", 1, 1.15, "no range published"); err != nil {
		return units.Extract{}, err
	}
	return plato(260 * (1 - 1/s)), nil
}
