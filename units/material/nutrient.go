package material

import (
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
)

// AutolysedYeast is yeast autolysate as sold for feeding yeast, without ammonium salts.
// Take [ByLabel] where the pack states its own figures.
//
//   - Source: 10 % N in dry yeast matter (Dharmadhikari, read), of which about 4 % of
//     the mass is taken up (common practice, no source); minerals of dry yeast: P
//     1.3 %, K 2 %, Mg 0.15 %, Zn 0.01 % (recalled from memory).
//   - Uncertainty: the assimilable nitrogen of products runs from 2 to 6 %.
func AutolysedYeast() Material { return byName["autolysed yeast"] }

// What is neither a salt nor a sugar.
var others = []*facts{
	{
		name: "urea", formula: "CO(NH2)2", mass: ureaMass, brings: Composition{UreaNitrogen: share(2 * chemistry.N / ureaMass)},
		evidence: stoichiometry, cautions: caution.List{ethylCarbamate},
	},
	{
		name: "autolysed yeast", also: names("yeast autolysate|organic"),
		brings: Composition{
			AminoNitrogen: units.Percent.Of(4),
			Phosphorus:    units.Percent.Of(1.3), Potassium: units.Percent.Of(2),
			Magnesium: units.Percent.Of(0.15), Zinc: units.Percent.Of(0.01),
		},
		cautions: caution.List{autolysatesDiffer},
	},
	{
		name: "thiamine hydrochloride", also: names("thiamine|vitamin b1"), formula: "C12H18Cl2N4OS", mass: chemistry.MustMass("C12H18Cl2N4OS"),
		brings: Composition{Thiamine: share(1)}, evidence: stoichiometry,
	},
	{
		name: "ascorbic acid", also: names("vitamin c"), formula: "C6H8O6", mass: chemistry.MustMass("C6H8O6"), evidence: stoichiometry,
	},
}

const ureaMass = chemistry.C + chemistry.O + 2*chemistry.N + 4*chemistry.H

const (
	ammoniumAcid caution.Caution = "ammonium_sets_acid_free: Ammonium sets acid free: without alkalinity the pH of a sugar wash falls far enough to " +
		"stop the yeast."
	notForWine     caution.Caution = "not_in_wine_lists: Not in the lists of additions for wine that were read; check the law in force."
	ethylCarbamate caution.Caution = "urea: Urea leads to ethyl carbamate in the drink and is not in the lists of additions for wine that were read; " +
		"do not use it in anything to drink."
	autolysatesDiffer caution.Caution = "autolysates_differ: Products differ threefold in the nitrogen that yeast can use: take the label's figure where " +
		"there is one."
	zincLittle caution.Caution = "zinc_in_milligrams: Milligrams a litre: weigh a stock solution, not the salt. Zinc above 10 mg/L changes the " +
		"flavour and slows yeast."

	lactoyllactic caution.Caution = "lactoyllactic_acid: Part of a strong lactic acid is lactoyllactic acid, which acts only after " +
		"hours in the liquid: measure the " +
		"pH again a day later."

	// Burns goes with lime, soda ash, potash and lye.
	Burns caution.Caution = "caustic: Lime, soda ash and lye burn eyes and skin and heat up in water: goggles, gloves, little by little into cold water; " +
		"the maker's safety sheet comes first."
)
