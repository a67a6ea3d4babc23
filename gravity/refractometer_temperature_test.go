package gravity_test

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// International table of 1936 as the CRC Handbook prints it, at four of its ten
// columns, and half way between them; the whole of it is a published table of the
// module.
func TestRefractometerCorrectionCRC(t *testing.T) {
	for i, r := range [][4]float64{ // 5, 10, 30, 75 °Bx from 15 °C
		{-0.25, -0.27, -0.34, -0.36}, {-0.21, -0.23, -0.29, -0.29}, {-0.16, -0.18, -0.22, -0.17}, {-0.11, -0.12, -0.15, -0.09}, {-0.06, -0.07, -0.08, -0.05}, {0, 0, 0, 0},
		{0.06, 0.07, 0.07, 0.07}, {0.12, 0.14, 0.14, 0.14}, {0.18, 0.20, 0.21, 0.22}, {0.24, 0.26, 0.28, 0.29}, {0.30, 0.32, 0.36, 0.37}, {0.36, 0.39, 0.43, 0.44}, {0.43, 0.46, 0.50, 0.51}, {0.50, 0.53, 0.58, 0.59}, {0.57, 0.60, 0.66, 0.67}, {0.64, 0.67, 0.74, 0.75},
	} {
		c := 15 + float64(i)
		for j, b := range []float64{5, 10, 30, 75} {
			near(t, fmt.Sprint(c, " °C, ", b, " °Bx"), ok[units.Extract](t)(gravity.RefractometerCorrectionCRC(plato(b), celsius(c))).In(units.DegreePlato), r[j], 1e-12)
		}
		near(t, "7.5 °Bx", ok[units.Extract](t)(gravity.RefractometerCorrectionCRC(plato(7.5), celsius(c))).In(units.DegreePlato), (r[0]+r[1])/2, 1e-12)
	}
	near(t, "15.5 °C", ok[units.Extract](t)(gravity.RefractometerCorrectionCRC(plato(5), celsius(15.5))).In(units.DegreePlato), -0.23, 1e-12)
	for _, c := range []float64{14.9, 30.1, math.NaN()} {
		_, err := gravity.RefractometerCorrectionCRC(plato(10), celsius(c))
		refused(t, "temperature", err, "temperature")
	}
	for _, b := range []float64{4.9, 75.1, math.NaN()} {
		_, err := gravity.RefractometerCorrectionCRC(plato(b), celsius(20))
		refused(t, "reading", err, "reading")
	}
}

// OIV-MA-AS2-02 table I at some of its columns.
func TestRefractometerCorrectionOIV(t *testing.T) {
	for i, r := range [][2]float64{ // 10 and 30 °Bx from 5 °C
		{-0.82, -0.99}, {-0.80, -0.94}, {-0.74, -0.88}, {-0.69, -0.82}, {-0.64, -0.75}, {-0.59, -0.69}, {-0.54, -0.63}, {-0.49, -0.56}, {-0.43, -0.50}, {-0.38, -0.43}, {-0.32, -0.36}, {-0.26, -0.29}, {-0.20, -0.22},
	} {
		c := 5 + float64(i)
		near(t, fmt.Sprint(c, " °C, 10 °Bx"), ok[units.Extract](t)(gravity.RefractometerCorrectionOIV(plato(10), celsius(c))).In(units.DegreePlato), r[0], 1e-12)
		near(t, fmt.Sprint(c, " °C, 30 °Bx"), ok[units.Extract](t)(gravity.RefractometerCorrectionOIV(plato(30), celsius(c))).In(units.DegreePlato), r[1], 1e-12)
	}
	for _, r := range [][3]float64{{10, 75, -0.75}, {11, 75, -0.67}, {14, 75, -0.45}, {15, 75, -0.38}, {16, 75, -0.30}, {16, 70, -0.31}, {17, 70, -0.23}, {17, 50, -0.23}, {12, 60, -0.61}, {13, 40, -0.52}, {10, 32.5, -0.70}, {8.5, 27.5, -0.7725}, {12, 67.5, -0.605}, {12, 62.5, -0.61}} {
		near(t, fmt.Sprint(r), ok[units.Extract](t)(gravity.RefractometerCorrectionOIV(plato(r[1]), celsius(r[0]))).In(units.DegreePlato), r[2], 1e-12)
	}
	for _, c := range []float64{4.9, 17.1, math.NaN()} {
		_, err := gravity.RefractometerCorrectionOIV(plato(10), celsius(c))
		refused(t, "temperature", err, "temperature")
	}
	for _, r := range [][2]float64{{9.9, 30.1}, {16.1, 70.1}, {10, 75.1}, {10, 9.9}, {10, math.NaN()}} {
		_, err := gravity.RefractometerCorrectionOIV(plato(r[1]), celsius(r[0]))
		refused(t, "reading", err, "reading")
	}
	// the two tables differ: −0.27 and −0.32 at 15 °C and 10 °Bx
	crc := ok[units.Extract](t)(gravity.RefractometerCorrectionCRC(plato(10), celsius(15)))
	oiv := ok[units.Extract](t)(gravity.RefractometerCorrectionOIV(plato(10), celsius(15)))
	near(t, "difference", crc.Minus(oiv).In(units.DegreePlato), 0.05, 1e-12)
}
