package must

import (
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

func gpl(x float64) units.MassConcentration { return milligrams(1000 * x) }

func TestTry(t *testing.T) {
	none, _ := water.NewProfile(room, units.CalciumCarbonate{})
	for _, c := range []struct {
		o Origin
		x float64
	}{{Apple, 125.6}, {Grape, 240}, {Honey, 101}, {Honey, 290}, {Malt, 125.6}} {
		b, err := c.o.Brings(gpl(100), none, Reading{})
		b, err = c.o.Brings(gpl(c.x), none, Reading{})
		if err != nil {
			t.Error(c.o, err)
			continue
		}
		d := b.Drink
		ta, _ := d.Acidity(water.TitrationUS)
		t.Logf("%v %v: pH %.2f TA %v strong %v K %v buffer %v amino %v", c.o, c.x, d.PH(), ta, d.StrongIons(), d.Water().Ion(water.Potassium), d.BufferCapacity(), b.Amino)
	}
}
