package plan

import (
	"math"
	"slices"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
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

// measureThirds is the wash with each third of its sugar used, and its minerals.
func (m *maker) measureThirds(*notes) (all [courseSteps + 1]usedAt, salted minerals, err error) {
	whole := m.along(m.batch.wash, m.attenuation().In(units.Fraction)*kg(m.batch.wash.Fermentable()))
	for i := range all {
		used := float64(i) / courseSteps
		if all[i], err = m.measured(used, m.portions()); err != nil {
			return all, salted, err
		}
		plain, err := whole(used)
		if err != nil {
			return all, salted, err
		}
		salted[i] = all[i].sg - plain.Gravity().SG()
	}
	return all, salted, nil
}

// gravities are what the hydrometer will say.
func (m *maker) gravities(say *notes) (g GravityPlan, err error) {
	for _, v := range []struct {
		of       forward.State
		sg, warm *float64
		extract  *units.Extract
		minerals *float64
	}{
		{m.brewed.wash, &g.Original, &g.WarmOriginal, &g.Extract, new(float64)},
		{m.brewed.fermented, &g.Floor, &g.WarmFloor, &g.Apparent, &g.Minerals},
	} {
		shown, err := v.of.Gravity()
		if err != nil {
			return g, err
		}
		bare, err := v.of.Solution()
		if err != nil {
			return g, err
		}
		warm, err := m.hydrometer().Reading(bare, m.req.Fermenter.Temperature)
		if err != nil {
			return g, err
		}
		*v.sg, *v.extract, *v.minerals = shown.SG(), shown.Extract(), shown.SG()-bare.Gravity().SG()
		*v.warm = warm + *v.minerals
	}
	if g.ThirdUsed, err = m.gravityAt(1. / 3); err != nil {
		return g, err
	}
	if g.TwoThirdsUsed, err = m.gravityAt(2. / 3); err != nil {
		return g, err
	}
	if m.portions() > 1 {
		err = m.portionGravities(&g, say)
	}
	return g, err
}

// stageGravities are the stages of the nutrient with the gravities by which they go in.
func (m *maker) stageGravities(*notes) (stages []NutrientStage, err error) {
	stages = slices.Clone(m.plan.Nutrient.Stages)
	for i := range stages {
		if stages[i].Gravity, err = m.gravityAt(stages[i].Used.In(units.Fraction)); err != nil {
			return nil, err
		}
	}
	return stages, nil
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

// measureAlong is the wash at so many equal steps of its sugar used, all of it in.
func (m *maker) measureAlong(steps int) ([]AcidityPoint, error) {
	points := make([]AcidityPoint, steps+1)
	for i := range points {
		used := float64(i) / float64(steps)
		at, err := m.measuredAt(used, m.portions())
		if err != nil {
			return nil, err
		}
		points[i] = AcidityPoint{Used: units.Fraction.Of(checked.Number(used)), Gravity: at.sg, Strength: at.strength}
	}
	return points, nil
}
