package catalogue

import (
	"fmt"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func takesDrinkingLimit() arg[water.DrinkingLimit] {
	limits := water.DrinkingLimits()
	var names []string
	for _, l := range limits {
		names = append(names, fmt.Sprintf("%s %s: %s", l.Authority, l.Substance, l.Kind))
	}
	return picksBy("limit", "authority, substance and kind of the limit", limits, names...)
}

// dechlorinators is made once: a call reads it.
var dechlorinators = water.Dechlorinators()

// takesResidual is the chlorine of a tap water.
func takesResidual() arg[water.Residual] {
	residuals := []func(units.MassConcentration, water.ChlorineAs) water.Residual{water.FreeChlorine, water.Monochloramine}
	return of3(picksBy("residual", "what the tap water holds", residuals, "free chlorine", "chloramine"),
		picksBy("counted_as", "what its content is the mass of", upTo(water.ChlorineAs(1)), "Cl2", "itself"),
		takes("chlorine", units.MilligramPerLitre, "its content", 0, 50, 1),
		func(of func(units.MassConcentration, water.ChlorineAs) water.Residual, how water.ChlorineAs, c units.MassConcentration) (water.Residual, error) {
			return of(c, how), nil
		})
}

// waterTreatment are what is done to a water, and what it may hold.
func waterTreatment() []*Function {
	type (
		limit     = water.DrinkingLimit
		dissolved = water.Dropped
		dose      = water.Dechlorination
		sold      = pair[units.MolarConcentration, material.Dose]
	)
	return []*Function{
		entry("drinking_water_limit", "A limit for drinking water, of the year that the library states; not legal advice",
			"40 CFR 141 and 143 (2015); Directive (EU) 2020/2184, values as read in 98/83/EC; WHO Guidelines for drinking-water quality",
			takesDrinkingLimit(),
			numberFrom(func(l limit) float64 { return l.LeastPH }, "least", "", "least allowed, in the unit of the limit; 0 where there is none"),
			numberFrom(func(l limit) float64 {
				return l.Most.In(units.MilligramPerLitre) + l.MostPH + l.MostConductivity.In(units.MicrosiemensPerCentimetre) // of which one is not zero
			}, "most", "", "most allowed, in the unit of the limit")),
		entry("water_conductivity", "Estimate of the conductivity of a water of known pH",
			"Appelo, Specific conductance calculations (2010), recalled from memory; ISO 7888",
			of1(takesKnownPH(), water.Profile.Equilibrium),
			from(water.Equilibrium.Conductivity, "conductivity", units.MicrosiemensPerCentimetre, "conductivity at 25 °C"),
			from(water.Equilibrium.ConductivityAt20, "conductivity_at_20", units.MicrosiemensPerCentimetre, "conductivity at 20 °C")),
		heavy(entry("mineral_solubility", "What pure water dissolves of a mineral under a CO2 pressure, and its pH",
			"Plummer & Busenberg 1982 (calcite, aragonite); USGS data bases (gypsum, portlandite)",
			of3(picks("mineral", "the solid", upTo(water.Portlandite)), takes("temperature", units.Celsius, "temperature of the water", 0, 90, 25),
				takesCO2("partial pressure of CO2", 300, 0.0426).or(0),
				func(m water.Mineral, t units.Temperature, co2 units.AbsolutePressure) (dissolved, error) {
					p, err := water.NewProfile(t, units.CalciumCarbonate{})
					if err != nil {
						return dissolved{}, err
					}
					return p.AtRestWith(m, water.CO2LostTo(co2))
				}),
			numberFrom(func(d dissolved) float64 { return d.Amount.In(units.MillimolePerLitre) / 1000 / kilogramsPerLitre }, "dissolved",
				"mol/kg", "the solid dissolved in a kilogram of water"),
			from(func(d dissolved) units.MassConcentration { return d.Mass }, "mass", units.GramPerLitre, "the same as mass in a litre"),
			numberFrom(func(d dissolved) float64 { return d.Equilibrium.PH() }, "ph", "", "pH at rest"))),
		heavy(entry("dechlorination_dose", "Dose that takes free chlorine or chloramine out of a volume of tap water",
			"stoichiometry; field excess of a tenth, AWWA field guide, table 7-2",
			of3(takesResidual(), takes("volume", units.Litre, "the water", 0.001, 1e6, 60), picks("agent", "what takes the chlorine out", dechlorinators),
				func(r water.Residual, v units.Volume, agent material.Material) (dose, error) {
					return water.Profile{}.Dechlorinate(agent, r, v)
				}),
			from(func(d dose) units.Mass { return d.Least }, "least", units.Milligram, "the dose by stoichiometry"),
			from(func(d dose) units.Mass { return d.Dose }, "dose", units.Milligram, "the dose with a tenth more"),
			stated(func(d dose) float64 { return -d.Water.Alkalinity().In(units.MilligramPerLitreCaCO3) }, "alkalinity_used", units.MilligramPerLitreCaCO3,
				"alkalinity that the reaction takes"))),
		heavy(entry("acid_as_sold", "Mass and volume of an acid as sold that hold an amount of pure acid", atomicWeights,
			of4(takesAcid(), takes("share", units.Percent, "pure acid by mass", 0.1, 100, 88), takes("density", units.GramPerMillilitre, "density of it", 0.9, 2, 1.206),
				takes("amount", units.Millimole, "pure acid wanted", 0, 1e6, 150).or(1000),
				func(a water.Acid, share units.Share, d units.Density, n units.Amount) (sold, error) {
					s, err := a.AsSold(share, d)
					if err != nil {
						return sold{}, err
					}
					dose, err := a.Dose(n, s)
					return sold{as(units.MolePerLitre, d.In(units.KilogramPerCubicMetre)*share.In(units.Fraction)/a.MolarMass().In(units.GramPerMole)), dose}, err
				}),
			from(func(s sold) units.MolarConcentration { return s.a }, "molarity", units.MolePerLitre, "pure acid in a litre of it"),
			from(func(s sold) units.Mass { return s.b.Mass }, "mass", units.Gram, "mass of it that holds the amount"),
			from(func(s sold) units.Volume { return s.b.Volume() }, "volume", units.Millilitre, "volume of it that holds the amount"))),
		entry("acidity_as", "A titratable acidity expressed as another acid", "molar mass over the acid hydrogens; "+atomicWeights,
			of3(takes("acidity", units.GramPerLitre, "the acidity", 0, 1000, 6), takesAcid().named("from", "the acid it is stated as"),
				takesAcid().named("to", "the acid wanted"), water.ConvertAcidity),
			gives("converted", units.GramPerLitre, "the acidity as the acid wanted")),
	}
}
