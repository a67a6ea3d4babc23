package water

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Boil is what a boil can make of a water: a range, as chalk that has come above
// saturation may stay dissolved, hang in the liquid or settle on the kettle. Which of
// them it does is not computed; a drop test of the boiled water measures it.
type Boil struct {
	// Clear is the end where no chalk drops out: the CO2 is that of air, alkalinity and
	// calcium are as before.
	Clear Equilibrium
	// AtRest is the other end, calcite at equilibrium: the least alkalinity and calcium,
	// the most scale. Its amount is zero where the water holds all its chalk.
	AtRest Dropped
}

// BoiledAt returns both ends of what a boil does to a water, at its boiling temperature
// and in the air of the place. Where it boils above 90 °C, the end of the constants,
// the equilibrium is that of 90 °C: with the fits carried on to 100 °C calcite is a
// seventh less soluble, 2 to 3 mg/L of a usual water.
//
// Errors are a [*units.RangeError]: a boiling temperature outside 60 to 105 °C, and as in
// [Profile.Closed].
//
//   - Source: [Profile.Under] at the CO2 of [AirCO2]; [Profile.AtRestWith] calcite.
//   - Uncertainty: 10 % of the calcite that stays dissolved at equilibrium; between the ends
//     all is possible. One person's drop test of a tap water of 262 mg/L as CaCO3, cooled and
//     settled, found 70 after 5 min, 45 after 10 and 39.5 after 15, 30 and 45 min.
func (p Profile) BoiledAt(boiling units.Temperature, air units.Atmosphere) (Boil, error) {
	const fn = "water.Profile.BoiledAt"
	t := boiling.In(units.Celsius)
	if err := limit.Check(fn, "boiling temperature", t, "°C", 60, 105, "water at 11,000 m, a strong wash at sea level"); err != nil {
		return Boil{}, err
	}
	p.t = min(t, hottest)
	gas := AirCO2(air)
	var clear Equilibrium
	if err := clear.under(fn, &p, gas); err != nil {
		return Boil{}, err
	}
	rest, err := p.settleMineral(fn, Calcite, CO2LostTo(gas), false)
	if err != nil {
		return Boil{}, err
	}
	return Boil{clear, rest}, nil
}

// Boiled is the water of [Boil.AtRest] at sea level.
func (p Profile) Boiled() (Dropped, error) {
	b, err := p.BoiledAt(units.Celsius.Of(100), units.Atmosphere{})
	if err != nil {
		return Dropped{}, limit.Named("water.Profile.Boiled", err)
	}
	return b.AtRest, nil
}

// Scale returns the mass of calcite of a volume, from none to this.
func (b Boil) Scale(volume units.Volume) units.Mass {
	return units.Milligram.Of(checked.Number(math.Max(0, b.AtRest.Mass.In(units.MilligramPerLitre)*volume.In(units.Litre))))
}

// AirCO2 returns the partial pressure of CO2 in open air, 420 µmol a mole: 43 Pa at sea
// level, 29 Pa at 3000 m.
//
//   - Source: X. Lan et al., Trends in globally-averaged CO2, NOAA Global Monitoring
//     Laboratory, mean of 2023 near 420, recalled from memory. Air indoors holds up to
//     three times as much.
func AirCO2(air units.Atmosphere) units.AbsolutePressure {
	return units.Kilopascal.Of(checked.Number(airShare * air.Pressure().In(units.Kilopascal)))
}

const (
	airShare = 420e-6
	hottest  = 90.0 // °C, the end of the constants
)
