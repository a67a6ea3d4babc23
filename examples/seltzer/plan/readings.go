package plan

import (
	"cmp"
	"fmt"
	"math"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// readings compares what was read with the plan, and carries the batch on from there.
func (m *maker) readings(say *notes) (*StatePlan, error) {
	rs := m.req.Readings
	if len(rs) == 0 {
		return nil, nil
	}
	if err := readingsOK(rs); err != nil {
		return nil, err
	}
	if err := cmp.Or(m.portionsRead(rs), m.levelsRead(rs, say)); err != nil {
		return nil, err
	}
	s := &StatePlan{first: m.batch.filled} // with all of the sugar where it goes in at once
	for i, r := range rs {
		if i == 0 && r.After == 0 && (r.Gravity != 0 || r.Brix != nil || r.Volume != nil) {
			var err error
			if s.first, err = m.measuredWash(r, s); err != nil {
				return nil, err
			}
		} else if r.Volume != nil {
			s.Wash = *r.Volume
		}
	}
	wash, err := m.joined(s.first, m.portions())
	if err != nil {
		return nil, err
	}
	floor, err := m.ends(wash)
	if err != nil {
		return nil, err
	}
	s.begins = s.first.Gravity().SG() + m.salted[0]
	s.Floor, s.Final = floor.Gravity().SG()+m.salted[courseSteps], floor.ByVolume()
	for i, r := range rs {
		if i == 0 && r.After == 0 {
			continue
		}
		p, err := m.stateAt(s, r)
		if err != nil {
			field, value := "gravity", trim(r.Gravity)
			switch {
			case r.Gravity != 0:
			case r.Brix != nil:
				field, value = "brix", trim(*r.Brix)
			case r.Lost != nil:
				field, value = "weight_lost", r.Lost.Text(units.Kilogram, 3)
			}
			return nil, &RequestError{Field: fmt.Sprintf("readings[%d].%s", i, field), Value: value, Allowed: reason(err), Err: err}
		}
		s.Points = append(s.Points, p)
	}
	s.judge()
	s.doubt(m.floorName())
	s.doubtPH(rs)
	if err := m.late(s); err != nil {
		return nil, err
	}
	n := len(s.Points)
	if n == 0 {
		return s, nil
	}
	m.tooWarm(rs, say)
	// Counted as sucrose, all of it to gas: the most that it can make.
	left := kilograms(s.Points[n-1].Left.In(units.GramPerLitre) / 1000)
	s.Gas = units.GramCO2PerLitre.Of(checked.Number(1000 * kg(carbonation.CO2From(material.Sucrose().Dose(left)))))
	switch gas := s.Gas.In(units.GramCO2PerLitre); {
	case s.State == Doubtful:
		say.caution("Do not pack yet: the readings contradict the wash.")
	case s.State != Finished && gas < 0.05:
		say.caution("Do not pack yet: the gravity has to stay the same over several days.")
	case s.State != Finished:
		say.caution(fmt.Sprintf("Do not pack yet: the sugar left can make %.1f g/L of CO2 in a closed pack.", gas))
	}
	return s, nil
}

// readingsOK refuses readings that cannot be.
func readingsOK(rs []Reading) error {
	for i, r := range rs {
		field := fmt.Sprintf("readings[%d]", i)
		if i > 0 && r.After <= rs[i-1].After {
			return &RequestError{Field: field + ".after", Value: r.After.String(), Allowed: "later than the reading before"}
		}
		if err := within(field+".temperature", r.Temperature, units.Celsius, 0, 40); err != nil {
			return err
		}
		// A reading of the wash may be its volume or pH alone; later ones say how far it is.
		told := r.Brix != nil || r.Lost != nil || i == 0 && r.After == 0 && (r.Volume != nil || r.PH != nil)
		if !(r.Gravity >= 0.97 && r.Gravity <= 1.2) && !(r.Gravity == 0 && told) {
			value := trim(r.Gravity)
			if r.Gravity == 0 {
				value = "missing"
			}
			return &RequestError{Field: field + ".gravity", Value: value,
				Allowed: "0.97 to 1.2, as the hydrometer shows it" + slipped(r.Gravity) + "; or none, with brix or weight_lost"}
		}
		if r.Brix != nil && !(*r.Brix >= 0 && *r.Brix <= 40) {
			return &RequestError{Field: field + ".brix", Value: trim(*r.Brix), Allowed: "0 to 40, as the refractometer shows it"}
		}
		if r.Lost != nil {
			if x := kg(*r.Lost); !(x >= 0 && x <= 1e5) {
				return &RequestError{Field: field + ".weight_lost", Value: r.Lost.Text(units.Kilogram, 3), Allowed: "0 kg or more"}
			}
		}
		if r.PH != nil && !(*r.PH >= 2 && *r.PH <= 9) {
			return &RequestError{Field: field + ".pH", Value: trim(*r.PH), Allowed: "2 to 9"}
		}
		if r.Volume != nil {
			if err := within(field+".volume", *r.Volume, units.Litre, 0.01, 2*mostVolume); err != nil {
				return err
			}
		}
		if r.Vessel != nil {
			if err := within(field+".vessel", *r.Vessel, units.Celsius, -5, 45); err != nil {
				return err
			}
		}
	}
	return nil
}

// levelsRead refuses a level above the brim.
func (m *maker) levelsRead(rs []Reading, say *notes) error {
	full, of := m.holds(), "the fermenter holds"
	if len(m.req.Fermenter.Also) > 0 {
		of = "all fermenters hold together"
	}
	for i, r := range rs {
		if r.Volume == nil {
			continue
		}
		if r.Volume.In(units.Litre) > full*(1+1e-9) {
			return &RequestError{Field: fmt.Sprintf("readings[%d].volume", i), Value: r.Volume.Text(units.Litre, 1), is: quantity(*r.Volume),
				Allowed: fmt.Sprintf("at most the %.1f L that %s", full, of)}
		}
		if len(m.req.Fermenter.Also) > 0 {
			say.caution("A volume or a weight lost that was read counts as that of all fermenters together.")
		}
	}
	return nil
}

// weighed is a figure by the plan and by a reading, each with its standard uncertainty. Where the
// two agree, both count by their certainty; where they contradict each other something went
// otherwise than planned, and what was read stands alone.
//
//   - Source: weighted mean, JCGM 100:2008 (GUM) by ISO/TS 28037; agreement at k = 2.
func weighed(plan, ofPlan, read, ofRead float64) float64 {
	a, b := ofPlan*ofPlan, ofRead*ofRead
	if d := plan - read; d*d > 4*(a+b) || a == 0 {
		return read
	}
	return (plan*b + read*a) / (a + b)
}

// hydrometer is the one at hand.
func (r *recipe) hydrometer() gravity.Hydrometer {
	var h gravity.Hydrometer
	if i := r.req.Instruments; i != nil && i.Reference != "" {
		_ = h.Reference.UnmarshalText([]byte(i.Reference)) // checked in uncertainties
	}
	return h
}

// half is how well a hydrometer of a division is read, k = 1.
func half(division float64) float64 { return division / math.Sqrt(12) }
