package plan

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// orTopUp adds to the refusal of a kettle that is smaller than the boil how much of the water may stay out of it.
func orTopUp(req Request, refused error) error {
	e, is := errors.AsType[*RequestError](refused)
	v, ok := leastTopUp(req, refused)
	if !is || !ok {
		return refused
	}
	said := *e
	said.Allowed = fmt.Sprintf("%s; or kettle.top_up of %s L: so much of the water joins it in the fermenter", e.Allowed, trim(v))
	return &said
}

// leastTopUp is the least that may stay out of a kettle that is smaller than the boil, L, to half a litre.
func leastTopUp(req Request, refused error) (v float64, ok bool) {
	if req.Kettle.Boil == 0 || placedAt(refused) == "" {
		return 0, false
	}
	can := func(halves float64) bool {
		v := units.Litre.Of(checked.Number(halves / 2))
		req.Kettle.TopUp = &v
		_, err := makerOf(req)
		return err == nil || !strings.HasPrefix(placedAt(err), "kettle.") // what else there is to mend is said next
	}
	have := 0.0
	if t := req.Kettle.TopUp; t != nil {
		have = t.In(units.Litre)
	}
	hi := math.Floor(2 * have)
	for step := 1.0; !can(hi); step *= 2 { // more of it until the kettle holds the rest, or the sugar is too much for it
		if hi += step; hi > 4*mostVolume {
			return 0, false
		}
		if t := topUpRefused(req); t {
			return 0, false
		}
	}
	lo := math.Floor(2 * have)
	for hi-lo > 1 {
		if mid := math.Floor((lo + hi) / 2); can(mid) {
			hi = mid
		} else {
			lo = mid
		}
	}
	return hi / 2, true
}

// placedAt is the field of a refusal.
func placedAt(err error) string {
	if e, ok := errors.AsType[*RequestError](err); ok {
		return e.Field
	}
	return ""
}

// topUpRefused tells whether so much to top up with leaves too little in the kettle.
func topUpRefused(req Request) bool {
	_, err := makerOf(req)
	return placedAt(err) == "kettle.top_up"
}
