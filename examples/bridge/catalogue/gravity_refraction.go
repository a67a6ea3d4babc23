package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// correction is an entry for one of the temperature tables of the refractometer.
func correction(name, source string, coldest, warmest, least, most float64, f func(units.Extract, units.Temperature) (units.Extract, error)) *Function {
	type corrected = pair[units.Extract, units.Extract]
	return entry(name, "what to add to the Brix of an uncompensated refractometer at another temperature than 20 °C", source,
		of2(takes("reading", units.DegreePlato, "what the refractometer shows", least, most, 12),
			takes("temperature", units.Celsius, "temperature of the sample", coldest, warmest, coldest+1),
			func(reading units.Extract, t units.Temperature) (corrected, error) {
				add, err := f(reading, t)
				return corrected{add, as(units.DegreePlato, reading.In(units.DegreePlato)+add.In(units.DegreePlato))}, err
			}),
		from(func(c corrected) units.Extract { return c.a }, "add", units.DegreePlato, "what to add"),
		from(func(c corrected) units.Extract { return c.b }, "extract", units.DegreePlato, "the reading as it is at 20 °C"))
}

// gravityRefraction are what a refractometer shows.
func gravityRefraction() []*Function {
	type shown = pair[float64, units.Extract]
	const source = "curve through ICUMSA 1974 and the CRC Handbook"
	index := takesNumber("refractive_index", "", "refractive index", 1.33299, 1.4907, 1.3509)
	return []*Function{
		entry("refractive_index", "refractive index of a sucrose solution at 20 °C and 589 nm", source,
			of1(takes("extract", units.DegreePlato, "sucrose in 100 masses of the solution", 0, 80, 12), gravity.RefractiveIndex),
			givesNumber("refractive_index", "", "refractive index")),
		entry("brix_from_index", "degrees Brix of a refractive index at 20 °C and 589 nm", source,
			of1(index, gravity.BrixFromIndex),
			gives("extract", units.DegreePlato, "sucrose in 100 masses of the solution")),
		entry("brix_from_index_polynomial", "degrees Brix of a refractive index by the polynomial in circulation, 0.02 low throughout",
			"fit to the ICUMSA table, quoted in the article Brix of a general encyclopaedia",
			of1(index, rival.BrixFromIndexPolynomial),
			gives("extract", units.DegreePlato, "sucrose in 100 masses of the solution")),
		entry("refractive_index_of_mixture", "refractive index at 20 °C of a liquid of ethanol, one sugar and water, and the Brix that it shows as",
			"CRC Handbook, 102nd ed., curves for each solute, added at the same volume",
			of1(of3(takes("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the liquid", 0, 40, 3.7).or(0),
				takes("extract", units.DegreePlato, "anhydrous sugar in 100 masses of the liquid", 0, 80, 2).or(0), sugarChoice("which sugar"), mixtureOf),
				func(s gravity.Solution) (shown, error) {
					n, err := s.RefractiveIndex()
					if err != nil {
						return shown{}, err
					}
					b, err := s.RefractometerBrix()
					return shown{n, b}, err
				}),
			numberFrom(func(s shown) float64 { return s.a }, "refractive_index", "", "refractive index"),
			from(func(s shown) units.Extract { return s.b }, "brix", units.DegreePlato, "what a refractometer shows")),
		correction("refractometer_correction", "international temperature correction table of 1936, CRC Handbook", 15, 30, 5, 75, rival.RefractometerCorrectionCRC),
		correction("refractometer_correction_oiv", "OIV-MA-AS2-02, table I", 5, 17, 10, 75, rival.RefractometerCorrectionOIV),
	}
}
