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
		mass, err := p.group(0)
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

var errNoCount = errors.New("has a count of nought")

// group reads elements and bracketed groups up to the end or a closing bracket.
func (p *formulaParser) group(depth int) (float64, error) {
	sum, parts := 0.0, 0
	for p.at < len(p.text) && p.text[p.at] != ')' {
		var mass float64
		if p.text[p.at] == '(' {
			p.at++
			inner, err := p.group(depth + 1)
			if err != nil {
				return 0, err
			}
			if p.at >= len(p.text) {
				return 0, fmt.Errorf("has a bracket that is not closed")
			}
			p.at++ // the closing bracket
			mass = inner
		} else {
			w, err := p.element()
			if err != nil {
				return 0, err
			}
			mass = w
		}
		n := p.count()
		if n == 0 {
			return 0, errNoCount
		}
		sum += mass * n
		parts++
	}
	if parts == 0 {
		return 0, fmt.Errorf("has an empty part")
	}
	return sum, nil
}

// element reads a symbol of two letters where there is one, else of one.
func (p *formulaParser) element() (float64, error) {
	rest := p.text[p.at:]
	if len(rest) > 1 && rest[1] >= 'a' && rest[1] <= 'z' {
		if w, ok := atomicWeights[rest[:2]]; ok {
			p.at += 2
			return w, nil
		}
		return 0, fmt.Errorf("names no element %q that is known here", rest[:2])
	}
	if w, ok := atomicWeights[rest[:1]]; ok {
		p.at++
		return w, nil
	}
	return 0, fmt.Errorf("names no element that is known here at %q", rest)
}

// mustMass serves the tables of this package, whose formulas a test reads too.
func mustMass(formula string) float64 {
	m, err := MolarMass(formula)
	if err != nil {
		panic(err)
	}
	return m
}
