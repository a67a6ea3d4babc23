package material

import "testing"

// Published distances: V. I. Levenshtein's measure as textbooks print it (kitten to sitting 3, saturday to sunday 3, flaw
// to lawn 2; recalled from memory, checked by hand), and what follows from its definition.
func TestApart(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want int
	}{
		{"kitten", "sitting", 3}, {"saturday", "sunday", 3}, {"flaw", "lawn", 2},
		{"", "abc", 3}, {"abcd", "", 4}, {"abc", "abc", 0}, {"abc", "xabc", 1}, {"xyabc", "abc", 2}, {"abc", "abcxy", 2},
	} {
		if got := apart(c.a, c.b); got != c.want {
			t.Errorf("%q to %q: %d, want %d", c.a, c.b, got, c.want)
		}
		if got := apart(c.b, c.a); got != c.want {
			t.Errorf("%q to %q: %d, want %d", c.b, c.a, got, c.want)
		}
	}
}

// A name is offered for one letter in four that is wrong, or a whole word of four letters in common.
func TestAlike(t *testing.T) {
	for _, c := range []struct {
		a, b string
		want bool
	}{
		{"lime", "lima", true}, {"dextrose", "destrase", true}, {"dextrose", "destrasy", false},
		{"lime in lumps", "slaked lime", true}, {"the wet one", "the dry salt of it", false},
	} {
		if got := alike(c.a, c.b); got != c.want {
			t.Errorf("%q and %q: %t", c.a, c.b, got)
		}
	}
}
