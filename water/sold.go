package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Sold is an acid as it is sold: a share of pure acid by mass, the rest water, and a
// density at 20 to 25 °C.
type Sold struct {
	acid    Acid
	share   float64 // of 1
	density float64 // kg/m³; 0 for a powder
	note    string
}

// NewSold returns an acid of that share by mass and density; a powder has no density
// (zero) and is dosed by mass. The error is a [*units.RangeError]: an unknown acid, a
// share not above 0 %, a density outside 900 to 2000 kg/m³.
func NewSold(a Acid, share units.Share, density units.Density) (Sold, error) {
	const fn = "water.NewSold"
	if err := a.known(fn); err != nil {
		return Sold{}, err
	}
	w := share.In(units.Percent)
	if err := limit.Check(fn, "share of acid", w, "%", 0.01, 100, "an acid as sold"); err != nil {
		return Sold{}, err
	}
	d := density.In(units.KilogramPerCubicMetre)
	if d != 0 {
		if err := limit.Check(fn, "density", d, "kg/m³", 900, 2000, "an acid as sold"); err != nil {
			return Sold{}, err
		}
	}
	return Sold{acid: a, share: w / 100, density: d}, nil
}

// SoldAcids returns the strengths of the trade with their densities.
//
//   - Source: phosphoric 10, 30, 50, 75, 85 % at 25 °C, handbook values in the ECHA
//     registration dossier (middles of the ranges printed, 1.69 for 85 %); lactic 88 %,
//     British Pharmacopoeia range 1.20 to 1.21; lactic 80 %, hydrochloric and sulfuric:
//     recalled from memory (CRC Handbook, 20 °C).
//   - Uncertainty: 1 % in density; food grade lactic "80 %" may hold 76 to 84 %
//     (Directive 2008/84/EC), and part of it as lactoyllactic acid that acts late.
func SoldAcids() []Sold {
	const lactoyl = "part of it is lactoyllactic acid, which acts only after hours"
	return []Sold{
		{PhosphoricAcid, 0.10, 1051.7, ""}, {PhosphoricAcid, 0.30, 1179.4, ""}, {PhosphoricAcid, 0.50, 1335, ""},
		{PhosphoricAcid, 0.75, 1575, ""}, {PhosphoricAcid, 0.85, 1690, ""},
		{LacticAcid, 0.80, 1190, lactoyl}, {LacticAcid, 0.88, 1206, lactoyl},
		{HydrochloricAcid, 0.10, 1047.4, ""}, {HydrochloricAcid, 0.37, 1183.7, ""},
		{SulfuricAcid, 0.10, 1066.1, ""}, {SulfuricAcid, 0.96, 1835.5, ""},
		{CitricAcid, 1, 0, "anhydrous; the monohydrate holds 91.4 %"}, {CitricAcid, 0.914271, 0, "monohydrate"},
		{MalicAcid, 1, 0, ""}, {TartaricAcid, 1, 0, ""},
	}
}

// Acid returns which acid it is.
func (s Sold) Acid() Acid { return s.acid }

// Share returns the share of pure acid by mass.
func (s Sold) Share() units.Share { return units.Fraction.Of(checked.Number(s.share)) }

// Density returns the density, zero for a powder.
func (s Sold) Density() units.Density {
	return units.KilogramPerCubicMetre.Of(checked.Number(s.density))
}

// Note says what to mind of this grade, if anything.
func (s Sold) Note() string { return s.note }

// Molarity returns the amount of acid in a litre of it, zero for a powder.
func (s Sold) Molarity() units.MolarConcentration {
	return units.MolePerLitre.Of(checked.Number(s.density * s.share / s.acid.MolarMass()))
}

// Mass returns the mass of it that holds an amount of pure acid.
func (s Sold) Mass(n units.Amount) units.Mass {
	if s.share == 0 {
		return units.Mass{}
	}
	return units.Gram.Of(checked.Number(n.In(units.Mole) * s.acid.MolarMass() / s.share))
}

// Volume returns the volume of it that holds an amount of pure acid, zero for a
// powder.
func (s Sold) Volume(n units.Amount) units.Volume {
	if s.density == 0 {
		return units.Volume{}
	}
	return units.Millilitre.Of(checked.Number(s.Mass(n).In(units.Kilogram) / s.density * 1e6))
}
