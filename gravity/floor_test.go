package gravity_test

import (
	"math"
	"testing"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// Sodium chloride of 1 % mass is 10.053 g/L and weighs 1005.3 kg/m³ at 20 °C, water 998.2
// (Poradnik fizykochemiczny, WNT 1974; read): 0.00071 for a gram a litre, which the mean of
// the brewing salts has to hold within its spread. Ordinary wash: half a gram is 0.0004.
func TestFloorWithMinerals(t *testing.T) {
	wash := solution(t, 93, 7, 0)
	y := wash.WashYield()
	at := func(part, least, most float64) units.MeasuredNumber {
		return ok[units.MeasuredNumber](t)(wash.MeasuredFloor(y, percent(100*part), mgL(1000*least), mgL(1000*most)))
	}
	sg := func(m units.MeasuredNumber) float64 { return m.Value().In(units.One) }
	u := func(m units.MeasuredNumber) float64 { return m.Uncertainty().In(units.One) }
	dry, _, err := wash.Dry(y)
	if err != nil {
		t.Fatal(err)
	}
	pure := at(0, 0, 0)
	near(t, "without minerals", sg(pure), dry.Gravity().SG(), 1e-12)
	near(t, "sodium chloride", (sg(at(0, 10.053, 10.053))-sg(pure))/10.053, (1005.3-998.2)/998.2/10.053, 0.0001)
	near(t, "half a gram", sg(at(0.03, 0.3, 0.7))-sg(pure), 0.0004, 0.00003)

	// Each part by itself, in squares. Yield: 3 % of the 4.5 % vol by the slope of R 22, about
	// 0.0014 a % vol (CRC Handbook: 2 % mass 0.9945, 4 % 0.9910 g/cm³, 2.52 % vol apart), and
	// the yeast that is not made of it. Residue: 30 % of 2.74 g/L;
	// glycerol of 5 % weighs 1.0097 g/cm³ (CRC Handbook, recalled from memory), 50.5 g/L.
	squares := func(a, b float64) float64 { return math.Sqrt(a*a - b*b) }
	near(t, "yield", squares(u(at(0.03, 0, 0)), u(pure)), 0.03*4.5*0.0014, 0.00004)
	model, _ := dry.DensityUncertainty()
	near(t, "what yeast leaves", squares(u(pure), model.In(units.KilogramPerCubicMetre)/998.2), 0.3*2.74*(1.0097/0.9982-1)/50.5, 0.00001)
	near(t, "minerals", squares(u(at(0, 0, 1)), u(pure)), math.Hypot(0.00075/math.Sqrt(12), 0.0001/2), 0.00001)
	near(t, "minerals, from salt to salt", squares(u(at(0, 10, 10)), u(pure)), 10*0.0001, 0.00001) // as GravityWith says
	near(t, "together", u(at(0.03, 0.3, 0.7)), 0.0003, 0.00005)

	for _, c := range []struct {
		part, least, most float64
		about             string
	}{{0.21, 0, 0, "spread of the yield"}, {0.03, -1, 0, "least minerals"}, {0.03, 0.5, 0.4, "most minerals"}, {0.03, 0, 21, "most minerals"},
		{0.03, math.NaN(), 1, "least minerals"}} {
		_, err := wash.MeasuredFloor(y, percent(100*c.part), mgL(1000*c.least), mgL(1000*c.most))
		refused(t, c.about, err, c.about)
	}
	_, err = wash.MeasuredFloor(gravity.Yield{}, percent(3), mgL(0), mgL(0))
	refused(t, "no yield", err, "ethanol yield")
}
