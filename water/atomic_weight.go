package water

import (
	"errors"
	"fmt"
	"strings"
)

// atomicWeights are the elements that a formula may name.
//
//   - Source: T. Prohaska et al., Standard atomic weights of the elements 2021
//     (IUPAC Technical Report), Pure Appl. Chem. 94 (2022) 573, abridged values;
//     each lies in the interval that CIAAW prints.
//   - Units: g/mol.
var atomicWeights = map[string]float64{
	"H": 1.0080, "C": 12.011, "N": 14.007, "O": 15.999, "F": 18.998,
	"Na": 22.990, "Mg": 24.305, "P": 30.974, "S": 32.06, "Cl": 35.45,
	"K": 39.098, "Ca": 40.078, "Mn": 54.938, "Fe": 55.845, "Cu": 63.546, "Zn": 65.38,
}

// MolarMass returns the molar mass of a chemical formula in g/mol:
// "CaSO4.2H2O", "(NH4)2HPO4", "CaCl2·2H2O". Charges are left out of the formula.
//
// A text longer than 64 bytes, an element outside H, C, N, O, F, Na, Mg, P, S, Cl,
// K, Ca, Mn, Fe, Cu, Zn, or a formula that does not parse gives a [*FormulaError].
//
//   - Source: abridged atomic weights 2021, Pure Appl. Chem. 94 (2022) 573.
//   - Uncertainty: below 0.02 g/mol for the salts of this package, mostly from
//     sulfur and zinc.
func MolarMass(formula string) (float64, error) {
	if len(formula) > longestText || formula == "" {
		return 0, &FormulaError{Formula: clip(formula), Reason: "is empty or longer than 64 bytes"}
	}
	sum := 0.0
	for part := range strings.SplitSeq(strings.ReplaceAll(formula, "·", "."), ".") {
		p := formulaParser{text: part}
		times := p.count()
		mass, err := p.group()
		if err == nil && times == 0 {
			err = errNoCount
		}
		if err == nil && p.at < len(part) {
			err = fmt.Errorf("has a %q that opens nothing", part[p.at])
		}
		if err != nil {
			return 0, &FormulaError{Formula: formula, Reason: err.Error()}
		}
		sum += times * mass
	}
	return sum, nil
}

// FormulaError reports a chemical formula that does not parse.
type FormulaError struct {
	Formula string // the text, cut at 64 bytes
	Reason  string
}

// Error reads: `water.MolarMass: formula "CaXo" names no element that is known`.
func (e *FormulaError) Error() string {
	return fmt.Sprintf("water.MolarMass: formula %q %s", e.Formula, e.Reason)
}

const longestText = 64

func clip(text string) string {
	if len(text) > longestText {
		return text[:longestText]
	}
	return text
}

type formulaParser struct {
	text string
	at   int
}

// count reads a whole number, 1 where there is none.
func (p *formulaParser) count() float64 {
	start, n := p.at, 0.0
	for p.at < len(p.text) && p.text[p.at] >= '0' && p.text[p.at] <= '9' && p.at-start < 4 {
		n = n*10 + float64(p.text[p.at]-'0')
		p.at++
	}
	if p.at == start {
		return 1
	}
	return n
}

var (
	errNoCount = errors.New("has a count of nought")
	errEmpty   = errors.New("has an empty part")
	errOpen    = errors.New("has a bracket that is not closed")
)

// group reads elements and bracketed groups up to the end or a closing bracket.
func (p *formulaParser) group() (sum float64, err error) {
	if p.at >= len(p.text) || p.text[p.at] == ')' {
		return sum, errEmpty
	}
	for p.at < len(p.text) && p.text[p.at] != ')' {
		mass, err := p.piece()
		if err != nil {
			return sum, err
		}
		n := p.count()
		if n == 0 {
			return sum, errNoCount
		}
		sum += mass * n
	}
	return sum, nil
}

// piece reads an element or a group in brackets.
func (p *formulaParser) piece() (mass float64, err error) {
	if p.text[p.at] != '(' {
		return p.element()
	}
	p.at++
	if mass, err = p.group(); err != nil {
		return mass, err
	}
	if p.at >= len(p.text) {
		return mass, errOpen
	}
	p.at++ // the closing bracket
	return mass, nil
}

// element reads a symbol of two letters where there is one, else of one.
func (p *formulaParser) element() (float64, error) {
	symbol := p.text[p.at:][:1]
	if rest := p.text[p.at+1:]; rest != "" && rest[0] >= 'a' && rest[0] <= 'z' {
		symbol += rest[:1]
	}
	w, ok := atomicWeights[symbol]
	if !ok {
		return w, fmt.Errorf("names no element %q that is known here", symbol)
	}
	p.at += len(symbol)
	return w, nil
}

// mustMass serves the tables of this package, whose formulas a test reads too.
func mustMass(formula string) float64 {
	m, err := MolarMass(formula)
	if err != nil {
		panic(err)
	}
	return m
}
