package sugar

import (
	"math"
	"slices"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
)

// Fermentable is something that yeast makes ethanol from, as bought: so much water,
// so much sugar of each kind, and solids that yeast leaves.
//
// The zero Fermentable is pure water; it brings no sugar.
type Fermentable struct {
	name string

	// Mass shares of the good as weighed. The rest is water.
	glucose, fructose, di, tri float64 // sugars that yeast takes up; di and tri by size
	rest                       float64 // other solids
	malt                       float64 // the part of those sugars that ferments with the yield of wort
	crystal                    float64 // the part of the water that is bound in crystals

	spread   float64 // relative standard uncertainty of the sugar
	evidence evidence.Evidence
	cautions caution.List
}

// sugar is the mass share of the sugars that yeast takes up.
func (f Fermentable) sugar() float64 { return f.glucose + f.fructose + f.di + f.tri }

// asHexose is the same after inversion.
func (f Fermentable) asHexose() float64 {
	return f.glucose + f.fructose + f.di*formula.GainOfDi + f.tri*formula.GainOfTri
}

// Name returns the trade name.
func (f Fermentable) Name() string { return f.name }

// String is [Fermentable.Name].
func (f Fermentable) String() string { return f.name }

// Solids returns the mass share that is not water, crystal water counted as water.
func (f Fermentable) Solids() units.Share { return amount.Share(f.sugar() + f.rest) }

// Sugar returns the mass share that yeast takes up.
func (f Fermentable) Sugar() units.Share { return amount.Share(f.sugar()) }

// MostCO2 returns the mass share that leaves as CO2 if every hexose becomes two ethanol, as
// no yeast quite manages: 51.4 % of sucrose.
//
//   - Source: C6H12O6 → 2 C2H5OH + 2 CO2 (Gay-Lussac) with CIAAW atomic weights 2021.
func (f Fermentable) MostCO2() units.Share {
	return amount.Share(f.asHexose() * (1 - formula.EthanolOfHexose))
}

// CrystalWater returns the mass share of water bound in crystals: 9.09 % of dextrose
// monohydrate.
func (f Fermentable) CrystalWater() units.Share { return amount.Share(f.crystal) }

// Fermentability returns the share of the solids that yeast takes up.
func (f Fermentable) Fermentability() units.Share {
	sugar := f.sugar()
	if sugar == 0 {
		return units.Share{}
	}
	return amount.Share(sugar / (sugar + f.rest))
}

// InversionGain returns how much the fermentable sugar gains in mass by taking up
// water when it is inverted, as a share of itself: 5.26 % for sucrose, 0 for dextrose.
//
//   - Source: molar masses from CIAAW atomic weights 2021, 18.015/342.297.
func (f Fermentable) InversionGain() units.Share {
	sugar := f.sugar()
	if sugar == 0 {
		return units.Share{}
	}
	return amount.Share(f.asHexose()/sugar - 1)
}

// Evidence says where the composition comes from.
func (f Fermentable) Evidence() evidence.Evidence { return f.evidence }

// Spread returns the relative standard uncertainty of its fermentable sugar, as a
// share.
func (f Fermentable) Spread() units.Share { return amount.Share(f.spread) }

// Cautions returns what to know before using it.
func (f Fermentable) Cautions() caution.List { return slices.Clone(f.cautions) }

// Parts is what a mass of a fermentable is made of.
type Parts struct {
	Water     units.Mass // with the crystal water
	Sugar     units.Mass // that yeast takes up, as weighed
	Residue   units.Mass // other solids
	AsHexose  units.Mass // the sugar after inversion
	GayLussac units.Mass // ethanol from it if every hexose became two ethanol
	CO2       units.Mass // with that ethanol
	Inversion units.Mass // water taken up by inversion, from the liquid
	Solids    units.Mass // Sugar and Residue
}

// Of returns what a mass of f is made of.
//
//   - Source: composition of f; C6H12O6 → 2 C2H5OH + 2 CO2 (Gay-Lussac) with CIAAW
//     atomic weights 2021.
//   - Range: 0 to 1e9 kg; beyond it the error is a [*units.RangeError].
func (f Fermentable) Of(m units.Mass) (Parts, error) {
	kg := m.In(units.Kilogram)
	if err := limit.Check("sugar.Fermentable.Of", "mass", kg, "kg", 0, amount.MostMass/1000, "a mass weighed"); err != nil {
		return Parts{}, err
	}
	sugar, asHexose := f.sugar()*kg, f.asHexose()*kg
	return Parts{
		Water: amount.Kilograms(kg - sugar - f.rest*kg), Sugar: amount.Kilograms(sugar), Residue: amount.Kilograms(f.rest * kg),
		Solids: amount.Kilograms(sugar + f.rest*kg), AsHexose: amount.Kilograms(asHexose), Inversion: amount.Kilograms(asHexose - sugar),
		GayLussac: amount.Kilograms(asHexose * formula.EthanolOfHexose), CO2: amount.Kilograms(asHexose * (1 - formula.EthanolOfHexose)),
	}, nil
}

// Portion is a fermentable with its share of a mix.
type Portion struct {
	Fermentable Fermentable
	Share       units.Share // of the mass weighed
}

// Mix returns fermentables at fixed shares of the mass weighed as one fermentable.
// The shares must add up to 100 % within 1e-6 %.
//
// Errors: a [*units.RangeError] for no portions, a negative share or another sum.
func Mix(portions ...Portion) (Fermentable, error) {
	const fn, source = "sugar.Mix", "shares of a whole"
	var out Fermentable
	var sum, variance float64
	var names []string
	for _, p := range portions {
		f, w := p.Fermentable, p.Share.In(units.Percent)/100
		if err := limit.Check(fn, "share", p.Share.In(units.Percent), "%", 0, 100, source); err != nil {
			return Fermentable{}, err
		}
		sum += w
		out.glucose += w * f.glucose
		out.fructose += w * f.fructose
		out.di += w * f.di
		out.tri += w * f.tri
		out.rest += w * f.rest
		out.malt += w * f.malt
		out.crystal += w * f.crystal
		u := w * f.spread * f.sugar()
		variance += u * u
		names = append(names, f.name)
		out.cautions = out.cautions.With(f.cautions...)
		if out.evidence == (evidence.Evidence{}) || f.evidence.Grade < out.evidence.Grade {
			out.evidence = f.evidence // the weakest
		}
	}
	if err := limit.Check(fn, "sum of the shares", 100*sum, "%", 100-1e-6, 100+1e-6, source); err != nil {
		return Fermentable{}, err
	}
	if sugar := out.sugar(); sugar > 0 {
		out.spread = math.Sqrt(variance) / sugar
	}
	out.name = strings.Join(names, " and ")
	return out, nil
}
