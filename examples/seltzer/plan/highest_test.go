package plan_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Gas of a bottle by hand: what a gram of sucrose makes (Gay-Lussac, atomic weights of CIAAW
// 2021) and what a litre of room holds at a partial pressure in bar (ideal gas, R 0.0831446
// L·bar/(mol·K), and 1 % more for CO2 at 2 bar near 5 °C: Z 0.985 at 2 bar, Span & Wagner).
const perSucrose = 0.51428

// What a gram makes in a bottle: glycerol 3.0 and succinic acid 0.64 of 100 hexose (Pasteur), 0.2 acetic and 0.1 lactic
// acid leave less, by electrons and carbon; two molecules of ethanol have 24 electrons and 4 carbon.
var inBottle = func() float64 {
	e := 24/180.156 - 14*0.0300/92.094 - 14*0.00637/118.088 - 8*0.002/60.052 - 12*0.001/90.078
	c := 6/180.156 - 2*e/12 - 3*0.0300/92.094 - 4*0.00637/118.088 - 2*0.002/60.052 - 3*0.001/90.078
	return 1.05263 * 44.009 * c
}()

func gasIn(litres, bar, celsius float64) float64 {
	return bar * litres * 44.009 / (0.0831446 * (celsius + 273.15)) / (1 - 0.0075*bar)
}

// Bottles in a cellar colder than they are served were rated by the cellar alone.
func TestHighestWhateverTheOrder(t *testing.T) {
	for _, c := range []struct {
		store, served, ferment float64
		when                   string
		at                     float64
	}{
		{2, 6, 18, "conditioned", 20}, {2, 6, 25, "conditioned", 25}, {2, 30, 25, "served", 30}, {35, 6, 20, "stored", 35}, {2, 30, 32, "conditioned", 32},
	} {
		r := request(t)
		store := units.Celsius.Of(checked.Number(c.store))
		r.Packs[1].Store, r.Packs[1].Temperature = &store, units.Celsius.Of(checked.Number(c.served))
		r.Fermenter.Temperature = units.Celsius.Of(checked.Number(c.ferment))
		r.Fermenter.Warmest = units.Celsius.Of(33)
		h := made(t, r).Packs[1].Highest
		if h.When != c.when || h.Temperature != units.Celsius.Of(checked.Number(c.at)) {
			t.Errorf("stored at %g, served at %g, fermented at %g °C: highest %s at %v", c.store, c.served, c.ferment, h.When, h.Temperature)
		}
	}
	r := request(t)
	cold := units.Celsius.Of(2)
	r.Packs[1].Store, r.Packs[1].Rating = &cold, units.BarGauge.Of(1.8)
	k := made(t, r).Packs[1]
	if k.Bottle.ServedGauge.Compare(k.Rating) < 0 || k.Bottle.StoreGauge.Compare(k.Rating) > 0 {
		t.Fatalf("served at %v, stored at %v: not the case", k.Bottle.ServedGauge, k.Bottle.StoreGauge)
	}
	if k.Highest.Verdict.String() != "over the rating given" {
		t.Errorf("%+v", k.Highest)
	}
}

// A drink is at least as warm as it fermented when the ferment ends.
func TestWarmestBelowTheFerment(t *testing.T) {
	r := request(t)
	r.Fermenter.Warmest = units.Celsius.Of(19)
	_, err := plan.Make(r)
	if e, ok := errors.AsType[*plan.RequestError](err); !ok || e.Field != "fermenter.warmest" {
		t.Error(err)
	}
	r.Fermenter.Warmest = r.Fermenter.Temperature
	made(t, r)
}

// Sugar of a flavouring ferments in a primed bottle: CO2 from it, from the primer and from the
// ferment is what is in the drink and in the head-space, whoever brings it.
func TestFlavouringPrimes(t *testing.T) {
	for _, dose := range []float64{0, 5, 10, 16} { // mL in a litre, of 600 g/L
		r := request(t)
		if dose > 0 {
			r = syruped(t, 600, dose)
		}
		p := made(t, r)
		k, b := p.Packs[1], p.Packs[1].Bottle
		primer := b.Priming.Asked.In(units.Gram) / 20 // to a litre
		// The base is what is left of the litre by syrup water and primer (0.61 mL a gram), and by
		// the flavouring in its proportion.
		base := (1 - b.Syrup.In(units.Kilogram)/20 - 0.00061*primer) / (1 + dose/1000)
		sugar := 0.6 * dose * base
		near(t, "gas of the flavouring", b.FromFlavour.In(units.GramCO2PerLitre), inBottle*sugar, 0.01)
		in := b.Dissolved.In(units.GramCO2PerLitre) + inBottle*(0.9994*primer+sugar)
		// 4 % of the brim-full bottle, and 0.3 % by which the drink shrinks to 6 °C less 0.4 % by
		// which its gas swells it; the CO2 is what a keg of that content has, less 3 kPa of vapour.
		bar := k.Gauge.In(units.BarGauge) + p.Atmosphere.In(units.Bar) - 0.01
		out := b.Served.In(units.GramCO2PerLitre) + gasIn(0.04/0.96-0.001, bar, 6)
		near(t, "CO2 in and out", in/out, 1, 0.004)
		near(t, "content", b.Served.In(units.GramCO2PerLitre), k.Content.In(units.GramCO2PerLitre), 0.0013) // half a step of the scale, 0.05 g in 20 L
		near(t, "highest", k.Highest.Gauge.In(units.BarGauge), 5.48, 0.02)                                  // as without flavouring
		near(t, "strength", k.Strength.In(units.PercentVolume), 4.6, 0.005)
	}
}

// Where the flavouring's sugar is too much for the bottle, the most that may be is named, and
// works; a little more does not.
func TestTooSweet(t *testing.T) {
	for _, c := range []struct {
		name   string
		change func(*plan.Request)
	}{
		{"content", func(*plan.Request) {}},
		{"rating of a still bottle", func(r *plan.Request) {
			r.Packs[1].Priming, r.Packs[1].Rating = "", units.BarGauge.Of(3)
			_ = r.Packs[1].Content.UnmarshalText([]byte("still"))
		}},
		{"rating below the content", func(r *plan.Request) { r.Packs[1].Rating = units.BarGauge.Of(2) }},
		{"beyond what is computed", func(r *plan.Request) { r.Flavour.Added = units.Millilitre.Of(150) }},
	} {
		r := syruped(t, 600, 30)
		c.change(&r)
		_, err := plan.Make(r)
		e, ok := errors.AsType[*plan.RequestError](err)
		limit, known := errors.AsType[*units.RangeError](err)
		if !ok || e.Field != "flavour.added" || !known || !strings.HasPrefix(e.Allowed, "at most ") {
			t.Errorf("%s: %v", c.name, err)
			continue
		}
		t.Log(e)
		try := func(ml float64) (plan.Plan, error) {
			f := *r.Flavour
			f.Added = units.Millilitre.Of(checked.Number(ml))
			q := r
			q.Flavour = &f
			return plan.Make(q)
		}
		p, err := try(limit.Max)
		if err != nil {
			t.Errorf("%s: %g mL: %v", c.name, limit.Max, err)
			continue
		}
		if _, err := try(1.02 * limit.Max); err == nil {
			t.Errorf("%s: 2 %% more than %g mL passes too", c.name, limit.Max)
		}
		if c.name == "content" { // hardly any primer is left to add
			near(t, "primer, g", p.Packs[1].Bottle.Priming.Asked.In(units.Gram), 0, 1)
		}
	}
}

// The sugar of a flavouring can ferment in a keg too: by hand its content and that gas, in
// water of 1.6265 g/(L·bar) at 22 °C (Weiss 1974, between 20 and 25 °C), 5 % less for the
// ethanol (OIV) and the virial corrections, 4 % at 6 bar.
func TestSweetKeg(t *testing.T) {
	r := syruped(t, 600, 10)
	p := made(t, r)
	h := p.Packs[0].Highest
	grams := 5.93 + perSucrose*0.6*10/1.01
	near(t, "bar", h.Gauge.In(units.BarGauge)+0.939, grams/(1.6065*0.95)/(1-0.04), 0.25)
	if h.Temperature != r.Fermenter.Warmest || !h.Sugar || len(h.Cautions) == 0 {
		t.Errorf("%+v", h)
	}
	r.Packs[0].Rating = units.BarGauge.Of(4)
	p = made(t, r)
	if h := p.Packs[0].Highest; h.Verdict.String() != "over the rating given" || !strings.HasPrefix(p.Cautions[0], "The keg at 22 °C, closed") {
		t.Errorf("%+v, %q", h, p.Cautions[0])
	}
	store := units.Celsius.Of(4) // kept cold, it is the gas's pressure without the sugar
	r = request(t)
	r.Packs[0].Store = &store
	p = made(t, r)
	near(t, "cold", p.Packs[0].Highest.Gauge.In(units.BarGauge), p.Packs[0].Gauge.In(units.BarGauge), 0.01)
}

// A keg that is not full takes gas in its head-space: 2 L at 2.19 bar and 4 °C.
func TestPartFullKegs(t *testing.T) {
	for _, c := range []struct{ litres, size, full, part float64 }{{38, 20, 1, 18}, {18, 20, 0, 18}, {40, 20, 2, 0}, {40.5, 20, 2, 0}, {60, 50, 1, 10}} {
		r := request(t)
		r.Packs, r.Volume = r.Packs[:1], units.Litre.Of(checked.Number(c.litres))
		r.Packs[0].Volume, r.Packs[0].Size = r.Volume, units.Litre.Of(checked.Number(c.size))
		k := made(t, r).Packs[0]
		part, room, gas := 0.0, 0.0, 0.0
		if f := k.PartFull; f != nil {
			part, room, gas = f.Drink.In(units.Litre), f.Room.In(units.Litre), f.CO2.In(units.Gram)
		}
		near(t, "full", float64(k.Count), c.full, 0)
		near(t, "part, L", part, c.part, 1e-9)
		near(t, "drink, L", c.full*c.size+part+k.Remainder.In(units.Litre), c.litres, 1e-9)
		if part > 0 {
			near(t, "room, L", room, c.size-c.part, 1e-9)
			near(t, "CO2, g", gas, gasIn(room, k.Gauge.In(units.BarGauge)+0.939, 4), 0.01*gas)
		}
	}
}

// Head-space is a share of the brim-full bottle: at 50 % there is a litre of room over each
// litre of drink, and its gas comes from the primer, too.
func TestHeadSpaceOfTheWhole(t *testing.T) {
	r := request(t)
	half := units.Percent.Of(50)
	r.Packs[1].HeadSpace = &half
	p := made(t, r)
	k, b := p.Packs[1], p.Packs[1].Bottle
	bar := k.Gauge.In(units.BarGauge) + 0.939 - 0.01
	made := b.Dissolved.In(units.GramCO2PerLitre) + inBottle*0.9994*b.Priming.Asked.In(units.Gram)/20
	near(t, "CO2", made, b.Served.In(units.GramCO2PerLitre)+gasIn(1, bar, 6), 0.05)
}

// What may not be primed is not on the list of what to weigh, nor among what to buy.
func TestOverRatedIsNotWeighed(t *testing.T) {
	r := request(t)
	primed := func(p plan.Plan) bool {
		for _, w := range p.Weigh {
			if strings.HasPrefix(w.For, "priming") {
				return true
			}
		}
		return false
	}
	p := made(t, r)
	if !primed(p) || p.Packs[1].Bottle.Held {
		t.Error("no primer")
	}
	r.Packs[1].Rating = units.BarGauge.Of(4)
	p = made(t, r)
	if primed(p) || !p.Packs[1].Bottle.Held || p.Packs[1].Bottle.Priming.Mass.Decimal().IsZero() || len(p.Packs[1].Highest.Cautions) == 0 {
		t.Errorf("%+v", p.Packs[1])
	}
}

// One charge of the room of a keg that is not full carbonates it, where the room is large enough: by hand the gas that the drink
// lacks, 5.93 g/L less what the ferment leaves at 22 °C in 0.939 bar (1.36 g/L by Weiss 1974 in water, 5 % less in the drink), on top
// of what the room holds at the set pressure, 2.19 bar less 0.01 of vapour, and the pressure of that at 4 °C (Z 0.9943 at 1 bar,
// Span & Wagner: 1 % less a bar).
func TestOneCharge(t *testing.T) {
	r := request(t)
	r.Packs, r.Volume = r.Packs[:1], units.Litre.Of(5)
	r.Packs[0].Volume, r.Packs[0].Size = r.Volume, units.Litre.Of(19)
	k := made(t, r).Packs[0]
	total := (5.93-1.36*0.93)*5 + gasIn(14, 2.19-0.01, 4)
	bar := total / gasIn(14, 1, 4) * (1 - 0.0075)
	for range 5 {
		bar = total / (gasIn(14, 1, 4) * (1 - 0.0075)) * (1 - 0.0068*bar)
	}
	near(t, "bar", k.PartFull.Charge.In(units.BarGauge)+0.939, bar, 0.03)
	if k.PartFull.Charge.Compare(k.Gauge) <= 0 {
		t.Errorf("%v, set to %v", k.PartFull.Charge, k.Gauge)
	}
	r.Packs[0].Rating = units.BarGauge.Of(1.5) // below the charge
	if k := made(t, r).Packs[0]; !k.PartFull.Charge.IsZero() {
		t.Errorf("over its rating: %v", k.PartFull.Charge)
	}
	r.Packs[0].Rating = units.BarGauge.Of(9)
	r.Packs[0].Volume, r.Volume = units.Litre.Of(18), units.Litre.Of(18)
	if k := made(t, r).Packs[0]; !k.PartFull.Charge.IsZero() { // a litre would have to hold 90 g
		t.Errorf("of a litre of room: %v", k.PartFull.Charge)
	}
	_ = r.Packs[0].Content.UnmarshalText([]byte("still"))
	if k := made(t, r).Packs[0]; !k.PartFull.Charge.IsZero() {
		t.Errorf("of a still drink: %v", k.PartFull.Charge)
	}
}
