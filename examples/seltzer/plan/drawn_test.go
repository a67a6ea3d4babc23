package plan_test

import (
	"errors"
	"fmt"
	"math"
	"os"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// The intervals hold what the plan says, and what is known of them: the strength within a few times the 3 %
// of a yield, the content of a keg within the 5 to 8 % of solubility, gauge and thermometer together.
func TestDraw(t *testing.T) {
	r := request(t)
	p := made(t, r)
	drawn, err := plan.Draw(r, 400)
	if err != nil {
		t.Fatal(err)
	}
	find := func(what string) plan.Drawn {
		for _, d := range drawn {
			if strings.HasPrefix(d.What, what) {
				return d
			}
		}
		t.Fatalf("no %s", what)
		return plan.Drawn{}
	}
	for _, c := range []struct {
		what       string
		plan       float64
		off, width float64 // of the usual figure from the plan's; of the interval, at most
		from       string
	}{
		{"original gravity", p.Gravity.Original, 0.0002, 0.002, "hydrometer"},
		{"dry floor", p.Gravity.Floor, 0.0003, 0.002, "hydrometer"},
		{"yeast grown", 59.3, 0.2, 35, "nitrogen of lean yeast"},
		{"strength of the kegs", p.Strength.In(units.PercentVolume), 0.02, 0.5, "ethanol lost"},
		{"strength of the bottles", p.Strength.In(units.PercentVolume), 0.03, 0.5, "ethanol lost"},
		{"content of the kegs", p.Packs[0].Content.In(units.GramCO2PerLitre), 0.02, 1, "gauge"},
		{"content of the bottles", p.Packs[1].Bottle.Served.In(units.GramCO2PerLitre), 0.03, 0.8, ""},
		{"pressure of the bottles", p.Packs[1].Bottle.StoreGauge.In(units.BarGauge), 0.03, 1.2, ""},
		{"pH at the end", 3.65, 0.1, 1, "acids made"},
	} {
		d := find(c.what)
		near(t, c.what, d.Usual, c.plan, c.off)
		if !(d.Of.Low < d.Usual && d.Usual < d.Of.High && d.Of.High-d.Of.Low < c.width) {
			t.Errorf("%s: %+v", c.what, d)
		}
		if c.from != "" && d.Of.From[0].Unknown != c.from {
			t.Errorf("%s: most of it from %v", c.what, d.Of.From[:2])
		}
	}
	// Between chalk at rest and none dropped.
	if a, w := find("alkalinity"), p.Water.Boiled; a.Of.Low < w.AlkalinityLow.In(units.MilligramPerLitreCaCO3)-1 ||
		a.Of.High > w.AlkalinityHigh.In(units.MilligramPerLitreCaCO3)+1 || a.Of.From[0].Unknown != "rate of chalk" {
		t.Errorf("%+v", a)
	}
}

// A finer instrument makes its figure surer; other washes and packs are drawn as well.
func TestDrawByInstruments(t *testing.T) {
	r := request(t)
	width := func() float64 {
		drawn, err := plan.Draw(r, 100)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range drawn {
			if d.What == "content of the kegs" {
				return d.Of.High - d.Of.Low
			}
		}
		return math.NaN()
	}
	coarse := width()
	gauge, k := units.BarGauge.Of(0.001), units.KelvinDifference.Of(0.01)
	r.Instruments.Gauge, r.Instruments.Thermometer = &gauge, &k
	if fine := width(); !(fine < 0.8*coarse) {
		t.Errorf("%g g/L wide with a fine gauge, %g with a coarse one", fine, coarse)
	}
	r.Instruments, r.Buffer, r.Fermentable = nil, nil, "juice 12 °Bx"
	r.Strength = units.PercentVolume.Of(4.6)
	if drawn, err := plan.Draw(r, 20); err != nil || len(drawn) != 8 {
		t.Errorf("juice: %d figures, %v", len(drawn), err)
	}
	for _, n := range []int{0, 9, 100_001} {
		_, err := plan.Draw(r, n)
		if e, ok := errors.AsType[*units.RangeError](err); !ok || e.Quantity != "worlds" {
			t.Errorf("%d worlds: %v", n, err)
		}
	}
	r.Volume = units.Volume{}
	if _, err := plan.Draw(r, 100); err == nil {
		t.Error("a request that cannot be planned is drawn")
	}
}

func ExampleDraw() {
	_, err := plan.Draw(plan.Request{}, 1)
	fmt.Println(err)
	// Output: plan.Draw: worlds 1 outside 10 to 100000 (a limit of the function)
}

// The ends of a pH without draws are those of the draws, to 0.06, and both say the same of what they come from where the draws
// leave no doubt of that.
func TestLikelyPHIsDrawn(t *testing.T) {
	for _, name := range []string{"../request.json", "../testdata/requests/no_kettle.json", "../testdata/requests/portions.json",
		"../drinks/cider.json", "../drinks/mead.json"} {
		text, err := os.ReadFile(name)
		if err != nil {
			t.Fatal(err)
		}
		r, err := plan.ParseRequest(text)
		if err != nil {
			t.Fatal(err)
		}
		p := made(t, r)
		drawn, err := plan.Draw(r, 400)
		if err != nil {
			t.Fatal(err)
		}
		end := p.Acidity.Points[3]
		if p.After != nil { // its gas alone is out
			dry := p.After.Points[0]
			near(t, name+", dry, low", dry.PH-dry.Low, end.PH-end.Low, 0.01)
			near(t, name+", dry, high", dry.High-dry.PH, end.High-end.PH, 0.01)
			for _, after := range p.After.Points {
				if !(after.Low < after.PH && after.PH < after.High) || after.From == "" {
					t.Errorf("%s: %+v", name, after)
				}
			}
		}
		for _, d := range drawn {
			if !strings.HasPrefix(d.What, "pH") {
				continue
			}
			near(t, name+", low", end.Low, d.Of.Low, 0.06)
			near(t, name+", high", end.High, d.Of.High, 0.06)
			near(t, name+", usual", end.PH, d.Usual, 0.01)
			if most := d.Of.From[0]; most.Share > 0.5 && end.From != most.Unknown {
				t.Errorf("%s: mostly from %s, drawn from %+v", name, end.From, d.Of.From[:2])
			}
		}
	}
}
