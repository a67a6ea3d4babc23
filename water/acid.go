package water

import (
	"strconv"
	"strings"

	"example.org/zymase/internal/checked"
	"example.org/zymase/internal/chemistry"
	"example.org/zymase/internal/limit"
	"example.org/zymase/units"
)

// Acid is an acid of the trade. The zero value is PhosphoricAcid.
type Acid int

// Acids.
const (
	PhosphoricAcid Acid = iota
	LacticAcid
	CitricAcid
	MalicAcid
	TartaricAcid
	SulfuricAcid
	HydrochloricAcid
	AceticAcid
	acidCount
)

type acidFacts struct {
	name, formula string
	also          string
	ion           Ion // what it leaves in the water
	protons       int // that alkalinity loses for each mole
	hydrogens     int // that a titration to pH 8.2 finds
	strong        bool
	mass          float64
}

var acidTable = fillAcids([acidCount]acidFacts{
	PhosphoricAcid:   {name: "phosphoric acid", formula: "H3PO4", ion: Phosphate, protons: 1, hydrogens: 2},
	LacticAcid:       {name: "lactic acid", formula: "C3H6O3", ion: Lactate, protons: 1, hydrogens: 1},
	CitricAcid:       {name: "citric acid", formula: "C6H8O7", also: "citric acid anhydrous", ion: Citrate, protons: 3, hydrogens: 3},
	MalicAcid:        {name: "malic acid", formula: "C4H6O5", ion: Malate, protons: 2, hydrogens: 2},
	TartaricAcid:     {name: "tartaric acid", formula: "C4H6O6", ion: Tartrate, protons: 2, hydrogens: 2},
	SulfuricAcid:     {name: "sulfuric acid", formula: "H2SO4", also: "sulphuric acid", ion: Sulfate, protons: 2, hydrogens: 2, strong: true},
	HydrochloricAcid: {name: "hydrochloric acid", formula: "HCl", also: "muriatic acid", ion: Chloride, protons: 1, hydrogens: 1, strong: true},
	AceticAcid:       {name: "acetic acid", formula: "C2H4O2", ion: Acetate, protons: 1, hydrogens: 1},
})

func fillAcids(t [acidCount]acidFacts) [acidCount]acidFacts {
	for i := range t {
		t[i].mass = chemistry.MustMass(t[i].formula)
	}
	return t
}

// Acids returns every acid in the order of the constants.
func Acids() []Acid { return upTo(acidCount) }

// upTo lists an enumeration that ends before count.
func upTo[T ~int](count T) []T {
	all := make([]T, count)
	for i := range all {
		all[i] = T(i)
	}
	return all
}

func (a Acid) facts() *acidFacts {
	if a < 0 || a >= acidCount {
		return &acidFacts{name: "unknown acid"}
	}
	return &acidTable[a]
}

func (a Acid) known(fn string) error {
	if a < 0 || a >= acidCount {
		return unknownAcid(fn, strconv.Itoa(int(a)))
	}
	return nil
}

func unknownAcid(fn, name string) error {
	e := &units.NameError{Func: fn, What: "acid", Name: name}
	for i := range acidTable {
		e.Choices = append(e.Choices, acidTable[i].name)
	}
	return e
}

// Name returns the English name, "lactic acid".
func (a Acid) Name() string { return a.facts().name }

// String is [Acid.Name].
func (a Acid) String() string { return a.Name() }

// MolarMass returns the mass of a mole of the acid without water, from the atomic weights.
func (a Acid) MolarMass() units.MolarMass {
	return units.GramPerMole.Of(checked.Number(a.facts().mass))
}

// Ion returns the ion that the acid leaves in the water.
func (a Acid) Ion() Ion { return a.facts().ion }

// MarshalText is [Acid.Name]; what is none of the constants is a [*units.NameError].
func (a Acid) MarshalText() ([]byte, error) {
	return []byte(a.Name()), a.known("water.Acid.MarshalText")
}

// UnmarshalText reads an acid as [ParseAcid] does.
func (a *Acid) UnmarshalText(text []byte) error {
	v, err := parseAcid("water.Acid.UnmarshalText", string(text))
	if err == nil {
		*a = v
	}
	return err
}

// ParseAcid reads a name or a formula: "lactic acid", "lactic", "H3PO4". The error
// is a [*units.NameError].
func ParseAcid(text string) (Acid, error) { return parseAcid("water.ParseAcid", text) }

func parseAcid(fn, text string) (Acid, error) {
	key := strings.ToLower(strings.TrimSpace(text))
	if len(key) <= longestText {
		for i := range acidTable {
			f := &acidTable[i]
			if key == f.name || key+" acid" == f.name || listed(f.also, key) || strings.EqualFold(key, f.formula) {
				return Acid(i), nil
			}
		}
	}
	return 0, unknownAcid(fn, text)
}

// AddAcid returns the water after an amount of pure acid in a volume of it; where
// the pH was known it is that of the closed water after it. The error is a
// [*units.RangeError] as in [Profile.Add].
func (p Profile) AddAcid(a Acid, amount units.Amount, volume units.Volume) (Profile, error) {
	const fn = "water.Profile.AddAcid"
	if err := a.known(fn); err != nil {
		return Profile{}, err
	}
	l := volume.In(units.Litre)
	if err := checkVolume(fn, l); err != nil {
		return Profile{}, err
	}
	mmol := amount.In(units.Millimole) / l
	if err := limit.Check(fn, "acid", mmol, "mmol/L", 0, mostAlkalinity, waterSource); err != nil {
		return Profile{}, err
	}
	p.acidify(a, mmol)
	return p.settled(fn, 0)
}

// acidify books mmol/L of an acid.
func (p *Profile) acidify(a Acid, mmol float64) {
	f := &acidTable[a]
	p.mg[f.ion] += mmol * f.ion.facts().mass
	p.alk -= mmol * float64(f.protons)
}
