package plan

import (
	"math"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"example.org/zymase/water"
	"example.org/zymase/water/must"
)

// compose makes the material of the fermentable with what it brings: so many litres of water to its kilogram.
func (m *maker) compose(b *brought, c material.Composition, got must.Brought, base water.Profile, litres float64) error {
	p := got.Drink.Water()
	added := 0.0  // g in a gram
	charge := 0.0 // mmol in a gram
	gram := func(i water.Ion) float64 {
		v := (p.Ion(i).In(units.GramPerLitre) - base.Ion(i).In(units.GramPerLitre)) * litres / 1000
		if v < 1e-12 {
			return 0
		}
		added += v
		z := float64(i.Charge())
		switch i { // as alkalinity counts them
		case water.Phosphate:
			z = -1
		case water.Glutamate:
			z = -1
		}
		charge += 1000 * z * v / i.MolarMass().In(units.GramPerMole)
		return v
	}
	of := func(v float64) units.Share { return units.Fraction.Of(checked.Number(v)) }
	c.Calcium, c.Magnesium = of(gram(water.Calcium)), of(gram(water.Magnesium))
	c.Potassium, c.Zinc = of(gram(water.Potassium)), of(gram(water.Zinc))
	c.AmmoniumNitrogen = of(gram(water.Ammonium) * chemistry.N / water.Ammonium.MolarMass().In(units.GramPerMole))
	c.Phosphorus = of(gram(water.Phosphate) * phosphorusOfPhosphate)
	c.Lactate, c.Acetate, c.Citrate, c.Malate = of(gram(water.Lactate)), of(gram(water.Acetate)), of(gram(water.Citrate)), of(gram(water.Malate))
	c.Tartrate, c.Succinate, c.Gluconate, c.Glutamate = of(gram(water.Tartrate)), of(gram(water.Succinate)), of(gram(water.Gluconate)), of(gram(water.Glutamate))
	sodium, chloride := gram(water.Sodium), 0.0
	// The charge that no ion names counts as sodium, or as chloride.
	alk := (p.Alkalinity().In(units.MilligramPerLitreCaCO3) - base.Alkalinity().In(units.MilligramPerLitreCaCO3)) / caCO3PerMilliequivalent * litres / 1000
	if rest := alk - charge; rest > 0 {
		sodium += rest / 1000 * water.Sodium.MolarMass().In(units.GramPerMole)
	} else {
		chloride = -rest / 1000 * water.Chloride.MolarMass().In(units.GramPerMole)
	}
	added += chloride // protons weigh nothing to speak of
	c.Sodium, c.Chloride = of(sodium), of(chloride)
	c.AminoNitrogen = of(got.Amino.In(units.GramPerLitre) * litres / 1000)
	juice, part := m.ofJuice()
	b.amino = part * 1000 * c.AminoNitrogen.In(units.Fraction)
	b.nitrogen = b.amino + part*1000*c.AmmoniumNitrogen.In(units.Fraction)
	// They are part of the solids that yeast leaves: of the Brix, and of the gravity.
	amino := c.AminoNitrogen.In(units.Fraction) * alanine / chemistry.N
	c.UnfermentedSolids = of(math.Max(0, c.UnfermentedSolids.In(units.Fraction)-added-amino))
	c.OfMalt = units.Share{}
	var err error
	b.material, err = material.ByLabel(juice.Name()+", as it comes", c)
	if err == nil && part < 1 {
		b.material, err = m.fruit.with(b.material)
	}
	return err
}

const (
	alanine                 = 3*chemistry.C + 7*chemistry.H + chemistry.N + 2*chemistry.O
	phosphorusOfPhosphate   = chemistry.P / (chemistry.P + 4*chemistry.O)
	caCO3PerMilliequivalent = (chemistry.Ca + chemistry.C + 3*chemistry.O) / 2 // mg
)
