package carbonation

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// Purge is a vessel rid of air with CO2.
type Purge struct {
	Air    units.Share // of the gas that is left air
	Oxygen units.Share // of the gas that is left, by volume
	Gas    units.Mass  // CO2 used

	Cautions caution.List
}

const purgeRange = "purging a vessel"

const mostRounds, mostPurge = 1000, 1000 // kPa gauge

// FillAndVent returns what rounds of filling to a gauge pressure and venting to the
// atmosphere leave of the air.
//
//   - Source: definition: (p0/p1)^n after n rounds, absolute pressures, gas well mixed;
//     CO2 used by [GasDensity].
//   - Range: 0 to 1000 rounds, 0 to 1000 kPa gauge, 0 to 40 °C, 1 mL to 10,000 m³;
//     otherwise the error is a [*units.RangeError].
//   - Units: gauge in the atmosphere given; oxygen by volume, 20.95 % of air.
//   - Uncertainty: mixing; CO2 let in gently at the bottom pushes air out better.
func FillAndVent(volume units.Volume, t units.Temperature, to units.GaugePressure, rounds int, outside units.Atmosphere) (Purge, error) {
	const fn = "carbonation.FillAndVent"
	if err := limit.Check(fn, "rounds", float64(rounds), "", 0, mostRounds, purgeRange); err != nil {
		return Purge{}, err
	}
	if err := limit.Check(fn, "pressure", to.In(units.KilopascalGauge), "kPa gauge", 0, mostPurge, purgeRange); err != nil {
		return Purge{}, err
	}
	litres, T, err := purgeVessel(fn, volume, t)
	if err != nil {
		return Purge{}, err
	}
	p0 := outside.Pressure().In(units.Kilopascal)
	p1 := p0 + to.In(units.KilopascalGauge)
	// Each round takes in what the pressure step holds.
	used := float64(rounds) * (gasMass(T, p1, litres) - gasMass(T, p0, litres))
	return purged(math.Pow(p0/p1, float64(rounds)), used), nil
}

// RoundsFor returns how many rounds of filling and venting bring the oxygen down to
// a share of the gas.
//
//   - Source, units, uncertainty: as [FillAndVent].
//   - Range: oxygen 0.01 to 209476 ppm, 1 to 1000 kPa gauge; otherwise the error is a
//     [*units.RangeError].
func RoundsFor(oxygen units.Share, to units.GaugePressure, outside units.Atmosphere) (rounds int, err error) {
	const fn = "carbonation.RoundsFor"
	left := oxygen.In(units.PartPerMillion)
	if err := limit.Check(fn, "oxygen", left, "ppm", 0.01, 1e6*oxygenShare, purgeRange); err != nil {
		return rounds, err
	}
	if err := limit.Check(fn, "pressure", to.In(units.KilopascalGauge), "kPa gauge", 1, mostPurge, purgeRange); err != nil {
		return rounds, err
	}
	p0 := outside.Pressure().In(units.Kilopascal)
	n := math.Log(1e6*oxygenShare/left) / math.Log1p(to.In(units.KilopascalGauge)/p0)
	return int(math.Ceil(n)), nil
}

// Flush returns what a stream of CO2 through the vessel leaves of the air.
//
//   - Source: definition: exp(−V) after V volumes of the vessel, gas well mixed.
//   - Range: 0 to 100 volumes, 0 to 40 °C, 1 mL to 10,000 m³; otherwise the error is a
//     [*units.RangeError].
//   - Units: volumes of gas at the pressure of the atmosphere.
//   - Uncertainty: mixing; without any the air is out after one volume.
func Flush(volume units.Volume, t units.Temperature, volumes float64, outside units.Atmosphere) (Purge, error) {
	const fn = "carbonation.Flush"
	if err := limit.Check(fn, "volumes of gas", volumes, "", 0, 100, purgeRange); err != nil {
		return Purge{}, err
	}
	litres, T, err := purgeVessel(fn, volume, t)
	if err != nil {
		return Purge{}, err
	}
	return purged(math.Exp(-volumes), gasMass(T, outside.Pressure().In(units.Kilopascal), volumes*litres)), nil
}

func purgeVessel(fn string, volume units.Volume, t units.Temperature) (litres, T float64, err error) {
	litres = volume.In(units.Litre)
	if err := limit.Check(fn, "volume", litres, "L", leastVolume, mostVolume, purgeRange); err != nil {
		return litres, T, err
	}
	c := t.In(units.Celsius)
	if err := limit.Check(fn, "temperature", c, "°C", 0, 40, purgeRange); err != nil {
		return litres, T, err
	}
	return litres, c + chemistry.ZeroCelsius, nil
}

func purged(air, used float64) Purge {
	return Purge{
		Air: units.Fraction.Of(checked.Number(air)), Oxygen: units.Fraction.Of(checked.Number(oxygenShare * air)),
		Gas: units.Gram.Of(checked.Number(used)), Cautions: cautions(PressureVessel, Asphyxiation, Cylinder).list(),
	}
}
