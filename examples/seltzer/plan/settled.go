package plan

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/units"
)

// settled turns a request that starts from what is at hand, or from a gravity, into one of volume
// and strength, which the batch is solved for: two of strength or gravity, volume, sugar and water
// fix both. The others are as they were.
func settled(req Request) (Request, error) {
	if req.made() != nil {
		return req.settledBase()
	}
	sugar, water, err := req.atHand()
	if err != nil {
		return req, err
	}
	if sugar == 0 && water == 0 && req.Gravity == nil {
		return req, nil
	}
	if sugar > 0 && req.Fruit != nil {
		return req, &RequestError{Field: "at_hand.sugar", Value: req.AtHand.Sugar.Text(units.Kilogram, 2),
			Allowed: "left out with fruit, which brings its own part of the sugar"}
	}
	r, err := req.unsettled()
	if err != nil {
		return req, err
	}
	r.fixed = &req
	b, err := r.settle(req, sugar, water)
	if err == nil && req.swell == 0 && r.setSwell(b) {
		b, err = r.settle(req, sugar, water)
	}
	if err != nil {
		return req, err
	}
	// Packs of their own strength take their part of what the others come to.
	own := slices.ContainsFunc(req.Packs, func(p Pack) bool { return p.Strength != nil })
	for n := 0; own && req.Strength.IsZero(); n++ {
		was := r.req.Strength.In(units.PercentVolume)
		if math.Abs(b.strength/was-1) < 1e-5 { // as far as the primer is settled
			break
		}
		if n == mostSettling || !(b.strength >= leastStrength/2 && b.strength < 2*mostStrength) {
			field, value := req.fixes()
			return req, &RequestError{Field: field, Value: value,
				Allowed: "what makes each pack as strong as it is to be, and one of them without a strength of its own, which takes what there is",
				Err:     numeric.ErrNoConvergence}
		}
		common, err := r.common(b)
		if err != nil {
			return req, err
		}
		r.req.Strength = units.PercentVolume.Of(checked.Number(common))
		if b, err = r.settle(req, sugar, water); err != nil {
			return req, err
		}
	}
	if s := b.strength; !(s >= leastStrength && s <= mostStrength) {
		field, value := req.fixes()
		return req, &RequestError{Field: field, Value: value,
			Allowed: fmt.Sprintf("what makes a drink of %s to %s %% vol: this makes %.1f, %s would do", plain(leastStrength), plain(mostStrength),
				s, req.near(min(max(s, leastStrength), mostStrength)/s))}
	}
	if req.Volume.IsZero() {
		scale := r.forAmount(b, sugar, water)
		if !(scale*r.req.Volume.In(units.Litre) >= leastVolume) { // or NaN
			return req, &RequestError{Field: "at_hand", Value: atHandText(sugar, water),
				Allowed: "more: what is left of it after the losses of the vessels is less than a litre"}
		}
		out := smaller(r.req, scale)
		for i, p := range r.req.Packs { // else one would be filled that is not full
			if there := out.Packs[i].Volume; p.Kind != keg && p.Size.Compare(there) > 0 {
				return req, &RequestError{Field: fmt.Sprintf("packs[%d].size", i), Value: SizeText(p.Size),
					Allowed: fmt.Sprintf("at most the %s that what is at hand makes for it: a smaller one, or all of it in the other packs", there.Text(units.Litre, 2))}
			}
		}
		return r.settledTo(out, b), nil
	}
	return r.settledTo(req, b), nil
}

// settledTo is a request of the strength of a batch. A pack of nearly the strength that the batch comes to takes what there is.
func (r *recipe) settledTo(out Request, b batch) Request {
	out.Gravity, out.AtHand = nil, nil
	out.Strength, out.swell = units.PercentVolume.Of(checked.Number(b.strength)), r.swell
	out.Packs = slices.Clone(out.Packs)
	for i, p := range r.packs {
		if most := p.ratio * b.strength; p.Strength != nil && most < p.Strength.In(units.PercentVolume) {
			out.Packs[i].Strength = new(units.PercentVolume.Of(checked.Number(most)))
		}
	}
	return out
}

// common is the strength of the packs that have none of their own, in what a batch ferments to; the
// others are refused where they cannot have theirs.
func (r *recipe) common(b batch) (float64, error) {
	d, err := r.draw(b.share)
	if err != nil {
		return 0, err
	}
	common := math.Inf(1)
	for i, p := range r.packs {
		if p.Strength == nil {
			common = min(common, d.packs[i].strength())
		}
	}
	if math.IsInf(common, 1) {
		return 0, &RequestError{Field: "strength", Value: "missing", Allowed: "given, as every pack has a strength of its own: it is what the others would have"}
	}
	for i := range r.packs {
		p := &r.packs[i]
		if p.Strength == nil {
			continue
		}
		own, most := p.Strength.In(units.PercentVolume), d.packs[i].strength()
		if own > most*(1+nearStrength) {
			return 0, &RequestError{Field: p.field + ".strength", Value: p.Strength.Text(units.PercentVolume, 1), is: quantity(*p.Strength),
				Allowed: fmt.Sprintf("at most the %.1f %% vol that it has undiluted", math.Floor(10*most)/10)}
		}
		p.ratio = min(own, most) / common
	}
	return common, nil
}

// nearStrength is what a pack may miss its own strength by, of it: 0.02 % vol or so.
const nearStrength = 0.005

// atHand checks what the request fixes: two of the four.
func (r *Request) atHand() (sugar, water float64, err error) {
	if h := r.AtHand; h != nil {
		if h.Sugar != nil {
			if err := within("at_hand.sugar", *h.Sugar, units.Kilogram, 0.01, mostVolume); err != nil {
				return 0, 0, err
			}
			sugar = kg(*h.Sugar)
		}
		if h.Water != nil {
			if err := within("at_hand.water", *h.Water, units.Litre, leastVolume, mostVolume); err != nil {
				return 0, 0, err
			}
			water = h.Water.In(units.Litre) * waterPerLitre
		}
		if sugar == 0 && water == 0 {
			return 0, 0, &RequestError{Field: "at_hand", Value: "empty", Allowed: "sugar, water, or both; or a base; or left out"}
		}
	}
	if g := r.Gravity; g != nil {
		if !(*g >= leastGravity && *g <= mostGravity) {
			return 0, 0, &RequestError{Field: "original_gravity", Value: trim(*g),
				Allowed: fmt.Sprintf("%.3f to %.3f, 20/20 °C", leastGravity, mostGravity) + slipped(*g)}
		}
		if !r.Strength.IsZero() {
			return 0, 0, &RequestError{Field: "original_gravity", Value: trim(*g), Allowed: "in the place of the strength: leave one of them out"}
		}
	}
	var given []string
	for _, x := range []struct {
		is   bool
		name string
	}{{!r.Strength.IsZero(), "strength"}, {r.Gravity != nil, "original_gravity"}, {!r.Volume.IsZero(), "volume"}, {sugar > 0, "at_hand.sugar"},
		{water > 0, "at_hand.water"}} {
		if x.is {
			given = append(given, x.name)
		}
	}
	switch {
	case sugar == 0 && water == 0 && r.Gravity == nil: // the plain request: its ranges are checked with the others
		return 0, 0, nil
	case len(given) > 2:
		return 0, 0, &RequestError{Field: given[len(given)-1], Value: "given",
			Allowed: fmt.Sprintf("two of strength or gravity, volume, sugar and water fix the batch: beside it there are %s and %s, so leave one out",
				given[0], given[1])}
	case len(given) < 2:
		return 0, 0, &RequestError{Field: "volume", Value: "missing", Allowed: "two of strength or gravity, volume, sugar and water: there is only " + given[0]}
	case water > 0 && !r.Volume.IsZero():
		return 0, 0, &RequestError{Field: "at_hand.water", Value: "given",
			Allowed: "with a strength, a gravity or the sugar: volume and water alone say too little of the sugar"}
	}
	return sugar, water, nil
}

// What an original gravity may be.
const leastGravity, mostGravity = 1.003, 1.15

// fixes names what a strength follows from.
func (r *Request) fixes() (field, value string) {
	if r.Gravity != nil {
		return "original_gravity", trim(*r.Gravity)
	}
	return "at_hand.sugar", r.AtHand.Sugar.Text(units.Kilogram, 2)
}

// near is what a strength follows from, so many times as much.
func (r *Request) near(times float64) string {
	if r.Gravity != nil {
		return fmt.Sprintf("%.3f", 1+times*(*r.Gravity-1))
	}
	return "about " + units.Mass.Text(kilograms(times*kg(*r.AtHand.Sugar)), units.Kilogram, 1)
}

// atMost is what a measure follows from, brought from what it is wanted to be down to the most that can be made.
func (r *Request) atMost(most, want float64) string {
	if r.Gravity != nil {
		const less = 0.0005 // by which a juice or malt weighs less in the batch than in the search
		return fmt.Sprintf("%.3f", math.Floor(1e3*(1-less+(*r.Gravity-1)*most/want))/1e3)
	}
	times := most / want
	if r.AtHand.Water != nil { // shares of sugar and water
		times *= (1 - want) / (1 - most)
	}
	return fmt.Sprintf("about %.1f kg", math.Floor(10*times*kg(*r.AtHand.Sugar))/10)
}

func atHandText(sugar, water float64) string {
	switch {
	case water == 0:
		return fmt.Sprintf("%.3g kg of sugar", sugar)
	case sugar == 0:
		return fmt.Sprintf("%.3g kg of water", water)
	}
	return fmt.Sprintf("%.3g kg of sugar in %.3g kg of water", sugar, water)
}

// unsettled is the recipe of a request, with the volume of its packs and a strength to begin with
// where they are left out.
func (r Request) unsettled() (*recipe, error) {
	if r.Strength.IsZero() {
		r.Strength = units.PercentVolume.Of(5)
		if r.Gravity != nil { // about, in a sugar wash that ends at 0.995
			r.Strength = units.PercentVolume.Of(checked.Number(min(max(131*(*r.Gravity-0.995), leastStrength), mostStrength)))
		}
	}
	if r.Volume.IsZero() {
		sum := 0.0
		for _, p := range r.Packs {
			sum += p.Volume.In(units.Litre)
		}
		if sum == 0 {
			return nil, &RequestError{Field: "packs", Value: "missing",
				Allowed: "at least one keg or bottle: where the volume follows from what is at hand, the volumes of the packs are its parts"}
		}
		r.Volume = litres(sum)
	}
	r.Gravity, r.AtHand = nil, nil
	k, err := newRecipe(r)
	if err == nil {
		k.primeAhead()
	}
	return k, err
}

// settle finds the batch of what is asked for, its volume still open where it is.
func (r *recipe) settle(req Request, sugar, water float64) (batch, error) {
	switch {
	case sugar > 0 && water > 0:
		boiled, err := r.boilOff()
		if err != nil {
			return batch{}, err
		}
		left := water - boiled
		if left <= 0 {
			return batch{}, &RequestError{Field: "at_hand.water", Value: req.AtHand.Water.Text(units.Litre, 1), is: quantity(*req.AtHand.Water),
				Allowed: fmt.Sprintf("more than the %.1f L that boil away", boiled)}
		}
		want := sugar / (sugar + left)
		share := want
		for range mostSettling {
			b, err := r.forMeasure("at_hand.sugar", func(b batch) float64 { return b.share }, share)
			if err != nil || r.portions() == 1 && r.toppedUp() == 0 {
				return b, err
			}
			// What stays in the kettle is not what is in the fermenter: the whole is a little richer or poorer.
			takes, err := r.amounts(b, r.forAmount(b, sugar, 0))
			if err != nil {
				return b, err
			}
			have := takes.fermentable / (takes.fermentable + takes.water - boiled)
			if math.Abs(have/want-1) < 1e-9 {
				return b, nil
			}
			share *= want / have
		}
		return batch{}, &RequestError{Field: "at_hand.sugar", Value: req.AtHand.Sugar.Text(units.Kilogram, 2),
			Allowed: "what this water and this kettle can take: no figure fits", Err: numeric.ErrNoConvergence}
	case !req.Volume.IsZero() && sugar > 0:
		return r.forMeasure("at_hand.sugar", func(b batch) float64 { return b.fermentable }, sugar)
	case req.Gravity != nil:
		// Salts, nutrient and buffer stand in every gravity: those of the batch without them are near enough.
		original := func(b batch) float64 { return b.wash.Gravity().SG() - 1 }
		b, err := r.forMeasure("original_gravity", original, *req.Gravity-1)
		if err != nil {
			return b, err
		}
		minerals, err := r.minerals(b, sugar, water, req) // below zero where the search's liquid counts more of a juice or malt
		if err != nil || minerals == 0 {
			return b, err
		}
		return r.forMeasure("original_gravity", original, *req.Gravity-1-minerals)
	}
	return r.forStrength()
}

// minerals is what they add to the original gravity of a batch.
func (r *recipe) minerals(b batch, sugar, water float64, req Request) (float64, error) {
	plain := r.req
	if req.Volume.IsZero() {
		scale := r.forAmount(b, sugar, water)
		if !(scale*plain.Volume.In(units.Litre) >= leastVolume) { // refused as what is at hand, next
			return 0, nil
		}
		plain = smaller(plain, scale)
	}
	plain.Strength = units.PercentVolume.Of(checked.Number(min(max(b.strength, leastStrength), mostStrength)))
	plain.Readings, plain.Schedule, plain.Room, plain.Prices = nil, nil, nil, nil
	m, err := makerOf(plain)
	if _, sweet := errors.AsType[*tooSweet](err); sweet || tooSmall(err) || errors.Is(err, errSmallKettle) {
		return 0, nil // refused of the whole plan, with what would do
	}
	if err != nil {
		return 0, err
	}
	return m.salted[0], nil
}

// forMeasure solves the batch for a measure that is nearly proportional to the share of fermentable.
func (r *recipe) forMeasure(field string, measure func(batch) float64, want float64) (batch, error) {
	try := func(share float64) (batch, float64, error) {
		var b batch
		var err error
		for range mostPrimings { // the primer follows the share at once
			if b, err = r.mix(share); err != nil {
				return b, 0, err
			}
			change, err := r.prime(b)
			if err != nil {
				return b, 0, err
			}
			if change < leastChange {
				return b, math.Log(measure(b) / want), nil
			}
		}
		return b, 0, errTooWeak
	}
	refused := func(err error) error {
		if inRequest(err) {
			return err
		}
		_, value := r.fixed.fixes()
		most, why := r.mostOf(func(x float64) (float64, float64, error) {
			b, _, err := try(x)
			return measure(b), b.strength, err
		})
		if want > 0.999*most {
			return &RequestError{Field: field, Value: value, Allowed: "at most " + r.fixed.atMost(most, want) + ": " + why, Err: err}
		}
		return &RequestError{Field: field, Value: value, Allowed: "what these packs and this fermentable can make of it (" + reason(err) + ")", Err: err}
	}
	x := math.Log(0.95 * r.guess())
	lastX, lastY, slope, tried := 0.0, 0.0, 1.0, false
	for n := range mostSettling {
		b, y, err := try(math.Exp(x))
		if err != nil { // perhaps from where the last one ended
			r.restart()
			if b, y, err = try(math.Exp(x)); err != nil {
				if inRequest(err) || n > mostSettling/2 {
					return b, refused(err)
				}
				if tried { // beyond what can be made, which the aim may be just below
					x = (x + lastX) / 2
				} else {
					x -= 0.1
				}
				continue
			}
		}
		if math.Abs(y) < 1e-9 {
			return b, nil
		}
		if s := (y - lastY) / (x - lastX); tried && s > 0.3 && s < 3 {
			slope = s
		}
		lastX, lastY, tried, x = x, y, true, min(x-y/slope, -1e-3)
	}
	return batch{}, refused(numeric.ErrNoConvergence)
}

// mostOf is the largest measure of a batch that can be made, to a thousandth, and what is in the way of more. It is for a refusal.
func (r *recipe) mostOf(try func(share float64) (measure, strength float64, err error)) (most float64, why string) {
	why = r.fermentable.Name() + " without water makes no more"
	for low, high := 0.0, 1.0; high-low > 1e-5; {
		share := (low + high) / 2
		r.restart()
		switch x, strength, err := try(share); {
		case err == nil && strength <= mostStrength:
			low, most = share, x
			continue
		case err == nil || overStrong(err):
			why = fmt.Sprintf("more makes over %s %% vol", plain(mostStrength))
		}
		high = share
	}
	return most, why
}

// inRequest tells an error of another field from one of what was asked for in itself.
func inRequest(err error) bool {
	_, ok := errors.AsType[*RequestError](err)
	return ok && !overStrong(err)
}

// overStrong tells an error of a wash that no yeast ferments out from one of water that would have to be less than none.
func overStrong(err error) bool {
	e, ok := errors.AsType[*units.RangeError](err)
	return ok && (e.Quantity == "strength" || strings.HasPrefix(e.Quantity, "extract"))
}

const mostSettling = 40

// forAmount is by how much the packs of a batch are to be scaled so that it takes what there is, at one
// share of fermentable: sugar and water go nearly straight with the volume, but for the losses.
func (r *recipe) forAmount(b batch, sugar, water float64) float64 {
	takes := func(scale float64) float64 {
		x, err := r.amounts(b, scale)
		switch {
		case err != nil:
			return math.NaN()
		case sugar > 0:
			return x.fermentable - sugar
		}
		return x.water - water
	}
	x0, x1 := 1.0, 0.0
	y0, y1 := takes(x0), takes(x1)
	if math.IsNaN(y1) { // a top-up, or portions, that leave nothing in the kettle of so little
		x1 = 2
		y1 = takes(x1)
	}
	for range mostSettling {
		if y1 == y0 || math.Abs(y1) < 1e-10 {
			break
		}
		x0, x1, y0 = x1, x1-y1*(x1-x0)/(y1-y0), y1
		y1 = takes(x1)
	}
	return x1
}

// amounts is what a batch takes with its packs scaled.
func (r *recipe) amounts(b batch, scale float64) (batch, error) {
	d, err := r.draw(b.share)
	if err != nil {
		return b, err
	}
	base := 0.0
	for _, k := range b.packed {
		base += k.base
	}
	err = r.backwards(&b, d, scale*base)
	return b, err
}
