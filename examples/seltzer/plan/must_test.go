package plan_test

import (
	"encoding/json"
	"errors"
	"fmt"
	"math"
	"os"
	"path/filepath"
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"

	"pgregory.net/rapid"
)

// drink is one of the drinks that the page starts from.
func drink(t *testing.T, name string) plan.Request {
	t.Helper()
	text, err := os.ReadFile(filepath.Join("..", "drinks", name+".json"))
	if err != nil {
		t.Fatal(err)
	}
	r, err := plan.ParseRequest(text)
	if err != nil {
		t.Fatal(err)
	}
	return r
}

func between(t *testing.T, what string, got, least, most float64, source string) {
	t.Helper()
	if !(got >= least && got <= most) {
		t.Errorf("%s: %.3f, not %g to %g (%s)", what, got, least, most, source)
	}
}

func milligrams(c units.MassConcentration) float64 { return c.In(units.MilligramPerLitre) }

// closes holds the masses to one another, and the pH of the ferment to that of the batch: the one by the litre of
// drink under its gas, the other by the litre of water without gas.
func closes(t *testing.T, name string, p plan.Plan) {
	t.Helper()
	in, out := 0.0, 0.0
	for _, l := range p.Balance.In {
		in += l.Mass.In(units.Gram)
	}
	for _, l := range p.Balance.Out {
		out += l.Mass.In(units.Gram)
	}
	near(t, name+": masses", in, out, 1e-6)
	if a := p.After; a != nil {
		near(t, name+": pH of ferment and batch", a.Points[0].PH, p.Acidity.Points[len(p.Acidity.Points)-1].PH, 0.06)
	}
}

// A cider at 12 °Bx, its juice measured.
func TestCider(t *testing.T) {
	p := made(t, drink(t, "cider"))
	closes(t, "cider", p)
	a, n, m := p.Acidity.Points, p.Nutrient, p.Must
	near(t, "juice as measured", m.PH, 3.60, 1e-4)
	near(t, "acidity as measured", milligrams(m.Acidity), 5200, 1)
	near(t, "wash, 1 % of it water", a[0].PH, 3.60, 0.02)
	between(t, "dry", a[3].PH, 3.3, 4.0, "ciders, recalled from memory")
	between(t, "potassium", milligrams(m.Potassium), 700, 1500, "apple juice about 1 g/L, recalled from memory")
	juice := 1 - p.Water.Volume.In(units.Litre)/n.Volume.In(units.Litre)
	near(t, "nitrogen of the juice", milligrams(n.FromMust), 75*juice, 0.3)
	near(t, "nutrient brings the rest", milligrams(n.Brought)+milligrams(n.FromMust), milligrams(n.Need), 2)
	if len(p.After.Points) != 2 {
		t.Fatalf("%+v", p.After)
	}
	dry, soft := p.After.Points[0], p.After.Points[1]
	between(t, "bacteria raise the pH by", soft.PH-dry.PH, 0.1, 0.5, "0.1 to 0.5 as a rule of the trade, common practice, no source")
	// By charge: an acid that gives up one of its two protons. The juice has 39 mmol of acidity and as much again as salts.
	between(t, "share of the acidity that is left", milligrams(soft.Acidity)/milligrams(dry.Acidity), 0.3, 0.6, "half of the malic acid's, none of the others'")
	r := drink(t, "cider")
	r.Must, r.Malolactic = nil, nil
	guess := made(t, r)
	if guess.Must.Measured || guess.Must.Band != 0.4 || !told(guess, "rests on what is usual") {
		t.Errorf("%+v, %q", guess.Must, guess.Cautions)
	}
	between(t, "a usual apple", guess.Must.PH, 3.37, 4.24, "Eisele & Drake 2005, 175 varieties (read, second hand)")
	if w := guess.Acidity.Points[3]; w.High-w.Low < 0.5 {
		t.Errorf("a guess to within %.2f", w.High-w.Low)
	}
	r.Must = new(plan.Must)
	if err := json.Unmarshal([]byte(`{"titratable_acidity": "4 g/L as malic acid to pH 8.2"}`), r.Must); err != nil {
		t.Fatal(err)
	}
	if p := made(t, r); p.Must.Band != 0.3 || p.Must.Measured {
		t.Errorf("by acidity: %+v", p.Must)
	}
}

func told(p plan.Plan, words string) bool {
	return strings.Contains(strings.Join(p.Cautions, "\n"), words)
}

// A mead at 14 % vol: what the honey brings is next to nothing, so that it is fed, buffered and kept.
func TestMead(t *testing.T) {
	p := made(t, drink(t, "mead"))
	closes(t, "mead", p)
	near(t, "strength", p.Strength.In(units.PercentVolume), 14, 0.05)
	between(t, "nitrogen of the honey", milligrams(p.Nutrient.FromMust), 1, 25, "less than 20 mg/L at 25 °Bx, Staggered nutrient additions in mead making (read)")
	between(t, "without a buffer", p.Acidity.EndUnbuffered, 2.7, 3.4, "meads that stall near 3, common practice, no source")
	near(t, "floor", p.Acidity.Points[3].PH, 3.4, 0.01)
	between(t, "buffer, g/L", p.Acidity.Buffer.Mass.Quantity().In(units.Gram)/10.6, 0.1, 1.5, "common practice, no source")
	dry := p.After.Points[0]
	between(t, "acidity", milligrams(dry.Acidity)/1000, 2.2, 7.7, "meads in the literature, as tartaric, as a page quotes it (read, second hand)")
	s := p.After.Sulfite
	kept := p.After.Points[1]
	near(t, "free SO2", milligrams(s.Free), 0.8*(1+math.Pow(10, kept.PH-1.81)), 0.1)
	near(t, "metabisulfite", s.Weight.Mass.Quantity().In(units.Milligram), milligrams(s.Free)/0.576*10.02, 6)
	between(t, "undissociated sorbic acid", milligrams(p.After.Sorbate.Undissociated)/milligrams(p.After.Sorbate.SorbicAcid), 0.9, 1, "pK 4.76")
}

// A pale ale of 1.048 from extract.
func TestPaleAle(t *testing.T) {
	p := made(t, drink(t, "ale"))
	closes(t, "ale", p)
	near(t, "gravity", p.Gravity.Original, 1.048, 0.0005)
	between(t, "wort", p.Acidity.Points[0].PH, 5.0, 5.7, "5.0 to 5.2 after the boil, congress wort to 6.0 (read, second hand)")
	between(t, "beer", p.Acidity.Points[3].PH, 4.0, 4.9, "Austrian food code B13, degassed beer (read)")
	between(t, "potassium", milligrams(p.Must.Potassium), 300, 650, "300 to 600 in beer, 550 in a wort of 12 °P (read, second hand)")
	between(t, "acidity as lactic", milligrams(p.After.Points[0].Acidity)/1000, 1, 3, "beers, recalled from memory")
	if len(p.Nutrient.Stages) > 0 || milligrams(p.Nutrient.FromMust) < milligrams(p.Nutrient.Need) {
		t.Errorf("a malt wort is fed: %+v", p.Nutrient)
	}
	for _, o := range p.Nutrient.Others {
		if strings.Contains(o.Name, "thiamine") || strings.Contains(o.Name, "vitamins") {
			t.Errorf("a malt wort lacks %s", o.Name)
		}
	}
	// Its pH, measured, moves the whole.
	r := drink(t, "ale")
	r.Must = &plan.Must{PH: 5.5}
	q := made(t, r)
	near(t, "as measured", q.Acidity.Points[0].PH, 5.5, 0.03)
	if !(q.Acidity.Points[3].PH > p.Acidity.Points[3].PH) || !q.Must.Measured {
		t.Errorf("%+v", q.Must)
	}
}

// sugarWine is the country wine without its juice, soured to a pH when it is dry.
func sugarWine(t *testing.T) plan.Request {
	r := drink(t, "wine")
	r.Fruit, r.Must = nil, nil
	r.Buffer.Floor, r.Acid.PH, r.Acid.Acidity = 3.8, 3.2, nil
	return r
}

// A country wine of flowers and sugar, soured when it is dry.
func TestCountryWine(t *testing.T) {
	p := made(t, sugarWine(t))
	closes(t, "wine", p)
	if p.Must != nil {
		t.Errorf("sugar brings %+v", p.Must)
	}
	a := p.Acid
	near(t, "as asked", a.PH, 3.2, 0.01)
	between(t, "acid, g/L", milligrams(a.PerLitre)/1000, 0.3, 6, "a teaspoon to four a gallon, common practice, no source")
	if !(milligrams(a.Acidity) > milligrams(a.WasAcid) && a.Before > a.PH) {
		t.Errorf("%+v", a)
	}
	near(t, "free SO2", milligrams(p.After.Sulfite.Free), 0.8*(1+math.Pow(10, p.After.Points[2].PH-1.81)), 0.1)
	if len(p.After.Points) != 3 || !told(p, "Concentrated acid burns") {
		t.Errorf("%+v", p.After)
	}
	// The same before the yeast, to an acidity: the ferment is then far more sour.
	r := sugarWine(t)
	r.Acid.When, r.Acid.PH, r.Buffer, r.Stabilise = "before the yeast", 0, nil, nil
	r.Acid.Acidity = new(plan.Acidity)
	if err := r.Acid.Acidity.UnmarshalText([]byte("3 g/L as tartaric acid to pH 8.2")); err != nil {
		t.Fatal(err)
	}
	q := made(t, r)
	closes(t, "soured wash", q)
	near(t, "acidity, mg/L", milligrams(q.Acid.Acidity), 3000, 10)
	if !(q.Acidity.Points[0].PH < 3.2 && q.Acidity.Points[3].PH < 2.9) || !told(q, "yeast is likely to stop") {
		t.Errorf("%+v", q.Acidity.Points)
	}
}

// Sugar with grape juice: 2.21 kg of sucrose are as much as 2.33 of hexose; a quarter of all comes with the juice, at
// 16 °Bx, less what of its solids is no sugar. What it brings is thinned to a third.
func TestFruitBesideSugar(t *testing.T) {
	p := made(t, drink(t, "wine"))
	closes(t, "wine with juice", p)
	kg := func(what string) float64 {
		for _, w := range p.Weigh {
			if w.What == what {
				return w.Mass.Quantity().In(units.Kilogram)
			}
		}
		t.Fatalf("no %s in %v", what, p.Weigh)
		return 0
	}
	juice, white := kg("grape juice"), kg("white sugar")
	near(t, "part of the sugar", juice*0.16*0.95/(juice*0.16*0.95+white), 0.25, 0.015)
	// 6 g/L in 4.80 L of juice (1.065 kg/L) to 16.0 L of wash, 2.8 g of bicarbonate (1.86 of acidity) and what yeast makes.
	between(t, "acidity, dry", milligrams(p.After.Points[0].Acidity)/1000, 6*juice/1.065/16, 6*juice/1.065/16+4, "the juice's, and 2 to 4 g/L made by yeast")
	near(t, "acidity as asked", milligrams(p.Acid.Acidity), 6000, 20)
	near(t, "potassium of the wash", milligrams(p.Must.Potassium)*16/(juice/1.065), 1070, 60) // by charge of the juice at pH 3.30
	near(t, "nutrient brings the rest", milligrams(p.Nutrient.Brought)+milligrams(p.Nutrient.FromMust), milligrams(p.Nutrient.Need), 2)
	between(t, "end", p.Acidity.Points[3].PH, 3.1, 3.4, "country wines, common practice, no source")
	if p.Must.Of != "grape juice" || !p.Must.Measured {
		t.Errorf("%+v", p.Must)
	}
	// More juice brings more salts, which hold the pH against the yeast.
	r := drink(t, "wine")
	r.Fruit.Part, r.Buffer, r.Acid = units.Percent.Of(60), nil, nil
	more := made(t, r)
	closes(t, "more juice", more)
	if !(more.Acidity.Points[3].PH > p.Acidity.EndUnbuffered+0.05) {
		t.Errorf("%.2f with more juice, %.2f with less", more.Acidity.Points[3].PH, p.Acidity.EndUnbuffered)
	}
	// Of the usual composition where nothing is measured; of raspberries where their acids are given.
	r.Must = nil
	if q := made(t, r); q.Must.Measured || !told(q, "rests on what is usual") {
		t.Errorf("%+v", q.Must)
	}
	r.Fruit.Juice, r.Fruit.Part, r.Stabilise = "juice 9 °Bx", units.Percent.Of(20), nil
	if q := made(t, r); !told(q, "is not foreseen") {
		t.Errorf("%q", q.Cautions)
	}
	r.Must = new(plan.Must)
	if err := json.Unmarshal([]byte(`{"pH": 3.0, "titratable_acidity": "14 g/L as citric acid to pH 8.2", "acids": [{"what": "citric acid", "parts": 4}, {"what": "malic acid", "parts": 1}], "yan": "60 mg/L"}`),
		r.Must); err != nil {
		t.Fatal(err)
	}
	q := made(t, r)
	closes(t, "raspberries", q)
	near(t, "raspberries", q.Must.PH, 3.0, 1e-3)
	for _, c := range []struct {
		change func(*plan.Request)
		want   string
	}{
		{func(r *plan.Request) { r.Fermentable = "honey" }, "fruit: given"},
		{func(r *plan.Request) { r.Fruit.Juice = "raspberries" }, "fruit.juice: raspberries"},
		{func(r *plan.Request) { r.Fruit.Juice = "juice 9" }, "fruit.juice: juice 9"},
		{func(r *plan.Request) { r.Fruit.Juice = "juice 99 °Bx" }, "fruit.juice: juice 99"},
		{func(r *plan.Request) { r.Fruit.Part = units.Percent.Of(100) }, "fruit.part_of_sugar: 100"},
		{func(r *plan.Request) { r.Portions = 2 }, "sugar_portions: 2"},
		{func(r *plan.Request) {
			m := units.Kilogram.Of(3)
			r.AtHand, r.Volume = &plan.AtHand{Sugar: &m}, units.Volume{}
		}, "at_hand.sugar: 3"},
	} {
		r := drink(t, "wine")
		c.change(&r)
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%s: %v", c.want, err)
		}
	}
}

// What the usual composition may differ by is drawn with all else: 95 of 100 worlds lie within the width of the plan's
// own band, of two standard deviations. A wash that was measured is known far better.
func TestUnmeasuredWashIsDrawn(t *testing.T) {
	width := func(r plan.Request) (drawn, planned float64) {
		all, err := plan.Draw(r, 200)
		if err != nil {
			t.Fatal(err)
		}
		for _, d := range all {
			if d.What == "pH at the end" {
				drawn = d.Of.High - d.Of.Low
			}
		}
		end := made(t, r).Acidity.Points[3]
		return drawn, end.High - end.Low
	}
	r := drink(t, "cider")
	r.Malolactic = nil
	known, knownPlan := width(r)
	r.Must = nil
	usual, usualPlan := width(r)
	if !(usual > 3*known) {
		t.Errorf("%.2f wide as usual, %.2f as measured", usual, known)
	}
	for _, c := range [][2]float64{{known, knownPlan}, {usual, usualPlan}} {
		between(t, "drawn over the plan's", c[0]/c[1], 0.8, 1.1, "1.96 of 2 standard deviations; the acids' ends are not two of theirs")
	}
}

// Bacteria leave a cider that does not keep: it says so, with the sulfite that it would take. One that stays sharp, one that
// is soured, and a beer do not.
func TestTooFlatToKeep(t *testing.T) {
	p := made(t, drink(t, "cider"))
	end := p.After.Points[1].PH
	if !told(p, fmt.Sprintf("would take %.0f mg/L of free SO2", 0.8*(1+math.Pow(10, end-1.81)))) {
		t.Errorf("pH %.2f, %q", end, p.Cautions)
	}
	sharp := drink(t, "cider")
	sharp.Malolactic = nil
	acid := drink(t, "cider")
	acid.Acid = &plan.Acid{What: "malic acid", When: "after the ferment", PH: 3.6}
	for _, r := range []plan.Request{sharp, acid, drink(t, "ale"), drink(t, "mead")} {
		if p := made(t, r); told(p, "Not sour enough") {
			t.Errorf("%s: %+v", r.Name, p.After)
		}
	}
}

// Grapes rest in the cold: tartar takes potassium and acidity with it. A fruit that is not named is foreseen once its
// acids are given.
func TestOtherJuices(t *testing.T) {
	r := drink(t, "cider")
	r.Fermentable, r.Malolactic, r.Strength = "grape juice 21 °Bx", nil, units.PercentVolume.Of(12)
	if err := json.Unmarshal([]byte(`{"pH": 3.3, "titratable_acidity": "7.5 g/L as tartaric acid to pH 8.2", "yan": "180 mg/L", "ammonium_nitrogen": "60 mg/L", "potassium": "1300 mg/L"}`),
		r.Must); err != nil {
		t.Fatal(err)
	}
	r.Cold = &plan.Cold{Temperature: units.Celsius.Of(2), Settled: units.Percent.Of(100)}
	p := made(t, r)
	closes(t, "grapes", p)
	near(t, "must", p.Must.PH, 3.3, 1e-3)
	gl := p.After.Tartar.In(units.Gram) / 20
	between(t, "tartar, g/L", gl, 0.3, 5, "wines, recalled from memory")
	warm, cold := p.After.Points[0], p.After.Points[1]
	// Half of its acid protons: 1 g of it is half of 0.798 g of tartaric acid.
	near(t, "acidity that goes with it", milligrams(warm.Acidity)-milligrams(cold.Acidity), 1000*gl*150.087/188.177/2, 60)
	half := r
	half.Cold = &plan.Cold{Temperature: units.Celsius.Of(2), Settled: units.Percent.Of(50)}
	near(t, "half of the way", made(t, half).After.Tartar.In(units.Gram), p.After.Tartar.In(units.Gram)/2, 0.15) // of a batch 0.2 % larger

	r = drink(t, "cider")
	r.Fermentable, r.Malolactic, r.Strength = "juice 10 °Bx", nil, units.PercentVolume.Of(5)
	if err := json.Unmarshal([]byte(`{"pH": 3.0, "titratable_acidity": "14 g/L as citric acid to pH 8.2", "acids": [{"what": "citric acid", "parts": 4}, {"what": "malic acid", "parts": 1}], "yan": "60 mg/L"}`),
		r.Must); err != nil {
		t.Fatal(err)
	}
	p = made(t, r)
	closes(t, "raspberries", p)
	near(t, "raspberry juice", p.Must.PH, 3.0, 1e-3)
	if p.Acidity.Unforeseen != "" || len(p.Acidity.Points) == 0 {
		t.Errorf("%+v", p.Acidity)
	}
}

// A sharp juice is made milder before the yeast: 1 g/L as malic acid is 14.92 mEq/L, 1.493 g/L of potassium bicarbonate.
func TestSofterJuice(t *testing.T) {
	r := drink(t, "cider")
	r.Malolactic = nil
	r.Acid = &plan.Acid{What: "potassium bicarbonate", When: "before the yeast", Acidity: new(plan.Acidity)}
	if err := r.Acid.Acidity.UnmarshalText([]byte("4.2 g/L as malic acid to pH 8.2")); err != nil {
		t.Fatal(err)
	}
	p := made(t, r)
	closes(t, "softer", p)
	a := p.Acid
	near(t, "acidity", milligrams(a.Acidity), 4200, 10)
	near(t, "dose, g/L", milligrams(a.PerLitre)/1000, (milligrams(a.WasAcid)-4200)/1000*1.493, 0.01)
	if !(a.PH > a.Before) || !told(p, "foams up") {
		t.Errorf("%+v, %q", a, p.Cautions)
	}
	r.Acid.Acidity, r.Acid.PH = nil, 3.2
	if _, err := plan.Make(r); err == nil || !strings.Contains(err.Error(), "less sour than the drink is already") {
		t.Error(err)
	}
}

// A bland juice is blended with a sharp one. What lye finds adds up: (5.0 − 3.0)/(11.0 − 3.0) is a quarter. To a pH, the
// other way round too: a sharp juice made milder.
func TestJuicesBlended(t *testing.T) {
	r := drink(t, "cider")
	r.Malolactic = nil
	with := func(text string) {
		r.Must = new(plan.Must)
		if err := json.Unmarshal([]byte(text), r.Must); err != nil {
			t.Fatal(err)
		}
	}
	with(`{"pH": 3.9, "titratable_acidity": "3 g/L as malic acid to pH 8.2", "blend": {"pH": 3.1, "titratable_acidity": "11 g/L as malic acid to pH 8.2", "to_acidity": "5 g/L as malic acid to pH 8.2"}}`)
	p := made(t, r)
	closes(t, "to an acidity", p)
	b := p.Must.Blend
	near(t, "share", b.Share.In(units.Percent), 25, 0.3)
	near(t, "mass", b.Mass.In(units.Kilogram), 0.25*p.Weigh[0].Mass.Quantity().In(units.Kilogram), 0.08)
	near(t, "acidity", milligrams(p.Must.Acidity), 5000, 5)
	near(t, "of the first", milligrams(b.Acidity), 3000, 5)
	near(t, "of the other", milligrams(b.OtherAcidity), 11000, 15)
	between(t, "pH", p.Must.PH, 3.3, 3.7, "between the two, below a quarter of the way")
	with(`{"pH": 3.1, "titratable_acidity": "11 g/L as malic acid to pH 8.2", "blend": {"pH": 3.9, "titratable_acidity": "3 g/L as malic acid to pH 8.2", "to_pH": 3.4}}`)
	q := made(t, r)
	closes(t, "to a pH", q)
	near(t, "pH", q.Must.PH, 3.4, 1e-4)
	between(t, "share of the mild one", q.Must.Blend.Share.In(units.Percent), 40, 90, "its acids are fewer")
	for _, c := range [][2]string{
		{`{"blend": {"pH": 3.1, "titratable_acidity": "11 g/L as malic acid to pH 8.2", "to_pH": 3.4}}`, "must.blend: given"},
		{`{"pH": 3.9, "titratable_acidity": "3 g/L as malic acid to pH 8.2", "blend": {"pH": 1, "titratable_acidity": "11 g/L as malic acid to pH 8.2", "to_pH": 3.4}}`,
			"must.blend.pH: 1"},
		{`{"pH": 3.9, "titratable_acidity": "3 g/L as malic acid to pH 8.2", "blend": {"pH": 3.1, "to_pH": 3.4}}`, "must.blend.titratable_acidity: missing"},
		{`{"pH": 3.9, "titratable_acidity": "3 g/L as malic acid to pH 8.2", "blend": {"pH": 3.1, "titratable_acidity": "11 g/L as malic acid to pH 8.2"}}`,
			"must.blend: as given"},
		{`{"pH": 3.9, "titratable_acidity": "3 g/L as malic acid to pH 8.2", "blend": {"pH": 3.1, "titratable_acidity": "11 g/L as malic acid to pH 8.2", "to_pH": 3.0}}`,
			"must.blend.to_pH: 3: between those of the two juices, pH 3.90 and 3.10"},
		{`{"pH": 3.9, "titratable_acidity": "3 g/L as malic acid to pH 8.2", "blend": {"pH": 3.1, "titratable_acidity": "11 g/L as malic acid to pH 8.2", "to_acidity": "20 g/L as malic acid to pH 8.2"}}`,
			"must.blend.to_acidity: 20 g/L as malic acid to pH 8.2: between those of the two juices, 3.0 and 11.0 g/L"},
	} {
		with(c[0])
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), c[1]) {
			t.Errorf("%s: %v", c[1], err)
		}
	}
}

// Each field that cannot be is refused by its name.
func TestMustRefusals(t *testing.T) {
	acidity := func(text string) *plan.Acidity {
		a := new(plan.Acidity)
		if err := a.UnmarshalText([]byte(text)); err != nil {
			t.Fatal(err)
		}
		return a
	}
	mg := func(x float64) *units.MassConcentration {
		c, err := units.MilligramPerLitre.Try(x)
		if err != nil {
			t.Fatal(err)
		}
		return &c
	}
	six := acidity("6 g/L as malic acid to pH 8.2")
	if text, err := six.MarshalText(); err != nil || string(text) != "6 g/L as malic acid to pH 8.2" {
		t.Errorf("%s, %v", text, err)
	}
	for _, c := range []struct {
		of     string
		change func(*plan.Request)
		want   string
	}{
		{"wine", func(r *plan.Request) { r.Must = &plan.Must{PH: 3} }, "must: given"},
		{"cider", func(r *plan.Request) { r.Must = &plan.Must{PH: 1} }, "must.pH: 1"},
		{"cider", func(r *plan.Request) { r.Must = &plan.Must{PH: 3.5} }, "must.titratable_acidity: missing"},
		{"mead", func(r *plan.Request) { r.Must = &plan.Must{Acidity: six} }, "must.pH: missing"},
		{"ale", func(r *plan.Request) { r.Must = &plan.Must{PH: 5, Acidity: six} }, "must.titratable_acidity: 6 g/L"},
		{"cider", func(r *plan.Request) { r.Must.Nitrogen = mg(2000) }, "must.yan: 2000"},
		{"cider", func(r *plan.Request) { r.Must.Ammonium = mg(100) }, "must.ammonium_nitrogen: 100"},
		{"cider", func(r *plan.Request) { r.Must.Potassium = mg(20000) }, "must.potassium"},
		{"cider", func(r *plan.Request) { r.Must.Acids = []plan.AcidPart{{What: "gold", Parts: 1}} }, "must.acids[0].what: gold"},
		{"cider", func(r *plan.Request) { r.Must.Acids = []plan.AcidPart{{What: "malic acid"}} }, "must.acids[0].parts: 0"},
		{"cider", func(r *plan.Request) { r.Must.PH = 2.1 }, "must: as given"},
		{"cider", func(r *plan.Request) { r.Malolactic = new(units.Percent.Of(120)) }, "malolactic: 120"},
		{"cider", func(r *plan.Request) { r.Cold = &plan.Cold{Temperature: units.Celsius.Of(25)} }, "cold.temperature: 25"},
		{"cider", func(r *plan.Request) { r.Cold = &plan.Cold{Temperature: units.Celsius.Of(19)} }, "cold.temperature: 19"},
		{"cider", func(r *plan.Request) { r.Stabilise = &plan.Stabilise{Molecular: mg(0.8)} }, "stabilise: given"},
		{"wine", func(r *plan.Request) { r.Stabilise = &plan.Stabilise{} }, "stabilise: missing"},
		{"wine", func(r *plan.Request) { r.Stabilise.Molecular = mg(50) }, "stabilise.molecular_so2: 50"},
		{"wine", func(r *plan.Request) { r.Stabilise.Sorbate = mg(5000) }, "stabilise.potassium_sorbate: 5000"},
		{"wine", func(r *plan.Request) { r.Acid.What = "gold" }, "acid.what: gold"},
		{"wine", func(r *plan.Request) { r.Acid.When = "now" }, `acid.when: "now"`},
		{"wine", func(r *plan.Request) { r.Acid.Acidity = six }, "acid: both"},
		{"wine", func(r *plan.Request) { r.Acid.PH = 0 }, "acid: missing"},
		{"wine", func(r *plan.Request) { r.Acid.PH = 1 }, "acid.to_pH: 1"},
		{"wine", func(r *plan.Request) { r.Acid.PH = 3.9 }, "acid.to_pH: 3.9: more sour than the drink is already"},
		{"cider", func(r *plan.Request) {
			r.Fermentable, r.Must, r.Malolactic = "juice 12 °Bx", nil, nil
			r.Acid = &plan.Acid{What: "malic", When: "before the yeast", PH: 3}
		}, "acid: malic"},
		{"cider", func(r *plan.Request) { r.Fermentable, r.Must = "juice 12 °Bx", nil }, "must: missing"},
	} {
		r := drink(t, c.of)
		if c.of == "wine" {
			r = sugarWine(t)
		}
		c.change(&r)
		if _, err := plan.Make(r); err == nil || !strings.HasPrefix(err.Error(), c.want) {
			t.Errorf("%s, %s: %v", c.of, c.want, err)
		}
	}
	for _, bad := range []string{"", "6 g/L", "6 g/L as malic acid", "6 g/L as gold to pH 8.2", "six as malic acid to pH 8.2",
		"6 g/L as malic acid to pH 12", "6 g/L as malic acid to pH x"} {
		if err := new(plan.Acidity).UnmarshalText([]byte(bad)); err == nil {
			t.Errorf("%q is an acidity", bad)
		}
	}
}

// Whatever is measured of whatever wash: a plan whose masses close and whose pH is one, or a refusal that names a field.
func TestAnyMust(t *testing.T) {
	planned, all := 0, 0
	start := sugarWine(t)
	rapid.Check(t, func(t *rapid.T) {
		x := func(what string, least, most float64) float64 { return rapid.Float64Range(least, most).Draw(t, what) }
		maybe := func(what string) bool { return rapid.Bool().Draw(t, what) }
		r := start
		r.Buffer, r.Acid, r.Stabilise = nil, nil, nil
		r.Fermentable = rapid.SampledFrom([]string{"white sugar", "honey", "dry malt extract", "liquid malt extract", "apple juice 12 °Bx",
			"grape juice 22 °Bx", "juice 14 °Bx"}).Draw(t, "of")
		r.Strength = units.PercentVolume.Of(checked.Number(x("strength", 3, 12)))
		mg := func(what string, most float64) *units.MassConcentration {
			c := units.MilligramPerLitre.Of(checked.Number(x(what, 0, most)))
			return &c
		}
		acidity := func() *plan.Acidity {
			a := new(plan.Acidity)
			text := fmt.Sprintf("%.2f g/L as %s to pH 8.2", x("acidity", 0.1, 15),
				rapid.SampledFrom([]string{"malic acid", "tartaric acid", "citric acid"}).Draw(t, "as"))
			if err := a.UnmarshalText([]byte(text)); err != nil {
				t.Fatal(err)
			}
			return a
		}
		if r.Fermentable == "white sugar" && maybe("fruit") {
			r.Fruit = &plan.Fruit{Juice: rapid.SampledFrom([]string{"apple juice 12 °Bx", "grape juice 22 °Bx", "juice 9 °Bx"}).Draw(t, "juice"),
				Part: units.Percent.Of(checked.Number(x("part", 1, 60)))}
		}
		if (r.Fermentable != "white sugar" || r.Fruit != nil) && maybe("measured") {
			r.Must = &plan.Must{PH: x("pH", 2.8, 5.5)}
			if maybe("acidity") {
				r.Must.Acidity = acidity()
			}
			if maybe("yan") {
				r.Must.Nitrogen = mg("nitrogen", 400)
			}
			if maybe("potassium") {
				r.Must.Potassium = mg("potassium mg", 2500)
			}
			if maybe("acids") {
				r.Must.Acids = []plan.AcidPart{{What: "citric acid", Parts: 2}, {What: "malic acid", Parts: 1}}
			}
		}
		if maybe("soured") {
			r.Acid = &plan.Acid{What: rapid.SampledFrom([]string{"lactic acid", "malic acid", "potassium bicarbonate", "chalk"}).Draw(t, "with"),
				When: rapid.SampledFrom([]string{"before the yeast", "after the ferment"}).Draw(t, "when"), PH: x("to", 2.8, 5)}
		}
		if maybe("bacteria") {
			r.Malolactic = new(units.Percent.Of(checked.Number(x("share", 0, 100))))
		}
		if maybe("cold") {
			r.Cold = &plan.Cold{Temperature: units.Celsius.Of(checked.Number(x("°C", 0, 15))), Settled: units.Percent.Of(checked.Number(x("settled", 0, 100)))}
		}
		if maybe("kept") {
			r.Stabilise = &plan.Stabilise{Molecular: mg("SO2", 1.5), Sorbate: mg("sorbate", 300)}
		}
		all++
		p, err := plan.Make(r)
		if err != nil {
			if e, ok := errors.AsType[*plan.RequestError](err); !ok || e.Field == "request" {
				t.Fatal(err)
			}
			return
		}
		planned++
		in, out := 0.0, 0.0
		for _, l := range p.Balance.In {
			in += l.Mass.In(units.Gram)
		}
		for _, l := range p.Balance.Out {
			out += l.Mass.In(units.Gram)
		}
		if math.Abs(in-out) > 1e-6 {
			t.Fatalf("%.9f g in, %.9f g out", in, out)
		}
		for _, a := range p.Acidity.Points {
			if !(a.PH > 1.5 && a.PH < 9.5 && a.Low <= a.PH && a.PH <= a.High) {
				t.Fatalf("%+v", a)
			}
		}
		if _, err := json.Marshal(p); err != nil {
			t.Fatal(err)
		}
	})
	if all > 100 && planned < all/10 { // few are drawn of a short test
		t.Errorf("%d of %d planned", planned, all)
	}
}
