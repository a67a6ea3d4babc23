package main

import (
	"github.com/shopspring/decimal"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

func nitrogenChapter() Chapter {
	return Chapter{
		Title: "15 Feeding the yeast",
		Intro: "Sugar and water hold no nitrogen. What yeast needs is known within a factor of two, what a salt brings to four digits.",
		Problems: []Problem{
			nitrogenInPhosphate(), limitsInLaw(), mustAnalysis(), needOfAMust(), needOfTheWash(), feedInThree(), cheapestFeed(), zincByTheGrain(),
		},
	}
}

func nitrogenInPhosphate() Problem {
	return Problem{
		Title:  "Nitrogen in diammonium phosphate",
		Ask:    "How much nitrogen and phosphorus is in diammonium phosphate, and how much nitrogen does the US limit for wine allow?",
		Given:  []string{"(NH4)2HPO4", "limit 8 lb/1000 US gal"},
		Source: Source{ByHand, "2 × 14.007/132.056 = 21.214 % N; 30.974/132.056 = 23.455 % P. 0.95861 g/L × 0.21214 = 203.4 mg/L."},
		Work: func(w *Working) {
			dap := material.DiammoniumPhosphate()
			limit := must(law.US.Limits(law.AmmoniumPhosphate, law.Wine))[0]
			w.Step("%s: %s N, %s P.", dap, dap.Composition().Nitrogen().Text(units.Percent, 3), dap.Composition().Phosphorus.Text(units.Percent, 3))
			w.Step("%s", limit)
			n := limit.Concentration().In(units.MilligramPerLitre) * dap.Composition().Nitrogen().In(units.Fraction)
			w.Answer("nitrogen", dap.Composition().Nitrogen().In(units.Percent), 2, "%", 21.214, 0.005)
			w.Answer("phosphorus", dap.Composition().Phosphorus.In(units.Percent), 2, "%", 23.455, 0.005)
			w.Answer("nitrogen at the limit", n, 1, "mg/L", 203.4, 0.05)
			w.Caution(law.CheckTheLaw.Text())
		},
	}
}

func limitsInLaw() Problem {
	return Problem{
		Title: "Small print in pounds",
		Ask:   "What do the US limits for thiamine (0.005 lb/1000 gal), citric acid (5.8) and ammonium phosphate in distilling material (10) come to?",
		Given: []string{"limits in lb/1000 US gal"},
		Source: Source{Read, "27 CFR 24.246 (2015 edition) prints 0.6 mg/L (0.0006 g/L) and 0.7 g/L; 27 CFR 24.247 prints 1.2 g/L. T.D. TTB-185 amended the " +
			"sections in 2022: check the law in force."},
		Work: func(w *Working) {
			for _, row := range []struct {
				s             law.Substance
				scope         law.Scope
				print, within float64 // g/L
				places        int
			}{{must(law.ParseSubstance("thiamine hydrochloride")), law.Wine, 0.0006, 0.00005, 4},
				{must(law.ParseSubstance("citric acid")), law.Wine, 0.7, 0.05, 1}, {law.AmmoniumPhosphate, law.DistillingMaterial, 1.2, 0.05, 1}} {
				l := must(law.US.Limits(row.s, row.scope))[0]
				n, unit := l.Amount()
				w.Step("%s in %s: %s %s = %s g/L (%s).", row.s, row.scope, n, unit, l.GramsPerLitre(6), l.Article)
				w.Answer(row.s.String(), l.Concentration().In(units.GramPerLitre), row.places, "g/L", row.print, row.within)
			}
			w.Caution(law.CheckTheLaw.Text())
		},
	}
}

func mustAnalysis() Problem {
	return Problem{
		Title:  "What a must brings",
		Ask:    "A must holds 60 mg/L of ammonia and 90 mg/L of alpha amino nitrogen. How much can the yeast use?",
		Given:  []string{"NH3 60 mg/L", "alpha amino N 90 mg/L"},
		Source: Source{Read, "Australian Wine Research Institute, page on yeast assimilable nitrogen: 0.8225 × NH3 + alpha amino N = 49.35 + 90 = 139.35 mg/L."},
		Work: func(w *Working) {
			n := must(nutrient.Assimilable(units.MilligramPerLitre.Of(60), units.MilligramPerLitre.Of(90)))
			w.Step("Ammonia is %.2f %% nitrogen by the atomic weights.", 100*14.007/must(chemistry.MolarMass("NH3")))
			low := must(nutrient.NeedOfMust("of a white must, low risk", units.DegreePlato.Of(21))).Nitrogen
			w.Step("The Australian Wine Research Institute asks for %s in a white must (%s).", low.Value.Text(units.MilligramPerLitre, 0), low.Evidence.Grade)
			w.Answer("assimilable nitrogen", n.In(units.MilligramPerLitre), 1, "mg/L", 139.35, 0.06)
		},
	}
}

func needOfAMust() Problem {
	return Problem{
		Title:  "The need of a ripe must",
		Ask:    "How much nitrogen does a grape must of 21, 25 and 27 °Bx want?",
		Given:  []string{"21, 25 and 27 °Bx"},
		Source: Source{Recalled, "Bisson & Butzke, Am. J. Enol. Vitic. 51 (2000) 168: 200, 300 and 350 mg/L."},
		Work: func(w *Working) {
			w.Step("200 mg/L at 21 °Bx and 25 mg/L more for each degree; below 21 °Bx the rule is refused.")
			for _, row := range []struct {
				bx    units.Extract
				print float64
			}{{units.DegreePlato.Of(21), 200}, {units.DegreePlato.Of(25), 300}, {units.DegreePlato.Of(27), 350}} {
				n := must(nutrient.NeedOfMust("of a must by its sugar", row.bx))
				w.Answer("at "+row.bx.Text(units.DegreePlato, 0), n.Nitrogen.Value.In(units.MilligramPerLitre), 0, "mg/L", row.print, 0.5)
			}
			sparse := must(nutrient.NeedOfMust("least of a must", units.DegreePlato.Of(21))).Nitrogen.Value
			w.Step("Another author: %s at the least. The methods differ by more than the must does.", sparse.Text(units.MilligramPerLitre, 0))
		},
	}
}

func needOfTheWash() Problem {
	return Problem{
		Title:  "The need of a sugar wash",
		Ask:    "A wash has 74 g/L of sugar to ferment. How much nitrogen does a strain of medium demand want, and how wide is the spread?",
		Given:  []string{"74 g/L of sugar", "strains of low, medium and high demand"},
		Source: Source{Recalled, "Rule of the wine trade: 0.75, 0.9 and 1.25 mg of N for a gram of sugar: 55.5, 66.6 and 92.5 mg/L."},
		Work: func(w *Working) {
			n := must(nutrient.NeedBySugar(units.GramPerLitre.Of(74), nutrient.MediumDemand)).Nitrogen
			w.Step("Nitrogen goes with the sugar: the strain asks for so many milligrams a gram.")
			w.Step("Evidence: %s.", n.Evidence)
			w.Answer("medium", n.Value.In(units.MilligramPerLitre), 1, "mg/L", 66.6, 0.05)
			w.Answer("low", n.Low.In(units.MilligramPerLitre), 1, "mg/L", 55.5, 0.05)
			w.Answer("high", n.High.In(units.MilligramPerLitre), 1, "mg/L", 92.5, 0.05)
		},
	}
}

func feedInThree() Problem {
	return Problem{
		Title: "Fed in three stages",
		Ask:   "60 L want 66.6 mg/L of nitrogen, from diammonium phosphate, weighed to 0.1 g in three additions. What is weighed?",
		Given: []string{"60 L, 66.6 mg/L", "diammonium phosphate, US limit 0.9586 g/L", "three additions, scale to 0.1 g"},
		Source: Source{ByHand, "60 × 66.6 = 3996 mg of N / 0.21214 = 18.837 g, 0.314 g/L, below the limit. Down to 18.8 g in 188 steps: 63 + 63 + 62, so " +
			"6.3, 6.3 and 6.2 g, " +
			"the last when a third of the sugar is used (common practice)."},
		Work: func(w *Working) {
			feed := must(nutrient.FeedInOrder(units.MilligramPerLitre.Of(66.6), units.Litre.Of(60), law.US, nutrient.Offers(material.DiammoniumPhosphate())...))
			s := must(nutrient.InStages(3, must(units.ParseExact[units.Mass]("0.1 g")), feed.Doses...))
			missing := feed.Shortfall.Text(units.MilligramPerLitre, 1)
			if feed.Shortfall.In(units.MilligramPerLitre) < 0.05 {
				missing = "none"
			}
			w.Step("In all %s; missing of the nitrogen wanted: %s.", feed.Doses[0].Mass.Text(units.Gram, 3), missing)
			for _, stage := range s.Stages {
				w.Step("When %s of the sugar is used: %s.", stage.Used.Text(units.Percent, 0), stage.Weigh[0])
			}
			w.Answer("in all", feed.Doses[0].Mass.In(units.Gram), 2, "g", 18.837, 0.005)
			w.Answer("weighed", s.Totals[0].Quantity().In(units.Gram), 1, "g", 18.8, 0)
			w.Answer("last addition", s.Stages[2].Weigh[0].Quantity().In(units.Gram), 1, "g", 6.2, 0)
		},
	}
}

func zincByTheGrain() Problem {
	return Problem{
		Title:  "A pinch of zinc",
		Ask:    "60 L shall get 0.30 mg/L of zinc from zinc sulfate heptahydrate. How much is that?",
		Given:  []string{"60 L, 0.30 mg/L Zn", "ZnSO4·7H2O"},
		Source: Source{ByHand, "287.54/65.38 = 4.398 mg of salt for a milligram of zinc: 0.300 mg/L × 60 L = 18 mg of zinc are 79.2 mg."},
		Work: func(w *Working) {
			zinc := material.ZincSulfateHeptahydrate()
			dose := units.Gram.Of(0.0792)
			s := must(nutrient.SupplyOf(units.Litre.Of(60), material.Dose{Material: zinc, Mass: dose}))
			w.Step("The salt is %s zinc.", zinc.Composition().Zinc.Text(units.Percent, 2))
			w.Step("%s are below what a 0.1 g scale shows: dissolve 0.8 g in 100 mL and take %.1f mL.", dose.Text(units.Milligram, 1), 100*dose.In(units.Gram)/0.8)
			w.Answer("zinc from 79.2 mg", s.Zinc.In(units.MilligramPerLitre), 3, "mg/L", 0.300, 0.0005)
		},
	}
}

func cheapestFeed() Problem {
	return Problem{
		Title: "The cheapest feed that the law allows",
		Ask: "60 L want 150 mg/L of nitrogen. At hand are diammonium phosphate at 12 a kilogram, monoammonium phosphate at 5 and autolysed yeast at 30. " +
			"What is cheapest within the US limits for wine?",
		Given: []string{"60 L, 150 mg/L of nitrogen", "prices 12, 5 and 30 a kilogram", "ammonium phosphates together at most 8 lb/1000 US gal"},
		Source: Source{ByHand, "Nitrogen costs 12/0.212137 = 56.6 a kilogram from DAP, 5/0.121774 = 41.1 from MAP, 30/0.04 = 750 from yeast. MAP alone " +
			"would be 1.2318 g/L, above the limit of 0.958611. With x of DAP in it: 0.212137·x + 0.121774·(0.958611 − x) = 0.150, " +
			"x = 0.368138 g/L: 22.09 g of DAP and 35.43 g of MAP in 60 L, 0.2651 + 0.1771 = 0.442. DAP alone: 0.150/0.212137 × 60 = 42.43 g, 0.509."},
		Work: func(w *Working) {
			price := func(of material.Material, perKilogram int64) nutrient.Offer {
				return nutrient.Offer{Material: of, Price: decimal.NewFromInt(perKilogram)}
			}
			offers := []nutrient.Offer{price(material.DiammoniumPhosphate(), 12), price(material.MonoammoniumPhosphate(), 5), price(material.AutolysedYeast(), 30)}
			need, v := units.MilligramPerLitre.Of(150), units.Litre.Of(60)
			cost := func(f nutrient.Feed) (sum float64) {
				for _, d := range f.Doses {
					for _, o := range offers {
						if o.Material.Name() == d.Material.Name() {
							sum += o.Price.InexactFloat64() * d.Mass.In(units.Kilogram)
						}
					}
				}
				return sum
			}
			f := must(nutrient.CheapestFeed(nutrient.Wants{Nitrogen: need}, v, law.US, offers...))
			one := must(nutrient.CheapestFeed(nutrient.Wants{Nitrogen: need}, v, law.US, offers[0]))
			w.Step("The limit binds: %s of phosphates in 60 L. The dearer salt takes part, as it holds more nitrogen.",
				f.Doses[0].Mass.Plus(f.Doses[1].Mass).Text(units.Gram, 2))
			w.Step("Cost %.3f; with %s of %s alone %.3f.", cost(f), one.Doses[0].Mass.Text(units.Gram, 2), one.Doses[0].Material, cost(one))
			w.Answer("diammonium phosphate", f.Doses[0].Mass.In(units.Gram), 2, "g", 22.09, 0.01)
			w.Answer("monoammonium phosphate", f.Doses[1].Mass.In(units.Gram), 2, "g", 35.43, 0.01)
			w.Answer("cost", cost(f), 3, "", 0.442, 0.0005)
			w.Caution(f.Cautions.Texts()...)
		},
	}
}
