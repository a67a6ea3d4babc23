package catalogue

import (
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

const phSource = "charge balance; equilibria of package water; acids made after Pasteur 1860 and others (recalled from memory)"

var washFeed = []material.Material{
	material.DiammoniumPhosphate(), material.MonoammoniumPhosphate(), material.AmmoniumSulfate(), material.AutolysedYeast(),
}

// A sugarWash is a wash of white sugar, as its pH asks for it.
type sugarWash struct {
	strength    units.StrengthByVolume
	alkalinity  units.CalciumCarbonate
	potassium   units.MassConcentration
	nitrogen    units.MassConcentration
	source      material.Material
	temperature units.Temperature
}

func takesSugarWash() arg[sugarWash] {
	return of6(takes("strength", units.PercentVolume, "strength at the end", 0.5, 16, 4.6),
		takes("alkalinity", units.MilligramPerLitreCaCO3, "of the water", -50, 1000, 38),
		takes("potassium", units.MilligramPerLitre, "in the water", 0, 2000, 1).or(0),
		takes("nitrogen", units.MilligramPerLitre, "nitrogen fed, as N", 0, 500, 67),
		takesSource("source", "what brings it", washFeed),
		takes("temperature", units.Celsius, "of the ferment", 5, 35, 20).or(20),
		func(s units.StrengthByVolume, a units.CalciumCarbonate, k, n units.MassConcentration, m material.Material, t units.Temperature) (sugarWash, error) {
			return sugarWash{s, a, k, n, m, t}, nil
		})
}

// tank is a litre of it, with more in its water.
func (w sugarWash) tank(more ...water.Content) (ferment.Tank, error) {
	b, err := sugar.ForStrength(material.WhiteSugar(), w.strength, units.Litre.Of(1))
	if err != nil {
		return ferment.Tank{}, err
	}
	p, err := water.NewProfile(w.temperature, w.alkalinity, append([]water.Content{water.Potassium.At(w.potassium)}, more...)...)
	if err != nil {
		return ferment.Tank{}, err
	}
	f := ferment.Tank{Brew: b, Water: p, Additions: 3, Temperature: w.temperature}
	if n := w.nitrogen.In(units.MilligramPerLitre); n > 0 {
		f.Feed = []material.Dose{w.source.Dose(as(units.Milligram, n/w.source.Composition().Nitrogen().In(units.Fraction)))}
	}
	return f, nil
}

func takesTankOf() arg[ferment.Tank] {
	return of1(takesSugarWash(), func(w sugarWash) (ferment.Tank, error) { return w.tank() })
}

func takesBuffer() arg[material.Material] {
	return picks("buffer", "salt that holds the pH up", ferment.Buffers()).orOption("potassium bicarbonate")
}

// nutrientPH are the pH of a ferment and what holds it.
func nutrientPH() []*Function {
	type (
		point      = ferment.Point
		dose       = ferment.BufferDose
		correction = ferment.Correction
	)
	return []*Function{
		heavy(entry("ferment_ph",
			"pH of a sugar wash when a share of its sugar is used: at rest with air at 0 %, then under its own CO2, which saturates it at about 5 %", phSource,
			of4(takesTankOf(), takes("used", units.Percent, "of the sugar", 0, 100, 100).or(100),
				takes("buffer_dose", units.GramPerLitre, "of a buffer", 0, 20, 0.5).or(0), takesBuffer(),
				func(f ferment.Tank, used units.Share, held units.MassConcentration, salt material.Material) (point, error) {
					f.Buffer = salt.Dose(as(units.Gram, held.In(units.GramPerLitre)))
					return f.At(used)
				}),
			numberFrom(func(p point) float64 { return p.PH.Value }, "ph", "", "pH with the usual acids"),
			numberFrom(func(p point) float64 { return p.PH.Low }, "low", "", "pH with the most acids that yeast makes"),
			numberFrom(func(p point) float64 { return p.PH.High }, "high", "", "pH with the least"),
			from(func(p point) units.MassConcentration { return p.Nitrogen }, "nitrogen_left", units.MilligramPerLitre, "nitrogen in the liquid, as N"),
			from(func(p point) units.AbsolutePressure { return p.Gas }, "co2_pressure", units.Kilopascal, "CO2 that the liquid is at rest with"))),
		otherNeeds(),
		heavy(entry("buffer_for_ph", "buffer with which a sugar wash does not end below a pH", phSource,
			of3(takesTankOf(), takesNumber("floor", "", "pH not to fall below", 2.5, 6, 3.5), takesBuffer(),
				func(f ferment.Tank, floor float64, salt material.Material) (dose, error) {
					return f.BufferFor(salt, floor)
				}),
			inALitre(func(d dose) units.Mass { return d.Mass.Value }, "dose", "buffer with the usual acids, on the finished volume"),
			inALitre(func(d dose) units.Mass { return d.Mass.Low }, "low", "with the least acids"),
			inALitre(func(d dose) units.Mass { return d.Mass.High }, "high", "with the most"))),
		heavy(entry("buffer_for_stuck_ferment", "buffer with which a ferment that stopped at a measured pH ends at another", phSource,
			of5(takesTankOf(), takes("used", units.Percent, "of the sugar, when it stopped", 0.1, 100, 50), takesNumber("measured", "", "pH measured", 2, 6, 2.8),
				takesNumber("target", "", "pH not to fall below, now or at the end", 2, 6.5, 3.6), takesBuffer(),
				func(f ferment.Tank, used units.Share, measured, target float64, salt material.Material) (correction, error) {
					return f.Correct(salt, used, measured, target)
				}),
			inALitre(func(c correction) units.Mass { return c.Dose.Mass.Value }, "dose", "buffer, on the finished volume; add half and measure again"),
			numberFrom(func(c correction) float64 { return c.End.Value }, "end_ph", "", "pH when the rest of the sugar has fermented"),
			numberFrom(func(c correction) float64 { return c.Now.Value }, "now_ph", "", "pH once the dose is stirred in"))),
	}
}

// inALitre is a mass of a result, which is that of a litre, as a concentration.
func inALitre[T any](get func(T) units.Mass, name, meaning string) result[T] {
	return stated(func(v T) float64 { return get(v).In(units.Gram) }, name, units.GramPerLitre, meaning)
}

// otherNeeds is what yeast wants beside nitrogen in a sugar wash, a pair of outputs for each.
func otherNeeds() *Function {
	type needs = []ferment.OtherNeed
	var outputs []result[needs]
	for i, name := range [...]string{"phosphorus", "potassium", "magnesium", "zinc", "thiamine"} { // without the other vitamins, which no feed states
		outputs = append(outputs,
			from(func(n needs) units.MassConcentration { return n[i].Need.Value }, name+"_need", units.MilligramPerLitre, "known within a factor of two"),
			from(func(n needs) units.MassConcentration { return n[i].Have }, name+"_brought", units.MilligramPerLitre, "by water and feed"))
	}
	return heavy(entry("yeast_other_needs", "minerals and thiamine that yeast needs in a sugar wash, and what water and feed bring of them; sugar brings none",
		"phosphorus of dry yeast and Kudo, Vagnoli & Bisson 1998 (recalled from memory); Nobis et al. 2022 (read); magnesium and thiamine common "+
			"practice, no source",
		of3(takesSugarWash(), takes("magnesium", units.MilligramPerLitre, "in the water", 0, 1000, 5).or(0),
			takes("zinc", units.MilligramPerLitre, "in the water", 0, 100, 0).or(0),
			func(w sugarWash, magnesium, zinc units.MassConcentration) (needs, error) {
				f, err := w.tank(water.Magnesium.At(magnesium), water.Zinc.At(zinc))
				if err != nil {
					return nil, err
				}
				return f.OtherNeeds()
			}),
		outputs...))
}
