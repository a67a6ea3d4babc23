package batch

import (
	"testing"

	"example.org/zymase/units"
)

func TestFine(t *testing.T) {
	b := beer()
	s, left := one(b, Step{Kind: Fine, Share: per(90)})
	near(t, "yeast", s.Yeast().In(units.Gram), b.Yeast().In(units.Gram)/10, 1e-9)
	near(t, "sediment", left.Sediment.grams(), 0.9*b.Yeast().In(units.Gram), 1e-9)
	refused(t, b, Step{Kind: Fine, Share: per(101)})
}
