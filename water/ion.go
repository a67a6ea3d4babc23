package water

import (
	"fmt"
	"strings"

	"example.org/zymase/internal/limit"
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
	ionCount
)

type ionFacts struct {
	name, symbol, formula string
	charge                int
	also                  string // other names, parted by |
	mass                  float64
}

var ionTable = fillIons([ionCount]ionFacts{
	Calcium:     {"calcium", "Ca2+", "Ca", 2, "", 0},
	Magnesium:   {"magnesium", "Mg2+", "Mg", 2, "", 0},
	Sodium:      {"sodium", "Na+", "Na", 1, "", 0},
	Potassium:   {"potassium", "K+", "K", 1, "", 0},
	Ammonium:    {"ammonium", "NH4+", "NH4", 1, "", 0},
	Iron:        {"iron", "Fe2+", "Fe", 2, "iron(ii)|ferrous", 0},
	Manganese:   {"manganese", "Mn2+", "Mn", 2, "", 0},
	Zinc:        {"zinc", "Zn2+", "Zn", 2, "", 0},
	Copper:      {"copper", "Cu2+", "Cu", 2, "", 0},
	Chloride:    {"chloride", "Cl-", "Cl", -1, "", 0},
	Sulfate:     {"sulfate", "SO42-", "SO4", -2, "sulphate", 0},
	Nitrate:     {"nitrate", "NO3-", "NO3", -1, "", 0},
	Nitrite:     {"nitrite", "NO2-", "NO2", -1, "", 0},
	Fluoride:    {"fluoride", "F-", "F", -1, "", 0},
	Bicarbonate: {"bicarbonate", "HCO3-", "HCO3", -1, "hydrogen carbonate|hydrogencarbonate", 0},
	Carbonate:   {"carbonate", "CO32-", "CO3", -2, "", 0},
	Hydroxide:   {"hydroxide", "OH-", "OH", -1, "", 0},
	Phosphate:   {"phosphate", "PO43-", "PO4", -3, "orthophosphate", 0},
	Lactate:     {"lactate", "C3H5O3-", "C3H5O3", -1, "", 0},
	Acetate:     {"acetate", "C2H3O2-", "C2H3O2", -1, "", 0},
	Citrate:     {"citrate", "C6H5O73-", "C6H5O7", -3, "", 0},
	Malate:      {"malate", "C4H4O52-", "C4H4O5", -2, "", 0},
	Tartrate:    {"tartrate", "C4H4O62-", "C4H4O6", -2, "", 0},
	Succinate:   {"succinate", "C4H4O42-", "C4H4O4", -2, "", 0},
	Sulfite:     {"sulfite", "SO32-", "SO3", -2, "sulphite", 0},
	Sorbate:     {"sorbate", "C6H7O2-", "C6H7O2", -1, "", 0},
})

func fillIons(t [ionCount]ionFacts) [ionCount]ionFacts {
	for i := range t {
		t[i].mass = mustMass(t[i].formula)
	}
	return t
}

// Ions returns every ion in the order of a water report.
func Ions() []Ion {
	all := make([]Ion, ionCount)
	for i := range all {
		all[i] = Ion(i)
	}
	return all
}

func (i Ion) facts() *ionFacts {
	if i < 0 || i >= ionCount {
		return &ionFacts{name: "unknown ion", symbol: "?"}
	}
	return &ionTable[i]
}

func (i Ion) known(fn string) error {
	return limit.Check(fn, "ion", float64(i), "", 0, float64(ionCount-1), "the ions of package water")
}

// Name returns the English name, "calcium".
func (i Ion) Name() string { return i.facts().name }

// Symbol returns the formula with the charge, "Ca2+".
func (i Ion) Symbol() string { return i.facts().symbol }

// String is [Ion.Name].
func (i Ion) String() string { return i.Name() }

// MolarMass returns the mass of a mole in g/mol, from the atomic weights.
func (i Ion) MolarMass() float64 { return i.facts().mass }

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

// AppendText appends [Ion.Name]. The error is a [*NameError] for an Ion that is
// none of the constants.
func (i Ion) AppendText(b []byte) ([]byte, error) {
	if i < 0 || i >= ionCount {
		return b, &NameError{Kind: "ion", Text: fmt.Sprint(int(i))}
	}
	return append(b, i.Name()...), nil
}

// MarshalText is [Ion.AppendText] to an empty slice.
func (i Ion) MarshalText() ([]byte, error) { return i.AppendText(nil) }

// UnmarshalText reads an ion as [ParseIon] does.
func (i *Ion) UnmarshalText(text []byte) error {
	v, err := ParseIon(string(text))
	if err == nil {
		*i = v
	}
	return err
}

// ParseIon reads the name or the symbol of an ion: "calcium", "Ca", "Ca2+",
// "Ca+2", "Ca++", "SO4", "sulphate". The error is a [*NameError].
func ParseIon(text string) (Ion, error) {
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
	return 0, &NameError{Kind: "ion", Text: clip(text)}
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

// NameError reports a text that names nothing of its kind.
type NameError struct {
	Kind string // "ion", "salt", "acid"
	Text string // the text, cut at 64 bytes
}

// Error reads: `water: "unobtainium" names no ion`.
func (e *NameError) Error() string { return fmt.Sprintf("water: %q names no %s", e.Text, e.Kind) }
