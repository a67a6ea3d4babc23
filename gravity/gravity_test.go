package gravity_test

import (
	"encoding/json"
	"errors"
	"math"
	"strings"
	"testing"

	"pgregory.net/rapid"

	"example.org/zymase/gravity"
	"example.org/zymase/units"
)

// NBS Circular 440 table 109: true specific gravity 20/20 °C of sucrose solutions,
// 5 decimals; ICUMSA differs from it by what the densities do (20 %: 1080.98 for
// 1080.93).
func TestGravityFromExtractNBS(t *testing.T) {
	for _, r := range [][3]float64{{0, 1.00000, 0}, {10, 1.03998, 0.00002}, {20, 1.08287, 0.00006}, {50, 1.23174, 0.00014}, {70, 1.34956, 0.00035}} {
		near(t, "SG", ok[gravity.Gravity](t)(gravity.FromExtract(plato(r[0]))).SG(), r[1], r[2])
	}
}

func TestGravityZero(t *testing.T) {
	var g gravity.Gravity
	if g.SG() != 1 || g.Points() != 0 || g.String() != "1" || g.Text(3) != "1.000" || g.Text(-1) != "1" || g.Text(0) != "1" ||
		g.Text(16) != "1.000000000000000" || g.Text(15) != g.Text(16) || g.Extract().In(units.DegreePlato) != 0 {
		t.Errorf("%v %v %v", g, g.Points(), g.Extract())
	}
	near(t, "water at 20 °C", g.Density().In(units.KilogramPerCubicMetre),
		ok[units.Density](t)(gravity.WaterDensity(celsius(20))).In(units.KilogramPerCubicMetre), 1e-9)
}

// Every way in agrees with every way out, over the whole range, extract below zero
// included.
func TestGravityRoundTrips(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		sg := rapid.Float64Range(0.7901, 1.4147).Draw(t, "SG")
		g, err := gravity.FromSG(sg)
		if err != nil {
			t.Fatal(err)
		}
		if g.SG() != sg {
			t.Fatalf("SG %v", g.SG())
		}
		e, err := gravity.FromExtract(g.Extract())
		if err != nil || math.Abs(e.SG()-sg) > 1e-14 {
			t.Fatalf("extract %v: %v %v", g.Extract(), e, err)
		}
		x := g.Extract().In(units.DegreePlato)
		if back := e.Extract().In(units.DegreePlato); math.Abs(back-x) > 1e-9*math.Abs(x)+1e-12 {
			t.Fatalf("%v °P comes back as %v", x, back)
		}
		d, err := gravity.FromDensity(g.Density())
		if err != nil || math.Abs(d.SG()-sg) > 1e-15*4 {
			t.Fatalf("density: %v %v", d, err)
		}
		if p := g.Points(); math.Abs(1+p/1000-sg) > 1e-15*4 {
			t.Fatalf("points: %v", p)
		}
		text, err := gravity.ParseGravity(g.String())
		if err != nil || text != g {
			t.Fatalf("text %s: %v %v", g, text, err)
		}
		b, err := json.Marshal(g)
		var fromJSON gravity.Gravity
		if err != nil || json.Unmarshal(b, &fromJSON) != nil || fromJSON != g {
			t.Fatalf("json %s: %v", b, fromJSON)
		}
	})
}

// At zero extract the value and the slope of the continuation join, and it rises
// all the way down to pure ethanol.
func TestExtractJoinsAtZero(t *testing.T) {
	at := func(sg float64) float64 {
		return ok[gravity.Gravity](t)(gravity.FromSG(sg)).Extract().In(units.DegreePlato)
	}
	const h = 1e-4
	below, above := (at(1)-at(1-h))/h, (at(1+h)-at(1))/h
	// second derivative of the inverse: −2·135.37/385.18·(998.2/385.18)² ≈ −4.7 per
	// unit, in °P −472; the slopes 1e-4 apart differ by that times h
	near(t, "slope", above-below, -0.0472, 0.001)
	near(t, "slope at zero, 100·998.2031/385.1761 (SPS-4, a1)", (above+below)/2, 259.155, 0.01)
	last := math.Inf(-1)
	for sg := 0.79; sg <= 1.4147; sg += 0.0005 {
		if x := at(sg); x <= last {
			t.Fatalf("SG %v: %v °P after %v", sg, x, last)
		} else {
			last = x
		}
	}
	// pure ethanol, by R 22 on the water of SPS-4
	s := ok[gravity.Solution](t)(gravity.NewSolution(units.Mass{}, units.Mass{}, kg(1)))
	near(t, "pure ethanol", s.Gravity().SG(), 789.24/998.20, 2e-5)
}

func TestGravityRefuses(t *testing.T) {
	for _, x := range []float64{0.7899, 1.41475, 1048, -1, math.NaN(), math.Inf(1)} {
		_, err := gravity.FromSG(x)
		refused(t, "SG", err, "specific gravity")
		_, err = gravity.FromDensity(kgm3(998.2031 * x))
		refused(t, "density", err, "density")
	}
	for _, x := range []float64{-65.6, 80.001, math.NaN()} {
		_, err := gravity.FromExtract(plato(x))
		refused(t, "extract", err, "extract")
	}
	near(t, "least", ok[gravity.Gravity](t)(gravity.FromExtract(plato(-65.56))).SG(), 0.79, 0.0001)
	near(t, "most", ok[gravity.Gravity](t)(gravity.FromExtract(plato(80))).SG(), 1.4147, 0.0001)
}

func TestParseGravity(t *testing.T) {
	for text, want := range map[string]float64{
		"1.048": 1.048, " SG 1.048 ": 1.048, "sg1.048": 1.048, "1,048": 1.048, "1048": 1.048, "990": 0.990, "0.990": 0.990, ".99": 0.99,
		"1.048 SG": 1.048, "48 points": 1.048, "-8 pts": 0.992, "−8 points": 0.992, "1 point": 1.001, "0 °P": 1, "0 Brix": 1, "1500": math.NaN(),
		"700": math.NaN(), "1.5": math.NaN(), "90 °P": math.NaN(), "-80 °P": math.NaN(), "500 points": math.NaN(),
	} {
		g, err := gravity.ParseGravity(text)
		if math.IsNaN(want) {
			if _, isRange := errors.AsType[*units.RangeError](err); !isRange {
				t.Errorf("%q: %v %v, want a RangeError", text, g, err)
			}
		} else if err != nil || math.Abs(g.SG()-want) > 1e-12 {
			t.Errorf("%q: %v %v", text, g, err)
		}
	}
	if g, err := gravity.ParseGravity(strings.Repeat("0", 59) + "1.048"); err != nil || g.SG() != 1.048 {
		t.Error("64 bytes:", g, err)
	}
	for _, text := range []string{"700", "1500", "2", "0"} { // read as gravities, of no liquid here
		_, err := gravity.ParseGravity(text)
		refused(t, text, err, "specific gravity")
	}
	for _, text := range []string{"12 °P", "12 Plato", "12 °Bx", "12 % mass", "12°P"} {
		g, err := gravity.ParseGravity(text)
		if err != nil || math.Abs(g.Extract().In(units.DegreePlato)-12) > 1e-12 {
			t.Errorf("%q: %v %v", text, g, err)
		}
	}
	for _, text := range []string{"", " ", "abc", "48", "2.1", "699.9", "12", "1.0.48", "1,0,48", "1.048 kg", "12 %", "1e3", "NaN",
		"Inf", "1.048 1.050", "--1", "+", "1,048.5", "1501",
		strings.Repeat("0", 60) + "1.048", "1\x00"} {
		g, err := gravity.ParseGravity(text)
		if _, isParse := errors.AsType[*units.ParseError](err); !isParse || g != (gravity.Gravity{}) {
			t.Errorf("%q: %v %v, want a ParseError", text, g, err)
		}
	}
	var g gravity.Gravity
	if err := g.UnmarshalText([]byte("x")); err == nil || g != (gravity.Gravity{}) {
		t.Errorf("%v %v", g, err)
	}
}

func TestGravityCompare(t *testing.T) {
	a, b := ok[gravity.Gravity](t)(gravity.FromSG(0.99)), ok[gravity.Gravity](t)(gravity.FromSG(1.05))
	if a.Compare(b) != -1 || b.Compare(a) != 1 || a.Compare(a) != 0 {
		t.Error("order")
	}
}

func FuzzParseGravity(f *testing.F) {
	for _, s := range []string{"1.048", "12 °P", "-8 points", "SG 1,05", "1048", ""} {
		f.Add(s)
	}
	f.Fuzz(func(t *testing.T, text string) {
		g, err := gravity.ParseGravity(text)
		if err != nil {
			if g != (gravity.Gravity{}) {
				t.Fatalf("%q: %v beside %v", text, g, err)
			}
			return
		}
		if sg := g.SG(); !(sg >= 0.79 && sg <= 1.4148) {
			t.Fatalf("%q: %v", text, sg)
		}
		if back, err := gravity.ParseGravity(g.String()); err != nil || back != g {
			t.Fatalf("%q: %v comes back as %v, %v", text, g, back, err)
		}
		if x := g.Extract().In(units.DegreePlato); x-x != 0 {
			t.Fatalf("%q: extract %v", text, x)
		}
	})
}
