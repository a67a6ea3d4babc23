package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

const (
	juiceSource   = "electroneutrality and the balance of a titration; " + equilibria + "; NIST Standard Reference Database 46"
	ethanolSource = "E. Prenesti et al., Sci. World J. 2012, 249041, table 4"
)

// juiceAcid is an acid in g/L, as its anion.
func juiceAcid(a water.Acid, gram float64) water.Content {
	return a.Ion().At(as(units.GramPerLitre, gram*a.Ion().MolarMass()/a.MolarMass()))
}

// juiceAcids are the acids of a reading, in the order of its shares.
var juiceAcids = [...]water.Acid{water.TartaricAcid, water.MalicAcid, water.CitricAcid, water.LacticAcid}

// readingInputs are what a maker measures; readingOf reads them.
func readingInputs() []Input {
	return []Input{
		number("ph", "", "pH of the drink", 2, 6, 3.4),
		in("acidity", units.GramPerLitre, "titratable acidity", 0, 50, 7), conventionChoice(),
		number("tartaric_part", "", "tartaric acid, in parts by mass of its acids", 0, 100, 1),
		number("malic_part", "", "malic acid, in parts by mass of its acids", 0, 100, 1),
		number("citric_part", "", "citric acid, in parts by mass of its acids", 0, 100, 0).or(0),
		number("lactic_part", "", "lactic acid, in parts by mass of its acids", 0, 100, 0).or(0),
		in("temperature", units.Celsius, "temperature of the pH reading", 0, 40, 20).or(20),
		in("strength", units.PercentVolume, "strength of the drink", 0, 16, 0).or(0),
	}
}

const readingInputCount = 9

func readingOf(in []float64) (must.Drink, error) {
	var acids must.AcidShares
	for k, a := range juiceAcids {
		acids = append(acids, juiceAcid(a, in[3+k]))
	}
	r := must.Reading{
		PH: in[0], Acidity: as(units.GramPerLitre, in[1]), Titration: conventions[int(in[2])],
		Temperature: as(units.Celsius, in[7]), Strength: as(units.PercentVolume, in[8]),
	}
	return r.Drink(acids)
}

// held returns an acid of a drink, in g/L of the acid.
func held(d must.Drink, a water.Acid) float64 {
	return d.Water().Ion(a.Ion()).In(units.GramPerLitre) * a.MolarMass() / a.Ion().MolarMass()
}

// juiceFunctions are what is known of a juice, a must or a wine.
func juiceFunctions() []Function {
	return []Function{
		{
			Name:    "juice_ph_from_acidity",
			Meaning: "Guess of the pH of a juice from its titratable acidity alone, with its band of 0.3; measure the pH where it counts",
			Source:  "one content of salts for each fruit, fitted to half of the juices of Kumar et al. 2021 (apples) and of Migicovsky et al. (grapes)",
			Inputs: []Input{
				choice("fruit", "whose juice", must.FromApple.String(), must.FromGrape.String()),
				in("acidity", units.GramPerLitre, "titratable acidity", 0, 50, 5), conventionChoice(),
			},
			Outputs: []Output{pure("ph", "", "the pH"), pure("low", "", "low end of its band"), pure("high", "", "high end of its band")},
			call: func(in, out []float64) error {
				e, err := must.Origin(in[0]).FromAcidity(as(units.GramPerLitre, in[1]), conventions[int(in[2])])
				out[0], out[1], out[2] = e.PH, e.Low, e.High
				return err
			},
			heavy: true,
		},
		{
			Name:    "juice_from_ph_and_acidity",
			Meaning: "Acids, salts and buffering of a juice, must or wine of which pH and titratable acidity were measured",
			Source:  juiceSource + "; " + ethanolSource,
			Inputs:  readingInputs(),
			Outputs: []Output{
				out("strong_ions", units.MilliequivalentPerLitre, "potassium and other cations less chloride and sulfate: the acids that are there as salts"),
				out("tartaric", units.GramPerLitre, "tartaric acid, free and as salts"), out("malic", units.GramPerLitre, "malic acid, free and as salts"),
				out("citric", units.GramPerLitre, "citric acid, free and as salts"), out("lactic", units.GramPerLitre, "lactic acid, free and as salts"),
				out("buffer_capacity", units.MilliequivalentPerLitre, "strong base for one pH, at first"),
			},
			call: func(in, out []float64) error {
				d, err := readingOf(in)
				if err != nil {
					return err
				}
				out[0] = d.StrongIons().In(units.MilliequivalentPerLitre)
				for k, a := range juiceAcids {
					out[1+k] = held(d, a)
				}
				out[5] = d.BufferCapacity().In(units.MilliequivalentPerLitre)
				return nil
			},
			heavy: true,
		},
		{
			Name:    "wine_ph_from_analysis",
			Meaning: "pH of a wine by its analysis; acidity beyond the acids named counts as lactic",
			Source:  juiceSource + "; " + ethanolSource,
			Inputs: []Input{
				in("acidity", units.MilliequivalentPerLitre, "titratable acidity to pH 7.0", 0, 500, 75),
				in("tartaric", units.GramPerLitre, "tartaric acid", 0, 20, 1.6), in("malic", units.GramPerLitre, "malic acid", 0, 30, 1.9),
				in("potassium", units.MilligramPerLitre, "potassium", 0, 5000, 900), in("calcium", units.MilligramPerLitre, "calcium", 0, 1000, 60),
				in("magnesium", units.MilligramPerLitre, "magnesium", 0, 1000, 100), in("phosphate", units.MilligramPerLitre, "phosphate, as PO4", 0, 2000, 400).or(0),
				in("chloride", units.MilligramPerLitre, "chloride", 0, 2000, 60).or(0),
				in("sulfate", units.MilligramPerLitre, "sulfate; 300 where it is not known", 0, 3000, 300).or(300),
				in("strength", units.PercentVolume, "strength", 0, 16, 13), in("temperature", units.Celsius, "temperature of the pH reading", 0, 40, 20).or(20),
			},
			Outputs: []Output{pure("ph", "", "the pH, good to 0.2"), out("rest", units.GramPerLitre, "other acid, as lactic")},
			call: func(in, out []float64) error {
				mg := func(i water.Ion, v float64) water.Content { return i.At(as(units.MilligramPerLitre, v)) }
				a := must.Analysis{
					Ions: []water.Content{
						juiceAcid(water.TartaricAcid, in[1]), juiceAcid(water.MalicAcid, in[2]),
						mg(water.Potassium, in[3]), mg(water.Calcium, in[4]), mg(water.Magnesium, in[5]),
						mg(water.Phosphate, in[6]), mg(water.Chloride, in[7]), mg(water.Sulfate, in[8]),
					},
					Acidity:   as(units.MilligramPerLitre, in[0]*water.HydrochloricAcid.MolarMass()),
					Titration: water.Titration{End: water.TitrationOIV.End, As: water.HydrochloricAcid},
					Strength:  as(units.PercentVolume, in[9]), Temperature: as(units.Celsius, in[10]),
				}
				d, err := a.Drink(must.AcidShares{water.Lactate.At(units.MilligramPerLitre.Of(1))})
				if err != nil {
					return err
				}
				out[0], out[1] = d.PH(), held(d, water.LacticAcid)
				return nil
			},
			heavy: true,
		},
		acidBuffer(),
		{
			Name:    "drink_ph_shift",
			Meaning: "How much ethanol raises the pH of a drink whose acids and salts stay the same",
			Source:  ethanolSource,
			Inputs:  []Input{in("strength", units.PercentVolume, "strength of the drink", 0, 16, 12)},
			Outputs: []Output{pure("shift", "", "the rise")},
			call: func(in, out []float64) (err error) {
				out[0], err = water.PKShift(as(units.PercentVolume, in[0]))
				return err
			},
		},
	}
}

// acidBuffer is the buffer capacity of acids in water or dilute ethanol.
func acidBuffer() Function {
	of := [...]water.Ion{water.Tartrate, water.Malate, water.Succinate, water.Citrate, water.Lactate, water.Acetate}
	names := []string{"tartaric acid", "malic acid", "succinic acid", "citric acid", "lactic acid", "acetic acid"}
	return Function{
		Name:    "acid_buffer_capacity",
		Meaning: "Buffer capacity of an acid, or of two, partly neutralised with lye",
		Source:  juiceSource + "; " + ethanolSource,
		Inputs: []Input{
			choice("acid", "the acid", names...), in("amount", units.MillimolePerLitre, "the acid, before the lye", 0.1, 500, 40),
			choice("other_acid", "a second acid", append([]string{"none"}, names...)...).or(0), in("other_amount", units.MillimolePerLitre, "the second acid, before the lye", 0, 500, 0).or(0),
			in("neutralised", units.MilliequivalentPerLitre, "sodium hydroxide, for a litre as it was before", 0, 500, 20),
			number("lye", "mol/L", "sodium hydroxide in the lye, which dilutes the acid", 0.01, 20, 0.1),
			in("strength", units.PercentVolume, "strength of acid and lye", 0, 16, 0).or(0), in("temperature", units.Celsius, "temperature", 0, 40, 25).or(25),
		},
		Outputs: []Output{out("capacity", units.MilliequivalentPerLitre, "strong base for one pH, in a litre of the mixture"), pure("ph", "", "its pH")},
		call: func(in, out []float64) error {
			whole := 1 + in[4]/1000/in[5] // L
			sodium := in[4] / whole
			alk := sodium
			var ions []water.Content
			add := func(i water.Ion, mmol float64) {
				ions = append(ions, i.At(as(units.MilligramPerLitre, mmol/whole*i.MolarMass())))
				alk += mmol / whole * float64(i.Charge())
			}
			switch other := int(in[2]) - 1; {
			case other == int(in[0]):
				add(of[other], in[1]+in[3])
			case other >= 0:
				add(of[other], in[3])
				fallthrough
			default:
				add(of[int(in[0])], in[1])
			}
			ions = append(ions, water.Sodium.At(as(units.MilligramPerLitre, sodium*water.Sodium.MolarMass())))
			p, err := water.NewProfile(as(units.Celsius, in[7]), as(units.MilligramPerLitreCaCO3, alk*chalkEquivalent), ions...)
			if err != nil {
				return err
			}
			d, err := must.New(p, as(units.PercentVolume, in[6]))
			out[0], out[1] = d.BufferCapacity().In(units.MilliequivalentPerLitre), d.PH()
			return err
		},
		heavy: true,
	}
}

// chalkEquivalent is the mass of CaCO3 in an equivalent, mg/mEq.
const chalkEquivalent = 50.043
