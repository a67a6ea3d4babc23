package plan

import (
	"fmt"

	forward "example.org/zymase/examples/seltzer/batch" // "batch" is a type here
	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/nutrient/sugar"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
)

// carried is the batch carried forward step by step with the weights as the scale shows them:
// where each thing goes. No figure of it is searched for.
type carried struct {
	state    forward.State
	unknowns forward.Unknowns
	like     water.Series

	in, out []Line
	air     float64 // kg of CO2 that the boil took up

	gas   float64 // kg of CO2 that the ferment made
	atoms float64 // kg of ethanol that the balance of atoms gives
	grown float64 // kg of dry yeast
}

// do carries the state through a step.
func (c *carried) do(st forward.Step) (forward.Left, error) {
	states, left, err := forward.Walk(nil, []forward.Step{st}, c.state, &c.unknowns, &c.like)
	if err != nil {
		return left, fmt.Errorf("%s: %w", st.Kind, err)
	}
	c.state = states[0]
	return left, nil
}

// add is steps that bring something in, together as one line.
func (c *carried) add(what string, steps ...forward.Step) error {
	sum := 0.0
	for _, st := range steps {
		left, err := c.do(st)
		if err != nil {
			return err
		}
		sum += kg(left.In.Mass())
	}
	if len(steps) > 0 {
		c.in = append(c.in, Line{what, kilograms(sum)})
	}
	return nil
}

// carry takes the plan, as far as it is made, through its steps.
func (m *maker) carry() (*carried, error) {
	c := &carried{unknowns: forward.Usual()}
	tap, err := m.req.Water.Report.profile()
	if err != nil {
		return nil, err
	}
	known, err := tap.WithPH(m.req.Water.PH)
	if err != nil { // its CO2 is boiled off: any will do
		e, err := tap.InAir()
		if err != nil {
			return nil, err
		}
		known = e.Water()
	}
	if c.state, err = forward.FromWater(known, m.plan.Water.Volume); err != nil {
		return nil, err
	}
	c.in = append(c.in, Line{"water, as it comes", c.state.Mass()})
	for _, stage := range []func(*carried) error{m.kettled, m.fermented, m.packaged} {
		if err := stage(c); err != nil {
			return nil, err
		}
	}
	return c, nil
}

// kettled is the work in the kettle.
func (m *maker) kettled(c *carried) error {
	var salts []forward.Step
	for _, d := range m.plan.Water.Doses {
		salts = append(salts, forward.Step{Kind: forward.Treat, What: d.What, Mass: d.Mass.Quantity()})
	}
	if err := c.add("salts", salts...); err != nil {
		return err
	}
	dissolve, err := weighable(m.fermentable)
	if err != nil {
		return err
	}
	dissolve.Kind, dissolve.Mass = forward.Dissolve, kilograms(m.batch.fermentable)
	if err := c.add(m.fermentable.Name(), dissolve); err != nil {
		return err
	}
	left, err := c.do(forward.Step{Kind: forward.Boil, For: forward.Duration(m.req.Kettle.Boil), Rate: m.req.Kettle.BoilOff, Pressure: m.air.Pressure()})
	if err != nil {
		return err
	}
	c.air = kg(left.In.Mass()) - kg(left.Gas.Mass())
	c.out = append(c.out, Line{"boiled off", left.Vapour.Mass()})
	if scale := left.Scale.Mass(); scale.In(units.Gram) > 0 {
		c.out = append(c.out, Line{"chalk dropped, as usual", scale})
	}
	if left, err = c.do(forward.Step{Kind: forward.Transfer, Volume: m.req.Kettle.Loss}); err != nil {
		return err
	}
	c.out = append(c.out, Line{"left in the kettle", left.Liquid.Mass()})
	pitching := forward.Step{Kind: forward.Cool, Temperature: m.req.Fermenter.Temperature}
	if pitching.Temperature.Compare(c.state.Temperature()) > 0 { // unboiled
		pitching.Kind = forward.Heat
	}
	_, err = c.do(pitching)
	return err
}

// fermented is the ferment: its gas and its yeast by one balance of atoms, its ethanol by the
// measured yield, the rest of which is lost.
func (m *maker) fermented(c *carried) error {
	var food []forward.Step
	for _, d := range m.fed {
		food = append(food, forward.Step{Kind: forward.Feed, What: d.Source.Name(), Mass: d.Mass})
	}
	if w := m.plan.Acidity.Buffer; w != nil {
		food = append(food, forward.Step{Kind: forward.Feed, What: w.What, Mass: w.Mass.Quantity()})
	}
	if err := c.add("nutrient and buffer", food...); err != nil {
		return err
	}
	if m.plan.Yeast.Form == "dry" {
		if err := c.add("dry yeast", forward.Step{Kind: forward.Pitch, Mass: m.plan.Yeast.Mass.Quantity()}); err != nil {
			return err
		}
	}
	wash := c.state
	pitched := kg(wash.Yeast())
	ferment := forward.Step{Kind: forward.Ferment, Share: units.Percent.Of(100), Pressure: m.air.Pressure()}
	c.unknowns.Lost = 0
	if _, err := c.do(ferment); err != nil {
		return err
	}
	mass := func(of forward.Component, mol float64) float64 { return mol * of.MolarMass() / 1000 }
	c.atoms = mass(forward.Ethanol, c.state.Of(forward.Ethanol))
	c.unknowns.Lost = max(0, 100*(1-kg(m.batch.base.Ethanol())/c.atoms))
	c.state = wash
	left, err := c.do(ferment)
	if err != nil {
		return err
	}
	lost, off := mass(forward.Ethanol, left.Gas[forward.Ethanol]), kg(left.Gas.Mass())
	c.gas = mass(forward.CarbonDioxide, c.state.Of(forward.CarbonDioxide)+left.Gas[forward.CarbonDioxide]-wash.Of(forward.CarbonDioxide))
	c.grown = kg(c.state.Yeast()) - pitched
	if left, err = c.do(forward.Step{Kind: forward.Warm, Temperature: m.req.Fermenter.Warmest, Pressure: m.air.Pressure()}); err != nil {
		return err
	}
	off += kg(left.Gas.Mass())
	if left, err = c.do(forward.Step{Kind: forward.Transfer, Volume: m.req.Fermenter.Loss}); err != nil {
		return err
	}
	liquid := kg(left.Liquid.Mass())
	carriedAlong := 0.0
	for _, of := range []forward.Component{forward.YeastMatter, forward.YeastNitrogen, forward.YeastPhosphorus, forward.YeastPotassium} {
		carriedAlong += mass(of, left.Liquid[of])
	}
	if _, err = c.do(forward.Step{Kind: forward.Fine, Share: units.Percent.Of(100)}); err != nil {
		return err
	}
	c.out = append(c.out, Line{"left with the yeast", kilograms(liquid - carriedAlong)})
	if m.unforeseen() != "" { // its nitrogen is not known
		c.out = append(c.out, Line{"yeast, dry, and losses", kilograms(pitched + c.grown + lost)})
	} else {
		if pitched > 0 {
			c.out = append(c.out, Line{"yeast pitched, dry", kilograms(pitched)})
		}
		c.out = append(c.out, Line{"yeast grown, dry, by its nitrogen", kilograms(c.grown)},
			Line{"ethanol lost, other products", kilograms(lost)})
	}
	c.out = append(c.out, Line{"CO2 given off", kilograms(off - lost - c.air)})
	return nil
}

// packaged is each kind of pack as it is filled, without what a cylinder brings; the last of
// them takes what there is.
func (m *maker) packaged(c *carried) error {
	whole, err := c.state.Volume(at20)
	if err != nil {
		return err
	}
	left, added := whole.In(units.Litre), 0.0
	for i, k := range m.batch.packed {
		r, fork := m.recipe.packs[i], *c
		part := min(left, k.base)
		if i == len(m.batch.packed)-1 {
			part = left
		}
		left -= part
		steps := []forward.Step{
			{Kind: forward.Transfer, Volume: litres(max(0, whole.In(units.Litre)-part))},
			{Kind: forward.Dilute, Mass: kilograms(k.water)},
		}
		if f := m.req.Flavour; f != nil {
			steps = append(steps, flavoured(*f, k.flavour))
		}
		if k.primer > 0 {
			prime, err := weighable(r.primer)
			if err != nil {
				return err
			}
			prime.Kind, prime.Mass = forward.Prime, kilograms(k.primer)
			steps = append(steps, prime)
		}
		fork.in = nil
		if err := fork.add("", steps...); err != nil {
			return err
		}
		added += kg(fork.in[0].Mass)
		c.out = append(c.out, Line{"in the " + r.Kind + "s", fork.state.Mass()})
	}
	c.in = append(c.in, Line{"flavouring and priming", kilograms(added)})
	return nil
}

// flavoured is the step that adds so many litres of a flavouring.
func flavoured(f Flavour, litresOfIt float64) forward.Step {
	st := forward.Step{Kind: forward.Flavour, Volume: litres(litresOfIt)}
	if f.Strength != nil {
		st.Strength = *f.Strength
	}
	if f.Sugar != nil {
		st.Sugar = *f.Sugar
	}
	return st
}

// weighable is a fermentable as a step knows it: by its name, or by its label.
func weighable(f sugar.Fermentable) (forward.Step, error) {
	if m, err := material.Find(f.Name()); err == nil {
		return forward.Step{What: m.Name()}, nil
	}
	kilo, err := gravity.NewSolution(kilograms(1), units.Mass{}, units.Mass{})
	if err != nil {
		return forward.Step{}, err
	}
	with, err := f.AddTo(kilo, kilograms(1))
	if err != nil {
		return forward.Step{}, err
	}
	of := func(k gravity.Sugar) units.Share { return units.Fraction.Of(checked.Number(kg(with.ExtractOf(k)))) }
	own, err := material.ByLabel(f.Name(), material.Composition{
		Disaccharides: of(gravity.Sucrose), Glucose: of(gravity.Glucose), Fructose: of(gravity.Fructose), UnfermentedSolids: of(gravity.Dextrin),
	})
	return forward.Step{Own: own}, err
}
