package plan

import (
	"fmt"
	"strings"

	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

const maltSpread = 0.01 // relative: BallingYield

// instruments are checked before anything rests on them.
func (m *maker) instruments(*notes) error {
	if i := m.req.Instruments; i != nil {
		if err := new(gravity.Reference).UnmarshalText([]byte(i.Reference)); i.Reference != "" && err != nil {
			return named("instruments.hydrometer_for", i.Reference, err)
		}
		if i.Hydrometer != 0 {
			if !(i.Hydrometer >= 1e-5 && i.Hydrometer <= 0.02) {
				return &RequestError{Field: "instruments.hydrometer", Value: trim(i.Hydrometer), Allowed: "the division of its scale, 0.00001 to 0.02"}
			}
		}
		if i.Volume != nil {
			if err := within("instruments.volume", *i.Volume, units.Litre, 1e-4, m.req.Volume.In(units.Litre)/5); err != nil {
				return err
			}
		}
		if i.Thermometer != nil {
			if err := within("instruments.thermometer", *i.Thermometer, units.KelvinDifference, 0.001, 10); err != nil {
				return err
			}
		}
		if i.Gauge != nil {
			if err := within("instruments.gauge", *i.Gauge, units.KilopascalGauge, 0.01, 200); err != nil {
				return err
			}
		}
	}
	return nil
}

// division is that of the hydrometer at hand.
func (r *recipe) division() float64 {
	if i := r.req.Instruments; i != nil && i.Hydrometer != 0 {
		return i.Hydrometer
	}
	return 2 * unknown(forward.Known(), "hydrometer").High / 1000 // what is common
}

// uncertainties are those of the figures that rest on readings, at k = 2: to first order, what is known of
// the unknowns of package batch, with the instruments of the request.
//
//   - Source: JCGM 100:2008 (GUM), first order.
func (m *maker) uncertainties(say *notes) (UncertaintyPlan, error) {
	u, all := UncertaintyPlan{Division: m.division()}, m.known()
	var err error
	if u.Kegs, err = m.kegContents(all); err != nil || m.recipe.base != nil {
		return u, err
	}
	if u.Planned, err = expanded(m.batch.strength * m.doubts.strength); err != nil {
		return u, err
	}
	if off := u.Planned.In(units.PercentVolume); off > labelTolerance {
		say.caution(fmt.Sprintf("The strength is planned to ± %.1f %% vol, a label may be off by %.1f: measure it before you print one.", off, labelTolerance))
	}

	measured, err := m.byHydrometer(u.Division, all)
	if err != nil {
		return u, err
	}
	if u.ByHydrometer, err = expanded(measured.Uncertainty().In(units.PercentagePoint)); err != nil {
		return u, err
	}
	if u.Capability, err = measured.Capability(units.PercentagePoint.Of(labelTolerance)); err != nil {
		return u, err
	}
	u.Supports = u.Capability >= 1
	return u, nil
}

// kegContents are how sure the content of each kind of keg is, by its temperature and pressure.
func (m *maker) kegContents(all []forward.Unknown) (kegs []units.CarbonDioxideContent, err error) {
	for i, p := range m.plan.Packs {
		if p.Kind != keg || p.Still {
			continue
		}
		c, err := kegContent(m.air, m.batch.packed[i], p, all)
		if err != nil {
			return nil, err
		}
		kegs = append(kegs, c)
	}
	return kegs, nil
}

const labelTolerance = 0.3 // % vol, of the drinks that no other class of annex XII covers

// malt reports whether the fermentable is one, whose yield Balling measured.
func (r *recipe) malt() bool { return strings.Contains(r.fermentable.Name(), "malt") }

// spread is how well the yield is known, as a part of itself.
func spread(all []forward.Unknown) units.Share {
	lost := unknown(all, ethanolLost)
	return units.Fraction.Of(checked.Number(lost.Deviation() / (100 - lost.Usual)))
}

// byHydrometer is the strength of the packs as two readings give it, each within half a
// division, with a yield that is known so well: what is read is the base, dry.
func (m *maker) byHydrometer(division float64, all []forward.Unknown) (units.MeasuredStrength, error) {
	none := units.MeasuredStrength{}
	base := m.batch.base
	p := m.batch.wash.Gravity().Extract().In(units.DegreePlato)
	wash, err := gravity.NewSolution(kilograms(100-p), kilograms(p), units.Mass{}) // as a hydrometer has it
	if err != nil {
		return none, err
	}
	dry, err := m.ends(wash)
	if err != nil {
		return none, err
	}
	var readings [2]units.MeasuredNumber
	for i, s := range []gravity.Solution{wash, dry} {
		if readings[i], err = units.ReadTo(units.One.Of(checked.Number(s.Gravity().SG())), units.One.Of(checked.Number(division))); err != nil {
			return none, err
		}
	}
	of, err := gravity.StrengthByHydrometer(readings[0], readings[1], m.yield, spread(all), 0)
	if err != nil {
		return none, err
	}
	u := of.Uncertainty().In(units.PercentagePoint) * m.batch.strength / base.ByVolume().In(units.PercentVolume)
	return units.Measure(m.plan.Strength, units.PercentagePoint.Of(checked.Number(u)))
}

// kegContent propagates thermometer and gauge through the solubility, and adds that of
// the solubility itself.
func kegContent(air units.Atmosphere, k packed, p PackPlan, all []forward.Unknown) (units.CarbonDioxideContent, error) {
	liquid, err := carbonation.NewLiquid(k.drink)
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	t, err := units.Limited(p.Temperature, units.KelvinDifference.Of(checked.Number(unknown(all, "thermometer").High)))
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	g, err := units.Limited(p.Gauge, units.KilopascalGauge.Of(checked.Number(unknown(all, "gauge").High)))
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	c, err := units.Propagate(func(x units.Trial) (units.CarbonDioxideContent, error) {
		total, err := air.Absolute(units.At(x, &g))
		if err != nil {
			return units.CarbonDioxideContent{}, err
		}
		return liquid.Content(total, units.At(x, &t))
	}, &t, &g)
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	c, err = c.Widened(units.GramCO2PerLitre.Of(checked.Number(unknown(all, "solubility of CO2").Deviation() * p.Content.In(units.GramCO2PerLitre))))
	if err != nil {
		return units.CarbonDioxideContent{}, err
	}
	return c.Expanded(2)
}

// expanded is twice a standard uncertainty in % vol.
func expanded(u float64) (units.StrengthByVolume, error) { return units.PercentVolume.Try(2 * u) }
