package plan_test

import (
	"encoding/json"
	"math"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// A bottle stored as cold as it is served has one pressure: that of a keg of the same
// content and, on top, of the air it closed on. Air at 93.9 kPa and about 20 °C over 4 %
// of the bottle has 0.89 bar at 6 °C before the liquid shrinks and gas takes its room. A drink that took up
// 30 % of the air it holds in the open still takes up from that: 42 mL/L of air above it, 17 mL/L in it at rest, 5.6 there;
// (42 + 5.6)/(42 + 23) at 6 °C. By hand to a tenth.
func TestBottleHasOnePressure(t *testing.T) {
	r := request(t)
	cold := r.Packs[1].Temperature
	r.Packs[1].Store = &cold
	b := made(t, r).Packs[1]
	near(t, "stored as served, bar", b.Bottle.StoreGauge.In(units.BarGauge), b.Bottle.ServedGauge.In(units.BarGauge), 1e-12)
	near(t, "air, bar", b.Bottle.ServedGauge.In(units.BarGauge)-b.Gauge.In(units.BarGauge), 0.939*279/293*(42+5.6)/(42+23), 0.1)
}

// A scale that shows 10 g alone leaves a bottle of 20 L in all up to 5 g of its primer short or over: 0.498 g of gas each,
// of which the head-space of 4 % takes a twentieth or so.
func TestPrimerByTheScale(t *testing.T) {
	r := request(t)
	if err := r.Scales.Small.UnmarshalText([]byte("10 g")); err != nil {
		t.Fatal(err)
	}
	k := made(t, r).Packs[1]
	more := k.Bottle.Priming.Mass.Quantity().In(units.Gram) - k.Bottle.Priming.Asked.In(units.Gram)
	if math.Abs(more) < 0.3 {
		t.Fatalf("%g g: not the case", more)
	}
	near(t, "content", k.Bottle.Served.In(units.GramCO2PerLitre)-k.Content.In(units.GramCO2PerLitre), 0.95*0.498*more/20, 0.002)
}

// A keg above its rating says so before all other cautions, by name; one below does not.
func TestOverRatedKeg(t *testing.T) {
	r := request(t)
	over := func(p plan.Plan) bool { return strings.HasPrefix(p.Cautions[0], "The keg at 4 °C, set to 1.") }
	if p := made(t, r); over(p) {
		t.Errorf("%q", p.Cautions)
	}
	r.Packs[0].Rating = units.BarGauge.Of(1)
	if p := made(t, r); !over(p) || !strings.Contains(p.Cautions[0], "Above the rating") {
		t.Errorf("%q", p.Cautions)
	}
	r.Packs[1].Rating = units.BarGauge.Of(3)
	p := made(t, r)
	if !over(p) || !strings.HasPrefix(p.Cautions[1], "The bottle at 35 °C, ") {
		t.Errorf("%q", p.Cautions)
	}
}

// Salts that cannot reach a target are told with what they reach.
func TestMissedTarget(t *testing.T) {
	r := request(t)
	missed := func(p plan.Plan) string {
		for _, c := range p.Cautions {
			if strings.HasPrefix(c, "The salts at hand miss") {
				return c
			}
		}
		return ""
	}
	if c := missed(made(t, r)); c != "" {
		t.Error(c)
	}
	much := units.MilligramPerLitre.Of(500)
	r.Water.Target.Calcium = &much
	if c := missed(made(t, r)); !strings.Contains(c, "calcium") || !strings.Contains(c, "chloride") || !strings.Contains(c, " for 500") {
		t.Errorf("%q", c)
	}
	r = request(t)
	low := units.MilligramPerLitreCaCO3.Of(10) // from 38, with salts alone
	r.Water.Target.Alkalinity = &low
	if c := missed(made(t, r)); !strings.Contains(c, "alkalinity 38 for 10") {
		t.Errorf("%q", c)
	}
}

// All of a ferment's gas in the room is the most there can be: 2 kg of CO2 is 1.1 m³, 2.6 %
// of 45 m³ and 5.5 % of 20 m³, where 4 % is dangerous (NIOSH, immediately dangerous).
func TestRoomHoldsAllTheGas(t *testing.T) {
	r := request(t)
	p := made(t, r)
	if p.Room.Dangerous != 0 || p.Room.Reached == 0 {
		t.Errorf("%+v", *p.Room)
	}
	r.Room.Volume = units.CubicMetre.Of(20)
	if p = made(t, r); p.Room.Dangerous == 0 {
		t.Errorf("%+v", *p.Room)
	}
	r.Room.Volume = units.CubicMetre.Of(400) // 0.27 %, below the limit of 0.5 %
	if p = made(t, r); p.Room.Dangerous != 0 || p.Room.Reached != 0 {
		t.Errorf("%+v", *p.Room)
	}
}

// The limit of a juice counts its primer: 12 °Bx gives 6.7 % vol (common practice: 0.56 a
// degree), the boil takes 1.25 L of 57, and 8.5 g/L of sugar bring another 0.5.
func TestAllJuicePrimed(t *testing.T) {
	r := request(t)
	r.Fermentable, r.Buffer, r.Flavour = "juice 12 °Bx", nil, nil
	r.Packs = r.Packs[1:]
	r.Packs[0].Volume = r.Volume
	r.Strength = units.PercentVolume.Of(7)
	p := made(t, r)
	near(t, "strength", p.Packs[0].Strength.In(units.PercentVolume), 7, 0.02)
	r.Strength = units.PercentVolume.Of(7.5)
	if _, err := plan.Make(r); err == nil || !strings.Contains(err.Error(), "at most 7.2 % vol") {
		t.Error(err)
	}
}

// A still drink keeps what the ferment leaves and takes no primer; a closed bottle of it
// has a bar or so when warm, with the air it closed on.
func TestStillBottles(t *testing.T) {
	r := request(t)
	if err := r.Packs[1].Content.UnmarshalText([]byte("still")); err != nil {
		t.Fatal(err)
	}
	if _, err := plan.Make(r); err == nil || err.Error() != "packs[1].prime_with: white sugar: left out of a still drink" {
		t.Error(err)
	}
	r.Packs[1].Priming = ""
	p := made(t, r)
	k := p.Packs[1]
	near(t, "content", k.Content.In(units.GramCO2PerLitre), k.Bottle.Dissolved.In(units.GramCO2PerLitre), 1e-12)
	near(t, "served", k.Bottle.Served.In(units.GramCO2PerLitre), k.Content.In(units.GramCO2PerLitre), 0.1)
	near(t, "strength", k.Strength.In(units.PercentVolume), 4.6, 0.01)
	if !k.Bottle.Priming.Mass.Decimal().IsZero() || k.Bottle.StoreGauge.In(units.BarGauge) > 2 {
		t.Errorf("%+v", k.Bottle)
	}
	for _, w := range p.Weigh {
		if strings.HasPrefix(w.For, "priming") {
			t.Errorf("%+v", w)
		}
	}
	text, err := json.Marshal(r)
	if err != nil {
		t.Fatal(err)
	}
	if back, err := plan.ParseRequest(text); err != nil || back.Packs[1].Content.String() != "still" {
		t.Errorf("%v, %v", back.Packs, err)
	}
	// In a keg, too: what the ferment leaves, at rest colder below the air.
	if err := r.Packs[0].Content.UnmarshalText([]byte("still")); err != nil {
		t.Fatal(err)
	}
	keg := made(t, r).Packs[0]
	near(t, "still keg", keg.Content.In(units.GramCO2PerLitre), k.Content.In(units.GramCO2PerLitre), 0.01)
	if keg.Gauge.In(units.BarGauge) > 0 {
		t.Errorf("%v", keg.Gauge)
	}
	if err := r.Packs[1].Content.UnmarshalText([]byte("degassed")); err != nil {
		t.Fatal(err)
	}
	if c := made(t, r).Packs[1]; !c.Content.IsZero() || c.Bottle.StoreGauge.In(units.BarGauge) > 1 {
		t.Errorf("degassed: %v, %v", c.Content, c.Bottle.StoreGauge)
	}
}

// What is racked for each kind of pack: 40 L of which 0.6 mL in 200.6 is flavouring (volumes of two liquids that
// are nearly alike add up); and together what the fermenter holds less what stays with the yeast.
func TestWhatToRack(t *testing.T) {
	r := request(t)
	p := made(t, r)
	near(t, "base for the kegs", p.Packs[0].Base.In(units.Litre), 40*200/200.6, 0.01)
	near(t, "flavouring for the kegs", p.Packs[0].Flavouring.In(units.Millilitre), 40_000*0.6/200.6, 0.05)
	near(t, "all the base", p.Packs[0].Base.In(units.Litre)+p.Packs[1].Base.In(units.Litre)+p.Vessels[7].Cold.In(units.Litre),
		p.Vessels[6].Cold.In(units.Litre), 1e-9)
	near(t, "left with the yeast, asked for 1.5 L", p.Vessels[7].Cold.In(units.Litre), 1.5, 0.001*59)
	near(t, "all the flavouring", p.Packs[0].Flavouring.In(units.Millilitre)+p.Packs[1].Flavouring.In(units.Millilitre),
		p.Flavour.Added.In(units.Millilitre), 1e-6)
}
