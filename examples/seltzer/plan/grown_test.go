package plan_test

import (
	"testing"

	"example.org/zymase/units"
)

// Yeast is bound by its nitrogen: 17.9 g of diammonium phosphate hold 3.80 g, at 6.4 % of dry
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
	near(t, "yeast", yeast, 17.9*0.21214/0.064, 0.5)
	near(t, "yeast, well fed", p.Balance.YeastLow.In(units.Gram), 17.9*0.21214/0.10, 0.5)
	near(t, "masses", in, out, 1)
	// By electrons: hexose 24 of 180.16 g/mol, ethanol 12 of 46.07, glycerol 14 of 92.09, succinic
	// acid 14 of 118.09, yeast 4.2 of 24.6 (CH1.8O0.5N0.2, Roels 1983, recalled from memory). Acetic
	// and lactic acid, 0.3 % of the hexose, have its 0.133 an electron a gram.
	left := 24/180.16 - 0.0300*14/92.09 - 0.00637*14/118.09 - 0.003*24/180.16 - yeast/4470*4.2/24.6
	perGram := left / 12 * 46.07
	law := 7.892 / 16.83 // the wine law: 1 % vol, 7.892 g/L, from 16.83 g/L of hexose
	near(t, "without losses", p.Balance.ByAtoms.In(units.PercentVolume)/p.Strength.In(units.PercentVolume), perGram/law, 0.004)
	if more := p.Balance.ByAtoms.Minus(p.Strength); more.In(units.PercentagePoint) > p.Uncertainty.Planned.In(units.PercentVolume) {
		t.Errorf("%v more is beyond ± %v", more, p.Uncertainty.Planned)
	}
}
