package plan

import (
	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// inPack is what the sugar of a material turns into in a closed pack, as the batch has it.
func inPack(m material.Material) (gravity.Yield, error) {
	extract := units.Kilogram.Of(1)
	if sugar.Of(m).Sugar().IsZero() {
		m = material.Sucrose()
	}
	made, err := forward.InPack(kilograms(1 + sugar.Of(m).InversionGain().In(units.Fraction)))
	if err != nil {
		return gravity.Yield{}, err
	}
	return made.Yield(extract)
}

// sucroseInPack is that of a flavouring.
var sucroseInPack, _ = inPack(material.Sucrose())

// gasInPack is the gas that sugar usually makes in a closed pack, of 1 of all that it can make.
var gasInPack = func() float64 {
	hexose := material.DextroseAnhydrous().Dose(units.Kilogram.Of(1))
	made, _ := forward.InPack(hexose.Mass)
	return kg(made.CO2) / kg(carbonation.CO2From(hexose))
}()

// airInPack is the share of the air of an open drink that is in it when it is closed.
var airInPack = forward.Usual().Air
