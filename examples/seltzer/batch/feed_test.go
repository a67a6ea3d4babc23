package batch

import (
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Diammonium phosphate is 21.2 % N and 23.5 % P; 0.96 g/L of it brings 203 mg/L of nitrogen.
func TestFeed(t *testing.T) {
	litre := must(FromWater(must(water.Profile{}.InAir()).Water(), units.Litre.Of(1)))
	s := after(litre, Step{Kind: Feed, What: "DAP", Mass: units.Gram.Of(0.96)})
	near(t, "nitrogen", s.Of(Ammonium)*14.007, 0.2036, 0.0005)
	near(t, "phosphorus", s.Of(Phosphate)*30.974, 0.2251, 0.0005)
	near(t, "amino nitrogen", after(litre, Step{Kind: Feed, What: "autolysed yeast", Mass: units.Gram.Of(1)}).Of(Amino)*14.007, 0.04, 1e-9)
	near(t, "urea", after(litre, Step{Kind: Feed, What: "urea", Mass: units.Gram.Of(60.056)}).Of(Urea), 1, 1e-4)
	// A mole of either buffer takes the same acid: potassium and no anion of a strong acid.
	near(t, "citrate", after(litre, Step{Kind: Feed, What: "potassium citrate", Mass: units.Gram.Of(324.41)}).Of(Potassium), 3, 1e-3)
	refused(t, litre, Step{Kind: Feed, What: "unobtainium"})
}
