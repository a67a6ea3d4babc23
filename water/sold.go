package water

import (
	"fmt"
	"math"
	"strconv"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// AsSold returns the acid as it is weighed or poured: a share of pure acid by mass, the rest
// water, and the density of a liquid; a powder has no density (zero). The error is a
// [*units.RangeError]: a share not from 0.01 to 100 %, a density outside 900 to 2000 kg/m³; a
// [*units.NameError] for an acid that is none of the constants.
func (a Acid) AsSold(share units.Share, density units.Density) (material.Material, error) {
	const fn, source = "water.Acid.AsSold", "an acid as sold"
	if err := a.known(fn); err != nil {
		return material.Material{}, err
	}
	percent := share.In(units.Percent)
	if err := limit.Check(fn, "share of acid", percent, "%", 0.01, 100, source); err != nil {
		return material.Material{}, err
	}
	name := a.Name()
	if percent < 100 {
		name = fmt.Sprintf("%s %.4g %%", name, percent)
	}
	m, err := material.ByLabel(name, a.brings(percent/100))
	if err != nil || density.IsZero() {
		return m, limit.Named(fn, err)
	}
	if err := limit.Check(fn, "density", density.In(units.KilogramPerCubicMetre), "kg/m³", 900, 2000, source); err != nil {
		return material.Material{}, err
	}
	m, err = m.WithDensity(density)
	return m, limit.Named(fn, err)
}

// brings is what a gram with a share of pure acid in it brings.
func (a Acid) brings(share float64) (c material.Composition) {
	f := a.facts()
	moles := share / f.mass
	for _, b := range brought {
		if b.ion == f.ion {
			*b.share(&c) = units.Fraction.Of(checked.Number(moles * b.mass))
		}
	}
	c.Acidity = units.Fraction.Of(checked.Number(moles * float64(f.protons) * ionTable[Hydroxide].mass))
	return c
}

// AcidOf returns which acid a material is as sold, and the share of pure acid in it, by what it
// brings. The error is a [*units.StateError] for a material that is none, or more than that.
func AcidOf(m material.Material) (Acid, units.Share, error) { return acidOf("water.AcidOf", m) }

func acidOf(fn string, m material.Material) (Acid, units.Share, error) {
	c := m.Composition()
	for a := range acidCount {
		share := c.Acidity.In(units.Fraction) / float64(a.facts().protons) / ionTable[Hydroxide].mass * a.MolarMass().In(units.GramPerMole)
		if sameParts(a.brings(share), c) && share > 0 {
			return a, units.Fraction.Of(checked.Number(share)), nil
		}
	}
	return 0, units.Share{}, &units.StateError{Func: fn, What: "material", Why: strconv.Quote(m.Name()) + " is no acid as sold: it must bring one acid, " +
		"as AsSold or SoldAcids make it"}
}

// sameParts reports whether two materials bring the same, but for rounding.
func sameParts(a, b material.Composition) bool {
	for _, of := range brought {
		x, y := of.share(&a).In(units.Percent), of.share(&b).In(units.Percent)
		if math.Abs(x-y) > sameShare {
			return false
		}
		*of.share(&a), *of.share(&b) = units.Share{}, units.Share{}
	}
	a.Acidity, b.Acidity = units.Share{}, units.Share{}
	return a == b
}

const sameShare = 1e-9 // %: parts that were computed

// Dose returns so much of an acid as sold that an amount of pure acid is in it; its volume is
// [material.Dose.Volume]. The error is a [*units.StateError] for a material that is not this
// acid; a [*units.RangeError] for an amount below zero.
func (a Acid) Dose(amount units.Amount, as material.Material) (material.Dose, error) {
	const fn = "water.Acid.Dose"
	is, share, err := acidOf(fn, as)
	if err != nil {
		return material.Dose{}, err
	}
	if is != a {
		return material.Dose{}, &units.StateError{Func: fn, What: "material", Why: "is " + is.Name() + ", not " + a.Name()}
	}
	moles := amount.In(units.Mole)
	if err := limit.Check(fn, "amount", moles, "mol", 0, math.MaxFloat64, "an amount of acid"); err != nil {
		return material.Dose{}, err
	}
	return as.Dose(units.Gram.Of(checked.Number(moles * a.MolarMass().In(units.GramPerMole) / share.In(units.Fraction)))), nil
}

// SoldAcids returns the strengths of the trade with their densities.
//
//   - Source: phosphoric 10, 30, 50, 75, 85 % at 25 °C, handbook values in the ECHA
//     registration dossier (middles of the ranges printed, 1.69 for 85 %); lactic 88 %,
//     British Pharmacopoeia range 1.20 to 1.21; lactic 80 %, hydrochloric and sulfuric:
//     recalled from memory (CRC Handbook, 20 °C).
//   - Uncertainty: 1 % in density; food grade lactic "80 %" may hold 76 to 84 %
//     (Directive 2008/84/EC), and part of it as lactoyllactic acid that acts late. Citric acid
//     is anhydrous; the monohydrate holds 91.4 %.
func SoldAcids() []material.Material {
	var all []material.Material
	for _, s := range [...]struct {
		acid             Acid
		percent, density float64
	}{
		{PhosphoricAcid, 10, 1051.7}, {PhosphoricAcid, 30, 1179.4}, {PhosphoricAcid, 50, 1335}, {PhosphoricAcid, 75, 1575}, {PhosphoricAcid, 85, 1690},
		{LacticAcid, 80, 1190}, {LacticAcid, 88, 1206}, {HydrochloricAcid, 10, 1047.4}, {HydrochloricAcid, 37, 1183.7},
		{SulfuricAcid, 10, 1066.1}, {SulfuricAcid, 96, 1835.5}, {CitricAcid, 100, 0}, {CitricAcid, 91.4271, 0}, {MalicAcid, 100, 0}, {TartaricAcid, 100, 0},
	} {
		density := units.KilogramPerCubicMetre.Of(checked.Number(s.density))
		m, err := s.acid.AsSold(units.Percent.Of(checked.Number(s.percent)), density)
		if err != nil { // not reached: a table
			continue
		}
		all = append(all, m)
	}
	return all
}
