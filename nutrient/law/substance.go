package law

import "example.org/zymase/internal/limit"

// Substance is what a legal limit speaks of. The zero value, Unlisted, has none in
// the texts that were read.
type Substance int

// The substances with limits.
const (
	Unlisted Substance = iota
	AmmoniumPhosphate
	AmmoniumSulfateSalt
	YeastCellWalls // walls and membranes, sold as yeast hulls or ghosts; an autolysate has no limit
	Thiamine       // as hydrochloride
	Zinc
	SoyFlour
	CalciumPantothenate
	CitricAcid
	FumaricAcid
	CopperSulfate // as copper added
	CalciumCarbonate
	PotassiumBitartrate
	DimethylDicarbonate
	Lysozyme
	Acacia
	SorbicAcid
	SulfurDioxide // total
	Sucralose
	AcesulfameK
	Aspartame
	Cyclamate
	Saccharin
	NeohesperidinDC
	Neotame
	SteviolGlycosides // as steviol
	Advantame

	// Growth factors that US wine law lists since 2022; [Limits] gives their rows.
	biotin
	folicAcid
	inositol
	magnesiumSulfate
	niacin
	pyridoxine
)

var substanceNames = [...]string{
	"no listed substance", "ammonium phosphate", "ammonium sulfate", "yeast cell walls",
	"thiamine hydrochloride", "zinc", "defatted soy flour", "calcium pantothenate", "citric acid", "fumaric acid",
	"copper sulfate as copper", "calcium carbonate", "potassium bitartrate", "dimethyl dicarbonate", "lysozyme", "acacia",
	"sorbic acid", "sulfur dioxide, total", "sucralose", "acesulfame K", "aspartame", "cyclamate", "saccharin",
	"neohesperidin DC", "neotame", "steviol glycosides as steviol", "advantame",
	"biotin", "folic acid", "inositol", "magnesium sulfate", "niacin", "pyridoxine hydrochloride",
}

// String returns the name as it stands in the lists of additions.
func (s Substance) String() string {
	if s < Unlisted || int(s) >= len(substanceNames) {
		return substanceNames[Unlisted]
	}
	return substanceNames[s]
}

// Jurisdiction is whose law is asked.
type Jurisdiction int

// The jurisdictions whose limits are known here.
const (
	US Jurisdiction = iota
	EU
)

// String reads "US" or "EU".
func (j Jurisdiction) String() string {
	if j == EU {
		return "EU"
	}
	return "US"
}

// ParseJurisdiction reads "US" or "EU". The error is a [*units.ParseError].
func ParseJurisdiction(text string) (Jurisdiction, error) {
	switch text {
	case "US", "us":
		return US, nil
	case "EU", "eu":
		return EU, nil
	}
	return 0, limit.Unknown(text, "law", "US, EU")
}
