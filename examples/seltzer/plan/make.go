package plan

import (
	"errors"
	"slices"
	"time"

	"example.org/zymase/carbonation"
	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/nutrient/yeast"
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

	m := &maker{recipe: r, batch: b, notes: notes{weighed: sugar}, plan: Plan{
		Version: 1, Name: req.Name, Request: req, Volume: r.req.Volume,
		Strength:   units.PercentVolume.Of(checked.Number(b.strength)),
		Atmosphere: r.air.Pressure(),
	}}
	p := &m.plan
	steps := []makerStep{
		{"place", put(&p.Boiling, m.boilingPoint)},
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
		{"strength", put(&p.Acidity.Points, m.measuredCourse)},
		{"acid", put2(&p.After, &p.Acid, m.settleDown)},
		{"acid", m.tooFlat},
		{"packs", put2(&m.poured, &m.batch.packed, m.pour)},
		{"packs", put(&p.Packs, m.packs)},
		{"flavour", put(&p.Flavour, m.flavour)},
		{"label", put(&p.Label, m.label)},
		{"strength", put(&p.Packs, m.soured)},
		{"strength", put(&p.Balance, m.balance)},
		{"instruments", m.instruments},
		{"instruments", put(&m.doubts, m.doubt)},
		{"instruments", put(&p.Gravity, m.sureGravities)},
		{"instruments", put(&p.Uncertainty, m.uncertainties)},
		{"readings", old(m.readings)},
		{"schedule", put(&p.Schedule, m.schedule)},
		{"schedule", old(m.foresee)},
		{"room", put(&p.Room, m.room)},
		{"prices", put(&p.Cost, m.cost)},
		{"request", m.cautions},
	}
	if r.base != nil {
		steps = []makerStep{
			{"place", put(&p.Boiling, m.boilingPoint)},
			{"at_hand.base", put(&p.Base, m.taken)},
			{"water", put(&p.Water, m.letDownWater)},
			{"water", put(&m.tapped, m.asItComes)},
			{"at_hand.base", put2(&m.poured, &m.batch.packed, m.pourBase)},
			{"packs", put(&p.Packs, m.packs)},
			{"flavour", put(&p.Flavour, m.flavour)},
			{"label", put(&p.Label, m.label)},
			{"at_hand.base", put(&p.Packs, m.soured)},
			{"at_hand.base", put(&p.Balance, m.baseBalance)},
			{"instruments", m.instruments},
			{"instruments", put(&p.Uncertainty, m.uncertainties)},
			{"prices", put(&p.Cost, m.cost)},
			{"request", m.baseCautions},
		}
	}
	for _, step := range steps {
		if err := placed(step.field, step.do(&m.notes)); err != nil {
			return nil, req.typed.echoed(err)
		}
	}
	p.Weigh, p.Cautions = m.weighed, m.said
	return m, nil
}

// A makerStep puts what one stage returns in its place.
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

func old(do func() error) func(*notes) error { return func(*notes) error { return do() } }

// notes are what the stages of a plan have weighed and what they caution of, in their order.
type notes struct {
	weighed []Weight
	said    []string
	first   int // cautions that come before all others
}

func (n *notes) weigh(w ...Weight) { n.weighed = append(n.weighed, w...) }

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

// A maker fills in the parts of a plan.
type maker struct {
	*recipe
	notes
	batch  batch
	plan   Plan
	tapped forward.State // some of the water as it comes
	boiled boiledWater
	course ferment.Tank // with its buffer
	thirds [courseSteps + 1]usedAt

	brewed    *brewing
	poured    *pouring
	doubts    [doubtful]doubt
	salted    minerals
	paced     *kinetics.Pace // once it is asked for
	forecasts [2]foretold    // once it is asked for: without and with the readings

}

// boilingPoint is that of water in this atmosphere.
func (m *maker) boilingPoint(*notes) (units.Temperature, error) {
	t, err := carbonation.BoilingPoint(m.air.Pressure())
	if err != nil {
		return t, &RequestError{Field: "place", Value: m.air.Pressure().Text(units.Millibar, 0), Allowed: reason(err), Err: err}
	}
	return t, nil
}

// balance lists what goes in and what comes out, as the batch is carried forward with the
// weights as the scale shows them.
func (m *maker) balance(*notes) (Balance, error) {
	c := m.listed()
	b := Balance{In: c.in, Out: c.out}
	if m.unforeseen() == "" {
		most := ferment.UsualMetabolism()
		b.YeastLow = kilograms(c.grown * most.LeanNitrogen.In(units.Fraction) / most.FullNitrogen.In(units.Fraction))
		b.ByAtoms = units.PercentVolume.Of(checked.Number(c.atoms / kg(m.batch.base.Ethanol()) * m.batch.strength))
	}
	return b, nil
}

// flavour scales the bench trial up, for the packs that have the batch's.
func (m *maker) flavour(say *notes) (*FlavourPlan, error) {
	for i, k := range m.batch.packed {
		if p := m.recipe.packs[i]; p.Pack.Flavour != nil && p.taste != nil {
			if err := say.flavourOf(p.taste, k.flavour, kg(k.drink.Ethanol())); err != nil {
				return nil, err
			}
		}
	}
	f := m.req.Flavour
	if f == nil {
		return nil, nil
	}
	total, drink, volume := 0.0, 0.0, 0.0
	for i, k := range m.batch.packed {
		if m.recipe.packs[i].Pack.Flavour != nil {
			continue
		}
		total += k.flavour
		drink += kg(k.drink.Ethanol())
		volume += m.recipe.packs[i].Volume.In(units.Litre)
	}
	if total == 0 {
		return nil, &RequestError{Field: "flavour", Value: f.Name, Allowed: "left out: every pack has its own"}
	}
	s, err := f.solution(total)
	if err != nil {
		return nil, err
	}
	share := kg(s.Ethanol()) / drink
	say.tried(f)
	return &FlavourPlan{
		Name: f.Name, Added: litres(total),
		Rise:    units.PercentVolume.Of(checked.Number(share * m.batch.strength)),
		Ethanol: units.Percent.Of(checked.Number(100 * share)),
		Sugar:   units.GramPerLitre.Of(checked.Number(1000 * kg(s.Extract()) / volume)),
	}, say.flavourOf(f, total, drink)
}

// flavourOf cautions of a flavouring, so many litres of it with so much ethanol in the drink.
func (n *notes) flavourOf(f *Flavour, total, drink float64) error {
	s, err := f.solution(total)
	if err != nil {
		return err
	}
	if kg(s.Ethanol())/drink > 0.49 {
		n.caution("The flavouring brings more than 49 % of the alcohol, the US limit for beer and malt beverages up to 6 % vol (27 CFR 25.15(b), 7.5); check the law in force.")
	}
	if f.Strength != nil && f.Strength.In(units.PercentVolume) > 20 {
		n.caution("An oil-based flavouring falls out as haze when its alcohol is diluted: try it in a glass of the cold, carbonated drink first.")
	}
	return nil
}

// yeast is what to pitch.
func (m *maker) yeast(say *notes) (y YeastPlan, err error) {
	cold := m.batch.wash.VolumeAt20()
	cells, err := yeast.CellsToPitch(yeast.UsualRate().Value, m.batch.wash.Gravity().Extract(), cold)
	if err != nil {
		return y, err
	}
	y.Cells, y.Form = cells.In(units.BillionCells), m.req.Yeast.Form
	pack, err := yeast.DryPack(units.Cells{}, units.Celsius.Of(4))
	if y.Form == "liquid" {
		pack, err = yeast.LiquidPack(units.Cells{})
	}
	if err != nil {
		return y, err
	}
	age := time.Duration(0)
	if a := m.req.Yeast.Age; a != nil {
		age = time.Duration(*a)
	}
	pitch, err := pack.Need(cells, age)
	if err != nil {
		return y, err
	}
	y.Source = pack.Evidence().String()
	y.Low, y.High, y.Packs = pitch.Packs.Low, pitch.Packs.High, pitch.Packs.Value
	if y.Form == "dry" {
		y.Low, y.High = pitch.Mass.Low.In(units.Gram), pitch.Mass.High.In(units.Gram)
		if y.Mass, err = pitch.Mass.Value.Round(m.req.Scales.Small, units.Up); err != nil {
			return y, err
		}
		say.weigh(Weight{What: "dry yeast", For: "fermenter", Mass: y.Mass, Asked: pitch.Mass.Value})
	}
	for _, c := range pitch.Cautions {
		say.caution(c.Text())
	}
	if y.Form == "dry" {
		wake, err := yeast.Rehydrate(y.Mass.Quantity(), yeast.AleYeast, m.req.Fermenter.Temperature)
		if err != nil {
			return y, err
		}
		y.Rehydration = &RehydrationPlan{Water: wake.Water.Value, Temperature: wake.Temperature.Value, Time: Duration(wake.Time)}
	}
	return y, nil
}
