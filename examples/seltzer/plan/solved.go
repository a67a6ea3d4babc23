package plan

import (
	"errors"
	"fmt"
	"math"

	"example.org/zymase/units"
)

// solved is the batch of a request, with its sugar as weighed.
func solved(req Request) (*recipe, batch, []Weight, error) {
	req, err := settled(req)
	if err != nil {
		return nil, batch{}, nil, err
	}
	r, err := newRecipe(req)
	if err != nil {
		return nil, batch{}, nil, err
	}
	b, err := r.forStrength()
	if err != nil {
		return nil, b, nil, err
	}
	if err := r.bottled(b); err != nil {
		return nil, b, nil, err
	}
	if r.base != nil {
		return r, b, nil, nil
	}
	sugar := Weight{What: r.fermentable.Name(), For: "kettle", Asked: kilograms(b.fermentable)}
	if req.Kettle.Boil == 0 && req.Kettle.Capacity.IsZero() {
		sugar.For = noKettle
	}
	if sugar.Mass, err = sugar.Asked.Round(req.Scales.Sugar, units.Nearest); err != nil {
		return nil, b, nil, &RequestError{Field: "scales.sugar", Value: req.Scales.Sugar.String(), Allowed: reason(err), Err: err}
	}
	if off := kg(sugar.Mass.Quantity())/b.fermentable - 1; math.Abs(off) > coarsest {
		return nil, b, nil, &RequestError{Field: "scales.sugar", Value: req.Scales.Sugar.String(),
			Allowed: fmt.Sprintf("a finer scale: this one misses %.3f kg of %s by %.1f %%", b.fermentable, r.fermentable.Name(), 100*math.Abs(off))}
	}
	weights, err := r.weighedApart(sugar)
	if err != nil {
		return nil, b, nil, err
	}
	whole := 0.0
	for _, w := range weights {
		whole += kg(w.Mass.Quantity())
	}
	b, err = r.forWeight(whole, b)
	return r, b, weights, err
}

// noKettle is where the sugar goes without one.
const noKettle = "dissolved in the water"

// advised adds to a refusal how far the request may go, where that takes a search.
func advised(req Request, err error) error {
	if _, ok := errors.AsType[*tooSweet](err); ok {
		if refused, ok := errors.AsType[*RequestError](err); ok {
			return mostFlavour(req, refused)
		}
	}
	if errors.Is(err, errTooWeak) {
		return leastFor(req, err)
	}
	return err
}

// coarsest is how far a scale may miss the fermentable: 2 % of the strength.
const coarsest = 0.02
