package catalogue

import (
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// drinkAcids are the choices of drink_acid_to_ph, each as its pure powder.
var drinkAcids = [...]water.Acid{water.CitricAcid, water.MalicAcid, water.TartaricAcid}

// nutrientPractice are one's own nutrient, its yeast by age, and the drink that is mixed and soured.
func nutrientPractice() []Function {
	var acids, limits []string
	for _, a := range drinkAcids {
		acids = append(acids, a.Name())
	}
	for _, l := range legalLimits {
		limits = append(limits, limitName(l))
	}
	share := func(name, meaning string, most, example float64) Input {
		return in(name, units.Percent, meaning, 0, most, example)
	}
	return []Function{
		{
			Name:    "nutrient_by_label",
			Meaning: "what a mass of a nutrient of your own brings to a volume, by its label or its analysis",
			Source:  "the figures given; ammonium and amino nitrogen apart, as only ammonium sets acid free",
			Inputs: []Input{
				in("mass", units.Gram, "the nutrient as weighed", 0, 1e9, 30),
				in("volume", units.Litre, "of the wash", 0.001, 1e9, 60),
				share("ammonium_nitrogen", "nitrogen as ammonium, as N", 30, 5),
				share("amino_nitrogen", "nitrogen in amino acids that yeast takes up, as N", 20, 3).or(0),
				share("urea_nitrogen", "nitrogen as urea, as N", 46.7, 0).or(0),
				share("phosphorus", "phosphorus, as P", 30, 5).or(0),
				share("potassium", "potassium, as K", 60, 0).or(0),
			},
			Outputs: []Output{
				out("nitrogen", units.MilligramPerLitre, "that yeast takes up, in all its forms, as N"),
				out("of_ammonium", units.MilligramPerLitre, "nitrogen as ammonium, as N"),
				out("phosphorus_brought", units.MilligramPerLitre, "phosphorus, as P"),
				out("potassium_brought", units.MilligramPerLitre, "potassium"),
				sentences(law.CheckTheLaw.Text()),
			},
			heavy: true,
			call: func(in, out []float64) error {
				of := func(i int) units.Share { return as(units.Percent, in[i]) }
				own, err := material.ByLabel("nutrient of your own", material.Composition{
					AmmoniumNitrogen: of(2), AminoNitrogen: of(3), UreaNitrogen: of(4), Phosphorus: of(5), Potassium: of(6),
				})
				if err != nil {
					return err
				}
				s, err := nutrient.SupplyOf(as(units.Litre, in[1]), own.Dose(as(units.Gram, in[0])))
				if err != nil {
					return err
				}
				out[0], out[1] = s.Nitrogen().In(units.MilligramPerLitre), s.Ammonium.In(units.MilligramPerLitre)
				out[2], out[3] = s.Phosphorus.In(units.MilligramPerLitre), s.Potassium.In(units.MilligramPerLitre)
				out[4] = 1
				return nil
			},
		},
		{
			Name:    "dry_yeast_by_age",
			Meaning: "dry yeast to weigh for live cells, by its age and where it was kept",
			Source:  "loss of 4 % a year in the cold and 20 % at 20 °C, supplier sheets (recalled from memory)",
			Inputs: []Input{
				number("cells", "billion", "live cells wanted", 0, 1e9, 420),
				number("per_gram", "billion", "live cells in 1 g when it was packed, by its label", 1, 50, 10).or(10),
				span("age", "d", "since it was packed", 0, 3650, 400),
				in("storage", units.Celsius, "where it was kept, unopened", -25, 30, 5).or(5),
			},
			Outputs: []Output{
				out("mass", units.Gram, "dry yeast to weigh"),
				out("alive", units.Percent, "of its cells that are alive"),
			},
			heavy: true,
			call: func(in, out []float64) error {
				per, err := yeast.Billion(in[1])
				if err != nil {
					return err
				}
				pack, err := yeast.DryPack(per, as(units.Celsius, in[3]))
				if err != nil {
					return err
				}
				cells, err := yeast.Billion(in[0])
				if err != nil {
					return err
				}
				age := time.Duration(in[2] * 24 * float64(time.Hour))
				p, err := pack.Need(cells, age)
				if err != nil {
					return err
				}
				live, err := pack.Alive(age)
				out[0], out[1] = p.Mass.In(units.Gram), 100*live.Billion()/in[1]
				return err
			},
		},
		{
			Name:    "limit_in_law_as_used",
			Meaning: "most of an addition that a law lets into a volume, as it is weighed; check the law in force",
			Source:  "as limit_in_law; thiamine as its hydrochloride",
			Inputs: []Input{
				choice("limit", "law, addition and drink", limits...),
				in("volume", units.Litre, "of the drink", 0.001, 1e9, 60),
			},
			Outputs: []Output{out("mass", units.Gram, "the most to weigh for the volume"), sentences(law.CheckTheLaw.Text())},
			heavy:   true,
			call: func(in, out []float64) error {
				out[0], out[1] = legalLimits[int(in[0])].Weighed().In(units.GramPerLitre)*in[1], 1
				return nil
			},
		},
		{
			Name:    "drinks_mixed",
			Meaning: "two drinks with extract and gas poured together: volume, strength, gravity, extract and CO2",
			Source:  "masses add; densities by OIML R 22 and ICUMSA SPS-4; what gas is lost in pouring is not counted",
			Inputs: []Input{
				in("volume_first", units.Litre, "of the first at 20 °C", 0.001, 1e6, 40), in("strength_first", units.PercentVolume, "of the first", 0, 20, 4.6),
				in("extract_first", units.DegreePlato, "real extract of the first", 0, 30, 0.2), in("content_first", units.GramCO2PerLitre, "CO2 of the first", 0, 15, 1.5),
				in("volume_second", units.Litre, "of the second at 20 °C", 0.001, 1e6, 20), in("strength_second", units.PercentVolume, "of the second", 0, 20, 0),
				in("extract_second", units.DegreePlato, "real extract of the second", 0, 30, 10), in("content_second", units.GramCO2PerLitre, "CO2 of the second", 0, 15, 0),
			},
			Outputs: []Output{
				out("volume", units.Litre, "together, at 20 °C"), out("strength", units.PercentVolume, "together"), pure("gravity", "", "together, 20/20 °C"),
				out("extract", units.DegreePlato, "real extract together"), out("content", units.GramCO2PerLitre, "CO2 together"),
			},
			heavy: true,
			call: func(in, out []float64) error {
				var parts [2]gravity.Solution
				for i := range parts {
					d, err := drinkOf(in[4*i], in[4*i+1], in[4*i+2])
					if err != nil {
						return err
					}
					parts[i] = d
				}
				s, err := parts[0].Plus(parts[1])
				if err != nil {
					return err
				}
				v := s.VolumeAt20().In(units.Litre)
				out[0], out[1], out[2] = v, s.ByVolume().In(units.PercentVolume), s.Gravity().SG()
				out[3], out[4] = s.RealExtract().In(units.DegreePlato), (in[3]*in[0]+in[7]*in[4])/v
				return nil
			},
		},
		{
			Name:    "drink_acid_to_ph",
			Meaning: "acid that brings a fermented drink to a pH, by the pH that a meter shows in it with its gas stirred out",
			Source:  "charge balance; weak acids of NIST 46; titratable acidity to pH 8.2 as citric acid",
			Inputs: []Input{
				in("volume", units.Litre, "of the drink", 0.001, 1e6, 60),
				number("ph", "", "of the drink now, without its gas", 2.5, 7, 3.8),
				number("ph_wanted", "", "wanted", 2.5, 7, 3.4),
				choice("acid", "pure, as a powder", acids...),
				in("succinic", units.MilligramPerLitre, "succinic acid in it; yeast makes about 6 g from a kilogram of sugar", 0, 5000, 430).or(430),
				in("lactic", units.MilligramPerLitre, "lactic acid in it", 0, 20000, 0).or(0),
				in("malic", units.MilligramPerLitre, "malic acid in it", 0, 20000, 0).or(0),
				in("phosphorus", units.MilligramPerLitre, "phosphorus in it, as P", 0, 2000, 60).or(60),
				in("strength", units.PercentVolume, "of the drink", 0, 12, 4.6).or(4.6),
			},
			Outputs: []Output{
				out("mass", units.Gram, "acid to weigh"), out("added", units.GramPerLitre, "of it in the drink"),
				out("acidity_before", units.GramPerLitre, "titratable acidity, as citric acid"), out("acidity_after", units.GramPerLitre, "the same with it"),
				sentences(water.AcidBurns.Text(), law.CheckTheLaw.Text()),
			},
			heavy: true,
			call:  drinkAcid,
		},
		{
			Name:    "gravity_from_weight_lost",
			Meaning: "gravity and strength of a ferment by what a scale under it has lost",
			Source:  "balance of the yield: sugar used = (CO2 gone + CO2 dissolved)/CO2 of a gram of sugar; a moist gas takes 0.7 to 1.5 % of its mass with it",
			Inputs: []Input{
				in("sugar", units.Kilogram, "white sugar in the wash", 0.001, 1e6, 4.3),
				in("water", units.Kilogram, "water in the wash", 0.01, 1e7, 56),
				in("lost", units.Kilogram, "since the yeast was pitched", 0, 1e6, 1.2),
				in("dissolved", units.GramCO2PerLitre, "CO2 that the liquid still holds", 0, 10, 1.5).or(1.5),
			},
			Outputs: []Output{
				pure("gravity", "", "now, 20/20 °C, without salts"), out("strength", units.PercentVolume, "now"), out("used", units.Percent, "of the sugar"), out("left", units.GramPerLitre, "fermentable sugar"),
				sentences(notDry),
			},
			heavy: true,
			call: func(in, out []float64) error {
				wash, err := gravity.NewSolution(as(units.Kilogram, in[1]), as(units.Kilogram, in[0]), units.Mass{})
				if err != nil {
					return err
				}
				s, _, err := gravity.FromWeightLost(wash, as(units.Kilogram, in[2]), as(units.GramCO2PerLitre, in[3]), wash.WashYield())
				if err != nil {
					return err
				}
				left := s.Fermentable().In(units.Kilogram)
				out[0], out[1], out[2] = s.Gravity().SG(), s.ByVolume().In(units.PercentVolume), 100*(1-left/in[0])
				out[3], out[4] = 1000*left/s.VolumeAt20().In(units.Litre), 1
				return nil
			},
		},
	}
}

// drinkOf is a volume of a drink by strength and real extract.
func drinkOf(litres, strength, extract float64) (gravity.Solution, error) {
	d, err := carbonation.DrinkOf(as(units.PercentVolume, strength), as(units.DegreePlato, extract))
	if err != nil {
		return d, err
	}
	return d.Times(litres / d.VolumeAt20().In(units.Litre))
}

func drinkAcid(in, out []float64) error {
	content := func(i water.Ion, mg float64) water.Content { return i.At(as(units.MilligramPerLitre, mg)) }
	const phosphate = 96.987 / 30.974 // of H2PO4- to P, g/g
	p, err := water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{},
		content(water.Succinate, in[4]), content(water.Lactate, in[5]), content(water.Malate, in[6]), content(water.Phosphate, phosphate*in[7]))
	if err != nil {
		return err
	}
	if in[8] > 0 {
		if p, err = p.WithEthanol(as(units.PercentVolume, in[8])); err != nil {
			return err
		}
	}
	powder, err := water.NewSold(drinkAcids[int(in[3])], units.Percent.Of(100), units.Density{})
	if err != nil {
		return err
	}
	a, err := finish.Acidify(p, powder, in[1], in[2], water.TitrationSoftDrink, as(units.Litre, in[0]), law.US)
	if err != nil {
		return err
	}
	out[0], out[1] = a.Mass.In(units.Gram), a.Concentration.In(units.GramPerLitre)
	out[2], out[3], out[4] = a.Before.In(units.GramPerLitre), a.After.In(units.GramPerLitre), 3
	return nil
}
