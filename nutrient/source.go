package nutrient

import (
	"slices"
	"strings"

	"example.org/zymase/internal/limit"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/evidence"
)

// Source is something that feeds yeast: a salt, or yeast matter. What it brings is
// known per gram: a salt's from its formula, a blend's from its label.
//
// The zero Source brings nothing.
type Source struct {
	name     string
	group    law.Substance // whose legal limit it falls under
	per      Shares
	evidence evidence.Evidence
	cautions []string
}

// Shares is what one gram of a source brings, as mass shares.
type Shares struct {
	AmmoniumNitrogen units.Share // N in ammonium: each N taken up sets one H+ free
	AminoNitrogen    units.Share // N in amino acids and small peptides that yeast takes up
	UreaNitrogen     units.Share // N in urea

	Phosphorus, Potassium, Magnesium, Zinc units.Share
	Sulfate, Chloride                      units.Share

	Thiamine units.Share // as thiamine hydrochloride
}

// DiammoniumPhosphate returns (NH4)2HPO4, the trade's DAP: 21.2 % N, 23.5 % P.
func DiammoniumPhosphate() Source {
	m := formula.Diammonium.Molar()
	return Source{
		name: "diammonium phosphate", group: law.AmmoniumPhosphate,
		per:      Shares{AmmoniumNitrogen: amount.Share(2 * formula.WeightN / m), Phosphorus: amount.Share(formula.WeightP / m)},
		evidence: formula.Stoichiometry,
		cautions: []string{"Ammonium sets acid free: without alkalinity the pH of a sugar wash falls far enough to stop the yeast."},
	}
}

// MonoammoniumPhosphate returns NH4H2PO4, the trade's MAP: 12.2 % N, 26.9 % P.
func MonoammoniumPhosphate() Source {
	m := formula.Monoammonium.Molar()
	s := DiammoniumPhosphate()
	s.name = "monoammonium phosphate"
	s.per = Shares{AmmoniumNitrogen: amount.Share(formula.WeightN / m), Phosphorus: amount.Share(formula.WeightP / m)}
	return s
}

// AmmoniumSulfate returns (NH4)2SO4: 21.2 % N. Yeast leaves nearly all of the
// sulfate, so it acidifies more than the phosphates.
func AmmoniumSulfate() Source {
	m := formula.AmmoniumSulfate.Molar()
	s := DiammoniumPhosphate()
	s.name, s.group = "ammonium sulfate", law.AmmoniumSulfateSalt
	s.per = Shares{AmmoniumNitrogen: amount.Share(2 * formula.WeightN / m), Sulfate: amount.Share((formula.WeightS + 4*formula.WeightO) / m)}
	return s
}

// AmmoniumChloride returns NH4Cl: 26.2 % N. Beer yeast foods hold it; it is not in
// the lists for wine.
func AmmoniumChloride() Source {
	m := formula.AmmoniumChloride.Molar()
	s := DiammoniumPhosphate()
	s.name, s.group = "ammonium chloride", law.Unlisted
	s.per = Shares{AmmoniumNitrogen: amount.Share(formula.WeightN / m), Chloride: amount.Share(formula.WeightCl / m)}
	s.cautions = append(slices.Clip(s.cautions), "Not in the lists of additions for wine that were read; check the law in force.")
	return s
}

// Urea returns CO(NH2)2: 46.6 % N. It is flagged: yeast makes ethyl carbamate, a
// suspected carcinogen, from it, and the lists for wine leave it out.
func Urea() Source {
	return Source{
		name: "urea", group: law.Unlisted,
		per:      Shares{UreaNitrogen: amount.Share(2 * formula.WeightN / formula.UreaFormula.Molar())},
		evidence: formula.Stoichiometry,
		cautions: []string{"Urea leads to ethyl carbamate in the drink and is not in the lists of additions for wine that were read; do not use it in anything to drink."},
	}
}

// AutolysedYeast returns yeast autolysate as sold for feeding yeast, without
// ammonium salts. Take [ByLabel] where the pack states its own figures. Neither law limits
// it: 0.36 g/L (US) and 0.4 g/L (EU) are for cell walls.
//
//   - Source: 10 % N in dry yeast matter (Dharmadhikari, read), of which about 4 % of
//     the mass is taken up (common practice, no source); minerals of dry yeast: P
//     1.3 %, K 2 %, Mg 0.15 %, Zn 0.01 % (recalled from memory).
//   - Uncertainty: the assimilable nitrogen of products runs from 2 to 6 %.
func AutolysedYeast() Source {
	return Source{
		name: "autolysed yeast", group: law.Unlisted,
		per: Shares{
			AminoNitrogen: units.Percent.Of(4),
			Phosphorus:    units.Percent.Of(1.3), Potassium: units.Percent.Of(2),
			Magnesium: units.Percent.Of(0.15), Zinc: units.Percent.Of(0.01),
		},
		evidence: evidence.Evidence{Grade: evidence.CommonPractice},
		cautions: []string{"Products differ threefold in the nitrogen that yeast can use: take the label's figure where there is one."},
	}
}

// ThiamineHydrochloride returns vitamin B1 as its hydrochloride.
func ThiamineHydrochloride() Source {
	return Source{name: "thiamine hydrochloride", group: law.Thiamine, per: Shares{Thiamine: units.Percent.Of(100)}, evidence: formula.Stoichiometry}
}

// ZincSulfateHeptahydrate returns ZnSO4·7H2O: 22.7 % Zn.
func ZincSulfateHeptahydrate() Source {
	return zincSulfate("zinc sulfate heptahydrate", formula.ZincHeptahydrate)
}

// ZincSulfateMonohydrate returns ZnSO4·H2O: 36.4 % Zn.
func ZincSulfateMonohydrate() Source {
	return zincSulfate("zinc sulfate monohydrate", formula.ZincMonohydrate)
}

func zincSulfate(name string, c formula.Compound) Source {
	m := c.Molar()
	return Source{
		name: name, group: law.Zinc,
		per:      Shares{Zinc: amount.Share(formula.WeightZn / m), Sulfate: amount.Share((formula.WeightS + 4*formula.WeightO) / m)},
		evidence: formula.Stoichiometry,
		cautions: []string{"Milligrams a litre: weigh a stock solution, not the salt. Zinc above 10 mg/L changes the flavour and slows yeast."},
	}
}

// EpsomSalt returns MgSO4·7H2O as a source of magnesium: 9.9 % Mg.
func EpsomSalt() Source {
	m := formula.EpsomSalt.Molar()
	return Source{
		name: "Epsom salt", group: law.Unlisted,
		per:      Shares{Magnesium: amount.Share(formula.WeightMg / m), Sulfate: amount.Share((formula.WeightS + 4*formula.WeightO) / m)},
		evidence: formula.Stoichiometry,
	}
}

// PotassiumDihydrogenPhosphate returns KH2PO4: 28.7 % K, 22.8 % P.
func PotassiumDihydrogenPhosphate() Source {
	m := formula.PotassiumDihydro.Molar()
	return Source{
		name: "potassium dihydrogen phosphate", group: law.Unlisted,
		per:      Shares{Potassium: amount.Share(formula.WeightK / m), Phosphorus: amount.Share(formula.WeightP / m)},
		evidence: formula.Stoichiometry,
	}
}

// PotassiumChloride returns KCl as a source of potassium: 52.4 % K.
func PotassiumChloride() Source {
	m := formula.PotassiumChloride.Molar()
	return Source{
		name: "potassium chloride", group: law.Unlisted,
		per:      Shares{Potassium: amount.Share(formula.WeightK / m), Chloride: amount.Share(formula.WeightCl / m)},
		evidence: formula.Stoichiometry,
	}
}

// ByLabel returns a source by the figures on its label, for an organic blend or a
// mixed yeast food. group says under which legal limit it falls: [law.AmmoniumPhosphate] for
// blends that are mostly such salts, [law.YeastCellWalls] for hulls, [law.Unlisted] for an
// autolysate, which neither law limits.
//
// Errors: a [*units.RangeError] if a part is negative or they add up to more than the
// whole, a [*units.NameError] for an unknown group.
func ByLabel(name string, group law.Substance, s Shares) (Source, error) {
	const fn = "nutrient.ByLabel"
	if err := group.Check(fn); err != nil {
		return Source{}, err
	}
	sum := 0.0
	for _, part := range [...]units.Share{
		s.AmmoniumNitrogen, s.AminoNitrogen, s.UreaNitrogen, s.Phosphorus, s.Potassium, s.Magnesium, s.Zinc, s.Sulfate, s.Chloride, s.Thiamine,
	} {
		if err := limit.Check(fn, "part", part.In(units.Percent), "%", 0, 100, "a label"); err != nil {
			return Source{}, err
		}
		sum += part.In(units.Percent)
	}
	if err := limit.Check(fn, "sum of the parts", sum, "%", 0, 100, "a whole"); err != nil {
		return Source{}, err
	}
	out := Source{name: name, group: group, per: s, evidence: evidence.Evidence{Source: "the label", Grade: evidence.Read}}
	if !s.UreaNitrogen.IsZero() {
		out.cautions = Urea().cautions
	} else if !s.AmmoniumNitrogen.IsZero() {
		out.cautions = DiammoniumPhosphate().cautions
	}
	return out, nil
}

// Sources returns the sources known by name.
func Sources() []Source {
	out := make([]Source, len(sources))
	for i, f := range sources {
		out[i] = f()
	}
	return out
}

// sources are those known by name.
var sources = [...]func() Source{
	DiammoniumPhosphate, MonoammoniumPhosphate, AmmoniumSulfate, AmmoniumChloride, Urea,
	AutolysedYeast, ThiamineHydrochloride, ZincSulfateHeptahydrate, ZincSulfateMonohydrate,
	EpsomSalt, PotassiumDihydrogenPhosphate, PotassiumChloride,
}

// ParseSource returns the source of that name; "DAP", "MAP" and "yeast
// autolysate" are taken too. The error is a [*units.ParseError] that lists
// the names.
func ParseSource(text string) (Source, error) {
	name := strings.ToLower(strings.TrimSpace(text))
	switch name {
	case "dap":
		return DiammoniumPhosphate(), nil
	case "map":
		return MonoammoniumPhosphate(), nil
	case "yeast autolysate", "organic":
		return AutolysedYeast(), nil
	case "yeast hulls", "yeast ghosts", "yeast cell walls":
		return Source{}, &units.ParseError{Input: text, Want: "nutrient", Reason: "cell walls bind what is poisonous to yeast but hardly feed it; say autolysed yeast for an autolysate"}
	case "thiamine":
		return ThiamineHydrochloride(), nil
	case "zinc sulfate":
		return Source{}, &units.ParseError{Input: text, Want: "nutrient", Reason: "say zinc sulfate heptahydrate or zinc sulfate monohydrate"}
	}
	for _, known := range sources {
		if s := known(); strings.EqualFold(s.name, name) {
			return s, nil
		}
	}
	var names []string
	for _, known := range sources {
		names = append(names, known().name)
	}
	return Source{}, limit.Unknown(text, "nutrient", strings.Join(names, ", "))
}

// Name returns the chemical or trade name.
func (s Source) Name() string { return s.name }

// String is [Source.Name].
func (s Source) String() string { return s.name }

// Group returns the substance whose legal limit s falls under.
func (s Source) Group() law.Substance { return s.group }

// Shares returns what one gram brings.
func (s Source) Shares() Shares { return s.per }

// Nitrogen returns the mass share of nitrogen that yeast can take up, in any form.
func (s Source) Nitrogen() units.Share {
	return s.per.AmmoniumNitrogen.Plus(s.per.AminoNitrogen).Plus(s.per.UreaNitrogen)
}

// Evidence tells where the composition comes from.
func (s Source) Evidence() evidence.Evidence { return s.evidence }

// Cautions returns what to know before using it.
func (s Source) Cautions() []string { return slices.Clone(s.cautions) }
