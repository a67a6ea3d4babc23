package nutrient

import "testing"

// Every parser takes what its own String writes, and refuses the rest.
func FuzzParseNutrient(f *testing.F) {
	for _, text := range []string{"", "\x00\xff", "DAP", "medium", "zinc sulfate"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		again(t, text, ParseSource)
		again(t, text, ParseDemand)
	})
}
