package plan

import (
	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// inPack is what sugar usually turns into in a closed pack, as the batch has it.
type inPack struct {
	primer  gravity.Yield // of the primer
	sucrose gravity.Yield // of a flavouring
	gas     float64       // of 1 of all that sugar can make
	air     float64       // of 1 of what an open drink holds, in it when it is closed
}

// usuallyInPack is that of a primer; one without sugar counts as sucrose.
func usuallyInPack(primer material.Material) (u inPack, err error) {
	of := func(m material.Material) (y gravity.Yield) {
		made, bad := forward.InPack(kilograms(1 + sugar.Of(m).InversionGain().In(units.Fraction)))
		if bad == nil {
			y, bad = made.Yield(units.Kilogram.Of(1))
		}
		if err == nil {
			err = bad
		}
		return y
	}
	if sugar.Of(primer).Sugar().IsZero() {
		primer = material.Sucrose()
	}
	u.primer, u.sucrose, u.air = of(primer), of(material.Sucrose()), forward.Usual().Air
	u.gas = u.sucrose.CO2().In(units.Fraction) / kg(carbonation.CO2From(material.Sucrose().Dose(units.Kilogram.Of(1))))
	return u, err
}
