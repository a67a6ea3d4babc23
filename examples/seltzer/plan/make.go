package plan

import (
	"fmt"
	"math"
	"slices"
	"time"

	"example.org/zymase/carbonation"
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient"
	"example.org/zymase/nutrient/ferment"
	"example.org/zymase/nutrient/kinetics"
	"example.org/zymase/nutrient/yeast"
	"example.org/zymase/units"
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

// newMaker solves the batch and fills in the plan.
func newMaker(req Request) (*maker, error) {
	r, b, sugar, err := solved(req)
	if err != nil {
		return nil, req.typed.echoed(advised(req, err))
	}

	p := &Plan{
		Version: 1, Name: req.Name, Request: req, Volume: req.Volume,
		Strength:   units.PercentVolume.Of(checked.Number(b.strength)),
		Atmosphere: r.air.Pressure(),
		Weigh:      []Weight{sugar},
	}
	m := &maker{recipe: r, batch: b, plan: p}
	for _, step := range []struct {
		field string // what an error without one is about
		do    func() error
	}{
		{"place", m.boilingPoint}, {"kettle", m.vessels}, {"strength", m.gravities}, {"water", m.water}, {"water", m.boil}, {"nutrient", m.feed},
		{"water", m.acidity}, {"nutrient", m.addMinerals}, {"yeast", m.yeast}, {"packs", m.packs}, {"flavour", m.flavour},
		{"label", m.label}, {"strength", m.balance}, {"instruments", m.uncertainties}, {"readings", m.readings},
		{"schedule", m.schedule}, {"schedule", m.foresee}, {"room", m.room}, {"prices", m.cost}, {"request", m.cautions},
	} {
		if err := placed(step.field, step.do()); err != nil {
			return nil, req.typed.echoed(err)
		}
	}
	return m, nil
}

// A maker fills in the parts of a plan.
type maker struct {
	*recipe
	batch   batch
	plan    *Plan
	treated water.Profile // the water after salts
	// the same boiled down, with chalk at equilibrium and with none dropped
	boiledLow, boiledHigh water.Profile
	fed                   []nutrient.Dose // as weighed
	course                ferment.Tank    // with its buffer
	gas                   float64         // kg of CO2 that the ferment makes, by its balance of atoms
	warned                int             // cautions that come first

	salted    minerals
	paced     *kinetics.Pace // once it is asked for
	forecasts [2]foretold    // once it is asked for: without and with the readings
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

// vessels are the volumes hot and cold.
func (m *maker) vessels() error {
	b := m.batch
	water, err := gravity.NewSolution(kilograms(b.water), units.Mass{}, units.Mass{})
	if err != nil {
		return err
	}
	hot := m.plan.Boiling
	if hot.In(units.Celsius) > 100 { // the densities end at 100 °C; 3 K more are 0.2 % in volume
		hot = units.Celsius.Of(100)
	}
	ferment := m.req.Fermenter.Temperature
	for _, v := range []struct {
		when string
		s    gravity.Solution
		t    units.Temperature
	}{
		{"water to start with", water, at20},
		{"kettle, sugar dissolved, cold", b.start, at20},
		{"kettle, start of the boil", b.start, hot},
		{"kettle, end of the boil", b.boiled, hot},
		{"left in the kettle", b.kettleLoss, at20},
		{"fermenter, filled", b.wash, ferment},
		{"fermenter, fermented dry", b.base, ferment},
		{"left with the yeast", b.fermenterLoss, at20},
	} {
		at, err := v.s.Volume(v.t)
		if err != nil {
			return &RequestError{Field: "fermenter.temperature", Value: v.t.Text(units.Celsius, 1), Allowed: reason(err), Err: err}
		}
		cold := v.s.VolumeAt20()
		m.plan.Vessels = append(m.plan.Vessels, Vessel{When: v.when, Temperature: v.t, Volume: at, Cold: cold, Gravity: v.s.Gravity().SG()})
	}
	return m.fits()
}

// fits compares volumes with vessels.
func (m *maker) fits() error {
	boil, fill := m.plan.Vessels[2].Volume, m.plan.Vessels[5].Volume
	for _, v := range []struct {
		field    string
		need     units.Volume
		capacity units.Volume
		what     string
		tight    string
	}{
		{"kettle.capacity", boil, m.req.Kettle.Capacity, "the boil starts at",
			"The kettle is more than nine tenths full at the start of the boil: it can boil over. Watch it and turn the heat down before the foam rises."},
		{"fermenter.capacity", fill, m.req.Fermenter.Capacity, "the wash fills",
			"The fermenter is more than nine tenths full: foam can reach the airlock. Fit a blow-off tube."},
	} {
		need, have := math.Ceil(10*v.need.In(units.Litre)-1e-6)/10, v.capacity.In(units.Litre) // as it is printed
		if need > have {
			return &RequestError{Field: v.field, Value: v.capacity.Text(units.Litre, 1), is: quantity(v.capacity),
				Allowed: fmt.Sprintf("at least %.1f L: %s %.1f L; a smaller volume, or less water with a stronger base, would fit", math.Ceil(10*need)/10, v.what, need)}
		}
		if need > 0.9*have {
			m.caution(v.tight)
		}
	}
	return nil
}

// gravities are what the hydrometer will say.
func (m *maker) gravities() error {
	wash, base := m.batch.wash, m.batch.base
	g := GravityPlan{
		Original: wash.Gravity().SG(), Extract: wash.Gravity().Extract(),
		Floor: base.Gravity().SG(), Apparent: base.Gravity().Extract(),
	}
	var err error
	if g.ThirdUsed, err = m.gravityAt(1. / 3); err != nil {
		return err
	}
	if g.TwoThirdsUsed, err = m.gravityAt(2. / 3); err != nil {
		return err
	}
	t := m.req.Fermenter.Temperature
	if g.WarmOriginal, err = m.hydrometer().Reading(wash, t); err != nil {
		return err
	}
	if g.WarmFloor, err = m.hydrometer().Reading(base, t); err != nil {
		return err
	}
	m.plan.Gravity = g
	return nil
}

// gravityAt is the gravity when a part of the fermentable sugar is used.
func (m *maker) gravityAt(used float64) (float64, error) {
	s, _, err := m.batch.wash.Ferment(kilograms(used*kg(m.batch.wash.Fermentable())), m.yield)
	return s.Gravity().SG(), err
}

// balance lists what goes in and what comes out, as the batch is carried forward with the
// weights as the scale shows them.
func (m *maker) balance() error {
	c, err := m.carry()
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

// flavour scales the bench trial up.
func (m *maker) flavour() error {
	f := m.req.Flavour
	if f == nil {
		return nil
	}
	total, ethanol, drink := 0.0, 0.0, 0.0
	for _, k := range m.batch.packed {
		total += k.flavour
		drink += kg(k.drink.Ethanol())
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
		Sugar:   units.GramPerLitre.Of(checked.Number(1000 * kg(s.Extract()) / m.req.Volume.In(units.Litre))),
	}
	if share > 0.49 {
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
	cells, err := yeast.CellsToPitch(cold, m.batch.wash.Gravity().Extract(), yeast.UsualRate().Value)
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
