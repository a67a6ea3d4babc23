package batch

import (
	"testing"

	"example.org/zymase/units"
)

func TestSweeten(t *testing.T) {
	b := beer()
	s := after(b, Step{Kind: Sweeten, What: "glycerol", Mass: units.Gram.Of(600)})
	near(t, "glycerol", s.Of(Glycerol)-b.Of(Glycerol), 600/92.094, 0.001)
	near(t, "fermentable", s.Fermentable().In(units.Gram), 0, 1e-9)
	refused(t, b, Step{Kind: Sweeten, What: "gypsum"})
}
