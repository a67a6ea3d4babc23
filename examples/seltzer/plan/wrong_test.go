package plan_test

import (
	"strings"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/units"
)

// guide is what can explain something seen, by the figures of a batch.
func guide(t *testing.T, r plan.Request, seen string) plan.Guide {
	t.Helper()
	g, err := plan.Wrong(r, seen)
	if err != nil {
		t.Fatal(seen, err)
	}
	return g
}

func figureOf(g plan.Guide, what string) *plan.GuideLine {
	for i := range g.Figures {
		if strings.HasPrefix(g.Figures[i].What, what) {
			return &g.Figures[i]
		}
	}
	return nil
}

// Every guide has a figure of its batch, and none that is not of it: a base that is made has no wash, no yeast and no
// ferment here, and of a juice that is not named the yeast is not known.
func TestGuideIsOfThisBatch(t *testing.T) {
	base, juice, still := kindOf(t, "strong_base"), request(t), request(t)
	juice.Fermentable, juice.Buffer, juice.Nutrient.Sources = "juice 12 °Bx", nil, nil
	still.Packs = append([]plan.Pack(nil), still.Packs[1])
	still.Packs[0].Volume, still.Packs[0].Priming = still.Volume, ""
	if err := still.Packs[0].Content.UnmarshalText([]byte("still")); err != nil {
		t.Fatal(err)
	}
	for name, r := range map[string]plan.Request{"base": base, "juice": juice, "still": still, "plain": request(t)} {
		for _, seen := range plan.Signs() {
			g := guide(t, r, seen)
			if len(g.Figures) == 0 {
				t.Errorf("%s, %s: nothing", name, seen)
			}
			for _, l := range g.Figures {
				for _, none := range []string{"0.0000", "-99", " 0.0 million", "want 0", "0 mg/L of sugar"} {
					if strings.Contains(" "+l.Value+" "+l.Says, none) {
						t.Errorf("%s, %s: %+v", name, seen, l)
					}
				}
				if l.Says == "" || l.Value == "" || name != "plain" && l.What == "yeast grown, dry" && l.Value == "0.0 g/L" {
					t.Errorf("%s, %s: %+v", name, seen, l)
				}
			}
		}
	}
	if l := figureOf(guide(t, still, "flat"), "bottles"); l == nil || !l.Can || !strings.Contains(l.Says, "no gas is added") {
		t.Errorf("%+v", l)
	}
}

// Nitrogen of the must counts: a cider with 75 mg/L of its own and 20 of nutrient is not short of the 84 that it wants.
func TestGuideCountsTheMust(t *testing.T) {
	r := request(t)
	r.Fermentable, r.Strength, r.Buffer = "apple juice 12 °Bx", units.PercentVolume.Of(6), nil
	r.Must = &plan.Must{Nitrogen: new(units.MilligramPerLitre.Of(150))}
	p := made(t, r)
	if p.Nutrient.FromMust.Plus(p.Nutrient.Brought).Compare(p.Nutrient.Low) < 0 || p.Nutrient.Brought.Compare(p.Nutrient.Low) > 0 {
		t.Fatalf("%+v", p.Nutrient)
	}
	for _, seen := range []string{"sulfur", "no start"} {
		if l := figureOf(guide(t, r, seen), "nitrogen"); l == nil || l.Can {
			t.Errorf("%s: %+v", seen, l)
		}
	}
	if l := figureOf(guide(t, r, "sour"), "acids"); l != nil {
		t.Errorf("the acids of the apple are called the yeast's: %+v", l)
	}
}

// The guide goes by the readings: the vessel that was read cold, the pH that was read last.
func TestGuideByReadings(t *testing.T) {
	cold, sour := units.Celsius.Of(8), 2.9
	r := request(t)
	one := read(2*day, 1.0283)
	one.Vessel, one.PH = &cold, &sour
	r.Readings = []plan.Reading{one}
	g := guide(t, r, "no start")
	if l := figureOf(g, "temperature"); l == nil || !l.Can || !strings.HasPrefix(l.Value, "8 °C") {
		t.Errorf("%+v", l)
	}
	if l := figureOf(g, "pH"); l == nil || !l.Can || !strings.HasPrefix(l.Value, "2.90") {
		t.Errorf("%+v", l)
	}
	r.Readings = append(r.Readings, read(5*day, 1.0100))
	if l := figureOf(guide(t, r, "sour"), "pH, as last read"); l == nil || !l.Can {
		t.Errorf("%+v", l)
	}
	if l := figureOf(guide(t, r, "too sweet"), "sugar left"); l == nil || !l.Can {
		t.Errorf("%+v", l)
	}
}

// A flavouring of one pack alone is looked at too, and crystals of a wine that was not kept cold.
func TestGuideOfEachPack(t *testing.T) {
	r := request(t)
	r.Flavour = nil
	r.Packs = append([]plan.Pack(nil), r.Packs...)
	r.Packs[1].Flavour = &plan.Flavour{Name: "gin", Sample: units.Millilitre.Of(200), Added: units.Millilitre.Of(1), Strength: new(units.PercentVolume.Of(60))}
	if l := figureOf(guide(t, r, "haze"), "gin"); l == nil || !l.Can {
		t.Errorf("%+v", l)
	}
	w := request(t)
	w.Fermentable, w.Strength, w.Buffer, w.Flavour = "grape juice 20 °Bx", units.PercentVolume.Of(11), nil, nil
	if l := figureOf(guide(t, w, "haze"), "cream of tartar"); l == nil {
		t.Error("nothing of tartar in a wine")
	}
}

// A split batch is looked at pack by pack: a drink that is to be still is not flat, what is filled under counter-pressure loses gas
// in the filling, and a sweetener is named with the pack that it is in, apart from what the ferment leaves.
func TestGuideOfASplitBatch(t *testing.T) {
	r := kindOf(t, "five_drinks")
	for _, seen := range plan.Signs() {
		guide(t, r, seen)
	}
	flat := guide(t, r, "flat")
	if l := figureOf(flat, "cans, filled under counter-pressure"); l == nil || !l.Can {
		t.Errorf("%+v", flat.Figures)
	}
	for _, l := range flat.Figures {
		if strings.Contains(l.What, "10 L") && !strings.Contains(l.Says, "no gas is added") {
			t.Errorf("a degassed keg: %+v", l)
		}
	}
	n := 0
	for _, l := range guide(t, fourKegs(t), "flat").Figures {
		if l.What == "days on gas" {
			n++
		}
	}
	if n != 1 {
		t.Errorf("days on gas %d times", n)
	}
	sweet := guide(t, r, "too sweet")
	if l := figureOf(sweet, "erythritol of the cans"); l == nil || !l.Can || l.Value != "28.6 g/L" {
		t.Errorf("%+v", sweet.Figures)
	}
	for i := range r.Packs { // a label of its own for each, so that the batch's holds the sweetener
		if r.Packs[i].Priming == "" {
			r.Packs[i].Sweeten = &plan.Sweeten{What: "xylitol", Like: units.GramPerLitre.Of(40)}
		} else {
			r.Packs[i].Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(1)}
		}
	}
	if l := figureOf(guide(t, r, "too sweet"), "polyols of the ferment"); l == nil || !strings.HasPrefix(l.Value, "2.") {
		t.Errorf("%+v", l)
	}
}
