package batch

import (
	"testing"

	"example.org/zymase/units"
)

// 40 % of protein in dry yeast is 6.4 % of nitrogen (recalled from memory).
func TestPitch(t *testing.T) {
	s := after(State{}, Step{Kind: Pitch, Mass: units.Gram.Of(10)})
	near(t, "yeast", s.Yeast().In(units.Gram), 10, 1e-12)
	near(t, "cells at ten billion a gram", s.Cells(&usual), 100, 1e-9)
	near(t, "nitrogen", s.amount.Element(N)*14.007, 0.64, 1e-12)
}
