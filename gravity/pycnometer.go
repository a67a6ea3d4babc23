package gravity

import (
	"cmp"

	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// Pycnometer returns the density of a liquid from three weighings of one flask: dry,
// full of water and full of the liquid, the last two at the same temperature. The
// buoyancy of the air is taken out; the glass drops out.
//
//   - Source: ρ = (m − m0)/(w − m0)·(ρw − 1.2) + 1.2 kg/m³, the ratio of two weights in
//     air (conventional air, OIML D 28:2004, read in ordinances), water as [WaterDensity].
//   - Range: 0 to 100 °C; water of 1 g or more in the flask; a density of 500 to 2000
//     kg/m³. Otherwise the error is a [*units.RangeError].
//   - Uncertainty: 0.001 g in a 50 mL flask is 0.03 kg/m³; 0.1 K in one filling 0.02 kg/m³
//     at 20 °C.
func Pycnometer(empty, water, liquid units.Mass, t units.Temperature) (units.Density, error) {
	const fn = "gravity.Pycnometer"
	m0, w, m, c := empty.In(units.Gram), water.In(units.Gram), liquid.In(units.Gram), t.In(units.Celsius)
	if err := cmp.Or(
		limit.Check(fn, "temperature", c, "°C", 0, 100, "Bettin & Spieweck 1990"),
		limit.Check(fn, "empty flask", m0, "g", 0, 1e6, "a mass"),
		limit.Check(fn, "water in the flask", w-m0, "g", 1, 1e6, "a flask of water"),
	); err != nil {
		return units.Density{}, err
	}
	rho := InAir.density((m-m0)/(w-m0), waterAt(c))
	if err := limit.Check(fn, "density", rho, "kg/m³", 500, 2000, "a liquid here"); err != nil {
		return units.Density{}, err
	}
	return kgPerM3(rho), nil
}

// FromDensityAt returns the gravity 20/20 °C of a liquid whose density was taken at
// another temperature, in vacuum: a density meter, a pycnometer. A fermented liquid
// expands more than wort of the same gravity, so its strength is asked for.
//
//   - Source: as [Hydrometer.Correct], without the glass.
//   - Range: as [Hydrometer.Correct].
//   - Uncertainty: a strength wrong by 1 % vol adds 0.0002 at 30 °C.
func FromDensityAt(d units.Density, strength units.StrengthByVolume, t units.Temperature) (Gravity, error) {
	return gravityAt("gravity.FromDensityAt", "density", "kg/m³", d.In(units.KilogramPerCubicMetre), 1, t, strength)
}

// gravityAt finds the liquid whose density at t times per is the reading.
func gravityAt(fn, what, unit string, reading, per float64, t units.Temperature, strength units.StrengthByVolume) (Gravity, error) {
	c, v := t.In(units.Celsius), strength.In(units.PercentVolume)
	mostT, mostX, source := 100.0, 0.6, sourceSPS4
	if v > 0 {
		mostT, mostX, source = 40, 0.3, sourceR22
	}
	if err := limit.Check(fn, "temperature", c, "°C", 0, mostT, source); err != nil {
		return Gravity{}, err
	}
	if err := limit.Check(fn, "strength", v, "% vol", 0, 23, "Tabarié's relation to 18 % mass, Hackbarth 2011"); err != nil {
		return Gravity{}, err
	}
	w := warm{v: v / 100 * pureEthanol20}
	w.y.at(c)
	if v > 0 {
		w.m.at(c)
	}
	lo, hi := w.density(leastApparent)*per, w.density(mostX)*per
	if err := limit.Check(fn, what, reading, unit, lo, hi, "−10 to 60 °P, 30 °P with ethanol"); err != nil {
		return Gravity{}, err
	}
	x, err := numeric.Root(func(x float64) float64 { return w.density(x)*per - reading }, leastApparent, mostX, sharp)
	if err != nil { // not reached: the reading lies between lo and hi
		return Gravity{}, err
	}
	_, rho := w.at20(x)
	return one(clamp(rho/syrup20[0], lowestGravity, highestGravity)), nil
}
