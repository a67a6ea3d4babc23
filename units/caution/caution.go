// Package caution holds what whoever uses a result must know, as data: a program that
// passes the result on cannot lose it.
//
// A caution is a constant of the package that gives it, so it can be looked for, and it
// carries its own sentence, so it can be printed where its code means nothing:
//
//	const Cylinder caution.Caution = "cylinder: Chain the cylinder upright."
//
//	if result.Cautions.Has(Cylinder) { … }
//	for _, c := range result.Cautions {
//		fmt.Println(c.Text())
//	}
package caution

import (
	"fmt"
	"slices"
	"strings"

	"example.org/zymase/units"
)

// A Caution is a code, a colon with a space, and a sentence: "cylinder: Chain the
// cylinder upright." The code is of small letters, digits and underscores and is the same
// for ever; the sentence may get clearer. Text and JSON hold both.
type Caution string

const mark = ": "

// Code returns what a program compares: "cylinder".
func (c Caution) Code() string {
	code, _, _ := strings.Cut(string(c), mark)
	return code
}

// Text returns the sentence to print: "Chain the cylinder upright."
func (c Caution) Text() string {
	_, text, _ := strings.Cut(string(c), mark)
	return text
}

// String is [Caution.Text].
func (c Caution) String() string { return c.Text() }

// With returns c with the figures of a case set into its sentence, as fmt.Sprintf does
// it; the code stays.
func (c Caution) With(figures ...any) Caution {
	return Caution(c.Code() + mark + fmt.Sprintf(c.Text(), figures...))
}

// MarshalText is the code and the sentence, as they stand in c. A c without either is a
// [*units.ParseError].
func (c Caution) MarshalText() ([]byte, error) {
	if err := c.check(); err != nil {
		return nil, err
	}
	return []byte(c), nil
}

// UnmarshalText reads what [Caution.MarshalText] writes; any code is taken, so that a
// program can pass on the cautions of a newer one. The error is a [*units.ParseError].
func (c *Caution) UnmarshalText(text []byte) error {
	read := Caution(text)
	if err := read.check(); err != nil {
		return err
	}
	*c = read
	return nil
}

func (c Caution) check() error {
	odd := func(r rune) bool { return !(r >= 'a' && r <= 'z' || r >= '0' && r <= '9' || r == '_') }
	if code := c.Code(); code == "" || strings.ContainsFunc(code, odd) || strings.TrimSpace(c.Text()) == "" {
		return &units.ParseError{Input: string(c), Want: "caution", Reason: "write a code and a sentence: cylinder: Chain the cylinder upright."}
	}
	return nil
}

// List is the cautions of a result, the gravest first, each code once. The zero value is
// no caution. JSON holds an array of texts.
type List []Caution

// Has reports whether a caution with the code of c is in the list; the code alone will do,
// Has("over_rating").
func (l List) Has(c Caution) bool {
	return slices.ContainsFunc(l, func(have Caution) bool { return have.Code() == c.Code() })
}

// With returns the list with those of more at its end that it does not have.
func (l List) With(more ...Caution) List {
	out := slices.Clip(l)
	for _, c := range more {
		if !out.Has(c) {
			out = append(out, c)
		}
	}
	return out
}

// WithIf is [List.With] if when holds, and the list as it is otherwise.
func (l List) WithIf(when bool, more ...Caution) List {
	if !when {
		return l
	}
	return l.With(more...)
}

// String is the codes with commas between: "over_rating, pressure_vessel".
func (l List) String() string {
	codes := make([]string, len(l))
	for i, c := range l {
		codes[i] = c.Code()
	}
	return strings.Join(codes, ", ")
}

// Texts returns the sentences, to print.
func (l List) Texts() []string {
	texts := make([]string, len(l))
	for i, c := range l {
		texts[i] = c.Text()
	}
	return texts
}
