package catalogue

import (
	"example.org/zymase/units"
	"example.org/zymase/water"
	"example.org/zymase/water/mash"
)

const mashSource = "deLange, MBAA TQ 52 (2015) 1 (proton balance, abstract); Kolbach 1953 (calcium and magnesium); malts by class read at second hand"

// maltInputs describe a malt: a class, or what was measured.
func maltInputs(name, first string, mass Input) []Input {
	return []Input{
		choice(name, first+" by its class", wordsOf(mash.Classes())...), mass,
		number(name+"_ph", "", "its pH in distilled water, measured to 0.05; 0 for that of the class", 0, 7, 0).or(0),
		number(name+"_buffer", "mEq/(kg pH)", "its buffering, measured to 10 %; 0 for that of the class", 0, 150, 0).or(0),
	}
}

func mashInputs() []Input {
	list := maltInputs("malt", "the malt", in("malt_mass", units.Kilogram, "mass of the malt", 0.001, 1e5, 4.5))
	other := maltInputs("other_malt", "a second malt", in("other_malt_mass", units.Kilogram, "mass of the second malt", 0, 1e5, 0.3).or(0))
	other[0] = other[0].orOption(mash.Caramel.String())
	list = append(list, other...)
	return append(list,
		in("volume", units.Litre, "water in the mash", 0.001, 1e6, 15),
		in("calcium", units.MilligramPerLitre, "calcium of the water, salts added", 0, 5000, 60).or(0),
		in("magnesium", units.MilligramPerLitre, "magnesium of the water, salts added", 0, 5000, 8).or(0),
		in("alkalinity", units.MilligramPerLitreCaCO3, "alkalinity of the water, acid added", -5000, 5000, 120))
}

const mashInputCount = 12

// mashOf reads mashInputs.
func mashOf(in []float64) (mash.Mash, error) {
	p, err := water.NewProfile(as(units.Celsius, 20), as(units.MilligramPerLitreCaCO3, in[11]),
		water.Calcium.At(as(units.MilligramPerLitre, in[9])), water.Magnesium.At(as(units.MilligramPerLitre, in[10])))
	m := mash.Mash{Water: p, Volume: as(units.Litre, in[8])}
	for _, at := range [...]int{0, 4} {
		if in[at+1] == 0 {
			continue
		}
		malt := mash.Class(in[at]).Malt(as(units.Kilogram, in[at+1]))
		if in[at+2] != 0 {
			malt.PH = mash.About(in[at+2], 0.05)
		}
		if in[at+3] != 0 {
			malt.Buffer = mash.About(in[at+3], 0.1*in[at+3])
		}
		m.Malts = append(m.Malts, malt)
	}
	return m, err
}

// mashFunctions are the entries of package mash.
func mashFunctions() []Function {
	return []Function{
		{
			Name:    "mash_ph",
			Meaning: "pH of a mash of one or two malts, cooled, with its band; and Kolbach's of the wort beside it",
			Source:  mashSource,
			Inputs:  mashInputs(),
			Outputs: []Output{
				pure("ph", "", "the pH"), pure("low", "", "low end of its band"), pure("high", "", "high end of its band"),
				pure("kolbach", "", "pH of the wort at 12 °P by residual alkalinity, its slope recalled from memory"),
			},
			call: func(in, out []float64) error {
				m, err := mashOf(in)
				if err != nil {
					return err
				}
				list, err := m.Rivals()
				if err != nil {
					return err
				}
				out[0], out[1], out[2], out[3] = list[0].PH.Value, list[0].PH.Low, list[0].PH.High, list[1].PH.Value
				return nil
			},
			heavy: true,
		},
		{
			Name:    "mash_acid_to_ph",
			Meaning: "Pure acid that brings a mash to a pH, with its band",
			Source:  mashSource + "; " + equilibria,
			Inputs:  append(mashInputs(), acidChoice(), number("target_ph", "", "pH wanted, of a cooled sample", 4, 7, 5.4)),
			Outputs: []Output{
				out("mass", units.Gram, "the pure acid"), out("low", units.Gram, "low end of its band"), out("high", units.Gram, "high end of its band"),
			},
			call: func(in, out []float64) error {
				m, err := mashOf(in)
				if err != nil {
					return err
				}
				d, err := m.WithAcid(water.Acid(in[mashInputCount]), in[mashInputCount+1])
				out[0], out[1], out[2] = d.Mass.In(units.Gram), d.Low.In(units.Gram), d.High.In(units.Gram)
				return err
			},
			heavy: true,
		},
	}
}
