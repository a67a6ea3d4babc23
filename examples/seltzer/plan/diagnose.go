package plan

import (
	"cmp"
	"fmt"
	"slices"
	"time"

	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// alarm speaks up at once where the last reading of the pH is below the floor, whatever the
// ferment does, with the buffer that brings it back.
func (m *maker) alarm(s *StatePlan, last Reading, say *notes) {
	if last.PH == nil || s.State == Finished {
		return
	}
	floor, of := sourBelow, "where yeast slows sharply"
	if b := m.req.Buffer; b != nil {
		floor, of = b.Floor, "the floor that was asked for"
	}
	if *last.PH >= floor {
		return
	}
	then := "Dose a buffer by a meter, on a sample first."
	if m.unforeseen() == "" && s.State != Doubtful && m.correctPH(s, *last.PH, say) == nil && s.Correction != nil {
		c := s.Correction
		then = fmt.Sprintf("Add %s of %s, half at first, stir, and measure again.", c.Mass, c.What)
	}
	say.warn(fmt.Sprintf("The pH of %.2f is below %.1f, %s: yeast may stop. %s", *last.PH, floor, of, then))
}

// A suspect is a cause that the numbers speak of, and how far past its limit the number is, in
// steps that a ferment notices (chosen).
type suspect struct {
	cause, text string
	past        float64
}

// suspects are the causes that the numbers speak of, the one furthest past its limit first.
func (m *maker) suspects(s *StatePlan, last Reading) []suspect {
	var all []suspect
	add := func(cause string, past float64, format string, a ...any) {
		all = append(all, suspect{cause, cause + ": " + fmt.Sprintf(format, a...), past})
	}
	n := m.plan.Nutrient
	if n.Brought.Plus(n.FromMust).Compare(n.Low) < 0 && m.unforeseen() == "" {
		brought, low := n.Brought.Plus(n.FromMust).In(units.MilligramPerLitre), n.Low.In(units.MilligramPerLitre)
		add("nitrogen", (low-brought)/(0.2*low), "the plan brings %.0f mg/L where strains of low demand want %.0f", brought, low)
	}
	if last.PH != nil && *last.PH < sourBelow {
		add("pH", (sourBelow-*last.PH)/0.1, "%.2f is below %.1f, where yeast slows sharply", *last.PH, sourBelow)
	}
	is := last.Temperature
	if last.Vessel != nil {
		is = *last.Vessel
	}
	if cold := m.req.Fermenter.Temperature.Minus(is); cold.In(units.KelvinDifference) >= coldBy {
		add("temperature", cold.In(units.KelvinDifference)/coldBy, "%.1f K below the plan's; warm it and rouse the yeast", cold.In(units.KelvinDifference))
	}
	if a := m.req.Yeast.Age; a != nil && time.Duration(*a) > 180*day {
		add("yeast", float64(time.Duration(*a))/float64(180*day), "it was %s old when pitched; pitch fresh, awake yeast", a)
	}
	slices.SortStableFunc(all, func(a, b suspect) int { return cmp.Compare(b.past, a.past) })
	return all
}

// diagnose says which of nitrogen, pH, temperature and yeast the numbers speak of, ranked.
func (m *maker) diagnose(s *StatePlan, last Reading) {
	for _, c := range m.suspects(s, last) {
		s.Diagnosis = append(s.Diagnosis, c.text)
		if c.cause == "pH" && s.Correction == nil {
			s.Diagnosis = append(s.Diagnosis, "buffer: dose it by a meter, on a sample first; what this wash holds of its own is not known")
		}
	}
	switch {
	case len(s.Diagnosis) > 0:
	case last.PH == nil:
		s.Diagnosis = []string{"nothing that these numbers support: measure the pH, then look at the yeast"}
	default:
		s.Diagnosis = []string{"nothing that these numbers support: look at the yeast under a microscope, or pitch a fresh, active starter"}
	}
}

// correctPH finds the buffer that brings a sour ferment back.
func (m *maker) correctPH(s *StatePlan, measured float64, say *notes) error {
	salt, target := material.PotassiumBicarbonate(), 3.6
	if b := m.req.Buffer; b != nil {
		var err error
		if salt, err = material.FindAmong(b.Salt, ferment.Buffers()...); err != nil {
			return named("buffer.salt", b.Salt, err)
		}
		target = max(target, b.Floor)
	}
	f, err := m.ferment(m.plan.Nutrient.fed)
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
		For: fmt.Sprintf("pH %.2f to %.1f once it is stirred in, %.1f when dry", measured, c.Now.Value, c.End.Value),
	}
	for _, text := range c.Cautions {
		say.caution(text.Text())
	}
	return nil
}
