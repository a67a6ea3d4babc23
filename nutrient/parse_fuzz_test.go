package nutrient

import (
	"testing"

	"example.org/zymase/internal/check"
)

// Every parser takes what its own String writes, and refuses the rest.
func FuzzParseDemand(f *testing.F) {
	for _, text := range []string{"", "\x00\xff", "medium"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var d Demand
		if d.UnmarshalText([]byte(text)) == nil {
			check.Travels(t, d)
		}
	})
}
