package law

import (
	"slices"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
	"example.org/zymase/units/caution"
	"example.org/zymase/units/evidence"
	"github.com/shopspring/decimal"
)

// CheckTheLaw goes with every limit.
const CheckTheLaw caution.Caution = "check_the_law: Laws change and differ by drink: check the law in force before you rely on a limit."

// Limit is the most of a substance that a law allows in a drink. The number is the
// law's own decimal; nothing is rounded before it is compared.
type Limit struct {
	Covers       []Substance // added up before they are compared
	Jurisdiction Jurisdiction
	Scope        Scope  // the drink or the use that the text speaks of
	Article      string // with the year of the text that was read, or that memory is of
	Printed      string // the metric figure that the text prints, or ""
	Note         string
	Grade        evidence.Grade

	amount decimal.Decimal
	unit   limitUnit

	// as what the amount is counted, where that is not what is weighed, and the share of it
	// in what is weighed; "" and 0 otherwise.
	as     string
	counts float64
}

type limitUnit int

const (
	gramPerLitre limitUnit = iota
	milligramPerLitre
	poundPerThousandGallons
)

// Amount returns the number and the unit of the legal text: 8, "lb/1000 US gal".
func (l Limit) Amount() (decimal.Decimal, string) {
	switch l.unit {
	case milligramPerLitre:
		return l.amount, "mg/L"
	case poundPerThousandGallons:
		return l.amount, "lb/1000 US gal"
	}
	return l.amount, "g/L"
}

// GramsPerLitre returns the limit in g/L as a decimal of so many places (0 to 30),
// halves rounded up. Pounds and gallons are converted with the exact factors
// 453.59237 g and 3.785411784 L.
//
//   - Source: NIST Handbook 44 (2024) appendix C for the factors.
//   - Units: g/L.
func (l Limit) GramsPerLitre(places int) decimal.Decimal {
	p := int32(min(max(places, 0), 30))
	switch l.unit {
	case milligramPerLitre:
		return l.amount.Shift(-3).Round(p)
	case poundPerThousandGallons:
		return l.amount.Mul(poundGrams).DivRound(thousandGallonsLitres, p)
	}
	return l.amount.Round(p)
}

var (
	poundGrams            = decimal.RequireFromString("453.59237")
	thousandGallonsLitres = decimal.RequireFromString("3785.411784")
)

// Concentration returns the limit as a quantity.
func (l Limit) Concentration() units.MassConcentration {
	x := checked.Number(l.amount.InexactFloat64())
	switch l.unit {
	case milligramPerLitre:
		return units.MilligramPerLitre.Of(x)
	case poundPerThousandGallons:
		return units.PoundPerThousandUSGallons.Of(x)
	}
	return units.GramPerLitre.Of(x)
}

// Allows reports whether a concentration, counted as the limit counts it, is at or under
// the limit. A dose that was itself made from the limit passes: one part in 1e12 is given
// for rounding.
func (l Limit) Allows(c units.MassConcentration) bool {
	return c.In(units.MilligramPerLitre) <= l.Concentration().In(units.MilligramPerLitre)*(1+1e-12)
}

// Weighed returns the limit as a concentration of what is weighed: of the hydrochloride
// where the law counts thiamine.
func (l Limit) Weighed() units.MassConcentration {
	c := l.Concentration()
	if l.counts > 0 {
		return units.GramPerLitre.Of(checked.Number(c.In(units.GramPerLitre) / l.counts))
	}
	return c
}

// String reads "ammonium phosphate: at most 0.96 g/L (8 lb/1000 US gal), wine, 27 CFR
// 24.246 (2015 edition), US; check the law in force". A limit that was not read says
// "recalled from memory".
func (l Limit) String() string {
	names := ""
	for i, s := range l.Covers {
		if i > 0 {
			names += " and "
		}
		names += s.String()
	}
	n, unit := l.Amount()
	most := n.String() + " " + unit + l.as
	if l.Printed != "" && l.Printed != most {
		most = l.Printed + " (" + most + ")"
	}
	return names + ": at most " + most + ", " + l.Scope.String() + ", " + l.Article + ", " + l.Jurisdiction.String() + l.recall() + "; check the law in force"
}

// recall says that a row was not read.
func (l Limit) recall() string {
	if l.Grade == evidence.Recalled {
		return " (recalled from memory)"
	}
	return ""
}

// MarshalText is [Limit.String].
func (l Limit) MarshalText() ([]byte, error) {
	text := l.String()
	if findLimit(text) == nil {
		return nil, notInTable("law.Limit.MarshalText", text)
	}
	return []byte(text), nil
}

// UnmarshalText reads what [Limit.MarshalText] writes. A limit that is not, or no longer,
// in the table is a [*units.NameError].
func (l *Limit) UnmarshalText(text []byte) error {
	found := findLimit(string(text))
	if found == nil {
		return notInTable("law.Limit.UnmarshalText", string(text))
	}
	*l = found.copied()
	return nil
}

func findLimit(text string) *Limit {
	for i := range lawTable {
		if lawTable[i].String() == text {
			return &lawTable[i]
		}
	}
	return nil
}

func notInTable(fn, text string) error {
	return &units.NameError{Func: fn, What: "limit of law", Name: text}
}

// Limits returns every limit known here that covers a substance under a law, in the
// order of the table; all of them when the substance is Unlisted. With scopes, it returns
// those for one of them. An empty result means that no limit was read, not that there is
// none. Each speaks of one kind of drink ([Limit.Scope]); most are for wine from grapes,
// none was read that names a drink from a sugar wash.
//
// Errors: a [*units.NameError] for a law, a substance or a scope that is none of the lists.
func (j Jurisdiction) Limits(s Substance, of ...Scope) ([]Limit, error) {
	const fn = "law.Jurisdiction.Limits"
	if err := jurisdictions.Check(fn, j); err != nil {
		return nil, err
	}
	if err := substances.Check(fn, s); err != nil {
		return nil, err
	}
	for _, scope := range of {
		if err := scopes.Check(fn, scope); err != nil {
			return nil, err
		}
	}
	var room [32]*Limit // few laws have more
	found := room[:0]
	for i := range lawTable {
		l := &lawTable[i]
		if l.Jurisdiction == j && (s == Unlisted || slices.Contains(l.Covers, s)) && (len(of) == 0 || slices.Contains(of, l.Scope)) {
			found = append(found, l)
		}
	}
	out := slices.Grow([]Limit(nil), len(found))
	for _, l := range found {
		out = append(out, l.copied())
	}
	return out, nil
}

// copied is the limit with a list of its own.
func (l *Limit) copied() Limit {
	c := *l
	c.Covers = slices.Clone(l.Covers)
	return c
}

// Passed returns those of the limits that a concentration is above.
func Passed(limits []Limit, c units.MassConcentration) []Limit {
	return slices.DeleteFunc(slices.Clone(limits), func(l Limit) bool { return l.Allows(c) })
}
