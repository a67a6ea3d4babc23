package material

import (
	"cmp"
	"iter"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Composition is what a gram of a material brings, as shares of the mass as weighed. What
// is not listed (the oxygen of a phosphate, the ash of a honey) is in none of them, so
// that they need not add up to 100 %.
type Composition struct {
	// Metals, as the element.
	Calcium   units.Share `json:"calcium,omitzero"`
	Magnesium units.Share `json:"magnesium,omitzero"`
	Sodium    units.Share `json:"sodium,omitzero"`
	Potassium units.Share `json:"potassium,omitzero"`
	Zinc      units.Share `json:"zinc,omitzero"`

	// Nitrogen by its form, as N.
	AmmoniumNitrogen units.Share `json:"ammonium_nitrogen,omitzero"` // each N that yeast takes up sets one H+ free
	AminoNitrogen    units.Share `json:"amino_nitrogen,omitzero"`    // in amino acids and small peptides that yeast takes up
	UreaNitrogen     units.Share `json:"urea_nitrogen,omitzero"`

	// Anions, as the ion.
	Chloride    units.Share `json:"chloride,omitzero"`
	Sulfate     units.Share `json:"sulfate,omitzero"`
	Bicarbonate units.Share `json:"bicarbonate,omitzero"`
	Carbonate   units.Share `json:"carbonate,omitzero"`
	Hydroxide   units.Share `json:"hydroxide,omitzero"`
	Lactate     units.Share `json:"lactate,omitzero"`
	Acetate     units.Share `json:"acetate,omitzero"`
	Citrate     units.Share `json:"citrate,omitzero"`
	Malate      units.Share `json:"malate,omitzero"`
	Tartrate    units.Share `json:"tartrate,omitzero"`
	Succinate   units.Share `json:"succinate,omitzero"`
	Gluconate   units.Share `json:"gluconate,omitzero"`
	Glutamate   units.Share `json:"glutamate,omitzero"` // with the amino acids and peptides that stand in for it, C5H7NO4; yeast leaves it here

	Phosphorus    units.Share `json:"phosphorus,omitzero"`     // as P
	SulfurDioxide units.Share `json:"sulfur_dioxide,omitzero"` // that it sets free in acid
	Thiamine      units.Share `json:"thiamine,omitzero"`       // as thiamine hydrochloride

	// Alkalinity is the acid that it neutralises on the way to CO2 and water, as the mass of
	// hydroxide (OH-, 17.007 g/mol) that does the same: 45.9 % for slaked lime, 34.0 % for
	// chalk, 20.2 % for baking soda.
	Alkalinity units.Share `json:"alkalinity,omitzero"`
	// Acidity is the alkalinity that an acid takes away, as the same mass of hydroxide: 34.7 % for
	// sulfuric acid, 16.6 % for lactic acid of 88 %.
	Acidity units.Share `json:"acidity,omitzero"`

	// Sugars that brewing yeast takes up.
	Glucose        units.Share `json:"glucose,omitzero"`
	Fructose       units.Share `json:"fructose,omitzero"`
	Disaccharides  units.Share `json:"disaccharides,omitzero"`  // sucrose and maltose
	Trisaccharides units.Share `json:"trisaccharides,omitzero"` // maltotriose
	OfMalt         units.Share `json:"of_malt,omitzero"`        // the part of these four that is from malt
	// UnfermentedSolids are the other solids of a sugar or a syrup: what yeast leaves.
	UnfermentedSolids units.Share `json:"unfermented_solids,omitzero"`

	// CrystalWater is bound in crystals. Other water is what a sugar's solids leave.
	CrystalWater units.Share `json:"crystal_water,omitzero"`
}

// parts walks what may add up to the whole, with its names.
func (c *Composition) parts() iter.Seq2[string, *units.Share] {
	return func(yield func(string, *units.Share) bool) {
		for _, p := range [...]struct {
			name string
			of   *units.Share
		}{
			{"calcium", &c.Calcium}, {"magnesium", &c.Magnesium}, {"sodium", &c.Sodium}, {"potassium", &c.Potassium}, {"zinc", &c.Zinc},
			{"ammonium nitrogen", &c.AmmoniumNitrogen}, {"amino nitrogen", &c.AminoNitrogen}, {"urea nitrogen", &c.UreaNitrogen},
			{"chloride", &c.Chloride}, {"sulfate", &c.Sulfate}, {"bicarbonate", &c.Bicarbonate}, {"carbonate", &c.Carbonate},
			{"hydroxide", &c.Hydroxide}, {"lactate", &c.Lactate}, {"citrate", &c.Citrate}, {"acetate", &c.Acetate}, {"malate", &c.Malate},
			{"tartrate", &c.Tartrate}, {"succinate", &c.Succinate}, {"gluconate", &c.Gluconate}, {"glutamate", &c.Glutamate},
			{"phosphorus", &c.Phosphorus}, {"sulfur dioxide", &c.SulfurDioxide}, {"thiamine", &c.Thiamine},
			{"glucose", &c.Glucose}, {"fructose", &c.Fructose}, {"disaccharides", &c.Disaccharides},
			{"trisaccharides", &c.Trisaccharides}, {"unfermented solids", &c.UnfermentedSolids}, {"crystal water", &c.CrystalWater},
		} {
			if !yield(p.name, p.of) {
				return
			}
		}
	}
}

// check refuses what cannot be: a share below zero, more than the whole.
func (c *Composition) check(fn string) error {
	const label = "a label"
	sum := 0.0
	for name, of := range c.parts() {
		v := of.In(units.Percent)
		if err := limit.Check(fn, name, v, "%", 0, 100, label); err != nil {
			return err
		}
		sum += v
	}
	return cmp.Or(
		limit.Check(fn, "sum of the parts", sum, "%", 0, 100*(1+rounding), "a whole"),
		limit.Check(fn, "alkalinity as hydroxide", c.Alkalinity.In(units.Percent), "%", 0, 100, label),
		limit.Check(fn, "acidity as hydroxide", c.Acidity.In(units.Percent), "%", 0, 100, label),
		limit.Check(fn, "sugar of malt", c.OfMalt.In(units.Percent), "%", 0, c.Sugar().In(units.Percent)*(1+rounding), "the sugar in it"),
	)
}

const rounding = 1e-9 // by which parts that were computed may pass the whole

// Nitrogen returns the nitrogen that yeast can take up, in any form.
func (c Composition) Nitrogen() units.Share {
	return c.AmmoniumNitrogen.Plus(c.AminoNitrogen).Plus(c.UreaNitrogen)
}

// Sugar returns the sugars that brewing yeast takes up, as weighed.
func (c Composition) Sugar() units.Share {
	return c.Glucose.Plus(c.Fructose).Plus(c.Disaccharides).Plus(c.Trisaccharides)
}

// Hexose returns the simple sugars that yeast gets out of a mass as weighed: glucose and
// fructose as they are, while a disaccharide takes up water when it falls apart and gains
// 5.26 %, a trisaccharide 7.14 %. 1 kg of white sugar gives 1.052 kg.
//
//   - Source: molar masses from the atomic weights of CIAAW 2021.
func (c Composition) Hexose(of units.Mass) units.Mass {
	share := c.Glucose.In(units.Fraction) + c.Fructose.In(units.Fraction) +
		c.Disaccharides.In(units.Fraction)*gainOfDi + c.Trisaccharides.In(units.Fraction)*gainOfTri
	return units.Kilogram.Of(checked.Number(share * of.In(units.Kilogram)))
}
