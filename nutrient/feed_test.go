package nutrient

import (
	"math"
	"slices"
	"strings"
	"testing"

	"example.org/zymase/internal/check"
	"example.org/zymase/nutrient/internal/amount"
	"example.org/zymase/nutrient/law"
	"example.org/zymase/units"
	"example.org/zymase/units/material"
	"pgregory.net/rapid"
)

// One nitrogen salt covers its limit and no more: 0.95861 g/L × 0.21214 = 203.4 mg/L;
// yeast walls of 4 % then bring 0.35948 g/L × 0.04 = 14.4 mg/L (limits 27 CFR 24.246).
func TestFeedInOrderStopsAtTheLimits(t *testing.T) {
	walls := Offer{Material: check.Must(material.ByLabel("yeast walls", material.Composition{AminoNitrogen: units.Percent.Of(4)})), Group: law.YeastCellWalls}
	f := check.Must(FeedInOrder(units.MilligramPerLitre.Of(300), units.Litre.Of(60), law.US, Offer{Material: material.DiammoniumPhosphate()}, walls))
	check.Near(t, "DAP", f.Doses[0].Mass.In(units.Gram), 60*0.95861, 0.001, "27 CFR 24.246")
	check.Near(t, "yeast", f.Doses[1].Mass.In(units.Gram), 60*0.35948, 0.001, "27 CFR 24.246")
	check.Near(t, "ammonium", f.Supply.Ammonium.In(units.MilligramPerLitre), 203.36, 0.01, "stoichiometry")
	check.Near(t, "amino", f.Supply.Amino.In(units.MilligramPerLitre), 14.379, 0.01, "by hand")
	check.Near(t, "shortfall", f.Shortfall.In(units.MilligramPerLitre), 300-203.36-14.38, 0.01, "by hand")
	last := f.Cautions[len(f.Cautions)-2:]
	if !strings.Contains(last[0].Text(), "82 mg/L") || last[1] != law.CheckTheLaw {
		t.Errorf("%q", last)
	}
	if len(f.Limits) != 2 {
		t.Errorf("%v", f.Limits)
	}
}

func TestFeedInOrderSharesALimit(t *testing.T) {
	f := check.Must(FeedInOrder(units.MilligramPerLitre.Of(500), units.Litre.Of(1), law.US,
		Offers(material.MonoammoniumPhosphate(), material.DiammoniumPhosphate())...))
	if len(f.Doses) != 1 || len(f.Limits) != 1 {
		t.Errorf("%v", f)
	}
	// In the EU the sulfate shares the limit of the phosphate; in the US it has none of its own.
	f = check.Must(FeedInOrder(units.MilligramPerLitre.Of(500), units.Litre.Of(1), law.EU, Offers(material.DiammoniumPhosphate(), material.AmmoniumSulfate())...))
	if len(f.Doses) != 1 {
		t.Errorf("%v", f)
	}
	f = check.Must(FeedInOrder(units.MilligramPerLitre.Of(500), units.Litre.Of(1), law.US, Offers(material.DiammoniumPhosphate(), material.AmmoniumSulfate())...))
	if len(f.Doses) != 2 || !f.Shortfall.IsZero() {
		t.Errorf("%v", f)
	}
}

func TestFeedMeetsTheNeedOrSaysWhatIsOpen(t *testing.T) {
	rapid.Check(t, func(t *rapid.T) {
		need := rapid.Float64Range(0, 1000).Draw(t, "need, mg/L")
		litres := rapid.Float64Range(0.1, 10000).Draw(t, "volume, L")
		whose := law.Jurisdiction(rapid.IntRange(0, 1).Draw(t, "law"))
		all := Sources()
		var sources []material.Material
		for range rapid.IntRange(0, 4).Draw(t, "sources") {
			sources = append(sources, all[rapid.IntRange(0, len(all)-1).Draw(t, "source")])
		}
		v := check.Must(units.Litre.Try(litres))
		f := check.Must(FeedInOrder(check.Must(units.MilligramPerLitre.Try(need)), v, whose, Offers(sources...)...))
		if d := f.Supply.Nitrogen().Plus(f.Shortfall).In(units.MilligramPerLitre) - need; math.Abs(d) > 1e-6 {
			t.Fatalf("supply and shortfall miss the need by %g", d)
		}
		for _, l := range f.Limits {
			var sum units.Mass
			for _, d := range f.Doses {
				for _, s := range l.Covers {
					if law.SubstanceOf(d.Material) == s {
						sum = sum.Plus(d.Mass)
					}
				}
			}
			if !l.Allows(check.Must(units.GramPerLitre.Try(sum.In(units.Gram) / litres))) {
				t.Fatalf("%v passed: %v", l, f.Doses)
			}
		}
	})
}

// What is left open is said to the milligram: without a source it is all of the need.
func TestFeedOfNothingSaysTheNeed(t *testing.T) {
	f := check.Must(FeedInOrder(units.MilligramPerLitre.Of(999), units.Litre.Of(1), law.US))
	if len(f.Cautions) != 1 || !strings.Contains(f.Cautions[0].Text(), "999 mg/L") {
		t.Errorf("%v", f.Cautions)
	}
}

// A need that one source meets to the last digit leaves nothing open, and one limit
// asks for the caution about laws.
func TestFeedInOrderMeetsTheNeed(t *testing.T) {
	for n := 1; n < 200; n++ {
		f := check.Must(FeedInOrder(check.Must(units.MilligramPerLitre.Try(float64(n))), units.Litre.Of(7), law.US, Offer{Material: material.DiammoniumPhosphate()}))
		if !f.Shortfall.IsZero() || len(f.Limits) != 1 || len(f.Cautions) == 0 || f.Cautions[len(f.Cautions)-1] != law.CheckTheLaw {
			t.Fatalf("%d mg/L: %+v", n, f)
		}
	}
	// Zinc brings no nitrogen; no limit holds for the sulfate in the US.
	f := check.Must(FeedInOrder(units.MilligramPerLitre.Of(50), units.Litre.Of(7), law.US,
		Offers(material.ZincSulfateHeptahydrate(), material.AmmoniumSulfate())...))
	if said := noNitrogen.With(material.ZincSulfateHeptahydrate().Name()); !slices.Contains(f.Cautions, said) {
		t.Errorf("%v, want %v", f.Cautions, said)
	}
	if len(f.Doses) != 1 || len(f.Limits) != 0 || len(f.Cautions) > 0 && f.Cautions[len(f.Cautions)-1] == law.CheckTheLaw {
		t.Errorf("%+v", f)
	}
}

func TestFeedInOrderRefuses(t *testing.T) {
	_, err := FeedInOrder(units.MilligramPerLitre.Of(1001), units.Litre.Of(1), law.US)
	check.Refused(t, err, "need", 0, 1000)
	check.Must(FeedInOrder(units.MilligramPerLitre.Of(1000), units.Litre.Of(1), law.US))
	_, err = FeedInOrder(units.MilligramPerLitre.Of(100), units.Volume{}, law.US)
	check.Refused(t, err, "volume", amount.LeastVolume, amount.MostVolume)
}
