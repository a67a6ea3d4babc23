package plan

import (
	"math"

	"example.org/zymase/gravity"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/water"
)

// minerals are what a hydrometer shows for what is dissolved beside sugar and ethanol, as
// gravity: the salts of the kettle's water; with nutrient and buffer in the wash; and what
// of them is still there at the end.
type minerals struct{ kettle, wash, floor float64 }

// at is the part of the gravity when a share of the sugar is used.
func (n minerals) at(used float64) float64 { return n.wash + used*(n.floor-n.wash) }

// carbonateShare is the least that stays of a bicarbonate of potassium when its gas goes: the
// metal's part of the mass (atomic weights CIAAW 2021; sodium's is less, its salts scarcer).
const carbonateShare = 0.39

// addMinerals raises every gravity of the plan by its minerals, and says how sure the floor is.
func (m *maker) addMinerals() error {
	b := m.batch
	gl := units.GramPerLitre
	perLitre := func(p water.Profile, kilos, litres float64) (salts, bicarbonate float64) { // g/L of so much water in a wash
		for _, i := range water.Ions() {
			c := p.Ion(i).In(gl) * kilos / waterPerLitre / litres
			if i == water.Bicarbonate || i == water.Carbonate {
				bicarbonate += c
			} else {
				salts += c
			}
		}
		return salts, bicarbonate
	}
	kettleSalts, kettleBicarbonate := perLitre(m.kettleWater, b.water-b.boiledOff-b.topUp, b.boiled.VolumeAt20().In(units.Litre))
	salts, bicarbonate := perLitre(m.addedWater, (1-b.share)*kg(b.wash.Mass()), b.wash.VolumeAt20().In(units.Litre))
	cold := b.wash.VolumeAt20().In(units.Litre)
	nutrient, buffer := 0.0, 0.0
	for _, d := range m.fed {
		nutrient += d.Mass.In(units.Gram) / cold
	}
	if w := m.plan.Acidity.Buffer; w != nil {
		buffer = w.Mass.Quantity().In(units.Gram) / cold
	}
	if a := m.plan.Acid; a != nil && a.When == beforeYeast { // it raises the gravity half as much as a salt does
		nutrient += a.Weight.Mass.Quantity().In(units.Gram) / cold / 2
	}
	all := salts + bicarbonate + nutrient + buffer
	ended, _, err := b.wash.Dry(m.yield)
	if err != nil {
		return err
	}
	dry := ended.Gravity().SG()
	floor := func(least, most float64) (units.MeasuredNumber, error) {
		return gravity.MeasuredFloor(b.wash, m.yield, m.spread(), gl.Of(checked.Number(least)), gl.Of(checked.Number(most)))
	}
	end, err := floor(salts+carbonateShare*buffer, all)
	if err != nil {
		return err
	}
	for _, v := range []struct {
		of   float64
		into *float64
	}{{kettleSalts + kettleBicarbonate, &m.salted.kettle}, {all, &m.salted.wash}} {
		raised, err := floor(v.of, v.of)
		if err != nil {
			return err
		}
		*v.into = raised.Value().In(units.One) - dry
	}
	m.salted.floor = end.Value().In(units.One) - dry
	u, err := end.Expanded(2)
	if err != nil {
		return err
	}

	p, n := m.plan, m.salted
	g := &p.Gravity
	left := 2 * m.unfermentedSpread() * (b.wash.Gravity().SG() - dry) // k = 2
	g.Minerals, g.FloorUncertainty = n.floor, math.Hypot(u.In(units.One), left)
	for i := range p.Vessels {
		switch v := &p.Vessels[i]; m.salts[i] {
		case saltsOfKettle:
			v.Gravity += n.kettle
		case saltsOfWash:
			v.Gravity += n.wash
		case saltsOfFloor:
			v.Gravity += n.floor
		}
	}
	if g.First > 0 {
		g.First += n.wash
	}
	for i := range g.Portions {
		g.Portions[i].Gravity += n.at(g.Portions[i].Used.In(units.Fraction))
	}
	g.Original, g.WarmOriginal = g.Original+n.wash, g.WarmOriginal+n.wash
	g.ThirdUsed, g.TwoThirdsUsed = g.ThirdUsed+n.at(1./3), g.TwoThirdsUsed+n.at(2./3)
	g.Floor, g.WarmFloor = g.Floor+n.floor, g.WarmFloor+n.floor
	for _, v := range []struct {
		sg   float64
		into *units.Extract
	}{{g.Original, &g.Extract}, {g.Floor, &g.Apparent}} {
		of, err := gravity.FromSG(v.sg)
		if err != nil {
			return err
		}
		*v.into = of.Extract()
	}
	for i := range p.Nutrient.Stages {
		s := &p.Nutrient.Stages[i]
		s.Gravity += n.at(s.Used.In(units.Fraction))
	}
	m.raise(p.Acidity.Points)
	return nil
}

// raise adds the minerals to the gravities of a course.
func (m *maker) raise(points []AcidityPoint) {
	for i := range points {
		points[i].Gravity += m.salted.at(points[i].Used.In(units.Fraction))
	}
}

// unfermentedSpread is how well it is known what of the solids the yeast leaves, as a part of the
// sugar: as well as the sugar itself, but no worse than by half of what is left (chosen). Of
// sugar alone nothing is left.
func (m *maker) unfermentedSpread() float64 {
	c := m.fermentable.Composition()
	sugar, rest := c.Sugar().In(units.Fraction), c.UnfermentedSolids.In(units.Fraction)
	if sugar == 0 {
		return 0
	}
	return min(m.fermentable.Spread().In(units.Fraction), rest/sugar/2)
}
