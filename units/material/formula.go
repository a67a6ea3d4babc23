package material

import (
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
)

// The gain in mass when a sugar takes up water and falls apart into hexoses.
const (
	gainOfDi  = 2 * chemistry.Hexose / chemistry.Sucrose // 1.0526
	gainOfTri = 3 * chemistry.Hexose / chemistry.Triose  // 1.0714
)

// an ion is a part of a salt's formula.
type ion struct {
	formula string // whose mass counts: of phosphate that of P
	charge  int    // in the form from which alkalinity counts: H2PO4- for phosphate
	share   func(*Composition) *units.Share
}

var (
	calcium   = ion{"Ca", 2, func(c *Composition) *units.Share { return &c.Calcium }}
	magnesium = ion{"Mg", 2, func(c *Composition) *units.Share { return &c.Magnesium }}
	sodium    = ion{"Na", 1, func(c *Composition) *units.Share { return &c.Sodium }}
	potassium = ion{"K", 1, func(c *Composition) *units.Share { return &c.Potassium }}
	zinc      = ion{"Zn", 2, func(c *Composition) *units.Share { return &c.Zinc }}
	ammonium  = ion{"N", 1, func(c *Composition) *units.Share { return &c.AmmoniumNitrogen }}

	chloride  = ion{"Cl", -1, func(c *Composition) *units.Share { return &c.Chloride }}
	sulfate   = ion{"SO4", -2, func(c *Composition) *units.Share { return &c.Sulfate }}
	lactate   = ion{"C3H5O3", -1, func(c *Composition) *units.Share { return &c.Lactate }}
	citrate   = ion{"C6H5O7", -3, func(c *Composition) *units.Share { return &c.Citrate }}
	phosphate = ion{"P", -1, func(c *Composition) *units.Share { return &c.Phosphorus }}
	sulfite   = ion{"SO2", -1, func(c *Composition) *units.Share { return &c.SulfurDioxide }}

	// What alkalinity is made of: acid takes it away.
	bicarbonate = ion{"HCO3", 0, func(c *Composition) *units.Share { return &c.Bicarbonate }}
	carbonate   = ion{"CO3", 0, func(c *Composition) *units.Share { return &c.Carbonate }}
	hydroxide   = ion{"OH", 0, func(c *Composition) *units.Share { return &c.Hydroxide }}
)

// count is how often an ion stands in a formula.
type count struct {
	ion   ion
	times int
}

// compose returns what a gram of a formula brings. Its alkalinity is the charge that the
// other ions leave over: a salt is neutral.
func compose(mass float64, crystalWater int, parts []count) (c Composition) {
	charge := 0
	for _, p := range parts {
		*p.ion.share(&c) = share(float64(p.times) * chemistry.MustMass(p.ion.formula) / mass)
		charge += p.times * p.ion.charge
	}
	c.CrystalWater = share(float64(crystalWater) * chemistry.Water / mass)
	c.Alkalinity = share(float64(charge) * (chemistry.O + chemistry.H) / mass)
	return c
}
