package batch

import (
	"testing"

	"example.org/zymase/units"
)

func TestHeatAndCool(t *testing.T) {
	s := after(wash(), Step{Kind: Heat, Temperature: deg(70)})
	near(t, "70 °C", s.Temperature().In(units.Celsius), 70, 0)
	refused(t, s, Step{Kind: Heat, Temperature: deg(60)})
	refused(t, s, Step{Kind: Cool, Temperature: deg(80)})
	s = after(s, Step{Kind: Cool, Temperature: deg(18)})
	near(t, "18 °C", s.Temperature().In(units.Celsius), 18, 0)
	if s.amount != wash().amount {
		t.Error("warmth changes what is in it")
	}
}
