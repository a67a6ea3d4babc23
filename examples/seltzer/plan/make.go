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
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// Make plans a batch. The error is a [*RequestError]; with it there is no plan.
func Make(req Request) (Plan, error) {
	m, err := newMaker(req)
	if err != nil {
		return Plan{}, err
	}
	return *m.plan, nil
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

	p := &Plan{
		Version: 1, Name: req.Name, Request: req, Volume: r.req.Volume,
		Strength:   units.PercentVolume.Of(checked.Number(b.strength)),
		Atmosphere: r.air.Pressure(),
	}
	m := &maker{recipe: r, batch: b, plan: p}
	steps := []makerStep{
		{"place", m.boilingPoint}, {"water", m.water}, {"water", m.boil}, {"must", m.must}, {"nutrient", m.feed},
		{"water", m.acidity}, {"yeast", m.yeast}, {"yeast.strain", m.strain}, {"strength", m.brew},
		{"kettle", m.vessels}, {"strength", m.gravities}, {"acid", m.settleDown}, {"acid", m.tooFlat}, {"packs", m.pour}, {"packs", m.packs}, {"flavour", m.flavour},
		{"label", m.label}, {"strength", m.balance}, {"instruments", m.uncertainties}, {"readings", m.readings},
		{"schedule", m.schedule}, {"schedule", m.foresee}, {"room", m.room}, {"prices", m.cost}, {"request", m.cautions},
	}
	if r.base != nil {
		steps = m.baseSteps()
	} else {
		p.Weigh = sugar
	}
	for _, step := range steps {
		if err := placed(step.field, step.do()); err != nil {
			return nil, req.typed.echoed(err)
		}
	}
	return m, nil
}

// makerStep fills in one part of a plan.
type makerStep struct {
	field string // what an error without one is about
	do    func() error
}

// A maker fills in the parts of a plan.
type maker struct {
	*recipe
	batch  batch
	plan   *Plan
	atHand []material.Material // salts that go in after the boil
	// the same boiled down, with chalk at equilibrium and with none dropped
	boiledLow, boiledHigh water.Profile
	fed                   []material.Dose // as weighed
	course                ferment.Tank    // with its buffer
	gas                   float64         // kg of CO2 that the ferment makes, by its balance of atoms
	warned                int             // cautions that come first

	tapped        forward.State // some of the water as it comes, once it is asked for
	brewed        *brewing
	poured        *pouring
	doubts        [doubtful]doubt
	salted        minerals
	paced         *kinetics.Pace // once it is asked for
	forecasts     [2]foretold    // once it is asked for: without and with the readings
	soured, after []deed         // the acid before the yeast; what is done after the ferment

}

func (m *maker) caution(text string) {
	for _, have := range m.plan.Cautions {
		if have == text {
			return
		}
	}
	m.plan.Cautions = append(m.plan.Cautions, text)
}

// warn is a caution before all others.
func (m *maker) warn(text string) {
	m.plan.Cautions = slices.Insert(m.plan.Cautions, m.warned, text)
	m.warned++
}

// boilingPoint is that of water in this atmosphere.
func (m *maker) boilingPoint() (err error) {
	if m.plan.Boiling, err = carbonation.BoilingPoint(m.air.Pressure()); err != nil {
		return &RequestError{Field: "place", Value: m.plan.Atmosphere.Text(units.Millibar, 0), Allowed: reason(err), Err: err}
	}
	return nil
}

// balance lists what goes in and what comes out, as the batch is carried forward with the
// weights as the scale shows them.
func (m *maker) balance() error {
	c, err := m.listed()
	if err != nil {
		return err
	}
	m.gas = c.gas
	m.plan.Balance = Balance{In: c.in, Out: c.out}
	if m.unforeseen() == "" {
		most := ferment.UsualMetabolism()
		m.plan.Balance.YeastLow = kilograms(c.grown * most.LeanNitrogen.In(units.Fraction) / most.FullNitrogen.In(units.Fraction))
		m.plan.Balance.ByAtoms = units.PercentVolume.Of(checked.Number(c.atoms / kg(m.batch.base.Ethanol()) * m.batch.strength))
	}
	return nil
}

// flavour scales the bench trial up, for the packs that have the batch's.
func (m *maker) flavour() error {
	for i, k := range m.batch.packed {
		if p := m.recipe.packs[i]; p.Pack.Flavour != nil && p.taste != nil {
			if err := m.flavourOf(p.taste, k.flavour, kg(k.drink.Ethanol())); err != nil {
				return err
			}
		}
	}
	f := m.req.Flavour
	if f == nil {
		return nil
	}
	total, ethanol, drink, volume := 0.0, 0.0, 0.0, 0.0
	for i, k := range m.batch.packed {
		if m.recipe.packs[i].Pack.Flavour != nil {
			continue
		}
		total += k.flavour
		drink += kg(k.drink.Ethanol())
		volume += m.recipe.packs[i].Volume.In(units.Litre)
	}
	if total == 0 {
		return &RequestError{Field: "flavour", Value: f.Name, Allowed: "left out: every pack has its own"}
	}
	s, err := f.solution(total)
	if err != nil {
		return err
	}
	ethanol = kg(s.Ethanol())
	share := ethanol / drink
	m.plan.Flavour = &FlavourPlan{
		Name: f.Name, Added: litres(total),
		Rise:    units.PercentVolume.Of(checked.Number(share * m.batch.strength)),
		Ethanol: units.Percent.Of(checked.Number(100 * share)),
		Sugar:   units.GramPerLitre.Of(checked.Number(1000 * kg(s.Extract()) / volume)),
	}
	m.tried(f)
	return m.flavourOf(f, total, drink)
}

// flavourOf cautions of a flavouring, so many litres of it with so much ethanol in the drink.
func (m *maker) flavourOf(f *Flavour, total, drink float64) error {
	s, err := f.solution(total)
	if err != nil {
		return err
	}
	if kg(s.Ethanol())/drink > 0.49 {
		m.caution("The flavouring brings more than 49 % of the alcohol, the US limit for beer and malt beverages up to 6 % vol (27 CFR 25.15(b), 7.5); check the law in force.")
	}
	if f.Strength != nil && f.Strength.In(units.PercentVolume) > 20 {
		m.caution("An oil-based flavouring falls out as haze when its alcohol is diluted: try it in a glass of the cold, carbonated drink first.")
	}
	return nil
}

// yeast is what to pitch.
func (m *maker) yeast() error {
	cold := m.batch.wash.VolumeAt20()
	cells, err := yeast.CellsToPitch(yeast.UsualRate().Value, m.batch.wash.Gravity().Extract(), cold)
	if err != nil {
		return err
	}
	y := YeastPlan{Cells: cells.Billion(), Form: m.req.Yeast.Form}
	pack, err := yeast.DryPack(yeast.Cells{}, units.Celsius.Of(4))
	if y.Form == "liquid" {
		pack, err = yeast.LiquidPack(yeast.Cells{})
	}
	if err != nil {
		return err
	}
	age := time.Duration(0)
	if a := m.req.Yeast.Age; a != nil {
		age = time.Duration(*a)
	}
	pitch, err := pack.Need(cells, age)
	if err != nil {
		return err
	}
	y.Source = pitch.Evidence.String()
	y.Low, y.High, y.Packs = pitch.Low, pitch.High, pitch.Packs
	if y.Form == "dry" {
		if y.Mass, err = pitch.Mass.Round(m.req.Scales.Small, units.Up); err != nil {
			return err
		}
		m.plan.Weigh = append(m.plan.Weigh, Weight{What: "dry yeast", For: "fermenter", Mass: y.Mass, Asked: pitch.Mass})
	}
	for _, c := range pitch.Cautions {
		m.caution(c.Text())
	}
	if y.Form == "dry" {
		wake, err := yeast.Rehydrate(y.Mass.Quantity(), yeast.AleYeast, m.req.Fermenter.Temperature)
		if err != nil {
			return err
		}
		y.Rehydration = &RehydrationPlan{Water: wake.Water.Value, Temperature: wake.Temperature.Value, Time: Duration(wake.Time)}
	}
	m.plan.Yeast = y
	return nil
}
