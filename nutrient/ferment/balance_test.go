package ferment

import (
	"math"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/internal/formula"
	"example.org/zymase/units"
	"pgregory.net/rapid"
)

// Pasteur 1860: 100 g of cane sugar gave 51.11 g alcohol, 49.42 g CO2, 3.16 g glycerol,
// 0.67 g succinic acid and 1.00 g yeast matter (recalled from memory). Glycerol, acid and
// yeast are put in; alcohol and gas follow from the balance.
func TestPasteur(t *testing.T) {
	const source = "Pasteur 1860, recalled from memory"
	m := UsualMetabolism()
	m.Acetic, m.Lactic = units.Share{}, units.Share{}
	b := check.Must(m.Ferment(Substrate{Hexose: units.Gram.Of(105.26), Amino: units.Gram.Of(1.0 * 0.40 / 6.25)}))
	check.Near(t, "glycerol", b.Glycerol.In(units.Gram), 3.16, 1e-9, source)
	check.Near(t, "succinic acid", b.Succinic.In(units.Gram), 0.67, 1e-9, source)
	check.Near(t, "yeast", b.DryYeast.In(units.Gram), 1.0, 1e-9, source)
	check.Near(t, "alcohol", b.Ethanol.In(units.Gram), 51.11, 0.3, source)
	check.Near(t, "CO2", b.CO2.In(units.Gram), 49.42, 0.3, source)
	// By hand from the electrons.
	amino := 0.064 / 14.007 // mol
	skeleton := 1.0 - amino*17.031
	hand := (24*105.26/180.156 - 14*3.16/92.094 - 14*0.67/118.088 - 4.2*skeleton/21.2201 + 12*amino) / 12 * 46.069
	check.Near(t, "alcohol by hand", b.Ethanol.In(units.Gram), hand, 1e-3, "by hand")
}

// Balling: of 100 parts of wort extract 48.391 become alcohol and 5.323 dry yeast. The
// extract is put in as maltose and the yeast as he found it. His figures leave out the
// 5.26 of water that maltose takes up, so that they cannot close atom by atom; the
// alcohol agrees within 3 %.
func TestBalling(t *testing.T) {
	const source = "Balling, Die Gährungschemie"
	b := check.Must(UsualMetabolism().Ferment(Substrate{Hexose: units.Gram.Of(105.26), Amino: units.Gram.Of(0.5323)}))
	check.Near(t, "yeast", b.DryYeast.In(units.Gram), 5.323, 0.001, source)
	check.Near(t, "alcohol", b.Ethanol.In(units.Gram), 48.391, 1.4, source)
}

// Nothing but sugar: Gay-Lussac's 0.51144 and 0.48856.
func TestFermentOfSugarAlone(t *testing.T) {
	m := UsualMetabolism()
	m.Acetic, m.Lactic, m.Succinic, m.Glycerol = units.Share{}, units.Share{}, units.Share{}, units.Share{}
	b := check.Must(m.Ferment(Substrate{Hexose: units.Gram.Of(100)}))
	check.Near(t, "ethanol", b.Ethanol.In(units.Gram), 51.144, 0.001, "Gay-Lussac")
	check.Near(t, "CO2", b.CO2.In(units.Gram), 48.856, 0.001, "Gay-Lussac")
	check.Near(t, "water", b.Water.In(units.Gram), 0, 1e-9, "Gay-Lussac")
	check.Near(t, "yeast", b.DryYeast.In(units.Gram), 0, 0, "no nitrogen")
	if !b.Protons.IsZero() {
		t.Error(b.Protons)
	}
}

func drawMetabolism(t *rapid.T) Metabolism {
	p := func(what string, min, max float64) units.Share {
		return check.Must(units.Percent.Try(rapid.Float64Range(min, max).Draw(t, what)))
	}
	m := Metabolism{
		Succinic: p("succinic, %", 0, 5), Acetic: p("acetic, %", 0, 5), Lactic: p("lactic, %", 0, 5), Glycerol: p("glycerol, %", 0, 15),
		MostYeast: p("most yeast, %", 0, 20), LeanNitrogen: p("lean, %", 3, 12),
		Phosphorus: p("P, %", 0, 4), Potassium: p("K, %", 0, 5), FreePerPotassium: p("free, %", 0, 100),
	}
	m.FullNitrogen = p("full, %", m.LeanNitrogen.In(units.Percent), 12)
	return m
}

func drawSubstrate(t *rapid.T) Substrate {
	g := rapid.Float64Range(1, 1e5).Draw(t, "hexose, g")
	part := func(what string) units.Mass {
		return check.Must(units.Gram.Try(rapid.Float64Range(0, g/10.01).Draw(t, what)))
	}
	return Substrate{check.Must(units.Gram.Try(g)), part("ammonium N, g"), part("amino N, g"), part("urea N, g"), part("P, g"), part("K, g"), part("N held, g")}
}

func TestEveryAtomAndChargeIsKept(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, s := drawMetabolism(t), drawSubstrate(t)
		b := check.Must(m.Ferment(s))
		in, out := b.Ledgers()
		g := s.Hexose.In(units.Gram)
		off := func(in, out units.Amount) float64 { return in.Minus(out).In(units.Mole) }
		for what, d := range map[string]float64{
			"carbon": off(in.C, out.C), "hydrogen": off(in.H, out.H), "nitrogen": off(in.N, out.N), "oxygen": off(in.O, out.O),
			"phosphorus": off(in.P, out.P), "potassium": off(in.K, out.K), "charge": off(in.Charge, out.Charge), "mass": in.Mass.Minus(out.Mass).In(units.Gram),
		} {
			if !(math.Abs(d) <= 1e-10*g/10) {
				t.Fatalf("%s: off by %g", what, d)
			}
		}
		// The ledger and the masses are the same balance: charge moves as H+.
		masses := b.Ethanol.Plus(b.CO2).Plus(b.Glycerol).Plus(b.Succinic).Plus(b.Acetic).Plus(b.Lactic).Plus(b.DryYeast).Plus(b.Water).In(units.Gram)
		moved := 1.008 * (b.Protons.In(units.Mole) + (1-b.moles().free)*b.moles().potassium)
		if d := masses + moved - out.Mass.In(units.Gram); math.Abs(d) > 1e-9*g {
			t.Fatalf("mass of the products: off by %g g", d)
		}
		if d := b.Ethanol.In(units.Gram)/formula.EthanolFormula.Molar()*2 - out.C.In(units.Mole); d > 1e-9*g {
			t.Fatalf("more carbon in ethanol than in all")
		}
		if n := b.Ammonium.Plus(b.Amino).Plus(b.Urea).In(units.Gram)/formula.WeightN - in.N.In(units.Mole); math.Abs(n) > 1e-9*g {
			t.Fatalf("nitrogen of the masses: off by %g mol", n)
		}
	})
}

func TestNoAmmoniumSetsNoProtonsFree(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		m, s := drawMetabolism(t), drawSubstrate(t)
		s.Ammonium, s.Potassium = units.Mass{}, units.Mass{}
		b := check.Must(m.Ferment(s))
		if b.Protons.In(units.Mole) > 0 {
			t.Fatalf("%v", b.Protons)
		}
		s.Phosphorus = units.Mass{}
		if b = check.Must(m.Ferment(s)); !b.Protons.IsZero() {
			t.Fatalf("%v", b.Protons)
		}
	})
}

// One H+ for each ammonium; 0.8 for each potassium; one less for each phosphate.
func TestProtonsByHand(t *testing.T) {
	m := UsualMetabolism()
	b := check.Must(m.Ferment(Substrate{Hexose: units.Kilogram.Of(10), Ammonium: units.Gram.Of(14.007)}))
	check.Near(t, "ammonium", b.Protons.In(units.Mole), 1, 1e-9, "Castrillo et al. 1995, recalled from memory")
	check.Near(t, "yeast", b.DryYeast.In(units.Gram), 14.007*6.25/0.40, 1e-9, "40 % crude protein")
	b = check.Must(m.Ferment(Substrate{Hexose: units.Kilogram.Of(10), Amino: units.Gram.Of(14.007), Potassium: units.Gram.Of(3.9098)}))
	check.Near(t, "potassium", b.Protons.In(units.Mole), 0.08, 1e-9, "0.8 free H+ for each K+")
	b = check.Must(m.Ferment(Substrate{Hexose: units.Kilogram.Of(10), Urea: units.Gram.Of(14.007), Phosphorus: units.Gram.Of(0.30974)}))
	check.Near(t, "phosphate", b.Protons.In(units.Mole), -0.01, 1e-9, "by hand")
	// Plenty of all: yeast stops at its most, and takes no more than it holds.
	b = check.Must(m.Ferment(Substrate{units.Kilogram.Of(1.0526), units.Gram.Of(100), units.Mass{}, units.Mass{}, units.Gram.Of(100),
		units.Gram.Of(100), units.Mass{}}))
	check.Near(t, "most yeast", b.DryYeast.In(units.Gram), 53.23, 1e-6, "Balling")
	check.Near(t, "most N", b.Ammonium.In(units.Gram), 5.323, 1e-6, "10 % of dry matter")
	check.Near(t, "most P", b.Phosphorus.In(units.Gram), 53.23*0.013, 1e-6, "1.3 %, recalled from memory")
	check.Near(t, "most K", b.Potassium.In(units.Gram), 53.23*0.02, 1e-6, "2 %, recalled from memory")
}

// A ferment in two parts is one: what yeast took beyond its lean nitrogen in the first part
// feeds its growth in the second.
func TestTwoPartsAreOne(t *testing.T) {
	m := UsualMetabolism()
	for _, nitrogen := range []float64{0, 3.8, 20, 30, 60} { // g, for 5 kg: most yeast is 253 g, 16 to 25 g of N
		whole := Substrate{Hexose: units.Kilogram.Of(5), Ammonium: amount.Grams(nitrogen), Phosphorus: units.Gram.Of(2), Potassium: units.Gram.Of(9)}
		one := check.Must(m.Ferment(whole))
		first := whole
		first.Hexose = units.Kilogram.Of(1.7)
		a := check.Must(m.Ferment(first))
		lean := m.LeanNitrogen.In(units.Fraction) * a.DryYeast.In(units.Gram)
		b := check.Must(m.Ferment(Substrate{
			Hexose: units.Kilogram.Of(3.3), Ammonium: whole.Ammonium.Minus(a.Ammonium), Phosphorus: whole.Phosphorus.Minus(a.Phosphorus),
			Potassium: whole.Potassium.Minus(a.Potassium), Reserve: amount.Grams(a.Ammonium.In(units.Gram) - lean),
		}))
		for _, of := range []struct {
			what      string
			one, a, b units.Mass
		}{
			{"yeast", one.DryYeast, a.DryYeast, b.DryYeast}, {"nitrogen", one.Ammonium, a.Ammonium, b.Ammonium},
			{"ethanol", one.Ethanol, a.Ethanol, b.Ethanol}, {"CO2", one.CO2, a.CO2, b.CO2},
			{"phosphorus", one.Phosphorus, a.Phosphorus, b.Phosphorus}, {"potassium", one.Potassium, a.Potassium, b.Potassium},
		} {
			check.Near(t, of.what, of.a.Plus(of.b).In(units.Gram), of.one.In(units.Gram), 1e-9, "conservation")
		}
	}
}

// The acids of wine made from 200 g/L of sugar.
func TestUsualAcids(t *testing.T) {
	m := UsualMetabolism()
	for _, c := range []struct {
		what   string
		got    units.Share
		want   float64 // g/L at 200 g/L
		source string
	}{
		{"succinic", m.Succinic, 1.273, "Pasteur 1860, recalled from memory: 0.67 of 105.26"},
		{"succinic, least", m.LeastAcids().Succinic, 0.5, "MSc thesis, Stellenbosch 2010"},
		{"succinic, most", m.MostAcids().Succinic, 1.7, "Metabolism of the anaerobic formation of succinic acid"},
		{"acetic", m.Acetic, 0.4, "recalled from memory"},
		{"acetic, least", m.LeastAcids().Acetic, 0.2, "recalled from memory"},
		{"acetic, most", m.MostAcids().Acetic, 1.6, "Yang et al. 2021: 24 mmol/mol"},
		{"lactic", m.Lactic, 0.2, "recalled from memory"},
		{"lactic, least", m.LeastAcids().Lactic, 0.1, "recalled from memory"},
		{"lactic, most", m.MostAcids().Lactic, 0.3, "recalled from memory"},
	} {
		check.Near(t, c.what, 200*c.got.In(units.Fraction), c.want, 0.0003, c.source)
	}
}

func TestFermentRefuses(t *testing.T) {
	ok := Substrate{Hexose: units.Kilogram.Of(1)}
	for _, c := range []struct {
		change   func(m *Metabolism)
		what     string
		min, max float64
	}{
		{func(m *Metabolism) { m.Succinic = units.Percent.Of(6) }, "succinic acid", 0, 5},
		{func(m *Metabolism) { m.Acetic = units.Percent.Of(6) }, "acetic acid", 0, 5},
		{func(m *Metabolism) { m.Lactic = units.Percent.Of(6) }, "lactic acid", 0, 5},
		{func(m *Metabolism) { m.Glycerol = units.Percent.Of(16) }, "glycerol", 0, 15},
		{func(m *Metabolism) { m.MostYeast = units.Percent.Of(21) }, "most yeast", 0, 20},
		{func(m *Metabolism) { m.LeanNitrogen = units.Percent.Of(2) }, "lean nitrogen", 3, 12},
		{func(m *Metabolism) { m.FullNitrogen = units.Percent.Of(13) }, "full nitrogen", 3, 12},
		{func(m *Metabolism) { m.FullNitrogen = units.Percent.Of(5) }, "full nitrogen", 6.4, 12},
		{func(m *Metabolism) { m.Phosphorus = units.Percent.Of(5) }, "phosphorus of yeast", 0, 4},
		{func(m *Metabolism) { m.Potassium = units.Percent.Of(6) }, "potassium of yeast", 0, 5},
		{func(m *Metabolism) { m.FreePerPotassium = units.Percent.Of(100.5) }, "free H+ for K+", 0, 100},
	} {
		m := UsualMetabolism()
		c.change(&m)
		_, err := m.Ferment(ok)
		check.Refused(t, err, c.what, c.min, c.max)
	}
	if _, err := (Metabolism{}).Ferment(ok); err == nil {
		t.Error("a zero Metabolism is taken")
	}
	m := UsualMetabolism()
	_, err := m.Ferment(Substrate{Hexose: units.Mass{}.Minus(units.Gram.Of(1))})
	check.Refused(t, err, "hexose", 0, 1e9)
	check.Must(m.Ferment(Substrate{Hexose: units.Kilogram.Of(0.9999e9)}))
	_, err = m.Ferment(Substrate{Hexose: units.Kilogram.Of(1.0005e9)})
	check.Refused(t, err, "hexose", 0, 1e9)
	for what, s := range map[string]Substrate{
		"ammonium nitrogen": {Ammonium: units.Gram.Of(101)}, "amino nitrogen": {Amino: units.Gram.Of(101)},
		"urea nitrogen": {Urea: units.Gram.Of(101)}, "phosphorus": {Phosphorus: units.Gram.Of(101)}, "potassium": {Potassium: units.Gram.Of(101)},
	} {
		s.Hexose = units.Kilogram.Of(1)
		_, err := m.Ferment(s)
		check.Refused(t, err, what, 0, 100)
	}
}

func TestLedgersOfNothing(t *testing.T) {
	in, out := Balance{}.Ledgers()
	if in != out || in != (Ledger{}) {
		t.Error(in, out)
	}
}

// A balance that was stored closes as before.
func TestBalanceTravels(t *testing.T) {
	b := check.Must(UsualMetabolism().Ferment(Substrate{Hexose: units.Kilogram.Of(5), Ammonium: units.Gram.Of(3.8), Phosphorus: units.Gram.Of(2),
		Potassium: units.Gram.Of(9)}))
	check.Travels(t, b)
	check.Travels(t, UsualMetabolism())
}
