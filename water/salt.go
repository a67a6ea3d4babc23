package water

import (
	"fmt"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Salt is a salt as weighed, with its crystal water. The zero value is Gypsum.
type Salt int

// Salts. Bicarbonates, carbonates and hydroxides raise alkalinity.
const (
	Gypsum Salt = iota
	CalciumChlorideDihydrate
	CalciumChloride
	EpsomSalt
	MagnesiumChlorideHexahydrate
	TableSalt
	BakingSoda
	PotassiumBicarbonate
	PotassiumChloride
	Chalk
	SlakedLime
	CalciumSulfate
	SodiumSulfate
	PotassiumSulfate
	SodiumCarbonate
	PotassiumCarbonate
	SodiumHydroxide
	PotassiumHydroxide
	MagnesiumCarbonate
	CalciumLactatePentahydrate
	PotassiumDihydrogenPhosphate
	DipotassiumPhosphate
	DiammoniumPhosphate
	AmmoniumDihydrogenPhosphate
	AmmoniumSulfate
	AmmoniumChloride
	ZincSulfateHeptahydrate
	ZincSulfateMonohydrate
	saltCount
)

type part struct {
	ion   Ion
	count int
}

type saltFacts struct {
	name, formula string
	also          string // other names, parted by |
	parts         []part
	protons       int // what a phosphate takes up on the way to H2PO4-
	waterMoles    int // crystal water
	caustic       bool

	mass   float64           // g/mol
	perG   [ionCount]float64 // mmol of each ion a gram
	alkG   float64           // mEq of alkalinity a gram
	carbG  float64           // mmol of inorganic carbon a gram
	anhydr float64           // share of the mass that is not crystal water
}

var saltTable = fillSalts([saltCount]saltFacts{
	Gypsum: {name: "gypsum", formula: "CaSO4.2H2O", also: "calcium sulfate dihydrate|calcium sulphate dihydrate|burtonising salt",
		parts: []part{{Calcium, 1}, {Sulfate, 1}}, waterMoles: 2},
	CalciumChlorideDihydrate: {name: "calcium chloride dihydrate", formula: "CaCl2.2H2O", also: "calcium chloride flakes",
		parts: []part{{Calcium, 1}, {Chloride, 2}}, waterMoles: 2},
	CalciumChloride: {name: "calcium chloride anhydrous", formula: "CaCl2", also: "anhydrous calcium chloride",
		parts: []part{{Calcium, 1}, {Chloride, 2}}},
	EpsomSalt: {name: "Epsom salt", formula: "MgSO4.7H2O", also: "magnesium sulfate heptahydrate|magnesium sulphate heptahydrate|epsom salts",
		parts: []part{{Magnesium, 1}, {Sulfate, 1}}, waterMoles: 7},
	MagnesiumChlorideHexahydrate: {name: "magnesium chloride hexahydrate", formula: "MgCl2.6H2O",
		parts: []part{{Magnesium, 1}, {Chloride, 2}}, waterMoles: 6},
	TableSalt: {name: "table salt", formula: "NaCl", also: "sodium chloride|salt|common salt|canning salt",
		parts: []part{{Sodium, 1}, {Chloride, 1}}},
	BakingSoda: {name: "baking soda", formula: "NaHCO3", also: "sodium bicarbonate|sodium hydrogen carbonate|bicarbonate of soda",
		parts: []part{{Sodium, 1}, {Bicarbonate, 1}}},
	PotassiumBicarbonate: {name: "potassium bicarbonate", formula: "KHCO3", also: "potassium hydrogen carbonate",
		parts: []part{{Potassium, 1}, {Bicarbonate, 1}}},
	PotassiumChloride: {name: "potassium chloride", formula: "KCl",
		parts: []part{{Potassium, 1}, {Chloride, 1}}},
	Chalk: {name: "chalk", formula: "CaCO3", also: "calcium carbonate",
		parts: []part{{Calcium, 1}, {Carbonate, 1}}},
	SlakedLime: {name: "slaked lime", formula: "Ca(OH)2", also: "calcium hydroxide|lime|pickling lime|hydrated lime",
		parts: []part{{Calcium, 1}, {Hydroxide, 2}}, caustic: true},
	CalciumSulfate: {name: "calcium sulfate anhydrous", formula: "CaSO4", also: "anhydrite",
		parts: []part{{Calcium, 1}, {Sulfate, 1}}},
	SodiumSulfate: {name: "sodium sulfate anhydrous", formula: "Na2SO4", also: "sodium sulfate|sodium sulphate",
		parts: []part{{Sodium, 2}, {Sulfate, 1}}},
	PotassiumSulfate: {name: "potassium sulfate", formula: "K2SO4", also: "potassium sulphate",
		parts: []part{{Potassium, 2}, {Sulfate, 1}}},
	SodiumCarbonate: {name: "sodium carbonate anhydrous", formula: "Na2CO3", also: "soda ash|sodium carbonate",
		parts: []part{{Sodium, 2}, {Carbonate, 1}}, caustic: true},
	PotassiumCarbonate: {name: "potassium carbonate", formula: "K2CO3", also: "potash",
		parts: []part{{Potassium, 2}, {Carbonate, 1}}, caustic: true},
	SodiumHydroxide: {name: "sodium hydroxide", formula: "NaOH", also: "caustic soda|lye",
		parts: []part{{Sodium, 1}, {Hydroxide, 1}}, caustic: true},
	PotassiumHydroxide: {name: "potassium hydroxide", formula: "KOH", also: "caustic potash",
		parts: []part{{Potassium, 1}, {Hydroxide, 1}}, caustic: true},
	MagnesiumCarbonate: {name: "magnesium carbonate", formula: "MgCO3", also: "magnesite",
		parts: []part{{Magnesium, 1}, {Carbonate, 1}}},
	CalciumLactatePentahydrate: {name: "calcium lactate pentahydrate", formula: "Ca(C3H5O3)2.5H2O",
		parts: []part{{Calcium, 1}, {Lactate, 2}}, waterMoles: 5},
	PotassiumDihydrogenPhosphate: {name: "potassium dihydrogen phosphate", formula: "KH2PO4", also: "monopotassium phosphate|mkp",
		parts: []part{{Potassium, 1}, {Phosphate, 1}}},
	DipotassiumPhosphate: {name: "dipotassium phosphate", formula: "K2HPO4", also: "dipotassium hydrogen phosphate",
		parts: []part{{Potassium, 2}, {Phosphate, 1}}, protons: 1},
	DiammoniumPhosphate: {name: "diammonium phosphate", formula: "(NH4)2HPO4", also: "dap|diammonium hydrogen phosphate",
		parts: []part{{Ammonium, 2}, {Phosphate, 1}}, protons: 1},
	AmmoniumDihydrogenPhosphate: {name: "ammonium dihydrogen phosphate", formula: "NH4H2PO4", also: "monoammonium phosphate|map",
		parts: []part{{Ammonium, 1}, {Phosphate, 1}}},
	AmmoniumSulfate: {name: "ammonium sulfate", formula: "(NH4)2SO4", also: "ammonium sulphate",
		parts: []part{{Ammonium, 2}, {Sulfate, 1}}},
	AmmoniumChloride: {name: "ammonium chloride", formula: "NH4Cl",
		parts: []part{{Ammonium, 1}, {Chloride, 1}}},
	ZincSulfateHeptahydrate: {name: "zinc sulfate heptahydrate", formula: "ZnSO4.7H2O", also: "zinc sulphate heptahydrate",
		parts: []part{{Zinc, 1}, {Sulfate, 1}}, waterMoles: 7},
	ZincSulfateMonohydrate: {name: "zinc sulfate monohydrate", formula: "ZnSO4.H2O", also: "zinc sulphate monohydrate",
		parts: []part{{Zinc, 1}, {Sulfate, 1}}, waterMoles: 1},
})

const mmolPerMol = 1000

func fillSalts(t [saltCount]saltFacts) [saltCount]saltFacts {
	waterMass := mustMass("H2O")
	for i := range t {
		f := &t[i]
		f.mass = mustMass(f.formula)
		f.anhydr = 1 - float64(f.waterMoles)*waterMass/f.mass
		perGram := mmolPerMol / f.mass
		f.alkG = float64(f.protons) * perGram
		for _, p := range f.parts {
			n := float64(p.count) * perGram
			f.alkG += n * alkalinityOf(p.ion)
			f.carbG += n * carbonOf(p.ion)
			f.perG[p.ion] = n
		}
	}
	return t
}

// alkalinityOf returns the protons that an ion takes up on the way to CO2 and
// water.
func alkalinityOf(i Ion) float64 {
	switch i {
	case Bicarbonate, Hydroxide:
		return 1
	case Carbonate:
		return 2
	}
	return 0
}

func carbonOf(i Ion) float64 {
	if i == Bicarbonate || i == Carbonate {
		return 1
	}
	return 0
}

// Salts returns every salt in the order of the constants.
func Salts() []Salt {
	all := make([]Salt, saltCount)
	for i := range all {
		all[i] = Salt(i)
	}
	return all
}

func (s Salt) facts() *saltFacts {
	if s < 0 || s >= saltCount {
		return &saltFacts{name: "unknown salt"}
	}
	return &saltTable[s]
}

func (s Salt) known(fn string) error {
	return limit.Check(fn, "salt", float64(s), "", 0, float64(saltCount-1), "the salts of package water")
}

// Name returns the trade name, "gypsum".
func (s Salt) Name() string { return s.facts().name }

// String is [Salt.Name].
func (s Salt) String() string { return s.Name() }

// Formula returns the formula with crystal water, "CaSO4.2H2O".
func (s Salt) Formula() string { return s.facts().formula }

// MolarMass returns the mass of a mole in g/mol, crystal water included.
func (s Salt) MolarMass() float64 { return s.facts().mass }

// Caustic reports whether the salt burns skin and eyes (lime, soda ash, lye): see
// [CausticCaution].
func (s Salt) Caustic() bool { return s.facts().caustic }

// Anhydrous returns the mass of the compound without crystal water in a mass m of
// the salt as weighed.
func (s Salt) Anhydrous(m units.Mass) units.AnhydrousMass {
	return units.GramAnhydrous.Of(checked.Number(m.In(units.Gram) * s.facts().anhydr))
}

// IonYield is what a gram of a salt brings of an ion.
type IonYield struct {
	Ion               Ion
	MilligramsPerGram float64
}

// IonsPerGram returns the mass of each ion in a gram of the salt as weighed, in
// mg/g. Carbonate and hydroxide stand as themselves; what they add to alkalinity is
// [Salt.AlkalinityPerGram].
func (s Salt) IonsPerGram() []IonYield {
	f := s.facts()
	out := make([]IonYield, 0, len(f.parts))
	for _, p := range f.parts {
		out = append(out, IonYield{p.ion, f.perG[p.ion] * p.ion.MolarMass()})
	}
	return out
}

// AlkalinityPerGram returns the alkalinity that a gram of the salt adds, in mEq/g.
func (s Salt) AlkalinityPerGram() float64 { return s.facts().alkG }

// Dose is a mass of a salt.
type Dose struct {
	Salt Salt
	Mass units.Mass
}

// Dose returns the dose of m of the salt.
func (s Salt) Dose(m units.Mass) Dose { return Dose{s, m} }

// AppendText appends [Salt.Name]. The error is a [*NameError] for a Salt that is
// none of the constants.
func (s Salt) AppendText(b []byte) ([]byte, error) {
	if s < 0 || s >= saltCount {
		return b, &NameError{Kind: "salt", Text: fmt.Sprint(int(s))}
	}
	return append(b, s.Name()...), nil
}

// MarshalText is [Salt.AppendText] to an empty slice.
func (s Salt) MarshalText() ([]byte, error) { return s.AppendText(nil) }

// UnmarshalText reads a salt as [ParseSalt] does.
func (s *Salt) UnmarshalText(text []byte) error {
	v, err := ParseSalt(string(text))
	if err == nil {
		*s = v
	}
	return err
}

// ParseSalt reads a trade name or a formula: "gypsum", "Epsom salt", "CaCl2.2H2O",
// "CaCl2·2H2O". "calcium chloride" alone is refused: the dihydrate and the
// anhydrous salt differ by a third. The error is a [*NameError].
func ParseSalt(text string) (Salt, error) {
	key := strings.TrimSpace(text)
	if len(key) <= longestText {
		lower := strings.ToLower(key)
		formula := strings.ReplaceAll(key, "·", ".")
		for i := range saltTable {
			f := &saltTable[i]
			if strings.EqualFold(lower, f.name) || listed(f.also, lower) || strings.EqualFold(formula, f.formula) {
				return Salt(i), nil
			}
		}
	}
	kind := "salt"
	if strings.EqualFold(key, "calcium chloride") {
		kind = "salt: say calcium chloride dihydrate or calcium chloride anhydrous"
	}
	return 0, &NameError{Kind: kind, Text: clip(text)}
}
