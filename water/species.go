package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Species is one dissolved form.
type Species int

// Species of the carbonate and mineral system.
const (
	Hydrogen Species = iota
	HydroxideFree
	CarbonDioxide
	BicarbonateFree
	CarbonateFree
	CalciumFree
	MagnesiumFree
	SodiumFree
	PotassiumFree
	SulfateFree
	Bisulfate
	CalciumBicarbonate
	CalciumCarbonatePair
	CalciumSulfatePair
	CalciumHydroxidePair
	CalciumBisulfate
	MagnesiumBicarbonate
	MagnesiumCarbonatePair
	MagnesiumSulfatePair
	MagnesiumHydroxidePair
	SodiumBicarbonatePair
	SodiumCarbonatePair
	SodiumSulfatePair
	PotassiumSulfatePair
	AmmoniumFree
	Ammonia
	AmmoniumSulfatePair
	PhosphateFree
	HydrogenPhosphate
	DihydrogenPhosphate
	PhosphoricAcidFree
	speciesCount
)

var speciesNames = [speciesCount]string{"H+", "OH-", "CO2", "HCO3-", "CO3-2", "Ca+2", "Mg+2", "Na+", "K+", "SO4-2",
	"HSO4-", "CaHCO3+", "CaCO3", "CaSO4", "CaOH+", "CaHSO4+", "MgHCO3+", "MgCO3", "MgSO4", "MgOH+", "NaHCO3", "NaCO3-",
	"NaSO4-", "KSO4-", "NH4+", "NH3", "NH4SO4-", "PO4-3", "HPO4-2", "H2PO4-", "H3PO4"}

// String returns the formula with its charge, "CaHCO3+".
func (s Species) String() string {
	if s < 0 || s >= speciesCount {
		return "unknown species"
	}
	return speciesNames[s]
}

// AllSpecies returns every species in order.
func AllSpecies() []Species {
	all := make([]Species, speciesCount)
	for i := range all {
		all[i] = Species(i)
	}
	return all
}

// Of returns the concentration of a species. A species that is none of the
// constants has none.
func (e Equilibrium) Of(sp Species) units.MolarConcentration {
	return units.MillimolePerLitre.Of(checked.Number(e.s.species(sp) / molal))
}

func (s *solution) species(sp Species) float64 {
	c := &s.c
	switch sp {
	case Hydrogen:
		return c.h
	case HydroxideFree:
		return c.oh
	case CarbonDioxide:
		return s.co3 * c.co2
	case BicarbonateFree:
		return s.co3 * c.hco3
	case CarbonateFree:
		return s.co3
	case CalciumFree:
		return s.fca
	case MagnesiumFree:
		return s.fmg
	case SodiumFree:
		return s.fna
	case PotassiumFree:
		return s.fk
	case SulfateFree:
		return s.fso4
	case Bisulfate:
		return s.fso4 * c.hso4
	case CalciumBicarbonate:
		return s.co3 * s.fca * c.caHCO3
	case CalciumCarbonatePair:
		return s.co3 * s.fca * c.caCO3
	case CalciumSulfatePair:
		return s.fso4 * s.fca * c.caSO4
	case CalciumHydroxidePair:
		return s.fca * c.caOH
	case CalciumBisulfate:
		return s.fso4 * s.fca * c.caHSO4
	case MagnesiumBicarbonate:
		return s.co3 * s.fmg * c.mgHCO3
	case MagnesiumCarbonatePair:
		return s.co3 * s.fmg * c.mgCO3
	case MagnesiumSulfatePair:
		return s.fso4 * s.fmg * c.mgSO4
	case MagnesiumHydroxidePair:
		return s.fmg * c.mgOH
	}
	return s.moreSpecies(sp)
}

func (s *solution) moreSpecies(sp Species) float64 {
	c := &s.c
	switch sp {
	case SodiumBicarbonatePair:
		return s.co3 * s.fna * c.naHCO3
	case SodiumCarbonatePair:
		return s.co3 * s.fna * c.naCO3
	case SodiumSulfatePair:
		return s.fso4 * s.fna * c.naSO4
	case PotassiumSulfatePair:
		return s.fso4 * s.fk * c.kSO4
	case AmmoniumFree:
		return s.fnh4
	case Ammonia:
		return s.fnh4 * c.nh3
	case AmmoniumSulfatePair:
		return s.fnh4 * s.fso4 * c.nh4SO4
	case PhosphateFree:
		return s.fpo4
	case HydrogenPhosphate:
		return s.fpo4 * c.hp[0]
	case DihydrogenPhosphate:
		return s.fpo4 * c.hp[1]
	case PhosphoricAcidFree:
		return s.fpo4 * c.hp[2]
	}
	return 0
}
