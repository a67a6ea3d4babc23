package plan_test

import (
	"errors"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// An acid leaves a pack with the strength and the volume that were asked for, whichever acid it is.
func TestEveryAcid(t *testing.T) {
	for _, a := range water.Acids() {
		r := request(t)
		r.Packs[0].Acid = &plan.PackAcid{What: a.Name(), Dose: units.GramPerLitre.Of(12)}
		p, err := plan.Make(r)
		if err != nil {
			t.Logf("%s: %v", a.Name(), err)
			continue
		}
		near(t, a.Name()+", % vol", p.Packs[0].Strength.In(units.PercentVolume), 4.6, 0.01)
	}
}

// A large head-space that is warm when it is served is filled for too: half a bottle takes more gas than the drink has.
func TestCounterPressureWithRoom(t *testing.T) {
	for _, c := range []struct{ head, served, filled, vol float64 }{{50, 40, 5, 1.2}, {50, 9, 0, 4}, {30, 25, 2, 2.5}, {1, 5, 5, 2.5}} {
		r := request(t)
		k := &r.Packs[1]
		k.Priming, k.Filled, k.FilledAt = "", "counter-pressure", new(units.Celsius.Of(checked.Number(c.filled)))
		k.HeadSpace, k.Temperature = new(units.Percent.Of(checked.Number(c.head))), units.Celsius.Of(checked.Number(c.served))
		k.Content = plan.Content{}
		if err := k.Content.UnmarshalText([]byte(units.VolumesCO2.Of(checked.Number(c.vol)).Text(units.VolumesCO2, 2))); err != nil {
			t.Fatal(err)
		}
		b := made(t, r).Packs[1]
		near(t, "served, g/L", b.Bottle.Served.In(units.GramCO2PerLitre), b.Content.In(units.GramCO2PerLitre), 1e-5)
	}
}

// What a pack cannot be is told by its own field, and by what it can be; no function is named.
func TestOddPacksAreToldByTheirField(t *testing.T) {
	isomalt := &plan.Sweeten{What: "isomalt", Like: units.GramPerLitre.Of(200)}
	content := func(r *plan.Request, i int, text string) { _ = r.Packs[i].Content.UnmarshalText([]byte(text)) }
	counter := func(r *plan.Request) *plan.Pack {
		k := &r.Packs[1]
		k.Priming, k.Filled = "", "counter-pressure"
		return k
	}
	for _, c := range []struct {
		change func(*plan.Request)
		says   string
	}{
		{func(r *plan.Request) { // 0.94 bar of CO2 in as much room as drink is 1.8 g/L of it, 0.9 vol
			k := counter(r)
			k.HeadSpace, k.Temperature, k.FilledAt = new(units.Percent.Of(50)), units.Celsius.Of(-2), new(units.Celsius.Of(10))
			content(r, 1, "0.5 vol")
		}, `packs[1].co2: 0.5 vol: more: the CO2 of its head-space alone brings it past that`},
		{func(r *plan.Request) { r.Packs[0].Sweeten = isomalt }, "packs[0].sweeten.like_sugar: 200 g/L: less: "},
		{func(r *plan.Request) { r.Packs[1].Sweeten = isomalt }, "packs[1].sweeten.like_sugar: 200 g/L: less: "},
		{func(r *plan.Request) {
			k := counter(r)
			k.Sweeten, k.Strength = isomalt, new(units.PercentVolume.Of(1))
		}, "packs[1].sweeten.like_sugar: 200 g/L: less: "},
		{func(r *plan.Request) { // the primer of 2.8 vol makes 0.4 % vol, that of 6 in half a bottle far more
			k := &r.Packs[1]
			k.HeadSpace, k.Strength = new(units.Percent.Of(50)), new(units.PercentVolume.Of(0.6))
			content(r, 1, "4 vol")
		}, "packs[1].strength: 0.6 % vol: more: the primer alone makes more than this strength"},
		{func(r *plan.Request) { // 14 bar of CO2
			r.Packs[0].Temperature = units.Celsius.Of(40)
			content(r, 0, "6 vol")
		}, "packs[0]"},
		{func(r *plan.Request) { // swollen by 6 volumes it is more than the bottle
			k := counter(r)
			k.HeadSpace, k.FilledAt = new(units.Percent.Of(0.5)), new(units.Celsius.Of(25))
			f := *r.Flavour
			f.Sugar, f.Strength = new(units.GramPerLitre.Of(500)), nil
			r.Flavour = &f
			content(r, 1, "6 vol")
		}, "packs[1].head_space: 0.5 %: more: "},
		{func(r *plan.Request) { // the sweetener takes an eighth of the keg, so that its base has to be stronger than is computed
			r.Strength = units.PercentVolume.Of(15)
			r.Packs[0].Sweeten = &plan.Sweeten{What: "white sugar", Like: units.GramPerLitre.Of(200)}
			r.Packs[1].Priming, r.Packs[1].Filled = "", "counter-pressure"
			r.Stabilise = &plan.Stabilise{Molecular: new(units.MilligramPerLitre.Of(0.8))}
		}, "strength: that of the base, for these packs: less: "},
	} {
		r := request(t)
		r.Packs = append([]plan.Pack(nil), r.Packs...)
		r.Strength = units.PercentVolume.Of(3)
		c.change(&r)
		_, err := plan.Make(r)
		e, ok := errors.AsType[*plan.RequestError](err)
		if !ok || !strings.HasPrefix(err.Error(), c.says) || strings.Contains(err.Error(), "carbonation.") || strings.Contains(e.Value, "as given") {
			t.Errorf("%v, want %s", err, c.says)
		}
	}
}

// A sweet pack so strong that all its sugar would take it past what is computed is over its rating, not refused: 200 g/L make
// 103 g/L of CO2.
func TestStrongAndSweetKeg(t *testing.T) {
	r := request(t)
	r.Strength = units.PercentVolume.Of(14)
	r.Packs[0].Sweeten = &plan.Sweeten{What: "white sugar", Like: units.GramPerLitre.Of(200)}
	h := made(t, r).Packs[0].Highest
	if !h.AtLeast || h.Verdict.String() != "over the rating given" || !h.Sugar {
		t.Errorf("%+v", h)
	}
}
