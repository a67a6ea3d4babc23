package must

import (
	"cmp"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// TitrationPoint is a point of a titration curve.
type TitrationPoint struct {
	PH   float64
	Base units.EquivalentConcentration // sodium hydroxide added, for a litre of the drink
}

// Titrate returns the titration curve of the drink with sodium hydroxide, from its own pH to
// end in equal steps of pH, both ends among the points. The volume of the lye is not
// counted: per litre of the drink, as it was.
//
// Errors are a [*units.RangeError]: an end below the drink's pH or above 10, fewer than 2
// points or more than 1000, and those of [water.Profile.AlkalinityAt].
//
//   - Source: electroneutrality at each pH, the sodium counted.
func (d Drink) Titrate(end float64, points int) ([]TitrationPoint, error) {
	const fn = "must.Drink.Titrate"
	if err := limit.Check(fn, "end of the titration", end, "", d.ph, 10, "from the pH of the drink"); err != nil {
		return nil, err
	}
	if err := limit.Check(fn, "points", float64(points), "", 2, 1000, "a curve"); err != nil {
		return nil, err
	}
	curve := make([]TitrationPoint, points)
	var base float64
	var like water.Series
	lye := material.SodiumHydroxide()
	for k := range curve {
		ph := d.ph + (end-d.ph)*float64(k)/float64(points-1)
		for range mostRounds {
			p, err := d.water.Add(units.Litre.Of(1), lye.Dose(units.Milligram.Of(checked.Number(base*lye.MolarMass().In(units.GramPerMole)))))
			with, also := p.WithEthanol(d.Strength())
			alk, last := like.AlkalinityAt(with, ph, units.AbsolutePressure{})
			if err := cmp.Or(err, also, last); err != nil {
				return nil, limit.Named(fn, err)
			}
			was := base
			base = max(0, alk.In(units.MilligramPerLitreCaCO3)/caCO3-alkalinity(d.water))
			if math.Abs(base-was) < closely {
				break
			}
		}
		curve[k] = TitrationPoint{ph, units.MilliequivalentPerLitre.Of(checked.Number(base))}
	}
	return curve, nil
}
