package water

import (
	"cmp"
	"strconv"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/choice"
	"example.org/zymase/internal/limit"
	"example.org/zymase/internal/shelf"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/material"
)

// Residual is the disinfectant in a tap water. It comes from [FreeChlorine] or
// [Monochloramine], which make the caller say what the figure counts. One of an unknown
// [ChlorineAs] counts as none, and what takes it refuses it.
type Residual struct {
	chloramine bool
	mmol       float64    // mmol/L
	as         ChlorineAs // kept where it is unknown
}

// ChlorineAs says what a content of chlorine is the mass of.
type ChlorineAs int

// Ways to state a content of chlorine.
const (
	AsCl2    ChlorineAs = iota // as Cl2, as test kits and regulations print it
	AsItself                   // as HOCl or NH2Cl
)

var chlorineForms = choice.Of[ChlorineAs]("water.ChlorineAs", "form of chlorine", "Cl2", "itself")

// String returns "Cl2" or "itself".
func (c ChlorineAs) String() string { return chlorineForms.Text(c) }

// MarshalText is [ChlorineAs.String]; another value is refused with a [*units.NameError].
func (c ChlorineAs) MarshalText() ([]byte, error) { return chlorineForms.Marshal(c) }

// UnmarshalText reads "Cl2" or "itself"; the error is a [*units.NameError].
func (c *ChlorineAs) UnmarshalText(text []byte) error { return chlorineForms.Unmarshal(text, c) }

var (
	massCl2   = chemistry.MustMass("Cl2")
	massHOCl  = chemistry.MustMass("HOCl")
	massNH2Cl = chemistry.MustMass("NH2Cl")
)

// FreeChlorine returns a residual of free chlorine (HOCl and OCl-).
func FreeChlorine(c units.MassConcentration, as ChlorineAs) Residual {
	return residual(false, c, as, massHOCl)
}

// Monochloramine returns a residual of chloramine. Boiling and standing do not drive
// it off.
func Monochloramine(c units.MassConcentration, as ChlorineAs) Residual {
	return residual(true, c, as, massNH2Cl)
}

func residual(chloramine bool, c units.MassConcentration, as ChlorineAs, itself float64) Residual {
	r := Residual{chloramine: chloramine}
	switch as {
	case AsItself:
		r.mmol = c.In(mgPerLitre) / itself
	case AsCl2:
		r.mmol = c.In(mgPerLitre) / massCl2
	default:
		r.as = as
	}
	return r
}

// AsCl2 returns the residual as mass of Cl2.
func (r Residual) AsCl2() units.MassConcentration {
	return units.MilligramPerLitre.Of(checked.Number(r.mmol * massCl2))
}

// Dechlorinators returns what takes chlorine out by reaction: sulfites and ascorbic acid. A
// tablet of metabisulfite weighs 0.44 to 0.7 g by maker: weigh it.
func Dechlorinators() []material.Material {
	return shelf.Materials("sodium metabisulfite", "potassium metabisulfite", "sodium bisulfite", "sodium sulfite anhydrous", "ascorbic acid")
}

// takesChlorine returns the mmol of chlorine that a gram of an agent takes out, and the
// acid made for each: of a sulfite by its charge, SO3-2 one and HSO3- two.
func takesChlorine(agent material.Material) (mmol, protons float64) {
	if agent == shelf.Material("ascorbic acid") {
		return mmolPerMol / agent.MolarMass().In(units.GramPerMole), 1
	}
	y := yieldOf(agent)
	mmol = y.milligrams[Sulfite] / Sulfite.facts().mass
	return mmol, 2 - y.alkalinity/cmp.Or(mmol, 1)
}

// Dechlorination is a dose against chlorine, with the water after it.
type Dechlorination struct {
	Agent    material.Material
	Least    units.Mass // by stoichiometry
	Dose     units.Mass // with the tenth more that is usual in the field
	Water    Profile    // with the side ions of the least dose, pH of the closed water where it was known
	Cautions caution.List
}

// Dechlorinate returns the dose that takes a residual out of a volume of water.
//
// Errors are a [*units.RangeError]: a volume that is not positive, a residual above 100
// mg/L as Cl2; a [*units.StateError] for a material that takes no chlorine out, see
// [Dechlorinators].
//
//   - Source: HSO3- + HOCl = SO4-2 + Cl- + 2H+; HSO3- + NH2Cl + H2O = SO4-2 + Cl- +
//     NH4+ + H+; ascorbic acid to dehydroascorbic acid with Cl-. Field doses about a
//     tenth above: Disinfection of Pipelines and Storage Facilities Field Guide (AWWA),
//     table 7-2; that table's dose of ascorbic acid is the stoichiometric one.
func (p Profile) Dechlorinate(agent material.Material, r Residual, volume units.Volume) (Dechlorination, error) {
	const fn = "water.Profile.Dechlorinate"
	takes, protons := takesChlorine(agent)
	if takes == 0 {
		return Dechlorination{}, &units.StateError{Func: fn, What: "material",
			Why: strconv.Quote(agent.Name()) + " takes no chlorine out: take a sulfite or ascorbic acid"}
	}
	if err := chlorineForms.Check(fn, r.as); err != nil {
		return Dechlorination{}, err
	}
	l := volume.In(units.Litre)
	if err := checkVolume(fn, l); err != nil {
		return Dechlorination{}, err
	}
	if err := limit.Check(fn, "chlorine", r.mmol*massCl2, "mg/L as Cl2", 0, 100, "a drinking water"); err != nil {
		return Dechlorination{}, err
	}
	grams := r.mmol / takes * l
	out := p
	add := func(i Ion, n float64) { out.mg[i] += n * r.mmol * i.facts().mass }
	add(Chloride, 1)
	if y, err := brings(fn, agent); err == nil { // a sulfite: its metal, and sulfate of it
		add(Sulfate, 1)
		for _, part := range y.parts {
			if part.ion != Sulfite {
				out.mg[part.ion] += r.mmol / takes * part.milligrams
			}
		}
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
		Water: water, Cautions: caution.List{sulfurDioxide, testAfter},
	}, nil
}

const fieldExcess = 1.1
