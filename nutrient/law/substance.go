package law

import "example.org/zymase/internal/choice"

// Substance is what a legal limit speaks of, by its name in the lists of additions: [ParseSubstance]
// reads it. The zero value, Unlisted, has none in the texts that were read.
type Substance int

// The substances with limits; those that other packages name are exported.
const (
	Unlisted Substance = iota
	AmmoniumPhosphate
	ammoniumSulfate
	YeastCellWalls // walls and membranes, sold as yeast hulls or ghosts; an autolysate has no limit
	thiamine       // as hydrochloride
	zinc
	soyFlour
	calciumPantothenate
	citricAcid
	fumaricAcid
	copperSulfate // as copper added
	calciumCarbonate
	potassiumBitartrate
	dimethylDicarbonate
	lysozyme
	acacia
	SorbicAcid
	SulfurDioxide // total
	sucralose
	acesulfameK
	aspartame
	cyclamate
	saccharin
	neohesperidinDC
	neotame
	steviolGlycosides // as steviol
	advantame

	// Growth factors that US wine law lists since 2022; [Jurisdiction.Limits] gives their rows.
	biotin
	folicAcid
	inositol
	magnesiumSulfate
	niacin
	pyridoxine
)

var substances = choice.Of[Substance]("law.Substance", "substance with a limit",
	"no listed substance", "ammonium phosphate", "ammonium sulfate", "yeast cell walls",
	"thiamine hydrochloride", "zinc", "defatted soy flour", "calcium pantothenate", "citric acid", "fumaric acid",
	"copper sulfate as copper", "calcium carbonate", "potassium bitartrate", "dimethyl dicarbonate", "lysozyme", "acacia",
	"sorbic acid", "sulfur dioxide, total", "sucralose", "acesulfame K", "aspartame", "cyclamate", "saccharin",
	"neohesperidin DC", "neotame", "steviol glycosides as steviol", "advantame",
	"biotin", "folic acid", "inositol", "magnesium sulfate", "niacin", "pyridoxine hydrochloride",
)

// String is the name as it stands in the lists of additions.
func (s Substance) String() string { return substances.Text(s) }

// MarshalText is [Substance.String]; an unknown substance is a [*units.NameError].
func (s Substance) MarshalText() ([]byte, error) { return substances.Marshal(s) }

// UnmarshalText reads what [Substance.MarshalText] writes; another text is a
// [*units.NameError].
func (s *Substance) UnmarshalText(text []byte) error { return substances.Unmarshal(text, s) }

// ParseSubstance returns the substance of a name as the lists of additions have it: "lysozyme", "citric
// acid", "steviol glycosides as steviol". The error is a [*units.NameError] with the names.
func ParseSubstance(name string) (Substance, error) {
	return substances.Parse("law.ParseSubstance", name)
}
