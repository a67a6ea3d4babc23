package catalogue

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// usualSalts are those that a brewer's shelf holds, in the order of the outputs.
var usualSalts = []water.Stock{
	{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}, {Salt: material.EpsomSalt()}, {Salt: material.MagnesiumChlorideHexahydrate()},
	{Salt: material.TableSalt()}, {Salt: material.BakingSoda()}, {Salt: material.PotassiumChloride()}, {Salt: material.PotassiumBicarbonate()},
}

func doseOutputs() []Output {
	var list []Output
	for _, name := range []string{"gypsum", "calcium_chloride_dihydrate", "epsom_salt", "magnesium_chloride_hexahydrate",
		"table_salt", "baking_soda", "potassium_chloride", "potassium_bicarbonate"} {
		list = append(list, out(name, units.Gram, "dose for the volume"))
	}
	return append(list, pure("deviation", "", "root of the sum of squares of what the targets are off, mg/L"))
}

func targetInputs() []Input {
	list := waterIons(true)
	for _, ion := range []string{"calcium", "magnesium", "sodium", "potassium", "chloride", "sulfate"} {
		list = append(list, in("target_"+ion, units.MilligramPerLitre, ion+" wanted", 0, 5000, 50).or(0))
	}
	return append(list,
		in("target_alkalinity", units.MilligramPerLitreCaCO3, "alkalinity wanted", 0, 5000, 60).or(0),
		in("volume", units.Litre, "the water to treat", 0.001, 1e6, 60))
}

func saltRequest(in []float64) (water.Request, error) {
	p, err := profileOf(in, 20)
	r := water.Request{Water: p, Volume: as(units.Litre, in[14]), Salts: usualSalts}
	for i, ion := range mainIons {
		r.Targets = append(r.Targets, ion.Aim(as(units.MilligramPerLitre, in[7+i])))
	}
	hco3, err2 := water.NewProfile(units.Celsius.Of(20), as(units.MilligramPerLitreCaCO3, in[13]))
	if err == nil {
		err = err2
	}
	r.Targets = append(r.Targets, water.Bicarbonate.Aim(hco3.Ion(water.Bicarbonate)))
	return r, err
}

func putDoses(r water.Recipe, out []float64) {
	for i := range usualSalts {
		out[i] = 0
		for _, d := range r.Doses {
			if d.Material == usualSalts[i].Salt {
				out[i] = d.Mass.In(units.Gram)
			}
		}
	}
	out[len(usualSalts)] = r.Deviation
}

// waterSolve are the doses for a target.
func waterSolve() []Function {
	return []Function{
		{
			Name:    "salts_for_target",
			Meaning: "Doses of eight usual salts that bring a water nearest to a target, fewest salts where several do",
			Source:  "least squares with bounds, exact by complementary pivots (Lemke 1965); " + atomicWeights,
			Inputs:  targetInputs(),
			Outputs: doseOutputs(),
			call: func(in, out []float64) error {
				r, err := saltRequest(in)
				if err != nil {
					return err
				}
				recipe, err := water.Solve(r)
				putDoses(recipe, out)
				return err
			},
			heavy: true,
		},
		{
			Name:    "salts_for_target_weighed",
			Meaning: "Doses of eight usual salts in whole steps of a scale, proven nearest to a target",
			Source:  "closest-point search in a lattice (Schnorr & Euchner 1994); " + atomicWeights,
			Inputs:  append(targetInputs(), in("step", units.Gram, "what the scale resolves", 0.001, 100, 0.1).or(0.1)),
			Outputs: doseOutputs(),
			call: func(in, out []float64) error {
				r, err := saltRequest(in)
				if err != nil {
					return err
				}
				step, err := units.ParseExact[units.Mass](trimmed(in[15]) + " g")
				if err != nil {
					return err
				}
				w, err := water.SolveSteps(r, step)
				putDoses(w.Recipe, out)
				return err
			},
			heavy: true,
		},
		{
			Name:    "water_blend",
			Meaning: "Share of pure water that brings an ion of a water down to a value",
			Source:  "conservation of mass",
			Inputs: []Input{
				in("have", units.MilligramPerLitre, "content of the water", 0.001, 50000, 120),
				in("want", units.MilligramPerLitre, "content wanted", 0, 50000, 50),
				in("volume", units.Litre, "volume of the blend", 0.001, 1e6, 60),
			},
			Outputs: []Output{
				out("water", units.Litre, "the water"), out("pure", units.Litre, "pure water"),
			},
			call: func(in, out []float64) error {
				p, err := water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{}, water.Sodium.At(as(units.MilligramPerLitre, in[0])))
				if err != nil {
					return err
				}
				share, err := p.DilutionFor(water.Sodium, as(units.MilligramPerLitre, in[1]))
				if err != nil {
					return err
				}
				out[1] = share.In(units.Fraction) * in[2]
				out[0] = in[2] - out[1]
				return nil
			},
		},
		{
			Name:    "water_boiled",
			Meaning: "Alkalinity and calcium that a hard water keeps when boiling has driven off its CO2 and calcite has dropped out",
			Source:  "Plummer & Busenberg 1982 at 90 °C with the CO2 of air",
			Inputs:  waterIons(true),
			Outputs: []Output{
				out("alkalinity_left", units.MilligramPerLitreCaCO3, "alkalinity left"),
				out("calcium_left", units.MilligramPerLitre, "calcium left"),
				out("scale", units.MilligramPerLitre, "calcite dropped out"),
			},
			call: func(in, out []float64) error {
				p, err := profileOf(in, 20)
				if err != nil {
					return err
				}
				d, err := p.Boiled()
				w := d.Equilibrium.Water()
				out[0] = w.Alkalinity().In(units.MilligramPerLitreCaCO3)
				out[1], out[2] = w.Ion(water.Calcium).In(units.MilligramPerLitre), d.Mass.In(units.MilligramPerLitre)
				return err
			},
			heavy: true,
		},
		{
			Name:    "wash_ph",
			Meaning: "pH of a dilute liquid from its strong ions and the totals of its weak acids, under CO2",
			Source:  equilibria + "; NIST Standard Reference Database 46",
			Inputs: []Input{
				in("strong_ions", units.MilliequivalentPerLitre, "strong cations less strong anions", -200, 500, 5),
				in("ammonium", units.MillimolePerLitre, "total ammonium", 0, 500, 1).or(0),
				in("phosphate", units.MillimolePerLitre, "total phosphate", 0, 500, 2).or(0),
				in("lactate", units.MillimolePerLitre, "total lactic acid", 0, 500, 1).or(0),
				in("acetate", units.MillimolePerLitre, "total acetic acid", 0, 500, 3).or(0),
				in("citrate", units.MillimolePerLitre, "total citric acid", 0, 500, 0).or(0),
				in("malate", units.MillimolePerLitre, "total malic acid", 0, 500, 0).or(0),
				in("tartrate", units.MillimolePerLitre, "total tartaric acid", 0, 500, 0).or(0),
				in("succinate", units.MillimolePerLitre, "total succinic acid", 0, 500, 4).or(0),
				in("co2_pressure", units.Kilopascal, "partial pressure of CO2", 0, 1000, 100).or(0),
				waterTemperature(),
				in("sulfite", units.MillimolePerLitre, "total sulfur dioxide", 0, 500, 1).or(0),
				in("sorbate", units.MillimolePerLitre, "total sorbic acid", 0, 500, 1).or(0),
			},
			Outputs: []Output{pure("ph", "", "pH")},
			call: func(in, out []float64) error {
				c := func(v float64) units.MolarConcentration { return units.MillimolePerLitre.Of(checked.Number(v)) }
				ph, err := water.WashPH(water.Totals{
					StrongIons: as(units.MilliequivalentPerLitre, in[0]), Ammonium: c(in[1]), Phosphate: c(in[2]), Lactate: c(in[3]),
					Acetate: c(in[4]), Citrate: c(in[5]), Malate: c(in[6]), Tartrate: c(in[7]), Succinate: c(in[8]),
					Sulfite: c(in[11]), Sorbate: c(in[12]), CO2: as(units.Kilopascal, in[9]),
				}, as(units.Celsius, in[10]))
				out[0] = ph
				return err
			},
		},
	}
}
