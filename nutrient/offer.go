package nutrient

import (
	"slices"

	"example.org/zymase/internal/shelf"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units/material"
	"github.com/shopspring/decimal"
)

// Offer is a nutrient at hand, what it costs, and the legal limit that it falls under.
type Offer struct {
	Material material.Material
	Price    decimal.Decimal // for a kilogram; the zero value counts a kilogram as 1
	// Group is the substance that its legal limit speaks of, such as [law.YeastCellWalls] for
	// hulls. The zero value takes what [law.SubstanceOf] makes of its composition.
	Group law.Substance
}

// Offers returns materials as offers without prices, for [FeedInOrder].
func Offers(materials ...material.Material) []Offer {
	out := make([]Offer, len(materials))
	for i, m := range materials {
		out[i].Material = m
	}
	return out
}

// group is the substance whose legal limit an offer falls under.
func (o Offer) group() law.Substance {
	if o.Group != law.Unlisted {
		return o.Group
	}
	return law.SubstanceOf(o.Material)
}

// Sources returns the materials known by name that feed yeast; [material.FindAmong] reads
// their names, and [material.ByLabel] takes one's own.
func Sources() []material.Material { return slices.Clone(sources) }

var sources = shelf.Materials("diammonium phosphate", "monoammonium phosphate", "ammonium sulfate", "ammonium chloride", "urea", "autolysed yeast",
	"thiamine hydrochloride", "zinc sulfate heptahydrate", "zinc sulfate monohydrate", "Epsom salt", "potassium dihydrogen phosphate",
	"potassium chloride")
