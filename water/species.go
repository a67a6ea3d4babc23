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

	// The rest has no name of its own: AllSpecies has them.
	caPO4
	caHPO4
	caH2PO4
	mgPO4
	mgHPO4
	mgH2PO4
	naHPO4
	kHPO4
	lactateFree
	lacticH
	acetateFree
	aceticH
	citrateFree
	citricH
	citricH2
	citricH3
	malateFree
	malicH
	malicH2
	tartrateFree
	tartaricH
	tartaricH2
	succinateFree
	succinicH
	succinicH2
	sulfiteFree
	bisulfite
	sulfurousH2
	sorbateFree
	sorbicH
	caCitrate
	caHCitrate
	caH2Citrate
	mgCitrate
	mgHCitrate
	mgH2Citrate
	naCitrate
	naHCitrate
	kCitrate
	caTartrate
	caHTartrate
	mgTartrate
	mgHTartrate
	naTartrate
	naHTartrate
	kTartrate
	caAcetate
	mgAcetate
	caSuccinate
	caHSuccinate
	mgSuccinate
	mgHSuccinate
	caLactate
	speciesCount
)

// String returns the formula with its charge, "CaHCO3+".
func (s Species) String() string {
	if s < 0 || s >= speciesCount {
		return "unknown species"
	}
	return speciesTable[s].formula
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

// species returns the concentration of a species, in mol/kg.
func (s *solution) species(sp Species) float64 {
	if sp < 0 || sp >= speciesCount {
		return 0
	}
	switch r := &speciesTable[sp]; {
	case sp == Hydrogen:
		return s.hydrogen
	case sp == HydroxideFree:
		return s.oh
	default:
		return s.of(sp) * s.free[r.metal] * s.free[r.anion]
	}
}

// of returns a species for each of its free parts, at the pH.
func (s *solution) of(sp Species) float64 {
	if plan.made[sp] {
		return s.std[sp] * s.power[plan.facts[sp].protons]
	}
	return 1
}
