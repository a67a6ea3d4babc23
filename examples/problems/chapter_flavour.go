package main

import (
	"example.org/zymase/carbonation"
	"example.org/zymase/nutrient/finish"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

func flavourByTrial() Problem {
	return Problem{
		Title: "From the tasting glass to the batch",
		Ask: "Half a millilitre of an extract of 40 % vol made 100 mL of a drink of 4.6 % vol right. How much goes into 60 L, what becomes of the " +
			"strength, and how much of the alcohol is the extract's?",
		Given: []string{"0.5 mL in 100 mL", "60 L of 4.6 % vol, extract 40 % vol"},
		Source: Source{ByHand, "60 L × 0.5/100 = 300 mL. Ethanol 60 × 4.6 = 276 and 0.3 × 40 = 12 parts: 288/60.3 = 4.776 % vol, 12/288 = 4.167 % of it " +
			"from the extract. (27 CFR 25.15(b): at most 49 % up to 6 % vol.)"},
		Work: func(w *Working) {
			batch := must(carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.Extract{}))
			litres := batch.VolumeAt20().In(units.Litre)
			whole := must(batch.Times(60 / litres))
			f := must(finish.BenchTrial{Sample: units.Millilitre.Of(100), Added: units.Millilitre.Of(0.5)}.Scale(whole,
				finish.Flavouring{Strength: units.PercentVolume.Of(40)}))
			w.Step("By volume the extract is %s of the finished drink.", f.Ratio.Text(units.Percent, 2))
			w.Step("Before %s, after %s.", f.Before.Text(units.PercentVolume, 2), f.After.Text(units.PercentVolume, 2))
			w.Answer("extract", f.Flavouring.In(units.Millilitre), 0, "mL", 300, 0.1)
			w.Answer("strength after", f.After.In(units.PercentVolume), 3, "% vol", 4.776, 0.002)
			w.Answer("share of the alcohol", f.AlcoholShare.In(units.Percent), 2, "%", 4.167, 0.01)
			w.Caution(f.Cautions.Texts()...)
		},
	}
}

func souredToTaste() Problem {
	return Problem{
		Title: "Lactic acid to a pH, and what it tastes like",
		Ask:   "Water without salts or CO2 shall have pH 3.20 at 20 °C. How much lactic acid of 88 % do 60 L take, and what is the titratable acidity then?",
		Given: []string{"60 L of pure water, no CO2", "lactic acid 88 %, 1.206 g/mL", "titration to pH 8.2, as lactic acid"},
		Source: Source{ByHand, "pK 3.86; a(H+) 10^−3.2 = 0.0006310, γ 0.971, so H+ and lactate are 0.000650 mol/kg; lactic acid not split 0.0006310 × " +
			"0.971 × 0.000650/10^−3.86 = 0.002884. In all 0.003534 mol/kg × 0.9982 × 90.078 = 0.3177 g/L; × 60/0.88 = 21.66 g. " +
			"A titration to pH 8.2 finds all of it: 0.318 g/L. The activity of H+ by another rule moves both by 0.3 %."},
		Work: func(w *Working) {
			bottle := must(water.LacticAcid.AsSold(units.Percent.Of(88), units.GramPerMillilitre.Of(1.206)))
			r := must(finish.Acidify(must(water.Distilled(units.Celsius.Of(20))), bottle, 0, 3.2, water.LacticAcid.TitratedTo(8.2), units.Litre.Of(60), law.US))
			w.Step("Pure acid %s, as sold %s.", r.Concentration.Text(units.GramPerLitre, 3), r.Dose.Mass.Text(units.Gram, 1))
			w.Step("pH and sourness are two things: a buffered drink takes far more acid to the same pH.")
			w.Answer("lactic acid as sold", r.Dose.Mass.In(units.Gram), 1, "g", 21.66, 0.1)
			w.Answer("titratable acidity", r.After.In(units.GramPerLitre), 3, "g/L as lactic acid", 0.318, 0.0015)
			w.Caution(r.Cautions.Texts()...)
		},
	}
}

func finingsByTrial() Problem {
	return Problem{
		Title:  "Finings from a row of glasses",
		Ask:    "Of glasses of 250 mL the one with 20 mg of bentonite fell clear. How much do 60 L take?",
		Given:  []string{"20 mg in 250 mL", "60 L"},
		Source: Source{ByHand, "20/250 × 60,000 mL = 4800 mg, which is 4.80 g, 0.08 g/L."},
		Work: func(w *Working) {
			batch := units.Litre.Of(60)
			m := must(finish.ScaleDose(units.Millilitre.Of(250), units.Milligram.Of(20), batch))
			w.Step("In each litre %.2f g.", m.In(units.Gram)/batch.In(units.Litre))
			w.Step("The row of glasses goes on until more does no more: half of it again is %s.",
				must(finish.ScaleDose(units.Millilitre.Of(250), units.Milligram.Of(10), batch)).Text(units.Gram, 1))
			w.Answer("bentonite", m.In(units.Gram), 2, "g", 4.80, 0.0001)
		},
	}
}
