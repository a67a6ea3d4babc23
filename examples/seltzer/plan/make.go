package plan

import (
	"errors"
	"slices"
	"sync"

	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/units"
)

// Make plans a batch. The error is a [*RequestError]; with it there is no plan.
func Make(req Request) (Plan, error) {
	m, err := newMaker(req)
	if err != nil {
		return Plan{}, err
	}
	return m.plan, nil
}

// newMaker solves the batch and fills in the plan; a refusal says how far the request may go.
func newMaker(req Request) (*maker, error) {
	m, err := makerOf(req)
	if errors.Is(err, errSmallKettle) {
		err = orTopUp(req, err)
	}
	return m, err
}

// makerOf is newMaker without the search for what the vessels take.
func makerOf(req Request) (*maker, error) {
	r, b, sugar, err := solved(req)
	if err != nil {
		return nil, req.typed.echoed(advised(req, err))
	}

	m := &maker{recipe: r, batch: b, plan: Plan{
		Version: 1, Name: req.Name, Request: req, Volume: r.req.Volume,
		Strength:   units.PercentVolume.Of(checked.Number(b.strength)),
		Atmosphere: r.air.Pressure(),
	}}
	m.byPlan, m.byReadings = sync.OnceValues(m.foretell), sync.OnceValues(m.foretellRead)
	p := &m.plan
	into, field, cautions := []makerStep{ // the packs
		{"water", put(&p.Water, m.water)},
		{"water", put(&m.tapped, m.asItComes)},
		{"water", put2(&p.Water, &m.boiled, m.boil)},
		{"must", put2(&r.brings, &p.Must, m.must)},
		{"must", put2(&p.Water, &m.boiled, m.withMust)},
		{"must", put2(&p.Acid, &m.boiled, m.early)},
		{"nutrient", put(&p.Nutrient, m.feed)},
		{"water", put2(&p.Acidity, &m.course, m.acidity)},
		{"water", put(&p.Nutrient.Others, m.otherNeeds)},
		{"yeast", put(&p.Yeast, m.yeast)},
		{"yeast.strain", m.strain},
		{"strength", put(&m.brewed, m.brew)},
		{"nutrient", put2(&p.Nutrient.FromMust, &p.Nutrient.Brought, m.nitrogen)},
		{"kettle", put(&p.Vessels, m.vessels)},
		{"kettle", put(&p.Fermenters, m.shareOut)},
		{"strength", put2(&m.thirds, &m.salted, m.measureThirds)},
		{"strength", put(&p.Gravity, m.gravities)},
		{"strength", put(&p.Nutrient.Stages, m.stageGravities)},
		{"acid", put2(&p.After, &p.Acid, m.settleDown)},
		{"instruments", m.instruments},
		{"water", put(&m.doubts, m.doubt)},
		{"instruments", put(&p.Gravity, m.sureGravities)},
		{"water", put(&p.Acidity, m.acidCourse)},
		{"acid", put(&p.After, m.sureAfter)},
		{"acid", m.tooFlat},
		{"packs", put2(&m.poured, &m.batch.packed, m.pour)},
	}, "strength", m.cautions
	if r.base != nil {
		into, field, cautions = []makerStep{
			{"at_hand.base", put(&p.Base, m.taken)},
			{"water", put(&p.Water, m.water)},
			{"water", put(&m.tapped, m.asItComes)},
			{"at_hand.base", put2(&m.poured, &m.batch.packed, m.pourBase)},
			{"instruments", m.instruments},
		}, "at_hand.base", m.baseCautions
	}
	steps := slices.Concat([]makerStep{{"place", put(&p.Boiling, m.boilingPoint)}}, into, []makerStep{
		{"packs", put(&p.Packs, m.packs)},
		{"flavour", put(&p.Flavour, m.flavour)},
		{"label", put(&p.Label, m.label)},
		{field, put(&p.Packs, m.soured)},
		{field, put(&p.Balance, m.balance)},
		{"instruments", put(&p.Uncertainty, m.uncertainties)},
		{"readings", put(&p.State, m.readings)},
		{"readings", put(&p.State, m.goOn)},
		{"schedule", put(&p.Schedule, m.schedule)},
		{"schedule", put(&p.Forecast, m.foresee)},
		{"room", put(&p.Room, m.room)},
		{"prices", put(&p.Cost, m.cost)},
		{"request", cautions},
	})
	say := notes{weighed: sugar}
	for _, step := range steps {
		if err := placed(step.field, step.do(&say)); err != nil {
			return nil, req.typed.echoed(err)
		}
	}
	p.Weigh, p.Cautions = say.weighed, say.said
	if swell, atoms, ok := m.missed(); ok && req.swell == 0 { // once
		again := req
		again.swell, again.atoms = swell, atoms
		return makerOf(again)
	}
	return m, nil
}

// A makerStep puts what one stage returns in its place. A stage reads the maker and changes nothing of it.
type makerStep struct {
	field string // what an error without one is about
	do    func(*notes) error
}

// put is the step that keeps the part of a plan which a stage returns.
func put[T any](into *T, stage func(*notes) (T, error)) func(*notes) error {
	return func(say *notes) (err error) {
		*into, err = stage(say)
		return err
	}
}

// put2 is put of two parts.
func put2[T, U any](into *T, also *U, stage func(*notes) (T, U, error)) func(*notes) error {
	return func(say *notes) (err error) {
		*into, *also, err = stage(say)
		return err
	}
}

// notes are what the stages of a plan have weighed and what they caution of, in their order.
type notes struct {
	weighed []Weight
	said    []string
	first   int // cautions that come before all others
}

func (n *notes) weigh(w ...Weight) { n.weighed = append(n.weighed, w...) }

func (n *notes) weighFirst(w ...Weight) { n.weighed = append(slices.Clip(w), n.weighed...) }

func (n *notes) caution(text string) {
	if !slices.Contains(n.said, text) {
		n.said = append(n.said, text)
	}
}

// warn is a caution before all others.
func (n *notes) warn(text string) {
	n.said = slices.Insert(n.said, n.first, text)
	n.first++
}

// A maker is what the stages read: the request, and the parts that the stages before have returned. Only [makerOf] assigns its
// fields and those of its plan.
type maker struct {
	*recipe
	batch batch
	plan  Plan

	tapped forward.State // some of the water as it comes
	boiled boiledWater
	course ferment.Tank // with its buffer
	brewed *brewing
	thirds [courseSteps + 1]usedAt
	salted minerals
	poured *pouring
	doubts [doubtful]doubt

	// Forecasts of the plan and with its readings: of what stands there by then, worked out once, and only where one is asked for.
	byPlan, byReadings func() (foretold, error)
}

// boilingPoint is that of water in this atmosphere.
func (m *maker) boilingPoint(*notes) (units.Temperature, error) {
	t, err := carbonation.BoilingPoint(m.air.Pressure())
	if err != nil {
		return t, &RequestError{Field: "place", Value: m.air.Pressure().Text(units.Millibar, 0), Allowed: reason(err), Err: err}
	}
	return t, nil
}
