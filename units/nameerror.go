package units

import (
	"fmt"
	"strings"
)

// NameError reports a name or a choice that is not known: a sugar that is not in the
// list, a law that no table holds, an enumeration's value beyond its last. Every package
// of the module returns it; read it with errors.As or errors.AsType.
type NameError struct {
	Func    string   // the function as a caller writes it, "gravity.Sugar.UnmarshalText"
	What    string   // what is named, "sugar"
	Name    string   // as it was given; of an enumeration without a text, its number
	Choices []string // what there is; empty where the list would be no help
}

// Error names the function, the name and the choices:
// `gravity.Sugar.UnmarshalText: unknown sugar "glucos"; one of sucrose, glucose, fructose, maltose`.
// A name is cut at 64 bytes.
func (e *NameError) Error() string {
	s := fmt.Sprintf("%s: unknown %s %q", e.Func, e.What, shortened(e.Name))
	if len(e.Choices) > 0 {
		s += "; one of " + strings.Join(e.Choices, ", ")
	}
	return s
}

// shortened cuts a text that may be of any length and hold anything.
func shortened(text string) string {
	if len(text) > longestText {
		text = text[:longestText] + "…"
	}
	return strings.ToValidUTF8(text, "?")
}
