package sugar

import (
	"testing"

	"example.org/zymase/internal/check"
)

// Every parser takes what its own String writes, and refuses the rest.
func FuzzParseSugar(f *testing.F) {
	for _, text := range []string{"", "\x00\xff", "white sugar", "dextrose"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		check.Again(t, text, Parse)
	})
}
