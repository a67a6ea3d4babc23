package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// What is dissolved beside sugar is in every gravity: by hand 50 + 8 + 30 + 7.7 + 60 + 50 mg/L of
// ions and 110 of bicarbonate (alkalinity 90), 17.9 g of phosphate and 18.0 g of buffer in 59 L,
// 0.92 g/L in the wash, less what drops as chalk in the boil (a gram takes 1.62 g of ions along); salts and the
// buffer's potassium, 0.27 g/L, at least at the end. At
// 0.00071 for a g/L of sodium chloride (Poradnik fizykochemiczny, WNT 1974; read), other salts up
// to a third more, that is 0.0006 and 0.0004. The floor is sure to twice the root of 3 % of the ethanol (0.00019), 16 % of
// the glycerol (0.36 g/L, 0.00008), as much for acids, and 0.0001 for the densities.
func TestMineralsAreInTheGravities(t *testing.T) {
	p := made(t, request(t))
	near(t, "at the end", p.Gravity.Minerals, 0.0004, 0.00007)
	near(t, "k = 2", p.Gravity.FloorUncertainty, 0.0005, 0.00005)

	chalk := 0.0
	for _, l := range p.Balance.Out {
		if l.What == "chalk dropped, as usual" {
			chalk = l.Mass.In(units.Gram)
		}
	}

	r := request(t) // the same in distilled water, without nutrient that stays or buffer
	r.Water.Report, r.Water.Target, r.Water.Salts = plan.Ions{}, plan.Ions{}, nil
	r.Buffer = nil
	q := made(t, r)
	near(t, "wash", p.Gravity.Original-q.Gravity.Original, (0.92-0.30-1.62*chalk/59)*0.00075, 0.00003)
	near(t, "the kettle's salts", p.Vessels[1].Gravity-q.Vessels[1].Gravity, 0.31*0.00075, 0.00005)
	near(t, "apparent extract", p.Gravity.Apparent.In(units.DegreePlato), -5.5/3.87, 0.05) // 0.9945; 3.87 thousandths a °P near 1

	// A reading of what the plan prints is the plan.
	r = request(t)
	r.Readings = []plan.Reading{read(0, p.Gravity.Original), read(4*day, p.Gravity.ThirdUsed), read(8*day, p.Gravity.Floor)}
	s := made(t, r).State
	near(t, "used", s.Points[0].Used.In(units.Percent), 100./3, 0.1)
	near(t, "dry", s.Points[1].Used.In(units.Percent), 100, 0.2)
	near(t, "floor", s.Floor, p.Gravity.Floor, 1e-6)
	if g := s.AddSugar.In(units.Gram); g > 5 {
		t.Errorf("the wash is as planned, yet %.0f g of sugar are asked for", g)
	}
}

// A target that is off by its point is planned, and told of: nobody drinks 9 g/L of chloride (Directive (EU) 2020/2184: 250 mg/L).
func TestWaterOffByItsPoint(t *testing.T) {
	told := func(change func(*plan.Request)) bool {
		r := request(t)
		change(&r)
		p, err := plan.Make(r)
		if err != nil {
			t.Fatal(err)
		}
		return strings.Contains(strings.Join(p.Cautions, "\n"), "The treated water holds more than drinking water may: chloride ")
	}
	if told(func(*plan.Request) {}) {
		t.Error("told of a usual water")
	}
	if !told(func(r *plan.Request) { r.Water.Target = plan.Ions{Calcium: new(units.MilligramPerLitre.Of(5000))} }) {
		t.Error("not told of 5000 mg/L of calcium in the place of 50.00")
	}
	r := request(t)
	r.Water.Report.Calcium = new(units.GramPerLitre.Of(14))
	if _, err := plan.Make(r); err == nil || !strings.Contains(err.Error(), "g/L for mg/L") {
		t.Error(err)
	}
}
