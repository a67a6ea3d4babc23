package water

import (
	"math"
	"strings"
	"testing"

	"example.org/zymase/units/material"
)

// The price of a floor, 250 mg/L of sodium in 10 L by table salt, where chloride wants
// 100: the sum of squares is (1.542·Na - 100)², 2·1.542·(1.542·250 - 100) a mg/L.
func TestExplainFloor(t *testing.T) {
	perSodium := 35.45 / 22.990
	e, err := Request{Profile{t: 20}, litres(10), []Stock{{Salt: material.TableSalt()}}, []Target{Chloride.Aim(mgL(100))},
		[]Bound{Sodium.AtLeast(mgL(250))}}.Explain()
	if err != nil || len(e.Binding) != 1 || e.Binding[0].Name != "sodium at least 250 mg/L" || e.Binding[0].Unit != "mg/L" {
		t.Fatalf("%+v, %v", e.Binding, err)
	}
	near(t, "price", e.Binding[0].Cost, 2*perSodium*(perSodium*250-100), 1e-6)
	if !e.Worth[0].Needed && inMgL(e.Worth[0].Without) != 100 {
		t.Errorf("without it %v", e.Worth[0].Without)
	}
	// 0.5 mg/L too much, wanted by the other target: not the water's.
	few, err := Request{Profile{t: 20}, litres(10), []Stock{{Salt: material.TableSalt()}}, []Target{Sodium.Aim(mgL(10)), Chloride.Aim(mgL(14.5))}, nil}.Explain()
	if err != nil || len(few.Reasons) != 2 || !strings.Contains(few.Reasons[0], "sodium -0.") || !strings.Contains(few.Reasons[0], "above its target") ||
		!strings.Contains(few.Reasons[1], "chloride +0.") || !strings.Contains(few.Reasons[1], "other targets want") {
		t.Errorf("%q, %v", few.Reasons, err)
	}
	// With the other salt gone the floor cannot be kept.
	two, err := Request{Profile{t: 20}, litres(10), []Stock{{Salt: material.TableSalt()}, {Salt: material.PotassiumChloride()}},
		[]Target{Chloride.Aim(mgL(100)), Potassium.Aim(mgL(10))}, []Bound{Sodium.AtLeast(mgL(20))}}.Explain()
	if err != nil || !two.Worth[0].Needed || two.Worth[1].Needed {
		t.Errorf("%+v, %v", two.Worth, err)
	}
}

func TestExplain(t *testing.T) {
	q := Request{Profile{t: 20}, litres(10), []Stock{{material.TableSalt(), grams(1)}, {Salt: material.Gypsum()}},
		[]Target{Chloride.Aim(mgL(100)), Magnesium.Aim(mgL(5)), Calcium.Aim(mgL(40)), Sulfate.Aim(mgL(96.056))},
		[]Bound{Sodium.AtMost(mgL(1000)), Calcium.AtMost(mgL(30))}}
	e, err := q.Explain()
	if err != nil {
		t.Fatal(err)
	}
	if len(e.Binding) != 2 || e.Binding[0].Name != "stock of table salt" || e.Binding[1].Name != "calcium at most 30 mg/L" {
		t.Errorf("%+v", e.Binding)
	}
	// The price is the fall of the sum of squares for a little more, by difference.
	squares := func(q Request) float64 {
		r, err := q.Solve()
		if err != nil {
			t.Fatal(err)
		}
		return inMgL(r.Deviation) * inMgL(r.Deviation)
	}
	more := q
	more.Salts = []Stock{{material.TableSalt(), grams(1.0001)}, {Salt: material.Gypsum()}}
	near(t, "price of the stock", (squares(q)-squares(more))/0.0001, e.Binding[0].Cost, 0.01*e.Binding[0].Cost)
	more = q
	more.Limits = []Bound{q.Limits[0], Calcium.AtMost(mgL(30.001))}
	near(t, "price of the limit", (squares(q)-squares(more))/0.001, e.Binding[1].Cost, 0.01*e.Binding[1].Cost)
	if !e.Worth[0].Used || !e.Worth[1].Used {
		t.Errorf("%+v", e.Worth)
	}
	// Without the table salt the chloride is 100 off, beside what is off now.
	now := e.Recipe.Off[0].off()
	want := math.Sqrt(inMgL(e.Recipe.Deviation)*inMgL(e.Recipe.Deviation) - now*now + 100*100)
	near(t, "worth of the salt", inMgL(e.Worth[0].Without), want, 1e-6)
	all := strings.Join(e.Reasons, "\n")
	for _, part := range []string{"magnesium -5.0 mg/L off: no salt at hand brings it", "chloride", "a limit or a stock"} {
		if !strings.Contains(all, part) {
			t.Errorf("%q lacks %q", all, part)
		}
	}
	hard := Request{reports[2].profile(t, 20), litres(1), []Stock{{Salt: material.Gypsum()}}, []Target{Calcium.Aim(mgL(50)), Sulfate.Aim(mgL(700))}, nil}
	h, err := hard.Explain()
	if err != nil || len(h.Reasons) != 2 || !strings.Contains(h.Reasons[0], "dilute") || !strings.Contains(h.Reasons[1], "another ion") {
		t.Errorf("%q, %v", h.Reasons, err)
	}
	hard.Targets = []Target{Calcium.Aim(mgL(260)), Sulfate.Aim(mgL(900))}
	h, err = hard.Explain()
	if err != nil || !strings.Contains(strings.Join(h.Reasons, "\n"), "it comes with ions that other targets want") {
		t.Errorf("%q, %v", h.Reasons, err)
	}
	need := Request{Profile{t: 20}, litres(1), []Stock{{Salt: material.Gypsum()}}, []Target{Calcium.Aim(mgL(50))}, []Bound{Sulfate.AtLeast(mgL(10))}}
	n, err := need.Explain()
	if err != nil || !n.Worth[0].Needed && inMgL(n.Worth[0].Without) < 50 {
		t.Errorf("%+v, %v", n.Worth, err)
	}
	if _, err := (Request{}).Explain(); err == nil {
		t.Error("nothing explained")
	}
	need.Limits = []Bound{Sodium.AtLeast(mgL(10))}
	if _, err := need.Explain(); err == nil {
		t.Error("the impossible explained")
	}
}
