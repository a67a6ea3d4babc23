package finish

import (
	"testing"

	"example.org/zymase/internal/check"
)

// Every parser takes what its own String writes, and refuses the rest.
func FuzzParseSweetener(f *testing.F) {
	for _, text := range []string{"", "\x00\xff", "E 955"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		check.Again(t, text, ParseSweetener)
	})
}
