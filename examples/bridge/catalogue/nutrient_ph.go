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

// washInputs describe a wash of white sugar for its pH.
func washInputs() []Input {
	return []Input{
		in("strength", units.PercentVolume, "strength at the end", 0.5, 16, 4.6),
		in("alkalinity", units.MilligramPerLitreCaCO3, "of the water", -50, 1000, 38),
		in("potassium", units.MilligramPerLitre, "in the water", 0, 2000, 1).or(0),
		in("nitrogen", units.MilligramPerLitre, "nitrogen fed, as N", 0, 500, 67),
		choice("source", "what brings it", wordsOf(washFeed)...).orOption("diammonium phosphate"),
		in("temperature", units.Celsius, "of the ferment", 5, 35, 20).or(20),
	}
}

// washOf is a litre of it.
func washOf(in []float64) (ferment.Tank, error) {
	litre := units.Litre.Of(1)
	b, err := sugar.ForStrength(material.WhiteSugar(), as(units.PercentVolume, in[0]), litre)
	if err != nil {
		return ferment.Tank{}, err
	}
	p, err := water.NewProfile(as(units.Celsius, in[5]), as(units.MilligramPerLitreCaCO3, in[1]), water.Potassium.At(as(units.MilligramPerLitre, in[2])))
	s := washFeed[int(in[4])]
	f := ferment.Tank{Brew: b, Water: p, Additions: 3, Temperature: as(units.Celsius, in[5])}
	if in[3] > 0 {
		f.Feed = []material.Dose{s.Dose(as(units.Milligram, in[3]/s.Composition().Nitrogen().In(units.Fraction)))}
	}
	return f, err
}

var buffers = ferment.Buffers()

func bufferInput() Input {
	return choice("buffer", "salt that holds the pH up", wordsOf(buffers)...).orOption("potassium bicarbonate")
}

// nutrientPH are the pH of a ferment and what holds it.
func nutrientPH() []Function {
	return []Function{
		{
			Name:    "ferment_ph",
			heavy:   true,
			Meaning: "pH of a sugar wash when a share of its sugar is used: at rest with air at 0 %, then under its own CO2, which saturates it at about 5 %",
			Source:  phSource,
			Inputs: append(washInputs(),
				in("used", units.Percent, "of the sugar", 0, 100, 100).or(100),
				in("buffer_dose", units.GramPerLitre, "of a buffer", 0, 20, 0.5).or(0),
				bufferInput(),
			),
			Outputs: []Output{
				pure("ph", "", "pH with the usual acids"),
				pure("low", "", "pH with the most acids that yeast makes"),
				pure("high", "", "pH with the least"),
				out("nitrogen_left", units.MilligramPerLitre, "nitrogen in the liquid, as N"),
				out("co2_pressure", units.Kilopascal, "CO2 that the liquid is at rest with"),
			},
			call: func(in, out []float64) error {
				f, err := washOf(in)
				if err != nil {
					return err
				}
				f.Buffer = buffers[int(in[8])].Dose(as(units.Gram, in[7]))
				p, err := f.At(as(units.Percent, in[6]))
				out[0], out[1], out[2], out[3] = p.PH.Value, p.PH.Low, p.PH.High, p.Nitrogen.In(units.MilligramPerLitre)
				out[4] = p.Gas.In(units.Kilopascal)
				return err
			},
		},
		otherNeeds(),
		{
			Name:    "buffer_for_ph",
			heavy:   true,
			Meaning: "buffer with which a sugar wash does not end below a pH",
			Source:  phSource,
			Inputs: append(washInputs(),
				number("floor", "", "pH not to fall below", 2.5, 6, 3.5),
				bufferInput(),
			),
			Outputs: []Output{
				out("dose", units.GramPerLitre, "buffer with the usual acids, on the finished volume"),
				out("low", units.GramPerLitre, "with the least acids"),
				out("high", units.GramPerLitre, "with the most"),
			},
			call: func(in, out []float64) error {
				f, err := washOf(in)
				if err != nil {
					return err
				}
				d, err := f.BufferFor(buffers[int(in[7])], in[6])
				out[0], out[1], out[2] = d.Mass.Value.In(units.Gram), d.Mass.Low.In(units.Gram), d.Mass.High.In(units.Gram)
				return err
			},
		},
		{
			Name:    "buffer_for_stuck_ferment",
			heavy:   true,
			Meaning: "buffer with which a ferment that stopped at a measured pH ends at another",
			Source:  phSource,
			Inputs: append(washInputs(),
				in("used", units.Percent, "of the sugar, when it stopped", 0.1, 100, 50),
				number("measured", "", "pH measured", 2, 6, 2.8),
				number("target", "", "pH not to fall below, now or at the end", 2, 6.5, 3.6),
				bufferInput(),
			),
			Outputs: []Output{
				out("dose", units.GramPerLitre, "buffer, on the finished volume; add half and measure again"),
				pure("end_ph", "", "pH when the rest of the sugar has fermented"),
				pure("now_ph", "", "pH once the dose is stirred in"),
			},
			call: func(in, out []float64) error {
				f, err := washOf(in)
				if err != nil {
					return err
				}
				c, err := f.Correct(buffers[int(in[9])], as(units.Percent, in[6]), in[7], in[8])
				out[0], out[1], out[2] = c.Dose.Mass.Value.In(units.Gram), c.End.Value, c.Now.Value
				return err
			},
		},
	}
}

// otherNeeds is what yeast wants beside nitrogen in a sugar wash, a pair of outputs for each.
func otherNeeds() Function {
	var outputs []Output
	for _, name := range [...]string{"phosphorus", "potassium", "magnesium", "zinc", "thiamine"} {
		outputs = append(outputs, out(name+"_need", units.MilligramPerLitre, "known within a factor of two"), out(name+"_brought", units.MilligramPerLitre, "by water and feed"))
	}
	return Function{
		Name:    "yeast_other_needs",
		heavy:   true,
		Meaning: "minerals and thiamine that yeast needs in a sugar wash, and what water and feed bring of them; sugar brings none",
		Source: "phosphorus of dry yeast and Kudo, Vagnoli & Bisson 1998 (recalled from memory); Nobis et al. 2022 (read); magnesium and thiamine common " +
			"practice, no source",
		Inputs: append(washInputs(),
			in("magnesium", units.MilligramPerLitre, "in the water", 0, 1000, 5).or(0),
			in("zinc", units.MilligramPerLitre, "in the water", 0, 100, 0).or(0),
		),
		Outputs: outputs,
		call: func(in, out []float64) error {
			f, err := washOf(in)
			if err != nil {
				return err
			}
			f.Water, err = water.NewProfile(as(units.Celsius, in[5]), as(units.MilligramPerLitreCaCO3, in[1]), water.Potassium.At(as(units.MilligramPerLitre, in[2])),
				water.Magnesium.At(as(units.MilligramPerLitre, in[6])), water.Zinc.At(as(units.MilligramPerLitre, in[7])))
			if err != nil {
				return err
			}
			needs, err := f.OtherNeeds()
			for i := range min(len(needs), len(out)/2) { // without the other vitamins, which no feed states
				out[2*i], out[2*i+1] = needs[i].Need.Value.In(units.MilligramPerLitre), needs[i].Have.In(units.MilligramPerLitre)
			}
			return err
		},
	}
}
