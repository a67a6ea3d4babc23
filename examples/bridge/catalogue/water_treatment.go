package catalogue

import (
	"fmt"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

func limitChoice() Input {
	var names []string
	for _, l := range water.DrinkingLimits() {
		names = append(names, fmt.Sprintf("%s %s: %s", l.Authority, l.Substance, l.Kind))
	}
	return choice("limit", "authority, substance and kind of the limit", names...)
}

// drinkingLimits is made once: a call reads it.
var drinkingLimits = water.DrinkingLimits()

// dechlorinators is made once: a call reads it.
var dechlorinators = water.Dechlorinators()

func agentChoice() Input {
	return choice("agent", "what takes the chlorine out", wordsOf(dechlorinators)...)
}

func mineralChoice() Input {
	var names []string
	for m := water.Calcite; m <= water.Portlandite; m++ {
		names = append(names, m.String())
	}
	return choice("mineral", "the solid", names...)
}

// waterTreatment are what is done to a water, and what it may hold.
func waterTreatment() []Function {
	return []Function{
		{
			Name:    "drinking_water_limit",
			Meaning: "A limit for drinking water, of the year that the library states; not legal advice",
			Source:  "40 CFR 141 and 143 (2015); Directive (EU) 2020/2184, values as read in 98/83/EC; WHO Guidelines for drinking-water quality",
			Inputs:  []Input{limitChoice()},
			Outputs: []Output{
				pure("least", "", "least allowed, in the unit of the limit; 0 where there is none"),
				pure("most", "", "most allowed, in the unit of the limit"),
			},
			call: func(in, out []float64) error {
				l := &drinkingLimits[int(in[0])]
				out[0], out[1] = l.Least, l.Most
				return nil
			},
		},
		{
			Name:    "water_conductivity",
			Meaning: "Estimate of the conductivity of a water of known pH",
			Source:  "Appelo, Specific conductance calculations (2010), recalled from memory; ISO 7888",
			Inputs:  waterOfKnownPH(),
			Outputs: []Output{
				out("conductivity", units.MicrosiemensPerCentimetre, "conductivity at 25 °C"),
				out("conductivity_at_20", units.MicrosiemensPerCentimetre, "conductivity at 20 °C"),
			},
			call: func(in, out []float64) error {
				p, err := knownPH(in)
				if err != nil {
					return err
				}
				e, err := p.Equilibrium()
				if err != nil {
					return err
				}
				out[0] = e.Conductivity().In(units.MicrosiemensPerCentimetre)
				out[1] = e.ConductivityAt20().In(units.MicrosiemensPerCentimetre)
				return nil
			},
		},
		{
			Name:    "mineral_solubility",
			Meaning: "What pure water dissolves of a mineral under a CO2 pressure, and its pH",
			Source:  "Plummer & Busenberg 1982 (calcite, aragonite); USGS data bases (gypsum, portlandite)",
			Inputs: []Input{
				mineralChoice(), in("temperature", units.Celsius, "temperature of the water", 0, 90, 25),
				in("co2_pressure", units.Kilopascal, "partial pressure of CO2", 0, 300, 0.0426).or(0),
			},
			Outputs: []Output{
				pure("dissolved", "mol/kg", "the solid dissolved in a kilogram of water"),
				out("mass", units.GramPerLitre, "the same as mass in a litre"),
				pure("ph", "", "pH at rest"),
			},
			call: func(in, out []float64) error {
				p, err := water.NewProfile(as(units.Celsius, in[1]), units.CalciumCarbonate{})
				if err != nil {
					return err
				}
				d, err := p.AtRestWith(water.Mineral(in[0]), water.CO2LostTo(as(units.Kilopascal, in[2])))
				if err != nil {
					return err
				}
				out[0] = -d.Amount / 1000 / kilogramsPerLitre
				out[1], out[2] = d.Mass.In(units.GramPerLitre), d.Equilibrium.PH()
				return nil
			},
			heavy: true,
		},
		{
			Name:    "dechlorination_dose",
			Meaning: "Dose that takes free chlorine or chloramine out of a volume of tap water",
			Source:  "stoichiometry; field excess of a tenth, AWWA field guide, table 7-2",
			Inputs: []Input{
				choice("residual", "what the tap water holds", "free chlorine", "chloramine"),
				choice("counted_as", "what its content is the mass of", "Cl2", "itself"),
				in("chlorine", units.MilligramPerLitre, "its content", 0, 50, 1),
				in("volume", units.Litre, "the water", 0.001, 1e6, 60), agentChoice(),
			},
			Outputs: []Output{
				out("least", units.Milligram, "the dose by stoichiometry"),
				out("dose", units.Milligram, "the dose with a tenth more"),
				out("alkalinity_used", units.MilligramPerLitreCaCO3, "alkalinity that the reaction takes"),
			},
			call: func(in, out []float64) error {
				c, how := as(units.MilligramPerLitre, in[2]), water.ChlorineAs(in[1])
				r := water.FreeChlorine(c, how)
				if in[0] == 1 {
					r = water.Monochloramine(c, how)
				}
				d, err := water.Profile{}.Dechlorinate(dechlorinators[int(in[4])], r, as(units.Litre, in[3]))
				out[0], out[1] = d.Least.In(units.Milligram), d.Dose.In(units.Milligram)
				out[2] = -d.Water.Alkalinity().In(units.MilligramPerLitreCaCO3)
				return err
			},
			heavy: true,
		},
		{
			Name:    "acid_as_sold",
			Meaning: "Mass and volume of an acid as sold that hold an amount of pure acid",
			Source:  atomicWeights,
			Inputs: []Input{
				acidChoice(), in("share", units.Percent, "pure acid by mass", 0.1, 100, 88),
				in("density", units.GramPerMillilitre, "density of it", 0.9, 2, 1.206),
				in("amount", units.Millimole, "pure acid wanted", 0, 1e6, 150).or(1000),
			},
			Outputs: []Output{
				out("molarity", units.MolePerLitre, "pure acid in a litre of it"),
				out("mass", units.Gram, "mass of it that holds the amount"),
				out("volume", units.Millilitre, "volume of it that holds the amount"),
			},
			call: func(in, out []float64) error {
				s, err := water.NewSold(water.Acid(in[0]), as(units.Percent, in[1]), as(units.GramPerMillilitre, in[2]))
				n := as(units.Millimole, in[3])
				out[0], out[1], out[2] = s.Molarity().In(units.MolePerLitre), s.Mass(n).In(units.Gram), s.Volume(n).In(units.Millilitre)
				return err
			},
		},
		{
			Name:    "acidity_as",
			Meaning: "A titratable acidity expressed as another acid",
			Source:  "molar mass over the acid hydrogens; " + atomicWeights,
			Inputs: []Input{
				in("acidity", units.GramPerLitre, "the acidity", 0, 1000, 6), renamed(acidChoice(), "from", "the acid it is stated as"),
				renamed(acidChoice(), "to", "the acid wanted"),
			},
			Outputs: []Output{out("converted", units.GramPerLitre, "the acidity as the acid wanted")},
			call: func(in, out []float64) error {
				c, err := water.ConvertAcidity(as(units.GramPerLitre, in[0]), water.Acid(in[1]), water.Acid(in[2]))
				out[0] = c.In(units.GramPerLitre)
				return err
			},
		},
	}
}

func renamed(p Input, name, meaning string) Input {
	p.Name, p.Meaning = name, meaning
	return p
}
