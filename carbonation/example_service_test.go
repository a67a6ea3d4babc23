package carbonation_test

import (
	"fmt"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Two readings of a keg, a day apart, on its way to 5.7 g/L.
func ExampleRateFromReadings() {
	g := units.GramCO2PerLitre
	k, err := carbonation.RateFromReadings(g.Of(1.5), g.Of(2.4), g.Of(5.7), 24*time.Hour)
	left, _ := carbonation.Keg{Content: g.Of(2.4), Target: g.Of(5.5), Rate: k}.Until(g.Of(5.7))
	fmt.Printf("%s, %.1f days more %v\n", k.Text(units.PerHour, 4), left.Hours()/24, err)
	// Output:
	// 0.0100 per hour, 11.6 days more <nil>
}

func ExampleKeg_After() {
	g := units.GramCO2PerLitre
	keg := carbonation.Keg{Content: g.Of(1.5), Rate: units.PerHour.Of(0.0125)}
	c, err := keg.After(g.Of(5.7), 5*24*time.Hour)
	fmt.Println(c.Text(g, 2), err)
	// Output:
	// 4.76 g/L CO2 <nil>
}

func ExampleKeg_Until() {
	g := units.GramCO2PerLitre
	keg := carbonation.Keg{Content: g.Of(1.5), Target: g.Of(5.5), Rate: carbonation.StillKeg()}
	d, err := keg.Until(g.Of(5.7))
	fmt.Printf("%.1f days %v\n", d.Hours()/24, err)
	// Output:
	// 10.1 days <nil>
}

// 2 bar instead of 1.2: when to set it back.
func ExampleLiquid_PlanBurst() {
	_, drink := sparkler()
	g := units.GramCO2PerLitre
	b, err := drink.PlanBurst(g.Of(1.5), g.Of(5.5), units.BarGauge.Of(2), units.BarGauge.Of(4), carbonation.StillKeg(), units.Celsius.Of(3), units.Atmosphere{})
	fmt.Printf("stop after %.0f h, set back to %s %v\n", b.Stop.Hours(), b.Then.Text(units.BarGauge, 2), err)
	fmt.Println("forgotten:", b.Forgotten.Text(g, 1), b.Cautions.Has(carbonation.Overshoot))
	// Output:
	// stop after 69 h, set back to 0.94 bar gauge <nil>
	// forgotten: 8.4 g/L CO2 true
}

// A lively and a mild keg on one regulator: the mild one will pass its target.
func ExampleOnRegulator() {
	_, drink := sparkler()
	g := units.GramCO2PerLitre
	lively := carbonation.Keg{Liquid: drink, Temperature: units.Celsius.Of(4), Content: g.Of(1.5), Target: g.Of(5.7), Rate: carbonation.StillKeg(),
		Rating: units.BarGauge.Of(4)}
	mild := lively
	mild.Target = g.Of(4)
	list, err := carbonation.OnRegulator([]carbonation.Keg{lively, mild}, units.BarGauge.Of(1.1), 5*24*time.Hour, units.Atmosphere{})
	for _, k := range list {
		fmt.Println(k.Content.Text(g, 2), "needs", k.Needs.Text(units.BarGauge, 2), k.Cautions.Has(carbonation.Overshoot))
	}
	fmt.Println(err)
	// Output:
	// 4.78 g/L CO2 needs 1.09 bar gauge false
	// 4.78 g/L CO2 needs 0.46 bar gauge true
	// <nil>
}

func ExampleViscosity() {
	s, _ := sparkler()
	mu, err := carbonation.Viscosity(s, units.Celsius.Of(4))
	fmt.Println(mu.Text(units.MillipascalSecond, 2), err)
	// Output:
	// 1.99 mPa·s <nil>
}

// How long a line of 5 mm for 2.5 L/min from 1.1 bar, tap 0.6 m over the keg?
func ExampleLine_Balance() {
	s, _ := sparkler()
	line := carbonation.Line{Bore: units.Millimetre.Of(5), Roughness: units.Millimetre.Of(0.0015), Rise: units.Metre.Of(0.6), Losses: 3}
	b, err := line.Balance(s, units.Celsius.Of(4), units.BarGauge.Of(1.1), units.LitrePerMinute.Of(2.5))
	fmt.Println(b.Length.Text(units.Metre, 1), "at", b.PerMetre.Text(units.KilopascalGauge, 1), "a metre", err)
	// Output:
	// 5.7 m at 16.7 kPa gauge a metre <nil>
}

func ExampleLine_FlowOf() {
	s, _ := sparkler()
	line := carbonation.Line{Bore: units.Millimetre.Of(5), Rise: units.Metre.Of(0.6), Losses: 3}
	b, err := line.FlowOf(s, units.Celsius.Of(4), units.BarGauge.Of(1.1), units.Metre.Of(3))
	fmt.Println(b.Flow.Text(units.LitrePerMinute, 1), b.Laminar, err)
	// Output:
	// 3.5 L/min false <nil>
}

func ExamplePracticeResistance() {
	r, err := carbonation.PracticeResistance(units.Inch.Of(0.1875))
	fmt.Println(r.Text(units.KilopascalGauge, 0), "a metre", err)
	// Output:
	// 68 kPa gauge a metre <nil>
}

// A long line wants 2.5 bar: with which blend does the content stay?
func ExampleLiquid_BlendFor() {
	_, drink := sparkler()
	x, err := drink.BlendFor(units.GramCO2PerLitre.Of(5), units.Bar.Of(2.5), units.Celsius.Of(4))
	fmt.Println(x.Text(units.Percent, 0), err)
	// Output:
	// 74 % <nil>
}

func ExampleLiquid_MixedGasPressure() {
	_, drink := sparkler()
	p, err := drink.MixedGasPressure(units.GramCO2PerLitre.Of(5), units.Percent.Of(70), units.Celsius.Of(4))
	fmt.Println(p.Text(units.Bar, 2), err)
	// Output:
	// 2.63 bar absolute <nil>
}

// A 19 L keg filled to 2 bar and vented five times.
func ExampleFillAndVent() {
	p, err := carbonation.FillAndVent(units.Litre.Of(19), units.Celsius.Of(20), units.BarGauge.Of(2), 5, units.Atmosphere{})
	fmt.Printf("%s of air, %.0f ppm of oxygen, %s %v\n", p.Air.Text(units.Percent, 2), p.Oxygen.In(units.PartPerMillion), p.Gas.Text(units.Gram, 0), err)
	// Output:
	// 0.43 % of air, 901 ppm of oxygen, 351 g <nil>
}

func ExampleRoundsFor() {
	n, err := carbonation.RoundsFor(units.PartPerMillion.Of(500), units.BarGauge.Of(2), units.Atmosphere{})
	fmt.Println(n, err)
	// Output:
	// 6 <nil>
}

func ExampleFlush() {
	p, err := carbonation.Flush(units.Litre.Of(19), units.Celsius.Of(20), 3, units.Atmosphere{})
	fmt.Println(p.Air.Text(units.Percent, 1), p.Gas.Text(units.Gram, 0), err)
	// Output:
	// 5.0 % 105 g <nil>
}

func ExampleCylinderAt() {
	for _, t := range []units.Temperature{units.Celsius.Of(4), units.Celsius.Of(20), units.Celsius.Of(35)} {
		s, err := carbonation.CylinderAt(t, units.Atmosphere{})
		fmt.Println(t, s.Liquid, s.Gauge.Text(units.BarGauge, 1), s.Cautions, err)
	}
	// Output:
	// 4 °C true 37.7 bar gauge cylinder <nil>
	// 20 °C true 56.3 bar gauge cylinder <nil>
	// 35 °C false 0.0 bar gauge cylinder, no_liquid_co2 <nil>
}

// A charge of 2.27 kg, kegs of 19 L carbonated from it.
func ExampleKegService_Kegs() {
	k := carbonation.KegService{
		Volume: units.Litre.Of(19), Drink: units.Litre.Of(18.5), Temperature: units.Celsius.Of(4), Serving: units.BarGauge.Of(1.1),
		Carbonate: units.GramCO2PerLitre.Of(4.3), Purge: units.Gram.Of(150), Leak: units.Percent.Of(10),
	}
	u, err := k.Kegs(units.Kilogram.Of(2.27), units.Atmosphere{})
	fmt.Println(u.Kegs, "kegs of", u.Each.Text(units.Gram, 0), "- left", u.Left.Text(units.Gram, 0), err)
	// Output:
	// 6 kegs of 341 g - left 221 g <nil>
}

// 5 kg of sugar fermented at 20 °C.
func ExampleGivenOff() {
	m, v, err := carbonation.GivenOff(units.Kilogram.Of(5), gravity.SugarWashYield(gravity.AsSucrose).CO2(), units.Celsius.Of(20), units.Atmosphere{})
	fmt.Println(m.Text(units.Kilogram, 2), v.Text(units.CubicMetre, 2), err)
	// Output:
	// 2.36 kg 1.28 m³ <nil>
}

// A full charge let go in a closed cellar.
func ExampleReleased() {
	r, err := carbonation.Released(units.Kilogram.Of(2.268), units.CubicMetre.Of(30), units.Celsius.Of(20), units.PartPerMillion.Of(420), units.Atmosphere{})
	fmt.Printf("%.1f %% vol %v\n", r.Level.In(units.Percent), err)
	fmt.Println(r.Cautions)
	// Output:
	// 4.2 % vol <nil>
	// immediate_danger, asphyxiation, over_exposure
}

// The same cellar, aired with 15 m³ an hour: when to send a meter in.
func ExampleAirOut() {
	d, cautions, err := carbonation.AirOut(units.CubicMetre.Of(30), units.CubicMetrePerHour.Of(15), units.PartPerMillion.Of(41_500),
		units.PartPerMillion.Of(5000), units.PartPerMillion.Of(420))
	fmt.Println(d.Round(time.Minute), err)
	fmt.Println(cautions)
	// Output:
	// 4h23m0s <nil>
	// immediate_danger, asphyxiation, over_exposure
}

// A ferment that gives off 60 g an hour at its peak, in a room of 25 m³.
func ExampleVentilate() {
	v, err := carbonation.Ventilate(units.Gram.Of(60), units.CubicMetre.Of(25), units.Celsius.Of(20), units.PartPerMillion.Of(5000),
		units.PartPerMillion.Of(420), units.Atmosphere{})
	fmt.Println(v.FreshAir.Text(units.CubicMetrePerHour, 1), "- without it", v.Reached.Round(time.Minute), err)
	fmt.Println(v.Cautions)
	// Output:
	// 7.1 m³/h - without it 3h31m0s <nil>
	// asphyxiation
}

func ExampleExposureLimits() {
	for _, l := range carbonation.ExposureLimits()[:2] {
		fmt.Println(l.Name, l.Level.In(units.PartPerMillion), "ppm,", l.Source)
	}
	// Output:
	// OSHA PEL, 8 h 5000 ppm, 29 CFR 1910.1000 table Z-1 (2015) (read)
	// ACGIH TLV, 8 h 5000 ppm, ACGIH, as quoted in the OSHA preamble (read)
}

func ExampleContentLimits() {
	for _, l := range carbonation.ContentLimits()[:2] {
		fmt.Println(l.Drink, l.Most.Text(units.GramCO2PerLitre, 2), carbonation.RealVolume.Volumes(l.Most).Text(units.VolumesCO2, 2), l.Law)
	}
	// Output:
	// US still wine 3.92 g/L CO2 1.98 vol CO2 26 USC 5041; 27 CFR 24.245 (2015) (read)
	// US hard cider 6.40 g/L CO2 3.24 vol CO2 26 USC 5041; 27 CFR 24.251 (read); the year of the text was not noted
}

// A sparkler of 5.7 g/L is no US still wine.
func ExampleContentLimit_Allows() {
	still := carbonation.ContentLimits()[0]
	fmt.Println(still.Allows(units.GramCO2PerLitre.Of(5.7)))
	// Output: false
}
