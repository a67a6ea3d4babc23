package carbonation_test

import (
	"fmt"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// The drink fermented at up to 21 °C, at 640 m: so much is in it already.
func ExampleLiquid_ResidualContent() {
	_, drink := sparkler()
	hall, _ := units.AtAltitude(units.Metre.Of(640))
	c, err := drink.ResidualContent(hall.Pressure(), units.Celsius.Of(21))
	fmt.Println(c.Text(units.GramCO2PerLitre, 2), err)
	// Output:
	// 1.43 g/L CO2 <nil>
}

// 20 L to 2.9 volumes, dry; and with 2 g/L of sugar still in it.
func ExamplePrimingSugar() {
	have := units.GramCO2PerLitre.Of(1.43)
	want := carbonation.RealVolume.Content(units.VolumesCO2.Of(2.9))
	for _, left := range []units.MassConcentration{units.GramPerLitre.Of(0), units.GramPerLitre.Of(2)} {
		p, err := carbonation.PrimingSugar(material.Sucrose(), want, have, left, units.Litre.Of(20))
		fmt.Println(p.Primer.Mass.Text(units.Gram, 1), p.Cautions, err)
	}
	// Output:
	// 167.4 g pressure_vessel <nil>
	// 127.4 g sugar_can_ferment, pressure_vessel <nil>
}

func ExampleCO2From() {
	for _, p := range []material.Material{material.Sucrose(), material.DextroseAnhydrous(), material.DextroseMonohydrate(), material.Honey()} {
		fmt.Println(p.Name(), carbonation.CO2From(p.Dose(units.Gram.Of(100))).Text(units.Gram, 2))
	}
	// Output:
	// sucrose 51.43 g
	// dextrose anhydrous 48.86 g
	// dextrose monohydrate 44.42 g
	// honey 38.38 g
}

// A cider primed with juice kept back, 1.050, all but acids fermentable.
func ExamplePrimeWithWort() {
	juice, _ := gravity.FromSG(1.050)
	p, err := carbonation.PrimeWithWort(juice, units.Percent.Of(92), units.GramCO2PerLitre.Of(5), units.GramCO2PerLitre.Of(1.7),
		units.MassConcentration{}, units.Litre.Of(20))
	fmt.Println(p.Volume.Text(units.Litre, 2), p.Final.Text(units.GramCO2PerLitre, 2), err)
	// Output:
	// 1.17 L 5.00 g/L CO2 <nil>
}

// Doses for a scale of 0.1 g, over two sizes of bottle.
func ExamplePriming_Spread() {
	p, _ := carbonation.PrimingSugar(material.Sucrose(), units.GramCO2PerLitre.Of(5.7), units.GramCO2PerLitre.Of(1.43), units.MassConcentration{},
		units.Litre.Of(20))
	scale, _ := units.ParseExact[units.Mass]("0.1 g")
	s, err := p.Spread([]carbonation.Bottles{
		{Fill: units.Litre.Of(0.33), Count: 48}, {Fill: units.Litre.Of(0.75), Count: 5},
	}, scale)
	for _, d := range s.Doses {
		fmt.Println(d.Bottles.Count, "of", d.Bottles.Fill.Text(units.Litre, 2)+":", d.Each)
	}
	fmt.Println("into the batch:", s.Batch, err)
	// Output:
	// 48 of 0.33 L: 2.7 g
	// 5 of 0.75 L: 6.2 g
	// into the batch: 162.6 g <nil>
}

// A fermenter closed under a valve at 18 °C, for 5 g/L.
func ExampleLiquid_Spund() {
	_, drink := sparkler()
	f := carbonation.Fermenter{Drink: units.Litre.Of(40), Headspace: units.Litre.Of(10), Rating: units.BarGauge.Of(2)}
	s, err := drink.Spund(units.GramCO2PerLitre.Of(5), f, gravity.SugarWashYield(gravity.AsSucrose),
		units.Celsius.Of(18), units.Atmosphere{})
	fmt.Println(s.Valve.Text(units.BarGauge, 2), s.Extract.Text(units.GramPerLitre, 1), err)
	fmt.Println(s.Verdict, "-", s.Cautions)
	// Output:
	// 1.97 bar gauge 9.0 g/L <nil>
	// within the rating given - sugar_can_ferment, pressure_vessel
}

// 60 L with 12 L over it, cooled from 20 to 2 °C.
func ExampleFermenter_Crash() {
	s, _ := sparkler()
	f := carbonation.Fermenter{Drink: units.Litre.Of(60), Headspace: units.Litre.Of(12)}
	r, err := f.Crash(s, units.Celsius.Of(20), units.Celsius.Of(2), units.Atmosphere{})
	fmt.Println("air at once", r.AtOnce.Text(units.Litre, 1), "- at rest", r.AtRest.Text(units.Litre, 1), err)
	fmt.Println("oxygen", r.OxygenPerLitre.Text(units.MilligramPerLitre, 0), "- CO2 that keeps it out", r.CO2ToFill.Text(units.Gram, 0))
	fmt.Println(r.Cautions)
	// Output:
	// air at once 1.1 L - at rest 5.7 L <nil>
	// oxygen 28 mg/L - CO2 that keeps it out 85 g
	// air_drawn_in
}

func bottled() carbonation.ClosedVessel {
	s, drink := sparkler()
	have, _ := drink.ResidualContent(units.Atmosphere{}.Pressure(), units.Celsius.Of(21))
	v := carbonation.Vessel{Capacity: units.Millilitre.Of(345), Rating: units.BarGauge.Of(6)}
	c, _ := v.Close(s, carbonation.Filling{
		Volume: units.Millilitre.Of(330), Temperature: units.Celsius.Of(18), Content: have,
		Air: units.Percent.Of(100), Priming: units.GramPerLitre.Of(8),
	}, units.Atmosphere{})
	return c
}

// A bottle of the sparkler in a cellar, and in a car in the sun.
func ExampleVessel_Close() {
	c := bottled()
	for _, t := range []units.Temperature{units.Celsius.Of(12), units.Celsius.Of(50)} {
		p, err := c.At(t)
		fmt.Println(t, p.Gauge.Text(units.BarGauge, 1), p.Verdict, err)
	}
	// Output:
	// 12 °C 2.6 bar gauge within the rating given <nil>
	// 50 °C 7.5 bar gauge over the rating given <nil>
}

// The result carries its cautions as data.
func ExampleClosedVessel_At() {
	p, err := bottled().At(units.Celsius.Of(50))
	fmt.Println(p.Gauge.Text(units.BarGauge, 1), "head-space", p.HeadspaceShare.Text(units.Percent, 1), err)
	fmt.Println(p.Cautions.Has(carbonation.OverRatingCaution), p.Cautions)
	// Output:
	// 7.5 bar gauge head-space 3.0 % <nil>
	// true over_rating, trapped_air, pressure_vessel, hot_vessel
}

// A sweet drink that is not kept from fermenting.
func ExampleClosedVessel_Worst() {
	s, _ := carbonation.DrinkOf(units.PercentVolume.Of(4.6), units.DegreePlato.Of(2))
	v := carbonation.Vessel{Capacity: units.Millilitre.Of(345), Rating: units.BarGauge.Of(6)}
	c, _ := v.Close(s, carbonation.Filling{
		Volume: units.Millilitre.Of(330), Temperature: units.Celsius.Of(4), Content: units.GramCO2PerLitre.Of(5.5),
		AtRest: true, SugarLeft: units.GramPerLitre.Of(15),
	}, units.Atmosphere{})
	as, _ := c.At(units.Celsius.Of(25))
	worst, err := c.Worst(units.Celsius.Of(25))
	fmt.Println(as.Gauge.Text(units.BarGauge, 1), as.Verdict, "-", as.Cautions.Has("worst_over_rating"))
	fmt.Println(worst.Gauge.Text(units.BarGauge, 1), worst.Verdict, err)
	// Output:
	// 3.4 bar gauge within the rating given - true
	// 9.2 bar gauge over the rating given <nil>
}

func ExampleClosedVessel_CO2() {
	fmt.Println(bottled().CO2().Text(units.Gram, 3))
	// Output:
	// 1.865 g
}

func ExampleClosedVessel_WarmestWithin() {
	t, err := bottled().WarmestWithin()
	fmt.Println(t.Text(units.Celsius, 0), err)
	// Output:
	// 40 °C <nil>
}

// What a bottle rated at 6 bar may hold if it is to stand 40 °C.
func ExampleVessel_MostContent() {
	s, _ := sparkler()
	v := carbonation.Vessel{Capacity: units.Millilitre.Of(345), Rating: units.BarGauge.Of(6)}
	c, err := v.MostContent(s, carbonation.Filling{
		Volume: units.Millilitre.Of(330), Temperature: units.Celsius.Of(4), AtRest: true,
	}, units.Celsius.Of(40), units.Atmosphere{})
	fmt.Println(c.Text(units.GramCO2PerLitre, 1), err)
	// Output:
	// 6.3 g/L CO2 <nil>
}

// What to print when a result carries a caution.
func ExampleCautions() {
	p, _ := bottled().At(units.Celsius.Of(30))
	for _, c := range p.Cautions {
		fmt.Println(c.Code())
	}
	fmt.Println(p.Cautions.Has(carbonation.HotVessel), len(carbonation.Cautions()))
	fmt.Println(p.Cautions[0], p.Cautions.Has("trapped_air"))
	// Output:
	// trapped_air
	// pressure_vessel
	// false 24
	// Air shut in adds to the pressure and stales the drink: purge the head-space or close on foam. true
}

func ExampleLethality_Rate() {
	a, _ := carbonation.DelVecchio().Rate(units.Celsius.Of(65))
	b, err := carbonation.Handbook().Rate(units.Celsius.Of(65))
	fmt.Println(a.Text(units.PU, 2), "or", b.Text(units.PU, 2), "a minute", err)
	// Output:
	// 5.25 PU or 5.18 PU a minute <nil>
}

func ExampleNewLethality() {
	l, err := carbonation.NewLethality(units.KelvinDifference.Of(5))
	r, _ := l.Rate(units.Celsius.Of(65))
	fmt.Println(r.Text(units.PU, 1), "a minute", err)
	// Output:
	// 10.0 PU a minute <nil>
}

// A tunnel's log with the pressure of the bottle over the same log.
func ExampleLethality_Pasteurise() {
	c := bottled()
	log := []carbonation.LoggedTemperature{
		{At: 0, Temperature: units.Celsius.Of(15)},
		{At: 20 * time.Minute, Temperature: units.Celsius.Of(60)},
		{At: 35 * time.Minute, Temperature: units.Celsius.Of(60)},
		{At: 55 * time.Minute, Temperature: units.Celsius.Of(25)},
	}
	p, err := carbonation.Handbook().Pasteurise(log, &c)
	fmt.Printf("%.1f: warming %.1f, holding %.1f, cooling %.1f %v\n", p.Units, p.Warming, p.Holding, p.Cooling, err)
	fmt.Println("peak", p.Peak.Gauge.Text(units.BarGauge, 1), p.Peak.Verdict)
	// Output:
	// 18.1 PU: warming 1.4 PU, holding 15.0 PU, cooling 1.7 PU <nil>
	// peak 9.1 bar gauge over the rating given
}
