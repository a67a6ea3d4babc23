package plan

import (
	"fmt"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// leastPartFull is the part of a keg that is worth a keg of its own (common practice, no
// source).
const leastPartFull = 0.05

// keg is set to its content, and rated: on its gas, and closed as warm as it may get.
func (m *maker) keg(p *PackPlan, r packRecipe, k packed, f *poured, say *notes) (err error) {
	if left := p.Remainder.In(units.Litre) / r.Size.In(units.Litre); left > leastPartFull || p.Count == 0 {
		if p.PartFull, err = m.partFull(p, r, f); err != nil {
			return err
		}
		p.Remainder = units.Volume{}
	}
	if p.Highest, err = m.highestKeg(r, k, p.Gauge, m.momentsOfKeg(r)); err != nil {
		return err
	}
	named := fmt.Sprintf("The %s at %s, %s, at %s", p.One(), p.Highest.Temperature.Text(units.Celsius, 0), p.Highest.When, atLeast(p.Highest))
	if p.Gauge.Compare(p.Rating) > 0 {
		named = fmt.Sprintf("The %s at %s, set to %s", p.One(), p.Temperature.Text(units.Celsius, 0), p.Gauge.Text(units.BarGauge, 1))
	}
	say.rated(p, named)
	say.stretches(r)
	if r.Content.still {
		say.caution("Push a still keg with nitrogen, or with CO2 only while it pours: left under CO2 the drink takes it up.")
	}
	say.caution(carbonation.PressureVessel.Text())
	say.caution(carbonation.Cylinder.Text())
	say.caution(carbonation.Asphyxiation.Text())
	return nil
}

// partFull is a keg with what is too little for a full one, its room under the set pressure, or purged without pressure.
func (m *maker) partFull(p *PackPlan, r packRecipe, f *poured) (*PartFullPlan, error) {
	over, at := m.air.Pressure(), f.ready.Temperature()
	if f.set.In(units.KilopascalGauge) > 0 {
		over = f.ready.Above().Pressure
	}
	d, err := carbonation.GasDensity(over, at)
	if err != nil {
		return nil, err
	}
	room := r.Size.Minus(p.Remainder)
	part := &PartFullPlan{
		Drink: p.Remainder, Room: room,
		CO2: units.Gram.Of(checked.Number(d.In(units.KilogramPerCubicMetre) * room.In(units.Litre))),
	}
	if r.Content.still || room.IsZero() {
		return part, nil
	}
	has, err := f.meter.Content(&f.state)
	if err != nil {
		return nil, err
	}
	lacks := (r.target.In(units.GramCO2PerLitre) - has.In(units.GramCO2PerLitre)) * p.Remainder.In(units.Litre) // g
	if lacks <= 0 {
		return part, nil
	}
	wanted := d.In(units.KilogramPerCubicMetre) + lacks/room.In(units.Litre)
	for range mostCharges {
		if d, err = carbonation.GasDensity(over, at); err != nil {
			return nil, err
		}
		kPa := over.In(units.Kilopascal) * wanted / d.In(units.KilogramPerCubicMetre)
		if kPa > mostPressure {
			return part, nil
		}
		over = units.Kilopascal.Of(checked.Number(kPa))
	}
	if charge := m.air.Gauge(over); charge.Compare(r.Rating) <= 0 {
		part.Charge = charge
	}
	return part, nil
}

const mostCharges = 8 // of the room: each a twentieth as far off as the one before

// momentsOfKeg are those of a keg: on its gas, and closed as warm as it may get.
func (m *maker) momentsOfKeg(r packRecipe) []moment {
	warm := moment{"closed and as warm as the ferment gets", m.req.Fermenter.Warmest}
	if r.Store != nil {
		warm = moment{"stored", *r.Store}
	}
	return []moment{{"on its gas", r.Temperature}, warm}
}

// highestKeg is the highest pressure of a keg with its content, and with the gas that the sugar
// of a flavouring can make: as if none of it went to the head-space. A still one was closed on nitrogen at the
// pressure of the air, which stays above it (ideal gas).
func (m *maker) highestKeg(r packRecipe, k packed, set units.GaugePressure, moments []moment) (HighestPlan, error) {
	sugar := m.sugarLeft(r, k)
	dry, _, err := k.drink.Dry(gravity.SugarWashYield(gravity.AsSucrose))
	if err != nil {
		return HighestPlan{}, err
	}
	liquid, beyond := carbonation.NewLiquid(dry) // where all the sugar makes it too strong for that, it makes more gas than is computed
	content := r.target.Plus(units.GramCO2PerLitre.Of(checked.Number(1000 * kg(carbonation.CO2From(material.Sucrose().Dose(kilograms(sugar/1000)))))))
	freezing, err := carbonation.FreezingPoint(k.drink)
	if err != nil {
		return HighestPlan{}, err
	}
	var high HighestPlan
	freezes := false
	for i, at := range moments {
		s := HighestPlan{When: at.when, Temperature: at.t, Sugar: sugar > 0}
		freezes = freezes || at.t.Compare(freezing) < 0
		total, err := liquid.Pressure(content, at.t)
		if err != nil || beyond != nil { // above 20 bar
			total, s.AtLeast = units.Kilopascal.Of(mostPressure), true
		}
		if r.Content.still { // closed on nitrogen, hardly any of which dissolves
			nitrogen := m.air.Pressure().In(units.Kilopascal) * at.t.In(units.Kelvin) / r.Temperature.In(units.Kelvin)
			total = units.Kilopascal.Of(checked.Number(total.In(units.Kilopascal) + nitrogen))
		}
		s.Gauge = m.air.Gauge(total)
		switch {
		case s.Gauge.Compare(r.Rating) > 0:
			s.Verdict = carbonation.OverRating
		case s.AtLeast:
			s.Verdict = carbonation.BeyondComputed
		default:
			s.Verdict = carbonation.WithinRating
		}
		if i == 0 || s.Gauge.Compare(high.Gauge) > 0 {
			high = s
		}
	}
	if freezes && !over(high.Verdict) {
		high.Verdict = carbonation.MayFreeze
	}
	var all caution.List
	for _, c := range []struct {
		is   bool
		what caution.Caution
	}{
		{high.Verdict == carbonation.OverRating, carbonation.OverRatingCaution},
		{high.AtLeast, carbonation.AboveComputed},
		{sugar > 0, carbonation.SugarCanFerment},
		{freezes, carbonation.Freezing},
		{set.In(units.KilopascalGauge) < 0 && !r.Content.still, carbonation.BelowAtmosphere},
	} {
		all = all.WithIf(c.is, c.what)
	}
	high.say(all)
	return high, nil
}

// mostPressure is where the solubility of CO2 ends, kPa absolute.
const mostPressure = 2000
