package water

import (
	"strconv"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/units"
)

// Ion is a dissolved substance that a water report or a dose counts. The zero
// value is Calcium.
//
// The anions of weak acids (phosphate, lactate, citrate …) stand for the whole
// acid, in whatever form the pH gives it, as mass of the anion without protons.
type Ion int

// Ions, in the order of a water report.
const (
	Calcium Ion = iota
	Magnesium
	Sodium
	Potassium
	Ammonium
	Iron
	Manganese
	Zinc
	Copper
	Chloride
	Sulfate
	Nitrate
	Nitrite
	Fluoride
	Bicarbonate
	Carbonate
	Hydroxide
	Phosphate
	Lactate
	Acetate
	Citrate
	Malate
	Tartrate
	Succinate
	Sulfite
	Sorbate
	Gluconate
	Glutamate
	ionCount
)

type ionFacts struct {
	name, symbol, formula string
	charge                int
	also                  string // other names, separated by |
	mass                  float64
	perMg                 float64 // mol/kg of water for a mg/L
}

var ionTable = fillIons([ionCount]ionFacts{
	Calcium:     {name: "calcium", symbol: "Ca2+", formula: "Ca", charge: 2},
	Magnesium:   {name: "magnesium", symbol: "Mg2+", formula: "Mg", charge: 2},
	Sodium:      {name: "sodium", symbol: "Na+", formula: "Na", charge: 1},
	Potassium:   {name: "potassium", symbol: "K+", formula: "K", charge: 1},
	Ammonium:    {name: "ammonium", symbol: "NH4+", formula: "NH4", charge: 1},
	Iron:        {name: "iron", symbol: "Fe2+", formula: "Fe", charge: 2, also: "iron(ii)|ferrous"},
	Manganese:   {name: "manganese", symbol: "Mn2+", formula: "Mn", charge: 2},
	Zinc:        {name: "zinc", symbol: "Zn2+", formula: "Zn", charge: 2},
	Copper:      {name: "copper", symbol: "Cu2+", formula: "Cu", charge: 2},
	Chloride:    {name: "chloride", symbol: "Cl-", formula: "Cl", charge: -1},
	Sulfate:     {name: "sulfate", symbol: "SO42-", formula: "SO4", charge: -2, also: "sulphate"},
	Nitrate:     {name: "nitrate", symbol: "NO3-", formula: "NO3", charge: -1},
	Nitrite:     {name: "nitrite", symbol: "NO2-", formula: "NO2", charge: -1},
	Fluoride:    {name: "fluoride", symbol: "F-", formula: "F", charge: -1},
	Bicarbonate: {name: "bicarbonate", symbol: "HCO3-", formula: "HCO3", charge: -1, also: "hydrogen carbonate|hydrogencarbonate"},
	Carbonate:   {name: "carbonate", symbol: "CO32-", formula: "CO3", charge: -2},
	Hydroxide:   {name: "hydroxide", symbol: "OH-", formula: "OH", charge: -1},
	Phosphate:   {name: "phosphate", symbol: "PO43-", formula: "PO4", charge: -3, also: "orthophosphate"},
	Lactate:     {name: "lactate", symbol: "C3H5O3-", formula: "C3H5O3", charge: -1},
	Acetate:     {name: "acetate", symbol: "C2H3O2-", formula: "C2H3O2", charge: -1},
	Citrate:     {name: "citrate", symbol: "C6H5O73-", formula: "C6H5O7", charge: -3},
	Malate:      {name: "malate", symbol: "C4H4O52-", formula: "C4H4O5", charge: -2},
	Tartrate:    {name: "tartrate", symbol: "C4H4O62-", formula: "C4H4O6", charge: -2},
	Succinate:   {name: "succinate", symbol: "C4H4O42-", formula: "C4H4O4", charge: -2},
	Sulfite:     {name: "sulfite", symbol: "SO32-", formula: "SO3", charge: -2, also: "sulphite"},
	Sorbate:     {name: "sorbate", symbol: "C6H7O2-", formula: "C6H7O2", charge: -1},
	Gluconate:   {name: "gluconate", symbol: "C6H11O7-", formula: "C6H11O7", charge: -1},
	Glutamate:   {name: "glutamate", symbol: "C5H7NO42-", formula: "C5H7NO4", charge: -2},
})

func fillIons(t [ionCount]ionFacts) [ionCount]ionFacts {
	for i := range t {
		t[i].mass = chemistry.MustMass(t[i].formula)
		t[i].perMg = molal / t[i].mass
	}
	return t
}

// Ions returns every ion in the order of a water report.
func Ions() []Ion { return upTo(ionCount) }

func (i Ion) facts() *ionFacts {
	if i < 0 || i >= ionCount {
		return &ionFacts{name: "unknown ion", symbol: "?"}
	}
	return &ionTable[i]
}

func (i Ion) known(fn string) error {
	if i < 0 || i >= ionCount {
		return unknownIon(fn, strconv.Itoa(int(i)))
	}
	return nil
}

func unknownIon(fn, name string) error {
	return &units.NameError{Func: fn, What: "ion", Name: name} // 28 are too many to list
}

// Name returns the English name, "calcium".
func (i Ion) Name() string { return i.facts().name }

// Symbol returns the formula with the charge, "Ca2+".
func (i Ion) Symbol() string { return i.facts().symbol }

// String is [Ion.Name].
func (i Ion) String() string { return i.Name() }

// MolarMass returns the mass of a mole, from the atomic weights.
func (i Ion) MolarMass() units.MolarMass {
	return units.GramPerMole.Of(checked.Number(i.facts().mass))
}

// Charge returns the charge of the ion without protons: +2 for calcium, -3 for
// phosphate.
func (i Ion) Charge() int { return i.facts().charge }

// Content is a concentration of an ion.
type Content struct {
	Ion           Ion
	Concentration units.MassConcentration
}

// At returns the content of c of the ion.
func (i Ion) At(c units.MassConcentration) Content { return Content{i, c} }

// MarshalText is [Ion.Name]; what is none of the constants is a [*units.NameError].
func (i Ion) MarshalText() ([]byte, error) {
	return []byte(i.Name()), i.known("water.Ion.MarshalText")
}

// UnmarshalText reads an ion as [ParseIon] does.
func (i *Ion) UnmarshalText(text []byte) error {
	v, err := parseIon("water.Ion.UnmarshalText", string(text))
	if err == nil {
		*i = v
	}
	return err
}

// ParseIon reads the name or the symbol of an ion: "calcium", "Ca", "Ca2+",
// "Ca+2", "Ca++", "SO4", "sulphate". The error is a [*units.NameError].
func ParseIon(text string) (Ion, error) { return parseIon("water.ParseIon", text) }

func parseIon(fn, text string) (Ion, error) {
	key := strings.TrimSpace(text)
	if len(key) <= longestText {
		lower := strings.ToLower(key)
		for i := range ionTable {
			f := &ionTable[i]
			if lower == f.name || listed(f.also, lower) || strings.EqualFold(key, f.symbol) || strings.EqualFold(bare(key), f.formula) {
				return Ion(i), nil
			}
		}
	}
	return 0, unknownIon(fn, text)
}

// bare takes a charge off a symbol: Ca+2, Ca++, Cl-, SO4--, SO4-2.
func bare(text string) string {
	at := strings.IndexAny(text, "+-−")
	if at <= 0 || strings.Trim(text[at:], "+-−1234") != "" {
		return text
	}
	return text[:at]
}

func listed(list, name string) bool {
	for s := range strings.SplitSeq(list, "|") {
		if s != "" && s == name {
			return true
		}
	}
	return false
}

const longestText = 64 // bytes of a name
