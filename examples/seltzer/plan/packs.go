package plan

import (
	"fmt"
	"math"
	"strings"

	"example.org/zymase/carbonation"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// packs are the kegs and bottles.
func (m *maker) packs(say *notes) (all []PackPlan, err error) {
	for i, r := range m.recipe.packs {
		k, f := m.batch.packed[i], m.poured.packs[i]
		held, err := f.held(r)
		if err != nil {
			return nil, err
		}
		if r.target = held; r.Kind != keg && !r.Content.still { // what its bottles are filled for
			r.target = m.recipe.packs[i].target
		}
		p := PackPlan{
			Kind: r.Kind, Content: r.target, Volumes: carbonation.RealVolume.Volumes(r.target),
			Strength: k.drink.ByVolume(), Temperature: r.Temperature, Rating: r.Rating,
			Base: litres(k.base), Flavouring: litres(k.flavour), Water: kilograms(k.water), Trial: r.trials(k),
		}
		p.Still = r.Content.still
		p.Of, p.Mark = r.of, r.mark
		if r.taste != nil {
			p.Taste = r.taste.Name
		}
		p.Count = int(math.Floor(r.Volume.In(units.Litre)/r.Size.In(units.Litre) + 1e-9))
		p.Remainder = litres(math.Max(0, r.Volume.In(units.Litre)-float64(p.Count)*r.Size.In(units.Litre)))
		if p.Gauge = f.set; r.Kind != keg || r.Content.still { // of a keg with the same content
			if p.Gauge, err = m.setTo(k.drink, r, r.target, r.Temperature); err != nil {
				return nil, err
			}
		}
		total, err := m.air.Absolute(p.Gauge)
		if err != nil {
			return nil, err
		}
		p.SeaLevel = units.Atmosphere{}.Gauge(total)
		if r.Kind == keg {
			err = m.keg(&p, r, k, &f, say)
		} else {
			err = m.bottle(&p, r, k, &f, held, say)
		}
		if err != nil {
			return nil, r.refused(err)
		}
		p.Highest.Sweetener = p.Highest.Sugar && r.sweet.ferments
		p.Highest.Flavouring = p.Highest.Sugar && m.flavourSugar(r, k) > 0
		if err := m.ownTaste(&p, r, k, f.asked, say); err != nil {
			return nil, err
		}
		all = append(all, p)
	}
	return all, nil
}

// bottle primes one and warms it; held is the content of the drink before that.
func (m *maker) bottle(p *PackPlan, r packRecipe, k packed, f *poured, held units.CarbonDioxideContent, say *notes) error {
	b := &BottlePlan{Store: *r.Store, Syrup: kilograms(k.water), Dissolved: held}
	sugar := kilograms(m.flavourSugar(r, k) / 1000) // of a litre
	b.FromFlavour = units.GramCO2PerLitre.Of(checked.Number(1000 * r.inPack.gas * kg(carbonation.CO2From(material.Sucrose().Dose(sugar)))))
	asked := kilograms(f.asked.primer)
	weighed, err := asked.Round(m.req.Scales.Small, units.Nearest)
	if err != nil {
		return err
	}
	if b.Priming = (Weight{Mass: weighed, Asked: asked}); r.primes() {
		b.Priming.What, b.Priming.For = r.primer.Name(), "priming the "+p.Named()
	}
	b.PerBottle = kilograms(k.primer / r.Volume.In(units.Litre) * r.Size.In(units.Litre))
	served, err := f.meter.Pack(&f.served, r.Rating)
	if err != nil {
		return err
	}
	stored, err := f.meter.Pack(&f.stored, r.Rating)
	if err != nil {
		return err
	}
	b.Served, b.ServedGauge, b.ServedAtLeast = served.Content, served.Gauge, served.AtLeast
	b.StoreGauge, b.AtLeast = stored.Gauge, stored.AtLeast
	if r.counterPressure() {
		if b.Filling, err = m.counterFilling(r, f, say); err != nil {
			return err
		}
	}
	say.stretches(r)
	r.filling = f.filling
	worst, err := m.close(r, k, b.Dissolved, true)
	if err != nil {
		return err
	}
	if p.Highest, err = m.highest(r, worst); err != nil {
		return err
	}
	if r.primes() {
		if b.Held = over(p.Highest.Verdict); !b.Held {
			say.weigh(b.Priming)
		}
	}
	p.Bottle = b
	say.rated(p, fmt.Sprintf("The %s at %s, once all its sugar has fermented, at %s", p.One(), p.Highest.Temperature.Text(units.Celsius, 0), atLeast(p.Highest)))
	if r.counterPressure() {
		say.caution("Fill only a dry drink under counter-pressure, or keep it cold: sugar that is left makes gas on top of what is filled in.")
		return nil
	}
	if !r.primes() {
		say.caution("Bottle a still drink only at the " + m.floorName() + ": sugar that is left makes gas in a bottle that is not made for it.")
		return nil
	}
	say.caution("Prime only at the " + m.floorName() + ": a bottle filled above it makes gas from the sugar that is left, on top of the priming.")
	return nil
}

// rated puts the cautions of a pack's highest state with the others; those of one that its
// rating does not cover come first, with the pack's name.
func (n *notes) rated(p *PackPlan, named string) {
	for _, c := range p.Highest.cautions {
		switch c {
		case carbonation.OverRatingCaution, carbonation.HydraulicLock, carbonation.AboveComputed:
			n.warn(named + ": " + c.Text())
		case carbonation.SugarCanFerment: // stands with the pack
		case carbonation.Freezing:
			n.warn("The " + p.Named() + ": " + c.Text())
		default:
			n.caution(c.Text())
		}
	}
}

// cautions are those that go with every batch.
func (m *maker) cautions(say *notes) error {
	for _, c := range m.fermentable.Cautions() {
		say.caution(c.Text())
	}
	if m.unforeseen() != "" && !strings.Contains(m.fermentable.Name(), "honey") { // that has next to none
		say.caution("The nitrogen that " + m.fermentable.Name() + " brings is not counted: less nutrient or none may do.")
	}
	if m.req.Kettle.Boil > 0 {
		say.caution("Boiling sugar solution sticks and burns deeply: keep children and pets away, lift nothing full and hot, let it cool before it is moved.")
	}
	for _, c := range []string{
		carbonation.Asphyxiation.Text(),
		"Finished means: at or near the " + m.floorName() +
			", and unchanged over several days. A reading above the floor may hide sugar that makes gas in a closed pack.",
	} {
		say.caution(c)
	}
	return nil
}
