package carbonation

import (
	"cmp"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// Priming is what to add to a drink for bottles.
type Priming struct {
	Primer material.Dose // as weighed, for the whole volume

	Target     units.CarbonDioxideContent // asked for
	Dissolved  units.CarbonDioxideContent // there already
	FromSugar  units.CarbonDioxideContent // what the sugar still in the drink will make
	FromPrimer units.CarbonDioxideContent // what the primer makes
	Final      units.CarbonDioxideContent // all three together

	Cautions caution.List
}

// PrimingSugar returns how much of a primer brings a drink to the content
// target. What is dissolved already (see [Liquid.ResidualContent]) and the fermentable
// sugar still in the drink both count; only a drink at its dry floor has none.
//
// The content is that of the liquid before any gas goes to the head-space. Bottles
// filled to 4 % head-space give 2 to 4 % of it away, and less with a smaller one.
//
//   - Source: Gay-Lussac's equation with IUPAC atomic weights 2021: 0.51428 g CO2
//     from a gram of sucrose, 0.48856 of dextrose, 0.44415 of its monohydrate.
//   - Range: target to 15 g/L, dissolved below 15 g/L, sugar left to 30 g/L, a
//     volume above zero; beyond it, or with what does not ferment, the error is a
//     [*units.RangeError].
//   - Units: contents in g/L of liquid at 20 °C; sugar left as sucrose; mass as
//     weighed.
//   - Uncertainty: less gas from the primer than counted, about 3 % where yeast does not
//     grow (glycerol and acids take their part), up to 10 % where it does; up to a fifth of dissolved more, see [Liquid.ResidualContent].
func PrimingSugar(primer material.Material, target, dissolved units.CarbonDioxideContent, sugarLeft units.MassConcentration,
	volume units.Volume) (Priming, error) {
	const fn, usual = "carbonation.PrimingSugar", "bottles hold less"
	want, have := target.In(units.GramCO2PerLitre), dissolved.In(units.GramCO2PerLitre)
	left, litres := sugarLeft.In(units.GramPerLitre), volume.In(units.Litre)
	if err := cmp.Or(
		limit.Check(fn, "target", want, "g/L", 0, 15, usual),
		limit.Check(fn, "dissolved CO2", have, "g/L", 0, 15, usual),
		limit.Check(fn, "sugar left", left, "g/L", 0, 30, "more makes bottles burst"),
		limit.Check(fn, "volume", litres, "L", 1e-6, 1e9, "a drink has a volume"),
	); err != nil {
		return Priming{}, err
	}
	gas, err := gasOf(fn, primer)
	if err != nil {
		return Priming{}, err
	}
	still := left * perSucrose
	need := want - have - still
	p := Priming{
		Target: target, Dissolved: dissolved, FromSugar: grams(still),
		Cautions: cautions(PressureVessel).with(SugarCanFerment, left > 0).with(noSugarNeeded, need <= 0).list(),
	}
	if need <= 0 {
		need = 0
	}
	p.FromPrimer = grams(need)
	p.Final = grams(have + still + need)
	p.Primer = primer.Dose(units.Gram.Of(checked.Number(need * litres / gas)))
	return p, nil
}

func grams(g float64) units.CarbonDioxideContent { return units.GramCO2PerLitre.Of(checked.Number(g)) }
