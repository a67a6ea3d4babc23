package sugar

import (
	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
)

// Fermentable is a material as yeast sees it: so much sugar of each kind, solids that yeast
// leaves, and the rest water. Make it with [Of].
type Fermentable struct{ material.Material }

// Of returns a material as what ferments. One without sugar is as good as water to the yeast.
func Of(m material.Material) Fermentable { return Fermentable{m} }

// shares are mass shares of the material as weighed.
type shares struct {
	glucose, fructose, di, tri float64 // sugars that yeast takes up; di and tri by size
	rest                       float64 // other solids
	malt                       float64 // the part of those sugars that ferments with the yield of wort
	crystal                    float64 // the part of the water that is bound in crystals
}

func (f Fermentable) shares() shares {
	part := func(s units.Share) float64 { return s.In(units.Percent) / 100 }
	c := f.Composition()
	return shares{
		glucose: part(c.Glucose), fructose: part(c.Fructose), di: part(c.Disaccharides), tri: part(c.Trisaccharides),
		rest: part(c.UnfermentedSolids), malt: part(c.OfMalt), crystal: part(c.CrystalWater),
	}
}

// sugar is the mass share of the sugars that yeast takes up.
func (s shares) sugar() float64 { return s.glucose + s.fructose + s.di + s.tri }

// asHexose is the same after inversion.
func (s shares) asHexose() float64 {
	return s.glucose + s.fructose + s.di*formula.GainOfDi + s.tri*formula.GainOfTri
}

// Solids returns the mass share that is not water, crystal water counted as water.
func (f Fermentable) Solids() units.Share {
	s := f.shares()
	return amount.Share(s.sugar() + s.rest)
}

// Sugar returns the mass share that yeast takes up.
func (f Fermentable) Sugar() units.Share { return amount.Share(f.shares().sugar()) }

// MostCO2 returns the mass share that leaves as CO2 if every hexose becomes two ethanol, as
// no yeast quite manages: 51.4 % of sucrose.
//
//   - Source: C6H12O6 → 2 C2H5OH + 2 CO2 (Gay-Lussac) with CIAAW atomic weights 2021.
func (f Fermentable) MostCO2() units.Share {
	return amount.Share(f.shares().asHexose() * (1 - formula.EthanolOfHexose))
}

// CrystalWater returns the mass share of water bound in crystals: 9.09 % of dextrose
// monohydrate.
func (f Fermentable) CrystalWater() units.Share { return amount.Share(f.shares().crystal) }

// Fermentability returns the share of the solids that yeast takes up.
func (f Fermentable) Fermentability() units.Share {
	s := f.shares()
	sugar := s.sugar()
	if sugar == 0 {
		return units.Share{}
	}
	return amount.Share(sugar / (sugar + s.rest))
}

// InversionGain returns how much the fermentable sugar gains in mass by taking up
// water when it is inverted, as a share of itself: 5.26 % for sucrose, 0 for dextrose.
//
//   - Source: molar masses from CIAAW atomic weights 2021, 18.015/342.297.
func (f Fermentable) InversionGain() units.Share {
	s := f.shares()
	sugar := s.sugar()
	if sugar == 0 {
		return units.Share{}
	}
	return amount.Share(s.asHexose()/sugar - 1)
}

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
	s := f.shares()
	sugar, asHexose := s.sugar()*kg, s.asHexose()*kg
	return Parts{
		Water: amount.Kilograms(kg - sugar - s.rest*kg), Sugar: amount.Kilograms(sugar), Residue: amount.Kilograms(s.rest * kg),
		Solids: amount.Kilograms(sugar + s.rest*kg), AsHexose: amount.Kilograms(asHexose), Inversion: amount.Kilograms(asHexose - sugar),
		GayLussac: amount.Kilograms(asHexose * formula.EthanolOfHexose), CO2: amount.Kilograms(asHexose * (1 - formula.EthanolOfHexose)),
	}, nil
}
