package law

import (
	"testing"

	"example.org/zymase/internal/check"
)

// Every parser takes what its own String writes, and refuses the rest.
func FuzzParseLaw(f *testing.F) {
	for _, text := range []string{"", "\x00\xff", "US"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var j Jurisdiction
		if j.UnmarshalText([]byte(text)) == nil {
			check.Travels(t, j)
		}
	})
}
