package chemistry

import (
	"errors"
	"fmt"
	"strings"

	"example.org/zymase/units"
)

// atomicWeights are the elements that a formula may name.
var atomicWeights = map[string]float64{
	"H": H, "C": C, "N": N, "O": O, "F": F, "Na": Na, "Mg": Mg, "P": P, "S": S, "Cl": Cl,
	"K": K, "Ca": Ca, "Mn": Mn, "Fe": Fe, "Cu": Cu, "Zn": Zn,
}

// MolarMass returns the molar mass of a formula in g/mol; the error is a
// [*units.ParseError]. It takes "CaSO4.2H2O", "(NH4)2HPO4", "CaCl2·2H2O", up to
// 64 bytes, without charges, of the elements in this file.
func MolarMass(formula string) (float64, error) {
	refuse := func(reason string) (float64, error) {
		return 0, &units.ParseError{Input: strings.ToValidUTF8(formula[:min(len(formula), longestText)], "?"), Want: "chemical formula", Reason: reason}
	}
	if len(formula) > longestText || formula == "" {
		return refuse("is empty or longer than 64 bytes")
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
			return refuse(err.Error())
		}
		sum += times * mass
	}
	return sum, nil
}

const longestText = 64

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

// MustMass serves tables whose formulas stand in the source: it panics where one does not
// parse, which a test of any kind shows.
func MustMass(formula string) float64 {
	m, err := MolarMass(formula)
	if err != nil {
		panic(err)
	}
	return m
}
