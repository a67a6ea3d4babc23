package plan

import (
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Nearest returns the request nearest to one that cannot be planned, and what was
// changed: a strength or CO2 content is brought to the end of its range, and a batch
// that does not fit its kettle or fermenter is made smaller, all packs alike. A request
// that can be planned comes back unchanged. What has no nearest value (a name that
// nobody knows, a field left out) is an error still, a [*RequestError].
func Nearest(req Request) (Request, []string, error) {
	var changes []string
	req.Packs = slices.Clone(req.Packs)
	if v := req.Strength.In(units.PercentVolume); v > 0 {
		if c := min(max(v, leastStrength), mostStrength); c != v {
			req.Strength = units.PercentVolume.Of(checked.Number(c))
			changes = append(changes, fmt.Sprintf("strength %.4g %% vol for %.4g", c, v))
		}
	}
	_, err := Make(req)
	if !tooSmall(err) {
		if err != nil {
			return Request{}, nil, err
		}
		return req, changes, nil
	}
	lo, hi := 0.0, 1.0 // parts of the volume: lo fits, hi does not
	for range 24 {
		mid := (lo + hi) / 2
		if _, err := Make(smaller(req, mid)); err == nil {
			lo = mid
		} else if tooSmall(err) || lo > 0 {
			hi = mid
		} else {
			return Request{}, nil, err // so small that something else fails
		}
	}
	if lo == 0 {
		return Request{}, nil, err
	}
	// Round down to a tenth of a litre, as one would.
	whole := req.Volume.In(units.Litre)
	part := float64(int(10*lo*whole)) / 10 / whole
	near := smaller(req, part)
	if _, err := Make(near); err != nil {
		near = smaller(req, lo)
	}
	changes = append(changes, fmt.Sprintf("volume %s for %s", near.Volume.Text(units.Litre, 1), req.Volume.Text(units.Litre, 1)))
	return near, changes, nil
}

// tooSmall tells whether a vessel does not hold the batch.
func tooSmall(err error) bool {
	e, ok := err.(*RequestError)
	return ok && strings.HasSuffix(e.Field, ".capacity") && strings.HasPrefix(e.Allowed, "at least")
}

// smaller is a part of a batch, every pack alike.
func smaller(r Request, part float64) Request {
	times := func(v units.Volume) units.Volume { return litres(part * v.In(units.Litre)) }
	r.Volume = times(r.Volume)
	r.Packs = slices.Clone(r.Packs)
	for i := range r.Packs {
		p := &r.Packs[i]
		p.Volume = times(p.Volume)
		if p.Size.Compare(p.Volume) > 0 {
			p.Size = p.Volume
		}
	}
	return r
}
