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
	if err := m.kegContents(&u, all); err != nil || m.recipe.base != nil {
		return u, err
	}
	u.PlannedFrom = m.doubts[ofStrength].from
	var err error
	if u.Planned, err = expanded(m.batch.strength * m.doubts[ofStrength].part()); err != nil {
		return u, err
	}
	if off := u.Planned.In(units.PercentVolume); off > labelTolerance {
		say.caution(fmt.Sprintf("The strength is planned to ± %.1f %% vol, a label may be off by %.1f: measure it before you print one.", off, labelTolerance))
	}

	measured, err := m.byHydrometer(u.Division, spread(all))
	if err != nil {
		return u, err
	}
	u.HydrometerFrom = ethanolLost
	readings, err := m.byHydrometer(u.Division, units.Share{})
	if err != nil {
		return u, err
	}
	if of := readings.Uncertainty().In(units.PercentagePoint) / measured.Uncertainty().In(units.PercentagePoint); of*of > 0.5 {
		u.HydrometerFrom = "hydrometer"
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

// kegContents adds how sure the content of each kind of keg is, by its temperature and pressure.
func (m *maker) kegContents(u *UncertaintyPlan, all []forward.Unknown) error {
	for i, p := range m.plan.Packs {
		if p.Kind != keg || p.Still {
			continue
		}
		c, from, err := m.kegContent(m.batch.packed[i], p, all)
		if err != nil {
			return err
		}
		u.Kegs, u.KegsFrom = append(u.Kegs, c), append(u.KegsFrom, from)
	}
	return nil
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
func (m *maker) byHydrometer(division float64, yield units.Share) (units.MeasuredStrength, error) {
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
	of, err := gravity.StrengthByHydrometer(readings[0], readings[1], m.yield, yield, 0)
	if err != nil {
		return none, err
	}
	u := of.Uncertainty().In(units.PercentagePoint) * m.batch.strength / base.ByVolume().In(units.PercentVolume)
	return units.Measure(m.plan.Strength, units.PercentagePoint.Of(checked.Number(u)))
}

// kegContent is how sure the content of a keg is, k = 2: by thermometer, gauge and solubility.
func (m *maker) kegContent(k packed, p PackPlan, all []forward.Unknown) (units.CarbonDioxideContent, string, error) {
	liquid, err := carbonation.NewLiquid(k.drink)
	if err != nil {
		return units.CarbonDioxideContent{}, "", err
	}
	content := func(u forward.Unknowns) (float64, error) {
		total, err := m.air.Absolute(p.Gauge.Plus(units.KilopascalGauge.Of(checked.Number(u.Gauge))))
		if err != nil {
			return 0, err
		}
		c, err := liquid.Content(total, p.Temperature.Plus(units.KelvinDifference.Of(checked.Number(u.Thermometer))))
		return u.Solubility * c.In(units.GramCO2PerLitre), err
	}
	usual := forward.Usual()
	was, err := content(usual)
	if err != nil {
		return units.CarbonDioxideContent{}, "", err
	}
	var d doubt
	u := usual
	for i := range all {
		k := &all[i]
		if !k.Moves(forward.Carbonate) {
			continue
		}
		*k.In(&u) += k.Deviation()
		is, err := content(u)
		if err != nil {
			return units.CarbonDioxideContent{}, "", err
		}
		d.add(k.Name, is-was, was-is)
		*k.In(&u) = *k.In(&usual)
	}
	return units.GramCO2PerLitre.Of(checked.Number(2 * d.u())), d.from, nil
}

// expanded is twice a standard uncertainty in % vol.
func expanded(u float64) (units.StrengthByVolume, error) { return units.PercentVolume.Try(2 * u) }
