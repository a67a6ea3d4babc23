package ferment_test

import (
	"fmt"
	"time"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// well is the soft water of the village hall, treated.
func well() water.Profile {
	p, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(38),
		water.Calcium.At(units.MilligramPerLitre.Of(14)), water.Potassium.At(units.MilligramPerLitre.Of(1)))
	return p
}

func hall() ferment.Tank {
	b, _ := sugar.ForStrength(material.WhiteSugar(), units.PercentVolume.Of(4.6), units.Litre.Of(60))
	return ferment.Tank{
		Brew: b, Water: well(), Temperature: units.Celsius.Of(20), Additions: 3,
		Feed: []material.Dose{{Material: material.DiammoniumPhosphate(), Mass: units.Gram.Of(19)}},
	}
}

// Why did it stop? The pH of a wash fed with ammonium phosphate in soft water.
func ExampleTank_Course() {
	c, err := hall().Course(4)
	if err != nil {
		fmt.Println(err)
		return
	}
	for _, p := range c.Points {
		fmt.Printf("%s of the sugar: SG %.3f, pH %.1f (%.1f to %.1f)\n", p.Used.Text(units.Percent, 0), p.Gravity.SG(), p.PH.Value, p.PH.Low, p.PH.High)
	}
	fmt.Println(c.Cautions[0])
	fmt.Println(ferment.NitrogenUptake().Value.Text(units.Percent, 0), "of the sugar is used when the nitrogen is gone; hold the pH above",
		ferment.FloorPH().Value, "and pitch below", ferment.PitchPH().Value)
	// Output:
	// 0 % of the sugar: SG 1.028, pH 8.0 (8.0 to 8.0)
	// 25 % of the sugar: SG 1.020, pH 3.6 (3.5 to 3.8)
	// 50 % of the sugar: SG 1.011, pH 2.9 (2.9 to 3.0)
	// 75 % of the sugar: SG 1.003, pH 2.9 (2.9 to 3.0)
	// 100 % of the sugar: SG 0.994, pH 2.9 (2.9 to 3.0)
	// The pH falls to about 2.9: yeast is likely to stop with sugar left. Add a buffer, or feed amino nitrogen in place of ammonium.
	// 50 % of the sugar is used when the nitrogen is gone; hold the pH above 3.5 and pitch below 8.3
}

// One point of the course: what is in the liquid at the end.
func ExampleTank_At() {
	p, _ := hall().At(units.Percent.Of(100))
	fmt.Println(p.Strength.Text(units.PercentVolume, 1), p.Balance.DryYeast.Text(units.Gram, 0), "of new yeast, nitrogen left",
		p.Nitrogen.Text(units.MilligramPerLitre, 0))
	// Output: 4.6 % vol 63 g of new yeast, nitrogen left 0 mg/L
}

// The potassium bicarbonate that holds pH 3.5, and the ions it leaves.
func ExampleTank_BufferFor() {
	d, _ := hall().BufferFor(material.PotassiumBicarbonate(), 3.5)
	fmt.Println(d.Mass.Value.Text(units.Gram, 0), "of", d.Buffer, "from", d.Mass.Low.Text(units.Gram, 0), "to", d.Mass.High.Text(units.Gram, 0))
	fmt.Println("potassium", d.Water.Ion(water.Potassium).Text(units.MilligramPerLitre, 0), "alkalinity",
		d.Water.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0))
	sodium, potassium, _ := ferment.TasteThresholds()
	fmt.Println("taste from", potassium.Value.Text(units.MilligramPerLitre, 0), "of potassium,", sodium.Value.Text(units.MilligramPerLitre, 0), "of sodium")
	// Output:
	// 14 g of potassium bicarbonate from 10 g to 18 g
	// potassium 95 mg/L alkalinity 159 mg/L as CaCO3
	// taste from 400 mg/L of potassium, 200 mg/L of sodium
}

// It stopped half way at pH 2.8: lift it so that it ends at 3.6.
func ExampleTank_Correct() {
	c, err := hall().Correct(material.PotassiumBicarbonate(), units.Percent.Of(50), 2.8, 3.6)
	if err != nil {
		fmt.Println(err)
		return
	}
	fmt.Println(c.Dose.Mass.Value.Text(units.Gram, 0), "from", c.Dose.Mass.Low.Text(units.Gram, 0), "to", c.Dose.Mass.High.Text(units.Gram, 0))
	fmt.Printf("pH %.1f once it is stirred in, %.1f at the end, %.1f with the most acids\n", c.Now.Value, c.End.Value, c.End.Low)
	fmt.Println(c.Cautions[0])
	// Output:
	// 19 g from 15 g to 24 g
	// pH 4.0 once it is stirred in, 3.6 at the end, 3.4 with the most acids
	// Add half of the dose, stir, wait for the gas to leave, and measure again before the rest.
}

// Every atom of a kilogram of hexose with 1 g of ammonium nitrogen.
func ExampleMetabolism_Ferment() {
	m := ferment.UsualMetabolism()
	b, _ := m.Ferment(ferment.Substrate{Hexose: units.Kilogram.Of(1), Ammonium: units.Gram.Of(1)})
	fmt.Println(b.Ethanol.Text(units.Gram, 1), "ethanol", b.CO2.Text(units.Gram, 1), "CO2", b.Glycerol.Text(units.Gram, 1), "glycerol",
		b.Succinic.Text(units.Gram, 1), "succinic acid", b.DryYeast.Text(units.Gram, 1), "yeast")
	fmt.Println("H+ set free:", b.Protons.Text(units.Millimole, 1), "for", 1000/14.007, "mmol of ammonium")
	in, out := b.Ledgers()
	fmt.Println("carbon", in.C.Text(units.Mole, 6), "in,", out.C.Text(units.Mole, 6), "out; charge", in.Charge.Text(units.Mole, 6),
		"in,", out.Charge.Text(units.Mole, 6), "out")
	y, _ := b.Yield(units.Kilogram.Of(0.95))
	fmt.Printf("as a yield of sucrose: %.3f\n", y.Ethanol().In(units.Fraction))
	most := m.MostAcids().Succinic
	least := m.LeastAcids().Succinic
	fmt.Println("succinic acid from", least.Text(units.Percent, 2), "to", most.Text(units.Percent, 2), "of the hexose")
	// Output:
	// 478.5 g ethanol 464.6 g CO2 30.0 g glycerol 6.4 g succinic acid 15.6 g yeast
	// H+ set free: 71.4 mmol for 71.39287499107589 mmol of ammonium
	// carbon 33.304469 mol in, 33.304469 mol out; charge 0.071393 mol in, 0.071393 mol out
	// as a yield of sucrose: 0.504
	// succinic acid from 0.25 % to 0.85 % of the hexose
}

// Heat of 4.42 kg of sugar by each published value, and the power that holds the
// temperature on the busiest day.
func ExampleHeatRates() {
	sugar := units.Kilogram.Of(4.42)
	for _, h := range ferment.HeatRates() {
		q, _ := h.Of(sugar)
		rise, _ := h.Rise(sugar, units.Litre.Of(60))
		fmt.Printf("%s: %s, %s if nothing cools it\n", h.Name(), q.Text(units.Kilojoule, 0), rise.Text(units.KelvinDifference, 1))
	}
	busy, _ := units.TryTimes(sugar, ferment.PeakDay().Value.In(units.Fraction))
	w, _ := ferment.UsualHeat().CoolingPower(busy, 24*time.Hour)
	fmt.Println(w.Text(units.Watt, 0))
	// Output:
	// usual: 2593 kJ, 10.8 K if nothing cools it
	// usual, higher: 2884 kJ, 12.0 K if nothing cools it
	// thermochemical: 2488 kJ, 10.4 K if nothing cools it
	// 10 W
}

// 60 L in a fermenter of 65 L.
func ExampleHeadSpaceNeed() {
	h, _ := ferment.HeadSpaceNeed(units.Litre.Of(65), units.Litre.Of(60), false)
	fmt.Println(h.Room.Text(units.Litre, 0), "of room,", h.Wanted.Text(units.Litre, 0), "wanted, lead the foam off:", h.BlowOff)
	// Output: 5 L of room, 6 L wanted, lead the foam off: true
}

// What sugar, a soft water and one salt leave the yeast short of.
func ExampleTank_OtherNeeds() {
	needs, _ := hall().OtherNeeds()
	for _, n := range needs {
		if n.Short() {
			fmt.Printf("%s: %.2f of %.2f mg/L; %s\n", n.Name, n.Have.In(units.MilligramPerLitre), n.Need.Value.In(units.MilligramPerLitre), n.Remedy)
		}
	}
	// Output:
	// potassium: 0.96 of 300.00 mg/L; potassium bicarbonate
	// magnesium: 0.00 of 5.00 mg/L; Epsom salt
	// zinc: 0.00 of 0.15 mg/L; zinc sulfate, as a stock solution
	// thiamine: 0.00 of 0.50 mg/L; thiamine hydrochloride, or autolysed yeast
	// other vitamins: 0.00 of 11.50 mg/L; autolysed yeast, or a complete yeast food
}
