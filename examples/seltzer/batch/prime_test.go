package batch

import (
	"testing"

	"example.org/zymase/units"
)

func TestPrime(t *testing.T) {
	s := after(beer(), Step{Kind: Prime, What: "dextrose monohydrate", Mass: units.Gram.Of(110)})
	near(t, "dextrose", s.Fermentable().In(units.Gram), 100, 0.05) // 9.09 % of crystal water
	refused(t, beer(), Step{Kind: Prime, What: "DAP"})
}
