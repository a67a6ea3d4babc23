package batch

import (
	"testing"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// A bottle closed on air is the one that package carbonation closes: at any temperature, within what argon and bicarbonate make.
func TestCloseAsPackageCarbonation(t *testing.T) {
	s := closedBottle()
	drink := must(s.Solution())
	content := must(after(beer(), Step{Kind: Degas}).Content())
	filling := carbonation.Filling{ // with its gas: 32.3 mL for each mole
		Volume: litres(0.33 * (1 + content.In(units.GramCO2PerLitre)/44.009*0.0323)), Temperature: deg(20), Air: per(100), AirRemoved: per(70),
		// 30 % of it is taken up as a rule
		Content: content,
	}
	v := must(carbonation.Vessel{Capacity: units.Litre.Of(0.345)}.Close(drink, filling, units.Atmosphere{}))
	for _, c := range []float64{20, 35} {
		want := must(v.At(deg(c)))
		got := must(after(s, Step{Kind: Warm, Temperature: deg(c)}).Pack(units.BarGauge.Of(8)))
		near(t, "pressure", got.Pressure.In(units.Kilopascal), want.Pressure.In(units.Kilopascal), 0.003*want.Pressure.In(units.Kilopascal))
		near(t, "content", got.Content.In(units.GramCO2PerLitre), want.Content.In(units.GramCO2PerLitre), 0.01)
		if got.Verdict != carbonation.WithinRating {
			t.Errorf("verdict %v", got.Verdict)
		}
	}
	refused(t, s, Step{Kind: Close})
	refused(t, beer(), Step{Kind: Close})
	full := after(beer(), Step{Kind: Fill, Volume: units.Litre.Of(1), Capacity: units.Litre.Of(1)})
	refused(t, full, Step{Kind: Close})
	if _, err := beer().Pack(units.GaugePressure{}); err == nil {
		t.Error("a fermenter is rated as a pack")
	}
}

// A keg under its gas holds its pressure as it is closed; a bottle that was let down to be capped has CO2 of the
// pressure of the place above it.
func TestCloseUnderGas(t *testing.T) {
	filled := after(beer(), Step{Kind: Chill, Temperature: deg(4)}, Step{Kind: Carbonate, Gauge: units.BarGauge.Of(1.25)},
		Step{Kind: Fill, Volume: units.Litre.Of(18), Capacity: units.Litre.Of(19)})
	s, let := after(filled, Step{Kind: Close, Gas: true}), after(filled, Step{Kind: Close})
	p, down := must(s.Pack(units.GaugePressure{})), must(let.Pack(units.GaugePressure{}))
	// 1.25 bar in the head-space, by the ideal gas law; CO2 of 2.2 bar is 2 % denser.
	room := 19 - 18*(1+must(filled.Content()).In(units.GramCO2PerLitre)/44.009*0.0323)
	near(t, "CO2 let go", s.Of(CarbonDioxide)-let.Of(CarbonDioxide), 125*room/(8.314*277.15), 0.0015)
	if down.Gauge.Compare(p.Gauge) >= 0 || down.Content.Compare(p.Content) >= 0 {
		t.Errorf("let down it holds %v at %v", down.Content, down.Gauge)
	}
	near(t, "gauge", p.Gauge.In(units.BarGauge), 1.25, 0.01)
	for _, st := range []Step{{Kind: Dilute, Mass: grams(1)}, {Kind: Heat, Temperature: deg(30)}, {Kind: Boil}, {Kind: Transfer}, {Kind: Blend, With: &s},
		{Kind: Stand}, {Kind: Degas}, {Kind: Flavour}, {Kind: Carbonate}, {Kind: Fill}, {Kind: Close}} {
		refused(t, s, st)
	}
}

// What is shut in above a drink is counted by the ideal gas law: air by its parts, CO2 as package carbonation has its
// density; and what splashes in as package carbonation has a drink full of air.
func TestCloseShutsInGas(t *testing.T) {
	place := 101.325 // kPa
	filled := after(beer(), Step{Kind: Fill, Volume: units.Litre.Of(0.5), Capacity: units.Litre.Of(0.6)})
	drink := must(filled.Solution())
	liquid := must(carbonation.NewLiquid(drink))
	dry := place - must(liquid.Pressure(units.CarbonDioxideContent{}, filled.t)).In(units.Kilopascal)
	room := 0.6 - must(drink.Volume(filled.t)).In(units.Litre) - 0.0323*filled.Of(CarbonDioxide)
	nitrogen, oxygen, err := liquid.Aerated(kPa(place), filled.t)
	if err != nil {
		t.Fatal(err)
	}
	at20 := drink.VolumeAt20().In(units.Litre)
	for _, air := range []float64{0, 0.4, 1} {
		for _, splashed := range []float64{0, 0.5} {
			u := Usual()
			u.Air = splashed
			s, left, err := Do(Step{Kind: Close, Share: per(100 * air), Pressure: kPa(place)}, filled, &u)
			if err != nil {
				t.Fatal(err)
			}
			closes(t, filled, s, left)
			if air == 0 {
				splashed = 0
			}
			n := air * dry * room / (8.314462618 * (filled.t.In(units.Celsius) + 273.15))
			rho := must(carbonation.GasDensity(kPa((1-air)*dry), filled.t)).In(units.KilogramPerCubicMetre)
			near(t, "CO2", left.In[CarbonDioxide]*44.0095, rho*room, 3e-5*rho*room+1e-12)
			near(t, "oxygen", left.In[Oxygen], 0.209476*n+splashed*oxygen.In(units.GramPerLitre)*at20/31.998, 1e-5*n+1e-12)
			near(t, "nitrogen", left.In[Nitrogen], 0.790524*n+splashed*nitrogen.In(units.GramPerLitre)*at20/molar[Nitrogen], 1e-5*n+1e-12)
		}
	}
}

// closedBottle is one of 330 mL of 345, primed with 7 g/L, as it is closed on air.
func closedBottle() State {
	b := beer()
	grammes := 7 * must(b.Volume(at20)).In(units.Litre)
	return after(b, Step{Kind: Prime, What: "white sugar", Mass: grams(grammes)},
		Step{Kind: Fill, Volume: units.Litre.Of(0.33), Capacity: units.Litre.Of(0.345)}, Step{Kind: Close, Share: per(100)})
}
