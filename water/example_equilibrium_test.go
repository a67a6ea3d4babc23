package water_test

import (
	"fmt"

	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

func ExampleProfile_WithPH() {
	p, err := well().WithPH(7.0)
	ph, known := p.PH()
	fmt.Printf("%.2f %v %v\n", ph, known, err)
	e, _ := p.Equilibrium()
	fmt.Println("CO2", e.Of(water.CarbonDioxide).Text(units.MillimolePerLitre, 3), "HCO3-", e.Of(water.BicarbonateFree).Text(units.MillimolePerLitre, 3))
	fmt.Println("inorganic carbon", e.InorganicCarbon().Text(units.MillimolePerLitre, 3), "under", e.CO2Pressure().Text(units.Millibar, 1))
	fmt.Printf("I = %s, unreported charge %s\n", e.IonicStrength().Text(units.MillimolePerLitre, 2), e.Unreported().Text(units.MilliequivalentPerLitre, 3))
	fmt.Println("buffer", e.BufferCapacity().Text(units.MilliequivalentPerLitre, 2), "a pH unit")
	fmt.Println(e.Conductivity().Text(units.MicrosiemensPerCentimetre, 0), e.ConductivityAt20().Text(units.MicrosiemensPerCentimetre, 0))
	pair, err := water.ParseSpecies("CaHCO3+")
	fmt.Println(len(water.AllSpecies()), "species,", pair, err)
	// Output:
	// 7.00 true <nil>
	// CO2 0.139 mmol/L HCO3- 0.518 mmol/L
	// inorganic carbon 0.658 mmol/L under 2.8 mbar absolute
	// I = 1.30 mmol/L, unreported charge -0.031 mEq/L
	// buffer 0.25 mEq/L a pH unit
	// 99 µS/cm 88 µS/cm
	// 94 species, CaHCO3+ <nil>
}

func ExampleProfile_InAir() {
	e, err := well().InAir()
	fmt.Printf("%.1f %v\n", e.PH(), err)
	p, _ := e.Water().PH()
	fmt.Printf("%.1f\n", p)
	soda, _ := well().Under(units.StandardAtmosphere.Of(1))
	fmt.Printf("%.1f\n", soda.PH())
	closed, _ := well().Closed(units.MillimolePerLitre.Of(0.55))
	fmt.Printf("%.1f\n", closed.PH())
	warm, _ := well().AtTemperature(units.Celsius.Of(60))
	air, _ := warm.InAir()
	fmt.Printf("%.1f\n", air.PH())
	// Output:
	// 7.8 <nil>
	// 7.8
	// 4.5
	// 7.6
	// 8.1
}

func ExampleEquilibrium_SaturationIndex() {
	mg := units.MilligramPerLitre.Of
	p, _ := water.NewProfile(units.Celsius.Of(20), units.MilligramPerLitreCaCO3.Of(168.3), water.Calcium.At(mg(250)), water.Magnesium.At(mg(40)),
		water.Sodium.At(mg(25)), water.Chloride.At(mg(40)), water.Sulfate.At(mg(600)))
	p, _ = p.WithPH(7.3)
	e, _ := p.Equilibrium()
	fmt.Printf("%v %+.2f\n", water.Calcite, e.SaturationIndex(water.Calcite))
	fmt.Printf("%q\n", e.SolubilityWarnings().Texts())
	// Output:
	// calcite +0.29
	// ["calcite can drop out (saturation index +0.29)"]
}

// Gypsum at 25 °C: 2.6 g/L (Marshall and Slusher 1966).
func ExampleProfile_AtRestWith() {
	d, err := water.Profile{}.AtTemperature(units.Celsius.Of(25))
	if err != nil {
		panic(err)
	}
	r, err := d.AtRestWith(water.GypsumMineral, water.CO2Loss{})
	fmt.Println(r.Mass.Text(units.GramPerLitre, 1), err)
	fmt.Printf("%q\n", water.DoseWarnings(units.Litre.Of(10), material.Chalk().Dose(units.Gram.Of(2))).Texts())
	// Output:
	// 2.6 g/L <nil>
	// ["chalk hardly dissolves in water: 0.013 g/L, and more only with CO2 or acid"]
}

func ExampleProfile_Boiled() {
	p, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(250), water.Calcium.At(units.MilligramPerLitre.Of(100)))
	d, err := p.Boiled()
	fmt.Println(d.Equilibrium.Water().Alkalinity().Text(units.MilligramPerLitreCaCO3, 0), d.Mass.Text(units.MilligramPerLitre, 0), err)
	// Output:
	// 22 mg/L as CaCO3 228 mg/L <nil>
}

// The range that a boil can bring, at 1500 m where water boils at 95 °C.
func ExampleProfile_BoiledAt() {
	p, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(250), water.Calcium.At(units.MilligramPerLitre.Of(100)))
	air, _ := units.AtAltitude(units.Metre.Of(1500))
	fmt.Println("CO2 of the air", water.AirCO2(air).Text(units.Kilopascal, 4))
	b, err := p.BoiledAt(units.Celsius.Of(95), air)
	for _, e := range []water.Equilibrium{b.Clear, b.AtRest.Equilibrium} {
		w := e.Water()
		fmt.Printf("alkalinity %s, calcium %s, calcite index %.1f\n", w.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0),
			w.Ion(water.Calcium).Text(units.MilligramPerLitre, 0), e.SaturationIndex(water.Calcite))
	}
	fmt.Println("scale in 60 L up to", b.Scale(units.Litre.Of(60)).Text(units.Gram, 1), err)
	// Output:
	// CO2 of the air 0.0355 kPa absolute
	// alkalinity 250 mg/L as CaCO3, calcium 100 mg/L, calcite index 2.2
	// alkalinity 21 mg/L as CaCO3, calcium 8 mg/L, calcite index 0.0
	// scale in 60 L up to 13.7 g <nil>
}

func ExampleProfile_AcidToPH() {
	d, err := measured().AcidToPH(water.LacticAcid, 5.6, units.Litre.Of(60), water.CO2LostTo(water.AirCO2(units.Atmosphere{})))
	fmt.Println(d.Amount.Text(units.Millimole, 1), d.Acid, err)
	sold, _ := water.LacticAcid.AsSold(units.Percent.Of(88), units.GramPerMillilitre.Of(1.206))
	dose, _ := d.Acid.Dose(d.Amount, sold)
	fmt.Println(dose.Volume().Text(units.Millilitre, 2), dose.Mass.Text(units.Gram, 2), "of", sold)
	is, share, _ := water.AcidOf(sold)
	fmt.Println(is, share.Text(units.Percent, 1), sold.Density(), len(water.SoldAcids()))
	fmt.Println(d.Cautions[0])
	kept, after, _ := measured().AcidPerLitre(water.LacticAcid, 5.6, water.CO2Loss{})
	ph, _ := after.PH()
	fmt.Println(kept.Text(units.MillimolePerLitre, 3), ph)
	gas, _, _ := measured().AcidPerLitre(water.LacticAcid, 5.6, water.CO2LostTo(units.Kilopascal.Of(0.1)))
	fmt.Println(gas.Text(units.MillimolePerLitre, 3), len(water.AcidCautions()))
	// Output:
	// 31.7 mmol lactic acid <nil>
	// 2.69 mL 3.24 g of lactic acid 88 %
	// lactic acid 88.0 % 1206 kg/m³ 15
	// Concentrated acid burns: goggles, gloves, and the acid into the liquid, never the liquid into the acid; food grade only.
	// 0.444 mmol/L 5.6
	// 0.524 mmol/L 3
}

func ExampleProfile_AcidToAlkalinity() {
	n, err := well().AcidToAlkalinity(water.PhosphoricAcid, units.MilligramPerLitreCaCO3.Of(10), units.Litre.Of(60))
	fmt.Println(n.Text(units.Millimole, 2), err)
	p, _ := well().AddAcid(water.PhosphoricAcid, n, units.Litre.Of(60))
	fmt.Println(p.Alkalinity().Text(units.MilligramPerLitreCaCO3, 0))
	m, _ := well().BaseToAlkalinity(material.BakingSoda(), units.MilligramPerLitreCaCO3.Of(100), units.Litre.Of(60))
	fmt.Println(m.Text(units.Gram, 2))
	d, _ := measured().BaseToPH(material.SlakedLime(), 8, units.Litre.Of(60))
	fmt.Println(d.Dose.Mass.Text(units.Gram, 2), d.Cautions[0] == material.Burns)
	// Output:
	// 19.18 mmol <nil>
	// 10 mg/L as CaCO3
	// 7.45 g
	// 0.28 g true
}

func ExampleParseAcid() {
	a, err := water.ParseAcid("H3PO4")
	fmt.Println(a, a.Name(), a.Ion(), err)
	fmt.Printf("%s, %d acids\n", a.MolarMass().Text(units.GramPerMole, 3), len(water.Acids()))
	b, _ := a.MarshalText()
	var d water.Acid
	err = d.UnmarshalText([]byte("citric"))
	fmt.Printf("%s, %v %v\n", b, d, err)
	// Output:
	// phosphoric acid phosphoric acid phosphate <nil>
	// 97.994 g/mol, 8 acids
	// phosphoric acid, citric acid <nil>
}

func ExampleProfile_TitratableAcidity() {
	p, _ := water.Profile{}.AtTemperature(units.Celsius.Of(20))
	p, _ = p.AddAcid(water.MalicAcid, units.Millimole.Of(40), units.Litre.Of(1))
	ta, err := p.TitratableAcidity(water.TartaricAcid.TitratedTo(8.2))
	fmt.Println(ta.Text(units.GramPerLitre, 2), "as", water.TartaricAcid, err)
	c, _ := water.ConvertAcidity(ta, water.TartaricAcid, water.SulfuricAcid)
	fmt.Println(c.Text(units.GramPerLitre, 2), "as sulfuric acid")
	// Output:
	// 6.00 g/L as tartaric acid <nil>
	// 3.92 g/L as sulfuric acid
}

// A dry wash: 4 mmol/L of succinic and 3 of acetic acid against 5 mEq/L of
// potassium that bicarbonate left.
func ExampleTotals_Equilibrium() {
	mmol := units.MillimolePerLitre.Of
	w := water.Totals{StrongIons: units.MilliequivalentPerLitre.Of(5), Succinate: mmol(4), Acetate: mmol(3), CO2: units.Bar.Of(1)}
	e, err := w.Equilibrium(units.Celsius.Of(20))
	fmt.Printf("%.2f %v\n", e.PH(), err)
	fmt.Println(e.BufferCapacity().Text(units.MilliequivalentPerLitre, 1))
	// Output:
	// 4.56 <nil>
	// 5.9 mEq/L
}

func ExampleDistilled() {
	p, err := water.Distilled(units.Celsius.Of(25))
	ph, _ := p.PH()
	fmt.Printf("%.1f %v\n", ph, err)
	q, _ := measured().Permeate(units.Percent.Of(97))
	ph, _ = q.PH()
	fmt.Printf("%.1f %s\n", ph, q.Ion(water.Calcium).Text(units.MilligramPerLitre, 1))
	// Output:
	// 5.6 <nil>
	// 5.6 0.3 mg/L
}

func ExampleProfile_Dechlorinate() {
	r := water.Monochloramine(units.MilligramPerLitre.Of(2), water.AsCl2)
	d, err := well().Dechlorinate(material.PotassiumMetabisulfite(), r, units.Litre.Of(60))
	fmt.Println(d.Agent, d.Least.Text(units.Milligram, 0), d.Dose.Text(units.Milligram, 0), err)
	fmt.Println(r.AsCl2(), water.FreeChlorine(units.MilligramPerLitre.Of(1), water.AsItself).AsCl2().Text(units.MilligramPerLitre, 2))
	// Output:
	// potassium metabisulfite 188 mg 207 mg <nil>
	// 2 mg/L 1.35 mg/L
}

func ExampleProfile_CheckDrinking() {
	p, _ := water.NewProfile(units.Celsius.Of(12), units.MilligramPerLitreCaCO3.Of(100), water.Nitrate.At(units.MilligramPerLitre.Of(48)))
	for _, f := range p.CheckDrinking() {
		fmt.Println(f)
	}
	fmt.Println(len(water.DrinkingLimits()), "limits")
	// Output:
	// nitrate as N 10.84 mg/L, at most 10 mg/L (US maximum contaminant level, 40 CFR 141.62, 2015)
	// nitrate and nitrite as N 10.84 mg/L, at most 10 mg/L (US maximum contaminant level, 40 CFR 141.62, 2015)
	// 36 limits
}

// The alkalinity that holds a wash at pH 4 under the CO2 of its ferment.
func ExampleProfile_AlkalinityAt() {
	a, err := well().AlkalinityAt(4, units.StandardAtmosphere.Of(1))
	if err != nil {
		panic(err)
	}
	fmt.Println(a.Text(units.MilligramPerLitreCaCO3, 1))
	// Output:
	// 4.1 mg/L as CaCO3
}

// The pH of a water under CO2 from open air to that of a ferment.
func ExampleSeries() {
	var s water.Series
	for _, gas := range []units.AbsolutePressure{units.Kilopascal.Of(0.04), units.Kilopascal.Of(1), units.Kilopascal.Of(10), units.Kilopascal.Of(100)} {
		e, err := s.Under(well(), gas)
		if err != nil {
			panic(err)
		}
		fmt.Printf("%s: pH %.2f\n", gas.Text(units.Kilopascal, 2), e.PH())
	}
	e, _ := s.Closed(well(), units.MillimolePerLitre.Of(1))
	fmt.Printf("1 mmol/L of carbon: pH %.2f\n", e.PH())
	a, _ := s.AlkalinityAt(well(), 7, units.Kilopascal.Of(1))
	fmt.Println("for pH 7 under 1 kPa:", a.Text(units.MilligramPerLitreCaCO3, 0))
	// Output:
	// 0.04 kPa absolute: pH 7.84
	// 1.00 kPa absolute: pH 6.45
	// 10.00 kPa absolute: pH 5.45
	// 100.00 kPa absolute: pH 4.48
	// 1 mmol/L of carbon: pH 6.46
	// for pH 7 under 1 kPa: 94 mg/L as CaCO3
}

// The table of species, a row each.
func ExampleSpecies_Describe() {
	for _, formula := range []string{"CaHCO3+", "Ca(citrate)-", "Ca+2"} {
		s, err := water.ParseSpecies(formula)
		if err != nil {
			panic(err)
		}
		fmt.Println(s.Describe())
	}
	// Output:
	// CaHCO3+ = Ca+2 + CO3-2 + H+; log K 11.435 at 25 °C, 11.401 at 80 °C; activity by 6 Å and 0 kg/mol; Plummer & Busenberg 1982, as wateq4f.dat prints it (read)
	// Ca(citrate)- = Ca+2 + citrate-3; log K 4.870 at 25 °C, 4.642 at 80 °C; activity by Davies; NIST Standard Reference Database 46, as minteq.v4.dat prints it (read)
	// Ca+2; activity by 5 Å and 0.165 kg/mol; by definition
}

// What ethanol does to weak acids, and so to the pH of a drink.
func ExamplePKShift() {
	rise, err := water.PKShift(units.PercentVolume.Of(12))
	fmt.Printf("%.2f %v\n", rise, err)
	// Output: 0.17 <nil>
}

// A wine of 12 % vol with 900 mg/L of potassium and 2.5 g/L of tartrate, in the cold.
func ExampleProfile_CreamOfTartar() {
	ions := []water.Content{water.Potassium.At(units.MilligramPerLitre.Of(900)), water.Tartrate.At(units.MilligramPerLitre.Of(2500))}
	for _, t := range []units.Temperature{units.Celsius.Of(15), units.Celsius.Of(2)} {
		wine, err := water.NewProfile(t, units.MilligramPerLitreCaCO3.Of(-600), ions...)
		if err != nil {
			panic(err)
		}
		if wine, err = wine.WithEthanol(units.PercentVolume.Of(12)); err != nil {
			panic(err)
		}
		settles, err := wine.CreamOfTartar()
		fmt.Println(t.Text(units.Celsius, 0), settles.Text(units.GramPerLitre, 2), err)
	}
	// Output:
	// 15 °C 1.02 g/L <nil>
	// 2 °C 1.78 g/L <nil>
}
