package batch

import (
	"testing"
)

func TestDegas(t *testing.T) {
	b := beer()
	s, left := one(b, Step{Kind: Degas, Share: per(75)})
	near(t, "CO2 left", s.Of(CarbonDioxide), b.Of(CarbonDioxide)/4, 1e-12)
	near(t, "CO2 gone", left.Gas[CarbonDioxide], 0.75*b.Of(CarbonDioxide), 1e-12)
	refused(t, b, Step{Kind: Degas, Share: per(101)})
}
