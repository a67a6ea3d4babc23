package law

import (
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// SubstanceOf returns the substance whose limit a material falls under by what it brings: an ammonium
// phosphate or a blend with one, ammonium sulfate, a zinc salt, thiamine. Others are
// Unlisted; yeast hulls are not known by their composition, so they have to be named.
func SubstanceOf(m material.Material) Substance {
	c := m.Composition()
	switch ammonium := !c.AmmoniumNitrogen.IsZero(); {
	case ammonium && !c.Phosphorus.IsZero():
		return AmmoniumPhosphate
	case ammonium && !c.Sulfate.IsZero():
		return ammoniumSulfate
	case c.Thiamine.In(units.Percent) > mostlySo:
		return thiamine
	case c.Zinc.In(units.Percent) > aSalt:
		return zinc
	}
	return Unlisted
}

const (
	mostlySo = 50 // %
	aSalt    = 1  // % of zinc; yeast matter holds a hundredth of it
)
