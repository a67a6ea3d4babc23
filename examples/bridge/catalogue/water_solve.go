package catalogue

import (
	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// usualSalts are those that a brewer's shelf holds, in the order of the outputs.
var usualSalts = []water.Stock{
	{Salt: material.Gypsum()}, {Salt: material.CalciumChlorideDihydrate()}, {Salt: material.EpsomSalt()}, {Salt: shelf.Material("magnesium chloride hexahydrate")},
	{Salt: material.TableSalt()}, {Salt: material.BakingSoda()}, {Salt: material.PotassiumChloride()}, {Salt: material.PotassiumBicarbonate()},
}

// doseOutputs are the dose of each salt, and what is missed.
func doseOutputs() []result[water.Recipe] {
	var list []result[water.Recipe]
	for _, s := range usualSalts {
		list = append(list, from(func(r water.Recipe) (m units.Mass) {
			for _, d := range r.Doses {
				if d.Material == s.Salt {
					m = d.Mass
				}
			}
			return m
		}, Normal(s.Salt.Name()), units.Gram, "dose for the volume"))
	}
	return append(list, numberFrom(func(r water.Recipe) float64 { return r.Deviation.In(units.MilligramPerLitre) }, "deviation", "",
		"root of the sum of squares of what the targets are off, mg/L"))
}

// takesTargets are a water and what is wanted of it.
func takesTargets() arg[water.Request] {
	targets := arg[contents]{made: new(inputs)}
	for _, ion := range mainIons {
		targets.made.all = append(targets.made.all, in("target_"+ion.Name(), units.MilligramPerLitre, ion.Name()+" wanted", 0, 5000, 50).or(0))
	}
	targets.made.of = takesIons().made.of
	return of4(takesWater(), targets, takes("target_alkalinity", units.MilligramPerLitreCaCO3, "alkalinity wanted", 0, 5000, 60).or(0),
		takes("volume", units.Litre, "the water to treat", 0.001, 1e6, 60),
		func(p water.Profile, wanted contents, alk units.CalciumCarbonate, v units.Volume) (water.Request, error) {
			r := water.Request{Water: p, Volume: v, Salts: usualSalts}
			for i, ion := range mainIons {
				r.Targets = append(r.Targets, ion.Aim(wanted[i]))
			}
			bicarbonate, err := water.NewProfile(units.Celsius.Of(20), alk)
			if err != nil {
				return r, err
			}
			r.Targets = append(r.Targets, water.Bicarbonate.Aim(bicarbonate.Ion(water.Bicarbonate)))
			return r, nil
		})
}

// takesTotals are what a dilute liquid holds beside the water.
func takesTotals() arg[pair[water.Totals, units.Temperature]] {
	total := func(name, of string, example float64) arg[units.MolarConcentration] {
		return takes(name, units.MillimolePerLitre, "total "+of, 0, 500, example).or(0)
	}
	first := of5(takes("strong_ions", units.MilliequivalentPerLitre, "strong cations less strong anions", -200, 500, 5), total("ammonium", "ammonium", 1),
		total("phosphate", "phosphate", 2), total("lactate", "lactic acid", 1), total("acetate", "acetic acid", 3),
		func(ions units.EquivalentConcentration, ammonium, phosphate, lactate, acetate units.MolarConcentration) (water.Totals, error) {
			return water.Totals{StrongIons: ions, Ammonium: ammonium, Phosphate: phosphate, Lactate: lactate, Acetate: acetate}, nil
		})
	more := of6(first, total("citrate", "citric acid", 0), total("malate", "malic acid", 0), total("tartrate", "tartaric acid", 0),
		total("succinate", "succinic acid", 4),
		takesCO2("partial pressure of CO2", 1000, 100).or(0),
		func(w water.Totals, citrate, malate, tartrate, succinate units.MolarConcentration, co2 units.AbsolutePressure) (water.Totals, error) {
			w.Citrate, w.Malate, w.Tartrate, w.Succinate, w.CO2 = citrate, malate, tartrate, succinate, co2
			return w, nil
		})
	return of4(more, waterTemperature(), total("sulfite", "sulfur dioxide", 1), total("sorbate", "sorbic acid", 1),
		func(w water.Totals, t units.Temperature, sulfite, sorbate units.MolarConcentration) (pair[water.Totals, units.Temperature], error) {
			w.Sulfite, w.Sorbate = sulfite, sorbate
			return pair[water.Totals, units.Temperature]{w, t}, nil
		})
}

// waterSolve are the doses for a target.
func waterSolve() []*Function {
	type (
		blend = pair[float64, float64] // L of the water, L of pure water
		left  = water.Dropped
	)
	return []*Function{
		heavy(entry("salts_for_target", "Doses of eight usual salts that bring a water nearest to a target, fewest salts where several do",
			"least squares with bounds, exact by complementary pivots (Lemke 1965); "+atomicWeights,
			of1(takesTargets(), water.Request.Solve), doseOutputs()...)),
		heavy(entry("salts_for_target_weighed", "Doses of eight usual salts in whole steps of a scale, proven nearest to a target",
			"closest-point search in a lattice (Schnorr & Euchner 1994); "+atomicWeights,
			of2(takesTargets(), of1(takesStated("step", units.Gram, "what the scale resolves", 0.001, 100, 0.1).or(0.1), func(gram float64) (units.ExactMass, error) {
				return units.ParseExact[units.Mass](trimmed(gram) + " g")
			}), func(r water.Request, step units.ExactMass) (water.Recipe, error) {
				w, err := r.SolveSteps(step)
				return w.Recipe, err
			}), doseOutputs()...)),
		entry("water_blend", "Share of pure water that brings an ion of a water down to a value", "conservation of mass",
			of3(takes("have", units.MilligramPerLitre, "content of the water", 0.001, 50000, 120),
				takes("want", units.MilligramPerLitre, "content wanted", 0, 50000, 50),
				takes("volume", units.Litre, "volume of the blend", 0.001, 1e6, 60),
				func(have, want units.MassConcentration, v units.Volume) (blend, error) {
					p, err := water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{}, water.Sodium.At(have))
					if err != nil {
						return blend{}, err
					}
					share, err := p.DilutionFor(water.Sodium, want)
					pure := share.In(units.Fraction) * v.In(units.Litre)
					return blend{v.In(units.Litre) - pure, pure}, err
				}),
			stated(func(b blend) float64 { return b.a }, "water", units.Litre, "the water"),
			stated(func(b blend) float64 { return b.b }, "pure", units.Litre, "pure water")),
		heavy(entry("water_boiled", "Alkalinity and calcium that a hard water keeps when boiling has driven off its CO2 and calcite has dropped out",
			"Plummer & Busenberg 1982 at 90 °C with the CO2 of air",
			of1(takesWater(), water.Profile.Boiled),
			from(func(d left) units.CalciumCarbonate { return d.Equilibrium.Water().Alkalinity() }, "alkalinity_left", units.MilligramPerLitreCaCO3, "alkalinity left"),
			from(func(d left) units.MassConcentration { return d.Equilibrium.Water().Ion(water.Calcium) }, "calcium_left", units.MilligramPerLitre, "calcium left"),
			from(func(d left) units.MassConcentration { return d.Mass }, "scale", units.MilligramPerLitre, "calcite dropped out"))),
		entry("wash_ph", "pH of a dilute liquid from its strong ions and the totals of its weak acids, under CO2",
			equilibria+"; NIST Standard Reference Database 46",
			of1(takesTotals(), func(w pair[water.Totals, units.Temperature]) (water.Equilibrium, error) { return w.a.Equilibrium(w.b) }),
			numberFrom(water.Equilibrium.PH, "ph", "", "pH")),
	}
}
