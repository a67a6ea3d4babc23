package plan

import (
	"errors"
	"fmt"
	"math"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// leastTopUp adds to the refusal of a kettle that is smaller than the boil how much of the treated water may
// stay out of it, to half a litre.
func leastTopUp(req Request, refused error) error {
	e, ok := errors.AsType[*RequestError](refused)
	if !ok || req.Water.When == afterBoil || req.Kettle.Boil == 0 {
		return refused
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
			return refused
		}
		if t := topUpRefused(req); t {
			return refused
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
	said := *e
	said.Allowed = fmt.Sprintf("%s; or kettle.top_up of %s L: so much of the treated water joins it in the fermenter", e.Allowed, trim(hi/2))
	return &said
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
