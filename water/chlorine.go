package water

import (
	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Residual is the disinfectant in a tap water. It comes from [FreeChlorine] or
// [Monochloramine], which make the caller say what the figure counts.
type Residual struct {
	chloramine bool
	mmol       float64 // mmol/L
}

// ChlorineAs says what a content of chlorine is the mass of.
type ChlorineAs int

// Ways to state a content of chlorine.
const (
	AsCl2    ChlorineAs = iota // as Cl2, as test kits and regulations print it
	AsItself                   // as HOCl or NH2Cl
)

var (
	massCl2 = mustMass("Cl2")
	massHCl = mustMass("HOCl")
	massNCl = mustMass("NH2Cl")
)

// FreeChlorine returns a residual of free chlorine (HOCl and OCl-).
func FreeChlorine(c units.MassConcentration, as ChlorineAs) Residual {
	if as == AsItself {
		return Residual{false, c.In(mgPerLitre) / massHCl}
	}
	return Residual{false, c.In(mgPerLitre) / massCl2}
}

// Monochloramine returns a residual of chloramine. Boiling and standing do not drive
// it off.
func Monochloramine(c units.MassConcentration, as ChlorineAs) Residual {
	if as == AsItself {
		return Residual{true, c.In(mgPerLitre) / massNCl}
	}
	return Residual{true, c.In(mgPerLitre) / massCl2}
}

// AsCl2 returns the residual as mass of Cl2.
func (r Residual) AsCl2() units.MassConcentration {
	return units.MilligramPerLitre.Of(checked.Number(r.mmol * massCl2))
}

// Dechlorinator is what takes chlorine out by reaction.
type Dechlorinator int

// Agents. A tablet of metabisulfite weighs 0.44 to 0.7 g by maker: weigh it.
const (
	SodiumMetabisulfite Dechlorinator = iota
	PotassiumMetabisulfite
	SodiumBisulfite
	SodiumSulfite
	AscorbicAcid
	dechlorinatorCount
)

type dechlorinatorFacts struct {
	name, formula string
	perMole       float64 // molecules of chlorine that one takes
	metal         Ion
	metals        float64 // for each chlorine
	sulfate       bool
	protons       float64 // acid made for each HOCl; chloramine one less
	mass          float64
}

var dechlorinatorTable = func() [dechlorinatorCount]dechlorinatorFacts {
	t := [dechlorinatorCount]dechlorinatorFacts{
		SodiumMetabisulfite:    {name: "sodium metabisulfite", formula: "Na2S2O5", perMole: 2, metal: Sodium, metals: 1, sulfate: true, protons: 2},
		PotassiumMetabisulfite: {name: "potassium metabisulfite", formula: "K2S2O5", perMole: 2, metal: Potassium, metals: 1, sulfate: true, protons: 2},
		SodiumBisulfite:        {name: "sodium bisulfite", formula: "NaHSO3", perMole: 1, metal: Sodium, metals: 1, sulfate: true, protons: 2},
		SodiumSulfite:          {name: "sodium sulfite anhydrous", formula: "Na2SO3", perMole: 1, metal: Sodium, metals: 2, sulfate: true, protons: 1},
		AscorbicAcid:           {name: "ascorbic acid", formula: "C6H8O6", perMole: 1, protons: 1},
	}
	for i := range t {
		t[i].mass = mustMass(t[i].formula)
	}
	return t
}()

// String returns the name of the agent.
func (d Dechlorinator) String() string {
	if d < 0 || d >= dechlorinatorCount {
		return "unknown agent"
	}
	return dechlorinatorTable[d].name
}

// Dechlorination is a dose against chlorine, with the water after it.
type Dechlorination struct {
	Agent    Dechlorinator
	Least    units.Mass // by stoichiometry
	Dose     units.Mass // with the tenth more that is usual in the field
	Water    Profile    // with the side ions of the least dose, pH of the closed water where it was known
	Cautions []string
}

// Dechlorinate returns the dose that takes a residual out of a volume of water.
//
// Errors are a [*units.RangeError]: an unknown agent, a volume that is not positive, a
// residual above 100 mg/L as Cl2.
//
//   - Source: HSO3- + HOCl = SO4-2 + Cl- + 2H+; HSO3- + NH2Cl + H2O = SO4-2 + Cl- +
//     NH4+ + H+; ascorbic acid to dehydroascorbic acid with Cl-. Field doses about a
//     tenth above: Disinfection of Pipelines and Storage Facilities Field Guide (AWWA),
//     table 7-2; that table's dose of ascorbic acid is the stoichiometric one.
func (p Profile) Dechlorinate(volume units.Volume, r Residual, agent Dechlorinator) (Dechlorination, error) {
	const fn = "water.Profile.Dechlorinate"
	if err := limit.Check(fn, "agent", float64(agent), "", 0, float64(dechlorinatorCount-1), "the agents of package water"); err != nil {
		return Dechlorination{}, err
	}
	l := volume.In(units.Litre)
	if err := checkVolume(fn, l); err != nil {
		return Dechlorination{}, err
	}
	if err := limit.Check(fn, "chlorine", r.mmol*massCl2, "mg/L as Cl2", 0, 100, "a drinking water"); err != nil {
		return Dechlorination{}, err
	}
	f := &dechlorinatorTable[agent]
	grams := r.mmol / f.perMole * f.mass * l / 1000
	out := p
	add := func(i Ion, n float64) { out.mg[i] += n * r.mmol * i.MolarMass() }
	add(Chloride, 1)
	protons := f.protons
	if f.sulfate {
		add(Sulfate, 1)
	}
	if f.metals > 0 {
		add(f.metal, f.metals)
	}
	if r.chloramine {
		add(Ammonium, 1)
		protons--
	}
	out.alk -= protons * r.mmol
	water, err := out.settled(fn, 0)
	if err != nil {
		return Dechlorination{}, err
	}
	return Dechlorination{
		Agent: agent, Least: units.Gram.Of(checked.Number(grams)), Dose: units.Gram.Of(checked.Number(grams * fieldExcess)),
		Water: water, Cautions: []string{
			"Sulfites set free SO2 in acid and can harm people with asthma: stir in the open, label what remains.",
			"Test with a kit for total chlorine afterwards; a carbon filter needs slow flow for chloramine, by its maker's rating.",
		},
	}, nil
}

const fieldExcess = 1.1
