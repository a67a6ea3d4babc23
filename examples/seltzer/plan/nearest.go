package plan

import (
	"errors"
	"fmt"
	"math"
	"slices"
	"strings"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Nearest returns the request nearest to one that cannot be planned, and what was
// changed: a strength, a CO2 content, the floor of a buffer, the sweetness of a flavouring or
// the temperature after the ferment is brought to the end of its range, a buffer that is no
// use is left out, a kettle that is too small gets a top-up where one does, and a batch that does not fit its vessels is made smaller, all
// packs alike. What starts from what is at hand is turned into its volume and strength first. A request that can be
// planned comes back unchanged. What has no nearest value (a name that nobody knows, a field left out) is an
// error still, a [*RequestError].
func Nearest(req Request) (Request, []string, error) {
	req.Packs = slices.Clone(req.Packs)
	changes := req.intoRange()
	if req.AtHand != nil {
		if _, err := makerOf(req); err == nil {
			return req, changes, nil
		}
		plain, err := settled(req)
		if err != nil {
			return Request{}, changes, err
		}
		changes = append(changes, fmt.Sprintf("volume %s and strength %s, which follow from what is at hand", plain.Volume.Text(units.Litre, 1),
			plain.Strength.Text(units.PercentVolume, 2)))
		req = plain
	}
	for range mostChanges {
		_, err := makerOf(req)
		e, _ := errors.AsType[*RequestError](err)
		limit, _ := errors.AsType[*units.RangeError](err)
		switch {
		case err == nil:
			return req, changes, nil
		case e == nil:
			return Request{}, changes, err
		case errors.Is(err, errSmallKettle) && topsUp(&req, &changes, err):
		case tooSmall(err):
			return fitting(req, changes, err)
		case e.Field == "strength" && req.Gravity == nil && limit != nil && limit.Max >= leastStrength:
			most := math.Floor(10*limit.Max) / 10
			if limit.Value < limit.Min {
				most = limit.Min
			}
			changes = append(changes, fmt.Sprintf("strength %.4g %% vol for %.4g", most, req.Strength.In(units.PercentVolume)))
			req.Strength = units.PercentVolume.Of(checked.Number(most))
		case strings.HasSuffix(e.Field, "flavour.added") && limit != nil:
			at := flavourAt(&req, e.Field)
			f := **at
			changes = append(changes, e.Field+" "+millilitres(limit.Max, 3)+" for "+millilitres(f.Added.In(units.Millilitre), 4))
			f.Added = units.Millilitre.Of(checked.Number(limit.Max))
			*at = &f
		case flat(e, limit):
			c := &req.Packs[packOf(e.Field)].Content
			changes = append(changes, fmt.Sprintf("%s %.4g vol for %s", e.Field, limit.Min, c))
			*c = Content{volumes: units.VolumesCO2.Of(checked.Number(limit.Min))}
		case e.Field == "buffer":
			changes = append(changes, "no buffer")
			req.Buffer = nil
		default:
			return Request{}, changes, err
		}
	}
	_, err := makerOf(req)
	return Request{}, changes, err
}

// mostChanges is where the search for a nearest request gives up: each change may bring
// another limit to light.
const mostChanges = 12

// topsUp keeps the least of the water that makes a kettle do out of it, and tells whether there is such a part.
func topsUp(req *Request, changes *[]string, refused error) bool {
	v, ok := leastTopUp(*req, refused)
	if !ok {
		return false
	}
	text := trim(v) + " L"
	if was := req.Kettle.TopUp; was != nil {
		text += " for " + was.Text(units.Litre, 1)
	}
	*changes = append(*changes, "kettle.top_up "+text)
	most := units.Litre.Of(checked.Number(v))
	req.Kettle.TopUp = &most
	return true
}

// flat tells whether a bottle is refused that shall have less gas than the ferment leaves.
func flat(e *RequestError, limit *units.RangeError) bool {
	return limit != nil && limit.Unit == "vol" && packOf(e.Field) >= 0
}

// packOf is the number of the pack whose content a field is, or below 0.
func packOf(field string) int {
	if !strings.HasSuffix(field, "].co2") {
		return -1
	}
	return packAt(field)
}

// intoRange brings what has a range to the end of it, and tells.
func (r *Request) intoRange() (changes []string) {
	into := func(what, unit string, v, least, most float64) float64 {
		c := min(max(v, least), most)
		if c != v {
			changes = append(changes, fmt.Sprintf("%s %.4g%s for %.4g", what, c, unit, v))
		}
		return c
	}
	if v := r.Strength.In(units.PercentVolume); v > 0 {
		if c := into("strength", " % vol", v, leastStrength, mostStrength); c != v {
			r.Strength = units.PercentVolume.Of(checked.Number(c))
		}
	}
	for i := range r.Packs {
		c := &r.Packs[i].Content
		v := c.volumes
		if c.byMass {
			v = carbonation.RealVolume.Volumes(c.grams)
		}
		if v := v.In(units.VolumesCO2); v > 0 {
			if to := into(fmt.Sprintf("packs[%d].co2", i), " vol", v, leastContent, mostContent); to != v {
				*c = Content{volumes: units.VolumesCO2.Of(checked.Number(to))}
			}
		}
	}
	if f := &r.Fermenter; f.Warmest.Compare(f.Temperature) < 0 {
		changes = append(changes, fmt.Sprintf("fermenter.warmest %s for %s", f.Temperature.Text(units.Celsius, 1), f.Warmest.Text(units.Celsius, 1)))
		f.Warmest = f.Temperature
	}
	if r.Buffer != nil && r.Buffer.Floor > 0 {
		b := *r.Buffer
		b.Floor = into("buffer.floor_pH", "", b.Floor, leastFloor, mostFloor)
		r.Buffer = &b
	}
	return changes
}

// fitting makes a batch smaller until its vessels hold it.
func fitting(req Request, changes []string, err error) (Request, []string, error) {
	lo, hi := 0.0, 1.0 // parts of the volume: lo fits, hi does not
	for range 24 {
		mid := (lo + hi) / 2
		if _, err := makerOf(inPart(req, mid)); err == nil {
			lo = mid
		} else if tooSmall(err) || lo > 0 {
			hi = mid
		} else {
			return Request{}, changes, err // so small that something else fails
		}
	}
	if lo == 0 {
		return Request{}, changes, err
	}
	// Round down to a tenth of a litre, as one would.
	whole := req.Volume.In(units.Litre)
	part := float64(int(10*lo*whole)) / 10 / whole
	near := inPart(req, part)
	if _, err := makerOf(near); err != nil {
		near = inPart(req, lo)
	}
	changes = append(changes, fmt.Sprintf("volume %s for %s", near.Volume.Text(units.Litre, 1), req.Volume.Text(units.Litre, 1)))
	if was, is := req.Kettle.TopUp, near.Kettle.TopUp; is != nil && *is != *was {
		changes = append(changes, "kettle.top_up "+is.Text(units.Litre, 1)+" for "+was.Text(units.Litre, 1))
	}
	return near, changes, nil
}

// inPart is a part of a batch, with that part of its top-up to a tenth of a litre.
func inPart(req Request, part float64) Request {
	out := smaller(req, part)
	if t := req.Kettle.TopUp; t != nil {
		v := units.Litre.Of(checked.Number(math.Ceil(10*part*t.In(units.Litre)) / 10))
		out.Kettle.TopUp = &v
	}
	return out
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
		if p.Kind != keg && p.Size.Compare(p.Volume) > 0 {
			p.Size = p.Volume
		}
	}
	return r
}
