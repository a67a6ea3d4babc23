package nutrient_test

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient"
	"example.org/zymase/units"
	"example.org/zymase/water"
	"github.com/shopspring/decimal"
)

// well is the soft water of the village hall, treated.
func well() water.Profile {
	p, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(38),
		water.Calcium.At(units.MilligramPerLitre.Of(14)), water.Potassium.At(units.MilligramPerLitre.Of(1)))
	return p
}

func hall() nutrient.Ferment {
	b, _ := nutrient.SugarForStrength(nutrient.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	return nutrient.Ferment{
		Brew: b, Water: well(), Temperature: units.Celsius.Of(20), Additions: 3,
		Feed: []nutrient.Dose{{Source: nutrient.DiammoniumPhosphate(), Mass: units.Gram.Of(19)}},
	}
}

// Why did it stop? The pH of a wash fed with ammonium phosphate in soft water.
func ExampleFerment_Course() {
	c, err := hall().Course(4)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range c.Points {
		fmt.Printf("%s of the sugar: SG %.3f, pH %.1f (%.1f to %.1f)\n", p.Used.Text(units.Percent, 0), p.Gravity.SG(), p.PH.Value, p.PH.Low, p.PH.High)
	}
	fmt.Println(c.Cautions[0])
	fmt.Println(nutrient.NitrogenGoneBy().Value.Text(units.Percent, 0), "of the sugar is used when the nitrogen is gone; hold the pH above", nutrient.FloorPH().Value, "and pitch below", nutrient.PitchPH().Value)
	// Output:
	// 0 % of the sugar: SG 1.028, pH 8.0 (8.0 to 8.0)
	// 25 % of the sugar: SG 1.020, pH 3.6 (3.5 to 3.8)
	// 50 % of the sugar: SG 1.011, pH 2.9 (2.9 to 3.0)
	// 75 % of the sugar: SG 1.003, pH 2.9 (2.9 to 3.0)
	// 100 % of the sugar: SG 0.994, pH 2.9 (2.9 to 3.0)
	// The pH falls to about 2.9: yeast is likely to stop with sugar left. Add a buffer, or feed amino nitrogen in place of ammonium.
	// 50 % of the sugar is used when the nitrogen is gone; hold the pH above 3.5 and pitch below 8.3
}

// The pH at the end alone, in a third of the time.
func ExampleFerment_PH() {
	end, _ := hall().PH(units.Percent.Of(100))
	fmt.Printf("%.1f\n", end)
	// Output: 2.9
}

// One point of the course: what is in the liquid at the end.
func ExampleFerment_At() {
	p, _ := hall().At(units.Percent.Of(100))
	fmt.Println(p.Strength.Text(units.PercentVolume, 1), p.Balance.DryYeast.Text(units.Gram, 0), "of new yeast, nitrogen left", p.Nitrogen.Text(units.MilligramPerLitre, 0))
	// Output: 4.6 % vol 63 g of new yeast, nitrogen left 0 mg/L
}

// The potassium bicarbonate that holds pH 3.5, and the ions it leaves.
func ExampleFerment_BufferFor() {
	d, _ := hall().BufferFor(3.5, nutrient.PotassiumBicarbonate)
	fmt.Println(d.Mass.Value.Text(units.Gram, 0), "of", d.Buffer, "from", d.Mass.Low.Text(units.Gram, 0), "to", d.Mass.High.Text(units.Gram, 0))
	fmt.Println("potassium", d.Water.Ion(water.Potassium).Text(units.MilligramPerLitre, 0), "alkalinity", d.Water.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0))
	sodium, potassium, _ := nutrient.Taste()
	fmt.Println("taste from", potassium.Value.Text(units.MilligramPerLitre, 0), "of potassium,", sodium.Value.Text(units.MilligramPerLitre, 0), "of sodium")
	// Output:
	// 15 g of potassium bicarbonate from 11 g to 20 g
	// potassium 101 mg/L alkalinity 166 mg/L as CaCO3
	// taste from 400 mg/L of potassium, 200 mg/L of sodium
}

// It stopped half way at pH 2.8: lift it so that it ends at 3.6.
func ExampleFerment_Correct() {
	c, err := hall().Correct(units.Percent.Of(50), 2.8, 3.6, nutrient.PotassiumBicarbonate)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(c.Dose.Mass.Value.Text(units.Gram, 0), "from", c.Dose.Mass.Low.Text(units.Gram, 0), "to", c.Dose.Mass.High.Text(units.Gram, 0))
	fmt.Printf("pH %.1f once it is stirred in, %.1f at the end, %.1f with the most acids\n", c.Now.Value, c.End.Value, c.End.Low)
	fmt.Println(c.Cautions[0])
	// Output:
	// 20 g from 16 g to 26 g
	// pH 4.1 once it is stirred in, 3.6 at the end, 3.4 with the most acids
	// Add half of the dose, stir, wait for the gas to leave, and measure again before the rest.
}

// Every atom of a kilogram of hexose with 1 g of ammonium nitrogen.
func ExampleMetabolism_Ferment() {
	m := nutrient.UsualMetabolism()
	b, _ := m.Ferment(nutrient.Substrate{Hexose: units.Kilogram.Of(1), Ammonium: units.Gram.Of(1)})
	fmt.Println(b.Ethanol.Text(units.Gram, 1), "ethanol", b.CO2.Text(units.Gram, 1), "CO2", b.Glycerol.Text(units.Gram, 1), "glycerol", b.Succinic.Text(units.Gram, 1), "succinic acid", b.DryYeast.Text(units.Gram, 1), "yeast")
	fmt.Println("H+ set free:", b.Protons.Text(units.Millimole, 1), "for", 1000/14.007, "mmol of ammonium")
	in, out := b.Ledgers()
	fmt.Printf("carbon %.6f mol in, %.6f out; charge %.6f in, %.6f out\n", in.C, out.C, in.Charge, out.Charge)
	y, _ := b.Yield(units.Kilogram.Of(0.95))
	fmt.Printf("as a yield of sucrose: %.3f\n", y.Ethanol())
	most := m.MostAcids().Succinic
	least := m.LeastAcids().Succinic
	fmt.Println("succinic acid from", least.Text(units.Percent, 2), "to", most.Text(units.Percent, 2), "of the hexose")
	// Output:
	// 478.5 g ethanol 464.6 g CO2 30.0 g glycerol 6.4 g succinic acid 15.6 g yeast
	// H+ set free: 71.4 mmol for 71.39287499107589 mmol of ammonium
	// carbon 33.304469 mol in, 33.304469 out; charge 0.071393 in, 0.071393 out
	// as a yield of sucrose: 0.504
	// succinic acid from 0.25 % to 0.85 % of the hexose
}

// Nitrogen, some of it amino, and zinc at the least cost.
func ExampleBestFeed() {
	f, _ := nutrient.BestFeed(
		nutrient.Wants{Nitrogen: units.MilligramPerLitre.Of(80), Amino: units.MilligramPerLitre.Of(10), Zinc: units.MilligramPerLitre.Of(0.5)},
		units.Litre.Of(60), nutrient.US,
		nutrient.Offer{Source: nutrient.DiammoniumPhosphate(), Price: decimal.RequireFromString("9.50")},
		nutrient.Offer{Source: nutrient.AutolysedYeast(), Price: decimal.RequireFromString("38")},
		nutrient.Offer{Source: nutrient.ZincSulfateHeptahydrate(), Price: decimal.RequireFromString("30")},
	)
	for _, d := range f.Doses {
		fmt.Println(d.Source, d.Mass.Text(units.Gram, 2))
	}
	fmt.Println("phosphorus too:", f.Supply.Phosphorus.Text(units.MilligramPerLitre, 0))
	// Output:
	// diammonium phosphate 19.80 g
	// autolysed yeast 15.00 g
	// zinc sulfate heptahydrate 0.13 g
	// phosphorus too: 81 mg/L
}

// What 20 g of a blend with 12 % nitrogen on its label, a third of it amino, brings to 60 L.
func ExampleByLabel() {
	blend, err := nutrient.ByLabel("yeast food", nutrient.AmmoniumPhosphate, nutrient.Shares{
		AmmoniumNitrogen: units.Percent.Of(8), AminoNitrogen: units.Percent.Of(4), Phosphorus: units.Percent.Of(10),
	})
	if err != nil {
		fmt.Println(err)
		return
	}
	s, _ := nutrient.Brings(units.Litre.Of(60), nutrient.Dose{Source: blend, Mass: units.Gram.Of(20)})
	fmt.Println(s.Nitrogen().Text(units.MilligramPerLitre, 1), "of it amino", s.Amino.Text(units.MilligramPerLitre, 1), "from", blend.Evidence())
	// Output: 40.0 mg/L of it amino 13.3 mg/L from the label (read)
}

// The sources by name, and what each holds.
func ExampleSources() {
	for _, s := range nutrient.Sources()[:6] {
		fmt.Println(s.Name(), s.Nitrogen().Text(units.Percent, 2), "N,", s.Shares().Phosphorus.Text(units.Percent, 2), "P,", s.Group())
	}
	// Output:
	// diammonium phosphate 21.21 % N, 23.46 % P, ammonium phosphate
	// monoammonium phosphate 12.18 % N, 26.93 % P, ammonium phosphate
	// ammonium sulfate 21.20 % N, 0.00 % P, ammonium sulfate
	// ammonium chloride 26.19 % N, 0.00 % P, no listed substance
	// urea 46.65 % N, 0.00 % P, no listed substance
	// autolysed yeast 4.00 % N, 1.30 % P, no listed substance
}

// Limits in law, exact to the digit.
func ExampleLimits() {
	for _, l := range nutrient.Limits(nutrient.US, nutrient.AmmoniumPhosphate) {
		n, unit := l.Amount()
		fmt.Println(n, unit, "=", l.GramsPerLitre(5), "g/L, printed", l.Printed+",", l.Scope+",", l.Article)
	}
	l, ok := nutrient.LimitIn(nutrient.EU, nutrient.Thiamine, nutrient.Wine)
	fmt.Println(ok, l)
	fmt.Println(l.Allows(units.MilligramPerLitre.Of(0.7)))
	// Output:
	// 8 lb/1000 US gal = 0.95861 g/L, printed 0.96 g/L, wine, 27 CFR 24.246 (2015 edition)
	// 10 lb/1000 US gal = 1.19826 g/L, printed 1.2 g/L, distilling material, 27 CFR 24.247 (editions of 2015 and after 2022)
	// true thiamine hydrochloride: at most 0.6 mg/L as thiamine, wine, Reg. (EU) 2019/934 annex I part A (2019), EU (recalled from memory); check the law in force
	// false
}

// A must with 60 mg/L of ammonia and 90 mg/L of alpha amino nitrogen.
func ExampleAssimilable() {
	n, _ := nutrient.Assimilable(units.MilligramPerLitre.Of(60), units.MilligramPerLitre.Of(90))
	fmt.Println(n.Text(units.MilligramPerLitre, 0))
	// Output: 139 mg/L
}

// Waking 40 g of wine yeast for a wash of 18 °C.
func ExampleRehydrate() {
	r, _ := nutrient.Rehydrate(units.Gram.Of(40), nutrient.WineYeast, units.Celsius.Of(18))
	fmt.Println(r.Water.Low.Text(units.Litre, 1), "to", r.Water.High.Text(units.Litre, 1), "at", r.Temperature.Value.Text(units.Celsius, 0), "for", r.Time)
	for _, t := range r.Steps {
		fmt.Println("then", t.Text(units.Celsius, 1), "after", r.StepPause)
	}
	// Output:
	// 0.4 L to 0.8 L at 38 °C for 20m0s
	// then 27.5 °C after 5m0s
	// then 18.0 °C after 5m0s
}

// A starter that takes 80 billion cells to 200.
func ExampleStarterFor() {
	have, _ := nutrient.BillionCells(80)
	want, _ := nutrient.BillionCells(200)
	s, _ := nutrient.StarterFor(have, want, units.DegreePlato.Of(10))
	fmt.Println(s.Extract.Text(units.Gram, 0), "of extract in", s.Volume.Text(units.Litre, 2), "grow", s.Grown, "and hold", s.Feed.Text(units.Gram, 2), "of nitrogen")
	// Output: 113 g of extract in 1.08 L grow 120 billion cells and hold 0.60 g of nitrogen
}

// Does the nitrogen let the yeast double often enough?
func ExampleCheckPitch() {
	p, _ := hall().At(units.Percent.Of(100))
	pitched, _ := nutrient.BillionCells(420)
	c, _ := nutrient.CheckPitch(pitched, p.Balance)
	grown, _ := nutrient.Grown(p.Balance.DryYeast)
	fmt.Printf("%.1f doublings (%.1f to %.1f); %s grow\n", c.Doublings.Value, c.Doublings.Low, c.Doublings.High, grown.Value)
	// Output: 2.0 doublings (1.7 to 2.2); 1260 billion cells grow
}

// Liquid yeast, two months old.
func ExampleLiquidPack() {
	p, _ := nutrient.LiquidPack(nutrient.Cells{})
	alive, _ := p.Alive(60 * 24 * time.Hour)
	fmt.Println(p.Form(), alive, "-", p.Evidence())
	rate, _ := nutrient.MillionPerPlato(0.75)
	cells, _ := nutrient.CellsToPitch(units.Litre.Of(20), units.DegreePlato.Of(12), rate)
	n, _ := p.Need(cells, 60*24*time.Hour)
	fmt.Printf("%.1f packs for %s\n", n.Packs, cells)
	pitch, peak := nutrient.WinePitch()
	fmt.Println("wine:", pitch.Low, "to", pitch.High, "million a mL, growing to", peak.Value)
	// Output:
	// liquid 65.7 billion cells - common practice, no source
	// 2.7 packs for 180 billion cells
	// wine: 3 to 4 million a mL, growing to 125
}

// Heat of 4.42 kg of sugar by each published value, and the power that holds the
// temperature on the busiest day.
func ExampleHeatRates() {
	sugar := units.Kilogram.Of(4.42)
	for _, h := range nutrient.HeatRates() {
		q, _ := h.Of(sugar)
		rise, _ := h.Rise(sugar, units.Litre.Of(60))
		fmt.Printf("%s: %.0f kJ/kg, %s, %s if nothing cools it\n", h.Name(), h.KilojoulesPerKilogram(), q.Text(units.Kilojoule, 0), rise.Text(units.KelvinDifference, 1))
	}
	busy, _ := units.TryTimes(sugar, nutrient.BusiestDay().Value.In(units.Fraction))
	w, _ := nutrient.UsualHeat().CoolingPower(busy, 24*time.Hour)
	fmt.Println(w.Text(units.Watt, 0))
	// Output:
	// usual: 587 kJ/kg, 2593 kJ, 10.8 K if nothing cools it
	// usual, higher: 652 kJ/kg, 2884 kJ, 12.0 K if nothing cools it
	// thermochemical: 563 kJ/kg, 2488 kJ, 10.4 K if nothing cools it
	// 10 W
}

// 60 L in a fermenter of 65 L.
func ExampleHeadSpaceNeed() {
	h, _ := nutrient.HeadSpaceNeed(units.Litre.Of(65), units.Litre.Of(60), false)
	fmt.Println(h.Room.Text(units.Litre, 0), "of room,", h.Wanted.Text(units.Litre, 0), "wanted, lead the foam off:", h.BlowOff)
	// Output: 5 L of room, 6 L wanted, lead the foam off: true
}

// When the additions go in, and about when that is.
func ExampleStageShares() {
	all, _ := nutrient.StageShares(3)
	for _, s := range all {
		d, _ := nutrient.EstimatedTime(s, 8*24*time.Hour)
		fmt.Println(s.Text(units.Percent, 0), "after about", d.Round(time.Hour))
	}
	// Output:
	// 0 % after about 12h0m0s
	// 17 % after about 42h0m0s
	// 33 % after about 72h0m0s
}

// What sugar, a soft water and one salt leave the yeast short of.
func ExampleFerment_OtherNeeds() {
	needs, _ := hall().OtherNeeds()
	for _, n := range needs {
		if n.Short() {
			fmt.Printf("%s: %.2f of %.2f mg/L; %s\n", n.Name, n.Have.In(units.MilligramPerLitre), n.Need.Value.In(units.MilligramPerLitre), n.Brings)
		}
	}
	// Output:
	// potassium: 0.96 of 300.00 mg/L; potassium bicarbonate
	// magnesium: 0.00 of 5.00 mg/L; Epsom salt
	// zinc: 0.00 of 0.15 mg/L; zinc sulfate, as a stock solution
	// thiamine: 0.00 of 0.50 mg/L; thiamine hydrochloride, or autolysed yeast
	// other vitamins: 0.00 of 11.50 mg/L; autolysed yeast, or a complete yeast food
}
