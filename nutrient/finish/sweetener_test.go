package finish

import (
	"encoding/json"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
)

// Relative sweetness and daily intakes as the reviews print them.
func TestSweetenerTable(t *testing.T) {
	const source = "reviews named in the table"
	want := []struct {
		name                        string
		low, high, fda, efsa, jecfa float64
		survives                    bool
	}{
		{"sucrose", 1, 1, 0, 0, 0, false}, {"glucose", 0.5, 1, 0, 0, 0, false}, {"fructose", 1, 2, 0, 0, 0, false},
		{"invert sugar", 1, 1, 0, 0, 0, false}, {"honey", 1, 1.5, 0, 0, 0, false}, {"maltose", 0.5, 0.5, 0, 0, 0, false},
		{"trehalose", 0.45, 0.45, 0, 0, 0, false}, {"isomaltulose", 0.4, 0.5, 0, 0, 0, false},
		{"lactose", 0.2, 0.2, 0, 0, 0, true}, {"maltodextrin", 0.2, 0.2, 0, 0, 0, true},
		{"erythritol", 0.6, 0.8, 0, 0, 0, true}, {"xylitol", 1, 1, 0, 0, 0, true}, {"sorbitol", 0.5, 0.7, 0, 0, 0, true},
		{"mannitol", 0.5, 0.7, 0, 0, 0, true}, {"maltitol", 0.75, 0.9, 0, 0, 0, true}, {"isomalt", 0.45, 0.65, 0, 0, 0, true},
		{"lactitol", 0.3, 0.4, 0, 0, 0, true}, {"acesulfame K", 200, 200, 15, 9, 15, true}, {"aspartame", 150, 200, 50, 40, 40, true},
		{"cyclamate", 30, 50, 0, 7, 11, true}, {"saccharin", 200, 700, 15, 5, 5, true}, {"sucralose", 550, 750, 5, 15, 15, true},
		{"steviol glycosides", 200, 400, 4, 4, 4, true}, {"neotame", 7000, 13000, 0.3, 2, 2, true}, {"advantame", 20000, 20000, 32.8, 5, 5, true},
	}
	all := Sweeteners()
	if len(all) != len(want) {
		t.Fatalf("%d rows, %d are checked", len(all), len(want))
	}
	for i, c := range want {
		s := all[i]
		f := s.Sweetness()
		check.Near(t, c.name+" low", f.Low, c.low, 0, source)
		check.Near(t, c.name+" high", f.High, c.high, 0, source)
		check.Near(t, c.name+" value", f.Value, (c.low+c.high)/2, 1e-12, source)
		if s.Name() != c.name || s.Survives() != c.survives || s.intake != (intake{c.fda, c.efsa, c.jecfa}) {
			t.Errorf("%+v", s)
		}
		if got, err := ParseSweetener(strings.ToUpper(c.name)); err != nil || got != s {
			t.Errorf("%s: %v, %v", c.name, got, err)
		}
		if s.ENumber() != "" {
			if got, err := ParseSweetener(s.ENumber()); err != nil || got != s {
				t.Errorf("%s: %v, %v", s.ENumber(), got, err)
			}
		}
	}
	if _, err := ParseSweetener("salt"); err == nil {
		t.Error("salt is taken")
	}
}

func TestSweetenLike(t *testing.T) {
	sucralose := check.Must(ParseSweetener("sucralose"))
	s := check.Must(SweetenLike(sucralose, units.GramPerLitre.Of(26), units.Litre.Of(20), law.EU))
	check.Near(t, "value", s.Concentration.Value.In(units.MilligramPerLitre), 40, 1e-9, "26 g/L over 650")
	check.Near(t, "low", s.Concentration.Low.In(units.MilligramPerLitre), 26000.0/750, 1e-9, "by hand")
	check.Near(t, "high", s.Concentration.High.In(units.MilligramPerLitre), 26000.0/550, 1e-9, "by hand")
	check.Near(t, "mass", s.Mass.In(units.Gram), 0.8, 1e-9, "by hand")
	check.Near(t, "a day", s.MostADay.In(units.Litre), 5*60/40.0, 1e-9, "FDA 5 mg/kg, 60 kg")
	if len(s.Limits) != 4 || len(s.Passed) != 0 || len(s.Cautions) != 1 {
		t.Errorf("%+v", s)
	}
	if s = check.Must(SweetenLike(sucralose, units.GramPerLitre.Of(195), units.Litre.Of(20), law.EU)); len(s.Passed) != 3 || len(s.Cautions) != 2 {
		t.Errorf("%+v", s) // 300 mg/L: the limit of one category, above the 250 of three
	}
	if s = check.Must(SweetenLike(check.Must(ParseSweetener("sucrose")), units.GramPerLitre.Of(10), units.Litre.Of(1), law.US)); !s.MostADay.IsZero() ||
		len(s.Cautions) != 1 {
		t.Errorf("%+v", s)
	}
	ace := check.Must(SweetenLike(check.Must(ParseSweetener("acesulfame K")), units.GramPerLitre.Of(20), units.Litre.Of(1), law.US))
	check.Near(t, "lowest intake", ace.MostADay.In(units.Litre), 9*60/100.0, 1e-9, "EFSA 9 mg/kg")
	// 156 g/L over 650 is 240 mg/L: only the 50 of cider is passed.
	if s = check.Must(SweetenLike(sucralose, units.GramPerLitre.Of(156), units.Litre.Of(20), law.EU)); len(s.Passed) != 1 ||
		s.Passed[0].Scope != law.CiderAndPerry {
		t.Errorf("%+v", s)
	}
	if s = check.Must(SweetenLike(check.Must(ParseSweetener("steviol glycosides")), units.GramPerLitre.Of(30), units.Litre.Of(1),
		law.EU)); len(s.Passed) != 1 || len(s.Cautions) != 2 {
		t.Errorf("%+v", s) // 100 mg/L: above the 80 of flavoured drinks, below the 150 of alcoholic ones
	}
	neotame := check.Must(SweetenLike(check.Must(ParseSweetener("neotame")), units.GramPerLitre.Of(20), units.Litre.Of(1), law.US))
	check.Near(t, "neotame a day", neotame.MostADay.In(units.Litre), 0.3*60/2, 1e-9, "FDA 0.3 mg/kg, 20 g/L over 10000")
	_, err := SweetenLike(sucralose, units.GramPerLitre.Of(201), units.Litre.Of(1), law.US)
	check.Refused(t, err, "sucrose", 0.1, 200)
	_, err = SweetenLike(sucralose, units.GramPerLitre.Of(10), units.Volume{}, law.US)
	check.Refused(t, err, "volume", amount.LeastVolume, amount.MostVolume)
	_, err = SweetenLike(Sweetener{}, units.GramPerLitre.Of(10), units.Litre.Of(1), law.US)
	check.Refused(t, err, "sweetness", 0.1, 1e5)
}

func TestSweetenersTravel(t *testing.T) {
	for _, s := range Sweeteners() {
		check.Travels(t, s)
	}
	if text, err := json.Marshal(Sweetener{}); err == nil {
		t.Errorf("none is written: %s", text)
	}
	s := Sweeteners()[0]
	if err := s.UnmarshalText([]byte("salt")); err == nil || s != Sweeteners()[0] {
		t.Error(s, err)
	}
}
