package limit

import (
	"strings"

	"example.org/zymase/units"
)

// Unknown refuses a name and lists what there is.
func Unknown(text, want, choices string) error {
	const longest = 64
	if len(text) > longest {
		text = strings.ToValidUTF8(text[:longest], "")
	}
	return &units.ParseError{Input: text, Want: want, Reason: "say one of: " + choices}
}
