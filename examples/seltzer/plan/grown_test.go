package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// Yeast is bound by its nitrogen: 17.3 g of diammonium phosphate and 3.0 g of autolysed yeast hold 3.79 g, at 6.4 % of dry
// yeast (protein 40 %, recalled from memory) 59 g, at 10 % (Dharmadhikari, read) 38 g. The masses
// close all the same, and the ethanol that the atoms give is Gay-Lussac's less glycerol, acids
// and that yeast, by hand: of 4.24 kg of sugar in the fermenter, 4.47 kg of hexose.
func TestYeastGrownByItsNitrogen(t *testing.T) {
	p := made(t, request(t))
	in, out := 0.0, 0.0
	for _, l := range p.Balance.In {
		in += l.Mass.In(units.Gram)
	}
	yeast := 0.0
	for _, l := range p.Balance.Out {
		out += l.Mass.In(units.Gram)
		if l.What == "yeast grown, dry, by its nitrogen" {
			yeast = l.Mass.In(units.Gram)
		}
	}
	near(t, "yeast", yeast, (17.3*0.21214+3.0*0.04)/0.064, 0.5)
	near(t, "yeast, well fed", p.Balance.YeastLow.In(units.Gram), (17.3*0.21214+3.0*0.04)/0.10, 0.5)
	near(t, "masses", in, out, 1e-6)
	// By electrons: hexose 24 of 180.16 g/mol, ethanol 12 of 46.07, glycerol 14 of 92.09, succinic
	// acid 14 of 118.09, yeast 4.2 of 24.6 (CH1.8O0.5N0.2, Roels 1983, recalled from memory). Acetic
	// and lactic acid, 0.3 % of the hexose, have its 0.133 an electron a gram.
	left := 24/180.16 - 0.0300*14/92.09 - 0.00637*14/118.09 - 0.003*24/180.16 - yeast/4470*4.2/24.6
	perGram := left / 12 * 46.07
	law := 7.892 / 16.83 // the wine law: 1 % vol, 7.892 g/L, from 16.83 g/L of hexose
	near(t, "without losses", p.Balance.ByAtoms.In(units.PercentVolume)/p.Strength.In(units.PercentVolume), perGram/law, 0.004)
	// What the measured yield leaves of that ethanol is lost; the gas is the carbon that is left, and all
	// of it goes to the room: of 4.22 kg of sugar 2.07 kg.
	near(t, "lost", line(t, p, "ethanol lost"), 4470*(perGram-law), 6)
	near(t, "gas", p.Room.CO2.In(units.Gram), 2082*4.28/4.30, 6)
	near(t, "salts", line(t, p, "salts"), 2.3+5.7+3.0+0.2+4.2+1.0, 1e-9)
	near(t, "nutrient and buffer", line(t, p, "nutrient"), 17.3+3.0+16.6, 1e-9)
	near(t, "yeast pitched", line(t, p, "yeast pitched"), 41.2, 1e-9)
	if chalk := line(t, p, "chalk"); chalk <= 0 || chalk > p.Water.Boiled.Scale.In(units.Gram) {
		t.Errorf("%g g of chalk, of at most %v", chalk, p.Water.Boiled.Scale)
	}
	if more := p.Balance.ByAtoms.Minus(p.Strength); more.In(units.PercentagePoint) > p.Uncertainty.Planned.In(units.PercentVolume) {
		t.Errorf("%v more is beyond ± %v", more, p.Uncertainty.Planned)
	}
}

// line is a mass of the balance, in g.
func line(t *testing.T, p plan.Plan, what string) float64 {
	t.Helper()
	for _, l := range append(p.Balance.In, p.Balance.Out...) {
		if strings.HasPrefix(l.What, what) {
			return l.Mass.In(units.Gram)
		}
	}
	t.Fatalf("the balance has no %q", what)
	return 0
}

// A wash whose nitrogen is not known has yeast and losses in one line; juice counts by its label, liquid
// yeast is not weighed, and without a boil nothing is boiled off. All of it closes.
func TestBalanceOfOtherWashes(t *testing.T) {
	for _, of := range []string{"honey", "juice 12 °Bx", "dry malt extract"} {
		r := request(t)
		r.Fermentable, r.Buffer, r.Yeast.Form = of, nil, "liquid"
		r.Kettle.Boil, r.Kettle.Capacity = 0, units.Litre.Of(150)
		p := made(t, r)
		in, out := 0.0, 0.0
		for _, l := range p.Balance.In {
			in += l.Mass.In(units.Gram)
		}
		for _, l := range p.Balance.Out {
			out += l.Mass.In(units.Gram)
		}
		near(t, of, in, out, 1e-6)
		near(t, of+", boiled off", line(t, p, "boiled off"), 0, 0)
		if of != "juice 12 °Bx" { // whose nitrogen is not known
			if line(t, p, "yeast grown, dry, by its nitrogen") <= 0 || line(t, p, "ethanol lost") < 0 {
				t.Errorf("%s: %+v", of, p.Balance)
			}
			continue
		}
		if line(t, p, "yeast, dry, and losses") <= 0 || !p.Balance.ByAtoms.IsZero() {
			t.Errorf("%s: %+v", of, p.Balance)
		}
	}
}
