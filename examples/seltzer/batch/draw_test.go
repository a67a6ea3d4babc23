package batch

import (
	"fmt"
	"math"
	"testing"

	"example.org/zymase/units"
	"example.org/zymase/water"
)

// Draws have the mean and the spread of their distributions, by the formulas of any textbook, and go
// each its own way: more evenly than chance, whose correlations are near 1/√n.
func TestDraw(t *testing.T) {
	worlds := Draw(1000, Known())
	var last [][]float64
	for _, k := range Known() {
		x := make([]float64, len(worlds))
		for i := range worlds {
			x[i] = *k.In(&worlds[i])
			if k.Distribution != Normal && (x[i] < k.Low || x[i] > k.High) {
				t.Errorf("%s: %g", k.Name, x[i])
			}
		}
		mean, variance := moments(x)
		var want, sd float64
		switch k.Distribution {
		case Uniform:
			want, sd = (k.Low+k.High)/2, (k.High-k.Low)/math.Sqrt(12)
		case Triangular:
			a, b, c := k.Low, k.High, k.Usual
			want, sd = (a+b+c)/3, math.Sqrt((a*a+b*b+c*c-a*b-a*c-b*c)/18)
		case Normal: // each half has its own width
			lo, hi := (k.Usual-k.Low)/2, (k.High-k.Usual)/2
			shift := (hi - lo) / math.Sqrt(2*math.Pi)
			want, sd = k.Usual+shift, math.Sqrt((lo*lo+hi*hi)/2-shift*shift)
		}
		near(t, k.Name, mean, want, 0.01*sd)
		near(t, k.Name+", deviation", math.Sqrt(variance), sd, 0.01*sd)
		for i, y := range last {
			if r := correlation(x, y); math.Abs(r) > 0.03 {
				t.Errorf("%s and %s: correlation %.3f", k.Name, Known()[i].Name, r)
			}
		}
		last = append(last, x)
		if *k.In(&usual) != k.Usual || !(k.Low <= k.Usual && k.Usual <= k.High) || k.Evidence == "" {
			t.Errorf("%s: %+v", k.Name, k)
		}
	}
	if Uniform.String() != "uniform" || Triangular.String() != "triangular" || Normal.String() != "normal" {
		t.Error("names of the distributions")
	}
}

func correlation(x, y []float64) float64 {
	mx, vx := moments(x)
	my, vy := moments(y)
	sum := 0.0
	for i := range x {
		sum += (x[i] - mx) * (y[i] - my)
	}
	return sum / float64(len(x)-1) / math.Sqrt(vx*vy)
}

// What the direction numbers are for: of the first 2ᵏ points each coordinate has one in every part of 2⁻ᵏ,
// nought with them.
func TestDirections(t *testing.T) {
	for d := range Known() {
		v := directions(d)
		seen, x := map[uint32]bool{0: true}, uint32(0)
		for i := range uint32(1023) {
			for k := range 10 {
				if i>>k&1 == 0 {
					x ^= v[k]
					break
				}
			}
			seen[x>>22] = true
		}
		if len(seen) != 1024 {
			t.Errorf("coordinate %d: %d of 1024 parts have a point", d, len(seen))
		}
	}
}

// A sum of three of the unknowns: mean, deviation and shares by hand; 95 % of a normal distribution lie
// within 1.96 deviations.
func TestOver(t *testing.T) {
	worlds := Draw(2000, Known())
	x := make([]float64, len(worlds))
	for i, u := range worlds {
		x[i] = 3*u.Solubility/0.025 + 2*u.Glycerol/0.1625 + u.Sugar/0.25 // of standard deviations 3, 2 and 1
	}
	s := Over(worlds, x)
	near(t, "deviation", s.Deviation, math.Sqrt(9+4+1), 0.1)
	near(t, "width", s.High-s.Low, 2*1.96*s.Deviation, 0.03*s.Deviation)
	near(t, "first", s.From[0].Share, 9.0/14, 0.02)
	if s.From[0].Unknown != "solubility of CO2" || s.From[1].Unknown != "glycerol made" || s.From[2].Unknown != "sugar of the fermentable" {
		t.Errorf("%+v", s.From)
	}
	if sure := Over(worlds, make([]float64, len(worlds))); sure.Low != 0 || sure.High != 0 || sure.From != nil {
		t.Errorf("%+v", sure)
	}
	if none := Over(worlds[:5], x[:5]); none.From != nil || none.Deviation != 0 {
		t.Errorf("%+v", none)
	}
}

// carried is the strength, the pH and the content of the keg in each world.
func carried(worlds []Unknowns) (strength, ph, content []float64, err error) {
	w := must(FromWater(well(), units.Litre.Of(60)))
	steps := brew(&w)
	room := make([]State, 0, len(steps))
	var like water.Series
	for i := range worlds {
		states, _, err := Walk(room, steps, State{}, &worlds[i], &like)
		if err != nil {
			return nil, nil, nil, err
		}
		end := states[10] // fermented
		e, err := end.equilibrium(&like)
		if err != nil {
			return nil, nil, nil, err
		}
		strength, ph = append(strength, must(end.Strength()).In(units.PercentVolume)), append(ph, e.PH())
		content = append(content, must(states[15].Content()).In(units.GramCO2PerLitre))
	}
	return strength, ph, content, nil
}

// A thousand worlds of a batch: the intervals hold the usual figure, and come from what they
// must. Half as many agree, so that a thousand are enough.
func TestAThousandBatches(t *testing.T) {
	worlds := Draw(1000, Known())
	strength, ph, content, err := carried(worlds)
	if err != nil {
		t.Fatal(err)
	}
	a, b, c, _ := carried([]Unknowns{usual})
	fewer := Draw(500, Known())
	strength2, pH2, content2, _ := carried(fewer)
	for i, of := range []struct {
		name  string
		x     []float64
		usual float64
		from  string
	}{{"strength", strength, a[0], "ethanol lost"}, {"pH", ph, b[0], "acids made"}, {"content", content, c[0], "gauge"}} {
		s := Over(worlds, of.x)
		if !(s.Low < of.usual && of.usual < s.High) || s.From[0].Unknown != of.from {
			t.Errorf("%s: %g, %+v", of.name, of.usual, s)
		}
		sum := 0.0
		for _, f := range s.From {
			sum += f.Share
		}
		if sum < 0.8 || sum > 1.03 {
			t.Errorf("%s: shares add up to %g", of.name, sum)
		}
		few := Over(fewer, [][]float64{strength2, pH2, content2}[i])
		near(t, of.name+", width from half as many", few.High-few.Low, s.High-s.Low, 0.08*(s.High-s.Low))
		t.Logf("%s %.3f, %.3f to %.3f: %v", of.name, of.usual, s.Low, s.High, s.From[:3])
	}
}

func BenchmarkThousand(b *testing.B) {
	worlds := Draw(1000, Known())
	for b.Loop() {
		if _, _, _, err := carried(worlds); err != nil {
			b.Fatal(err)
		}
	}
}

// How sure the strength of a wash is that is known to be a mass of sugar in a volume of water.
func ExampleOver() {
	w, _ := FromWater(well(), units.Litre.Of(57))
	steps := []Step{
		{Kind: Blend, With: &w, Volume: units.Litre.Of(56)},
		{Kind: Dissolve, What: "white sugar", Mass: units.Kilogram.Of(4.3)},
		{Kind: Ferment, Share: units.Percent.Of(100)},
	}
	worlds := Draw(1000, Known())
	var strength []float64
	var like water.Series
	for i := range worlds {
		states, _, _ := Walk(nil, steps, State{}, &worlds[i], &like)
		s, _ := states[2].Strength()
		strength = append(strength, s.In(units.PercentVolume))
	}
	s := Over(worlds, strength)
	fmt.Printf("%.2f to %.2f %% vol, most of it from %s\n", s.Low, s.High, s.From[0].Unknown)
	// Output: 4.36 to 4.78 % vol, most of it from ethanol lost
}

// An unknown is as far off its usual figure as its draws are, by their mean square.
func TestDeviation(t *testing.T) {
	worlds := Draw(4000, Known())
	for _, k := range Known() {
		sum := 0.0
		for i := range worlds {
			off := *k.In(&worlds[i]) - k.Usual
			sum += off * off
		}
		near(t, k.Name, k.Deviation(), math.Sqrt(sum/float64(len(worlds))), 0.005*k.Deviation())
	}
}

// A step comes out otherwise in a world where an unknown is at its end only where the unknown is said to move it;
// and each that moves any is seen to move one.
func TestMoves(t *testing.T) {
	w := must(FromWater(well(), units.Litre.Of(60)))
	steps := append(brew(&w)[:13:13],
		Step{Kind: Fine, Share: per(50)}, Step{Kind: Dilute, Mass: units.Kilogram.Of(1)},
		Step{Kind: Flavour, Volume: units.Millilitre.Of(170), Strength: units.PercentVolume.Of(40)},
		Step{Kind: Acidify, What: "malic acid", Mass: units.Gram.Of(30)}, Step{Kind: Stabilise, What: "potassium metabisulfite", Mass: units.Gram.Of(3)},
		Step{Kind: Malolactic, Share: per(50)}, Step{Kind: Settle, Share: per(50)}, Step{Kind: Stand, Share: per(50), Pressure: kPa(93.9)},
		Step{Kind: Chill, Temperature: deg(4)},
		Step{Kind: Degas, Share: per(50)}, Step{Kind: Sweeten, What: "white sugar", Mass: units.Gram.Of(20)},
		Step{Kind: Prime, What: "white sugar", Mass: units.Gram.Of(100)}, Step{Kind: Fill, Volume: units.Litre.Of(18), Capacity: units.Litre.Of(19)},
		Step{Kind: Close, Pressure: kPa(93.9), Share: per(100)}, Step{Kind: Ferment, Share: per(100)}, Step{Kind: Warm, Temperature: deg(22)},
		Step{Kind: Open, Pressure: kPa(93.9)},
		Step{Kind: Carbonate, Gauge: units.BarGauge.Of(1.25), Pressure: kPa(93.9)})
	steps[3].Salts = 0.01
	for _, k := range Known() {
		var s State
		var like water.Series
		seen := kindSet(0)
		for i := range steps {
			other := usual
			if *k.In(&other) = k.High; k.High == k.Usual { // known but for what a request says
				*k.In(&other)++
			}
			states, _, err := Walk(nil, steps[i:i+1], s, &usual, &like)
			if err != nil {
				t.Fatal(err)
			}
			moved, _, err := Do(steps[i], s, &other)
			if err != nil {
				t.Fatal(k.Name, err)
			}
			plain, _, _ := Do(steps[i], s, &usual)
			if moved != plain {
				seen |= by(steps[i].Kind)
				if !k.Moves(steps[i].Kind) {
					t.Errorf("%s moves %v", k.Name, steps[i].Kind)
				}
			}
			s = states[0]
		}
		if seen == 0 && k.moves != 0 {
			t.Errorf("%s moves nothing", k.Name)
		}
	}
}

// What moves a ferment, and how far each is off its usual figure.
func ExampleUnknown_Moves() {
	for _, k := range Known() {
		if k.Moves(Ferment) {
			fmt.Printf("%s: %.3g, off by %.2g\n", k.Name, k.Usual, k.Deviation())
		}
	}
	// Output:
	// ethanol lost: 2.5, off by 2.9
	// acids made: 0, off by 0.41
	// glycerol made: 1, off by 0.16
	// nitrogen of lean yeast: 6.4, off by 0.62
	// solubility of CO2: 1, off by 0.025
	// yeast growing on a primer: 0, off by 0.41
}
