package plan_test

import (
	"fmt"
	"math"
	"strings"
	"testing"
	"time"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// exact reads what a scale shows.
func exact(t *testing.T, text string) units.ExactMass {
	t.Helper()
	m, err := units.ParseExact[units.Mass](text)
	if err != nil {
		t.Fatal(err)
	}
	return m
}

// Where each pack is a drink of its own, the drinks in a serving are those of the strength on the label.
func TestLabelIsOneDrink(t *testing.T) {
	r := request(t)
	weak := units.PercentVolume.Of(3.2)
	r.Packs[0].Strength = &weak
	r.Packs[1].Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(1)}
	p := made(t, r)
	if p.Packs[0].Own == nil || p.Packs[1].Own == nil {
		t.Fatal("not the case: a pack has the batch's label")
	}
	l := p.Label // a UK unit is 10 mL of ethanol
	near(t, "strength by the units in a serving, % vol", 1000*l.UnitsUK/l.Serving.In(units.Millilitre), l.Strength.In(units.PercentVolume), 0.06)
}

// What is not covered of the nitrogen is what is wanted less what the wash has and what is weighed.
func TestShortfallIsWhatIsMissing(t *testing.T) {
	for _, c := range []struct {
		scale, demand string
		short         bool
	}{{"0.1 g", "medium", false}, {"50 g", "high", true}, {"20 g", "medium", true}} {
		r := request(t)
		r.Scales.Small, r.Nutrient.Demand, r.Nutrient.Sources = exact(t, c.scale), c.demand, []string{"diammonium phosphate"}
		n := made(t, r).Nutrient
		open := n.Need.In(units.MilligramPerLitre) - n.Brought.In(units.MilligramPerLitre)
		if short := !n.Shortfall.IsZero(); short != c.short || !short && open > 0.05*n.Need.In(units.MilligramPerLitre) {
			t.Errorf("scale %s: %v of %v is brought, %v said to be open", c.scale, n.Brought, n.Need, n.Shortfall)
		}
		if c.short {
			near(t, "open, mg/L", n.Shortfall.In(units.MilligramPerLitre), open, 0.02*open)
		}
	}
}

// A keg of degassed drink is closed on nitrogen at the pressure of the air, and warms with it: by hand
// 93.87 kPa · 295.15/281.15 and 2.6 kPa of water vapour at 22 °C (CRC Handbook 102nd ed.), 0.4 of ethanol's (6.6 kPa, of 1.5 % of the moles, four
// times as volatile as by Raoult: recalled from memory), less the air.
func TestStillKegIsClosedOnGas(t *testing.T) {
	r := request(t)
	r.Packs[0].Temperature = units.Celsius.Of(8)
	if err := r.Packs[0].Content.UnmarshalText([]byte("degassed")); err != nil {
		t.Fatal(err)
	}
	k := made(t, r).Packs[0]
	near(t, "highest, kPa gauge", k.Highest.Gauge.In(units.KilopascalGauge), 93.87*295.15/281.15+2.6+0.4-93.87, 0.3)
	for _, content := range []string{"still", "degassed"} {
		if err := r.Packs[0].Content.UnmarshalText([]byte(content)); err != nil {
			t.Fatal(err)
		}
		if k := made(t, r).Packs[0]; k.Highest.Gauge.Compare(k.Gauge) < 0 || k.Highest.Gauge.In(units.KilopascalGauge) < 0 {
			t.Errorf("%s: highest %v, of its own %v", content, k.Highest.Gauge, k.Gauge)
		}
	}
}

// Portions weighed in ounces stay ounces, and together are the sugar that the balance has.
func TestPortionsKeepTheScale(t *testing.T) {
	r := request(t)
	r.Portions, r.Scales.Sugar = 4, exact(t, "1 oz")
	p := made(t, r)
	sum := 0.0
	for _, w := range p.Weigh {
		if w.What != "white sugar" || w.For == "priming the bottles" {
			continue
		}
		sum += w.Mass.Quantity().In(units.Gram)
		if w.Mass.Unit() != units.Ounce {
			t.Errorf("%s: %v", w.For, w.Mass)
		}
	}
	in := 0.0
	for _, l := range p.Balance.In {
		if l.What == "white sugar" || l.What == "white sugar, later portions" {
			in += l.Mass.In(units.Gram)
		}
	}
	if math.Abs(sum-in) > 0.01 {
		t.Errorf("%.2f g weighed, %.2f g in the balance", sum, in)
	}
}

// The strength asked for is that of the states, too, where acid goes in before the yeast or after the ferment, where
// yeast matter is the only nutrient, and where juice is softened: none of it thins the packs unseen.
func TestStrengthWithAcidAndYeastMatter(t *testing.T) {
	sour := func(when string) func(*plan.Request) {
		return func(r *plan.Request) { r.Acid = &plan.Acid{What: "citric acid", When: when, PH: 3.0} }
	}
	for what, change := range map[string]func(*plan.Request){
		"acid before the yeast": sour("before the yeast"),
		"acid after":            sour("after the ferment"),
		"yeast matter": func(r *plan.Request) {
			r.Nutrient.Sources, r.Strength, r.Must, r.Malolactic = []string{"autolysed yeast"}, units.PercentVolume.Of(11), nil, nil
			r.Fermentable = "white sugar"
		},
		"softened": func(r *plan.Request) { r.Malolactic = new(units.Percent.Of(100)) },
		"by its gravity": func(r *plan.Request) {
			sour("before the yeast")(r)
			g := 1.042
			r.Gravity, r.Strength = &g, units.StrengthByVolume{}
		},
	} {
		r := drink(t, "cider")
		r.Strength, r.Scales.Sugar = units.PercentVolume.Of(6), exact(t, "1 g")
		change(&r)
		p := made(t, r)
		want := p.Strength.In(units.PercentVolume)
		if r.Gravity == nil {
			want = r.Strength.In(units.PercentVolume)
		}
		near(t, what, p.Packs[0].Strength.In(units.PercentVolume), want, 0.0011*want+0.0014) // half a step of the scale
	}
}

// What is at hand does not fill a can that is larger than its part of it.
func TestNoPackOfWhatDoesNotFillIt(t *testing.T) {
	r := kindOf(t, "sugar_at_hand")
	r.AtHand.Sugar = new(units.Gram.Of(200))
	r.Packs[0].Volume, r.Packs[0].Size = units.Litre.Of(1), units.Litre.Of(0.7)
	rest := r.Packs[0]
	rest.Kind, rest.Priming, rest.HeadSpace, rest.Volume, rest.Size = "keg", "", nil, units.Litre.Of(4), units.Litre.Of(5)
	r.Packs = append(r.Packs, rest)
	p, err := plan.Make(r)
	if err == nil || !strings.Contains(err.Error(), "packs[0].size: 0.7 L: at most the 0.") {
		t.Error(err, p.Packs)
	}
}

// The time until the air of a room is at its limit is never longer than it is, and not "never" where it is minutes: by
// hand, the room's volume of air takes 4,580 and 39,580 ppm of gas at the rate of the busiest hour.
func TestRoomIsFullInMinutes(t *testing.T) {
	r := request(t)
	r.Volume, r.Packs = units.Litre.Of(2000), r.Packs[:1]
	r.Packs[0].Volume = r.Volume
	r.Kettle.Capacity, r.Fermenter.Capacity = units.Litre.Of(3000), units.Litre.Of(3000)
	for _, cubic := range []float64{12, 45, 400} {
		r.Room = &plan.Room{Volume: units.CubicMetre.Of(checked.Number(cubic))}
		room := made(t, r).Room
		perHour := room.Peak.In(units.Kilogram) / room.CO2.In(units.Kilogram) * room.Gas.In(units.CubicMetre)
		for _, c := range []struct {
			says plan.Duration
			ppm  float64
		}{{room.Reached, 5000 - 420}, {room.Dangerous, 40000 - 420}} {
			is := cubic * c.ppm / 1e6 / perHour
			if says := time.Duration(c.says).Hours(); says <= 0 || says > 1.02*is || says < is-1 || is < 2 && says < is-0.05 {
				t.Errorf("%g m³, %g ppm: says %.2f h, by hand %.2f h", cubic, c.ppm, says, is)
			}
		}
	}
}

// What is drawn is drawn about the plan: the usual world is the plan's own, with one's own yield and with much nitrogen.
func TestDrawnAboutThePlan(t *testing.T) {
	rich := request(t)
	rich.Nutrient.Demand = "high"
	for name, r := range map[string]plan.Request{
		"own yield": kindOf(t, "own_figures"), "rich in nitrogen": rich, "usual": request(t), "cider": drink(t, "cider"),
	} {
		p := made(t, r)
		drawn, err := plan.Draw(r, 40)
		if err != nil {
			t.Fatal(err)
		}
		seen := 0
		for _, d := range drawn {
			for _, k := range p.Packs {
				if d.What == "strength of the "+k.Named() {
					near(t, name+", "+d.What, d.Usual, k.Strength.In(units.PercentVolume), 0.012)
					seen++
				}
			}
		}
		if seen == 0 {
			t.Error(name, "has no strength drawn")
		}
	}
}

// One's own yield is met as far as the atoms go, and the strength all the same: the plan takes the sugar that it wants.
func TestOwnYieldBetterThanAtoms(t *testing.T) {
	for _, of := range []func(*plan.Request){
		func(r *plan.Request) { r.Nutrient.Demand = "high" },
		func(r *plan.Request) {
			r.Packs, r.Yeast.Attenuation = r.Packs[:1], new(units.Percent.Of(70))
			r.Packs[0].Volume = r.Volume
		},
	} {
		r := request(t)
		r.Yeast.Yield, r.Scales.Sugar = new(units.GramPerLitre.Of(16.5)), exact(t, "1 g")
		of(&r)
		p := made(t, r)
		want := r.Strength.In(units.PercentVolume)
		near(t, "strength", p.Packs[0].Strength.In(units.PercentVolume), want, 0.0011*want)
		if !told(p, "better than the balance of atoms") {
			t.Error("not said")
		}
	}
	if p := made(t, kindOf(t, "own_figures")); told(p, "balance of atoms") {
		t.Error("said of a yield that the atoms give")
	}
}

// The days name each portion of the sugar and each nutrient that is weighed, in the order they are due, with the gravity
// that is read then; and no nutrient where there is none.
func TestDaysOfPortions(t *testing.T) {
	r := request(t)
	r.Portions = 3
	p := made(t, r)
	var got []string
	for _, e := range p.Schedule[:5] {
		got = append(got, e.What+" "+e.Sign)
	}
	want := []string{"brew, pitch, first nutrient gravity ", "nutrient, addition 2 by", "sugar, portion 2 by", "nutrient, addition 3 by", "sugar, portion 3 by"}
	for i, w := range want {
		if !strings.HasPrefix(got[i], w) {
			t.Errorf("%q for %q", got[i], w)
		}
	}
	if s := fmt.Sprintf("gravity %.4f", p.Gravity.First); p.Schedule[0].Sign != s {
		t.Errorf("%q for %q", p.Schedule[0].Sign, s)
	}
	for i := range p.Schedule[1:] {
		if p.Schedule[i+1].Day < p.Schedule[i].Day {
			t.Error(p.Schedule)
		}
	}
	if what := made(t, drink(t, "ale")).Schedule[0].What; what != "brew, pitch" {
		t.Error(what)
	}
}
