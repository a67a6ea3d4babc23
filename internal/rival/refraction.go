package rival

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

const waterIndex = 1.33299 // ICUMSA 1974, 589.3 nm, 20 °C

// BrixFromIndexPolynomial is the polynomial in circulation for the same purpose.
//
//   - Source: fit to the ICUMSA table, quoted in the article Brix of a general
//     encyclopaedia: ((((11758.74·n − 88885.21)·n + 270177.93)·n − 413145.80)·n +
//     318417.95)·n − 99127.4536.
//   - Range: 1.33299 to 1.4907; beyond it the error is a [*units.RangeError].
//   - Uncertainty: it is 0.02 °Bx low throughout (9.979 at the index of 10 °Bx), and
//     gives −0.013 for water.
func BrixFromIndexPolynomial(n float64) (units.Extract, error) {
	if err := limit.Check("rival.BrixFromIndexPolynomial", "refractive index", n, "", waterIndex, 1.4907, "CRC Handbook, 102nd ed."); err != nil {
		return units.Extract{}, err
	}
	return plato(((((11758.74*n-88885.21)*n+270177.93)*n-413145.80)*n+318417.95)*n - 99127.4536), nil
}

// RefractometerCorrectionCRC returns what to add to the Brix read on an uncompensated
// refractometer, set for 20 °C, at another temperature. Between the rows and columns
// of the table it is interpolated linearly.
//
//   - Source: international temperature correction table of 1936 as the CRC Handbook
//     prints it.
//   - Range: 15 to 30 °C, 5 to 75 °Bx; beyond it the error is a [*units.RangeError].
//   - Uncertainty: half a digit, 0.005; the OIV table ([RefractometerCorrectionOIV])
//     is 0.05 lower at 15 °C. An instrument with automatic compensation needs none.
func RefractometerCorrectionCRC(read units.Extract, t units.Temperature) (units.Extract, error) {
	return interpolate("rival.RefractometerCorrectionCRC", "international table 1936, CRC Handbook", read, t, 15, crcBrix[:], crcCorrection[:])
}

// RefractometerCorrectionOIV is the same for must and wine. The copy seen ends in the
// row of 17 °C, and has no values above 30 °Bx below 10 °C.
//
//   - Source: OIV-MA-AS2-02, Evaluation by refractometry of the sugar concentration,
//     table I.
//   - Range: 5 to 17 °C; 10 to 30 °Bx below 10 °C, to 75 °Bx up to 16 °C, to 70 °Bx above; beyond
//     it the error is a [*units.RangeError].
//   - Uncertainty: half a digit, 0.005.
func RefractometerCorrectionOIV(read units.Extract, t units.Temperature) (units.Extract, error) {
	columns := oivBrix[:]
	switch c := t.In(units.Celsius); {
	case c < 10:
		columns = oivBrix[:5]
	case c > 16:
		columns = oivBrix[:13]
	}
	return interpolate("rival.RefractometerCorrectionOIV", "OIV-MA-AS2-02 table I", read, t, 5, columns, oivCorrection[:])
}

// interpolate reads a table whose rows are a degree apart, the first at first °C.
func interpolate(fn, source string, read units.Extract, t units.Temperature, first float64, columns []float64, rows [][14]float64) (units.Extract, error) {
	b, c := read.In(units.DegreePlato), t.In(units.Celsius)
	if err := limit.Check(fn, "temperature", c, "°C", first, first+float64(len(rows)-1), source); err != nil {
		return units.Extract{}, err
	}
	if err := limit.Check(fn, "reading", b, "°Bx", columns[0], columns[len(columns)-1], source); err != nil {
		return units.Extract{}, err
	}
	i := min(int(c-first), len(rows)-2)
	j := 0
	for j < len(columns)-2 && b > columns[j+1] {
		j++
	}
	v, w := c-first-float64(i), (b-columns[j])/(columns[j+1]-columns[j])
	lower := rows[i][j] + w*(rows[i][j+1]-rows[i][j])
	upper := rows[i+1][j] + w*(rows[i+1][j+1]-rows[i+1][j])
	return plato(lower + v*(upper-lower)), nil
}

var crcBrix = [...]float64{5, 10, 15, 20, 30, 40, 50, 60, 70, 75}

// From 15 to 30 °C.
var crcCorrection = [...][14]float64{
	{-0.25, -0.27, -0.31, -0.31, -0.34, -0.35, -0.36, -0.37, -0.36, -0.36},
	{-0.21, -0.23, -0.26, -0.27, -0.29, -0.31, -0.31, -0.32, -0.31, -0.29},
	{-0.16, -0.18, -0.2, -0.2, -0.22, -0.23, -0.23, -0.23, -0.2, -0.17},
	{-0.11, -0.12, -0.14, -0.14, -0.15, -0.16, -0.16, -0.15, -0.12, -0.09},
	{-0.06, -0.07, -0.08, -0.08, -0.08, -0.09, -0.09, -0.08, -0.07, -0.05},
	{0, 0, 0, 0, 0, 0, 0, 0, 0, 0},
	{0.06, 0.07, 0.07, 0.07, 0.07, 0.07, 0.07, 0.07, 0.07, 0.07},
	{0.12, 0.14, 0.14, 0.14, 0.14, 0.14, 0.15, 0.14, 0.14, 0.14},
	{0.18, 0.2, 0.2, 0.21, 0.21, 0.21, 0.23, 0.21, 0.22, 0.22},
	{0.24, 0.26, 0.26, 0.27, 0.28, 0.28, 0.3, 0.28, 0.29, 0.29},
	{0.3, 0.32, 0.32, 0.34, 0.36, 0.36, 0.38, 0.36, 0.36, 0.37},
	{0.36, 0.39, 0.39, 0.41, 0.43, 0.43, 0.46, 0.44, 0.43, 0.44},
	{0.43, 0.46, 0.46, 0.48, 0.5, 0.51, 0.55, 0.52, 0.5, 0.51},
	{0.5, 0.53, 0.53, 0.55, 0.58, 0.59, 0.63, 0.6, 0.57, 0.59},
	{0.57, 0.6, 0.61, 0.62, 0.66, 0.67, 0.71, 0.68, 0.65, 0.67},
	{0.64, 0.67, 0.7, 0.71, 0.74, 0.75, 0.8, 0.76, 0.73, 0.75},
}

var oivBrix = [...]float64{10, 15, 20, 25, 30, 35, 40, 45, 50, 55, 60, 65, 70, 75}

// From 5 to 17 °C.
var oivCorrection = [...][14]float64{
	{-0.82, -0.87, -0.92, -0.95, -0.99},
	{-0.8, -0.82, -0.87, -0.9, -0.94},
	{-0.74, -0.78, -0.82, -0.84, -0.88},
	{-0.69, -0.73, -0.76, -0.79, -0.82},
	{-0.64, -0.67, -0.71, -0.73, -0.75},
	{-0.59, -0.62, -0.65, -0.67, -0.69, -0.71, -0.72, -0.73, -0.74, -0.75, -0.75, -0.75, -0.75, -0.75},
	{-0.54, -0.57, -0.59, -0.61, -0.63, -0.64, -0.65, -0.66, -0.67, -0.68, -0.68, -0.68, -0.68, -0.67},
	{-0.49, -0.51, -0.53, -0.55, -0.56, -0.57, -0.58, -0.59, -0.6, -0.6, -0.61, -0.61, -0.6, -0.6},
	{-0.43, -0.45, -0.47, -0.48, -0.5, -0.51, -0.52, -0.52, -0.53, -0.53, -0.53, -0.53, -0.53, -0.53},
	{-0.38, -0.39, -0.4, -0.42, -0.43, -0.44, -0.44, -0.45, -0.45, -0.46, -0.46, -0.46, -0.46, -0.45},
	{-0.32, -0.33, -0.34, -0.35, -0.36, -0.37, -0.37, -0.38, -0.38, -0.38, -0.38, -0.38, -0.38, -0.38},
	{-0.26, -0.27, -0.28, -0.28, -0.29, -0.3, -0.3, -0.3, -0.31, -0.31, -0.31, -0.31, -0.31, -0.3},
	{-0.2, -0.2, -0.21, -0.21, -0.22, -0.22, -0.23, -0.23, -0.23, -0.23, -0.23, -0.23, -0.23},
}
