package plan

import (
	"errors"
	"fmt"
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// errTooWeak is a strength that the primer of the bottles alone passes, or hardly leaves.
var errTooWeak = errors.New("the primer alone makes more than this strength")

// leastFor turns the refusal of a strength that is too low for its priming into the least that
// can be planned, to a tenth of a percent.
func leastFor(req Request, refused error) error {
	if req.Strength.IsZero() && req.made() == nil {
		return leastAtHand(req, refused)
	}
	want := req.Strength.In(units.PercentVolume)
	can := func(tenths float64) bool {
		req.Strength = units.PercentVolume.Of(checked.Number(tenths / 10))
		_, _, _, err := solved(req)
		return !errors.Is(err, errTooWeak) // what else there is to mend is told next
	}
	lo, hi := math.Floor(10*want), 10*mostStrength
	if !can(hi) {
		return refused
	}
	for hi-lo > 1 {
		if mid := math.Floor((lo + hi) / 2); can(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return &RequestError{
		Field: "strength", Value: fmt.Sprintf("%.4g %% vol", want),
		Allowed: fmt.Sprintf("at least %.1f %% vol with the primer that these bottles need; or less CO2, or less head-space", hi/10),
		Err:     &units.RangeError{Func: "plan.Make", Quantity: "strength", Value: want, Unit: "% vol", Min: hi / 10, Max: mostStrength, Source: errTooWeak.Error()},
	}
}

// leastAtHand does so for a strength that follows from a gravity or from the sugar that there is.
func leastAtHand(req Request, refused error) error {
	field, value := req.fixes()
	can := func(times float64) bool {
		more := req
		if g := req.Gravity; g != nil {
			more.Gravity = new(1 + times*(*g-1))
		} else {
			h := *req.AtHand
			h.Sugar = new(kilograms(times * kg(*h.Sugar)))
			more.AtHand = &h
		}
		_, err := settled(more)
		return err == nil
	}
	lo, hi := 1.0, 2.0
	for ; !can(hi); lo, hi = hi, 2*hi {
		if hi > 1000 {
			return refused
		}
	}
	for hi/lo > 1.01 {
		if mid := math.Sqrt(lo * hi); can(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return &RequestError{
		Field: field, Value: value, Err: refused,
		Allowed: fmt.Sprintf("more: the primer that these bottles need makes nearly as much alone; %s would do, or less CO2, or less head-space", req.near(hi)),
	}
}

// tooWeak gives that error the strength of a pack that has its own.
func (p *packRecipe) tooWeak(err error) error {
	if p.Strength == nil || !errors.Is(err, errTooWeak) {
		return p.refused(err)
	}
	return &RequestError{Field: p.field + ".strength", Value: p.Strength.Text(units.PercentVolume, 1), is: quantity(*p.Strength),
		Allowed: "more: " + errTooWeak.Error(), Err: errTooWeak}
}

// unreached is the pack whose primer never came to rest.
func (r *recipe) unreached() error {
	p := &r.packs[r.restless]
	return &RequestError{Field: p.field + ".co2", Value: p.Content.String(),
		Allowed: "less, or less head-space, or a stronger drink: no primer brings it there", Err: errTooWeak}
}
