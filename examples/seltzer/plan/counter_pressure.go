package plan

import (
	"fmt"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

const byCounterPressure = "counter-pressure"

// counterPressure tells whether bottles or cans are filled with carbonated drink.
func (p *packRecipe) counterPressure() bool {
	return p.Kind != keg && p.Filled == byCounterPressure && !p.Content.still
}

// filledAt is the temperature of the drink when it is filled under counter-pressure.
func (p *packRecipe) filledAt() units.Temperature {
	t := p.Temperature
	if p.FilledAt != nil {
		t = *p.FilledAt
	}
	return units.Celsius.Of(checked.Number(max(0, t.In(units.Celsius)))) // below it no density is published
}

// setFilled checks how bottles are filled, and what they are made of.
func (p *packRecipe) setFilled(f func(string) string) error {
	if p.MadeOf != "" {
		if err := oneOf(f("made_of"), p.MadeOf, "glass", "metal", "PET"); err != nil {
			return err
		}
	}
	if s := p.Stretch; s != nil {
		if p.Kind == keg {
			return &RequestError{Field: f("stretch"), Value: s.Text(units.Percent, 2), Allowed: "left out for a keg, which its gas keeps full", is: quantity(*s)}
		}
		if p.MadeOf == "glass" {
			return &RequestError{Field: f("stretch"), Value: s.Text(units.Percent, 2), Allowed: "left out: glass does not stretch to speak of", is: quantity(*s)}
		}
		if err := within(f("stretch"), *s, units.Percent, 0, 5); err != nil {
			return err
		}
	}
	if p.Filled == "" {
		if p.FilledAt != nil {
			return &RequestError{Field: f("filled_at"), Value: "given", Allowed: `only with "filled": "counter-pressure"`}
		}
		return nil
	}
	switch {
	case p.Kind == keg:
		return &RequestError{Field: f("filled"), Value: p.Filled, Allowed: "left out for a keg, which is carbonated in itself"}
	case p.Filled != byCounterPressure:
		return oneOf(f("filled"), p.Filled, byCounterPressure)
	case p.Priming != "":
		return &RequestError{Field: f("prime_with"), Value: p.Priming, Allowed: "left out: what is filled under counter-pressure has its gas"}
	case p.FilledAt != nil:
		return within(f("filled_at"), *p.FilledAt, units.Celsius, 0, 25)
	}
	return nil
}

// counterFilling is how to fill, and what it asks for.
func (m *maker) counterFilling(r packRecipe, f *poured, say *notes) (*FillingPlan, error) {
	c, err := f.meter.Content(&f.ready)
	if err != nil {
		return nil, err
	}
	p := &FillingPlan{Temperature: r.filledAt(), Content: c, Gauge: m.air.Gauge(f.ready.Above().Pressure)}
	if p.Gauge.In(units.KilopascalGauge) < 0 {
		return nil, &RequestError{Field: r.field + ".filled_at", Value: r.filledAt().Text(units.Celsius, 1),
			Allowed: fmt.Sprintf("warmer: the drink holds its content there at %s, below the air", p.Gauge.Text(units.BarGauge, 2))}
	}
	say.caution("Filling under counter-pressure loses gas that no figure foresees: chill bottles and drink, purge each with CO2, close " +
		"it on its foam, and measure the first one. Air that stays in stales the drink and adds its own pressure.")
	say.caution(carbonation.PressureVessel.Text())
	say.caution(carbonation.Cylinder.Text())
	say.caution(carbonation.Asphyxiation.Text())
	return p, nil
}

// stretches cautions of bottles that grow and let gas out.
func (n *notes) stretches(r packRecipe) {
	if r.MadeOf != "PET" && r.Stretch == nil {
		return
	}
	text := "PET stretches under pressure and lets CO2 out over weeks: "
	if r.Stretch == nil && r.Kind != keg {
		text += "no stretch is given, so that the drink may be served with a little less gas than planned; "
	}
	n.caution(text + "pressures are those of one that does not stretch, the higher ones. Its rating falls when it is warm: hold " +
		"them against the maker's for the warmest store, and use none twice that is creased or was hot.")
}
