package gravity

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Solution is a liquid as the masses of water, extract and ethanol in it: water,
// a sugar syrup, wort, wash, beer, spirit. It holds no CO2. The zero value is
// nothing at all; its gravity is that of water.
//
// Every operation returns a new Solution and keeps the masses. Volumes do not add.
// A Solution that exists has a density: one that no formula covers is not made,
// see [Solution.DensityUncertainty].
//
// The extract is kept by kind, since the sugars differ in density; [NewSolution]
// counts it as sucrose, [Solution.AddExtract] takes any kind.
type Solution struct {
	water, ethanol float64 // kg
	extract        [kinds]float64
}

// NewSolution returns a liquid of these masses; the extract counts as sucrose.
//
//   - Range: no mass is negative; extract up to 80 % of water and extract together;
//     with ethanol as [Solution.DensityUncertainty] says. Otherwise the error is a [*units.RangeError].
func NewSolution(water, extract, ethanol units.Mass) (Solution, error) {
	s := Solution{water: water.In(units.Kilogram), ethanol: ethanol.In(units.Kilogram)}
	s.extract[AsSucrose] = extract.In(units.Kilogram)
	return s.checked("gravity.NewSolution")
}

// checked returns s if it is a liquid that has a density.
func (s Solution) checked(fn string) (Solution, error) {
	if err := limit.Check(fn, "water", s.water, "kg", 0, mostMass, "a mass"); err != nil {
		return Solution{}, err
	}
	if err := limit.Check(fn, "ethanol", s.ethanol, "kg", 0, mostMass, "a mass"); err != nil {
		return Solution{}, err
	}
	for _, x := range s.extract {
		if !(x >= 0 && x <= mostMass) {
			return Solution{}, limit.Check(fn, "extract", x, "kg", 0, mostMass, "a mass")
		}
	}
	sum := s.sugars()
	if sum == 0 {
		return s, nil
	}
	syrup := sum / (s.water + sum) // of the liquid without its ethanol
	if err := limit.Check(fn, "extract in the liquid without ethanol", 100*syrup, "% mass", 0, mostSucrose, sourceSPS4); err != nil {
		return Solution{}, err
	}
	total := s.water + s.ethanol + sum
	for k, m := range s.extract {
		if m > 2*trace*total {
			if err := limit.Check(fn, extractWith[k], 100*syrup, "% mass", 0, lighters[k].most, sourceCRC); err != nil {
				return Solution{}, err
			}
		}
	}
	if e, x := s.ethanol/total, sum/total; region(e, x) == outside {
		most := min(mostProduct/e, mostSolute-e)
		if err := limit.Check(fn, "extract with this much ethanol", 100*x, "% mass", 0, 100*max(most, trace),
			"no relation known for more; Hackbarth 2009"); err != nil {
			return Solution{}, err
		}
	}
	return s, nil
}

// Names for the errors; joined up in advance, as the check is on the hot path.
var extractWith = [kinds]string{
	"extract with sucrose", "extract with glucose", "extract with fructose",
	"extract with dextrin", "extract with glycerol", "extract with organic acid",
}

func (s *Solution) sugars() (sum float64) {
	for _, x := range s.extract {
		sum += x
	}
	return sum
}

func (s *Solution) total() float64 { return s.water + s.ethanol + s.sugars() }

// fractions returns the mass fractions of ethanol and extract.
func (s *Solution) fractions() (e, x float64) {
	sum := s.sugars()
	m := s.water + s.ethanol + sum
	if m == 0 {
		return 0, 0
	}
	return s.ethanol / m, sum / m
}

// Water returns the mass of water.
func (s Solution) Water() units.Mass { return kilograms(s.water) }

// Extract returns the mass of extract of all kinds.
func (s Solution) Extract() units.Mass { return kilograms(s.sugars()) }

// ExtractOf returns the mass of one kind of extract; 0 for an unknown kind.
func (s Solution) ExtractOf(k Sugar) units.Mass {
	if k < 0 || k >= kinds {
		return units.Mass{}
	}
	return kilograms(s.extract[k])
}

// Fermentable returns the mass of the extract that yeast can use.
func (s Solution) Fermentable() units.Mass { return kilograms(s.fermentable()) }

func (s Solution) fermentable() (sum float64) {
	for k, x := range s.extract {
		if Sugar(k).Fermentable() {
			sum += x
		}
	}
	return sum
}

// Ethanol returns the mass of ethanol.
func (s Solution) Ethanol() units.Mass { return kilograms(s.ethanol) }

// Mass returns the mass of the whole.
func (s Solution) Mass() units.Mass { return kilograms(s.total()) }

// RealExtract returns the mass of extract in 100 masses of the liquid.
func (s Solution) RealExtract() units.Extract {
	_, x := s.fractions()
	return plato(100 * x)
}

// ByMass returns the mass of ethanol in 100 masses of the liquid.
func (s Solution) ByMass() units.StrengthByMass {
	e, _ := s.fractions()
	return percentMass(100 * e)
}

// ByVolume returns the volume of its ethanol alone at 20 °C in 100 volumes of the
// liquid at 20 °C.
//
//   - Source: definition of OIML R 22 (1973); the density after R 22, ICUMSA SPS-4
//     and Tabarié. Without extract it is [ByVolume] of the strength by mass.
//   - Uncertainty: that of the density in relation to 1000 kg/m³, see
//     [Solution.DensityUncertainty].
func (s Solution) ByVolume() units.StrengthByVolume {
	e, _ := s.fractions()
	return percentVolume(clamp(100*e*s.density20()/pureEthanol20, 0, 100))
}

// pureEthanol20 is on the water of SPS-4, as a Solution is.
var pureEthanol20 = ethanol20 * syrup20[0] / mixture20[0]

// Gravity returns the gravity 20/20 °C: what a hydrometer shows at 20 °C once the
// gas is out. For an apparent extract take its [Gravity.Extract].
func (s Solution) Gravity() Gravity {
	return one(clamp(s.density20()/syrup20[0], lowestGravity, highestGravity))
}

func (s *Solution) density20() float64 {
	e, x := s.fractions()
	y := s.syrupAt20()
	return blend(&mixture20, &y, e, x)
}

func (s *Solution) syrupAt20() syrup {
	y := syrup20
	s.mix(&y)
	return y
}

// mix turns the formula for sucrose into that for the extract at hand.
func (s *Solution) mix(y *syrup) {
	sum := s.sugars()
	if sum == 0 {
		return
	}
	for k, x := range s.extract {
		if x > 0 {
			y.change(Sugar(k), x/sum)
		}
	}
}

// Density returns the density at a temperature, in vacuum.
//
//   - Source: ICUMSA SPS-4 (1994) without ethanol; with it OIML R 22 (1973) on the
//     same water, and Tabarié's relation at that temperature.
//   - Range: 0 to 100 °C without ethanol, 0 to 40 °C with it (R 22); beyond it the
//     error is a [*units.RangeError].
//   - Uncertainty: [Solution.DensityUncertainty], at 20 °C.
func (s Solution) Density(t units.Temperature) (units.Density, error) {
	rho, err := s.densityAt("gravity.Solution.Density", t)
	return kgPerM3(rho), err
}

func (s *Solution) densityAt(fn string, t units.Temperature) (float64, error) {
	c := t.In(units.Celsius)
	most, source := 100.0, sourceSPS4
	if s.ethanol > 0 {
		most, source = 40, sourceR22
	}
	if err := limit.Check(fn, "temperature", c, "°C", 0, most, source); err != nil {
		return 0, err
	}
	return s.rho(c), nil
}

// rho is the density in kg/m³ at c in °C, inside the range of [Solution.Density].
func (s *Solution) rho(c float64) float64 {
	if c == 20 { // its formulas stand ready
		return s.density20()
	}
	e, x := s.fractions()
	var m mixture
	if e > 0 {
		m.at(c)
	}
	var y syrup
	y.at(c)
	s.mix(&y)
	return blend(&m, &y, e, x)
}

// Volume returns the volume at a temperature; range and errors are those of
// [Solution.Density].
func (s Solution) Volume(t units.Temperature) (units.Volume, error) {
	rho, err := s.densityAt("gravity.Solution.Volume", t)
	if err != nil {
		return units.Volume{}, err
	}
	return litres(1000 * s.total() / rho), nil
}
