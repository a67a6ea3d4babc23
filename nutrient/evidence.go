package nutrient

// Grade tells how well a figure is known.
type Grade int

// The grades, from the weakest.
const (
	CommonPractice Grade = iota // what brewers do; no source is known
	Recalled                    // a published figure given from memory, not looked up
	Computed                    // worked out from figures that were read
	Read                        // seen in the source named
)

// String reads "read", "computed", "recalled from memory" or "common practice,
// no source".
func (g Grade) String() string {
	switch g {
	case Recalled:
		return "recalled from memory"
	case Computed:
		return "computed"
	case Read:
		return "read"
	}
	return "common practice, no source"
}

// Evidence is where a figure comes from.
type Evidence struct {
	Source string // author, title, year, table; empty where there is none
	Grade  Grade
}

// String reads "Codex CXS 212-1999 (read)".
func (e Evidence) String() string {
	if e.Source == "" {
		return e.Grade.String()
	}
	return e.Source + " (" + e.Grade.String() + ")"
}

// Figure is a value that published sources give as a spread: the value taken when
// nothing better is known, and the ends of the spread.
type Figure[T any] struct {
	Value, Low, High T
	Evidence         Evidence
}
