package nutrient

import (
	"testing"

	"example.org/zymase/internal/check"
)

// Every parser takes what its own String writes, and refuses the rest.
func FuzzParseNutrient(f *testing.F) {
	for _, text := range []string{"", "\x00\xff", "DAP", "medium", "zinc sulfate"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		check.Again(t, text, ParseSource)
		var d Demand
		if d.UnmarshalText([]byte(text)) == nil {
			check.Travels(t, d)
		}
	})
}
