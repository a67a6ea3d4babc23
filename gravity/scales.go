package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Oechsle returns degrees Oechsle: the excess over water in thousandths.
//
//   - Source: definition, 1000·(S − 1) at 20/20 °C (recalled from memory).
//   - Range: every gravity; negative below 1.000.
func (g Gravity) Oechsle() float64 { return g.Points() }

// Baume returns degrees Baumé for liquids heavier than water, by the rational
// scale: modulus·(1 − 1/S), S in vacuum at 15/4 °C.
//
//   - Source: modulus 144.3 in the international scale, S at 15/4 °C (Kyoto
//     Electronics, manual of the density meter DA-650, p. 69).
//   - Range: every gravity; negative below 1.000.
//   - Uncertainty: the scale's own modulus was 144 to 146.8 in older books.
func (g Gravity) Baume() float64 { return baumeModulus * (1 - 1/g.as(At15On4, InVacuum)) }

// BaumeUS returns degrees Baumé as the US defined them: 145·(1 − 1/S) with S at
// 60/60 °F.
//
//   - Source: National Bureau of Standards (recalled from memory).
//   - Range: every gravity; negative below 1.000.
func (g Gravity) BaumeUS() float64 { return baumeModulusUS * (1 - 1/g.as(At60F, InVacuum)) }

// Moduli of the Baumé scales for heavy liquids.
const (
	baumeModulus   = 144.3 // international, 15/4 °C
	baumeModulusUS = 145   // US, 60/60 °F
)

// FromBaume returns the gravity of degrees of the international Baumé scale: the
// inverse of [Gravity.Baume].
//
//   - Range: −37 to 42 °Bé; beyond it the error is a [*units.RangeError].
func FromBaume(degrees float64) (Gravity, error) {
	if err := limit.Check("gravity.FromBaume", "degrees Baumé", degrees, "°Bé", -37, 42, sourceScale); err != nil {
		return Gravity{}, err
	}
	return FromReference(baumeModulus/(baumeModulus-degrees), At15On4, InVacuum)
}

// SakeMeter returns the sake meter value: 1443·(1/S − 1), S at 15/4 °C. It is
// positive below 1.000: the drier the higher.
//
//   - Source: Kyoto Electronics, manual of the density meter DA-650, p. 69.
//   - Range: every gravity.
func (g Gravity) SakeMeter() float64 { return 1443 * (1/g.as(At15On4, InVacuum) - 1) }

// ExtractConcentration returns grams of extract in a litre of its solution in water
// at a temperature.
//
//   - Source: ICUMSA SPS-4 (1994): mass fraction times density. The German official
//     table of 1900 for 15 °C agrees within 0.1 g/L.
//   - Range: as [SucroseDensity].
//   - Uncertainty: that of the density.
func ExtractConcentration(e units.Extract, t units.Temperature) (units.MassConcentration, error) {
	d, err := SucroseDensity(e, t)
	if err != nil {
		return units.MassConcentration{}, limit.Named("gravity.ExtractConcentration", err)
	}
	return gramsPerLitre(e.In(units.DegreePlato) / 100 * d.In(units.KilogramPerCubicMetre)), nil
}

// ExtractFromConcentration returns the extract of a solution that holds that much
// sucrose in a litre at a temperature: the inverse of [ExtractConcentration].
//
//   - Source: ICUMSA SPS-4 (1994), solved for the mass fraction.
//   - Range: 0 to 80 % mass, that is 1130 g/L at 20 °C; 0 to 100 °C. Beyond it the
//     error is a [*units.RangeError].
//   - Uncertainty: that of the density.
func ExtractFromConcentration(c units.MassConcentration, t units.Temperature) (units.Extract, error) {
	const fn = "gravity.ExtractFromConcentration"
	g, deg := c.In(units.GramPerLitre), t.In(units.Celsius)
	if err := limit.Check(fn, "temperature", deg, "°C", 0, 100, sourceSPS4); err != nil {
		return units.Extract{}, err
	}
	y := syrupAt(deg)
	if err := limit.Check(fn, "concentration", g, "g/L", 0, mostSucrose/100*y.density(mostSucrose/100)+rounding, sourceSPS4); err != nil {
		return units.Extract{}, err
	}
	var b float64 // the steps do not depend on the start
	for range mostSteps {
		rho := y.density(b)
		step := (b*rho - g) / (rho + b*y.slope(b))
		b -= step
		if step < nearly && step > -nearly {
			break
		}
	}
	return plato(100 * clamp(b, 0, mostSucrose/100)), nil
}

// Concentration returns grams of one kind of extract in a litre of the liquid at 20
// °C; 0 for an unknown kind.
func (s Solution) Concentration(k Sugar) units.MassConcentration {
	if k < 0 || k >= kinds || s.total() == 0 {
		return units.MassConcentration{}
	}
	return gramsPerLitre(s.density20() * s.extract[k] / s.total())
}
