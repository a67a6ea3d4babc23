package yeast

import (
	"testing"

	"example.org/zymase/internal/check"
)

// Every parser takes what its own String writes, and refuses the rest.
func FuzzParseYeast(f *testing.F) {
	for _, text := range []string{"", "\x00\xff", "lager"} {
		f.Add(text)
	}
	f.Fuzz(func(t *testing.T, text string) {
		var k Kind
		if k.UnmarshalText([]byte(text)) == nil {
			check.Travels(t, k)
		}
	})
}
