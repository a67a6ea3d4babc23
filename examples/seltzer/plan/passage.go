package plan

import (
	"errors"
	"math"

	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// A passage is what a kind of pack goes through once its drink is mixed: the one list by which a plan finds its
// figures and [Draw] draws them.
type passage struct {
	ready  []forward.Step // as it is filled: without its gas, cold, carbonated
	served []forward.Step // one bottle filled, closed, conditioned and as warm as it is served; none of a keg
	stored []forward.Step // the same as warm as its store
}

// passage is that of a drink as it is mixed, so warm, under its own gauge pressure where it is carbonated.
func (m *maker) passage(i int, drink gravity.Solution, at units.Temperature, set units.GaugePressure) (p passage, err error) {
	r, place, air := m.recipe.packs[i], m.air.Pressure(), units.Percent.Of(100)
	to := func(t units.Temperature) forward.Step {
		st := m.temper(at, t)
		at = t
		return st
	}
	if r.Content.none {
		p.ready = append(p.ready, forward.Step{Kind: forward.Degas, Share: units.Percent.Of(100)})
	}
	carbonate := forward.Step{Kind: forward.Carbonate, Gauge: set, Pressure: place}
	switch {
	case r.Kind == keg && !r.Content.still:
		p.ready = append(p.ready, to(r.Temperature), carbonate)
	case r.counterPressure():
		p.ready, air = append(p.ready, to(r.filledAt()), carbonate), units.Share{}
	case r.Kind == keg && r.Temperature.Compare(at) < 0: // no warmer than it has been, or gas would go
		p.ready = append(p.ready, to(r.Temperature))
	case r.Kind != keg && at.Compare(at20) > 0:
		p.ready = append(p.ready, to(at20))
	}
	if r.Kind == keg {
		return p, nil
	}
	full, err := at20To(drink, r.Size, at)
	if err != nil {
		return p, err
	}
	p.served = append(p.served,
		forward.Step{Kind: forward.Fill, Volume: full, Capacity: litres(r.Size.In(units.Litre) / (1 - r.HeadSpace.In(units.Fraction))), Stretch: part(r.Stretch)},
		forward.Step{Kind: forward.Close, Share: air, Pressure: place})
	if r.primes() {
		p.served = append(p.served, forward.Step{Kind: forward.Ferment, Share: units.Percent.Of(100)})
	}
	p.served = append(p.served, to(r.Temperature))
	p.stored = append(p.stored, to(*r.Store))
	return p, nil
}

// temper warms or chills.
func (m *maker) temper(from, to units.Temperature) forward.Step {
	if to.Compare(from) > 0 {
		return forward.Step{Kind: forward.Warm, Temperature: to, Pressure: m.air.Pressure()}
	}
	return forward.Step{Kind: forward.Chill, Temperature: to}
}

// at20To is a volume of a drink at 20 °C as it is at another temperature.
func at20To(drink gravity.Solution, v units.Volume, t units.Temperature) (units.Volume, error) {
	is, err := drink.Volume(t)
	return litres(v.In(units.Litre) * is.In(units.Litre) / drink.VolumeAt20().In(units.Litre)), err
}

// A poured is a kind of pack: its drink, all of it, as it is mixed, without what a cylinder brings; and one pack of it.
type poured struct {
	carried
	mixed  gravity.Solution
	before forward.State  // its part of the base, before anything joins it
	steps  []forward.Step // that mixed it
	store  []forward.Step // to what is stored
	added  float64        // kg
	asked  packed         // what went into it, before the scale rounded it
	meter  *forward.Meter // that of all packs

	filling               units.CarbonDioxideContent // of the drink under counter-pressure: the head-space takes some
	set                   units.GaugePressure        // at which it is carbonated
	ready, served, stored forward.State              // twice a pack of it, as it is filled; a bottle of it
}

// held is the content of a drink as it is filled into a keg, of a bottle's as it comes from the ferment.
func (f *poured) held(r packRecipe) (units.CarbonDioxideContent, error) {
	switch {
	case r.Content.none:
		return units.CarbonDioxideContent{}, nil
	case r.Kind == keg:
		return f.meter.Content(&f.ready)
	}
	return f.meter.Content(&f.state)
}

// fill mixes the drink of a kind of pack, by the weights as the scale shows them, and carries it through a pack of it.
// It returns what goes into it.
func (m *maker) fill(i int, f *poured) (packed, error) {
	r := m.recipe.packs[i]
	k, err := m.mended(i, f)
	if err != nil {
		return k, err
	}
	f.asked = k
	for _, x := range []*float64{&k.primer, &k.sweet, &k.acid} {
		is, err := kilograms(*x).Round(m.req.Scales.Small, units.Nearest)
		if err != nil {
			return k, err
		}
		if !is.Decimal().IsZero() { // else it is measured dissolved
			*x = kg(is.Quantity())
		}
	}
	if m.batch.packed[i].primer != k.primer || k.sweet != f.asked.sweet || k.acid != f.asked.acid {
		if err := m.pass(i, k, f); err != nil {
			return k, err
		}
	}
	stored := f.carried
	stored.state = f.served
	if _, err := stored.do(f.store...); err != nil {
		return k, err
	}
	f.stored = stored.state
	if k.drink = f.mixed; !r.primes() {
		return k, nil
	}
	all := k.drink.VolumeAt20().In(units.Litre) / r.Size.In(units.Litre)
	if k.drink, err = f.served.Solution(); err != nil {
		return k, err
	}
	k.drink, err = k.drink.Times(all)
	return k, err
}

// mended is what goes into a kind of pack. The primer, and the content that the drink is filled with under counter-pressure,
// are mended so that the bottle as it is served holds what was asked for: the search before knew the drink but not its
// water, which binds a little of the gas, and the head-space takes some.
func (m *maker) mended(i int, f *poured) (packed, error) {
	r, k := m.recipe.packs[i], m.batch.packed[i]
	f.filling = r.target
	slope, was, wasMissing := 1.0, 0.0, 0.0 // of the content served by that of the filling
	for n := range mostFillings {
		if err := m.pass(i, k, f); err != nil || !r.primes() && !r.counterPressure() {
			return k, err
		}
		held, err := f.meter.Pack(&f.served, r.Rating)
		if err != nil {
			return k, err
		}
		if held.AtLeast {
			return k, r.full("at "+r.Temperature.Text(units.Celsius, 0), nil)
		}
		missing := r.target.In(units.GramCO2PerLitre) - held.Content.In(units.GramCO2PerLitre)
		near, none := math.Abs(missing), k.primer == 0 && missing <= 0 // there is more without any than is asked for
		if r.primes() {
			k.primer = max(0, k.primer+missing/r.slope*r.Volume.In(units.Litre))
		} else {
			now := f.filling.In(units.GramCO2PerLitre)
			if moved := (wasMissing - missing) / (now - was); n > 0 && moved > 0.05 && moved < 2 { // else rounding
				slope = moved
			}
			was, wasMissing = now, missing
			if now += missing / slope; now <= 0 {
				return k, &RequestError{Field: r.field + ".co2", Value: r.Content.String(),
					Allowed: "more: the CO2 of its head-space alone brings it past that; or less head-space"}
			}
			f.filling = units.GramCO2PerLitre.Of(checked.Number(now))
		}
		if near < leastMissing || r.primes() && (near < littleMissing || none) {
			return k, nil
		}
	}
	return k, &RequestError{Field: r.field + ".co2", Value: r.Content.String(), Allowed: "a content that this pack can be brought to: no figure fits",
		Err: numeric.ErrNoConvergence}
}

const (
	mostFillings = 20
	leastMissing = 1e-6 // g/L
	// of which a primer that is mended by it leaves a twentieth, less than a scale shows of it
	littleMissing = 0.004
)

// full refuses a bottle that has no room for the drink with its gas.
func (p *packRecipe) full(when string, err error) error {
	return &RequestError{Field: p.field + ".head_space", Value: p.HeadSpace.Text(units.Percent, 1), is: quantity(*p.HeadSpace),
		Allowed: "more: " + when + " the drink fills the " + p.Kind, Err: err}
}

// mix makes the drink from its part of the base.
func (m *maker) mix(i int, k packed, f *poured) (err error) {
	f.state = f.before
	if f.steps, err = m.mixed(i, k, 1); err != nil {
		return err
	}
	left, err := f.do(f.steps...)
	f.added = kg(left.In.Mass())
	return err
}

// pass mixes the drink and carries it through one pack, as it is served.
func (m *maker) pass(i int, k packed, f *poured) error {
	if err := m.mix(i, k, f); err != nil {
		return err
	}
	r, one := m.recipe.packs[i], f.carried
	var err error
	if f.mixed, err = f.state.Solution(); err != nil {
		return err
	}
	switch {
	case r.Kind == keg && !r.Content.still:
		f.set, err = m.setTo(f.mixed, r, r.target, r.Temperature)
	case r.counterPressure():
		f.set, err = m.setTo(f.mixed, r, f.filling, r.filledAt())
	}
	if err != nil {
		return err
	}
	p, err := m.passage(i, f.mixed, f.state.Temperature(), f.set)
	if err != nil {
		return err
	}
	if one.state, err = f.state.OfVolume(r.Size.Plus(r.Size)); err != nil {
		return err
	}
	for _, to := range []struct {
		steps []forward.Step
		into  *forward.State
	}{{p.ready, &f.ready}, {p.served, &f.served}} {
		if _, err := one.do(to.steps...); err != nil {
			if e, ok := errors.AsType[*units.RangeError](err); ok && (e.Quantity == "head-space" || e.Quantity == "capacity of the pack") {
				return r.full("as it is filled", err)
			}
			return err
		}
		*to.into = one.state
	}
	f.store = p.stored
	return nil
}

// setTo is the gauge pressure at which a drink holds a content.
func (m *maker) setTo(drink gravity.Solution, r packRecipe, c units.CarbonDioxideContent, t units.Temperature) (units.GaugePressure, error) {
	l, err := carbonation.NewLiquid(drink)
	if err != nil {
		return units.GaugePressure{}, err
	}
	total, err := l.Pressure(c, t)
	if err != nil {
		return units.GaugePressure{}, &RequestError{Field: r.field + ".co2", Value: r.Content.String(), Allowed: reason(err), Err: err}
	}
	return m.air.Gauge(total), nil
}
