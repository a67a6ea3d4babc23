package batch_test

import (
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/batch"
	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

func must[T any](v T, err error) T {
	if err != nil {
		panic(err)
	}
	return v
}

// builtIn is the plan of the request that comes with the program.
func builtIn() plan.Plan {
	return must(plan.Make(must(plan.ParseRequest(must(os.ReadFile("../request.json"))))))
}

// weight is what a plan weighs of something for something, in g.
func weight(p plan.Plan, what, kind string) float64 {
	for _, w := range p.Weigh {
		if w.What == what && strings.Contains(w.For, kind) {
			return w.Mass.Quantity().In(units.Gram)
		}
	}
	panic("the plan weighs no " + what + " for the " + kind)
}

// figures are what either program comes to.
type figures struct {
	boiledOff, start, kettle, wash, base float64 // kg, then L at 20 °C
	original, floor, strength            float64
	nitrogen, yeast, gas                 float64 // mg/L, kg, kg
	pHClear, pHRest, pHUsual             float64
	kept                                 float64 // CO2 when it is packed, g/L
	keg                                  float64 // bar gauge at 4 °C
	bottles, kegs                        float64 // % vol
	served, stored                       float64 // g/L, bar gauge
}

// carriedByHand carries a finished plan forward with plain formulas: no search, and nothing of packages batch
// and plan but the weights, volumes and temperatures that the plan prints. Densities are read from
// the formulas of OIML and ICUMSA.
func carriedByHand(p plan.Plan) (f figures) {
	rho := func(extract float64) float64 { // kg/L of sucrose in water, by mass
		return must(gravity.SucroseDensity(units.DegreePlato.Of(checked.Number(100*extract)), units.Celsius.Of(20))).In(units.GramPerMillilitre)
	}
	spirit := func(ethanol float64) float64 { // kg/L of ethanol in water, by mass, on the same water
		of := func(x float64) float64 {
			return must(gravity.EthanolDensity(units.PercentMass.Of(checked.Number(100*x)), units.Celsius.Of(20))).In(units.GramPerMillilitre)
		}
		return of(ethanol) / of(0) * rho(0)
	}
	const pure = 0.78924 // kg/L, ethanol (OIML R 22)
	r := p.Request

	// Kettle.
	w := r2(p.Water.Volume) * 0.99820
	s := weight(p, "white sugar", "kettle") / 1000 * 0.9995 // dry
	moist := weight(p, "white sugar", "kettle")/1000 - s
	w += moist
	f.start = (w + s) / rho(s/(w+s))
	f.boiledOff = r.Kettle.BoilOff.In(units.LitrePerMinute) * 15 * 0.99820
	w -= f.boiledOff
	f.kettle = (w + s) / rho(s/(w+s))
	part := 1 - r2(r.Kettle.Loss)/f.kettle
	w, s = w*part, s*part
	f.wash = f.kettle * part

	// What is dissolved beside, mmol in all; the plan's water is by the litre of water.
	mmol := func(c units.MassConcentration, molar float64) float64 {
		return c.In(units.MilligramPerLitre) / molar * r2(p.Water.Volume) * part
	}
	after := p.Water.After
	ions := mmol(after.Calcium, 1)/1000 + mmol(after.Magnesium, 1)/1000 + mmol(after.Sodium, 1)/1000 + mmol(after.Potassium, 1)/1000 +
		mmol(after.Chloride, 1)/1000 + mmol(after.Sulfate, 1)/1000 // g
	dap, buffer := weight(p, "diammonium phosphate", "stages"), weight(p, "potassium bicarbonate", "buffer")
	alkali := func(c units.CalciumCarbonate) float64 { return c.In(units.MilligramPerLitreCaCO3) / 50.043 }
	bicarbonate := alkali(p.Water.Boiled.AlkalinityHigh) * 61.017 / 1000 * w / 0.9982
	salts := (ions + bicarbonate + dap + buffer) / f.wash
	f.original = rho(s/(w+s))/rho(0) + 0.00075*salts
	ammonium, amino := dap*2*14.007/132.06, 0.04*weight(p, "autolysed yeast", "yeast") // g of nitrogen
	f.nitrogen = (ammonium + amino) / f.wash * 1000

	// Ferment: wine law for the ethanol, Pasteur for glycerol and succinic acid, 2 and 1 g/kg of hexose of
	// acetic and lactic acid, the yeast by its nitrogen; gas by the carbon that is left, in kmol.
	h := s * 1.05263
	e := h * 7.8924 / 16.83
	glycerol, succinic, acetic, lactic := h*3.16/105.26, h*0.67/105.26, h*0.002, h*0.001
	f.yeast = (ammonium + amino) / 1000 / 0.064
	n := f.yeast * 0.064 / 14.007
	phosphorus, potassium := f.yeast*0.013, f.yeast*0.02
	skeleton := (f.yeast - n*17.031 - phosphorus/30.974*97.994 - potassium/39.098*38.09) / 21.220
	// 24 electrons a hexose; 12 an ethanol; 14, 14, 8 and 12 in glycerol and the acids; 4.2 a carbon of yeast.
	ethanol := (24*h/180.156 - 14*glycerol/92.094 - 14*succinic/118.088 - 8*acetic/60.052 - 12*lactic/90.078 - 4.2*skeleton) / 12
	f.gas = 44.009 * (6*h/180.156 - 2*ethanol - 3*glycerol/92.094 - 4*succinic/118.088 - 2*acetic/60.052 - 3*lactic/90.078 - skeleton)
	w -= s * 0.05263 // inverted
	rest := glycerol + succinic + acetic + lactic
	m := w + e + rest
	density := spirit(e/m) + 0.0023*100*rest/m // of a hundredth of glycerol: 1.0097 at 5 %
	f.base = m / density
	f.strength = 100 * e / pure / f.base
	f.floor = density/rho(0) + 0.00075*(salts-(bicarbonate+buffer*0.61+ammonium*18.04/14.007)/f.base) // all bicarbonate is gas, and the ammonium in the yeast

	// pH: charges of the liquid, constants of 25 °C, activity after Davies at 0.01 mol/kg.
	l := w / 0.9982
	ph := func(alkalinity units.CalciumCarbonate) float64 {
		before := r2(p.Water.Volume)*0.9982 + moist - f.boiledOff // kg
		strong := alkali(alkalinity)*before/0.9982*part + buffer/100.115*1000 + dap/132.06*2000 - ammonium/14.007*1000 - 0.8*potassium/39.098*1e6
		strong /= 1000 * l // mol/L
		phosphate := (dap/132.06 - phosphorus/30.974*1000) / l
		return bisect(func(ph float64) float64 {
			const one = 0.045 // of pK for each step of charge
			a := func(pK float64) float64 { return math.Pow(10, ph-pK) }
			p1 := a(2.15 - one)
			p2 := p1 * a(7.20-3*one)
			s1 := a(4.21 - one)
			s2 := s1 * a(5.64-3*one)
			charge := phosphate*(p1+2*p2)/(1+p1+p2) + succinic/118.088*1000/l*(s1+2*s2)/(1+s1+s2) +
				acetic/60.052*1000/l/(1+1/a(4.76-one)) + lactic/90.078*1000/l/(1+1/a(3.86-one)) +
				0.90*math.Pow(10, -1.41)*a(6.38-one) // CO2 at 0.90 atm of it
			return charge - strong - math.Pow(10, -ph+one)
		}, 2, 8)
	}
	low, high := p.Water.Boiled.AlkalinityLow, p.Water.Boiled.AlkalinityHigh
	f.pHClear, f.pHRest = ph(high), ph(low)
	// Of what drops at rest, 0.2/min leave e⁻³ after 15 min.
	f.pHUsual = ph(units.MilligramPerLitreCaCO3.Of(checked.Number(low.In(units.MilligramPerLitreCaCO3) +
		math.Exp(-3)*high.Minus(low).In(units.MilligramPerLitreCaCO3))))

	// Gas: Henry's constant of Plummer and Busenberg, mol/(kg·atm); fugacity from the second virial coefficient.
	litre := w / f.base // kg of water in a litre of drink
	henry := func(c float64) float64 {
		t := c + 273.15
		return math.Pow(10, 108.3865+0.01985076*t-6919.53/t-40.45154*math.Log10(t)+669365/t/t)
	}
	fugacity := func(kPa, c float64) float64 {
		b := map[float64]float64{4: -148, 6: -145.5, 22: -128.6, 35: -114.6}[c] // cm³/mol
		return kPa / 101.325 * math.Exp(b*kPa/1000/8.3145/(c+273.15))
	}
	vapour := map[float64]float64{4: 0.85, 6: 1.0, 22: 2.9, 35: 6.1} // kPa of water and ethanol
	air := p.Atmosphere.In(units.Kilopascal)
	f.kept = henry(22) * fugacity(air-vapour[22], 22) * 44.009 * litre
	content := p.Packs[0].Content.In(units.GramCO2PerLitre)
	gauge := func(c, content float64) float64 { // bar over the place, of the gas alone
		return (bisect(func(kPa float64) float64 { return henry(c)*fugacity(kPa, c)*44.009*litre - content }, 1, 1500) + vapour[c] - air) / 100
	}
	f.keg = gauge(4, content)

	// Flavouring: 0.6 mL of 40 % vol in 200 mL. The bottles: primer and its water.
	flavour := 0.6 / 200.0
	f.kegs = (f.strength + flavour*40) / (1 + flavour)
	primer := weight(p, "white sugar", "priming")
	syrup := p.Packs[1].Bottle.Syrup.In(units.Kilogram)
	bottled := r2(r.Packs[1].Volume)
	electrons, carbon := 14*0.0316/1.0526/92.094+14*0.0067/1.0526/118.088+8*0.002/60.052+
		12*0.001/90.078, 3*0.0316/1.0526/92.094+4*0.0067/1.0526/118.088+2*0.002/60.052+3*0.001/90.078 // a gram of hexose
	inPack := (24/180.156 - electrons) / 12 * 46.069
	primed := (6/180.156 - 2*inPack/46.069 - carbon) * 44.009
	drawn := (bottled - syrup/0.9982 - primer/1000*0.55) / (1 + flavour) // L of base; 0.55 L a kg of primer, fermented
	f.bottles = (f.strength*drawn + 40*flavour*drawn + 100*primer/1000*1.05263*inPack/pure) / bottled
	// The gas of the primer by its atoms, with no yeast; a bottle of 4 % head-space of air gives 3 % of it away.
	made := primed * 1.05263 * primer / bottled
	total := made + f.kept*drawn/bottled
	const space = 0.04 / 0.96
	f.served = bisect(func(c float64) float64 {
		return total - c - space*(gauge(6, c)*100+air-vapour[6])*44.009/8.3145/279.15
	}, 0.1, 20)
	pressing := bisect(func(c float64) float64 {
		return total - c - space*(gauge(35, c)*100+air-vapour[35])*44.009/8.3145/308.15
	}, 0.1, 20)
	// Air: that of the head-space, less what dissolves; the liquid swells into 0.45 % more of its volume by 15 K, and the gas takes room too.
	// A drink that took up 30 % of the air it can hold: 0.3·(11.9+6.3 mL/L of N2 and O2 at 20 °C) in a head-space of 42 mL/L.
	f.stored = gauge(35, pressing) + 0.96*air/100*308.15/293.15*(0.87+0.3*18.2/42*0.75)
	return f
}

func r2(v units.Volume) float64 { return v.In(units.Litre) }

func bisect(f func(float64) float64, lo, hi float64) float64 {
	rising := f(hi) > f(lo)
	for range 200 {
		if mid := (lo + hi) / 2; f(mid) > 0 == rising {
			hi = mid
		} else {
			lo = mid
		}
	}
	return (lo + hi) / 2
}

// carriedAsBatch carries the same plan forward by steps, with chalk at rest after the boil or none dropped.
func carriedAsBatch(p plan.Plan, chalk float64) (f figures) {
	r := p.Request
	place := p.Atmosphere
	u := batch.Usual()
	u.Chalk = chalk
	var s batch.State
	var all batch.Left
	do := func(st batch.Step) {
		next, left, err := batch.Do(st, s, &u)
		if err != nil {
			panic(fmt.Sprint(st.Kind, ": ", err))
		}
		s, all = next, left
	}
	at20 := func() float64 { return r2(must(s.Volume(units.Celsius.Of(20)))) }
	mg := func(i water.Ion, c *units.MassConcentration) water.Content { return i.At(*c) }
	tap := must(water.NewProfile(units.Celsius.Of(20), *r.Water.Report.Alkalinity, mg(water.Calcium, r.Water.Report.Calcium),
		mg(water.Magnesium, r.Water.Report.Magnesium),
		mg(water.Sodium, r.Water.Report.Sodium), mg(water.Potassium, r.Water.Report.Potassium), mg(water.Chloride, r.Water.Report.Chloride),
		mg(water.Sulfate, r.Water.Report.Sulfate)))
	s = must(batch.FromWater(must(tap.WithPH(r.Water.PH)), p.Water.Volume))
	for _, d := range p.Water.Doses {
		do(batch.Step{Kind: batch.Treat, What: d.What, Mass: d.Mass.Quantity()})
	}
	do(batch.Step{Kind: batch.Dissolve, What: r.Fermentable, Mass: p.Weigh[len(p.Water.Doses)].Mass.Quantity()})
	f.start = at20()
	do(batch.Step{Kind: batch.Boil, For: batch.Duration(r.Kettle.Boil), Rate: r.Kettle.BoilOff, Pressure: place})
	f.boiledOff = all.Vapour.Mass().In(units.Kilogram)
	f.kettle = at20()
	do(batch.Step{Kind: batch.Cool, Temperature: r.Fermenter.Temperature})
	do(batch.Step{Kind: batch.Transfer, Volume: r.Kettle.Loss})
	f.wash = at20()
	do(batch.Step{Kind: batch.Pitch, Mass: p.Yeast.Mass.Quantity()})
	pitched := s.Yeast().In(units.Kilogram)
	do(batch.Step{Kind: batch.Feed, What: p.Acidity.Buffer.What, Mass: p.Acidity.Buffer.Mass.Quantity()})
	do(batch.Step{Kind: batch.Feed, What: "diammonium phosphate", Mass: units.Gram.Of(checked.Number(weight(p, "diammonium phosphate", "stages")))})
	do(batch.Step{Kind: batch.Feed, What: "autolysed yeast", Mass: units.Gram.Of(checked.Number(weight(p, "autolysed yeast", "yeast")))})
	f.original = must(s.Gravity()).SG()
	f.nitrogen = (s.Of(batch.Ammonium) + s.Of(batch.Amino)) * 14.007 / at20() * 1000
	do(batch.Step{Kind: batch.Ferment, Share: units.Percent.Of(100), Pressure: place})
	f.gas = (s.Of(batch.CarbonDioxide)+all.Gas[batch.CarbonDioxide])*44.009/1000 - p.Acidity.Buffer.Mass.Quantity().In(units.Kilogram)*44.009/100.115 - 0.001
	f.base, f.floor, f.strength = at20(), must(s.Gravity()).SG(), must(s.Strength()).In(units.PercentVolume)
	f.yeast = s.Yeast().In(units.Kilogram) - pitched
	f.pHClear = must(s.PH())
	do(batch.Step{Kind: batch.Warm, Temperature: r.Fermenter.Warmest, Pressure: place})
	f.kept = must(s.Content()).In(units.GramCO2PerLitre)
	do(batch.Step{Kind: batch.Transfer, Volume: r.Fermenter.Loss, Share: units.Percent.Of(95)})

	// The packs are forks of it.
	base := s
	flavour := r2(r.Flavour.Added) / r2(r.Flavour.Sample)
	drip := func(litres float64) batch.Step {
		return batch.Step{Kind: batch.Flavour, Volume: units.Litre.Of(checked.Number(flavour * litres)), Strength: *r.Flavour.Strength}
	}
	do(batch.Step{Kind: batch.Chill, Temperature: r.Packs[0].Temperature})
	do(drip(at20()))
	do(batch.Step{Kind: batch.Carbonate, Gauge: p.Packs[0].Gauge, Pressure: place})
	f.kegs, f.keg = must(s.Strength()).In(units.PercentVolume), must(s.Content()).In(units.GramCO2PerLitre)

	s = base
	bottled := r.Packs[1]
	primer := weight(p, "white sugar", "priming")
	drawn := (r2(bottled.Volume) - p.Packs[1].Bottle.Syrup.In(units.Kilogram)/0.9982 - primer/1000*0.55) / (1 + flavour)
	do(batch.Step{Kind: batch.Transfer, Volume: units.Litre.Of(checked.Number(at20() - drawn))})
	do(drip(drawn))
	do(batch.Step{Kind: batch.Dilute, Mass: p.Packs[1].Bottle.Syrup})
	do(batch.Step{Kind: batch.Prime, What: bottled.Priming, Mass: units.Gram.Of(checked.Number(primer))})
	s = cold(s)
	do(batch.Step{Kind: batch.Fill, Volume: bottled.Size, Capacity: units.Litre.Of(checked.Number(r2(bottled.Size) / 0.96))})
	do(batch.Step{Kind: batch.Close, Share: units.Percent.Of(100), Pressure: place})
	do(batch.Step{Kind: batch.Ferment, Share: units.Percent.Of(100)})
	f.bottles = must(s.Strength()).In(units.PercentVolume)
	do(batch.Step{Kind: batch.Warm, Temperature: *bottled.Store})
	f.stored = must(s.Pack(bottled.Rating)).Gauge.In(units.BarGauge)
	do(batch.Step{Kind: batch.Chill, Temperature: bottled.Temperature})
	f.served = must(s.Content()).In(units.GramCO2PerLitre)
	return f
}

// cold is the drink as it is bottled, 20 °C.
func cold(s batch.State) batch.State {
	u := batch.Usual()
	s, _, err := batch.Do(batch.Step{Kind: batch.Cool, Temperature: units.Celsius.Of(20)}, s, &u)
	if err != nil {
		panic(err)
	}
	return s
}

// The finished plan, carried forward by two programs that know nothing of its search: by plain
// formulas, and step by step. What differs has its reason beside it.
func TestThePlanCarriedForward(t *testing.T) {
	p := builtIn()
	hand := carriedByHand(p)
	clear, rest, usual := carriedAsBatch(p, 0), carriedAsBatch(p, 50), carriedAsBatch(p, batch.Usual().Chalk)
	t.Logf("by hand %+v\nsteps, none drops %+v\nsteps, at rest %+v", hand, clear, rest)
	gram := func(x units.CarbonDioxideContent) float64 { return x.In(units.GramCO2PerLitre) }
	bottle := p.Packs[1].Bottle
	last := p.Acidity.Points[len(p.Acidity.Points)-1]
	line := func(what string) float64 {
		for _, l := range p.Balance.Out {
			if strings.HasPrefix(l.What, what) {
				return l.Mass.In(units.Kilogram)
			}
		}
		t.Fatalf("the balance has no %q", what)
		return 0
	}
	for _, c := range []struct {
		what              string
		plan, hand, steps float64
		byHand, bySteps   float64 // how far each may be off
		why               string
	}{
		{"boiled off, kg", line("boiled off"), hand.boiledOff, clear.boiledOff, 0.001, 0.001, "same"},
		{"start, L", r2(p.Vessels[1].Cold), hand.start, clear.start, 0.01, 0.01, "same"},
		{"kettle, L", r2(p.Vessels[3].Cold), hand.kettle, clear.kettle, 0.01, 0.01, "same"},
		{"wash, L", r2(p.Vessels[5].Cold), hand.wash, clear.wash, 0.01, 0.01, "same"},
		{"original gravity", p.Gravity.Original, hand.original, clear.original, 0.0001, 0.0001, "chalk has dropped in the plan, as usual"},
		{"nitrogen, mg/L", p.Nutrient.Brought.In(units.MilligramPerLitre), hand.nitrogen, clear.nitrogen, 0.1, 0.1, "same"},
		{"yeast grown, kg", line("yeast grown"), hand.yeast, clear.yeast, 0.001, 0.001, "same"},
		{"base, L", r2(p.Vessels[6].Cold), hand.base, clear.base, 0.03, 0.01, "crystal water, and what the yeast is made of"},
		{"dry floor", p.Gravity.Floor, hand.floor, clear.floor, 0.0001, 0.0001, "chalk has dropped in the plan, as usual"},
		{"strength of the base", 1.003*p.Packs[0].Strength.In(units.PercentVolume) - 0.003*40, hand.strength, clear.strength, 0.02, 0.02,
			"2.5 % of the ethanol lost is wine law within 0.3 %"},
		{"strength of the kegs", p.Packs[0].Strength.In(units.PercentVolume), hand.kegs, clear.kegs, 0.02, 0.02, "as the base"},
		{"strength of the bottles", p.Packs[1].Strength.In(units.PercentVolume), hand.bottles, clear.bottles, 0.02, 0.02, "as the base"},
		{"pH, none drops", p.Acidity.EndClear, hand.pHClear, clear.pHClear, 0.1, 0.002, "constants of 25 °C by hand"},
		{"pH, chalk at rest", p.Acidity.Floor, hand.pHRest, rest.pHClear, 0.1, 0.002, "likewise; the buffer is for the floor"},
		{"pH, as usual", last.PH, hand.pHUsual, usual.pHClear, 0.1, 0.002, "likewise"},
		{"CO2 kept, g/L", gram(bottle.Dissolved) * r2(p.Request.Packs[1].Volume) / 17.6, hand.kept, clear.kept, 0.05, 0.05, "the bottles hold 17.6 L of base"},
		{"content of the kegs, g/L", gram(p.Packs[0].Content), gram(p.Packs[0].Content), clear.keg, 0, 0.02, "bicarbonate"},
		{"gauge of the kegs, bar", p.Packs[0].Gauge.In(units.BarGauge), hand.keg, p.Packs[0].Gauge.In(units.BarGauge), 0.02, 0, "vapours by hand"},
		{"served, g/L", gram(bottle.Served), hand.served, clear.served, 0.06, 0.03, "one balance of atoms for a primer"},
		{"stored, bar", bottle.StoreGauge.In(units.BarGauge), hand.stored, clear.stored, 0.1, 0.03, "as served; bicarbonate in the steps"},
	} {
		if !(math.Abs(c.hand-c.plan) <= c.byHand) {
			t.Errorf("%s: %.5g in the plan, %.5g by hand (%s)", c.what, c.plan, c.hand, c.why)
		}
		if !(math.Abs(c.steps-c.plan) <= c.bySteps) {
			t.Errorf("%s: %.5g in the plan, %.5g step by step (%s)", c.what, c.plan, c.steps, c.why)
		}
	}
	if gas := p.Room.CO2.In(units.Kilogram); math.Abs(hand.gas/gas-1) > 0.003 || math.Abs(clear.gas/gas-1) > 0.003 {
		t.Errorf("CO2 of the ferment: %g kg in the plan, %g by hand, %g step by step", gas, hand.gas, clear.gas)
	}
}
