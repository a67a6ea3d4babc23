package plan

import (
	"fmt"
	"math"
	"strings"

	"example.org/zymase/carbonation"
	"example.org/zymase/units"
)

// packs are the kegs and bottles.
func (m *maker) packs() error {
	for i, r := range m.recipe.packs {
		k := m.batch.packed[i]
		if r.Content.still {
			var err error
			if r.target, err = m.dissolved(m.batch, k); err != nil {
				return err
			}
		}
		p := PackPlan{
			Kind: r.Kind, Content: r.target, Volumes: carbonation.RealVolume.Volumes(r.target),
			Strength: k.drink.ByVolume(), Temperature: r.Temperature, Rating: r.Rating,
		}
		p.Count = int(math.Floor(r.Volume.In(units.Litre)/r.Size.In(units.Litre) + 1e-9))
		p.Remainder = litres(math.Max(0, r.Volume.In(units.Litre)-float64(p.Count)*r.Size.In(units.Litre)))
		liquid, err := carbonation.NewLiquid(k.drink)
		if err != nil {
			return err
		}
		total, err := liquid.Pressure(r.Temperature, r.target)
		if err != nil {
			return &RequestError{Field: r.field + ".co2", Value: r.Content.String(), Allowed: reason(err), Err: err}
		}
		p.Gauge, p.SeaLevel = m.air.Gauge(total), units.Atmosphere{}.Gauge(total)
		if r.Kind == keg {
			m.keg(p)
		} else if p.Bottle, err = m.bottle(r, k); err != nil {
			return err
		}
		m.plan.Packs = append(m.plan.Packs, p)
	}
	return nil
}

func (m *maker) keg(p PackPlan) {
	if p.Gauge.Compare(p.Rating) > 0 {
		m.warn(fmt.Sprintf("The keg at %s, set to %s: %s", p.Temperature.Text(units.Celsius, 0), p.Gauge.Text(units.BarGauge, 1), carbonation.OverRatingCaution.Text()))
	}
	if p.Gauge.In(units.KilopascalGauge) <= 0 {
		m.caution("The keg's content is below what it holds without pressure at that temperature: no gas is needed, and it may be flat.")
	}
	m.caution(carbonation.PressureVessel.Text())
	m.caution(carbonation.Cylinder.Text())
	m.caution(carbonation.Asphyxiation.Text())
}

// bottle primes one and warms it.
func (m *maker) bottle(r packRecipe, k packed) (*BottlePlan, error) {
	b := &BottlePlan{Store: *r.Store, Syrup: kilograms(k.water)}
	var err error
	if b.Dissolved, err = m.dissolved(m.batch, k); err != nil {
		return nil, err
	}
	asked := kilograms(k.primer)
	weighed, err := asked.Round(m.req.Scales.Small, units.Nearest)
	if err != nil {
		return nil, err
	}
	b.Priming = Weight{What: r.primer.Name(), For: "priming the " + r.Kind + "s", Mass: weighed, Asked: asked}
	if r.primes() {
		m.plan.Weigh = append(m.plan.Weigh, b.Priming)
	}
	b.PerBottle = kilograms(k.primer / r.Volume.In(units.Litre) * r.Size.In(units.Litre))
	closed, err := m.close(r, k, b.Dissolved)
	if err != nil {
		return nil, err
	}
	served, err := closed.At(r.Temperature)
	if err != nil {
		return nil, err
	}
	b.Served, b.ServedGauge = served.Content, served.Gauge
	warm, err := closed.At(*r.Store)
	if err != nil {
		return nil, err
	}
	worst, err := closed.Worst(*r.Store)
	if err != nil {
		return nil, err
	}
	b.StoreGauge, b.AtLeast, b.Verdict, b.Worst = warm.Gauge, warm.AtLeast, warm.Verdict, worst.Gauge
	for _, c := range worst.Cautions.List() {
		if c == carbonation.OverRatingCaution {
			m.warn(fmt.Sprintf("The %s at %s, once all its sugar has fermented, at %s: %s", r.Kind, r.Store.Text(units.Celsius, 0), worst.Gauge.Text(units.BarGauge, 1), c.Text()))
			continue
		}
		m.caution(c.Text())
	}
	if !r.primes() {
		m.caution("Bottle a still drink only at the dry floor: sugar that is left makes gas in a bottle that is not made for it.")
		return b, nil
	}
	m.caution("Prime only at the dry floor: a bottle filled above it makes gas from the sugar that is left, on top of the priming.")
	return b, nil
}

// cautions are those that go with every batch.
func (m *maker) cautions() error {
	for _, c := range m.fermentable.Cautions() {
		m.caution(c)
	}
	if m.unforeseen() != "" && !strings.Contains(m.fermentable.Name(), "honey") { // that has next to none
		m.caution("The nitrogen that " + m.fermentable.Name() + " brings is not counted: less nutrient or none may do.")
	}
	for _, c := range []string{
		"Boiling sugar solution sticks and burns deeply: keep children and pets away, lift nothing full and hot, let it cool before it is moved.",
		carbonation.Asphyxiation.Text(),
		"Finished means: at or near the dry floor, and unchanged over several days. A reading above the floor may hide sugar that makes gas in a closed pack.",
	} {
		m.caution(c)
	}
	return nil
}
