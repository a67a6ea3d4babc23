// Package evidence says where a figure comes from and how well it is known. A
// composition, a limit of law, a rate of the trade carries its [Evidence], so that a
// program which prints the figure can print that too.
//
//	e := evidence.Evidence{Source: "Codex CXS 212-1999", Grade: evidence.Read}
//	fmt.Println(e) // Codex CXS 212-1999 (read)
package evidence

import (
	"strings"

	"example.org/zymase/internal/choice"
	"example.org/zymase/units"
)

// Grade says how well a figure is known. A higher grade is better evidence.
type Grade uint8

// The grades, from the weakest.
const (
	CommonPractice Grade = iota // what brewers do; no source is known
	Chosen                      // a choice of this library, where any in a span would do
	Recalled                    // a published figure given from memory, not looked up
	Fitted                      // fitted by this library to figures that were read
	Computed                    // worked out from figures that were read
	Read                        // seen in the source named
)

var grades = choice.Of[Grade]("evidence.Grade", "grade of evidence", "common practice, no source", "chosen", "recalled from memory",
	"fitted", "computed", "read")

// String is "read", "computed", "fitted", "recalled from memory", "chosen" or "common
// practice, no source".
func (g Grade) String() string { return grades.Text(g) }

// MarshalText is [Grade.String]; an unknown grade is a [*units.NameError].
func (g Grade) MarshalText() ([]byte, error) { return grades.Marshal(g) }

// UnmarshalText reads what [Grade.MarshalText] writes; another text is a
// [*units.NameError].
func (g *Grade) UnmarshalText(text []byte) error { return grades.Unmarshal(text, g) }

// Evidence is where a figure comes from. The zero value is common practice without a
// source. Values compare with ==.
type Evidence struct {
	Source string // author, title, year, table; empty where there is none
	Grade  Grade
	Note   string // what to know besides: what it holds for, who disagrees; may be empty
}

// String is the source, the grade and the note: "Codex CXS 212-1999 (read); white sugar
// only", "common practice, no source".
func (e Evidence) String() string {
	s := e.Grade.String()
	if e.Source != "" {
		s = e.Source + " (" + s + ")"
	}
	if e.Note != "" {
		s += noteMark + e.Note
	}
	return s
}

const noteMark = "; "

// MarshalText is the text of [Evidence.String]. A source or note that would be read back
// otherwise (a source that holds a grade in parentheses, say) is refused with a
// [*units.ParseError], an unknown grade with a [*units.NameError].
func (e Evidence) MarshalText() ([]byte, error) {
	if err := grades.Check("evidence.Evidence.MarshalText", e.Grade); err != nil {
		return nil, err
	}
	text := e.String()
	if back, ok := parse(text); !ok || back != e {
		return nil, &units.ParseError{Input: text, Want: "evidence", Reason: "its source or note holds what marks the grade or the note"}
	}
	return []byte(text), nil
}

// UnmarshalText reads what [Evidence.MarshalText] writes. Text without a grade is a
// [*units.ParseError]: a source that nobody says was read is not taken as read.
func (e *Evidence) UnmarshalText(text []byte) error {
	back, ok := parse(string(text))
	if !ok {
		return &units.ParseError{Input: string(text), Want: "evidence", Reason: "write the source and how well it is known: Codex CXS 212-1999 (read)"}
	}
	*e = back
	return nil
}

func parse(text string) (e Evidence, ok bool) {
	at := -1 // the first grade in the text is its grade
	for g, name := range grades.All() {
		whole := text == name || strings.HasPrefix(text, name+noteMark)
		i, length := strings.Index(text, " ("+name+")"), len(name)+3
		if whole {
			i, length = 0, len(name)
		}
		rest, found := "", i > 0 || whole
		if found {
			rest, found = strings.CutPrefix(text[i+length:], noteMark)
			found = found && rest != "" || text[i+length:] == ""
		}
		if found && (at < 0 || i < at) {
			at, e, ok = i, Evidence{Source: text[:i], Grade: g, Note: rest}, true
		}
	}
	return e, ok
}
