package carbonation

import (
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// WortPriming is how much wort or juice to add to a drink for bottles.
type WortPriming struct {
	Volume units.Volume // of the wort or juice, for the whole volume of drink
	// Mixed is the volume of both together, in which the content is reached.
	Mixed      units.Volume
	Made       units.CarbonDioxideContent // CO2 from a litre of the wort alone
	FromSugar  units.CarbonDioxideContent // what the sugar still in the drink makes
	Final      units.CarbonDioxideContent
	Cautions   caution.List
	Dissolved  units.CarbonDioxideContent
	Fermenting units.MassConcentration // sugar in the mixture, as sucrose
}

// PrimeWithWort returns how much unfermented wort or juice, known by its own gravity,
// brings a drink to a content once its fermentable part has fermented. The wort adds
// volume too, and none of its own CO2.
//
//   - Source: gas balance V·have + x·g·f·0.51428 = (V + x)·target, with g the extract
//     of the wort in g/L at 20 °C from its gravity (ICUMSA SPS-4), f its fermentable
//     share; Gay-Lussac's equation as [PrimingSugar].
//   - Range: as [PrimingSugar]; a wort above 1.002 whose gas exceeds the target;
//     otherwise the error is a [*units.RangeError].
//   - Units: contents in g/L of liquid at 20 °C, volumes at 20 °C.
//   - Uncertainty: the fermentable share; malt worts 60 to 80 %, apple juice near
//     100 % of its extract less acids.
func PrimeWithWort(wort gravity.Gravity, fermentable units.Share, target, dissolved units.CarbonDioxideContent, sugarLeft units.MassConcentration,
	volume units.Volume) (WortPriming, error) {
	const fn = "carbonation.PrimeWithWort"
	// The checks of what PrimingSugar takes, with any primer.
	dry, err := PrimingSugar(material.Sucrose(), target, dissolved, sugarLeft, volume)
	if err != nil {
		return WortPriming{}, limit.Named(fn, err)
	}
	if err := limit.Check(fn, "gravity of the wort", wort.SG(), "SG", 1.002, 1.4, "wort, juice or syrup"); err != nil {
		return WortPriming{}, err
	}
	if err := limit.Check(fn, "fermentable share", fermentable.In(units.Percent), "%", 1, 100, "a primer ferments"); err != nil {
		return WortPriming{}, err
	}
	extract := wort.Extract().In(units.DegreePlato) / 100 * wort.Density().In(units.KilogramPerCubicMetre) // g/L
	sugar := extract * fermentable.In(units.Fraction)
	made := perSucrose * sugar
	want, litres := target.In(units.GramCO2PerLitre), volume.In(units.Litre)
	if err := limit.Check(fn, "CO2 from the wort", made, "g/L", 1.2*want, 1e3, "a wort that makes more gas than wanted"); err != nil {
		return WortPriming{}, err
	}
	still := dry.FromSugar.In(units.GramCO2PerLitre)
	have := dissolved.In(units.GramCO2PerLitre) + still
	var x float64
	if want > have {
		x = litres * (want - have) / (made - want)
	}
	all := litres + x
	return WortPriming{
		Volume: units.Litre.Of(checked.Number(x)), Mixed: units.Litre.Of(checked.Number(all)),
		Made: grams(made), FromSugar: dry.FromSugar, Dissolved: dissolved,
		Final:      grams((litres*have + x*made) / all),
		Fermenting: units.GramPerLitre.Of(checked.Number((litres*still/perSucrose + x*sugar) / all)),
		Cautions:   dry.Cautions,
	}, nil
}
