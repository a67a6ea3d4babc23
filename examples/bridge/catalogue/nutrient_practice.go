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

// takesLabel is the composition of a nutrient of one's own.
func takesLabel() arg[material.Composition] {
	share := func(name, meaning string, most, example float64) arg[units.Share] {
		return takes(name, units.Percent, meaning, 0, most, example)
	}
	return of5(share("ammonium_nitrogen", "nitrogen as ammonium, as N", 30, 5),
		share("amino_nitrogen", "nitrogen in amino acids that yeast takes up, as N", 20, 3).or(0), share("urea_nitrogen", "nitrogen as urea, as N", 46.7, 0).or(0),
		share("phosphorus", "phosphorus, as P", 30, 5).or(0), share("potassium", "potassium, as K", 60, 0).or(0),
		func(ammonium, amino, urea, p, k units.Share) (material.Composition, error) {
			return material.Composition{AmmoniumNitrogen: ammonium, AminoNitrogen: amino, UreaNitrogen: urea, Phosphorus: p, Potassium: k}, nil
		})
}

// supplyByLabel is what a nutrient of one's own brings.
func supplyByLabel(m units.Mass, v units.Volume, c material.Composition) (nutrient.Supply, error) {
	own, err := material.ByLabel("nutrient of your own", c)
	if err != nil {
		return nutrient.Supply{}, err
	}
	return nutrient.SupplyOf(v, own.Dose(m))
}

// An aged is dry yeast to weigh, and the part of its cells that is alive, in %.
type aged = pair[units.Mass, float64]

// dryYeastByAge counts cells in billions.
func dryYeastByAge(cells units.Cells, perGram units.Cells, age time.Duration, storage units.Temperature) (aged, error) {
	pack, err := yeast.DryPack(perGram, storage)
	if err != nil {
		return aged{}, err
	}
	p, err := pack.Need(cells, age)
	if err != nil {
		return aged{}, err
	}
	live, err := pack.Alive(age)
	return aged{p.Mass.Value, 100 * live.In(units.BillionCells) / perGram.In(units.BillionCells)}, err
}

// A gassed is a drink with its CO2.
type gassed struct {
	liquid gravity.Solution
	volume units.Volume // as measured, at 20 °C
	gas    units.CarbonDioxideContent
}

func takesGassed(which string, litres, strength, extract, content float64) arg[gassed] {
	return of4(takes("volume_"+which, units.Litre, "of the "+which+" at 20 °C", 0.001, 1e6, litres),
		takes("strength_"+which, units.PercentVolume, "of the "+which, 0, 20, strength),
		takes("extract_"+which, units.DegreePlato, "real extract of the "+which, 0, 30, extract),
		takes("content_"+which, units.GramCO2PerLitre, "CO2 of the "+which, 0, 15, content),
		func(v units.Volume, s units.StrengthByVolume, x units.Extract, c units.CarbonDioxideContent) (gassed, error) {
			d, err := carbonation.DrinkOf(s, x)
			if err != nil {
				return gassed{}, err
			}
			d, err = d.Times(v.In(units.Litre) / d.VolumeAt20().In(units.Litre))
			return gassed{d, v, c}, err
		})
}

func mixGassed(a, b gassed) (gassed, error) {
	s, err := a.liquid.Plus(b.liquid)
	if err != nil {
		return gassed{}, err
	}
	v := s.VolumeAt20()
	gram := func(g gassed) float64 { return g.gas.In(units.GramCO2PerLitre) * g.volume.In(units.Litre) }
	return gassed{s, v, as(units.GramCO2PerLitre, (gram(a)+gram(b))/v.In(units.Litre))}, nil
}

// takesWeakAcids are the acids and salts of a fermented drink, in water of its strength.
func takesWeakAcids() arg[water.Profile] {
	acid := func(name, meaning string, most, example float64) arg[units.MassConcentration] {
		return takes(name, units.MilligramPerLitre, meaning+" in it", 0, most, example).or(example)
	}
	return of5(
		takes("succinic", units.MilligramPerLitre, "succinic acid in it; yeast makes about 6 g from a kilogram of sugar", 0, 5000, 430).or(430),
		acid("lactic", "lactic acid", 20000, 0), acid("malic", "malic acid", 20000, 0),
		takes("phosphorus", units.MilligramPerLitre, "phosphorus in it, as P", 0, 2000, 60).or(60),
		takes("strength", units.PercentVolume, "of the drink", 0, 12, 4.6).or(4.6),
		func(succinic, lactic, malic, phosphorus units.MassConcentration, s units.StrengthByVolume) (water.Profile, error) {
			const phosphate = 96.987 / 30.974 // of H2PO4- to P, g/g
			p, err := water.NewProfile(units.Celsius.Of(20), units.CalciumCarbonate{}, water.Succinate.At(succinic), water.Lactate.At(lactic), water.Malate.At(malic),
				water.Phosphate.At(as(units.MilligramPerLitre, phosphate*phosphorus.In(units.MilligramPerLitre))))
			if err != nil || s.IsZero() {
				return p, err
			}
			return p.WithEthanol(s)
		})
}

// drinkAcid doses the pure powder of an acid.
func drinkAcid(v units.Volume, ph, wanted float64, a water.Acid, p water.Profile) (finish.Acidified, error) {
	powder, err := a.AsSold(units.Percent.Of(100), units.Density{})
	if err != nil {
		return finish.Acidified{}, err
	}
	return finish.Acidify(p, powder, ph, wanted, water.CitricAcid.TitratedTo(8.2), v, law.US)
}

// A weighed is a wash by what a scale under it has lost.
type weighed struct {
	liquid gravity.Solution
	sugar  units.Mass // that went in
}

func byWeightLost(sugar, in, lost units.Mass, held units.CarbonDioxideContent) (weighed, error) {
	wash, err := gravity.NewSolution(in, sugar, units.Mass{})
	if err != nil {
		return weighed{}, err
	}
	s, _, err := wash.FermentByWeight(lost, held, wash.WashYield())
	return weighed{s, sugar}, err
}

func (w weighed) left() float64 { return w.liquid.Fermentable().In(units.Kilogram) }

// nutrientPractice are one's own nutrient, its yeast by age, and the drink that is mixed and soured.
func nutrientPractice() []*Function {
	type (
		supply    = nutrient.Supply
		acidified = finish.Acidified
	)
	acids := []water.Acid{water.CitricAcid, water.MalicAcid, water.TartaricAcid}
	return []*Function{
		heavy(entry("nutrient_by_label", "what a mass of a nutrient of your own brings to a volume, by its label or its analysis",
			"the figures given; ammonium and amino nitrogen apart, as only ammonium sets acid free",
			of3(takes("mass", units.Gram, "the nutrient as weighed", 0, 1e9, 30), takes("volume", units.Litre, "of the wash", 0.001, 1e9, 60),
				takesLabel(), supplyByLabel),
			supplied(supply.Nitrogen, "nitrogen", "that yeast takes up, in all its forms, as N"),
			supplied(func(s supply) units.MassConcentration { return s.Ammonium }, "of_ammonium", "nitrogen as ammonium, as N"),
			supplied(func(s supply) units.MassConcentration { return s.Phosphorus }, "phosphorus_brought", "phosphorus, as P"),
			supplied(func(s supply) units.MassConcentration { return s.Potassium }, "potassium_brought", "potassium"),
			saysAlways[supply](law.CheckTheLaw.Text()))),
		heavy(entry("dry_yeast_by_age", "dry yeast to weigh for live cells, by its age and where it was kept",
			"loss of 4 % a year in the cold and 20 % at 20 °C, supplier sheets (recalled from memory)",
			of4(takesCells("cells", "live cells wanted", 0, 1e9, 420), takesCells("per_gram", "live cells in 1 g when it was packed, by its label", 1, 50, 10).or(10),
				takesTime("age", "d", "since it was packed", 0, 3650, 400), takes("storage", units.Celsius, "where it was kept, unopened", -25, 30, 5).or(5),
				dryYeastByAge),
			from(func(a aged) units.Mass { return a.a }, "mass", units.Gram, "dry yeast to weigh"),
			stated(func(a aged) float64 { return a.b }, "alive", units.Percent, "of its cells that are alive"))),
		heavy(entry("limit_in_law_as_used", "most of an addition that a law lets into a volume, as it is weighed; check the law in force",
			"as limit_in_law; thiamine as its hydrochloride",
			of2(takesLimit(), takes("volume", units.Litre, "of the drink", 0.001, 1e9, 60),
				func(l law.Limit, v units.Volume) (float64, error) {
					return l.Weighed().In(units.GramPerLitre) * v.In(units.Litre), nil
				}),
			stated(same, "mass", units.Gram, "the most to weigh for the volume"), saysAlways[float64](law.CheckTheLaw.Text()))),
		heavy(entry("drinks_mixed", "two drinks with extract and gas poured together: volume, strength, gravity, extract and CO2",
			"masses add; densities by OIML R 22 and ICUMSA SPS-4; what gas is lost in pouring is not counted",
			of2(takesGassed("first", 40, 4.6, 0.2, 1.5), takesGassed("second", 20, 0, 10, 0), mixGassed),
			from(func(g gassed) units.Volume { return g.volume }, "volume", units.Litre, "together, at 20 °C"),
			from(func(g gassed) units.StrengthByVolume { return g.liquid.ByVolume() }, "strength", units.PercentVolume, "together"),
			numberFrom(func(g gassed) float64 { return sgOf(g.liquid) }, "gravity", "", "together, 20/20 °C"),
			from(func(g gassed) units.Extract { return g.liquid.RealExtract() }, "extract", units.DegreePlato, "real extract together"),
			from(func(g gassed) units.CarbonDioxideContent { return g.gas }, "content", units.GramCO2PerLitre, "CO2 together"))),
		heavy(entry("drink_acid_to_ph", "acid that brings a fermented drink to a pH, by the pH that a meter shows in it with its gas stirred out",
			"charge balance; weak acids of NIST 46; titratable acidity to pH 8.2 as citric acid",
			of5(takes("volume", units.Litre, "of the drink", 0.001, 1e6, 60), takesNumber("ph", "", "of the drink now, without its gas", 2.5, 7, 3.8),
				takesNumber("ph_wanted", "", "wanted", 2.5, 7, 3.4), picksBy("acid", "pure, as a powder", acids, namesOf(acids)...), takesWeakAcids(), drinkAcid),
			from(func(a acidified) units.Mass { return a.Dose.Mass }, "mass", units.Gram, "acid to weigh"),
			from(func(a acidified) units.MassConcentration { return a.Concentration }, "added", units.GramPerLitre, "of it in the drink"),
			from(func(a acidified) units.MassConcentration { return a.Before }, "acidity_before", units.GramPerLitre, "titratable acidity, as citric acid"),
			from(func(a acidified) units.MassConcentration { return a.After }, "acidity_after", units.GramPerLitre, "the same with it"),
			saysAlways[acidified](water.AcidBurns.Text(), law.CheckTheLaw.Text()))),
		heavy(entry("gravity_from_weight_lost", "gravity and strength of a ferment by what a scale under it has lost",
			"balance of the yield: sugar used = (CO2 gone + CO2 dissolved)/CO2 of a gram of sugar; a moist gas takes 0.7 to 1.5 % of its mass with it",
			of4(takes("sugar", units.Kilogram, "white sugar in the wash", 0.001, 1e6, 4.3), takes("water", units.Kilogram, "water in the wash", 0.01, 1e7, 56),
				takes("lost", units.Kilogram, "since the yeast was pitched", 0, 1e6, 1.2),
				takes("dissolved", units.GramCO2PerLitre, "CO2 that the liquid still holds", 0, 10, 1.5).or(1.5), byWeightLost),
			numberFrom(func(w weighed) float64 { return sgOf(w.liquid) }, "gravity", "", "now, 20/20 °C, without salts"),
			from(func(w weighed) units.StrengthByVolume { return w.liquid.ByVolume() }, "strength", units.PercentVolume, "now"),
			stated(func(w weighed) float64 { return 100 * (1 - w.left()/w.sugar.In(units.Kilogram)) }, "used", units.Percent, "of the sugar"),
			stated(func(w weighed) float64 { return 1000 * w.left() / w.liquid.VolumeAt20().In(units.Litre) }, "left", units.GramPerLitre, "fermentable sugar"),
			saysAlways[weighed](notDry))),
	}
}
