package plan_test

import (
	"errors"
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"

	"pgregory.net/rapid"
)

// drawKind is a random request of any of the kinds that a plan can start from.
func drawKind(t *rapid.T, start plan.Request) plan.Request {
	r := drawRequest(t, start)
	number := func(what string, lo, hi float64) float64 { return rapid.Float64Range(lo, hi).Draw(t, what) }
	maybe := func(what string) bool { return rapid.IntRange(0, 3).Draw(t, what) == 0 }
	litres := func(x float64) units.Volume { return units.Litre.Of(checked.Number(x)) }
	r.Fermentable = rapid.SampledFrom([]string{"white sugar", "dextrose monohydrate"}).Draw(t, "sugar")
	r.Buffer = start.Buffer
	r.Strength = units.PercentVolume.Of(checked.Number(number("strength", 3, 9)))
	r.Flavour = start.Flavour
	total := r.Volume.In(units.Litre)
	r.Packs = slices.Clone(r.Packs)
	switch rapid.IntRange(0, 4).Draw(t, "kettle") {
	case 0:
		r.Kettle = plan.Kettle{}
	case 1:
		v := litres(total * number("top up", 0.1, 0.5))
		r.Kettle.TopUp = &v
		if maybe("salts after both") {
			r.Water.When = "after the boil"
		}
	case 2:
		r.Water.When = "after the boil"
	}
	if maybe("several") {
		r.Fermenter.Capacity = litres(1.5 * total)
		r.Fermenter.Also = []plan.AlsoFermenter{{Capacity: litres(1.5 * total), Loss: litres(number("other loss", 0, 1))}}
	}
	if maybe("portions") {
		r.Portions = rapid.IntRange(2, 6).Draw(t, "parts")
	}
	if maybe("own yield") {
		y := units.GramPerLitre.Of(checked.Number(number("for 1 %", 16.6, 19)))
		r.Yeast.Yield = &y
	}
	keg, other := &r.Packs[0], &r.Packs[1]
	if keg.Kind != "keg" {
		keg, other = other, keg
	}
	primed := other.Priming != ""
	if primed && maybe("counter-pressure") {
		primed, other.Priming, other.Kind, other.Filled = false, "", "can", "counter-pressure"
		cold := units.Celsius.Of(checked.Number(number("filled at", 0, 6)))
		other.FilledAt = &cold
	}
	if maybe("stretch") {
		s := units.Percent.Of(checked.Number(number("stretch", 0, 2)))
		other.MadeOf, other.Stretch = "PET", &s
	}
	if !primed && maybe("attenuation") {
		a := units.Percent.Of(checked.Number(number("used", 60, 100)))
		r.Yeast.Attenuation = &a
	}
	if maybe("own strength") {
		s := units.PercentVolume.Of(checked.Number(r.Strength.In(units.PercentVolume) * number("part", 0.6, 1.1)))
		keg.Strength = &s
	}
	if maybe("sweet") {
		keg.Sweeten = &plan.Sweeten{What: rapid.SampledFrom([]string{"white sugar", "erythritol"}).Draw(t, "with"),
			Like: units.GramPerLitre.Of(checked.Number(number("as", 1, 40)))}
	}
	if maybe("sour") {
		other.Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(checked.Number(number("acid", 0.1, 4)))}
	}
	if maybe("own flavour") {
		keg.Flavour = &plan.Flavour{Name: "none"}
	}
	switch rapid.IntRange(0, 5).Draw(t, "keg") {
	case 0:
		_ = keg.Content.UnmarshalText([]byte("still"))
	case 1:
		_ = keg.Content.UnmarshalText([]byte("degassed"))
	}
	switch rapid.IntRange(0, 4).Draw(t, "from") { // the same batch, from what it comes to
	case 0, 1:
		return r
	case 2:
		p, err := plan.Make(r)
		if err != nil {
			return r
		}
		g := p.Gravity.Original
		r.Strength, r.Gravity = units.StrengthByVolume{}, &g
	case 3:
		kg := units.Gram.Of(checked.Number(math.Round(1000 * total * number("sugar at hand", 0.07, 0.12))))
		r.Volume, r.AtHand = units.Volume{}, &plan.AtHand{Sugar: &kg}
		r.Kettle.TopUp = nil
	case 4:
		kg, water := units.Gram.Of(checked.Number(math.Round(1000*total*number("sugar", 0.06, 0.12)))), litres(total)
		r.Volume, r.Strength, r.AtHand = units.Volume{}, units.StrengthByVolume{}, &plan.AtHand{Sugar: &kg, Water: &water}
		r.Kettle.TopUp = nil
	}
	return r
}

// A plainBatch is a plan carried forward by its own list, with formulas of a page and nothing of the search:
// volumes add up as water and 0.62 L for a kg of sugar, ethanol by the wine law's figure.
type plainBatch struct {
	sugar, hexose     float64 // kg weighed, for the wash; kg of simple sugar in the fermenter
	ethanol, strength float64 // L, % vol of the base
}

func carriedPlainly(p plan.Plan) (b plainBatch) {
	r := p.Request
	vessel := func(when string) (v plan.Vessel) {
		for _, w := range p.Vessels {
			if strings.HasPrefix(w.When, when) {
				v = w
			}
		}
		return v
	}
	late := 0.0
	for _, w := range p.Weigh {
		kg := w.Mass.Quantity().In(units.Kilogram)
		switch {
		case w.What != r.Fermentable:
		case w.For == "kettle" || w.For == "dissolved in the water":
			b.sugar += kg
		case strings.HasPrefix(w.For, "fermenter, portion"):
			late += kg
		}
	}
	// White sugar is 99.95 % sucrose, 1.0526 of simple sugar; the monohydrate of dextrose 180.16/198.17.
	per := 0.9995 * 1.05263
	if r.Fermentable != "white sugar" {
		per = 180.156 / 198.171
	}
	// The kettle's part of the sugar, less what stays behind with its loss.
	kettle := b.sugar
	if left := vessel("left in the kettle"); !left.Volume.IsZero() {
		whole := vessel("kettle, end of the boil")
		if whole.Volume.IsZero() {
			whole = vessel("kettle, sugar dissolved")
		}
		kettle *= 1 - left.Cold.In(units.Litre)/whole.Cold.In(units.Litre)
	}
	b.sugar += late
	b.hexose = (kettle + late) * per
	used, yield := 1.0, 16.83
	if a := r.Yeast.Attenuation; a != nil {
		used = a.In(units.Fraction)
	}
	if y := r.Yeast.Yield; y != nil {
		yield = y.In(units.GramPerLitre)
	}
	b.ethanol = 1000 * b.hexose * used / yield / 100
	end := vessel("fermenter, fermented dry")
	if end.Volume.IsZero() {
		end = vessel("fermenter, at the end")
	}
	b.strength = 100 * b.ethanol / end.Cold.In(units.Litre)
	return b
}

// What a plan promises, of whatever kind its request, is what its own list comes to by plain formulas and what the
// batch comes to when it is carried forward: strengths, contents, pH, pressure in store, volumes, labels.
func TestPromisedOfEveryKind(t *testing.T) {
	start := request(t)
	refused, planned := 0, 0
	rapid.Check(t, func(t *rapid.T) {
		r := drawKind(t, start)
		p, err := plan.Make(r)
		if err != nil {
			if _, ok := errors.AsType[*plan.RequestError](err); !ok {
				t.Fatalf("%T: %v", err, err)
			}
			refused++
			return
		}
		planned++
		b := carriedPlainly(p)
		litre := func(v units.Volume) float64 { return v.In(units.Litre) }
		close := func(what string, got, want, off float64) {
			t.Helper()
			if !(math.Abs(got-want) <= off) {
				t.Errorf("%s: %.4f in the plan, %.4f by hand", what, got, want)
			}
		}
		packed := 0.0
		for i, k := range p.Packs {
			q := r.Packs[i]
			share := litre(q.Volume)
			if r.Volume.IsZero() { // its part of what there is
				sum := 0.0
				for _, all := range r.Packs {
					sum += litre(all.Volume)
				}
				share *= litre(p.Volume) / sum
			}
			packed += litre(k.Base)
			ethanol := litre(k.Base) * b.strength / 100
			taste := r.Flavour
			if q.Flavour != nil {
				taste = nil
			}
			if taste != nil {
				ethanol += litre(k.Flavouring) * taste.Strength.In(units.PercentVolume) / 100
			}
			if k.Bottle != nil {
				ethanol += k.Bottle.Priming.Mass.Quantity().In(units.Gram) * 0.9995 * 1.05263 / 16.83 / 100
			}
			close("strength", k.Strength.In(units.PercentVolume), 100*ethanol/share, 0.01*k.Strength.In(units.PercentVolume))
			label := p.Label.Strength
			within := p.Label.Within
			if k.Own != nil && q.Strength != nil {
				label, within = k.Own.Strength, k.Own.Within
			}
			if off := math.Abs(k.Strength.In(units.PercentVolume) - label.In(units.PercentVolume)); within != (off <= 0.3) && math.Abs(off-0.3) > 0.06 {
				t.Errorf("label %v of a drink of %v: %v", label, k.Strength, within)
			}
			if q.Strength == nil && r.Gravity == nil && !r.Strength.IsZero() {
				rounded := r.Scales.Sugar.Quantity().In(units.Kilogram) / 2 / p.Weigh[0].Asked.In(units.Kilogram)
				off := (0.001 + rounded) * r.Strength.In(units.PercentVolume) // sugar is weighed to the step of its scale
				if r.Yeast.Yield != nil {                                     // where it is better than the atoms give, what they give counts
					off += 0.003 * r.Strength.In(units.PercentVolume)
				}
				if k.Bottle != nil {
					off += r.Scales.Small.Quantity().In(units.Gram) / 2 / 16.83 / share // and so is the primer
				}
				close("strength asked for", k.Strength.In(units.PercentVolume), r.Strength.In(units.PercentVolume), off)
			}
			if k.PartFull != nil && litre(k.PartFull.Drink) > litre(q.Size) {
				t.Errorf("%v in a keg of %v", k.PartFull.Drink, q.Size)
			}
			// 1.9 g/L at a bar, 15 °C: the content and all that a sugar can make, at the store's temperature, by
			// van 't Hoff's 2400 K (Sander 2015); air and vapour a bar more, a tenth for the drink and real gas.
			if k.Bottle != nil && !k.Bottle.AtLeast {
				c := k.Bottle.Served.In(units.GramCO2PerLitre)
				store := q.Store.In(units.Celsius) + 273.15
				henry := 1.45 * math.Exp(2400*(1/store-1/298.15)) * 0.93 // g/L at a bar
				bar := c/henry - litre2bar(p)
				if got := k.Bottle.StoreGauge.In(units.BarGauge); got > 1.15*bar+1.6 || got < 0.75*bar-1.2 {
					t.Errorf("stored %.2f bar, by hand about %.2f", got, bar)
				}
			}
			if h := k.Highest.Gauge; k.Bottle != nil && h.Compare(k.Bottle.StoreGauge) < 0 && !k.Highest.AtLeast {
				t.Errorf("highest %v, stored %v", h, k.Bottle.StoreGauge)
			}
		}
		base, left, off := p.Vessels[len(p.Vessels)-1], 0.0, 2e-5*packed+1e-4 // where nothing is to be left, the last pack takes what there is
		if base.When == "left with the yeast" {
			left, off, base = litre(base.Cold), 1e-6*packed+1e-6, p.Vessels[len(p.Vessels)-2]
		}
		close("base", packed+left, litre(base.Cold), off)
		holds := litre(r.Fermenter.Capacity)
		for _, f := range r.Fermenter.Also {
			holds += litre(f.Capacity)
		}
		for _, v := range p.Vessels {
			if strings.HasPrefix(v.When, "kettle") && !r.Kettle.Capacity.IsZero() && v.Volume.Compare(r.Kettle.Capacity) > 0 ||
				litre(v.Volume) > holds && strings.HasPrefix(v.When, "fermenter") {
				t.Errorf("%s: %v", v.When, v.Volume)
			}
		}
		if r.Gravity != nil {
			close("original gravity", p.Gravity.Original, *r.Gravity, 0.0002)
		}
		if h := r.AtHand; h != nil {
			close("sugar", b.sugar, h.Sugar.In(units.Kilogram), 0.0002+2e-5*h.Sugar.In(units.Kilogram))
			if h.Water != nil {
				close("water", litre(p.Water.Volume), litre(*h.Water), 0.002+2e-5*litre(*h.Water))
			}
		}
		sum := func(lines []plan.Line) (kg float64) {
			for _, l := range lines {
				kg += l.Mass.In(units.Kilogram)
			}
			return kg
		}
		close("mass", sum(p.Balance.Out), sum(p.Balance.In), 1e-9*sum(p.Balance.In))
		carriedForward(t, r, p)
	})
	t.Logf("%d planned, %d refused", planned, refused)
	if planned < 2*refused {
		t.Errorf("only %d planned, %d refused", planned, refused)
	}
}

// litre2bar is the air of the place, bar.
func litre2bar(p plan.Plan) float64 { return p.Atmosphere.In(units.Bar) }

// carriedForward holds a plan against the batch, step by step with the usual figures of all that is not known.
func carriedForward(t *rapid.T, r plan.Request, p plan.Plan) {
	drawn, err := plan.Draw(r, 10)
	if err != nil {
		t.Fatal(err)
	}
	i := -1
	for _, d := range drawn {
		switch {
		case strings.HasPrefix(d.What, "strength"):
			i++
			// 2.5 % of the ethanol lost is the yield of wine law where the nitrogen is usual; one's own is counted as it is.
			if want := p.Packs[i].Strength.In(units.PercentVolume); math.Abs(d.Usual-want) > 0.012*want+0.03 {
				t.Errorf("%s %.3f, %.3f in the plan", d.What, d.Usual, want)
			}
		case strings.HasPrefix(d.What, "content"):
			want := p.Packs[i].Content.In(units.GramCO2PerLitre)
			if k := p.Packs[i].Bottle; k != nil {
				want = k.Served.In(units.GramCO2PerLitre)
			}
			if off := 0.015*want + 0.01; math.Abs(d.Usual-want) > off {
				t.Errorf("%s %.3f, %.3f in the plan", d.What, d.Usual, want)
			}
		case strings.HasPrefix(d.What, "pressure"): // that of the list's own store, with the bottle's air and the primer's gas
			if k := p.Packs[i].Bottle; !k.AtLeast && math.Abs(d.Usual-k.StoreGauge.In(units.BarGauge)) > 0.015*k.StoreGauge.In(units.BarGauge)+0.02 {
				t.Errorf("%s %.3f, %v in the plan", d.What, d.Usual, k.StoreGauge)
			}
		case strings.HasPrefix(d.What, "pH at the end"):
			end := p.Acidity.Points[len(p.Acidity.Points)-1]
			if math.Abs(d.Usual-end.PH) > samePH {
				t.Errorf("%s %.3f, %.3f in the plan", d.What, d.Usual, end.PH)
			}
			if b := r.Buffer; b != nil && d.Usual < b.Floor-0.06 {
				t.Errorf("pH %.3f at the end, floor %.2f", d.Usual, b.Floor)
			}
		}
	}
}
