package gravity

import (
	"cmp"
	"math"

	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// Reference is the pair of temperatures that a specific gravity stands for: the
// liquid at the first over water at the second.
type Reference int

// References in use.
const (
	At20    Reference = iota // 20/20 °C: this package, most hydrometers today
	At60F                    // 60/60 °F, 15.56/15.56 °C: US and older British instruments
	At20On4                  // 20/4 °C: density in g/mL, near enough
	At15                     // 15/15 °C: older European tables
	At17p5                   // 17.5/17.5 °C: older saccharometers
	At25                     // 25/25 °C: pharmacopoeias
	At15On4                  // 15/4 °C: the international Baumé scale
)

// sixtyFahrenheit is 60 °F in °C.
const sixtyFahrenheit = (60.0 - 32) / 1.8

var referenceTemperatures = [...]struct{ liquid, water float64 }{
	At20:    {20, 20},
	At60F:   {sixtyFahrenheit, sixtyFahrenheit},
	At20On4: {20, 4},
	At15:    {15, 15},
	At17p5:  {17.5, 17.5},
	At25:    {25, 25},
	At15On4: {15, 4},
}

var references = choice.Of[Reference]("gravity.Reference", "reference", "20/20 °C", "15.56/15.56 °C", "20/4 °C", "15/15 °C",
	"17.5/17.5 °C", "25/25 °C", "15/4 °C")

// String returns the name: "20/20 °C".
func (r Reference) String() string { return references.Text(r) }

// MarshalText is [Reference.String]; an unknown reference is a [*units.NameError].
func (r Reference) MarshalText() ([]byte, error) { return references.Marshal(r) }

// UnmarshalText reads what [Reference.MarshalText] writes; other text is a [*units.NameError].
func (r *Reference) UnmarshalText(text []byte) error { return references.Unmarshal(text, r) }

// Temperatures returns that of the liquid and that of the water. An unknown reference is a
// [*units.NameError].
func (r Reference) Temperatures() (liquid, water units.Temperature, err error) {
	if err := references.Check("gravity.Reference.Temperatures", r); err != nil {
		return liquid, water, err
	}
	t := referenceTemperatures[r]
	return celsius(t.liquid), celsius(t.water), nil
}

// SpecificGravity returns the specific gravity of the liquid for a reference, in
// vacuum or in air.
//
//   - Source: [Solution.Density] and [WaterDensity] at the two temperatures; in air
//     both less 1.2 kg/m³.
//   - Range: every solution. An unknown reference or air is a [*units.NameError].
//   - Uncertainty: [Solution.DensityUncertainty].
func (s Solution) SpecificGravity(r Reference, a Air) (float64, error) {
	if err := basis("gravity.Solution.SpecificGravity", r, a); err != nil {
		return 0, err
	}
	t := referenceTemperatures[r]
	return a.ratio(s.rho(t.liquid), waterAt(t.water)), nil // every reference is within 0 to 40 °C
}

// As returns the gravity as another reference or air has it, for a liquid of that
// kind: a sucrose solution from 1.000 up, a mixture of ethanol and water below. For a
// liquid of known composition use [Solution.SpecificGravity].
//
//   - Source: ICUMSA SPS-4 (1994), OIML R 22 (1973) and the water of [WaterDensity].
//   - Range: every gravity. An unknown reference or air is a [*units.NameError].
//   - Uncertainty: the expansion of another liquid of that gravity differs: beer of
//     1.010 and 5 % vol comes out right within 0.0001 at 15/15 °C.
func (g Gravity) As(r Reference, a Air) (float64, error) {
	if err := basis("gravity.Gravity.As", r, a); err != nil {
		return 0, err
	}
	return g.as(r, a), nil
}

// basis refuses what is no reference or no air.
func basis(fn string, r Reference, a Air) error {
	return cmp.Or(references.Check(fn, r), airs.Check(fn, a))
}

func (g Gravity) as(r Reference, a Air) float64 {
	t := referenceTemperatures[r]
	return a.ratio(g.densityAs(t.liquid), waterAt(t.water))
}

// densityAs returns the density at t of the plain liquid of this gravity.
func (g Gravity) densityAs(t float64) float64 {
	if g.excess >= 0 {
		y := syrupAt(t)
		return y.density(syrup20.fraction((1 + g.excess) * syrup20[0]))
	}
	m := mixtureAt(t)
	p := mixture20.fraction(max((1+g.excess)*mixture20[0], ethanol20), ethanol20)
	return m.density(p) / m[0] * waterAt(t)
}

// FromReference returns the gravity 20/20 °C in vacuum of a specific gravity that
// was taken for another reference or in air: the inverse of [Gravity.As], with its
// source and uncertainty.
//
//   - Range: 0.791 to 1.414, where the reference has pure ethanol and 80 °P as far apart;
//     beyond it the error is a [*units.RangeError]. An unknown reference or air is a
//     [*units.NameError].
func FromReference(sg float64, r Reference, a Air) (Gravity, error) {
	const fn = "gravity.FromReference"
	if err := basis(fn, r, a); err != nil {
		return Gravity{}, err
	}
	if err := limit.Check(fn, "specific gravity", sg, "", 0.791, 1.414, sourceScale); err != nil {
		return Gravity{}, err
	}
	if math.Abs(sg-Gravity{}.as(r, a)) < sharp {
		return Gravity{}, nil // water, not a rounding less
	}
	f := func(x float64) float64 { return one(x).as(r, a) - sg }
	x, err := numeric.Root(f, ethanol20/mixture20[0], highestGravity, sharp)
	if err != nil {
		return Gravity{}, limit.Check(fn, "specific gravity", sg, "", one(ethanol20/mixture20[0]).as(r, a), one(highestGravity).as(r, a), sourceScale)
	}
	return one(x), nil
}
