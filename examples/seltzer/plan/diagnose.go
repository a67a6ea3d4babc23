package plan

import (
	"fmt"
	"math"
	"slices"
	"sort"
	"time"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/numeric"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// alarm speaks up at once where the pH, as read last, is below the floor, whatever the ferment does, with the buffer that
// brings it back.
func (m *maker) alarm(o *onward, s *StatePlan, say *notes) {
	i := m.lastPH()
	if i < 0 {
		return
	}
	read := m.req.Readings[i]
	floor, of := sourBelow, "where yeast slows sharply"
	if b := m.req.Buffer; b != nil {
		floor, of = b.Floor, "the floor that was asked for"
	}
	if *read.PH >= floor {
		if o == nil || s.State == Finished {
			return
		}
		if end, err := o.fed(o.now.state); err == nil && end.PH > 0 && end.PH < floor-fallsBelow {
			m.fallsShort(o, s, *read.PH, fmt.Sprintf("By the pH that was read it comes to %.2f at the end, below %.1f, %s. ", end.PH, floor, of), say)
		}
		return
	}
	when := ""
	if i < len(m.req.Readings)-1 {
		when = " after " + read.After.String()
	}
	is := fmt.Sprintf("The pH of %.2f%s is below %.1f, %s", *read.PH, when, floor, of)
	if s.State == Finished {
		if slices.ContainsFunc(m.recipe.packs, func(p packRecipe) bool { return p.primes() }) {
			say.caution(is + ": the ferment is done and needs no buffer, but yeast that is to prime may be slow: try one bottle first.")
		}
		return
	}
	m.fallsShort(o, s, *read.PH, is+": yeast may stop. ", say)
}

const fallsBelow = 0.1 // of pH, that it is foreseen to fall below its floor before that is told

// fallsShort warns of a pH that is or will be below its floor, with the buffer for it.
func (m *maker) fallsShort(o *onward, s *StatePlan, measured float64, is string, say *notes) {
	then := "Dose a buffer by a meter, on a sample first."
	if o != nil && m.unforeseen() == "" {
		switch c, err := o.correction(measured); {
		case err == nil && c == nil:
			then = "By the plan it is less sour: measure it again before you dose."
		case err == nil:
			s.Correction = c
			then = fmt.Sprintf("Add %s of %s, half at first, stir, and measure again.", c.Mass, c.What)
			say.caution("Add half of a buffer, stir, wait for the gas to leave, and measure again before the rest.")
		}
	}
	say.warn(is + then)
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
	planned := m.req.Fermenter.Temperature
	switch is := last.Vessel; {
	case is == nil:
		if cold := planned.Minus(last.Temperature).In(units.KelvinDifference); cold >= coldBy {
			add("temperature", 0.5*cold/coldBy, "the sample was %.1f K below the plan's; if the vessel is so cold, warm it and rouse the yeast", cold)
		}
	case planned.Minus(*is).In(units.KelvinDifference) >= coldBy:
		cold := planned.Minus(*is).In(units.KelvinDifference)
		add("temperature", cold/coldBy, "%.1f K below the plan's; warm it and rouse the yeast", cold)
	default:
		if most, of := m.hottest(); is.Compare(most) > 0 {
			add("temperature", is.Minus(most).In(units.KelvinDifference)/coldBy, "the vessel was read at %s, above the %s %s; cool it, then pitch fresh yeast",
				is.Text(units.Celsius, 0), most.Text(units.Celsius, 0), of)
		}
	}
	if t := m.req.Yeast.Strain; t != nil && t.Tolerance != nil && len(s.Points) > 0 {
		is, bears := s.Points[len(s.Points)-1].Strength.In(units.PercentVolume), t.Tolerance.In(units.PercentVolume)
		if past := is/bears - nearTolerance; past >= 0 {
			add("strength", 1+past/0.05, "%.1f %% vol is near the %.1f that the strain bears by its sheet; pitch one that bears more", is, bears)
		}
	}
	if a := m.req.Yeast.Age; a != nil && time.Duration(*a) > 180*day {
		add("yeast", float64(time.Duration(*a))/float64(180*day), "it was %s old when pitched; pitch fresh, awake yeast", a)
	}
	sort.SliceStable(all, func(i, k int) bool { return all[i].past > all[k].past })
	return all
}

// hottest is how warm the yeast bears it, and by what.
func (m *maker) hottest() (units.Temperature, string) {
	if s := m.req.Yeast.Strain; s != nil && s.Warmest != nil {
		return *s.Warmest, "of its sheet"
	}
	if f := m.req.Fermenter; f.Warmest.In(units.Celsius) > deadly {
		return f.Warmest, "of the plan"
	}
	return units.Celsius.Of(deadly), "from which most yeasts die (common practice, no source)"
}

// cooled is to what a vessel that is too hot is to be cooled.
func (m *maker) cooled() units.Temperature {
	to := m.req.Fermenter.Temperature
	if most, _ := m.hottest(); to.Compare(most) > 0 {
		return most
	}
	return to
}

const deadly = 35 // °C

// tooWarm speaks up of a vessel that was read warmer than the yeast bears, or than the gas in the drink was counted for.
func (m *maker) tooWarm(rs []Reading, say *notes) {
	last := rs[len(rs)-1].Vessel
	if most, of := m.hottest(); last != nil && last.Compare(most) > 0 {
		say.warn(fmt.Sprintf("The vessel was read at %s, above the %s %s: cool it to %s.", last.Text(units.Celsius, 0), most.Text(units.Celsius, 0), of,
			m.cooled().Text(units.Celsius, 0)))
	}
	warmest := m.req.Fermenter.Warmest
	for _, r := range rs {
		if r.Vessel != nil && r.Vessel.Compare(warmest) > 0 {
			warmest = *r.Vessel
		}
	}
	if warmest.Minus(m.req.Fermenter.Warmest).In(units.KelvinDifference) >= 1 {
		say.caution(fmt.Sprintf("The vessel was read at %s, warmer than fermenter.warmest, %s, by which the gas that stays in the drink is counted: "+
			"it keeps less. Give that temperature there, and the priming follows.", warmest.Text(units.Celsius, 0), m.req.Fermenter.Warmest.Text(units.Celsius, 0)))
	}
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

// correction is the buffer with which the batch as it was read is not below its floor, nor below pH 3.6, once it is stirred in
// and when the rest of the sugar has fermented; nil where it needs none.
func (o *onward) correction(measured float64) (*Weight, error) {
	m, salt, target := o.m, material.PotassiumBicarbonate(), 3.6
	if b := m.req.Buffer; b != nil {
		var err error
		if salt, err = material.FindAmong(b.Salt, ferment.Buffers()...); err != nil {
			return nil, named("buffer.salt", b.Salt, err)
		}
		target = max(target, b.Floor)
	}
	v, err := o.now.state.Volume(at20)
	if err != nil {
		return nil, err
	}
	with := func(mass float64) (now, end float64, err error) {
		c := o.now
		if _, err = c.do(forward.Step{Kind: forward.Feed, What: salt.Name(), Mass: kilograms(mass)}); err != nil {
			return 0, 0, err
		}
		if now, err = c.state.PH(); err != nil {
			return 0, 0, err
		}
		done, err := o.fed(c.state)
		if err != nil {
			return 0, 0, err
		}
		return now, done.PH, nil
	}
	lacks := func(mass float64) float64 {
		now, end, err := with(mass)
		if err != nil {
			return math.NaN()
		}
		return min(now, end) - target
	}
	if lacks(0) >= 0 {
		return nil, nil
	}
	low, high := 0.0, leastBuffer/1000*v.In(units.Litre)
	for lacks(high) < 0 && high < mostBuffer/1000*v.In(units.Litre) {
		low, high = high, 2*high
	}
	mass, err := numeric.Root(lacks, low, high, 1e-7*v.In(units.Litre))
	if err != nil {
		return nil, err
	}
	c := &Weight{What: salt.String(), Asked: kilograms(mass)}
	if c.Mass, err = c.Asked.Round(m.req.Scales.Small, units.Up); err != nil {
		return nil, err
	}
	now, end, err := with(kg(c.Mass.Quantity()))
	_, is := m.req.EndName()
	c.For = fmt.Sprintf("pH %.2f to %.1f once it is stirred in, %.1f when %s", measured, now, end, is)
	return c, err
}

const nearTolerance = 0.85 // of what a strain bears, from which on it may stop (common practice, no source)

const leastBuffer, mostBuffer = 0.1, 10.0 // g/L, where the search begins, and more than any ferment wants
