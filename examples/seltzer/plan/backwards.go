package plan

import (
	"fmt"
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// backwards works out what stood in fermenter and kettle before so many litres of base drink: each loss
// has the composition of its vessel. Treated water to top up with and the later portions of the
// sugar meet the wash in the fermenter, so that the kettle holds a wash of its own.
func (r *recipe) backwards(b *batch, d draught, baseVolume float64) (err error) {
	lost := r.lost() * d.density
	perWash := kg(d.base.Mass()) // kg of base drink from 1 kg of wash
	inFermenter := (baseVolume*d.density + lost) / perWash
	if b.boiledOff, err = r.boilOff(); err != nil {
		return err
	}
	kettle, share, late := d.wash, b.share, 0.0
	if b.topUp = r.toppedUp(); b.topUp > 0 || r.portions() > 1 {
		if kettle, share, late, err = r.strongKettle(b, inFermenter); err != nil {
			return err
		}
	}
	left := r.req.Kettle.Loss.In(units.Litre) / kettle.VolumeAt20().In(units.Litre) // kg of wash
	boiled := inFermenter - b.topUp - late + left
	b.late = late
	b.fermentable = share*boiled + late
	b.water = (1-share)*boiled + b.boiledOff + b.topUp
	if b.wash, err = d.wash.Times(inFermenter); err != nil {
		return err
	}
	if b.base, err = d.base.Times(inFermenter); err != nil {
		return err
	}
	if b.filled = b.wash; late > 0 {
		if b.filled, err = r.washOf((b.share*inFermenter-late)/(inFermenter-late), inFermenter-late); err != nil {
			return err
		}
	}
	return nil
}

// strongKettle is a kilogram of the wash in the kettle, the share of fermentable in it, and the kg of
// fermentable that follow in the fermenter. What stays in the kettle is of its first portion
// alone, so that a few rounds settle it.
func (r *recipe) strongKettle(b *batch, inFermenter float64) (kettle gravity.Solution, share, late float64, err error) {
	n := float64(r.portions())
	late = (n - 1) / n * b.share * inFermenter
	for range mostRounds {
		rest := inFermenter - b.topUp - late
		if share = (b.share*inFermenter - late) / rest; !(rest > 0 && share > 0 && share <= r.mostShare()) {
			return kettle, share, late, r.tooMuchTopUp(b, inFermenter)
		}
		if kettle, err = r.washOf(share, 1); err != nil {
			return kettle, share, late, r.tooMuchTopUp(b, inFermenter)
		}
		// The kettle's sugar is that of rest and of what it keeps back.
		more := (n - 1) * (1 + r.req.Kettle.Loss.In(units.Litre)/kettle.VolumeAt20().In(units.Litre)/rest)
		next := more / (1 + more) * b.share * inFermenter
		if math.Abs(next-late) <= 1e-12*inFermenter {
			return kettle, share, late, nil
		}
		late = next
	}
	return kettle, share, late, nil
}

const mostRounds = 60

// tooMuchTopUp refuses more water to top up with than leaves the sugar dissolved in the kettle.
func (r *recipe) tooMuchTopUp(b *batch, inFermenter float64) error {
	if r.req.Kettle.TopUp == nil {
		return &RequestError{Field: "sugar_portions", Value: fmt.Sprint(r.req.Portions), Allowed: "fewer: the kettle's part of the wash cannot be mixed"}
	}
	n := float64(r.portions())
	sugar := b.share * inFermenter / n
	most := inFermenter - b.share*inFermenter*(n-1)/n - sugar/r.mostShare() // kg, about
	most = math.Floor(10*math.Max(0, most/waterPerLitre)) / 10
	allowed := fmt.Sprintf("at most %.1f L, which leaves enough in the kettle to dissolve the sugar", most)
	if r.mostShare() == 1 {
		allowed = fmt.Sprintf("at most %.1f L, all the water that there is beside the %s", most, r.fermentable.Name())
	}
	return &RequestError{Field: "kettle.top_up", Value: r.req.Kettle.TopUp.Text(units.Litre, 1), is: quantity(*r.req.Kettle.TopUp), Allowed: allowed}
}

// mostShare is the share of the fermentable, as it is weighed, in the richest wash that a kettle may hold; a juice may be all of it.
func (r *recipe) mostShare() float64 {
	c := r.fermentable.Composition()
	return min(1, mostInKettle/(c.Sugar().In(units.Fraction)+c.UnfermentedSolids.In(units.Fraction)))
}

// mostInKettle is the share of solids in a wash that is still a liquid when it cools: sucrose saturates at 66.6 % at 20 °C (ICUMSA; recalled from memory).
const mostInKettle = 0.6

// portions is in how many parts the sugar goes in.
func (r *recipe) portions() int { return max(1, r.req.Portions) }

// toppedUp is the kg of treated water that go into the fermenter unboiled.
func (r *recipe) toppedUp() float64 {
	if t := r.req.Kettle.TopUp; t != nil {
		return t.In(units.Litre) * waterPerLitre
	}
	return 0
}

// waterPerLitre is the density of water at 20 °C in kg/L, as a Solution has it.
var waterPerLitre = func() float64 {
	s, _ := gravity.NewSolution(units.Kilogram.Of(1), units.Mass{}, units.Mass{})
	return 1 / s.VolumeAt20().In(units.Litre)
}()

// lost is what stays with the yeast in all fermenters, L at 20 °C.
func (r *recipe) lost() float64 {
	v := r.req.Fermenter.Loss.In(units.Litre)
	for _, f := range r.req.Fermenter.Also {
		v += f.Loss.In(units.Litre)
	}
	return v
}

// holds is the capacity of all fermenters together, L.
func (r *recipe) holds() float64 {
	v := r.req.Fermenter.Capacity.In(units.Litre)
	for _, f := range r.req.Fermenter.Also {
		v += f.Capacity.In(units.Litre)
	}
	return v
}

// attenuation is the share of the fermentable sugar that the yeast uses.
func (r *recipe) attenuation() units.Share {
	if a := r.req.Yeast.Attenuation; a != nil {
		return *a
	}
	return units.Percent.Of(100)
}

// ends is a wash when its yeast is done.
func (r *recipe) ends(wash gravity.Solution) (base gravity.Solution, err error) {
	if r.req.Yeast.Attenuation == nil {
		base, _, err = wash.Dry(r.yield)
		return base, err
	}
	base, _, err = wash.Ferment(kilograms(r.attenuation().In(units.Fraction)*kg(wash.Fermentable())), r.yield)
	return base, err
}
