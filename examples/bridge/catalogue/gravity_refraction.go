package catalogue

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/rival"
	"example.org/zymase/units"
)

// correction is an entry for one of the temperature tables of the refractometer.
func correction(name, source string, coldest, warmest, least, most float64, f func(units.Extract, units.Temperature) (units.Extract, error)) Function {
	return Function{
		Name:    name,
		Meaning: "what to add to the Brix of an uncompensated refractometer at another temperature than 20 °C",
		Source:  source,
		Inputs: []Input{
			in("reading", units.DegreePlato, "what the refractometer shows", least, most, 12),
			in("temperature", units.Celsius, "temperature of the sample", coldest, warmest, coldest+1),
		},
		Outputs: []Output{
			out("add", units.DegreePlato, "what to add"),
			out("extract", units.DegreePlato, "the reading as it is at 20 °C"),
		},
		call: func(in, out []float64) error {
			add, err := f(as(units.DegreePlato, in[0]), as(units.Celsius, in[1]))
			out[0] = add.In(units.DegreePlato)
			out[1] = in[0] + out[0]
			return err
		},
	}
}

// gravityRefraction are what a refractometer shows.
func gravityRefraction() []Function {
	const source = "curve through ICUMSA 1974 and the CRC Handbook"
	return []Function{
		{
			Name:    "refractive_index",
			Meaning: "refractive index of a sucrose solution at 20 °C and 589 nm",
			Source:  source,
			Inputs:  []Input{in("extract", units.DegreePlato, "sucrose in 100 masses of the solution", 0, 80, 12)},
			Outputs: []Output{pure("refractive_index", "", "refractive index")},
			call: func(in, out []float64) (err error) {
				out[0], err = gravity.RefractiveIndex(as(units.DegreePlato, in[0]))
				return err
			},
		},
		entry("brix_from_index", "degrees Brix of a refractive index at 20 °C and 589 nm", source,
			of1(takesNumber("refractive_index", "", "refractive index", 1.33299, 1.4907, 1.3509), gravity.BrixFromIndex),
			gives("extract", units.DegreePlato, "sucrose in 100 masses of the solution")),
		entry("brix_from_index_polynomial", "degrees Brix of a refractive index by the polynomial in circulation, 0.02 low throughout", "fit to the ICUMSA table, quoted in the article Brix of a general encyclopaedia",
			of1(takesNumber("refractive_index", "", "refractive index", 1.33299, 1.4907, 1.3509), rival.BrixFromIndexPolynomial),
			gives("extract", units.DegreePlato, "sucrose in 100 masses of the solution")),
		{
			Name:    "refractive_index_of_mixture",
			Meaning: "refractive index at 20 °C of a liquid of ethanol, one sugar and water, and the Brix that it shows as",
			Source:  "CRC Handbook, 102nd ed., curves for each solute, added at the same volume",
			Inputs: []Input{
				in("strength_by_mass", units.PercentMass, "ethanol in 100 masses of the liquid", 0, 40, 3.7).or(0),
				in("extract", units.DegreePlato, "anhydrous sugar in 100 masses of the liquid", 0, 80, 2).or(0),
				choice("sugar", "which sugar", "sucrose", "glucose", "fructose").orOption("sucrose"),
			},
			Outputs: []Output{
				pure("refractive_index", "", "refractive index"),
				out("brix", units.DegreePlato, "what a refractometer shows"),
			},
			call: func(in, out []float64) error {
				s, err := mixtureOf(gravity.Sugar(in[2]), in[0], in[1])
				if err != nil {
					return err
				}
				if out[0], err = s.RefractiveIndex(); err != nil {
					return err
				}
				b, err := s.RefractometerBrix()
				out[1] = b.In(units.DegreePlato)
				return err
			},
		},
		correction("refractometer_correction", "international temperature correction table of 1936, CRC Handbook", 15, 30, 5, 75, rival.RefractometerCorrectionCRC),
		correction("refractometer_correction_oiv", "OIV-MA-AS2-02, table I", 5, 17, 10, 75, rival.RefractometerCorrectionOIV),
	}
}
