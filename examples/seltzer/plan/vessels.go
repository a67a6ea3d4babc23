package plan

import (
	"fmt"
	"math"
	"slices"

	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// The moments of the batch in its vessels, as they are printed.
const (
	waterToStart  = "water to start with"
	waterToTopUp  = "water to top up with"
	kettleCold    = "kettle, sugar dissolved, cold"
	kettleStart   = "kettle, start of the boil"
	kettleEnd     = "kettle, end of the boil"
	kettleLeft    = "left in the kettle"
	firstFilled   = "fermenter, filled with the first portion"
	wholeFilled   = "fermenter, filled"
	wholePortions = "fermenter, all the sugar in"
	fermentedDry  = "fermenter, fermented dry"
	fermentedEnd  = "fermenter, at the end"
	leftWithYeast = "left with the yeast"
	mixedCold     = "sugar dissolved, cold" // where there is no kettle
)

// vessels are the volumes hot and cold.
func (m *maker) vessels(say *notes) (all []Vessel, err error) {
	b, w := m.batch, m.brewed
	hot := m.plan.Boiling
	if hot.In(units.Celsius) > 100 { // the densities end at 100 °C; 3 K more are 0.2 % in volume
		hot = units.Celsius.Of(100)
	}
	ferment := m.req.Fermenter.Temperature
	boils := m.req.Kettle.Boil > 0
	dissolved, whole, end := kettleCold, wholeFilled, fermentedDry
	if !boils && m.req.Kettle.Capacity.IsZero() {
		dissolved = mixedCold
	}
	if b.late > 0 {
		whole = wholePortions
	}
	if m.req.Yeast.Attenuation != nil {
		end = fermentedEnd
	}
	first, err := m.usedUp(0, 1)
	if err != nil {
		return nil, err
	}
	topUp := new(forward.State)
	if b.topUp > 0 {
		if topUp, err = m.topUp(); err != nil {
			return nil, err
		}
	}
	loss := m.req.Kettle.Loss.In(units.Litre)
	var need [2]units.Volume // of kettle and fermenter
	for _, v := range []struct {
		is   bool
		when string
		s    forward.State
		t    units.Temperature
		part float64 // L of it, or all
		need int     // of the kettle, 1; of the fermenter, 2
	}{
		{true, waterToStart, w.water, at20, 0, 0},
		{true, dissolved, w.start, at20, 0, 0},
		{boils, kettleStart, w.start, hot, 0, 1},
		{boils, kettleEnd, w.boiled, hot, 0, 0},
		{loss > 0, kettleLeft, w.boiled, at20, loss, 0},
		{b.topUp > 0, waterToTopUp, *topUp, at20, b.topUp / waterPerLitre, 0},
		{b.late > 0, firstFilled, first, ferment, 0, 0},
		{true, whole, w.wash, ferment, 0, 2},
		{true, end, w.fermented, ferment, 0, 0},
		{w.left > 0, leftWithYeast, w.fermented, at20, w.left, 0},
	} {
		if !v.is {
			continue
		}
		at, err := v.s.Volume(v.t)
		if err != nil {
			return nil, &RequestError{Field: "fermenter.temperature", Value: v.t.Text(units.Celsius, 1), Allowed: reason(err), Err: err}
		}
		cold, err := v.s.Volume(at20)
		if err != nil {
			return nil, err
		}
		g, err := v.s.Gravity()
		if err != nil {
			return nil, err
		}
		if v.part > 0 {
			at, cold = litres(v.part*at.In(units.Litre)/cold.In(units.Litre)), litres(v.part)
		}
		all = append(all, Vessel{When: v.when, Temperature: v.t, Volume: at, Cold: cold, Gravity: g.SG()})
		switch {
		case v.need > 0:
			need[v.need-1] = at
		case v.when == kettleCold && !boils:
			need[0] = at
		}
	}
	if err := m.fits(need[0], need[1], say); err != nil {
		return nil, err
	}
	m.unboiled(say)
	return all, nil
}

// unboiled cautions where water or sugar meet the yeast without a boil, and where sugar stays (common
// practice, no source).
func (m *maker) unboiled(say *notes) {
	switch {
	case m.req.Kettle.Boil == 0:
		say.caution("Nothing is boiled: what lives in the sugar and the water lives on. Take water fit to drink and free of chlorine, " +
			"dissolve the sugar cleanly, pitch at once and amply.")
	case m.batch.topUp > 0:
		say.caution("The top-up water is not boiled with the rest: boil it the day before and let it cool covered, or take water fit to drink and free of chlorine.")
	}
	if a := m.req.Yeast.Attenuation; a != nil && a.In(units.Percent) < 100 {
		left := 1000 * kg(m.batch.base.Fermentable()) / m.batch.base.VolumeAt20().In(units.Litre)
		gas := kg(carbonation.CO2From(material.Sucrose().Dose(kilograms(left / 1000))))
		say.warn(fmt.Sprintf("The yeast is to leave %.0f g/L of sugar, which can make %.0f g/L of CO2 in a closed pack if anything ferments "+
			"it: a steady gravity is no proof that it cannot. Keep every pack cold, or pasteurise it, and hold the highest pressure against its rating.",
			left, 1000*gas))
	}
}

// fits compares volumes with vessels.
func (m *maker) fits(boil, fill units.Volume, say *notes) error {
	starts, tight := "the boil starts at", "The kettle is more than nine tenths full at the start of the boil: it can boil over. Watch "+
		"it and turn the heat down before the foam rises."
	if m.req.Kettle.Boil == 0 {
		starts, tight = "the sugar water fills", ""
	}
	instead := "a smaller volume, or less water with a stronger base, would fit"
	if len(m.req.Fermenter.Also) > 0 {
		instead = "a smaller volume, or one more fermenter, would fit"
	}
	for _, v := range []struct {
		field    string
		need     units.Volume
		capacity units.Volume
		what     string
		tight    string
		instead  string
	}{
		{"kettle.capacity", boil, m.req.Kettle.Capacity, starts, tight, "a smaller volume, or less water with a stronger base, would fit"},
		{"fermenter.capacity", fill, litres(m.holds()), "the wash fills",
			"The fermenter is more than nine tenths full: foam can reach the airlock. Fit a blow-off tube.", instead},
	} {
		need, have := math.Ceil(10*v.need.In(units.Litre)-1e-6)/10, v.capacity.In(units.Litre) // as it is printed
		if have == 0 {
			continue // no kettle
		}
		if need > have {
			e := &RequestError{Field: v.field, Value: v.capacity.Text(units.Litre, 1), is: quantity(v.capacity),
				Allowed: fmt.Sprintf("at least %.1f L: %s %.1f L; %s", math.Ceil(10*need)/10, v.what, need, v.instead)}
			switch {
			case v.field == "kettle.capacity":
				e.Err = errSmallKettle
			case len(m.req.Fermenter.Also) > 0:
				e.Value, e.is = v.capacity.Text(units.Litre, 1)+" in all of them", nil
			}
			return e
		}
		if need > 0.9*have && v.tight != "" {
			say.caution(v.tight)
		}
	}
	return nil
}

// shareOut is what goes into each of several fermenters: all are filled to the same part.
func (m *maker) shareOut(*notes) (shares []FermenterShare, err error) {
	also := m.req.Fermenter.Also
	if len(also) == 0 {
		return nil, nil
	}
	whole := m.holds()
	filled := slices.IndexFunc(m.plan.Vessels, func(v Vessel) bool { return v.When == firstFilled || v.When == wholeFilled })
	all := append([]AlsoFermenter{{m.req.Fermenter.Capacity, m.req.Fermenter.Loss}}, also...)
	// What is racked from each is what it holds less its own loss: a small one with a large loss gives nothing.
	base, err := m.brewed.fermented.Volume(at20)
	if err != nil {
		return nil, err
	}
	cold := base.In(units.Litre)
	for i, f := range all {
		part := f.Capacity.In(units.Litre) / whole
		if part*cold <= f.Loss.In(units.Litre) {
			field := "fermenter.loss"
			if i > 0 {
				field = fmt.Sprintf("fermenter.also[%d].loss", i-1)
			}
			return nil, &RequestError{Field: field, Value: f.Loss.Text(units.Litre, 1), is: quantity(f.Loss),
				Allowed: fmt.Sprintf("less than the %.1f L that it holds, or leave this fermenter out", part*cold)}
		}
		shares = append(shares, FermenterShare{
			Share: units.Fraction.Of(checked.Number(part)), Capacity: f.Capacity, Filled: litres(part * m.plan.Vessels[filled].Volume.In(units.Litre)),
			Racked: litres(part*cold - f.Loss.In(units.Litre)),
		})
	}
	return shares, nil
}
