package units

import (
	"cmp"
	"fmt"
	"math"
	"strconv"
	"strings"
)

// ParseError reports a text that is not a quantity of the kind asked for.
type ParseError struct {
	Input  string // the text, cut at 64 bytes
	Want   string // the kind of quantity, "volume"
	Reason string // what is wrong, and what to write instead
}

// Error reads: `"5 gal" is not a volume: "gal": say US gal or imp gal: 3.785411784 L or 4.54609 L`.
func (e *ParseError) Error() string {
	article := "a"
	if e.Want != "" && strings.ContainsRune("aeiou", rune(e.Want[0])) {
		article = "an"
	}
	return fmt.Sprintf("%q is not %s %s: %s", e.Input, article, e.Want, e.Reason)
}

const (
	longestText     = 64   // bytes that Parse looks at
	largestExponent = 30   // decimal exponent that Parse takes
	leastExponent   = -340 // below the smallest float64, so that all text reads back
)

// Parse reads a quantity with its unit as brewers write it:
//
//	units.Parse[units.Mass]("3 lb 4 oz")
//	units.Parse[units.Temperature]("68 °F")
//	units.Parse[units.GaugePressure]("12 psi")
//
// A space between number and unit is free. A decimal comma is taken where it
// cannot be a thousands mark ("1,5 kg"; not "1,500 kg"). The text is at most 64
// bytes and an exponent from −340 to 30.
//
// Errors: a [*ParseError] for text that is not a number with a unit of this
// kind, or that has two meanings ("5 gal"); a [*RangeError] for a number that
// the quantity cannot be ("-3 kg").
func Parse[Q interface{ Quantity[D, E] }, D, E Dimension](text string) (Q, error) {
	q, err := parse[D, E]("units.Parse", text, none)
	return Q(q), err
}

// Parse reads a quantity as the function [Parse] does; a number without a unit
// is taken to be in u.
func (u Unit[D, E]) Parse(text string) (Quantity[D, E], error) {
	return parse[D, E]("units.Unit.Parse", text, u.place())
}

// UnmarshalText reads q as [Parse] does.
func (q *Quantity[D, E]) UnmarshalText(text []byte) error {
	p, err := parse[D, E]("units.Quantity.UnmarshalText", string(text), none)
	if err == nil {
		*q = p
	}
	return err
}

func parse[D, E Dimension](fn, text string, bare int) (Quantity[D, E], error) {
	var zero Quantity[D, E]
	dim := describe[D]()
	terms, err := split(text, dim, bare)
	if err != nil {
		return zero, err
	}
	var tooLarge error
	sum, sign := 0.0, 1.0
	for i, t := range terms {
		x, err := strconv.ParseFloat(t.number, 64)
		tooLarge = cmp.Or(tooLarge, err)
		if i == 0 && math.Signbit(x) {
			sign = -1
		}
		u := &dim.table[t.unit]
		sum += sign * math.Abs(x+u.offset) * u.num / u.den
		if len(terms) == 1 {
			sum = (x + u.offset) * u.num / u.den
		}
	}
	if tooLarge != nil || !(sum >= dim.min && sum <= dim.max) {
		u := Unit[D, E](dim.units + terms[0].unit)
		return zero, u.outside(fn, Quantity[D, E]{v: sum}.In(u), dim.min, dim.max)
	}
	return Quantity[D, E]{v: sum}, nil
}

// A term is a number, written as strconv and decimal read it, and its unit.
type term struct {
	number string
	unit   int // its place in the table of the dimension
}

// none is the place of no unit.
const none = -1

// split takes "3 lb 4 oz" apart.
func split(text string, dim *dimension, bare int) ([]term, error) {
	s := strings.TrimSpace(strings.NewReplacer("\u00a0", " ", "\u202f", " ", "\u2009", " ").Replace(text))
	if len(text) > longestText {
		return nil, reject(text, dim, fmt.Sprintf("longer than %d bytes", longestText))
	}
	if s == "" {
		return nil, reject(text, dim, "empty; write a number and a unit")
	}
	var terms []term
	for s != "" {
		number, rest, why := readNumber(s)
		if why != "" {
			return nil, reject(text, dim, why)
		}
		if rest != "" && rest[0] >= '0' && rest[0] <= '9' {
			return nil, reject(text, dim, "a space inside the number; leave it out")
		}
		name, next := rest, ""
		u, why := said(name, dim, bare)
		if u == none && dim.compound {
			if i := nextTerm(rest); i > 0 {
				name, next = strings.TrimSpace(rest[:i]), rest[i:]
				u, why = said(name, dim, none)
			}
		}
		if u == none {
			return nil, reject(text, dim, why)
		}
		terms = append(terms, term{number, u})
		if n := len(terms); n > 1 {
			if a, b := dim.table[terms[n-2].unit], dim.table[u]; a.num/a.den <= b.num/b.den {
				return nil, reject(text, dim, "units must become smaller from left to right")
			}
		}
		s = next
	}
	return terms, nil
}

// nextTerm finds where a second number starts after a unit: " 4 oz" or "4oz".
func nextTerm(s string) int {
	for i := 1; i < len(s); i++ {
		if s[i] >= '0' && s[i] <= '9' {
			return i
		}
	}
	return 0
}

// readNumber splits a number from the front of s and writes it with a decimal
// point; why is what is wrong with it.
func readNumber(s string) (number, rest, why string) {
	neg := false
	switch {
	case strings.HasPrefix(s, "-"), strings.HasPrefix(s, "+"):
		neg, s = s[0] == '-', strings.TrimSpace(s[1:])
	case strings.HasPrefix(s, "−"):
		neg, s = true, strings.TrimSpace(s[len("−"):])
	}
	i, points, commas, digits := 0, 0, 0, 0
	for ; i < len(s); i++ {
		switch c := s[i]; {
		case c >= '0' && c <= '9':
			digits++
			continue
		case c == '.':
			points++
			continue
		case c == ',':
			commas++
			continue
		}
		break
	}
	mantissa := strings.TrimSuffix(s[:i], ",")
	if mantissa != s[:i] {
		return "", "", "a comma after the number"
	}
	switch {
	case digits == 0:
		return "", "", "it does not start with a number"
	case points+commas > 1:
		return "", "", "more than one decimal mark; leave out thousands marks"
	case commas == 1:
		whole, part, _ := strings.Cut(mantissa, ",")
		if len(part) == 3 && len(whole) > 0 && len(whole) <= 3 && strings.Trim(whole, "0") != "" {
			return "", "", "the comma can be a decimal or a thousands mark; write a point or leave it out"
		}
		mantissa = whole + "." + part
	}
	exponent := ""
	if j := i; j < len(s) && (s[j] == 'e' || s[j] == 'E') {
		k := j + 1
		if k < len(s) && (s[k] == '+' || s[k] == '-') {
			k++
		}
		first := k
		for k < len(s) && s[k] >= '0' && s[k] <= '9' {
			k++
		}
		if k > first {
			n, err := strconv.Atoi(s[first:k])
			if negative := s[j+1] == '-'; err != nil || !negative && n > largestExponent || negative && -n < leastExponent {
				return "", "", fmt.Sprintf("an exponent above %d or below %d", largestExponent, leastExponent)
			}
			exponent, i = "e"+s[j+1:k], k
		}
	}
	if neg {
		mantissa = "-" + mantissa
	}
	return mantissa + exponent, strings.TrimSpace(s[i:]), ""
}

// said is find for the unit behind a number.
func said(name string, dim *dimension, bare int) (int, string) {
	if why, ok := dim.unsaid[strings.ToLower(name)]; ok {
		return none, fmt.Sprintf("%q: %s", name, why)
	}
	return find(name, dim, bare)
}

// find looks a unit text up and returns its place: as written, then with letter case ignored for
// names of three letters or more ("Litres", "GRAM"). A number alone is in the bare unit, if there is one.
func find(name string, dim *dimension, bare int) (int, string) {
	if name == "" && bare != none {
		return bare, ""
	}
	if why, ok := dim.ambiguous[name]; ok && name == "" {
		return none, "no unit: " + why
	} else if ok {
		return none, fmt.Sprintf("%q: %s", name, why)
	}
	var symbols []string
	for _, fold := range []bool{false, true} {
		for i, u := range dim.table {
			if u.unread {
				continue
			}
			if same(u.symbol, name, fold) {
				return i, ""
			}
			for _, n := range u.names {
				if same(n, name, fold) {
					return i, ""
				}
			}
			if fold {
				symbols = append(symbols, u.symbol)
			}
		}
	}
	for text, why := range dim.ambiguous {
		if len(name) >= 3 && strings.EqualFold(text, name) {
			return none, fmt.Sprintf("%q: %s", name, why)
		}
	}
	if name == "" && len(symbols) == 1 {
		return none, "no unit; write " + symbols[0]
	}
	if name == "" {
		return none, "no unit; write one of " + strings.Join(symbols, ", ")
	}
	return none, fmt.Sprintf("%q is not one of its units: %s", name, strings.Join(symbols, ", "))
}

func same(a, b string, fold bool) bool {
	if fold {
		return len(b) >= 3 && strings.EqualFold(a, b)
	}
	return a == b
}

func reject(text string, dim *dimension, reason string) error {
	return &ParseError{Input: shortened(text), Want: dim.name, Reason: reason}
}
