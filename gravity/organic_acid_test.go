package gravity_test

import (
	"testing"

	"example.org/zymase/gravity"
)

// Organic acids weigh and bend light as glycerol does, for want of a table: said, and held.
func TestOrganicAcidIsAsGlycerol(t *testing.T) {
	acid := ok[gravity.Solution](t)(solution(t, 95, 0, 4).AddExtract(gravity.AsOrganicAcid, kg(1)))
	glycerol := ok[gravity.Solution](t)(solution(t, 95, 0, 4).AddExtract(gravity.AsGlycerol, kg(1)))
	near(t, "gravity", acid.Gravity().SG(), glycerol.Gravity().SG(), 1e-12)
	near(t, "index", ok[float64](t)(acid.RefractiveIndex()), ok[float64](t)(glycerol.RefractiveIndex()), 1e-12)
}
