package plan_test

import (
	"math"
	"testing"

	"example.org/zymase/examples/seltzer/plan"
	"example.org/zymase/internal/checked"
	"example.org/zymase/units"
)

// raspberryLime is the built-in drink, flavoured with raspberry and lime, still and to be kept.
func raspberryLime(t *testing.T) plan.Request {
	r := request(t)
	r.Packs = r.Packs[:1]
	r.Packs[0].Volume = units.Litre.Of(60)
	r.Flavour.Name = "raspberry and lime extract"
	r.Stabilise = &plan.Stabilise{Molecular: new(units.MilligramPerLitre.Of(0.8)), Sorbate: new(units.MilligramPerLitre.Of(200))}
	return r
}

// A raspberry and lime drink, dry, wants acid for its taste: 4 g/L as citric acid to pH 8.2. By hand: what the dose
// brings is the acidity that was lacking, each gram of citric acid 1 g/L, each of malic 64.04/67.04; and the sulfite
// is for the pH after it, 0.8·(1 + 10^(pH − 1.81)). At so low a pH all sorbic acid acts: 1/(1 + 10^(pH − 4.76)).
func TestRaspberryAndLimeIsSharpened(t *testing.T) {
	for what, each := range map[string]float64{"citric acid": 1, "malic acid": 64.04 / 67.04} {
		r := raspberryLime(t)
		r.Acid = &plan.Acid{What: what, When: "after the ferment", Acidity: new(plan.Acidity)}
		if err := r.Acid.Acidity.UnmarshalText([]byte("4 g/L as citric acid to pH 8.2")); err != nil {
			t.Fatal(err)
		}
		p := made(t, r)
		a, s := p.Acid, p.After.Sulfite
		near(t, what+", acidity", milligrams(a.Acidity), 4000, 15)
		near(t, what+", the dose", milligrams(a.PerLitre)*each, 4000-milligrams(a.WasAcid), 40)
		if a.PH < 2.5 || a.PH > 2.8 || a.Before < 3.4 || a.Before > 3.8 {
			t.Errorf("%s: pH %.2f → %.2f; soft drinks of that acidity are at 2.5 to 2.9 (common practice, no source)", what, a.Before, a.PH)
		}
		near(t, what+", free SO2", milligrams(s.Free), 0.8*(1+math.Pow(10, s.PH-1.81)), 0.01)
		if s.PH < a.PH || s.PH > a.PH+0.2 {
			t.Errorf("sulfite for pH %.2f, the soured drink has %.2f: the potassium of the sorbate raises it a little", s.PH, a.PH)
		}
		near(t, what+", sorbic acid that acts", milligrams(p.After.Sorbate.Undissociated)/milligrams(p.After.Sorbate.SorbicAcid),
			1/(1+math.Pow(10, s.PH-4.76)), 0.003)
		if c := cautionWith(p, "The sulfite is dosed for the batch"); c != "" {
			t.Error(c)
		}
	}
}

// The same acid in the kegs comes after the sulfite, which is dosed for a pH one higher and so sets free ten
// times as much: that is said.
func TestSulfiteBeforeTheAcid(t *testing.T) {
	r := raspberryLime(t)
	r.Packs[0].Acid = &plan.PackAcid{What: "citric acid", Dose: units.GramPerLitre.Of(2.2)}
	p := made(t, r)
	s := p.After.Sulfite
	if got := milligrams(s.Free) / (1 + math.Pow(10, p.Packs[0].PH.With-1.81)); got < 2*0.8 {
		t.Fatalf("%.1f mg/L of molecular SO2", got)
	}
	if cautionWith(p, "The sulfite is dosed for the batch") == "" {
		t.Errorf("not said: %v", p.Cautions)
	}
	// Half as much again as is wanted is too much (chosen), a little more is not.
	below, above := false, false
	for _, dose := range []float64{0.02, 0.05, 0.1, 0.15, 0.2, 0.3} {
		r.Packs[0].Acid.Dose = units.GramPerLitre.Of(checked.Number(dose))
		p := made(t, r)
		got := milligrams(p.After.Sulfite.Free) / (1 + math.Pow(10, p.Packs[0].PH.With-1.81)) / 0.8
		if said := cautionWith(p, "The sulfite is dosed for the batch") != ""; said != (got >= 1.5) {
			t.Errorf("%.2f times the molecular SO2, said: %v", got, said)
		}
		below, above = below || got > 1.2 && got < 1.5, above || got >= 1.5 && got < 2.2
		t.Logf("%.2f g/L: %.2f times", dose, got)
	}
	if !below || !above {
		t.Error("no dose near the bound")
	}
	r.Stabilise.Molecular = nil
	if c := cautionWith(made(t, r), "The sulfite is dosed for the batch"); c != "" {
		t.Error(c)
	}
}
