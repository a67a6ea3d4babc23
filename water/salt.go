package water

import (
	"math"
	"strconv"

	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Salts returns the salts of brewing water, in the order of their use: sulfates and
// chlorides, what raises alkalinity, then what else brings ions.
//
// Every function here that takes a salt takes any [material.Material] whose ions and
// alkalinity balance in charge, one's own by its label too; an error refuses what does not.
func Salts() []material.Material {
	return shelf.Materials(
		"gypsum", "calcium chloride dihydrate", "calcium chloride anhydrous", "Epsom salt", "magnesium chloride hexahydrate", "table salt", "baking soda",
		"potassium bicarbonate", "potassium chloride", "chalk", "slaked lime", "calcium sulfate anhydrous", "sodium sulfate anhydrous", "potassium sulfate",
		"sodium carbonate anhydrous", "potassium carbonate", "sodium hydroxide", "potassium hydroxide", "magnesium carbonate", "calcium lactate pentahydrate",
		"potassium dihydrogen phosphate", "dipotassium phosphate", "diammonium phosphate", "monoammonium phosphate", "ammonium sulfate", "ammonium chloride",
		"zinc sulfate heptahydrate", "zinc sulfate monohydrate",
	)
}

// yield is what a gram of a salt brings, as water counts it.
type yield struct {
	parts      []part            // that are not alkalinity
	milligrams [ionCount]float64 // of each ion
	alkalinity float64           // mEq
	carbon     float64           // mmol of inorganic carbon
	sound      bool              // it is a salt: it brings ions, and they balance
}

type part struct {
	ion        Ion
	milligrams float64
}

const mmolPerMol = 1000

// brought says where the ions of a composition stand, and the mass of what counts of each.
var brought = [...]struct {
	ion   Ion
	mass  float64 // g/mol of what the share is the mass of
	share func(*material.Composition) *units.Share
}{
	{Calcium, chemistry.Ca, func(c *material.Composition) *units.Share { return &c.Calcium }},
	{Magnesium, chemistry.Mg, func(c *material.Composition) *units.Share { return &c.Magnesium }},
	{Sodium, chemistry.Na, func(c *material.Composition) *units.Share { return &c.Sodium }},
	{Potassium, chemistry.K, func(c *material.Composition) *units.Share { return &c.Potassium }},
	{Ammonium, chemistry.N, func(c *material.Composition) *units.Share { return &c.AmmoniumNitrogen }},
	{Zinc, chemistry.Zn, func(c *material.Composition) *units.Share { return &c.Zinc }},
	{Chloride, chemistry.Cl, func(c *material.Composition) *units.Share { return &c.Chloride }},
	{Sulfate, ionTable[Sulfate].mass, func(c *material.Composition) *units.Share { return &c.Sulfate }},
	{Bicarbonate, ionTable[Bicarbonate].mass, func(c *material.Composition) *units.Share { return &c.Bicarbonate }},
	{Carbonate, ionTable[Carbonate].mass, func(c *material.Composition) *units.Share { return &c.Carbonate }},
	{Hydroxide, ionTable[Hydroxide].mass, func(c *material.Composition) *units.Share { return &c.Hydroxide }},
	{Phosphate, chemistry.P, func(c *material.Composition) *units.Share { return &c.Phosphorus }},
	{Lactate, ionTable[Lactate].mass, func(c *material.Composition) *units.Share { return &c.Lactate }},
	{Citrate, ionTable[Citrate].mass, func(c *material.Composition) *units.Share { return &c.Citrate }},
	{Malate, ionTable[Malate].mass, func(c *material.Composition) *units.Share { return &c.Malate }},
	{Tartrate, ionTable[Tartrate].mass, func(c *material.Composition) *units.Share { return &c.Tartrate }},
	{Acetate, ionTable[Acetate].mass, func(c *material.Composition) *units.Share { return &c.Acetate }},
	{Sulfite, chemistry.S + 2*chemistry.O, func(c *material.Composition) *units.Share { return &c.SulfurDioxide }},
}

// yieldOf works out what a gram of a material brings. It is a salt if its ions balance
// within a hundredth, which is as good as labels are printed.
func yieldOf(m material.Material) *yield {
	c := m.Composition()
	y := &yield{alkalinity: c.Alkalinity.Minus(c.Acidity).In(units.Fraction) * mmolPerMol / ionTable[Hydroxide].mass}
	left, size := -y.alkalinity, math.Abs(y.alkalinity)
	for _, b := range brought {
		mmol := b.share(&c).In(units.Fraction) * mmolPerMol / b.mass
		if mmol == 0 {
			continue
		}
		y.milligrams[b.ion] = mmol * b.ion.facts().mass
		switch {
		case b.ion == Bicarbonate || b.ion == Carbonate:
			y.carbon += mmol
		case !isAlkalinity(b.ion):
			charge := mmol * float64(referenceCharge(b.ion))
			left, size = left+charge, size+math.Abs(charge)
			y.parts = append(y.parts, part{b.ion, y.milligrams[b.ion]})
		}
	}
	y.sound = size > 0 && math.Abs(left) <= mostOff*size && c.Sugar().IsZero() && c.AminoNitrogen.IsZero() && c.UreaNitrogen.IsZero()
	return y
}

// isAlkalinity reports whether an ion stands in the alkalinity of a profile.
func isAlkalinity(i Ion) bool { return i == Bicarbonate || i == Carbonate || i == Hydroxide }

const mostOff = 0.01 // of the charges, that may be out of balance

// yields are those of what is known by name, each worked out once.
var yields = func() map[material.Material]*yield {
	all := make(map[material.Material]*yield)
	for _, m := range material.All() {
		if y := yieldOf(m); y.sound {
			all[m] = y
		}
	}
	return all
}()

// brings returns what a gram of a salt brings, for the function fn; another material is a
// [*units.StateError].
func brings(fn string, m material.Material) (*yield, error) {
	y, ok := yields[m]
	if !ok {
		y = yieldOf(m)
	}
	if !y.sound {
		return nil, noSalt(fn, m)
	}
	return y, nil
}

func noSalt(fn string, m material.Material) error {
	return &units.StateError{Func: fn, What: "material", Why: strconv.Quote(m.Name()) + " is no salt: it must bring ions that balance in charge, and " +
		"nothing that ferments"}
}

// of returns the mg of an ion that a gram brings, the alkalinity as bicarbonate.
func (y *yield) of(i Ion) float64 {
	if i == Bicarbonate {
		return y.alkalinity * Bicarbonate.facts().mass
	}
	return y.milligrams[i]
}
