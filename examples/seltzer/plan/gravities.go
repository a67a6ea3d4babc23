package plan

import (
	"math"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/units"
)

// minerals are what a hydrometer shows for what is dissolved beside sugar and ethanol, as gravity: what the
// batch shows above the plain liquids of the search, with each third of the sugar used.
type minerals [courseSteps + 1]float64

// at is that when a share of the sugar is used.
func (n *minerals) at(used float64) float64 {
	whole, part := math.Modf(min(max(used, 0), 1) * courseSteps)
	i := int(whole)
	return n[i] + part*(n[min(i+1, courseSteps)]-n[i])
}

// gravities are what the hydrometer will say.
func (m *maker) gravities() (err error) {
	g, p := &m.plan.Gravity, &m.plan
	whole := m.along(m.batch.wash, m.attenuation().In(units.Fraction)*kg(m.batch.wash.Fermentable()))
	for i := range m.salted {
		used := float64(i) / courseSteps
		shown, err := m.measuredAt(used, m.portions())
		if err != nil {
			return err
		}
		plain, err := whole(used)
		if err != nil {
			return err
		}
		m.salted[i] = shown.sg - plain.Gravity().SG()
	}
	for _, v := range []struct {
		of       *forward.State
		sg, warm *float64
		extract  *units.Extract
		minerals *float64
	}{
		{&m.brewed.wash, &g.Original, &g.WarmOriginal, &g.Extract, new(float64)},
		{&m.brewed.fermented, &g.Floor, &g.WarmFloor, &g.Apparent, &g.Minerals},
	} {
		shown, err := v.of.Gravity()
		if err != nil {
			return err
		}
		bare, err := v.of.Solution()
		if err != nil {
			return err
		}
		warm, err := m.hydrometer().Reading(bare, m.req.Fermenter.Temperature)
		if err != nil {
			return err
		}
		*v.sg, *v.extract, *v.minerals = shown.SG(), shown.Extract(), shown.SG()-bare.Gravity().SG()
		*v.warm = warm + *v.minerals
	}
	if g.ThirdUsed, err = m.gravityAt(1. / 3); err != nil {
		return err
	}
	if g.TwoThirdsUsed, err = m.gravityAt(2. / 3); err != nil {
		return err
	}
	for i := range p.Nutrient.Stages {
		s := &p.Nutrient.Stages[i]
		if s.Gravity, err = m.gravityAt(s.Used.In(units.Fraction)); err != nil {
			return err
		}
	}
	if m.portions() > 1 {
		if err := m.portionGravities(g); err != nil {
			return err
		}
	}
	return m.measureAlong(p.Acidity.Points)
}

// gravityAt is the gravity when a part of the sugar that the yeast uses is used, with the portions
// that are in by then.
func (m *maker) gravityAt(used float64) (float64, error) {
	return m.gravityWith(used, m.portionsIn(used))
}

// gravityWith is that with so many portions of the sugar in.
func (m *maker) gravityWith(used float64, portions int) (float64, error) {
	at, err := m.measuredAt(used, portions)
	return at.sg, err
}

// measureAlong reads gravity and strength at the points of a course, all the sugar in.
func (m *maker) measureAlong(points []AcidityPoint) error {
	for i := range points {
		at, err := m.measuredAt(points[i].Used.In(units.Fraction), m.portions())
		if err != nil {
			return err
		}
		points[i].Gravity, points[i].Strength = at.sg, at.strength
	}
	return nil
}
