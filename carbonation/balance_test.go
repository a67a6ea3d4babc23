package carbonation

import (
	"math"
	"math/rand/v2"
	"testing"

	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// byHalves solves the same equations by plain bisection in another way: for a total
// pressure the CO2 alone that goes with it, and the total at which all the CO2 is held.
// It is false where none up to the highest holds it, or only without any head-space.
func byHalves(b balance) (total float64, found bool) {
	const outer, inner = 32, 38
	split := func(total float64) (held, room float64) {
		state := func(p float64) (space, air, liquid float64) {
			liquid = b.at20 * b.held.dissolved(p, total)
			space = b.capacity*(1+b.stretch*math.Max(0, total-b.outside)) - b.liquid - liquid*32.3e-3/44.009
			air = math.Inf(1)
			if space > 0 && b.nitrogen > 0 {
				air = b.nitrogen/(space/b.rt+b.nl) + b.oxygen/(space/b.rt+b.ol)
			} else if space > 0 {
				air = 0
			}
			return space, air, liquid
		}
		low, high := 0., total
		for range inner {
			p := (low + high) / 2
			if _, air, _ := state(p); p+air+b.vapours > total {
				high = p
			} else {
				low = p
			}
		}
		if low == 0 {
			return 0, 0
		}
		space, _, liquid := state(low)
		return liquid + 44.009*low*math.Max(space, 0)/(b.rt*b.held.gas.Compressibility(low)), space
	}
	if held, _ := split(2000); held < b.co2 {
		return 0, false
	}
	low, high := b.vapours, 2000.
	for range outer {
		m := (low + high) / 2
		if held, _ := split(m); held < b.co2 {
			low = m
		} else {
			high = m
		}
	}
	_, space := split(high)
	return high, space > 1e-9
}

// full reports by plain bisection whether the vessel has no room once every gas is
// dissolved (or as much as goes in up to the highest pressure).
func full(b balance) bool {
	low, high := 0., 2000.
	for range 44 {
		p := (low + high) / 2
		total := p + b.vapours
		if b.nitrogen > 0 {
			total += b.nitrogen/b.nl + b.oxygen/b.ol
		}
		if b.at20*b.held.dissolved(p, math.Min(total, 2000)) < b.co2 {
			low = p
		} else {
			high = p
		}
	}
	total := high + b.vapours
	if b.nitrogen > 0 {
		total += b.nitrogen/b.nl + b.oxygen/b.ol
	}
	return b.capacity*(1+b.stretch*math.Max(0, math.Min(total, 2000)-b.outside))-b.liquid-b.co2*32.3e-3/44.009 <= 0
}

// pack is a random bottle at a random temperature: 0.01 to 50 % head-space, to 12 g/L.
func pack(r *rand.Rand, stretches bool) (balance, error) {
	spread := func(least, most float64) float64 { return least * math.Pow(most/least, r.Float64()) }
	v := Vessel{Capacity: units.Litre.Of(1)}
	if stretches {
		v.StretchPerBar = units.Percent.Of(checked.Number(spread(0.01, 5)))
	}
	f := Filling{
		Volume:      units.Litre.Of(checked.Number(1 - spread(1e-4, 0.5))),
		Temperature: units.Celsius.Of(checked.Number(-2 + 42*r.Float64())),
		Content:     grams(12 * r.Float64()),
		Air:         units.Fraction.Of(checked.Number(math.Round(4*r.Float64()) / 4)),
		AirRemoved:  units.Fraction.Of(checked.Number(math.Round(4*r.Float64()) / 4)),
	}
	if r.IntN(2) == 0 {
		f.Priming = units.GramPerLitre.Of(checked.Number(10 * r.Float64()))
	}
	c, err := v.Close(solutionOf(0.9475, 0.004, 0.0363), f, units.Atmosphere{})
	return c.contents(-2+92*r.Float64(), false).balance(), err
}

// The figure of a plain bisection to 1e-6, or neither has one; full of liquid by both.
func TestSettleAgainstBisection(t *testing.T) {
	t.Parallel()
	packs := 100_000
	if testing.Short() {
		packs = 2_000
	}
	r := rand.New(rand.NewPCG(1, 2))
	var figures, locked, beyond int
	for i := range packs {
		b, err := pack(r, i%2 == 1)
		if err != nil {
			t.Fatal(err)
		}
		s := b.settle()
		want, found := byHalves(b)
		switch {
		case s.locked:
			locked++
		case s.beyond:
			beyond++
		default:
			figures++
		}
		if bound := s.locked || s.beyond; bound == found && math.Abs(want-2000) > 1e-3 && math.Abs(s.total-2000) > 1e-3 {
			t.Errorf("%+v\n%+v, by halves %g, %v", b, s, want, found)
		}
		if found && !s.locked && !s.beyond && math.Abs(s.total/want-1) > 1e-6 {
			t.Errorf("%+v\n%+v, by halves %g", b, s, want)
		}
		if s.locked != full(b) {
			t.Errorf("%+v\n%+v: full of liquid by halves: %v", b, s, full(b))
		}
		if t.Failed() {
			break
		}
	}
	if figures < packs/2 || locked < packs/100 || beyond < packs/100 {
		t.Errorf("%d figures, %d full, %d above: the packs are not mixed", figures, locked, beyond)
	}
}

// A beer bottle filled cold to 0.3 % of head-space. Without air dissolving, as the
// equations stood when an independent solver was set against them, it comes to 488 kPa
// gauge at 20 °C. Air that dissolves takes much of that back.
func TestSettleCase(t *testing.T) {
	s, err := DrinkOf(units.PercentVolume.Of(4.6), units.DegreePlato.Of(0))
	if err != nil {
		t.Fatal(err)
	}
	c, err := Vessel{Capacity: units.Millilitre.Of(342)}.Close(s, Filling{
		Volume: units.Millilitre.Of(340.974), Temperature: units.Celsius.Of(4), Content: RealVolume.Content(units.VolumesCO2.Of(2.5)),
		Air: units.Percent.Of(100), AirRemoved: units.Percent.Of(100)}, units.Atmosphere{})
	if err != nil {
		t.Fatal(err)
	}
	b := c.contents(20, false).balance()
	with := b.settle()
	b.nl, b.ol = 0, 0
	without := b.settle()
	if want, found := byHalves(b); !found || math.Abs(without.total/want-1) > 1e-6 {
		t.Errorf("%+v, by halves %g", without, want)
	}
	if g := without.total - 101.325; math.Abs(g-488) > 1 {
		t.Errorf("%g kPa gauge without dissolved air", g)
	}
	if want, found := byHalves(c.contents(20, false).balance()); !found || math.Abs(with.total/want-1) > 1e-6 || with.total > 350 {
		t.Errorf("%+v, by halves %g", with, want)
	}
}

// A state costs no allocation.
func TestStateAllocates(t *testing.T) {
	b, err := pack(rand.New(rand.NewPCG(3, 4)), true)
	if err != nil {
		t.Fatal(err)
	}
	if n := testing.AllocsPerRun(100, func() { sink += b.settle().total }); n != 0 {
		t.Errorf("%v allocations", n)
	}
}
