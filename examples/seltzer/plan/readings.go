package plan

import (
	"fmt"
	"math"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// What the trade goes by (common practice, no source).
const (
	unchangedFor = 2 * day // two readings this far apart that agree
	nearFloor    = 0.002   // of gravity
	aboveFloor   = 0.003   // of gravity: above this it is not the floor
	coldBy       = 3.0     // K below the planned temperature
	sourBelow    = 3.2     // pH; growth of wine yeast slows sharply between 3.00 and 2.75 (Liu et al.)
)

// States of a ferment.
const (
	NotBegun   = "not begun"
	Fermenting = "fermenting"
	Finished   = "finished"
	Stalled    = "stalled"
	Doubtful   = "reading in doubt"
)

// readings compares what was read with the plan.
func (m *maker) readings() error {
	rs := m.req.Readings
	if len(rs) == 0 {
		return nil
	}
	for i, r := range rs {
		field := fmt.Sprintf("readings[%d]", i)
		if i > 0 && r.After <= rs[i-1].After {
			return &RequestError{Field: field + ".after", Value: r.After.String(), Allowed: "later than the reading before"}
		}
		if err := within(field+".temperature", r.Temperature, units.Celsius, 0, 40); err != nil {
			return err
		}
		if !(r.Gravity >= 0.97 && r.Gravity <= 1.2) {
			return &RequestError{Field: field + ".gravity", Value: trim(r.Gravity), Allowed: "0.97 to 1.2, as the hydrometer shows it"}
		}
		if r.PH != nil && !(*r.PH >= 2 && *r.PH <= 9) {
			return &RequestError{Field: field + ".pH", Value: trim(*r.PH), Allowed: "2 to 9"}
		}
	}
	s := &StatePlan{}
	wash := m.batch.wash
	if rs[0].After == 0 {
		var err error
		if wash, err = m.measuredWash(rs[0], s); err != nil {
			return err
		}
	}
	for i, r := range rs {
		if i == 0 && r.After == 0 {
			continue
		}
		p, err := m.stateAt(wash, r)
		if err != nil {
			return &RequestError{Field: fmt.Sprintf("readings[%d].gravity", i), Value: trim(r.Gravity), Allowed: reason(err), Err: err}
		}
		s.Points = append(s.Points, p)
	}
	floor, _, err := m.ends(wash)
	if err != nil {
		return err
	}
	s.Floor, s.Final = floor.Gravity().SG()+m.salted.floor, floor.ByVolume()
	s.judge()
	s.doubt(wash.Gravity().SG() + m.salted.wash)
	if n := len(s.Points); n > 0 {
		// Counted as sucrose, all of it to gas: the most that it can make.
		left := kilograms(s.Points[n-1].Left.In(units.GramPerLitre) / 1000)
		s.Gas = units.GramCO2PerLitre.Of(checked.Number(1000 * kg(carbonation.CO2From(material.Sucrose().Dose(left)))))
		if s.State == Stalled {
			if err := m.diagnose(s, rs[len(rs)-1]); err != nil {
				return err
			}
		}
		switch gas := s.Gas.In(units.GramCO2PerLitre); {
		case s.State == Doubtful:
			m.caution("Do not pack yet: the readings contradict the wash.")
		case s.State != Finished && gas < 0.05:
			m.caution("Do not pack yet: the gravity has to stay the same over several days.")
		case s.State != Finished:
			m.caution(fmt.Sprintf("Do not pack yet: the sugar left can make %.1f g/L of CO2 in a closed pack.", gas))
		}
	}
	m.plan.State = s
	return nil
}

// measuredWash is the wash as its first reading has it, and what would bring it back to
// the plan.
func (m *maker) measuredWash(r Reading, s *StatePlan) (gravity.Solution, error) {
	g, err := gravity.Hydrometer{}.Correct(r.Gravity, units.StrengthByVolume{}, r.Temperature)
	if err != nil {
		return gravity.Solution{}, err
	}
	want := g.SG() - m.salted.wash
	share, err := numeric.Root(func(x float64) float64 {
		w, err := m.washOf(x, 1)
		if err != nil {
			return math.NaN()
		}
		return w.Gravity().SG() - want
	}, 1e-6, 3*m.batch.share, 1e-12)
	if err != nil {
		return gravity.Solution{}, &RequestError{Field: "readings[0].gravity", Value: trim(r.Gravity), Allowed: "above water and below three times the planned extract", Err: err}
	}
	volume, err := m.batch.wash.Volume(m.req.Fermenter.Temperature)
	if err != nil {
		return gravity.Solution{}, err
	}
	if r.Volume != nil {
		volume = *r.Volume
	}
	one, err := m.washOf(share, 1)
	if err != nil {
		return gravity.Solution{}, err
	}
	v, err := one.Volume(m.req.Fermenter.Temperature)
	if err != nil {
		return gravity.Solution{}, err
	}
	total := volume.In(units.Litre) / v.In(units.Litre)
	s.Original, s.Wash = g.SG(), volume
	// More fermentable to the same water, or more water to the same fermentable.
	plan := m.batch.share
	if share < plan {
		s.AddSugar = kilograms(total * (plan - share) / (1 - plan))
	} else {
		s.AddWater = kilograms(total * (share/plan - 1))
	}
	return one.Times(total)
}

// stateAt finds how much of the sugar is used from a reading.
func (m *maker) stateAt(wash gravity.Solution, r Reading) (StatePoint, error) {
	total := kg(wash.Fermentable())
	at := func(used float64) (gravity.Solution, error) {
		s, _, err := wash.Ferment(kilograms(used*total), m.yield)
		return s, err
	}
	shown := func(used float64) float64 { // what the hydrometer shows at the reading's temperature
		s, err := at(used)
		if err != nil {
			return math.NaN()
		}
		x, err := gravity.Hydrometer{}.Reading(s, r.Temperature)
		if err != nil {
			return math.NaN()
		}
		return x + m.salted.at(used) - r.Gravity
	}
	used := 0.0
	switch start, end := shown(0), shown(1); {
	case math.IsNaN(start) || math.IsNaN(end):
		return StatePoint{}, fmt.Errorf("a temperature at which the density is known")
	case start <= 0: // at or above the start: nothing used
	case end >= 0: // at or below the floor
		used = 1
	default:
		var err error
		if used, err = numeric.Root(shown, 0, 1, 1e-12); err != nil {
			return StatePoint{}, err
		}
	}
	s, err := at(used)
	if err != nil {
		return StatePoint{}, err
	}
	v := s.VolumeAt20()
	p := StatePoint{
		After: r.After, Gravity: s.Gravity().SG() + m.salted.at(used), Used: units.Percent.Of(checked.Number(100 * used)), Strength: s.ByVolume(), PH: r.PH,
		Left: units.GramPerLitre.Of(checked.Number(1000 * kg(s.Fermentable()) / v.In(units.Litre))),
	}
	if used == 0 || used == 1 {
		p.Gravity = m.corrected(r, s)
	}
	p.Uncertainty = m.plan.Uncertainty.ByHydrometer
	return p, nil
}

// corrected is the gravity of a reading above the start or below the floor, at 20 °C.
func (m *maker) corrected(r Reading, s gravity.Solution) float64 {
	g, err := gravity.Hydrometer{}.Correct(r.Gravity, s.ByVolume(), r.Temperature)
	if err != nil {
		return s.Gravity().SG()
	}
	return g.SG()
}

// judge says what the last readings mean.
func (s *StatePlan) judge() {
	n := len(s.Points)
	if n == 0 {
		s.State = NotBegun
		return
	}
	last := s.Points[n-1]
	s.State = Fermenting
	if last.Used.In(units.Percent) == 0 {
		s.State = NotBegun
	}
	for _, p := range s.Points[:n-1] {
		same := math.Abs(p.Gravity-last.Gravity) <= nearFloor/2
		if same && time.Duration(last.After-p.After) >= unchangedFor {
			switch {
			case last.Gravity <= s.Floor+nearFloor:
				s.State = Finished
			case last.Gravity >= s.Floor+aboveFloor:
				s.State = Stalled
			}
			return
		}
	}
}

// doubt looks for readings that no ferment of the wash can give.
func (s *StatePlan) doubt(original float64) {
	say := func(format string, a ...any) {
		s.State, s.Diagnosis = Doubtful, append(s.Diagnosis, fmt.Sprintf(format, a...))
	}
	for i, p := range s.Points {
		if over := p.Gravity - original; over > aboveFloor {
			say("after %v: %.4f is %.4f above the original gravity: stir or degas the sample, read again, and check the original gravity", p.After, p.Gravity, over)
		}
		if under := s.Floor - p.Gravity; under > aboveFloor {
			say("after %v: %.4f is %.4f below the dry floor, which no ferment of this wash reaches: check the hydrometer in water, and the original gravity", p.After, p.Gravity, under)
		}
		if i > 0 && p.Gravity-s.Points[i-1].Gravity > aboveFloor {
			say("after %v: the gravity rose by %.4f: one of the two readings is wrong, or sugar was added", p.After, p.Gravity-s.Points[i-1].Gravity)
		}
	}
}

// diagnose says which of nitrogen, pH, temperature and yeast the numbers speak of.
func (m *maker) diagnose(s *StatePlan, last Reading) error {
	say := func(format string, a ...any) { s.Diagnosis = append(s.Diagnosis, fmt.Sprintf(format, a...)) }
	n := m.plan.Nutrient
	if n.Brought.Compare(n.Low) < 0 && m.unforeseen() == "" {
		say("nitrogen: the plan brings %.0f mg/L where strains of low demand want %.0f", n.Brought.In(units.MilligramPerLitre), n.Low.In(units.MilligramPerLitre))
	}
	if last.PH != nil && *last.PH < sourBelow {
		say("pH: %.2f is below %.1f, where yeast slows sharply", *last.PH, sourBelow)
		if m.unforeseen() != "" {
			say("buffer: dose it by a meter, on a sample first; what this wash holds of its own is not known")
		} else if err := m.correctPH(s, *last.PH); err != nil {
			return err
		}
	}
	if cold := m.req.Fermenter.Temperature.Minus(last.Temperature); cold.In(units.KelvinDifference) >= coldBy {
		say("temperature: %.1f K below the plan's; warm it and rouse the yeast", cold.In(units.KelvinDifference))
	}
	if a := m.req.Yeast.Age; a != nil && time.Duration(*a) > 180*day {
		say("yeast: it was %s old when pitched; pitch fresh, awake yeast", a)
	}
	if len(s.Diagnosis) == 0 {
		if last.PH == nil {
			say("nothing that these numbers support: measure the pH, then look at the yeast")
		} else {
			say("nothing that these numbers support: look at the yeast under a microscope, or pitch a fresh, active starter")
		}
	}
	return nil
}

// correctPH finds the buffer that brings a sour ferment back.
func (m *maker) correctPH(s *StatePlan, measured float64) error {
	salt, target := material.PotassiumBicarbonate(), 3.6
	if b := m.req.Buffer; b != nil {
		var err error
		if salt, err = material.FindAmong(b.Salt, ferment.Buffers()...); err != nil {
			return named("buffer.salt", b.Salt, err)
		}
		target = max(target, b.Floor)
	}
	f, _, err := m.ferment()
	if err != nil {
		return err
	}
	if m.plan.Acidity.Buffer != nil {
		f.Buffer = salt.Dose(m.plan.Acidity.Buffer.Mass.Quantity())
	}
	c, err := f.Correct(salt, s.Points[len(s.Points)-1].Used, measured, target)
	if err != nil {
		return &RequestError{Field: "readings", Value: fmt.Sprintf("pH %.2f", measured), Allowed: reason(err), Err: err}
	}
	mass, err := c.Dose.Mass.Value.Round(m.req.Scales.Small, units.Up)
	if err != nil {
		return err
	}
	s.Correction = &Weight{
		What: salt.String(), Mass: mass, Asked: c.Dose.Mass.Value,
		For: fmt.Sprintf("pH %.2f to %.1f once it is stirred in, %.1f when dry (%.1f with the most acids)", measured, c.Now.Value, c.End.Value, c.End.Low),
	}
	for _, text := range c.Cautions {
		m.caution(text.Text())
	}
	return nil
}
