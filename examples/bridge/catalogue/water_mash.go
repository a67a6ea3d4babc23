package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
	"example.org/zymase/water"
	"example.org/zymase/water/mash"
)

const mashSource = "deLange, MBAA TQ 52 (2015) 1 (proton balance, abstract); Kolbach 1953 (calcium and magnesium); malts by class read at second hand"

// takesMalt is a malt: a class, or what was measured.
func takesMalt(name string, class arg[mash.Class], mass arg[units.Mass]) arg[mash.Malt] {
	return of4(class, mass,
		takesNumber(name+"_ph", "", "its pH in distilled water, measured to 0.05; 0 for that of the class", 0, 7, 0).or(0),
		takesNumber(name+"_buffer", "mEq/(kg pH)", "its buffering, measured to 10 %; 0 for that of the class", 0, 150, 0).or(0),
		func(c mash.Class, m units.Mass, ph, buffer float64) (mash.Malt, error) {
			malt := c.Malt(m)
			if ph != 0 {
				malt.PH = evidence.Figure[float64]{Value: ph, Low: ph - 0.05, High: ph + 0.05}
			}
			if buffer != 0 {
				mmol := func(x float64) units.Amount { return as(units.Millimole, x) }
				malt.BufferPerKilogram = evidence.Figure[units.Amount]{Value: mmol(buffer), Low: mmol(buffer - 0.1*buffer), High: mmol(buffer + 0.1*buffer)}
			}
			return malt, nil
		})
}

func takesMash() arg[mash.Mash] {
	return of6(
		takesMalt("malt", picks("malt", "the malt by its class", mash.Classes()), takes("malt_mass", units.Kilogram, "mass of the malt", 0.001, 1e5, 4.5)),
		takesMalt("other_malt", picks("other_malt", "a second malt by its class", mash.Classes()).orOption(mash.Caramel.String()),
			takes("other_malt_mass", units.Kilogram, "mass of the second malt", 0, 1e5, 0.3).or(0)),
		takes("volume", units.Litre, "water in the mash", 0.001, 1e6, 15),
		takes("calcium", units.MilligramPerLitre, "calcium of the water, salts added", 0, 5000, 60).or(0),
		takes("magnesium", units.MilligramPerLitre, "magnesium of the water, salts added", 0, 5000, 8).or(0),
		takes("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity of the water, acid added", -5000, 5000, 120),
		func(first, second mash.Malt, v units.Volume, calcium, magnesium units.MassConcentration, alk units.CalciumCarbonate) (mash.Mash, error) {
			p, err := water.NewProfile(units.Celsius.Of(20), alk, water.Calcium.At(calcium), water.Magnesium.At(magnesium))
			m := mash.Mash{Water: p, Volume: v, Malts: []mash.Malt{first}}
			if !second.Mass.IsZero() {
				m.Malts = append(m.Malts, second)
			}
			return m, err
		})
}

// mashFunctions are the entries of package mash.
func mashFunctions() []*Function {
	type (
		rivals = []mash.Rival
		dose   = mash.Adjustment
	)
	const low, high = "low end of its band", "high end of its band"
	return []*Function{
		heavy(entry("mash_ph", "pH of a mash of one or two malts, cooled, with its band; and Kolbach's of the wort beside it", mashSource,
			of1(takesMash(), mash.Mash.Rivals),
			numberFrom(func(r rivals) float64 { return r[0].PH.Value }, "ph", "", "the pH"), numberFrom(func(r rivals) float64 { return r[0].PH.Low }, "low", "", low),
			numberFrom(func(r rivals) float64 { return r[0].PH.High }, "high", "", high),
			numberFrom(func(r rivals) float64 { return r[1].PH.Value }, "kolbach", "",
				"pH of the wort at 12 °P by residual alkalinity, its slope recalled from memory"))),
		heavy(entry("mash_acid_to_ph", "Pure acid that brings a mash to a pH, with its band", mashSource+"; "+equilibria,
			of3(takesMash(), takesAcid(), takesNumber("target_ph", "", "pH wanted, of a cooled sample", 4, 7, 5.4), mash.Mash.WithAcid),
			from(func(d dose) units.Mass { return d.Mass }, "mass", units.Gram, "the pure acid"),
			from(func(d dose) units.Mass { return d.Low }, "low", units.Gram, low), from(func(d dose) units.Mass { return d.High }, "high", units.Gram, high))),
	}
}
