package nutrient

import "testing"

// Every parser takes what its own String writes, and refuses the rest.
func FuzzParseSweetener(f *testing.F) {
	for _, text := range []string{"", "\x00\xff", "E 955"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		again(t, text, ParseSweetener)
	})
}
