package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// RefractometerCorrection returns what to add to the Brix read on an uncompensated
// refractometer, set for 20 °C, at another temperature. Between the rows and columns of
// the tables it is interpolated linearly. An instrument with automatic compensation needs
// none.
//
//   - Source: from 15 °C up the international temperature correction table of 1936 as the
//     CRC Handbook prints it; below, OIV-MA-AS2-02, table I.
//   - Range: 15 to 30 °C with 5 to 75 °Bx; 10 to 15 °C with 10 to 75 °Bx; 5 to 10 °C with
//     10 to 30 °Bx. Beyond it the error is a [*units.RangeError].
//   - Uncertainty: half a digit of the tables, 0.005; where they meet, at 15 °C, the OIV's
//     is 0.05 lower.
func RefractometerCorrection(read units.Extract, t units.Temperature) (units.Extract, error) {
	table := rival.RefractometerCorrectionCRC
	if c := t.In(units.Celsius); c >= 5 && c < 15 {
		table = rival.RefractometerCorrectionOIV
	}
	e, err := table(read, t)
	return e, limit.Named("gravity.RefractometerCorrection", err)
}
