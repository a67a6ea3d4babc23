package batch

import (
	"testing"

	"example.org/zymase/units"
)

// An open drink gives off what it cannot hold, a closed one presses. CO2 in water at 1 atm of it: 1.69 g/kg at 20 °C, 1.26 at 30 °C (CRC Handbook).
func TestWarm(t *testing.T) {
	s, left := one(beer(), Step{Kind: Warm, Temperature: deg(30)})
	near(t, "kept", s.Of(CarbonDioxide)/beer().Of(CarbonDioxide), 1.26/1.69, 0.02)
	near(t, "gone", left.Gas[CarbonDioxide], beer().Of(CarbonDioxide)-s.Of(CarbonDioxide), 1e-9)
	b := closedBottle()
	hot, none := one(b, Step{Kind: Warm, Temperature: deg(35)})
	if none != (Left{}) || hot.amount != b.amount {
		t.Error("warmth changes what is in a pack")
	}
	if cold, warm := must(b.Pack(units.GaugePressure{})), must(hot.Pack(units.GaugePressure{})); warm.Gauge.Compare(cold.Gauge) <= 0 {
		t.Error("a warm pack does not press harder")
	}
	refused(t, b, Step{Kind: Warm, Temperature: deg(10)})
}
