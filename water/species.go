package water

import (
	"strconv"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// Species is one dissolved form, read by its formula: [ParseSpecies]. The zero value is H+.
type Species int

// The forms of carbonic acid have constants; all species are in [AllSpecies].
const (
	hydrogen Species = iota
	hydroxideFree
	CarbonDioxide
	BicarbonateFree
	CarbonateFree
	calciumFree
	magnesiumFree
	sodiumFree
	potassiumFree
	sulfateFree
	bisulfate
	calciumBicarbonate
	calciumCarbonatePair
	calciumSulfatePair
	calciumHydroxidePair
	calciumBisulfate
	magnesiumBicarbonate
	magnesiumCarbonatePair
	magnesiumSulfatePair
	magnesiumHydroxidePair
	sodiumBicarbonatePair
	sodiumCarbonatePair
	sodiumSulfatePair
	potassiumSulfatePair
	ammoniumFree
	ammonia
	ammoniumSulfatePair
	phosphateFree
	hydrogenPhosphate
	dihydrogenPhosphate
	phosphoricAcidFree
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
	gluconateFree
	gluconicH
	glutamateFree
	glutamicH
	glutamicH2
	glutamicH3
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
	caGluconate
	caGlutamate
	caHGlutamate
	mgGlutamate
	speciesCount
)

// String returns the formula with its charge, "CaHCO3+".
func (s Species) String() string {
	if s < 0 || s >= speciesCount {
		return "unknown species"
	}
	return speciesTable[s].formula
}

// ParseSpecies reads the formula of a species as [Species.String] prints it: "Ca+2",
// "CaHCO3+", "H(lactate)". The error is a [*units.NameError].
func ParseSpecies(formula string) (Species, error) {
	return parseSpecies("water.ParseSpecies", formula)
}

func parseSpecies(fn, formula string) (Species, error) {
	for s := range speciesTable {
		if speciesTable[s].formula == formula {
			return Species(s), nil
		}
	}
	return 0, &units.NameError{Func: fn, What: "species", Name: formula}
}

// MarshalText is [Species.String]. The error is a [*units.NameError] for a species that
// is not in the table.
func (s Species) MarshalText() ([]byte, error) {
	if s < 0 || s >= speciesCount {
		return nil, &units.NameError{Func: "water.Species.MarshalText", What: "species", Name: strconv.Itoa(int(s))}
	}
	return []byte(speciesTable[s].formula), nil
}

// UnmarshalText reads a species as [ParseSpecies] does.
func (s *Species) UnmarshalText(text []byte) error {
	v, err := parseSpecies("water.Species.UnmarshalText", string(text))
	if err == nil {
		*s = v
	}
	return err
}

// AllSpecies returns every species in order.
func AllSpecies() []Species { return upTo(speciesCount) }

// Of returns the concentration of a species. A species that is not in the
// table has none.
func (e Equilibrium) Of(sp Species) units.MolarConcentration {
	return units.MillimolePerLitre.Of(checked.Number(e.s.species(sp) / molal))
}

// species returns the concentration of a species, in mol/kg.
func (s *solution) species(sp Species) float64 {
	if sp < 0 || sp >= speciesCount {
		return 0
	}
	switch r := &speciesTable[sp]; {
	case sp == hydrogen:
		return s.hydrogen
	case sp == hydroxideFree:
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
