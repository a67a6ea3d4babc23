package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// SpiritIndication returns the strength from two hydrometer readings: one of the
// liquid, one of the same after the ethanol is boiled off and the volume made up with
// water.
//
//   - Source: Tabarié's relation turned round: SG of the alcohol solution = SG before −
//     SG after + 1, at 20 °C; its strength after OIML R 22.
//   - Range: gravities that leave 0.7907 (pure ethanol) to 1.000 for the alcohol solution
//     (1e-9 more counts as rounding); otherwise the error is a [*units.RangeError]. Volatile acid and foam lost count as error.
//   - Uncertainty: 0.0002 in each reading is 0.2 % vol together.
func SpiritIndication(before, afterBoiling Gravity) (units.StrengthByVolume, error) {
	sg := 1 + (before.excess - afterBoiling.excess)
	if sg > 1 && sg <= 1+rounding { // no ethanol, but for the last digits of the two
		sg = 1
	}
	if err := limit.Check("gravity.SpiritIndication", "gravity of the alcohol solution", sg, "", ethanol20/mixture20[0], 1, sourceR22); err != nil {
		return units.StrengthByVolume{}, err
	}
	return ByVolume(percentMass(100 * mixture20.fraction(max(sg*mixture20[0], ethanol20), ethanol20))), nil
}

// DistillateStrength returns the strength of a sample from its distillate: all the
// ethanol is driven over, and the distillate made up with water.
//
//   - Source: strength of the distillate from its density (OIML R 22), times its volume
//     over that of the sample, both at 20 °C; the method of the reference analyses.
//   - Range: volumes of 1 mL to 1000 L; a density of OIML R 22 at that temperature;
//     a result up to 100 % vol. Otherwise the error is a [*units.RangeError].
//   - Uncertainty: 0.1 kg/m³ is 0.07 % vol in the distillate; what is lost on the way
//     lowers it.
func DistillateStrength(sample, distillate units.Volume, d units.Density, t units.Temperature) (units.StrengthByVolume, error) {
	const fn = "gravity.DistillateStrength"
	s, v := sample.In(units.Litre), distillate.In(units.Litre)
	if err := limit.Check(fn, "volume of the sample", s, "L", 0.001, 1000, "a laboratory"); err != nil {
		return units.StrengthByVolume{}, err
	}
	if err := limit.Check(fn, "volume of the distillate", v, "L", 0.001, 1000, "a laboratory"); err != nil {
		return units.StrengthByVolume{}, err
	}
	w, err := EthanolStrength(d, t)
	if err != nil {
		return units.StrengthByVolume{}, limit.Named(fn, err)
	}
	a := ByVolume(w).In(units.PercentVolume) * v / s
	if err := limit.Check(fn, "strength of the sample", a, "% vol", 0, 100, "a strength"); err != nil {
		return units.StrengthByVolume{}, err
	}
	return percentVolume(a), nil
}

// FermentByWeight returns what a wort has become when it has lost that mass as CO2:
// a scale under the fermenter.
//
//   - Source: the balance of the [Yield]: extract used = (CO2 gone + CO2 still
//     dissolved)/CO2 of a gram of extract.
//   - Range: dissolved CO2 of 0 to 10 g/L; CO2 up to that of complete fermentation.
//     Otherwise the error is a [*units.RangeError].
//   - Uncertainty: the yield, 1 to 3 %; a moist gas takes 0.7 to 1.5 % of its mass of
//     water and ethanol with it, which counts as CO2 here; 1 g of a scale in 100 g lost
//     is 1 %.
func (wort Solution) FermentByWeight(lost units.Mass, dissolved units.CarbonDioxideContent, y Yield) (Solution, Fermented, error) {
	const fn = "gravity.Solution.FermentByWeight"
	m, c := lost.In(units.Kilogram), dissolved.In(units.GramCO2PerLitre)
	if err := y.check(fn); err != nil {
		return Solution{}, Fermented{}, err
	}
	if err := limit.Check(fn, "dissolved CO2", c, "g/L", 0, 10, "a fermenting liquid"); err != nil {
		return Solution{}, Fermented{}, err
	}
	made := m + c/1000*wort.total()/wort.density20()*1000
	if err := limit.Check(fn, "CO2 made", made, "kg", 0, wort.fermentable()*y.co2*(1+hair), "complete fermentation"); err != nil {
		return Solution{}, Fermented{}, err
	}
	left, products, err := wort.Ferment(kilograms(min(made/y.co2, wort.fermentable())), y)
	return left, products, limit.Named("gravity.Solution.FermentByWeight", err)
}
