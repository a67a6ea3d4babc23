package main

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func acidFromTheBottle() Problem {
	return Problem{
		Title: "Acid as it is sold",
		Ask:   "How much phosphoric acid of 85 % holds 0.15 mol, and how strong is it?",
		Given: []string{"phosphoric acid 85 % by mass, density 1.69 g/mL", "0.15 mol wanted"},
		Source: Source{ByHand, "H3PO4 is 97.994 g/mol. A litre weighs 1690 g and holds 1690 × 0.85/97.994 = 14.659 mol. 0.15 mol are 0.15 × 97.994/0.85 = " +
			"17.293 g, or 17.293/1.69 = 10.233 mL."},
		Work: func(w *Working) {
			bottle := must(water.PhosphoricAcid.AsSold(units.Percent.Of(85), units.GramPerMillilitre.Of(1.69)))
			n := units.Mole.Of(0.15)
			dose := must(water.PhosphoricAcid.Dose(n, bottle))
			litre := n.In(units.Mole) / dose.Volume().In(units.Litre)
			w.Step("A litre of it holds %.3f mol/L.", litre)
			w.Step("0.15 mol are %s of it as weighed.", dose.Mass.Text(units.Gram, 2))
			w.Answer("amount in a litre", litre, 3, "mol/L", 14.659, 0.0005)
			w.Answer("mass", dose.Mass.In(units.Gram), 2, "g", 17.293, 0.0005)
			w.Answer("volume", dose.Volume().In(units.Millilitre), 2, "mL", 10.233, 0.0005)
			w.Caution(water.AcidCautions().Texts()...)
		},
	}
}

func acidAgainstAlkalinity() Problem {
	return Problem{
		Title: "One alkalinity, three acids",
		Ask:   "60 L shall come from 144 to 50 mg/L of alkalinity. How many moles of lactic, phosphoric and sulfuric acid does that take?",
		Given: []string{"60 L of " + moderateWater, "target 50 mg/L as CaCO3"},
		Source: Source{ByHand, "(144 − 50)/50.043 = 1.87838 mEq/L × 60 = 112.70 mEq. Lactic acid gives one proton, phosphoric one on the way to the end " +
			"point of the titration: 112.70 mmol each. Sulfuric acid gives two: 56.35 mmol."},
		Work: func(w *Working) {
			p, v, want := moderate(units.Celsius.Of(20)), units.Litre.Of(60), units.MilligramPerLitreCaCO3.Of(50)
			for _, a := range []struct {
				acid  water.Acid
				check float64
			}{{water.LacticAcid, 112.70}, {water.PhosphoricAcid, 112.70}, {water.SulfuricAcid, 56.35}} {
				n := must(p.AcidToAlkalinity(a.acid, want, v))
				w.Step("%s of %s leave %s.", n.Text(units.Millimole, 1), a.acid, must(p.AddAcid(a.acid, n, v)).Alkalinity().Text(units.MilligramPerLitreCaCO3, 1))
				w.Answer(a.acid.String(), n.In(units.Millimole), 1, "mmol", a.check, 0.01)
			}
			w.Caution(water.AcidCautions().Texts()...)
		},
	}
}

func twoConventions() Problem {
	return Problem{
		Title: "One drink, two titratable acidities",
		Ask:   "A drink holds 40 mmol/L of lactic acid and nothing else that counts. What is its titratable acidity in Europe's wine, in France's, in a US brewery?",
		Given: []string{"lactic acid 40 mmol/L, 3.603 g/L", "CO2 driven out, 20 °C"},
		Source: Source{ByHand, "pK 3.86: at pH 7.0 a share of 10^(3.86 − 7)/0.83 = 0.0009 is not neutralised, at pH 8.2 none. 40 × 0.9991 = 39.97 mEq/L. " +
			"As tartaric acid, 75.043 g to the equivalent: 2.999 g/L; as sulfuric, 49.036: 1.960 g/L. " +
			"To pH 8.2 as lactic, 90.078: 3.603 g/L."},
		Work: func(w *Working) {
			litre := units.Litre.Of(1)
			p := must(must(water.Distilled(units.Celsius.Of(20))).AddAcid(water.LacticAcid, units.Millimole.Of(40), litre))
			oiv, france := must(p.TitratableAcidity(water.TartaricAcid.TitratedTo(7))), must(p.TitratableAcidity(water.SulfuricAcid.TitratedTo(7)))
			us := must(p.TitratableAcidity(water.LacticAcid.TitratedTo(8.2)))
			w.Step("To pH %.1f as %s: %s.", 7.0, water.TartaricAcid, oiv.Text(units.GramPerLitre, 3))
			w.Step("To pH %.1f as %s: %s; to pH %.1f as %s: %s.", 7.0, water.SulfuricAcid, france.Text(units.GramPerLitre, 3),
				8.2, water.LacticAcid, us.Text(units.GramPerLitre, 3))
			w.Step("The French figure from the other by the masses of an equivalent: %s.",
				must(water.ConvertAcidity(oiv, water.TartaricAcid, water.SulfuricAcid)).Text(units.GramPerLitre, 3))
			w.Answer("as tartaric acid", oiv.In(units.GramPerLitre), 3, "g/L", 2.999, 0.003)
			w.Answer("as sulfuric acid", france.In(units.GramPerLitre), 3, "g/L", 1.960, 0.002)
			w.Answer("as lactic acid", us.In(units.GramPerLitre), 3, "g/L", 3.603, 0.003)
		},
	}
}

func acidityFactors() Problem {
	return Problem{
		Title: "The factors between acidities",
		Ask:   "A wine has 6 g/L as tartaric acid. What is that as sulfuric, as malic and as citric acid?",
		Given: []string{"6 g/L as tartaric acid"},
		Source: Source{Recalled, "Factors of wine analysis from tartaric acid, after OIV-MA-AS313-01: sulfuric 0.653, malic 0.893, citric 0.853; so 3.918, " +
			"5.358 and 5.118 g/L. They rest on rounded equivalents, so 0.006 is allowed."},
		Work: func(w *Working) {
			have := units.GramPerLitre.Of(6)
			w.Step("An equivalent of tartaric acid is half a mole, %.3f g; of citric acid a third, %.3f g.", water.TartaricAcid.MolarMass().In(units.GramPerMole)/2,
				water.CitricAcid.MolarMass().In(units.GramPerMole)/3)
			w.Step("There is %.1f mEq/L of acid in all, whatever it is called.",
				1000*have.In(units.GramPerLitre)/(water.TartaricAcid.MolarMass().In(units.GramPerMole)/2))
			for _, a := range []struct {
				acid  water.Acid
				check float64
			}{{water.SulfuricAcid, 3.918}, {water.MalicAcid, 5.358}, {water.CitricAcid, 5.118}} {
				w.Answer("as "+a.acid.String(), must(water.ConvertAcidity(have, water.TartaricAcid, a.acid)).In(units.GramPerLitre), 3, "g/L", a.check, 0.006)
			}
		},
	}
}

func threeBases() Problem {
	return Problem{
		Title: "Alkalinity with and without sodium",
		Ask: "60 L of a soft water shall come from 25 to 75 mg/L of alkalinity. How much baking soda, potassium bicarbonate or slaked lime, and what else " +
			"does each bring?",
		Given: []string{"60 L, alkalinity 25 mg/L as CaCO3", "target 75 mg/L"},
		Source: Source{ByHand, "50/50.043 = 0.99914 mEq/L × 60 = 59.948 mEq. NaHCO3 84.006 g to the equivalent: 5.036 g. KHCO3 100.114: 6.002 g. Ca(OH)2 " +
			"74.092/2 = 37.046: 2.221 g. " +
			"The lime brings half a mole of calcium to the equivalent: 0.99914 × 40.078/2 = 20.0 mg/L."},
		Work: func(w *Working) {
			p := must(water.NewProfile(units.Celsius.Of(15), units.MilligramPerLitreCaCO3.Of(25)))
			v, want := units.Litre.Of(60), units.MilligramPerLitreCaCO3.Of(75)
			for _, b := range []struct {
				salt  material.Material
				check float64
			}{{material.BakingSoda(), 5.036}, {material.PotassiumBicarbonate(), 6.002}, {material.SlakedLime(), 2.221}} {
				m := must(p.BaseToAlkalinity(b.salt, want, v))
				after := must(p.Add(v, b.salt.Dose(m)))
				w.Step("%s of %s: sodium %s, potassium %s, calcium %s.", m.Text(units.Gram, 2), b.salt, after.Ion(water.Sodium).Text(units.MilligramPerLitre, 1),
					after.Ion(water.Potassium).Text(units.MilligramPerLitre, 1), after.Ion(water.Calcium).Text(units.MilligramPerLitre, 1))
				w.Answer(b.salt.String(), m.In(units.Gram), 3, "g", b.check, 0.001)
				if b.salt == material.SlakedLime() {
					w.Answer("calcium from the lime", after.Ion(water.Calcium).In(units.MilligramPerLitre), 1, "mg/L", 20.0, 0.05)
				}
			}
			w.Caution(material.Burns.Text())
		},
	}
}

func lyeInSoftWater() Problem {
	return Problem{
		Title: "Lye in a water with CO2",
		Ask:   "100 L of a closed water with 1 mmol/L of sodium bicarbonate show pH 6.5 at 25 °C. How much sodium hydroxide brings it to pH 7.0?",
		Given: []string{"Na 22.99 mg/L, alkalinity 50.043 mg/L as CaCO3", "pH 6.5 at 25 °C, closed"},
		Source: Source{ByHand, "pK1 6.3519 at 25 °C (Plummer & Busenberg 1982), γ of HCO3− 0.965. A litre is 0.9982 kg, so HCO3− is 1.0018 mmol/kg " +
			"and CO2 1.0018 × 0.965 × 10^(6.3519 − 6.5) = 0.6874. Carbon 1.6892. At pH 7.0 CO2/HCO3− = 0.965 × 10^(6.3519 − 7) = 0.2170: " +
			"HCO3− = 1.6892/1.2170 = 1.3880. Lye 0.3862 mmol/kg and 0.0010 for CO3−2: 0.3872 × 0.9982 × 39.997 mg × 100 L = 1.546 g."},
		Work: func(w *Working) {
			p := must(must(water.NewProfile(units.Celsius.Of(25), units.MilligramPerLitreCaCO3.Of(50.043),
				water.Sodium.At(units.MilligramPerLitre.Of(22.99)))).WithPH(6.5))
			d := must(p.BaseToPH(material.SodiumHydroxide(), 7, units.Litre.Of(100)))
			w.Step("Carbon before %s; a closed water keeps it, lye turns CO2 into HCO3−.", must(p.Equilibrium()).InorganicCarbon().Text(units.MillimolePerLitre, 3))
			w.Step("CO2 falls from %s to %s.", must(p.Equilibrium()).Of(water.CarbonDioxide).Text(units.MillimolePerLitre, 3),
				must(d.Water.Equilibrium()).Of(water.CarbonDioxide).Text(units.MillimolePerLitre, 3))
			w.Step("Baking soda in its place would take %s, as it brings carbon of its own.",
				must(p.BaseToPH(material.BakingSoda(), 7, units.Litre.Of(100))).Dose.Mass.Text(units.Gram, 0))
			w.Answer("sodium hydroxide", d.Dose.Mass.In(units.Gram), 2, "g", 1.546, 0.01)
			w.Caution(d.Cautions.Texts()...)
		},
	}
}

func limeWater() Problem {
	return Problem{
		Title: "Lime water",
		Ask:   "Slaked lime stands over pure water at 25 °C without air. What is the pH of the clear water above, and what does it hold?",
		Given: []string{"pure water, 25 °C, portlandite, no CO2"},
		Source: Source{Recalled, "R. G. Bates, Determination of pH (1973): the standard of calcium hydroxide saturated at 25 °C has pH 12.454; it holds " +
			"0.0203 mol/L, 0.0203 × 74.092 = 1.504 g/L. A saturation is met within 3 %, a pH within 0.02."},
		Work: func(w *Working) {
			d := must(must(water.Distilled(units.Celsius.Of(25))).AtRestWith(water.Portlandite, water.CO2LostTo(units.AbsolutePressure{})))
			w.Step("Calcium %s, of which %s stand as CaOH+.", d.Equilibrium.Water().Ion(water.Calcium).Text(units.MilligramPerLitre, 0),
				d.Equilibrium.Of(must(water.ParseSpecies("CaOH+"))).Text(units.MillimolePerLitre, 2))
			w.Step("60 L of it would take %.0f g of lime.", 60*d.Amount.In(units.MillimolePerLitre)/1000*material.SlakedLime().MolarMass().In(units.GramPerMole))
			w.Answer("pH", d.Equilibrium.PH(), 2, "", 12.454, 0.02)
			w.Answer("lime dissolved", d.Amount.In(units.MillimolePerLitre)/1000*material.SlakedLime().MolarMass().In(units.GramPerMole), 2, "g/L", 1.504, 0.045)
			w.Caution(material.Burns.Text())
		},
	}
}
